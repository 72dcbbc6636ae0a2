// The strip for errors and good news: what it covers, how long it stays, how it is reached.

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>
#include <functional>

#include "ui/common/free_place.h"
#include "ui/common/notice_bar.h"

namespace wg::ui {
namespace notice_test {
namespace {

struct Notice : testing::Test {
    QWidget page;
    NoticeBar* bar = new NoticeBar(&page);
    std::vector<QPushButton*> buttons;
    Notice() {
        page.resize(800, 400);
        auto* column = new QVBoxLayout(&page);
        for (int i = 0; i < 3; ++i) {
            buttons.push_back(new QPushButton(QString::number(i), &page));
            column->addWidget(buttons.back());
            if (i < 2) column->addStretch(1);
        }
        bar->lie_over({8, 8, 8, 8});
        page.show();
        QApplication::processEvents();
    }
    [[nodiscard]] std::vector<QRect> places() const {
        std::vector<QRect> out;
        for (const QPushButton* one : buttons)
            out.push_back(one->geometry());
        return out;
    }
};

TEST_F(Notice, MovesNothingAndCoversNoButton) {
    const auto before = places();
    bar->add(Mark::stop, "The list was not saved. Somebody saved version 3 of it in between.");
    QTest::qWait(5);
    EXPECT_TRUE(bar->isVisible());
    EXPECT_EQ(places(), before);
    for (const QRect& button : before)
        EXPECT_FALSE(bar->geometry().intersects(button));
    EXPECT_TRUE(page.rect().contains(bar->geometry()));
    page.resize(500, 300);
    QTest::qWait(5);
    EXPECT_TRUE(page.rect().contains(bar->geometry()));
    for (const QPushButton* button : buttons)
        EXPECT_FALSE(bar->geometry().intersects(button->geometry()));
}

TEST_F(Notice, LongTextIsHighEnoughToBeRead) {
    bar->add(Mark::stop, "short");
    QTest::qWait(5);
    const int low = bar->height();
    bar->add(Mark::stop, QString("a long sentence that goes on ").repeated(12));
    QTest::qWait(5);
    EXPECT_GT(bar->height(), low);
    EXPECT_GE(bar->height(), bar->heightForWidth(bar->width()));
}

TEST_F(Notice, GoodNewsLeavesByItselfAndTroubleStays) {
    bar->set_stay_ms(20);
    bar->tell("Version 2 saved");
    EXPECT_TRUE(QTest::qWaitFor([this] { return !bar->isVisible(); }, 2000));
    bar->tell("Version 3 saved");
    bar->add(Mark::stop, "The price has three decimals");
    EXPECT_EQ(bar->text(), "The price has three decimals") << "good news is no part of what is wrong";
    QTest::qWait(60);
    EXPECT_TRUE(bar->isVisible());
    bar->add(Mark::stop, "Another");
    EXPECT_TRUE(bar->text().contains("three decimals")) << "nobody may have read it yet";
    bar->tell("Version 4 saved");
    EXPECT_EQ(bar->text(), "Version 4 saved");
}

TEST_F(Notice, LinesWhoseCauseIsOverGoAndTheOthersStay) {
    bar->add(Mark::stop, "900 is beyond 0 to 100");
    bar->add(Mark::caution, "No backup was made today");
    bar->take_away({"900 is beyond 0 to 100", "never said"});
    EXPECT_EQ(bar->text(), "No backup was made today");
    EXPECT_TRUE(bar->isVisible());
    bar->take_away({"No backup was made today"});
    EXPECT_FALSE(bar->isVisible());
}

TEST_F(Notice, GoodNewsStaysWhileTheFocusIsInIt) {
    bar->set_stay_ms(20);
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    bar->tell("Version 2 saved");
    QTest::keyClick(&page, Qt::Key_F6);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_TRUE(bar->isAncestorOf(QApplication::focusWidget())) << "F6 leads there";
    QTest::qWait(80);
    EXPECT_TRUE(bar->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(bar->isVisible());
}

TEST_F(Notice, F6LeadsToEachOfTwoNoticesInTurn) {
    auto* other = new NoticeBar(&page);
    other->lie_over({8, 8, 8, 8});
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    bar->add(Mark::stop, "The list was not saved");
    other->add(Mark::stop, "The job was not saved");
    int in_bar = 0;
    int in_other = 0;
    for (int press = 0; press < 2; ++press) {
        QTest::keyClick(&page, Qt::Key_F6);
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        in_bar += bar->isAncestorOf(QApplication::focusWidget()) ? 1 : 0;
        in_other += other->isAncestorOf(QApplication::focusWidget()) ? 1 : 0;
    }
    EXPECT_EQ(in_bar, 1);
    EXPECT_EQ(in_other, 1);
}

TEST_F(Notice, IsAnAlertForReadersOfTheScreen) {
    bar->add(Mark::stop, "The list was not saved");
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(bar);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->role(), QAccessible::AlertMessage);
    EXPECT_TRUE(told->text(QAccessible::Name).contains("The list was not saved"));
}

TEST(FreePlace, IsAsLowAsNothingIsCoveredElseWhereTheLeastIs) {
    const QRect room(0, 0, 600, 300);
    EXPECT_EQ(free_place({200, 50}, room, {}), QRect(0, 250, 200, 50));
    EXPECT_EQ(free_place({200, 50}, room, {{0, 240, 150, 60}}), QRect(200, 250, 200, 50)) << "beside it";
    const QRect above = free_place({200, 50}, room, {{0, 240, 600, 60}});
    EXPECT_LE(above.bottom(), 239);
    EXPECT_GE(above.bottom(), 230);
    // Everything is covered: where the fewest are.
    const QRect crowded = free_place({600, 50}, room, {{0, 0, 600, 300}, {0, 150, 600, 150}});
    EXPECT_LE(crowded.bottom(), 149);
    EXPECT_TRUE(room.contains(free_place({900, 900}, room, {})));
}

TEST(FreePlace, PrefersThePlaceOverTheFewestWords) {
    const QRect room(0, 0, 600, 300);
    EXPECT_EQ(free_place({200, 50}, room, {}, {}, {{0, 240, 190, 60}}), QRect(200, 250, 200, 50));
    const QRect place = free_place({200, 50}, room, {{0, 240, 600, 60}}, {}, {{0, 100, 600, 140}});
    EXPECT_LE(place.bottom(), 99) << "neither the buttons below nor the words above them";
    // Rather over words than over the bar that rows are scrolled with.
    EXPECT_LE(free_place({200, 50}, room, {}, {{0, 240, 600, 12}}, {{0, 0, 600, 240}}).bottom(), 299);
    EXPECT_LE(free_place({200, 80}, room, {}, {{0, 240, 600, 12}}, {{0, 0, 600, 240}}).bottom(), 239);
    // Where words are everywhere, controls still come first.
    EXPECT_LE(free_place({200, 50}, room, {{0, 240, 600, 60}}, {}, {room}).bottom(), 239);
}

TEST(FreePlace, WordsAndRowsCountDownToTheLastRow) {
    QWidget page;
    page.resize(400, 300);
    QLabel words("24.5 is from 20 to 30", &page);
    words.setGeometry(10, 10, 200, 20);
    QLabel empty(&page);
    empty.setGeometry(10, 40, 200, 20);
    QTableWidget table(1, 1, &page);
    table.setGeometry(10, 80, 300, 200);
    page.show();
    const std::vector<QRect> texts = texts_of(page);
    ASSERT_GE(texts.size(), 2U);
    EXPECT_EQ(texts[0], QRect(10, 10, 200, 20));
    for (const QRect& one : texts) {
        EXPECT_FALSE(one.intersects(empty.geometry()));
        EXPECT_LT(one.bottom(), 200) << "white below the only row is no text";
    }
}

TEST(FreePlace, HiddenAndScrolledAwayControlsCountForNothing) {
    QWidget page;
    page.resize(300, 200);
    QLineEdit seen(&page);
    seen.setGeometry(10, 10, 100, 30);
    QLineEdit hidden(&page);
    hidden.hide();
    QWidget part(&page);
    part.setGeometry(0, 100, 300, 50);
    QPushButton cut(&part);
    cut.setGeometry(0, 40, 100, 30);
    QPushButton gone(&part);
    gone.setGeometry(0, 60, 100, 30);
    page.show();
    const std::vector<QRect> controls = controls_of(page);
    ASSERT_EQ(controls.size(), 2U);
    EXPECT_EQ(controls[0], QRect(10, 10, 100, 30));
    EXPECT_EQ(controls[1], QRect(0, 140, 100, 10));
}

}  // namespace
}  // namespace notice_test
}  // namespace wg::ui
