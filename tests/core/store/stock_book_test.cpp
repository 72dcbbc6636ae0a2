// The book of stock: on both databases, guarded.
#include "core/store/stock_book.h"

#include <gtest/gtest.h>

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

TEST_P(EachStore, APieceIsNeverHalfAndWhatIsFittedNamesItsJob) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    StockBook book(*store);
    StockMove half = move(Kind::received, 1'500, "clip");
    half.unit = "pc";
    const auto refused = book.enter(half, at(2));
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(text_of(refused.problems()).find("pieces"), std::string::npos);
    half.thousandths = 2'000;
    EXPECT_TRUE(book.enter(half, at(2)).ok());
    EXPECT_FALSE(book.enter(move(Kind::fitted, 1'000), at(3)).ok());
    EXPECT_NE(sql(path(),
                  "INSERT INTO stock_move (seq, id, item_id, unit, move, thousandths, note, entered_by, entered_at) "
                  "VALUES (9, 'x', 'clip', 'pc', 'fitted', 1, '', '', '')"),
              "")
        << "behind the program's back";
}

TEST_P(EachStore, AJobTakesWhatWasPlannedOnceAndPutsItBack) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    Job second = sample_job();
    second.id = id(0x77);
    second.number = "2027-0099";
    ASSERT_TRUE(store->save(second, at(1)).ok());
    StockBook book(*store);
    ASSERT_TRUE(book.enter(move(Kind::counted, 20'000), at(2)).ok());
    const parts::StockByItem nothing;
    EXPECT_EQ(book.taken_for(job.id).value(), nothing);
    EXPECT_FALSE(book.take_for_job(job.id, {{"tube", "m", 0, 0}}, at(3)).ok()) << "nothing";
    EXPECT_FALSE(book.take_for_job(id(0x999), {{"tube", "m", 0, 1'000}}, at(3)).ok()) << "no such job";
    EXPECT_FALSE(book.take_for_job(job.id, {{"tube", "m", 0, 1'000}, {"clip", "pc", 0, 500}}, at(3)).ok());
    EXPECT_EQ(book.levels().value()[0].thousandths, 20'000) << "all or none";
    EXPECT_EQ(book.take_for_job(job.id, {{"tube", "m", 0, 9'000}}, at(3)).value(), 1);
    EXPECT_FALSE(book.take_for_job(job.id, {{"tube", "m", 0, 9'000}}, at(4)).ok()) << "somebody else was quicker";
    EXPECT_EQ(book.take_for_job(job.id, {{"tube", "m", 9'000, 1'000}}, at(4)).value(), 1) << "the rest";
    EXPECT_EQ(book.taken_for(job.id).value().at({"tube", "m"}), 10'000);
    EXPECT_EQ(book.taken_for(second.id).value(), nothing);
    EXPECT_EQ(book.levels().value()[0].thousandths, 10'000);
    const auto moves = book.moves("tube", 2).value();
    EXPECT_EQ(moves[0].kind, Kind::fitted);
    EXPECT_EQ(moves[0].job_id, job.id);
    // An entry by hand stays when what was planned is put back.
    StockMove by_hand = move(Kind::taken, 500);
    by_hand.job_id = job.id;
    ASSERT_TRUE(book.enter(by_hand, at(5)).ok());
    EXPECT_EQ(book.taken_as_planned(job.id).value(), 2);
    EXPECT_FALSE(book.put_back_for_job(second.id, at(6)).ok());
    EXPECT_EQ(book.put_back_for_job(job.id, at(6)).value(), 2);
    EXPECT_FALSE(book.put_back_for_job(job.id, at(7)).ok()) << "once";
    EXPECT_EQ(book.taken_as_planned(job.id).value(), 0);
    EXPECT_EQ(book.levels().value()[0].thousandths, 19'500);
    EXPECT_EQ(book.taken_for(job.id).value().at({"tube", "m"}), 500);
    EXPECT_EQ(book.moves("tube", 0).value().size(), 6U) << "the book only grows";
    EXPECT_EQ(book.take_for_job(job.id, {{"tube", "m", 500, 2'000}}, at(8)).value(), 1) << "and taken again";
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, WhatIsPutBackAfterACountIsThereAgain) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    StockBook book(*store);
    const auto level = [&book] { return book.levels().value().at(0).thousandths; };
    ASSERT_TRUE(book.enter(move(Kind::counted, 20'000), at(2)).ok());
    ASSERT_EQ(book.take_for_job(job.id, {{"tube", "m", 0, 9'000}}, at(3)).value(), 1);
    ASSERT_TRUE(book.enter(move(Kind::counted, 10'000), at(4)).ok()) << "one was lost";
    EXPECT_EQ(book.put_back_for_job(job.id, at(5)).value(), 1);
    EXPECT_EQ(level(), 19'000) << "nine lie on the shelf again";
    EXPECT_EQ(book.moves("tube", 1).value().at(0).kind, Kind::returned);
    EXPECT_EQ(book.taken_as_planned(job.id).value(), 0);
    EXPECT_EQ(book.taken_for(job.id).value().at({"tube", "m"}), 0);
    EXPECT_FALSE(book.put_back_for_job(job.id, at(6)).ok()) << "once";
    // Taken again: the later one is out, the earlier one came back.
    ASSERT_EQ(book.take_for_job(job.id, {{"tube", "m", 0, 4'000}}, at(7)).value(), 1);
    EXPECT_EQ(book.taken_as_planned(job.id).value(), 1);
    // A part came back by hand: only the rest is put back.
    StockMove by_hand = move(Kind::returned, 1'000);
    by_hand.job_id = job.id;
    ASSERT_TRUE(book.enter(by_hand, at(8)).ok());
    EXPECT_EQ(level(), 16'000);
    EXPECT_EQ(book.put_back_for_job(job.id, at(9)).value(), 1);
    EXPECT_EQ(level(), 19'000);
    EXPECT_EQ(book.taken_for(job.id).value().at({"tube", "m"}), 0);
}

}  // namespace
}  // namespace stock_book_test
}  // namespace wg::store::test
