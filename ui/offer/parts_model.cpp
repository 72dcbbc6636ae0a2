#include "ui/offer/parts_model.h"

#include "ui/common/format.h"
#include "ui/documents/papers.h"

namespace wg::ui {
void PartsModel::set_lines(std::vector<parts::Line> lines, const QString& currency) {
    beginResetModel();
    lines_ = std::move(lines);
    currency_ = currency;
    endResetModel();
}

int PartsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int PartsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant PartsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() < 0 || index.row() >= rowCount()) return {};
    const parts::Line& line = lines_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole) {
        const bool figures = index.column() != column_text && index.column() != column_why;
        return QVariant::fromValue((figures ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role == Qt::ToolTipRole && index.column() == column_why) return qs(line.why);
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
        case column_text: return qs(line.text);
        case column_needed: return paper::amount_words(line.quantity, line.unit);
        case column_to_buy: return paper::amount_words(line.to_buy, line.unit);
        case column_price: return line.priced ? money(line.unit_price, currency_) : tr("not in the list");
        case column_net: return line.priced ? money(line.net, currency_) : QStringLiteral("\u2014");
        case column_why: return qs(line.why);
        default: return {};
    }
}

QVariant PartsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool figures = section != column_text && section != column_why;
        return QVariant::fromValue((figures ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_text: return tr("Part or work");
        case column_needed: return tr("Needed");
        case column_to_buy: return tr("To buy");
        case column_price: return tr("Price each");
        case column_net: return tr("Net");
        case column_why: return tr("Why");
        default: return {};
    }
}

}  // namespace wg::ui
