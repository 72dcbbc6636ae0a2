// What follows an issued quote: its place taken by a newer one, acceptance with a signature, orders and their changes.

#include <gtest/gtest.h>

#include <QBuffer>
#include <QCheckBox>
#include <QFile>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/documents/sample.h"
#include "tests/ui/offer/ordered_job.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/documents/paper_pane.h"
#include "ui/drawing/fields.h"
#include "ui/offer/answer_dialog.h"
#include "ui/offer/firm_dialog.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/line_form.h"
#include "ui/offer/offer_edits.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/offer_model.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/terms_page.h"

namespace wg::ui {
namespace orders_test {
namespace {

TEST_F(OrdersTest, an_accepted_quote_is_confirmed_once_with_its_number_and_signature) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    EXPECT_TRUE(issued->confirm_order(0, now).empty()) << "not accepted yet";
    EXPECT_FALSE(problem_.isEmpty());
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now, ink()));
    const std::string id = issued->confirm_order(0, later);
    ASSERT_FALSE(id.empty()) << problem_.toStdString();
    EXPECT_EQ(issued->confirm_order(0, later), id) << "the one that is kept";
    const auto orders = store::OrderBook(*store_).papers_of(session_->job().id);
    ASSERT_EQ(orders.value().size(), 1U);
    EXPECT_EQ(orders.value()[0].number, "O2027-0001");
    const QString text = text_of_pdf(store::OrderBook(*store_).paper(id).value());
    for (const char* wanted : {"Order confirmation O2027-0001", "Q2027-0001", "20 April 2027", "Marta Lindqvist",
                               "on order", "after the start", "Signature under the acceptance"})
        EXPECT_TRUE(text.contains(QString::fromLatin1(wanted))) << wanted << '\n' << text.toStdString();
    const QString told = issued->table()->item(0, 4)->text();
    EXPECT_TRUE(told.contains(QStringLiteral(", signed\norder O2027-0001 of "))) << told.toStdString();
    EXPECT_TRUE(issued->table()->item(0, 4)->toolTip().contains(QStringLiteral("O2027-0001"))) << "never cut there";
    EXPECT_EQ(issued->signature_of(0).size(), QSize(120, 40)) << "the image as it was kept";
    EXPECT_TRUE(issued->signature_of(1).isNull());
}

TEST_F(OrdersTest, a_second_confirmation_is_asked_first_and_names_what_it_replaces) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    EXPECT_TRUE(issued->why_ask_first(0).isEmpty()) << "the first";
    ASSERT_FALSE(issued->confirm_order(0, now).empty());
    issue_with_valve();
    const std::string change = issued->order_change(0, later);
    ASSERT_FALSE(change.empty()) << problem_.toStdString();
    store::QuoteAnswer yes = answer(store::Answer::accepted);
    ASSERT_TRUE(issued->enter(0, yes, later));
    EXPECT_TRUE(issued->why_ask_first(1).isEmpty()) << "its own is kept and only opened";
    const QString why = issued->why_ask_first(0);
    for (const char* wanted : {"order O2027-0001", "change order C2027-0001", "takes its place"})
        EXPECT_TRUE(why.contains(QString::fromLatin1(wanted))) << why.toStdString();
    const std::string second = issued->confirm_order(0, later);
    ASSERT_FALSE(second.empty()) << problem_.toStdString();
    const QString text = text_of_pdf(store::OrderBook(*store_).paper(second).value()).simplified();
    EXPECT_TRUE(
        text.contains(QStringLiteral("takes the place of: Order confirmation O2027-0001 of 12 April 2027; Change "
                                     "order C2027-0001 of 13 April 2027")))
        << text.toStdString();
    const auto kept = store::OrderBook(*store_).papers_of(session_->job().id).value();
    ASSERT_EQ(kept.size(), 3U);
    ASSERT_EQ(store::standing(kept).size(), 1U);
    EXPECT_EQ(store::standing(kept)[0].id, second);
    EXPECT_TRUE(issued->table()->item(1, 4)->text().contains(QStringLiteral(", replaced by O2027-0002")));
    EXPECT_FALSE(issued->table()->item(0, 4)->text().contains(QStringLiteral("O2027-0002 of 13 April 2027, replaced")));
}

TEST_F(OrdersTest, a_confirmation_of_an_older_quote_takes_the_place_of_nothing_newer) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    issue_with_valve();
    ASSERT_FALSE(issued->order_change(0, later).empty()) << problem_.toStdString();
    EXPECT_TRUE(issued->replaced_by_confirming(1).empty());
    EXPECT_TRUE(issued->why_ask_first(1).isEmpty()) << "nobody has answered the change order: it does not stand";
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), later));
    EXPECT_TRUE(issued->replaced_by_confirming(1).empty());
    EXPECT_TRUE(issued->why_ask_first(1).contains(QStringLiteral("newer quote")));
    const std::string id = issued->confirm_order(1, later);
    ASSERT_FALSE(id.empty());
    EXPECT_FALSE(
        text_of_pdf(store::OrderBook(*store_).paper(id).value()).contains(QStringLiteral("takes the place of")));
}

TEST_F(OrdersTest, a_confirmation_takes_no_place_of_a_change_order_that_was_declined) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    ASSERT_FALSE(issued->confirm_order(0, now).empty());
    issue_with_valve();
    ASSERT_FALSE(issued->order_change(0, later).empty()) << problem_.toStdString();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::declined), later));
    ASSERT_TRUE(stage_->issue_quote(later));
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), later));
    const QString why = issued->why_ask_first(0);
    EXPECT_TRUE(why.contains(QStringLiteral("order O2027-0001"))) << why.toStdString();
    EXPECT_FALSE(why.contains(QStringLiteral("C2027-0001"))) << why.toStdString();
    const auto replaced = issued->replaced_by_confirming(0);
    ASSERT_EQ(replaced.size(), 1U);
    EXPECT_EQ(replaced[0].number, "O2027-0001");
}

TEST_F(OrdersTest, a_bank_account_that_cannot_be_right_is_not_kept) {
    FirmDialog dialog(sample::input().firm, {}, read_numbers(*store_).value());
    EXPECT_TRUE(dialog.keep()->isEnabled());
    dialog.iban()->setText(QStringLiteral("DE89 3704 0044 0532 0130 01"));
    EXPECT_FALSE(dialog.keep()->isEnabled());
    EXPECT_TRUE(dialog.bank_wrong().contains(QStringLiteral("check digits"))) << dialog.bank_wrong().toStdString();
    EXPECT_FALSE(write_firm(*store_, dialog.firm()).ok());
    EXPECT_TRUE(read_firm(store_.get()).name.isEmpty()) << "all or nothing";
    dialog.iban()->setText(QStringLiteral("de89 3704 0044 0532 0130 00"));
    dialog.bic()->setText(QStringLiteral("cobadeff"));
    EXPECT_TRUE(dialog.keep()->isEnabled()) << dialog.bank_wrong().toStdString();
    ASSERT_TRUE(write_firm(*store_, dialog.firm()).ok());
    EXPECT_EQ(read_firm(store_.get()).iban, QStringLiteral("DE89370400440532013000"));
    EXPECT_EQ(read_firm(store_.get()).bic, QStringLiteral("COBADEFF"));
    ASSERT_TRUE(store_->set_setting(firm_iban_key, "DE89370400440532013001").ok());
    EXPECT_TRUE(read_firm(store_.get()).iban.isEmpty()) << "no paper bears a wrong one";
}

TEST_F(OrdersTest, a_newer_quote_says_whose_place_it_takes_and_changes_the_order_line_by_line) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    const std::int64_t before = store_->quotes(session_->job().id).value()[0].gross_minor;
    issue_with_valve();
    const auto quotes = store_->quotes(session_->job().id).value();
    ASSERT_EQ(quotes.size(), 2U);
    EXPECT_EQ(quotes[0].number, "Q2027-0002");
    EXPECT_TRUE(text_of_pdf(store::QuoteBook(*store_).paper(quotes[0].id).value())
                    .contains(QStringLiteral("takes the place of our quote Q2027-0001")));
    EXPECT_EQ(issued->agreed_before(0), 1);
    EXPECT_EQ(issued->agreed_before(1), -1);
    EXPECT_TRUE(issued->order_change(1, later).empty());
    const std::string id = issued->order_change(0, later);
    ASSERT_FALSE(id.empty()) << problem_.toStdString();
    const QString text = text_of_pdf(store::OrderBook(*store_).paper(id).value());
    EXPECT_TRUE(text.contains(QStringLiteral("Change order C2027-0001")));
    EXPECT_TRUE(text.contains(QStringLiteral("Valve")));
    EXPECT_FALSE(text.contains(QStringLiteral("Roof hook"))) << "that line is the same";
    EXPECT_EQ(quotes[0].gross_minor - before, 6000) << "50.00 and 20 % tax";
    EXPECT_TRUE(text.contains(QStringLiteral("+60.00")) || text.contains(QStringLiteral("+60"))) << text.toStdString();
}

TEST_F(OrdersTest, an_overtaken_quote_says_by_which_unless_that_was_withdrawn) {
    ASSERT_TRUE(stage_->issue_quote(now));
    issue_with_valve();
    IssuedPage* issued = stage_->issued();
    EXPECT_TRUE(issued->overtaken_by(0).isEmpty());
    EXPECT_TRUE(issued->overtaken_by(1).startsWith(QStringLiteral("Q2027-0002")));
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::withdrawn), later));
    EXPECT_TRUE(issued->overtaken_by(1).isEmpty());
}

TEST_F(OrdersTest, a_withdrawal_after_acceptance_makes_the_job_offered_again_and_says_so) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    EXPECT_EQ(session_->job().state, JobState::accepted);
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::withdrawn), later));
    EXPECT_EQ(session_->job().state, JobState::offered);
    EXPECT_TRUE(said_.contains(QStringLiteral("offered again"))) << said_.toStdString();
}

TEST_F(OrdersTest, a_withdrawal_leaves_a_job_that_went_on_where_it_is) {
    ASSERT_TRUE(stage_->issue_quote(now));
    IssuedPage* issued = stage_->issued();
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::accepted), now));
    session_->edit(QStringLiteral("fitted"), [](Job& job) { job.state = JobState::fitted; });
    ASSERT_TRUE(issued->enter(0, answer(store::Answer::withdrawn), later));
    EXPECT_EQ(session_->job().state, JobState::fitted);
    EXPECT_TRUE(said_.contains(QStringLiteral("stays as it is"))) << said_.toStdString();
}

TEST_F(OrdersTest, an_acceptance_takes_no_image_that_is_none) {
    ASSERT_TRUE(stage_->issue_quote(now));
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("signature.png"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no picture");
    file.close();
    AnswerDialog dialog(store::Answer::accepted, QStringLiteral("Q1"), QStringLiteral("M"));
    EXPECT_FALSE(dialog.choose_signature(path));
    EXPECT_TRUE(dialog.signature().isEmpty());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(ink());
    file.close();
    EXPECT_TRUE(dialog.choose_signature(path));
    EXPECT_EQ(dialog.signature(), ink());
    EXPECT_FALSE(AnswerDialog(store::Answer::declined, QStringLiteral("Q1"), QString()).choose_signature(path));
}

TEST_F(OrdersTest, choices_are_put_on_the_quote_two_beside_this_one_at_most) {
    session_->edit(QStringLiteral("choices"), [](Job& job) {
        for (int n = 1; n <= 3; ++n) {
            Choice other = job.choices.front();
            other.id = sample::uuid(60 + n);
            other.label = "B" + std::to_string(n);
            other.placements[0].id = sample::uuid(600 + n);
            for (std::size_t i = 0; i < other.route.size(); ++i)
                other.route[i].id = sample::uuid(static_cast<int>(610 + 10 * i) + n);
            job.choices.push_back(other);
        }
    });
    save();
    TermsPage* terms = stage_->terms();
    terms->refresh();
    ASSERT_EQ(terms->beside().size(), 3U);
    for (int n = 0; n < 2; ++n) {
        terms->beside()[static_cast<std::size_t>(n)]->click();
        terms->refresh();
    }
    EXPECT_FALSE(terms->beside()[2]->isEnabled()) << "three on one quote";
    EXPECT_EQ(beside_on_offer(*session_), (std::vector<std::string>{sample::uuid(61), sample::uuid(62)}));
    save();
    // Their plans are made with the true reference, which this test has none of: nothing goes out without them.
    EXPECT_FALSE(stage_->issue_quote(now));
    EXPECT_FALSE(why_not_beside(*session_).isEmpty());
    terms->beside()[0]->click();
    terms->refresh();
    EXPECT_TRUE(terms->beside()[2]->isEnabled());
}

TEST_F(OrdersTest, a_quantity_that_the_plan_overtook_can_be_kept_as_it_is) {
    const auto plan = session_->plan();
    const parts::Line& hook = plan->parts.lines[3];
    LineChange change;
    change.id = sample::uuid(70);
    change.item = hook.item_id;
    change.quantity = 8.0;
    change.planned_quantity = 4.0;  // what the plan asked for then; now it is 6
    session_->edit(QStringLiteral("change"), [&](Job& job) { job.offer.changes.push_back(change); });
    ASSERT_TRUE(settle());
    const auto rows = offer_rows(*session_->plan());
    ASSERT_TRUE(rows[3].line.overtaken);
    LineForm form;
    form.show_row(session_.get(), &rows[3]);
    QPushButton* keep = nullptr;
    for (QPushButton* button : form.findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Keep this quantity")) keep = button;
    ASSERT_NE(keep, nullptr);
    ASSERT_FALSE(keep->isHidden());
    keep->click();
    ASSERT_TRUE(settle());
    EXPECT_EQ(session_->job().offer.changes[0].quantity, 8.0);
    EXPECT_EQ(session_->job().offer.changes[0].planned_quantity, 6.0);
    EXPECT_FALSE(session_->plan()->offered->lines[3].overtaken);
}

TEST_F(OrdersTest, typing_the_same_quantity_again_says_that_it_was_looked_at) {
    LineChange change;
    change.id = sample::uuid(70);
    change.item = "hook";
    change.quantity = 8.0;
    change.planned_quantity = 4.0;
    session_->edit(QStringLiteral("change"), [&](Job& job) { job.offer.changes.push_back(change); });
    ASSERT_TRUE(settle());
    const auto rows = offer_rows(*session_->plan());
    LineForm form;
    form.show();
    form.show_row(session_.get(), &rows[3]);
    QLineEdit* typed = nullptr;
    for (NumberField* field : form.findChildren<NumberField*>())
        if (field->line_edit()->accessibleName() == QStringLiteral("Quantity") || field->value() == 8.0)
            typed = field->line_edit();
    ASSERT_NE(typed, nullptr);
    typed->selectAll();
    QTest::keyClicks(typed, QStringLiteral("8"));
    QTest::keyClick(typed, Qt::Key_Return);
    EXPECT_EQ(session_->job().offer.changes[0].planned_quantity, 6.0);
}

TEST_F(OrdersTest, logo_words_and_numbers_are_kept_and_a_bad_pattern_is_not) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("logo.png"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(ink());
    file.close();
    FirmDialog dialog(sample::input().firm, {}, read_numbers(*store_).value());
    EXPECT_FALSE(dialog.choose_logo(folder.filePath(QStringLiteral("none.png"))));
    EXPECT_FALSE(dialog.said().isEmpty());
    ASSERT_TRUE(dialog.choose_logo(path)) << dialog.said().toStdString();
    EXPECT_TRUE(dialog.said().isEmpty());
    ASSERT_TRUE(write_logo(*store_, dialog.logo()).ok());
    EXPECT_EQ(read_logo(*store_).value(), ink());
    EXPECT_EQ(read_firm(store_.get()).logo.size(), QSize(120, 40));
    EXPECT_EQ(stage_->paper()->input()->firm.logo.isNull(), true) << "laid out before";
    EXPECT_FALSE(write_logo(*store_, "no picture").ok());
    EXPECT_EQ(read_logo(*store_).value(), ink()) << "what was refused changes nothing";
    ASSERT_TRUE(store_->set_setting(firm_logo_key, std::string(64, '0') + " AAAA").ok());
    EXPECT_FALSE(read_logo(*store_).ok()) << "its bytes lost their hash";
    EXPECT_TRUE(read_firm(store_.get()).logo.isNull());
    ASSERT_TRUE(write_logo(*store_, {}).ok());
    EXPECT_TRUE(read_logo(*store_).value().isEmpty());

    dialog.pattern(store::NumberKind::quote)->setText(QStringLiteral("A{year}/{number:3}"));
    dialog.suffix()->setText(QStringLiteral("B2"));
    ASSERT_TRUE(write_numbers(*store_, dialog.numbers()).ok());
    EXPECT_EQ(store::NumberRanges(*store_).next(store::NumberKind::quote, 2027).value(), "A2027/001-B2");
    dialog.pattern(store::NumberKind::order)->setText(QStringLiteral("order"));
    EXPECT_FALSE(write_numbers(*store_, dialog.numbers()).ok());
    EXPECT_EQ(read_numbers(*store_).value().patterns.at(store::NumberKind::order), "O{year}-{number:4}");
}

}  // namespace
}  // namespace orders_test
}  // namespace wg::ui
