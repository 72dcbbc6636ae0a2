#include "ui/prices/stock_model.h"

#include <algorithm>
#include <unordered_map>

#include "ui/common/format.h"
#include "ui/common/theme.h"

namespace wg::ui {

QString stock_quantity(std::int64_t thousandths, const std::string& unit) {
    int decimals = 3;
    for (std::int64_t rest = thousandths; decimals > 0 && rest % 10 == 0; rest /= 10)
        --decimals;
    return quantity(parts::units_of_thousandths(thousandths), qs(unit), decimals);
}

void StockModel::set(const std::vector<parts::PriceItem>& items, const std::vector<parts::StockLevel>& levels) {
    beginResetModel();
    rows_.clear();
    rows_.reserve(items.size() + levels.size());
    std::unordered_map<std::string_view, const parts::PriceItem*> of_list;
    for (const parts::PriceItem& item : items)
        of_list.emplace(item.id, &item);
    std::unordered_map<std::string_view, bool> moved;
    for (const parts::StockLevel& level : levels) {
        const auto known = of_list.find(level.item_id);
        const bool same_unit = known != of_list.end() && known->second->unit == level.unit;
        if (same_unit) moved.emplace(level.item_id, true);
        rows_.push_back({level.item_id, known == of_list.end() ? QString() : qs(known->second->text), level.unit,
                         level.thousandths, level.counted_at});
    }
    for (const parts::PriceItem& item : items)
        if (!moved.contains(item.id)) rows_.push_back({item.id, qs(item.text), item.unit, std::nullopt, {}});
    find();
    endResetModel();
}

void StockModel::set_words(const QString& words) {
    beginResetModel();
    words_ = words.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    find();
    endResetModel();
}

void StockModel::find() {
    shown_.clear();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const QString hay = (rows_[i].text + QLatin1Char('\n') + qs(rows_[i].item_id)).toLower();
        if (std::all_of(words_.begin(), words_.end(), [&hay](const QString& word) { return hay.contains(word); }))
            shown_.push_back(i);
    }
}

const StockModel::Row* StockModel::row_at(int row) const {
    if (row < 0 || row >= rowCount()) return nullptr;
    return &rows_[shown_[static_cast<std::size_t>(row)]];
}

int StockModel::row_of(const std::string& item_id, const std::string& unit) const {
    for (int row = 0; row < rowCount(); ++row)
        if (row_at(row)->item_id == item_id && row_at(row)->unit == unit) return row;
    return -1;
}

QStringList StockModel::below_nothing() const {
    QStringList out;
    for (const Row& row : rows_)
        if (row.thousandths && *row.thousandths < 0)
            out += tr("%1: %2").arg(row.text.isEmpty() ? qs(row.item_id) : row.text,
                                    stock_quantity(*row.thousandths, row.unit));
    return out;
}

int StockModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int StockModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant StockModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((section == column_level ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_text: return tr("Item");
        case column_id: return tr("Id");
        case column_level: return tr("In stock");
        default: return tr("Last counted");
    }
}

QVariant StockModel::data(const QModelIndex& index, int role) const {
    const Row* row = index.isValid() ? row_at(index.row()) : nullptr;
    if (row == nullptr) return {};
    const bool missing = row->thousandths && *row->thousandths < 0;
    switch (role) {
        case Qt::DisplayRole:
        case Qt::ToolTipRole:
            switch (index.column()) {
                case column_text: return row->text.isEmpty() ? tr("not in this list") : row->text;
                case column_id: return qs(row->item_id);
                case column_level:
                    if (!row->thousandths)
                        return role == Qt::ToolTipRole ? tr("No stock is kept of it yet") : QString();
                    if (missing && role == Qt::ToolTipRole) return tr("More was taken than was there: count it");
                    return (missing ? QStringLiteral("\u25b2 ") : QString()) +
                           stock_quantity(*row->thousandths, row->unit);
                default: return row->counted_at.empty() ? QString() : day(row->counted_at);
            }
        case Qt::ForegroundRole:
            if (missing && index.column() == column_level) return current_theme().stop;
            return {};
        case Qt::TextAlignmentRole:
            return QVariant((index.column() == column_level ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        default: return {};
    }
}

}  // namespace wg::ui
