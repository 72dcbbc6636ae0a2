// Purchase lists: on both databases, guarded, never a number twice; deliveries in parts, and what follows for stock.
#include "core/store/purchase_book.h"

#include <gtest/gtest.h>

#include "core/store/personal.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace purchase_book_test {
namespace {

using parts::OrderStanding;

Result<PurchasePrints> printed(const std::string& number) {
    return PurchasePrints{"%PDF-1.7 invented " + number,
                          {{"Pellow", "%PDF-1.7 Pellow " + number}, {"Bracken", "%PDF-1.7 Bracken " + number}}};
}

std::vector<PurchaseOrdered> five_lines() {
    std::vector<PurchaseOrdered> lines = {{1, "Pellow", "tube", "Copper tube", "m", 15'000},
                                          {2, "Bracken", "hook", "Roof hook", "pc", 6'000},
                                          {3, "Pellow", "", "Own rail", "pc", 1'000},
                                          {4, "Pellow", "clip", "Clip", "pc", 0},
                                          {5, "Pellow", "hire", "Scaffold", "pc", 1'000}};
    lines[0].needed = 11'400;
    lines[4].service = true;
    return lines;
}

std::string words_of(const std::vector<Problem>& problems) {
    return text_of(problems);
}

TEST_P(EachStore, APurchaseListIsKeptWithItsNumberAndAPaperToEachSupplier) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const auto lines = five_lines();
    EXPECT_FALSE(book.keep(id(0x999), lines, printed, at(2)).ok()) << "no such job";
    EXPECT_FALSE(book.keep(job.id, {{2, "", "a", "", "pc", 1}}, printed, at(2)).ok()) << "positions";
    EXPECT_FALSE(book.keep(job.id, {{1, "", "a", "", "pc", -1}}, printed, at(2)).ok());
    const auto keeps = [&](const PurchasePrints& prints) {
        return book
            .keep(
                job.id, lines, [&](const std::string&) -> Result<PurchasePrints> { return prints; }, at(2))
            .ok();
    };
    EXPECT_FALSE(keeps({"no", {}}));
    EXPECT_FALSE(keeps({"%PDF-1", {{"Pellow", "no"}}}));
    EXPECT_FALSE(keeps({"%PDF-1", {{"Pellow", "%PDF-1"}, {"Pellow", "%PDF-2"}}}));
    const auto kept = book.keep(job.id, lines, printed, at(2));
    ASSERT_TRUE(kept.ok()) << words_of(kept.problems());
    EXPECT_EQ(kept.value().number, "P2027-0001") << "what was refused took no number";
    EXPECT_EQ(book.paper(kept.value().id).value(), "%PDF-1.7 invented P2027-0001");
    EXPECT_EQ(book.paper_to(kept.value().id, "Bracken").value(), "%PDF-1.7 Bracken P2027-0001");
    EXPECT_FALSE(book.paper_to(kept.value().id, "Nobody").ok());
    EXPECT_EQ(book.lines(kept.value().id).value(), lines);
    const auto lists = book.lists(10).value();
    ASSERT_EQ(lists.size(), 1U);
    EXPECT_EQ(lists[0].paper, kept.value());
    EXPECT_EQ(lists[0].job_number, job.number);
    EXPECT_EQ(lists[0].lines, lines);
    EXPECT_EQ(lists[0].papers_to.size(), 2U);
    EXPECT_EQ(book.keep(job.id, lines, printed, at(6)).value().number, "P2027-0002");
    EXPECT_EQ(book.lists(1).value().at(0).paper.number, "P2027-0002") << "the newest";
    for (const char* table : {"purchase_paper", "purchase_line", "purchase_supplier_paper"}) {
        EXPECT_NE(sql(path(), QStringLiteral("DELETE FROM %1").arg(QString::fromLatin1(table))), "") << table;
        const char* column = table == std::string("purchase_paper")  ? "kept_by"
                             : table == std::string("purchase_line") ? "text"
                                                                     : "supplier";
        EXPECT_NE(
            sql(path(),
                QStringLiteral("UPDATE %1 SET %2 = '0'").arg(QString::fromLatin1(table), QString::fromLatin1(column))),
            "")
            << table;
    }
    // The papers name no client: they stay when the client's data go.
    ASSERT_TRUE(PersonalData(*store).erase({job.id}, "asked by letter", at(7)).ok());
    EXPECT_TRUE(book.paper(kept.value().id).ok());
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ADeliveryIsBookedInPartsAndTheRestStaysToCome) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const std::string list = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    const auto refused = [&](const std::vector<Delivered>& delivered, const char* word) {
        const auto result = book.receive(list, delivered, "", at(3));
        ASSERT_FALSE(result.ok()) << word;
        EXPECT_NE(words_of(result.problems()).find(word), std::string::npos) << words_of(result.problems());
    };
    refused({}, "nothing entered");
    refused({{1, 0, 0}}, "nothing entered");
    refused({{9, 0, 1'000}}, "no such line");
    refused({{5, 0, 1'000}}, "no stock is kept");
    refused({{3, 0, 1'000}}, "no stock is kept");
    refused({{1, 0, 5'000}, {2, 0, 1'500}}, "pieces");
    EXPECT_TRUE(StockBook(*store).levels().value().empty()) << "all or none";
    EXPECT_EQ(book.receive(list, {{1, 0, 5'000}, {2, 0, 6'000}}, "note 4711", at(3)).value(), 2);
    refused({{1, 0, 10'000}}, "somebody else");
    auto lines = book.lines(list).value();
    EXPECT_EQ(lines[0].received, 5'000);
    EXPECT_EQ(parts::standing_of(lines[0]), OrderStanding::partly);
    EXPECT_EQ(parts::standing_of(lines[1]), OrderStanding::received);
    EXPECT_EQ(parts::standing_of(lines), OrderStanding::partly);
    const auto moves = StockBook(*store).moves("tube", 0).value();
    ASSERT_EQ(moves.size(), 1U);
    EXPECT_EQ(moves[0].purchase_id, list);
    EXPECT_EQ(moves[0].purchase_line, 1);
    EXPECT_EQ(moves[0].note, "note 4711");
    EXPECT_EQ(book.receive(list, {{1, 5'000, 10'000}}, "", at(4)).value(), 1);
    EXPECT_EQ(parts::standing_of(book.lines(list).value()), OrderStanding::received);
    EXPECT_EQ(book.receive(list, {{1, 15'000, 1'000}}, "", at(5)).value(), 1) << "more than was ordered came";
    EXPECT_EQ(book.lines(list).value()[0].received, 16'000);
    EXPECT_EQ(book.bookings(list).value().size(), 3U);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, AWrongBookingIsTakenBackByACounterEntry) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const std::string list = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    const std::string other = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    ASSERT_TRUE(book.receive(list, {{1, 0, 5'000}, {2, 0, 6'000}}, "first", at(3)).ok());
    ASSERT_TRUE(book.receive(list, {{1, 5'000, 10'000}}, "second", at(4)).ok());
    ASSERT_TRUE(book.receive(other, {{1, 0, 2'000}}, "", at(4)).ok());
    auto bookings = book.bookings(list).value();
    ASSERT_EQ(bookings.size(), 2U) << "of this list alone";
    EXPECT_EQ(bookings[0].note, "second") << "newest first";
    EXPECT_EQ(bookings[1].by, store->by());
    ASSERT_EQ(bookings[1].moves.size(), 2U);
    EXPECT_EQ(book.take_back(bookings[1], at(5)).value(), 2);
    EXPECT_FALSE(book.take_back(bookings[1], at(6)).ok()) << "an older look at it: corrected already";
    bookings = book.bookings(list).value();
    EXPECT_FALSE(book.take_back(bookings[1], at(6)).ok()) << "nothing of it counts";
    EXPECT_EQ(bookings[1].note, "first") << "still told";
    EXPECT_EQ(bookings[1].moves[0].thousandths, 0);
    auto lines = book.lines(list).value();
    EXPECT_EQ(lines[0].received, 10'000);
    EXPECT_EQ(lines[1].received, 0);
    EXPECT_EQ(book.lines(other).value()[0].received, 2'000);
    EXPECT_EQ(StockBook(*store).levels().value().at(1).thousandths, 12'000);
    EXPECT_EQ(StockBook(*store).moves("tube", 0).value().size(), 4U) << "the book only grows";
    ASSERT_TRUE(book.receive(list, {{2, 0, 6'000}}, "again", at(7)).ok());
    // Corrected in the book of stock, it is corrected here.
    parts::StockMove better = StockBook(*store).moves("hook", 1).value().at(0);
    better.corrects_id = better.id;
    better.thousandths = 4'000;
    ASSERT_TRUE(StockBook(*store).enter(better, at(8)).ok());
    EXPECT_EQ(book.lines(list).value()[1].received, 4'000);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ALineWhoseRestDoesNotComeIsOnOrderNoMoreUntilItIs) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const std::string list = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    const auto on_order = [&] { return stock_standings(*store, {"tube"}, "").value().at(0).on_order; };
    EXPECT_EQ(on_order(), 15'000);
    EXPECT_EQ(book.receive(list, {{1, 0, 5'000, true}}, "", at(3)).value(), 1);
    EXPECT_EQ(on_order(), 0);
    EXPECT_TRUE(book.lines(list).value()[0].closed);
    EXPECT_FALSE(book.receive(list, {{1, 5'000, 0, true}}, "", at(4)).ok()) << "as it was";
    EXPECT_EQ(book.receive(list, {{1, 5'000, 0, false}}, "", at(4)).value(), 1) << "it comes after all";
    EXPECT_EQ(on_order(), 10'000);
    EXPECT_EQ(sql(path(), "UPDATE purchase_close SET closed = 1"), "what was entered of a line is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM purchase_close"), "what was entered of a line is never deleted");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ABookingTakenBackIsToComeAgainAlsoWhereItsRestWasNot) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const std::string list = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    const auto on_order = [&] { return stock_standings(*store, {"tube"}, "").value().at(0).on_order; };
    ASSERT_TRUE(book.receive(list, {{1, 0, 5'000, true}}, "", at(3)).ok());
    EXPECT_EQ(book.take_back(book.bookings(list).value().at(0), at(4)).value(), 1);
    EXPECT_FALSE(book.lines(list).value()[0].closed);
    EXPECT_EQ(on_order(), 15'000);
    // What was said of the rest at another time stays said.
    ASSERT_TRUE(book.receive(list, {{1, 0, 6'000}}, "", at(5)).ok());
    ASSERT_TRUE(book.receive(list, {{1, 6'000, 0, true}}, "", at(6)).ok());
    EXPECT_EQ(book.take_back(book.bookings(list).value().at(0), at(7)).value(), 1);
    EXPECT_TRUE(book.lines(list).value()[0].closed);
    EXPECT_EQ(on_order(), 0);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, StandingsFollowListsDeliveriesJobsAndTheirStates) {
    const auto store = open();
    Job job = store->save(sample_job(), at(1)).value();
    Job second = sample_job();
    second.id = id(0x77);
    second.number = "2027-0099";
    second = store->save(second, at(1)).value();
    PurchaseBook book(*store);
    const std::string list = book.keep(job.id, five_lines(), printed, at(2)).value().id;
    const auto tube = [&](const std::string& for_job) {
        const auto all = stock_standings(*store, {"tube", "nothing"}, for_job);
        EXPECT_TRUE(all.ok());
        return all.value().at(0);
    };
    parts::ItemStanding now = tube(second.id);
    EXPECT_EQ(now.on_order, 15'000);
    EXPECT_EQ(now.reserved, 11'400);
    EXPECT_EQ(now.orders, (std::vector<parts::Share>{{"P2027-0001", job.number, 15'000}}));
    EXPECT_EQ(tube(job.id).reserved, 0);
    ASSERT_TRUE(book.receive(list, {{1, 0, 15'000}}, "", at(3)).ok());
    now = tube(second.id);
    EXPECT_EQ(now.on_order, 0);
    EXPECT_EQ(now.in_stock, 15'000);
    EXPECT_EQ(now.reserved, 11'400) << "it came, and is still for that job";
    ASSERT_TRUE(StockBook(*store).take_for_job(job.id, {{"tube", "m", 0, 11'000}}, at(4)).ok());
    EXPECT_EQ(tube(second.id).reserved, 400);
    job.state = JobState::fitted;
    job = store->save(job, at(5)).value();
    EXPECT_EQ(tube(second.id).reserved, 0) << "nothing is kept for a job that is fitted";
    job.state = JobState::accepted;
    job = store->save(job, at(6)).value();
    EXPECT_EQ(tube(second.id).reserved, 400);
    ASSERT_TRUE(store->remove(job.id, at(7)).ok());
    EXPECT_EQ(tube(second.id).reserved, 0);
    EXPECT_EQ(stock_standings(*store, {}, "").value().size(), 3U) << "tube, hook and clip; no hire";
    EXPECT_FALSE(stock_standings(*store, std::vector<std::string>(1001, "x"), "").ok());
}

TEST_P(EachStore, APurchaseListThatLostItsHashIsTold) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    const auto kept = PurchaseBook(*store).keep(job.id, {}, printed, at(2));
    ASSERT_TRUE(kept.ok());
    const QString on = dialect_ == Dialect::sqlite ? QString() : QStringLiteral(" ON ");
    for (const char* table : {"purchase_paper", "purchase_supplier_paper"}) {
        const QString name = QString::fromLatin1(table);
        ASSERT_EQ(sql(path(), QStringLiteral("DROP TRIGGER %1_no_update").arg(name) + (on.isEmpty() ? on : on + name)),
                  "");
        ASSERT_EQ(sql(path(), QStringLiteral("UPDATE %1 SET content = %2").arg(name, bytes_literal("255044462d"))), "");
    }
    EXPECT_FALSE(PurchaseBook(*store).paper(kept.value().id).ok());
    EXPECT_FALSE(PurchaseBook(*store).paper_to(kept.value().id, "Pellow").ok());
    const std::string told = store->check().value();
    EXPECT_NE(told.find("purchase list P2027-0001 no longer"), std::string::npos) << told;
    EXPECT_NE(told.find("purchase list P2027-0001 has a paper to a supplier"), std::string::npos) << told;
}

}  // namespace
}  // namespace purchase_book_test
}  // namespace wg::store::test
