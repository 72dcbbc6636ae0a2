#pragma once
// A rich job for tests: every list filled, every optional once present and once absent. All of it is invented.

#include <cstdio>
#include <string>

#include "core/job/job.h"

namespace wg::test {

/// A UUID that tells its number: id(7) ends with ...000000000007.
inline std::string id(unsigned number) {
    char out[48];
    std::snprintf(out, sizeof out, "00000000-0000-4000-8000-%012x", number);
    return out;
}

inline std::vector<Point2> rectangle(double x0_m, double y0_m, double x1_m, double y1_m) {
    return {{x0_m, y0_m}, {x1_m, y0_m}, {x1_m, y1_m}, {x0_m, y1_m}};
}

/// A house of 10 m x 8 m, eaves at 5 m, ridge at 7.8 m, sketch's y axis to the north; two roof planes of 35 degrees,
/// one wall, one terrace; chimney, tree, shed and aerial; one cylinder spot in the cellar and one under the roof.
inline Job sample_job() {
    Job job;
    job.id = id(1);
    job.number = "2027-0042";
    job.title = "Hot water for the Lindholm house";
    job.invented = true;
    job.state = JobState::planning;
    job.created_at = "2027-03-02T09:15:00Z";
    job.client = {"Ada Lindholm", "4 Alder Lane", "Västerby", "12 345", "000 000 00 01", "ada@example.org", ""};
    job.survey = {"J. Okafor",
                  "2027-03-01",
                  "gate code from the client; room for a scaffold on the south side",
                  true,
                  "tiles sound, two cracked at the verge",
                  "no pump noise at the bedroom window",
                  "",
                  ""};
    job.weather = "cool-oceanic";
    job.rule_set = "sample-rules";
    job.price_list = "sample-prices";
    job.notes = "Client is away in July.\nKey with the neighbour at \"number 6\".";

    Site& site = job.site;
    site.location = {"Västerby", 56.25, 12.85, 41.0, 1.0, ""};
    site.terrain = Terrain::suburb_iii;
    site.basic_wind_m_s = 25.0;
    site.ground_albedo = 0.2;

    Surface south;
    south.id = id(10);
    south.label = "South roof";
    south.tilt_deg = 35.0;
    south.azimuth_deg = 180.0;
    south.origin = {0.0, 0.0, 5.0};
    south.outline = rectangle(0.0, 0.0, 10.0, 4.88);
    south.rafters = {true, 0.35, 0.62, 0.08, 0.18, ""};
    south.ridge_height_m = 7.8;
    south.keep_outs = {{id(11), "Bathroom window", KeepOutKind::roof_window, rectangle(6.0, 1.5, 6.8, 2.9), 0.15, ""},
                       {id(12), "Soil vent", KeepOutKind::vent, rectangle(8.4, 3.2, 8.6, 3.4), 0.10, ""}};
    Surface north = south;
    north.id = id(13);
    north.label = "North roof";
    north.azimuth_deg = 0.0;
    north.origin = {10.0, 8.0, 5.0};
    north.covering = Covering::concrete_tile;
    north.keep_outs.clear();
    Surface wall;
    wall.id = id(14);
    wall.label = "West wall";
    wall.kind = SurfaceKind::wall;
    wall.roof_form = RoofForm::not_a_roof;
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 270.0;
    wall.origin = {0.0, 8.0, 0.0};
    wall.outline = {{0.0, 0.3}, {8.0, 0.3}, {8.0, 5.0}, {4.0, 7.8}, {0.0, 5.0}};
    wall.covering = Covering::masonry;
    Surface terrace;
    terrace.id = id(15);
    terrace.label = "Terrace";
    terrace.kind = SurfaceKind::terrace;
    terrace.roof_form = RoofForm::not_a_roof;
    terrace.tilt_deg = 0.0;
    terrace.azimuth_deg = 180.0;
    terrace.origin = {1.0, -4.0, 0.2};
    terrace.outline = {{0.0, 0.0}, {6.0, 0.0}, {6.0, 2.0}, {3.0, 2.0}, {3.0, 3.5}, {0.0, 3.5}};
    terrace.covering = Covering::paving;
    site.surfaces = {south, north, wall, terrace};

    Obstacle chimney;
    chimney.id = id(20);
    chimney.label = "Chimney";
    chimney.base = {3.0, 3.4, 7.0};
    chimney.width_m = 0.6;
    chimney.depth_m = 0.5;
    chimney.height_m = 1.9;
    chimney.turn_deg = 12.5;
    Obstacle tree;
    tree.id = id(21);
    tree.label = "Birch";
    tree.kind = ObstacleKind::tree;
    tree.base = {-4.0, -9.0, 0.0};
    tree.height_m = 11.0;
    tree.radius_m = 2.6;
    tree.crown_base_m = 3.0;
    Obstacle shed;
    shed.id = id(22);
    shed.label = "Neighbour's shed";
    shed.kind = ObstacleKind::prism;
    shed.outline = {{14.0, -3.0}, {18.0, -3.0}, {18.0, 1.0}, {16.0, 1.0}, {16.0, -1.0}, {14.0, -1.0}};
    shed.height_m = 3.1;
    Obstacle aerial;
    aerial.id = id(23);
    aerial.label = "Aerial";
    aerial.kind = ObstacleKind::post;
    aerial.base = {9.2, 4.0, 7.8};
    aerial.height_m = 2.2;
    aerial.radius_m = 0.03;
    site.obstacles = {chimney, tree, shed, aerial};
    site.horizon = {{90.0, 4.0, ""}, {135.0, 7.5, ""}, {180.0, 3.0, ""}, {225.0, 9.0, ""}, {270.0, 5.0, ""}};

    CylinderSpot cellar;
    cellar.id = id(30);
    cellar.label = "Cellar";
    cellar.position = {2.0, 6.5, -2.2};
    cellar.headroom_m = 2.05;
    cellar.floor_area_m2 = 9.5;
    cellar.room_temperature_c = 14.0;
    cellar.supply = {true, 0.0, ""};
    cellar.earth = {true, 0.0, ""};
    cellar.cold = {true, 0.0, ""};
    cellar.hot = {true, 0.0, ""};
    cellar.drain = {false, 3.5, ""};
    CylinderSpot loft = cellar;
    loft.id = id(31);
    loft.label = "Loft";
    loft.position = {5.0, 4.0, 5.0};
    loft.headroom_m = 1.9;
    loft.floor_load_kg = 250.0;
    loft.floor_load_measured = true;
    loft.ventilated = true;
    site.spots = {cellar, loft};

    job.demand.cycle = TappingCycle::l;
    job.demand.scale = 0.9;
    job.demand.set_point_c = 53.0;

    Choice on_roof;
    on_roof.id = id(40);
    on_roof.label = "South roof, cellar";
    on_roof.collector_model = "sample-plate-20";
    on_roof.block_model = "sample-block-300";
    on_roof.cylinder_model = "sample-cylinder-300";
    on_roof.spot_id = cellar.id;
    on_roof.fixing_method = "rafter-hook";
    on_roof.placements = {{id(41), "A", south.id, 2.2, 1.4, 0.0, Hand::right, std::nullopt, std::nullopt, ""},
                          {id(42), "B", south.id, 2.2, 3.1, 90.0, Hand::left, std::nullopt, std::nullopt, ""}};
    on_roof.route = {{id(43), RoutePointKind::roof_passage, {1.2, 1.0, 5.7}, ""},
                     {id(44), RoutePointKind::free, {1.2, 6.5, 5.4}, ""},
                     {id(45), RoutePointKind::floor_passage, {1.2, 6.5, 0.0}, ""}};
    on_roof.extras = {{id(46), "drain-hose", 2.0, ""}};
    Choice on_terrace;
    on_terrace.id = id(50);
    on_terrace.label = "Terrace frame, cellar";
    on_terrace.collector_model = "sample-plate-20";
    on_terrace.block_model = "sample-block-300";
    on_terrace.cylinder_model = "sample-cylinder-200";
    on_terrace.spot_id = cellar.id;
    on_terrace.fixing_method = "ballasted-frame";
    on_terrace.placements = {{id(51), "C", terrace.id, 1.5, 1.2, 0.0, Hand::right, 60.0, 190.0, ""}};
    job.choices = {on_roof, on_terrace};
    job.chosen_choice_id = on_roof.id;

    job.record = {{id(60), ReadingKind::pressure_hold_start, "2027-04-12T08:00:00+02:00", "M. Reyes", "gauge G-07",
                   15.0, 11.5, "", ""},
                  {id(61), ReadingKind::pressure_hold_end, "2027-04-12T09:00:00+02:00", "M. Reyes", "gauge G-07", 14.5,
                   12.0, "typed wrongly", ""},
                  {id(62), ReadingKind::pressure_hold_end, "2027-04-12T09:02:00+02:00", "M. Reyes", "gauge G-07", 15.02,
                   12.0, "", id(61)},
                  {id(63), ReadingKind::remark, "2027-04-12T09:30:00+02:00", "M. Reyes", "", 0.0, std::nullopt,
                   "client shown the valve", ""}};
    Photograph photograph;
    photograph.id = id(70);
    photograph.sha256 = std::string(64, 'a');
    photograph.file_name = "south-roof.jpg";
    photograph.caption = "South roof from the gate";
    job.photographs = {photograph};
    return job;
}

}  // namespace wg::test
