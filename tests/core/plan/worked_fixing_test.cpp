// docs/handbook/worked-fixing.md: the demonstration's worst fixing point, recalculated by hand apart from this program.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace worked_fixing_test {

constexpr double three_figures = 2e-3;  // relative: the page's figures are rounded to three

const Plan& demo() {
    static const Plan plan = [] {
        Options options;
        options.yield = false;
        Result<Plan> result = wg::plan::plan(test::demo_job(), test::reference(), options);
        if (!result.ok()) throw std::runtime_error(text_of(result.problems()));
        return std::move(result).value();
    }();
    return plan;
}

const PlacementPlan& upper() {
    return demo().placements.at(1);
}

void expect_figure(double actual, double by_hand) {
    EXPECT_NEAR(actual / by_hand, 1.0, three_figures) << by_hand;
}

TEST(WorkedFixing, WindSnowAndCoefficients) {
    const fixing::Outcome& f = upper().fixing;
    expect_figure(f.wind.cr, 0.6558);
    expect_figure(f.wind.intensity, 0.3284);
    expect_figure(f.wind.qp_pa, 554.0);
    EXPECT_EQ(f.zone, "H");
    expect_figure(f.cpe_uplift, -1.110);
    expect_figure(f.cpe_pressure, 0.507);
    expect_figure(f.snow_n_m2, 763.0);
    expect_figure(f.snow_slide_n, 1587.0);
}

TEST(WorkedFixing, ForcesAndUseOfTheWorstPoint) {
    const fixing::Outcome& f = upper().fixing;
    EXPECT_EQ(demo().figures.worst_point, 9);
    EXPECT_EQ(f.worst_point, 9);
    EXPECT_EQ(f.held_by, fixing::HeldBy::bracket);
    const fixing::FixingPoint& p = f.points.at(2);
    EXPECT_EQ(p.number, 9);
    EXPECT_EQ(p.worst_combination, "1.35 G + 1.50 snow + 0.90 wind pressure");
    expect_figure(p.push_n, 558.0);
    expect_figure(p.shear_n, 611.0);
    expect_figure(p.utilisation, 0.5555);
    expect_figure(f.points.at(5).pull_n, 311.0);
}

std::string input_of(const Working& w, const std::string& name) {
    for (const auto& [key, value] : w.inputs) {
        if (key == name) return value;
    }
    return "";
}

TEST(WorkedFixing, TheWorkingsShowTheFiguresOfThePage) {
    const auto& all = upper().fixing.workings;
    const auto working = [&](const std::string& key) -> const Working& {
        const auto at = std::find_if(all.begin(), all.end(), [&](const Working& w) { return w.key == key; });
        if (at == all.end()) throw std::runtime_error(key);
        return *at;
    };
    EXPECT_NE(working("fixing.wind").result.find("554 Pa"), std::string::npos);
    EXPECT_NE(working("fixing.snow").result.find("1094 N"), std::string::npos);
    EXPECT_NE(working("fixing.snow-slide").result.find("1587 N"), std::string::npos);
    EXPECT_NE(input_of(working("fixing.shares"), "point 9").find("17.59 %"), std::string::npos);
    EXPECT_NE(working("fixing.combination").result.find("1858 N"), std::string::npos);
    EXPECT_NE(working("fixing.point").result.find("0 N pull, 558 N push, 611 N shear"), std::string::npos);
    EXPECT_NE(working("fixing.screws").result.find("9432 N pull, 2768 N shear"), std::string::npos);
    EXPECT_NE(input_of(working("fixing.worst"), "bracket").find("55.6 %"), std::string::npos);
    EXPECT_EQ(working("fixing.worst").result, "56 %");
}

}  // namespace worked_fixing_test
}  // namespace wg::plan
