// The book of stock and purchase lists: on both databases, guarded, and never a number twice.
#include "core/store/stock_book.h"

#include <gtest/gtest.h>

#include "core/store/personal.h"
#include "core/store/purchase_book.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace stock_book_test {
namespace {

using parts::StockMove;
using Kind = parts::StockMoveKind;

StockMove move(Kind kind, std::int64_t thousandths, const char* item = "tube") {
    StockMove out;
    out.item_id = item;
    out.unit = "m";
    out.kind = kind;
    out.thousandths = thousandths;
    return out;
}

Result<std::string> printed(const std::string& number) {
    return "%PDF-1.7 invented " + number;
}

TEST_P(EachStore, StockIsEnteredCorrectedAndNeverChanged) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    StockBook book(*store);
    const StockMove first = book.enter(move(Kind::received, 15'000), at(2)).value();
    EXPECT_FALSE(first.id.empty());
    EXPECT_EQ(first.by, store->by());
    EXPECT_EQ(first.at, iso8601(at(2)));
    StockMove taken = move(Kind::taken, 16'500);
    taken.job_id = job.id;
    taken.note = "roof, it's the '?' \xF0\x9F\x8F\xA0";
    taken = book.enter(taken, at(3)).value();
    ASSERT_EQ(book.levels().value().size(), 1U);
    EXPECT_EQ(book.levels().value()[0].thousandths, -1'500);
    StockMove better = taken;
    better.thousandths = 14'000;
    better.corrects_id = taken.id;
    better = book.enter(better, at(4)).value();
    EXPECT_EQ(book.levels().value()[0].thousandths, 1'000);
    EXPECT_EQ(book.moves("tube", 0).value(), (std::vector<StockMove>{better, taken, first}));
    EXPECT_EQ(book.job_of_number(job.number).value(), job.id);
    EXPECT_EQ(book.job_of_number("2027-9999").value(), "");
    EXPECT_EQ(book.number_of_job(job.id).value(), job.number);
    EXPECT_EQ(book.levels_of({"clip", "tube"}).value(), book.levels().value());
    EXPECT_TRUE(book.levels_of({"clip"}).value().empty());
    EXPECT_EQ(book.moves("tube", 1).value(), std::vector<StockMove>{better});
    EXPECT_TRUE(book.moves("clip", 0).value().empty());
    EXPECT_EQ(sql(path(), "UPDATE stock_move SET thousandths = 1"), "a movement of stock is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM stock_move"), "a movement of stock is never deleted");
    if (dialect_ == Dialect::sqlite)
        EXPECT_EQ(sql(path(), "INSERT OR REPLACE INTO stock_move SELECT * FROM stock_move LIMIT 1"),
                  "a movement of stock is never replaced");
    else
        EXPECT_EQ(sql(path(), "TRUNCATE stock_move"), "a movement of stock is never deleted");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, StockRefusesWhatCannotStandAndKeepsNothingOfIt) {
    const auto store = open();
    StockBook book(*store);
    const StockMove first = book.enter(move(Kind::received, 15'000), at(2)).value();
    const auto refused = [&](const auto& change, const char* word) {
        StockMove one = move(Kind::taken, 1'000);
        change(one);
        const auto result = book.enter(one, at(3));
        ASSERT_FALSE(result.ok()) << word;
        EXPECT_NE(text_of(result.problems()).find(word), std::string::npos) << text_of(result.problems());
    };
    refused([](StockMove& m) { m.item_id.clear(); }, "no item");
    refused([](StockMove& m) { m.item_id = "\xFF"; }, "no item");
    refused([](StockMove& m) { m.unit = "box"; }, "no unit");
    refused([](StockMove& m) { m.thousandths = -1; }, "below 0");
    refused([](StockMove& m) { m.thousandths = parts::most_stock_thousandths + 1; }, "beyond");
    refused([](StockMove& m) { m.note.assign(2001, 'x'); }, "2,000");
    refused([](StockMove& m) { m.job_id = id(0x999); }, "job");
    refused([](StockMove& m) { m.corrects_id = id(0x999); }, "not in the book");
    refused(
        [&](StockMove& m) {
            m.corrects_id = first.id;
            m.unit = "pc";
        },
        "another item or unit");
    StockMove correction = move(Kind::received, 14'000);
    correction.corrects_id = first.id;
    ASSERT_TRUE(book.enter(correction, at(4)).ok());
    refused([&](StockMove& m) { m.corrects_id = first.id; }, "corrected already");
    StockMove bad = move(Kind::taken, 1);
    bad.unit = "";
    EXPECT_FALSE(book.enter_all({move(Kind::taken, 1), bad}, at(5)).ok());
    EXPECT_EQ(book.moves("tube", 0).value().size(), 2U) << "all or none";
    // Behind the program's back.
    const QString row = QStringLiteral(
        "INSERT INTO stock_move (seq, id, item_id, unit, move, thousandths, note, entered_by, entered_at, corrects_id) "
        "VALUES (9, 'x', '%1', 'm', '%2', %3, '', '', '', %4)");
    EXPECT_EQ(sql(path(), row.arg("clip", "taken", "1", QStringLiteral("'%1'").arg(QString::fromStdString(first.id)))),
              "a correction is of the same item and unit");
    EXPECT_NE(sql(path(), row.arg("clip", "lost", "1", "NULL")), "");
    EXPECT_NE(sql(path(), row.arg("clip", "taken", "-1", "NULL")), "");
    EXPECT_EQ(book.levels().value().size(), 1U);
}

TEST_P(EachStore, APurchaseListIsKeptWithItsNumberAndBookedOnce) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    PurchaseBook book(*store);
    const std::vector<PurchaseOrdered> lines = {{1, "Pellow", "tube", "Copper tube", "m", 15'000},
                                                {2, "Bracken", "hook", "Roof hook", "pc", 6'000},
                                                {3, "Pellow", "", "Own rail", "pc", 1'000},
                                                {4, "Pellow", "clip", "Clip", "pc", 0},
                                                {5, "", "tape", "Tape", "pc", 2'000}};
    EXPECT_FALSE(book.keep(id(0x999), lines, printed, at(2)).ok()) << "no such job";
    EXPECT_FALSE(book.keep(job.id, {{2, "", "a", "", "pc", 1}}, printed, at(2)).ok()) << "positions";
    EXPECT_FALSE(book.keep(job.id, {{1, "", "a", "", "pc", -1}}, printed, at(2)).ok());
    EXPECT_FALSE(book.keep(
                         job.id, lines, [](const std::string&) { return Result<std::string>("no"); }, at(2))
                     .ok());
    const auto kept = book.keep(job.id, lines, printed, at(2));
    ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
    EXPECT_EQ(kept.value().number, "P2027-0001") << "what was refused took no number";
    EXPECT_EQ(book.paper(kept.value().id).value(), "%PDF-1.7 invented P2027-0001");
    EXPECT_EQ(book.lines(kept.value().id).value(), lines);
    EXPECT_EQ(book.papers(10).value(), std::vector<PurchasePaper>{kept.value()});
    EXPECT_FALSE(book.receive(kept.value().id, "Nobody", at(3)).ok());
    EXPECT_EQ(book.receive(kept.value().id, "Pellow", at(3)).value(), 1) << "own lines and nothing are not stock";
    EXPECT_FALSE(book.receive(kept.value().id, "Pellow", at(4)).ok()) << "once";
    EXPECT_EQ(book.receive(kept.value().id, "", at(5)).value(), 1) << "those without a supplier";
    const auto now = book.lines(kept.value().id).value();
    EXPECT_TRUE(now[0].received && now[4].received);
    EXPECT_FALSE(now[1].received || now[2].received || now[3].received);
    const auto moves = StockBook(*store).moves("tube", 0).value();
    ASSERT_EQ(moves.size(), 1U);
    EXPECT_EQ(moves[0].thousandths, 15'000);
    EXPECT_EQ(moves[0].purchase_id, kept.value().id);
    EXPECT_EQ(moves[0].purchase_line, 1);
    EXPECT_EQ(book.keep(job.id, lines, printed, at(6)).value().number, "P2027-0002");
    for (const char* table : {"purchase_paper", "purchase_line"}) {
        EXPECT_NE(sql(path(), QStringLiteral("DELETE FROM %1").arg(QString::fromLatin1(table))), "");
        EXPECT_NE(
            sql(path(), QStringLiteral("UPDATE %1 SET %2 = '0'")
                            .arg(QString::fromLatin1(table),
                                 QString::fromLatin1(table == std::string("purchase_line") ? "text" : "kept_by"))),
            "");
    }
    // The paper names no client: it stays when the client's data go.
    ASSERT_TRUE(PersonalData(*store).erase({job.id}, "asked by letter", at(7)).ok());
    EXPECT_TRUE(book.paper(kept.value().id).ok());
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, APurchaseListThatLostItsHashIsTold) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    const auto kept = PurchaseBook(*store).keep(job.id, {}, printed, at(2));
    ASSERT_TRUE(kept.ok());
    ASSERT_EQ(sql(path(), dialect_ == Dialect::sqlite ? "DROP TRIGGER purchase_paper_no_update"
                                                      : "DROP TRIGGER purchase_paper_no_update ON purchase_paper"),
              "");
    ASSERT_EQ(sql(path(), "UPDATE purchase_paper SET content = " + bytes_literal("255044462d")), "");
    EXPECT_FALSE(PurchaseBook(*store).paper(kept.value().id).ok());
    EXPECT_NE(store->check().value().find("purchase list P2027-0001"), std::string::npos);
}

}  // namespace
}  // namespace stock_book_test
}  // namespace wg::store::test
