#pragma once
// What was ordered and is to come, and what of the stock is promised to jobs. Pure.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/parts/stock.h"

namespace wg::parts {

/// A line of a purchase list as it was ordered. Quantities in thousandths of the unit.
struct OrderedLine {
    int position = 0;      ///< on the list, from 1 on
    std::string supplier;  ///< empty: none told
    std::string item_id;   ///< empty: a line of the office's own, which no stock is kept of
    std::string text;
    std::string unit;
    std::int64_t thousandths = 0;          ///< to order
    std::optional<std::int64_t> needed{};  ///< by the job, with waste; none: an older program did not keep it
    bool service = false;                  ///< work or hire: no stock is kept of it
    // When read back:
    std::int64_t received = 0;  ///< so far
    bool closed = false;        ///< the rest does not come
    friend bool operator==(const OrderedLine&, const OrderedLine&) = default;
};

enum class OrderStanding {
    no_stock,  ///< no stock is kept of it, or nothing was ordered
    open,
    partly,
    received,
    not_coming,
};
[[nodiscard]] bool is_stocked(const OrderedLine& line) noexcept;
/// 0 at least: more may have come than was ordered.
[[nodiscard]] std::int64_t to_come(const OrderedLine& line) noexcept;
[[nodiscard]] OrderStanding standing_of(const OrderedLine& line) noexcept;
/// Of a supplier's lines of one list together.
[[nodiscard]] OrderStanding standing_of(const std::vector<OrderedLine>& lines) noexcept;

/// A line with the list and the job that it is of.
struct ListedLine {
    std::string purchase_number;
    std::string job_id;
    std::string job_number;
    bool job_waits = false;  ///< not fitted yet, and not removed: what it needs is promised to it
    bool newest = false;     ///< list of its job: what the job needs now
    OrderedLine line;
};

/// Where a quantity comes from or is promised to.
struct Share {
    std::string purchase_number;
    std::string job_number;
    std::int64_t thousandths = 0;
    friend bool operator==(const Share&, const Share&) = default;
};

struct ItemStanding {
    std::string item_id;
    std::string unit;
    std::optional<std::int64_t> in_stock{};  ///< none: it never moved
    std::string counted_at{};                ///< of the last count; empty: never counted
    std::int64_t on_order = 0;               ///< not received yet
    std::int64_t reserved = 0;               ///< for jobs that wait, with what was taken for them off it
    std::vector<Share> orders{};
    std::vector<Share> reservations{};
    friend bool operator==(const ItemStanding&, const ItemStanding&) = default;
};

/// By item and unit, of those that moved or stand on a list. What `for_job` needs itself is promised to nobody else:
/// empty, and every job's counts. A job without a purchase list has nothing promised to it.
[[nodiscard]] std::vector<ItemStanding> item_standings(const std::vector<StockMove>& moves,
                                                       const std::vector<ListedLine>& lines,
                                                       const std::string& for_job);

}  // namespace wg::parts
