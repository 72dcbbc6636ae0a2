#pragma once
// Catalogue items. Each carries its own rules, as the maker states them; the planner holds the layout to them.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/compressor_data.h"
#include "core/equipment/iso9806.h"
#include "core/job/job.h"
#include "core/quantity/geometry.h"

namespace wg {

enum class LevelSide { long_side, short_side, either };
enum class Refrigerant { r134a, r290, r1234yf, r513a };
[[nodiscard]] const char* name_of(Refrigerant refrigerant) noexcept;  ///< "R134a"

/// Bare evaporator plate. Own coordinates: x along the long side, y along the short one, origin in the lower left
/// corner, seen from the front as a right-hand collector; a left-hand one is its mirror image in x.
struct CollectorModel {
    std::string id;
    std::string maker;
    std::string name;
    bool invented = false;
    double length_m = 2.0;      ///< long side
    double width_m = 0.8;       ///< short side
    double face_area_m2 = 1.6;  ///< of one face, without frame
    double mass_kg = 8.0;       ///< empty
    double volume_l = 1.0;      ///< of the channels
    double absorptance = 0.93;
    double emittance = 0.93;
    double plate_to_refrigerant_w_m2k = 125.0;
    double max_pressure_bar = 25.0;  ///< maximum allowable pressure PS, bar gauge
    LevelSide level_side = LevelSide::long_side;
    bool right_hand = true;  ///< made with connections on the right
    bool left_hand = true;
    double tilt_min_deg = 10.0;
    double tilt_max_deg = 90.0;
    double tilt_recommended_min_deg = 30.0;
    double tilt_recommended_max_deg = 90.0;
    Point2 liquid_connection;   ///< position in own coordinates (right-hand), at the lower edge
    Point2 suction_connection;  ///< the same; tubes leave downwards (towards -y)
    double liquid_od_mm = 6.35;
    double suction_od_mm = 9.52;
    std::vector<Point2> fixing_points;  ///< own coordinates; count is fixing_points.size()
    int screws_per_point = 2;
    // The profiles that carry the plate, each for itself. 0: not told, and what depends on it is not worked out.
    double profile_stiffness_nm2 = 0.0;  ///< E I for bending square to the plate
    double profile_moment_nm = 0.0;      ///< design bending resistance
    double profile_bolt_mm = 0.0;        ///< size of the bolt between profile and hook, bracket or foot: 6, 8, 10, 12
    double profile_bolt_n_mm2 = 700.0;   ///< its tensile strength f_ub (A2-70, A4-70)
    double stand_off_m = 0.10;           ///< gap between plate and surface
    double clearance_m = 0.30;           ///< free strip all round asked by the maker
    double rear_exposure = 0.6;          ///< share of wind that reaches the rear face at this stand-off, 0..1
    double frost_limit_kg_m2 = 1.5;
    /// Fall of saturation temperature through the channels of one plate when it passes the refrigerant of
    /// `channel_drop_at_w` of evaporator heat; it grows with the square of that.
    double channel_drop_k = 0.0;
    double channel_drop_at_w = 1500.0;
    /// From a test: then these stand for light, convection, long wave and the resistance inside the plate. Absorptance
    /// and emittance still serve frost.
    std::optional<Iso9806> iso9806;
    friend bool operator==(const CollectorModel&, const CollectorModel&) = default;
};

enum class CondenserKind { immersed, wrapped };
enum class DefrostKind { none, reverse };
/// Where the expansion device sits: in the block the small line carries liquid and vapour at low pressure to the
/// collector, at the collector it carries liquid at high pressure.
enum class ExpansionPlace { block, collector };

/// Compressor, condenser and controls on or beside the cylinder.
struct BlockModel {
    std::string id;
    std::string maker;
    std::string name;
    bool invented = false;
    Refrigerant refrigerant = Refrigerant::r134a;
    double displacement_cm3 = 18.0;
    double speed_rpm = 2900.0;
    double volumetric_at_unity = 0.95;  ///< eta_v at pressure ratio 1
    double volumetric_slope = 0.045;    ///< fall of eta_v per unit of pressure ratio
    double overall_peak = 0.60;         ///< overall isentropic efficiency at its best pressure ratio
    double overall_peak_at = 3.2;
    double overall_curvature = 0.22;
    /// Where present, the maker's ten coefficients; the seven figures above then mean nothing.
    std::optional<CompressorData> compressor;
    double superheat_k = 5.0;
    double subcooling_k = 3.0;
    double shell_loss = 0.07;
    double evaporating_min_c = -25.0;
    double evaporating_max_c = 25.0;
    double condensing_max_c = 75.0;
    double discharge_max_c = 110.0;
    double pressure_ratio_max = 9.0;
    double least_lift_k = 8.0;  ///< condensing over evaporating temperature
    CondenserKind condenser = CondenserKind::immersed;
    bool condenser_double_wall = true;
    double condenser_w_k = 220.0;
    double condenser_zone = 0.6;  ///< lower share of the cylinder's height that is heated
    /// Fall of the refrigerant's temperature from the top of that zone to its bottom, about the condensing temperature.
    double condenser_glide_k = 0.0;
    DefrostKind defrost = DefrostKind::reverse;
    double min_run_s = 600.0;
    double min_rest_s = 300.0;
    double standby_w = 5.0;
    double mass_kg = 25.0;
    double charge_kg = 1.2;         ///< factory charge
    double precharged_min_m = 3.0;  ///< one-way run that the factory charge serves
    double precharged_max_m = 12.0;
    double extra_charge_g_m = 20.0;  ///< for every metre beyond precharged_max_m
    double run_max_m = 20.0;
    double lift_max_m = 8.0;  ///< collector above block, or below it
    ExpansionPlace expansion = ExpansionPlace::block;
    double oil_trap_every_m = 0.0;  ///< a trap at the foot of a riser and after each of these; 0: none asked
    double least_flow_share = 1.0;  ///< refrigerant flow at the lowest speed over that at speed_rpm, 0.1..1
    double liquid_od_mm = 6.35;
    double suction_od_mm = 9.52;
    double max_pressure_high_bar = 28.0;  ///< PS high side, bar gauge
    double max_pressure_low_bar = 25.0;   ///< PS low side and standstill, bar gauge
    double line_max_pressure_bar = 42.0;  ///< PS of the lines delivered with it
    double test_pressure_bar = 25.0;      ///< tightness test on collector and lines, bar gauge, dry nitrogen
    double collector_area_min_m2 = 1.4;
    double collector_area_max_m2 = 4.0;
    double supply_v = 230.0;
    int supply_phases = 1;
    double supply_hz = 50.0;
    double max_current_a = 6.0;
    double start_current_a = 18.0;
    double breaker_a = 10.0;
    std::string breaker_curve = "C";
    double residual_current_ma = 30.0;
    double power_factor = 0.9;          ///< cos phi of compressor and controls at max_current_a
    bool ventilated_enclosure = false;  ///< a leak inside the block is led outdoors by its own fan or duct
    double release_height_m = 0.6;      ///< lowest height at which a leak indoors would leave (0.6: on the floor)
    friend bool operator==(const BlockModel&, const BlockModel&) = default;
};

struct CylinderModel {
    std::string id;
    std::string maker;
    std::string name;
    bool invented = false;
    double volume_l = 250.0;
    double height_m = 1.7;
    double diameter_m = 0.6;
    double mass_kg = 80.0;               ///< empty
    double standing_loss_kwh_24h = 1.5;  ///< at 45 K, EN 12897
    double immersion_w = 1500.0;
    double max_pressure_bar = 8.0;
    double max_temperature_c = 70.0;
    double sensor_height = 0.4;     ///< of the thermostat, share of the height; 0.05..0.95
    double immersion_height = 0.6;  ///< the immersion heater warms what is above, 0.02..0.9
    std::string anode;              ///< e.g. "magnesium, 1 1/4 inch"; empty: none needed
    double anode_check_months = 24.0;
    std::string connections;  ///< e.g. "cold 3/4, hot 3/4, recirculation 1/2, safety 3/4"
    bool recirculation_port = true;
    std::vector<std::string> fits_blocks;  ///< ids; empty: any
    friend bool operator==(const CylinderModel&, const CylinderModel&) = default;
};

enum class FixingKind { hook, screw_through, seam_clamp, anchor, ballast };

/// How fixing points hold in a surface. Resistances are design values a point unless they follow from screws.
struct FixingMethod {
    std::string id;
    std::string label;
    bool invented = false;
    FixingKind kind = FixingKind::hook;
    std::vector<Covering> coverings;  ///< that it suits
    bool needs_rafters = true;
    double screw_diameter_mm = 6.0;  ///< into timber; 0: use the resistances below
    double screw_grip_mm = 60.0;     ///< threaded length in the timber
    int screws_per_point = 2;
    double pull_out_n = 0.0;  ///< design resistance a point, when not by timber screws
    double shear_n = 0.0;
    double edge_distance_m = 0.30;  ///< least distance of a point from the surface's edges
    double spacing_min_m = 0.0;     ///< least distance between points; 0: none asked
    double joint_distance_m = 0.0;  ///< least distance from joints of masonry, seams or slab edges; 0: none asked
    double drill_mm = 0.0;          ///< hole to drill; 0: none
    double depth_mm = 0.0;          ///< of that hole
    double torque_nm = 0.0;         ///< of the nut or bolt; 0: not told
    // Screw heads drawn through the bracket or batten (EN 1995-1-1 8.7.2); 0: the bracket is steel, no check.
    double head_diameter_mm = 0.0;
    double head_strength_n_mm2 = 0.0;  ///< f_head,k at 350 kg/m3
    double bolt_mm = 0.0;              ///< double-ended screw or anchor bolt above the covering; 0: no check
    double bolt_n_mm2 = 500.0;         ///< its tensile strength f_ub
    // Ballast on a level surface instead of anchors.
    double ballast_kg = 0.0;     ///< a point, as laid
    double friction = 0.4;       ///< of feet or mats on the covering
    double frame_depth_m = 0.0;  ///< front to back between the outer feet; 0: of the collector's points
    double frame_mass_kg = 0.0;  ///< of the frame, a collector
    std::string steps;           ///< what the fitter does, one sentence
    friend bool operator==(const FixingMethod&, const FixingMethod&) = default;
};

struct Catalogue {
    std::vector<CollectorModel> collectors;
    std::vector<BlockModel> blocks;
    std::vector<CylinderModel> cylinders;
    std::vector<FixingMethod> fixing_methods;
};

[[nodiscard]] const CollectorModel* find_collector(const Catalogue& catalogue, const std::string& id) noexcept;
[[nodiscard]] const BlockModel* find_block(const Catalogue& catalogue, const std::string& id) noexcept;
[[nodiscard]] const CylinderModel* find_cylinder(const Catalogue& catalogue, const std::string& id) noexcept;
[[nodiscard]] const FixingMethod* find_fixing_method(const Catalogue& catalogue, const std::string& id) noexcept;

}  // namespace wg
