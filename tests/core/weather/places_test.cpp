// The built-in table of monthly means against physics, against itself and against the files that some rows come from.

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <numeric>
#include <set>

#include "climate_fixture.h"
#include "core/weather/humidity.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

double mean(const std::array<double, 12>& months) {
    return std::accumulate(months.begin(), months.end(), 0.0) / 12.0;
}

/// 1..12
int highest_month(const std::array<double, 12>& months) {
    return static_cast<int>(std::max_element(months.begin(), months.end()) - months.begin()) + 1;
}

TEST(Places, AtLeastSixtyOverAllContinentsAndHeights) {
    EXPECT_GE(places().size(), 60U);
    const auto count = [](auto fits) { return std::count_if(places().begin(), places().end(), fits); };
    EXPECT_GE(count([](const Climate& c) { return c.latitude_deg < 0.0; }), 15);
    EXPECT_GE(count([](const Climate& c) { return std::fabs(c.latitude_deg) < 23.4; }), 15);
    EXPECT_GE(count([](const Climate& c) { return c.altitude_m > 1500.0; }), 5);
    EXPECT_GE(count([](const Climate& c) { return c.latitude_deg > 60.0; }), 4);
    std::set<std::string> countries;
    for (const Climate& c : places()) {
        EXPECT_EQ(c.country.size(), 2U) << c.id;
        EXPECT_EQ(c.id.rfind("place:", 0), 0U) << c.id;
        EXPECT_FALSE(c.invented);
        countries.insert(c.country);
    }
    EXPECT_GE(countries.size(), 40U);
}

TEST(Places, EachRowSaysWhereItsFiguresAreFrom) {
    for (const Climate& c : places()) {
        const bool read = c.source.find(", read in ") != std::string::npos;
        const bool memory = c.source == "from memory, approximate";
        EXPECT_TRUE(read != memory) << c.id << ": " << c.source;
    }
}

TEST(Places, NoneIsTheInventedTown) {
    const Climate town = climate_from_json(resource_text("climates/harrowmere.json"), "harrowmere.json").value();
    for (const Climate& c : places()) {
        EXPECT_NE(c.label, town.label);
        EXPECT_GT(std::hypot(c.latitude_deg - town.latitude_deg, c.longitude_deg - town.longitude_deg), 0.3) << c.id;
    }
}

// 0.2 to 0.8: a month's mean clearness at the dullest and the clearest inhabited places; from 0.15 in the low sun of
// high latitudes. Where hardly any sun is left above the horizon the quotient means nothing.
TEST(Places, ClearnessOfEachMonthIsPossible) {
    for (const Climate& c : places()) {
        const std::array<double, 12> outside = extraterrestrial_kwh_m2_day(sun_of(c));
        for (std::size_t m = 0; m < 12; ++m) {
            if (outside[m] < 0.3) {
                EXPECT_LE(c.global_kwh_m2_day[m], 0.8 * outside[m]) << c.id << " month " << m + 1;
                continue;
            }
            const double clearness = c.global_kwh_m2_day[m] / outside[m];
            EXPECT_GE(clearness, std::fabs(c.latitude_deg) > 58.0 ? 0.15 : 0.2) << c.id << " month " << m + 1;
            EXPECT_LE(clearness, 0.8) << c.id << " month " << m + 1;
        }
    }
}

TEST(Places, BrightAndWarmMonthsAreThoseOfTheHemisphere) {
    for (const Climate& c : places()) {
        if (std::fabs(c.latitude_deg) < 30.0) continue;  // rainy seasons rule nearer to the equator
        const int half_year = c.latitude_deg < 0.0 ? 6 : 0;
        const auto northern = [&](int month) { return (month - 1 + half_year) % 12 + 1; };
        const int brightest = northern(highest_month(c.global_kwh_m2_day));
        const int warmest = northern(highest_month(c.air_mean_c));
        // Wide enough for the rains of June about Tokyo and the monsoon of July in Arizona.
        EXPECT_TRUE(brightest >= 5 && brightest <= 8) << c.id << " brightest " << brightest;
        EXPECT_TRUE(warmest >= 6 && warmest <= 9) << c.id << " warmest " << warmest;
    }
}

// A rule of thumb for the mean of the year, common practice, no published source: 28 C at the equator, less with the
// square of latitude, 6.5 K a kilometre (the standard atmosphere's lapse). Oceans and continents move it by up to 12 K.
TEST(Places, TemperatureFitsLatitudeAndHeight) {
    for (const Climate& c : places()) {
        const double expected = 28.0 - 0.0065 * c.latitude_deg * c.latitude_deg - 6.5e-3 * c.altitude_m;
        EXPECT_NEAR(mean(c.air_mean_c), expected, 12.0) << c.id;
    }
}

TEST(Places, DewPointNeverPassesThatOfTheWarmestSeas) {
    for (const Climate& c : places()) {
        for (std::size_t m = 0; m < 12; ++m) {
            EXPECT_LT(dew_point_c(c.air_mean_c[m], c.relative_humidity[m]), 27.0) << c.id << " month " << m + 1;
            EXPECT_GT(c.air_daily_swing_k[m], 2.0) << c.id;
        }
    }
}

TEST(Places, UtcOffsetIsThatOfTheLongitudeWithinTwoAndAHalfHours) {
    for (const Climate& c : places())
        EXPECT_NEAR(c.utc_offset_h, c.longitude_deg / 15.0, 2.5) << c.id;
}

// Yearly sums, kWh/m2: Bogota, Tucson and Tokyo differ in kind; figures of the rows' own files, so that a slip of the
// table's columns shows.
TEST(Places, YearlySumsAreThoseOfTheFilesReadForThem) {
    const auto sum = [](const std::string& id) {
        double kwh = 0.0;
        for (int month = 1; month <= 12; ++month) {
            kwh += place(id).global_kwh_m2_day[static_cast<std::size_t>(month) - 1] *
                   (first_hour_of_month(month + 1) - first_hour_of_month(month)) / 24.0;
        }
        return kwh;
    };
    EXPECT_NEAR(sum("place:bogota"), 1618.0, 3.0);
    EXPECT_NEAR(sum("place:tucson"), 2002.0, 3.0);
    EXPECT_NEAR(sum("place:hyakuri"), 1307.0, 3.0);
    // EU 812/2013 names Strasbourg, Helsinki and Athens as its three climates without horizontal sums; the European
    // range of yearly sums, 700 to 1,900 kWh/m2, is common knowledge.
    EXPECT_NEAR(sum("place:helsinki"), 947.0, 3.0);
}

TEST(Places, RowsOfTheFetchedFilesAreTheFilesMeans) {
    const std::filesystem::path folder = std::filesystem::path(WG_CACHE_DIR) / "weather";
    const std::array<std::pair<const char*, const char*>, 3> pairs = {{{"place:amsterdam", "epw_amsterdam.epw"},
                                                                       {"place:greensboro", "tmy3_greensboro.csv"},
                                                                       {"place:sand-point", "tmy3_sand_point.csv"}}};
    if (!std::filesystem::exists(folder / pairs[0].second))
        GTEST_SKIP() << "no weather files: run tests/reference/fetch_weather.sh";
    for (const auto& [id, name] : pairs) {
        std::ifstream file(folder / name, std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        const Result<Year> year = read_any(text, name);
        ASSERT_TRUE(year) << text_of(year.problems());
        const Climate means = climate_of(year.value(), "x");
        for (std::size_t m = 0; m < 12; ++m) {
            EXPECT_NEAR(place(id).global_kwh_m2_day[m], means.global_kwh_m2_day[m], 0.03) << id << " " << m;
            EXPECT_NEAR(place(id).air_mean_c[m], means.air_mean_c[m], 0.15) << id << " " << m;
            EXPECT_NEAR(place(id).air_daily_swing_k[m], means.air_daily_swing_k[m], 0.3) << id << " " << m;
            EXPECT_NEAR(place(id).wind_m_s[m], means.wind_m_s[m], 0.1) << id << " " << m;
            EXPECT_NEAR(place(id).relative_humidity[m], means.relative_humidity[m], 0.04) << id << " " << m;
        }
    }
}

TEST(Places, EveryPlaceGivesAWholeYear) {
    for (const Climate& c : places()) {
        const Result<Year> made = synthesise(c);
        EXPECT_TRUE(made) << text_of(made.problems());
        if (!made) continue;
        const Year& year = made.value();
        const sun::YearSun sun = sun_of(c);
        std::array<double, 12> global{};
        std::array<double, 12> air{};
        for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
            const auto m = static_cast<std::size_t>(month_of_hour(static_cast<int>(i))) - 1;
            global[m] += year.global_w_m2[i];
            air[m] += year.air_c[i];
            const double closed = year.diffuse_w_m2[i] + year.beam_normal_w_m2[i] * std::fmax(0.0, sun.up[i]);
            ASSERT_NEAR(closed, year.global_w_m2[i], 1e-9) << c.id << " hour " << i;
            ASSERT_TRUE(year.global_w_m2[i] >= 0.0 && year.global_w_m2[i] <= 1400.0) << c.id << " hour " << i;
            ASSERT_TRUE(year.beam_normal_w_m2[i] >= 0.0 && year.beam_normal_w_m2[i] <= 1300.0) << c.id;
            ASSERT_GE(year.diffuse_w_m2[i], 0.0) << c.id;
            ASSERT_TRUE(year.air_c[i] >= -65.0 && year.air_c[i] <= 55.0) << c.id << " " << year.air_c[i];
            ASSERT_TRUE(year.dew_point_c[i] >= -80.0 && year.dew_point_c[i] <= year.air_c[i]) << c.id;
            ASSERT_TRUE(year.wind_m_s[i] >= 0.0 && year.wind_m_s[i] <= 45.0) << c.id << " " << year.wind_m_s[i];
            ASSERT_TRUE(year.pressure_pa[i] >= 50000.0 && year.pressure_pa[i] <= 108000.0) << c.id;
        }
        for (int month = 1; month <= 12; ++month) {
            const auto m = static_cast<std::size_t>(month) - 1;
            const double hours = first_hour_of_month(month + 1) - first_hour_of_month(month);
            ASSERT_NEAR(global[m] / hours, 1e3 * c.global_kwh_m2_day[m] / 24.0, 1e-9 * 500.0) << c.id;
            ASSERT_NEAR(air[m] / hours, c.air_mean_c[m], 1e-9 * 40.0) << c.id;
        }
    }
}

}  // namespace
}  // namespace wg::weather
