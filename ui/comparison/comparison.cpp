#include "ui/comparison/comparison.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/mark.h"
#include "ui/comparison/choice_plans.h"
#include "ui/comparison/compared_cell.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int head_lines = 3;  ///< labels of choices take two lines and a third for what they are

}  // namespace

Comparison::Comparison(QWidget* parent) : QWidget(parent) {
    auto* bar = new QHBoxLayout;
    bar->setSpacing(8);
    build_bar(bar);
    build_table();
    foot_ = new QLabel(this);
    foot_->setProperty("role", QStringLiteral("muted"));
    foot_->setWordWrap(true);
    stop_ = new QPushButton(tr("Stop planning"), this);
    stop_->hide();
    connect(stop_, &QPushButton::clicked, this, [this] {
        if (plans_ != nullptr) plans_->stop();
    });
    auto* foot = new QHBoxLayout;
    foot->addWidget(foot_, 1);
    foot->addWidget(stop_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(8);
    column->addLayout(bar);
    column->addWidget(table_, 1);
    column->addLayout(foot);
}

void Comparison::build_bar(QHBoxLayout* bar) {
    which_ = new QToolButton(this);
    which_->setPopupMode(QToolButton::InstantPopup);
    which_->setToolTip(tr("Which choices stand side by side, four at most"));
    which_menu_ = new QMenu(which_);
    which_->setMenu(which_menu_);
    bar->addWidget(which_);
    name_ = new TextField(tr("Name of the choice"), this);
    name_->setToolTip(tr("Name of the choice in the column you stand in"));
    name_->setMinimumWidth(96);
    bar->addWidget(name_, 1);
    show_ = new QPushButton(tr("Put on screen"), this);
    show_->setToolTip(tr("Work on this choice: all stages show it"));
    duplicate_ = new QPushButton(tr("Duplicate"), this);
    mark_ = new QPushButton(tr("Mark as chosen"), this);
    mark_->setToolTip(tr("The offer is made for the chosen one"));
    for (QPushButton* button : {show_, duplicate_, mark_})
        bar->addWidget(button);
    copy_ = new QToolButton(this);
    copy_->setText(tr("Copy"));
    copy_->setToolTip(tr("The whole table, to paste into a letter or a spreadsheet"));
    copy_->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(copy_);
    menu->addAction(tr("Copy as text"), this, [this] { copy(false); });
    menu->addAction(tr("Copy as CSV"), this, [this] { copy(true); });
    copy_->setMenu(menu);
    bar->addWidget(copy_);
    connect(name_, &TextField::committed, this, [this](const QString& text) {
        if (session_ != nullptr && !text.trimmed().isEmpty())
            rename_choice(*session_, selected(), text.trimmed().toStdString());
        refresh_bar();
    });
    connect(show_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr) session_->set_current_choice(selected());
    });
    connect(duplicate_, &QPushButton::clicked, this, [this] {
        if (session_ == nullptr) return;
        const std::string id = duplicate_choice(*session_, selected());
        if (plans_ != nullptr && !plans_->set_compared(id, true))
            Q_EMIT said(tr("Four are compared already: take one out to see the new one here."));
        select(id);
    });
    connect(mark_, &QPushButton::clicked, this, [this] {
        if (session_ != nullptr) mark_chosen(*session_, selected());
    });
}

void Comparison::build_table() {
    table_ = new QTableWidget(this);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setAlternatingRowColors(true);
    table_->setShowGrid(false);
    table_->setWordWrap(true);
    table_->setTabKeyNavigation(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->setItemDelegate(new ComparedCellDelegate(table_));
    table_->setAccessibleName(tr("Choices compared"));
    table_->setAccessibleDescription(tr("Arrow keys go from figure to figure; the buttons above act on the column"));
    QHeaderView* heads = table_->horizontalHeader();
    heads->setSectionResizeMode(QHeaderView::Stretch);
    heads->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter | Qt::Alignment(Qt::TextWordWrap));
    heads->setMinimumHeight(head_lines * heads->fontMetrics().lineSpacing() + 20);
    heads->setMinimumSectionSize(110);
    QHeaderView* sides = table_->verticalHeader();
    sides->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    sides->setMinimumSectionSize(28);
    sides->setSectionResizeMode(QHeaderView::ResizeToContents);
    connect(heads, &QHeaderView::sectionClicked, this,
            [this](int column) { table_->setCurrentCell(std::max(0, table_->currentRow()), column); });
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int, int column, int, int before) {
        if (column != before) refresh_bar();
    });
}

void Comparison::set_session(JobSession* session) {
    if (plans_ != nullptr) {
        plans_->want(this, {});
        disconnect(plans_, nullptr, this, nullptr);
    }
    session_ = session;
    plans_ = session != nullptr ? &ChoicePlans::of(*session) : nullptr;
    shown_.clear();
    if (plans_ != nullptr) connect(plans_, &ChoicePlans::changed, this, &Comparison::look);
    look();
}

void Comparison::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    look();
}

void Comparison::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (plans_ != nullptr) plans_->want(this, {});
}

/// Nothing is filled while nobody looks: a drag on another stage must not pay for this table.
void Comparison::look() {
    if (!isVisible()) return;
    const bool anew = shown_.empty();
    const std::string was = selected();
    shown_ = plans_ != nullptr ? plans_->compared() : std::vector<std::string>{};
    if (plans_ != nullptr) plans_->want(this, shown_);
    fill();
    const Choice* current = session_ != nullptr ? session_->current_choice() : nullptr;
    select(anew && current != nullptr ? current->id : was);
    refresh_bar();
}

std::string Comparison::selected() const {
    const int column = table_->currentColumn();
    return column >= 0 && column < static_cast<int>(shown_.size()) ? shown_[static_cast<std::size_t>(column)]
                                                                   : std::string();
}

void Comparison::select(const std::string& choice_id) {
    const auto at = std::find(shown_.begin(), shown_.end(), choice_id);
    if (shown_.empty() || choice_id == selected()) return;
    const int column = at == shown_.end() ? 0 : static_cast<int>(at - shown_.begin());
    table_->setCurrentCell(std::max(0, table_->currentRow()), column);
}

std::vector<ComparedChoice> Comparison::choices() const {
    std::vector<ComparedChoice> out;
    if (session_ == nullptr || plans_ == nullptr) return out;
    for (const std::string& id : plans_->compared()) {
        ComparedChoice one;
        one.choice = find_choice(session_->job(), id);
        one.site = &session_->job().site;
        one.label = one.choice != nullptr ? qs(one.choice->label) : QString();
        if (const ChoicePlan* made = plans_->plan_of(id)) {
            one.plan = made->plan.get();
            one.problem = made->problem;
        }
        out.push_back(one);
    }
    return out;
}

/// The chosen one when it is compared, else the first.
std::size_t Comparison::basis() const {
    const Choice* chosen = session_ != nullptr ? chosen_choice(session_->job()) : nullptr;
    const std::vector<std::string> ids = plans_ != nullptr ? plans_->compared() : std::vector<std::string>{};
    const auto at = chosen != nullptr ? std::find(ids.begin(), ids.end(), chosen->id) : ids.end();
    return at == ids.end() ? 0 : static_cast<std::size_t>(at - ids.begin());
}

QStringList Comparison::labels() const {
    QStringList out;
    for (const ComparedChoice& one : choices()) {
        const Choice* chosen = chosen_choice(session_->job());
        out += one.label + (one.choice == chosen && chosen != nullptr ? tr(" (chosen)") : QString());
    }
    return out;
}

void Comparison::fill() {
    fill_menu();
    if (session_ == nullptr) {
        table_->setRowCount(0);
        table_->setColumnCount(0);
        foot_->clear();
        stop_->hide();
        return;
    }
    fill_cells(compare(choices(), basis()));
    fill_heads();
    fill_foot();
}

void Comparison::fill_cells(const std::vector<ComparedRow>& rows) {
    const QSignalBlocker quiet(table_);
    // Wide enough for the longest name, which the header itself would cut.
    QFont heavy = table_->verticalHeader()->font();
    heavy.setWeight(QFont::DemiBold);
    int widest = 0;
    for (const ComparedRow& row : rows)
        widest = std::max(widest, QFontMetrics(heavy).horizontalAdvance(QStringLiteral("\u2260  ") + row.what));
    table_->verticalHeader()->setFixedWidth(widest + 20);
    table_->setRowCount(static_cast<int>(rows.size()));
    table_->setColumnCount(static_cast<int>(shown_.size()));
    const QStringList names = labels();
    for (int r = 0; r < static_cast<int>(rows.size()); ++r) {
        const ComparedRow& row = rows[static_cast<std::size_t>(r)];
        // The mark stands before the words: rows that differ are found without reading them.
        auto* side = new QTableWidgetItem((row.differs ? QStringLiteral("\u2260  ") : QString()) + row.what);
        side->setData(Qt::AccessibleTextRole, row.differs ? tr("%1, differs").arg(row.what) : row.what);
        if (row.differs) side->setToolTip(tr("The choices differ in this"));
        table_->setVerticalHeaderItem(r, side);
        for (int c = 0; c < static_cast<int>(row.cells.size()); ++c) {
            const ComparedCell& cell = row.cells[static_cast<std::size_t>(c)];
            auto* item = new QTableWidgetItem(cell.figure);
            item->setData(ComparedCellDelegate::small_print, cell.range);
            item->setData(ComparedCellDelegate::signed_change, cell.change);
            item->setData(ComparedCellDelegate::is_different, cell.differs);
            item->setData(ComparedCellDelegate::is_best, cell.best);
            item->setData(ComparedCellDelegate::is_known, cell.state == ComparedCell::State::known);
            QString said = tr("%1, %2: %3").arg(names.value(c), row.what, cell.words());
            if (!cell.change.isEmpty()) said += tr(", %1 against the one compared with").arg(cell.change);
            item->setData(Qt::AccessibleTextRole, said);
            item->setToolTip(said);
            table_->setItem(r, c, item);
        }
    }
}

void Comparison::fill_heads() {
    const std::vector<ComparedChoice> columns = choices();
    const Choice* chosen = chosen_choice(session_->job());
    const Choice* on_screen = session_->current_choice();
    for (int c = 0; c < static_cast<int>(columns.size()); ++c) {
        const ComparedChoice& one = columns[static_cast<std::size_t>(c)];
        QStringList is;
        if (one.choice == chosen) is += tr("chosen");
        if (one.choice == on_screen) is += tr("on screen");
        auto* head = new QTableWidgetItem(
            one.label + (is.isEmpty() ? QString() : QLatin1Char('\n') + is.join(QStringLiteral(", "))));
        head->setIcon(one.choice == chosen ? mark_icon(Mark::ready, current_theme()) : QIcon());
        head->setToolTip(one.label);
        table_->setHorizontalHeaderItem(c, head);
    }
}

void Comparison::fill_foot() {
    const std::vector<ComparedChoice> columns = choices();
    int left = 0;
    QStringList problems;
    for (const ComparedChoice& one : columns) {
        if (!one.problem.isEmpty()) problems += one.label + QStringLiteral(": ") + one.problem;
        left += one.plan == nullptr && one.problem.isEmpty() ? 1 : 0;
    }
    stop_->setVisible(left > 0 && !plans_->stopped());
    QString words;
    if (columns.empty()) {
        words = session_->job().choices.empty() ? tr("There is no choice yet. Propose one on the Layout stage.")
                                                : tr("Pick the choices to compare with the button on the left.");
    } else if (left > 0 && plans_->stopped()) {
        words = tr("Stopped, not planned: %1. Leave this view and come back to go on.").arg(number(left));
    } else if (left > 0) {
        words = tr("Working out the others: %1 left.").arg(number(left));
    } else if (!problems.isEmpty()) {
        words = problems.join(QLatin1Char('\n'));
    } else if (columns.size() == 1) {
        words =
            tr("One choice only. Duplicate it, then change the copy on the Layout stage: another collector, place or "
               "cylinder.");
    } else {
        words = tr("\u2260 and heavy print: differs from %1, signed figures count from it. All with the same weather, "
                   "draw-off and prices; ranges in small print.")
                    .arg(labels().value(static_cast<int>(basis())));
    }
    foot_->setText(words);
}

void Comparison::fill_menu() {
    which_menu_->clear();
    which_->setEnabled(session_ != nullptr && !session_->job().choices.empty());
    copy_->setEnabled(which_->isEnabled());
    const int all = session_ != nullptr ? static_cast<int>(session_->job().choices.size()) : 0;
    which_->setText(tr("Compared: %1 of %2").arg(number(static_cast<double>(shown_.size())), number(all)));
    if (session_ == nullptr) return;
    const bool full = shown_.size() >= ChoicePlans::most_compared;
    for (const Choice& choice : session_->job().choices) {
        const bool on = std::find(shown_.begin(), shown_.end(), choice.id) != shown_.end();
        QAction* action = which_menu_->addAction(qs(choice.label));
        action->setCheckable(true);
        action->setChecked(on);
        action->setEnabled(on || !full);
        if (!action->isEnabled()) action->setToolTip(tr("Four are compared already: take one out first"));
        connect(action, &QAction::triggered, this, [this, id = choice.id](bool checked) {
            // The menu that sent this is filled anew by it.
            QMetaObject::invokeMethod(
                this,
                [this, id, checked] {
                    if (plans_ != nullptr) plans_->set_compared(id, checked);
                },
                Qt::QueuedConnection);
        });
    }
    which_menu_->setToolTipsVisible(true);
}

void Comparison::refresh_bar() {
    const Choice* choice = session_ != nullptr ? find_choice(session_->job(), selected()) : nullptr;
    for (QWidget* one : std::initializer_list<QWidget*>{name_, show_, duplicate_, mark_})
        one->setEnabled(choice != nullptr);
    name_->set_value(choice != nullptr ? qs(choice->label) : QString());
    if (choice == nullptr) return;
    show_->setEnabled(choice != session_->current_choice());
    mark_->setEnabled(choice->id != session_->job().chosen_choice_id);
}

void Comparison::copy(bool csv) {
    const FigureTable table = figures();
    QApplication::clipboard()->setText(csv ? QString::fromUtf8(table.to_csv()) : table.to_text());
    Q_EMIT said(csv ? tr("Comparison copied as CSV") : tr("Comparison copied as text"));
}

FigureTable Comparison::figures() const {
    return table_of(compare(choices(), basis()), labels());
}

}  // namespace wg::ui
