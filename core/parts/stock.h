#pragma once
// The firm's stock from a book of movements that only grows. Pure.

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace wg::parts {

enum class StockMoveKind {
    received,  ///< from a supplier
    taken,     ///< for a job
    counted,   ///< so much is there, whatever was reckoned
    returned,  ///< from a job, back into stock
    fitted,    ///< taken for a job as it is planned, all lines at once
};
[[nodiscard]] const char* key_of(StockMoveKind kind) noexcept;  ///< "received", "taken", "counted", ...
[[nodiscard]] std::optional<StockMoveKind> stock_move_of_key(std::string_view key) noexcept;

/// Pieces are counted whole; metres, kilograms and hours have fractions.
[[nodiscard]] bool counted_whole(std::string_view unit) noexcept;
/// The next quantity that the unit can have: whole pieces, thousandths of the others.
[[nodiscard]] std::int64_t up_to_countable(double units, std::string_view unit) noexcept;

inline constexpr std::int64_t most_stock_thousandths = 1'000'000'000'000;

struct StockMove {
    std::string id;       ///< UUID; empty: the book gives one
    std::string item_id;  ///< of the price lists
    std::string unit;     ///< "pc", "m", "kg", "h": the item's when it was entered
    StockMoveKind kind = StockMoveKind::received;
    std::int64_t thousandths = 0;  ///< of the unit, from 0 on
    std::string job_id;            ///< empty: none
    std::string purchase_id;       ///< of the purchase list that it was received from; empty: none
    int purchase_line = 0;         ///< of that list, from 1 on
    std::string note;
    std::string by;
    std::string at;           ///< ISO 8601, when it was entered
    std::string corrects_id;  ///< the entry in whose place this one stands; empty: it is one of its own
    friend bool operator==(const StockMove&, const StockMove&) = default;
};

struct StockLevel {
    std::string item_id;
    std::string unit;
    std::int64_t thousandths = 0;  ///< below 0: more was taken than is known to have been there
    std::string counted_at;        ///< of the last count; empty: never counted
    friend bool operator==(const StockLevel&, const StockLevel&) = default;
};

/// The book as it counts: a correction stands in the place of the entry it corrects, the last of several, with the
/// entry's day and purchase list and the id that the next correction has to name. One of an entry that is not among the
/// moves counts by itself.
[[nodiscard]] std::vector<StockMove> moves_that_count(const std::vector<StockMove>& moves);

/// The entry that lets this one of `moves_that_count` count no more.
[[nodiscard]] StockMove struck_out(const StockMove& move);

/// What left the stock for a job less what came back, by item and unit; by job, entries without one left out.
using StockByItem = std::map<std::pair<std::string, std::string>, std::int64_t>;
[[nodiscard]] std::map<std::string, StockByItem> taken_by_job(const std::vector<StockMove>& moves);

/// Moves in the order of the book to what is there, by item and unit.
[[nodiscard]] std::vector<StockLevel> stock_levels(const std::vector<StockMove>& moves);

/// Thousandths of so many units; nothing when it is no number, below 0, beyond the book, or finer than thousandths.
[[nodiscard]] std::optional<std::int64_t> thousandths_of(double units) noexcept;
[[nodiscard]] double units_of_thousandths(std::int64_t thousandths) noexcept;

}  // namespace wg::parts
