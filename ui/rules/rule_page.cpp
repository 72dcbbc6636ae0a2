#include "ui/rules/rule_page.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/flow_layout.h"
#include "ui/common/format.h"
#include "ui/common/wide_column.h"
#include "ui/drawing/fields.h"
#include "ui/rules/rule_entry.h"
#include "ui/rules/rule_model.h"

namespace wg::ui {
namespace {

constexpr int rule_row_px = 32;

}  // namespace

RulePage::RulePage(store::Store& store, std::vector<std::string> program, QWidget* parent)
    : QWidget(parent), store_(store), program_(std::move(program)) {
    model_ = new RuleModel(this);
    state_ = new QLabel(this);
    state_->setWordWrap(true);
    state_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    line_ = new QLabel(this);
    line_->setWordWrap(true);
    QWidget* head = make_head();
    QWidget* tools = make_tools();
    make_table();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addWidget(head);
    column->addWidget(state_);
    column->addWidget(tools);
    column->addWidget(table_, 1);
    column->addWidget(line_);
    connect(model_, &RuleModel::refused, this, &RulePage::problem);
    connect(model_, &RuleModel::edited, this, &RulePage::refresh_state);
    reload();
}

QWidget* RulePage::make_head() {
    auto* head = new QWidget(this);
    // In a second line where the window is too narrow for all of them.
    auto* row = new FlowLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    choice_ = new CalmCombo(head);
    choice_->setAccessibleName(tr("Rule set"));
    choice_->setMinimumWidth(340);
    choice_->setMaximumWidth(460);
    const auto button = [&](const QString& words, void (RulePage::*ask)()) {
        auto* made = new QPushButton(words, head);
        connect(made, &QPushButton::clicked, this, ask);
        row->addWidget(made);
        return made;
    };
    row->addWidget(choice_);
    button(tr("New from this one"), &RulePage::ask_new);
    button(tr("Read a file"), &RulePage::ask_import);
    button(tr("Write a file"), &RulePage::ask_export);
    history_ = button(tr("Versions"), &RulePage::show_history);
    withdraw_ = button(tr("Withdraw"), &RulePage::ask_withdraw);
    discard_ = button(tr("Discard changes"), &RulePage::discard_changes);
    save_ = button(tr("Save as a version"), &RulePage::ask_save);
    save_->setProperty("role", QStringLiteral("primary"));
    connect(choice_, &QComboBox::activated, this, [this] {
        if (!choose(choice_->currentData().toString())) choice_->show_data(shown_id_);
    });
    return head;
}

QWidget* RulePage::make_tools() {
    auto* tools = new QWidget(this);
    search_ = new QLineEdit(tools);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(tr("Search by value, group or source; 'assumed' shows what is"));
    search_->setAccessibleName(tr("Search the values"));
    search_->setClearButtonEnabled(true);
    assumed_ = new QCheckBox(tr("Assumed"), tools);
    assumed_->setToolTip(tr("A caution goes with every plan. Taken away only once every value has a source"));
    standard_ = new QPushButton(tr("Use for new jobs"), tools);
    add_ = new QPushButton(tr("Add"), tools);
    auto* kinds = new QMenu(add_);
    for (const RuleFieldGroup& group : rule_groups()) {
        if (group.list.isEmpty()) continue;
        kinds->addAction(group.title, this, [this, kind = group.group] { add_item(kind); });
    }
    add_->setMenu(kinds);
    remove_ = new QPushButton(tr("Remove"), tools);
    remove_->setToolTip(tr("The tax rate, restriction, service or leak limit of the row"));
    auto* row = new QHBoxLayout(tools);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(search_, 1);
    for (QWidget* one : std::initializer_list<QWidget*>{assumed_, standard_, add_, remove_})
        row->addWidget(one);
    connect(search_, &QLineEdit::textChanged, model_, &RuleModel::set_words);
    connect(assumed_, &QCheckBox::clicked, this, [this](bool on) { set_assumed(on); });
    connect(standard_, &QPushButton::clicked, this, [this] { use_for_new_jobs(); });
    connect(remove_, &QPushButton::clicked, this, [this] { model_->remove_item_of(table_->currentIndex().row()); });
    return tools;
}

void RulePage::make_table() {
    table_ = new QTableView(this);
    table_->setAccessibleName(tr("Values of the rule set"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(rule_row_px);
    auto* entry = new RuleEntry(table_);
    table_->setItemDelegate(entry);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionResizeMode(QHeaderView::Interactive);
    const std::pair<int, int> widths[] = {{RuleModel::column_group, 128},
                                          {RuleModel::column_value, 224},
                                          {RuleModel::column_figure, 180},
                                          {RuleModel::column_unit, 92},
                                          {RuleModel::column_state, 100}};
    for (const auto& [column, width] : widths)
        table_->setColumnWidth(column, width);
    keep_wide(*table_, RuleModel::column_source, 280);
    connect(entry, &RuleEntry::judged, this, &RulePage::tell_range);
    connect(entry, &QAbstractItemDelegate::closeEditor, this, [this] { tell_range(); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        tell_range();
        remove_->setEnabled(current() != nullptr && current()->own && model_->is_item(table_->currentIndex().row()));
    });
    connect(model_, &QAbstractItemModel::modelReset, this, [this] {
        give_words_room();
        tell_range();
        remove_->setEnabled(false);
    });
}

// Words of a rule have neither unit nor source: they may lie over both columns.
void RulePage::give_words_room() {
    table_->clearSpans();
    for (int row = 0; row < model_->rowCount(); ++row) {
        const RuleField& field = *model_->row_at(row)->field;
        if (field.kind == RuleKind::text || field.kind == RuleKind::names)
            table_->setSpan(row, RuleModel::column_figure, 1, RuleModel::column_state - RuleModel::column_figure);
    }
}

void RulePage::tell_range(const QString& typed_problem) {
    const RuleRow* row = model_->row_at(table_->currentIndex().row());
    const bool wrong = !typed_problem.isEmpty();
    const QString role = wrong ? QStringLiteral("stop") : QStringLiteral("muted");
    if (line_->property("role") != role) {
        line_->setProperty("role", role);
        line_->style()->unpolish(line_);  // the role has another look
        line_->style()->polish(line_);
    }
    if (row == nullptr) {
        line_->setText(tr("Choose a value to see its range and meaning."));
    } else if (wrong) {
        line_->setText(tr("\u25b2 %1: %2.").arg(row->field->label, typed_problem));
    } else {
        line_->setText(QStringLiteral("%1, %2: %3").arg(row->group_name, row->field->label, range_words(*row->field)));
    }
}

bool RulePage::tell(const std::vector<Problem>& problems) {
    if (!problems.empty()) Q_EMIT problem(qs(text_of(problems)));
    return problems.empty();
}

bool RulePage::is_programs(const QString& id) const {
    return std::any_of(entries_.begin(), entries_.end(), [&](const Entry& e) { return !e.own && e.set.id() == id; });
}

// By id, as plans take it (core/plan/own_rules.h).
QString RulePage::programs_first() const {
    QString first;
    for (const Entry& entry : entries_)
        if (!entry.own && (first.isEmpty() || entry.set.id() < first)) first = entry.set.id();
    return first;
}

void RulePage::read_sets() {
    entries_.clear();
    const store::RuleBook book(store_);
    const auto chosen = book.for_new_jobs();
    for_new_jobs_ = chosen.ok() ? qs(chosen.value()) : QString();
    const auto sets = book.sets();
    tell(sets.ok() ? std::vector<Problem>{} : sets.problems());
    for (const store::RuleSetVersion& version : sets.ok() ? sets.value() : std::vector<store::RuleSetVersion>{}) {
        const auto content = book.content(version.id, version.version);
        if (!content.ok()) {
            tell(content.problems());
            continue;
        }
        // Saved by rules that have changed since: told, and kept in the store as it is.
        Result<RuleDraft> read = RuleDraft::read(content.value(), "rule set '" + version.id + "'");
        if (!read.ok()) {
            tell(read.problems());
            continue;
        }
        entries_.push_back({std::move(read).value(), true, version});
    }
    for (const std::string& file : program_) {
        Result<RuleDraft> read = RuleDraft::read(file, "a rule set of the program");
        if (read.ok() && entry_of(read.value().id()) == nullptr)
            entries_.push_back({std::move(read).value(), false, {}});
    }
}

void RulePage::fill_choice() {
    const QSignalBlocker quiet(choice_);
    choice_->clear();
    for (const Entry& entry : entries_) {
        QString words = entry.set.label();
        if (!entry.own) {
            words += tr(" (comes with the program)");
        } else if (entry.version.withdrawn) {
            words += tr(" (withdrawn)");
        }
        choice_->addItem(words, entry.set.id());
    }
    choice_->show_data(shown_id_);
}

void RulePage::reload() {
    const bool kept = has_changes();
    read_sets();
    if (current() == nullptr) shown_id_ = entries_.empty() ? QString() : entries_.front().set.id();
    fill_choice();
    if (kept) {
        refresh_state();
    } else if (const Entry* entry = current()) {
        show_entry(*entry);
    } else {
        refresh_state();
    }
}

RulePage::Entry* RulePage::entry_of(const QString& id) {
    for (Entry& entry : entries_)
        if (entry.set.id() == id) return &entry;
    return nullptr;
}

const RulePage::Entry* RulePage::current() const {
    return const_cast<RulePage*>(this)->entry_of(shown_id_);
}

void RulePage::show_entry(const Entry& entry) {
    shown_id_ = entry.set.id();
    base_ = entry.version.version;
    model_->set_draft(entry.set, entry.own);
    choice_->show_data(shown_id_);
    refresh_state();
}

bool RulePage::choose(const QString& id) {
    if (id == shown_id_) return true;
    if (has_changes()) {
        Q_EMIT problem(
            tr("The rule set on screen has changes. Save them as a version, or discard them, then change the set."));
        return false;
    }
    const Entry* entry = entry_of(id);
    if (entry == nullptr) return false;
    show_entry(*entry);
    return true;
}

bool RulePage::has_changes() const {
    const Entry* entry = current();
    return entry != nullptr && entry->own && model_->draft().set() != entry->set.set();
}

QString RulePage::state_words() const {
    return state_->text();
}

QString RulePage::line_words() const {
    return line_->text();
}

void RulePage::refresh_state() {
    const Entry* entry = current();
    const bool own = entry != nullptr && entry->own;
    const bool changed = has_changes();
    const bool withdrawn = own && entry->version.withdrawn;
    save_->setEnabled(own && (changed || withdrawn));
    discard_->setEnabled(changed);
    history_->setEnabled(own);
    withdraw_->setEnabled(own && !withdrawn && !changed);
    add_->setEnabled(own);
    remove_->setEnabled(own && model_->is_item(table_->currentIndex().row()));
    assumed_->setEnabled(own);
    assumed_->setChecked(entry != nullptr && model_->draft().assumed());
    if (entry == nullptr) {
        standard_->setEnabled(false);
        state_->setText(tr("There is no rule set."));
        return;
    }
    const Entry* chosen = for_new_jobs_.isEmpty() ? nullptr : entry_of(for_new_jobs_);
    const bool chosen_holds = chosen != nullptr && !chosen->version.withdrawn;
    const bool standard = chosen_holds ? for_new_jobs_ == shown_id_ : programs_first() == shown_id_;
    standard_->setEnabled(!standard && !withdrawn);
    const RuleDraft& draft = model_->draft();
    const int values = static_cast<int>(draft.rows().size());
    const int assumed = draft.count_assumed();
    QStringList words{assumed == 0 ? tr("%1 values, all with a source.").arg(number(values))
                                   : tr("%1 values, %2 of them assumed.").arg(number(values), number(assumed))};
    if (draft.assumed()) words << tr("\u25c6 Assumed: a caution goes with every plan.");
    if (standard) words << tr("New jobs use this set.");
    if (!own) {
        words << tr("It comes with the program and is not changed: make a set of the firm's own from it.");
    } else {
        words << tr("Version %1, saved %2%3.")
                     .arg(number(static_cast<int>(entry->version.version)), day(entry->version.saved_at),
                          entry->version.saved_by.empty() ? QString() : tr(" by %1").arg(qs(entry->version.saved_by)));
        if (entry->version.came) words << tr("Came with a job from another machine.");
        if (withdrawn) words << tr("Withdrawn: jobs that name it go on with it, others do not see it.");
        if (changed) words << tr("Changes are not saved yet.");
        if (changed && base_ != entry->version.version)
            words << tr("\u25b2 The changes began with version %1: discard them to see what was saved since.")
                         .arg(number(static_cast<int>(base_)));
        const std::vector<Problem> problems = changed ? draft.problems() : std::vector<Problem>{};
        if (!problems.empty()) {
            words << (problems.size() == 1
                          ? tr("\u25b2 1 problem:")
                          : tr("\u25b2 %1 problems, the first:").arg(number(static_cast<int>(problems.size()))));
            words << qs(problems.front().text());
        }
    }
    state_->setText(words.join(QLatin1Char(' ')));
}

}  // namespace wg::ui
