#include "ui/offer/offer_model.h"

#include <QFont>

#include "ui/common/format.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace {

// How the line stands to the plan; told in words, so that no colour is needed.
QString how_words(const OfferRow& row) {
    const quote::OfferedLine& line = row.line;
    switch (row.kind) {
        case OfferRow::Kind::planned: return {};
        case OfferRow::Kind::own: return OfferModel::tr("own line");
        case OfferRow::Kind::option: return row.ticked ? OfferModel::tr("option, wanted") : OfferModel::tr("option");
        case OfferRow::Kind::subsidy: return OfferModel::tr("subsidy");
        case OfferRow::Kind::changed: break;
    }
    QString words = line.left_out ? OfferModel::tr("left out") : OfferModel::tr("changed");
    if (line.overtaken)
        words += OfferModel::tr("; the plan asks for %1 now")
                     .arg(paper::amount_words(line.planned_quantity, line.line.unit));
    return words;
}

bool counts(const OfferRow& row) {
    return !row.line.left_out && (row.kind != OfferRow::Kind::option || row.ticked);
}

}  // namespace

std::vector<OfferRow> offer_rows(const plan::Plan& plan) {
    std::vector<OfferRow> rows;
    if (!plan.offered) {
        rows.reserve(plan.parts.lines.size());
        for (const parts::Line& line : plan.parts.lines) {
            OfferRow row;
            row.line.line = line;
            rows.push_back(std::move(row));
        }
        return rows;
    }
    const quote::Offered& offered = *plan.offered;
    rows.reserve(offered.lines.size() + offered.options.size() + offered.subsidies.size());
    for (const quote::OfferedLine& line : offered.lines) {
        const OfferRow::Kind kind = line.source == quote::LineSource::own       ? OfferRow::Kind::own
                                    : line.source == quote::LineSource::changed ? OfferRow::Kind::changed
                                                                                : OfferRow::Kind::planned;
        rows.push_back({kind, line, false});
    }
    for (const quote::Option& option : offered.options)
        rows.push_back({OfferRow::Kind::option, option.line, option.ticked});
    for (const quote::Subsidy& subsidy : offered.subsidies) {
        OfferRow row;
        row.kind = OfferRow::Kind::subsidy;
        row.line.source = quote::LineSource::own;
        row.line.element_id = subsidy.element_id;
        row.line.line.text = subsidy.text;
        row.line.line.net = Money{} - subsidy.granted;
        rows.push_back(std::move(row));
    }
    return rows;
}

void OfferModel::set_rows(std::vector<OfferRow> rows, const QString& currency) {
    beginResetModel();
    rows_ = std::move(rows);
    currency_ = currency;
    endResetModel();
}

const OfferRow* OfferModel::row(int index) const {
    return index < 0 || index >= rowCount() ? nullptr : &rows_[static_cast<std::size_t>(index)];
}

int OfferModel::row_of(const std::string& element_id, const std::string& item_id) const {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (!element_id.empty() && rows_[i].line.element_id == element_id) return static_cast<int>(i);
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (!item_id.empty() && rows_[i].line.line.item_id == item_id) return static_cast<int>(i);
    }
    return -1;
}

int OfferModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int OfferModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant OfferModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() < 0 || index.row() >= rowCount()) return {};
    const OfferRow& row = rows_[static_cast<std::size_t>(index.row())];
    const parts::Line& line = row.line.line;
    const bool words = index.column() == column_text || index.column() >= column_how;
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue((words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (role == Qt::FontRole) {
        QFont font;
        font.setStrikeOut(row.line.left_out);
        font.setBold(row.kind != OfferRow::Kind::planned && index.column() == column_how);
        return font;
    }
    const QString why = row.line.reason.empty() ? qs(line.why) : qs(row.line.reason);
    if (role == Qt::ToolTipRole && index.column() == column_why) return why;
    if (role != Qt::DisplayRole) return {};
    const bool subsidy = row.kind == OfferRow::Kind::subsidy;
    switch (index.column()) {
        case column_text: return qs(line.text);
        case column_needed:
            return row.line.source == quote::LineSource::own ? QString()
                                                             : paper::amount_words(line.quantity, line.unit);
        case column_to_buy: return subsidy ? QString() : paper::amount_words(line.to_buy, line.unit);
        case column_price:
            return subsidy ? QString() : line.priced ? money(line.unit_price, currency_) : tr("not in the list");
        case column_net: return line.priced && counts(row) ? money(line.net, currency_) : QStringLiteral("\u2014");
        case column_how: return how_words(row);
        case column_why: return why;
        default: return {};
    }
}

QVariant OfferModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool words = section == column_text || section >= column_how;
        return QVariant::fromValue((words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_text: return tr("Part or work");
        case column_needed: return tr("Needed");
        case column_to_buy: return tr("Offered");
        case column_price: return tr("Price each");
        case column_net: return tr("Net");
        case column_how: return tr("Change");
        case column_why: return tr("Why");
        default: return {};
    }
}

}  // namespace wg::ui
