#include "core/sky/orientation.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace orientation_test {

constexpr DiffuseModel all_models[] = {DiffuseModel::isotropic, DiffuseModel::hay_davies, DiffuseModel::perez_1990};
constexpr double rounding = 1e-9;  // relative: sums of a few thousand hours in another order
// Single precision: 6e-8 of at most 1,500 W/m2 in each of some five operations.
constexpr double single_precision_w_m2 = 1e-3;

double plane_sum(const PreparedYear& year, DiffuseModel model, double tilt, double azimuth, double sky_view = 1.0) {
    PlaneInput input;
    input.tilt_deg = tilt;
    input.azimuth_deg = azimuth;
    input.albedo = 0.3;
    input.model = model;
    input.sky_view = sky_view;
    return plane_year(year, input, {}).unshaded_kwh_m2;
}

// A year in which Perez' horizon and isotropic parts are often negative: no real sky, but the sums must hold.
PreparedYear harsh_year() {
    PreparedYear year = harrowmere_year();
    for (std::size_t i = 0; i < year.sun_up.size(); ++i) {
        if (!(year.sun_up[i] > 0.0)) continue;
        if (i % 3 == 0) year.horizon_perez_w_m2[i] -= 0.8 * year.diffuse_w_m2[i];
        if (i % 5 == 0) year.isotropic_perez_w_m2[i] -= 1.3 * year.diffuse_w_m2[i];
    }
    return year;
}

TEST(Orientation, EqualsThePlaneYearForEveryDirection) {
    for (const PreparedYear& year : {harrowmere_year(), harsh_year()}) {
        for (const DiffuseModel model : all_models) {
            const DaylightYear day = daylight(year, model);
            EXPECT_EQ(day.model, model);
            for (double tilt = 0.0; tilt <= 180.0; tilt += 15.0) {
                for (double azimuth = 0.0; azimuth < 360.0; azimuth += 45.0) {
                    const double expected = plane_sum(year, model, tilt, azimuth, 0.9);
                    EXPECT_NEAR(orientation_kwh_m2(day, tilt, azimuth, 0.3, 0.9), expected, rounding * expected)
                        << name_of(model) << " " << tilt << " " << azimuth;
                }
            }
        }
    }
}

TEST(OrientationGrid, EqualsThePlaneYearAtEveryTiltAndAzimuth) {
    for (const PreparedYear& year : {harrowmere_year(), harsh_year()}) {
        for (const DiffuseModel model : all_models) {
            const OrientationGrid grid =
                orientation_grid(daylight(year, model), even_steps(0, 90, 5), even_steps(0, 360, 5), 0.3, 0.9);
            ASSERT_EQ(grid.tilts_deg.size(), 19u);
            ASSERT_EQ(grid.azimuths_deg.size(), 73u);
            double worst = 0.0;
            for (std::size_t i = 0; i < grid.tilts_deg.size(); i += 3) {
                for (std::size_t k = 0; k < grid.azimuths_deg.size(); k += 4) {
                    const double expected = plane_sum(year, model, grid.tilts_deg[i], grid.azimuths_deg[k], 0.9);
                    ASSERT_NEAR(grid.at(i, k), expected, rounding * expected)
                        << name_of(model) << " " << grid.tilts_deg[i] << " " << grid.azimuths_deg[k];
                    worst = std::fmax(worst, std::fabs(grid.at(i, k) / expected - 1.0));
                }
            }
            std::printf("%s: worst %.1e\n", name_of(model), worst);
        }
    }
}

// Tilts that lean over, crowd together, repeat, stand where an hour's light just grazes, or lie outside 0..180;
// azimuths without partners, beyond a turn and negative.
TEST(OrientationGrid, TakesTiltsAndAzimuthsAsTheyCome) {
    const std::vector<double> tilts = {180.0, 0.0,   33.3,  33.300001, 33.3000010000001, 90.0, 89.999999, 135.0, 45.0,
                                       45.0,  175.0, -20.0, 200.0};
    const std::vector<double> azimuths = {
        180.0, 0.0, 360.0, 720.0, -90.0, 90.0, 17.3, 197.3, 17.30000000000001, 359.99999999999, 179.999};
    for (const PreparedYear& year : {harrowmere_year(), harsh_year()}) {
        for (const DiffuseModel model : all_models) {
            const OrientationGrid grid = orientation_grid(daylight(year, model), tilts, azimuths, 0.3);
            for (std::size_t i = 0; i < tilts.size(); ++i) {
                for (std::size_t k = 0; k < azimuths.size(); ++k) {
                    const double expected = plane_sum(year, model, tilts[i], azimuths[k]);
                    ASSERT_NEAR(grid.at(i, k), expected, rounding * expected)
                        << name_of(model) << " " << tilts[i] << " " << azimuths[k];
                }
            }
        }
    }
}

TEST(OrientationGrid, KeepsAFineGridAsExact) {
    const PreparedYear& year = harrowmere_year();
    const OrientationGrid grid =
        orientation_grid(daylight(year, DiffuseModel::hay_davies), even_steps(0, 180, 0.25), {12.0, 100.0}, 0.3);
    for (std::size_t i = 0; i < grid.tilts_deg.size(); i += 37) {
        const double expected = plane_sum(year, DiffuseModel::hay_davies, grid.tilts_deg[i], 100.0);
        EXPECT_NEAR(grid.at(i, 1), expected, rounding * expected) << grid.tilts_deg[i];
    }
}

TEST(OrientationGrid, EmptyListsAndAYearWithoutLightGiveNothing) {
    EXPECT_TRUE(orientation_grid(daylight(harrowmere_year()), {}, {180.0}, 0.2).kwh_m2.empty());
    EXPECT_TRUE(orientation_grid(daylight(harrowmere_year()), {30.0}, {}, 0.2).kwh_m2.empty());
    const OrientationGrid dark = orientation_grid(DaylightYear{}, {0.0, 30.0}, {180.0}, 0.2);
    EXPECT_EQ(dark.at(0, 0), 0.0);
    EXPECT_EQ(dark.at(1, 0), 0.0);
}

TEST(OrientationSeries, EqualsThePlaneYearHourByHour) {
    const std::vector<double> tilts = {0.0, 35.0, 90.0, 150.0, 180.0};
    const std::vector<double> azimuths = {0.0, 100.0, 180.0, 275.0};
    for (const PreparedYear& year : {harrowmere_year(), harsh_year()}) {
        for (const DiffuseModel model : all_models) {
            const DaylightHours hours = daylight_hours(year, model);
            const std::size_t count = hours.hour.size();
            std::vector<float> light(count * tilts.size() * azimuths.size());
            orientation_series(hours, tilts, azimuths, 0.3, 0.9, light);
            double worst = 0.0;
            for (std::size_t t = 0; t < tilts.size(); ++t) {
                for (std::size_t a = 0; a < azimuths.size(); ++a) {
                    PlaneInput input;
                    input.tilt_deg = tilts[t];
                    input.azimuth_deg = azimuths[a];
                    input.albedo = 0.3;
                    input.model = model;
                    input.sky_view = 0.9;
                    const PlaneYear plane = plane_year(year, input, {});
                    const float* row = &light[(t * azimuths.size() + a) * count];
                    std::size_t next = 0;
                    for (std::size_t i = 0; i < year.sun_up.size(); ++i) {
                        const double expected = plane.beam_w_m2[i] + plane.sky_diffuse_w_m2[i] + plane.ground_w_m2[i];
                        const bool kept = next < count && hours.hour[next] == i;
                        const double found = kept ? static_cast<double>(row[next++]) : 0.0;
                        worst = std::fmax(worst, std::fabs(found - expected));
                    }
                    ASSERT_EQ(next, count);
                }
            }
            EXPECT_LT(worst, single_precision_w_m2) << name_of(model);
            std::printf("%s: worst %.1e W/m2\n", name_of(model), worst);
        }
    }
}

}  // namespace orientation_test
}  // namespace wg::sky
