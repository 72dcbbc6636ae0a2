#include "ui/rules/rule_model.h"

#include <algorithm>

namespace wg::ui {
namespace {

constexpr int longest_source = 2000;  // as the reader of the format has it

bool is_figure(const RuleField& field) {
    return field.kind == RuleKind::number || field.kind == RuleKind::whole;
}

}  // namespace

RuleModel::RuleModel(QObject* parent) : QAbstractTableModel(parent) {}

void RuleModel::set_draft(RuleDraft draft, bool editable) {
    beginResetModel();
    draft_ = std::move(draft);
    editable_ = editable;
    find();
    endResetModel();
}

void RuleModel::set_words(const QString& words) {
    beginResetModel();
    words_ = words.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    find();
    endResetModel();
}

void RuleModel::find() {
    shown_.clear();
    for (RuleRow& row : draft_.rows()) {
        QStringList hay;
        for (const int column : {column_group, column_value, column_figure, column_source, column_state})
            hay << text_at(row, column);
        const QString all = hay.join(QLatin1Char('\n')).toLower();
        if (std::all_of(words_.begin(), words_.end(), [&all](const QString& word) { return all.contains(word); }))
            shown_.push_back(std::move(row));
    }
}

void RuleModel::set_assumed(bool assumed) {
    draft_.put({QStringLiteral("assumed")}, assumed);
    Q_EMIT edited();
}

int RuleModel::add_item(RuleGroup group) {
    for (const RuleFieldGroup& one : rule_groups()) {
        if (one.group != group || one.list.isEmpty()) continue;
        beginResetModel();
        words_.clear();
        const QStringList first = draft_.add_item(one);
        find();
        endResetModel();
        Q_EMIT edited();
        return row_of(first);
    }
    return -1;
}

bool RuleModel::is_item(int row) const {
    const RuleRow* at = row_at(row);
    return at != nullptr && at->item >= 0;
}

bool RuleModel::remove_item_of(int row) {
    if (!is_item(row) || !editable_) return false;
    const RuleRow at = *row_at(row);
    beginResetModel();
    draft_.remove_item(*at.group, at.item);
    find();
    endResetModel();
    Q_EMIT edited();
    return true;
}

const RuleRow* RuleModel::row_at(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &shown_[static_cast<std::size_t>(row)];
}

int RuleModel::row_of(const QStringList& path) const {
    const auto found =
        std::find_if(shown_.begin(), shown_.end(), [&path](const RuleRow& row) { return row.path == path; });
    return found == shown_.end() ? -1 : static_cast<int>(found - shown_.begin());
}

int RuleModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int RuleModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant RuleModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((section == column_figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) {
        if (section == column_source) return tr("Standard, annex, guide or law that the value is from");
        if (section == column_state) return tr("Values without a source, or whose source says so, are assumed");
        return {};
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_group: return tr("Group");
        case column_value: return tr("Value");
        case column_figure: return tr("Figure");
        case column_unit: return tr("Unit");
        case column_source: return tr("Source");
        case column_state: return tr("State");
        default: return {};
    }
}

QString RuleModel::text_at(const RuleRow& row, int column) const {
    switch (column) {
        case column_group: return row.group_name;
        case column_value: return row.field->label;
        case column_figure: return value_words(*row.field, draft_.at(row.path));
        case column_unit: return row.field->unit;
        case column_source: return draft_.source_words(row);
        case column_state: return draft_.is_assumed(row) ? tr("\u25c6 assumed") : QString();
        default: return {};
    }
}

QVariant RuleModel::data(const QModelIndex& index, int role) const {
    const RuleRow* row = index.isValid() ? row_at(index.row()) : nullptr;
    if (row == nullptr) return {};
    switch (role) {
        case Qt::DisplayRole: return text_at(*row, index.column());
        case Qt::ToolTipRole:
            return index.column() == column_value ? range_words(*row->field) : text_at(*row, index.column());
        case Qt::EditRole:
            return index.column() == column_figure ? value_entry(*row->field, draft_.at(row->path))
                                                   : text_at(*row, index.column());
        case Qt::TextAlignmentRole:
            return QVariant(
                (index.column() == column_figure && is_figure(*row->field) ? Qt::AlignRight : Qt::AlignLeft) |
                Qt::AlignVCenter);
        default: return {};
    }
}

bool RuleModel::may_edit(const RuleRow& row, int column) const {
    if (!editable_) return false;
    return column == column_figure ||
           (column == column_source && !RuleDraft::source_of(row).none() && !draft_.at(row.path).isUndefined());
}

Qt::ItemFlags RuleModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    const RuleRow* row = index.isValid() ? row_at(index.row()) : nullptr;
    if (row != nullptr && may_edit(*row, index.column())) flags |= Qt::ItemIsEditable;
    return flags;
}

QString RuleModel::judged(const QModelIndex& index, const QString& text) const {
    const RuleRow* row = index.isValid() ? row_at(index.row()) : nullptr;
    if (row == nullptr) return {};
    if (index.column() == column_figure) return entered_value(*row->field, text).problem;
    if (text.size() > longest_source) return tr("the source is longer than %1 characters").arg(longest_source);
    const RuleSource source = RuleDraft::source_of(*row);
    if (source.own.isEmpty() && text.trimmed().isEmpty()) return tr("a source is asked for");
    return {};
}

bool RuleModel::enter_source(const RuleRow& row, const QString& text) {
    const RuleSource source = RuleDraft::source_of(row);
    const QString entry = text.trimmed();
    if (source.own.isEmpty()) {
        draft_.put(source.shared, entry);
    } else if (entry.isEmpty() || entry == draft_.at(source.shared).toString()) {
        draft_.put(source.own, QJsonValue(QJsonValue::Undefined));  // the group's again
    } else {
        draft_.put(source.own, entry);
    }
    return true;
}

bool RuleModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const RuleRow* at = index.isValid() ? row_at(index.row()) : nullptr;
    if (at == nullptr || role != Qt::EditRole || !may_edit(*at, index.column())) return false;
    const RuleRow row = *at;
    const QString text = value.toString();
    if (text == data(index, Qt::EditRole).toString()) return true;
    if (const QString problem = judged(index, text); !problem.isEmpty()) {
        Q_EMIT refused(tr("%1, %2: %3.").arg(row.group_name, row.field->label, problem));
        return false;
    }
    if (index.column() == column_source) {
        enter_source(row, text);
    } else {
        draft_.put(row.path, entered_value(*row.field, text).value);
    }
    // A source may be that of other rows, too.
    Q_EMIT dataChanged(this->index(0, 0), this->index(rowCount() - 1, column_count - 1));
    Q_EMIT edited();
    return true;
}

}  // namespace wg::ui
