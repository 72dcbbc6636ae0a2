#include "core/plan/reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include "core/job/codec.h"
#include "core/plan/plan.h"
#include "core/site/geometry.h"

namespace wg::plan {
namespace reference_test {

std::optional<std::string> from_resources(const std::string& path) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + '/' + path);
    if (!file) return std::nullopt;
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

const Reference& shipped() {
    static const Result<Reference> loaded = load_reference(from_resources);
    EXPECT_TRUE(loaded.ok()) << (loaded.ok() ? "" : text_of(loaded.problems()));
    return loaded.value();
}

Job demo() {
    const Result<Job> job = job_from_json(from_resources("demo/job.json").value_or(""), "demo/job.json");
    EXPECT_TRUE(job.ok()) << (job.ok() ? "" : text_of(job.problems()));
    return job.value();
}

bool mentions(const std::vector<Problem>& problems, const std::string& where, const std::string& what) {
    return std::any_of(problems.begin(), problems.end(), [&](const Problem& p) {
        return p.where.find(where) != std::string::npos && p.what.find(what) != std::string::npos;
    });
}

/// Shipped files with one of them replaced or (nullopt) removed.
ReadResource with(const std::string& changed, std::optional<std::string> text) {
    return [changed, text](const std::string& path) { return path == changed ? text : from_resources(path); };
}

TEST(LoadReference, shipped_resources_load_whole) {
    const Reference& reference = shipped();
    EXPECT_FALSE(reference.catalogue.collectors.empty());
    EXPECT_EQ(reference.price_lists.count("invented-eur"), 1U);
    EXPECT_EQ(reference.rule_sets.count("assumed"), 1U);
    EXPECT_EQ(reference.climates.count("harrowmere"), 1U);
    EXPECT_GE(reference.climates.size(), 61U);  // and the table of places
    EXPECT_EQ(reference.climates.count("place:zurich"), 1U);
    EXPECT_EQ(reference.refrigerants.size(), 4U);
    for (const BlockModel& block : reference.catalogue.blocks) {
        EXPECT_EQ(reference.refrigerants.count(block.refrigerant), 1U) << block.id;
    }
}

TEST(LoadReference, missing_index_is_one_clear_problem) {
    const Result<Reference> result = load_reference(with("index.json", std::nullopt));
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(mentions(result.problems(), "index.json", "missing"));
}

TEST(LoadReference, missing_and_broken_files_are_all_named) {
    const ReadResource read = [](const std::string& path) -> std::optional<std::string> {
        if (path == "prices/invented.json") return std::nullopt;
        if (path == "rules/assumed.json") return "{]";
        return from_resources(path);
    };
    const Result<Reference> result = load_reference(read);
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(mentions(result.problems(), "prices/invented.json", "missing"));
    EXPECT_TRUE(mentions(result.problems(), "rules/assumed.json", "line 1"));
}

TEST(LoadReference, same_item_in_two_files_is_refused) {
    std::string index = from_resources("index.json").value_or("");
    const std::string once = "\"equipment/invented.json\"";
    index.replace(index.find(once), once.size(), once + ", " + once);
    const Result<Reference> result = load_reference(with("index.json", index));
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(mentions(result.problems(), "marl-18", "too"));
}

TEST(LoadReference, cylinder_that_names_an_unknown_block_is_refused) {
    std::string equipment = from_resources("equipment/invented.json").value_or("");
    const std::string none = "\"fits_blocks\": []";
    ASSERT_NE(equipment.find(none), std::string::npos);
    equipment.replace(equipment.find(none), none.size(), "\"fits_blocks\": [\"rill-99\"]");
    const Result<Reference> result = load_reference(with("equipment/invented.json", equipment));
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(mentions(result.problems(), "copse-200", "rill-99"));
}

TEST(LoadReference, a_compressors_data_are_checked_with_its_refrigerant) {
    std::string equipment = from_resources("equipment/invented.json").value_or("");
    const std::string capacity = "\"capacity_w\": [2231.205";
    ASSERT_NE(equipment.find(capacity), std::string::npos);
    // Watts taken for kg/h: polynomials alone cannot tell, enthalpies can.
    equipment.replace(equipment.find(capacity), capacity.size(), "\"mass_flow_kg_h\": [2231.205");
    const Result<Reference> result = load_reference(with("equipment/invented.json", equipment));
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(mentions(result.problems(), "Rill 17 C\".compressor.power_w", "efficiency"))
        << text_of(result.problems());
}

TEST(WeatherFor, unknown_climate_names_those_there_are) {
    const auto result = weather_for(shipped(), "atlantis");
    ASSERT_FALSE(result.ok());
    EXPECT_NE(result.problems()[0].remedy.find("harrowmere"), std::string::npos);
}

TEST(WeatherFor, demo_climate_gives_a_prepared_year) {
    const auto result = weather_for(shipped(), "harrowmere");
    ASSERT_TRUE(result.ok()) << text_of(result.problems());
    EXPECT_EQ(result.value()->sky.sun_up.size(), 8760U);
}

TEST(DemoJob, is_marked_invented_and_names_only_what_the_reference_holds) {
    const Job job = demo();
    EXPECT_TRUE(job.invented);
    const Reference& reference = shipped();
    EXPECT_EQ(reference.climates.count(job.weather), 1U);
    EXPECT_EQ(reference.rule_sets.count(job.rule_set), 1U);
    EXPECT_EQ(reference.price_lists.count(job.price_list), 1U);
    const parts::PriceList& prices = reference.price_lists.at(job.price_list);
    for (const Choice& choice : job.choices) {
        EXPECT_NE(find_collector(reference.catalogue, choice.collector_model), nullptr) << choice.label;
        EXPECT_NE(find_block(reference.catalogue, choice.block_model), nullptr) << choice.label;
        EXPECT_NE(find_cylinder(reference.catalogue, choice.cylinder_model), nullptr) << choice.label;
        EXPECT_NE(find_fixing_method(reference.catalogue, choice.fixing_method), nullptr) << choice.label;
        EXPECT_NE(parts::find_item(prices, choice.collector_model), nullptr) << choice.label;
        for (const ExtraItem& extra : choice.extras) {
            EXPECT_NE(parts::find_item(prices, extra.price_item), nullptr) << extra.price_item;
        }
    }
    ASSERT_NE(chosen_choice(job), nullptr);
    EXPECT_EQ(chosen_choice(job)->placements.size(), 2U);
}

constexpr double survey_m = 1e-3;  // sketches are kept to the tenth of a millimetre; a millimetre is nothing on a roof

Point3 corner(const Job& job, const Surface& surface, std::size_t i) {
    return site::to_space(site::frame_of(surface, job.site.sketch_up_azimuth_deg), surface.outline[i]);
}

TEST(DemoJob, both_roof_planes_meet_in_one_level_ridge) {
    const Job job = demo();
    const Surface& south_west = job.site.surfaces[0];
    const Surface& north_east = job.site.surfaces[1];
    // Corners 2 and 3 are the ridge, seen from opposite sides.
    for (const auto& [a, b] : {std::pair<std::size_t, std::size_t>{2, 3}, {3, 2}}) {
        const Point3 p = corner(job, south_west, a);
        const Point3 q = corner(job, north_east, b);
        EXPECT_NEAR(p.x_m, q.x_m, survey_m);
        EXPECT_NEAR(p.y_m, q.y_m, survey_m);
        EXPECT_NEAR(p.z_m, q.z_m, survey_m);
        EXPECT_NEAR(p.z_m, south_west.ridge_height_m, survey_m);
    }
    EXPECT_GT(std::fabs(south_west.tilt_deg - north_east.tilt_deg), 1.0) << "the planes are meant to be unequal";
}

TEST(DemoJob, gable_wall_stays_under_both_roof_planes) {
    const Job job = demo();
    const Surface& wall = job.site.surfaces[2];
    ASSERT_EQ(wall.kind, SurfaceKind::wall);
    for (std::size_t i = 0; i < wall.outline.size(); ++i) {
        const Point3 p = corner(job, wall, i);
        for (const std::size_t roof : {0U, 1U}) {
            const site::Frame frame = site::frame_of(job.site.surfaces[roof], job.site.sketch_up_azimuth_deg);
            const double above = (p.x_m - frame.origin.x_m) * frame.normal.x_m +
                                 (p.y_m - frame.origin.y_m) * frame.normal.y_m +
                                 (p.z_m - frame.origin.z_m) * frame.normal.z_m;
            EXPECT_LT(above, 0.0) << "corner " << i << " sticks out of roof " << roof;
        }
    }
}

TEST(DemoJob, collectors_lie_inside_their_surfaces_and_clear_of_keep_outs_and_each_other) {
    const Job job = demo();
    for (const Choice& choice : job.choices) {
        const CollectorModel& model = *find_collector(shipped().catalogue, choice.collector_model);
        std::vector<std::vector<Point2>> placed;
        for (const Placement& placement : choice.placements) {
            const Surface& surface = *find_surface(job.site, placement.surface_id);
            const auto outline = site::place(surface, job.site.sketch_up_azimuth_deg, placement, model).outline;
            EXPECT_TRUE(site::contains(surface.outline, outline)) << placement.label;
            for (const Point2 p : outline) {
                EXPECT_GE(site::edge_distance_m(surface.outline, p), model.clearance_m) << placement.label;
            }
            for (const KeepOut& zone : surface.keep_outs) {
                EXPECT_GE(site::gap_m(zone.outline, outline), zone.clearance_m) << placement.label << ' ' << zone.label;
            }
            for (const auto& other : placed)
                EXPECT_GE(site::gap_m(other, outline), model.clearance_m) << placement.label;
            placed.push_back(outline);
        }
    }
}

TEST(DemoJob, none_of_its_choices_is_stopped) {
    const Job job = demo();
    for (const Choice& choice : job.choices) {
        Options options;
        options.choice_id = choice.id;
        options.ranges = false;
        const Result<Plan> result = plan(job, shipped(), options);
        ASSERT_TRUE(result.ok()) << text_of(result.problems());
        for (const Finding& f : result.value().findings) {
            EXPECT_NE(f.severity, Severity::stop) << choice.label << ": " << f.message;
        }
        for (const parts::Line& line : result.value().parts.lines) {
            EXPECT_TRUE(line.priced) << choice.label << ": " << line.item_id;
        }
    }
}

// Common practice, no published source: a well-matched set heats its cylinder from 10 to 55 deg C in 4 to 8 hours of
// good to average daylight.
TEST(DemoJob, chosen_set_warms_up_in_a_working_day) {
    Options options;
    options.ranges = false;
    const Result<Plan> result = plan(demo(), shipped(), options);
    ASSERT_TRUE(result.ok()) << text_of(result.problems());
    for (const auto& warm : {result.value().warm_up_good, result.value().warm_up_fair}) {
        ASSERT_TRUE(warm.has_value());
        EXPECT_TRUE(warm->reached);
        EXPECT_GE(warm->hours, 4.0);
        EXPECT_LE(warm->hours, 8.0);
    }
}

TEST(DemoJob, roof_passage_lies_on_the_roof_plane) {
    const Job job = demo();
    const Surface& roof = job.site.surfaces[0];
    const site::Frame frame = site::frame_of(roof, job.site.sketch_up_azimuth_deg);
    for (const RoutePoint& point : chosen_choice(job)->route) {
        if (point.kind != RoutePointKind::roof_passage) continue;
        const Point2 on = site::to_plane(frame, point.position);
        const Point3 back = site::to_space(frame, on);
        EXPECT_NEAR(back.z_m, point.position.z_m, survey_m);
        EXPECT_TRUE(site::contains(roof.outline, on));
    }
}

}  // namespace reference_test
}  // namespace wg::plan
