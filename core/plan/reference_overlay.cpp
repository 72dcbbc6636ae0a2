#include "core/plan/reference_overlay.h"

#include <algorithm>
#include <utility>

#include "core/equipment/codec.h"
#include "core/heatpump/cycle.h"
#include "core/quantity/utf8.h"

namespace wg::plan {
namespace {

bool holds_id(const Catalogue& catalogue, const std::string& id) {
    return find_collector(catalogue, id) != nullptr || find_block(catalogue, id) != nullptr ||
           find_cylinder(catalogue, id) != nullptr || find_fixing_method(catalogue, id) != nullptr;
}

class BesideCheck {
   public:
    BesideCheck(const Reference& reference, const Catalogue& own, const std::string& where, const std::string& replaces)
        : reference_(reference), own_(own), where_(where), replaces_(replaces) {}

    std::vector<Problem> run() {
        for (const CollectorModel& item : own_.collectors)
            id_is_free(item.id);
        for (const FixingMethod& item : own_.fixing_methods)
            id_is_free(item.id);
        for (const BlockModel& item : own_.blocks) {
            id_is_free(item.id);
            refrigerant_serves(item);
        }
        for (const CylinderModel& item : own_.cylinders) {
            id_is_free(item.id);
            blocks_exist(item);
        }
        return std::move(problems_);
    }

   private:
    [[nodiscard]] std::string at(const std::string& id, const char* field) const {
        return where_ + ": \"" + for_message(id) + "\"." + field;
    }
    void id_is_free(const std::string& id) {
        if (id == replaces_ || !holds_id(reference_.catalogue, id)) return;
        problems_.push_back({at(id, "id"), "is the id of another item here, which jobs and issued papers name",
                             "Give the item an id of its own"});
    }
    void refrigerant_serves(const BlockModel& block) {
        const auto table = reference_.refrigerants.find(block.refrigerant);
        if (table == reference_.refrigerants.end()) {
            problems_.push_back({at(block.id, "refrigerant"),
                                 std::string("there is no property table for ") + name_of(block.refrigerant),
                                 "Name one of the refrigerants that this program holds"});
            return;
        }
        for (Problem problem : heatpump::problems_of(block, *table->second)) {
            problem.where = where_ + ": " + problem.where;
            problems_.push_back(std::move(problem));
        }
    }
    void blocks_exist(const CylinderModel& cylinder) {
        for (const std::string& block : cylinder.fits_blocks) {
            if (find_block(reference_.catalogue, block) != nullptr || find_block(own_, block) != nullptr) continue;
            problems_.push_back({at(cylinder.id, "fits_blocks"),
                                 "names the block '" + for_message(block) + "', which is not here",
                                 "Correct the id, bring the block in first, or leave the list empty for any block"});
        }
    }

    const Reference& reference_;
    const Catalogue& own_;
    const std::string& where_;
    const std::string& replaces_;
    std::vector<Problem> problems_;
};

template <class T>
void add_all(std::vector<T>& to, const std::vector<T>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

}  // namespace

std::vector<Problem> problems_beside(const Reference& reference, const Catalogue& own, const std::string& where,
                                     const std::string& replaces) {
    return BesideCheck(reference, own, where, replaces).run();
}

Overlay with_own_items(const Reference& program, const std::vector<OwnItem>& own) {
    Overlay out{program, {}};
    std::vector<std::pair<const OwnItem*, Catalogue>> read;
    for (const OwnItem& item : own) {
        Result<Catalogue> catalogue = catalogue_from_json(item.text, item.where);
        if (catalogue) {
            read.emplace_back(&item, std::move(catalogue).value());
        } else {
            add_all(out.left_out, catalogue.problems());
        }
    }
    // Cylinders last: they may name a block of any of the items.
    std::stable_partition(read.begin(), read.end(), [](const auto& one) { return one.second.cylinders.empty(); });
    for (const auto& [item, catalogue] : read) {
        const std::vector<Problem> problems = problems_beside(out.reference, catalogue, item->where);
        if (!problems.empty()) {
            add_all(out.left_out, problems);
            continue;
        }
        Catalogue& all = out.reference.catalogue;
        add_all(all.collectors, catalogue.collectors);
        add_all(all.blocks, catalogue.blocks);
        add_all(all.cylinders, catalogue.cylinders);
        add_all(all.fixing_methods, catalogue.fixing_methods);
    }
    return out;
}

std::vector<std::string> unknown_equipment(const Catalogue& catalogue, const Choice& choice) {
    std::vector<std::string> out;
    const auto look = [&out](const void* found, const char* kind, const std::string& id) {
        if (found == nullptr && !id.empty()) out.push_back(std::string(kind) + " '" + for_message(id) + "'");
    };
    look(find_collector(catalogue, choice.collector_model), "collector", choice.collector_model);
    look(find_block(catalogue, choice.block_model), "block", choice.block_model);
    look(find_cylinder(catalogue, choice.cylinder_model), "cylinder", choice.cylinder_model);
    look(find_fixing_method(catalogue, choice.fixing_method), "fixing method", choice.fixing_method);
    return out;
}

}  // namespace wg::plan
