#include "core/store/entries_kept.h"

#include <gtest/gtest.h>

#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace entries_kept_test {
namespace {

TEST_P(EachStore, EntriesThatAreNotSavedAreKeptReplacedAndForgotten) {
    const auto store = open();
    EntriesKept kept(*store);
    EXPECT_TRUE(kept.all(EntryBook::equipment).value().entries.empty());
    const std::string hostile = "it's ? \xF0\x9F\x8F\xA0 \"{\n";
    ASSERT_TRUE(kept.keep(EntryBook::equipment, {"own-cylinder", 2, "", "first"}, at(1)).ok());
    ASSERT_TRUE(kept.keep(EntryBook::equipment, {"own-cylinder", 2, "", hostile}, at(2)).ok());
    ASSERT_TRUE(kept.keep(EntryBook::equipment, {"new\x01 7", 0, "", "another"}, at(3)).ok());
    ASSERT_TRUE(kept.keep(EntryBook::prices, {"own-cylinder", 1, "", "of prices"}, at(4)).ok());
    EXPECT_EQ(kept.all(EntryBook::equipment).value().entries,
              (std::vector<KeptEntry>{{"new\x01 7", 0, iso8601(at(3)), "another"},
                                      {"own-cylinder", 2, iso8601(at(2)), hostile}}));
    EXPECT_FALSE(kept.keep(EntryBook::prices, {"x", 0, "", "\xFF"}, at(5)).ok());
    EXPECT_FALSE(kept.keep(EntryBook::prices, {"x", 0, "", std::string((16U << 20U) + 1, 'x')}, at(5)).ok());
    ASSERT_TRUE(kept.forget(EntryBook::equipment, "own-cylinder").ok());
    ASSERT_TRUE(kept.forget(EntryBook::equipment, "was never there").ok());
    EXPECT_EQ(kept.all(EntryBook::equipment).value().entries.size(), 1U);
    ASSERT_EQ(sql(path(), "UPDATE entries_kept SET content = 'y' WHERE book = 'prices'"), "");
    EXPECT_TRUE(kept.all(EntryBook::prices).value().entries.empty());
    EXPECT_EQ(kept.all(EntryBook::prices).value().damaged.size(), 1U);
}

TEST_F(StoreTest, EachSeatHasItsOwnEntries) {
    const std::string file = path();
    {
        auto ada = Store::open(file, at(0), "Ada on desk-1");
        ASSERT_TRUE(ada.ok());
        ASSERT_TRUE(EntriesKept(*ada.value()).keep(EntryBook::prices, {"firm", 1, "", "hers"}, at(1)).ok());
    }
    auto ben = Store::open(file, at(2), "Ben on desk-2");
    ASSERT_TRUE(ben.ok());
    EXPECT_TRUE(EntriesKept(*ben.value()).all(EntryBook::prices).value().entries.empty());
    ASSERT_TRUE(EntriesKept(*ben.value()).forget(EntryBook::prices, "firm").ok());
    auto again = Store::open(file, at(3), "Ada on desk-1");
    EXPECT_EQ(EntriesKept(*again.value()).all(EntryBook::prices).value().entries.size(), 1U);
}

}  // namespace
}  // namespace entries_kept_test
}  // namespace wg::store::test
