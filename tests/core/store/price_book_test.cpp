// Price lists of the firm: versions that stay.

#include "core/store/price_book.h"

#include <gtest/gtest.h>

#include "core/quantity/sha256.h"
#include "tests/core/store/some_prices.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace price_book_test {
namespace {

const std::string first = price_list_text("firm", "it's '?' caf\xC3\xA9");
const std::string second = price_list_text("firm", "two");

TEST_P(EachStore, EveryVersionOfAPriceListStaysAsItWasSaved) {
    const auto store = open();
    PriceBook book(*store);
    EXPECT_TRUE(book.lists().value().empty());
    ASSERT_TRUE(book.save("firm", first, 0, "supplier's letter of June", at(1)).ok());
    ASSERT_TRUE(book.save("firm", second, 1, "", at(2)).ok());
    ASSERT_TRUE(book.save("other", price_list_text("other", "o"), 0, "", at(3)).ok());
    EXPECT_EQ(book.content("firm", 1).value(), first);
    EXPECT_EQ(book.content("firm", 2).value(), second);
    EXPECT_FALSE(book.content("firm", 3).ok());
    const auto lists = book.lists().value();
    ASSERT_EQ(lists.size(), 2U);
    EXPECT_EQ(lists[0].list_id, "firm");
    EXPECT_EQ(lists[0].version, 2);
    EXPECT_EQ(lists[1].list_id, "other");
    const auto history = book.history("firm").value();
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1].note, "supplier's letter of June");
    EXPECT_EQ(history[1].saved_by, store->by());
    EXPECT_EQ(history[1].saved_at, iso8601(at(1)));
    EXPECT_EQ(history[1].sha256, sha256_hex(first));
    EXPECT_EQ(sql(path(), "UPDATE price_list SET note = ''"), "a version of a price list is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM price_list"), "a version of a price list is never deleted");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, APriceListThatSomebodyElseSavedIsNotOverwritten) {
    const auto store = open();
    PriceBook book(*store);
    ASSERT_TRUE(book.save("firm", first, 0, "", at(1)).ok());
    const auto again = book.save("firm", second, 0, "", at(2));
    ASSERT_FALSE(again.ok());
    EXPECT_NE(again.problems().front().what.find("in the book already"), std::string::npos);
    ASSERT_TRUE(book.save("firm", second, 1, "", at(2)).ok());
    const auto late = book.save("firm", first, 1, "", at(3));
    ASSERT_FALSE(late.ok());
    EXPECT_NE(late.problems().front().what.find("was changed by"), std::string::npos);
    EXPECT_NE(late.problems().front().what.find(iso8601(at(2))), std::string::npos);
    EXPECT_FALSE(book.save("firm", second, 2, "", at(4)).ok()) << "nothing changed";
    EXPECT_EQ(book.history("firm").value().size(), 2U);
}

TEST_P(EachStore, AWithdrawnPriceListComesBackByASave) {
    const auto store = open();
    PriceBook book(*store);
    EXPECT_FALSE(book.withdraw("firm", 0, "", at(1)).ok());
    ASSERT_TRUE(book.save("firm", first, 0, "", at(1)).ok());
    ASSERT_TRUE(book.withdraw("firm", 1, "out of date", at(2)).ok());
    EXPECT_FALSE(book.withdraw("firm", 2, "", at(3)).ok()) << "is withdrawn already";
    EXPECT_TRUE(book.lists().value().front().withdrawn);
    ASSERT_TRUE(book.save("firm", first, 2, "", at(4)).ok()) << "the same content, offered again";
    EXPECT_FALSE(book.lists().value().front().withdrawn);
}

TEST_P(EachStore, APriceListThatIsNoneIsRefused) {
    const auto store = open();
    PriceBook book(*store);
    EXPECT_FALSE(book.save("", first, 0, "", at(1)).ok());
    EXPECT_FALSE(book.save(std::string(101, 'x'), first, 0, "", at(1)).ok());
    EXPECT_FALSE(book.save("firm", "", 0, "", at(1)).ok());
    EXPECT_FALSE(book.save("firm", "\xEF\xBB\xBF" + first, 0, "", at(1)).ok()) << "a mark that the store would drop";
    EXPECT_FALSE(book.save("firm", "{\"label\":\"\xFF\"}", 0, "", at(1)).ok());
    EXPECT_FALSE(book.save("firm", "{\"schema\": 2}", 0, "", at(1)).ok()) << "no list";
    EXPECT_FALSE(book.save("firm", price_list_text("other", "o"), 0, "", at(1)).ok()) << "of another id";
    EXPECT_FALSE(book.save("firm", first, 0, std::string(2001, 'x'), at(1)).ok());
    EXPECT_FALSE(book.save("firm", first, 1, "", at(1)).ok()) << "based on a version that is not there";
    EXPECT_TRUE(book.lists().value().empty());
}

}  // namespace
}  // namespace price_book_test
}  // namespace wg::store::test
