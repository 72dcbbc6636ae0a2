#include "core/equipment/equipment.h"

namespace wg {
namespace {

template <class T>
const T* find_by_id(const std::vector<T>& items, const std::string& id) noexcept {
    for (const T& item : items) {
        if (item.id == id) return &item;
    }
    return nullptr;
}

}  // namespace

const char* name_of(Refrigerant refrigerant) noexcept {
    switch (refrigerant) {
        case Refrigerant::r134a: return "R134a";
        case Refrigerant::r290: return "R290";
        case Refrigerant::r1234yf: return "R1234yf";
        case Refrigerant::r513a: return "R513A";
    }
    return "";
}

const CollectorModel* find_collector(const Catalogue& catalogue, const std::string& id) noexcept {
    return find_by_id(catalogue.collectors, id);
}
const BlockModel* find_block(const Catalogue& catalogue, const std::string& id) noexcept {
    return find_by_id(catalogue.blocks, id);
}
const CylinderModel* find_cylinder(const Catalogue& catalogue, const std::string& id) noexcept {
    return find_by_id(catalogue.cylinders, id);
}
const FixingMethod* find_fixing_method(const Catalogue& catalogue, const std::string& id) noexcept {
    return find_by_id(catalogue.fixing_methods, id);
}

}  // namespace wg
