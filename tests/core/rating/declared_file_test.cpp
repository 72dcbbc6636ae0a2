#include "core/rating/declared_file.h"

#include <gtest/gtest.h>

#include <random>

#include "core/rating/calibrated.h"
#include "tests/core/rating/fixture.h"

namespace declared_file_test {

using namespace wg;
using rating::Declared;
using rating::DeclaredSheet;
using rating::Quantity;
using rating::sheet_from_json;

DeclaredSheet sheet() {
    DeclaredSheet out;
    out.source = "Invented sheet, page 3";
    out.set_point_c = 53.0;
    out.air_speed_m_s = 0.5;
    out.values = {{Quantity::cop_dhw, 2.9, 0.05, rating::air_7, TappingCycle::l},
                  {Quantity::cop_dhw, 3.1, 0.05, rating::air_7, TappingCycle::xl},
                  {Quantity::heat_up_h, 8.25, 0.1, rating::air_14},
                  {Quantity::standby_w, 25.0, 0.1, rating::air_7},
                  {Quantity::v40_l, 340.0, 0.03, {2.0, 1.5}},
                  {Quantity::heat_w, 1650.0, 0.05, rating::air_7, TappingCycle::l, 35.0},
                  {Quantity::steady_cop, 3.9, 0.05, rating::air_7, TappingCycle::l, 35.0}};
    return out;
}

std::string with_value(const std::string& fields) {
    return R"({"schema":1,"values":[{)" + fields + "}]}";
}

/// The problems' text; empty when it was taken.
std::string refusal(const std::string& text) {
    const auto read = sheet_from_json(text, "sheet.json");
    return read ? std::string() : text_of(read.problems());
}

TEST(DeclaredFile, what_was_written_is_read_again) {
    const DeclaredSheet written = sheet();
    const auto read = sheet_from_json(rating::sheet_to_json(written), "sheet.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().source, written.source);
    EXPECT_EQ(read.value().set_point_c, written.set_point_c);
    EXPECT_EQ(read.value().air_speed_m_s, written.air_speed_m_s);
    ASSERT_EQ(read.value().values.size(), written.values.size());
    for (std::size_t i = 0; i < written.values.size(); ++i) {
        EXPECT_TRUE(rating::same_point(read.value().values[i], written.values[i])) << i;
        EXPECT_EQ(read.value().values[i].value, written.values[i].value);
        EXPECT_EQ(read.value().values[i].tolerance, written.values[i].tolerance);
    }
}

TEST(DeclaredFile, left_out_fields_have_their_stated_values) {
    const auto read = sheet_from_json(with_value(R"("quantity":"heat_up_h","value":8,"air_dry_c":7)"), "s").value();
    EXPECT_EQ(read.values.front().tolerance, 0.05);
    EXPECT_EQ(read.values.front().air.wet_c, 6.0);
    EXPECT_FALSE(read.set_point_c.has_value());
}

TEST(DeclaredFile, refusals_name_file_entry_and_field) {
    struct Case {
        std::string text;
        std::vector<std::string> words;
    };
    const Case cases[] = {
        {"", {"sheet.json", "JSON"}},
        {"[]", {"sheet.json", "a list"}},
        {"{}", {"schema"}},
        {R"({"schema":2,"values":[]})", {"schema", "2"}},
        {R"({"schema":1})", {"values", "missing"}},
        {R"({"schema":1,"values":[]})", {"values", "empty"}},
        {R"({"schema":1,"values":{}})", {"values", "a list"}},
        {R"({"schema":1,"values":[3]})", {"values[0]", "an object"}},
        {R"({"schema":1,"surprise":1,"values":[]})", {"surprise"}},
        {R"({"schema":1,"set_point_c":80,"values":[]})", {"set_point_c", "80"}},
        {with_value(R"("value":3,"air_dry_c":7)"), {"values[0]", "quantity", "missing"}},
        {with_value(R"("quantity":"scop","value":3,"air_dry_c":7)"), {"values[0]", "scop", "cop_dhw"}},
        {with_value(R"("quantity":"cop_dhw","value":3,"air_dry_c":7)"), {"cycle", "missing"}},
        {with_value(R"("quantity":"cop_dhw","value":3,"air_dry_c":7,"cycle":"XXS")"), {"cycle", "XXS"}},
        {with_value(R"("quantity":"cop_dhw","value":"3","air_dry_c":7,"cycle":"L")"), {"value", "a number"}},
        {with_value(R"("quantity":"cop_dhw","value":-3,"air_dry_c":7,"cycle":"L")"), {"value", "-3"}},
        {with_value(R"("quantity":"cop_dhw","value":1e999,"air_dry_c":7,"cycle":"L")"), {"sheet.json"}},
        {with_value(R"("quantity":"heat_up_h","value":8,"air_dry_c":7,"cycle":"L")"), {"unknown field", "cycle"}},
        {with_value(R"("quantity":"heat_w","value":1500,"air_dry_c":7)"), {"water_c", "missing"}},
        {with_value(R"("quantity":"heat_up_h","value":8,"air_dry_c":7,"air_wet_c":9)"), {"air_wet_c", "9"}},
        {with_value(R"("quantity":"heat_up_h","value":8,"air_dry_c":7,"tolerance":0)"), {"tolerance"}},
        {with_value(R"("quantity":"heat_up_h","value":8,"value":9,"air_dry_c":7)"), {"value", "twice"}},
        {with_value("\"quantity\":\"\xff\",\"value\":8"), {"sheet.json"}},
    };
    for (const Case& c : cases) {
        const std::string said = refusal(c.text);
        EXPECT_FALSE(said.empty()) << c.text;
        for (const std::string& word : c.words)
            EXPECT_NE(said.find(word), std::string::npos) << c.text << '\n' << said;
    }
    EXPECT_FALSE(refusal(std::string(100000, '[')).empty());
    DeclaredSheet twice = sheet();
    twice.values.push_back(twice.values.front());
    EXPECT_NE(refusal(rating::sheet_to_json(twice)).find("twice"), std::string::npos);
    DeclaredSheet many;
    for (int i = 0; i < 51; ++i)
        many.values.push_back({Quantity::heat_up_h, 8.0, 0.05, {0.5 * i, 0.5 * i - 1.0}});
    EXPECT_NE(refusal(rating::sheet_to_json(many)).find("51"), std::string::npos);
}

TEST(DeclaredFile, flipped_bits_and_cuts_never_crash_and_never_bring_a_wild_value) {
    const std::string text = rating::sheet_to_json(sheet());
    std::mt19937 random(20270621);
    for (int i = 0; i < 3000; ++i) {
        std::string hostile = text;
        for (unsigned flips = 1 + random() % 4; flips > 0; --flips)
            hostile[random() % hostile.size()] ^= static_cast<char>(1 << random() % 8);
        if (random() % 4 == 0) hostile.resize(random() % hostile.size());
        const auto read = sheet_from_json(hostile, "sheet.json");
        if (!read) {
            EXPECT_FALSE(read.problems().front().remedy.empty());
            continue;
        }
        for (const Declared& d : read.value().values) {
            EXPECT_GE(d.value, rating::declarable(d.quantity).low);
            EXPECT_LE(d.value, rating::declarable(d.quantity).high);
            EXPECT_LE(d.air.wet_c, d.air.dry_c);
        }
    }
}

rating::Fit fitted() {
    return rating::fit(rating_test::item("rill-18", "marl-18", 2, "copse-250"),
                       {{Quantity::cop_dhw, 2.8, 0.05, rating::air_7}, {Quantity::standby_w, 30.0, 0.1, rating::air_7}})
        .value();
}

TEST(CalibratedEquipment, is_read_by_the_catalogues_reader_and_stands_beside_its_origin) {
    const rating::Fit fit = fitted();
    const auto text = rating::calibrated_equipment(fit, "Invented sheet");
    ASSERT_TRUE(text.ok()) << text_of(text.problems());
    const Catalogue read = catalogue_from_json(text.value(), "calibrated.json").value();
    ASSERT_EQ(read.blocks.size(), 1U);
    EXPECT_EQ(read.blocks.front().id, "rill-18-calibrated");
    EXPECT_EQ(read.blocks.front().overall_peak, fit.item.block.overall_peak);
    EXPECT_NE(read.blocks.front().overall_peak,
              rating_test::item("rill-18", "marl-18", 2, "copse-250").block.overall_peak);
    EXPECT_EQ(read.cylinders.front().standing_loss_kwh_24h, fit.item.cylinder.standing_loss_kwh_24h);
    EXPECT_TRUE(read.blocks.front().invented) << "what comes from invented data stays invented";
    for (const char* words : {"Calibrated", "Invented sheet", "standing loss", "COP of draw-off cycle L"})
        EXPECT_NE(text.value().find(words), std::string::npos) << words;
}

TEST(CalibratedEquipment, a_second_calibration_keeps_one_mark_and_a_long_source_fits) {
    rating::Fit fit = fitted();
    fit.item.block.id = "rill-18-calibrated";
    fit.item.block.name = "Rill 18 (calibrated)";
    const std::string source(5000, 'x');
    const auto text = rating::calibrated_equipment(fit, source + "\n\x01\xff");
    ASSERT_TRUE(text.ok()) << text_of(text.problems());
    const Catalogue read = catalogue_from_json(text.value(), "calibrated.json").value();
    EXPECT_EQ(read.blocks.front().id, "rill-18-calibrated");
    EXPECT_EQ(read.blocks.front().name, "Rill 18 (calibrated)");
}

TEST(CalibratedEquipment, figures_that_no_catalogue_may_hold_are_refused) {
    rating::Fit fit = fitted();
    fit.item.block.overall_peak = 0.75;
    fit.item.block.volumetric_at_unity = 0.70;
    const auto text = rating::calibrated_equipment(fit, "");
    ASSERT_FALSE(text.ok());
    EXPECT_NE(text_of(text.problems()).find("overall_peak"), std::string::npos);
}

}  // namespace declared_file_test
