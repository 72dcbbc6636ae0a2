#include "ui/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>

#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/desk/desk_page.h"
#include "ui/equipment/equipment_page.h"
#include "ui/window/aftercare_keeper.h"
#include "ui/window/auto_saver.h"
#include "ui/window/daily_backup.h"
#include "ui/window/file_drops.h"
#include "ui/window/job_page.h"
#include "ui/window/paper_preview.h"
#include "ui/window/settings.h"
#include "ui/window/stage_factories.h"

namespace wg::ui {

namespace {

constexpr int frame_px = 4;
constexpr int title_px = 32;

}  // namespace

MainWindow::MainWindow(std::unique_ptr<store::Store> store, std::shared_ptr<const plan::Reference> reference,
                       QWidget* parent)
    : QMainWindow(parent),
      store_(std::move(store)),
      prices_(*store_, reference),
      rules_(*store_, reference),
      equipment_(*store_, reference),
      reference_(std::move(reference)) {
    setWindowTitle(tr("Warmgable"));
    // Never beyond the screen, its frame and title included.
    resize(QSize(1366, 768).boundedTo(screen()->availableSize() - QSize(frame_px, title_px)));
    setMinimumSize(1000, 560);  // a small laptop at 120 dpi
    set_theme(theme_setting(*store_));

    saver_ = new AutoSaver(*store_, this);
    aftercare_ = new AftercareKeeper(*store_, this);
    desk_ = new DeskPage(*store_, reference_);
    pages_ = new QStackedWidget(this);
    pages_->addWidget(desk_);
    setCentralWidget(pages_);
    make_file_menu();
    make_edit_menu();
    make_view_menu();
    make_equipment_menu();
    make_help_menu();

    connect(desk_, &DeskPage::open_asked, this, [this](const QString& id) { open_job(id.toStdString()); });
    connect(desk_, &DeskPage::aftercare_asked, this, [this](const QString& id) {
        if (open_job(id.toStdString())) show_stage(stage_count - 1);
    });
    connect(desk_, &DeskPage::new_asked, this, &MainWindow::start_job);
    connect(desk_, &DeskPage::new_for_customer_asked, this,
            [this](const QString& id) { start_job_for(id.toStdString()); });
    connect(desk_, &DeskPage::import_asked, this, &MainWindow::open_file);
    connect(desk_, &DeskPage::firms_own_changed, this, &MainWindow::take_firms_own);
    if (const QString wrong = take_firms_own(); !wrong.isEmpty())
        desk_->notice().add(Mark::caution,
                            tr("Some of the firm's prices, rules or equipment are left out of plans. %1").arg(wrong));
    auto* drops = new FileDrops(*this, this);
    connect(drops, &FileDrops::dropped, this, &MainWindow::take_files);
    refresh_actions();
}

void MainWindow::set_program_rules(std::vector<std::string> files) {
    desk_->set_program_rules(std::move(files));
}

void MainWindow::make_job_page() {
    job_page_ = new JobPage(stage_factories(*store_));
    pages_->addWidget(job_page_);
    connect(job_page_, &JobPage::desk_asked, this, &MainWindow::back_to_desk);
    connect(job_page_, &JobPage::weather_asked, this, &MainWindow::show_weather);
    // From a button within the page that closes: after its click has been dealt with.
    connect(job_page_, &JobPage::customer_asked, this, &MainWindow::show_customer_of_job, Qt::QueuedConnection);
    connect(saver_, &AutoSaver::saved, this, [this](bool after_failure) {
        if (after_failure) job_page_->notice().clear();
        refresh_saved();
    });
    connect(saver_, &AutoSaver::failed, this, [this](const QString& text) {
        const bool elsewhere = saved_elsewhere();
        next_step_ = [this, elsewhere] { elsewhere ? put_together() : save_file_as(); };
        job_page_->notice().add_with_step(Mark::stop, tr("Not saved. %1").arg(text),
                                          elsewhere ? tr("Put both together") : tr("Save to a file"));
        refresh_saved();
    });
    connect(saver_, &AutoSaver::not_kept, this, [this](const QString& text) {
        job_page_->notice().add(Mark::caution, tr("Edits are safe only once they are saved. %1").arg(text));
    });
    connect(aftercare_, &AftercareKeeper::failed, this, [this](const QString& text) {
        job_page_->notice().add(Mark::caution, tr("Services due and refrigerant did not reach the desk. %1").arg(text));
    });
    connect(&job_page_->notice(), &NoticeBar::step_asked, this, [this] {
        if (next_step_) next_step_();
    });
}

void MainWindow::keep_daily_backup() {
    auto* keeper = new DailyBackup(store_->path(), this);
    connect(keeper, &DailyBackup::failed, this,
            [this](const QString& text) { notice().add(Mark::caution, tr("No backup was made today. %1").arg(text)); });
    keeper->begin();
}

MainWindow::~MainWindow() {
    // Stages hold on to the session until told otherwise; the session ends before the pages do.
    saver_->set_session(nullptr);
    aftercare_->set_session(nullptr);
    if (job_page_ != nullptr) job_page_->set_session(nullptr);
    // Pages refer to the store, which goes before the base class would delete them.
    delete takeCentralWidget();
}

NoticeBar& MainWindow::notice() {
    return session_ != nullptr ? job_page_->notice() : desk_->notice();
}

void MainWindow::show_session(Job job) {
    QString caution;
    std::shared_ptr<const plan::Reference> reference = reference_for(job, caution);
    // Not before it is needed: the desk is what a start waits for.
    if (job_page_ == nullptr) make_job_page();
    auto session = std::make_unique<JobSession>(std::move(job), std::move(reference));
    job_page_->set_session(session.get());
    saver_->set_session(session.get());
    aftercare_->set_session(session.get());
    undo_group_.addStack(&session->undo_stack());
    undo_group_.setActiveStack(&session->undo_stack());
    connect(session.get(), &JobSession::plan_changed, this, &MainWindow::show_paper_when_settled);
    connect(session.get(), &JobSession::planning_changed, this, &MainWindow::show_paper_when_settled);
    connect(session.get(), &JobSession::job_changed, this, &MainWindow::refresh_saved);
    connect(session.get(), &JobSession::job_changed, this, &MainWindow::refresh_actions);
    wanted_paper_.reset();
    session_ = std::move(session);
    pages_->setCurrentWidget(job_page_);
    job_page_->show_stage(0);
    refresh_actions();
    refresh_saved();
    if (!caution.isEmpty()) notice().add(Mark::caution, caution);
    bring_back_unsaved();
    tell_open_fields();
}

void MainWindow::bring_back_unsaved() {
    const std::string id = session_->job().id;
    const Result<std::optional<store::Unsaved>> kept = store_->unsaved(id);
    if (!kept) {
        // It stays where it is until the next save: what cannot be read today may be read by somebody.
        notice().add(Mark::caution, qs(text_of(kept.problems())));
        return;
    }
    if (!kept.value()) return;
    session_->bring_back(kept.value()->job, tr("Bring back what was not saved"));
    session_->end_merge();
    notice().add(Mark::note, tr("The program ended before the last edits of %1 were saved. They are back; undo takes "
                                "them away again, entries of the record aside.")
                                 .arg(day(kept.value()->kept_at)));
}

void MainWindow::save() {
    if (session_ == nullptr) return;
    saver_->save_now();
    refresh_saved();
}

bool MainWindow::leave_job() {
    if (session_ == nullptr || saver_->save_now()) return true;
    QMessageBox box(QMessageBox::Warning, tr("The job is not saved"), tr("The last changes could not be saved."),
                    QMessageBox::NoButton, this);
    box.setInformativeText(saver_->problem());
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    const auto* leave = box.addButton(tr("Leave without saving"), QMessageBox::DestructiveRole);
    auto* stay = box.addButton(tr("Stay"), QMessageBox::RejectRole);
    box.setDefaultButton(stay);
    box.exec();
    return box.clickedButton() == leave;
}

void MainWindow::back_to_desk() {
    if (!leave_job()) return;
    const std::string id = session_ != nullptr ? session_->job().id : std::string();
    saver_->set_session(nullptr);
    aftercare_->set_session(nullptr);
    if (job_page_ != nullptr) job_page_->set_session(nullptr);
    session_.reset();
    desk_->reload(id);
    pages_->setCurrentWidget(desk_);
    refresh_actions();
}

void MainWindow::show_stage(int stage) {
    if (job_page_ != nullptr) job_page_->show_stage(stage);
}

void MainWindow::refresh_actions() {
    for (QAction* action : need_job_)
        action->setEnabled(session_ != nullptr);
    setWindowTitle(session_ == nullptr ? tr("Warmgable") : tr("%1 - Warmgable").arg(qs(session_->job().number)));
}

void MainWindow::refresh_saved() {
    if (session_ == nullptr) return;
    if (!saver_->problem().isEmpty()) {
        job_page_->set_saved_text(tr("not saved"));
    } else if (session_->dirty()) {
        job_page_->set_saved_text(tr("saving soon"));
    } else if (saver_->saved_at().isValid()) {
        job_page_->set_saved_text(tr("saved %1").arg(saver_->saved_at().toString(QStringLiteral("HH:mm"))));
    } else {
        job_page_->set_saved_text(tr("saved %1").arg(day(session_->job().changed_at)));
    }
}

bool MainWindow::leave_equipment() {
    const int unsaved = desk_->equipment() == nullptr ? 0 : desk_->equipment()->unsaved();
    if (unsaved == 0) return true;
    QMessageBox box(QMessageBox::Question, tr("Equipment is not saved"),
                    tr("Items under Equipment with entries that are not saved: %1.").arg(number(unsaved)),
                    QMessageBox::NoButton, this);
    const QAbstractButton* drop = box.addButton(tr("Close without them"), QMessageBox::DestructiveRole);
    box.addButton(tr("Look at them"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == drop) {
        desk_->equipment()->forget_entries();
        return true;
    }
    back_to_desk();
    desk_->show_equipment_tab();
    return false;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    event->setAccepted(leave_job() && leave_equipment() && desk_->may_close());
}

}  // namespace wg::ui
