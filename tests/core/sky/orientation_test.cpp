#include "core/sky/orientation.h"

#include <gtest/gtest.h>

#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace {

TEST(Orientation, EqualsThePlaneYearForEveryDirection) {
    const PreparedYear& year = harrowmere_year();
    for (const DiffuseModel model : {DiffuseModel::hay_davies, DiffuseModel::isotropic}) {
        const DaylightYear day = daylight(year, model);
        EXPECT_EQ(day.model, model);
        for (double tilt = 0.0; tilt <= 180.0; tilt += 30.0) {
            for (double azimuth = 0.0; azimuth < 360.0; azimuth += 45.0) {
                PlaneInput input;
                input.tilt_deg = tilt;
                input.azimuth_deg = azimuth;
                input.albedo = 0.3;
                input.model = model;
                input.sky_view = 0.9;
                EXPECT_NEAR(orientation_kwh_m2(day, tilt, azimuth, 0.3, 0.9),
                            plane_year(year, input, {}).unshaded_kwh_m2, 1e-7)
                    << tilt << " " << azimuth;
            }
        }
    }
}

TEST(Orientation, SaysThatItDoesNotDoPerez) {
    EXPECT_EQ(daylight(harrowmere_year(), DiffuseModel::perez_1990).model, DiffuseModel::hay_davies);
}

}  // namespace
}  // namespace wg::sky
