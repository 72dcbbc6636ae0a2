#include "core/weather/quality.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/weather/read.h"
#include "tests/core/weather/made_files.h"

namespace wg::weather {
namespace {

// A year of cloudless sky, built without a reader so that stamps can be wrong on purpose.
Year clear_year(double latitude, double longitude, double utc_offset) {
    Year year;
    year.source = "made";
    year.format = "test";
    year.latitude_deg = latitude;
    year.longitude_deg = longitude;
    year.utc_offset_h = utc_offset;
    const sun::YearSun sun = sun::year_sun({latitude, longitude, 0.0, utc_offset, 30.0, sun::weather_sun_year});
    for (std::size_t i = 0; i < 8760; ++i) {
        const double up = std::fmax(0.0, sun.up[i]);
        const double beam = up > 0.02 ? 850.0 : 0.0;
        const double diffuse = 100.0 * up;
        year.beam_normal_w_m2.push_back(beam);
        year.diffuse_w_m2.push_back(diffuse);
        year.global_w_m2.push_back(diffuse + beam * up);
        year.air_c.push_back(10.0 - 12.0 * std::cos(2.0 * pi * static_cast<double>(i) / 8760.0) *
                                        (latitude < 0.0 ? -1.0 : 1.0));
        year.dew_point_c.push_back(0.0 < year.air_c.back() ? 0.0 : year.air_c.back());
        year.wind_m_s.push_back(3.0);
        year.pressure_pa.push_back(101325.0);
    }
    return year;
}

bool mentions(const QualityReport& report, const std::string& part) {
    return std::any_of(report.remarks.begin(), report.remarks.end(),
                       [&](const std::string& r) { return r.find(part) != std::string::npos; });
}

TEST(Quality, SoundYearHasNothingToRemark) {
    for (const double latitude : {47.0, -35.0}) {
        const QualityReport report = assess(clear_year(latitude, 15.0, 1.0));
        EXPECT_TRUE(report.remarks.empty()) << report.remarks.front();
        EXPECT_EQ(report.hours_light_below_horizon, 0);
        EXPECT_EQ(report.hours_closure_off, 0);
        EXPECT_EQ(report.hours_above_extraterrestrial, 0);
        EXPECT_NEAR(report.best_shift_min, 0.0, 1.0);
        EXPECT_NEAR(report.closure->minute, 30.0, 0.6);
    }
}

TEST(Quality, SumsAreTheSeriesSums) {
    const Year year = clear_year(47.0, 15.0, 1.0);
    const QualityReport report = assess(year);
    double global = 0.0;
    double july = 0.0;
    for (int h = 0; h < 8760; ++h) {
        global += 1e-3 * year.global_w_m2[static_cast<std::size_t>(h)];
        if (month_of_hour(h) == 7) july += 1e-3 * year.global_w_m2[static_cast<std::size_t>(h)];
    }
    EXPECT_NEAR(report.global_year_kwh_m2, global, 1e-6);
    EXPECT_NEAR(report.global_kwh_m2[6], july, 1e-9);
    EXPECT_NEAR(report.beam_horizontal_kwh_m2[6] + report.diffuse_kwh_m2[6], report.global_kwh_m2[6], 1e-6);
    EXPECT_NEAR(report.wind_mean_m_s, 3.0, 1e-9);
    EXPECT_NEAR(report.air_min_c, -2.0, 0.01);
    EXPECT_NEAR(report.air_max_c, 22.0, 0.01);
}

// Stamps shifted by whole hours: the shift is found with its sign, and the plain text says what to check.
TEST(Quality, ShiftedStampsAreFoundWithTheirSign) {
    for (const int shift : {-1, 1}) {
        Year year = clear_year(47.0, 15.0, 1.0);
        for (std::vector<double>* series : {&year.global_w_m2, &year.beam_normal_w_m2, &year.diffuse_w_m2}) {
            // Light of row i moved to row i + shift: it then stands later (or earlier) than the sun.
            std::rotate(series->begin(), series->begin() + (8760 - shift) % 8760, series->end());
        }
        const QualityReport report = assess(year);
        // Rows that come an hour late belong to a sun an hour earlier than their stamps.
        EXPECT_NEAR(report.best_shift_min, -60.0 * shift, 3.0);
        EXPECT_NEAR(report.closure->minute, 30.0 - 60.0 * shift, 1.0);
        EXPECT_TRUE(mentions(report, shift > 0 ? "minutes earlier" : "minutes later"));
        EXPECT_GT(report.hours_light_below_horizon, 50);
        EXPECT_GT(report.hours_closure_off, 500);
    }
}

TEST(Quality, WrongSignOfLongitudeIsSeen) {
    Year year = clear_year(47.0, 75.0, 5.0);
    year.longitude_deg = -75.0;
    EXPECT_TRUE(mentions(assess(year), "sign of the longitude"));
}

TEST(Quality, WrongSignOfLatitudeIsSeen) {
    Year year = clear_year(47.0, 15.0, 1.0);
    year.latitude_deg = -47.0;
    const QualityReport report = assess(year);
    EXPECT_TRUE(mentions(report, "sign of the latitude"));
    EXPECT_TRUE(mentions(report, "below the horizon"));
}

TEST(Quality, LightThatDoesNotFitTogetherIsCounted) {
    Year year = clear_year(47.0, 15.0, 1.0);
    for (std::size_t i = 0; i < 8760; ++i)
        year.diffuse_w_m2[i] += year.global_w_m2[i] > 300.0 ? 250.0 : 0.0;
    const QualityReport report = assess(year);
    EXPECT_GT(report.hours_closure_off, 1000);
    EXPECT_TRUE(mentions(report, "do not fit together"));
}

TEST(Quality, MoreLightThanAboveTheAtmosphereIsCounted) {
    Year year = clear_year(47.0, 15.0, 1.0);
    for (double& g : year.global_w_m2)
        g *= 1.7;
    const QualityReport report = assess(year);
    EXPECT_GT(report.hours_above_extraterrestrial, 1000);
    EXPECT_TRUE(mentions(report, "above the atmosphere"));
}

// ------------------------------------------------------------------------------------ hours

TEST(Quality, EveryHourHasItsFlagsAndMonthsAddUpToThem) {
    Year year = clear_year(47.0, 15.0, 1.0);
    const QualityReport sound = assess(year);
    EXPECT_EQ(sound.flags, std::vector<std::uint8_t>(8760, 0));
    const std::size_t noon = 24 * 171 + 12;  // 21 June
    year.global_w_m2[noon] = 1190.0;         // over a clean sky, under the atmosphere's light
    year.global_w_m2[noon + 24] = 1450.0;
    year.global_w_m2[noon + 36] = 30.0;  // midnight
    year.air_c[noon + 48] += 15.0;
    const QualityReport report = assess(year);
    EXPECT_TRUE(report.has(noon, Flag::above_clear_sky));
    EXPECT_FALSE(report.has(noon, Flag::above_extraterrestrial));
    EXPECT_TRUE(report.has(noon, Flag::closure_off));
    EXPECT_TRUE(report.has(noon + 24, Flag::above_extraterrestrial));
    EXPECT_TRUE(report.has(noon + 36, Flag::light_below_horizon));
    EXPECT_TRUE(report.has(noon + 48, Flag::jump));
    EXPECT_TRUE(report.has(noon + 49, Flag::jump));
    EXPECT_EQ(report.hours(Flag::jump), 2);
    for (std::size_t f = 0; f < flag_count; ++f) {
        EXPECT_EQ(report.flagged_hours[f][5], report.hours(flag_words()[f].flag)) << "all in June";
    }
    int hours = 0;
    for (const std::uint8_t bits : report.flags)
        hours += bits != 0 ? 1 : 0;
    EXPECT_EQ(hours, 5);
}

TEST(Quality, LoggersThatStoppedAreSeenInAirAndLight) {
    Year year = clear_year(47.0, 15.0, 1.0);
    for (std::size_t i = 2400; i < 2435; ++i)
        year.air_c[i] = 4.5;
    EXPECT_EQ(assess(year).hours(Flag::stuck), 0) << "files in whole degrees do that";
    year.air_c[2435] = 4.5;
    for (std::size_t i = 5002; i < 5006; ++i)
        year.global_w_m2[i - 5002 + 24 * 200 + 10] = 333.0;
    const QualityReport report = assess(year);
    EXPECT_EQ(report.hours(Flag::stuck), 40);
    EXPECT_TRUE(report.has(2435, Flag::stuck));
    EXPECT_TRUE(report.has(24 * 200 + 13, Flag::stuck));
    EXPECT_FALSE(report.has(24 * 200 + 14, Flag::stuck));
    EXPECT_TRUE(mentions(report, "Air or light stands still in 40 hours, first on 11 Apr 0 h"));
}

TEST(Quality, FlagWordsAreShortAndInTheOrderOfTheirBits) {
    for (std::size_t f = 0; f < flag_count; ++f) {
        EXPECT_EQ(static_cast<unsigned>(flag_words()[f].flag), 1U << f);
        EXPECT_LT(std::string(flag_words()[f].name).size(), 30U);
        EXPECT_LT(std::string(flag_words()[f].remedy).size(), 90U);
    }
}

// Light stamped by clocks that go forward in summer: no hour is missing or doubled, only the seasons disagree.
TEST(Quality, SummerAnHourOffWinterLooksLikeDaylightSaving) {
    for (const double latitude : {40.0, -35.0}) {
        Year year = clear_year(latitude, 15.0, 1.0);
        const Year right = year;
        const int april = first_hour_of_month(4);
        const int october = first_hour_of_month(10);
        for (int h = 1; h < 8760; ++h) {
            const bool middle_of_year = h >= april && h < october;
            if (middle_of_year != (latitude > 0.0)) continue;
            const auto i = static_cast<std::size_t>(h);
            year.global_w_m2[i] = right.global_w_m2[i - 1];
            year.beam_normal_w_m2[i] = right.beam_normal_w_m2[i - 1];
            year.diffuse_w_m2[i] = right.diffuse_w_m2[i - 1];
        }
        const QualityReport report = assess(year);
        ASSERT_TRUE(report.season_shift_min[0] && report.season_shift_min[2]);
        EXPECT_NEAR(*report.season_shift_min[latitude > 0.0 ? 2 : 0], -60.0, 3.0);
        EXPECT_NEAR(*report.season_shift_min[latitude > 0.0 ? 0 : 2], 0.0, 3.0);
        EXPECT_TRUE(mentions(report, "look like daylight saving time"));
    }
    const QualityReport report = assess(clear_year(47.0, 15.0, 1.0));
    for (const std::optional<double>& shift : report.season_shift_min)
        EXPECT_NEAR(*shift, 0.0, 1.0);
}

TEST(Quality, ZonesAcrossTheDateLineAreNoFault) {
    EXPECT_TRUE(assess(clear_year(-44.0, -176.5, 12.75)).remarks.empty());
}

TEST(Quality, DarkAndCloudyYearsDoNotPretendToKnowTheShift) {
    Year year = clear_year(47.0, 15.0, 1.0);
    for (std::size_t i = 0; i < 8760; ++i) {
        year.global_w_m2[i] = year.diffuse_w_m2[i];
        year.beam_normal_w_m2[i] = 0.0;
    }
    const QualityReport report = assess(year);
    EXPECT_EQ(report.clear_days, 0);
    EXPECT_EQ(report.best_shift_min, 0.0);
    EXPECT_FALSE(report.closure.has_value());
    EXPECT_NE(text(year, report).find("too few clear days"), std::string::npos);
}

TEST(Quality, TextShowsTwelveMonthsPlaceAndRemarks) {
    Year year = clear_year(-35.0, -15.5, -1.0);
    year.remarks.push_back("a gap was filled");
    const std::string report = text(year, assess(year));
    for (const char* part : {"Jan", "Dec", "Year", "35.000 S", "15.500 W", "a gap was filled", "UTC-1.0"}) {
        EXPECT_NE(report.find(part), std::string::npos) << part << "\n" << report;
    }
    for (const char c : report)
        EXPECT_TRUE(c == '\n' || (c >= 0x20 && c < 0x7f));
}

}  // namespace
}  // namespace wg::weather
