#include <nlohmann/json.hpp>

#include "core/equipment/codec.h"
#include "core/equipment/compressor_codec.h"
#include "core/equipment/keys.h"
#include "core/job/words.h"

namespace wg {
namespace {

using nlohmann::ordered_json;

template <class E>
const std::string& key(const std::vector<std::string>& keys, E value) {
    return keys[static_cast<std::size_t>(value)];
}

ordered_json point(Point2 p) {
    return ordered_json::array({p.x_m, p.y_m});
}

ordered_json to_json(const Iso9806& c) {
    return {{"eta0_b", c.zero_loss},
            {"kd", c.diffuse},
            {"b0", c.incidence_b0},
            {"a1", c.a1},
            {"a2", c.a2},
            {"a3", c.a3},
            {"a4", c.a4},
            {"a5", c.a5},
            {"a6", c.a6},
            {"a7", c.a7},
            {"a8", c.a8},
            {"tested_plate_to_fluid_w_m2k", c.plate_to_fluid_w_m2k}};
}

ordered_json to_json(const CollectorModel& c) {
    ordered_json points = ordered_json::array();
    for (const Point2 p : c.fixing_points)
        points.push_back(point(p));
    ordered_json out = {{"id", c.id},
                        {"maker", c.maker},
                        {"name", c.name},
                        {"invented", c.invented},
                        {"length_m", c.length_m},
                        {"width_m", c.width_m},
                        {"face_area_m2", c.face_area_m2},
                        {"mass_kg", c.mass_kg},
                        {"volume_l", c.volume_l},
                        {"absorptance", c.absorptance},
                        {"emittance", c.emittance},
                        {"plate_to_refrigerant_w_m2k", c.plate_to_refrigerant_w_m2k},
                        {"max_pressure_bar", c.max_pressure_bar},
                        {"level_side", key(equipment_keys::level_side(), c.level_side)},
                        {"right_hand", c.right_hand},
                        {"left_hand", c.left_hand},
                        {"tilt_min_deg", c.tilt_min_deg},
                        {"tilt_max_deg", c.tilt_max_deg},
                        {"tilt_recommended_min_deg", c.tilt_recommended_min_deg},
                        {"tilt_recommended_max_deg", c.tilt_recommended_max_deg},
                        {"liquid_connection", point(c.liquid_connection)},
                        {"suction_connection", point(c.suction_connection)},
                        {"liquid_od_mm", c.liquid_od_mm},
                        {"suction_od_mm", c.suction_od_mm},
                        {"fixing_points", points},
                        {"screws_per_point", c.screws_per_point},
                        {"profile_stiffness_nm2", c.profile_stiffness_nm2},
                        {"profile_moment_nm", c.profile_moment_nm},
                        {"profile_bolt_mm", c.profile_bolt_mm},
                        {"profile_bolt_n_mm2", c.profile_bolt_n_mm2},
                        {"stand_off_m", c.stand_off_m},
                        {"clearance_m", c.clearance_m},
                        {"rear_exposure", c.rear_exposure},
                        {"frost_limit_kg_m2", c.frost_limit_kg_m2},
                        {"channel_drop_k", c.channel_drop_k},
                        {"channel_drop_at_w", c.channel_drop_at_w}};
    if (c.iso9806) out["iso9806"] = to_json(*c.iso9806);
    return out;
}

ordered_json to_json(const BlockModel& b) {
    ordered_json out = {{"id", b.id},
                        {"maker", b.maker},
                        {"name", b.name},
                        {"invented", b.invented},
                        {"refrigerant", key(equipment_keys::refrigerant(), b.refrigerant)}};
    if (b.compressor) {
        out["compressor"] = compressor_codec::to_json(*b.compressor);
    } else {
        const ordered_json curves = {{"displacement_cm3", b.displacement_cm3},
                                     {"speed_rpm", b.speed_rpm},
                                     {"volumetric_at_unity", b.volumetric_at_unity},
                                     {"volumetric_slope", b.volumetric_slope},
                                     {"overall_peak", b.overall_peak},
                                     {"overall_peak_at", b.overall_peak_at},
                                     {"overall_curvature", b.overall_curvature}};
        out.update(curves);
    }
    const ordered_json rest = {{"superheat_k", b.superheat_k},
                               {"subcooling_k", b.subcooling_k},
                               {"shell_loss", b.shell_loss},
                               {"evaporating_min_c", b.evaporating_min_c},
                               {"evaporating_max_c", b.evaporating_max_c},
                               {"condensing_max_c", b.condensing_max_c},
                               {"discharge_max_c", b.discharge_max_c},
                               {"pressure_ratio_max", b.pressure_ratio_max},
                               {"least_lift_k", b.least_lift_k},
                               {"condenser", key(equipment_keys::condenser(), b.condenser)},
                               {"condenser_double_wall", b.condenser_double_wall},
                               {"condenser_w_k", b.condenser_w_k},
                               {"condenser_zone", b.condenser_zone},
                               {"condenser_glide_k", b.condenser_glide_k},
                               {"defrost", key(equipment_keys::defrost(), b.defrost)},
                               {"min_run_s", b.min_run_s},
                               {"min_rest_s", b.min_rest_s},
                               {"standby_w", b.standby_w},
                               {"mass_kg", b.mass_kg},
                               {"charge_kg", b.charge_kg},
                               {"precharged_min_m", b.precharged_min_m},
                               {"precharged_max_m", b.precharged_max_m},
                               {"extra_charge_g_m", b.extra_charge_g_m},
                               {"run_max_m", b.run_max_m},
                               {"lift_max_m", b.lift_max_m},
                               {"liquid_od_mm", b.liquid_od_mm},
                               {"suction_od_mm", b.suction_od_mm},
                               {"max_pressure_high_bar", b.max_pressure_high_bar},
                               {"max_pressure_low_bar", b.max_pressure_low_bar},
                               {"line_max_pressure_bar", b.line_max_pressure_bar},
                               {"test_pressure_bar", b.test_pressure_bar},
                               {"collector_area_min_m2", b.collector_area_min_m2},
                               {"collector_area_max_m2", b.collector_area_max_m2},
                               {"supply_v", b.supply_v},
                               {"supply_phases", b.supply_phases},
                               {"supply_hz", b.supply_hz},
                               {"max_current_a", b.max_current_a},
                               {"start_current_a", b.start_current_a},
                               {"breaker_a", b.breaker_a},
                               {"breaker_curve", b.breaker_curve},
                               {"residual_current_ma", b.residual_current_ma},
                               {"release_height_m", b.release_height_m},
                               {"expansion", key(equipment_keys::expansion(), b.expansion)},
                               {"oil_trap_every_m", b.oil_trap_every_m},
                               {"least_flow_share", b.least_flow_share},
                               {"power_factor", b.power_factor},
                               {"ventilated_enclosure", b.ventilated_enclosure}};
    out.update(rest);
    return out;
}

ordered_json to_json(const CylinderModel& c) {
    return {{"id", c.id},
            {"maker", c.maker},
            {"name", c.name},
            {"invented", c.invented},
            {"volume_l", c.volume_l},
            {"height_m", c.height_m},
            {"diameter_m", c.diameter_m},
            {"mass_kg", c.mass_kg},
            {"standing_loss_kwh_24h", c.standing_loss_kwh_24h},
            {"immersion_w", c.immersion_w},
            {"max_pressure_bar", c.max_pressure_bar},
            {"max_temperature_c", c.max_temperature_c},
            {"sensor_height", c.sensor_height},
            {"immersion_height", c.immersion_height},
            {"anode", c.anode},
            {"anode_check_months", c.anode_check_months},
            {"connections", c.connections},
            {"recirculation_port", c.recirculation_port},
            {"fits_blocks", c.fits_blocks}};
}

ordered_json to_json(const FixingMethod& m) {
    ordered_json coverings = ordered_json::array();
    for (const Covering covering : m.coverings)
        coverings.push_back(key_of(covering));
    return {{"id", m.id},
            {"label", m.label},
            {"invented", m.invented},
            {"coverings", coverings},
            {"needs_rafters", m.needs_rafters},
            {"screw_diameter_mm", m.screw_diameter_mm},
            {"screw_grip_mm", m.screw_grip_mm},
            {"screws_per_point", m.screws_per_point},
            {"pull_out_n", m.pull_out_n},
            {"shear_n", m.shear_n},
            {"edge_distance_m", m.edge_distance_m},
            {"kind", key(equipment_keys::fixing_kind(), m.kind)},
            {"spacing_min_m", m.spacing_min_m},
            {"joint_distance_m", m.joint_distance_m},
            {"drill_mm", m.drill_mm},
            {"depth_mm", m.depth_mm},
            {"torque_nm", m.torque_nm},
            {"head_diameter_mm", m.head_diameter_mm},
            {"head_strength_n_mm2", m.head_strength_n_mm2},
            {"bolt_mm", m.bolt_mm},
            {"bolt_n_mm2", m.bolt_n_mm2},
            {"ballast_kg", m.ballast_kg},
            {"friction", m.friction},
            {"frame_depth_m", m.frame_depth_m},
            {"frame_mass_kg", m.frame_mass_kg},
            {"steps", m.steps}};
}

template <class T>
ordered_json list(const std::vector<T>& items) {
    ordered_json out = ordered_json::array();
    for (const T& item : items)
        out.push_back(to_json(item));
    return out;
}

}  // namespace

std::string catalogue_to_json(const Catalogue& catalogue, const std::string& note) {
    ordered_json document = {{"schema", 1}};
    if (!note.empty()) document["note"] = note;
    document["collectors"] = list(catalogue.collectors);
    document["blocks"] = list(catalogue.blocks);
    document["cylinders"] = list(catalogue.cylinders);
    document["fixing_methods"] = list(catalogue.fixing_methods);
    // Text that is not UTF-8 cannot have come from a file; replaced rather than thrown.
    return document.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + '\n';
}

}  // namespace wg
