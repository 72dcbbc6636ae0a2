// Versions of an item: what they tell, and saves that meet.

#include <gtest/gtest.h>

#include <QTabWidget>
#include <QTableWidget>

#include "core/store/database.h"
#include "tests/ui/equipment/sample.h"
#include "ui/common/versions_view.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST_F(EquipmentPageTest, ASaveThatAnotherMachineOvertookIsToldAndNothingIsLost) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(2)).ok());
    EXPECT_FALSE(page.save(at(3)));
    EXPECT_TRUE(told.contains("version 2")) << told.toStdString();
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    page.reload();
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0) << "the entry stays";
    EXPECT_TRUE(page.save(at(4)));
    EXPECT_EQ(kept().front().version, 3);
}

TEST_F(EquipmentPageTest, AfterASaveThatFailedOtherwiseAVersionOfSomebodyElseIsNotOvertakenUnseen) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    // The store takes nothing for a while.
    ASSERT_FALSE(
        store->database().run("CREATE TEMP TRIGGER away BEFORE INSERT ON main.equipment_version "
                              "BEGIN SELECT RAISE(ABORT, 'away'); END"));
    EXPECT_FALSE(page.save(at(2)));
    ASSERT_FALSE(store->database().run("DROP TRIGGER away"));
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(3)).ok());
    page.reload();
    told.clear();
    EXPECT_FALSE(page.save(at(4))) << "not unseen";
    EXPECT_TRUE(told.contains("version 2")) << told.toStdString();
    EXPECT_EQ(kept().front().version, 2);
    EXPECT_TRUE(page.history()->isVisibleTo(&page)) << "the newer version is shown";
    ASSERT_EQ(page.history()->versions()->rowCount(), 2);
    EXPECT_EQ(page.history()->versions()->item(0, 0)->text(), "2");
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0) << "the entry stays";
    ASSERT_TRUE(page.save(at(5))) << told.toStdString();
    EXPECT_EQ(kept().front().version, 3);
}

TEST_F(EquipmentPageTest, TheHistoryTellsWhatChangedFieldByField) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71.5");
    ASSERT_TRUE(page.save(at(2)));
    ASSERT_TRUE(page.set_withdrawn(true, at(3)));
    VersionsView& history = *page.history();
    auto* tabs = qobject_cast<QTabWidget*>(history.parentWidget()->parentWidget());
    ASSERT_NE(tabs, nullptr);
    tabs->setCurrentWidget(&history);
    ASSERT_EQ(history.versions()->rowCount(), 3);
    EXPECT_EQ(history.changes()->rowCount(), 0) << "withdrawing changes no data";
    EXPECT_TRUE(history.words().contains("Withdrawn with version 3")) << history.words().toStdString();
    EXPECT_EQ(history.versions()->item(0, 0)->text(), "3, withdrawn");
    EXPECT_EQ(history.versions()->item(0, 3)->text(), "nobody");
    EXPECT_EQ(history.versions()->item(0, 2)->text(), "Ada on desk-2");
    history.versions()->setCurrentCell(1, 0);
    ASSERT_EQ(history.changes()->rowCount(), 1);
    EXPECT_EQ(history.changes()->item(0, 0)->text(), "Mass, empty, kg");
    EXPECT_EQ(history.changes()->item(0, 2)->text(), "71.5");
    history.versions()->setCurrentCell(2, 0);
    EXPECT_EQ(history.changes()->rowCount(), 0);
    EXPECT_TRUE(history.words().contains("first one kept")) << history.words().toStdString();
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
