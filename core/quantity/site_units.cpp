#include "core/quantity/site_units.h"

namespace wg {

const std::vector<SiteUnit>& site_units(SiteQuantity quantity) {
    static const std::vector<SiteUnit> none;
    // 1 psi is 6,894.757 Pa (NIST SP 811, appendix B.8); 1 micron of mercury 0.1333224 Pa (the same).
    static const std::vector<SiteUnit> gauge = {
        {"bar", 1.0, 0.0, 2}, {"psi", 0.06894757, 0.0, 1}, {"kPa", 0.01, 0.0, 0}};
    static const std::vector<SiteUnit> vacuum = {
        {"Pa", 1.0, 0.0, 0}, {"micron", 0.1333224, 0.0, 0}, {"mbar", 100.0, 0.0, 3}};
    static const std::vector<SiteUnit> temperature = {{"\u00b0C", 1.0, 0.0, 1}, {"\u00b0F", 1.0 / 1.8, 32.0, 1}};
    static const std::vector<SiteUnit> gap = {{"K", 1.0, 0.0, 1}, {"\u00b0F", 1.0 / 1.8, 0.0, 1}};
    static const std::vector<SiteUnit> mass = {{"kg", 1.0, 0.0, 3}, {"g", 0.001, 0.0, 0}, {"oz", 0.02834952, 0.0, 1}};
    switch (quantity) {
        case SiteQuantity::none: return none;
        case SiteQuantity::gauge_pressure: return gauge;
        case SiteQuantity::vacuum: return vacuum;
        case SiteQuantity::temperature: return temperature;
        case SiteQuantity::temperature_gap: return gap;
        case SiteQuantity::mass: return mass;
    }
    return none;
}

const SiteUnit& site_unit(SiteQuantity quantity, std::string_view name) {
    const std::vector<SiteUnit>& all = site_units(quantity);
    for (const SiteUnit& unit : all)
        if (unit.name == name) return unit;
    return all.front();
}

}  // namespace wg
