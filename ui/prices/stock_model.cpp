#include "ui/prices/stock_model.h"

#include <algorithm>
#include <unordered_map>

#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/drawing/amount_table.h"

namespace wg::ui {

namespace {

QString shares_words(const std::vector<parts::Share>& shares, const std::string& unit) {
    QStringList out;
    for (const parts::Share& share : shares)
        out += StockModel::tr("%1 for job %2: %3")
                   .arg(qs(share.purchase_number), qs(share.job_number), stock_quantity(share.thousandths, unit));
    return out.join(QLatin1Char('\n'));
}

bool is_figure(int column) {
    return column == StockModel::column_level || column == StockModel::column_on_order ||
           column == StockModel::column_free;
}

}  // namespace

void StockModel::set(const std::vector<parts::PriceItem>& items, const std::vector<parts::ItemStanding>& standings) {
    beginResetModel();
    rows_.clear();
    rows_.reserve(items.size() + standings.size());
    std::unordered_map<std::string_view, const parts::PriceItem*> of_list;
    for (const parts::PriceItem& item : items)
        of_list.emplace(item.id, &item);
    std::unordered_map<std::string_view, bool> stands;
    for (const parts::ItemStanding& one : standings) {
        const auto known = of_list.find(one.item_id);
        const bool same_unit = known != of_list.end() && known->second->unit == one.unit;
        if (same_unit) stands.emplace(one.item_id, true);
        rows_.push_back({one.item_id, known == of_list.end() ? QString() : qs(known->second->text), one.unit,
                         one.in_stock, one.counted_at, one.on_order, one.reserved, shares_words(one.orders, one.unit),
                         shares_words(one.reservations, one.unit)});
    }
    for (const parts::PriceItem& item : items)
        if (!stands.contains(item.id) && !item.service && item.unit != "h")
            rows_.push_back({item.id, qs(item.text), item.unit, std::nullopt, {}, 0, 0, {}, {}});
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
        return QVariant((is_figure(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && section == column_on_order)
        return tr("Ordered and not received yet: see the purchase lists");
    if (role == Qt::ToolTipRole && section == column_free)
        return tr("In stock less what jobs that are not fitted yet still need by their purchase lists");
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_text: return tr("Item");
        case column_id: return tr("Id");
        case column_level: return tr("In stock");
        case column_on_order: return tr("On order");
        case column_free: return tr("Free");
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
                case column_on_order:
                    if (row->on_order == 0) return {};
                    return role == Qt::ToolTipRole ? row->orders : stock_quantity(row->on_order, row->unit);
                case column_free:
                    if (role == Qt::ToolTipRole)
                        return row->reservations.isEmpty() ? tr("No job has any of it reserved") : row->reservations;
                    if (!row->thousandths) return {};
                    return stock_quantity(std::max<std::int64_t>(0, *row->thousandths - row->reserved), row->unit);
                default: return row->counted_at.empty() ? QString() : day(row->counted_at);
            }
        case Qt::ForegroundRole:
            if (missing && index.column() == column_level) return current_theme().stop;
            return {};
        case Qt::TextAlignmentRole:
            return QVariant((is_figure(index.column()) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        default: return {};
    }
}

}  // namespace wg::ui
