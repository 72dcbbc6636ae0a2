#include <gtest/gtest.h>

#include <string>
#include <utility>

#include "core/job/codec.h"

namespace {

using namespace wg;

std::string uuid(int n) {
    return "00000000-0000-4000-8000-00000000000" + std::to_string(n);
}

Job told_job() {
    Job job;
    job.id = uuid(1);
    Site& s = job.site;
    s.hill = {HillKind::cliff, 80.0, 300.0, 1200.0, -45.0, R"({"seen":true})"};
    s.rooms = {{uuid(2), "Nursery", {{0, 0}, {4, 0}, {4, 3}, {0, 3}}, 2.6, 5.1, true, ""}};
    s.electrics = {EarthingSystem::tt, 230.0, 50.0, 1, 35.0, 18.5, true, 0.4, true, ""};
    s.water.static_pressure_bar = 5.5;
    s.water.reducing_valve = true;
    s.water.fixtures = {{uuid(3), Fixture::bath, 1, ""}, {uuid(4), Fixture::kitchen_sink, 2, ""}};
    s.water.dead_legs = {{uuid(5), "Loft basin", 9.5, 13.0, true, ""}};
    Surface surface;
    surface.id = uuid(6);
    surface.outline = {{0, 0}, {4, 0}, {4, 3}};
    surface.snow_held = true;
    surface.spare_load_kn_m2 = 0.75;
    s.surfaces = {surface};
    CylinderSpot spot;
    spot.id = uuid(7);
    spot.cable = {CableMethod::c, 35.0, 3, ""};
    spot.distribution_m = 14.0;
    s.spots = {spot};
    return job;
}

std::string with_site(const std::string& site) {
    return R"({"format":"warmgable-job","schema":1,"id":"00000000-0000-4000-8000-000000000001","site":)" + site + "}";
}

TEST(HouseOnFile, comes_back_as_it_was_with_fields_of_newer_programs) {
    const Job job = told_job();
    const auto read = job_from_json(job_to_json(job), "j");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().site, job.site);
    EXPECT_EQ(content_sha256(read.value()), content_sha256(job));
}

TEST(HouseOnFile, a_house_of_which_nothing_is_told_keeps_its_text) {
    Job job = told_job();
    Site bare;
    bare.surfaces = job.site.surfaces;
    bare.surfaces[0].snow_held = false;
    bare.surfaces[0].spare_load_kn_m2.reset();
    bare.spots = job.site.spots;
    bare.spots[0].cable = {};
    bare.spots[0].distribution_m = 0.0;
    job.site = bare;
    const std::string text = job_to_json(job);
    for (const char* key :
         {"hill", "rooms", "electrics", "water", "snow_held", "spare_load_kn_m2", "cable", "distribution_m"})
        EXPECT_EQ(text.find(std::string("\"") + key + "\":"), std::string::npos) << key;
}

TEST(HouseOnFile, bad_values_are_refused_with_their_place) {
    const std::pair<const char*, const char*> cases[] = {
        {R"({"hill":{"kind":"dune"}})", "site.hill.kind"},
        {R"({"hill":{"upwind_length_m":0}})", "site.hill.upwind_length_m"},
        {R"({"rooms":[{"id":"00000000-0000-4000-8000-000000000002"}]})", "site.rooms[0].outline"},
        {R"({"rooms":[{"id":"00000000-0000-4000-8000-000000000002","outline":[[0,0],[1,0],[1,1]],"from_z_m":3,)"
         R"("to_z_m":2}]})",
         "site.rooms[0].to_z_m"},
        {R"({"electrics":{"phases":7}})", "site.electrics.phases"},
        {R"({"electrics":{"main_fuse_a":-1}})", "site.electrics.main_fuse_a"},
        {R"({"water":{"static_pressure_bar":99}})", "site.water.static_pressure_bar"},
        {R"({"water":{"fixtures":[{"id":"00000000-0000-4000-8000-000000000002","count":0}]}})",
         "site.water.fixtures[0].count"},
        {R"({"water":{"dead_legs":[{"length_m":2}]}})", "site.water.dead_legs[0].id"},
    };
    for (const auto& [site, where] : cases) {
        const auto read = job_from_json(with_site(site), "j");
        ASSERT_FALSE(read.ok()) << site;
        EXPECT_NE(text_of(read.problems()).find(where), std::string::npos) << site << '\n' << text_of(read.problems());
    }
}

TEST(HouseOnFile, ids_are_unique_with_those_of_the_rest_of_the_job) {
    Job job = told_job();
    job.site.water.dead_legs[0].id = job.site.rooms[0].id;
    EXPECT_NE(text_of(validate(job)).find("site.water.dead_legs[0]"), std::string::npos);
}

}  // namespace
