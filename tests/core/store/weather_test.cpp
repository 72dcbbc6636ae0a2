// The firm's weather years.

#include <gtest/gtest.h>

#include <QFile>
#include <cmath>

#include "core/quantity/sha256.h"
#include "core/store/store.h"
#include "core/weather/read.h"
#include "core/weather/write_plain.h"
#include "tests/core/store/store_fixture.h"
#include "tests/core/weather/made_files.h"

namespace wg::store::test {
namespace weather_test {

using weather::Year;

const Year& year() {
    static const Year value =
        weather::read_epw(weather::epw_text(weather::made_year(47.4, 9.2, 520.0, 1.0)), "made.epw").value();
    return value;
}

bool mentions(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

TEST_P(EachStore, AWeatherYearComesBackBitForBit) {
    Year odd = year();
    for (double& air : odd.air_c)
        air += 1.0 / 3.0;
    odd.source = "\xC3\x84rger \xE2\x82\xAC, \"quoted\"; # x";
    odd.remarks = {"filled", "moved"};
    odd.invented = true;
    odd.sun_minute = 10.25;
    odd.sky_cover.clear();
    WeatherYearRow row;
    {
        const auto store = open();
        const Result<WeatherYearRow> added = store->add_weather_year(odd, "Works' roof", at(3));
        ASSERT_TRUE(added.ok()) << text_of(added.problems());
        row = added.value();
    }
    EXPECT_EQ(row.id, "year:" + row.sha256.substr(0, 16));
    EXPECT_EQ(row.sha256, sha256_hex(weather::write_plain(odd)));
    EXPECT_EQ(row.imported_at, "2027-06-21T12:03:00Z");
    const auto store = open();
    const Result<Year> read = store->weather_year(row.id);
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    const Year& back = read.value();
    EXPECT_EQ(back.global_w_m2, odd.global_w_m2);
    EXPECT_EQ(back.beam_normal_w_m2, odd.beam_normal_w_m2);
    EXPECT_EQ(back.diffuse_w_m2, odd.diffuse_w_m2);
    EXPECT_EQ(back.air_c, odd.air_c);
    EXPECT_EQ(back.dew_point_c, odd.dew_point_c);
    EXPECT_EQ(back.wind_m_s, odd.wind_m_s);
    EXPECT_EQ(back.pressure_pa, odd.pressure_pa);
    EXPECT_EQ(back.sky_long_wave_w_m2, odd.sky_long_wave_w_m2);
    EXPECT_TRUE(back.sky_cover.empty());
    EXPECT_EQ(back.source, odd.source);
    EXPECT_EQ(back.format, "EPW");
    EXPECT_EQ(back.remarks, odd.remarks);
    EXPECT_TRUE(back.invented);
    EXPECT_EQ(back.sun_minute, 10.25);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, TheListShowsWhatEachYearIs) {
    const auto store = open();
    Year other = year();
    other.latitude_deg = -35.0;
    other.air_c[0] += 1.0;
    ASSERT_TRUE(store->add_weather_year(year(), "Zed", at(1)).ok());
    ASSERT_TRUE(store->add_weather_year(other, "", at(2)).ok());
    const std::vector<WeatherYearRow> rows = store->weather_years().value();
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].label, year().source);
    EXPECT_EQ(rows[0].latitude_deg, -35.0);
    EXPECT_EQ(rows[1].label, "Zed");
    EXPECT_EQ(rows[1].latitude_deg, 47.4);
    EXPECT_EQ(rows[1].longitude_deg, 9.2);
    EXPECT_EQ(rows[1].altitude_m, 520.0);
    EXPECT_EQ(rows[1].utc_offset_h, 1.0);
    double global = 0.0;
    for (const double g : year().global_w_m2)
        global += 1e-3 * g;
    EXPECT_NEAR(rows[1].global_kwh_m2, global, 1e-9);
    EXPECT_NEAR(rows[1].air_mean_c, 10.0, 0.1);
}

TEST_P(EachStore, TheSameYearIsKeptOnce) {
    const auto store = open();
    const WeatherYearRow first = store->add_weather_year(year(), "first", at(1)).value();
    const WeatherYearRow second = store->add_weather_year(year(), "second", at(9)).value();
    EXPECT_EQ(second.id, first.id);
    EXPECT_EQ(second.label, "first");
    EXPECT_EQ(second.imported_at, first.imported_at);
    EXPECT_EQ(store->weather_years().value().size(), 1U);
    // What was read back is still the same year.
    EXPECT_EQ(store->add_weather_year(store->weather_year(first.id).value(), "third", at(9)).value().id, first.id);
}

TEST_P(EachStore, AYearThatCannotComeBackIsRefused) {
    const auto store = open();
    Year broken = year();
    broken.air_c[100] = 75.0;
    EXPECT_TRUE(mentions(text_of(store->add_weather_year(broken, "", at(1)).problems()), "outside -70 to 60"));
    broken = year();
    broken.global_w_m2[100] = std::nan("");
    EXPECT_FALSE(store->add_weather_year(broken, "", at(1)).ok());
    broken = year();
    broken.air_c.pop_back();
    EXPECT_FALSE(store->add_weather_year(broken, "", at(1)).ok());
    broken = year();
    broken.dew_point_c[5] = broken.air_c[5] + 1.0;
    EXPECT_TRUE(mentions(text_of(store->add_weather_year(broken, "", at(1)).problems()), "does not come back"));
    EXPECT_FALSE(store->add_weather_year(year(), std::string(201, 'x'), at(1)).ok());
    EXPECT_FALSE(store->add_weather_year(year(), "\xff", at(1)).ok());
    EXPECT_TRUE(store->weather_years().value().empty());
}

TEST_P(EachStore, AYearInUseIsNotRemoved) {
    const auto store = open();
    const std::string year_id = store->add_weather_year(year(), "Roof", at(1)).value().id;
    Job job = sample_job();
    job.weather = year_id;
    job = store->save(job, at(2)).value();
    const Result<bool> refused = store->remove_weather_year(year_id);
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(mentions(text_of(refused.problems()), "is used by 1 job: " + job.number))
        << text_of(refused.problems());
    ASSERT_TRUE(store->remove(job.id, at(3)).ok());
    EXPECT_FALSE(store->remove_weather_year(year_id).ok()) << "a removed job may come back";
    ASSERT_TRUE(store->restore(job.id).ok());
    // The id in a note, or in an earlier revision, holds nothing back.
    job = store->load(job.id).value();
    job.weather = "harrowmere";
    job.notes = "was " + year_id;
    ASSERT_TRUE(store->save(job, at(4)).ok());
    ASSERT_TRUE(store->remove_weather_year(year_id).ok());
    EXPECT_TRUE(store->weather_years().value().empty());
    EXPECT_TRUE(mentions(text_of(store->weather_year(year_id).problems()), "there is no weather year"));
    EXPECT_FALSE(store->remove_weather_year(year_id).ok());
}

TEST_P(EachStore, ADamagedWeatherYearIsRefusedAndFoundByTheCheck) {
    std::string year_id;
    {
        const auto store = open();
        year_id = store->add_weather_year(year(), "Roof", at(1)).value().id;
    }
    if (dialect_ == Dialect::sqlite) {
        QByteArray bytes = bytes_of(path());
        const qsizetype place = bytes.indexOf("2027-06-21 12:00,");
        ASSERT_GT(place, 0);
        bytes[place + 17] = bytes[place + 17] == '9' ? '8' : '9';
        write(path(), bytes);
    } else {
        EXPECT_EQ(sql(path(), "ALTER TABLE weather_year DISABLE TRIGGER USER"), "");
        EXPECT_EQ(sql(path(), "UPDATE weather_year SET content = set_byte(content, 900, 57)"), "");
    }
    const auto store = open();
    ASSERT_NE(store, nullptr);
    EXPECT_TRUE(mentions(text_of(store->weather_year(year_id).problems()), "no longer has the hash"));
    EXPECT_TRUE(mentions(store->check().value(), "weather year 'Roof' no longer has its hash"));
    EXPECT_FALSE(store->backup(file("copy.db")).ok());
    // It can be taken out and imported again.
    ASSERT_TRUE(store->remove_weather_year(year_id).ok());
    EXPECT_EQ(store->add_weather_year(year(), "Roof", at(2)).value().id, year_id);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ContentsThatAreNoWeatherYearAreRefusedInWords) {
    // Written into the file by other hands, with a hash that fits.
    { const auto store = open(); }
    for (const std::string& content : {std::string("rubbish"), std::string(),
                                       std::string("# x\ntime,global_w_m2,air_c\n"), std::string("\0\xff", 2)}) {
        const std::string hash = sha256_hex(content);
        const QString hex = QString(QByteArray(content.data(), static_cast<qsizetype>(content.size())).toHex());
        const QString hash_text = QString::fromStdString(hash);
        EXPECT_EQ(
            sql(path(), QStringLiteral("INSERT INTO weather_year VALUES ('year:%1', '%2', 'l', 's', 'f', 0, 0, 0, "
                                       "0, 0, 0, 0, 't', %3)")
                            .arg(hash_text.left(16), hash_text, bytes_literal(hex))),
            "");
        const auto store = open();
        const Result<Year> read = store->weather_year("year:" + hash.substr(0, 16));
        ASSERT_FALSE(read.ok());
        EXPECT_FALSE(read.problems().front().what.empty());
    }
}

TEST_P(EachStore, StoredYearsAreNeitherChangedNorReplacedNorGivenAnotherId) {
    {
        const auto store = open();
        ASSERT_TRUE(store->add_weather_year(year(), "Roof", at(1)).ok());
    }
    EXPECT_TRUE(mentions(sql(path(), "UPDATE weather_year SET content = " + bytes_literal("00")), "never changed"));
    EXPECT_TRUE(
        dialect_ == Dialect::sqlite
            ? mentions(sql(path(), "INSERT OR REPLACE INTO weather_year SELECT * FROM weather_year"), "never replaced")
            : mentions(sql(path(),
                           "INSERT INTO weather_year SELECT * FROM weather_year ON CONFLICT (id) DO UPDATE SET "
                           "content = EXCLUDED.content"),
                       "never changed"));
    EXPECT_EQ(sql(path(), "UPDATE weather_year SET label = 'Other name'"), "");
    EXPECT_EQ(open()->weather_years().value().front().label, "Other name");
}

TEST_P(EachStore, ABackupCarriesTheWeatherYears) {
    const auto store = open();
    const std::string year_id = store->add_weather_year(year(), "Roof", at(1)).value().id;
    ASSERT_TRUE(store->backup(file("copy.db")).ok());
    EXPECT_EQ(open(file("copy.db"))->weather_year(year_id).value().global_w_m2, year().global_w_m2);
}

}  // namespace weather_test
}  // namespace wg::store::test
