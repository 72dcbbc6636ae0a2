// Entries that are not saved, kept aside and brought back.

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTest>

#include "core/store/database.h"
#include "core/store/entries_kept.h"
#include "tests/ui/equipment/sample.h"
#include "ui/equipment/item_list.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST_F(EquipmentPageTest, EntriesThatWereNotSavedComeBackAtTheNextStart) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.begin_new(ItemKind::fixing_method);
    page.form()->box("label")->type("Half a method");
    const auto entries = [this] { return store::EntriesKept(*store).all(store::EntryBook::equipment).value().entries; };
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return entries().size() == 2 && entries()[1].content.find("71") != std::string::npos; }, 5000))
        << "without being asked";
    ASSERT_TRUE(QTest::qWaitFor([&] { return entries()[0].content.find("Half") != std::string::npos; }, 5000));
    // The program is killed; the next one opens the same store.
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::said, [&](const QString& text) { said += text; });
    EXPECT_EQ(next.unsaved(), 2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("are back: 2")) << said.toStdString();
    next.select("own-cylinder");
    EXPECT_EQ(next.form()->draft().item.value("mass_kg").toDouble(), 71.0);
    ASSERT_TRUE(next.save(at(5)));
    EXPECT_EQ(entries().size(), 1U) << "what is saved is not kept any more";
    next.begin_new(ItemKind::block);
    EXPECT_EQ(next.unsaved(), 2) << "beside the one that came back";
    next.drop_entries();
    next.forget_entries();
    EXPECT_TRUE(entries().empty());
    EXPECT_EQ(EquipmentPage(*store, reference).unsaved(), 0);
}

TEST_F(EquipmentPageTest, EntriesThatCameBackDoNotOverwriteWhatSomebodySavedSince) {
    save_own(ItemKind::cylinder, "own-cylinder", 1);
    page.form()->box("mass_kg")->type("71");
    page.keep_entries();
    ItemDraft other = drafts_of(QByteArray::fromStdString(kept().front().content), "x").value().front();
    other.item.insert("mass_kg", 72);
    ASSERT_TRUE(store::EquipmentBook(*store).save(text_of(other).toStdString(), 1, at(2)).ok());
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::problem, [&](const QString& text) { said += text; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("saved by somebody since, as version 2")) << said.toStdString();
    next.select("own-cylinder");
    EXPECT_FALSE(next.save(at(3))) << "not unseen";
    EXPECT_EQ(next.form()->draft().item.value("mass_kg").toDouble(), 71.0);
}

TEST_F(EquipmentPageTest, KeptEntriesThatAreDamagedOrNoneAreToldAndHinderNothing) {
    store::EntriesKept book(*store);
    ASSERT_TRUE(book.keep(store::EntryBook::equipment, {"x", 0, "", "no json"}, at(1)).ok());
    ASSERT_TRUE(book.keep(store::EntryBook::equipment, {"y", 0, "", "{\"kind\":\"boat\",\"item\":{}}"}, at(1)).ok());
    ASSERT_TRUE(
        book.keep(store::EntryBook::equipment, {"z", 7, "", "{\"kind\":\"block\",\"item\":{\"id\":3}}"}, at(1)).ok());
    EquipmentPage next(*store, reference);
    QString said;
    QObject::connect(&next, &EquipmentPage::problem, [&](const QString& text) { said += text; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !said.isEmpty(); }, 5000));
    EXPECT_TRUE(said.contains("'x' cannot be read") && said.contains("'y' cannot be read")) << said.toStdString();
    EXPECT_EQ(next.unsaved(), 1) << "of an item that is gone: something new";
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
