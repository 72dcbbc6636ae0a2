#include <gtest/gtest.h>

#include <QComboBox>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "tests/tools/load_reference.h"
#include "ui/common/edits.h"
#include "ui/common/job_session.h"
#include "ui/drawing/fields.h"
#include "ui/yield/background_task.h"
#include "ui/yield/comfort_row.h"
#include "ui/yield/range_page.h"
#include "ui/yield/range_words.h"
#include "ui/yield/sizing_page.h"
#include "ui/yield/sizing_words.h"

namespace wg::ui {
namespace advice_test {

std::shared_ptr<const plan::Reference> reference() {
    static const auto value = std::make_shared<const plan::Reference>(test::reference());
    return value;
}

/// The demonstration with a plan that costs no time: these pages work out their own years.
std::unique_ptr<JobSession> open_session() {
    auto made = std::make_unique<JobSession>(
        test::demo_job(), reference(),
        [](const Job& job, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
            plan::Plan plan;
            plan.choice_id = job.choices.front().id;
            plan.has_yield = true;
            return plan;
        });
    EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
    return made;
}

const plan::Study& study() {
    static const plan::Study value = [] {
        plan::StudyOptions options;
        options.members = 30;
        options.weather_years = 4;
        return plan::study(test::demo_job(), *reference(), options).value();
    }();
    return value;
}

const SizingPage::Answer& answer() {
    static const SizingPage::Answer value = [] {
        SizingPage::Answer made;
        const Job job = test::demo_job();
        made.wish.choice_id = chosen_choice(job)->id;
        made.demand = job.demand;
        made.advice = plan::sizing_advice(job, *reference(), made.wish).value();
        made.facing = plan::facing_yields(job, *reference(), made.wish.choice_id).value();
        made.warm_up = plan::warm_up_by_month(job, *reference(), made.wish.choice_id).value();
        return made;
    }();
    return value;
}

TEST(RangePageTest, the_bars_are_the_studys_and_sorted_by_width) {
    const auto session = open_session();
    RangePage page;
    page.set_session(session.get());
    EXPECT_TRUE(page.picture().rows.empty());
    EXPECT_TRUE(page.figures().rows.empty());
    page.show_study(study());
    const plan::Spread& e = study().of(plan::Measure::electricity_kwh);
    ASSERT_FALSE(page.picture().rows.empty());
    EXPECT_EQ(page.picture().nominal, e.nominal);
    EXPECT_EQ(page.picture().rows.front().label.toLower().toStdString(), study().factors[e.bars.front().factor].title);
    EXPECT_EQ(page.picture().rows.front().at_low, e.bars.front().at_low);
    // What does nothing to a figure has no bar.
    for (const TornadoPicture::Row& row : page.picture().rows)
        EXPECT_NE(row.label, QStringLiteral("Price of electricity"));
    page.show_measure(plan::Measure::running_cost);
    EXPECT_NEAR(page.picture().nominal, study().of(plan::Measure::running_cost).nominal / 100.0, 1e-9);
}

TEST(RangePageTest, before_anything_is_worked_out_a_sentence_and_the_button_stand_in_place_of_the_picture) {
    const auto session = open_session();
    RangePage page;
    page.resize(1000, 560);
    page.set_session(session.get());
    page.show();
    EXPECT_TRUE(page.shows_empty_pane());
    QPushButton* start = nullptr;
    for (QPushButton* button : page.findChildren<QPushButton*>())
        if (button->isVisible()) start = button;
    ASSERT_NE(start, nullptr);
    EXPECT_EQ(start->text(), QStringLiteral("Work out the range"));
    start->click();
    EXPECT_TRUE(page.task()->running());
    page.task()->stop();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page.task()->running(); }, 20000));
    page.show_study(study());
    EXPECT_FALSE(page.shows_empty_pane());
}

TEST(RangePageTest, the_table_shows_every_column_whole_beside_the_ledger_of_a_small_screen) {
    const auto session = open_session();
    RangePage page;
    page.resize(1030, 620);  // what a window of 1366 leaves
    page.set_session(session.get());
    page.show_study(study());
    page.show();
    QTest::qWait(20);
    QTableWidget* table = page.table();
    const QFontMetrics letters(table->font());
    int all = 0;
    for (int column = 0; column < table->columnCount(); ++column) {
        all += table->columnWidth(column);
        for (int row = 0; row < table->rowCount(); ++row)
            EXPECT_LE(letters.horizontalAdvance(table->item(row, column)->text()), table->columnWidth(column))
                << table->item(row, column)->text().toStdString();
    }
    EXPECT_LE(all, table->viewport()->width());
    int rows = 0;
    for (int row = 0; row < table->rowCount(); ++row)
        rows += table->rowHeight(row);
    EXPECT_LE(rows, table->viewport()->height());
}

TEST(RangePageTest, its_words_name_every_input_with_its_width_and_ground) {
    const auto session = open_session();
    RangePage page;
    page.set_session(session.get());
    page.show_study(study());
    for (const plan::Factor& f : study().factors) {
        EXPECT_TRUE(page.words().contains(QString::fromStdString(f.title)));
        EXPECT_TRUE(page.words().contains(QString::fromStdString(f.distribution)));
        EXPECT_TRUE(page.words().contains(QString::fromStdString(f.ground)));
    }
    const FigureTable table = page.figures();
    for (const QStringList& row : table.rows)
        ASSERT_EQ(row.size(), table.header.size());
}

TEST(RangePageTest, another_state_of_the_job_is_told_from_the_studied_one) {
    const auto session = open_session();
    RangePage page;
    page.set_session(session.get());
    page.show_study(study());
    EXPECT_FALSE(page.outdated());
    Demand demand = session->job().demand;
    demand.set_point_c += 2.0;
    set_demand(*session, demand);
    page.refresh();
    EXPECT_TRUE(page.outdated());
    session->undo_stack().undo();
    EXPECT_FALSE(page.outdated());
    page.set_session(nullptr);
    EXPECT_FALSE(page.study().has_value());
}

TEST(RangePageTest, a_stopped_study_leaves_nothing_behind) {
    const auto session = open_session();
    RangePage page;
    page.set_session(session.get());
    page.start();
    EXPECT_TRUE(page.task()->running());
    page.task()->stop();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page.task()->running(); }, 20000));
    QTest::qWait(20);
    EXPECT_FALSE(page.study().has_value());
}

TEST(RangePageTest, a_page_that_goes_while_it_works_waits_for_its_work) {
    const auto session = open_session();
    auto page = std::make_unique<RangePage>();
    page->set_session(session.get());
    page->start();
    page.reset();
    SUCCEED();
}

TEST(SizingPageTest, points_are_the_advices_and_a_press_shows_one) {
    const auto session = open_session();
    SizingPage page;
    page.resize(1000, 600);
    page.set_session(session.get());
    page.show_answer(answer());
    ASSERT_EQ(page.sets_picture().points.size(), answer().advice.points.size());
    EXPECT_FALSE(page.make_button()->isEnabled());
    page.select_point(0);
    EXPECT_TRUE(page.make_button()->isEnabled());
    const QRectF area(0, 0, 900, 500);
    const PlotFrame frame = sets_frame(page.sets_picture(), area, 13.0);
    for (std::size_t i = 0; i < page.sets_picture().points.size(); ++i) {
        const SetsPicture::Point& p = page.sets_picture().points[i];
        const int found = set_at(page.sets_picture(), area, frame.map(p.cost, p.short_l), 13.0);
        ASSERT_GE(found, 0);
        EXPECT_EQ(page.sets_picture().points[static_cast<std::size_t>(found)].cost, p.cost);
    }
}

TEST(SizingPageTest, a_set_becomes_a_choice_and_undo_takes_it_back) {
    const auto session = open_session();
    SizingPage page;
    page.set_session(session.get());
    page.show_answer(answer());
    EXPECT_TRUE(page.make_choice().empty());  // none is picked
    page.select_point(static_cast<int>(answer().advice.points.size()) - 1);
    const std::size_t before = session->job().choices.size();
    const std::string id = page.make_choice();
    ASSERT_FALSE(id.empty());
    ASSERT_EQ(session->job().choices.size(), before + 1);
    EXPECT_EQ(session->job().choices.back().block_model, answer().advice.points.back().block_id);
    EXPECT_EQ(session->job().choices.back().cylinder_model, answer().advice.points.back().cylinder_id);
    EXPECT_EQ(session->current_choice()->id, id);
    // The other sets are still those of the choice that they were worked out beside.
    EXPECT_FALSE(page.outdated());
    session->undo_stack().undo();
    EXPECT_EQ(session->job().choices.size(), before);
}

TEST(SizingPageTest, another_comfort_target_judges_the_same_years_anew_in_words_picture_and_table) {
    const auto session = open_session();
    SizingPage page;
    page.resize(1000, 600);
    page.set_session(session.get());
    EXPECT_TRUE(page.shows_empty_pane());
    SizingPage::Answer changed = answer();
    changed.advice.points[0].short_l = 100.0;
    changed.advice.points[0].short_h = 40.0;
    for (std::size_t i = 1; i < changed.advice.points.size(); ++i)
        changed.advice.points[i].short_l = changed.advice.points[i].short_h = 0.0;
    page.show_answer(changed);
    EXPECT_FALSE(page.shows_empty_pane());
    const auto missed = [&page] { return page.sets_picture().points[0].missed; };
    const auto type = [&page](const char* text) {
        page.comfort()->limit()->line_edit()->setText(QString::fromLatin1(text));
        Q_EMIT page.comfort()->limit()->line_edit()->editingFinished();
    };
    EXPECT_FALSE(missed());
    EXPECT_TRUE(page.words().contains(QStringLiteral("365\u202fl a year not at the wanted temperature (assumed)")));
    type("99");
    EXPECT_TRUE(missed());
    EXPECT_FALSE(page.sets_picture().points[1].missed);
    EXPECT_TRUE(page.words().contains(QStringLiteral("99\u202fl a year not at the wanted temperature (as set above)")));
    const FigureTable table = page.figures();
    EXPECT_EQ(table.rows[0][table.header.indexOf(QStringLiteral("keeps_comfort"))], QStringLiteral("0"));
    page.comfort()->by()->setCurrentIndex(1);  // hours
    type("40");
    EXPECT_FALSE(missed());
    type("39");
    EXPECT_TRUE(missed());
    page.select_point(0);
    EXPECT_EQ(page.comfort()->limit()->unit(), QStringLiteral("h"));
    EXPECT_FALSE(page.outdated()) << "the years are the same ones";
    type("8761");
    EXPECT_FALSE(page.comfort()->limit()->problem().isEmpty());
    EXPECT_EQ(page.comfort()->target().most_short_h, 39.0);
    page.comfort()->by()->setCurrentIndex(0);
    EXPECT_EQ(page.comfort()->target().most_short_l, 99.0) << "each keeps its own figure";
}

TEST(SizingPageTest, what_all_sets_share_is_said_once_and_not_at_every_point) {
    plan::SizingAdvice advice = answer().advice;
    for (std::size_t i = 0; i < advice.points.size(); ++i)
        advice.points[i].label = "2 x Collector, Block, Cylinder " + std::to_string(i);
    SetsPicture picture = sets_of(advice, true);
    EXPECT_EQ(picture.points[0].label, QStringLiteral("Block, Cylinder 0"));
    EXPECT_TRUE(picture.cost_title.endsWith(QStringLiteral("every set with 2 \u00d7 Collector")));
    advice.points[1].label = "3 x Collector, Block, Cylinder 1";
    picture = sets_of(advice, true);
    EXPECT_EQ(picture.points[0].label, QStringLiteral("2 \u00d7 Collector, Block, Cylinder 0"));
    EXPECT_FALSE(picture.cost_title.contains(QStringLiteral("every set")));
}

TEST(SizingPageTest, a_changed_household_makes_it_an_earlier_state_and_no_choice_is_made) {
    const auto session = open_session();
    SizingPage page;
    page.set_session(session.get());
    page.show_answer(answer());
    page.select_point(0);
    Demand demand = session->job().demand;
    demand.scale *= 1.1;
    set_demand(*session, demand);
    page.refresh();
    EXPECT_TRUE(page.outdated());
    EXPECT_FALSE(page.make_button()->isEnabled());
    EXPECT_TRUE(page.make_choice().empty());
}

TEST(SizingPageTest, each_view_has_its_picture_words_and_table) {
    const auto session = open_session();
    SizingPage page;
    page.resize(1000, 600);
    page.set_session(session.get());
    QTemporaryDir folder;
    EXPECT_FALSE(page.save_picture(folder.filePath(QStringLiteral("none.png"))));
    page.show_answer(answer());
    const std::size_t rows[] = {answer().advice.points.size(), answer().facing.cells.size(), 24};
    for (const auto view : {SizingPage::View::sets, SizingPage::View::facing, SizingPage::View::warm_up}) {
        page.show_view(view);
        const FigureTable table = page.figures();
        ASSERT_EQ(table.rows.size(), rows[static_cast<int>(view)]);
        EXPECT_EQ(table.rows.front().size(), table.header.size());
        EXPECT_TRUE(page.words().contains(QStringLiteral("Method:")));
        const QString path = folder.filePath(QString::number(static_cast<int>(view)) + QStringLiteral(".png"));
        ASSERT_TRUE(page.save_picture(path));
        // More than one colour: something was painted.
        const QImage image(path);
        bool painted = false;
        for (int x = 0; x < image.width() && !painted; x += 7)
            painted = image.pixel(x, image.height() / 2) != image.pixel(0, 0);
        EXPECT_TRUE(painted);
    }
}

TEST(FacingPainterTest, every_cell_is_found_where_it_is_drawn_and_the_equator_is_in_the_middle) {
    for (const bool south : {true, false}) {
        const FacingPicture picture = facing_of(answer().facing, south);
        const PlotFrame frame = facing_frame(picture, QRectF(0, 0, 1000, 500), 13.0);
        std::vector<bool> seen(picture.values.size(), false);
        for (double x = frame.plot.left() + 1.0; x < frame.plot.right(); x += 10.0)
            for (double y = frame.plot.top() + 1.0; y < frame.plot.bottom(); y += 10.0)
                if (const int found = facing_at(picture, frame, QPointF(x, y)); found >= 0)
                    seen[static_cast<std::size_t>(found)] = true;
        EXPECT_EQ(std::count(seen.begin(), seen.end(), false), 0);
        const int middle = facing_at(picture, frame, frame.plot.center());
        ASSERT_GE(middle, 0);
        EXPECT_EQ(picture.bearings_deg[static_cast<std::size_t>(middle) % picture.bearings_deg.size()],
                  south ? 180.0 : 0.0);
    }
}

TEST(SetsPainterTest, sets_without_a_price_are_not_drawn) {
    plan::SizingAdvice advice = answer().advice;
    advice.points[0].yearly_cost_minor.reset();
    const SetsPicture picture = sets_of(advice, true);
    const QRectF area(0, 0, 900, 500);
    const PlotFrame frame = sets_frame(picture, area, 13.0);
    EXPECT_GT(frame.x_from, 0.0);
    EXPECT_NE(set_at(picture, area, frame.map(0.0, picture.points[0].short_l), 13.0), 0);
}

}  // namespace advice_test
}  // namespace wg::ui
