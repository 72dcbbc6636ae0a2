#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "ui/drawing/fields.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

using namespace Qt::StringLiterals;

TEST(ParsedNumber, TakesWhatPeopleWrite) {
    EXPECT_EQ(parsed_number(u"1.5"_s), 1.5);
    EXPECT_EQ(parsed_number(u"1,5"_s), 1.5);
    EXPECT_EQ(parsed_number(u" 1 240 "_s), 1240.0);
    EXPECT_EQ(parsed_number(u"\u2212 3"_s), -3.0);
}

TEST(ParsedNumber, RefusesWhatIsNoPlainFiniteNumber) {
    for (const QString& text : {u"abc"_s, u""_s, u"nan"_s, u"inf"_s, u"1e999"_s, u"1,234.5"_s, u"3 m"_s, u"0x10"_s}) {
        EXPECT_FALSE(parsed_number(text).has_value()) << text.toStdString();
    }
}

struct Field : testing::Test {
    NumberField field{u"Tilt"_s, u"deg"_s, {0.0, 90.0, 1, 1.0, false}};
    QSignalSpy committed{&field, &NumberField::committed};
    void type(const QString& text) {
        field.line_edit()->setText(text);
        QTest::keyClick(field.line_edit(), Qt::Key_Return);
    }
};

TEST_F(Field, GivesAGoodValueOnce) {
    field.set_value(35.0);
    type(u"40"_s);
    ASSERT_EQ(committed.count(), 1);
    EXPECT_EQ(field.value(), 40.0);
    type(u"40"_s);
    EXPECT_EQ(committed.count(), 1) << "the same value again is no edit";
}

TEST_F(Field, RefusesBadInputBesideTheFieldAndKeepsTheValue) {
    field.set_value(35.0);
    for (const QString& text : {u"abc"_s, u"91"_s, u"-1"_s, u""_s, u"nan"_s}) {
        type(text);
        EXPECT_FALSE(field.problem().isEmpty()) << text.toStdString();
        EXPECT_EQ(field.value(), 35.0);
    }
    EXPECT_EQ(committed.count(), 0);
    QTest::keyClick(field.line_edit(), Qt::Key_Escape);
    EXPECT_TRUE(field.problem().isEmpty());
    EXPECT_EQ(field.line_edit()->text(), u"35.0"_s);
}

TEST_F(Field, StepsWithTheArrowKeysButNeverOverItsRange) {
    field.set_value(89.5);
    QTest::keyClick(field.line_edit(), Qt::Key_Down);
    EXPECT_EQ(field.value(), 88.5);
    QTest::keyClick(field.line_edit(), Qt::Key_Up);
    QTest::keyClick(field.line_edit(), Qt::Key_Up);
    EXPECT_EQ(field.value(), 89.5);
}

TEST(OptionalField, MeansNotKnownWhenEmpty) {
    NumberField field{u"Wind"_s, u"m/s"_s, {1.0, 100.0, 1, 0.0, true}};
    QSignalSpy committed(&field, &NumberField::committed);
    field.set_value(25.0);
    field.line_edit()->clear();
    QTest::keyClick(field.line_edit(), Qt::Key_Return);
    ASSERT_EQ(committed.count(), 1);
    EXPECT_FALSE(field.value().has_value());
    EXPECT_TRUE(field.problem().isEmpty());
}

TEST(Combo, IsNotChangedByAPassingWheel) {
    CalmCombo combo;
    combo.addItems({u"a"_s, u"b"_s, u"c"_s});
    combo.setCurrentIndex(1);
    QWheelEvent wheel({5, 5}, {5, 5}, {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&combo, &wheel);
    EXPECT_EQ(combo.currentIndex(), 1);
}

TEST(LabelPlacer, KeepsLabelsOffEachOtherAndOffWhatIsDrawn) {
    LabelPlacer placer(QRectF(0, 0, 400, 400));
    const QRectF drawn(190, 190, 20, 20);
    placer.keep_free(drawn);
    std::vector<QRectF> boxes;
    for (int i = 0; i < 8; ++i)
        boxes.push_back(placer.place({200, 200}, {50, 14}, 14).box);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        EXPECT_FALSE(boxes[i].intersects(drawn)) << i;
        EXPECT_TRUE(QRectF(0, 0, 400, 400).contains(boxes[i])) << i;
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(boxes[i].intersects(boxes[j])) << i << " and " << j;
    }
}

TEST(Lettering, GrowsInProportionAtAnySize) {
    const QString text = u"12 400 mm"_s;
    const double small = Lettering(0.5).width(text);
    const double middle = Lettering(5.0).width(text);
    // Hinting rounds glyph widths to whole pixels: a few per cent either way.
    EXPECT_NEAR(middle / small, 10.0, 0.01);
    EXPECT_NEAR(Lettering(100.0).width(text) / middle, 20.0, 1.0);
}

}  // namespace
}  // namespace wg::ui
