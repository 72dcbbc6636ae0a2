#include "ui/rules/rule_page.h"

#include <QCheckBox>
#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/calm_combo.h"
#include "ui/common/format.h"
#include "ui/common/versions_head.h"
#include "ui/common/versions_view.h"
#include "ui/common/wide_column.h"
#include "ui/rules/rule_entry.h"
#include "ui/rules/rule_model.h"

namespace wg::ui {
namespace {

constexpr int rule_row_px = 32;

Instant rules_now() {
    return {QDateTime::currentSecsSinceEpoch()};
}

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
    connect(model_, &RuleModel::edited, this, &RulePage::taken);
    reload();
}

QWidget* RulePage::make_head() {
    head_ = new VersionsHead({tr("Rule set"), tr("New rule set"), tr("Withdraw the rule set"), QStringLiteral("rules"),
                              [] { return tr("Rules of the firm"); }},
                             this);
    connect(head_, &VersionsHead::chosen, this, [this](const QString& id) {
        if (!choose(id)) head_->choice()->show_data(shown_id_);
    });
    connect(head_, &VersionsHead::new_asked, this, &RulePage::make_own);
    connect(head_, &VersionsHead::read_asked, this, &RulePage::ask_import);
    connect(head_, &VersionsHead::write_asked, this, &RulePage::ask_export);
    connect(head_, &VersionsHead::versions_asked, this, [this] { versions()->exec(); });
    connect(head_, &VersionsHead::withdraw_asked, this, [this](const QString& why) { withdraw(why, rules_now()); });
    connect(head_, &VersionsHead::discard_asked, this, &RulePage::discard_changes);
    connect(head_, &VersionsHead::save_asked, this, [this](const QString& note) { save_version(note, rules_now()); });
    return head_;
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
    std::vector<VersionsHead::Line> lines;
    lines.reserve(entries_.size());
    for (const Entry& entry : entries_)
        lines.push_back({entry.set.id(), entry.set.label(), entry.own, entry.version.withdrawn});
    head_->show_lines(lines, shown_id_);
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
    head_->choice()->show_data(shown_id_);
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

}  // namespace wg::ui
