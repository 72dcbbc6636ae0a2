// Readers on real, public files: the data folder of the pvlib 0.9.5 wheel, fetched by tests/reference/fetch_weather.sh
// and never committed. Without it these tests skip and say so. Sums: of the files' own columns, added up from the raw
// text apart from this code.

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <iterator>

#include "core/weather/quality.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

constexpr double column_sum_kwh_m2 = 0.01;  // sums of whole watts over a year: rounding only

class RealFile : public ::testing::Test {
   protected:
    // Reads a cached file; nullopt after marking the test as skipped.
    std::string text(const std::string& name) {
        path_ = std::string(WG_CACHE_DIR) + "/weather/" + name;
        std::ifstream file(path_, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    }
    std::string path_;
};

#define READ_OR_SKIP(year, name)                                                                            \
    const std::string year##_text = text(name);                                                             \
    if (year##_text.empty()) {                                                                              \
        GTEST_SKIP() << "no " << path_ << ": run tests/reference/fetch_weather.sh to test on real weather"; \
    }                                                                                                       \
    const Result<Year> year##_result = read_any(year##_text, name);                                         \
    ASSERT_TRUE(year##_result) << text_of(year##_result.problems());                                        \
    const Year& year = year##_result.value()

TEST_F(RealFile, Tmy3OfGreensboro) {
    READ_OR_SKIP(year, "tmy3_greensboro.csv");
    EXPECT_EQ(year.format, "TMY3");
    EXPECT_EQ(year.latitude_deg, 36.1);
    EXPECT_EQ(year.longitude_deg, -79.95);
    EXPECT_EQ(year.utc_offset_h, -5.0);
    EXPECT_TRUE(year.remarks.empty());
    const QualityReport report = assess(year);
    EXPECT_NEAR(report.global_year_kwh_m2, 1566.203, column_sum_kwh_m2);
    EXPECT_EQ(report.hours_light_below_horizon, 0);
    EXPECT_LT(report.hours_closure_off, 5);
    EXPECT_NEAR(report.best_shift_min, 0.0, 5.0);
    EXPECT_NEAR(report.closure->minute, 30.0, 1.0);
    EXPECT_TRUE(report.remarks.empty());
}

TEST_F(RealFile, EpwOfAmsterdam) {
    READ_OR_SKIP(year, "epw_amsterdam.epw");
    EXPECT_EQ(year.format, "EPW");
    EXPECT_EQ(year.sky_long_wave_w_m2.size(), 8760u);
    const QualityReport report = assess(year);
    EXPECT_NEAR(report.global_year_kwh_m2, 982.481, column_sum_kwh_m2);
    EXPECT_NEAR(report.air_mean_year_c, 10.0, 0.1);
    EXPECT_NEAR(report.best_shift_min, 0.0, 5.0);
    EXPECT_TRUE(report.remarks.empty());
}

TEST_F(RealFile, TypicalYearAsCsvAndAsEpwTellTheSameStory) {
    READ_OR_SKIP(csv, "pvgis_45n_8e.csv");
    READ_OR_SKIP(epw, "pvgis_45n_8e.epw");
    EXPECT_EQ(csv.format, "PVGIS TMY");
    EXPECT_EQ(epw.format, "EPW");
    // The EPW writes UTC hours under UTC+1: the light gives it away, and both end at the same rows and minute.
    EXPECT_NEAR(csv.sun_minute, 10.0, 1.0);
    EXPECT_NEAR(epw.sun_minute, csv.sun_minute, 1.0);
    for (std::size_t i = 0; i < 8760; ++i) {
        ASSERT_NEAR(csv.global_w_m2[i], epw.global_w_m2[i], 0.01) << i;
        ASSERT_NEAR(csv.air_c[i], epw.air_c[i], 0.01) << i;
    }
    EXPECT_EQ(assess(csv).hours_light_below_horizon, 0);
}

TEST_F(RealFile, Tmy3OfAnIslandInTheFarNorthWest) {
    READ_OR_SKIP(year, "tmy3_sand_point.csv");
    const QualityReport report = assess(year);
    EXPECT_NEAR(report.global_year_kwh_m2, 829.2, 0.1);
    EXPECT_TRUE(report.remarks.empty());
}

TEST_F(RealFile, TimeSeriesInTmy3FormWithGapsInItsColumns) {
    // No dew point, no pressure, a misspelt column name, the last stamp in the next year, a byte that is not UTF-8.
    READ_OR_SKIP(year, "tmy3_burlington_timeseries.csv");
    EXPECT_EQ(year.longitude_deg, -73.205);
    EXPECT_GE(year.remarks.size(), 2u);
    EXPECT_TRUE(assess(year).remarks.empty());
    EXPECT_TRUE(year.sky_cover.empty());
}

}  // namespace
}  // namespace wg::weather
