// The main window's menus, papers and looks.

#include <QActionGroup>
#include <QApplication>
#include <QDate>
#include <QMenu>
#include <QMenuBar>
#include <algorithm>

#include "ui/common/notice_bar.h"
#include "ui/documents/session_input.h"
#include "ui/offer/firm_settings.h"
#include "ui/rating/rating_dialog.h"
#include "ui/window/about.h"
#include "ui/window/job_page.h"
#include "ui/window/main_window.h"
#include "ui/window/paper_preview.h"
#include "ui/window/settings.h"

namespace wg::ui {

void MainWindow::make_file_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&File"));
    const auto add = [menu, this](const QString& words, const QKeySequence& keys, auto&& slot) {
        QAction* action = menu->addAction(words, this, slot);
        action->setShortcut(keys);
        return action;
    };
    add(tr("Start a &job"), QKeySequence::New, [this] { start_job(); });
    add(tr("&Open a job file\u2026"), QKeySequence::Open, [this] { open_file(); });
    menu->addSeparator();
    need_job_.append(add(tr("&Save"), QKeySequence::Save, [this] { save(); }));
    need_job_.append(
        add(tr("Save job file &as\u2026"), QKeySequence(QStringLiteral("Ctrl+Shift+S")), [this] { save_file_as(); }));
    need_job_.append(add(tr("&Export job\u2026"), QKeySequence(QStringLiteral("Ctrl+E")), [this] { export_job(); }));
    need_job_.append(
        add(tr("&History of the job\u2026"), QKeySequence(QStringLiteral("Ctrl+H")), [this] { show_history(); }));
    need_job_.append(
        add(tr("Go back to the &desk"), QKeySequence(QStringLiteral("Ctrl+D")), [this] { back_to_desk(); }));
    menu->addSeparator();
    need_job_.append(
        add(tr("&Weather year\u2026"), QKeySequence(QStringLiteral("Ctrl+Shift+W")), [this] { show_weather(); }));
    need_job_.append(add(tr("Plan with a weather &file\u2026"), {}, [this] { choose_weather_file(); }));
    menu->addSeparator();
    need_job_.append(add(tr("Preview or print the &quote\u2026"), QKeySequence(QStringLiteral("Ctrl+P")),
                         [this] { ask_for_paper(Paper::quote); }));
    need_job_.append(add(tr("Preview or print the &install sheet\u2026"), QKeySequence(QStringLiteral("Ctrl+Shift+P")),
                         [this] { ask_for_paper(Paper::install_sheet); }));
    need_job_.append(
        add(tr("Preview or print the s&urvey sheet\u2026"), {}, [this] { ask_for_paper(Paper::survey_sheet); }));
    need_job_.append(add(tr("Preview or print the w&orkings\u2026"), {}, [this] { ask_for_paper(Paper::workings); }));
    need_job_.append(add(tr("Preview or print the &record\u2026"), {}, [this] { ask_for_paper(Paper::record); }));
    need_job_.append(
        add(tr("Preview or print the ser&vice sheet\u2026"), {}, [this] { ask_for_paper(Paper::service_sheet); }));
    need_job_.append(
        add(tr("Preview or print the hand-over &booklet\u2026"), {}, [this] { ask_for_paper(Paper::booklet); }));
    menu->addSeparator();
    add(tr("&Quit"), QKeySequence(QStringLiteral("Ctrl+Q")), [this] { close(); });
}

void MainWindow::make_edit_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = undo_group_.createUndoAction(this, tr("Undo"));
    undo->setShortcut(QKeySequence(QStringLiteral("Ctrl+Z")));
    QAction* redo = undo_group_.createRedoAction(this, tr("Redo"));
    redo->setShortcut(QKeySequence(QStringLiteral("Ctrl+Shift+Z")));
    menu->addAction(undo);
    menu->addAction(redo);
}

void MainWindow::make_view_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&View"));
    QAction* workings = menu->addAction(tr("All &workings"), this, [this] { job_page_->show_workings(); });
    workings->setShortcut(QKeySequence(QStringLiteral("Ctrl+K")));
    need_job_.append(workings);
    menu->addSeparator();
    themes_ = new QActionGroup(this);
    const std::pair<ThemeKind, QString> kinds[] = {{ThemeKind::light, tr("&Light")},
                                                   {ThemeKind::dark, tr("&Dark")},
                                                   {ThemeKind::sunlight, tr("&Sunlight, black on white")}};
    for (const auto& [kind, words] : kinds) {
        QAction* action = menu->addAction(words);
        action->setCheckable(true);
        action->setChecked(current_theme().kind == kind);
        themes_->addAction(action);
        connect(action, &QAction::triggered, this, [this, kind = kind] {
            set_theme(kind);
            if (const Result<bool> kept = keep_theme(*store_, kind); !kept.ok()) {
                notice().add(Mark::caution, QString::fromStdString(text_of(kept.problems())));
            }
        });
    }
}

void MainWindow::make_equipment_menu() {
    QMenu* menu = menuBar()->addMenu(tr("E&quipment"));
    QAction* action = menu->addAction(tr("&Rating test and fit to data sheet\u2026"), this, [this] { show_rating(); });
    action->setShortcut(QKeySequence(QStringLiteral("Ctrl+R")));
}

void MainWindow::show_rating() {
    RatingSet first;
    if (session_ != nullptr) {
        const Demand& demand = session_->job().demand;
        first.set_point_c = demand.set_point_c;
        first.hysteresis_k = demand.hysteresis_k;
        if (const Choice* choice = session_->current_choice()) {
            first.collector_id = choice->collector_model;
            first.block_id = choice->block_model;
            first.cylinder_id = choice->cylinder_model;
            first.collectors = static_cast<int>(std::clamp<std::size_t>(choice->placements.size(), 1, 8));
        }
    }
    RatingDialog(reference_, first, this).exec();
}

void MainWindow::make_help_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    menu->addAction(tr("&About and cautions"), this, [this] { show_about(this); });
}

void MainWindow::set_theme(ThemeKind kind) {
    if (auto* application = qobject_cast<QApplication*>(QCoreApplication::instance())) apply_theme(*application, kind);
}

void MainWindow::ask_for_paper(Paper paper) {
    if (session_ == nullptr) return;
    wanted_paper_ = paper;
    show_paper_when_settled();
}

void MainWindow::show_paper_when_settled() {
    if (!wanted_paper_ || session_ == nullptr || session_->planning()) return;
    const Paper paper = *wanted_paper_;
    // The survey sheet goes out before anything is planned; the others show a plan or nothing.
    if (paper != Paper::survey_sheet && !session_->settled()) {
        wanted_paper_.reset();
        job_page_->notice().add(Mark::caution, tr("There is no plan to print yet. %1").arg(session_->plan_problem()));
        return;
    }
    wanted_paper_.reset();
    PaperInput input;
    input.job = session_->job();
    if (session_->plan() != nullptr) input.plan = *session_->plan();
    input.firm = read_firm(store_.get());
    input.printed_on = QDate::currentDate();
    input.picture = [this](const std::string& sha256) {
        const auto bytes = store_ == nullptr ? Result<std::string>(std::string()) : store_->photograph(sha256);
        return bytes.ok() ? picture_for_paper(bytes.value()) : QImage();
    };
    // Later, not inside a signal of the session: the dialog runs its own event loop.
    QMetaObject::invokeMethod(
        this, [this, paper, input] { PaperPreview(paper, input, this).exec(); }, Qt::QueuedConnection);
}

}  // namespace wg::ui
