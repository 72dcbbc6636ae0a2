#pragma once
// What the survey knows of the house beside its shape: the hill it stands on, rooms that pipes keep out of, the
// electrical supply and the water supply. Parts of `Site` and `CylinderSpot` (core/job/job.h); every one may be left as
// it is made here, which means "not told".

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg {

/// Rise of the ground that speeds the wind up, EN 1991-1-4 annex A.3.
enum class HillKind { none, hill, cliff };
struct Hill {
    HillKind kind = HillKind::none;
    double height_m = 20.0;            ///< H, of the crest over the foot, 0.1..3000
    double upwind_length_m = 200.0;    ///< L_u, level, foot to crest on the windward side, 0.1..50000
    double downwind_length_m = 200.0;  ///< L_d, of a hill, crest to foot on the lee side, 0.1..50000
    double crest_distance_m = 0.0;     ///< x, level, house beyond the crest positive, before it negative, +-50000
    std::string extra_json;
    friend bool operator==(const Hill&, const Hill&) = default;
};

/// A room of the house: an upright prism over a plan outline in sketch coordinates.
struct Room {
    std::string id;
    std::string label;
    std::vector<Point2> outline;
    double from_z_m = 0.0;  ///< floor
    double to_z_m = 2.4;    ///< ceiling, above the floor
    bool no_pipe = true;    ///< the pipe run keeps out of it
    std::string extra_json;
    friend bool operator==(const Room&, const Room&) = default;
};

/// IEC 60364-1 312.2.
enum class EarthingSystem { unknown, tn_s, tn_c_s, tt, it };
/// Electrical supply of the house.
struct Electrics {
    EarthingSystem earthing = EarthingSystem::unknown;
    std::optional<double> voltage_v;             ///< between the conductors a single-phase circuit uses, 90..500
    std::optional<double> frequency_hz;          ///< 45..65
    int phases = 0;                              ///< 1 or 3; 0: not told
    std::optional<double> main_fuse_a;           ///< a phase, 1..400
    std::optional<double> used_a;                ///< largest current of what runs at the same time, a phase, 0..400
    bool lightning_protection = false;           ///< the house has air terminals and down conductors
    std::optional<double> lightning_distance_m;  ///< from collector or its lines to the nearest conductor, 0..100
    bool surge_protection = false;               ///< in the house's distribution board
    std::string extra_json;
    friend bool operator==(const Electrics&, const Electrics&) = default;
};

/// Reference methods of installation, IEC 60364-5-52 table B.52.1.
enum class CableMethod { a1, a2, b1, b2, c, e };
/// How the block's own circuit is laid.
struct CableRoute {
    CableMethod method = CableMethod::b2;
    double ambient_c = 30.0;    ///< 10..60
    int circuits_together = 1;  ///< loaded circuits bunched with it, itself counted, 1..20
    std::string extra_json;
    friend bool operator==(const CableRoute&, const CableRoute&) = default;
};

/// Draw-off points as EN 806-3 table 2 knows them.
enum class Fixture {
    basin,
    bidet,
    wc_cistern,
    shower,
    bath,
    kitchen_sink,
    washing_machine,
    dishwasher,
    garden_tap,
};
struct FixtureCount {
    std::string id;
    Fixture kind = Fixture::basin;
    int count = 1;  ///< 1..200
    std::string extra_json;
    friend bool operator==(const FixtureCount&, const FixtureCount&) = default;
};

/// Hot pipe from the cylinder, or from the recirculation loop, to one tap.
struct DeadLeg {
    std::string id;
    std::string label;
    double length_m = 5.0;      ///< 0..200
    double bore_mm = 13.0;      ///< clear, 4..100
    bool off_the_loop = false;  ///< leaves the recirculation loop, not the cylinder
    std::string extra_json;
    friend bool operator==(const DeadLeg&, const DeadLeg&) = default;
};

/// Cold water as it enters the house and where it goes.
struct WaterSupply {
    std::optional<double> static_pressure_bar;  ///< gauge, where the supply enters, 0..25
    bool reducing_valve = false;                ///< there already
    double reduced_to_bar = 3.0;                ///< its setting, or the one planned, 0.5..8
    std::optional<double> hardness_mmol_l;      ///< total, 0..20
    double entry_height_m = 0.0;                ///< of the entry over the ground of the sketch, -20..100
    double highest_tap_m = 3.0;                 ///< over the ground of the sketch, -20..200
    double farthest_pipe_m = 10.0;              ///< hot, from the cylinder to the farthest tap, 0..300
    std::vector<FixtureCount> fixtures;
    std::vector<DeadLeg> dead_legs;
    std::string extra_json;
    friend bool operator==(const WaterSupply&, const WaterSupply&) = default;
};

}  // namespace wg
