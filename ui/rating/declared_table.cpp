#include "ui/rating/declared_table.h"

#include <QRegularExpression>
#include <cmath>

#include "core/rating/report.h"
#include "ui/common/format.h"
#include "ui/common/theme.h"
#include "ui/drawing/fields.h"
#include "ui/rating/test_page.h"

namespace wg::ui {
namespace {

constexpr TappingCycle all_cycles[] = {TappingCycle::s, TappingCycle::m, TappingCycle::l, TappingCycle::xl,
                                       TappingCycle::xxl};

/// As short as it can be said, for editing.
QString figure(double value) {
    return QString::number(value, 'g', 6);
}

QString range_words(double low, double high, const QString& unit) {
    return DeclaredModel::tr("from %1 to %2").arg(figure(low), unit.isEmpty() ? figure(high) : quantity(high, unit));
}

bool entered(const rating::Declared& declared) {
    return declared.value > 0.0;
}

}  // namespace

QString quantity_words(rating::Quantity quantity) {
    switch (quantity) {
        case rating::Quantity::cop_dhw: return DeclaredModel::tr("COP_DHW");
        case rating::Quantity::heat_up_h: return DeclaredModel::tr("Heat-up time");
        case rating::Quantity::standby_w: return DeclaredModel::tr("Standby power");
        case rating::Quantity::v40_l: return DeclaredModel::tr("Mixed water at 40 °C");
        case rating::Quantity::heat_w: return DeclaredModel::tr("Heating power");
        case rating::Quantity::steady_cop: return DeclaredModel::tr("COP, steady");
    }
    return {};
}

QString declared_words(const rating::Declared& d) {
    QString words = quantity_words(d.quantity);
    if (rating::has_cycle(d.quantity)) words += QLatin1Char(' ') + QLatin1String(rating::letters_of(d.cycle));
    words += DeclaredModel::tr(", air %1").arg(temperature(d.air.dry_c));
    if (rating::has_water(d.quantity)) words += DeclaredModel::tr(", water %1").arg(temperature(d.water_c));
    return words;
}

DeclaredModel::DeclaredModel(QObject* parent) : QAbstractTableModel(parent) {
    set_usual();
}

int DeclaredModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}
int DeclaredModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QString DeclaredModel::text_of(const rating::Declared& d, int column) const {
    switch (column) {
        case what: return quantity_words(d.quantity);
        case value: return entered(d) ? figure(d.value) : QString();
        case tolerance: return figure(100.0 * d.tolerance);
        case air: return QStringLiteral("%1 (%2)").arg(figure(d.air.dry_c), figure(d.air.wet_c));
        case cycle: return rating::has_cycle(d.quantity) ? QLatin1String(rating::letters_of(d.cycle)) : QString();
        case water: return rating::has_water(d.quantity) ? figure(d.water_c) : QString();
        default: return {};
    }
}

QVariant DeclaredModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const rating::Declared& d = at(index.row());
    const int column = index.column();
    const bool there = flags(index).testFlag(Qt::ItemIsEditable);
    if (role == Qt::EditRole) return text_of(d, column);
    if (role == Qt::DisplayRole) {
        if (!there) return QStringLiteral("\u2014");
        if (column == value) {
            if (!entered(d)) return tr("enter");
            const QString unit = QString::fromLatin1(rating::unit_of(d.quantity));
            return unit.isEmpty() ? figure(d.value) : figure(d.value) + QStringLiteral("\u202f") + unit;
        }
        return text_of(d, column);
    }
    if (role == Qt::TextAlignmentRole)
        return QVariant(Qt::AlignVCenter | (column == what || column == cycle ? Qt::AlignLeft : Qt::AlignRight));
    if (role == Qt::ForegroundRole && (!there || (column == value && !entered(d)))) return current_theme().muted;
    if (role == Qt::ToolTipRole && column == value) {
        const rating::Range range = rating::declarable(d.quantity);
        return tr("%1: %2").arg(declared_words(d),
                                range_words(range.low, range.high, QString::fromLatin1(rating::unit_of(d.quantity))));
    }
    return {};
}

QVariant DeclaredModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(Qt::AlignVCenter | (section == what || section == cycle ? Qt::AlignLeft : Qt::AlignRight));
    if (role == Qt::ToolTipRole) {
        switch (section) {
            case tolerance: return tr("Share of the value that counts as met");
            case air: return tr("Dry bulb of the chamber; the wet bulb in brackets, one kelvin less when left out");
            case cycle: return tr("Draw-off cycle, for COP_DHW");
            case water: return tr("Water temperature of a steady point");
            default: return {};
        }
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case what: return tr("Quantity");
        case value: return tr("Declared");
        case tolerance: return tr("± %");
        case air: return tr("Air °C");
        case cycle: return tr("Cycle");
        case water: return tr("Water °C");
        default: return {};
    }
}

Qt::ItemFlags DeclaredModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const rating::Quantity quantity = at(index.row()).quantity;
    const bool there = (index.column() != cycle || rating::has_cycle(quantity)) &&
                       (index.column() != water || rating::has_water(quantity));
    const Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
    return there ? flags | Qt::ItemIsEditable : flags;
}

QString DeclaredModel::change(rating::Declared& d, int column, const QVariant& entered_text) const {
    const QString text = entered_text.toString().trimmed();
    const auto number_in = [&text](double low, double high, double& out) {
        const std::optional<double> parsed = parsed_number(text);
        if (!parsed || *parsed < low || *parsed > high) return false;
        out = *parsed;
        return true;
    };
    switch (column) {
        case what: {
            for (const rating::Quantity quantity : rating::all_quantities) {
                if (text != quantity_words(quantity) && text != QLatin1String(rating::key_of(quantity))) continue;
                if (quantity != d.quantity) d.value = 0.0;  // a figure of another unit
                d.quantity = quantity;
                return {};
            }
            return tr("'%1' is no quantity of the test. Choose one of the list.").arg(text);
        }
        case value: {
            if (text.isEmpty()) {
                d.value = 0.0;
                return {};
            }
            const rating::Range range = rating::declarable(d.quantity);
            const QString unit = QString::fromLatin1(rating::unit_of(d.quantity));
            if (number_in(range.low, range.high, d.value)) return {};
            return tr("%1: '%2' is not a figure %3.")
                .arg(quantity_words(d.quantity), text, range_words(range.low, range.high, unit));
        }
        case tolerance: {
            double share_percent = 0.0;
            if (!number_in(0.1, 50.0, share_percent))
                return tr("Tolerance: '%1' is not a figure from 0.1 to 50 percent.").arg(text);
            d.tolerance = share_percent / 100.0;
            return {};
        }
        case air: {
            static const QRegularExpression form(QStringLiteral("^([^()]+?)\\s*(?:\\(([^()]+)\\))?$"));
            const QRegularExpressionMatch match = form.match(text);
            const std::optional<double> dry = parsed_number(match.captured(1));
            const std::optional<double> wet = match.captured(2).isEmpty() && dry
                                                  ? std::optional<double>(*dry - rating::usual_wet_bulb_k)
                                                  : parsed_number(match.captured(2));
            if (!match.hasMatch() || !dry || !wet || *dry < -20.0 || *dry > 45.0)
                return tr("Air: '%1' is not a temperature from \u221220 to 45 °C. Write it as 7 or 7 (6).").arg(text);
            if (*wet > *dry || *wet < *dry - 15.0)
                return tr("Air: the wet bulb must lie at or below the dry bulb, by 15 K at most. Write it as 7 (6).");
            d.air = {*dry, *wet};
            return {};
        }
        case cycle:
            for (const TappingCycle one : all_cycles)
                if (text.compare(QLatin1String(rating::letters_of(one)), Qt::CaseInsensitive) == 0) {
                    d.cycle = one;
                    return {};
                }
            return tr("'%1' is no draw-off cycle. Choose S, M, L, XL or XXL.").arg(text);
        case water:
            if (number_in(5.0, 70.0, d.water_c)) return {};
            return tr("Water: '%1' is not a temperature from 5 to 70 °C.").arg(text);
        default: return {};
    }
}

bool DeclaredModel::setData(const QModelIndex& index, const QVariant& text, int role) {
    if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable)) return false;
    rating::Declared changed = at(index.row());
    const QString why = change(changed, index.column(), text);
    if (!why.isEmpty()) {
        Q_EMIT refused(why);
        return false;
    }
    rows_[static_cast<std::size_t>(index.row())] = changed;
    Q_EMIT dataChanged(this->index(index.row(), 0), this->index(index.row(), column_count - 1));
    Q_EMIT edited();
    return true;
}

void DeclaredModel::set_usual() {
    using rating::Quantity;
    set_values({{Quantity::cop_dhw, 0.0, 0.05, rating::air_7, TappingCycle::l},
                {Quantity::cop_dhw, 0.0, 0.05, rating::air_14, TappingCycle::l},
                {Quantity::heat_up_h, 0.0, 0.05, rating::air_7},
                {Quantity::standby_w, 0.0, 0.10, rating::air_7},
                {Quantity::v40_l, 0.0, 0.05, rating::air_7}});
}

void DeclaredModel::set_values(std::vector<rating::Declared> values) {
    beginResetModel();
    rows_ = std::move(values);
    endResetModel();
    Q_EMIT edited();
}

int DeclaredModel::add_like(int row) {
    rating::Declared one{rating::Quantity::cop_dhw, 0.0, 0.05, rating::air_7, TappingCycle::l};
    if (row >= 0 && row < rowCount()) one = at(row);
    one.value = 0.0;
    const int last = rowCount();
    beginInsertRows({}, last, last);
    rows_.push_back(one);
    endInsertRows();
    Q_EMIT edited();
    return last;
}

void DeclaredModel::remove(int row) {
    if (row < 0 || row >= rowCount()) return;
    beginRemoveRows({}, row, row);
    rows_.erase(rows_.begin() + row);
    endRemoveRows();
    Q_EMIT edited();
}

std::vector<rating::Declared> DeclaredModel::values() const {
    std::vector<rating::Declared> out;
    for (const rating::Declared& d : rows_)
        if (entered(d)) out.push_back(d);
    return out;
}

QString DeclaredModel::trouble() const {
    const std::vector<rating::Declared> all = values();
    if (all.empty()) return tr("Enter at least one value of the data sheet.");
    if (all.size() > rating::most_declared)
        return tr("More than %1 values: keep those that the sheet is chosen by.").arg(rating::most_declared);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t k = i + 1; k < all.size(); ++k)
            if (rating::same_point(all[i], all[k]))
                return tr("%1 stands twice. Keep one of the two, or correct its conditions.")
                    .arg(declared_words(all[i]));
    return {};
}

QWidget* DeclaredDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const {
    const bool choice = index.column() == DeclaredModel::what || index.column() == DeclaredModel::cycle;
    if (!choice) return QStyledItemDelegate::createEditor(parent, option, index);
    auto* combo = new CalmCombo(parent);
    if (index.column() == DeclaredModel::what)
        for (const rating::Quantity quantity : rating::all_quantities)
            combo->addItem(quantity_words(quantity));
    else
        for (const TappingCycle one : all_cycles)
            combo->addItem(QLatin1String(rating::letters_of(one)));
    auto* self = const_cast<DeclaredDelegate*>(this);
    connect(combo, &QComboBox::activated, self, [self, combo] {
        Q_EMIT self->commitData(combo);
        Q_EMIT self->closeEditor(combo);
    });
    return combo;
}

void DeclaredDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    if (auto* combo = qobject_cast<QComboBox*>(editor)) {
        combo->setCurrentText(index.data(Qt::EditRole).toString());
        return;
    }
    QStyledItemDelegate::setEditorData(editor, index);
}

void DeclaredDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    if (auto* combo = qobject_cast<QComboBox*>(editor)) {
        model->setData(index, combo->currentText(), Qt::EditRole);
        return;
    }
    QStyledItemDelegate::setModelData(editor, model, index);
}

void DeclaredDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                            const QModelIndex&) const {
    editor->setGeometry(option.rect);
}

}  // namespace wg::ui
