#include "core/aftercare/drift.h"

#include <gtest/gtest.h>

namespace wg::aftercare {
namespace drift_test {
namespace {

using K = ReadingKind;

Reading reading(K kind, const char* taken_at, double value, Occasion occasion = Occasion::fitting) {
    static int next = 0;
    Reading made;
    made.id = std::to_string(++next);
    made.kind = kind;
    made.taken_at = taken_at;
    made.value = value;
    made.occasion = occasion;
    return made;
}

const DriftRow* row_of(const std::vector<DriftRow>& rows, K kind) {
    for (const DriftRow& row : rows)
        if (row.kind == kind) return &row;
    return nullptr;
}

/// Suction gas is 8 K under the air, whatever else.
DayBands eight_below_air(const DayConditions& day) {
    DayBands out;
    if (day.enough())
        out.bands.push_back({K::suction_temperature, {*day.air_c - 10.0, *day.air_c - 8.0, *day.air_c - 6.0}});
    return out;
}

TEST(Drift, weather_is_taken_out_where_the_model_can) {
    const std::vector<Reading> record = {
        reading(K::outdoor_temperature, "2027-06-01T12:00:00Z", 20.0),
        reading(K::water_temperature, "2027-06-01T12:00:00Z", 30.0),
        reading(K::suction_temperature, "2027-06-01T12:00:00Z", 11.0),
        reading(K::outdoor_temperature, "2028-01-01T12:00:00Z", 0.0, Occasion::service),
        reading(K::water_temperature, "2028-01-01T12:00:00Z", 30.0, Occasion::service),
        reading(K::suction_temperature, "2028-01-01T12:00:00Z", -9.5, Occasion::service)};
    const auto rows = drift(record, eight_below_air);
    const DriftRow* suction = row_of(rows, K::suction_temperature);
    ASSERT_NE(suction, nullptr);
    EXPECT_NEAR(*suction->change, -20.5, 1e-12);
    EXPECT_NEAR(*suction->beyond_model, -0.5, 1e-12);
    EXPECT_EQ(suction->drift, Drift::steady);
    EXPECT_EQ(suction->points[1].occasion, Occasion::service);
    // The same 20 K colder without an air reading on the second day cannot be told from the weather.
    std::vector<Reading> blind = record;
    blind.erase(blind.begin() + 3);
    EXPECT_EQ(row_of(drift(blind, eight_below_air), K::suction_temperature)->drift, Drift::cannot_tell);
    std::vector<Reading> colder = record;
    colder.back().value = -13.0;
    EXPECT_EQ(row_of(drift(colder, eight_below_air), K::suction_temperature)->drift, Drift::moved);
}

TEST(Drift, figures_that_weather_does_not_touch_have_a_usual_change) {
    const auto two = [](double first, double second) {
        return drift({reading(K::cold_pressure, "2027-06-01T12:00:00Z", first),
                      reading(K::cold_pressure, "2028-06-01T12:00:00Z", second, Occasion::service)},
                     {});
    };
    EXPECT_EQ(two(3.0, 3.4)[0].drift, Drift::steady);
    EXPECT_EQ(two(3.0, 3.6)[0].drift, Drift::moved);
    EXPECT_EQ(two(3.0, 2.4)[0].drift, Drift::moved);
}

TEST(Drift, the_last_reading_of_a_day_and_corrections_count) {
    std::vector<Reading> record = {reading(K::cold_pressure, "2027-06-01T12:00:00Z", 9.0),
                                   reading(K::cold_pressure, "2027-06-01T13:00:00Z", 3.0),
                                   reading(K::cold_pressure, "2028-06-01T13:00:00Z", 7.0)};
    record.push_back(reading(K::cold_pressure, "2028-06-02T13:00:00Z", 3.1));
    record.back().corrects_id = record[2].id;
    const auto rows = drift(record, {});
    ASSERT_EQ(rows.size(), 1U);
    ASSERT_EQ(rows[0].points.size(), 2U);
    EXPECT_DOUBLE_EQ(rows[0].points[0].read, 3.0);
    EXPECT_DOUBLE_EQ(rows[0].points[1].read, 3.1);
    EXPECT_EQ(rows[0].points[1].on, (CivilDate{2028, 6, 2}));
}

TEST(Drift, one_reading_says_nothing_yet) {
    const auto rows = drift({reading(K::supply_current, "2027-06-01T12:00:00Z", 3.0)}, {});
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].drift, Drift::single);
    EXPECT_FALSE(rows[0].change);
    EXPECT_TRUE(drift({}, {}).empty());
    EXPECT_TRUE(drift({reading(K::remark, "2027-06-01T12:00:00Z", 3.0)}, {}).empty());
}

TEST(Drift, every_kind_has_a_range_and_a_unit) {
    for (const Measured& kind : measured_kinds()) {
        EXPECT_LT(kind.least, kind.most);
        EXPECT_NE(std::string(kind.unit), "");
        EXPECT_TRUE(kind.of_the_day || kind.usual_change > 0.0);
        EXPECT_EQ(measured(kind.kind), &kind);
    }
    EXPECT_EQ(measured(K::remark), nullptr);
}

}  // namespace
}  // namespace drift_test
}  // namespace wg::aftercare
