// Sky temperature worked out from humidity and cloud against the long-wave of real files (fetched, see
// fetch_weather.sh).

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace {

// Comparisons of such formulas with measured hours find biases of a few kelvin and a scatter of 4 to 9 K, most of it
// from the cloud (common experience, no single source).
constexpr double largest_bias_k = 4.0;
constexpr double largest_scatter_k = 9.0;

class LongWave : public ::testing::TestWithParam<const char*> {};

TEST_P(LongWave, OfTheFormulaIsNearTheFiles) {
    const std::string path = std::string(WG_CACHE_DIR) + "/weather/" + GetParam();
    const std::string text = text_of_file(path);
    if (text.empty()) GTEST_SKIP() << "no " << path << ": run tests/reference/fetch_weather.sh to test on real weather";
    weather::Year year = weather::read_any(text, path).value();
    const PreparedYear from_file = prepare(year);
    ASSERT_TRUE(from_file.sky_temperature_measured);
    year.sky_long_wave_w_m2.clear();
    for (const bool with_cover : {true, false}) {
        if (!with_cover) year.sky_cover.clear();
        const PreparedYear formula = prepare(year);
        double bias = 0.0;
        double square = 0.0;
        for (std::size_t i = 0; i < 8760; ++i) {
            const double off = formula.sky_temperature_k[i] - from_file.sky_temperature_k[i];
            bias += off / 8760.0;
            square += off * off / 8760.0;
        }
        std::printf("%s, %s: bias %.2f K, root mean square %.2f K\n", GetParam(),
                    with_cover ? "as the file has it" : "cloud from light", bias, std::sqrt(square));
        EXPECT_LT(std::fabs(bias), largest_bias_k);
        EXPECT_LT(std::sqrt(square), largest_scatter_k);
    }
}

INSTANTIATE_TEST_SUITE_P(RealFiles, LongWave, ::testing::Values("pvgis_45n_8e.csv", "epw_amsterdam.epw"),
                         [](const auto& file) { return std::string(file.param).substr(0, 5); });

}  // namespace
}  // namespace wg::sky
