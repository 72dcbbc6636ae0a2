// Items as files, out and in, and from strangers.

#include <gtest/gtest.h>

#include <QJsonDocument>
#include <QSignalSpy>

#include "tests/ui/equipment/sample.h"
#include "ui/equipment/item_list.h"

namespace wg::ui {
namespace equipment_test {
namespace {

TEST_F(EquipmentPageTest, ItemsGoOutAsAFileAndComeInElsewhere) {
    save_own(ItemKind::block, "own-block", 1);
    save_own(ItemKind::cylinder, "own-cylinder", 2);
    page.form()->box("fits_blocks")->type("own-block");
    ASSERT_TRUE(page.save(at(3)));
    const QByteArray file = page.export_text(true);
    const auto elsewhere = store::Store::open(":memory:", Instant{0}, "Ben").value();
    EquipmentPage there(*elsewhere, reference);
    QSignalSpy changed(&there, &EquipmentPage::items_changed);
    const auto done = there.import_text(file, "from-ada.json", at(4));
    ASSERT_TRUE(done.ok()) << wg::text_of(done.problems());
    EXPECT_TRUE(done.value().startsWith("2 new")) << done.value().toStdString();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(there.export_text(true), file);
    EXPECT_TRUE(there.import_text(file, "from-ada.json", at(5)).value().contains("2 as they were"));
    EXPECT_EQ(changed.count(), 1);
    there.select("own-block");
    const auto read_back = drafts_of(there.export_text(false), "one").value();
    ASSERT_EQ(read_back.size(), 1U);
    EXPECT_EQ(read_back.front().item.value("id").toString(), "own-block");
}

TEST_F(EquipmentPageTest, AHostileFileChangesNothing) {
    const ItemDraft good = first_of(ItemKind::cylinder);
    ItemDraft taken = good;  // the id of the program's
    ItemDraft own = good;
    own.item.insert("id", "own");
    ItemDraft wrong = good;
    wrong.item.insert("id", "wrong");
    wrong.item.insert("volume_l", 1e9);
    ItemDraft lost = good;
    lost.item.insert("id", "lost");
    lost.item.insert("fits_blocks", QJsonArray{"nowhere"});
    const QByteArray files[] = {QByteArray(),
                                QByteArray("not json"),
                                QByteArray("\xEF\xBB\xBF") + "{",
                                QByteArray("{\"schema\": 2}"),
                                QByteArray("{\"schema\": 1}"),
                                QByteArray(100000, '['),
                                text_of({own, taken}),
                                text_of({own, wrong}),
                                text_of({own, lost}),
                                text_of({own, own}),
                                text_of(own).chopped(20)};
    for (const QByteArray& file : files) {
        const auto done = page.import_text(file, "hostile.json", at(1));
        EXPECT_FALSE(done.ok()) << file.left(60).toStdString();
        EXPECT_NE(wg::text_of(done.problems()).find("hostile.json"), std::string::npos);
        EXPECT_TRUE(kept().empty());
    }
    EXPECT_TRUE(page.import_text(text_of(own), "good.json", at(2)).ok());
}

}  // namespace
}  // namespace equipment_test
}  // namespace wg::ui
