#include "core/plan/sizing_advice.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/fixing/layout_rules.h"
#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace {

class Sizing : public ::testing::Test {
   protected:
    static const Reference& reference() {
        static const Reference value = test::reference();
        return value;
    }
    static const Job& job() {
        static const Job value = test::demo_job();
        return value;
    }
    static const SizingAdvice& advice() {
        static const SizingAdvice value = sizing_advice(job(), reference()).value();
        return value;
    }
    static const SizingPoint& present() {
        for (const SizingPoint& p : advice().points)
            if (p.present) return p;
        throw std::runtime_error("the choice's own set is not among the points");
    }
};

TEST_F(Sizing, HoldsEverySetThatGoesTogetherAndNoOther) {
    const CollectorModel& collector = *find_collector(reference().catalogue, chosen_choice(job())->collector_model);
    std::size_t expected = 0;
    for (const BlockModel& block : reference().catalogue.blocks)
        for (int n = 1; n <= 4; ++n)
            if (n * collector.face_area_m2 >= block.collector_area_min_m2 &&
                n * collector.face_area_m2 <= block.collector_area_max_m2)
                expected += reference().catalogue.cylinders.size();
    EXPECT_EQ(advice().points.size(), expected);
    EXPECT_GE(expected, 6U);
}

TEST_F(Sizing, ThePresentSetHasThePlansFigures) {
    const Plan planned = plan(job(), reference()).value();
    EXPECT_NEAR(present().electricity_kwh, planned.figures.electricity_kwh.mid,
                0.02 * planned.figures.electricity_kwh.mid);
    ASSERT_TRUE(present().investment_minor.has_value());
    EXPECT_EQ(*present().investment_minor, static_cast<double>(planned.figures.price_gross.minor));
    ASSERT_TRUE(planned.warm_up_fair.has_value());
    EXPECT_NEAR(present().warm_up_h, planned.warm_up_fair->hours, 1e-9);
    EXPECT_EQ(present().without_place, 0);
    EXPECT_EQ(present().stops.empty(), !planned.stopped());
}

TEST_F(Sizing, TheFrontIsNotBeatenAndAllElseIs) {
    int on_front = 0;
    for (const SizingPoint& p : advice().points) {
        if (!p.stops.empty()) continue;
        bool beaten = false;
        for (const SizingPoint& q : advice().points) {
            if (!q.stops.empty()) continue;
            beaten = beaten || (*q.yearly_cost_minor <= *p.yearly_cost_minor && q.short_guests_l <= p.short_guests_l &&
                                (*q.yearly_cost_minor < *p.yearly_cost_minor || q.short_guests_l < p.short_guests_l));
        }
        EXPECT_EQ(p.front_yearly, !beaten) << p.label;
        on_front += p.front_yearly ? 1 : 0;
    }
    EXPECT_GE(on_front, 1);
}

TEST_F(Sizing, AUsualHouseholdOftenFindsALargerCylinderNoWorseForComfort) {
    // A larger cylinder also warms up slower: no law. A thousandth of what a year draws (about 50,000 l) is no
    // difference.
    constexpr double alike_l = 50.0;
    for (const SizingPoint& small : advice().points)
        for (const SizingPoint& large : advice().points) {
            if (small.block_id != large.block_id || small.collectors != large.collectors) continue;
            const double v_small = find_cylinder(reference().catalogue, small.cylinder_id)->volume_l;
            const double v_large = find_cylinder(reference().catalogue, large.cylinder_id)->volume_l;
            if (v_small < v_large) {
                EXPECT_LE(large.short_l, small.short_l + alike_l);
                EXPECT_LE(large.short_guests_l, small.short_guests_l + alike_l);
                EXPECT_LE(small.short_l, small.short_guests_l + 1.0);
                EXPECT_GT(large.warm_up_h, small.warm_up_h);
            }
        }
}

TEST_F(Sizing, AnotherComfortTargetJudgesTheSameYearsAnewByLitresAndByHours) {
    SizingAdvice judged = advice();
    ASSERT_GE(judged.points.size(), 3U);
    judged.points[0].short_l = 400.0;
    judged.points[0].short_h = 3.0;
    judged.points[1].short_l = 20.0;
    judged.points[1].short_h = 30.0;
    judged.points[2].short_l = judged.points[2].short_h = 0.0;
    const auto kept = [&](const ComfortTarget& target) {
        EXPECT_TRUE(judge_comfort(judged, target).ok());
        EXPECT_EQ(judged.comfort, target);
        return std::array{judged.points[0].meets_comfort, judged.points[1].meets_comfort,
                          judged.points[2].meets_comfort};
    };
    EXPECT_EQ(kept({}), (std::array{false, true, true}));  // 365 litres when nothing is said
    EXPECT_EQ(kept({std::nullopt, 3.0}), (std::array{true, false, true}));
    EXPECT_EQ(kept({10.0, 3.0}), (std::array{false, false, true}));
    EXPECT_EQ(kept({0.0, std::nullopt}), (std::array{false, false, true}));
    EXPECT_EQ(kept({std::nullopt, std::nullopt}), (std::array{true, true, true}));
    for (const ComfortTarget wrong : {ComfortTarget{-1.0, std::nullopt}, ComfortTarget{std::nullopt, 8761.0},
                                      ComfortTarget{std::nan(""), std::nullopt}}) {
        EXPECT_FALSE(judge_comfort(judged, wrong).ok());
        EXPECT_EQ(judged.comfort, (ComfortTarget{std::nullopt, std::nullopt})) << "a refused target changes nothing";
        SizingWish wish;
        wish.comfort = wrong;
        EXPECT_FALSE(sizing_advice(job(), reference(), wish).ok());
    }
}

TEST_F(Sizing, IsTheSameWhateverTheThreadsAndStopsWhenTold) {
    SizingWish wish;
    wish.threads = 1;
    const SizingAdvice alone = sizing_advice(job(), reference(), wish).value();
    ASSERT_EQ(alone.points.size(), advice().points.size());
    for (std::size_t i = 0; i < alone.points.size(); ++i) {
        EXPECT_EQ(alone.points[i].electricity_kwh, advice().points[i].electricity_kwh);
        EXPECT_EQ(alone.points[i].front_yearly, advice().points[i].front_yearly);
    }
    EXPECT_TRUE(sizing_advice(job(), reference(), {}, [](double) { return false; }).value().cancelled);
    wish.most_collectors = 9;
    EXPECT_FALSE(sizing_advice(job(), reference(), wish).ok());
}

TEST_F(Sizing, FurtherCollectorsKeepTheRulesOrAreSaidToHaveNoPlace) {
    Job single = job();
    single.choices.front().placements.resize(1);
    single.chosen_choice_id = single.choices.front().id;
    const SizingAdvice grown = sizing_advice(single, reference()).value();
    for (const SizingPoint& p : grown.points) {
        ASSERT_EQ(p.placements.size(), static_cast<std::size_t>(p.collectors));
        if (p.without_place > 0) {
            EXPECT_FALSE(p.stops.empty());
            continue;
        }
        int number = 0;
        const Job with = with_set(single, {}, p, "further", [&] { return "id-" + std::to_string(++number); });
        ASSERT_EQ(with.choices.size(), single.choices.size() + 1);
        const Choice& choice = with.choices.back();
        EXPECT_EQ(choice.cylinder_model, p.cylinder_id);
        for (const Finding& f :
             fixing::check_layout(with.site, choice, *find_collector(reference().catalogue, choice.collector_model)))
            EXPECT_NE(f.severity, Severity::stop) << f.message;
    }
}

TEST_F(Sizing, FullSurfacesGiveAStopAndAPriceAllTheSame) {
    Job crowded = job();
    Choice& choice = crowded.choices.front();
    crowded.chosen_choice_id = choice.id;
    choice.placements.resize(1);
    for (Surface& s : crowded.site.surfaces)
        if (s.id == choice.placements.front().surface_id) {
            KeepOut everywhere;
            everywhere.id = "all";
            everywhere.label = "kept free";
            everywhere.outline = s.outline;
            s.keep_outs.push_back(everywhere);
        }
    for (const SizingPoint& p : sizing_advice(crowded, reference()).value().points) {
        EXPECT_EQ(p.without_place, p.collectors - 1);
        EXPECT_FALSE(p.stops.empty());
        EXPECT_TRUE(p.investment_minor.has_value());
        EXPECT_GT(p.electricity_kwh, 0.0);
    }
}

TEST_F(Sizing, FacingTheSunCostsLeastAndAPoorBearingLittleMore) {
    const FacingYields yields = facing_yields(job(), reference()).value();
    ASSERT_EQ(yields.cells.size(), yields.tilts_deg.size() * yields.bearings_deg.size());
    const auto at = [&](double tilt, double bearing) -> const FacingYield& {
        for (const FacingYield& cell : yields.cells)
            if (cell.tilt_deg == tilt && cell.bearing_deg == bearing) return cell;
        throw std::runtime_error("no such cell");
    };
    const bool north = job().site.location.latitude_deg > 0.0;
    const FacingYield &sunny = at(45.0, north ? 180.0 : 0.0), &dark = at(45.0, north ? 0.0 : 180.0);
    EXPECT_LT(sunny.electricity_kwh, dark.electricity_kwh);
    EXPECT_GT(sunny.seasonal_factor, dark.seasonal_factor);
    // Air gives most of the heat: the electricity rises by much less than the light falls.
    EXPECT_LT(dark.electricity_kwh / sunny.electricity_kwh - 1.0, 0.6 * (sunny.light_kwh_m2 / dark.light_kwh_m2 - 1.0));
    for (const FacingYield& cell : yields.cells)
        EXPECT_GE(cell.tilt_deg, 15.0);
    EXPECT_TRUE(facing_yields(job(), reference(), {}, [](double) { return false; }).value().cancelled);
}

TEST_F(Sizing, FacingHereIsThePlansYearButForShade) {
    Job open = job();
    open.site.obstacles.clear();
    open.site.horizon.clear();
    const double electricity = facing_yields(open, reference()).value().here.electricity_kwh;
    const Plan planned = plan(open, reference()).value();
    EXPECT_NEAR(electricity, planned.figures.electricity_kwh.mid, 0.04 * electricity);
}

TEST_F(Sizing, SummerDaysWarmUpFasterThanWinterDaysAndNights) {
    const MonthsWarmUp months = warm_up_by_month(job(), reference()).value();
    const bool north = job().site.location.latitude_deg > 0.0;
    const std::size_t summer = north ? 6 : 0, winter = north ? 0 : 6;
    ASSERT_TRUE(months.day[summer].warm_up.reached && months.day[winter].warm_up.reached);
    EXPECT_LT(months.day[summer].warm_up.hours, months.day[winter].warm_up.hours);
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_GT(months.day[m].conditions.light_w_m2, 20.0);
        EXPECT_GT(months.day[m].conditions.air_c, months.night[m].conditions.air_c);
        EXPECT_EQ(months.day[m].conditions.start_c, months.night[m].conditions.start_c);
        if (months.day[m].warm_up.reached && months.night[m].warm_up.reached)
            EXPECT_LT(months.day[m].warm_up.hours, months.night[m].warm_up.hours);
    }
    // 21:00 to 05:00 by the sun is dark in winter at any latitude below the polar circles.
    EXPECT_NEAR(months.night[winter].conditions.light_w_m2, 0.0, 1e-9);
}

}  // namespace
}  // namespace wg::plan
