// The form of an item, and the curves that its data make.

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "core/heatpump/cycle.h"
#include "tests/ui/equipment/sample.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/item_fields.h"
#include "ui/equipment/item_plot.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST(ItemForm, GivesBackEveryItemAsItWasShown) {
    ItemForm form;
    std::vector<ItemDraft> all = programs_items();
    all.push_back(block_by_coefficients());
    all.push_back(tested_collector());
    for (const ItemDraft& draft : all) {
        form.show_item(draft, false, true);
        EXPECT_EQ(text_of(form.draft()).toStdString(), text_of(draft).toStdString());
    }
}

TEST(ItemForm, ATextWhereANumberBelongsIsRefusedByTheReaderBesideItsField) {
    ItemForm form;
    form.show_item(first_of(ItemKind::cylinder), false, true);
    QSignalSpy changed(&form, &ItemForm::changed);
    form.box("volume_l")->type("a lot");
    form.box("height_m")->type("1,65");
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(form.draft().item.value("height_m").toDouble(), 1.65) << "a decimal comma is understood";
    const auto result = read(form.draft());
    ASSERT_FALSE(result.ok());
    EXPECT_TRUE(form.show_problems(by_field(ItemKind::cylinder, result.problems())).isEmpty());
    EXPECT_TRUE(form.box("volume_l")->problem().contains("number")) << form.box("volume_l")->problem().toStdString();
    EXPECT_EQ(form.box("height_m")->problem(), "");
    form.show_item(first_of(ItemKind::collector), false, true);
    form.box("width_m")->type("2.9");
    form.show_problems(by_field(ItemKind::collector, read(form.draft()).problems()));
    EXPECT_TRUE(form.box("width_m")->problem().startsWith("\u2018Short side\u2019 is 2.9, above \u2018Long side\u2019"))
        << form.box("width_m")->problem().toStdString() << " names the other field as the screen does";
}

TEST(ItemForm, ALineOfADataSheetIsPastedAndTwoLinesFillBoth) {
    ItemForm form;
    form.show_item(first_of(ItemKind::block), false, true);
    form.data_form()->setCurrentIndex(1);
    Q_EMIT form.data_form()->activated(1);
    EXPECT_TRUE(form.draft().item.value("compressor").isObject());
    EXPECT_FALSE(form.draft().item.contains("displacement_cm3")) << "the other form is left out, not lost";
    form.box("compressor.capacity_w")->type("2600 90 -14 0.9 -0.4 0 0 0 0 0\n250\t1\t5.5\t0\t0\t0\t0\t0\t0\t0");
    const QJsonObject data = form.draft().item.value("compressor").toObject();
    EXPECT_EQ(data.value("capacity_w").toArray().size(), 10);
    EXPECT_EQ(data.value("power_w").toArray().at(2).toDouble(), 5.5);
    // By hand, a letter at a time: parted only when the field is left.
    QLineEdit* edit = form.box("compressor.mass_flow_kg_h")->findChild<QLineEdit*>();
    QTest::keyClicks(edit, "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20");
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("mass_flow_kg_h").toArray().size(), 20);
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("mass_flow_kg_h").toArray().size(), 10);
    EXPECT_EQ(form.draft().item.value("compressor").toObject().value("power_w").toArray().at(9).toDouble(), 20.0);
    form.box("compressor.power_w")->type("1 2 3");
    form.show_problems(by_field(ItemKind::block, read(form.draft()).problems()));
    EXPECT_TRUE(form.box("compressor.power_w")->problem().contains("10"))
        << form.box("compressor.power_w")->problem().toStdString();
    form.data_form()->setCurrentIndex(0);
    Q_EMIT form.data_form()->activated(0);
    EXPECT_EQ(problems_of(form.draft()), "") << "the efficiencies are still there";
}

TEST(ItemPlot, DrawsWhatTheDataMakeAndSaysWhyWhenNot) {
    ItemPlot plot;
    const BlockModel tried = read(block_by_coefficients()).value().blocks.front();
    const auto wrong = heatpump::problems_of(tried, *program().refrigerants.at(tried.refrigerant));
    ASSERT_TRUE(wrong.empty()) << wg::text_of(wrong);
    plot.show_item(read(block_by_coefficients()).value(), program());
    EXPECT_TRUE(plot.has_picture());
    plot.show_item(read(first_of(ItemKind::cylinder)).value(), program());
    EXPECT_FALSE(plot.has_picture());
    plot.show_item(read(tested_collector()).value(), program());
    EXPECT_TRUE(plot.has_picture());
    EXPECT_TRUE(plot.words().contains("test")) << plot.words().toStdString();
    const auto picture =
        collector_picture(heatpump::collector_curves(read(tested_collector()).value().collectors.front(), {3.0}),
                          theme_of(ThemeKind::light));
    // At 3 m/s and the air's own temperature the efficiency is the zero-loss one.
    double nearest = 1.0;
    double efficiency = 0.0;
    for (const QPointF& p : picture.panels.front().curves.front().points) {
        if (std::abs(p.x()) >= nearest) continue;
        nearest = std::abs(p.x());
        efficiency = p.y();
    }
    EXPECT_NEAR(nearest, 0.0, 1e-9);
    EXPECT_NEAR(efficiency, 0.75, 1e-9);
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
