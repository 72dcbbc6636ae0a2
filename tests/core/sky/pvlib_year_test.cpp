// A real weather year against pvlib with the same models and the same sun.
// Reference: tests/reference/pvlib_values.json (pvlib 0.9.5; made by pvlib_year.py, which states the convention).

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace pvlib_year_test {

constexpr double position_deg = 0.001;  // wanted: 0.01; the moments themselves differ by up to 0.1 s at sunrise
constexpr double year_share = 1e-5;     // wanted: 0.1 %; same models and sun leave rounding and 0.1 s of sunrise
constexpr double hour_share = 1e-4;     // wanted: 0.1 % + 0.1 W/m2 an hour
constexpr double hour_w_m2 = 0.01;

DiffuseModel model_of(const std::string& name) {
    if (name == "isotropic") return DiffuseModel::isotropic;
    return name == "haydavies" ? DiffuseModel::hay_davies : DiffuseModel::perez_1990;
}

class PvlibYear : public ::testing::Test {
   protected:
    void SetUp() override {
        std::ifstream file(std::string(WG_TESTS_DIR) + "/reference/pvlib_values.json");
        ASSERT_TRUE(file) << "committed reference values are missing";
        values_ = nlohmann::json::parse(file)["tmy3"];
        const std::string path = std::string(WG_CACHE_DIR) + "/weather/tmy3_greensboro.csv";
        const std::string text = text_of_file(path);
        if (text.empty())
            GTEST_SKIP() << "no " << path << ": run tests/reference/fetch_weather.sh to test on real weather";
        const Result<weather::Year> year = weather::read_tmy3(text, path);
        ASSERT_TRUE(year) << text_of(year.problems());
        year_ = prepare(year.value());
    }
    nlohmann::json values_;
    PreparedYear year_;
};

TEST_F(PvlibYear, SunOfTheHoursStandsWherePvlibPutsIt) {
    const auto& hours = values_["sampled_hours"];
    double worst = 0.0;
    for (std::size_t k = 0; k < hours.size(); ++k) {
        const auto i = hours[k].get<std::size_t>();
        const double zenith = degrees(std::acos(year_.sun_up[i]));
        const double azimuth = wrap_360(degrees(std::atan2(year_.sun_east[i], year_.sun_north[i])));
        const double off =
            angular_separation_deg(zenith, azimuth, values_["apparent_zenith_deg"][k], values_["azimuth_deg"][k]);
        EXPECT_LT(off, position_deg) << "hour " << i;
        worst = std::fmax(worst, off);
    }
    std::printf("worst separation %.1e deg over %zu hours\n", worst, hours.size());
}

TEST_F(PvlibYear, YearsLightOnPlanesEqualsPvlib) {
    double worst = 0.0;
    int planes = 0;
    for (const auto& row : values_["plane_year"]) {
        PlaneInput input;
        input.tilt_deg = row["tilt_deg"];
        input.azimuth_deg = row["azimuth_deg"];
        input.albedo = values_["albedo"];
        input.model = model_of(row["model"]);
        const double expected = row["kwh_m2"];
        const double off = plane_year(year_, input, {}).total_kwh_m2 / expected - 1.0;
        EXPECT_LT(std::fabs(off), year_share) << row.dump();
        worst = std::fmax(worst, std::fabs(off));
        ++planes;
    }
    EXPECT_GE(planes, 20);
    std::printf("worst deviation of a year %.1e over %d planes\n", worst, planes);
}

TEST_F(PvlibYear, SingleHoursEqualPvlib) {
    const auto& hours = values_["sampled_hours"];
    double worst_w = 0.0;
    for (const auto& row : values_["plane_hours"]) {
        PlaneInput input;
        input.tilt_deg = row["tilt_deg"];
        input.azimuth_deg = row["azimuth_deg"];
        input.albedo = values_["albedo"];
        input.model = model_of(row["model"]);
        const PlaneYear plane = plane_year(year_, input, {});
        for (std::size_t k = 0; k < hours.size(); ++k) {
            const auto i = hours[k].get<std::size_t>();
            const double light = plane.beam_w_m2[i] + plane.sky_diffuse_w_m2[i] + plane.ground_w_m2[i];
            const double expected = row["w_m2"][k];
            EXPECT_NEAR(light, expected, hour_share * expected + hour_w_m2) << row["model"] << " hour " << i;
            worst_w = std::fmax(worst_w, std::fabs(light - expected));
        }
    }
    std::printf("worst deviation of an hour %.2e W/m2\n", worst_w);
}

}  // namespace pvlib_year_test
}  // namespace wg::sky
