#include <nlohmann/json.hpp>

#include "core/job/words.h"
#include "core/plan/plan_json_parts.h"

namespace wg::plan::json_parts {
namespace {

Json line_json(const pipework::LineFlow& line) {
    return {{"velocity_m_s", num(line.velocity_m_s, 2)},
            {"friction_pa", num(line.friction_pa, 0)},
            {"head_pa", num(line.head_pa, 0)},
            {"drop_k", num(line.drop_k, 3)}};
}

Json lagging_json(const pipework::LineLagging& line) {
    return {{"wall_mm", num(line.wall_mm, 0)},        {"indoor_mm", num(line.indoor_mm, 0)},
            {"outdoor_mm", num(line.outdoor_mm, 0)},  {"ua_w_k", num(line.ua_w_k, 3)},
            {"gain_w", num(line.gain_w, 1)},          {"gain_low_w", num(line.gain_low_w, 1)},
            {"gain_high_w", num(line.gain_high_w, 1)}};
}

Json to_buy_json(const pipework::LineToBuy& line) {
    Json pieces = Json::array();
    for (const double piece : line.pieces_m)
        pieces.push_back(num(piece, 3));
    return {{"pieces_m", pieces},
            {"cut_m", num(line.cut_m, 2)},
            {"buy_m", num(line.buy_m, 2)},
            {"coils_m", line.coils_m},
            {"lagging_m", num(line.lagging_m, 2)},
            {"lagging_lengths_of_2_m", line.lagging_lengths}};
}

Json oil_json(const pipework::OilReturn& oil) {
    Json risers = Json::array();
    for (const pipework::Riser& riser : oil.risers)
        risers.push_back({{"foot_m", point(riser.foot)}, {"height_m", num(riser.height_m, 2)}});
    Json traps = Json::array();
    for (const pipework::OilTrap& trap : oil.traps)
        traps.push_back({{"at_m", point(trap.at)}, {"leg", trap.leg + 1}, {"foot", trap.foot}});
    Json out{{"level_m", num(oil.level_m, 2)}, {"risers", risers}, {"traps", traps}};
    out["least_velocity_m_s"] = oil.known ? num(oil.velocity_m_s, 2) : Json();
    out["riser_needs_m_s"] = oil.known ? num(oil.riser_m_s, 2) : Json();
    return out;
}

/// Both lines over the points of the year, or over the named ones.
Json losses_json(const Plan& plan) {
    const pipework::LinesMean& m = plan.run.mean;
    if (m.points == 0) return nullptr;
    Json points = Json::array();
    for (const pipework::PointLines& p : plan.run.points) {
        if (!p.known) continue;
        points.push_back({{"evaporating_c", num(p.at.evaporating_c, 1)},
                          {"condensing_c", num(p.at.condensing_c, 1)},
                          {"evaporator_w", num(p.at.evaporator_w, 0)},
                          {"weight", num(p.at.weight, 2)},
                          {"flow_kg_s", num(p.flow_kg_s, 5)},
                          {"suction", line_json(p.suction)},
                          {"small", line_json(p.small)}});
    }
    return {{"points", points},
            {"of_the_year", plan.has_yield},
            {"suction_drop_k", num(m.suction_drop_k, 3)},
            {"suction_friction_pa", num(m.suction_friction_pa, 0)},
            {"small_friction_pa", num(m.small_friction_pa, 0)},
            {"small_head_pa", num(m.small_head_pa, 0)},
            {"factor_percent_first_order", num(100.0 * m.factor_share, 2)},
            {"factor_percent", plan.run_loss_percent ? num(*plan.run_loss_percent, 2) : Json()}};
}

}  // namespace

Json run_json(const Plan& plan) {
    const pipework::Run& run = plan.run;
    Json legs = Json::array();
    for (const pipework::Leg& leg : run.legs) {
        legs.push_back({{"from_m", point(leg.from)},
                        {"to_m", point(leg.to)},
                        {"length_m", num(leg.length_m, 3)},
                        {"outdoors", leg.outdoors},
                        {"ends_at", key_of(leg.ends_at)}});
    }
    return {{"length_m", num(run.length_m, 3)},
            {"lift_m", num(run.lift_m, 3)},
            {"bends", run.bends},
            {"passages", run.passages},
            {"equivalent_m", num(run.equivalent_m, 2)},
            {"extra_charge_kg", num(run.extra_charge_kg, 4)},
            {"total_charge_kg", num(run.total_charge_kg, 4)},
            {"total_charge_t_co2e", num(run.total_charge_t_co2e, 4)},
            {"coil_liquid_m", num(run.coil_liquid_m, 2)},
            {"coil_suction_m", num(run.coil_suction_m, 2)},
            {"insulation_mm", num(run.insulation_mm, 0)},
            {"suction_loss_pa", num(run.suction_loss_pa, 0)},
            {"suction_drop_k", num(run.suction_drop_k, 3)},
            {"suction_velocity_m_s", num(run.suction_velocity_m_s, 2)},
            {"liquid_head_pa", num(run.liquid_head_pa, 0)},
            {"suggested", plan.run_suggested},
            {"small_line", run.expansion == ExpansionPlace::block ? "two-phase" : "liquid"},
            {"small_insulation_mm", num(run.small_insulation_mm, 0)},
            {"outdoor_m", num(run.lagging.outdoor_m, 2)},
            {"indoor_m", num(run.lagging.indoor_m, 2)},
            {"lagging", {{"small", lagging_json(run.lagging.small)}, {"suction", lagging_json(run.lagging.suction)}}},
            {"to_buy", {{"small", to_buy_json(run.small_to_buy)}, {"suction", to_buy_json(run.suction_to_buy)}}},
            {"oil", oil_json(run.oil)},
            {"losses", losses_json(plan)},
            {"legs", legs}};
}

}  // namespace wg::plan::json_parts
