#include "ui/prices/price_model.h"

#include <algorithm>
#include <cmath>

#include "core/parts/price_entry.h"
#include "core/quantity/utf8.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr double most_margin_percent = 1000.0;  // as the price list file has it
constexpr double most_pack = 10000.0;
constexpr int longest_price_text = 200;

/// An amount of hundredths; nullopt: no number, or more than two decimals.
std::optional<Money> typed_money(const QString& text) {
    const std::optional<double> value = parsed_number(text);
    return value ? parts::money_of_units(*value) : std::nullopt;
}

QString amount_text(Money amount) {
    return number(parts::units_of(amount), 2);
}

QString short_number(double value) {
    return QString::number(value, 'g', 8);
}

bool column_holds_figure(int column) {
    using M = PriceModel;
    return column == M::column_cost || column == M::column_margin || column == M::column_price ||
           column == M::column_pack || column == M::column_waste || column == M::column_supplier_price;
}

}  // namespace

PriceModel::PriceModel(QObject* parent) : QAbstractTableModel(parent) {}

void PriceModel::set_list(parts::PriceList list, bool editable) {
    beginResetModel();
    list_ = std::move(list);
    editable_ = editable;
    find();
    endResetModel();
}

void PriceModel::set_terms(const parts::PriceList& terms) {
    beginResetModel();
    std::vector<parts::PriceItem> items = std::move(list_.items);
    list_ = terms;
    list_.items = std::move(items);
    parts::reckon_costs(list_);
    endResetModel();
}

void PriceModel::set_words(const QString& words) {
    beginResetModel();
    words_ = words.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    find();
    endResetModel();
}

void PriceModel::find() {
    shown_.clear();
    for (std::size_t i = 0; i < list_.items.size(); ++i) {
        const parts::PriceItem& item = list_.items[i];
        const QString hay = QStringList{qs(item.text), qs(item.id), qs(item.supplier), qs(item.supplier_number)}
                                .join(QLatin1Char('\n'))
                                .toLower();
        if (std::all_of(words_.begin(), words_.end(), [&hay](const QString& word) { return hay.contains(word); }))
            shown_.push_back(i);
    }
}

int PriceModel::add_item() {
    parts::PriceItem item;
    const auto taken = [this](const std::string& id) { return parts::find_item(list_, id) != nullptr; };
    int count = 1;
    do {
        item.id = "item-" + std::to_string(count++);
    } while (taken(item.id));
    item.text = tr("New item").toStdString();
    item.unit = "pc";
    item.tax_class = list_.labour_tax_class;
    const int row = rowCount();
    beginInsertRows({}, row, row);
    list_.items.push_back(std::move(item));
    shown_.push_back(list_.items.size() - 1);
    endInsertRows();
    Q_EMIT edited();
    return row;
}

void PriceModel::remove_row(int row) {
    const std::optional<std::size_t> item = item_of(row);
    if (!item) return;
    beginResetModel();
    list_.items.erase(list_.items.begin() + static_cast<std::ptrdiff_t>(*item));
    find();
    endResetModel();
    Q_EMIT edited();
}

std::optional<std::size_t> PriceModel::item_of(int row) const {
    if (row < 0 || row >= rowCount()) return std::nullopt;
    return shown_[static_cast<std::size_t>(row)];
}

int PriceModel::row_of(std::size_t item) const {
    const auto found = std::find(shown_.begin(), shown_.end(), item);
    return found == shown_.end() ? -1 : static_cast<int>(found - shown_.begin());
}

int PriceModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int PriceModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant PriceModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((column_holds_figure(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) {
        switch (section) {
            case column_id: return tr("Under which the parts list asks for it");
            case column_supplier_price:
                return tr("From the supplier's own list, net; less the group's discount it is the cost");
            case column_group: return tr("Of the list's discount groups");
            case column_many:
                return tr("Prices of many: from so many bought at once, the price of one; 50: 6.90; 100: 6.50");
            case column_cost: return tr("What the firm pays for one, net; never on paper");
            case column_margin: return tr("Over the cost. An entry here sets the price from the cost");
            case column_price: return tr("What the client pays for one, net");
            case column_pack: return tr("Sold in whole packs of so many units; empty: any quantity");
            case column_number: return tr("The supplier's own number of the item");
            case column_waste: return tr("Bought beyond what is needed, for cutting");
            case column_stock: return tr("no: work or hire that is bought in, which never lies in stock");
            default: return {};
        }
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_text: return tr("Item");
        case column_id: return tr("Id");
        case column_unit: return tr("Unit");
        case column_supplier_price: return tr("List price");
        case column_group: return tr("Group");
        case column_many: return tr("From so many");
        case column_cost: return tr("Cost, %1").arg(qs(list_.currency));
        case column_margin: return tr("Mark-up, %");
        case column_price: return tr("Price, %1").arg(qs(list_.currency));
        case column_pack: return tr("Pack");
        case column_waste: return tr("Waste, %");
        case column_supplier: return tr("Supplier");
        case column_number: return tr("Order number");
        case column_tax: return tr("Tax class");
        case column_stock: return tr("Stock kept");
        default: return {};
    }
}

QString PriceModel::text_at(const parts::PriceItem& item, int column) const {
    switch (column) {
        case column_text: return qs(item.text);
        case column_id: return qs(item.id);
        case column_unit: return qs(item.unit);
        case column_supplier_price: return item.supplier_price ? amount_text(*item.supplier_price) : QString();
        case column_group: return qs(item.discount_group);
        case column_many: return qs(parts::quantity_prices_text(item.quantity_prices));
        case column_cost: return item.cost ? amount_text(*item.cost) : QString();
        case column_margin: {
            const std::optional<double> margin = parts::margin_percent(item);
            return margin ? number(*margin, 1) : QString();
        }
        case column_price: return amount_text(item.price);
        case column_pack: return item.pack > 0.0 ? short_number(item.pack) : QString();
        case column_waste: return item.waste_percent ? short_number(*item.waste_percent) : QString();
        case column_supplier: return qs(item.supplier);
        case column_number: return qs(item.supplier_number);
        case column_tax: return qs(item.tax_class);
        case column_stock: return item.service ? tr("no") : tr("yes");
        default: return {};
    }
}

QVariant PriceModel::data(const QModelIndex& index, int role) const {
    const std::optional<std::size_t> at = index.isValid() ? item_of(index.row()) : std::nullopt;
    if (!at) return {};
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
        case Qt::ToolTipRole: return text_at(list_.items[*at], index.column());
        case Qt::TextAlignmentRole:
            return QVariant((column_holds_figure(index.column()) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        default: return {};
    }
}

Qt::ItemFlags PriceModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (editable_ && index.isValid()) flags |= Qt::ItemIsEditable;
    return flags;
}

QString PriceModel::enter_buying(parts::PriceItem& item, int column, const QString& text) const {
    const QString entry = text.trimmed();
    if (column == column_many) {
        const auto prices = parts::quantity_prices_from(entry.toStdString());
        if (!prices.ok()) return qs(text_of(prices.problems()));
        item.quantity_prices = prices.value();
        return {};
    }
    if (column == column_group) {
        const auto& groups = list_.discount_groups;
        if (!entry.isEmpty() && !item.supplier_price)
            return tr("Enter the supplier's price first: the discount is off it");
        if (!entry.isEmpty() &&
            std::none_of(groups.begin(), groups.end(), [&](const auto& one) { return qs(one.id) == entry; }))
            return tr("'%1' is none of the list's discount groups").arg(entry);
        item.discount_group = entry.toStdString();
    } else if (entry.isEmpty()) {
        // What it came to so far stays as the firm's own figure.
        item.supplier_price.reset();
        item.discount_group.clear();
        return {};
    } else {
        const std::optional<Money> amount = typed_money(entry);
        if (!amount) return tr("'%1' is no amount from 0 to 10 000 000 with at most two decimals").arg(entry);
        item.supplier_price = amount;
    }
    parts::reckon_cost(item, list_.discount_groups);
    return {};
}

QString PriceModel::enter_text(parts::PriceItem& item, int column, const QString& text) const {
    const std::string entry = text.trimmed().toStdString();
    if (text.size() > longest_price_text) return tr("The entry is longer than %1 characters").arg(longest_price_text);
    switch (column) {
        case column_text:
            if (entry.empty()) return tr("An item needs a text");
            item.text = entry;
            return {};
        case column_id:
            if (entry.empty()) return tr("An item needs an id: the parts list asks for it by that");
            if (entry != item.id && parts::find_item(list_, entry) != nullptr)
                return tr("'%1' is the id of another item").arg(text.trimmed());
            item.id = entry;
            return {};
        case column_unit:
            if (entry != "pc" && entry != "m" && entry != "kg" && entry != "h")
                return tr("The unit is one of pc, m, kg, h");
            item.unit = entry;
            return {};
        case column_tax:
            if (entry.empty()) return tr("An item needs a tax class, or no quote with it can be priced");
            item.tax_class = entry;
            return {};
        case column_stock:
            if (const QString word = text.trimmed().toLower(); word == tr("yes") || word == tr("no")) {
                item.service = word == tr("no");
                return {};
            }
            return tr("Say yes, or no for work or hire that is bought in");
        case column_supplier: item.supplier = entry; return {};
        default: item.supplier_number = entry; return {};
    }
}

QString PriceModel::enter(parts::PriceItem& item, int column, const QString& text) const {
    if (column == column_many || column == column_group || column == column_supplier_price)
        return enter_buying(item, column, text);
    if (!column_holds_figure(column)) return enter_text(item, column, text);
    const bool empty = text.trimmed().isEmpty();
    const QString no_amount =
        tr("'%1' is no amount from 0 to 10 000 000 with at most two decimals").arg(text.trimmed());
    const std::optional<Money> amount = typed_money(text);
    const std::optional<double> value = parsed_number(text);
    switch (column) {
        case column_cost:
            if (!empty && !amount) return no_amount;
            // The price stands; the margin is what follows.
            item.cost = empty ? std::nullopt : amount;
            item.supplier_price.reset();
            item.discount_group.clear();
            return {};
        case column_price:
            if (!amount) return no_amount;
            item.price = *amount;
            return {};
        case column_margin:
            if (!item.cost) return tr("Enter the cost first: the mark-up is reckoned over it");
            if (!value || *value < -100.0 || *value > most_margin_percent)
                return tr("'%1' is no mark-up from -100 to 1 000 %").arg(text.trimmed());
            item.price = parts::price_with_margin(*item.cost, *value);
            return {};
        case column_pack:
            if (!empty && (!value || *value < 0.0 || *value > most_pack))
                return tr("'%1' is no pack size from 0 to 10 000").arg(text.trimmed());
            item.pack = empty ? 0.0 : *value;
            return {};
        default:
            if (!empty && (!value || *value < 0.0 || *value > 100.0))
                return tr("'%1' is no share from 0 to 100 %").arg(text.trimmed());
            item.waste_percent = empty ? std::nullopt : value;
            return {};
    }
}

bool PriceModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const std::optional<std::size_t> at = index.isValid() ? item_of(index.row()) : std::nullopt;
    if (!at || !editable_ || role != Qt::EditRole) return false;
    const parts::PriceItem before = list_.items[*at];
    if (value.toString() == text_at(before, index.column())) return true;
    parts::PriceItem item = before;
    const QString problem = enter(item, index.column(), value.toString());
    if (!problem.isEmpty()) {
        Q_EMIT refused(
            tr("%1, %2: %3.")
                .arg(qs(before.text), headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), problem));
        return false;
    }
    if (item == before) return true;
    list_.items[*at] = std::move(item);
    Q_EMIT dataChanged(this->index(index.row(), 0), this->index(index.row(), column_count - 1));
    Q_EMIT edited();
    return true;
}

}  // namespace wg::ui
