// Buildings, under-lays and marked photographs on file.

#include <gtest/gtest.h>

#include "core/job/codec.h"
#include "tests/core/job/sample_job.h"

namespace {

using namespace wg;
using test::id;

Job sketched() {
    Job job = test::sample_job();
    Building b;
    b.id = id(900);
    b.label = "House";
    b.shape = BuildingShape::hip;
    b.low_edge_id = id(902);
    b.edges = {
        {id(901), {0, 0}, false, {}}, {id(902), {8, 0}, true, R"({"wall":"thick"})"}, {id(903), {8, 6}, false, {}}};
    job.site.buildings = {b};
    job.site.surfaces[0].footprint_edge_id = id(901);
    job.site.obstacles[0].use = ObstacleUse::chimney;
    job.site.declination_deg = -3.5;
    job.site.street_azimuth_deg = 190.0;
    job.survey.present_heater = "Invented boiler, 24 kW";
    Photograph photo;
    photo.id = id(910);
    photo.sha256 = std::string(64, 'a');
    photo.file_name = "roof.jpg";
    photo.taken_from = Point2{-4.0, 2.5};
    photo.looking_azimuth_deg = 12.0;
    photo.marks = {{id(911), MarkKind::arrow, {0.4, 0.5}, {0.2, 0.2}, "", {}},
                   {id(912), MarkKind::text, {0.1, 0.9}, {}, "slipped tile", {}}};
    job.photographs.push_back(photo);
    UnderlayPicture under;
    under.id = id(920);
    under.photograph_id = id(910);
    under.metres_per_pixel = 0.013;
    under.scaled = true;
    job.site.underlays = {under};
    return job;
}

TEST(SketchOnFile, comes_back_as_it_was) {
    const Job job = sketched();
    EXPECT_TRUE(validate(job).empty()) << text_of(validate(job));
    const auto read = job_from_json(job_to_json(job), "j");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
    EXPECT_EQ(content_sha256(read.value()), content_sha256(job));
}

TEST(SketchOnFile, a_job_without_keeps_its_text) {
    Job job;
    job.id = id(1);
    job.site.surfaces.resize(1);
    job.site.obstacles.resize(1);
    job.photographs.resize(1);
    const std::string text = job_to_json(job);
    for (const char* key : {"buildings", "underlays", "footprint_edge_id", "use", "declination_deg",
                            "street_azimuth_deg", "present_heater", "taken_from", "looking_azimuth_deg", "marks"})
        EXPECT_EQ(text.find(std::string("\"") + key + "\":"), std::string::npos) << key;
}

TEST(SketchOnFile, bad_links_and_outlines_are_named) {
    const auto first = [](const Job& job) {
        const auto problems = validate(job);
        return problems.empty() ? std::string() : problems.front().text();
    };
    Job job = sketched();
    job.site.surfaces[0].footprint_edge_id = id(999);
    EXPECT_NE(first(job).find("footprint_edge_id"), std::string::npos) << first(job);
    job = sketched();
    job.site.buildings[0].low_edge_id = id(999);
    EXPECT_NE(first(job).find("low_edge_id"), std::string::npos) << first(job);
    job = sketched();
    job.site.buildings[0].edges.pop_back();
    EXPECT_NE(first(job).find("at least three"), std::string::npos) << first(job);
    job = sketched();
    job.site.buildings[0].edges[0].from = {8, 6};
    EXPECT_NE(first(job).find("site.buildings[0] \"House\".edges"), std::string::npos) << first(job);
    job = sketched();
    job.site.underlays[0].photograph_id = id(999);
    EXPECT_NE(first(job).find("photograph_id"), std::string::npos) << first(job);
    job = sketched();
    job.site.buildings[0].edges[1].id = job.site.surfaces[0].id;
    EXPECT_FALSE(first(job).empty()) << "an id twice";
    job = sketched();
    job.site.buildings[0].pitch_deg = 80.0;
    EXPECT_NE(first(job).find("pitch_deg"), std::string::npos) << first(job);
    job = sketched();
    job.photographs.back().taken_from = Point2{1e9, 0.0};
    EXPECT_NE(first(job).find("taken_from"), std::string::npos) << first(job);
}

}  // namespace
