#include "core/plan/parts_of_plan.h"

namespace wg::plan {

Result<pipework::Suggestion> suggested_run(const Job& job, const Reference& reference, const std::string& choice_id) {
    Options options;
    options.choice_id = choice_id;
    const Result<steps::Selection> selected = steps::select(job, reference, options);
    if (!selected) return selected.problems();
    const steps::Selection& with = selected.value();
    if (with.choice->placements.empty()) {
        return Problem{"choices \"" + with.choice->label + "\"", "no collector is placed",
                       "Place a collector in Layout"};
    }
    std::vector<PlacementPlan> placements;
    for (const Placement& placement : with.choice->placements) {
        const Surface& surface = *find_surface(job.site, placement.surface_id);
        PlacementPlan out;
        out.surface_id = surface.id;
        out.placed = site::place(surface, job.site.sketch_up_azimuth_deg, placement, *with.collector);
        placements.push_back(std::move(out));
    }
    return pipework::suggest_run(steps::suggest_input(job, with, placements));
}

}  // namespace wg::plan
