#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

#include "core/job/codec.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/drawing/fields.h"
#include "ui/drawing/site_canvas.h"
#include "ui/visit/corner_table.h"
#include "ui/visit/guarded_edit.h"
#include "ui/visit/horizon_picture.h"
#include "ui/visit/household_form.h"
#include "ui/visit/missing.h"
#include "ui/visit/new_elements.h"
#include "ui/visit/visit_form.h"
#include "ui/visit/visit_stage.h"

namespace wg::ui {
namespace {

constexpr double grid_m = 0.05;  // a dragged element moves in steps of 5 cm

struct Visit : testing::Test {
    JobSession session{sample::job(), sample::reference(), sample::quick_to_read_plan};
    VisitStage stage;
    void SetUp() override {
        stage.resize(1040, 640);
        stage.set_session(&session);
        stage.show();
    }
    NumberField* number(const char* key) {
        return qobject_cast<NumberField*>(stage.form()->field(QString::fromLatin1(key)));
    }
    void type(NumberField* field, const QString& text) {
        field->line_edit()->setText(text);
        QTest::keyClick(field->line_edit(), Qt::Key_Return);
    }
};

TEST_F(Visit, BadFormInputNeverGetsIntoTheJob) {
    const Job before = session.job();
    for (const auto& [key, text] : {std::pair{"latitude", "91"},
                                    {"latitude", "north"},
                                    {"longitude", "181"},
                                    {"wind", "-3"},
                                    {"snow", "nan"},
                                    {"set_point", "80"},
                                    {"scale", "0"}}) {
        NumberField* field = number(key);
        ASSERT_NE(field, nullptr) << key;
        type(field, QString::fromLatin1(text));
        EXPECT_FALSE(field->problem().isEmpty()) << key << " " << text;
    }
    EXPECT_EQ(session.job(), before);
    EXPECT_EQ(session.undo_stack().count(), 0);
}

TEST_F(Visit, GoodFormInputIsOneUndoStep) {
    type(number("latitude"), QStringLiteral("46,5"));
    EXPECT_EQ(session.job().site.location.latitude_deg, 46.5);
    type(number("wind"), QStringLiteral("27"));
    EXPECT_EQ(session.job().site.basic_wind_m_s, 27.0);
    EXPECT_EQ(session.undo_stack().count(), 2);
    session.undo_stack().undo();
    EXPECT_FALSE(session.job().site.basic_wind_m_s.has_value());
    EXPECT_TRUE(number("wind")->line_edit()->text().isEmpty()) << "the form follows undo";
}

TEST_F(Visit, ADayThatIsNoneIsRefused) {
    auto* day = qobject_cast<TextField*>(stage.form()->field(QStringLiteral("visited_on")));
    auto* problem = qobject_cast<QLabel*>(stage.form()->field(QStringLiteral("visited_on_problem")));
    ASSERT_TRUE(day != nullptr && problem != nullptr);
    day->setText(QStringLiteral("2026-02-30"));
    QTest::keyClick(day, Qt::Key_Return);
    EXPECT_FALSE(problem->isHidden());
    EXPECT_EQ(session.job().survey.visited_on, "");
    day->setText(QStringLiteral("2026-02-28"));
    QTest::keyClick(day, Qt::Key_Return);
    EXPECT_TRUE(problem->isHidden());
    EXPECT_EQ(session.job().survey.visited_on, "2026-02-28");
}

TEST_F(Visit, TheHorizonIsDrawnAsItIsEnteredAndTheRowBeingEditedIsMarked) {
    auto* picture = qobject_cast<HorizonPicture*>(stage.form()->field(QStringLiteral("horizon_picture")));
    auto* table = qobject_cast<QTableWidget*>(stage.form()->field(QStringLiteral("horizon")));
    ASSERT_NE(picture, nullptr);
    ASSERT_NE(table, nullptr);
    ASSERT_NE(picture->picture().sun, nullptr);
    EXPECT_TRUE(picture->picture().few_lines);
    EXPECT_TRUE(picture->picture().horizon.empty());
    set_horizon(session, {{90.0, 5.0, {}}, {180.0, 12.0, {}}});
    EXPECT_EQ(picture->picture().horizon.size(), 2U);
    EXPECT_FALSE(picture->picture().marked.has_value());
    table->setCurrentCell(1, 1);
    ASSERT_TRUE(picture->picture().marked.has_value());
    EXPECT_EQ(picture->picture().marked->azimuth_deg, 180.0);
    table->item(1, 1)->setText(QStringLiteral("20"));  // typed and left
    EXPECT_EQ(session.job().site.horizon[1].elevation_deg, 20.0);
    EXPECT_EQ(picture->picture().horizon[1].elevation_deg, 20.0);
    EXPECT_EQ(picture->picture().marked->elevation_deg, 20.0);
    const auto sun = picture->picture().sun;
    type(number("latitude"), QStringLiteral("-33"));
    EXPECT_NE(picture->picture().sun, sun) << "another place has another sun";
    EXPECT_EQ(picture->picture().latitude_deg, -33.0);
}

TEST_F(Visit, TheHouseholdFormUnfoldedFitsTheWidthOfItsSheetAtAnyFieldShown) {
    Demand demand = session.job().demand;
    demand.draw_source = DrawSource::household;
    demand.hygiene.rule = HygieneRule::weekly;
    demand.recirculation.present = true;
    ClockWindow window;
    window.from_h = 6.0;
    window.to_h = 9.0;
    demand.control.run_windows = demand.control.set_back_windows = demand.tariff.low_windows = {window};
    demand.control.surplus.peak_kw = 5.0;
    demand.holidays = {HolidayPeriod{}};
    set_demand(session, demand);
    auto* form = stage.form();
    qobject_cast<QPushButton*>(form->field(QStringLiteral("household")))->setChecked(true);
    QTest::qWait(20);
    EXPECT_LE(form->minimumSizeHint().width(), form->parentWidget()->width());
    EXPECT_LE(form->width(), form->parentWidget()->width()) << "wider than the area that shows it";
    for (QWidget* inside : form->findChildren<QWidget*>()) {
        if (!inside->isVisible()) continue;
        const int right = inside->mapTo(form, QPoint(inside->width(), 0)).x();
        EXPECT_LE(right, form->width()) << inside->metaObject()->className();
    }
}

TEST_F(Visit, APriceIsTypedAsOnABillAndKeptInHundredthsOfTheJobsCurrency) {
    auto* household = stage.form()->findChild<HouseholdForm*>();
    ASSERT_NE(household, nullptr);
    auto* low = qobject_cast<NumberField*>(household->field(QStringLiteral("low_price")));
    const auto list = session.reference().price_lists.find(session.job().price_list);
    const std::string currency = list == session.reference().price_lists.end() ? "currency" : list->second.currency;
    EXPECT_EQ(low->unit().toStdString(), currency + "/kWh");
    type(low, QStringLiteral("0.07"));
    EXPECT_EQ(session.job().demand.tariff.low_minor_kwh, 7.0);
    EXPECT_EQ(low->line_edit()->text(), QStringLiteral("0.07"));
    type(low, QStringLiteral("22"));  // a price in hundredths is not one in the currency
    EXPECT_FALSE(low->problem().isEmpty());
    EXPECT_EQ(session.job().demand.tariff.low_minor_kwh, 7.0);
}

TEST_F(Visit, AClickOnTheWordsOfABoxTicksIt) {
    auto* household = stage.form()->findChild<HouseholdForm*>();
    auto* loop = qobject_cast<QCheckBox*>(household->field(QStringLiteral("loop")));
    ASSERT_NE(loop, nullptr);
    QLabel* words = nullptr;
    for (QLabel* label : household->findChildren<QLabel*>())
        if (label->buddy() == loop) words = label;
    ASSERT_NE(words, nullptr);
    QTest::mouseClick(words, Qt::LeftButton);
    EXPECT_TRUE(session.job().demand.recirculation.present);
    QTest::mouseClick(words, Qt::LeftButton);
    EXPECT_FALSE(session.job().demand.recirculation.present);
}

TEST_F(Visit, DraggingASpotMovesItInOneUndoStep) {
    SiteCanvas* canvas = stage.canvas();
    canvas->fit();
    const CylinderSpot before = session.job().site.spots.front();
    const QPoint from = canvas->view().map(before.position.x_m, before.position.y_m).toPoint();
    const QPoint by(70, -30);
    QTest::mousePress(canvas, Qt::LeftButton, Qt::NoModifier, from);
    for (int i = 1; i <= 4; ++i)
        QTest::mouseMove(canvas, from + by * i / 4);
    const double units = canvas->units_per_m();
    QTest::mouseRelease(canvas, Qt::LeftButton, Qt::NoModifier, from + by);
    const Point3 after = session.job().site.spots.front().position;
    EXPECT_NEAR(after.x_m, before.position.x_m + 70.0 / units, grid_m);
    EXPECT_NEAR(after.y_m, before.position.y_m + 30.0 / units, grid_m);
    EXPECT_EQ(session.undo_stack().count(), 1);
    EXPECT_EQ(canvas->selected(), before.id);
}

TEST_F(Visit, TabGoesThroughTheElementsAndArrowsMoveThem) {
    SiteCanvas* canvas = stage.canvas();
    stage.show_place(QString::fromStdString(session.job().site.obstacles.front().id));
    const double x = session.job().site.obstacles.front().base.x_m;
    QTest::keyClick(canvas, Qt::Key_Left);
    EXPECT_NEAR(session.job().site.obstacles.front().base.x_m, x - 0.01, 1e-9);
    QTest::keyClick(canvas, Qt::Key_Tab);
    EXPECT_EQ(canvas->selected(), session.job().site.spots.front().id);
}

TEST_F(Visit, AskedForAPointAClickGivesItAndEscapeDropsIt) {
    SiteCanvas* canvas = stage.canvas();
    std::optional<Point2> given;
    canvas->ask_point(QStringLiteral("Where"), [&](Point2 p) { given = p; });
    QTest::keyClick(canvas, Qt::Key_Escape);
    EXPECT_FALSE(canvas->asking());
    canvas->ask_point(QStringLiteral("Where"), [&](Point2 p) { given = p; });
    const QPoint at(200, 150);
    QTest::mouseClick(canvas, Qt::LeftButton, Qt::NoModifier, at);
    ASSERT_TRUE(given.has_value());
    const Point2 wanted = canvas->view().unmap(at);
    EXPECT_NEAR(given->x_m, wanted.x_m, grid_m);
    EXPECT_NEAR(given->y_m, wanted.y_m, grid_m);
}

TEST(CornerTable, RefusesAnOutlineAndShowsTheOldOneAgain) {
    CornerTable table;
    const std::vector<Point2> square{{0, 0}, {4, 0}, {4, 3}, {0, 3}};
    std::vector<Point2> taken = square;
    table.set_outline(square);
    table.set_taker([&](const std::vector<Point2>& outline) {
        if (outline[2].x_m < 0.0) return QStringLiteral("edges cross");
        taken = outline;
        return QString();
    });
    table.table()->item(2, 0)->setText(QStringLiteral("-5"));
    EXPECT_FALSE(table.problem().isEmpty());
    EXPECT_EQ(taken, square);
    EXPECT_EQ(table.table()->item(2, 0)->text(), QStringLiteral("4.000"));
    table.table()->item(2, 0)->setText(QStringLiteral("four"));
    EXPECT_EQ(taken, square);
    table.table()->item(2, 0)->setText(QStringLiteral("3,5"));
    EXPECT_EQ(taken[2].x_m, 3.5);
    EXPECT_TRUE(table.problem().isEmpty());
}

TEST(RectangleOutline, IsSeenOnlyWhereItIsOne) {
    EXPECT_TRUE(as_rectangle({{0, 0}, {4, 0}, {4, 3}, {0, 3}}).has_value());
    EXPECT_TRUE(as_rectangle({{0, 3}, {4, 3}, {4, 0}, {0, 0}}).has_value()) << "either sense";
    EXPECT_FALSE(as_rectangle({{0, 0}, {4, 0}, {3.5, 3}, {0, 3}}).has_value());
    EXPECT_FALSE(as_rectangle({{0, 0}, {4, 0}, {4, 3}}).has_value());
    const auto r = as_rectangle(outline_of({1.0, 2.0, 3.0, 4.0}));
    ASSERT_TRUE(r.has_value());
    EXPECT_EQ(r->left_m, 1.0);
    EXPECT_EQ(r->height_m, 4.0);
}

TEST(Refusal, NamesWhatIsNewlyWrongOnly) {
    const Job job = sample::job();
    EXPECT_TRUE(refusal(job, [](Job& j) { j.site.surfaces[0].tilt_deg = 40.0; }).isEmpty());
    EXPECT_FALSE(refusal(job, [](Job& j) { j.site.surfaces[0].tilt_deg = 120.0; }).isEmpty());
    Job faulty = job;
    faulty.site.surfaces[0].tilt_deg = 120.0;
    EXPECT_TRUE(refusal(faulty, [](Job& j) { j.demand.scale = 1.2; }).isEmpty()) << "an old fault blocks nothing else";
}

bool lists(const std::vector<Missing>& list, const char* field) {
    return std::any_of(list.begin(), list.end(), [&](const Missing& one) { return one.field == QLatin1String(field); });
}

TEST(StillToMeasure, NamesWindSnowAccessAndUnmeasuredFloorsUntilTheyAreKnown) {
    Job job = sample::job();
    std::vector<Missing> list = still_to_measure(job);
    for (const char* field : {"wind", "snow", "access", "visited_on"})
        EXPECT_TRUE(lists(list, field)) << field;
    const auto about_spot = [&](const Missing& one) { return one.place_id == job.site.spots.front().id; };
    EXPECT_TRUE(std::any_of(list.begin(), list.end(), about_spot));
    job.site.basic_wind_m_s = 25.0;
    job.site.ground_snow_kn_m2 = 1.0;
    job.survey.access = "Gate on the lane";
    CylinderSpot& spot = job.site.spots.front();
    spot.floor_load_measured = true;
    spot.supply.present = true;
    spot.drain.present = true;
    list = still_to_measure(job);
    for (const char* field : {"wind", "snow", "access"})
        EXPECT_FALSE(lists(list, field)) << field;
    EXPECT_FALSE(std::any_of(list.begin(), list.end(), about_spot));
}

TEST(StillToMeasure, APlaceWithoutANameIsAssumed) {
    Job job = sample::job();
    job.site.location.place_name = "Springholm";
    EXPECT_FALSE(lists(still_to_measure(job), "place"));
    job.site.location.place_name.clear();
    EXPECT_TRUE(lists(still_to_measure(job), "place"));
    VisitForm form;
    JobSession session(job, sample::reference());
    form.set_session(&session);
    EXPECT_FALSE(form.field(QStringLiteral("place_assumed"))->isHidden());
    Location named = job.site.location;
    named.place_name = "Springholm";
    set_location(session, named);
    EXPECT_TRUE(form.field(QStringLiteral("place_assumed"))->isHidden());
}

TEST(NewElements, LookToTheEquatorAndPassTheJobsRules) {
    for (const double latitude : {47.0, -35.0}) {
        Job job = sample::job();
        job.site.location.latitude_deg = latitude;
        Surface roof = new_surface(SurfaceKind::roof, {3.0, 4.0}, job.site);
        EXPECT_EQ(roof.azimuth_deg, latitude > 0.0 ? 180.0 : 0.0);
        roof.id = "77777777-7777-4777-8777-777777777777";
        Obstacle tree = new_obstacle(ObstacleUse::tree, {9.0, 9.0}, job.site);
        tree.id = "88888888-8888-4888-8888-888888888888";
        EXPECT_EQ(tree.leaf_from_month, latitude > 0.0 ? 4 : 10);
        job.site.surfaces.push_back(roof);
        job.site.obstacles.push_back(tree);
        EXPECT_TRUE(validate(job).empty()) << text_of(validate(job));
    }
}

}  // namespace
}  // namespace wg::ui
