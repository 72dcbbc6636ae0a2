#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "tests/tools/load_reference.h"
#include "ui/common/notice_bar.h"
#include "ui/weather/weather_dialog.h"
#include "ui/weather/weather_pictures.h"

namespace wg::ui {
namespace {

constexpr int patience_ms = 20000;  ///< a year from monthly means on a busy machine

const std::shared_ptr<const plan::Reference>& reference() {
    static const auto made = std::make_shared<const plan::Reference>(test::reference());
    return made;
}

const std::shared_ptr<const YearLook>& look() {
    static const auto made = look_at(reference()->weather);
    return made;
}

WeatherDialogInput input() {
    WeatherDialogInput in;
    in.site = test::demo_job().site.location;
    in.climate_id = reference()->climates.begin()->first;
    in.in_use = reference()->weather;
    in.reference = reference();
    return in;
}

Result<std::shared_ptr<const plan::PreparedWeather>> read_demo(const QString& path) {
    if (path.endsWith(QStringLiteral("bad.csv")))
        return Problem{"bad.csv: line 3, column 7", "no number", "Correct it"};
    return reference()->weather;
}

bool settle(const WeatherDialog& dialog) {
    return QTest::qWaitFor([&dialog] { return !dialog.busy(); }, patience_ms);
}

QPushButton* button(WeatherDialog& dialog, const QString& words) {
    for (QPushButton* candidate : dialog.findChildren<QPushButton*>()) {
        if (candidate->text().contains(words)) return candidate;
    }
    return nullptr;
}

TEST(YearLookTest, sunrise_comes_before_sunset_and_light_lies_between) {
    ASSERT_EQ(look()->sunrise_h.size(), 365U);
    const weather::Year& year = look()->weather->year;
    for (std::size_t day = 0; day < 365; ++day) {
        EXPECT_LT(look()->sunrise_h[day], look()->sunset_h[day]);
        for (std::size_t hour = 0; hour < 24; ++hour) {
            if (static_cast<double>(hour) < look()->sunset_h[day] + 0.1) continue;
            EXPECT_LT(year.global_w_m2[day * 24 + hour], 5.0) << day << ' ' << hour;
        }
    }
}

TEST(WeatherPicturesTest, every_view_has_a_picture_and_words) {
    WeatherPictures pictures;
    pictures.resize(760, 520);
    pictures.show_year(nullptr);
    EXPECT_FALSE(pictures.words().isEmpty());
    pictures.show_year(look());
    using View = WeatherPictures::View;
    for (const View view :
         {View::light, View::temperature, View::months, View::clear_days, View::doubts, View::report}) {
        pictures.show_view(view);
        EXPECT_FALSE(pictures.words().isEmpty());
        EXPECT_FALSE(pictures.grab().isNull());
    }
    pictures.show_view(View::temperature);
    EXPECT_EQ(pictures.carpet().values, &look()->weather->year.air_c);
    EXPECT_LE(pictures.carpet().low, look()->report.air_min_c);
    EXPECT_GE(pictures.carpet().high, look()->report.air_max_c);
}

TEST(WeatherPicturesTest, hours_in_doubt_are_counted_by_kind) {
    auto wrong = std::make_shared<YearLook>(*look());
    wrong->report.flags.assign(8760, 0);
    wrong->report.flags[12] = static_cast<std::uint8_t>(weather::Flag::jump);
    wrong->report.flagged_hours = {};
    wrong->report.flagged_hours[5][0] = 1;  // the same, counted: jumps, in January
    WeatherPictures pictures;
    pictures.show_year(wrong);
    pictures.show_view(WeatherPictures::View::doubts);
    EXPECT_EQ(pictures.carpet().flags.size(), 8760U);
    EXPECT_TRUE(pictures.words().contains(QStringLiteral(": 1 h"))) << pictures.words().toStdString();
    wrong->report.flags[12] = 0;
    pictures.show_view(WeatherPictures::View::doubts);
    EXPECT_TRUE(pictures.words().contains(QStringLiteral("No hour")));
}

TEST(PlaceListTest, places_are_found_by_a_part_of_their_name) {
    PlaceList list;
    WeatherPlace near{"a", QString(), QStringLiteral("Oslo"), 3.0, 20.0, QString(), false};
    WeatherPlace far{"b", QString(), QStringLiteral("Lima"), 9000.0, std::nullopt, QStringLiteral("far"), true};
    list.set_places({near, far});
    ASSERT_NE(list.selected(), nullptr);
    EXPECT_EQ(list.selected()->climate_id, "b") << "the one in use";
    list.search(QStringLiteral("osl"));
    auto* table = list.findChild<QTableWidget*>();
    EXPECT_FALSE(table->isRowHidden(0));
    EXPECT_TRUE(table->isRowHidden(1));
    EXPECT_EQ(height_words(-120.4), QStringLiteral("120\u202fm lower"));
    EXPECT_EQ(height_words(0.2), QStringLiteral("same height"));
    EXPECT_TRUE(height_words(std::nullopt).isEmpty());
    EXPECT_EQ(distance_words(0.05), QStringLiteral("at the site"));
    EXPECT_EQ(distance_words(4.21), QStringLiteral("4.2\u202fkm"));
}

TEST(WeatherDialogTest, places_come_by_distance_with_the_one_in_use_selected) {
    WeatherDialog dialog(input(), &read_demo);
    ASSERT_TRUE(settle(dialog));
    const std::vector<WeatherPlace>& places = dialog.places().places();
    ASSERT_EQ(places.size(), reference()->climates.size());
    ASSERT_NE(dialog.places().selected(), nullptr);
    EXPECT_TRUE(dialog.places().selected()->in_use);
    EXPECT_FALSE(button(dialog, QStringLiteral("planned with this year"))->isEnabled());
    EXPECT_TRUE(dialog.place_words().contains(QStringLiteral("UTC")));
    EXPECT_FALSE(places.back().caution.isEmpty()) << "the farthest place is far";
}

TEST(WeatherDialogTest, another_climate_is_looked_at_and_chosen) {
    WeatherDialog dialog(input(), &read_demo);
    ASSERT_TRUE(settle(dialog));
    ASSERT_GT(dialog.places().places().size(), 1U);
    dialog.places().select(1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.place_words().contains(QStringLiteral("UTC")); }, patience_ms));
    button(dialog, QStringLiteral("Plan the job"))->click();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.chosen_climate(), dialog.places().places()[1].climate_id);
    EXPECT_TRUE(dialog.chosen_file().isEmpty());
}

TEST(WeatherDialogTest, a_file_comes_first_and_a_bad_one_is_refused_with_its_line) {
    WeatherDialog dialog(input(), &read_demo);
    ASSERT_TRUE(settle(dialog));
    EXPECT_FALSE(dialog.add_file(QStringLiteral("/data/bad.csv")));
    EXPECT_TRUE(dialog.findChild<NoticeBar*>()->text().contains(QStringLiteral("line 3, column 7")));
    EXPECT_TRUE(dialog.add_file(QStringLiteral("/data/good.csv")));
    EXPECT_TRUE(dialog.findChild<NoticeBar*>()->text().isEmpty());
    ASSERT_TRUE(settle(dialog));
    EXPECT_EQ(dialog.places().selected()->path, QStringLiteral("/data/good.csv"));
    button(dialog, QStringLiteral("Plan the job"))->click();
    EXPECT_EQ(dialog.chosen_file(), QStringLiteral("/data/good.csv"));
    EXPECT_TRUE(dialog.chosen_climate().empty());
}

}  // namespace
}  // namespace wg::ui
