#include "ui/customers/customer_table_model.h"

#include <algorithm>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int customers_at_once = 100;

}  // namespace

CustomerTableModel::CustomerTableModel(store::Store& store, QObject* parent)
    : QAbstractTableModel(parent), store_(store) {}

void CustomerTableModel::set_query(const QString& query) {
    const QString wanted = query.simplified();
    if (wanted == query_) return;
    query_ = wanted;
    reload();
}

void CustomerTableModel::reload() {
    const store::CustomerBook book(store_);
    Result<std::vector<store::CustomerRow>> first = book.page(query_.toStdString(), customers_at_once, 0);
    const Result<int> count = book.count(query_.toStdString());
    beginResetModel();
    rows_ = first.ok() ? std::move(first).value() : std::vector<store::CustomerRow>();
    total_ = count.ok() ? count.value() : -1;
    at_end_ = rows_.size() < static_cast<std::size_t>(customers_at_once);
    endResetModel();
    if (!first.ok()) Q_EMIT problem(qs(text_of(first.problems())));
}

const store::CustomerRow* CustomerTableModel::row(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &rows_[static_cast<std::size_t>(row)];
}

int CustomerTableModel::row_of(const std::string& id) const {
    const auto at =
        std::find_if(rows_.begin(), rows_.end(), [&id](const store::CustomerRow& one) { return one.id == id; });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

int CustomerTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int CustomerTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant CustomerTableModel::data(const QModelIndex& index, int role) const {
    const store::CustomerRow* at = index.isValid() ? row(index.row()) : nullptr;
    if (at == nullptr) return {};
    if (role == Qt::TextAlignmentRole && index.column() == jobs_column)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
        case number_column: return qs(at->number);
        case name_column: return qs(at->name);
        case town_column: return qs(at->town);
        case phone_column: return qs(at->phone);
        case jobs_column: return at->jobs == 0 ? QString() : number(at->jobs);
        default: return {};
    }
}

QVariant CustomerTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= column_count) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(
            Qt::Alignment((section == jobs_column ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    const QString names[] = {tr("Number"), tr("Name"), tr("Town"), tr("Telephone"), tr("Jobs")};
    return role == Qt::DisplayRole ? QVariant(names[section]) : QVariant();
}

bool CustomerTableModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && !at_end_;
}

void CustomerTableModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent)) return;
    const auto more = store::CustomerBook(store_).page(query_.toStdString(), customers_at_once, rowCount());
    if (!more.ok()) {
        at_end_ = true;
        Q_EMIT problem(qs(text_of(more.problems())));
        return;
    }
    at_end_ = more.value().size() < static_cast<std::size_t>(customers_at_once);
    if (more.value().empty()) return;
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(more.value().size()) - 1);
    rows_.insert(rows_.end(), more.value().begin(), more.value().end());
    endInsertRows();
}

}  // namespace wg::ui
