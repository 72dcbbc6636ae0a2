#include "core/parts/stock.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>

#include "tests/tools/sweep.h"

namespace wg::parts {
namespace stock_test {
namespace {

using Kind = StockMoveKind;

StockMove move(const char* id, Kind kind, std::int64_t thousandths, const char* corrects = "") {
    StockMove out;
    out.id = id;
    out.item_id = "tube";
    out.unit = "m";
    out.kind = kind;
    out.thousandths = thousandths;
    out.at = std::string("2027-06-0") + id;
    out.corrects_id = corrects;
    return out;
}

std::int64_t level(const std::vector<StockMove>& moves) {
    const auto levels = stock_levels(moves);
    return levels.size() == 1 ? levels[0].thousandths : -999'999;
}

TEST(Stock, is_what_came_less_what_went_from_the_last_count_on) {
    std::vector<StockMove> moves = {move("1", Kind::received, 15'000), move("2", Kind::taken, 11'400),
                                    move("3", Kind::returned, 400)};
    EXPECT_EQ(level(moves), 4'000);
    moves.push_back(move("4", Kind::counted, 3'500));
    moves.push_back(move("5", Kind::taken, 1'000));
    EXPECT_EQ(level(moves), 2'500);
    EXPECT_EQ(stock_levels(moves)[0].counted_at, "2027-06-04");
    moves.push_back(move("6", Kind::taken, 4'000));
    EXPECT_EQ(level(moves), -1'500) << "told, never clamped";
}

TEST(Stock, a_correction_counts_where_the_entry_stood) {
    // The count after it stays the word on what is there.
    EXPECT_EQ(level({move("1", Kind::received, 9'000), move("2", Kind::counted, 5'000),
                     move("3", Kind::received, 8'000, "1")}),
              5'000);
    EXPECT_EQ(level({move("1", Kind::counted, 9'000), move("2", Kind::taken, 1'000),
                     move("3", Kind::counted, 7'000, "1"), move("4", Kind::counted, 6'000, "3")}),
              5'000)
        << "the last of several";
    EXPECT_EQ(level({move("1", Kind::received, 9'000), move("2", Kind::received, 0, "1")}), 0) << "struck out";
    EXPECT_EQ(level({move("2", Kind::received, 4'000, "not here")}), 4'000);
}

TEST(Stock, units_are_kept_apart) {
    std::vector<StockMove> moves = {move("1", Kind::received, 15'000), move("2", Kind::received, 2'000)};
    moves[1].unit = "pc";
    ASSERT_EQ(stock_levels(moves).size(), 2U);
    EXPECT_EQ(stock_levels(moves)[1].unit, "pc");
}

TEST(Stock, thousandths_are_whole_or_none) {
    EXPECT_EQ(thousandths_of(11.4), 11'400);
    EXPECT_EQ(thousandths_of(0.001), 1);
    EXPECT_EQ(thousandths_of(0.0), 0);
    for (const double wrong : {-0.001, 0.0004, 1.23456, 1e10, std::nan(""), HUGE_VAL})
        EXPECT_FALSE(thousandths_of(wrong).has_value()) << wrong;
    EXPECT_EQ(units_of_thousandths(-250), -0.25);
}

TEST(Stock, pieces_are_whole_and_lengths_are_not) {
    EXPECT_TRUE(counted_whole("pc"));
    for (const char* unit : {"m", "kg", "h"})
        EXPECT_FALSE(counted_whole(unit)) << unit;
    EXPECT_EQ(up_to_countable(1.2, "pc"), 2'000);
    EXPECT_EQ(up_to_countable(2.0, "pc"), 2'000);
    EXPECT_EQ(up_to_countable(2.0000000001, "pc"), 2'000) << "noise of floating point is no piece";
    EXPECT_EQ(up_to_countable(11.4 * 1.05, "m"), 11'970);
    EXPECT_EQ(up_to_countable(0.0, "pc"), 0);
}

TEST(Stock, the_book_as_it_counts_names_the_last_correction_and_the_first_days_list) {
    StockMove first = move("1", Kind::received, 9'000);
    first.purchase_id = "P";
    first.purchase_line = 3;
    StockMove second = move("2", Kind::received, 8'000, "1");
    const auto counts = moves_that_count({first, second});
    ASSERT_EQ(counts.size(), 1U);
    EXPECT_EQ(counts[0].id, "2") << "what the next correction has to name";
    EXPECT_EQ(counts[0].at, first.at);
    EXPECT_EQ(counts[0].thousandths, 8'000);
    EXPECT_EQ(counts[0].purchase_id, "P");
    EXPECT_EQ(counts[0].purchase_line, 3);
    StockMove counter = struck_out(counts[0]);
    EXPECT_EQ(counter.corrects_id, "2");
    counter.id = "3";
    EXPECT_EQ(level({first, second, counter}), 0);
}

TEST(Stock, what_a_job_took_is_less_what_came_back_and_what_was_struck_out) {
    std::vector<StockMove> book = {move("1", Kind::fitted, 9'000), move("2", Kind::taken, 1'000),
                                   move("3", Kind::returned, 4'000), move("4", Kind::taken, 700)};
    for (std::size_t i = 0; i < 3; ++i)
        book[i].job_id = "A";
    EXPECT_EQ(level(book), -6'700) << "fitted is taken";
    const auto taken = taken_by_job(book);
    ASSERT_EQ(taken.size(), 1U) << "an entry without a job is nobody's";
    EXPECT_EQ(taken.at("A").at({"tube", "m"}), 6'000);
    StockMove counter = struck_out(moves_that_count(book)[0]);
    counter.id = "5";
    book.push_back(counter);
    EXPECT_EQ(taken_by_job(book).at("A").at({"tube", "m"}), -3'000);
}

// Against a slow reckoning that rewrites the book entry by entry.
TEST(Stock, any_book_is_the_same_as_one_in_which_corrections_were_written_over) {
    for (int seed = 0; seed < sweep::cases(400); ++seed) {
        std::mt19937 random(static_cast<unsigned>(seed));
        const auto below = [&random](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
        std::vector<StockMove> book;
        std::vector<StockMove> written_over;
        std::map<std::string, std::size_t> place;  // of what can still be corrected
        for (int i = 0; i < 40; ++i) {
            StockMove one = move("0", static_cast<Kind>(below(5)), below(10'000));
            one.id = std::to_string(i);
            one.item_id = below(2) == 0 ? "tube" : "clip";
            if (below(3) == 0 && !place.empty()) {
                const auto of = std::next(place.begin(), below(static_cast<int>(place.size())));
                one.corrects_id = of->first;
                one.item_id = written_over[of->second].item_id;
                const std::size_t at = of->second;
                place.erase(of);
                place[one.id] = at;
                written_over[at].kind = one.kind;
                written_over[at].thousandths = one.thousandths;
            } else {
                place[one.id] = written_over.size();
                written_over.push_back(one);
            }
            book.push_back(one);
        }
        std::map<std::string, std::int64_t> slow;
        for (const StockMove& one : written_over) {
            std::int64_t& there = slow[one.item_id];
            if (one.kind == Kind::counted) there = 0;
            there += one.kind == Kind::taken || one.kind == Kind::fitted ? -one.thousandths : one.thousandths;
        }
        const auto levels = stock_levels(book);
        ASSERT_EQ(levels.size(), slow.size());
        for (const StockLevel& one : levels)
            ASSERT_EQ(one.thousandths, slow.at(one.item_id)) << seed;
    }
}

}  // namespace
}  // namespace stock_test
}  // namespace wg::parts
