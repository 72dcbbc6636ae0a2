#include "core/plan/parts_of_plan.h"

namespace wg::plan {

// Looks up for itself what a way needs: no weather, prices or rules.
Result<pipework::Suggestion> suggested_run(const Job& job, const Reference& reference, const std::string& choice_id) {
    const Choice* choice = choice_id.empty() ? chosen_choice(job) : find_choice(job, choice_id);
    if (choice == nullptr) return Problem{"choices", "there is no choice " + choice_id, "Add a choice in Layout"};
    steps::Selection with;
    with.choice = choice;
    with.collector = find_collector(reference.catalogue, choice->collector_model);
    with.cylinder = find_cylinder(reference.catalogue, choice->cylinder_model);
    with.spot = find_spot(job.site, choice->spot_id);
    const std::string where = "choices \"" + choice->label + "\"";
    if (with.collector == nullptr)
        return Problem{where, "collector_model is not in the catalogue", "Choose a collector"};
    if (with.cylinder == nullptr) return Problem{where, "cylinder_model is not in the catalogue", "Choose a cylinder"};
    if (with.spot == nullptr) return Problem{where, "spot_id names no place for the cylinder", "Choose a place for it"};
    std::vector<PlacementPlan> placements;
    for (const Placement& placement : choice->placements) {
        const Surface* surface = find_surface(job.site, placement.surface_id);
        if (surface == nullptr) continue;
        PlacementPlan out;
        out.surface_id = surface->id;
        out.placed = site::place(*surface, job.site.sketch_up_azimuth_deg, placement, *with.collector);
        placements.push_back(std::move(out));
    }
    if (placements.empty()) return Problem{where, "no collector is placed", "Place a collector in Layout"};
    return pipework::suggest_run(steps::suggest_input(job, with, placements));
}

}  // namespace wg::plan
