#include <algorithm>

#include "core/plan/parts_of_plan.h"

namespace wg::plan::steps {
namespace {

template <class T>
const T* in(const std::map<std::string, T>& by_id, const std::string& id) {
    const auto found = by_id.find(id);
    return found == by_id.end() ? nullptr : &found->second;
}

std::string place_of(const Job& job, const Choice& choice) {
    const auto at =
        std::find_if(job.choices.begin(), job.choices.end(), [&](const Choice& c) { return c.id == choice.id; });
    return "choices[" + std::to_string(at - job.choices.begin()) + "] \"" + choice.label + "\"";
}

}  // namespace

Result<Selection> select(const Job& job, const Reference& reference, const Options& options) {
    Selection with;
    with.choice = options.choice_id.empty() ? chosen_choice(job) : find_choice(job, options.choice_id);
    if (with.choice == nullptr) {
        return Problem{
            "choices",
            options.choice_id.empty() ? "the job has no choice to plan" : "there is no choice " + options.choice_id,
            "Add a choice in Layout: collector, block, cylinder and where they go"};
    }
    const Choice& choice = *with.choice;
    const std::string place = place_of(job, choice);
    std::vector<Problem> problems;
    const auto need = [&](const void* found, const std::string& field, const std::string& id, const std::string& what,
                          const char* remedy = "Choose one that this program's data hold") {
        if (found != nullptr) return;
        problems.push_back(
            {field, id.empty() ? "no " + what + " is named" : "there is no " + what + " '" + id + "' here", remedy});
    };
    // The firm's own items: a job that comes from elsewhere may name one.
    const auto need_item = [&need](const void* found, const std::string& field, const std::string& id,
                                   const std::string& what) {
        need(found, field, id, what,
             id.empty()
                 ? "Choose one"
                 : "Choose one that is here, or bring it in under Equipment on the desk: who planned with it can "
                   "give it out as a file");
    };
    with.collector = find_collector(reference.catalogue, choice.collector_model);
    need_item(with.collector, place + ".collector_model", choice.collector_model, "collector");
    with.block = find_block(reference.catalogue, choice.block_model);
    need_item(with.block, place + ".block_model", choice.block_model, "block");
    with.cylinder = find_cylinder(reference.catalogue, choice.cylinder_model);
    need_item(with.cylinder, place + ".cylinder_model", choice.cylinder_model, "cylinder");
    with.method = find_fixing_method(reference.catalogue, choice.fixing_method);
    with.methods = &reference.catalogue.fixing_methods;
    need_item(with.method, place + ".fixing_method", choice.fixing_method, "fixing method");
    with.spot = find_spot(job.site, choice.spot_id);
    need(with.spot, place + ".spot_id", choice.spot_id, "cylinder spot");
    with.rules = in(reference.rule_sets, job.rule_set);
    need(with.rules, "rule_set", job.rule_set, "rule set");
    with.prices = in(reference.price_lists, job.price_list);
    need(with.prices, "price_list", job.price_list, "price list");
    for (std::size_t i = 0; i < choice.placements.size(); ++i) {
        const Placement& placement = choice.placements[i];
        need(find_surface(job.site, placement.surface_id),
             place + ".placements[" + std::to_string(i) + "] \"" + placement.label + "\".surface_id",
             placement.surface_id, "surface");
    }
    if (with.block != nullptr) {
        const auto found = reference.refrigerants.find(with.block->refrigerant);
        if (found == reference.refrigerants.end()) {
            problems.push_back({place + ".block_model",
                                "there is no property table for " + std::string(name_of(with.block->refrigerant)),
                                "Choose a block with another refrigerant"});
        } else {
            with.refrigerant = found->second.get();
        }
    }
    if (reference.weather != nullptr) {
        with.weather = reference.weather;
        with.further_years = reference.further_years;
    } else {
        Result<std::shared_ptr<const PreparedWeather>> weather = weather_for(reference, job.weather);
        if (weather) {
            with.weather = std::move(weather).value();
        } else {
            problems.insert(problems.end(), weather.problems().begin(), weather.problems().end());
        }
    }
    if (!problems.empty()) return problems;
    return with;
}

Point3 block_connection(const CylinderSpot& spot, const CylinderModel& cylinder) {
    // Blocks stand on or beside the cylinder; two thirds up is where their pipe ends are within a hand's breadth.
    return {spot.position.x_m, spot.position.y_m, spot.position.z_m + 2.0 / 3.0 * cylinder.height_m};
}

}  // namespace wg::plan::steps
