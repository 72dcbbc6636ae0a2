#include "core/parts/parts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <limits>
#include <set>
#include <sstream>

#include "core/equipment/codec.h"

namespace wg::parts {
namespace {

std::string resource(const std::string& path) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + '/' + path);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

/// Two plates on a roof, 11.4 m of run, as the shipped catalogue and price list hold them.
Input two_plates() {
    const Catalogue catalogue = catalogue_from_json(resource("equipment/invented.json"), "e").value();
    Input in;
    in.prices = price_list_from_json(resource("prices/invented.json"), "p").value();
    in.collector = *find_collector(catalogue, "marl-18");
    in.block = *find_block(catalogue, "rill-19y");
    in.cylinder = *find_cylinder(catalogue, "copse-250");
    in.method = *find_fixing_method(catalogue, "tile-hook");
    in.choice.placements.resize(2);
    in.choice.route.resize(4);
    in.choice.route[0].kind = RoutePointKind::roof_passage;
    in.choice.route[1].kind = RoutePointKind::floor_passage;
    in.choice.route[2].kind = RoutePointKind::floor_passage;
    in.fixing_points = 12;
    in.run.length_m = 11.4;
    in.run.bends = 5;
    in.run.coil_liquid_m = 12.0;
    in.run.coil_suction_m = 12.0;
    in.run.insulation_mm = 13.0;
    in.services.electrical.cable_mm2 = 2.5;
    in.services.electrical.cable_m = 9.0;
    in.services.electrical.breaker_a = 16.0;
    in.services.electrical.breaker_curve = "C";
    in.services.electrical.residual_current_ma = 30.0;
    in.services.water.vessel_l = 18.0;
    in.services.water.expansion_l = 4.2;
    in.services.water.safety_valve_bar = 6.0;
    return in;
}

const Line* find(const Outcome& out, const std::string& id) {
    const auto it = std::find_if(out.lines.begin(), out.lines.end(), [&](const Line& l) { return l.item_id == id; });
    return it == out.lines.end() ? nullptr : &*it;
}

TEST(ListParts, covers_everything_from_plate_to_drain_with_a_reason_each) {
    const Outcome out = list_parts(two_plates());
    for (const char* id : {"marl-18",      "rill-19y",         "copse-250",       "fixing-tile-hook", "tube-6.35",
                           "tube-12.70",   "insulation-13",    "tube-joint-pair", "tube-branch-pair", "tube-clip",
                           "passage-roof", "passage-floor",    "nitrogen",        "cable-2.5",        "breaker-C16",
                           "rcd-30",       "isolator",         "mixing-valve",    "vessel-18",        "safety-group",
                           "drain-set",    "water-connection", "survey",          "fixing",           "collectors",
                           "run",          "cylinder",         "tightness",       "electrical",       "hand-over"}) {
        const Line* line = find(out, id);
        ASSERT_NE(line, nullptr) << id;
        EXPECT_FALSE(line->why.empty()) << id;
        EXPECT_TRUE(line->priced) << id;
        EXPECT_GT(line->net.minor, 0) << id;
        EXPECT_EQ(line->net, scaled(line->unit_price, line->to_buy)) << id;
    }
    EXPECT_TRUE(out.findings.empty());
    EXPECT_EQ(find(out, "passage-wall"), nullptr) << "no wall is passed";
    EXPECT_EQ(find(out, "plate-frame"), nullptr) << "no frame on a roof";
    EXPECT_EQ(find(out, "refrigerant-R1234yf"), nullptr) << "the factory charge suffices";
}

TEST(ListParts, quantities_follow_the_layout) {
    const Outcome out = list_parts(two_plates());
    EXPECT_EQ(find(out, "marl-18")->quantity, 2.0);
    EXPECT_EQ(find(out, "fixing-tile-hook")->quantity, 12.0);
    EXPECT_EQ(find(out, "passage-floor")->quantity, 2.0);
    EXPECT_EQ(find(out, "tube-joint-pair")->quantity, 3.0);
    EXPECT_EQ(find(out, "tube-branch-pair")->quantity, 1.0);
    EXPECT_EQ(find(out, "tube-clip")->quantity, 15.0) << "11.4 m at 0.8 m";
}

TEST(ListParts, coils_are_bought_whole) {
    const Outcome out = list_parts(two_plates());
    const Line* tube = find(out, "tube-12.70");
    EXPECT_EQ(tube->quantity, 12.0);
    EXPECT_EQ(tube->to_buy, 15.0) << "sold by 5 m";
    EXPECT_NE(tube->why.find("sold by 5 m"), std::string::npos) << tube->why;
    Input in = two_plates();
    in.run.coil_suction_m = 15.000000000000002;  // noise must not buy another coil
    EXPECT_EQ(find(list_parts(in), "tube-12.70")->to_buy, 15.0);
}

TEST(ListParts, insulation_has_five_per_cent_for_cutting) {
    const Outcome out = list_parts(two_plates());
    const Line* line = find(out, "insulation-13");
    ASSERT_NE(line, nullptr);
    EXPECT_DOUBLE_EQ(line->quantity, 11.4);
    EXPECT_DOUBLE_EQ(line->to_buy, 12.0) << "11.97 m sold by 2 m";
}

TEST(ListParts, small_line_that_gets_cold_is_lagged_too) {
    Input in = two_plates();
    in.run.small_insulation_mm = 9.0;
    const Outcome out = list_parts(in);
    ASSERT_NE(find(out, "insulation-9"), nullptr);
    EXPECT_DOUBLE_EQ(find(out, "insulation-9")->quantity, 11.4);
    EXPECT_DOUBLE_EQ(find(out, "insulation-13")->quantity, 11.4);
    in.run.small_insulation_mm = 13.0;  // walls of one size are one line
    const Outcome same = list_parts(in);
    EXPECT_DOUBLE_EQ(find(same, "insulation-13")->quantity, 22.8);
    EXPECT_EQ(std::count_if(same.lines.begin(), same.lines.end(),
                            [](const Line& l) { return l.item_id.rfind("insulation-", 0) == 0; }),
              1);
}

TEST(ListParts, extra_refrigerant_is_weighed_up_to_the_next_ten_grams) {
    Input in = two_plates();
    in.run.extra_charge_kg = 0.0612;
    const Outcome out = list_parts(in);
    const Line* line = find(out, "refrigerant-R1234yf");
    ASSERT_NE(line, nullptr);
    EXPECT_DOUBLE_EQ(line->quantity, 0.0612);
    EXPECT_NEAR(line->to_buy, 0.07, 1e-12);
    EXPECT_EQ(line->net.minor, 1505) << "0.07 kg at 215.00";
}

TEST(ListParts, labour_is_hours_by_run_points_and_collectors) {
    const Outcome out = list_parts(two_plates());
    const Line* fixing = find(out, "fixing");
    EXPECT_NEAR(fixing->quantity, 0.75 + 12 * 0.35, 1e-12);
    EXPECT_NEAR(fixing->to_buy, 5.0, 1e-12) << "4.95 h, billed by the tenth";
    EXPECT_TRUE(fixing->labour);
    EXPECT_EQ(fixing->net.minor, 34000);
    EXPECT_NEAR(find(out, "run")->quantity, 0.75 + 11.4 * 0.32, 1e-12);
    EXPECT_NEAR(find(out, "collectors")->quantity, 1.8, 1e-12);
    double sum = 0.0;
    for (const Line& line : out.lines)
        sum += line.labour ? line.to_buy : 0.0;
    EXPECT_NEAR(out.labour_h, sum, 1e-9);
}

TEST(ListParts, frames_are_counted_by_placement) {
    Input in = two_plates();
    in.choice.placements[1].frame_tilt_deg = 45.0;
    const Outcome out = list_parts(in);
    ASSERT_NE(find(out, "plate-frame"), nullptr);
    EXPECT_EQ(find(out, "plate-frame")->quantity, 1.0);
}

TEST(ListParts, extras_and_missing_services_are_lines_of_their_own) {
    Input in = two_plates();
    in.choice.extras.push_back({"id", "scaffold", 1.0, ""});
    in.services.water.to_be_made = {"drain, 2.5 m", "recirculation, 4 m"};
    const Outcome out = list_parts(in);
    EXPECT_NE(find(out, "scaffold"), nullptr);
    EXPECT_EQ(std::count_if(out.lines.begin(), out.lines.end(),
                            [](const Line& l) { return l.item_id == "service-connection"; }),
              2);
    EXPECT_NE(find(out, "service-connection")->why.find("drain, 2.5 m"), std::string::npos);
}

TEST(ListParts, what_the_house_needs_is_bought_in_its_size) {
    Input in = two_plates();
    in.services.electrical.cable_mm2 = 10.0;
    in.services.electrical.carries_a = 52.0;
    in.services.electrical.residual_current_type = "F";
    in.services.water.reducing_valve = true;
    in.services.water.pressure_at_cylinder_bar = 3.46;
    in.services.water.valve_outlet_mm = 22.0;
    in.services.water.discharge_mm = 28.0;
    const Outcome out = list_parts(in);
    ASSERT_NE(find(out, "cable-10"), nullptr);
    EXPECT_NE(find(out, "cable-10")->why.find("carries 52.0 A"), std::string::npos);
    EXPECT_NE(find(out, "rcd-30")->why.find("type F"), std::string::npos);
    ASSERT_NE(find(out, "reducing-valve"), nullptr);
    EXPECT_NE(find(out, "reducing-valve")->why.find("3.5 bar"), std::string::npos);
    EXPECT_NE(find(out, "drain-set")->why.find("28 mm from there"), std::string::npos);
    in.services.water.reducing_valve = false;
    EXPECT_EQ(find(list_parts(in), "reducing-valve"), nullptr);
}

// With what the services room itself says: a supply to be brought is cable and breaker, not a lump sum on top.
TEST(ListParts, electrical_supply_is_not_counted_twice) {
    Input in = two_plates();
    services::Input at;
    at.block = in.block;
    at.cylinder = in.cylinder;
    at.spot.supply = {false, 9.0};
    at.spot.drain = {false, 2.5};
    for (Service* there : {&at.spot.earth, &at.spot.cold, &at.spot.hot, &at.spot.recirculation})
        *there = {true, 0.0};
    in.services = services::provide(at);
    ASSERT_EQ(in.services.water.to_be_made.size(), 2U);
    const Outcome out = list_parts(in);
    std::vector<std::string> reasons;
    for (const Line& line : out.lines) {
        if (line.item_id == "service-connection") reasons.push_back(line.why);
    }
    ASSERT_EQ(reasons.size(), 1U);
    EXPECT_NE(reasons[0].find("drain"), std::string::npos) << reasons[0];
}

TEST(ListParts, unpriced_item_is_kept_and_cautioned) {
    Input in = two_plates();
    in.choice.extras.push_back({"id", "gilded-tap", 2.0, ""});
    const Outcome out = list_parts(in);
    const Line* line = find(out, "gilded-tap");
    ASSERT_NE(line, nullptr);
    EXPECT_FALSE(line->priced);
    EXPECT_EQ(line->net.minor, 0);
    EXPECT_EQ(line->quantity, 2.0);
    ASSERT_EQ(out.findings.size(), 1U);
    EXPECT_EQ(out.findings[0].severity, Severity::caution);
    EXPECT_EQ(out.findings[0].code, "parts.unpriced");
    EXPECT_NE(out.findings[0].message.find("gilded-tap"), std::string::npos);
}

TEST(ListParts, empty_price_list_prices_nothing_but_lists_all) {
    Input in = two_plates();
    const std::size_t lines = list_parts(in).lines.size();
    in.prices.items.clear();
    const Outcome out = list_parts(in);
    EXPECT_EQ(out.lines.size(), lines);
    EXPECT_FALSE(out.findings.empty());
    for (const Line& line : out.lines)
        EXPECT_EQ(line.priced, line.labour) << line.item_id;
}

TEST(ListParts, unknown_lengths_leave_lines_out_in_place_of_nonsense) {
    Input in = two_plates();
    in.run.coil_suction_m = std::numeric_limits<double>::quiet_NaN();
    in.run.length_m = std::numeric_limits<double>::quiet_NaN();
    const Outcome out = list_parts(in);
    for (const Line& line : out.lines) {
        EXPECT_TRUE(std::isfinite(line.quantity)) << line.item_id;
        EXPECT_TRUE(std::isfinite(line.to_buy)) << line.item_id;
    }
}

TEST(ListParts, no_line_stands_twice_without_reason) {
    std::set<std::string> seen;
    for (const Line& line : list_parts(two_plates()).lines)
        EXPECT_TRUE(seen.insert(line.item_id).second) << line.item_id;
}

/// RFC 4180 reader, written for the test.
std::vector<std::vector<std::string>> read_csv(const std::string& text) {
    std::vector<std::vector<std::string>> rows(1, std::vector<std::string>(1));
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (quoted) {
            if (c == '"' && i + 1 < text.size() && text[i + 1] == '"') {
                rows.back().back() += '"';
                ++i;
            } else if (c == '"') {
                quoted = false;
            } else {
                rows.back().back() += c;
            }
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',') {
            rows.back().emplace_back();
        } else if (c == '\n') {
            rows.emplace_back(1);
        } else if (c != '\r') {
            rows.back().back() += c;
        }
    }
    rows.pop_back();
    return rows;
}

TEST(ToCsv, every_row_has_the_columns_of_the_header) {
    const Outcome out = list_parts(two_plates());
    const auto rows = read_csv(to_csv(out.lines, "EUR"));
    ASSERT_EQ(rows.size(), out.lines.size() + 1U);
    for (const auto& row : rows)
        EXPECT_EQ(row.size(), rows[0].size());
    EXPECT_EQ(rows[1][0], "marl-18");
    EXPECT_EQ(rows[1][7], "936.00");
    EXPECT_EQ(rows[1][8], "EUR");
}

TEST(ToCsv, cells_survive_commas_quotes_and_line_breaks) {
    Line line;
    line.item_id = "a,b";
    line.text = "tube 1/2\" \"soft\"";
    line.why = "first\nsecond";
    const auto rows = read_csv(to_csv({line}, "EUR"));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1][0], "a,b");
    EXPECT_EQ(rows[1][1], "tube 1/2\" \"soft\"");
    EXPECT_EQ(rows[1].back(), "first\nsecond");
}

TEST(ToCsv, cells_that_a_spreadsheet_would_run_are_made_text) {
    for (const char* evil : {"=1+1", "+cmd", "-2+3", "@SUM(A1)", "\tx"}) {
        Line line;
        line.text = evil;
        EXPECT_EQ(read_csv(to_csv({line}, "EUR"))[1][1], std::string("'") + evil);
    }
}

TEST(ToCsv, thousands_have_no_comma_and_unpriced_has_no_price) {
    Line line;
    line.unit_price = {123456789};
    line.net = {123456789};
    EXPECT_EQ(read_csv(to_csv({line}, "EUR"))[1][7], "1234567.89");
    line.priced = false;
    EXPECT_EQ(read_csv(to_csv({line}, "EUR"))[1][7], "");
}

}  // namespace
}  // namespace wg::parts
