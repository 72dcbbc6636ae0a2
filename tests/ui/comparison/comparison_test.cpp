// Choices side by side through the window, on the demonstration job with its real equipment and weather.

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include "tests/tools/load_reference.h"
#include "ui/common/edits.h"
#include "ui/comparison/choice_plans.h"
#include "ui/comparison/comparison.h"
#include "ui/drawing/fields.h"
#include "ui/layout/layout_stage.h"

namespace wg::ui {
namespace comparison_test {

constexpr int long_patience_ms = 60000;

struct Compare : testing::Test {
    static std::shared_ptr<const plan::Reference> reference() {
        static const auto value = std::make_shared<const plan::Reference>(test::reference());
        return value;
    }
    /// Choice A of the demonstration, and B with its collectors moved by 20 cm.
    static Job two_choices() {
        Job job = test::demo_job();
        job.choices.resize(1);
        Choice other = job.choices.front();
        other.id = new_id();
        other.label = "B: moved";
        for (Placement& placement : other.placements) {
            placement.id = new_id();
            placement.y_m += 0.2;
        }
        job.choices.push_back(other);
        job.chosen_choice_id = job.choices.front().id;
        return job;
    }
    JobSession session{two_choices(), reference()};
    LayoutStage stage;
    Comparison* comparison = nullptr;
    QTableWidget* table = nullptr;

    void SetUp() override {
        stage.resize(1100, 640);
        stage.set_session(&session);
        stage.show();
        stage.show_view(LayoutStage::View::compare);
        comparison = stage.findChild<Comparison*>();
        table = comparison->findChild<QTableWidget*>();
    }
    [[nodiscard]] ChoicePlans& plans() { return ChoicePlans::of(session); }
    [[nodiscard]] std::string id(std::size_t choice) const { return session.job().choices.at(choice).id; }
    [[nodiscard]] bool planned() {
        return QTest::qWaitFor(
            [&] {
                return session.settled() && !plans().busy() && plans().plan_of(id(0)) != nullptr &&
                       plans().plan_of(id(1)) != nullptr;
            },
            long_patience_ms);
    }
    [[nodiscard]] QString cell(const QString& what, int column) const {
        for (int row = 0; row < table->rowCount(); ++row) {
            if (table->verticalHeaderItem(row)->text().endsWith(what)) return table->item(row, column)->text();
        }
        return {};
    }
    template <typename Button>
    [[nodiscard]] Button* button(const QString& words) const {
        for (Button* one : comparison->findChildren<Button*>()) {
            if (one->text().startsWith(words)) return one;
        }
        return nullptr;
    }
};

TEST_F(Compare, TheOtherChoiceIsPlannedInTheBackgroundAndMeanwhileSaysWorking) {
    EXPECT_FALSE(stage.findChild<QWidget*>(QStringLiteral("qt_tabwidget_stackedwidget"))->isVisible())
        << "the table has the room of the panels";
    ASSERT_EQ(table->columnCount(), 2);
    EXPECT_EQ(cell(QStringLiteral("Electricity a year"), 1), QStringLiteral("working"));
    ASSERT_TRUE(planned());
    EXPECT_TRUE(cell(QStringLiteral("Electricity a year"), 1).startsWith(QStringLiteral("about ")));
    EXPECT_TRUE(cell(QStringLiteral("Electricity a year"), 0).startsWith(QStringLiteral("about ")));
    EXPECT_FALSE(cell(QStringLiteral("Price with tax"), 1).isEmpty());
    // The same as planning it by hand.
    plan::Options options;
    options.choice_id = id(1);
    const auto by_hand = plan::plan(session.job(), *reference(), options);
    ASSERT_TRUE(by_hand.ok());
    EXPECT_EQ(plans().plan_of(id(1))->plan->figures.electricity_kwh.mid, by_hand.value().figures.electricity_kwh.mid);
    EXPECT_EQ(plans().plan_of(id(1))->plan->figures.price_gross.minor, by_hand.value().figures.price_gross.minor);
}

TEST_F(Compare, FiguresSayInWordsWhoseTheyAreAndWhichIsBest) {
    ASSERT_TRUE(planned());
    bool best_said = false;
    for (int row = 0; row < table->rowCount(); ++row) {
        for (int column = 0; column < 2; ++column) {
            const QString said = table->item(row, column)->data(Qt::AccessibleTextRole).toString();
            EXPECT_TRUE(said.contains(table->item(row, column)->text()));
            EXPECT_TRUE(
                said.startsWith(QString::fromStdString(session.job().choices[static_cast<std::size_t>(column)].label)));
            best_said = best_said || said.contains(QStringLiteral("best"));
        }
    }
    EXPECT_TRUE(best_said);
}

TEST_F(Compare, AnEditOfOneChoiceLeavesThePlanOfTheOther) {
    ASSERT_TRUE(planned());
    const auto of_b = plans().plan_of(id(1))->plan;
    move_placement(session, session.job().choices[0].placements[0].id, 3.0, 2.0);
    EXPECT_EQ(plans().plan_of(id(0)), nullptr) << "moved and not planned yet";
    ASSERT_NE(plans().plan_of(id(1)), nullptr);
    EXPECT_EQ(plans().plan_of(id(1))->plan, of_b);
    ASSERT_TRUE(planned());
    EXPECT_EQ(plans().plan_of(id(1))->plan, of_b);
    set_ground_albedo(session, 0.4);
    EXPECT_EQ(plans().plan_of(id(1)), nullptr) << "the site counts for all";
    ASSERT_TRUE(planned());
    EXPECT_NE(plans().plan_of(id(1))->plan, of_b);
}

TEST_F(Compare, DuplicateRenameAndMarkActOnTheColumnWithOneStepEach) {
    ASSERT_TRUE(planned());
    table->setCurrentCell(0, 1);
    EXPECT_EQ(comparison->selected(), id(1));
    auto* name = comparison->findChild<TextField*>();
    ASSERT_NE(name, nullptr);
    EXPECT_EQ(name->text(), QStringLiteral("B: moved"));
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("B: higher"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(session.job().choices[1].label, "B: higher");
    EXPECT_EQ(session.undo_stack().count(), 1);
    EXPECT_TRUE(table->horizontalHeaderItem(1)->text().startsWith(QStringLiteral("B: higher")));
    EXPECT_NE(plans().plan_of(id(1)), nullptr) << "a new name needs no new plan";

    QTest::mouseClick(button<QPushButton>(QStringLiteral("Mark as chosen")), Qt::LeftButton);
    EXPECT_EQ(session.job().chosen_choice_id, id(1));
    EXPECT_EQ(session.undo_stack().count(), 2);
    EXPECT_TRUE(table->horizontalHeaderItem(1)->text().contains(QStringLiteral("chosen")));
    EXPECT_FALSE(table->horizontalHeaderItem(0)->text().contains(QStringLiteral("chosen")));
    EXPECT_FALSE(button<QPushButton>(QStringLiteral("Mark as chosen"))->isEnabled());

    QTest::mouseClick(button<QPushButton>(QStringLiteral("Duplicate")), Qt::LeftButton);
    ASSERT_EQ(session.job().choices.size(), 3U);
    EXPECT_EQ(table->columnCount(), 3);
    EXPECT_EQ(comparison->selected(), id(2));
    EXPECT_EQ(session.undo_stack().count(), 3);
    session.undo_stack().undo();
    EXPECT_EQ(table->columnCount(), 2);

    table->setCurrentCell(0, 0);
    QTest::mouseClick(button<QPushButton>(QStringLiteral("Put on screen")), Qt::LeftButton);
    EXPECT_EQ(session.current_choice()->id, id(0));
}

TEST_F(Compare, FourAtMostAndWhichIsPickedInTheMenu) {
    for (int i = 0; i < 3; ++i)
        duplicate_choice(session, id(0));
    ASSERT_EQ(session.job().choices.size(), 5U);
    EXPECT_EQ(table->columnCount(), 4);
    EXPECT_FALSE(plans().set_compared(id(4), true));
    auto* which = button<QToolButton>(QStringLiteral("Compared"));
    ASSERT_NE(which, nullptr);
    ASSERT_EQ(which->menu()->actions().size(), 5);
    EXPECT_FALSE(which->menu()->actions()[4]->isEnabled());
    which->menu()->actions()[1]->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->columnCount() == 3; }, 5000));
    EXPECT_TRUE(which->menu()->actions()[4]->isEnabled());
    which->menu()->actions()[4]->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->columnCount() == 4; }, 5000));
    const std::vector<std::string> expected = {id(0), id(2), id(3), id(4)};
    EXPECT_EQ(plans().compared(), expected);
}

TEST_F(Compare, CopiesAsTextAndAsCsv) {
    ASSERT_TRUE(planned());
    auto* copy = button<QToolButton>(QStringLiteral("Copy"));
    ASSERT_NE(copy, nullptr);
    QApplication::clipboard()->clear();
    copy->menu()->actions()[0]->trigger();
    const QString text = QApplication::clipboard()->text();
    EXPECT_EQ(text, comparison->figures().to_text());
    EXPECT_TRUE(text.contains(QStringLiteral("(chosen)\tB: moved")));
    copy->menu()->actions()[1]->trigger();
    EXPECT_EQ(QApplication::clipboard()->text().toUtf8(), comparison->figures().to_csv());
    EXPECT_EQ(comparison->figures().rows.size(), static_cast<std::size_t>(table->rowCount()));
}

TEST_F(Compare, IsWorkedByTheKeyboard) {
    ASSERT_TRUE(planned());
    table->setFocus();
    table->setCurrentCell(2, 0);
    QTest::keyClick(table, Qt::Key_Right);
    EXPECT_EQ(comparison->selected(), id(1));
    QTest::keyClick(table, Qt::Key_Down);
    EXPECT_EQ(table->currentRow(), 3);
    QTest::keyClick(table, Qt::Key_Tab);
    EXPECT_FALSE(table->hasFocus()) << "Tab leaves the table";
    for (const QPushButton* one : comparison->findChildren<QPushButton*>())
        EXPECT_NE(one->focusPolicy() & Qt::TabFocus, 0) << one->text().toStdString();
    EXPECT_FALSE(table->accessibleName().isEmpty());
}

TEST_F(Compare, AChoiceThatCannotBePlannedIsSaidInWords) {
    session.edit(QStringLiteral("No such block"), [](Job& job) { job.choices[1].block_model = "none of that name"; });
    ASSERT_TRUE(planned());
    EXPECT_EQ(cell(QStringLiteral("Electricity a year"), 1), QStringLiteral("\u2014"));
    bool said = false;
    for (const QLabel* label : comparison->findChildren<QLabel*>())
        said = said || label->text().contains(QStringLiteral("none of that name"));
    EXPECT_TRUE(said);
}

TEST_F(Compare, NothingIsPlannedWhileNobodyLooks) {
    ASSERT_TRUE(planned());
    stage.show_view(LayoutStage::View::surface);
    set_ground_albedo(session, 0.5);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.settled(); }, long_patience_ms));
    QTest::qWait(20);
    EXPECT_FALSE(plans().busy());
    EXPECT_EQ(plans().plan_of(id(1)), nullptr);
    stage.show_view(LayoutStage::View::compare);
    EXPECT_TRUE(planned());
}

TEST_F(Compare, ClosingTheJobWhileItPlansWaitsAndEnds) {
    auto other = std::make_unique<JobSession>(two_choices(), reference());
    stage.set_session(other.get());
    ASSERT_TRUE(QTest::qWaitFor([&] { return ChoicePlans::of(*other).busy(); }, long_patience_ms));
    stage.set_session(nullptr);
    other.reset();
    EXPECT_EQ(table->columnCount(), 0);
}

}  // namespace comparison_test
}  // namespace wg::ui
