#include "core/job/job.h"

#include <algorithm>

namespace wg {
namespace {

template <class T>
const T* find_by_id(const std::vector<T>& list, const std::string& id) noexcept {
    const auto at = std::find_if(list.begin(), list.end(), [&id](const T& element) { return element.id == id; });
    return at == list.end() ? nullptr : &*at;
}

}  // namespace

const Building* find_building(const Site& site, const std::string& id) noexcept {
    return find_by_id(site.buildings, id);
}

const Building* building_of_edge(const Site& site, const std::string& edge_id) noexcept {
    if (edge_id.empty()) return nullptr;
    for (const Building& building : site.buildings)
        if (find_by_id(building.edges, edge_id) != nullptr) return &building;
    return nullptr;
}

const Photograph* find_photograph(const Job& job, const std::string& id) noexcept {
    return find_by_id(job.photographs, id);
}

const Surface* find_surface(const Site& site, const std::string& id) noexcept {
    return find_by_id(site.surfaces, id);
}

const CylinderSpot* find_spot(const Site& site, const std::string& id) noexcept {
    return find_by_id(site.spots, id);
}

const Choice* find_choice(const Job& job, const std::string& id) noexcept {
    return find_by_id(job.choices, id);
}

const Choice* chosen_choice(const Job& job) noexcept {
    if (job.choices.empty()) return nullptr;
    // An id that names no choice marks none; `validate` reports it.
    const Choice* marked = find_choice(job, job.chosen_choice_id);
    return marked != nullptr ? marked : &job.choices.front();
}

}  // namespace wg
