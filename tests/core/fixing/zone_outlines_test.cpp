#include "core/fixing/zone_outlines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/fixing/zones.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "tests/tools/sweep.h"

namespace wg::fixing {
namespace zone_outlines_test {

/// Plane 16 m wide whose plan is 8 m deep.
Surface plane(double pitch, RoofForm form) {
    Surface s;
    s.kind = form == RoofForm::not_a_roof ? SurfaceKind::wall : SurfaceKind::roof;
    s.roof_form = form;
    s.tilt_deg = pitch;
    const double up = form == RoofForm::not_a_roof ? 8.0 : 8.0 / std::cos(radians(pitch));
    s.outline = {{0, 0}, {16, 0}, {16, up}, {0, up}};
    return s;
}

/// The band of that zone for wind on that edge which holds a place in plan.
const ZoneBand* band(const std::vector<ZoneBand>& all, const char* zone, WindOn on, double x, double y) {
    for (const ZoneBand& b : all) {
        if (std::string(b.zone) == zone && b.wind_on == on && x > b.rect.x0 && x < b.rect.x1 && y > b.rect.y0 &&
            y < b.rect.y1)
            return &b;
    }
    return nullptr;
}

// EN 1991-1-4:2005 figure 7.8 (duo-pitch), by hand for h = 5 m: wind on the eaves, b = 16, e = min(16, 10) = 10: F 2.5
// m long and 1.0 m deep, G between, H to the ridge; lee plane: J 1.0 m from the ridge, I below. Wind on the gable, b =
// 16 m for the two planes: e = 10: F 2.5 m up the plane from the eaves and 1.0 m deep, G above, H to 5.0 m, I beyond.
TEST(Bands, OfADuoPitchRoofAreThoseOfTheFigure) {
    const auto all = zone_bands(plane(35.0, RoofForm::duo_pitch), 5.0);
    const ZoneBand* f = band(all, "F", WindOn::lower, 0.1, 0.1);
    ASSERT_NE(f, nullptr);
    EXPECT_NEAR(f->rect.x1, 2.5, 1e-9);
    EXPECT_NEAR(f->rect.y1, 1.0, 1e-9);
    ASSERT_NE(band(all, "F", WindOn::lower, 15.9, 0.1), nullptr);
    EXPECT_NEAR(band(all, "F", WindOn::lower, 15.9, 0.1)->rect.x0, 13.5, 1e-9);
    const ZoneBand* g = band(all, "G", WindOn::lower, 8.0, 0.1);
    ASSERT_NE(g, nullptr);
    EXPECT_NEAR(g->rect.x0, 2.5, 1e-9);
    EXPECT_NEAR(g->rect.x1, 13.5, 1e-9);
    ASSERT_NE(band(all, "H", WindOn::lower, 8.0, 7.9), nullptr);
    EXPECT_NEAR(band(all, "H", WindOn::lower, 8.0, 7.9)->rect.y0, 1.0, 1e-9);
    ASSERT_NE(band(all, "J", WindOn::upper, 8.0, 7.9), nullptr);
    EXPECT_NEAR(band(all, "J", WindOn::upper, 8.0, 7.9)->rect.y0, 7.0, 1e-9);
    EXPECT_NE(band(all, "I", WindOn::upper, 8.0, 3.0), nullptr);
    const ZoneBand* gable = band(all, "F", WindOn::left, 0.1, 0.1);
    ASSERT_NE(gable, nullptr);
    EXPECT_NEAR(gable->rect.x1, 1.0, 1e-9);
    EXPECT_NEAR(gable->rect.y1, 2.5, 1e-9);
    ASSERT_NE(band(all, "G", WindOn::left, 0.1, 7.9), nullptr);
    EXPECT_NEAR(band(all, "G", WindOn::left, 0.1, 7.9)->rect.y0, 2.5, 1e-9);
    ASSERT_NE(band(all, "H", WindOn::right, 12.0, 4.0), nullptr);
    EXPECT_NEAR(band(all, "H", WindOn::right, 12.0, 4.0)->rect.x0, 11.0, 1e-9);
    EXPECT_NEAR(band(all, "H", WindOn::right, 12.0, 4.0)->rect.x1, 15.0, 1e-9);
    EXPECT_NE(band(all, "I", WindOn::right, 10.0, 4.0), nullptr);
}

// Figure 7.6 (flat) for h = 5 m: wind on the long side e = min(16, 10) = 10: strip 1.0, corners 2.5, H to 5.0, I
// beyond. Wind on the short side, b = 8: e = 8: strip 0.8, corners 2.0, H to 4.0.
TEST(Bands, OfAFlatRoofAreThoseOfTheFigure) {
    const auto all = zone_bands(plane(0.0, RoofForm::flat), 5.0);
    ASSERT_NE(band(all, "F", WindOn::upper, 15.9, 7.9), nullptr);
    EXPECT_NEAR(band(all, "F", WindOn::upper, 15.9, 7.9)->rect.x0, 13.5, 1e-9);
    EXPECT_NEAR(band(all, "F", WindOn::upper, 15.9, 7.9)->rect.y0, 7.0, 1e-9);
    ASSERT_NE(band(all, "I", WindOn::lower, 8.0, 6.0), nullptr);
    EXPECT_NEAR(band(all, "I", WindOn::lower, 8.0, 6.0)->rect.y0, 5.0, 1e-9);
    ASSERT_NE(band(all, "F", WindOn::right, 15.9, 0.1), nullptr);
    EXPECT_NEAR(band(all, "F", WindOn::right, 15.9, 0.1)->rect.x0, 15.2, 1e-9);
    EXPECT_NEAR(band(all, "F", WindOn::right, 15.9, 0.1)->rect.y1, 2.0, 1e-9);
    ASSERT_NE(band(all, "H", WindOn::left, 3.0, 4.0), nullptr);
    EXPECT_NEAR(band(all, "H", WindOn::left, 3.0, 4.0)->rect.x1, 4.0, 1e-9);
}

// Figure 7.7 (mono-pitch) for h = 3 m: b = 16, e = min(16, 6) = 6: strips of 0.6 m and corners of 1.5 m at the low and
// at the high eaves; wind across the slope, b = 8: e = 6: Fup and Flow 1.5 m long, 0.6 m deep, G between, H to 3 m.
TEST(Bands, OfAMonoPitchRoofAreThoseOfTheFigure) {
    const auto all = zone_bands(plane(15.0, RoofForm::mono_pitch), 3.0);
    ASSERT_NE(band(all, "F", WindOn::upper, 0.1, 7.9), nullptr);
    EXPECT_NEAR(band(all, "F", WindOn::upper, 0.1, 7.9)->rect.y0, 7.4, 1e-9);
    EXPECT_NEAR(band(all, "F", WindOn::upper, 0.1, 7.9)->rect.x1, 1.5, 1e-9);
    ASSERT_NE(band(all, "Fup", WindOn::left, 0.1, 7.9), nullptr);
    EXPECT_NEAR(band(all, "Fup", WindOn::left, 0.1, 7.9)->rect.y0, 6.5, 1e-9);
    EXPECT_NEAR(band(all, "Fup", WindOn::left, 0.1, 7.9)->rect.x1, 0.6, 1e-9);
    ASSERT_NE(band(all, "Flow", WindOn::right, 15.9, 0.1), nullptr);
    EXPECT_NEAR(band(all, "Flow", WindOn::right, 15.9, 0.1)->rect.y1, 1.5, 1e-9);
    ASSERT_NE(band(all, "H", WindOn::left, 1.0, 4.0), nullptr);
    EXPECT_NEAR(band(all, "H", WindOn::left, 1.0, 4.0)->rect.x1, 3.0, 1e-9);
}

// Figure 7.5 (walls), e = 2h taken for min(b, 2h): A to e/5, B to e, C beyond; h = 3 m: e = 6.
TEST(Bands, OfAWallAreThoseOfTheFigure) {
    const auto all = zone_bands(plane(90.0, RoofForm::not_a_roof), 3.0);
    ASSERT_NE(band(all, "A", WindOn::left, 0.1, 4.0), nullptr);
    EXPECT_NEAR(band(all, "A", WindOn::left, 0.1, 4.0)->rect.x1, 1.2, 1e-9);
    ASSERT_NE(band(all, "B", WindOn::right, 12.0, 4.0), nullptr);
    EXPECT_NEAR(band(all, "B", WindOn::right, 12.0, 4.0)->rect.x0, 10.0, 1e-9);
    EXPECT_NEAR(band(all, "B", WindOn::right, 12.0, 4.0)->rect.x1, 14.8, 1e-9);
    EXPECT_NE(band(all, "C", WindOn::left, 8.0, 4.0), nullptr);
}

const ZoneArea* area_at(const WindZones& zones, Point2 at) {
    for (const ZoneArea& a : zones.areas) {
        if (site::contains(a.outline, at)) return &a;
    }
    return nullptr;
}

// h = 5 m, 35 deg, 1 m2: along the ridge G is the worst at the gables above e/4 = 2.5 m in plan, and at the eaves the
// corner 1.0 m wide has F. The slope is 1/cos 35 longer: 2.5 m in plan are 3.052 m on the roof.
TEST(WindZones, OfARoofLieOnItsSlope) {
    const Surface s = plane(35.0, RoofForm::duo_pitch);
    const WindZones zones = wind_zones(s, 5.0, 1.0);
    EXPECT_NEAR(zones.e_m, 10.0, 1e-12);
    EXPECT_NEAR(zones.e_side_m, 10.0, 1e-12);  // min(2 x 8, 10)
    EXPECT_NEAR(wind_zones(plane(0.0, RoofForm::flat), 5.0, 1.0).e_side_m, 8.0, 1e-12);
    const ZoneArea* g = area_at(zones, {0.5, 6.0});
    ASSERT_NE(g, nullptr);
    EXPECT_EQ(g->zone, "G");
    const site::Bounds b = site::bounds_of(g->outline);
    EXPECT_NEAR(b.max_x_m, 1.0, 1e-9);
    EXPECT_NEAR(b.min_y_m, 2.5 / std::cos(radians(35.0)), 1e-9);
    ASSERT_NE(area_at(zones, {0.5, 2.0}), nullptr);
    EXPECT_EQ(area_at(zones, {0.5, 2.0})->zone, "F");
    ASSERT_NE(area_at(zones, {3.0, 3.0}), nullptr);
    EXPECT_EQ(area_at(zones, {3.0, 3.0})->zone, "H");
    const auto mark = std::find_if(zones.marks.begin(), zones.marks.end(),
                                   [](const ZoneMark& m) { return m.word == "e/4" && m.from.x_m == m.to.x_m; });
    ASSERT_NE(mark, zones.marks.end());
    EXPECT_NEAR(mark->width_m, 3.052, 0.001);
}

TEST(WindZones, PlanesThatStandFreeHaveNone) {
    Surface s = plane(0.0, RoofForm::flat);
    s.kind = SurfaceKind::terrace;
    EXPECT_TRUE(wind_zones(s, 5.0, 1.0).areas.empty());
    s.kind = SurfaceKind::roof;
    EXPECT_FALSE(wind_zones(s, 5.0, 1.0).areas.empty());
}

TEST(WindZones, CoverTheOutlineWhateverItsShape) {
    const std::vector<std::vector<Point2>> shapes{
        {{0, 0}, {12, 0}, {12, 7}, {0, 7}},
        {{1, 2}, {13, 2}, {10, 8}, {4, 8}},                  // hipped end
        {{0, 0}, {12, 0}, {6, 7}},                           // triangle
        {{0, 0}, {0, 7}, {5, 7}, {5, 3}, {12, 3}, {12, 0}},  // L, clockwise
    };
    for (const auto& shape : shapes) {
        for (const RoofForm form :
             {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::flat, RoofForm::hip, RoofForm::not_a_roof}) {
            if (form == RoofForm::hip && shape.size() > 4) continue;  // a hip's plane has no notch
            Surface s = plane(form == RoofForm::flat ? 0.0 : form == RoofForm::not_a_roof ? 90.0 : 32.0, form);
            s.outline = shape;
            double sum = 0.0;
            for (const ZoneArea& a : wind_zones(s, 6.0, 1.4).areas)
                sum += std::abs(site::signed_area_m2(a.outline));
            EXPECT_NEAR(sum, std::abs(site::signed_area_m2(shape)), 1e-6);
        }
    }
}

// The drawing must not say anything else than the rating: a plate's uplift is the worst of the areas it reaches into.
TEST(WindZones, APlatesUpliftIsTheWorstOfTheAreasItReaches) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    for (const RoofForm form :
         {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::flat, RoofForm::hip, RoofForm::not_a_roof}) {
        for (int i = 0; i < sweep::cases(150); ++i) {
            const double pitch = form == RoofForm::flat         ? 0.0
                                 : form == RoofForm::not_a_roof ? 90.0
                                                                : 6.0 + 60.0 * share(random);
            const Surface s = plane(pitch, form);
            const double h = 2.5 + 8.0 * share(random), area = 1.0 + 3.0 * share(random);
            const site::Bounds b = site::bounds_of(s.outline);
            const double x = share(random) * (b.width_m() - 2.0), y = share(random) * (b.height_m() - 0.8);
            const std::vector<Point2> plate{{x, y}, {x + 2.0, y}, {x + 2.0, y + 0.8}, {x, y + 0.8}};
            double worst = 0.0;
            for (const ZoneArea& a : wind_zones(s, h, area).areas) {
                if (site::overlap(a.outline, plate)) worst = std::min(worst, a.uplift);
            }
            EXPECT_NEAR(worst, zone_pressure(s, h, plate, area).uplift, 1e-9) << x << ' ' << y << " pitch " << pitch;
        }
    }
}

TEST(Clipping, KeepsWhatLiesInTheRectangle) {
    const auto part = clipped_to({{0, 0}, {4, 0}, {4, 4}, {0, 4}}, {1, -1}, {3, 2});
    EXPECT_NEAR(std::abs(site::signed_area_m2(part)), 4.0, 1e-12);
    EXPECT_TRUE(clipped_to({{0, 0}, {4, 0}, {4, 4}}, {5, 5}, {6, 6}).empty());
}

}  // namespace zone_outlines_test
}  // namespace wg::fixing
