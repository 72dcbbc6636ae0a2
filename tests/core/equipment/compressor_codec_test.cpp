// The "compressor" object of a block: ten coefficients by EN 12900.

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>

#include "core/equipment/codec.h"

namespace wg {
namespace compressor_codec_test {

using nlohmann::json;

constexpr const char* item = "rill-17c";

json shipped() {
    return json::parse(std::ifstream(std::string(WG_RESOURCES_DIR) + "/equipment/invented.json"));
}

json& block_of(json& document) {
    for (json& block : document["blocks"])
        if (block["id"] == item) return block;
    throw std::runtime_error("the shipped catalogue has no block by data");
}

/// The problems after a change of the block with data; empty when the catalogue reads.
template <class Change>
std::vector<Problem> problems_after(Change change) {
    json document = shipped();
    change(block_of(document));
    const Result<Catalogue> result = catalogue_from_json(document.dump(), "x.json");
    return result ? std::vector<Problem>{} : result.problems();
}

bool names(const std::vector<Problem>& problems, const std::string& field) {
    return std::any_of(problems.begin(), problems.end(), [&](const Problem& p) {
        return p.where.find(item) != std::string::npos && p.where.find(field) != std::string::npos && !p.what.empty() &&
               !p.remedy.empty();
    });
}

TEST(CompressorCodec, a_block_by_data_reads_and_is_written_back_equal) {
    const Catalogue first = catalogue_from_json(shipped().dump(), "invented.json").value();
    const BlockModel* block = find_block(first, item);
    ASSERT_NE(block, nullptr);
    ASSERT_TRUE(block->compressor.has_value());
    EXPECT_DOUBLE_EQ(block->compressor->suction_superheat_k, 10.0);
    EXPECT_EQ(block->compressor->range.size(), 6U);
    const std::string text = catalogue_to_json(first);
    const Result<Catalogue> second = catalogue_from_json(text, "again.json");
    ASSERT_TRUE(second.ok()) << text_of(second.problems());
    EXPECT_EQ(first.blocks, second.value().blocks);
    // The other form of every choice, too.
    Catalogue other = first;
    for (BlockModel& b : other.blocks)
        if (b.compressor) {
            b.compressor->output = CompressorOutput::mass_flow_kg_h;
            b.compressor->suction_gas_c = 25.0;
            b.compressor->suction_superheat_k = CompressorData{}.suction_superheat_k;
            b.compressor->range.clear();
            b.condenser_glide_k = 7.5;
        }
    const Result<Catalogue> third = catalogue_from_json(catalogue_to_json(other), "other.json");
    ASSERT_TRUE(third.ok()) << text_of(third.problems());
    EXPECT_EQ(other.blocks, third.value().blocks);
    EXPECT_NE(other.blocks, first.blocks);
}

TEST(CompressorCodec, blocks_without_data_or_glide_read_as_before) {
    const Catalogue read = catalogue_from_json(shipped().dump(), "invented.json").value();
    const BlockModel* block = find_block(read, "rill-18");
    ASSERT_NE(block, nullptr);
    EXPECT_FALSE(block->compressor.has_value());
    EXPECT_EQ(block->condenser_glide_k, 0.0);
    EXPECT_EQ(block->displacement_cm3, 18.0);
}

TEST(CompressorCodec, both_forms_or_neither_are_refused) {
    EXPECT_TRUE(names(problems_after([](json& b) { b["displacement_cm3"] = 18.0; }), "displacement_cm3"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["overall_peak"] = 0.6; }), "overall_peak"));
    EXPECT_TRUE(names(problems_after([](json& b) { b.erase("compressor"); }), "compressor"));
    EXPECT_TRUE(
        names(problems_after([](json& b) { b["compressor"]["mass_flow_kg_h"] = b["compressor"]["capacity_w"]; }),
              "capacity_w"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"].erase("capacity_w"); }), "capacity_w"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"]["suction_gas_c"] = 20.0; }), "suction_superheat_k"));
    EXPECT_TRUE(
        names(problems_after([](json& b) { b["compressor"].erase("suction_superheat_k"); }), "suction_superheat_k"));
}

TEST(CompressorCodec, each_missing_or_misshapen_field_is_named) {
    for (const char* field : {"power_w", "subcooling_k", "evaporating_min_c", "evaporating_max_c", "condensing_min_c",
                              "condensing_max_c"}) {
        EXPECT_TRUE(names(problems_after([&](json& b) { b["compressor"].erase(field); }), field)) << field;
        EXPECT_TRUE(names(problems_after([&](json& b) { b["compressor"][field] = "many"; }), field)) << field;
    }
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"]["capacity_w"].erase(9); }), "capacity_w"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"]["power_w"][3] = "x"; }), "power_w"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"]["power_w"][3] = 1e30; }), "power_w"));
    EXPECT_FALSE(problems_after([](json& b) { b["compressor"]["colour"] = "red"; }).empty());
    EXPECT_TRUE(names(problems_after([](json& b) { b["compressor"] = 5; }), "compressor"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["condenser_glide_k"] = 15.5; }), "condenser_glide_k"));
    EXPECT_TRUE(names(problems_after([](json& b) { b["condenser_glide_k"] = -0.5; }), "condenser_glide_k"));
}

TEST(CompressorCodec, coefficients_must_describe_a_compressor_within_the_range) {
    const auto coefficient = [](const char* list, std::size_t i, double value) {
        return problems_after([=](json& b) { b["compressor"][list][i] = value; });
    };
    EXPECT_TRUE(names(coefficient("capacity_w", 0, -3000.0), "capacity_w")) << "negative";
    EXPECT_TRUE(names(coefficient("capacity_w", 1, -100.0), "capacity_w")) << "falls with the evaporating temperature";
    EXPECT_TRUE(names(coefficient("power_w", 0, -3000.0), "power_w"));
    EXPECT_TRUE(names(coefficient("power_w", 0, -150.0), "capacity_w")) << "better than Carnot";
    EXPECT_TRUE(names(problems_after([](json& b) {
                          for (json& c : b["compressor"]["power_w"])
                              c = c.get<double>() / 1000.0;
                      }),
                      "capacity_w"))
        << "kW";
    EXPECT_TRUE(
        names(problems_after([](json& b) { std::swap(b["compressor"]["capacity_w"], b["compressor"]["power_w"]); }),
              "compressor"));
}

TEST(CompressorCodec, the_range_is_convex_and_lies_in_its_limits) {
    const auto range = [](json corners) {
        return problems_after([&](json& b) { b["compressor"]["range"] = corners; });
    };
    EXPECT_TRUE(range({{-20, 15}, {-20, 50}, {15, 65}, {15, 35}}).empty()) << "either way round";
    EXPECT_TRUE(range({{15, 35}, {15, 65}, {-20, 50}, {-20, 15}}).empty());
    EXPECT_TRUE(range({{-20, 15}, {-20, 50}, {15, 65}}).empty());
    EXPECT_TRUE(names(range({{-20, 15}, {-20, 50}, {15, 75}}), "range")) << "beyond the limits";
    EXPECT_TRUE(names(range({{-20, 15}, {15, 65}}), "range")) << "two corners";
    EXPECT_TRUE(names(range({{-20, 15}, {-20, 50}, {0, 30}, {15, 65}, {15, 35}}), "range")) << "an inward corner";
    EXPECT_TRUE(names(range({{-20, 15}, {15, 65}, {-20, 65}, {15, 35}}), "range")) << "crosses itself";
    EXPECT_TRUE(names(range({{0, 69}, {12, 35}, {-18, 55}, {15, 55}, {-15, 35}}), "range")) << "a star";
    EXPECT_TRUE(names(range({{-20, 15}, {-20, 15}, {-20, 15}}), "range")) << "one point thrice";
    EXPECT_TRUE(names(range({{-20, 15}, {-20, "x"}, {15, 65}}), "range"));
    EXPECT_TRUE(names(range(json::array()), "range"));
    EXPECT_TRUE(
        names(problems_after([](json& b) { b["compressor"]["evaporating_min_c"] = 18.0; }), "evaporating_min_c"));
    EXPECT_TRUE(names(problems_after([](json& b) {
                          b["compressor"].erase("suction_superheat_k");
                          b["compressor"]["suction_gas_c"] = 10.0;
                      }),
                      "suction_gas_c"))
        << "liquid at 20 deg C evaporating";
}

// Seeded damage within the block: an answer, never a crash.
TEST(CompressorCodec, damaged_data_never_crash) {
    constexpr unsigned seed = 12900;
    std::mt19937 random(seed);
    json document = shipped();
    const std::string whole = json{{"schema", 1}, {"blocks", {block_of(document)}}}.dump();
    ASSERT_TRUE(catalogue_from_json(whole, "whole.json").ok());
    int refused = 0;
    for (int i = 0; i < 2000; ++i) {
        std::string text = whole;
        const std::size_t from = text.find("compressor");
        for (int hits = 0; hits < 2; ++hits)
            text[from + random() % 700U] = "0123456789-+.eE[],:{}\"n"[random() % 23U];
        const Result<Catalogue> result = catalogue_from_json(text, "damaged.json");
        if (result) continue;
        ++refused;
        ASSERT_FALSE(result.problems().empty());
        EXPECT_FALSE(result.problems()[0].text().empty());
    }
    EXPECT_GT(refused, 500) << "seed " << seed;
}

}  // namespace compressor_codec_test
}  // namespace wg
