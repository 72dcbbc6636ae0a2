#include "core/equipment/codec.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <nlohmann/json.hpp>
#include <set>

#include "core/equipment/compressor_codec.h"
#include "core/equipment/fields.h"
#include "core/equipment/keys.h"
#include "core/job/words.h"
#include "core/quantity/constants.h"
#include "core/quantity/utf8.h"

namespace wg {
namespace {

using fields::figure;
using fields::Reader;

constexpr int catalogue_schema = 1;
constexpr double lower_edge_m = 0.05;  // a connection further up the plate is not 'at the lower edge'

void read_names(Reader& r, std::string& id, std::string& maker, std::string& name, bool& invented) {
    id = r.text("id");
    r.name_by(id);
    maker = r.text("maker");
    name = r.text("name");
    invented = r.flag_or("invented", false);
}

// True when `low` is not above `high`; else a problem at `low_key`.
void expect_order(Reader& r, const char* low_key, double low, const char* high_key, double high) {
    if (low > high) {
        r.problem(low_key, "is " + figure(low) + ", above " + high_key + " of " + figure(high),
                  "Correct one of the two");
    }
}

void check_collector_geometry(Reader& r, const CollectorModel& c) {
    expect_order(r, "width_m", c.width_m, "length_m", c.length_m);
    const double gross_m2 = c.length_m * c.width_m;
    if (c.face_area_m2 > gross_m2 * 1.001) {  // 0.1 %: the three figures are each rounded on data sheets
        r.problem("face_area_m2", "is " + figure(c.face_area_m2) + " m2, above length x width = " + figure(gross_m2),
                  "Give the area of one face, without frame");
    }
    if (c.face_area_m2 < 0.5 * gross_m2) {
        r.problem("face_area_m2", "is " + figure(c.face_area_m2) + " m2, less than half of length x width",
                  "Give the area of one face, and length and width in metres");
    }
    expect_order(r, "tilt_min_deg", c.tilt_min_deg, "tilt_max_deg", c.tilt_max_deg);
    expect_order(r, "tilt_recommended_min_deg", c.tilt_recommended_min_deg, "tilt_recommended_max_deg",
                 c.tilt_recommended_max_deg);
    expect_order(r, "tilt_min_deg", c.tilt_min_deg, "tilt_recommended_min_deg", c.tilt_recommended_min_deg);
    expect_order(r, "tilt_recommended_max_deg", c.tilt_recommended_max_deg, "tilt_max_deg", c.tilt_max_deg);
    expect_order(r, "liquid_od_mm", c.liquid_od_mm, "suction_od_mm", c.suction_od_mm);

    const auto on_plate = [&c](Point2 p) {
        return p.x_m >= 0.0 && p.x_m <= c.length_m && p.y_m >= 0.0 && p.y_m <= c.width_m;
    };
    const auto check_connection = [&](const char* key, Point2 p) {
        if (!on_plate(p)) {
            r.problem(key, "lies outside the plate", "Measure from the lower left corner, in metres");
        } else if (p.y_m > lower_edge_m) {
            r.problem(key, "lies " + figure(p.y_m) + " m above the lower edge",
                      "Connections must leave downwards there");
        }
    };
    check_connection("liquid_connection", c.liquid_connection);
    check_connection("suction_connection", c.suction_connection);
    if (c.liquid_connection == c.suction_connection) {
        r.problem("suction_connection", "is the same point as liquid_connection", "Give both positions");
    }
    std::set<std::pair<double, double>> seen;
    for (std::size_t i = 0; i < c.fixing_points.size(); ++i) {
        const Point2 p = c.fixing_points[i];
        if (!on_plate(p)) {
            r.problem("fixing_points", "entry " + std::to_string(i) + " lies outside the plate",
                      "Measure from the lower left corner, in metres");
        }
        if (!seen.insert({p.x_m, p.y_m}).second) {
            r.problem("fixing_points", "entry " + std::to_string(i) + " stands twice", "Remove one");
        }
    }
    if (c.fixing_points.size() < 2) {
        r.problem("fixing_points", "has fewer than two points", "Give every point of the maker's drawing");
    }
    if (!c.right_hand && !c.left_hand) {
        r.problem("right_hand", "and left_hand are both false", "A collector is made in at least one hand");
    }
}

// `before`: problems when the collector was begun; its sizes are in what the coefficients must be together.
Iso9806 read_iso9806(Reader& r, const CollectorModel& model, std::size_t before) {
    Iso9806 c;
    c.diffuse = r.number_or("kd", 1.0, 0.5, 1.1, "");
    const bool by_beam = r.has("eta0_b");
    if (by_beam == r.has("eta0_hem")) {
        r.problem("", by_beam ? "holds both eta0_b and eta0_hem" : "holds neither eta0_b nor eta0_hem",
                  "Give one of the two zero-loss efficiencies");
    }
    // Hemispherical light of the standard is 0.85 beam and 0.15 diffuse (annex B).
    c.zero_loss = by_beam ? r.number("eta0_b", 0.1, 1.1, "") : r.number_or("eta0_hem", 0.9, 0.1, 1.1, "");
    if (!by_beam) c.zero_loss /= c.hemispherical();
    if (by_beam) (void)r.number_or("eta0_hem", 0.9, 0.1, 1.1, "");
    c.incidence_b0 = r.number_or("b0", 0.0, 0.0, 0.5, "");
    c.a1 = r.number("a1", 1.0, 100.0, "W/(m2 K)");
    c.a2 = r.number_or("a2", 0.0, 0.0, 0.2, "W/(m2 K2)");
    c.a3 = r.number("a3", 0.0, 20.0, "J/(m3 K)");
    c.a4 = r.number("a4", 0.0, 1.0, "");
    c.a5 = r.number_or("a5", 0.0, 0.0, 200e3, "J/(m2 K)");
    c.a6 = r.number_or("a6", 0.0, 0.0, 0.2, "s/m");
    c.a7 = r.number_or("a7", 0.0, 0.0, 0.2, "s/m");
    c.a8 = r.number_or("a8", 0.0, 0.0, 1e-6, "W/(m2 K4)");
    c.plate_to_fluid_w_m2k =
        r.number_or("tested_plate_to_fluid_w_m2k", model.plate_to_refrigerant_w_m2k, 5.0, 2000.0, "W/(m2 K)");
    r.done();
    if (r.problem_count() != before) return c;
    for (const Iso9806Fault& fault : faults_of(c, model.face_area_m2 / (model.length_m * model.width_m)))
        r.problem(fault.field, fault.what, fault.remedy);
    return c;
}

CollectorModel read_collector(Reader& r) {
    CollectorModel c;
    const std::size_t before = r.problem_count();
    read_names(r, c.id, c.maker, c.name, c.invented);
    c.length_m = r.number("length_m", 0.3, 6.0, "m");
    c.width_m = r.number("width_m", 0.2, 3.0, "m");
    c.face_area_m2 = r.number("face_area_m2", 0.1, 12.0, "m2");
    c.mass_kg = r.number("mass_kg", 0.5, 150.0, "kg");
    c.volume_l = r.number("volume_l", 0.01, 20.0, "l");
    c.absorptance = r.number("absorptance", 0.05, 1.0, "");
    c.emittance = r.number("emittance", 0.01, 1.0, "");
    c.plate_to_refrigerant_w_m2k = r.number("plate_to_refrigerant_w_m2k", 5.0, 2000.0, "W/(m2 K)");
    c.max_pressure_bar = r.number("max_pressure_bar", 1.0, 150.0, "bar gauge");
    c.level_side = static_cast<LevelSide>(r.one_of("level_side", equipment_keys::level_side()));
    c.right_hand = r.flag("right_hand");
    c.left_hand = r.flag("left_hand");
    c.tilt_min_deg = r.number("tilt_min_deg", 0.0, 90.0, "deg");
    c.tilt_max_deg = r.number("tilt_max_deg", 0.0, 90.0, "deg");
    c.tilt_recommended_min_deg = r.number("tilt_recommended_min_deg", 0.0, 90.0, "deg");
    c.tilt_recommended_max_deg = r.number("tilt_recommended_max_deg", 0.0, 90.0, "deg");
    c.liquid_connection = r.point("liquid_connection", 6.0);
    c.suction_connection = r.point("suction_connection", 6.0);
    c.liquid_od_mm = r.number("liquid_od_mm", 3.0, 54.0, "mm");
    c.suction_od_mm = r.number("suction_od_mm", 3.0, 54.0, "mm");
    c.fixing_points = r.points("fixing_points", 6.0, 40);
    c.screws_per_point = r.whole("screws_per_point", 1, 12);
    c.profile_stiffness_nm2 = r.number_or("profile_stiffness_nm2", 0.0, 0.0, 1e7, "N m2");
    c.profile_moment_nm = r.number_or("profile_moment_nm", 0.0, 0.0, 1e6, "N m");
    c.profile_bolt_mm = r.number_or("profile_bolt_mm", 0.0, 0.0, 24.0, "mm");
    c.profile_bolt_n_mm2 = r.number_or("profile_bolt_n_mm2", 700.0, 300.0, 1200.0, "N/mm2");
    c.stand_off_m = r.number("stand_off_m", 0.0, 1.0, "m");
    c.clearance_m = r.number("clearance_m", 0.0, 3.0, "m");
    c.rear_exposure = r.number("rear_exposure", 0.0, 1.0, "");
    c.frost_limit_kg_m2 = r.number("frost_limit_kg_m2", 0.0, 20.0, "kg/m2");
    c.channel_drop_k = r.number_or("channel_drop_k", 0.0, 0.0, 10.0, "K");
    c.channel_drop_at_w = r.number_or("channel_drop_at_w", 1500.0, 100.0, 20000.0, "W");
    if (auto test = r.object("iso9806", false)) c.iso9806 = read_iso9806(*test, c, before);
    r.done();
    return c;
}

void check_block(Reader& r, const BlockModel& b) {
    expect_order(r, "evaporating_min_c", b.evaporating_min_c, "evaporating_max_c", b.evaporating_max_c);
    expect_order(r, "condensing_max_c", b.condensing_max_c, "discharge_max_c", b.discharge_max_c);
    expect_order(r, "precharged_min_m", b.precharged_min_m, "precharged_max_m", b.precharged_max_m);
    expect_order(r, "precharged_max_m", b.precharged_max_m, "run_max_m", b.run_max_m);
    expect_order(r, "lift_max_m", b.lift_max_m, "run_max_m", b.run_max_m);
    expect_order(r, "liquid_od_mm", b.liquid_od_mm, "suction_od_mm", b.suction_od_mm);
    expect_order(r, "test_pressure_bar", b.test_pressure_bar, "line_max_pressure_bar", b.line_max_pressure_bar);
    expect_order(r, "collector_area_min_m2", b.collector_area_min_m2, "collector_area_max_m2", b.collector_area_max_m2);
    expect_order(r, "max_current_a", b.max_current_a, "start_current_a", b.start_current_a);
    expect_order(r, "max_current_a", b.max_current_a, "breaker_a", b.breaker_a);
    if (!b.compressor) expect_order(r, "overall_peak", b.overall_peak, "volumetric_at_unity", b.volumetric_at_unity);
}

/// A compressor is given by displacement and efficiency curves or by its maker's ten coefficients. True: the latter.
bool read_compressor_form(Reader& r) {
    constexpr const char* curve_fields[] = {"displacement_cm3", "speed_rpm",    "volumetric_at_unity",
                                            "volumetric_slope", "overall_peak", "overall_peak_at",
                                            "overall_curvature"};
    const auto given =
        std::count_if(std::begin(curve_fields), std::end(curve_fields), [&r](const char* key) { return r.has(key); });
    if (!r.has("compressor")) {
        if (given == 0)
            r.problem("compressor", "and displacement_cm3 are both missing",
                      "Give displacement_cm3 with its efficiencies, or the maker's ten coefficients as compressor");
        return false;
    }
    for (const char* key : curve_fields) {
        if (r.has(key))
            r.problem(key, "is given besides compressor", "Give either the compressor's data or its efficiencies");
        r.skip(key);
    }
    return true;
}

void read_curves(Reader& r, BlockModel& b) {
    b.displacement_cm3 = r.number("displacement_cm3", 1.0, 200.0, "cm3");
    b.speed_rpm = r.number("speed_rpm", 500.0, 8000.0, "1/min");
    b.volumetric_at_unity = r.number("volumetric_at_unity", 0.5, 1.0, "");
    b.volumetric_slope = r.number("volumetric_slope", 0.0, 0.2, "");
    b.overall_peak = r.number("overall_peak", 0.2, 0.85, "");
    b.overall_peak_at = r.number("overall_peak_at", 1.5, 8.0, "");
    b.overall_curvature = r.number("overall_curvature", 0.0, 1.0, "");
}

BlockModel read_block(Reader& r) {
    BlockModel b;
    const std::size_t before = r.problem_count();
    read_names(r, b.id, b.maker, b.name, b.invented);
    b.refrigerant = static_cast<Refrigerant>(r.one_of("refrigerant", equipment_keys::refrigerant()));
    const bool by_data = read_compressor_form(r);
    if (!by_data) read_curves(r, b);
    b.superheat_k = r.number("superheat_k", 0.0, 25.0, "K");
    b.subcooling_k = r.number("subcooling_k", 0.0, 25.0, "K");
    b.shell_loss = r.number("shell_loss", 0.0, 0.4, "");
    b.evaporating_min_c = r.number("evaporating_min_c", -40.0, 10.0, "deg C");
    b.evaporating_max_c = r.number("evaporating_max_c", -10.0, 40.0, "deg C");
    b.condensing_max_c = r.number("condensing_max_c", 40.0, 90.0, "deg C");
    b.discharge_max_c = r.number("discharge_max_c", 60.0, 150.0, "deg C");
    b.pressure_ratio_max = r.number("pressure_ratio_max", 2.0, 20.0, "");
    b.least_lift_k = r.number("least_lift_k", 1.0, 30.0, "K");
    b.condenser = static_cast<CondenserKind>(r.one_of("condenser", equipment_keys::condenser()));
    b.condenser_double_wall = r.flag("condenser_double_wall");
    b.condenser_w_k = r.number("condenser_w_k", 10.0, 3000.0, "W/K");
    b.condenser_zone = r.number("condenser_zone", 0.1, 1.0, "");
    b.condenser_glide_k = r.number_or("condenser_glide_k", 0.0, 0.0, 15.0, "K");
    b.defrost = static_cast<DefrostKind>(r.one_of("defrost", equipment_keys::defrost()));
    b.min_run_s = r.number("min_run_s", 0.0, 7200.0, "s");
    b.min_rest_s = r.number("min_rest_s", 0.0, 7200.0, "s");
    b.standby_w = r.number("standby_w", 0.0, 100.0, "W");
    b.mass_kg = r.number("mass_kg", 2.0, 200.0, "kg");
    b.charge_kg = r.number("charge_kg", 0.02, 20.0, "kg");
    b.precharged_min_m = r.number("precharged_min_m", 0.0, 100.0, "m");
    b.precharged_max_m = r.number("precharged_max_m", 0.0, 100.0, "m");
    b.extra_charge_g_m = r.number("extra_charge_g_m", 0.0, 200.0, "g/m");
    b.run_max_m = r.number("run_max_m", 1.0, 100.0, "m");
    b.lift_max_m = r.number("lift_max_m", 0.0, 60.0, "m");
    if (r.has("expansion"))
        b.expansion = static_cast<ExpansionPlace>(r.one_of("expansion", equipment_keys::expansion()));
    b.oil_trap_every_m = r.number_or("oil_trap_every_m", 0.0, 0.0, 60.0, "m");
    b.least_flow_share = r.number_or("least_flow_share", 1.0, 0.1, 1.0, "");
    b.power_factor = r.number_or("power_factor", 0.9, 0.3, 1.0, "");
    b.ventilated_enclosure = r.flag_or("ventilated_enclosure", false);
    b.liquid_od_mm = r.number("liquid_od_mm", 3.0, 54.0, "mm");
    b.suction_od_mm = r.number("suction_od_mm", 3.0, 54.0, "mm");
    b.max_pressure_high_bar = r.number("max_pressure_high_bar", 1.0, 150.0, "bar gauge");
    b.max_pressure_low_bar = r.number("max_pressure_low_bar", 1.0, 150.0, "bar gauge");
    b.line_max_pressure_bar = r.number("line_max_pressure_bar", 1.0, 200.0, "bar gauge");
    b.test_pressure_bar = r.number("test_pressure_bar", 1.0, 150.0, "bar gauge");
    b.collector_area_min_m2 = r.number("collector_area_min_m2", 0.1, 40.0, "m2");
    b.collector_area_max_m2 = r.number("collector_area_max_m2", 0.1, 40.0, "m2");
    b.supply_v = r.number("supply_v", 100.0, 440.0, "V");
    b.supply_phases = r.whole("supply_phases", 1, 3);
    b.supply_hz = r.number("supply_hz", 45.0, 65.0, "Hz");
    b.max_current_a = r.number("max_current_a", 0.2, 100.0, "A");
    b.start_current_a = r.number("start_current_a", 0.2, 400.0, "A");
    b.breaker_a = r.number("breaker_a", 1.0, 125.0, "A");
    static const std::vector<std::string> curves = {"B", "C", "D"};
    b.breaker_curve = curves[r.one_of("breaker_curve", curves)];
    b.residual_current_ma = r.number("residual_current_ma", 0.0, 500.0, "mA");
    b.release_height_m = r.number("release_height_m", 0.0, 5.0, "m");
    if (by_data)
        if (auto data = r.object("compressor")) b.compressor = compressor_codec::read(*data, b.least_lift_k);
    if (r.problem_count() == before) check_block(r, b);
    r.done();
    return b;
}

CylinderModel read_cylinder(Reader& r) {
    CylinderModel c;
    const std::size_t before = r.problem_count();
    read_names(r, c.id, c.maker, c.name, c.invented);
    c.volume_l = r.number("volume_l", 20.0, 3000.0, "l");
    c.height_m = r.number("height_m", 0.3, 5.0, "m");
    c.diameter_m = r.number("diameter_m", 0.2, 3.0, "m");
    c.mass_kg = r.number("mass_kg", 5.0, 1500.0, "kg");
    c.standing_loss_kwh_24h = r.number("standing_loss_kwh_24h", 0.1, 15.0, "kWh/24 h");
    c.immersion_w = r.number("immersion_w", 0.0, 12000.0, "W");
    c.max_pressure_bar = r.number("max_pressure_bar", 1.0, 16.0, "bar");
    c.max_temperature_c = r.number("max_temperature_c", 45.0, 95.0, "deg C");
    c.sensor_height = r.number_or("sensor_height", c.sensor_height, 0.05, 0.95, "of the height");
    c.immersion_height = r.number_or("immersion_height", c.immersion_height, 0.02, 0.9, "of the height");
    c.anode = r.text_or("anode", "");
    c.anode_check_months = r.number_or("anode_check_months", 24.0, 1.0, 120.0, "months");
    c.connections = r.text_or("connections", "");
    c.recirculation_port = r.flag("recirculation_port");
    c.fits_blocks = r.texts("fits_blocks", false);
    const double outer_l = 0.25 * pi * c.diameter_m * c.diameter_m * c.height_m * 1000.0;
    if (r.problem_count() == before && c.volume_l > outer_l) {
        r.problem("volume_l",
                  "is " + figure(c.volume_l) + " l, more than height and diameter enclose (" + figure(outer_l) + " l)",
                  "Check the three figures and their units");
    }
    r.done();
    return c;
}

FixingMethod read_method(Reader& r) {
    FixingMethod m;
    const std::size_t before = r.problem_count();
    m.id = r.text("id");
    r.name_by(m.id);
    m.label = r.text("label");
    m.invented = r.flag_or("invented", false);
    for (const std::string& key : r.texts("coverings")) {
        const auto covering = from_key<Covering>(key);
        if (covering) {
            m.coverings.push_back(*covering);
        } else {
            r.problem("coverings", "names '" + for_message(key) + "', which is no covering",
                      "Use the words of docs/job-format.md, e.g. clay_tile");
        }
    }
    if (m.coverings.empty()) r.problem("coverings", "is empty", "Name at least one covering that the method suits");
    if (r.has("kind")) m.kind = static_cast<FixingKind>(r.one_of("kind", equipment_keys::fixing_kind()));
    m.needs_rafters = r.flag("needs_rafters");
    m.screw_diameter_mm = r.number("screw_diameter_mm", 0.0, 12.0, "mm");
    m.screw_grip_mm = r.number_or("screw_grip_mm", 0.0, 0.0, 300.0, "mm");
    m.screws_per_point = r.whole("screws_per_point", 0, 12);
    m.pull_out_n = r.number_or("pull_out_n", 0.0, 0.0, 1e6, "N");
    m.shear_n = r.number_or("shear_n", 0.0, 0.0, 1e6, "N");
    m.edge_distance_m = r.number("edge_distance_m", 0.0, 3.0, "m");
    m.spacing_min_m = r.number_or("spacing_min_m", 0.0, 0.0, 3.0, "m");
    m.joint_distance_m = r.number_or("joint_distance_m", 0.0, 0.0, 1.0, "m");
    m.drill_mm = r.number_or("drill_mm", 0.0, 0.0, 60.0, "mm");
    m.depth_mm = r.number_or("depth_mm", 0.0, 0.0, 1000.0, "mm");
    m.torque_nm = r.number_or("torque_nm", 0.0, 0.0, 500.0, "N m");
    m.head_diameter_mm = r.number_or("head_diameter_mm", 0.0, 0.0, 60.0, "mm");
    m.head_strength_n_mm2 = r.number_or("head_strength_n_mm2", 0.0, 0.0, 100.0, "N/mm2");
    m.bolt_mm = r.number_or("bolt_mm", 0.0, 0.0, 24.0, "mm");
    m.bolt_n_mm2 = r.number_or("bolt_n_mm2", 500.0, 300.0, 1200.0, "N/mm2");
    m.ballast_kg = r.number_or("ballast_kg", 0.0, 0.0, 5000.0, "kg");
    m.friction = r.number_or("friction", 0.4, 0.05, 1.0, "");
    m.frame_depth_m = r.number_or("frame_depth_m", 0.0, 0.0, 6.0, "m");
    m.frame_mass_kg = r.number_or("frame_mass_kg", 0.0, 0.0, 500.0, "kg");
    m.steps = r.text_or("steps", "");
    if (r.problem_count() != before) {
        r.done();
        return m;
    }
    if (m.screw_diameter_mm > 0.0) {
        if (m.screw_diameter_mm < 6.0) {
            r.problem("screw_diameter_mm", "is " + figure(m.screw_diameter_mm) + " mm, below 6 mm",
                      "EN 1995-1-1 8.7.2 covers 6 to 12 mm: give the resistances instead");
        }
        if (m.screw_grip_mm < 6.0 * m.screw_diameter_mm) {
            r.problem("screw_grip_mm", "is " + figure(m.screw_grip_mm) + " mm, less than six diameters",
                      "EN 1995-1-1 8.7.2 asks for at least six diameters of thread in the timber");
        }
        if (m.screws_per_point < 1) r.problem("screws_per_point", "is 0", "Give the number of screws");
        if (m.kind == FixingKind::ballast) r.problem("screw_diameter_mm", "is given for ballast", "Set it to 0");
    } else if (m.kind == FixingKind::ballast) {
        if (m.ballast_kg <= 0.0) r.problem("ballast_kg", "is missing", "Give the ballast laid at a point in kilograms");
        if (m.needs_rafters) r.problem("needs_rafters", "is true for ballast", "Ballast stands on the covering");
    } else if (m.pull_out_n <= 0.0 || m.shear_n <= 0.0) {
        r.problem("pull_out_n", "or shear_n is missing, and there is no screw to work them out from",
                  "Give both design resistances a point in newtons");
    }
    r.done();
    return m;
}

}  // namespace

Result<Catalogue> catalogue_from_json(std::string_view text, const std::string& file_name) {
    std::vector<Problem> problems;
    nlohmann::json document;
    if (!fields::parse(text, file_name, catalogue_schema, document, problems)) return problems;
    Reader root(document, file_name, problems);
    (void)root.whole("schema", catalogue_schema, catalogue_schema);
    (void)root.text_or("note", "");

    Catalogue catalogue;
    std::set<std::string> ids;
    const auto note_id = [&](Reader& r, const std::string& id) {
        // One name space for all: price lists name items by id alone.
        if (!id.empty() && !ids.insert(id).second)
            r.problem("id", "'" + id + "' is used twice", "Give each item its own id");
    };
    for (Reader& r : root.objects("collectors", false)) {
        const std::size_t before = r.problem_count();
        catalogue.collectors.push_back(read_collector(r));
        // With a stand-in for a figure that was refused, what must be true of several would be judged by that.
        if (r.problem_count() == before) check_collector_geometry(r, catalogue.collectors.back());
        note_id(r, catalogue.collectors.back().id);
    }
    for (Reader& r : root.objects("blocks", false)) {
        catalogue.blocks.push_back(read_block(r));
        note_id(r, catalogue.blocks.back().id);
    }
    for (Reader& r : root.objects("cylinders", false)) {
        catalogue.cylinders.push_back(read_cylinder(r));
        note_id(r, catalogue.cylinders.back().id);
    }
    for (Reader& r : root.objects("fixing_methods", false)) {
        catalogue.fixing_methods.push_back(read_method(r));
        note_id(r, catalogue.fixing_methods.back().id);
    }
    root.done();
    if (!problems.empty()) return problems;
    return catalogue;
}

}  // namespace wg
