// The shade map in the window: its months, the figures under the pointer, the worst hours in words.

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "tests/tools/load_reference.h"
#include "tests/ui/common/sample.h"
#include "ui/common/format.h"
#include "ui/common/shade_words.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/shade_bar.h"
#include "ui/layout/shade_note.h"
#include "ui/layout/shade_service.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace shade_map_test {

constexpr int long_patience_ms = 60000;

struct ShadeMapOnScreen : testing::Test {
    static std::shared_ptr<const plan::Reference> reference() {
        static const auto value = std::make_shared<const plan::Reference>(test::reference());
        return value;
    }
    JobSession session{test::demo_job(), reference()};
    LayoutStage stage;
    SurfaceCanvas* canvas = nullptr;
    ShadeService* shade = nullptr;
    ShadeBar* bar = nullptr;

    void SetUp() override {
        stage.resize(1000, 640);
        stage.set_session(&session);
        stage.show();
        canvas = stage.surface_canvas();
        shade = stage.findChild<ShadeService*>();
        bar = stage.findChild<ShadeBar*>();
    }
    [[nodiscard]] bool settled() const {
        return QTest::qWaitFor([this] { return session.settled(); }, long_patience_ms);
    }
    [[nodiscard]] const site::ShadeMap* map() const {
        const bool there =
            QTest::qWaitFor([this] { return shade->map_of(canvas->surface_id()) != nullptr; }, long_patience_ms);
        return there ? shade->map_of(canvas->surface_id()) : nullptr;
    }
};

TEST_F(ShadeMapOnScreen, IsMadeForTheWholeYearOrTheLeanMonthsAndSaysWhich) {
    ASSERT_TRUE(settled());
    EXPECT_EQ(bar->currentIndex(), ShadeBar::none);
    bar->choose(ShadeBar::whole_year);
    const site::ShadeMap* year = map();
    ASSERT_NE(year, nullptr);
    const double year_kwh = year->unshaded_kwh_m2;
    ASSERT_TRUE(shade->lean_months().from_year);
    EXPECT_TRUE(bar->itemData(ShadeBar::lean_months, Qt::ToolTipRole)
                    .toString()
                    .startsWith(months_words(shade->lean_months().months)));
    bar->choose(ShadeBar::lean_months);
    EXPECT_EQ(shade->period_words(), months_words(shade->lean_months().months));
    const site::ShadeMap* lean = map();
    ASSERT_NE(lean, nullptr);
    EXPECT_LT(lean->unshaded_kwh_m2, 0.7 * year_kwh);
    EXPECT_GT(lean->unshaded_kwh_m2, 0.1 * year_kwh);
    bar->choose(ShadeBar::whole_year);
    EXPECT_EQ(map()->unshaded_kwh_m2, year_kwh);
}

TEST_F(ShadeMapOnScreen, ThePointerReadsTheCellUnderIt) {
    ASSERT_TRUE(settled());
    bar->choose(ShadeBar::whole_year);
    const site::ShadeMap* now = map();
    ASSERT_NE(now, nullptr);
    QSignalSpy said(&stage, &StageWidget::status_text);
    const QPoint pixel = canvas->view().map({7.6, 4.2}).toPoint();
    QTest::mouseMove(canvas, pixel);
    ASSERT_FALSE(said.isEmpty());
    const auto cell = site::cell_at(*now, canvas->view().unmap(pixel));
    ASSERT_TRUE(cell.has_value());
    const QString words = said.last().front().toString();
    EXPECT_TRUE(words.contains(quantity(cell->beam_kwh_m2, QStringLiteral("kWh/m\u00b2")))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("of direct sun lost")));
    // A tag is painted beside the pointer, and goes with it.
    const QRect beside(pixel + QPoint(20, 18), QSize(40, 20));
    const QImage with = canvas->grab(beside).toImage();
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(canvas, &leave);
    EXPECT_NE(canvas->grab(beside).toImage(), with);
    QTest::mouseMove(canvas, QPoint(2, 2));
    EXPECT_FALSE(said.last().front().toString().contains(QStringLiteral("direct sun")));
}

TEST_F(ShadeMapOnScreen, TheWorstHoursAreNamedForTheCollectorElseForTheSurface) {
    ASSERT_TRUE(settled());
    auto* note = stage.findChild<ShadeNote*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return note->words() != QStringLiteral("working"); }, long_patience_ms));
    const QString of_surface = note->words();
    EXPECT_TRUE(of_surface.contains(QStringLiteral(":00 to "))) << of_surface.toStdString();
    const plan::PlacementPlan& first = session.plan()->placements.front();
    canvas->set_selected(first.placement_id);
    Q_EMIT canvas->selection_changed();
    ASSERT_FALSE(first.shade.causes.empty());
    const QString expected = shade_causes_words(first.shade, 3);
    EXPECT_EQ(note->words(), expected.isEmpty() ? note->words() : expected);
    EXPECT_NE(note->words(), of_surface);
    shade->set_lean(true);
    const site::Shade lean = site::shade_within(first.shade, shade->months());
    const QString of_lean = shade_causes_words(lean, 3, shade->period_words());
    if (!of_lean.isEmpty()) EXPECT_EQ(note->words(), of_lean);
    EXPECT_TRUE(note->words().contains(shade->period_words())) << note->words().toStdString();
}

TEST(MonthsWords, NameStretchesOverTheTurnOfTheYear) {
    site::Months months{};
    for (const std::size_t m : {0U, 1U, 2U, 9U, 10U, 11U})
        months[m] = true;
    EXPECT_EQ(months_words(months), QStringLiteral("October to March"));
    months[0] = false;
    EXPECT_EQ(months_words(months), QStringLiteral("February to March and October to December"));
    months[5] = true;
    EXPECT_EQ(months_words(months), QStringLiteral("February to March, June and October to December"));
    EXPECT_EQ(months_words(site::whole_year), QStringLiteral("whole year"));
    EXPECT_EQ(months_words({}), QString());
}

}  // namespace shade_map_test
}  // namespace wg::ui
