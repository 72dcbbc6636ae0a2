#include "ui/layout/equipment_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QTest>

#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"

namespace wg::ui {
namespace {

std::shared_ptr<const plan::Reference> with_drop(double channel_drop_k) {
    auto reference = std::make_shared<plan::Reference>(*sample::reference());
    reference->catalogue.collectors.front().channel_drop_k = channel_drop_k;
    return reference;
}

struct Equipment : testing::Test {
    JobSession session{sample::job(), with_drop(1.2), sample::quick_to_read_plan};
    EquipmentPanel panel;
    QComboBox* joined = nullptr;

    void SetUp() override {
        panel.set_session(&session);
        panel.show();
        joined = panel.findChild<QComboBox*>(QStringLiteral("joined"));
        ASSERT_NE(joined, nullptr);
    }
    void add_second() {
        ASSERT_FALSE(add_collector(session, sample::roof().id).empty());
        session.end_merge();
    }
    /// As a hand on the keyboard would: the next entry down or up.
    void press(Qt::Key key) {
        joined->setFocus();
        QTest::keyClick(joined, key);
    }
    [[nodiscard]] Joined now() const { return session.current_choice()->joined; }
};

TEST_F(Equipment, AsksHowCollectorsAreJoinedFromTwoOn) {
    EXPECT_FALSE(joined->isVisible());
    add_second();
    EXPECT_TRUE(joined->isVisible());
    EXPECT_EQ(joined->currentText(), QStringLiteral("In parallel"));
    const std::string second = session.current_choice()->placements.back().id;
    remove_collector(session, second);
    EXPECT_FALSE(joined->isVisible());
}

TEST_F(Equipment, JoinsInSeriesByKeyboardInOneStepThatCanBeUndone) {
    add_second();
    const int steps = session.undo_stack().count();
    press(Qt::Key_Down);
    EXPECT_EQ(now(), Joined::series);
    EXPECT_EQ(joined->currentText(), QStringLiteral("In series"));
    EXPECT_EQ(session.undo_stack().count(), steps + 1);
    EXPECT_EQ(session.undo_stack().undoText(), QStringLiteral("Join the collectors in series"));
    session.undo_stack().undo();
    EXPECT_EQ(now(), Joined::parallel);
    EXPECT_EQ(joined->currentText(), QStringLiteral("In parallel"));
    session.undo_stack().redo();
    press(Qt::Key_Up);
    EXPECT_EQ(now(), Joined::parallel);
}

TEST_F(Equipment, ChoosingTheSameAgainIsNoStep) {
    add_second();
    const int steps = session.undo_stack().count();
    set_joined(session, Joined::parallel);
    EXPECT_EQ(session.undo_stack().count(), steps);
}

TEST_F(Equipment, JoiningIsPlannedAnew) {
    add_second();
    ASSERT_TRUE(sample::settle(session));
    set_joined(session, Joined::series);
    EXPECT_TRUE(session.planning());
    EXPECT_TRUE(sample::settle(session));
}

TEST_F(Equipment, SaysWhatJoiningMeansForThePressureDrop) {
    add_second();
    EXPECT_FALSE(joined->accessibleName().isEmpty());
    EXPECT_NE(joined->focusPolicy() & Qt::TabFocus, 0);
    EXPECT_TRUE(joined->toolTip().contains(QStringLiteral("pressure drops add up"))) << joined->toolTip().toStdString();
    EXPECT_TRUE(joined->toolTip().contains(QStringLiteral("1.2"))) << joined->toolTip().toStdString();
    JobSession without(sample::job(), with_drop(0.0), sample::quick_to_read_plan);
    ASSERT_FALSE(add_collector(without, sample::roof().id).empty());
    panel.set_session(&without);
    EXPECT_TRUE(joined->toolTip().contains(QStringLiteral("same for both"))) << joined->toolTip().toStdString();
    panel.set_session(nullptr);
    EXPECT_FALSE(joined->isVisible());
}

}  // namespace
}  // namespace wg::ui
