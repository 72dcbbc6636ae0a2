// The firm's own equipment: versions that only grow, approvals of one version each, and what is refused.

#include "core/store/equipment_book.h"

#include <gtest/gtest.h>

#include "core/equipment/codec.h"
#include "core/quantity/sha256.h"
#include "tests/core/store/filled_store.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace equipment_book_test {
namespace {

std::string why(const Result<EquipmentVersion>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

bool says(const Result<EquipmentVersion>& result, const char* words) {
    return why(result).find(words) != std::string::npos;
}

TEST_P(EachStore, EveryVersionOfAnItemIsKeptAsItWasSaved) {
    const auto store = open(path(), "Ada on desk-2");
    EquipmentBook book(*store);
    const std::string one = invented_cylinder("own", "L\xC3\xA4rche 250");
    const std::string two = invented_cylinder("own", "L\xC3\xA4rche 255");
    const auto first = book.save(one, 0, at(1));
    ASSERT_TRUE(first.ok()) << why(first);
    EXPECT_EQ(first.value().version, 1);
    EXPECT_EQ(first.value().kind, ItemKind::cylinder);
    EXPECT_EQ(first.value().saved_by, "Ada on desk-2");
    EXPECT_EQ(first.value().sha256, sha256_hex(one));
    EXPECT_EQ(book.save(one, 1, at(2)).value().version, 1) << "the same text is no new version";
    const auto second = book.save(two, 1, at(3));
    ASSERT_TRUE(second.ok()) << why(second);
    const EquipmentKept history = book.history("own").value();
    ASSERT_EQ(history.items.size(), 2U);
    EXPECT_EQ(history.items[0], second.value());
    EXPECT_EQ(history.items[1], first.value());
    EXPECT_EQ(history.items[1].content, one) << "byte for byte";
    EXPECT_EQ(history.items[0].saved_at, iso8601(at(3)));
    EXPECT_EQ(book.current().value().items, std::vector<EquipmentVersion>{second.value()});
    EXPECT_TRUE(book.history("other").value().items.empty());
    EXPECT_TRUE(book.history("").value().items.empty());
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, AVersionIsNeitherChangedNorDeletedNorLeftOut) {
    const auto store = open();
    EquipmentBook book(*store);
    ASSERT_TRUE(book.save(invented_cylinder("own", "Own"), 0, at(1)).ok());
    ASSERT_TRUE(book.approve("own", 1, "Ada Reed", at(2)).ok());
    EXPECT_EQ(sql(path(), "UPDATE equipment_version SET saved_by = 'nobody'"),
              "a version of equipment is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM equipment_version"), "a version of equipment is never deleted");
    EXPECT_EQ(sql(path(), "UPDATE equipment_approval SET approved_by = 'x'"),
              "an approval of equipment is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM equipment_approval"), "an approval of equipment is never deleted");
    const QString row =
        QStringLiteral("INSERT INTO equipment_version VALUES ('own', %1, '%2', 'x', '%3', 0, 0, '', '')");
    const QString hash(64, QChar('0'));
    const char* follows = "a version of equipment follows the one before it, of the same kind";
    EXPECT_EQ(sql(path(), row.arg(3).arg("cylinder", hash)), follows);
    EXPECT_EQ(sql(path(), row.arg(2).arg("block", hash)), follows);
    EXPECT_NE(sql(path(), row.arg(1).arg("cylinder", hash)), "") << "nor is one replaced";
    EXPECT_NE(sql(path(), row.arg(2).arg("boiler", hash)), "");
}

TEST_P(EachStore, ASaveFromAnOlderVersionIsRefusedWithWhoSaved) {
    const auto store = open(path(), "Ada on desk-2");
    EquipmentBook book(*store);
    ASSERT_TRUE(book.save(invented_cylinder("own", "A"), 0, at(1)).ok());
    const auto other = open(path(), "Ben on desk-3");
    ASSERT_TRUE(EquipmentBook(*other).save(invented_cylinder("own", "B"), 1, at(2)).ok());
    const auto late = book.save(invented_cylinder("own", "C"), 1, at(3));
    EXPECT_TRUE(says(late, "version 2") && says(late, "Ben on desk-3")) << why(late);
    EXPECT_FALSE(book.withdraw("own", 1, at(3)).ok());
    EXPECT_FALSE(book.approve("own", 1, "Ada Reed", at(3)).ok());
    const auto again = book.save(invented_cylinder("own", "C"), 0, at(3));
    EXPECT_TRUE(says(again, "is in the firm's list already")) << why(again);
    EXPECT_TRUE(says(book.save(invented_cylinder("new", "C"), 4, at(3)), "is not in the firm's list"));
    EXPECT_EQ(book.history("own").value().items.size(), 2U);
}

TEST_P(EachStore, WithdrawnAndBroughtBackAreVersionsAndNothingIsLost) {
    const auto store = open();
    EquipmentBook book(*store);
    const std::string text = invented_cylinder("own", "Own");
    ASSERT_TRUE(book.save(text, 0, at(1)).ok());
    const auto gone = book.withdraw("own", 1, at(2));
    ASSERT_TRUE(gone.ok()) << why(gone);
    EXPECT_TRUE(gone.value().withdrawn);
    EXPECT_EQ(gone.value().version, 2);
    EXPECT_EQ(book.withdraw("own", 2, at(3)).value().version, 2) << "once";
    EXPECT_TRUE(book.current().value().items.at(0).withdrawn);
    EXPECT_TRUE(says(book.approve("own", 2, "Ada Reed", at(3)), "is withdrawn"));
    EXPECT_EQ(book.bring_back("own", 2, at(4)).value().content, text);
    ASSERT_TRUE(book.withdraw("own", 3, at(5)).ok());
    const auto saved = book.save(text, 4, at(6));
    ASSERT_TRUE(saved.ok()) << why(saved);
    EXPECT_FALSE(saved.value().withdrawn) << "saving a withdrawn item brings it back";
    EXPECT_EQ(saved.value().version, 5);
    EXPECT_FALSE(book.withdraw("other", 1, at(7)).ok());
}

TEST_P(EachStore, AnApprovalBelongsToOneVersion) {
    const auto store = open();
    EquipmentBook book(*store);
    ASSERT_TRUE(book.save(invented_cylinder("own", "A"), 0, at(1)).ok());
    for (const std::string& nobody :
         {std::string(), std::string("  "), std::string(201, 'x'), std::string("\xFF"), std::string("a\0b", 3)})
        EXPECT_FALSE(book.approve("own", 1, nobody, at(2)).ok());
    ASSERT_TRUE(book.approve("own", 1, "Ada Reed", at(2)).ok());
    ASSERT_TRUE(book.approve("own", 1, "Ben Holm", at(3)).ok());
    EXPECT_EQ(book.current().value().items.at(0).approved_by, "Ben Holm") << "the newest";
    EXPECT_EQ(book.current().value().items.at(0).approved_at, iso8601(at(3)));
    ASSERT_TRUE(book.save(invented_cylinder("own", "B"), 1, at(4)).ok());
    EXPECT_EQ(book.current().value().items.at(0).approved_by, "");
    EXPECT_EQ(book.history("own").value().items.at(1).approved_by, "Ben Holm");
}

TEST_P(EachStore, WhatTheEquipmentFileRefusesIsNotStored) {
    const auto store = open();
    EquipmentBook book(*store);
    const std::string good = invented_cylinder("own", "Own");
    const auto with = [&good](const std::string& what, const std::string& instead) {
        std::string text = good;
        text.replace(text.find(what), what.size(), instead);
        return text;
    };
    EXPECT_TRUE(says(book.save("", 0, at(1)), "equipment"));
    EXPECT_TRUE(says(book.save("{\"schema\": 1}", 0, at(1)), "holds 0 items instead of one"));
    EXPECT_TRUE(says(book.save(with("\"volume_l\": 250", "\"volume_l\": 9"), 0, at(1)), "volume_l"));
    EXPECT_TRUE(says(book.save(with("\"volume_l\": 250, ", ""), 0, at(1)), "volume_l"));
    EXPECT_TRUE(says(book.save(with("\"mass_kg\": 75", "\"mass_kg\": 75, \"colour\": 1"), 0, at(1)), "colour"));
    EXPECT_FALSE(book.save(good.substr(0, good.size() / 2), 0, at(1)).ok());
    EXPECT_FALSE(book.save("\xEF\xBB\xBF" + good, 0, at(1)).ok()) << "a mark that would not come back";
    EXPECT_FALSE(book.save(with("Own", std::string("O\0n", 3)), 0, at(1)).ok());
    EXPECT_FALSE(book.save(with("Own", "\xC3"), 0, at(1)).ok());
    EXPECT_TRUE(says(
        book.save(with("\"note\": \"invented\"", "\"note\": \"" + std::string(max_item_bytes, 'x') + '"'), 0, at(1)),
        "longer than 256 KiB"));
    const std::string item = good.substr(good.find("[{") + 1, good.rfind(']') - good.find("[{") - 1);
    EXPECT_TRUE(says(book.save(with(
                                   "]}", ", " +
                                             [&item] {
                                                 std::string other = item;
                                                 other.replace(other.find("\"own\""), 5, "\"two\"");
                                                 return other;
                                             }() +
                                             "]}"),
                               0, at(1)),
                     "holds 2 items"));
    EXPECT_TRUE(book.current().value().items.empty());
}

TEST_P(EachStore, ADamagedVersionIsToldAndTheOthersStayUsable) {
    const auto store = open();
    EquipmentBook book(*store);
    ASSERT_TRUE(book.save(invented_cylinder("own", "Own"), 0, at(1)).ok());
    ASSERT_TRUE(book.save(invented_cylinder("two", "Two"), 0, at(1)).ok());
    const QString row = QStringLiteral(
        "INSERT INTO equipment_version VALUES ('own', 2, 'cylinder', 'no such text', '%1', 0, 0, '', '')");
    ASSERT_EQ(sql(path(), row.arg(QString(64, QChar('0')))), "");
    EXPECT_NE(store->check().value().find("version 2 of equipment 'own' no longer has its hash"), std::string::npos);
    const EquipmentKept kept = book.current().value();
    ASSERT_EQ(kept.items.size(), 1U);
    EXPECT_EQ(kept.items[0].item_id, "two");
    ASSERT_EQ(kept.damaged.size(), 1U);
    EXPECT_NE(kept.damaged[0].text().find("own"), std::string::npos);
    const auto healed = book.save(invented_cylinder("own", "Own"), 2, at(2));
    ASSERT_TRUE(healed.ok()) << why(healed) << " a whole version may follow";
    EXPECT_EQ(book.current().value().items.size(), 2U);
}

}  // namespace
}  // namespace equipment_book_test
}  // namespace wg::store::test
