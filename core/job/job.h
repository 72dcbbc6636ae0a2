#pragma once
// The job: what is known about a client, a site and a wish, plus the choices made and the readings taken.
// Plain values only. Written as versioned JSON by core/job/codec.h; every element carries a stable UUID so
// that copies of a job edited on three machines can be merged.
//
// `extra_json` members hold, as the text of a JSON object, the fields a newer program wrote and this one does not
// know. They are written back untouched. Empty means none.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/job/demand.h"
#include "core/job/house.h"
#include "core/job/offer.h"
#include "core/job/record.h"
#include "core/quantity/geometry.h"

namespace wg {

inline constexpr int job_schema = 1;

// ---------------------------------------------------------------------------------------------- the visit

struct Client {
    std::string name;
    std::string street;
    std::string town;
    std::string postcode;
    std::string phone;
    std::string email;
    std::string extra_json;
    friend bool operator==(const Client&, const Client&) = default;
};

/// What the surveyor notes on the form besides the sketch.
struct Survey {
    std::string surveyor;
    std::string visited_on;  ///< ISO 8601 date; empty: not yet
    std::string access;      ///< gate, keys, parking, where a ladder or scaffold can stand
    bool scaffold_needed = false;
    std::string roof_condition;
    std::string wishes;
    std::string present_heater;  ///< maker's plate of what heats the water now; its fuel stands in the demand
    std::string extra_json;
    friend bool operator==(const Survey&, const Survey&) = default;
};

/// Terrain categories of EN 1991-1-4 table 4.1.
enum class Terrain { sea_0, open_i, farmland_ii, suburb_iii, town_iv };

struct Location {
    std::string place_name;
    double latitude_deg = 0.0;   ///< north positive, -90..90
    double longitude_deg = 0.0;  ///< east positive, -180..180
    double altitude_m = 0.0;     ///< -430..5500
    double utc_offset_h = 0.0;   ///< local standard time, -12..14
    std::string extra_json;
    friend bool operator==(const Location&, const Location&) = default;
};

enum class SurfaceKind { roof, wall, terrace, ground };
enum class Covering { clay_tile, concrete_tile, slate, standing_seam, membrane, masonry, render, timber, paving, soil };
/// What shape the surface is part of, for the wind zones of EN 1991-1-4.
enum class RoofForm { duo_pitch, mono_pitch, hip, flat, not_a_roof };

/// Rafters or studs, running up the slope (along +y of the surface's plane). Count follows from outline and spacing.
struct RafterGrid {
    bool present = false;
    double first_m = 0.0;    ///< x of the first rafter's centre line in the plane
    double spacing_m = 0.6;  ///< centre to centre, 0.2..2.0
    double width_m = 0.06;
    double depth_m = 0.16;
    std::string extra_json{};
    friend bool operator==(const RafterGrid&, const RafterGrid&) = default;
};

enum class KeepOutKind { roof_window, vent, valley, reserved };

/// A zone of a surface where nothing may be fixed: roof window, vent, or what the client wants free.
struct KeepOut {
    std::string id;
    std::string label;
    KeepOutKind kind = KeepOutKind::reserved;
    std::vector<Point2> outline;  ///< in the surface's plane
    double clearance_m = 0.0;     ///< kept free all round besides the outline
    std::string extra_json;
    friend bool operator==(const KeepOut&, const KeepOut&) = default;
};

/// A plane of the site. Plane coordinates as seen face-on from outside: x along the level direction to the right,
/// y up the slope. For a level surface (tilt 0) seen from above with the bearing `azimuth_deg` at the bottom.
struct Surface {
    std::string id;
    std::string label;
    SurfaceKind kind = SurfaceKind::roof;
    RoofForm roof_form = RoofForm::duo_pitch;
    double tilt_deg = 35.0;       ///< from horizontal, 0..90 (walls 90)
    double azimuth_deg = 180.0;   ///< true bearing that the outer face looks to
    Point3 origin;                ///< sketch position of plane coordinates (0, 0)
    std::vector<Point2> outline;  ///< closed, non-crossing, at least 3 corners; either sense
    Covering covering = Covering::clay_tile;
    RafterGrid rafters;
    std::vector<KeepOut> keep_outs;
    double ridge_height_m = 0.0;  ///< height of the building's ridge over ground, for wind; 0: highest corner
    bool snow_held = false;       ///< snow guard, parapet or the like keeps snow from sliding off
    std::optional<double> spare_load_kn_m2;  ///< what a level surface may carry besides, 0..100; absent: not known
    std::string footprint_edge_id;           ///< of the building edge it rises over or stands on; empty: drawn free
    std::string extra_json;
    friend bool operator==(const Surface&, const Surface&) = default;
};

enum class ObstacleKind { box, prism, post, tree };
/// What it is to people; the kind is what it is to the sun.
enum class ObstacleUse { other, chimney, vent, dormer, parapet, neighbour, pole, tree };

/// Something that throws shade. Which members count depends on the kind.
struct Obstacle {
    std::string id;
    std::string label;
    ObstacleKind kind = ObstacleKind::box;
    ObstacleUse use = ObstacleUse::other;
    Point3 base;                  ///< box: centre of the foot; post, tree: foot; prism: z of the foot only
    double width_m = 1.0;         ///< box: along its own x
    double depth_m = 1.0;         ///< box: along its own y
    double height_m = 1.0;        ///< of the top over the foot; all kinds
    double turn_deg = 0.0;        ///< box: its x axis turned counter-clockwise from the sketch's x
    double radius_m = 0.1;        ///< post: radius; tree: radius of the crown
    double crown_base_m = 2.0;    ///< tree: lower edge of the crown over the foot
    std::vector<Point2> outline;  ///< prism: plan outline in sketch coordinates
    int leaf_from_month = 4;      ///< tree: first month in leaf, 1..12
    int leaf_to_month = 10;       ///< tree: last month in leaf; may be smaller than the first (southern hemisphere)
    double transmittance_leaf = 0.25;  ///< tree: share of beam that passes in leaf, 0..1
    double transmittance_bare = 0.65;  ///< tree: the same when bare
    std::string footprint_edge_id;     ///< of the building edge a parapet runs along; empty: drawn free
    std::string extra_json;
    friend bool operator==(const Obstacle&, const Obstacle&) = default;
};

enum class BuildingShape { mono_pitch, gable, hip, flat, lean_to };

/// A corner of a footprint and the edge that runs from it to the next corner.
struct FootprintEdge {
    std::string id;  ///< surfaces and parapets stay linked by it, whatever corners come or go
    Point2 from;     ///< sketch coordinates, outside of the wall
    bool gable = false;
    std::string extra_json{};
    friend bool operator==(const FootprintEdge&, const FootprintEdge&) = default;
};

/// A footprint from which roof planes, walls and parapets are made (core/roof). They stand among the surfaces and
/// obstacles and follow when the building is edited.
struct Building {
    std::string id;
    std::string label;
    std::vector<FootprintEdge> edges;  ///< closed, non-crossing, at least 3; either sense
    BuildingShape shape = BuildingShape::gable;
    double pitch_deg = 35.0;        ///< 1..75; of no account for a flat roof
    double eaves_m = 5.0;           ///< height of the roof over the ground where it meets the wall (the low one), 1..60
    double overhang_m = 0.4;        ///< level, past the wall at eaves, 0..2
    double verge_m = 0.2;           ///< past the wall at gables and at the sides of a mono-pitch, 0..2
    std::string low_edge_id;        ///< mono-pitch, lean-to: the edge with the low eaves; empty: the first
    double parapet_m = 0.0;         ///< flat roof: height of its parapet over the roof, 0..3
    double parapet_width_m = 0.30;  ///< 0.05..1
    Covering covering = Covering::clay_tile;
    Covering wall_covering = Covering::render;
    std::string extra_json;
    friend bool operator==(const Building&, const Building&) = default;
};

/// A photograph, scan or aerial picture under the sketch (core/sketch/underlay.h).
struct UnderlayPicture {
    std::string id;
    std::string photograph_id;       ///< of the job's photographs
    double metres_per_pixel = 0.02;  ///< 1e-5..100
    double turn_deg = 0.0;           ///< of the picture in the sketch, counter-clockwise
    Point2 origin;                   ///< where the picture's upper left corner lies in the sketch
    double opacity = 0.6;            ///< 0.05..1
    bool shown = true;
    bool scaled = false;  ///< by a known length; until then the scale is a guess
    bool turned = false;  ///< by a line of known bearing
    std::string extra_json;
    friend bool operator==(const UnderlayPicture&, const UnderlayPicture&) = default;
};

struct HorizonPoint {
    double azimuth_deg = 0.0;    ///< true
    double elevation_deg = 0.0;  ///< 0..80
    std::string extra_json{};
    friend bool operator==(const HorizonPoint&, const HorizonPoint&) = default;
};

/// A service at a cylinder spot: there already, or to be brought over some distance.
struct Service {
    bool present = false;
    double distance_m = 0.0;  ///< to the nearest point where it can be had, when not present
    std::string extra_json{};
    friend bool operator==(const Service&, const Service&) = default;
};

struct CylinderSpot {
    std::string id;
    std::string label;
    Point3 position;  ///< middle of the foot of the cylinder, sketch coordinates
    double headroom_m = 2.3;
    double free_width_m = 0.8;
    double free_depth_m = 0.8;
    double floor_area_m2 = 6.0;    ///< of the room
    double floor_load_kg = 500.0;  ///< what the floor may carry there, as found or assumed
    bool floor_load_measured = false;
    double room_temperature_c = 18.0;
    bool ventilated = false;
    bool ignition_source = false;
    CableRoute cable;             ///< of the block's circuit
    double distribution_m = 0.0;  ///< way of that circuit from the distribution board, 0: only `supply`'s, 0..500
    Service supply;               ///< electrical, own protected circuit
    Service earth;
    Service cold;
    Service hot;
    Service drain;
    Service recirculation;
    std::string extra_json;
    friend bool operator==(const CylinderSpot&, const CylinderSpot&) = default;
};

struct Site {
    Location location;
    double sketch_up_azimuth_deg = 0.0;  ///< true bearing of the sketch's y axis
    Terrain terrain = Terrain::suburb_iii;
    std::optional<double> basic_wind_m_s;     ///< v_b at 10 m in terrain II; absent: the rule set's assumption
    std::optional<double> ground_snow_kn_m2;  ///< s_k on the ground; absent: the rule set's assumption
    double ground_albedo = 0.2;
    std::vector<Building> buildings;
    std::vector<UnderlayPicture> underlays;
    std::vector<Surface> surfaces;
    std::vector<Obstacle> obstacles;
    std::vector<HorizonPoint> horizon;         ///< any order; empty: free horizon
    double declination_deg = 0.0;              ///< of the compass the horizon was read with, east positive, -180..180
    std::optional<double> street_azimuth_deg;  ///< true bearing from the house to the street
    std::vector<CylinderSpot> spots;
    Hill hill;
    std::vector<Room> rooms;
    Electrics electrics;
    WaterSupply water;
    std::string extra_json;
    friend bool operator==(const Site&, const Site&) = default;
};

// --------------------------------------------------------------------------------------------- the choice

/// How the refrigerant takes several collectors: shared out among them, or through one after the other in the order of
/// the placements.
enum class Joined { parallel, series };

enum class Hand { left, right };  ///< side of the connections seen face-on with the level side down

/// A collector on a surface.
struct Placement {
    std::string id;
    std::string label;
    std::string surface_id;
    double x_m = 0.0;  ///< plane position of the collector's middle
    double y_m = 0.0;
    double turn_deg = 0.0;  ///< counter-clockwise in the plane seen face-on; 0: long side level, connections down
    Hand hand = Hand::right;
    std::optional<double> frame_tilt_deg;     ///< on a frame (flat roof, terrace, ground): the plate's own tilt
    std::optional<double> frame_azimuth_deg;  ///< and true bearing
    std::string extra_json;
    friend bool operator==(const Placement&, const Placement&) = default;
};

enum class RoutePointKind { free, roof_passage, wall_passage, floor_passage };

/// A bend of the pipe run between the collector's connections and the block.
struct RoutePoint {
    std::string id;
    RoutePointKind kind = RoutePointKind::free;
    Point3 position;
    std::string extra_json;
    friend bool operator==(const RoutePoint&, const RoutePoint&) = default;
};

struct ExtraItem {
    std::string id;
    std::string price_item;  ///< id in the price list
    double quantity = 1.0;
    std::string extra_json;
    friend bool operator==(const ExtraItem&, const ExtraItem&) = default;
};

struct Choice {
    std::string id;
    std::string label;
    std::string collector_model;  ///< catalogue ids
    std::string block_model;
    std::string cylinder_model;
    std::string spot_id;
    std::string fixing_method;
    std::vector<Placement> placements;
    Joined joined = Joined::parallel;  ///< matters from two collectors on
    std::vector<RoutePoint> route;     ///< from the collector to the block, ends excluded
    std::vector<ExtraItem> extras;
    bool on_offer = false;  ///< stands on the quote beside the chosen one
    std::string extra_json;
    friend bool operator==(const Choice&, const Choice&) = default;
};

// ------------------------------------------------------------------------------------ photographs and the whole

enum class MarkKind { arrow, text };

/// Drawn on top of a photograph, never into it. Places are shares of the picture's width and height from its upper left
/// corner, 0..1.
struct PhotoMark {
    std::string id;
    MarkKind kind = MarkKind::arrow;
    Point2 at;    ///< tip of the arrow, or upper left corner of the text
    Point2 tail;  ///< of the arrow
    std::string text;
    std::string extra_json;
    friend bool operator==(const PhotoMark&, const PhotoMark&) = default;
};

struct Photograph {
    std::string id;
    std::string sha256;  ///< of the original's bytes; the bytes are kept in the store
    std::string file_name;
    std::string caption;
    std::optional<Point2> taken_from;           ///< place on the sketch
    std::optional<double> looking_azimuth_deg;  ///< true bearing of the view, with a place
    std::vector<PhotoMark> marks;
    std::string extra_json;
    friend bool operator==(const Photograph&, const Photograph&) = default;
};

/// State the firm gives the job on its desk.
enum class JobState { visit, planning, offered, accepted, fitted, in_service, closed };

struct Job {
    std::string id;
    std::string number;  ///< the firm's job number
    std::string title;
    bool invented = false;  ///< demonstration data: documents say so
    JobState state = JobState::visit;
    std::int64_t revision = 0;  ///< grows by one at each save
    std::string created_at;     ///< ISO 8601 UTC
    std::string changed_at;
    std::string base_sha256;  ///< content hash of the version this copy was exported from; empty: never travelled
    std::int64_t base_revision = 0;
    Client client;
    Survey survey;
    Site site;
    Demand demand;
    std::string weather;     ///< id of a built-in climate or of a stored weather year
    std::string rule_set;    ///< id
    std::string price_list;  ///< id
    std::vector<Choice> choices;
    std::string chosen_choice_id;
    Offer offer;
    std::vector<Reading> record;
    AcceptanceLimits limits;
    AftercareTerms aftercare;
    std::vector<Photograph> photographs;
    std::string notes;
    std::string extra_json;
    friend bool operator==(const Job&, const Job&) = default;
};

/// Look-ups by id; nullptr when there is none.
[[nodiscard]] const Building* find_building(const Site& site, const std::string& id) noexcept;
/// The building with this footprint edge.
[[nodiscard]] const Building* building_of_edge(const Site& site, const std::string& edge_id) noexcept;
[[nodiscard]] const Photograph* find_photograph(const Job& job, const std::string& id) noexcept;
[[nodiscard]] const Surface* find_surface(const Site& site, const std::string& id) noexcept;
[[nodiscard]] const CylinderSpot* find_spot(const Site& site, const std::string& id) noexcept;
[[nodiscard]] const Choice* find_choice(const Job& job, const std::string& id) noexcept;
/// The chosen choice; the first when none is marked; nullptr when the job has no choice.
[[nodiscard]] const Choice* chosen_choice(const Job& job) noexcept;

}  // namespace wg
