// Numbers of papers: without a gap, never the same twice; papers of orders and signatures under acceptances.
#include "core/store/number_ranges.h"

#include <gtest/gtest.h>

#include <atomic>
#include <set>
#include <thread>

#include "core/store/database.h"
#include "core/store/personal.h"
#include "core/store/quote_book.h"
#include "core/store/travel.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace numbers_test {
namespace {

const std::string pdf = "%PDF-1.7 invented";
const std::string png("\x89PNG\r\n\x1A\n and so on", 18);

IssuedQuote quote_of(const Job& job, unsigned n) {
    return {id(0x900 + n), job.id, job.revision, "", "2027-06-22T08:00:00Z", "{}", "", 100, "EUR"};
}

PrintNumbered printed(std::string* seen = nullptr) {
    return [seen](const std::string& number) -> Result<std::string> {
        if (seen != nullptr) *seen = number;
        return pdf + number;
    };
}

TEST(NumberPatterns, say_year_seat_and_number_and_nothing_else) {
    EXPECT_EQ(number_text("Q{year}-{number:4}", 2027, "", 7), "Q2027-0007");
    EXPECT_EQ(number_text("Q{year}-{number:4}", 2027, "B2", 12345), "Q2027-12345-B2");
    EXPECT_EQ(number_text("{number}/{year}{seat}.", 2027, "L", 3), "3/2027-L.");
    EXPECT_EQ(number_text("{number}/{year}{seat}.", 2027, "", 3), "3/2027.");
    for (const char* good : {"{number}", "Q{year}-{number:4}", "Angebot {number:9}/{year}{seat}"})
        EXPECT_FALSE(refuse_pattern(good)) << good;
    for (const char* bad : {"", "Q", "{number}{number}", "{year}", "{number:0}", "{number:10}", "{Number}", "{number",
                            "number}", "{number}{x}", "{number}\n", "{year}{year}{number}", "\xFF{number}",
                            "{number}12345678901234567890123456789012345"}) {
        const auto problem = refuse_pattern(bad);
        ASSERT_TRUE(problem) << bad;
        EXPECT_FALSE(problem->remedy.empty());
    }
    EXPECT_FALSE(refuse_suffix("B2"));
    EXPECT_TRUE(refuse_suffix("b 2"));
    EXPECT_TRUE(refuse_suffix("123456789"));
}

TEST_P(EachStore, QuotesAreNumberedWithoutAGapAndAFailedOneTakesNoNumber) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    NumberRanges numbers(*store);
    EXPECT_EQ(numbers.next(NumberKind::quote, 2027).value(), "Q2027-0001");
    std::string seen;
    EXPECT_EQ(book.issue_next(quote_of(job, 1), printed(&seen), at(2)).value().number, "Q2027-0001");
    EXPECT_EQ(seen, "Q2027-0001") << "the paper bears the number it is kept under";
    EXPECT_EQ(book.paper(id(0x901)).value(), pdf + "Q2027-0001");
    IssuedQuote none = quote_of(job, 2);
    none.job_revision = 99;
    EXPECT_FALSE(book.issue_next(none, printed(), at(3)).ok());
    EXPECT_FALSE(book.issue_next(
                         quote_of(job, 2),
                         [](const std::string&) {
                             return Problem{"x", "y", "z"};
                         },
                         at(3))
                     .ok());
    EXPECT_EQ(book.issue_next(quote_of(job, 2), printed(), at(3)).value().number, "Q2027-0002");
    EXPECT_EQ(numbers.next(NumberKind::order, 2027).value(), "O2027-0001") << "each kind its own";
    EXPECT_EQ(numbers.next(NumberKind::quote, 2028).value(), "Q2028-0001") << "each year its own";
    ASSERT_TRUE(numbers.set_pattern(NumberKind::quote, "A-{number:3}").ok());
    EXPECT_FALSE(numbers.set_pattern(NumberKind::quote, "A").ok());
    EXPECT_EQ(book.issue_next(quote_of(job, 3), printed(), at(4)).value().number, "A-001");
    EXPECT_EQ(store->quotes(job.id).value().size(), 3U);
    EXPECT_EQ(sql(path(), "UPDATE number_given SET text = 'x'"), "a number that was given is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM number_given"), "a number that was given is never taken back");
    EXPECT_EQ(sql(path(), "INSERT INTO number_given VALUES ('quote', '2027', 4, 'x', '', '')"),
              "numbers are given one after the other");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ANumberWhosePaperCouldNotBeWrittenIsNotGiven) {
    const auto store = open();
    NumberRanges numbers(*store);
    const auto give = [&](bool written) {
        return numbers.give_for(NumberKind::purchase, 2027, id(1), at(1), [written](const std::string&) {
            return written ? std::nullopt : std::optional<Problem>({"file", "is full", "Make room"});
        });
    };
    EXPECT_FALSE(give(false).ok());
    EXPECT_EQ(give(true).value(), "P2027-0001");
    EXPECT_FALSE(give(false).ok());
    EXPECT_EQ(give(true).value(), "P2027-0002");
}

TEST_P(EachStore, ANumberThatCameFromElsewhereIsPassedOver) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    IssuedQuote other = quote_of(job, 7);
    other.number = "Q2027-0001";
    ASSERT_TRUE(store->issue_quote(other).ok());
    EXPECT_EQ(NumberRanges(*store).next(NumberKind::quote, 2027).value(), "Q2027-0002");
    EXPECT_EQ(QuoteBook(*store).issue_next(quote_of(job, 1), printed(), at(2)).value().number, "Q2027-0002");
    EXPECT_EQ(QuoteBook(*store).issue_next(quote_of(job, 2), printed(), at(2)).value().number, "Q2027-0003");
}

TEST_P(EachStore, TwoSeatsAtOnceNeverGetTheSameNumber) {
    constexpr unsigned each = 12;
    const auto first = open();
    const Job job = first->save(sample_job(), at(1)).value();
    std::atomic<int> failed{0};
    const auto seat = [&](unsigned base) {
        const auto store = Store::open_place(path(), at(1), base == 0 ? "one" : "other");
        if (!store) return void(++failed);
        QuoteBook book(*store.value());
        for (unsigned n = 0; n < each; ++n)
            if (!book.issue_next(quote_of(job, base + n), printed(), at(2))) ++failed;
    };
    std::thread one([&] { seat(0); });
    std::thread other([&] { seat(0x40); });
    one.join();
    other.join();
    EXPECT_EQ(failed, 0);
    std::set<std::string> numbers;
    for (const IssuedQuote& quote : first->quotes(job.id).value()) {
        numbers.insert(quote.number);
        EXPECT_EQ(QuoteBook(*first).paper(quote.id).value(), pdf + quote.number);
    }
    ASSERT_EQ(numbers.size(), 2 * each);
    EXPECT_EQ(*numbers.begin(), "Q2027-0001");
    EXPECT_EQ(*numbers.rbegin(), "Q2027-0024") << "and none is missing";
}

TEST_P(EachStore, ASeatThatTravelsHasASuffixAndItsQuotesComeHome) {
    const auto office = open();
    const Job job = office->save(sample_job(), at(1)).value();
    const auto van = Store::open(file("van.db"), at(1), "van").value();
    Travel leaving(*office);
    ASSERT_TRUE(Travel(*van).take(leaving.parcel_of(job.id, "test", at(2)).value().parcel, at(2)).ok());
    ASSERT_TRUE(NumberRanges(*van).set_suffix("V1").ok());
    EXPECT_FALSE(NumberRanges(*van).set_suffix("V 1").ok());
    const Job taken = van->load(job.id).value();
    EXPECT_EQ(QuoteBook(*van).issue_next(quote_of(taken, 1), printed(), at(3)).value().number, "Q2027-0001-V1");
    EXPECT_EQ(QuoteBook(*office).issue_next(quote_of(job, 2), printed(), at(3)).value().number, "Q2027-0001");
    QuoteAnswer yes;
    yes.id = id(0xA01);
    yes.quote_id = id(0x901);
    yes.on = "2027-06-25";
    yes.who = "M. Lindholm";
    ASSERT_TRUE(QuoteBook(*van).answer(yes, at(4), png).ok());
    const auto home = Travel(*office).take(Travel(*van).parcel_of(job.id, "test", at(5)).value().parcel, at(5));
    ASSERT_TRUE(home.ok()) << text_of(home.problems());
    EXPECT_TRUE(home.value().left_out.empty());
    EXPECT_EQ(home.value().quotes, 1);
    EXPECT_EQ(office->quotes(job.id).value().size(), 2U);
    EXPECT_EQ(QuoteBook(*office).signature(id(0xA01)).value(), png) << "the signature travels with the answer";
    EXPECT_EQ(office->check().value(), "ok");
}

TEST_P(EachStore, PapersOfOrdersAndSignaturesOnlyGrow) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    OrderBook orders(*store);
    ASSERT_TRUE(book.issue_next(quote_of(job, 1), printed(), at(2)).ok());
    EXPECT_FALSE(orders.keep(NumberKind::order, id(0x901), printed(), at(3)).ok()) << "not accepted";
    EXPECT_FALSE(orders.keep(NumberKind::order, id(0x9FF), printed(), at(3)).ok()) << "no such quote";
    EXPECT_FALSE(orders.keep(NumberKind::purchase, id(0x901), printed(), at(3)).ok());
    QuoteAnswer yes;
    yes.id = id(0xA01);
    yes.quote_id = id(0x901);
    yes.on = "2027-06-25";
    yes.who = "M. Lindholm";
    EXPECT_FALSE(book.answer(yes, at(3), "no image").ok());
    EXPECT_TRUE(book.answers(job.id).value().empty()) << "answer and signature, or neither";
    EXPECT_FALSE(book.answer(yes, at(3), png + std::string(max_signature_bytes, 'x')).ok());
    QuoteAnswer no = yes;
    no.answer = Answer::declined;
    EXPECT_FALSE(book.answer(no, at(3), png).ok());
    const auto entered = book.answer(yes, at(3), png);
    ASSERT_TRUE(entered.ok()) << text_of(entered.problems());
    EXPECT_EQ(book.answers(job.id).value().begin()->second.front(), entered.value());
    const auto kept = orders.keep(NumberKind::order, id(0x901), printed(), at(4));
    ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
    EXPECT_EQ(kept.value().number, "O2027-0001");
    EXPECT_EQ(orders.paper(kept.value().id).value(), pdf + "O2027-0001");
    EXPECT_FALSE(orders.paper(id(0x777)).ok());
    ASSERT_TRUE(orders.keep(NumberKind::change_order, id(0x901), printed(), at(5)).ok());
    ASSERT_EQ(orders.papers_of(job.id).value().size(), 2U);
    EXPECT_EQ(orders.papers_of(job.id).value()[0], kept.value());
    EXPECT_EQ(orders.papers_of(job.id).value()[1].number, "C2027-0001");
    EXPECT_EQ(sql(path(), "UPDATE order_paper SET number = 'x'"), "the paper of an order is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM order_paper"), "the paper of an order is never deleted");
    EXPECT_EQ(sql(path(), "UPDATE answer_signature SET sha256 = ''"), "a signature is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM answer_signature"), "a signature is never deleted");
    PersonalData data(*store);
    ASSERT_TRUE(data.erase({job.id}, "asked by letter", at(6)).ok());
    EXPECT_EQ(book.signature(id(0xA01)).value(), png) << "kept as the law asks";
    ASSERT_TRUE(data.erase_what_is_over(instant_from_iso8601("2038-01-01T00:00:00Z").value()).ok());
    EXPECT_FALSE(book.signature(id(0xA01)).ok());
    EXPECT_FALSE(orders.paper(kept.value().id).ok());
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, APaperOrASignatureThatLostItsHashIsTold) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    ASSERT_TRUE(book.issue_next(quote_of(job, 1), printed(), at(2)).ok());
    QuoteAnswer yes;
    yes.id = id(0xA01);
    yes.quote_id = id(0x901);
    yes.on = "2027-06-25";
    yes.who = "M. Lindholm";
    ASSERT_TRUE(book.answer(yes, at(3), png).ok());
    const auto kept = OrderBook(*store).keep(NumberKind::order, id(0x901), printed(), at(4));
    ASSERT_TRUE(kept.ok());
    const bool on_file = dialect_ == Dialect::sqlite;
    for (const char* table : {"order_paper", "answer_signature"}) {
        const QString name = QString::fromLatin1(table);
        ASSERT_EQ(sql(path(), on_file ? "DROP TRIGGER " + name + "_no_update"
                                      : "DROP TRIGGER " + name + "_no_update ON " + name),
                  "");
        ASSERT_EQ(sql(path(), "UPDATE " + name + " SET content = " + bytes_literal("255044462d")), "");
    }
    EXPECT_FALSE(OrderBook(*store).paper(kept.value().id).ok());
    EXPECT_FALSE(book.signature(id(0xA01)).ok());
    const std::string said = store->check().value();
    EXPECT_NE(said.find("paper of order O2027-0001"), std::string::npos) << said;
    EXPECT_NE(said.find("signature under the acceptance of quote Q2027-0001"), std::string::npos) << said;
}

}  // namespace
}  // namespace numbers_test
}  // namespace wg::store::test
