// Searching for places in the window, on the demonstration job with its real equipment and weather.

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/tools/load_reference.h"
#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/layout/layout_stage.h"
#include "ui/layout/place_search.h"
#include "ui/layout/places_panel.h"
#include "ui/layout/weights_box.h"

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

TEST_F(Find, EachPlaceIsPlannedAfterTheSearchAndSaysAllThatDecides) {
    ASSERT_TRUE(search());
    const PlaceSearch& found = *panel->search();
    EXPECT_TRUE(found.planning()) << "the search answers before the plans are there";
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("price: working")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !found.planning(); }, long_patience_ms));
    const auto now = plan::plan(session.job(), *reference());
    ASSERT_TRUE(now.ok());
    for (int row = 0; row < list->count(); ++row) {
        const auto index = static_cast<std::size_t>(row);
        const plan::Plan* there = found.plan_of(index);
        ASSERT_NE(there, nullptr) << row;
        // The ordinary plan of the job with the collector at the place.
        const auto by_hand = plan::plan(
            plan::with_place(session.job(), found.found()->wish, found.found()->places, index), *reference());
        ASSERT_TRUE(by_hand.ok());
        EXPECT_EQ(there->figures.price_gross.minor, by_hand.value().figures.price_gross.minor);
        EXPECT_EQ(there->figures.electricity_kwh.mid, by_hand.value().figures.electricity_kwh.mid);
        const QString text = list->item(row)->text();
        const Money more = there->figures.price_gross - now.value().figures.price_gross;
        const QString price = money_difference(more, qs(there->currency));
        EXPECT_TRUE(text.contains(price.isEmpty() ? QStringLiteral("price as now") : price)) << text.toStdString();
        EXPECT_TRUE(text.contains(quantity(there->figures.electricity_kwh.mid, QStringLiteral("kWh"))));
        EXPECT_TRUE(text.contains(length_m(there->figures.run_m)));
        EXPECT_TRUE(text.contains(quantity(there->figures.charge_kg, QStringLiteral("kg"), 2)));
        EXPECT_TRUE(text.contains(percent(there->figures.worst_utilisation)));
        EXPECT_TRUE(text.contains(QStringLiteral("\u202fN"))) << "the load on the worst point";
        EXPECT_TRUE(text.contains(QStringLiteral("all round"))) << "no street is marked";
    }
}

TEST_F(Find, WithTheStreetMarkedOnlyItsSideCounts) {
    set_street_azimuth(session, 225.0);
    ASSERT_TRUE(search());
    ASSERT_GT(list->count(), 0);
    for (int row = 0; row < list->count(); ++row)
        EXPECT_TRUE(list->item(row)->text().contains(QStringLiteral("of the street's side")));
    const auto seen = [this] { return panel->search()->found()->places.outcome.places.front().measures.seen; };
    EXPECT_EQ(panel->search()->found()->places.outcome.places.front().placement.surface_id,
              session.job().site.surfaces.front().id);
    EXPECT_GT(seen(), 0.5) << "the best roof of the demonstration faces south-west; a house stands in part of the view";
    set_street_azimuth(session, 45.0);
    ASSERT_TRUE(search());
    EXPECT_EQ(seen(), 0.0) << "from behind the ridge";
}

TEST_F(Find, WeightsAreFilledByTheAimChangedByHandAndUsed) {
    WeightsBox* box = panel->weights();
    auto* aim = panel->findChild<QComboBox*>();
    ASSERT_NE(aim, nullptr);
    aim->setCurrentIndex(static_cast<int>(siting::Aim::short_run));
    Q_EMIT aim->activated(aim->currentIndex());
    EXPECT_EQ(box->weights(), siting::objective_for(siting::Aim::short_run));
    EXPECT_FALSE(box->changed_by_hand());
    auto* fold = box->findChild<QToolButton*>();
    const QList<NumberField*> fields = box->findChildren<NumberField*>();
    ASSERT_EQ(fields.size(), 5);
    EXPECT_FALSE(fields[2]->isVisibleTo(box));
    fold->click();
    EXPECT_TRUE(fields[2]->isVisibleTo(box));
    const auto type = [](NumberField* field, const QString& text) {
        field->line_edit()->setText(text);
        Q_EMIT field->line_edit()->editingFinished();
    };
    type(fields[2], QStringLiteral("-4"));
    EXPECT_FALSE(fields[2]->problem().isEmpty());
    EXPECT_EQ(box->weights(), siting::objective_for(siting::Aim::short_run)) << "a weight under zero is refused";
    type(fields[2], QStringLiteral("3.5"));
    EXPECT_TRUE(box->changed_by_hand());
    EXPECT_TRUE(fold->text().contains(QStringLiteral("by hand")));
    ASSERT_TRUE(search());
    EXPECT_EQ(panel->search()->found()->places.objective.per_run_m, 3.5);
    Q_EMIT aim->activated(aim->currentIndex());
    EXPECT_FALSE(box->changed_by_hand());
    for (NumberField* field : fields)
        type(field, QStringLiteral("0"));
    EXPECT_FALSE(box->any());
    panel->start();
    EXPECT_FALSE(panel->search()->running()) << "without weights there is nothing to search for";
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
