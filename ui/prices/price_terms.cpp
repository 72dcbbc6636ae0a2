#include "ui/prices/price_terms.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/parts/price_entry.h"
#include "ui/common/format.h"
#include "ui/common/heading_label.h"
#include "ui/drawing/fields.h"
#include "ui/prices/terms_rows.h"

namespace wg::ui {
namespace {

constexpr int terms_widest_px = 1080;
constexpr int narrow_table_px = 460;
constexpr double most_of_one = 1e7;  // as the list's reader has it

/// A page that scrolls; its column is what is built on.
QWidget* scrolling(QWidget* parent, QWidget*& inside) {
    auto* scroll = new QScrollArea(parent);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    inside = new QWidget(scroll);
    inside->setMaximumWidth(terms_widest_px);
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 16, 16, 16);
    column->setSpacing(16);
    scroll->setWidget(inside);
    return scroll;
}

QWidget* box_of_fields(QWidget* parent, const QString& heading) {
    if (!heading.isEmpty()) parent->layout()->addWidget(heading_label(heading, parent));
    auto* box = new QWidget(parent);
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(8);
    grid->setColumnMinimumWidth(1, 320);
    grid->setColumnStretch(2, 1);
    parent->layout()->addWidget(box);
    return box;
}

void put_field(QWidget* box, const QString& words, QWidget* field) {
    auto* grid = static_cast<QGridLayout*>(box->layout());
    const int row = grid->rowCount();
    auto* label = new QLabel(words, box);
    label->setBuddy(field);
    field->setObjectName(words);
    grid->addWidget(label, row, 0);
    grid->addWidget(field, row, 1);
}

}  // namespace

PriceTerms::PriceTerms(QWidget* parent, std::function<const std::vector<parts::PriceItem>&()> items)
    : QObject(parent), items_(std::move(items)) {
    make_labour_page(parent);
    make_travel_page(parent);
    make_tax_page(parent);
}

void PriceTerms::make_labour_page(QWidget* parent) {
    QWidget* inside = nullptr;
    pages_.append({tr("Labour and days"), scrolling(parent, inside)});
    QWidget* box = box_of_fields(inside, {});
    label_ = add_text(box, tr("Name of the list"), [](parts::PriceList& list) { return &list.label; });
    from_ = add_text(box, tr("Holds from (year-month-day)"), [](parts::PriceList& list) { return &list.valid_from; });
    to_ = add_text(box, tr("Holds until"), [](parts::PriceList& list) { return &list.valid_to; });
    add_text(box, tr("Currency"), [](parts::PriceList& list) { return &list.currency; });
    add_text(box, tr("Note"), [](parts::PriceList& list) { return &list.note; });
    labour_ = add_amount(
        box, tr("An hour of work, net"), [](const parts::PriceList& list) { return std::optional(list.labour_hour); },
        [](parts::PriceList& list, std::optional<Money> amount) {
            if (amount) list.labour_hour = *amount;
        });
    labour_cost_ = add_amount(
        box, tr("Cost of an hour"), [](const parts::PriceList& list) { return list.labour_cost; },
        [](parts::PriceList& list, std::optional<Money> amount) { list.labour_cost = amount; }, true);
    add_text(box, tr("Tax class of work"), [](parts::PriceList& list) { return &list.labour_tax_class; });
    add_table(task_rows(), inside);
    add_table(labour_rate_rows(), inside);
    for (const auto& rows : {height_rows, covering_rows})
        add_table(rows(), inside)->setMaximumWidth(narrow_table_px);
    add_table(access_rows(), inside);
    QWidget* storeys = box_of_fields(inside, tr("Storeys to carry"));
    add_number(
        storeys, tr("Each storey adds"), tr("%"), 0.0, 200.0, 4,
        [](const parts::PriceList& list) { return parts::percent_of_share(list.difficulty.each_storey); },
        [](parts::PriceList& list, double percent) { list.difficulty.each_storey = parts::share_of_percent(percent); });
    static_cast<QVBoxLayout*>(inside->layout())->addStretch(1);
}

void PriceTerms::make_travel_page(QWidget* parent) {
    QWidget* inside = nullptr;
    pages_.append({tr("Travel and discounts"), scrolling(parent, inside)});
    QWidget* box = box_of_fields(inside, tr("Travel"));
    travel_button_ = new QPushButton(inside);
    travel_button_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    inside->layout()->addWidget(travel_button_);
    connect(travel_button_, &QPushButton::clicked, this, [this] {
        offer([](parts::PriceList& list) {
            if (list.travel) {
                list.travel.reset();
            } else {
                list.travel = parts::Travel{};
                list.travel->tax_class = list.labour_tax_class;
            }
            return QString();
        });
    });
    using List = parts::PriceList;
    using Travel = parts::Travel;
    const auto amount = [&](const QString& words, Money Travel::*of) {
        of_travel_.push_back(add_amount(
            box, words,
            [of](const List& list) { return list.travel ? std::optional((*list.travel).*of) : std::nullopt; },
            [of](List& list, std::optional<Money> value) {
                if (list.travel && value) (*list.travel).*of = *value;
            }));
    };
    amount(tr("A kilometre, net"), &Travel::km);
    amount(tr("An hour on the road, net"), &Travel::hour);
    of_travel_.push_back(add_number(
        box, tr("Speed"), tr("km/h"), 5.0, 130.0, 1,
        [](const List& list) { return list.travel ? list.travel->km_h : std::nan(""); },
        [](List& list, double value) {
            if (list.travel) list.travel->km_h = value;
        }));
    of_travel_.push_back(add_number(
        box, tr("Trips there and back"), {}, 1.0, 100.0, 0,
        [](const List& list) { return list.travel ? list.travel->trips : std::nan(""); },
        [](List& list, double value) {
            if (list.travel) list.travel->trips = static_cast<int>(std::lround(value));
        }));
    of_travel_.push_back(add_text(box, tr("Tax class of travel"),
                                  [](List& list) { return list.travel ? &list.travel->tax_class : nullptr; }));
    add_table(discount_group_rows(), inside);
    static_cast<QVBoxLayout*>(inside->layout())->addStretch(1);
}

void PriceTerms::make_tax_page(QWidget* parent) {
    QWidget* inside = nullptr;
    pages_.append({tr("Taxes and energy"), scrolling(parent, inside)});
    add_table(tax_rate_rows(), inside);
    add_table(tariff_rows(), inside)->setMaximumWidth(narrow_table_px + 100);
    using List = parts::PriceList;
    QWidget* box = box_of_fields(inside, tr("What the cost over the years is reckoned with"));
    const auto percent = [&](const QString& words, double least, double most, double economy::Tariffs::*of) {
        add_number(
            box, words, tr("%"), least, most, 4,
            [of](const List& list) { return parts::percent_of_share(list.tariffs.*of); },
            [of](List& list, double value) { list.tariffs.*of = parts::share_of_percent(value); });
    };
    percent(tr("Energy rises a year by"), -20.0, 30.0, &economy::Tariffs::yearly_rise);
    percent(tr("Discounted a year by"), -5.0, 30.0, &economy::Tariffs::discount_rate);
    add_number(
        box, tr("Years looked at"), {}, 1.0, 60.0, 0, [](const List& list) { return list.tariffs.years; },
        [](List& list, double value) { list.tariffs.years = static_cast<int>(std::lround(value)); });
    amounts_.push_back(add_number(
        box, tr("Service a year"), {}, 0.0, most_of_one / 100.0, 2,
        [](const List& list) { return list.tariffs.yearly_service_minor / 100.0; },
        [](List& list, double value) { list.tariffs.yearly_service_minor = parts::minor_of_units(value); }));
    add_text(box, tr("Source of the energy prices"), [](List& list) { return &list.tariffs.source; });
    static_cast<QVBoxLayout*>(inside->layout())->addStretch(1);
}

TextField* PriceTerms::add_text(QWidget* box, const QString& words, const TextOf& of) {
    auto* field = new TextField(words, box);
    put_field(box, words, field);
    shown_.push_back({field, [field, of](const parts::PriceList& list) {
                          const std::string* text = of(const_cast<parts::PriceList&>(list));  // only read
                          field->set_value(text == nullptr ? QString() : qs(*text));
                      }});
    connect(field, &TextField::committed, this, [this, of](const QString& entry) {
        offer([&](parts::PriceList& list) {
            if (std::string* text = of(list)) *text = entry.trimmed().toStdString();
            return QString();
        });
    });
    return field;
}

NumberField* PriceTerms::add_amount(QWidget* box, const QString& words,
                                    std::function<std::optional<Money>(const parts::PriceList&)> of,
                                    std::function<void(parts::PriceList&, std::optional<Money>)> take, bool optional) {
    auto* field = new NumberField(words, {}, {0.0, most_of_one, 2, 0.0, optional, true}, box);
    put_field(box, words, field);
    amounts_.push_back(field);
    shown_.push_back({field, [field, of = std::move(of)](const parts::PriceList& list) {
                          const std::optional<Money> amount = of(list);
                          field->set_value(amount ? std::optional(parts::units_of(*amount)) : std::nullopt);
                      }});
    connect(field, &NumberField::committed, this, [this, take = std::move(take)](std::optional<double> units) {
        offer([&](parts::PriceList& list) {
            const std::optional<Money> amount = units ? parts::money_of_units(*units) : std::nullopt;
            if (units && !amount) return tr("Amounts have at most two decimals.");
            take(list, amount);
            return QString();
        });
    });
    return field;
}

NumberField* PriceTerms::add_number(QWidget* box, const QString& words, const QString& unit, double least, double most,
                                    int decimals, const NumberOf& of, const TakeNumber& take) {
    auto* field = new NumberField(words, unit, {least, most, decimals}, box);
    put_field(box, words, field);
    shown_.push_back({field, [field, of](const parts::PriceList& list) {
                          const double value = of(list);
                          field->set_value(std::isnan(value) ? std::nullopt : std::optional(value));
                      }});
    connect(field, &NumberField::committed, this, [this, take, decimals](std::optional<double> value) {
        offer([&](parts::PriceList& list) {
            if (!value) return tr("A figure is needed here.");
            if (decimals == 0 && *value != std::round(*value)) return tr("A whole number is needed here.");
            take(list, *value);
            return QString();
        });
    });
    return field;
}

TermsTable* PriceTerms::add_table(TermsRows rows, QWidget* parent) {
    auto* made = new TermsTable(
        std::move(rows), [this](const Change& change) { return offer(change); }, parent);
    parent->layout()->addWidget(made);
    connect(made, &TermsTable::begun, this, &PriceTerms::edited);
    tables_.push_back(made);
    return made;
}

QString PriceTerms::unfinished() const {
    for (const TermsTable* table : tables_)
        if (const QString words = table->unfinished(); !words.isEmpty()) return words;
    return {};
}

void PriceTerms::set_checked() {
    offer([](parts::PriceList& list) {
        list.invented = false;
        return QString();
    });
}

QObject* PriceTerms::field(const QString& name) const {
    const auto found =
        std::find_if(shown_.begin(), shown_.end(), [&](const Shown& one) { return one.widget->objectName() == name; });
    return found == shown_.end() ? nullptr : found->widget;
}

bool PriceTerms::offer(const Change& change) {
    if (!editable_) return false;
    parts::PriceList wanted = list_;
    QString wrong = change(wanted);
    if (wrong.isEmpty()) {
        wanted.items = items_();
        const std::vector<Problem> problems = parts::problems_beside_items(wanted);
        wanted.items.clear();
        if (!problems.empty()) wrong = qs(text_of(problems));
    }
    if (wrong.isEmpty()) list_ = std::move(wanted);
    refresh();  // what was refused goes back to what is in the list
    if (!wrong.isEmpty()) {
        Q_EMIT refused(wrong);
        return false;
    }
    Q_EMIT edited();
    return true;
}

void PriceTerms::refresh() {
    for (const Shown& one : shown_)
        one.show(list_);
    for (NumberField* amount : amounts_)
        amount->set_unit(qs(list_.currency));
    const bool travels = list_.travel.has_value();
    for (QWidget* field : of_travel_)
        field->setEnabled(editable_ && travels);
    travel_button_->setText(travels ? tr("Leave travel out") : tr("Reckon travel"));
    travel_button_->setEnabled(editable_);
}

void PriceTerms::set_list(const parts::PriceList& list, bool editable) {
    list_ = list;
    list_.items.clear();
    editable_ = editable;
    for (const Shown& one : shown_)
        one.widget->setEnabled(editable);
    refresh();
    for (TermsTable* table : tables_)
        table->show_list(list_, editable);
}

void PriceTerms::write_to(parts::PriceList& list) const {
    std::vector<parts::PriceItem> items = std::move(list.items);
    list = list_;
    list.items = std::move(items);
    parts::reckon_costs(list);
}

}  // namespace wg::ui
