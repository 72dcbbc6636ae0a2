#include "core/parts/stock.h"

#include <cmath>
#include <unordered_map>
#include <utility>

#include "core/parts/by_item.h"

namespace wg::parts {

const char* key_of(StockMoveKind kind) noexcept {
    switch (kind) {
        case StockMoveKind::received: return "received";
        case StockMoveKind::taken: return "taken";
        case StockMoveKind::counted: return "counted";
        case StockMoveKind::returned: return "returned";
        case StockMoveKind::fitted: return "fitted";
    }
    return "";
}

std::optional<StockMoveKind> stock_move_of_key(std::string_view key) noexcept {
    for (const StockMoveKind kind : {StockMoveKind::received, StockMoveKind::taken, StockMoveKind::counted,
                                     StockMoveKind::returned, StockMoveKind::fitted})
        if (key == key_of(kind)) return kind;
    return std::nullopt;
}

bool counted_whole(std::string_view unit) noexcept {
    return unit == "pc";
}

std::int64_t up_to_countable(double units, std::string_view unit) noexcept {
    constexpr double noise = 1e-6;
    if (counted_whole(unit)) return 1000 * static_cast<std::int64_t>(std::ceil(units - noise));
    return static_cast<std::int64_t>(std::ceil(units * 1000.0 - noise));
}

std::vector<StockMove> moves_that_count(const std::vector<StockMove>& moves) {
    // Which entry stands in the place of which: the first of a chain has the place, the last has the say.
    std::unordered_map<std::string_view, std::size_t> place_of;
    std::vector<std::size_t> says(moves.size());
    std::vector<bool> has_place(moves.size(), true);
    place_of.reserve(moves.size());
    for (std::size_t i = 0; i < moves.size(); ++i) {
        std::size_t place = i;
        if (!moves[i].corrects_id.empty()) {
            const auto corrected = place_of.find(moves[i].corrects_id);
            if (corrected != place_of.end()) place = corrected->second;
        }
        has_place[i] = place == i;
        says[place] = i;
        place_of.emplace(moves[i].id, place);
    }
    std::vector<StockMove> out;
    out.reserve(moves.size());
    for (std::size_t i = 0; i < moves.size(); ++i) {
        if (!has_place[i]) continue;
        StockMove move = moves[says[i]];
        move.at = moves[i].at;  // when it was looked at, not when the figure was corrected
        move.by = moves[i].by;
        move.purchase_id = moves[i].purchase_id;
        move.purchase_line = moves[i].purchase_line;
        out.push_back(std::move(move));
    }
    return out;
}

StockMove struck_out(const StockMove& move) {
    StockMove out;
    out.item_id = move.item_id;
    out.unit = move.unit;
    out.kind = StockMoveKind::received;  // nothing received
    out.job_id = move.job_id;
    out.note = move.note;
    out.corrects_id = move.id;
    return out;
}

std::map<std::string, StockByItem> taken_by_job(const std::vector<StockMove>& moves) {
    std::map<std::string, StockByItem> out;
    for (const StockMove& move : moves_that_count(moves)) {
        const bool taken = move.kind == StockMoveKind::taken || move.kind == StockMoveKind::fitted;
        if (move.job_id.empty() || (!taken && move.kind != StockMoveKind::returned)) continue;
        out[move.job_id][{move.item_id, move.unit}] += taken ? move.thousandths : -move.thousandths;
    }
    return out;
}

std::vector<StockLevel> stock_levels(const std::vector<StockMove>& moves) {
    ByItem<StockLevel> levels;
    for (const StockMove& move : moves_that_count(moves)) {
        StockLevel& level = levels[{move.item_id, move.unit}];
        switch (move.kind) {
            case StockMoveKind::received:
            case StockMoveKind::returned: level.thousandths += move.thousandths; break;
            case StockMoveKind::taken:
            case StockMoveKind::fitted: level.thousandths -= move.thousandths; break;
            case StockMoveKind::counted:
                level.thousandths = move.thousandths;
                level.counted_at = move.at;
                break;
        }
    }
    return rows_of(std::move(levels));
}

std::optional<std::int64_t> thousandths_of(double units) noexcept {
    const double thousandths = units * 1000.0;
    if (!(units >= 0.0 && thousandths <= static_cast<double>(most_stock_thousandths))) return std::nullopt;
    if (std::fabs(thousandths - std::round(thousandths)) > 1e-6 * std::fmax(1.0, thousandths * 1e-6))
        return std::nullopt;
    return std::llround(thousandths);
}

double units_of_thousandths(std::int64_t thousandths) noexcept {
    return static_cast<double>(thousandths) / 1000.0;
}

}  // namespace wg::parts
