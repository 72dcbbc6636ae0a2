// Coefficients of a collector test in the equipment file.

#include "core/equipment/iso9806.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/equipment/codec.h"

namespace wg {
namespace iso9806_test {

using nlohmann::json;

constexpr std::size_t tested = 3;

json shipped() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/equipment/invented.json");
    return json::parse(file);
}

json& test_of(json& document) {
    return document["collectors"][tested]["iso9806"];
}

std::vector<Problem> problems_of(const json& document) {
    const Result<Catalogue> result = catalogue_from_json(document.dump(), "x.json");
    return result ? std::vector<Problem>{} : result.problems();
}

/// One problem, at the field of the tested collector, with something to do.
void expect_refused(const json& document, const std::string& field, const std::string& word = {}) {
    const auto problems = problems_of(document);
    EXPECT_TRUE(std::any_of(problems.begin(), problems.end(),
                            [&](const Problem& p) {
                                return p.where.find("marl-18t") != std::string::npos &&
                                       p.where.find("iso9806") != std::string::npos &&
                                       p.where.find(field) != std::string::npos &&
                                       p.what.find(word) != std::string::npos && !p.remedy.empty();
                            }))
        << field << '\n'
        << text_of(problems);
}

CollectorModel read(const json& document) {
    return catalogue_from_json(document.dump(), "x.json").value().collectors.at(tested);
}

TEST(Iso9806Data, are_read_written_and_compared) {
    const json document = shipped();
    const CollectorModel model = read(document);
    ASSERT_TRUE(model.iso9806.has_value());
    EXPECT_EQ(model.iso9806->zero_loss, 0.75);
    EXPECT_EQ(model.iso9806->a1, 24.0);
    EXPECT_EQ(model.iso9806->a5, 5600.0);
    EXPECT_EQ(model.iso9806->a7, 0.025);
    EXPECT_EQ(model.iso9806->plate_to_fluid_w_m2k, 125.0);
    Catalogue one;
    one.collectors.push_back(model);
    one.collectors[0].iso9806->a2 = 0.011;
    one.collectors[0].iso9806->a8 = 3e-9;
    one.collectors[0].iso9806->incidence_b0 = 0.04;
    one.collectors[0].iso9806->diffuse = 0.97;
    const Catalogue again = catalogue_from_json(catalogue_to_json(one), "again.json").value();
    EXPECT_EQ(again.collectors, one.collectors);
    one.collectors[0].iso9806->a8 = 4e-9;
    EXPECT_NE(again.collectors, one.collectors);
}

TEST(Iso9806Data, of_a_file_without_them_are_absent_and_stay_so) {
    json document = shipped();
    document["collectors"][tested].erase("iso9806");
    const CollectorModel model = read(document);
    EXPECT_FALSE(model.iso9806.has_value());
    Catalogue one;
    one.collectors.push_back(model);
    EXPECT_EQ(catalogue_to_json(one).find("iso9806"), std::string::npos);
}

TEST(Iso9806Data, each_absurd_missing_or_strange_field_is_named) {
    const json whole = shipped();
    json copy = whole;
    for (const auto& [field, value] : test_of(copy).items()) {
        for (const double absurd : {-1e6, 1e9}) {
            json broken = whole;
            test_of(broken)[field] = absurd;
            expect_refused(broken, field);
        }
        json text = whole;
        test_of(text)[field] = "many";
        expect_refused(text, field);
    }
    for (const char* needed : {"eta0_b", "a1", "a3", "a4"}) {
        json broken = whole;
        test_of(broken).erase(needed);
        expect_refused(broken, std::string(needed) == "eta0_b" ? "iso9806" : needed);
    }
    json broken = whole;
    test_of(broken)["c1"] = 8.0;
    expect_refused(broken, "iso9806", "c1");
    broken = whole;
    broken["collectors"][tested]["iso9806"] = 0.75;
    expect_refused(broken, "iso9806");
}

// ISO 9806:2017 annex B: hemispherical light is 0.85 beam and 0.15 diffuse; as ISO 24194 uses it.
TEST(Iso9806Data, zero_loss_is_given_by_beam_or_hemispherical_and_not_both) {
    json document = shipped();
    test_of(document)["eta0_hem"] = 0.74;
    expect_refused(document, "iso9806", "both");
    test_of(document).erase("eta0_b");
    test_of(document)["kd"] = 0.9;
    EXPECT_NEAR(read(document).iso9806->zero_loss, 0.74 / (0.85 + 0.15 * 0.9), 1e-12);
    test_of(document).erase("eta0_hem");
    expect_refused(document, "iso9806", "neither");
}

TEST(Iso9806Data, what_may_be_left_out_stands_for_nothing_and_the_joint_for_that_of_the_plate) {
    json document = shipped();
    document["collectors"][tested]["plate_to_refrigerant_w_m2k"] = 140;
    for (const char* field : {"kd", "b0", "a2", "a5", "a6", "a7", "a8", "tested_plate_to_fluid_w_m2k"})
        test_of(document).erase(field);
    const Iso9806 c = *read(document).iso9806;
    EXPECT_EQ(c.diffuse, 1.0);
    EXPECT_EQ(c.incidence_b0 + c.a2 + c.a5 + c.a6 + c.a7 + c.a8, 0.0);
    EXPECT_EQ(c.plate_to_fluid_w_m2k, 140.0);
}

TEST(Iso9806Data, coefficients_that_would_turn_heat_round_in_some_wind_are_refused) {
    json document = shipped();
    test_of(document)["a1"] = 9.5;  // less than nothing is lost in still air: 9.5 - 3 * 3 = 0.5
    expect_refused(document, "a1", "still air");
    document = shipped();
    test_of(document)["a2"] = 0.15;  // 24 - 9 - 2 * 0.15 * 50 = 0
    expect_refused(document, "a1", "still air");
    document = shipped();
    test_of(document)["tested_plate_to_fluid_w_m2k"] = 59;  // 24 + 7 * 3 = 45 is above 0.75 * 59
    expect_refused(document, "tested_plate_to_fluid_w_m2k", "10 m/s");
    document = shipped();
    test_of(document)["a6"] = 0.11;  // 0.11 * 7 is above 0.75
    expect_refused(document, "a6", "10 m/s");
    document = shipped();
    test_of(document)["a7"] = 0.12;
    expect_refused(document, "a7", "10 m/s");
}

TEST(Iso9806Data, loss_follows_its_curve_within_the_range_and_its_tangent_beyond) {
    Iso9806 c;
    c.a1 = 20.0;
    c.a2 = 0.05;
    c.a3 = 2.0;
    c.a8 = 1e-7;
    EXPECT_NEAR(c.loss_w_m2(5.0, 10.0), 240.0 + 5.0 + 1e-3, 1e-12);
    EXPECT_NEAR(c.loss_slope_w_m2k(5.0, 10.0), 24.0 + 1.0 + 4e-4, 1e-12);
    const double edge = c.loss_w_m2(3.0, 100.0);
    EXPECT_NEAR(edge, 2000.0 + 500.0 + 10.0, 1e-9);
    EXPECT_NEAR(c.loss_w_m2(3.0, 130.0), edge + 30.0 * (20.0 + 10.0 + 0.4), 1e-9);
    EXPECT_NEAR(c.loss_w_m2(40.0, 10.0), c.loss_w_m2(10.0, 10.0), 1e-12);
}

// K_b = 1 - b0 (1/cos - 1): 0.9 at 60 degrees for b0 = 0.1.
TEST(Iso9806Data, incidence_weighs_beam_and_diffuse) {
    Iso9806 c;
    c.incidence_b0 = 0.1;
    c.diffuse = 0.95;
    EXPECT_NEAR(c.incidence(400.0, 0.5, 100.0), (0.9 * 400.0 + 95.0) / 500.0, 1e-12);
    EXPECT_NEAR(c.incidence(400.0, 1.0, 0.0), 1.0, 1e-12);
    EXPECT_NEAR(c.incidence(50.0, 0.01, 50.0), 0.475, 1e-12) << "grazing beam counts for nothing, not for less";
    EXPECT_NEAR(c.incidence(0.0, -0.5, 0.0), 0.85 + 0.15 * 0.95, 1e-12);
}

TEST(Iso9806Data, moving_a_plates_own_values_moves_the_coefficients_in_which_they_are) {
    CollectorModel model = read(shipped());
    const Iso9806 before = *model.iso9806;
    move_absorptance(model, 0.5 * model.absorptance);
    EXPECT_NEAR(model.iso9806->zero_loss, 0.5 * before.zero_loss, 1e-12);
    EXPECT_NEAR(model.iso9806->a6, 0.5 * before.a6, 1e-12);
    move_emittance(model, 0.8 * model.emittance);
    EXPECT_NEAR(model.iso9806->a4, 0.8 * before.a4, 1e-12);
    EXPECT_NEAR(model.iso9806->a7, 0.8 * before.a7, 1e-12);
    move_rear_exposure(model, 0.92);
    EXPECT_NEAR(model.iso9806->a3, 1.2 * before.a3, 1e-12);
    EXPECT_NEAR(model.iso9806->loss_slope_w_m2k(0.0, 0.0), before.loss_slope_w_m2k(0.0, 0.0), 1e-12);
    model = read(shipped());
    model.iso9806.reset();
    move_absorptance(model, 0.5);
    EXPECT_EQ(model.absorptance, 0.5);
    EXPECT_FALSE(model.iso9806.has_value());
}

}  // namespace iso9806_test
}  // namespace wg
