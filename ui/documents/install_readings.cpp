// Expected values with blanks for what is read, and what the client is shown.

#include "ui/documents/install_tables.h"

#include <QLocale>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/install_steps.h"

namespace wg::ui::paper {
namespace {

QString warm_up_words(const std::optional<season::WarmUp>& warm_up) {
    if (!warm_up) return say("not worked out");
    if (!warm_up->reached) return say("not reached: ") + say_filled(warm_up->why_not);
    return say("about %1").arg(quantity(warm_up->hours, QStringLiteral("h"), 1));
}

QString month_words(int month) {
    const QLocale locale(PaperLanguage::now() == Language::german    ? QLocale::German
                         : PaperLanguage::now() == Language::spanish ? QLocale::Spanish
                                                                     : QLocale::English);
    return locale.standaloneMonthName(month);
}

QString capital(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

QString band_words(const commissioning::Band& band) {
    if (!std::isfinite(band.low) || !std::isfinite(band.high)) return QStringLiteral("\u2013");
    const QString unit = band.unit == "deg C" ? QStringLiteral("°C") : qs(band.unit);
    return number(band.low, band.decimals) + say(" to ") + quantity(band.high, unit, band.decimals);
}

Table readings_form() {
    Table table;
    table.columns = {{say("What"), 60.0}, {say("Expected"), 0.0}, {say("Read"), 27.0}, {say("Instrument, time"), 30.0}};
    table.least_row_mm = 6.5;
    table.grid = true;
    return table;
}

/// The month printed, or one of each season when that is not known.
std::vector<const commissioning::MonthForecast*> months_shown(const PaperInput& input) {
    std::vector<const commissioning::MonthForecast*> shown;
    for (const auto& month : input.plan.forecasts)
        if (input.printed_on.isValid() ? month.month == input.printed_on.month() : month.month % 3 == 1)
            shown.push_back(&month);
    return shown;
}

/// What the running system should show on a usual day of the month.
void forecast_table(Flow& flow, const commissioning::MonthForecast& month) {
    flow.subheading(say("Usual day in %1: air %2, light on the plate %3, wind %4")
                        .arg(month_words(month.month), temperature(month.air_c),
                             quantity(month.light_w_m2, QStringLiteral("W/m²")),
                             quantity(month.wind_m_s, QStringLiteral("m/s"), 1)));
    Table table = readings_form();
    table.whole = true;
    for (const commissioning::Band& band : month.bands)
        table.rows.push_back({QStringList{capital(say_name(band.label)), band_words(band)}});
    if (month.hours_mid > 0.0)
        table.rows.push_back({QStringList{
            say("First heating, %1 to %2").arg(temperature(month.water_from_c), temperature(month.water_to_c)),
            number(month.hours_low, 1) + say(" to ") + quantity(month.hours_high, QStringLiteral("h"), 1)}});
    flow.table(table);
}

}  // namespace

void readings_table(Flow& flow, const PaperInput& input) {
    const plan::Plan& p = input.plan;
    flow.heading(say("Readings on the day"));
    Table table = readings_form();
    const auto row = [&](const QString& what, const QString& expected) {
        table.rows.push_back({QStringList{what, expected}});
    };
    const std::vector<Step> steps = steps_for(input.job, p);
    // A figure that a step tells stands there alone.
    const auto as_in = [&](const char* figure) { return say("as in step %1").arg(step_that_names(steps, figure)); };
    row(say("Pressure hold, start: bar and °C"), as_in("{test_pressure}"));
    row(say("Pressure hold, end: bar and °C"), say("as start, corrected for temperature"));
    row(say("Vacuum at the end: Pa and °C"), as_in("{vacuum}"));
    row(say("Vacuum after shut-off: Pa and °C"), as_in("{vacuum_limit}"));
    row(say("Extra charge weighed in"), p.run.extra_charge_kg > 0.0005 ? as_in("{extra_charge}") : say("none"));
    row(say("Insulation resistance"), say("1 MΩ or more at 500 V"));
    row(say("Earth resistance"), say("as the local rule asks"));
    row(say("Residual current device, trip time"), say("300 ms or less at rated residual current"));
    const QString current = say("up to %1").arg(quantity(p.expected.rated_current_a, QStringLiteral("A"), 1));
    row(say("Supply current, running"), current);
    row(say("Suction temperature"), say("below the plate's surroundings"));
    row(say("Discharge temperature"), say("up to %1").arg(temperature(p.block.discharge_max_c)));
    row(say("Outdoor temperature"), say("note it"));
    row(say("Water temperature, set-point"), as_in("{set_point}"));
    flow.table(table);
    for (const commissioning::MonthForecast* month : months_shown(input))
        forecast_table(flow, *month);
}

void warm_up_times(Flow& flow, const PaperInput& input) {
    flow.subheading(say("From cold to set-point without draw-off"));
    flow.pairs({{say("Good light: 800 W/m², 20 °C"), warm_up_words(input.plan.warm_up_good)},
                {say("Fair light: 400 W/m², 15 °C"), warm_up_words(input.plan.warm_up_fair)},
                {say("Poor: night, 2 °C"), warm_up_words(input.plan.warm_up_poor)}},
               false, 45.0, least_pt);
}

void hand_over_list(Flow& flow, const PaperInput& input) {
    Table table;
    table.columns = {{QString(), 7.0, false, true}, {say("Shown or given to the client"), 68.0}, {say("Note"), 0.0}};
    table.size_pt = least_pt;
    table.least_row_mm = 6.5;
    table.grid = true;
    table.whole = true;
    const auto row = [&](const QString& what) { table.rows.push_back({QStringList{QString(), what, QString()}}); };
    row(say("Where to switch off: breaker, isolator, control"));
    if (input.plan.services.water.mixing_valve) row(say("Mixing valve: what it is for, set to, °C"));
    row(say("Safety valve: lifted, drips while heating, never shut or plugged"));
    row(say("Papers handed over: booklet, record, makers' sheets"));
    row(say("Whom to call: name, telephone"));
    row(say("Next service: month and year"));
    flow.subheading(say("Hand-over to the client"));
    flow.table(table);
}

}  // namespace wg::ui::paper
