#include "ui/fitting/whole_record_page.h"

#include <QDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/empty_pane.h"
#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/photo_shelf.h"
#include "ui/fitting/chain_words.h"
#include "ui/fitting/reading_words.h"
#include "ui/fitting/record_model.h"
#include "ui/fitting/verdict_list.h"

namespace wg::ui {
namespace {

constexpr int least_for_both_px = 760;
constexpr QSize picture_size(720, 480);

QString role_of(Mark mark) {
    switch (mark) {
        case Mark::stop: return QStringLiteral("stop");
        case Mark::caution: return QStringLiteral("caution");
        case Mark::ready: return QStringLiteral("ready");
        default: return QStringLiteral("muted");
    }
}

}  // namespace

WholeRecordPage::WholeRecordPage(QWidget* parent) : QWidget(parent) {
    auto* head = new QGridLayout;
    head->setHorizontalSpacing(8);
    head->setVerticalSpacing(4);
    head->setColumnStretch(1, 1);
    const auto state_line = [&](QLabel*& sign, QLabel*& words, const QString& name) {
        sign = new QLabel(this);
        words = new QLabel(this);
        words->setWordWrap(true);
        words->setTextInteractionFlags(Qt::TextSelectableByMouse);
        words->setAccessibleName(name);
        const int row = head->rowCount();
        head->addWidget(sign, row, 0, Qt::AlignTop);
        head->addWidget(words, row, 1);
    };
    state_line(chain_sign_, chain_, tr("Chain of the record"));
    state_line(plan_sign_, plan_, tr("Plans the entries were made for"));

    auto* split = new QSplitter(Qt::Horizontal, this);
    auto* left = new QWidget(split);
    auto* tools = new QWidget(left);
    buttons_ = new FlowLayout(tools);
    buttons_->setContentsMargins(0, 0, 0, 0);
    buttons_->setSpacing(8);
    correct_ = new QPushButton(tr("Correct this entry"), tools);
    correct_->setToolTip(tr("Makes a new entry that names the old one; the old one stays in the record"));
    picture_ = new QPushButton(tr("Show the picture"), tools);
    picture_->setToolTip(tr("Photograph or signature of the chosen entry"));
    buttons_->addWidget(correct_);
    buttons_->addWidget(picture_);
    model_ = new RecordModel(this);
    view_ = new QTableView(left);
    view_->setModel(model_);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setShowGrid(false);
    view_->setAlternatingRowColors(true);
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(40);
    view_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    view_->setAccessibleName(tr("Record, newest first"));
    stack_ = new QStackedWidget(left);
    auto* none = new EmptyPane(tr("No entry yet"), tr("They stand here, newest first, and stay."),
                               tr("Enter the pressure hold"), stack_);
    stack_->addWidget(none);
    stack_->addWidget(view_);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addWidget(tools);
    column->addWidget(stack_, 1);
    right_ = new QWidget(split);
    QWidget* right = right_;
    auto* title = new QLabel(tr("What the readings say"), right);
    title->setProperty("role", QStringLiteral("title"));
    verdicts_ = new VerdictList(right);
    auto* right_column = new QVBoxLayout(right);
    right_column->setContentsMargins(8, 0, 0, 0);
    right_column->setSpacing(8);
    right_column->addWidget(title);
    right_column->addWidget(verdicts_, 1);
    split->addWidget(left);
    split->addWidget(right);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({600, 380});
    split->setChildrenCollapsible(false);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(12, 12, 12, 12);
    page->setSpacing(8);
    page->addLayout(head);
    page->addWidget(split, 1);

    connect(none, &EmptyPane::step_asked, this, &WholeRecordPage::first_entry_asked);
    connect(verdicts_, &VerdictList::working_asked, this, &WholeRecordPage::working_asked);
    connect(view_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &WholeRecordPage::refresh_buttons);
    connect(view_, &QTableView::doubleClicked, this, [this] {
        if (picture_->isEnabled()) show_picture();
    });
    connect(correct_, &QPushButton::clicked, this, [this] {
        if (const Reading* reading = selected()) Q_EMIT correct_asked(*reading);
    });
    connect(picture_, &QPushButton::clicked, this, &WholeRecordPage::show_picture);
    refresh();
}

void WholeRecordPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // On a small screen the entries need the width; each part of the day's work shows its own verdicts.
    right_->setVisible(width() >= least_for_both_px);
}

void WholeRecordPage::add_button(QPushButton* button) {
    buttons_->addWidget(button);
}

void WholeRecordPage::set_session(JobSession* session) {
    session_ = session;
    shown_entries_ = 0;
    refresh();
}

void WholeRecordPage::set_shelf(PhotoShelf* shelf) {
    shelf_ = shelf;
}

QString WholeRecordPage::state_text() const {
    return chain_->text() + QLatin1Char('\n') + plan_->text();
}

void WholeRecordPage::refresh() {
    const std::vector<Reading> none;
    const std::vector<Reading>& record = session_ == nullptr ? none : session_->job().record;
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    const std::string mark = plan == nullptr ? std::string() : plan->plan_mark;
    const auto say = [](QLabel& sign, QLabel& label, Mark shape, const QString& text) {
        sign.setPixmap(mark_icon(shape, current_theme(), 20).pixmap(20, 20));
        sign.setVisible(!text.isEmpty());
        label.setProperty("role", role_of(shape));
        label.style()->unpolish(&label);
        label.style()->polish(&label);
        label.setText(text);
        label.setVisible(!text.isEmpty());
    };
    const ChainWords chain = chain_words(record);
    say(*chain_sign_, *chain_, chain.mark, chain.lines.join(QLatin1Char('\n')));
    const std::int64_t revision = session_ == nullptr ? 0 : session_->job().revision;
    const QString other = other_plan_words(record, mark, revision);
    const bool told = std::any_of(record.begin(), record.end(), [](const Reading& r) { return !r.plan_mark.empty(); });
    const QString same = record.empty() || mark.empty() ? QString()
                         : told ? tr("Made for the plan as it is: revision %1, mark %2").arg(revision).arg(qs(mark))
                                : tr("For which plan they were made is not told; it is now revision %1, mark %2")
                                      .arg(revision)
                                      .arg(qs(mark));
    say(*plan_sign_, *plan_,
        !other.isEmpty() ? Mark::caution
        : told           ? Mark::ready
                         : Mark::note,
        other.isEmpty() ? same : other);
    // A new model forgets what was chosen; entries only come on top.
    const Reading* was = selected();
    const std::string chosen = was == nullptr ? std::string() : was->id;
    const QPoint scrolled(view_->horizontalScrollBar()->value(), view_->verticalScrollBar()->value());
    model_->set_record(record);
    model_->set_plan_mark(mark);
    const int broken = model_->first_broken_row();
    view_->setColumnHidden(RecordModel::column_chain, broken < 0);
    for (int row = 0; row < model_->rowCount(); ++row)
        if (!chosen.empty() && model_->reading_at(row)->id == chosen) view_->selectRow(row);
    if (record.size() != shown_entries_) {
        shown_entries_ = record.size();
        view_->resizeColumnsToContents();
        for (const int column : {RecordModel::column_note, RecordModel::column_instrument, RecordModel::column_value})
            view_->setColumnWidth(column, std::min(view_->columnWidth(column), 260));
        // Long names of readings are cut before their values are.
        view_->setColumnWidth(RecordModel::column_kind, std::min(view_->columnWidth(RecordModel::column_kind), 210));
    }
    view_->horizontalScrollBar()->setValue(scrolled.x());
    view_->verticalScrollBar()->setValue(scrolled.y());
    // What is wrong is looked for first, however far down it stands.
    if (broken >= 0 && chosen.empty()) {
        view_->selectRow(broken);
        view_->scrollTo(model_->index(broken, RecordModel::column_number), QAbstractItemView::PositionAtCenter);
    }
    stack_->setCurrentIndex(record.empty() ? 0 : 1);
    verdicts_->set_assessments(plan == nullptr ? std::vector<commissioning::Assessment>() : plan->assessments,
                               entry_breaks(record));
    refresh_buttons();
}

const Reading* WholeRecordPage::selected() const {
    const QModelIndexList rows = view_->selectionModel()->selectedRows();
    return rows.isEmpty() ? nullptr : model_->reading_at(rows.front().row());
}

void WholeRecordPage::refresh_buttons() {
    const Reading* reading = selected();
    correct_->setEnabled(reading != nullptr);
    picture_->setEnabled(reading != nullptr && !reading->attachment_sha256.empty() && shelf_ != nullptr);
}

void WholeRecordPage::show_picture() {
    const Reading* reading = selected();
    if (reading == nullptr || shelf_ == nullptr || reading->attachment_sha256.empty()) return;
    auto* dialog = new QDialog(window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(value_words(*reading));
    auto* label = new QLabel(tr("The picture is being read"), dialog);
    label->setAlignment(Qt::AlignCenter);
    label->setMinimumSize(320, 200);
    auto* words = new QLabel(QStringLiteral("%1, %2").arg(qs(reading->taken_by), qs(reading->taken_at)), dialog);
    words->setProperty("role", QStringLiteral("muted"));
    auto* column = new QVBoxLayout(dialog);
    column->addWidget(label, 1);
    column->addWidget(words);
    const std::string sha256 = reading->attachment_sha256;
    const auto fill = [label, dialog, sha256, shelf = shelf_] {
        if (shelf == nullptr) return;
        const QImage image = shelf->picture(sha256);
        if (!image.isNull()) {
            label->setPixmap(
                QPixmap::fromImage(image.scaled(picture_size, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
            dialog->adjustSize();
        } else if (const QString problem = shelf->problem(sha256); !problem.isEmpty()) {
            label->setText(problem);
        }
    };
    connect(shelf_, &PhotoShelf::loaded, label, [fill, sha256](const QString& loaded) {
        if (loaded == qs(sha256)) fill();
    });
    fill();
    dialog->show();
}

}  // namespace wg::ui
