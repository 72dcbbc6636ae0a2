// Findings on comfort, hygiene programme, control and loop.
#include "core/plan/parts_of_plan.h"
#include "core/quantity/text.h"

namespace wg::plan::steps {
namespace {

class Findings {
   public:
    explicit Findings(Plan& plan) : to_(plan.findings) {}
    void add(Severity severity, std::string code, std::string message, std::string remedy, std::string rule,
             std::string source) {
        to_.push_back({std::move(code), severity, Stage::yield, "", "", std::move(message), std::move(remedy),
                       std::move(rule), std::move(source)});
    }

   private:
    std::vector<Finding>& to_;
};

const char* const legionella_source = "HSE, HSG274 part 2, 2014";
const char* const method_source = "docs/handbook/season.md";

bool has_programme(const Demand& demand) {
    return demand.hygiene.rule != HygieneRule::none ||
           (demand.control.hygiene_before_return && !demand.holidays.empty());
}

void check_hygiene_runs(const Job& job, const Selection& with, const season::Year& year, Findings& findings) {
    const Hygiene& hygiene = job.demand.hygiene;
    const std::string runs = " of " + counted(year.hygiene_runs, "hygiene run", "hygiene runs");
    const std::string target = fixed(hygiene.target_c, 0) + " deg C for " + fixed(hygiene.hold_min, 0) + " minutes";
    if (year.hygiene_missed > 0) {
        findings.add(Severity::caution, "hygiene.not-reached",
                     std::to_string(year.hygiene_missed) + runs + " end after 8 hours without " + target +
                         ": the sources are too weak for it, or draws come in between",
                     "Fit a stronger immersion heater, begin earlier in the night, or take another cylinder or block",
                     "The target held in all water", legionella_source);
    }
    if (year.hygiene_upper_only > 0) {
        const double lower_l = with.cylinder->immersion_height * with.cylinder->volume_l;
        findings.add(Severity::caution, "hygiene.upper-part-only",
                     std::to_string(year.hygiene_upper_only) + runs + " hold " + target +
                         " only above the immersion heater; the " + fixed(lower_l, 0) +
                         " l below it are no hotter than the heat pump makes them",
                     "Choose a target within the heat pump's envelope, a lower immersion heater, or a circulating pump "
                     "for the run",
                     "The target held in all water", legionella_source);
    }
}

void check_programme(const Job& job, const Selection& with, const Plan& plan, Findings& findings) {
    const Hygiene& hygiene = job.demand.hygiene;
    if (!has_programme(job.demand)) {
        findings.add(Severity::note, "simplified.hygiene-programme",
                     "No hygiene programme is counted in the year: if local rules ask for one, its heat comes from the "
                     "immersion heater and adds to the electricity",
                     "", "Method", method_source);
        return;
    }
    if (hygiene.target_c > with.cylinder->max_temperature_c) {
        findings.add(Severity::stop, "hygiene.over-cylinder-limit",
                     "The hygiene programme asks for " + fixed(hygiene.target_c, 0) +
                         " deg C; the cylinder is made for " + fixed(with.cylinder->max_temperature_c, 0) + " deg C",
                     "Lower the target or choose another cylinder", "Highest temperature of the cylinder",
                     "equipment data");
    }
    check_hygiene_runs(job, with, plan.season, findings);
    findings.add(Severity::note, "hygiene.cost",
                 "The hygiene programme uses " + fixed(plan.season.total.hygiene_kwh, 0) +
                     " kWh of the year's electricity in " + counted(plan.season.hygiene_runs, "run", "runs") +
                     "; the store is hot afterwards: mind the mixing "
                     "valve",
                 "", "Method", method_source);
}

void check_control(const Job& job, const Selection& with, const Plan& plan, Findings& findings) {
    const Demand& d = job.demand;
    if (d.recirculation.present && !with.cylinder->recirculation_port) {
        findings.add(Severity::caution, "loop.no-port",
                     "The house has a recirculation loop and the cylinder no connection for it",
                     "Choose a cylinder with a recirculation connection, or return through the cold inlet as its maker "
                     "allows",
                     "A connection for the loop's return", "equipment data");
    }
    if (!d.holidays.empty() && d.control.holiday_rule == HolidayRule::off) {
        findings.add(Severity::note, "holidays.off",
                     "In holidays the set is off and nothing keeps cylinder and pipes from freezing",
                     "Take 'off but kept from freezing' where the room can freeze", "Frost protection",
                     "common practice, no published source");
    }
    if (!d.holidays.empty() && d.control.holiday_rule != HolidayRule::as_usual && !has_programme(d)) {
        findings.add(Severity::caution, "holidays.no-hygiene-run",
                     "The store stands lukewarm in holidays and no hygiene run comes before the return",
                     "Switch on the hygiene run before return", "Water that stood is heated before use",
                     legionella_source);
    }
    const season::MonthSums& t = plan.season.total;
    if (t.short_h > 0.0) {
        findings.add(Severity::note, "comfort.hours",
                     "In " + fixed(t.short_h, 0) + " hours of the year somebody draws water below " +
                         fixed(d.wanted_c, 0) + " deg C: " + fixed(t.short_litres, 0) + " l in all, the coldest at " +
                         fixed(plan.season.coldest_draw_c, 0) + " deg C",
                     "", "Hot water at the wanted temperature", method_source);
    }
    if (d.draw_source == DrawSource::household) {
        findings.add(Severity::note, "simplified.household",
                     "Draws are made up for a household of " + std::to_string(d.household.persons) +
                         "; real people differ from day to day in another way",
                     "", "Method", "docs/handbook/household.md");
    }
}

}  // namespace

void household_checks(const Job& job, const Selection& with, Plan& plan) {
    if (!plan.has_yield) return;
    Findings findings(plan);
    check_programme(job, with, plan, findings);
    check_control(job, with, plan, findings);
}

}  // namespace wg::plan::steps
