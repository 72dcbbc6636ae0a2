// What is bought beyond need, prices of many, slower work, and the drive: worked by hand.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/parts/parts.h"

namespace wg::parts {
namespace work_test {
namespace {

PriceItem item(const std::string& id, const std::string& unit, std::int64_t minor) {
    PriceItem out;
    out.id = id;
    out.text = id;
    out.unit = unit;
    out.price = {minor};
    out.tax_class = "standard";
    return out;
}

/// A run of 10 m with lines of 9.52 and 15.88 mm, and three tasks.
Input small_job() {
    Input in;
    in.block.liquid_od_mm = 9.52;
    in.block.suction_od_mm = 15.88;
    in.run.length_m = 10.0;
    in.run.coil_liquid_m = 11.0;
    in.run.coil_suction_m = 11.0;
    in.run.insulation_mm = 13.0;
    in.fixing_points = 4;
    in.choice.placements.resize(1);
    in.prices.currency = "EUR";
    in.prices.labour_hour = {6000};
    in.prices.labour_tax_class = "standard";
    in.prices.items = {item("tube-9.52", "m", 500), item("tube-15.88", "m", 900), item("insulation-13", "m", 400)};
    LabourTask fixing;
    fixing.id = "fixing";
    fixing.text = "Fix";
    fixing.hours = 1.0;
    fixing.hours_per_point = 0.25;
    in.prices.tasks = {fixing};
    return in;
}

const Line& line(const Outcome& out, const std::string& id) {
    return *std::find_if(out.lines.begin(), out.lines.end(), [&](const Line& l) { return l.item_id == id; });
}

TEST(PartsWaste, is_the_items_own_and_stands_in_the_reason) {
    Input in = small_job();
    EXPECT_DOUBLE_EQ(line(list_parts(in), "insulation-13").to_buy, 10.5) << "5 % where the list does not tell";
    in.prices.items[2].waste_percent = 12.0;
    const Outcome out = list_parts(in);
    EXPECT_DOUBLE_EQ(line(out, "insulation-13").to_buy, 11.2);
    EXPECT_EQ(line(out, "insulation-13").net.minor, 4480);
    EXPECT_NE(line(out, "insulation-13").why.find("12 % for cutting"), std::string::npos);
    EXPECT_EQ(line(out, "insulation-13").why.find(" 5 %"), std::string::npos) << "not both";
    in.prices.items[2].pack = 2.0;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "insulation-13").to_buy, 12.0) << "whole packs after waste";
    in.prices.items[2].waste_percent = 0.0;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "insulation-13").to_buy, 10.0);
}

TEST(PartsPriceOfMany, counts_from_what_is_bought) {
    Input in = small_job();
    in.prices.items[0].quantity_prices = {{11.0, {450}}, {12.0, {400}}};
    EXPECT_EQ(line(list_parts(in), "tube-9.52").net.minor, 11 * 450);
    in.prices.items[0].pack = 6.0;
    const Outcome out = list_parts(in);
    EXPECT_EQ(line(out, "tube-9.52").net.minor, 12 * 400);
    EXPECT_NE(line(out, "tube-9.52").why.find("price for so many"), std::string::npos);
    EXPECT_EQ(line(out, "tube-15.88").why.find("price for so many"), std::string::npos);
}

TEST(PartsLine, carries_cost_and_supplier_for_the_firm) {
    Input in = small_job();
    in.prices.items[0].cost = Money{310};
    in.prices.items[0].supplier = "Pellow Copper";
    in.prices.items[0].supplier_number = "PC-7";
    in.prices.labour_cost = Money{4100};
    const Outcome out = list_parts(in);
    EXPECT_EQ(line(out, "tube-9.52").unit_cost->minor, 310);
    EXPECT_EQ(line(out, "tube-9.52").supplier, "Pellow Copper");
    EXPECT_EQ(line(out, "tube-9.52").supplier_number, "PC-7");
    EXPECT_EQ(line(out, "fixing").unit_cost->minor, 4100);
    EXPECT_FALSE(line(out, "tube-15.88").unit_cost.has_value());
}

TEST(PartsWork, stretches_by_what_is_told_of_the_place) {
    Input in = small_job();  // 1 h + 0.25 h x 4 = 2 h
    LabourTask& task = in.prices.tasks[0];
    Difficulty& d = in.prices.difficulty;
    d.heights = {{6.0, 1.2}, {10.0, 1.5}};
    d.coverings = {{Covering::slate, 1.3}, {Covering::clay_tile, 1.1}};
    d.access = {{"ladder", "ladder", 1.25}};
    d.each_storey = 0.1;
    in.circumstances.height_m = 8.0;
    in.circumstances.coverings = {Covering::clay_tile, Covering::slate};
    in.circumstances.access = "ladder";
    in.circumstances.storeys = 2;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "fixing").to_buy, 2.0) << "nothing makes this task slower";
    task.by_height = true;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "fixing").quantity, 2.0 * 1.2);
    in.circumstances.height_m = 6.0;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "fixing").quantity, 2.0) << "over six, not at six";
    in.circumstances.height_m = 10.5;
    task.by_covering = true;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "fixing").quantity, 2.0 * 1.5 * 1.3) << "the hardest covering";
    task.by_access = task.by_storeys = true;
    const Outcome out = list_parts(in);
    EXPECT_NEAR(line(out, "fixing").quantity, 2.0 * 1.5 * 1.3 * 1.25 * 1.2, 1e-12);
    EXPECT_DOUBLE_EQ(line(out, "fixing").to_buy, 5.9) << "5.85 up to the tenth";
    EXPECT_EQ(line(out, "fixing").why,
              "(1 h + 0.25 h x 4 points) x 1.5 (10.5 m over ground) x 1.3 (slates) x 1.25 (ladder) x 1.2 (2 storeys to "
              "carry)");
    in.circumstances = {};
    EXPECT_DOUBLE_EQ(line(list_parts(in), "fixing").quantity, 2.0) << "nothing told, nothing stretched";
}

TEST(PartsWork, takes_the_rate_of_its_kind) {
    Input in = small_job();
    in.prices.labour_rates = {{"refrigeration", "certified", {8200}, Money{5000}}};
    in.prices.tasks[0].rate = "refrigeration";
    const Outcome out = list_parts(in);
    EXPECT_EQ(line(out, "fixing").unit_price.minor, 8200);
    EXPECT_EQ(line(out, "fixing").unit_cost->minor, 5000);
    EXPECT_EQ(line(out, "fixing").net.minor, 16400);
    EXPECT_NE(line(out, "fixing").why.find("certified"), std::string::npos);
}

TEST(PartsTravel, is_a_line_once_the_distance_is_told) {
    Input in = small_job();
    in.prices.travel = Travel{{60}, {5000}, 40.0, 2, "reduced"};
    const Outcome without = list_parts(in);
    EXPECT_TRUE(std::none_of(without.lines.begin(), without.lines.end(),
                             [](const Line& l) { return l.item_id.rfind("travel", 0) == 0; }));
    in.circumstances.distance_km = 18.0;  // 2 trips there and back: 72 km, 1.8 h
    const Outcome out = list_parts(in);
    EXPECT_DOUBLE_EQ(line(out, "travel-km").to_buy, 72.0);
    EXPECT_EQ(line(out, "travel-km").net.minor, 4320);
    EXPECT_DOUBLE_EQ(line(out, "travel-hours").to_buy, 1.8);
    EXPECT_EQ(line(out, "travel-hours").net.minor, 9000);
    EXPECT_EQ(line(out, "travel-hours").tax_class, "reduced");
    in.circumstances.trips = 1;
    EXPECT_DOUBLE_EQ(line(list_parts(in), "travel-km").to_buy, 36.0);
    EXPECT_EQ(list_parts(in).labour_h, out.labour_h) << "the road is not work on site";
}

}  // namespace
}  // namespace work_test
}  // namespace wg::parts
