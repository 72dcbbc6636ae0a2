// The paper that went out and what the client answered.

#include "core/store/quote_book.h"

#include <gtest/gtest.h>

#include "core/store/personal.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace quote_book_test {
namespace {

const std::string pdf = std::string("%PDF-1.7 ") + '\0' + std::string(3000, 'x');

IssuedQuote quote_of(const Job& job, unsigned n) {
    return {id(0x900 + n), job.id, job.revision, "Q-" + std::to_string(n), "2027-06-22T08:00:00Z", "{}", "",
            100,           "EUR"};
}

QuoteAnswer answer_of(unsigned n, unsigned quote, Answer answer, const std::string& on = "2027-06-25") {
    QuoteAnswer out;
    out.id = id(0xA00 + n);
    out.quote_id = id(0x900 + quote);
    out.answer = answer;
    out.on = on;
    out.who = "Ines Quillfeather";
    return out;
}

TEST_P(EachStore, APaperComesBackAsItWentOutAndIsNeverAnotherOne) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    EXPECT_FALSE(book.issue(quote_of(job, 1), "no paper", at(2)).ok());
    EXPECT_TRUE(store->quotes(job.id).value().empty()) << "both or neither";
    ASSERT_TRUE(book.issue(quote_of(job, 1), pdf, at(2)).ok());
    EXPECT_EQ(book.paper(id(0x901)).value(), pdf);
    EXPECT_FALSE(book.issue(quote_of(job, 1), pdf, at(3)).ok());
    ASSERT_TRUE(store->issue_quote(quote_of(job, 2)).ok());
    EXPECT_FALSE(book.paper(id(0x902)).ok()) << "issued without one";
    EXPECT_EQ(sql(path(), "UPDATE quote_paper SET kept_at = ''"), "the paper of a quote is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM quote_paper"), "the paper of a quote is never deleted");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, AnswersAreEnteredInOrderAndOnlyGrow) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    ASSERT_TRUE(book.issue(quote_of(job, 1), pdf, at(2)).ok());
    EXPECT_FALSE(book.answer(answer_of(1, 9, Answer::declined), at(3)).ok()) << "no such quote";
    EXPECT_FALSE(book.answer(answer_of(1, 1, Answer::declined, "2027-02-30"), at(3)).ok());
    EXPECT_FALSE(book.answer(answer_of(1, 1, Answer::declined, "2027-06-20"), at(3)).ok()) << "before it was issued";
    QuoteAnswer nobody = answer_of(1, 1, Answer::accepted);
    nobody.who = " ";
    EXPECT_FALSE(book.answer(nobody, at(3)).ok());
    ASSERT_TRUE(book.answer(answer_of(1, 1, Answer::declined), at(3)).ok());
    ASSERT_TRUE(book.answer(answer_of(2, 1, Answer::accepted, "2027-07-01"), at(4)).ok()) << "thought better of it";
    EXPECT_FALSE(book.answer(answer_of(3, 1, Answer::declined, "2027-07-02"), at(5)).ok());
    EXPECT_FALSE(book.answer(answer_of(2, 1, Answer::withdrawn), at(5)).ok()) << "the same id";
    ASSERT_TRUE(book.answer(answer_of(4, 1, Answer::withdrawn, "2027-07-03"), at(6)).ok());
    EXPECT_FALSE(book.answer(answer_of(5, 1, Answer::accepted, "2027-07-04"), at(7)).ok());
    const auto answers = book.answers(job.id).value();
    ASSERT_EQ(answers.size(), 1U);
    const std::vector<QuoteAnswer>& of_one = answers.begin()->second;
    ASSERT_EQ(of_one.size(), 3U);
    EXPECT_EQ(of_one[1].answer, Answer::accepted);
    EXPECT_EQ(of_one[1].on, "2027-07-01");
    EXPECT_EQ(of_one[1].entered_at, iso8601(at(4)));
    EXPECT_EQ(sql(path(), "UPDATE quote_answer SET who = ''"), "an answer to a quote is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM quote_answer"), "an answer to a quote is never deleted");
}

TEST_P(EachStore, PaperAndAnswersGoWithTheQuoteWhenItsTimeIsOver) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    QuoteBook book(*store);
    ASSERT_TRUE(book.issue(quote_of(job, 1), pdf, at(2)).ok());
    ASSERT_TRUE(book.answer(answer_of(1, 1, Answer::accepted), at(3)).ok());
    PersonalData data(*store);
    ASSERT_TRUE(data.erase({job.id}, "asked by letter", at(4)).ok());
    EXPECT_EQ(book.paper(id(0x901)).value(), pdf) << "kept as the law asks";
    EXPECT_EQ(book.answers(job.id).value().size(), 1U);
    const auto over = data.erase_what_is_over(instant_from_iso8601("2038-01-01T00:00:00Z").value());
    ASSERT_TRUE(over.ok()) << text_of(over.problems());
    EXPECT_FALSE(book.paper(id(0x901)).ok());
    EXPECT_TRUE(book.answers(job.id).value().empty());
    EXPECT_EQ(store->check().value(), "ok");
}

}  // namespace
}  // namespace quote_book_test
}  // namespace wg::store::test
