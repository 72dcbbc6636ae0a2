#include <algorithm>
#include <cmath>

#include "core/fixing/snow.h"
#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::plan::steps {
namespace {

constexpr double far_weather_km = 50.0;
constexpr double far_weather_height_m = 300.0;
constexpr double noticeable_shortfall = 0.03;  ///< share of the heat asked for

class Findings {
   public:
    explicit Findings(Plan& plan) : to_(plan.findings) {}
    void add(Severity severity, Stage stage, std::string code, std::string place, std::string message,
             std::string remedy, std::string rule, std::string source, std::string place_id = {}) {
        to_.push_back({std::move(code), severity, stage, std::move(place_id), std::move(place), std::move(message),
                       std::move(remedy), std::move(rule), std::move(source)});
    }

   private:
    std::vector<Finding>& to_;
};

std::string data_of(const std::string& maker, const std::string& name) {
    return "Equipment data of " + maker + ' ' + name;
}

void check_layout_exists(const Selection& with, Findings& findings) {
    if (!with.choice->placements.empty()) return;
    findings.add(Severity::stop, Stage::layout, "layout.no-collector", with.choice->label,
                 "No collector is placed in choice " + with.choice->label, "Place one in Layout",
                 "A system needs at least one collector", "by definition", with.choice->id);
}

void check_equipment(const Job& job, const Selection& with, Findings& findings) {
    const BlockModel& block = *with.block;
    const CylinderModel& cylinder = *with.cylinder;
    const CollectorModel& collector = *with.collector;
    const double area_m2 = collector.face_area_m2 * static_cast<double>(with.choice->placements.size());
    if (area_m2 > 0.0 && (area_m2 < block.collector_area_min_m2 || area_m2 > block.collector_area_max_m2)) {
        const bool small = area_m2 < block.collector_area_min_m2;
        findings.add(
            Severity::caution, Stage::layout, "block.collector-area", block.name,
            "The plates have " + fixed(area_m2, 2) + " m2 a face; the block is made for " +
                fixed(block.collector_area_min_m2, 2) + " to " + fixed(block.collector_area_max_m2, 2) + " m2",
            small ? "Add a collector, or take a smaller block" : "Take away a collector, or take a larger block",
            data_of(block.maker, block.name) + ": collector area", "equipment data");
    }
    if (!cylinder.fits_blocks.empty() &&
        std::find(cylinder.fits_blocks.begin(), cylinder.fits_blocks.end(), block.id) == cylinder.fits_blocks.end()) {
        findings.add(Severity::stop, Stage::layout, "cylinder.block-does-not-fit", cylinder.name,
                     "Block " + block.name + " does not fit cylinder " + cylinder.name,
                     "Choose a block or cylinder that the data name for each other",
                     data_of(cylinder.maker, cylinder.name) + ": blocks that fit", "equipment data");
    }
    if (job.demand.set_point_c > cylinder.max_temperature_c) {
        findings.add(Severity::stop, Stage::visit, "cylinder.set-point", cylinder.name,
                     "The set-point of " + fixed(job.demand.set_point_c, 0) + " deg C is above the " +
                         fixed(cylinder.max_temperature_c, 0) + " deg C that the cylinder is made for",
                     "Lower the set-point to " + fixed(cylinder.max_temperature_c, 0) + " deg C or less",
                     data_of(cylinder.maker, cylinder.name) + ": highest temperature", "equipment data");
    }
    const bool many = with.choice->placements.size() > 2;
    if (many) {
        findings.add(Severity::caution, Stage::layout, "layout.many-collectors", with.choice->label,
                     counted(static_cast<long>(with.choice->placements.size()), "collector", "collectors") +
                         " share one circuit; even flow through them is not worked out here",
                     "Ask the block's maker how they are to be joined", "Even distribution of refrigerant",
                     "common practice, no published source");
    }
}

void check_yield(const Job& job, const Plan& plan, Findings& findings) {
    if (!plan.has_yield) return;
    const season::MonthSums& t = plan.season.total;
    if (t.wanted_kwh > 0.0 && t.shortfall_kwh > noticeable_shortfall * t.wanted_kwh) {
        findings.add(Severity::caution, Stage::yield, "comfort.shortfall", "",
                     fixed(100.0 * t.shortfall_kwh / t.wanted_kwh, 1) + " % of the heat asked for is not there at " +
                         fixed(job.demand.wanted_c, 0) + " deg C (" + fixed(t.shortfall_kwh, 0) + " kWh in a year, " +
                         counted(plan.season.shortfall_draws, "draw", "draws") + ")",
                     "Take a larger cylinder, more collector area or a higher set-point",
                     "Hot water at the wanted temperature", "EU 812/2013 draw-off cycle");
    }
    if (plan.season.off_too_cold_h > 1.0) {
        findings.add(
            Severity::note, Stage::yield, "pump.too-cold", "",
            "In " + fixed(plan.season.off_too_cold_h, 0) +
                " hours of the year heat is wanted and the plate is too cold for the pump; the immersion heater serves",
            "", "Evaporating limit of the block", "equipment data");
    }
    if (plan.season.off_beyond_data_h > 1.0) {
        findings.add(Severity::caution, Stage::yield, "pump.beyond-data", "",
                     "In " + fixed(plan.season.off_beyond_data_h, 0) +
                         " hours of the year heat is wanted where the compressor's data say nothing; the pump is taken "
                         "to be off then and the immersion heater serves",
                     "Ask the maker for coefficients over a wider range, or choose a block whose data reach further",
                     "Stated range of the compressor's ten-coefficient data", "equipment data, EN 12900");
    }
    if (t.rest_h > 1.0) {
        findings.add(Severity::note, Stage::yield, "plate.frost-rest", "",
                     "The pump rests " + fixed(t.rest_h, 0) + " hours a year to let frost thaw; frost lies in " +
                         fixed(t.frost_h, 0) + " hours",
                     "", "Frost limit of the collector", "equipment data");
    }
    if (t.electricity_kwh() > 0.0 && t.immersion_kwh > 0.25 * t.electricity_kwh()) {
        findings.add(Severity::caution, Stage::yield, "heater.large-share", "",
                     "The immersion heater uses " + fixed(100.0 * t.immersion_kwh / t.electricity_kwh(), 0) +
                         " % of the electricity",
                     "Take a larger block or more collector area", "Share of direct heating",
                     "common practice, no published source");
    }
    for (const PlacementPlan& placement : plan.placements) {
        if (placement.plane_unshaded_kwh_m2 <= 0.0) continue;
        const double lost = 1.0 - placement.plane_kwh_m2 / placement.plane_unshaded_kwh_m2;
        if (lost < 0.10) continue;
        std::string worst;
        if (!placement.shade.causes.empty()) worst = ", most of it by " + placement.shade.causes.front().label;
        findings.add(Severity::caution, Stage::layout, "collector.shaded", placement.label,
                     "Shade takes " + fixed(100.0 * lost, 0) + " % of the year's light" + worst,
                     "Move the collector; the shade map shows where it is lighter", "Light on the plate",
                     "common practice, no published source", placement.placement_id);
    }
}

void check_weather(const Job& job, const Selection& with, Findings& findings) {
    const weather::Year& year = with.weather->year;
    if (year.invented) {
        findings.add(Severity::note, Stage::yield, "weather.invented", year.source,
                     "The weather is invented: figures of yield and cost show the method, not a place",
                     "Plan with a weather file of the region", "Weather of the site", "invented climate");
    }
    const Location& at = job.site.location;
    const double dlat_km = 111.2 * (year.latitude_deg - at.latitude_deg);
    const double dlon_km =
        111.2 * std::cos(radians(at.latitude_deg)) * std::remainder(year.longitude_deg - at.longitude_deg, 360.0);
    const double away_km = std::hypot(dlat_km, dlon_km);
    if (away_km > far_weather_km) {
        findings.add(Severity::caution, Stage::yield, "weather.far", year.source,
                     "The weather year is from a place " + fixed(away_km, 0) + " km away",
                     "Plan with a nearer file if there is one", "Weather within " + fixed(far_weather_km, 0) + " km",
                     "common practice, no published source");
    }
    if (std::fabs(year.altitude_m - at.altitude_m) > far_weather_height_m) {
        findings.add(Severity::caution, Stage::yield, "weather.other-height", year.source,
                     "The weather year is from " + fixed(year.altitude_m, 0) + " m, the site lies at " +
                         fixed(at.altitude_m, 0) + " m; air temperature is not corrected for it",
                     "Plan with a file from a similar height",
                     "Weather within " + fixed(far_weather_height_m, 0) + " m of height",
                     "about 6.5 K per 1,000 m, ISO 2533");
    }
}

void check_site_values(const Job& job, const Selection& with, Findings& findings) {
    const fixing::ActionRules& actions = with.rules->actions;
    if (!job.site.basic_wind_m_s) {
        findings.add(Severity::caution, Stage::visit, "site.wind-assumed", "",
                     "The basic wind velocity is not entered; " + fixed(actions.basic_wind_m_s, 1) + " m/s is assumed",
                     "Enter the value for the place from the national annex or map", "EN 1991-1-4, 4.2",
                     with.rules->source);
    }
    if (!job.site.ground_snow_kn_m2) {
        const double by_rule = fixing::site_snow_kn_m2(job.site, actions);
        const bool fixed_value = actions.snow_rule == fixing::SnowRule::fixed;
        findings.add(
            Severity::caution, Stage::visit, "site.snow-assumed", "",
            "The snow load on the ground is not entered; " + fixed(by_rule, 2) + " kN/m2 is " +
                (fixed_value ? "assumed"
                             : "taken from the rule set's region for " + fixed(job.site.location.altitude_m, 0) + " m"),
            "Enter the value for the place from the national annex or map",
            fixed_value ? "EN 1991-1-3, 4.1" : "EN 1991-1-3:2003, annex C", with.rules->source);
    }
}

/// The strictest rule that the refrigerant meets: rule sets list them in that order, and the later steps follow from
/// it.
void check_market(const Selection& with, Findings& findings) {
    for (const MarketRule& rule : with.rules->market) {
        if (with.refrigerant->gwp100() < rule.gwp_from) continue;
        findings.add(
            Severity::caution, Stage::offer, "market.gwp", with.block->name,
            with.refrigerant->name() + " has a GWP of " + fixed(with.refrigerant->gwp100(), 0) + ". " + rule.text,
            "Verify with the maker how the set is classed before offering it", "Placing on the market by GWP",
            rule.source);
        return;
    }
}

void note_simplifications(const Selection& with, const Plan& plan, Findings& findings) {
    if (plan.placements.size() > 1) {
        findings.add(Severity::note, Stage::yield, "simplified.collectors-on-one-circuit", "",
                     "Each collector has its own light, wind and temperature; all share one circuit whose refrigerant "
                     "is taken to spread so that each boils what it takes up",
                     "", "Method", "docs/handbook/plate-and-cycle.md");
    }
    if (with.method->needs_rafters && !plan.placements.empty()) {
        findings.add(Severity::note, Stage::layout, "simplified.rafters-as-surveyed", with.method->label,
                     "Rafter positions are those of the survey; the roof structure itself is not checked",
                     "Confirm the rafters on the day; ask a structural engineer where in doubt", "Method",
                     "docs/handbook/fixings.md");
    }
}

}  // namespace

void checks(const Job& job, const Selection& with, Plan& plan) {
    Findings findings(plan);
    check_layout_exists(with, findings);
    check_equipment(job, with, findings);
    pressure_checks(with, plan);
    charge_duties(with, plan);
    check_yield(job, plan, findings);
    check_weather(job, with, findings);
    check_site_values(job, with, findings);
    check_market(with, findings);
    note_simplifications(with, plan, findings);
    household_checks(job, with, plan);
}

}  // namespace wg::plan::steps
