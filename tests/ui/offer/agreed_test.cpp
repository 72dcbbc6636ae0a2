// What was agreed stays what it is, whatever the job costs when it is priced today.

#include "core/plan/frozen_plan.h"
#include "core/store/price_book.h"
#include "tests/core/store/some_prices.h"
#include "tests/ui/offer/ordered_job.h"
#include "ui/offer/agreed_bar.h"

namespace wg::ui {
namespace agreed_test {
namespace {

using orders_test::later;
using orders_test::now;

class AgreedTest : public orders_test::OrdersTest {
   protected:
    const AgreedWords& words() {
        stage_->agreed()->compare();
        return stage_->agreed()->words();
    }
    void save_job() { save(); }
    void accept_first() {
        ASSERT_TRUE(stage_->issue_quote(now));
        ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::accepted), now));
        ASSERT_FALSE(stage_->issued()->confirm_order(0, now).empty());
        gross_ = store_->quotes(session_->job().id).value()[0].gross_minor;
    }
    std::int64_t gross_ = 0;
};

TEST_F(AgreedTest, nothing_is_agreed_until_a_quote_is_accepted) {
    EXPECT_FALSE(stage_->agreed()->agreed());
    EXPECT_TRUE(stage_->agreed()->isHidden());
    ASSERT_TRUE(stage_->issue_quote(now));
    EXPECT_FALSE(stage_->agreed()->agreed());
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::declined), now));
    EXPECT_FALSE(stage_->agreed()->agreed());
}

TEST_F(AgreedTest, sum_number_day_choice_and_papers_are_told_and_nothing_differs_at_first) {
    accept_first();
    const AgreedWords& told = words();
    for (const QString& wanted :
         {money({gross_}, QStringLiteral("EUR")), QStringLiteral("Q2027-0001"), QStringLiteral("20 April 2027"),
          QStringLiteral("Marta Lindqvist"), QStringLiteral("choice"), QStringLiteral("order O2027-0001")})
        EXPECT_TRUE(told.agreed.contains(wanted)) << wanted.toStdString() << ": " << told.agreed.toStdString();
    EXPECT_TRUE(told.today.contains(QStringLiteral("the same"))) << told.today.toStdString();
    EXPECT_TRUE(told.causes.isEmpty() && told.advice.isEmpty());
    EXPECT_FALSE(stage_->agreed()->isHidden());
}

TEST_F(AgreedTest, a_line_more_changes_todays_price_and_not_what_was_agreed) {
    accept_first();
    OfferLine line;
    line.id = sample::uuid(90);
    line.text = "Valve";
    line.unit_price_minor = 5000;
    session_->edit(QStringLiteral("line"), [&](Job& job) { job.offer.lines.push_back(line); });
    ASSERT_TRUE(settle());
    const AgreedWords& told = words();
    EXPECT_TRUE(told.agreed.contains(money({gross_}, QStringLiteral("EUR"))));
    EXPECT_TRUE(told.today.contains(money({gross_ + 6000}, QStringLiteral("EUR")))) << "50.00 and 20 % tax";
    EXPECT_TRUE(told.today.contains(money_difference({6000}, QStringLiteral("EUR"))));
    ASSERT_EQ(told.causes.size(), 2) << told.causes.join('\n').toStdString();
    EXPECT_TRUE(told.causes[0].startsWith(QStringLiteral("Lines that the office entered or changed, 1 line")));
    EXPECT_TRUE(told.causes[1].startsWith(QStringLiteral("Tax on it")));
    EXPECT_TRUE(told.advice.contains(QStringLiteral("change order")));
}

TEST_F(AgreedTest, a_change_order_counts_once_its_quote_is_accepted) {
    accept_first();
    issue_with_valve();
    ASSERT_FALSE(stage_->issued()->order_change(0, later).empty()) << problem_.toStdString();
    EXPECT_TRUE(words().agreed.contains(QStringLiteral("Q2027-0001")));
    EXPECT_FALSE(words().agreed.contains(QStringLiteral("C2027-0001"))) << "the client has not answered yet";
    EXPECT_TRUE(words().advice.contains(QStringLiteral("C2027-0001 over quote Q2027-0002")))
        << words().advice.toStdString();
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::accepted), later));
    const AgreedWords& told = words();
    EXPECT_TRUE(told.agreed.contains(QStringLiteral("Q2027-0002")) &&
                told.agreed.contains(QStringLiteral("C2027-0001")))
        << told.agreed.toStdString();
    EXPECT_TRUE(told.agreed.contains(money({gross_ + 6000}, QStringLiteral("EUR"))));
    EXPECT_TRUE(told.today.contains(QStringLiteral("the same")));
}

TEST_F(AgreedTest, before_a_quote_goes_out_it_is_told_what_the_client_has_and_what_is_left_unsaid) {
    EXPECT_FALSE(stage_->issue_question().contains(QStringLiteral("The client has")));
    EXPECT_FALSE(stage_->issue_question().contains(QStringLiteral("when to pay"))) << "there are instalments";
    ASSERT_TRUE(stage_->issue_quote(now));
    EXPECT_TRUE(stage_->issue_question().contains(QStringLiteral("The client has quote Q2027-0001 over the same sum")))
        << stage_->issue_question().toStdString();
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::accepted), now));
    EXPECT_TRUE(stage_->issue_question().contains(QStringLiteral("has accepted quote Q2027-0001 over the same sum")))
        << stage_->issue_question().toStdString();
    issue_with_valve();
    EXPECT_TRUE(stage_->issue_question().contains(QStringLiteral("Quote Q2027-0001 is accepted.")))
        << stage_->issue_question().toStdString();
    session_->edit(QStringLiteral("none"), [](Job& job) { job.offer.instalments.clear(); });
    ASSERT_TRUE(settle());
    EXPECT_TRUE(stage_->issue_question().contains(QStringLiteral("when to pay")));
    session_->edit(QStringLiteral("terms"), [](Job& job) { job.offer.terms = "Within 30 days."; });
    ASSERT_TRUE(settle());
    EXPECT_FALSE(stage_->issue_question().contains(QStringLiteral("when to pay")));
}

TEST_F(AgreedTest, an_order_without_instalments_repeats_the_terms_or_says_that_there_are_none) {
    session_->edit(QStringLiteral("none"), [](Job& job) { job.offer.instalments.clear(); });
    save_job();
    const auto paper_of_order = [this](int row) {
        EXPECT_TRUE(stage_->issued()->enter(row, answer(store::Answer::accepted), now));
        const std::string id = stage_->issued()->confirm_order(row, now);
        EXPECT_FALSE(id.empty()) << problem_.toStdString();
        return orders_test::text_of_pdf(store::OrderBook(*store_).paper(id).value()).simplified();
    };
    const QString unsaid = QStringLiteral("When to pay is not set here");
    ASSERT_TRUE(stage_->issue_quote(now));
    const std::string quote = store_->quotes(session_->job().id).value()[0].id;
    EXPECT_TRUE(orders_test::text_of_pdf(store::QuoteBook(*store_).paper(quote).value()).simplified().contains(unsaid));
    const QString bare = paper_of_order(0);
    EXPECT_TRUE(bare.contains(unsaid)) << bare.toStdString();
    session_->edit(QStringLiteral("terms"), [](Job& job) { job.offer.terms = "Within 30 days."; });
    save_job();
    ASSERT_TRUE(stage_->issue_quote(now));
    const QString told = paper_of_order(0);
    EXPECT_TRUE(told.contains(QStringLiteral("As the terms of the quote have it: Within 30 days.")))
        << told.toStdString();
    EXPECT_FALSE(told.contains(unsaid));
}

TEST_F(AgreedTest, each_paper_is_told_with_the_quote_that_it_is_over) {
    ASSERT_TRUE(stage_->issue_quote(now));
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::accepted), now));
    EXPECT_TRUE(words().agreed.contains(QStringLiteral("quote Q2027-0001 is not confirmed yet")))
        << words().agreed.toStdString();
    ASSERT_FALSE(stage_->issued()->confirm_order(0, now).empty());
    const QString first = money({store_->quotes(session_->job().id).value()[0].gross_minor}, QStringLiteral("EUR"));
    EXPECT_TRUE(words().agreed.endsWith(QStringLiteral("; order O2027-0001"))) << words().agreed.toStdString();
    issue_with_valve();
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::accepted), later));
    EXPECT_TRUE(words().agreed.endsWith(
        QStringLiteral("order O2027-0001 is over %1 (quote Q2027-0001); quote Q2027-0002 is not confirmed yet")
            .arg(first)))
        << words().agreed.toStdString();
    ASSERT_FALSE(stage_->issued()->confirm_order(0, later).empty()) << problem_.toStdString();
    stage_->agreed()->reload();
    EXPECT_TRUE(words().agreed.endsWith(QStringLiteral("; order O2027-0002"))) << words().agreed.toStdString();
}

TEST_F(AgreedTest, a_change_order_that_was_declined_is_no_part_of_what_was_agreed) {
    accept_first();
    issue_with_valve();
    ASSERT_FALSE(stage_->issued()->order_change(0, later).empty()) << problem_.toStdString();
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::declined), later));
    const AgreedWords& told = words();
    EXPECT_TRUE(told.agreed.contains(QStringLiteral("Q2027-0001")) &&
                told.agreed.contains(QStringLiteral("order O2027-0001")))
        << told.agreed.toStdString();
    EXPECT_FALSE(told.agreed.contains(QStringLiteral("C2027-0001"))) << told.agreed.toStdString();
    EXPECT_FALSE(told.advice.contains(QStringLiteral("waits"))) << told.advice.toStdString();
}

TEST_F(AgreedTest, dearer_lines_name_the_versions_of_the_firms_list) {
    Agreed agreed;
    agreed.issued_at = "2027-04-12T08:00:00Z";
    agreed.offer = quote::frozen_offer(plan::offer_of_plan(*session_->plan()), "quote").value();
    agreed.price_list_id = "ours";
    agreed.price_list_version = 2;
    agreed.newest_list_version = 3;
    agreed.newest_list_at = "2027-05-01T08:00:00Z";
    quote::FrozenLine& first = agreed.offer.lines.front();
    // What was agreed was cheaper by one hundred a unit.
    const Money less{std::llround(100.0 * first.quantity)};
    first.unit_price -= Money{100};
    first.net -= less;
    agreed.offer.net -= less;
    const AgreedWords told = agreed_words(agreed, session_->plan().get(), false, "ours");
    ASSERT_FALSE(told.causes.isEmpty());
    EXPECT_TRUE(told.causes[0].startsWith(QStringLiteral("Prices a unit, 1 line"))) << told.causes[0].toStdString();
    EXPECT_TRUE(told.causes[0].contains(QStringLiteral("version 2 then, version 3 since 1 May 2027")));
    const AgreedWords other = agreed_words(agreed, session_->plan().get(), false, "another");
    EXPECT_TRUE(other.causes[0].contains(QStringLiteral("another price list")));
    agreed.price_list_version = 0;
    EXPECT_FALSE(
        agreed_words(agreed, session_->plan().get(), false, "ours").causes[0].contains(QStringLiteral("version")))
        << "which one held then is not known here";
    agreed.price_list_version = 2;
    agreed.newest_list_version = 2;
    EXPECT_FALSE(
        agreed_words(agreed, session_->plan().get(), false, "ours").causes[0].contains(QStringLiteral("version")));
    EXPECT_TRUE(agreed_words(agreed, nullptr, false, "ours").today.contains(QStringLiteral("no longer in the job")));
    EXPECT_TRUE(agreed_words(agreed, nullptr, true, "ours").today.contains(QStringLiteral("being worked out")));
}

TEST_F(AgreedTest, the_list_of_the_quotes_day_and_the_newest_are_read_from_the_firms_book) {
    store::PriceBook book(*store_);
    const auto save = [&book](const char* label, int based_on, std::int64_t at) {
        const auto saved = book.save("ours", store::test::price_list_text("ours", label), based_on, "", {at});
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
    };
    save("First", 0, now.unix_s - 7200);
    save("Second", 1, now.unix_s - 3600);
    session_->edit(QStringLiteral("list"), [](Job& job) { job.price_list = "ours"; });
    save_job();
    accept_first();
    const auto before = agreed_of(*store_, session_->job().id);
    ASSERT_TRUE(before.ok() && before.value());
    EXPECT_EQ(before.value()->price_list_id, "ours");
    EXPECT_EQ(before.value()->price_list_version, 2);
    EXPECT_EQ(before.value()->newest_list_version, 2);
    save("Third", 2, later.unix_s);
    const auto after = agreed_of(*store_, session_->job().id, before.value());
    ASSERT_TRUE(after.ok() && after.value());
    EXPECT_EQ(after.value()->price_list_version, 2) << "of the quote's day";
    EXPECT_EQ(after.value()->newest_list_version, 3);
    EXPECT_EQ(after.value()->offer.gross, before.value()->offer.gross);
}

TEST_F(AgreedTest, a_withdrawn_acceptance_leaves_nothing_agreed) {
    accept_first();
    ASSERT_TRUE(stage_->issued()->enter(0, answer(store::Answer::withdrawn), later));
    EXPECT_FALSE(stage_->agreed()->agreed());
}

}  // namespace
}  // namespace agreed_test
}  // namespace wg::ui
