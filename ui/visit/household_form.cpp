#include "ui/visit/household_form.h"

#include <cmath>

#include "core/job/clock_text.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {

HouseholdForm::HouseholdForm(QWidget* parent) : FormColumn(parent) {
    build_draws();
    build_programme();
    build_clock();
    build_sun();
    build_holidays();
}

void HouseholdForm::show_job(const Job& job) {
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
                                         const NumberField::Range& range, Of of) {
    NumberField* field = number(label, unit, range, [this, key, of](std::optional<double> value) {
        if (!value) return;
        const QString why = change([&](Demand& d) {
            using Value = std::remove_reference_t<decltype(of(d))>;
            if constexpr (std::is_integral_v<Value>)
                of(d) = static_cast<Value>(std::lround(*value));
            else
                of(d) = *value;
        });
        if (auto* refused = qobject_cast<NumberField*>(fields_.value(key)); refused != nullptr && !why.isEmpty())
            refused->show_problem(why);
    });
    fields_.insert(key, field);
    shows_.push_back([field, of](const Demand& d) { field->set_value(static_cast<double>(of(d))); });
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

void HouseholdForm::build_draws() {
    bound_word<DrawSource>(
        QStringLiteral("draw_source"), tr("Draw-off is"), [](auto& d) -> auto& { return d.draw_source; });
    std::vector<QWidget*> of_household;
    pair_next();
    of_household.push_back(bound_number(
        QStringLiteral("persons"), tr("Persons"), QString(), {1.0, 20.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.household.persons; }));
    of_household.push_back(bound_number(
        QStringLiteral("litres"), tr("Litres at 40 \u00b0C each, a day"), tr("l"), {5.0, 200.0, 0, 5.0, false},
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

void HouseholdForm::build_programme() {
    bound_word<HygieneRule>(
        QStringLiteral("hygiene"), tr("Heating against legionella"), [](auto& d) -> auto& { return d.hygiene.rule; });
    std::vector<QWidget*> shown;
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("hygiene_target"), tr("To"), tr("\u00b0C"), {50.0, 75.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.hygiene.target_c; }));
    shown.push_back(bound_number(
        QStringLiteral("hygiene_hold"), tr("Held for"), tr("min"), {1.0, 240.0, 0, 5.0, false},
        [](auto& d) -> auto& { return d.hygiene.hold_min; }));
    shown.push_back(bound_number(
        QStringLiteral("hygiene_hour"), tr("Begins at, hour of the day"), tr("h"), {0.0, 24.0, 1, 1.0, false},
        [](auto& d) -> auto& { return d.hygiene.at_h; }));
    shown.push_back(bound_word<HygieneSource>(
        QStringLiteral("hygiene_source"), tr("Heated by"), [](auto& d) -> auto& { return d.hygiene.source; }));
    shows_.push_back([this, shown](const Demand& d) {
        for (QWidget* field : shown)
            show_row(field, d.hygiene.rule != HygieneRule::none);
    });
    words(tr(
        "Water above 60 \u00b0C scalds: a mixing valve belongs behind the cylinder. Local rules say what is asked."));
    bound_check(
        QStringLiteral("loop"), tr("Recirculation loop"), [](auto& d) -> auto& { return d.recirculation.present; });
    NumberField* loss = bound_number(
        QStringLiteral("loop_loss"), tr("It loses while it runs"), tr("W"), {0.0, 2000.0, 0, 10.0, false},
        [](auto& d) -> auto& { return d.recirculation.loss_w; });
    TextField* hours = bound_list(
        QStringLiteral("loop_hours"), tr("Loop runs (empty: always)"), QStringLiteral("6-9, 17-22"),
        [](auto& d) -> auto& { return d.recirculation.windows; }, clock_windows_from_text);
    shows_.push_back([this, loss, hours](const Demand& d) {
        show_row(loss, d.recirculation.present);
        show_row(hours, d.recirculation.present);
    });
}

void HouseholdForm::build_clock() {
    bound_list(
        QStringLiteral("run_hours"), tr("Heat pump may run (empty: at any time)"),
        QStringLiteral("10-17, weekends 9-18"), [](auto& d) -> auto& { return d.control.run_windows; },
        clock_windows_from_text);
    bound_number(
        QStringLiteral("always_below"), tr("Outside these hours only when the water is below"), tr("\u00b0C"),
        {10.0, 60.0, 0, 1.0, false}, [](auto& d) -> auto& { return d.control.always_below_c; });
    bound_list(
        QStringLiteral("set_back_hours"), tr("Lower set point during"), QStringLiteral("22-6"),
        [](auto& d) -> auto& { return d.control.set_back_windows; }, clock_windows_from_text);
    bound_number(
        QStringLiteral("set_back"), tr("Lower by"), tr("K"), {0.0, 20.0, 1, 1.0, false},
        [](auto& d) -> auto& { return d.control.set_back_k; });
    bound_list(
        QStringLiteral("low_hours"), tr("Hours of a low electricity price"), QStringLiteral("22-6"),
        [](auto& d) -> auto& { return d.tariff.low_windows; }, clock_windows_from_text);
    bound_number(
        QStringLiteral("low_price"), tr("Low price, hundredths of the currency a kWh"), QString(),
        {0.0, 1000.0, 2, 0.5, false}, [](auto& d) -> auto& { return d.tariff.low_minor_kwh; });
    bound_check(
        QStringLiteral("low_only"), tr("Heat pump runs in the low price's hours"),
        [](auto& d) -> auto& { return d.control.low_tariff_only; });
    bound_word<BackUpRule>(
        QStringLiteral("back_up"), tr("Immersion heater helps"), [](auto& d) -> auto& { return d.control.back_up; });
}

void HouseholdForm::build_sun() {
    bound_number(
        QStringLiteral("pv_peak"), tr("House's photovoltaics (0: none)"), tr("kW"), {0.0, 100.0, 1, 0.5, false},
        [](auto& d) -> auto& { return d.control.surplus.peak_kw; });
    std::vector<QWidget*> shown;
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("pv_tilt"), tr("Their tilt"), tr("\u00b0"), {0.0, 90.0, 0, 1.0, false},
        [](auto& d) -> auto& { return d.control.surplus.tilt_deg; }));
    shown.push_back(bound_number(
        QStringLiteral("pv_bearing"), tr("Their bearing"), tr("\u00b0"), {0.0, 360.0, 0, 5.0, false},
        [](auto& d) -> auto& { return d.control.surplus.azimuth_deg; }));
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("pv_base"), tr("House uses besides"), tr("W"), {0.0, 20000.0, 0, 50.0, false},
        [](auto& d) -> auto& { return d.control.surplus.base_load_w; }));
    shown.push_back(bound_number(
        QStringLiteral("pv_threshold"), tr("Counts as surplus from"), tr("W"), {0.0, 20000.0, 0, 50.0, false},
        [](auto& d) -> auto& { return d.control.surplus.threshold_w; }));
    pair_next();
    shown.push_back(bound_number(
        QStringLiteral("pv_raise"), tr("Set point then higher by"), tr("K"), {0.0, 20.0, 1, 1.0, false},
        [](auto& d) -> auto& { return d.control.surplus.raise_k; }));
    shown.push_back(bound_number(
        QStringLiteral("feed_in"), tr("Feed-in pays, hundredths a kWh"), QString(), {0.0, 1000.0, 2, 0.5, false},
        [](auto& d) -> auto& { return d.tariff.feed_in_minor_kwh; }));
    shows_.push_back([this, shown](const Demand& d) {
        for (QWidget* field : shown)
            show_row(field, d.control.surplus.peak_kw > 0.0);
    });
}

void HouseholdForm::build_holidays() {
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
        run->setVisible(!d.holidays.empty());
    });
}

}  // namespace wg::ui
