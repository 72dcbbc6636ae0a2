#include "core/merge/same_house.h"

#include <map>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"

namespace wg::merge {
namespace {

/// Gives elements numbers in place of their ids, as they come.
class Renaming {
   public:
    void give(std::string& id) {
        std::string number = std::to_string(names_.size() + 1);
        number.insert(0, 12 - number.size(), '0');
        number.insert(0, "00000000-0000-4000-8000-");
        id = names_.emplace(id, std::move(number)).first->second;
    }
    template <class T>
    void give_all(std::vector<T>& list) {
        for (T& element : list)
            give(element.id);
    }
    void follow(std::string& link) const {
        const auto found = names_.find(link);
        if (found != names_.end()) link = found->second;
    }

   private:
    std::map<std::string, std::string> names_;
};

bool says_nothing(const Job& job) {
    Site site = job.site;
    // A new job may be placed and told its terrain from the firm's own settings.
    site.location = {};
    site.terrain = {};
    return job.client == Client{} && site.surfaces.empty() && site.obstacles.empty() && site.buildings.empty() &&
           site.spots.empty();
}

}  // namespace

std::string house_sha256(const Job& job) {
    if (says_nothing(job)) return {};
    Job house;
    house.client = job.client;
    house.site = job.site;
    Renaming names;
    names.give(house.id);
    Site& site = house.site;
    for (Building& building : site.buildings) {
        names.give(building.id);
        names.give_all(building.edges);
        names.follow(building.low_edge_id);
    }
    for (Surface& surface : site.surfaces) {
        names.give(surface.id);
        names.give_all(surface.keep_outs);
        names.follow(surface.footprint_edge_id);
    }
    for (Obstacle& obstacle : site.obstacles) {
        names.give(obstacle.id);
        names.follow(obstacle.footprint_edge_id);
    }
    names.give_all(site.spots);
    names.give_all(site.rooms);
    names.give_all(site.water.fixtures);
    names.give_all(site.water.dead_legs);
    // Pictures under the sketch are told by the photograph's bytes.
    for (UnderlayPicture& underlay : site.underlays) {
        names.give(underlay.id);
        const Photograph* photograph = find_photograph(job, underlay.photograph_id);
        underlay.photograph_id = photograph != nullptr ? photograph->sha256 : std::string();
    }
    return content_sha256(house);
}

bool is_copy_by_hand(const Job& a, const Job& b) {
    if (a.id == b.id) return false;
    const std::string house = house_sha256(a);
    return !house.empty() && house == house_sha256(b);
}

}  // namespace wg::merge
