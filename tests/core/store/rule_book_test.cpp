// Rule sets of the firm: versions that stay, and what is refused.

#include "core/store/rule_book.h"

#include <gtest/gtest.h>

#include "core/quantity/sha256.h"
#include "tests/core/store/some_rules.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace rule_book_test {
namespace {

std::string why(const Result<RuleSetVersion>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

TEST_P(EachStore, EveryVersionOfARuleSetStaysAsItWasSaved) {
    const auto store = open(path(), "Ada on desk-2");
    RuleBook book(*store);
    const std::string first = rule_set_text("firm", "it's '?' caf\xC3\xA9");
    const std::string second = rule_set_text("firm", "two");
    const auto saved = book.save("firm", first, 0, "from the annex of June", at(1));
    ASSERT_TRUE(saved.ok()) << why(saved);
    ASSERT_TRUE(book.save("firm", second, 1, "", at(2)).ok());
    ASSERT_TRUE(book.save("other", rule_set_text("other", "o"), 0, "", at(3)).ok());
    EXPECT_EQ(book.content("firm", 1).value(), first) << "byte for byte";
    EXPECT_EQ(book.content("firm", 2).value(), second);
    EXPECT_FALSE(book.content("firm", 3).ok());
    ASSERT_EQ(book.sets().value().size(), 2U);
    EXPECT_EQ(book.sets().value()[0].version, 2);
    const auto history = book.history("firm").value();
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1], saved.value());
    EXPECT_EQ(history[1].note, "from the annex of June");
    EXPECT_EQ(history[1].saved_by, "Ada on desk-2");
    EXPECT_EQ(history[1].saved_at, iso8601(at(1)));
    EXPECT_EQ(history[1].sha256, sha256_hex(first));
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, AVersionOfARuleSetIsNeitherChangedNorDeletedNorLeftOut) {
    const auto store = open();
    RuleBook book(*store);
    ASSERT_TRUE(book.save("firm", rule_set_text("firm", "one"), 0, "", at(1)).ok());
    EXPECT_EQ(sql(path(), "UPDATE rule_set SET note = ''"), "a version of a rule set is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM rule_set"), "a version of a rule set is never deleted");
    const QString row = QStringLiteral("INSERT INTO rule_set VALUES ('firm', %1, 0, 0, '', '', '', '%2', 'x')");
    EXPECT_EQ(sql(path(), row.arg(3).arg(QString(64, QChar('0')))),
              "a version of a rule set follows the one before it");
    EXPECT_NE(sql(path(), row.arg(1).arg(QString(64, QChar('0')))), "") << "nor is one replaced";
    ASSERT_EQ(sql(path(), row.arg(2).arg(QString(64, QChar('0')))), "");
    EXPECT_NE(store->check().value().find("version 2 of rule set 'firm' no longer has its hash"), std::string::npos);
    EXPECT_FALSE(book.content("firm", 2).ok());
    const auto healed = book.save("firm", rule_set_text("firm", "whole"), 2, "", at(2));
    EXPECT_TRUE(healed.ok()) << why(healed) << " a whole version may follow";
}

TEST_P(EachStore, ARuleSetThatSomebodyElseSavedIsNotOverwritten) {
    const auto store = open();
    RuleBook book(*store);
    ASSERT_TRUE(book.save("firm", rule_set_text("firm", "one"), 0, "", at(1)).ok());
    const auto other = open(path(), "Ben on desk-3");
    ASSERT_TRUE(RuleBook(*other).save("firm", rule_set_text("firm", "two"), 1, "", at(2)).ok());
    const auto late = book.save("firm", rule_set_text("firm", "three"), 1, "", at(3));
    EXPECT_NE(why(late).find("was changed by Ben on desk-3"), std::string::npos) << why(late);
    EXPECT_FALSE(book.save("firm", rule_set_text("firm", "three"), 0, "", at(3)).ok()) << "is there";
    EXPECT_FALSE(book.save("firm", rule_set_text("firm", "two"), 2, "", at(3)).ok()) << "nothing changed";
    EXPECT_FALSE(book.save("new", rule_set_text("new", "n"), 4, "", at(3)).ok()) << "based on nothing";
    EXPECT_EQ(book.history("firm").value().size(), 2U);
}

TEST_P(EachStore, AWithdrawnRuleSetComesBackByASave) {
    const auto store = open();
    RuleBook book(*store);
    const std::string text = rule_set_text("firm", "one");
    EXPECT_FALSE(book.withdraw("firm", 0, "", at(1)).ok());
    ASSERT_TRUE(book.save("firm", text, 0, "", at(1)).ok());
    ASSERT_TRUE(book.withdraw("firm", 1, "out of date", at(2)).ok());
    EXPECT_TRUE(book.sets().value().front().withdrawn);
    EXPECT_EQ(book.content("firm", 2).value(), text);
    EXPECT_FALSE(book.withdraw("firm", 2, "", at(3)).ok()) << "is withdrawn already";
    EXPECT_FALSE(book.withdraw("firm", 2, std::string(2001, 'x'), at(3)).ok());
    ASSERT_TRUE(book.save("firm", text, 2, "", at(4)).ok()) << "the same content, offered again";
    EXPECT_FALSE(book.sets().value().front().withdrawn);
}

TEST_P(EachStore, ARuleSetThatIsNoneIsRefused) {
    const auto store = open();
    RuleBook book(*store);
    const std::string good = rule_set_text("firm", "one");
    const auto with = [&good](const std::string& what, const std::string& instead) {
        std::string text = good;
        const std::size_t found = text.find(what);
        EXPECT_NE(found, std::string::npos) << what;
        return text.replace(found, what.size(), instead);
    };
    const std::string hostile[] = {"",
                                   "{}",
                                   "{\"schema\": 2}",
                                   good.substr(0, good.size() / 2),
                                   "\xEF\xBB\xBF" + good,
                                   with("\"k_mod\": 0.9", "\"k_mod\": 9"),
                                   with("\"k_mod\": 0.9", "\"k_mod\": 1e999"),
                                   with("\"k_mod\": 0.9,", ""),
                                   with("\"k_mod\": 0.9", "\"k_mod\": 0.9, \"colour\": 1"),
                                   with("\"k_mod\": 0.9", "\"k_mod\": 0.9, \"k_mod\": 0.8"),
                                   with("one", std::string("o\0n", 3)),
                                   with("one", "\xC3"),
                                   with("\"assumed\": true", "\"assumed\": false"),
                                   with("\"note\": \"", "\"note\": \"" + std::string(std::size_t{1} << 20U, 'x')),
                                   std::string(200000, '['),
                                   rule_set_text("other", "of another id")};
    for (const std::string& text : hostile)
        EXPECT_FALSE(book.save("firm", text, 0, "", at(1)).ok()) << text.substr(0, 60);
    EXPECT_FALSE(book.save("", good, 0, "", at(1)).ok());
    EXPECT_FALSE(book.save(std::string(101, 'x'), good, 0, "", at(1)).ok());
    EXPECT_FALSE(book.save("firm", good, 0, std::string(2001, 'x'), at(1)).ok());
    EXPECT_FALSE(book.choose_for_new_jobs(std::string(101, 'x')).ok());
    EXPECT_TRUE(book.sets().value().empty());
    EXPECT_EQ(book.for_new_jobs().value(), "");
}

}  // namespace
}  // namespace rule_book_test
}  // namespace wg::store::test
