#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/siting/judge.h"
#include "tests/core/siting/house.h"

namespace wg::siting {
namespace {

class Search : public ::testing::Test {
   protected:
    Site site = small_house();
    sky::PreparedYear year = plain_year();
    Catalogue catalogue = two_methods();
    Input input = input_for(site, year, catalogue, 0.4);
};

/// Every place of the grid judged in full, sorted, near ones struck out: what the search must equal.
std::vector<Place> judged_one_by_one(const Input& input) {
    struct Judged {
        Place place;
        std::size_t order;
    };
    std::vector<Judged> all;
    std::size_t order = 0;
    for (std::size_t seat = 0; seat < input.seats.size(); ++seat) {
        const SeatGround ground(input, seat);
        for (int row = 0; row < ground.rows(); ++row) {
            for (int column = 0; column < ground.columns(); ++column) {
                for (const Hand hand : {Hand::right, Hand::left}) {
                    const std::optional<Place> place = judge(input, ground, seat, {row, column, hand});
                    if (place) all.push_back({*place, order});
                    ++order;
                }
            }
        }
    }
    std::sort(all.begin(), all.end(), [](const Judged& a, const Judged& b) {
        return std::tuple(a.place.score, a.order) < std::tuple(b.place.score, b.order);
    });
    std::vector<Place> places;
    for (const Judged& j : all) {
        if (places.size() == static_cast<std::size_t>(input.places)) break;
        const bool near = std::any_of(places.begin(), places.end(), [&](const Place& p) {
            return input.seats[p.seat].surface_id == input.seats[j.place.seat].surface_id &&
                   std::hypot(p.placement.x_m - j.place.placement.x_m, p.placement.y_m - j.place.placement.y_m) <
                       input.collector.length_m;
        });
        if (!near) places.push_back(j.place);
    }
    return places;
}

TEST_F(Search, EqualsJudgingEveryPlaceForEveryAim) {
    for (const Aim aim : all_aims) {
        input.objective = objective_for(aim);
        const std::vector<Place> expected = judged_one_by_one(input);
        const Outcome found = best_places(input);
        ASSERT_EQ(found.places.size(), expected.size()) << text_of(aim);
        ASSERT_GE(found.places.size(), 3U) << text_of(aim);
        for (std::size_t i = 0; i < expected.size(); ++i) {
            EXPECT_EQ(found.places[i].seat, expected[i].seat) << text_of(aim) << " place " << i;
            EXPECT_EQ(found.places[i].placement, expected[i].placement) << text_of(aim) << " place " << i;
            EXPECT_EQ(found.places[i].score, expected[i].score) << text_of(aim) << " place " << i;
        }
    }
}

TEST_F(Search, EqualsJudgingEveryPlaceForWeightsOfOnesOwnWithTheStreetMarked) {
    site.street_azimuth_deg = 0.0;
    input = input_for(site, year, catalogue, 0.4);
    input.objective = Objective{0.3, 0.1, 4.0, 20.0, 80.0};
    const std::vector<Place> expected = judged_one_by_one(input);
    const Outcome found = best_places(input);
    ASSERT_EQ(found.places.size(), expected.size());
    ASSERT_GE(found.places.size(), 3U);
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(found.places[i].placement, expected[i].placement) << "place " << i;
        EXPECT_EQ(found.places[i].score, expected[i].score) << "place " << i;
    }
}

TEST_F(Search, WeightsUnderZeroOrNoNumbersGiveNoPlaces) {
    for (double Objective::*const weight : {&Objective::per_electricity_kwh, &Objective::per_missing_heat_kwh,
                                            &Objective::per_run_m, &Objective::per_utilisation, &Objective::per_seen}) {
        for (const double wrong : {-0.1, std::nan(""), HUGE_VAL, 2.0 * most_weight}) {
            input.objective = objective_for(Aim::running_cost);
            EXPECT_TRUE(input.objective.valid());
            input.objective.*weight = wrong;
            EXPECT_FALSE(input.objective.valid());
            EXPECT_TRUE(best_places(input).places.empty());
        }
    }
}

TEST_F(Search, TheStreetDecidesWhatIsSeen) {
    const auto seen_on = [&](std::size_t seat, std::optional<double> street) {
        site.street_azimuth_deg = street;
        const Input now = input_for(site, year, catalogue, 0.4);
        const SeatGround ground(now, seat);
        for (int row = 0; row < ground.rows(); ++row) {
            if (const auto place = judge(now, ground, seat, {row, ground.columns() / 2, Hand::right}))
                return place->measures.seen;
        }
        return -1.0;
    };
    ASSERT_EQ(input.seats[2].surface_id, "south wall");
    EXPECT_EQ(seen_on(2, 180.0), 1.0);  // nothing stands before it
    EXPECT_EQ(seen_on(2, 0.0), 0.0);    // the street is behind the house
    const double all_round = seen_on(2, std::nullopt);
    EXPECT_GT(all_round, 0.3);
    EXPECT_LT(all_round, 0.7);
    // The roofs slope at 40 deg: from the street to the north the north roof is seen, the south roof is not.
    EXPECT_EQ(seen_on(0, 0.0), 0.0);
    EXPECT_GT(seen_on(1, 0.0), 0.5);
}

TEST(Viewpoints, StandOnTheStreetsSideWithinSixtyDegrees) {
    Site site = small_house();
    site.sketch_up_azimuth_deg = 30.0;  // sketch y bears 30 deg: a street to 120 deg lies along sketch x
    for (Surface& surface : site.surfaces)
        surface.azimuth_deg += 30.0;  // the house stays in the sketch as it was
    site.street_azimuth_deg = 120.0;
    const std::vector<Point3> eyes = viewpoints_of(site);
    ASSERT_EQ(eyes.size(), static_cast<std::size_t>(viewpoints));
    // Round all surfaces: x 0..8, y -6..8 (the terrace lies before the house).
    const double radius = 0.5 * std::hypot(8.0, 14.0) + ring_off_m;
    double least = 0.0, most = 0.0;
    for (const Point3& eye : eyes) {
        EXPECT_NEAR(eye.x_m, 4.0 + radius, 1e-9);
        EXPECT_EQ(eye.z_m, eye_height_m);
        least = std::min(least, eye.y_m - 1.0);
        most = std::max(most, eye.y_m - 1.0);
    }
    EXPECT_NEAR(most, radius * std::sqrt(3.0), 1e-9);  // tan 60 deg
    EXPECT_NEAR(least, -most, 1e-9);
    site.street_azimuth_deg.reset();
    double sum_x = 0.0;
    for (const Point3& eye : viewpoints_of(site))
        sum_x += eye.x_m - 4.0;
    EXPECT_NEAR(sum_x, 0.0, 1e-9);  // all round
}

TEST_F(Search, EqualsJudgingEveryPlaceWithAnotherCollectorInTheWay) {
    Placement other = placement_in(input.seats[0], {5.0, 4.0}, Hand::right);
    other.id = "other";
    input.choice.placements = {other};
    input.moving = 1;
    const std::vector<Place> expected = judged_one_by_one(input);
    const Outcome found = best_places(input);
    ASSERT_EQ(found.places.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(found.places[i].placement, expected[i].placement);
        if (found.places[i].placement.surface_id != "south roof") continue;
        EXPECT_GE(std::hypot(found.places[i].placement.x_m - 5.0, found.places[i].placement.y_m - 4.0), 0.8);
    }
}

TEST_F(Search, JudgesFarFewerPlacesThanItLooksAt) {
    input.cell_m = 0.1;
    const Outcome found = best_places(input);
    EXPECT_GT(found.looked_at, 1000U);
    EXPECT_LT(found.judged, found.looked_at / 4);
}

TEST_F(Search, PlacesAreApart) {
    input.places = 8;
    const Outcome found = best_places(input);
    for (std::size_t i = 0; i < found.places.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const Placement &a = found.places[i].placement, &b = found.places[j].placement;
            if (a.surface_id == b.surface_id) {
                EXPECT_GE(std::hypot(a.x_m - b.x_m, a.y_m - b.y_m), input.collector.length_m);
            }
        }
    }
}

TEST_F(Search, TheSunnySideIsCheaperThanTheNorthRoof) {
    const Outcome found = best_places(input);
    ASSERT_FALSE(found.places.empty());
    EXPECT_EQ(found.places[0].placement.surface_id, "south roof");
    // The chimney stands in the west half; the best place has more light than one right behind it.
    const SeatGround ground(input, found.places[0].seat);
    double least = 1.0;
    for (int row = 0; row < ground.rows(); ++row) {
        for (int column = 0; column < ground.columns(); ++column) {
            if (const auto m = ground.cheap({row, column, Hand::right})) least = std::min(least, m->beam_share);
        }
    }
    EXPECT_LT(least, 0.9);
    EXPECT_GT(found.places[0].measures.beam_share, 0.97);
}

TEST_F(Search, TheShortestRunLiesNearestToTheBlock) {
    input.objective = Objective{0.0, 0.0, 1.0, 0.0, 0.0};
    const Outcome found = best_places(input);
    ASSERT_FALSE(found.places.empty());
    const double best = found.places[0].measures.run_m;
    for (std::size_t seat = 0; seat < input.seats.size(); ++seat) {
        const SeatGround ground(input, seat);
        for (int row = 0; row < ground.rows(); ++row) {
            for (int column = 0; column < ground.columns(); ++column) {
                for (const Hand hand : {Hand::right, Hand::left}) {
                    const auto place = judge(input, ground, seat, {row, column, hand});
                    if (place) EXPECT_GE(place->measures.run_m, best);
                }
            }
        }
    }
}

TEST_F(Search, OutOfSightIsSeenFromFewerPointsThanTheWall) {
    input.objective = objective_for(Aim::out_of_sight);
    const Outcome found = best_places(input);
    ASSERT_FALSE(found.places.empty());
    input.objective = objective_for(Aim::running_cost);
    input.places = 20;
    double seen_on_wall = 0.0;
    for (const Place& p : best_places(input).places) {
        if (p.placement.surface_id == "south wall") seen_on_wall = p.measures.seen;
    }
    EXPECT_GT(seen_on_wall, 0.3);
    EXPECT_LT(found.places[0].measures.seen, seen_on_wall);
}

TEST_F(Search, ThePresentPlaceIsMeasuredByTheSameEstimate) {
    input.choice.placements = {placement_in(input.seats[1], {4.0, 2.0}, Hand::left)};
    const Outcome found = best_places(input);
    ASSERT_TRUE(found.present.has_value());
    EXPECT_EQ(found.present->placement, input.choice.placements[0]);
    EXPECT_GT(found.present->score, found.places[0].score);  // the north roof
    const SeatGround ground(input, 1);
    const auto at = ground.nearest(input.choice.placements[0]);
    ASSERT_TRUE(at.has_value());
    EXPECT_EQ(judge(input, ground, 1, *at)->score, found.present->score);
    input.choice.placements[0].x_m = 100.0;
    EXPECT_FALSE(best_places(input).present.has_value());
}

TEST_F(Search, TwoRunsGiveTheSame) {
    const Outcome a = best_places(input), b = best_places(input);
    ASSERT_EQ(a.places.size(), b.places.size());
    for (std::size_t i = 0; i < a.places.size(); ++i) {
        EXPECT_EQ(a.places[i].placement, b.places[i].placement);
        EXPECT_EQ(a.places[i].score, b.places[i].score);
    }
    EXPECT_EQ(a.judged, b.judged);
}

TEST_F(Search, ProgressRisesAndCancelEndsWithoutPlaces) {
    std::vector<double> shares;
    (void)best_places(input, [&](double share) {
        shares.push_back(share);
        return true;
    });
    ASSERT_FALSE(shares.empty());
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_EQ(shares.back(), 1.0);
    const Outcome cancelled = best_places(input, [](double) { return false; });
    EXPECT_TRUE(cancelled.cancelled);
    EXPECT_TRUE(cancelled.places.empty());
}

TEST_F(Search, SaysWhichSurfaceHasNoPlace) {
    site.surfaces[3].outline = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    input = input_for(site, year, catalogue, 0.4);
    const Outcome found = best_places(input);
    ASSERT_EQ(found.remarks.size(), 1U);
    EXPECT_EQ(found.remarks[0], "terrace: no room for the plate with its free strip");
}

TEST_F(Search, InputThatIsNotCompleteGivesNothing) {
    Input bare;
    EXPECT_TRUE(best_places(bare).places.empty());
    Input odd = input;
    odd.yields.pop_back();
    EXPECT_TRUE(best_places(odd).places.empty());
    odd = input;
    odd.cell_m = 0.0;
    EXPECT_TRUE(best_places(odd).places.empty());
}

TEST(CellSums, MeanEqualsAddingUp) {
    const std::vector<float> values = {0.1F, 0.9F, -1.0F, 1.0F, 0.0F, 0.25F};
    const CellSums sums(values, 3, 2);
    EXPECT_NEAR(sums.mean(0, 0, 2, 2), (0.1 + 0.9 + 1.0 + 0.0) / 4.0, 1e-7);
    EXPECT_NEAR(sums.mean(0, 1, 2, 2), (0.9 + 0.0 + 0.25) / 3.0, 1e-7);  // the cell under zero is not there
    EXPECT_EQ(sums.mean(0, 2, 1, 1), 1.0);
    EXPECT_EQ(sums.mean(5, 5, 1, 1), 1.0);
}

TEST(EstimatedRun, GoesLevelThenStraightThenAlongTheRoute) {
    EXPECT_NEAR(estimated_run_m({0, 0, 0}, {1, 0, 0}, {}, {3, 4, 0}), 3.0 + 4.0, 1e-12);
    RoutePoint on_roof{"a", RoutePointKind::free, {9, 9, 9}, {}};
    RoutePoint passage{"b", RoutePointKind::roof_passage, {3, 4, 0}, {}};
    RoutePoint inside{"c", RoutePointKind::free, {3, 4, -2}, {}};
    EXPECT_NEAR(estimated_run_m({0, 0, 0}, {1, 0, 0}, {on_roof, passage, inside}, {5, 4, -2}), 3.0 + 4.0 + 2.0 + 2.0,
                1e-12);
}

TEST(Seats, FlatSurfacesGetAFrameTowardsTheEquator) {
    Site site = small_house();
    const std::vector<Seat> north = seats_of(site, plain_plate(), two_methods(), "hooks");
    ASSERT_EQ(north.size(), 4U);
    EXPECT_EQ(north[3].frame_tilt_deg, 30.0);
    EXPECT_EQ(north[3].frame_azimuth_deg, 180.0);
    EXPECT_EQ(north[3].fixing_method, "anchors");
    EXPECT_EQ(north[0].fixing_method, "hooks");
    site.location.latitude_deg = -35.0;
    EXPECT_EQ(seats_of(site, plain_plate(), two_methods(), "hooks")[3].frame_azimuth_deg, 0.0);
    CollectorModel either = plain_plate();
    either.level_side = LevelSide::either;
    EXPECT_EQ(seats_of(site, either, two_methods(), "hooks").size(), 8U);
}

}  // namespace
}  // namespace wg::siting
