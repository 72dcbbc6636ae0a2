#include <gtest/gtest.h>

#include "core/plan/best_places.h"
#include "core/plan/plan.h"
#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace {

class BestPlaces : public ::testing::Test {
   protected:
    static const Reference& reference() {
        static const Reference value = test::reference();
        return value;
    }
    static const Job& job() {
        static const Job value = test::demo_job();
        return value;
    }
    /// The demonstration with the first of its collectors only: every surface is open to it.
    static const Job& single() {
        static const Job value = [] {
            Job one = test::demo_job();
            for (Choice& choice : one.choices)
                choice.placements.erase(choice.placements.begin() + 1, choice.placements.end());
            return one;
        }();
        return value;
    }
};

TEST_F(BestPlaces, PutOnTheSiteTheyPlanWithoutAStopAndNearTheEstimate) {
    PlaceWish wish;
    wish.cell_m = 0.2;
    wish.places = 3;
    const Result<FoundPlaces> found = best_places(single(), reference(), wish);
    ASSERT_TRUE(found.ok());
    const auto& places = found.value().outcome.places;
    ASSERT_EQ(places.size(), 3U);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Result<Plan> planned = plan(with_place(single(), wish, found.value(), i), reference());
        ASSERT_TRUE(planned.ok());
        const Plan& p = planned.value();
        EXPECT_EQ(p.placements.front().surface_id, places[i].placement.surface_id);
        EXPECT_NEAR(p.figures.worst_utilisation, places[i].measures.utilisation, 0.02);
        // The estimate is for ranking. Its run is level and straight where the plan's follows the route as drawn.
        EXPECT_NEAR(p.figures.electricity_kwh.mid, places[i].measures.electricity_kwh,
                    0.03 * p.figures.electricity_kwh.mid)
            << "place " << i;
        EXPECT_NEAR(p.placements.front().plane_kwh_m2, places[i].measures.light_kwh_m2,
                    0.02 * places[i].measures.light_kwh_m2)
            << "place " << i;
        for (const Finding& f : p.findings) {
            EXPECT_FALSE(f.severity == Severity::stop && f.code.rfind("collector.", 0) == 0) << f.message;
            EXPECT_FALSE(f.severity == Severity::stop && f.code.rfind("fixing.", 0) == 0) << f.message;
        }
    }
    EXPECT_LE(places[0].score, places[1].score);
    EXPECT_FALSE(found.value().method.empty());
}

TEST_F(BestPlaces, OneMoreCollectorKeepsOffTheFirst) {
    PlaceWish wish;
    wish.cell_m = 0.25;
    wish.places = 1;
    const Choice& choice = *chosen_choice(job());
    wish.moving = choice.placements.size();
    const Result<FoundPlaces> found = best_places(job(), reference(), wish);
    ASSERT_TRUE(found.ok());
    ASSERT_EQ(found.value().outcome.places.size(), 1U);
    const Job with = with_place(job(), wish, found.value(), 0);
    EXPECT_EQ(chosen_choice(with)->placements.size(), choice.placements.size() + 1);
    // One method holds all collectors of a choice: with two on tiles, wall and terrace are out, and it is said.
    EXPECT_EQ(find_surface(with.site, found.value().outcome.places[0].placement.surface_id)->covering,
              Covering::clay_tile);
    EXPECT_EQ(found.value().outcome.remarks.size(), 2U);
}

TEST_F(BestPlaces, NoSurfaceForTheCollectorIsAProblem) {
    Job bare = job();
    for (Surface& s : bare.site.surfaces)
        s.outline.clear();
    const Result<FoundPlaces> found = best_places(bare, reference(), {});
    ASSERT_FALSE(found.ok());
    EXPECT_EQ(found.problems().front().where, "site.surfaces");
}

TEST_F(BestPlaces, WeightsOfOnesOwnTakeThePlaceOfTheAims) {
    PlaceWish wish;
    wish.cell_m = 0.25;
    wish.places = 1;
    wish.weights = siting::objective_for(siting::Aim::short_run);
    const Result<FoundPlaces> by_weights = best_places(single(), reference(), wish);
    PlaceWish by_aim = wish;
    by_aim.weights.reset();
    by_aim.aim = siting::Aim::short_run;
    const Result<FoundPlaces> same = best_places(single(), reference(), by_aim);
    ASSERT_TRUE(by_weights.ok() && same.ok());
    EXPECT_EQ(by_weights.value().objective, *wish.weights);
    EXPECT_EQ(by_weights.value().outcome.places.at(0).placement, same.value().outcome.places.at(0).placement);
    wish.weights->per_run_m = -1.0;
    const Result<FoundPlaces> refused = best_places(single(), reference(), wish);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.problems().front().where, "weights");
}

TEST_F(BestPlaces, CancelComesBackSoon) {
    const Result<FoundPlaces> found = best_places(job(), reference(), {}, [](double) { return false; });
    ASSERT_TRUE(found.ok());
    EXPECT_TRUE(found.value().outcome.cancelled);
}

}  // namespace
}  // namespace wg::plan
