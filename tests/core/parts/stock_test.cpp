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

// Against a slow reckoning that rewrites the book entry by entry.
TEST(Stock, any_book_is_the_same_as_one_in_which_corrections_were_written_over) {
    for (int seed = 0; seed < sweep::cases(400); ++seed) {
        std::mt19937 random(static_cast<unsigned>(seed));
        const auto below = [&random](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
        std::vector<StockMove> book;
        std::vector<StockMove> written_over;
        std::map<std::string, std::size_t> place;  // of what can still be corrected
        for (int i = 0; i < 40; ++i) {
            StockMove one = move("0", static_cast<Kind>(below(4)), below(10'000));
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
            there += one.kind == Kind::taken ? -one.thousandths : one.thousandths;
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
