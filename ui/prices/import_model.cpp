#include "ui/prices/import_model.h"

#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString import_amount(Money amount) {
    return number(static_cast<double>(amount.minor) / 100.0, 2);
}

}  // namespace

ImportChangesModel::ImportChangesModel(QObject* parent) : QAbstractTableModel(parent) {}

void ImportChangesModel::show_preview(const parts::ImportPreview* preview, const parts::PriceList* into) {
    beginResetModel();
    preview_ = preview;
    into_ = into;
    shown_.clear();
    if (preview_ != nullptr) {
        shown_.reserve(preview_->added + preview_->changed);
        for (std::size_t i = 0; i < preview_->rows.size(); ++i)
            if (preview_->rows[i].change != parts::ItemChange::same) shown_.push_back(i);
    }
    endResetModel();
}

int ImportChangesModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid() || preview_ == nullptr) return 0;
    return static_cast<int>(shown_.size() + preview_->gone.size());
}

int ImportChangesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QString ImportChangesModel::field_words(parts::ImportField field) {
    using F = parts::ImportField;
    switch (field) {
        case F::id: return tr("Id");
        case F::text: return tr("Item");
        case F::unit: return tr("Unit");
        case F::price: return tr("Price");
        case F::cost: return tr("Cost");
        case F::supplier_price: return tr("Supplier's price");
        case F::discount_group: return tr("Discount group");
        case F::pack: return tr("Pack");
        case F::waste_percent: return tr("Waste, %");
        case F::supplier: return tr("Supplier");
        case F::supplier_number: return tr("Supplier's number");
        case F::tax_class: return tr("Tax class");
        case F::from_quantity: return tr("From so many");
    }
    return {};
}

QVariant ImportChangesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    const bool figure = section == column_line || (section >= column_old && section <= column_percent);
    if (role == Qt::TextAlignmentRole) return QVariant((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_line: return tr("Line");
        case column_what: return tr("What");
        case column_id: return tr("Id");
        case column_item: return tr("Item");
        case column_old: return tr("Price so far");
        case column_new: return tr("New price");
        case column_percent: return tr("Change, %");
        default: return tr("Other changes");
    }
}

// "Cost 3.10 to 3.40": each field beside the price, with what it was and becomes.
QString ImportChangesModel::other_changes(const parts::ImportRow& row) const {
    if (!row.in_list) return {};
    const parts::PriceItem& old = into_->items[*row.in_list];
    QStringList out;
    for (const parts::ImportField field : row.changed) {
        if (field == parts::ImportField::price) continue;
        QString before = qs(parts::field_text(old, field));
        QString after = qs(parts::field_text(row.item, field));
        if (field == parts::ImportField::cost) {  // also where it only follows
            before = old.cost ? import_amount(*old.cost) : QString();
            after = row.item.cost ? import_amount(*row.item.cost) : QString();
        }
        const QString nothing = tr("none");
        out += tr("%1: %2 to %3")
                   .arg(field_words(field), before.isEmpty() ? nothing : before, after.isEmpty() ? nothing : after);
    }
    return out.join(QStringLiteral("; "));
}

QString ImportChangesModel::taken_text(const parts::ImportRow& row, int column) const {
    switch (column) {
        case column_line: return QString::number(row.line);
        case column_what: return row.in_list ? tr("changed") : tr("new");
        case column_id: return qs(row.item.id);
        case column_item: return qs(row.item.text);
        case column_old: return row.old_price ? import_amount(*row.old_price) : QString();
        case column_new: return import_amount(row.item.price);
        case column_percent: {
            if (!row.price_change_percent || row.item.price == *row.old_price) return {};
            const QString figure = number(std::fabs(*row.price_change_percent), 1);
            return (*row.price_change_percent < 0.0 ? QStringLiteral("\u2212") : QStringLiteral("+")) + figure;
        }
        default: return other_changes(row);
    }
}

QString ImportChangesModel::gone_text(const parts::PriceItem& item, int column) const {
    switch (column) {
        case column_what: return tr("not in the table");
        case column_id: return qs(item.id);
        case column_item: return qs(item.text);
        case column_old: return import_amount(item.price);
        default: return {};
    }
}

QVariant ImportChangesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::TextAlignmentRole) return headerData(index.column(), Qt::Horizontal, role);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const auto row = static_cast<std::size_t>(index.row());
    if (row < shown_.size()) return taken_text(preview_->rows[shown_[row]], index.column());
    const std::size_t item = preview_->gone[row - shown_.size()];
    return gone_text(into_->items[item], index.column());
}

ImportProblemsModel::ImportProblemsModel(QObject* parent) : QAbstractTableModel(parent) {}

void ImportProblemsModel::show_problems(std::vector<Problem> problems) {
    beginResetModel();
    problems_ = std::move(problems);
    endResetModel();
}

int ImportProblemsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(problems_.size());
}

int ImportProblemsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant ImportProblemsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case column_where: return tr("Where");
        case column_what: return tr("What is wrong");
        default: return tr("What to do");
    }
}

QVariant ImportProblemsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const Problem& problem = problems_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
        case column_where: return qs(problem.where);
        case column_what: return qs(problem.what);
        default: return qs(problem.remedy);
    }
}

}  // namespace wg::ui
