// Buildings of a job: what is made from them follows their edits and keeps what people entered.

#include "core/roof/linked.h"

#include <gtest/gtest.h>

#include <cstdio>

#include "core/job/codec.h"
#include "core/site/geometry.h"

namespace wg::roof {
namespace {

NewId counted() {
    return [n = 0x1000]() mutable {
        char out[48];
        std::snprintf(out, sizeof out, "00000000-0000-4000-8000-%012x", n++);
        return std::string(out);
    };
}

Building l_house(const NewId& new_id) {
    Building b;
    b.id = new_id();
    b.label = "House";
    b.shape = BuildingShape::hip;
    b.pitch_deg = 38.0;
    for (const Point2 p : {Point2{0, 0}, {12, 0}, {12, 6}, {5, 6}, {5, 11}, {0, 11}})
        b.edges.push_back({new_id(), p, false, {}});
    return b;
}

struct Made {
    NewId new_id = counted();
    Building building;
    Job job;
};

Made made() {
    Made m;
    m.job.id = m.new_id();
    m.building = l_house(m.new_id);
    const auto built = with_building(m.job, m.building, m.new_id);
    EXPECT_TRUE(built) << text_of(built.problems());
    if (built) m.job = built.value().job;
    return m;
}

Surface& roof_over(Job& job, const std::string& edge_id) {
    for (Surface& s : job.site.surfaces)
        if (s.footprint_edge_id == edge_id && s.kind == SurfaceKind::roof) return s;
    ADD_FAILURE() << "no roof over the edge";
    return job.site.surfaces.front();
}

TEST(Linked, a_building_adds_planes_and_walls_that_name_their_edge) {
    const Made m = made();
    EXPECT_EQ(m.job.site.surfaces.size(), 12U);
    for (const Surface& s : m.job.site.surfaces)
        EXPECT_EQ(building_of_edge(m.job.site, s.footprint_edge_id)->id, m.building.id) << s.label;
    EXPECT_TRUE(validate(m.job).empty()) << text_of(validate(m.job));
    const auto read = job_from_json(job_to_json(m.job), "j");
    ASSERT_TRUE(read) << text_of(read.problems());
    EXPECT_EQ(read.value(), m.job);
}

TEST(Linked, planes_keep_what_was_entered_on_them_and_follow_in_shape) {
    Made m = made();
    const std::string edge = m.building.edges[0].id;
    Surface& south = roof_over(m.job, edge);
    south.label = "South roof";
    south.rafters = {true, 0.4, 0.7, 0.08, 0.18, {}};
    south.keep_outs.push_back({m.new_id(), "Bath window", KeepOutKind::roof_window, {{2, 1}, {3, 1}, {3, 2}}, 0.1, ""});
    const Surface before = south;
    Building steeper = m.building;
    steeper.pitch_deg = 45.0;
    const auto built = with_building(m.job, steeper, m.new_id);
    ASSERT_TRUE(built) << text_of(built.problems());
    EXPECT_TRUE(built.value().lost.empty());
    Job after = built.value().job;
    const Surface& now = roof_over(after, edge);
    EXPECT_EQ(now.id, before.id);
    EXPECT_EQ(now.label, "South roof");
    EXPECT_EQ(now.rafters, before.rafters);
    EXPECT_EQ(now.keep_outs, before.keep_outs);
    EXPECT_DOUBLE_EQ(now.tilt_deg, 45.0);
    EXPECT_NE(now.outline, before.outline);
    EXPECT_EQ(after.site.surfaces.size(), m.job.site.surfaces.size());
}

TEST(Linked, the_same_measures_again_change_nothing) {
    Made m = made();
    const auto again = with_building(m.job, m.building, m.new_id);
    ASSERT_TRUE(again);
    EXPECT_EQ(again.value().job, m.job);
}

TEST(Linked, a_covering_of_ones_own_stays_and_the_buildings_follows) {
    Made m = made();
    roof_over(m.job, m.building.edges[0].id).covering = Covering::standing_seam;
    Building slated = m.building;
    slated.covering = Covering::slate;
    Job after = with_building(m.job, slated, m.new_id).value().job;
    EXPECT_EQ(roof_over(after, m.building.edges[0].id).covering, Covering::standing_seam);
    EXPECT_EQ(roof_over(after, m.building.edges[1].id).covering, Covering::slate);
}

TEST(Linked, a_corner_more_leaves_the_other_planes_their_ids_and_is_taken_back_exactly) {
    Made m = made();
    const auto more = with_corner(m.building, 0, {6.0, -1.5}, m.new_id);
    ASSERT_TRUE(more) << text_of(more.problems());
    Job after = with_building(m.job, more.value(), m.new_id).value().job;
    for (const FootprintEdge& edge : m.building.edges)
        EXPECT_EQ(roof_over(after, edge.id).id, roof_over(m.job, edge.id).id);
    EXPECT_EQ(after.site.surfaces.size(), 14U);
    const auto less = without_corner(more.value(), 1);
    ASSERT_TRUE(less);
    EXPECT_EQ(less.value(), m.building);
    EXPECT_EQ(with_building(after, less.value(), m.new_id).value().job, m.job);
}

TEST(Linked, a_plane_with_a_collector_does_not_vanish) {
    Made m = made();
    Choice choice;
    choice.id = m.new_id();
    choice.label = "A";
    Placement placement;
    placement.id = m.new_id();
    placement.label = "Left";
    placement.surface_id = roof_over(m.job, m.building.edges[1].id).id;
    choice.placements.push_back(placement);
    m.job.choices.push_back(choice);
    Building gabled = m.building;
    gabled.shape = BuildingShape::gable;
    gabled.edges[1].gable = true;
    gabled.edges[4].gable = true;
    const auto refused = with_building(m.job, gabled, m.new_id);
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.problems().front().text().find("\"Left\""), std::string::npos);
    EXPECT_FALSE(without_building(m.job, m.building.id));
    m.job.choices.clear();
    EXPECT_TRUE(with_building(m.job, gabled, m.new_id));
}

TEST(Linked, what_goes_with_a_plane_is_said) {
    Made m = made();
    roof_over(m.job, m.building.edges[1].id)
        .keep_outs.push_back({m.new_id(), "Vent pipe", KeepOutKind::vent, {{1, 1}, {2, 1}, {2, 2}}, 0.0, ""});
    const auto gone = without_building(m.job, m.building.id);
    ASSERT_TRUE(gone);
    ASSERT_EQ(gone.value().lost.size(), 1U);
    EXPECT_NE(gone.value().lost[0].find("Vent pipe"), std::string::npos);
    EXPECT_TRUE(gone.value().job.site.surfaces.empty());
    EXPECT_TRUE(gone.value().job.site.buildings.empty());
}

TEST(Linked, released_planes_stay_where_they_are) {
    const Made m = made();
    const auto free = released(m.job, m.building.id);
    ASSERT_TRUE(free);
    ASSERT_EQ(free.value().site.surfaces.size(), m.job.site.surfaces.size());
    for (std::size_t i = 0; i < m.job.site.surfaces.size(); ++i) {
        EXPECT_TRUE(free.value().site.surfaces[i].footprint_edge_id.empty());
        EXPECT_EQ(free.value().site.surfaces[i].outline, m.job.site.surfaces[i].outline);
    }
    EXPECT_TRUE(validate(free.value()).empty());
}

TEST(Linked, parapets_follow_and_go) {
    Made m = made();
    Building flat = m.building;
    flat.shape = BuildingShape::flat;
    flat.parapet_m = 0.6;
    Job after = with_building(m.job, flat, m.new_id).value().job;
    ASSERT_EQ(after.site.obstacles.size(), 6U);
    EXPECT_EQ(after.site.obstacles[0].use, ObstacleUse::parapet);
    const std::string id = after.site.obstacles[0].id;
    flat.parapet_m = 0.9;
    after = with_building(after, flat, m.new_id).value().job;
    EXPECT_EQ(after.site.obstacles[0].id, id);
    EXPECT_DOUBLE_EQ(after.site.obstacles[0].height_m, 0.9);
    flat.parapet_m = 0.0;
    after = with_building(after, flat, m.new_id).value().job;
    EXPECT_TRUE(after.site.obstacles.empty());
}

TEST(Linked, corners_that_cross_are_refused) {
    const Made m = made();
    NewId new_id = m.new_id;
    EXPECT_FALSE(with_corner(m.building, 0, {6.0, 20.0}, new_id));
    EXPECT_FALSE(with_corner(m.building, 99, {6.0, 0.0}, new_id));
    EXPECT_FALSE(with_corner_at(m.building, 0, {20.0, 3.0}));
    Building triangle = m.building;
    triangle.edges.resize(3);
    EXPECT_FALSE(without_corner(triangle, 0));
}

TEST(Linked, a_clockwise_footprint_gives_each_edge_its_own_plane) {
    NewId new_id = counted();
    Building b = l_house(new_id);
    Job job;
    job.id = new_id();
    Building turned = b;
    std::reverse(turned.edges.begin(), turned.edges.end());
    // Edge i of the turned one runs from its corner to the next: the old edge that ended there.
    const std::size_t count = b.edges.size();
    for (std::size_t i = 0; i < count; ++i)
        turned.edges[i].id = b.edges[(2 * count - 2 - i) % count].id;
    Job one = with_building(job, b, new_id).value().job;
    Job other = with_building(job, turned, new_id).value().job;
    for (const FootprintEdge& edge : b.edges) {
        EXPECT_NEAR(roof_over(one, edge.id).azimuth_deg, roof_over(other, edge.id).azimuth_deg, 1e-9);
        EXPECT_NEAR(site::bounds_of(roof_over(one, edge.id).outline).width_m(),
                    site::bounds_of(roof_over(other, edge.id).outline).width_m(), 1e-9);
    }
}

}  // namespace
}  // namespace wg::roof
