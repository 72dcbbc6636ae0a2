#include "core/plan/prepared_choice.h"

#include <utility>

namespace wg::plan::detail {

Result<PreparedChoice> prepared_choice(const Job& job, const Reference& reference, const std::string& choice_id) {
    Options options;
    options.choice_id = choice_id;
    Result<steps::Selection> selected = steps::select(job, reference, options);
    if (!selected) return selected.problems();
    PreparedChoice out;
    out.with = std::move(selected).value();
    if (out.with.choice->placements.empty()) {
        return Problem{"choices \"" + out.with.choice->label + "\"", "no collector is placed",
                       "Place a collector in Layout"};
    }
    out.planes = steps::light(job, out.with, options, out.plan);
    steps::engineering(job, out.with, out.plan);
    steps::money(job, out.with, {}, out.plan);
    out.input = steps::season_input(job, out.with, out.planes, out.plan.placements, out.plan.run);
    return out;
}

}  // namespace wg::plan::detail
