// The house's side of plan.json: services, charge duties, test pressures.
#include <optional>

#include "core/plan/plan_json_parts.h"

namespace wg::plan::json_parts {
namespace {

Json told(const std::optional<double>& value, int decimals) {
    return value ? num(*value, decimals) : Json(nullptr);
}
/// 0 stands for what does not apply or is not known.
Json unless_zero(double value, int decimals) {
    return value > 0.0 ? num(value, decimals) : Json(nullptr);
}

Json supply_checks(const services::Electrical& e) {
    Json out = Json::array();
    for (const services::SupplyCheck& check : e.checks)
        out.push_back({{"what", check.what},
                       {"needed", check.needed},
                       {"found", check.answer == services::Answer::not_told ? Json(nullptr) : Json(check.found)},
                       {"answer", services::word(check.answer)}});
    return out;
}

Json legs(const services::Water& w) {
    Json out = Json::array();
    for (const services::LegToTap& leg : w.legs)
        out.push_back({{"label", leg.label},
                       {"litres", num(leg.litres, 2)},
                       {"litres_to_hot", num(leg.litres_to_hot, 2)},
                       {"seconds_to_hot", num(leg.seconds_to_hot, 0)},
                       {"off_the_loop", leg.off_the_loop}});
    return out;
}

}  // namespace

Json services_json(const services::Outcome& s) {
    const services::Electrical& e = s.electrical;
    const services::Water& w = s.water;
    return {{"running_a", num(e.running_a, 2)},
            {"starting_a", num(e.starting_a, 2)},
            {"cable_mm2", num(e.cable_mm2, 1)},
            {"cable_m", num(e.cable_m, 1)},
            {"way_m", num(e.way_m, 1)},
            {"cable_carries_a", num(e.carries_a, 1)},
            {"ambient_factor", num(e.ambient_factor, 3)},
            {"grouping_factor", num(e.grouping_factor, 2)},
            {"drop_percent", num(e.drop_percent, 2)},
            {"start_drop_percent", num(e.start_drop_percent, 2)},
            {"breaker_a", num(e.breaker_a, 0)},
            {"residual_current_ma", num(e.residual_current_ma, 0)},
            {"residual_current_type", e.residual_current_type},
            {"earth_electrode_max_ohm", unless_zero(e.electrode_max_ohm, 0)},
            {"fault_loop_max_ohm", unless_zero(e.loop_max_ohm, 2)},
            {"fault_loop_reading_max_ohm", unless_zero(e.loop_reading_max_ohm, 2)},
            {"bonding_mm2", num(e.bonding_mm2, 0)},
            {"lightning_separation_m", unless_zero(e.separation_m, 2)},
            {"lightning_separation_severest_m", unless_zero(e.separation_severest_m, 2)},
            {"supply_checks", supply_checks(e)},
            {"expansion_l", num(w.expansion_l, 2)},
            {"vessel_l", num(w.vessel_l, 0)},
            {"vessel_precharge_bar", num(w.vessel_precharge_bar, 1)},
            {"safety_valve_bar", num(w.safety_valve_bar, 1)},
            {"reducing_valve", w.reducing_valve},
            {"pressure_at_cylinder_bar", num(w.pressure_at_cylinder_bar, 2)},
            {"tap_static_bar", told(w.tap_static_bar, 2)},
            {"tap_flowing_bar", told(w.tap_flowing_bar, 2)},
            {"discharge_to_tundish_mm", num(w.valve_outlet_mm, 0)},
            {"discharge_mm", unless_zero(w.discharge_mm, 0)},
            {"hot_loading_units", num(w.hot_units, 0)},
            {"cold_loading_units", num(w.cold_units, 0)},
            {"hot_pipe_mm", unless_zero(w.hot_pipe_mm, 1)},
            {"cold_pipe_mm", unless_zero(w.cold_pipe_mm, 1)},
            {"design_flow_l_s", unless_zero(w.design_flow_l_s, 3)},
            {"hot_loss_bar", unless_zero(w.hot_loss_bar, 3)},
            {"recirculation_kwh", num(w.recirculation_kwh, 0)},
            {"dead_legs", legs(w)},
            {"mixing_valve", w.mixing_valve},
            {"to_be_made", w.to_be_made},
            {"filled_mass_kg", num(s.filled_mass_kg, 0)},
            {"flammable_room",
             {{"allowed_kg", unless_zero(s.room.allowed_kg, 3)},
              {"least_area_m2", unless_zero(s.room.least_area_m2, 1)},
              {"opening_m2", unless_zero(s.room.opening_m2, 3)},
              {"volume_m3", unless_zero(s.room.volume_m3, 1)},
              {"share_of_flammability_limit", unless_zero(s.room.share_of_limit, 3)}}}};
}

Json duties_json(const ChargeDuty& duty) {
    if (!duty.named) return nullptr;
    return {{"fluorinated", duty.fluorinated},
            {"counted_by", duty.by_mass ? "kg" : "t_co2e"},
            {"charge_kg", num(duty.kg, 4)},
            {"charge_t_co2e", num(duty.t_co2e, 4)},
            {"leak_checks_from", unless_zero(duty.first_from, 3)},
            {"leak_check_months", duty.leak_check_months > 0 ? Json(duty.leak_check_months) : Json(nullptr)},
            {"records", duty.records},
            {"source", duty.source}};
}

Json pressure_tests_json(const PressureTests& tests) {
    return {{"weakest_bar", num(tests.weakest_bar, 1)},
            {"weakest_part", tests.weakest_part},
            {"standstill_bar", tests.standstill_known ? num(tests.standstill_bar, 1) : Json(nullptr)},
            {"tightness_bar", num(tests.tightness_bar, 1)},
            {"strength_bar", num(tests.strength_bar, 1)}};
}

}  // namespace wg::plan::json_parts
