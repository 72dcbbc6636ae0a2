// Searching for places in the window, on the demonstration job with its real equipment and weather.

#include <gtest/gtest.h>

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/tools/load_reference.h"
#include "tests/ui/common/sample.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/place_search.h"
#include "ui/layout/places_panel.h"

namespace wg::ui {
namespace {

constexpr int long_patience_ms = 60000;

struct Find : testing::Test {
    static std::shared_ptr<const plan::Reference> reference() {
        static const auto value = std::make_shared<const plan::Reference>(test::reference());
        return value;
    }
    // The plan in the background is not what is tried here.
    JobSession session{test::demo_job(), reference(), sample::quick_to_read_plan};
    LayoutStage stage;
    PlacesPanel* panel = nullptr;
    QListWidget* list = nullptr;

    void SetUp() override {
        stage.resize(1000, 640);
        stage.set_session(&session);
        panel = stage.places_panel();
        list = panel->findChild<QListWidget*>();
    }
    [[nodiscard]] bool search() const {
        QSignalSpy done(panel->search(), &PlaceSearch::finished);
        panel->start();
        return done.wait(long_patience_ms);
    }
};

TEST_F(Find, PutsACollectorOnAPlaceFoundInOneUndoStep) {
    const Job before = session.job();
    ASSERT_TRUE(search());
    ASSERT_TRUE(panel->search()->found().has_value());
    ASSERT_GE(list->count(), 2);
    EXPECT_EQ(panel->proposals().size(), static_cast<std::size_t>(list->count()));
    EXPECT_EQ(session.job(), before);  // looking changes nothing
    list->setCurrentRow(1);
    EXPECT_TRUE(panel->proposals()[1].marked);
    const siting::Place place = panel->search()->found()->places.outcome.places[1];
    panel->put_selected();
    const Placement& now = session.current_choice()->placements.front();
    EXPECT_EQ(now.surface_id, place.placement.surface_id);
    EXPECT_NEAR(now.x_m, place.placement.x_m, 0.0006);
    EXPECT_EQ(now.hand, place.placement.hand);
    EXPECT_EQ(now.id, before.choices.front().placements.front().id);
    EXPECT_EQ(session.undo_stack().count(), 1);
    // What was found belongs to the site as it was: nothing is drawn until it is searched again.
    EXPECT_TRUE(panel->proposals().empty());
    session.undo_stack().undo();
    EXPECT_EQ(session.job(), before);
    EXPECT_FALSE(panel->proposals().empty());
}

TEST_F(Find, PlacesFromBeforeAnEditCannotBeTaken) {
    ASSERT_TRUE(search());
    list->setCurrentRow(0);
    const Placement first = session.current_choice()->placements.front();
    session.edit(QStringLiteral("Higher ground"), [](Job& job) { job.site.location.altitude_m += 300.0; });
    const Job edited = session.job();
    panel->put_selected();
    EXPECT_EQ(session.job(), edited);
    EXPECT_EQ(session.current_choice()->placements.front(), first);
}

TEST_F(Find, StoppingLeavesNoPlaces) {
    QSignalSpy done(panel->search(), &PlaceSearch::finished);
    panel->start();
    panel->search()->cancel();
    ASSERT_TRUE(done.wait(long_patience_ms));
    if (panel->search()->found()) GTEST_SKIP() << "the search was done before it could be stopped";
    EXPECT_EQ(list->count(), 0);
    EXPECT_TRUE(panel->proposals().empty());
}

TEST_F(Find, AChoiceThatCannotBePlannedIsSaidInWords) {
    session.edit(QStringLiteral("No collector"),
                 [](Job& job) { job.choices.front().collector_model = "none of that name"; });
    ASSERT_TRUE(search());
    EXPECT_FALSE(panel->search()->problems().empty());
    bool said = false;
    for (const QLabel* label : panel->findChildren<QLabel*>())
        said = said || label->text().contains(QStringLiteral("none of that name"));
    EXPECT_TRUE(said);
}

TEST_F(Find, ClosingWhileItSearchesWaitsAndEnds) {
    auto other = std::make_unique<LayoutStage>();
    other->set_session(&session);
    other->places_panel()->start();
    other.reset();
    SUCCEED();
}

}  // namespace
}  // namespace wg::ui
