#include "core/plan/own_lists.h"

#include <utility>

#include "core/quantity/utf8.h"

namespace wg::plan {

WithLists with_own_lists(const Reference& reference, const std::vector<OwnList>& lists) {
    WithLists out{reference, {}};
    for (const OwnList& own : lists) {
        const std::string where = "price list " + for_message(own.id);
        if (reference.price_lists.count(own.id) != 0) {
            // Jobs that name it would be priced otherwise from one day to the next, and on other machines not.
            out.problems.push_back(
                {where, "has the id of a list that comes with the program", "Save it under an id of its own"});
            continue;
        }
        Result<parts::PriceList> read = parts::price_list_from_json(own.content, where);
        if (!read) {
            out.problems.insert(out.problems.end(), read.problems().begin(), read.problems().end());
            continue;
        }
        if (read.value().id != own.id) {
            out.problems.push_back({where, "calls itself '" + for_message(read.value().id) + "'",
                                    "Save it under the id that stands in it"});
            continue;
        }
        out.reference.own_lists.insert(own.id);
        if (own.withdrawn) out.reference.withdrawn_lists.insert(own.id);
        out.reference.price_lists.insert_or_assign(own.id, std::move(read).value());
    }
    return out;
}

std::string list_for_new_jobs(const Reference& reference, const std::string& on) {
    // Worse to better; equal ones by the day from which they hold, so that this year's goes before last year's.
    const auto rank = [&](const parts::PriceList& list) {
        const int holds = list.valid_from <= on && on <= list.valid_to ? 1 : 0;
        // The firm's own goes before the program's even where its prices are not checked yet.
        const int own = reference.own_lists.count(list.id) != 0 ? 2 : 0;
        return std::pair((list.invented ? 0 : 4) + own + holds, list.valid_from);
    };
    const parts::PriceList* best = nullptr;
    for (const auto& [id, list] : reference.price_lists) {
        if (reference.withdrawn_lists.count(id) != 0) continue;
        if (best == nullptr || rank(list) > rank(*best)) best = &list;
    }
    return best == nullptr ? std::string() : best->id;
}

}  // namespace wg::plan
