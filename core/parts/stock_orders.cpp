#include "core/parts/stock_orders.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/parts/by_item.h"

namespace wg::parts {

bool is_stocked(const OrderedLine& line) noexcept {
    return !line.item_id.empty() && !line.service && line.unit != "h";
}

std::int64_t to_come(const OrderedLine& line) noexcept {
    if (!is_stocked(line) || line.closed) return 0;
    return std::max<std::int64_t>(0, line.thousandths - line.received);
}

OrderStanding standing_of(const OrderedLine& line) noexcept {
    if (!is_stocked(line) || (line.thousandths == 0 && line.received == 0)) return OrderStanding::no_stock;
    if (to_come(line) > 0) return line.received > 0 ? OrderStanding::partly : OrderStanding::open;
    return line.received > 0 ? OrderStanding::received : OrderStanding::not_coming;
}

OrderStanding standing_of(const std::vector<OrderedLine>& lines) noexcept {
    bool waits = false;
    bool came = false;
    bool any = false;
    for (const OrderedLine& line : lines) {
        if (standing_of(line) == OrderStanding::no_stock) continue;
        any = true;
        waits = waits || to_come(line) > 0;
        came = came || line.received > 0;
    }
    if (!any) return OrderStanding::no_stock;
    if (waits) return came ? OrderStanding::partly : OrderStanding::open;
    return came ? OrderStanding::received : OrderStanding::not_coming;
}

std::vector<ItemStanding> item_standings(const std::vector<StockMove>& moves, const std::vector<ListedLine>& lines,
                                         const std::string& for_job) {
    using Key = std::pair<std::string, std::string>;
    ByItem<ItemStanding> standings;
    for (const StockLevel& level : stock_levels(moves)) {
        ItemStanding& one = standings[{level.item_id, level.unit}];
        one.in_stock = level.thousandths;
        one.counted_at = level.counted_at;
    }
    struct Need {
        std::string purchase_number;
        std::string job_number;
        std::int64_t thousandths = 0;
    };
    std::map<std::string, std::map<Key, Need>> needs;  // by job
    for (const ListedLine& listed : lines) {
        const OrderedLine& line = listed.line;
        if (!is_stocked(line)) continue;
        const Key key{line.item_id, line.unit};
        ItemStanding& one = standings[key];
        if (const std::int64_t coming = to_come(line); coming > 0) {
            one.on_order += coming;
            one.orders.push_back({listed.purchase_number, listed.job_number, coming});
        }
        if (!listed.newest || !listed.job_waits || listed.job_id == for_job) continue;
        Need& need = needs[listed.job_id][key];
        need.purchase_number = listed.purchase_number;
        need.job_number = listed.job_number;
        need.thousandths += line.needed.value_or(line.thousandths);
    }
    std::map<std::string, StockByItem> taken = taken_by_job(moves);
    for (const auto& [job_id, of_job] : needs) {
        StockByItem& gone = taken[job_id];
        for (const auto& [key, need] : of_job) {
            const std::int64_t left = need.thousandths - gone[key];
            if (left <= 0) continue;
            standings[key].reserved += left;
            standings[key].reservations.push_back({need.purchase_number, need.job_number, left});
        }
    }
    return rows_of(std::move(standings));
}

}  // namespace wg::parts
