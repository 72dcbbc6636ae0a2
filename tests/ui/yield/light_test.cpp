#include <gtest/gtest.h>

#include <QBarSet>
#include <QImage>
#include <QStackedBarSeries>
#include <QTemporaryDir>
#include <numeric>

#include "tests/tools/load_reference.h"
#include "ui/common/shade_words.h"
#include "ui/yield/light_months.h"
#include "ui/yield/light_page.h"
#include "ui/yield/sky_views.h"

namespace wg::ui {
namespace light_test {

/// The demonstration job with its plan; planned once.
struct Demo {
    plan::Reference reference = test::reference();
    Job job = test::demo_job();
    std::shared_ptr<const plan::Plan> plan;
    Demo() {
        plan::Options options;
        options.ranges = false;
        plan = std::make_shared<const plan::Plan>(plan::plan(job, reference, options).value());
    }
};
const Demo& demo() {
    static const Demo made;
    return made;
}

const QStackedBarSeries* bars_of(LightMonths& page) {
    for (QAbstractSeries* series : page.chart().series()) {
        if (auto* bars = qobject_cast<QStackedBarSeries*>(series)) return bars;
    }
    return nullptr;
}

TEST(LightMonthsTest, the_stack_is_the_light_of_the_plan_and_what_shade_takes) {
    LightMonths page;
    page.show_placement(demo().plan, 0);
    const plan::PlacementPlan& placed = demo().plan->placements.front();
    const QStackedBarSeries* bars = bars_of(page);
    ASSERT_NE(bars, nullptr);
    ASSERT_EQ(bars->count(), 4);
    double year = 0.0;
    for (QBarSet* set : bars->barSets())
        year += set->sum();
    EXPECT_NEAR(year, placed.plane_unshaded_kwh_m2, 1e-6);
    EXPECT_TRUE(page.words().contains(QString::fromUtf8(sky::name_of(placed.diffuse_model))));
    EXPECT_TRUE(page.words().contains(QStringLiteral("(invented)")));
    const FigureTable table = page.figures();
    ASSERT_EQ(table.rows.size(), 12U);
    EXPECT_EQ(table.rows.front().size(), table.header.size());
    EXPECT_NEAR(table.rows[5][1].toDouble(), placed.plane_month_beam_kwh_m2[5], 0.005);
}

TEST(LightMonthsTest, without_a_year_there_is_a_word_and_no_bar) {
    LightMonths page;
    page.show_placement(nullptr, 0);
    EXPECT_TRUE(page.chart().series().isEmpty());
    EXPECT_FALSE(page.words().isEmpty());
    page.show_placement(demo().plan, 99);
    EXPECT_TRUE(page.figures().rows.empty());
    plan::Plan quick = *demo().plan;
    quick.placements.front().plane_unshaded_kwh_m2 = 0.0;
    page.show_placement(std::make_shared<const plan::Plan>(quick), 0);
    EXPECT_TRUE(page.chart().series().isEmpty());
}

TEST(SunPathPageTest, shows_the_site_from_the_collector_and_the_sky_alone) {
    SunPathPage page;
    page.show_site(demo().job.site, &demo().plan->placements.front());
    EXPECT_TRUE(page.picture().plate.has_value());
    EXPECT_FALSE(page.picture().skyline.empty());
    EXPECT_TRUE(page.words().contains(QStringLiteral("21 June")));
    const FigureTable table = page.figures();
    EXPECT_GT(table.rows.size(), 100U);
    EXPECT_EQ(table.rows.front().size(), table.header.size());
    const auto sun = page.picture().sun;
    page.show_site(demo().job.site, nullptr);
    EXPECT_FALSE(page.picture().plate.has_value());
    EXPECT_EQ(page.picture().sun, sun) << "the sun of an unchanged place is not worked out again";
}

TEST(SunPathPageTest, polar_night_is_said) {
    Site site = demo().job.site;
    site.location.latitude_deg = 78.0;
    SunPathPage page;
    page.show_site(site, nullptr);
    EXPECT_TRUE(page.words().contains(QStringLiteral("21 December: the sun stays below the horizon")));
    EXPECT_TRUE(page.words().contains(QStringLiteral("stays up all day")));
}

TEST(OrientationPageTest, best_and_present_place_are_named_and_missing_weather_is_said) {
    OrientationPage page;
    page.show_site(demo().job.site, nullptr, {});
    EXPECT_EQ(page.picture().map, nullptr);
    EXPECT_TRUE(page.figures().rows.empty());
    page.show_site(demo().job.site, demo().reference.weather, demo().plan->placements);
    ASSERT_NE(page.picture().map, nullptr);
    EXPECT_EQ(page.picture().collectors.size(), demo().plan->placements.size());
    EXPECT_TRUE(page.words().contains(QStringLiteral("of the best")));
    EXPECT_EQ(page.figures().rows.size(), 19U * 72U);
}

TEST(LightPageTest, each_view_saves_its_own_picture_and_figures) {
    LightPage page;
    page.resize(900, 600);
    page.set_plan(demo().plan, demo().job.site, demo().reference.weather);
    QTemporaryDir folder;
    QStringList headers;
    for (const LightPage::View view :
         {LightPage::View::months, LightPage::View::sun_path, LightPage::View::orientation}) {
        page.show_view(view);
        const QString file = folder.filePath(QStringLiteral("%1.png").arg(static_cast<int>(view)));
        EXPECT_TRUE(page.save_picture(file));
        EXPECT_GE(QImage(file).width(), 1600);
        headers += page.figures().header.join(QLatin1Char(','));
        EXPECT_FALSE(page.words().isEmpty());
    }
    EXPECT_EQ(headers.removeDuplicates(), 0);
    page.set_plan(nullptr, Site{}, nullptr);
}

TEST(ShadeWordsTest, name_amount_month_and_hours_worst_first_and_nothing_for_nothing) {
    site::Shade shade;
    EXPECT_TRUE(shade_causes_words(shade, 3).isEmpty());
    const auto cause = [](const char* label, double lost_kwh_m2, int month, int hour) {
        site::ShadeCause made;
        made.label = label;
        made.lost_kwh_m2 = lost_kwh_m2;
        made.worst_month = month;
        made.worst_hour = hour;
        return made;
    };
    shade.causes = {cause("Chimney", 43.2, 12, 9), cause("", 4.0, 1, 15), cause("Post", 0.2, 6, 12)};
    shade.causes.front().worst_from_hour = 9;
    shade.causes.front().worst_to_hour = 11;
    const QString words = shade_causes_words(shade, 3);
    EXPECT_TRUE(
        words.contains(QStringLiteral("Chimney: about 43\u202fkWh/m² a year, most in December from 9:00 to 11:00")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("The house itself or the horizon")));
    EXPECT_FALSE(words.contains(QStringLiteral("Post"))) << "less than half a kWh is no word worth";
    EXPECT_FALSE(shade_causes_words(shade, 1).contains(QStringLiteral("house")));
}

}  // namespace light_test
}  // namespace wg::ui
