#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QMenu>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/documents/sample.h"
#include "ui/common/job_session.h"
#include "ui/yield/cost_page.h"
#include "ui/yield/day_page.h"
#include "ui/yield/year_page.h"
#include "ui/yield/yield_stage.h"

namespace wg::ui {
namespace yield_test {

constexpr double written = 0.005;  // figures files have two decimals

std::shared_ptr<const plan::Plan> shared_plan() {
    return std::make_shared<const plan::Plan>(sample::plan(sample::job()));
}

std::unique_ptr<JobSession> open_session(const Job& job) {
    auto made =
        std::make_unique<JobSession>(job, std::make_shared<const plan::Reference>(),
                                     [](const Job& planned, const plan::Reference&,
                                        const plan::Options&) -> Result<plan::Plan> { return sample::plan(planned); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

TEST(YearPageTest, bars_and_line_are_the_plans_months) {
    const auto plan = shared_plan();
    YearPage page;
    page.set_plan(plan, false);
    const BarsPicture picture = page.picture();
    ASSERT_EQ(picture.parts.size(), 6U);
    ASSERT_EQ(picture.lines.size(), 1U);
    for (std::size_t month = 0; month < 12; ++month) {
        const season::MonthSums& m = plan->season.months[month];
        double sum = 0.0;
        for (const BarPart& part : picture.parts)
            sum += part.values[month];
        EXPECT_NEAR(sum, m.light_kwh + m.air_kwh + m.long_wave_kwh + m.latent_kwh + m.electricity_kwh(), 1e-9);
        EXPECT_DOUBLE_EQ(picture.lines[0].values[month], m.drawn_kwh);
    }
    EXPECT_TRUE(page.words().contains(QStringLiteral("Ranges:")));
    page.set_plan(plan, true);
    EXPECT_TRUE(page.words().startsWith(QStringLiteral("From before the last edit")));
    page.set_plan(nullptr, false);
    EXPECT_FALSE(page.has_picture());
    EXPECT_TRUE(page.picture().parts.empty());
}

TEST(YearPageTest, its_file_holds_the_months) {
    const auto plan = shared_plan();
    YearPage page;
    page.set_plan(plan, false);
    const FigureTable table = page.figures();
    ASSERT_EQ(table.rows.size(), 12U);
    EXPECT_EQ(table.rows[0].size(), table.header.size());
    EXPECT_NEAR(table.rows[5][1].toDouble(), plan->season.months[5].light_kwh, written);
}

TEST(DayPageTest, any_day_can_be_shown_and_the_year_closes_to_a_ring) {
    DayPage page;
    page.set_plan(shared_plan());
    page.show_day(0);
    EXPECT_EQ(page.figures().rows.front().front(), QStringLiteral("01-01"));
    page.show_day(-1);
    EXPECT_EQ(page.figures().rows.front().front(), QStringLiteral("12-31"));
    page.show_day(365);
    EXPECT_EQ(page.day(), 0);
    ASSERT_EQ(page.figures().rows.size(), 24U);
    ASSERT_EQ(page.figures().header[3], QStringLiteral("bottom_c"));
    EXPECT_EQ(page.figures().rows[10][3].toDouble(), 40.0);  // of the hand-made day at 10
}

TEST(DayPageTest, hours_that_are_missing_or_short_draw_nothing) {
    plan::Plan plan = sample::plan(sample::job());
    plan.season.hours->plate_c.resize(100);
    DayPage page;
    page.set_plan(std::make_shared<const plan::Plan>(plan));
    EXPECT_FALSE(page.has_picture());
    EXPECT_TRUE(page.figures().rows.empty());
    plan.season.hours.reset();
    page.set_plan(std::make_shared<const plan::Plan>(plan));
    EXPECT_TRUE(page.figures().rows.empty());
}

TEST(CostPageTest, the_band_encloses_the_middle_at_little_and_much_electricity) {
    plan::Plan plan = sample::plan(sample::job());
    CostBasis basis;
    economy::Input middle;
    middle.electricity_kwh = plan.figures.electricity_kwh.mid;
    middle.useful_heat_kwh = plan.figures.heat_kwh.mid;
    middle.demand = basis.demand;
    middle.tariffs = basis.tariffs;
    middle.investment = plan.quote->gross;
    plan.economy = economy::evaluate(middle);
    CostPage page;
    page.set_plan(std::make_shared<const plan::Plan>(plan), basis);
    const FigureTable table = page.figures();
    ASSERT_EQ(table.rows.size(), plan.economy.cumulative.size());
    ASSERT_EQ(table.header.size(), 5);
    for (std::size_t year = 1; year < table.rows.size(); ++year) {
        EXPECT_LT(table.rows[year][2].toDouble(), table.rows[year][1].toDouble()) << year;
        EXPECT_GT(table.rows[year][3].toDouble(), table.rows[year][1].toDouble()) << year;
        EXPECT_NEAR(table.rows[year][4].toDouble() - table.rows[year][1].toDouble(),
                    static_cast<double>(plan.economy.cumulative[year].minor) / 100.0, 0.02)
            << year;
    }
}

TEST(FigureTableTest, cells_are_quoted_and_formulas_are_disarmed) {
    FigureTable table;
    table.header = {QStringLiteral("a"), QStringLiteral("b,c")};
    table.rows = {{QStringLiteral("=1+1"), QStringLiteral("say \"so\"")}, {QStringLiteral("-2.50"), QString()}};
    EXPECT_EQ(table.to_csv(), QByteArray("a,\"b,c\"\r\n'=1+1,\"say \"\"so\"\"\"\r\n-2.50,\r\n"));
}

TEST(YieldStageTest, picture_and_figures_of_the_tab_are_written_whole_or_refused) {
    const auto session = open_session(sample::job());
    YieldStage stage;
    stage.resize(900, 600);
    stage.set_session(session.get());
    QTemporaryDir folder;
    const QString picture = folder.filePath(QStringLiteral("year.png"));
    ASSERT_TRUE(stage.save_picture(picture));
    EXPECT_GT(QImage(picture).width(), 400);
    const QString figures = folder.filePath(QStringLiteral("year.csv"));
    ASSERT_TRUE(stage.save_figures(figures));
    QFile file(figures);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().count("\r\n"), 13);
    EXPECT_FALSE(stage.save_picture(folder.filePath(QStringLiteral("no folder/year.png"))));
    stage.set_session(nullptr);
}

TEST(YieldStageTest, no_tab_is_cut_where_the_buttons_have_no_room_beside_them) {
    YieldStage stage;
    auto* tabs = stage.findChild<QTabWidget*>();
    ASSERT_NE(tabs, nullptr);
    const int tabs_px = tabs->tabBar()->sizeHint().width();
    const auto shown = [&stage](const QString& words) {
        for (const QPushButton* button : stage.findChildren<QPushButton*>())
            if (button->text() == words) return !button->parentWidget()->isHidden();
        return false;
    };
    stage.resize(tabs_px + 900, 500);
    stage.show();
    EXPECT_TRUE(shown(QStringLiteral("Save figures CSV")));
    stage.resize(tabs_px + 150, 500);
    QTest::qWait(20);
    EXPECT_FALSE(shown(QStringLiteral("Save figures CSV")));
    auto* menu = tabs->cornerWidget()->findChild<QMenu*>();
    ASSERT_NE(menu, nullptr);
    EXPECT_EQ(menu->actions().size(), 3);
    EXPECT_LE(tabs_px + tabs->cornerWidget()->sizeHint().width(), stage.width());
}

}  // namespace yield_test
}  // namespace wg::ui
