#include "ui/visit/household_form.h"

#include <QLocale>
#include <cmath>

#include "core/job/clock_text.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {

HouseholdForm::HouseholdForm(QWidget* parent) : FormColumn(parent) {
    layout()->setContentsMargins(0, 8, 0, 0);  // it stands inside a form that has its own margins
    build_draws();
    build_hygiene();
    build_loop();
    build_clock();
    build_prices();
    build_sun();
    build_holidays();
}

void HouseholdForm::show_job(const Job& job) {
    if (session_ != nullptr) {
        const auto& lists = session_->reference().price_lists;
        const auto list = lists.find(job.price_list);
        // Without a list the amounts stand in some currency or other.
        const QString currency = list == lists.end() ? tr("currency") : qs(list->second.currency);
        for (NumberField* field : prices_)
            field->set_unit(currency + QStringLiteral("/kWh"));
    }
    for (const auto& show : shows_)
        show(job.demand);
}

QString HouseholdForm::change(const Take& take) {
    if (session_ == nullptr) return {};
    Demand changed = session_->job().demand;
    take(changed);
    const QString why = refusal(session_->job(), [&](Job& job) { job.demand = changed; });
    if (why.isEmpty()) set_demand(*session_, changed);
    return why;
}

// `of` gives the member of a demand, const or not: one word for reading and writing.
template <class E, class Of>
CalmCombo* HouseholdForm::bound_word(const QString& key, const QString& label, Of of) {
    CalmCombo* combo = words_of<E>(label, [this, of](E value) { change([&](Demand& d) { of(d) = value; }); });
    fields_.insert(key, combo);
    shows_.push_back([combo, of](const Demand& d) { combo->show_data(QString::fromLatin1(key_of(of(d)))); });
    return combo;
}

template <class Of>
NumberField* HouseholdForm::bound_number(const QString& key, const QString& label, const QString& unit,
                                         const NumberField::Range& range, Of of, double shown) {
    NumberField* field = number(label, unit, range, [this, key, of, shown](std::optional<double> value) {
        if (!value) return;
        const QString why = change([&](Demand& d) {
            using Value = std::remove_reference_t<decltype(of(d))>;
            if constexpr (std::is_integral_v<Value>)
                of(d) = static_cast<Value>(std::lround(*value));
            else
                // A price typed as 0.07 is kept as 7, not as 7.000000000000001.
                of(d) = shown == 1.0 ? *value : std::round(*value / shown * 1e6) / 1e6;
        });
        if (auto* refused = qobject_cast<NumberField*>(fields_.value(key)); refused != nullptr && !why.isEmpty())
            refused->show_problem(why);
    });
    fields_.insert(key, field);
    shows_.push_back([field, of, shown](const Demand& d) { field->set_value(static_cast<double>(of(d)) * shown); });
    return field;
}

template <class Of>
QCheckBox* HouseholdForm::bound_check(const QString& key, const QString& label, Of of) {
    QCheckBox* box = check(label, [this, of](bool on) { change([&](Demand& d) { of(d) = on; }); });
    fields_.insert(key, box);
    shows_.push_back([box, of](const Demand& d) { show_checked(box, of(d)); });
    return box;
}

template <class Of, class Read>
TextField* HouseholdForm::bound_list(const QString& key, const QString& label, const QString& example, Of of,
                                     Read read) {
    auto* problem = new QLabel(this);
    problem->setProperty("role", QStringLiteral("stop"));
    problem->setWordWrap(true);
    problem->hide();
    TextField* field = text(label, [this, problem, of, read](const QString& typed) {
        const auto list = read(typed.toStdString());
        QString why;
        if (!list)
            why = qs(list.problems().front().remedy);
        else
            why = change([&](Demand& d) { of(d) = list.value(); });
        problem->setText(QStringLiteral("\u25b2 ") + why);
        problem->setVisible(!why.isEmpty());
    });
    field->setPlaceholderText(example);
    add(problem);
    fields_.insert(key, field);
    shows_.push_back([field, of](const Demand& d) { field->set_value(qs(text_of(of(d)))); });
    return field;
}

// A price is written as on a bill, and kept in hundredths.
template <class Of>
NumberField* HouseholdForm::bound_price(const QString& key, const QString& label, Of of) {
    NumberField* field = bound_number(key, label, QString(), {0.0, 10.0, 4, 0.005, false}, of, 0.01);
    prices_.push_back(field);
    return field;
}

void HouseholdForm::build_draws() {
    heading(tr("Draw-off"));
    bound_word<DrawSource>(
        QStringLiteral("draw_source"), tr("Draw-off is"), [](auto& d) -> auto& { return d.draw_source; });
    std::vector<QWidget*> of_household;
    pair_next();
    of_household.push_back(bound_number(
        QStringLiteral("persons"), tr("Persons"), QString(), {1.0, 20.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.household.persons; }));
    of_household.push_back(bound_number(
        QStringLiteral("litres"), tr("Each draws a day, at 40 \u00b0C"), tr("l"), {5.0, 200.0, 0, 5.0, false},
        [](auto& d) -> auto& { return d.household.litres_40_per_person; }));
    of_household.push_back(bound_word<DayRhythm>(
        QStringLiteral("rhythm"), tr("Most is drawn"), [](auto& d) -> auto& { return d.household.rhythm; }));
    of_household.push_back(bound_number(
        QStringLiteral("weekend"), tr("Weekend, times a weekday"), QString(), {0.2, 3.0, 2, 0.1, false},
        [](auto& d) -> auto& { return d.household.weekend_factor; }));
    of_household.push_back(bound_check(
        QStringLiteral("away"), tr("Nobody at home on weekdays, 8:30 to 16:30"),
        [](auto& d) -> auto& { return d.household.away_on_weekdays; }));
    shows_.push_back([this, of_household](const Demand& d) {
        for (QWidget* field : of_household)
            show_row(field, d.draw_source == DrawSource::household);
    });
}

void HouseholdForm::build_hygiene() {
    heading(tr("Heating against legionella"));
    bound_word<HygieneRule>(
        QStringLiteral("hygiene"), tr("How often"), [](auto& d) -> auto& { return d.hygiene.rule; });
    CalmCombo* day =
        choice(tr("On"), [this](const QString& key) { change([&](Demand& d) { d.hygiene.weekday = key.toInt(); }); });
    for (int weekday = 0; weekday < 7; ++weekday)
        day->addItem(QLocale::c().dayName(weekday + 1), QString::number(weekday));
    fields_.insert(QStringLiteral("hygiene_day"), day);
    std::vector<QWidget*> shown;
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("hygiene_hour"), tr("Begins at"), tr("o'clock"), {0.0, 23.99, 2, 1.0, false},
        [](auto& d) -> auto& { return d.hygiene.at_h; }));
    shown.push_back(bound_number(
        QStringLiteral("hygiene_target"), tr("Heats to"), tr("\u00b0C"), {50.0, 75.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.hygiene.target_c; }));
    shown.push_back(bound_number(
        QStringLiteral("hygiene_hold"), tr("Held for"), tr("min"), {1.0, 240.0, 0, 5.0, false},
        [](auto& d) -> auto& { return d.hygiene.hold_min; }));
    shown.push_back(bound_word<HygieneSource>(
        QStringLiteral("hygiene_source"), tr("Heated by"), [](auto& d) -> auto& { return d.hygiene.source; }));
    shows_.push_back([this, shown, day](const Demand& d) {
        for (QWidget* field : shown)
            show_row(field, d.hygiene.rule != HygieneRule::none);
        day->show_data(QString::number(d.hygiene.weekday));
        show_row(day, d.hygiene.rule == HygieneRule::weekly);
    });
    words(
        tr("Water above 60 \u00b0C scalds: a mixing valve belongs behind the cylinder. Local rules say what is "
           "asked."));
}

void HouseholdForm::build_loop() {
    heading(tr("Recirculation"));
    bound_check(
        QStringLiteral("loop"), tr("Loop of hot water through the house"),
        [](auto& d) -> auto& { return d.recirculation.present; });
    NumberField* loss = bound_number(
        QStringLiteral("loop_loss"), tr("It loses while it runs"), tr("W"), {0.0, 2000.0, 0, 10.0, false},
        [](auto& d) -> auto& { return d.recirculation.loss_w; });
    TextField* hours = bound_list(
        QStringLiteral("loop_hours"), tr("It runs, hours of the day (empty: always)"), QStringLiteral("6-9, 17-22"),
        [](auto& d) -> auto& { return d.recirculation.windows; }, clock_windows_from_text);
    shows_.push_back([this, loss, hours](const Demand& d) {
        show_row(loss, d.recirculation.present);
        show_row(hours, d.recirculation.present);
    });
}

void HouseholdForm::build_clock() {
    heading(tr("Hours of the heat pump"));
    bound_list(
        QStringLiteral("run_hours"), tr("May run, hours of the day (empty: at any time)"),
        QStringLiteral("10-17, weekends 9-18"), [](auto& d) -> auto& { return d.control.run_windows; },
        clock_windows_from_text);
    NumberField* always = bound_number(
        QStringLiteral("always_below"), tr("At other hours only while the water is below"), tr("\u00b0C"),
        {10.0, 60.0, 0, 1.0, false}, [](auto& d) -> auto& { return d.control.always_below_c; });
    bound_list(
        QStringLiteral("set_back_hours"), tr("Lower set point, hours of the day (empty: never)"),
        QStringLiteral("22-6"), [](auto& d) -> auto& { return d.control.set_back_windows; }, clock_windows_from_text);
    NumberField* set_back = bound_number(
        QStringLiteral("set_back"), tr("Lower by"), tr("K"), {0.0, 20.0, 1, 1.0, false},
        [](auto& d) -> auto& { return d.control.set_back_k; });
    bound_word<BackUpRule>(
        QStringLiteral("back_up"), tr("Immersion heater helps when"),
        [](auto& d) -> auto& { return d.control.back_up; });
    shows_.push_back([this, always, set_back](const Demand& d) {
        show_row(always, !d.control.run_windows.empty() || d.control.low_tariff_only);
        show_row(set_back, !d.control.set_back_windows.empty());
    });
}

void HouseholdForm::build_prices() {
    heading(tr("Electricity at two prices"));
    bound_list(
        QStringLiteral("low_hours"), tr("Hours of the low price (empty: one price)"), QStringLiteral("22-6"),
        [](auto& d) -> auto& { return d.tariff.low_windows; }, clock_windows_from_text);
    NumberField* low = bound_price(
        QStringLiteral("low_price"), tr("Low price (assumed until a bill is seen)"),
        [](auto& d) -> auto& { return d.tariff.low_minor_kwh; });
    QCheckBox* only = bound_check(
        QStringLiteral("low_only"), tr("Heat pump runs in the hours of the low price"),
        [](auto& d) -> auto& { return d.control.low_tariff_only; });
    shows_.push_back([this, low, only](const Demand& d) {
        show_row(low, !d.tariff.low_windows.empty());
        show_row(only, !d.tariff.low_windows.empty() || d.control.low_tariff_only);
    });
}

void HouseholdForm::build_sun() {
    heading(tr("Photovoltaics of the house"));
    bound_number(
        QStringLiteral("pv_peak"), tr("Peak power (0: none)"), tr("kW"), {0.0, 100.0, 1, 0.5, false},
        [](auto& d) -> auto& { return d.control.surplus.peak_kw; });
    std::vector<QWidget*> shown;
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("pv_tilt"), tr("Tilt"), tr("\u00b0"), {0.0, 90.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.control.surplus.tilt_deg; }));
    shown.push_back(bound_number(
        QStringLiteral("pv_bearing"), tr("True bearing"), tr("\u00b0"), {0.0, 360.0, 0, 5.0, false},
        [](auto& d) -> auto& { return d.control.surplus.azimuth_deg; }));
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("pv_base"), tr("House uses besides"), tr("W"), {0.0, 20000.0, 0, 50.0, false},
        [](auto& d) -> auto& { return d.control.surplus.base_load_w; }));
    shown.push_back(bound_number(
        QStringLiteral("pv_threshold"), tr("Counts as surplus from"), tr("W"), {0.0, 20000.0, 0, 50.0, false},
        [](auto& d) -> auto& { return d.control.surplus.threshold_w; }));
    shown.push_back(bound_number(
        QStringLiteral("pv_raise"), tr("Set point then higher by"), tr("K"), {0.0, 20.0, 1, 1.0, false},
        [](auto& d) -> auto& { return d.control.surplus.raise_k; }));
    shown.push_back(bound_price(
        QStringLiteral("feed_in"), tr("Feed-in pays (assumed)"),
        [](auto& d) -> auto& { return d.tariff.feed_in_minor_kwh; }));
    shows_.push_back([this, shown](const Demand& d) {
        for (QWidget* field : shown)
            show_row(field, d.control.surplus.peak_kw > 0.0);
    });
}

void HouseholdForm::build_holidays() {
    heading(tr("Holidays"));
    bound_list(
        QStringLiteral("holidays"), tr("Away (day.month to day.month)"), QStringLiteral("15.7-28.7"),
        [](auto& d) -> auto& { return d.holidays; }, holidays_from_text);
    CalmCombo* rule = bound_word<HolidayRule>(
        QStringLiteral("holiday_rule"), tr("While away the set is"),
        [](auto& d) -> auto& { return d.control.holiday_rule; });
    QCheckBox* run = bound_check(
        QStringLiteral("before_return"), tr("Heat against legionella before the return"),
        [](auto& d) -> auto& { return d.control.hygiene_before_return; });
    shows_.push_back([this, rule, run](const Demand& d) {
        show_row(rule, !d.holidays.empty());
        show_row(run, !d.holidays.empty());
    });
}

}  // namespace wg::ui
