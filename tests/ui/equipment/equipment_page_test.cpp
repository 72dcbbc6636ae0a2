// The page of equipment on the desk, with a store.

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "core/store/database.h"
#include "tests/ui/equipment/sample.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/item_list.h"
#include "ui/equipment/item_plot.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST_F(EquipmentPageTest, ItemsOfTheProgramAreSearchedAndCannotBeChanged) {
    const int all = page.list()->table()->rowCount();
    EXPECT_EQ(all, static_cast<int>(programs_items().size()));
    page.list()->kind()->setCurrentIndex(2);
    Q_EMIT page.list()->kind()->activated(2);
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(program().catalogue.blocks.size()));
    EXPECT_TRUE(page.plot()->has_picture()) << page.plot()->words().toStdString();
    page.list()->search()->setText("no such thing");
    EXPECT_EQ(page.list()->table()->rowCount(), 0);
    EXPECT_EQ(page.state_words(), "No item is chosen.");
    page.list()->kind()->setCurrentIndex(0);
    page.list()->search()->setText(QString::fromStdString(program().catalogue.collectors.front().name));
    EXPECT_GE(page.list()->table()->rowCount(), 1);
    EXPECT_LT(page.list()->table()->rowCount(), all);
    EXPECT_FALSE(page.can_save());
    EXPECT_TRUE(page.plot()->has_picture());
    EXPECT_EQ(told, "");
}

TEST_F(EquipmentPageTest, ANewItemIsMadeFromOneCorrectedAndSavedInVersions) {
    QSignalSpy changed(&page, &EquipmentPage::items_changed);
    page.select(some_program_id(ItemKind::cylinder));
    page.begin_from_this();
    EXPECT_TRUE(page.state_words().contains("not saved")) << page.state_words().toStdString();
    page.form()->box("id")->type(some_program_id(ItemKind::block));
    page.judge();
    EXPECT_FALSE(page.can_save());
    EXPECT_TRUE(page.form()->box("id")->problem().contains("another item")) << "an id of the program's is refused";
    EXPECT_FALSE(page.save(at(1)));
    page.form()->box("id")->type("own-cylinder");
    page.form()->box("volume_l")->type("9");
    page.judge();
    EXPECT_FALSE(page.can_save());
    page.form()->box("volume_l")->type("210");
    ASSERT_TRUE(page.save(at(2))) << page.state_words().toStdString();
    EXPECT_EQ(changed.count(), 1);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(page.list()->selected(), "own-cylinder");
    page.form()->box("mass_kg")->type("70");
    page.judge();
    EXPECT_TRUE(page.can_save());
    ASSERT_TRUE(page.approve("Ada Reed", at(3)) == false) << "not while something is unsaved";
    ASSERT_TRUE(page.save(at(4)));
    EXPECT_EQ(kept().front().version, 2);
    ASSERT_TRUE(page.approve("Ada Reed", at(5)));
    EXPECT_TRUE(page.state_words().contains("Approved by Ada Reed"));
    ASSERT_TRUE(page.set_withdrawn(true, at(6)));
    EXPECT_TRUE(kept().front().withdrawn);
    ASSERT_TRUE(page.set_withdrawn(false, at(7)));
    EXPECT_EQ(kept().front().version, 4);
    EXPECT_EQ(told, "");
}

TEST_F(EquipmentPageTest, EntriesStayWhenAnotherItemIsLookedAtAndAreDroppedOnlyOnRequest) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.select(some_program_id(ItemKind::block));
    page.reload();
    page.select("own-cylinder");
    EXPECT_EQ(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    page.begin_new(ItemKind::fixing_method);
    page.form()->box("label")->type("Half a method");
    page.select("own-cylinder");
    page.drop_entries();
    EXPECT_NE(page.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    EXPECT_EQ(kept().front().version, 1);
    page.select(
        "new\x01"
        "000002");
    EXPECT_EQ(page.form()->draft().item.value("label").toString(), "Half a method");
    page.drop_entries();
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(programs_items().size()) + 1);
}

TEST_F(EquipmentPageTest, ABlockThatCannotRunIsRefusedByTheHeatPumpsOwnRules) {
    page.select(some_program_id(ItemKind::block));
    page.begin_from_this();
    page.form()->box("id")->type("own-block");
    page.form()->box("shell_loss")->type("0.35");  // the format takes it
    page.judge();
    EXPECT_FALSE(page.can_save());
    EXPECT_NE(page.form()->box("shell_loss")->problem(), "");
    page.form()->box("shell_loss")->type("0.1");
    page.judge();
    EXPECT_TRUE(page.can_save());
}

TEST_F(EquipmentPageTest, DamagedItemsAreToldAndTheRestIsShown) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    const auto problem = store->database().run(
        "INSERT INTO equipment_version (item_id, version, kind, content, sha256, withdrawn, came, saved_at, saved_by) "
        "VALUES ('own-cylinder', 2, 'cylinder', 'gone', ?, 0, 0, '', '')",
        {QString(64, QChar('0'))});
    ASSERT_FALSE(problem.has_value()) << problem->text();
    page.reload();
    EXPECT_TRUE(told.contains("damaged")) << told.toStdString();
    EXPECT_EQ(page.list()->table()->rowCount(), static_cast<int>(programs_items().size()));
}

TEST_F(EquipmentPageTest, AnItemThatCameWithAJobSaysSo) {
    ItemDraft draft = first_of(ItemKind::cylinder);
    draft.item.insert("id", "from-elsewhere");
    const auto put = store::EquipmentBook(*store).put_from_elsewhere("from-elsewhere", text_of(draft).toStdString(),
                                                                     "2027-06-21T12:00:00Z");
    ASSERT_TRUE(put.ok()) << wg::text_of(put.problems());
    page.reload();
    page.select("from-elsewhere");
    EXPECT_TRUE(page.state_words().contains("Came with a job")) << page.state_words().toStdString();
    EXPECT_EQ(page.list()->table()->item(page.list()->table()->currentRow(), 2)->text(), "came with a job");
    page.form()->box("mass_kg")->type("70");
    ASSERT_TRUE(page.save(at(1))) << "it can be taken over as the firm's own";
    EXPECT_FALSE(page.state_words().contains("Came with a job")) << page.state_words().toStdString();
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
