#include "core/job/codec.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

#include "tests/core/job/sample_job.h"

namespace wg {
namespace {

using nlohmann::json;
using test::id;
using test::sample_job;

json sample_tree() {
    return json::parse(job_to_json(sample_job()));
}

std::vector<Problem> problems_of(const std::string& text) {
    const Result<Job> read = job_from_json(text, "house.json");
    return read.ok() ? std::vector<Problem>{} : read.problems();
}

std::vector<Problem> problems_of(const json& tree) {
    return problems_of(tree.dump());
}

bool mentions(const std::vector<Problem>& problems, const std::string& words) {
    return std::any_of(problems.begin(), problems.end(),
                       [&words](const Problem& p) { return p.text().find(words) != std::string::npos; });
}

#define EXPECT_REFUSED(source, words) EXPECT_TRUE(mentions(problems_of(source), words)) << text_of(problems_of(source))

TEST(JobCodec, SampleJobIsValid) {
    EXPECT_EQ(text_of(validate(sample_job())), "");
}

TEST(JobCodec, ReadingBackWhatWasWrittenGivesAnEqualJob) {
    const Job job = sample_job();
    const Result<Job> read = job_from_json(job_to_json(job), "house.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
    EXPECT_EQ(job_to_json(read.value()), job_to_json(job));
}

TEST(JobCodec, HowCollectorsAreJoinedIsWrittenOnlyWhenNotInParallel) {
    Job job = sample_job();
    ASSERT_FALSE(job.choices.empty());
    EXPECT_FALSE(sample_tree()["choices"][0].contains("joined"));
    job.choices[0].joined = Joined::series;
    json tree = json::parse(job_to_json(job));
    EXPECT_EQ(tree["choices"][0]["joined"], "series");
    EXPECT_EQ(job_from_json(tree.dump(), "").value(), job);
    tree["choices"][0]["joined"] = "parallel";
    EXPECT_EQ(job_from_json(tree.dump(), "").value(), sample_job());
    tree["choices"][0]["joined"] = "braided";
    EXPECT_REFUSED(tree, "joined");
}

TEST(JobCodec, AFreshJobWithOnlyAnIdIsValidAndRoundTrips) {
    Job job;
    job.id = id(1);
    EXPECT_EQ(text_of(validate(job)), "");
    const Result<Job> read = job_from_json(job_to_json(job), "");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
}

TEST(JobCodec, FieldsThatMayBeLeftOutTakeTheirDefaults) {
    const Result<Job> read =
        job_from_json(R"({"format": "warmgable-job", "schema": 1, "id": "00000000-0000-4000-8000-000000000001"})", "");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    Job job;
    job.id = id(1);
    EXPECT_EQ(read.value(), job);
}

TEST(JobCodec, AwkwardNumbersRoundTripExactly) {
    Job job = sample_job();
    job.site.surfaces[0].origin = {0.1 + 0.2, -0.0, 1.0 / 3.0};
    job.choices[0].placements[0].x_m = std::numeric_limits<double>::denorm_min();
    job.record[0].value = 123456789.123456789;
    const Result<Job> read = job_from_json(job_to_json(job), "");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
    EXPECT_TRUE(std::signbit(read.value().site.surfaces[0].origin.y_m));
}

TEST(JobCodec, TextKeepsQuotesLineBreaksAndEveryScript) {
    Job job = sample_job();
    job.notes = "\"quoted\" \\ back\tslash\n\xE6\xB9\xAF \xF0\x9F\x8F\xA0 \x01";
    const Result<Job> read = job_from_json(job_to_json(job), "");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().notes, job.notes);
}

TEST(JobCodec, OptionalNumbersAreAbsentWhenEmpty) {
    const json tree = sample_tree();
    EXPECT_TRUE(tree["site"].contains("basic_wind_m_s"));
    EXPECT_FALSE(tree["site"].contains("ground_snow_kn_m2"));
    EXPECT_FALSE(tree.contains("extra_json"));
}

TEST(JobCodec, PointsAreWrittenAsLists) {
    const json tree = sample_tree();
    EXPECT_EQ(tree["site"]["surfaces"][0]["origin"], json::parse("[0.0, 0.0, 5.0]"));
    EXPECT_EQ(tree["site"]["surfaces"][0]["outline"][2], json::parse("[10.0, 4.88]"));
}

TEST(JobCodec, TextEndsWithALineBreakAndNamesFormatAndSchema) {
    const std::string text = job_to_json(sample_job());
    EXPECT_EQ(text.back(), '\n');
    EXPECT_EQ(sample_tree()["format"], "warmgable-job");
    EXPECT_EQ(sample_tree()["schema"], job_schema);
}

// ------------------------------------------------------------------------------------ fields of newer programs

TEST(JobCodec, UnknownFieldsAreKeptAtEveryLevel) {
    json tree = sample_tree();
    const json unknown = json::parse(R"({"deep": [1, 2.5, null, {"x": "y"}], "flag": true})");
    const std::vector<std::string> places = {"",
                                             "/client",
                                             "/survey",
                                             "/site",
                                             "/site/location",
                                             "/site/surfaces/1",
                                             "/site/surfaces/0/rafters",
                                             "/site/surfaces/0/keep_outs/1",
                                             "/site/obstacles/2",
                                             "/site/horizon/3",
                                             "/site/spots/0",
                                             "/site/spots/0/drain",
                                             "/demand",
                                             "/choices/0",
                                             "/choices/0/placements/1",
                                             "/choices/0/route/2",
                                             "/choices/0/extras/0",
                                             "/record/2",
                                             "/photographs/0"};
    for (const std::string& place : places)
        tree[json::json_pointer(place + "/from_a_newer_program")] = unknown;
    const Result<Job> read = job_from_json(tree.dump(), "");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(json::parse(job_to_json(read.value())), tree);
    EXPECT_EQ(text_of(validate(read.value())), "");
}

TEST(JobCodec, ExtraThatIsNotAnObjectOrRepeatsAKnownFieldIsReported) {
    Job job = sample_job();
    job.client.extra_json = "[1]";
    job.site.extra_json = R"({"ground_snow_kn_m2": 1.0})";
    const std::vector<Problem> problems = validate(job);
    EXPECT_TRUE(mentions(problems, "client: carries fields of a newer program that are not a JSON object"));
    EXPECT_TRUE(mentions(problems, "site: carries 'ground_snow_kn_m2' twice"));
    EXPECT_FALSE(json::parse(job_to_json(job))["site"].contains("ground_snow_kn_m2"));
}

// ------------------------------------------------------------------------------------ hash

TEST(JobCodec, ContentHashLooksAwayFromRevisionDateAndBase) {
    Job job = sample_job();
    const std::string hash = content_sha256(job);
    EXPECT_EQ(hash.size(), 64U);
    job.revision = 9;
    job.base_revision = 4;
    job.changed_at = "2027-05-01T00:00:00Z";
    job.base_sha256 = std::string(64, 'b');
    EXPECT_EQ(content_sha256(job), hash);
    job.notes += '.';
    EXPECT_NE(content_sha256(job), hash);
}

TEST(JobCodec, ContentHashSurvivesARoundTrip) {
    const Job job = sample_job();
    const Result<Job> read = job_from_json(job_to_json(job), "");
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(content_sha256(read.value()), content_sha256(job));
}

// ------------------------------------------------------------------------------------ refusals: the text

TEST(JobCodec, SyntaxErrorsSayLineAndColumn) {
    EXPECT_REFUSED(std::string("{\n  \"format\": \"warmgable-job\",\n  oops\n}"), "house.json: line 3, column 3");
    EXPECT_REFUSED(std::string(""), "line 1, column 1");
    EXPECT_REFUSED(std::string("{\"a\": 1} x"), "line 1, column 10");
}

TEST(JobCodec, NotANumberAndOverflowAreRefused) {
    std::string text = job_to_json(sample_job());
    const std::string field = "\"ground_albedo\": 0.2";
    for (const std::string value : {"NaN", "Infinity", "-Infinity", "1e400", "nan"}) {
        std::string bad = text;
        bad.replace(bad.find(field), field.size(), "\"ground_albedo\": " + value);
        EXPECT_REFUSED(bad, "is not valid JSON");
    }
}

TEST(JobCodec, DuplicateKeysAreRefusedWithTheirPlace) {
    EXPECT_REFUSED(
        std::string(R"({"format": "warmgable-job", "schema": 1, "site": {"surfaces": [{}, {"id": 1, "id": 2}]}})"),
        "house.json: site.surfaces[1]: the key 'id' occurs twice");
}

TEST(JobCodec, BytesThatAreNotUtf8AreRefused) {
    std::string text = job_to_json(sample_job());
    text.replace(text.find("Lindholm"), 1, "\xff");
    EXPECT_REFUSED(text, "is not valid JSON");
}

TEST(JobCodec, DeepNestingIsRefusedWithoutRecursion) {
    const std::size_t levels = 5000000;
    EXPECT_REFUSED(std::string(levels, '['), "nested deeper than 64");
    std::string objects;
    for (int i = 0; i < 100000; ++i)
        objects += "{\"a\":";
    EXPECT_REFUSED(objects, "nested deeper than 64");
    EXPECT_FALSE(mentions(problems_of(std::string(64, '[') + std::string(64, ']')), "nested deeper"));
    EXPECT_REFUSED(std::string(65, '[') + std::string(65, ']'), "nested deeper than 64");
}

TEST(JobCodec, TextsOver64MebibytesAreRefusedBeforeTheyAreRead) {
    EXPECT_REFUSED(std::string(std::size_t{64} * 1024 * 1024 + 1, ' '), "67108865 bytes long");
}

TEST(JobCodec, TextsWithMillionsOfValuesAreRefused) {
    std::string text = "[";
    for (int i = 0; i < 2000001; ++i)
        text += "0,";
    EXPECT_REFUSED(text, "more than 2000000 values");
}

TEST(JobCodec, OtherFormatsAndNewerSchemasAreRefused) {
    EXPECT_REFUSED(std::string("[]"), "not a job file");
    EXPECT_REFUSED(std::string("{}"), "not a job file");
    json tree = sample_tree();
    tree["format"] = "other";
    EXPECT_REFUSED(tree, "not a job file");
    tree = sample_tree();
    tree["schema"] = 2;
    EXPECT_REFUSED(tree, "a newer program wrote the file");
    tree["schema"] = 18446744073709551615ULL;
    EXPECT_REFUSED(tree, "a newer program wrote the file");
    for (const json& schema : {json(0), json(-1), json(1.5), json("1"), json(nullptr)}) {
        tree["schema"] = schema;
        EXPECT_REFUSED(tree, "schema: is missing or not a whole number from 1");
    }
    tree.erase("schema");
    EXPECT_REFUSED(tree, "schema: is missing");
}

// ------------------------------------------------------------------------------------ refusals: the fields

TEST(JobCodec, ASelfCrossingOutlineNamesSurfaceEdgesAndPlace) {
    json tree = sample_tree();
    tree["site"]["surfaces"][2]["outline"] = json::parse("[[0, 0], [4.2, 6.8], [4.2, 0], [0, 6.8]]");
    EXPECT_REFUSED(tree, "site.surfaces[2] \"West wall\".outline: edges 1 and 3 cross at (2.10, 3.40)");
}

TEST(JobCodec, OutlinesNeedThreeCorners) {
    json tree = sample_tree();
    tree["site"]["surfaces"][0]["keep_outs"][0]["outline"] = json::parse("[[0, 0], [1, 0]]");
    tree["site"]["obstacles"][2]["outline"] = json::array();
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_TRUE(
        mentions(problems, "site.surfaces[0] \"South roof\".keep_outs[0] \"Bathroom window\".outline: has 2 corners"));
    EXPECT_TRUE(mentions(problems, "site.obstacles[2] \"Neighbour's shed\".outline: has 0 corners"));
}

TEST(JobCodec, AbsurdCoordinatesAreRefused) {
    json tree = sample_tree();
    tree["site"]["surfaces"][0]["outline"][1] = json::parse("[1e300, 0]");
    tree["site"]["surfaces"][1]["origin"] = json::parse("[0, -10001, 0]");
    tree["choices"][0]["placements"][0]["x_m"] = 1e9;
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_TRUE(mentions(problems, "site.surfaces[0] \"South roof\".outline[1]: x is 1e+300")) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "site.surfaces[1] \"North roof\".origin: y is -10001"));
    EXPECT_TRUE(mentions(problems, "choices[0] \"South roof, cellar\".placements[0] \"A\".x_m: is 1000000000"));
    EXPECT_EQ(problems.size(), 3U);
}

TEST(JobCodec, NumbersOutsideTheirRangesAreAllReported) {
    json tree = sample_tree();
    tree["site"]["location"]["latitude_deg"] = 90.5;
    tree["site"]["surfaces"][0]["tilt_deg"] = -1;
    tree["site"]["surfaces"][0]["rafters"]["spacing_m"] = 0.1;
    tree["site"]["obstacles"][1]["leaf_to_month"] = 13;
    tree["site"]["obstacles"][1]["crown_base_m"] = 12.0;
    tree["site"]["horizon"][0]["elevation_deg"] = 81;
    tree["demand"]["set_point_c"] = 66;
    tree["revision"] = -1;
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_EQ(problems.size(), 8U) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "site.location.latitude_deg: is 90.5. It has to lie between -90 and 90"));
    EXPECT_TRUE(mentions(problems, "obstacles[1] \"Birch\".leaf_to_month: is 13"));
}

TEST(JobCodec, WhatStandsForAValueLeftOutHasToFitTheOthers) {
    json tree = sample_tree();
    json& tree_in_garden = tree["site"]["obstacles"][1];
    tree_in_garden["height_m"] = 1.5;
    tree_in_garden.erase("crown_base_m");
    EXPECT_TRUE(mentions(problems_of(tree), "\"Birch\".crown_base_m: is 2. It has to lie between 0 and 1.5"));
    tree_in_garden["height_m"] = 2.5;
    EXPECT_TRUE(job_from_json(tree.dump(), "").ok());
}

TEST(JobCodec, WrongTypesSayWhatWasFoundAndWhatIsWanted) {
    json tree = sample_tree();
    tree["title"] = 5;
    tree["invented"] = "yes";
    tree["revision"] = 1.5;
    tree["site"]["surfaces"][0]["tilt_deg"] = "35";
    tree["site"]["surfaces"][0]["origin"] = json::parse("[1, 2]");
    tree["site"]["surfaces"][1]["outline"][0] = json::parse("[1, \"2\"]");
    tree["site"]["obstacles"] = 7;
    tree["site"]["spots"][0]["drain"] = nullptr;
    tree["site"]["horizon"][0] = false;
    tree["site"]["basic_wind_m_s"] = nullptr;
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_EQ(problems.size(), 10U) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "title: is a whole number. It has to be text"));
    EXPECT_TRUE(mentions(problems, "revision: is a number with decimals. It has to be a whole number"));
    EXPECT_TRUE(mentions(problems, "outline[0]: is a list. It has to be a list of two numbers [x, y]"));
    EXPECT_TRUE(mentions(problems, "drain: is nothing (null). It has to be an object"));
}

TEST(JobCodec, UnknownWordsAreAnsweredWithTheKnownOnes) {
    json tree = sample_tree();
    tree["site"]["surfaces"][0]["covering"] = "thatch";
    EXPECT_REFUSED(tree, "covering: is 'thatch'. It has to be one of: clay_tile, concrete_tile, slate");
}

TEST(JobCodec, MissingNeededFieldsAreNamed) {
    json tree = sample_tree();
    tree.erase("id");
    tree["site"]["location"].erase("latitude_deg");
    tree["site"]["surfaces"][0].erase("outline");
    tree["choices"][0]["placements"][0].erase("y_m");
    tree["record"][3].erase("taken_at");
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_EQ(problems.size(), 5U) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "record[3].taken_at: is missing"));
}

TEST(JobCodec, MalformedIdsHashesAndDatesAreRefused) {
    json tree = sample_tree();
    tree["id"] = "00000000-0000-4000-8000-00000000000G";
    tree["photographs"][0]["sha256"] = std::string(63, 'a');
    tree["survey"]["visited_on"] = "2027-02-29";
    tree["record"][0]["taken_at"] = "2027-04-12T08:00:00";
    tree["created_at"] = "yesterday";
    const std::vector<Problem> problems = problems_of(tree);
    EXPECT_EQ(problems.size(), 5U) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "record[0].taken_at: '2027-04-12T08:00:00' is not a date and time with an offset"));
}

TEST(JobCodec, IdsAreUniqueInTheWholeJob) {
    json tree = sample_tree();
    tree["record"][3]["id"] = id(20);
    EXPECT_REFUSED(tree, "record[3].id: is " + id(20) + ", which site.obstacles[0] \"Chimney\" has too");
}

TEST(JobCodec, ReferencesHaveToExist) {
    Job job = sample_job();
    job.choices[0].placements[0].surface_id = id(999);
    job.choices[1].spot_id = id(998);
    job.chosen_choice_id = id(997);
    job.record[2].corrects_id = id(996);
    const std::vector<Problem> problems = validate(job);
    EXPECT_EQ(problems.size(), 4U) << text_of(problems);
    EXPECT_TRUE(
        mentions(problems, "choices[0] \"South roof, cellar\".placements[0] \"A\".surface_id: names the surface"));
    EXPECT_EQ(problems_of(job_to_json(job)).size(), 4U);
}

TEST(JobCodec, CorrectionsMustNotGoRoundInACircle) {
    Job job = sample_job();
    job.record[1].corrects_id = id(62);
    EXPECT_TRUE(mentions(validate(job), "leads back to the entry itself"));
    job = sample_job();
    job.record[3].corrects_id = job.record[3].id;
    EXPECT_TRUE(mentions(validate(job), "record[3].corrects_id: leads back to the entry itself"));
}

TEST(JobCodec, NoMoreThanFiftyProblemsAreListed) {
    Job job = sample_job();
    for (int i = 0; i < 200; ++i)
        job.site.horizon.push_back({400.0, 99.0, ""});
    EXPECT_EQ(validate(job).size(), 50U);
    EXPECT_EQ(problems_of(job_to_json(job)).size(), 50U);
}

TEST(JobCodec, LongTextsAndListsAreRefused) {
    Job job = sample_job();
    job.notes = std::string(65537, 'n');
    job.number = std::string(65, '1');
    job.site.horizon.assign(10001, HorizonPoint{});
    std::vector<Problem> problems = validate(job);
    EXPECT_TRUE(mentions(problems, "notes: is 65537 bytes long"));
    EXPECT_TRUE(mentions(problems, "number: is 65 bytes long"));
    EXPECT_TRUE(mentions(problems, "site.horizon: has 10001 entries. At most 10000 are allowed"));
    problems = problems_of(job_to_json(job));
    EXPECT_EQ(problems.size(), 3U) << text_of(problems);
}

TEST(JobCodec, AJobInMemoryIsHeldAgainstTheSameRules) {
    Job job = sample_job();
    job.site.ground_albedo = std::numeric_limits<double>::quiet_NaN();
    job.site.surfaces[0].origin.z_m = std::numeric_limits<double>::infinity();
    job.site.surfaces[1].covering = static_cast<Covering>(77);
    job.title = "\xff";
    job.notes = std::string("a\0b", 3);
    const std::vector<Problem> problems = validate(job);
    EXPECT_EQ(problems.size(), 5U) << text_of(problems);
    EXPECT_TRUE(mentions(problems, "site.ground_albedo: is not a finite number"));
}

TEST(JobCodec, MessagesCutLongValuesBetweenCharacters) {
    json tree = sample_tree();
    std::string word;
    for (int i = 0; i < 1000; ++i)
        word += "\xC3\xA4";
    tree["state"] = word;
    const std::vector<Problem> problems = problems_of(tree);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_LT(problems[0].what.size(), 100U);
    EXPECT_NO_THROW(static_cast<void>(json(problems[0].what).dump()));
}

}  // namespace
}  // namespace wg
