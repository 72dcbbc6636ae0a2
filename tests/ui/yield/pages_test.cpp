#include <gtest/gtest.h>

#include <QComboBox>
#include <QDateEdit>
#include <QFile>
#include <QImage>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

#include "tests/tools/load_reference.h"
#include "ui/yield/comfort_page.h"
#include "ui/yield/cost_page.h"
#include "ui/yield/day_page.h"
#include "ui/yield/year_page.h"

namespace wg::ui {
namespace pages_test {

/// The demonstration job with its plan, with a few figures set by hand that only other houses have.
struct Demo {
    plan::Reference reference = test::reference();
    Job job = test::demo_job();
    std::shared_ptr<plan::Plan> plan;
    Demo() { plan = std::make_shared<plan::Plan>(plan::plan(job, reference, {}).value()); }
    [[nodiscard]] CostBasis basis() const { return {job.demand, reference.price_lists.at(job.price_list).tariffs}; }
    /// A copy with 40 litres short on 10 January from 7 to 8 and 5 litres on 3 July from 20 to 21.
    [[nodiscard]] std::shared_ptr<const plan::Plan> with_short_draws() const {
        auto copy = std::make_shared<plan::Plan>(*plan);
        copy->season.hours->short_litres.assign(8760, 0.0F);
        copy->season.hours->short_litres[9 * 24 + 7] = 40.0F;
        copy->season.hours->short_litres[183 * 24 + 20] = 5.0F;
        copy->season.months[0].short_litres = 40.0;
        copy->season.months[6].short_litres = 5.0;
        copy->season.total.short_litres = 45.0;
        copy->season.total.short_h = 2.0;
        return copy;
    }
};
const Demo& demo() {
    static const Demo made;
    return made;
}

double grey(const QColor& colour) {
    return static_cast<double>(qGray(colour.rgb()));
}

// ------------------------------------------------------------------------------------------------------- the year

TEST(YearMeasuresTest, every_measure_has_a_picture_words_and_a_table_with_units) {
    YearPage page;
    page.set_plan(demo().with_short_draws(), false);
    for (int i = 0; i < year_measures; ++i) {
        const auto measure = static_cast<YearMeasure>(i);
        page.show_measure(measure);
        EXPECT_FALSE(page.picture().parts.empty()) << i;
        EXPECT_FALSE(page.words().isEmpty()) << i;
        const FigureTable table = page.figures();
        ASSERT_EQ(table.rows.size(), 12U) << i;
        ASSERT_GE(table.header.size(), 2) << i;
        for (const QStringList& row : table.rows)
            EXPECT_EQ(row.size(), table.header.size()) << i;
        EXPECT_TRUE(table.to_csv().contains('.')) << i;
    }
}

TEST(YearMeasuresTest, parts_that_touch_differ_in_grey_or_in_hatch) {
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight}) {
        season::Year year = demo().plan->season;
        for (season::MonthSums& month : year.months) {
            month.defrost_kwh = month.rest_h = month.pump_waits_h = month.recirculation_kwh = month.immersion_kwh = 2.0;
        }
        for (int i = 0; i < year_measures; ++i) {
            const BarsPicture picture = year_picture(static_cast<YearMeasure>(i), year, theme_of(kind));
            for (std::size_t part = 1; part < picture.parts.size(); ++part) {
                const BarPart& below = picture.parts[part - 1];
                const BarPart& above = picture.parts[part];
                const bool apart =
                    below.hatch != above.hatch || std::fabs(grey(below.colour) - grey(above.colour)) > 30.0;
                EXPECT_TRUE(apart) << i << ' ' << below.name.toStdString() << " and " << above.name.toStdString();
            }
        }
    }
}

TEST(YearMeasuresTest, terms_of_other_houses_show_only_where_there_is_something) {
    season::Year year = demo().plan->season;
    const auto has = [&year](YearMeasure measure, const char* key) {
        const auto all = series_of(measure, year);
        return std::any_of(all.begin(), all.end(),
                           [key](const YearSeries& series) { return series.key == QString::fromLatin1(key); });
    };
    for (season::MonthSums& month : year.months)
        month.recirculation_kwh = month.hygiene_kwh = month.surplus_kwh = month.low_tariff_kwh = 0.0;
    EXPECT_FALSE(has(YearMeasure::whither, "recirculation_kwh"));
    EXPECT_FALSE(has(YearMeasure::electricity, "hygiene_kwh"));
    EXPECT_FALSE(has(YearMeasure::supply, "own_photovoltaics_kwh"));
    year.months[3].recirculation_kwh = year.months[3].hygiene_kwh = year.months[3].surplus_kwh =
        year.months[3].low_tariff_kwh = 12.0;
    EXPECT_TRUE(has(YearMeasure::whither, "recirculation_kwh"));
    EXPECT_TRUE(has(YearMeasure::electricity, "hygiene_kwh"));
    EXPECT_TRUE(has(YearMeasure::supply, "own_photovoltaics_kwh"));
    EXPECT_TRUE(has(YearMeasure::supply, "low_price_hours_kwh"));
}

TEST(YearMeasuresTest, a_part_that_is_nothing_all_year_is_not_in_the_legend_but_in_the_file) {
    season::Year year = demo().plan->season;
    for (season::MonthSums& month : year.months)
        month.immersion_kwh = 0.0;
    const auto in_legend = [&year] {
        const BarsPicture picture = year_picture(YearMeasure::sources, year, theme_of(ThemeKind::light));
        return std::any_of(picture.parts.begin(), picture.parts.end(),
                           [](const BarPart& part) { return part.name == QStringLiteral("Immersion heater"); });
    };
    EXPECT_FALSE(in_legend());
    EXPECT_EQ(series_of(YearMeasure::sources, year)[4].key, QStringLiteral("immersion_kwh"));
    year.months[0].immersion_kwh = 1.0;
    EXPECT_TRUE(in_legend());
}

TEST(YearPageTest, a_year_without_short_water_says_so_instead_of_twelve_bars_of_nothing) {
    auto plan = std::make_shared<plan::Plan>(*demo().plan);
    plan->season.total.short_litres = plan->season.total.short_h = 0.0;
    plan->season.shortfall_draws = 0;
    YearPage page;
    page.set_plan(plan, false);
    page.show_measure(YearMeasure::below_wanted);
    EXPECT_FALSE(page.has_picture());
    ComfortPage comfort;
    plan->season.hours->short_litres.assign(8760, 0.0F);
    comfort.set_plan(plan);
    comfort.show_measure(ComfortPage::Measure::below_wanted);
    EXPECT_FALSE(comfort.has_picture());
    page.set_plan(demo().with_short_draws(), false);
    EXPECT_TRUE(page.has_picture());
    comfort.set_plan(demo().with_short_draws());
    EXPECT_TRUE(comfort.has_picture());
}

TEST(YearMeasuresTest, months_factor_is_the_years_method) {
    const season::Year& year = demo().plan->season;
    EXPECT_NEAR(factor_of(year.total), year.seasonal_factor, 1e-9);
    EXPECT_TRUE(std::isnan(factor_of(season::MonthSums{})));
}

TEST(YearPageTest, arrow_keys_go_through_the_months_and_say_every_term) {
    YearPage page;
    page.resize(900, 500);
    page.set_plan(demo().plan, false);
    QSignalSpy told(&page, &YieldPage::pointed_at);
    QTest::keyClick(&page.view(), Qt::Key_Right);
    QTest::keyClick(&page.view(), Qt::Key_Left);
    ASSERT_EQ(told.size(), 2);
    EXPECT_TRUE(told[0][0].toString().startsWith(QStringLiteral("January: ")));
    EXPECT_TRUE(told[1][0].toString().startsWith(QStringLiteral("December: ")));
    for (const YearSeries& series : series_of(page.measure(), demo().plan->season))
        EXPECT_TRUE(told[0][0].toString().contains(series.name)) << series.name.toStdString();
}

// -------------------------------------------------------------------------------------------------------- the day

TEST(DayPageTest, notable_days_are_the_extremes_of_their_series) {
    const auto plan = demo().with_short_draws();
    const season::HourSeries& hours = *plan->season.hours;
    const auto sum = [](const std::vector<float>& series, int day) {
        double total = 0.0;
        for (int hour = 0; hour < 24; ++hour)
            total += static_cast<double>(series[static_cast<std::size_t>(day * 24 + hour)]);
        return total;
    };
    const int coldest = notable_day(hours, NotableDay::coldest);
    const int darkest = notable_day(hours, NotableDay::darkest);
    const int brightest = notable_day(hours, NotableDay::brightest);
    for (int day = 0; day < days_in_year; ++day) {
        EXPECT_LE(sum(hours.air_c, coldest), sum(hours.air_c, day));
        EXPECT_LE(sum(hours.light_w_m2, darkest), sum(hours.light_w_m2, day));
        EXPECT_GE(sum(hours.light_w_m2, brightest), sum(hours.light_w_m2, day));
    }
    EXPECT_EQ(notable_day(hours, NotableDay::most_short), 9);
    season::HourSeries none = hours;
    none.short_litres.assign(8760, 0.0F);
    EXPECT_EQ(notable_day(none, NotableDay::most_short), -1);
    none.short_litres.clear();
    EXPECT_EQ(notable_day(none, NotableDay::most_short), -1);
}

TEST(DayPageTest, the_cursor_goes_by_hours_over_midnight_and_by_days) {
    DayPage page;
    page.resize(900, 600);
    page.set_plan(demo().plan);
    page.show_day(0);
    QSignalSpy told(&page, &YieldPage::pointed_at);
    QTest::keyClick(&page.view(), Qt::Key_Right);
    EXPECT_TRUE(told.last()[0].toString().startsWith(QStringLiteral("1 Jan, 0:00 to 1:00: top ")));
    QTest::keyClick(&page.view(), Qt::Key_Left);
    EXPECT_EQ(page.day(), 364);
    EXPECT_TRUE(told.last()[0].toString().startsWith(QStringLiteral("31 Dec, 23:00")));
    QTest::keyClick(&page.view(), Qt::Key_Down);
    EXPECT_EQ(page.day(), 363);
    EXPECT_TRUE(told.last()[0].toString().startsWith(QStringLiteral("30 Dec, 23:00")));
}

TEST(DayPageTest, frost_short_water_and_waiting_have_their_place_on_days_that_have_them) {
    auto plan = std::make_shared<plan::Plan>(*demo().with_short_draws());
    season::HourSeries& hours = *plan->season.hours;
    hours.frost_kg_m2.assign(8760, 0.0F);
    hours.frost_kg_m2[9 * 24 + 5] = 0.3F;
    hours.waits_h.assign(8760, 0.0F);
    hours.waits_h[9 * 24 + 3] = 0.5F;
    const Theme theme = theme_of(ThemeKind::light);
    EXPECT_EQ(day_picture(hours, 100, theme).panels.size(), 3U);
    EXPECT_TRUE(day_picture(hours, 100, theme).panels[1].spans.empty());
    const CurvesPicture day = day_picture(hours, 9, theme);
    ASSERT_EQ(day.panels.size(), 5U);
    ASSERT_EQ(day.panels[1].spans.size(), 1U);
    EXPECT_DOUBLE_EQ(day.panels[1].spans[0].from, 3.0);
    EXPECT_DOUBLE_EQ(day.panels[1].spans[0].to, 4.0);
    EXPECT_TRUE(hour_words(hours, 9 * 24 + 3).contains(QStringLiteral("held back")));
}

TEST(DayPageTest, a_thin_frost_has_marks_that_differ_and_a_day_without_says_so) {
    auto plan = std::make_shared<plan::Plan>(*demo().plan);
    plan->season.hours->frost_kg_m2.assign(8760, 0.0F);
    plan->season.hours->frost_kg_m2[40 * 24 + 8] = 0.07F;
    DayPage page;
    page.set_plan(plan);
    page.show_day(39);
    EXPECT_TRUE(page.words().contains(QStringLiteral("No frost on the plate")));
    page.show_day(40);
    EXPECT_FALSE(page.words().contains(QStringLiteral("No frost")));
    ASSERT_EQ(page.picture().panels.size(), 4U);
    for (const double height_px : {20.0, 37.0, 120.0, 400.0}) {
        const Axis axis = panel_axis(page.picture().panels.back(), height_px, 18.0);
        QStringList texts;
        for (const AxisMark& mark : axis.marks)
            texts += mark.text;
        EXPECT_GE(texts.size(), 2) << height_px;
        EXPECT_EQ(texts.removeDuplicates(), 0) << texts.join(' ').toStdString();
        EXPECT_EQ(texts.front().toDouble(), 0.0);
    }
}

TEST(PlotFrameTest, decimals_tell_marks_apart_and_no_more) {
    EXPECT_EQ(decimals_for(20.0), 0);
    EXPECT_EQ(decimals_for(1.0), 0);
    EXPECT_EQ(decimals_for(2.5), 1);
    EXPECT_EQ(decimals_for(0.2), 1);
    EXPECT_EQ(decimals_for(0.05), 2);
    EXPECT_EQ(decimals_for(0.002), 3);
    EXPECT_EQ(decimals_for(0.0), 0);
}

TEST(DayPageTest, pictures_at_both_window_sizes_keep_their_panels_inside_and_apart) {
    const auto plan = demo().with_short_draws();
    for (const QSizeF size : {QSizeF(990, 440), QSizeF(1540, 740)}) {
        const QRectF area(QPointF(0, 0), size);
        const std::vector<PlotFrame> frames =
            curves_frames(day_picture(*plan->season.hours, 9, theme_of(ThemeKind::light)), area, 13.0);
        double bottom = 0.0;
        for (const PlotFrame& frame : frames) {
            EXPECT_GT(frame.plot.height(), 20.0) << size.height();
            EXPECT_GT(frame.plot.top(), bottom);
            bottom = frame.plot.bottom();
            EXPECT_TRUE(area.contains(frame.plot));
        }
    }
}

// --------------------------------------------------------------------------------------------------------- comfort

TEST(ComfortPageTest, carpet_is_the_series_and_every_short_hour_is_flagged) {
    const auto plan = demo().with_short_draws();
    ComfortPage page;
    page.set_plan(plan);
    ASSERT_EQ(page.picture().values->size(), 8760U);
    EXPECT_FLOAT_EQ(static_cast<float>((*page.picture().values)[4000]), plan->season.hours->drawn_w[4000]);
    int flagged = 0;
    for (const std::uint8_t flag : page.picture().flags)
        flagged += flag;
    EXPECT_EQ(flagged, 2);
    EXPECT_TRUE(page.picture().flag_lozenges) << "colour alone would be lost in grey";
    EXPECT_TRUE(page.words().contains(QStringLiteral("45\u202fl")));
    EXPECT_TRUE(page.words().contains(QStringLiteral("most in January")));
    for (const ComfortPage::Measure measure :
         {ComfortPage::Measure::drawn, ComfortPage::Measure::below_wanted, ComfortPage::Measure::top,
          ComfortPage::Measure::electricity, ComfortPage::Measure::pump}) {
        page.show_measure(measure);
        EXPECT_EQ(page.figures().rows.size(), 8760U);
        EXPECT_EQ(page.figures().rows[0].size(), page.figures().header.size());
    }
}

TEST(ComfortPageTest, click_and_return_open_the_day) {
    ComfortPage page;
    page.resize(1000, 500);
    page.set_plan(demo().plan);
    page.show();
    QSignalSpy asked(&page, &ComfortPage::day_asked);
    QSignalSpy told(&page, &YieldPage::pointed_at);
    QTest::keyClick(&page.view(), Qt::Key_Right);  // first press: 1 January at noon
    QTest::keyClick(&page.view(), Qt::Key_Right);
    QTest::keyClick(&page.view(), Qt::Key_Up);
    EXPECT_TRUE(told.last()[0].toString().startsWith(QStringLiteral("2 Jan, 13:00")));
    QTest::keyClick(&page.view(), Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].toInt(), 1);
    QTest::mouseClick(&page.view(), Qt::LeftButton, Qt::NoModifier, page.view().rect().center());
    ASSERT_EQ(asked.size(), 2);
    EXPECT_NEAR(asked[1][0].toInt(), 182, 25) << "the middle of the picture is near the middle of the year";
    QTest::mouseClick(&page.view(), Qt::LeftButton, Qt::NoModifier, QPoint(2, 2));
    EXPECT_EQ(asked.size(), 2) << "beside the carpet there is no day";
}

TEST(ComfortPageTest, what_a_plan_does_not_know_is_said) {
    auto plan = std::make_shared<plan::Plan>(*demo().plan);
    plan->season.hours->short_litres.clear();
    ComfortPage page;
    page.set_plan(plan);
    EXPECT_TRUE(page.words().contains(QStringLiteral("not known")));
    page.show_measure(ComfortPage::Measure::below_wanted);
    EXPECT_FALSE(page.has_picture());
    EXPECT_TRUE(page.figures().rows.empty());
    page.set_plan(nullptr);
    EXPECT_FALSE(page.has_picture());
}

// ------------------------------------------------------------------------------------------------------------ cost

TEST(CostPageTest, views_show_set_and_present_heater_choices_and_carbon_dioxide) {
    CostPage page;
    page.resize(900, 500);
    page.set_plan(demo().plan, demo().basis());
    EXPECT_EQ(page.figures().header.size(), 5);
    page.set_others({{QStringLiteral("B: another"), demo().plan}}, false);
    page.show_view(CostPage::View::choices);
    EXPECT_EQ(page.figures().header.size(), 5);
    page.set_others({{QStringLiteral("B: another"), demo().plan}}, true);
    EXPECT_TRUE(page.words().contains(QStringLiteral("being planned")));
    page.show_view(CostPage::View::emissions);
    const FigureTable table = page.figures();
    ASSERT_EQ(table.header.size(), 6);
    EXPECT_TRUE(table.header[1].endsWith(QStringLiteral("_kg")));
    EXPECT_NEAR(table.rows[10][1].toDouble(), 10.0 * demo().plan->economy.co2_kg, 0.01);
    EXPECT_NEAR(table.rows[10][4].toDouble(), 10.0 * demo().plan->economy.present_co2_kg, 0.01);
    QSignalSpy told(&page, &YieldPage::pointed_at);
    QTest::keyClick(&page.view(), Qt::Key_Right);
    QTest::keyClick(&page.view(), Qt::Key_Right);
    EXPECT_TRUE(told.last()[0].toString().startsWith(QStringLiteral("After 1 year")));
}

TEST(CostPageTest, the_mark_of_payback_stands_where_the_curves_meet) {
    auto plan = std::make_shared<plan::Plan>(*demo().plan);
    economy::Input input;
    input.electricity_kwh = plan->figures.electricity_kwh.mid;
    input.useful_heat_kwh = plan->figures.heat_kwh.mid;
    input.demand = demo().job.demand;
    input.tariffs = demo().basis().tariffs;
    input.investment = Money{400000};
    plan->economy = economy::evaluate(input);
    CostPage page;
    page.set_plan(plan, CostBasis{input.demand, input.tariffs});
    ASSERT_GT(page.course().even_y, 0.0);
    const CurvesPicture picture = page.picture(theme_of(ThemeKind::light));
    ASSERT_EQ(picture.panels[0].marks.size(), 1U);
    const QPointF mark = picture.panels[0].marks[0].at;
    const auto before = static_cast<std::size_t>(mark.x());
    const auto minor = [&](const std::vector<Money>& series) {
        const double share = mark.x() - static_cast<double>(before);
        return (static_cast<double>(series[before].minor) * (1.0 - share) +
                static_cast<double>(series[before + 1].minor) * share) /
               100.0;
    };
    EXPECT_NEAR(minor(page.course().set), minor(page.course().present), 1.0);
    EXPECT_NEAR(mark.y(), minor(page.course().set), 1.0);
}

// ----------------------------------------------------------------------------------------------------- pictures

TEST(PictureTest, saved_for_print_in_paper_colours_as_png_and_pdf) {
    DayPage page;
    page.resize(900, 560);
    page.set_plan(demo().plan);
    QTemporaryDir folder;
    const QString png = folder.filePath(QStringLiteral("day.png"));
    ASSERT_TRUE(page.save_picture(png));
    const QImage image(png);
    EXPECT_GE(image.width(), 2480) << "180 mm at 300 dots an inch are 2126";
    EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 300.0, 1.0);
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
    const QString pdf = folder.filePath(QStringLiteral("day.pdf"));
    ASSERT_TRUE(page.save_picture(pdf));
    QFile file(pdf);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    page.set_plan(nullptr);
    EXPECT_FALSE(page.has_picture());
    EXPECT_FALSE(page.save_picture(png));
}

}  // namespace pages_test
}  // namespace wg::ui
