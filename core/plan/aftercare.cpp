#include <algorithm>
#include <charconv>

#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/sun/extraterrestrial.h"

namespace wg::plan::steps {
namespace {

/// Whether a service rule applies to what is fitted, and why, in words; empty: it does not apply.
std::string why_due(const ServiceRule& rule, const Plan& plan, const refrigerant::Properties& refrigerant) {
    if (rule.when == "always") return "for every system";
    if (rule.when == "anode")
        return plan.cylinder.anode.empty() ? "" : "the cylinder has an anode: " + plan.cylinder.anode;
    if (rule.when == "flammable") {
        return refrigerant.lower_flammability_kg_m3() > 0.0
                   ? refrigerant.name() + " is flammable (class " + refrigerant.safety_class() + ")"
                   : "";
    }
    if (rule.when == "leak_duty") {
        const ChargeDuty& duty = plan.duty;
        if (duty.leak_check_months == 0) return "";
        return duty.by_mass
                   ? "the charge is " + fixed(duty.kg, 2) + " kg of " + refrigerant.name() + ", from " +
                         fixed(duty.first_from, 0) + " kg on"
                   : "the charge is " + fixed(duty.t_co2e, 2) + " t CO2e, from " + fixed(duty.first_from, 0) + " t on";
    }
    const std::string by_emission = "t_co2e>=";
    if (rule.when.rfind(by_emission, 0) == 0) {
        double limit_t = 0.0;
        const char* const end = rule.when.data() + rule.when.size();
        if (std::from_chars(rule.when.data() + by_emission.size(), end, limit_t).ptr != end) return "";
        return plan.run.total_charge_t_co2e >= limit_t ? "the charge is " + fixed(plan.run.total_charge_t_co2e, 2) +
                                                             " t CO2e, from " + fixed(limit_t, 0) + " t on"
                                                       : "";
    }
    return "";
}

}  // namespace

void aftercare(const Job& job, const Selection& with, const season::Input* input, Plan& plan) {
    commissioning::Expected& expected = plan.expected;
    expected.test_pressure_bar = plan.pressure_tests.tightness_bar;
    expected.max_pressure_bar = plan.pressure_tests.weakest_bar;
    expected.extra_charge_kg = plan.run.extra_charge_kg;
    expected.rated_current_a = with.block->max_current_a;
    expected.set_point_c = job.demand.set_point_c;
    expected.standstill_bar = plan.pressure_tests.standstill_known ? plan.pressure_tests.standstill_bar : 0.0;
    expected.factory_charge_kg = with.block->charge_kg;
    expected.limits = job.limits;
    expected.earthing = job.site.electrics.earthing;
    expected.safety_valve_bar = plan.services.water.safety_valve_bar;
    if (job.site.water.reducing_valve || plan.services.water.reducing_valve)
        expected.reducing_valve_bar = job.site.water.reduced_to_bar;
    expected.supply_v = with.block->supply_v;
    expected.most_loop_ohm = plan.services.electrical.loop_reading_max_ohm;
    expected.condenser_immersed = with.block->condenser == CondenserKind::immersed;
    expected.air_pressure_bar = 1e-5 * standard_pressure_pa_at(job.site.altitude_m);
    expected.plan_revision = job.revision;
    expected.plan_mark = plan.plan_mark;
    if (job.demand.hygiene.rule != HygieneRule::none) {
        expected.hygiene_target_c = job.demand.hygiene.target_c;
        expected.hygiene_every_days = job.demand.hygiene.rule == HygieneRule::daily ? 1.0 : 7.0;
    }
    // Plates stand outdoors; of the lines, the part before the first passage is taken as outdoors.
    const double plates_l = with.collector->volume_l * static_cast<double>(plan.placements.size());
    const auto bore_l_per_m = [](double od_mm) {
        const double bore_mm = std::max(0.0, od_mm - 1.6);  // wall 0.8 mm, EN 12735-1
        return 0.25 * pi * bore_mm * bore_mm * 1e-3;
    };
    const double litre_per_m = bore_l_per_m(with.block->liquid_od_mm) + bore_l_per_m(with.block->suction_od_mm);
    double outdoors_m = 0.0;
    for (const pipework::Leg& leg : plan.run.legs) {
        outdoors_m += leg.length_m;
        if (leg.ends_at != RoutePointKind::free) break;
    }
    const double lines_l = litre_per_m * plan.run.length_m;
    const double total_l = plates_l + lines_l;
    if (total_l > 0.0) {
        expected.tested_volume_l = total_l;
        expected.volume_outdoors = (plates_l + litre_per_m * outdoors_m) / total_l;
    }

    // The pump's map takes longer than all verdicts: made only when something is held against it.
    commissioning::Model model;
    model.input = input;
    model.utc_offset_h = with.weather->year.utc_offset_h;
    std::optional<heatpump::HeatPump> pump;
    if (!plan.placements.empty() && (input != nullptr || !job.record.empty())) {
        const PlacementPlan& first = plan.placements.front();
        model.plate = heatpump::plate_of(*with.collector, static_cast<int>(plan.placements.size()),
                                         first.placed.tilt_deg, first.shade.sky_view, first.on_frame);
        model.line = {plan.run.line_ua_w_k, plan.run.suction_drop_k};
        if (Result<heatpump::HeatPump> made = heatpump::HeatPump::make(*with.block, *with.refrigerant); made)
            model.pump = &pump.emplace(std::move(made).value());
    }
    plan.assessments = commissioning::assess(job.record, expected, &model);
    plan.service_assessments = commissioning::assess_service(job.record, expected, &model);
    plan.forecasts = forecasts(model);
    for (const ServiceRule& rule : with.rules->service) {
        const std::string why = why_due(rule, plan, *with.refrigerant);
        const int months = rule.when == "leak_duty" ? plan.duty.leak_check_months : rule.every_months;
        if (!why.empty()) plan.service.push_back({rule.id, rule.text, months, why, rule.source});
    }
}

}  // namespace wg::plan::steps
