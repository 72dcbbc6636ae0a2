// What is bought and what it costs, held to whole-number reckoning over lists made at random; figures invented.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/parts/parts.h"
#include "tests/tools/sweep.h"

namespace wg::parts {
namespace buying_test {
namespace {

PriceItem item(const std::string& id, std::int64_t minor) {
    PriceItem out;
    out.id = id;
    out.text = id;
    out.unit = "m";
    out.price = {minor};
    out.tax_class = "standard";
    return out;
}

/// Tube and insulation of a run; the insulation's quantity is the run's length.
Input run_of(double length_m) {
    Input in;
    in.block.liquid_od_mm = 9.52;
    in.block.suction_od_mm = 15.88;
    in.run.length_m = length_m;
    in.run.coil_liquid_m = length_m;
    in.run.coil_suction_m = length_m;
    in.run.insulation_mm = 13.0;
    in.prices.items = {item("insulation-13", 400)};
    return in;
}

const Line& insulation(const Outcome& out) {
    return *std::find_if(out.lines.begin(), out.lines.end(),
                         [](const Line& line) { return line.item_id == "insulation-13"; });
}

TEST(Buying, covers_need_and_waste_in_the_fewest_packs) {
    std::mt19937 random(3);
    const auto below = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    for (int i = 0; i < sweep::cases(4000); ++i) {
        Input in = run_of(0.5 + below(400) / 10.0);
        PriceItem& bought = in.prices.items[0];
        // In thousandths of a metre, so that the check needs no fractions.
        const std::int64_t pack_mm = below(3) == 0 ? 0 : 500 * (1 + below(50));
        const std::int64_t waste_tenths = below(300);
        bought.pack = static_cast<double>(pack_mm) / 1000.0;
        bought.waste_percent = static_cast<double>(waste_tenths) / 10.0;
        bought.quantity_prices = {{10.0, {390}}, {25.0, {350}}, {50.0, {300}}};
        const Line line = insulation(list_parts(in));
        const std::int64_t need_mm = std::llround(in.run.length_m * 1000.0);
        // Micrometres: need and waste are exact.
        const std::int64_t wanted_um = need_mm * (1000 + waste_tenths);
        const std::int64_t bought_um = std::llround(line.to_buy * 1e6);
        ASSERT_GE(bought_um, wanted_um) << i;
        if (pack_mm > 0) {
            ASSERT_EQ(bought_um % (pack_mm * 1000), 0) << i << " whole packs";
            ASSERT_LT(bought_um - pack_mm * 1000, wanted_um) << i << " no pack too many";
        } else {
            ASSERT_LT(bought_um - 1'000, wanted_um) << i << " up to the millimetre";
        }
        const std::int64_t price = bought_um >= 50'000'000   ? 300
                                   : bought_um >= 25'000'000 ? 350
                                   : bought_um >= 10'000'000 ? 390
                                                             : 400;
        ASSERT_EQ(line.unit_price.minor, price) << i;
        ASSERT_EQ(line.net.minor, (bought_um / 1000 * price + 500) / 1000) << i << " rounded once, half up";
        ASSERT_DOUBLE_EQ(line.quantity, in.run.length_m) << "what is needed stays what is needed";
    }
}

TEST(Buying, a_list_whose_packs_are_below_what_is_counted_is_refused) {
    const auto refused = [](const char* pack) {
        const std::string text =
            std::string(R"({"schema":2,"id":"l","label":"L","currency":"EUR","valid_from":"2027-01-01",)") +
            R"("valid_to":"2027-12-31","labour_hour":60,"labour_tax_class":"s","items":[{"id":"t","text":"T","unit":"m",)" +
            R"("price":1,"tax_class":"s","pack":)" + pack + R"(}],"tasks":[]})";
        const Result<PriceList> read = price_list_from_json(text, "l.json");
        return !read.ok() && std::any_of(read.problems().begin(), read.problems().end(),
                                         [](const Problem& p) { return p.where.find("pack") != std::string::npos; });
    };
    EXPECT_TRUE(refused("1e-320")) << "so many packs cannot be counted";
    EXPECT_TRUE(refused("0.0009"));
    EXPECT_FALSE(refused("0.001"));
    EXPECT_FALSE(refused("0"));
}

TEST(Discount, and_margin_are_rounded_once_half_up) {
    std::mt19937_64 random(4);
    for (int i = 0; i < sweep::cases(20000); ++i) {
        const auto minor = static_cast<std::int64_t>(random() % 1'000'000'001);
        const auto hundredths = static_cast<std::int64_t>(random() % 10'001);
        const auto thousandths = static_cast<std::int64_t>(random() % 1'100'001) - 100'000;
        ASSERT_EQ(cost_after_discount({minor}, static_cast<double>(hundredths) / 100.0).minor,
                  (minor * (10'000 - hundredths) + 5'000) / 10'000)
            << minor << ' ' << hundredths;
        ASSERT_EQ(price_with_margin({minor}, static_cast<double>(thousandths) / 1000.0).minor,
                  (minor * (100'000 + thousandths) + 50'000) / 100'000)
            << minor << ' ' << thousandths;
    }
    PriceItem sold = item("x", 1500);
    EXPECT_FALSE(margin_percent(sold).has_value());
    sold.cost = Money{0};
    EXPECT_FALSE(margin_percent(sold).has_value()) << "nothing over nothing is no figure";
    sold.cost = Money{1200};
    EXPECT_DOUBLE_EQ(*margin_percent(sold), 25.0);
    EXPECT_EQ(price_with_margin(*sold.cost, *margin_percent(sold)).minor, 1500);
}

TEST(StretchOf, takes_only_what_is_told_and_listed) {
    Difficulty d;
    d.heights = {{3.0, 1.1}, {6.0, 1.0}, {9.0, 0.9}};
    d.coverings = {{Covering::slate, 0.8}};
    d.access = {{"ladder", "ladder", 1.25}};
    LabourTask task;
    task.by_height = task.by_covering = task.by_access = task.by_storeys = true;
    Circumstances at;
    const auto factor = [&] { return stretch_of(task, d, at).factor; };
    EXPECT_EQ(factor(), 1.0);
    at.height_m = 4.0;
    EXPECT_EQ(factor(), 1.1);
    at.height_m = 7.0;
    EXPECT_EQ(factor(), 1.0) << "the last step passed, also when it is less";
    EXPECT_EQ(stretch_of(task, d, at).why, "") << "what changes nothing is not told";
    at.height_m = 9.5;
    EXPECT_EQ(factor(), 0.9);
    at.height_m.reset();
    at.coverings = {Covering::clay_tile};
    EXPECT_EQ(factor(), 1.0) << "a covering the list does not know";
    at.coverings = {Covering::slate};
    EXPECT_EQ(factor(), 0.8);
    at.coverings.clear();
    at.access = "crane";
    EXPECT_EQ(factor(), 1.0) << "a way the list does not know";
    at.access.clear();
    at.storeys = 3;
    EXPECT_EQ(factor(), 1.0) << "storeys cost nothing in this list";
    d.each_storey = 0.1;
    EXPECT_DOUBLE_EQ(factor(), 1.3);
    EXPECT_EQ(stretch_of(task, d, at).why, "1.3 (3 storeys to carry)");
    at.storeys = 1;
    EXPECT_EQ(stretch_of(task, d, at).why, "1.1 (1 storey to carry)");
}

TEST(Travel, rounds_hours_up_and_leaves_out_what_costs_nothing) {
    Input in = run_of(10.0);
    in.prices.travel = Travel{{60}, {5000}, 50.0, 1, "standard"};
    in.circumstances.distance_km = 12.6;  // 25.2 km, 0.504 h
    const auto find = [](const Outcome& out, const char* id) {
        return std::find_if(out.lines.begin(), out.lines.end(), [&](const Line& line) { return line.item_id == id; });
    };
    Outcome out = list_parts(in);
    ASSERT_NE(find(out, "travel-hours"), out.lines.end());
    EXPECT_DOUBLE_EQ(find(out, "travel-hours")->to_buy, 0.6);
    EXPECT_EQ(find(out, "travel-hours")->net.minor, 3000);
    EXPECT_EQ(find(out, "travel-km")->net.minor, 1512);
    in.prices.travel->km = {0};
    out = list_parts(in);
    EXPECT_EQ(find(out, "travel-km"), out.lines.end());
    EXPECT_NE(find(out, "travel-hours"), out.lines.end());
    in.circumstances.distance_km = 0.0;
    out = list_parts(in);
    EXPECT_EQ(find(out, "travel-hours"), out.lines.end()) << "next door";
    in.circumstances.distance_km = 12.6;
    in.prices.travel.reset();
    out = list_parts(in);
    EXPECT_EQ(find(out, "travel-hours"), out.lines.end()) << "a list without travel";
}

}  // namespace
}  // namespace buying_test
}  // namespace wg::parts
