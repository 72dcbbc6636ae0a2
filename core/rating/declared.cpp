#include "core/rating/declared.h"

#include <algorithm>

#include "core/quantity/text.h"

namespace wg::rating {

namespace {

const char* letter(TappingCycle cycle) noexcept {
    switch (cycle) {
        case TappingCycle::s: return "S";
        case TappingCycle::m: return "M";
        case TappingCycle::l: return "L";
        case TappingCycle::xl: return "XL";
        case TappingCycle::xxl: return "XXL";
    }
    return "";
}

}  // namespace

std::string name_of(const Declared& d) {
    const std::string at = " at " + fixed(d.air.dry_c, 0) + " deg C";
    const std::string water = at + " air, " + fixed(d.water_c, 0) + " deg C water";
    switch (d.quantity) {
        case Quantity::cop_dhw: return std::string("COP of draw-off cycle ") + letter(d.cycle) + at;
        case Quantity::heat_up_h: return "Heating-up time in hours" + at;
        case Quantity::standby_w: return "Standby power in W" + at;
        case Quantity::v40_l: return "Mixed water at 40 deg C in litres" + at;
        case Quantity::heat_w: return "Heating power in W" + water;
        case Quantity::steady_cop: return "COP" + water;
    }
    return "";
}

Range range_of(Parameter parameter) noexcept {
    switch (parameter) {
        case Parameter::overall_peak: return {0.35, 0.75};
        case Parameter::plate_to_refrigerant: return {30.0, 400.0};
        case Parameter::condenser: return {60.0, 800.0};
        case Parameter::standing_loss: return {0.4, 5.0};
        case Parameter::volumetric_at_unity: return {0.70, 1.0};
        case Parameter::standby_power: return {0.5, 30.0};
    }
    return {};
}

const char* name_of(Parameter parameter) noexcept {
    switch (parameter) {
        case Parameter::overall_peak: return "best overall efficiency of the compressor";
        case Parameter::plate_to_refrigerant: return "conductance from plate to refrigerant";
        case Parameter::condenser: return "conductance from condenser to water";
        case Parameter::standing_loss: return "standing loss of the cylinder";
        case Parameter::volumetric_at_unity: return "volumetric efficiency at pressure ratio 1";
        case Parameter::standby_power: return "power of the controls";
    }
    return "";
}

const char* unit_of(Parameter parameter) noexcept {
    switch (parameter) {
        case Parameter::overall_peak:
        case Parameter::volumetric_at_unity: return "";
        case Parameter::plate_to_refrigerant: return " W/(m2 K)";
        case Parameter::condenser: return " W/K";
        case Parameter::standing_loss: return " kWh/24 h";
        case Parameter::standby_power: return " W";
    }
    return "";
}

namespace {

/// The same place in a changeable and an unchangeable item.
template <class ItemType>
auto& place(ItemType& item, Parameter parameter) noexcept {
    switch (parameter) {
        case Parameter::overall_peak: return item.block.overall_peak;
        case Parameter::plate_to_refrigerant: return item.collector.plate_to_refrigerant_w_m2k;
        case Parameter::condenser: return item.block.condenser_w_k;
        case Parameter::standing_loss: return item.cylinder.standing_loss_kwh_24h;
        case Parameter::volumetric_at_unity: return item.block.volumetric_at_unity;
        case Parameter::standby_power: return item.block.standby_w;
    }
    return item.block.overall_peak;
}

}  // namespace

double value_of(const Item& item, Parameter parameter) noexcept {
    return place(item, parameter);
}
void set_value(Item& item, Parameter parameter, double value) noexcept {
    place(item, parameter) = value;
}

std::vector<Parameter> open_parameters(const std::vector<Declared>& declared, bool compressor_known) {
    const auto count = [&](Quantity q) {
        return std::count_if(declared.begin(), declared.end(), [q](const Declared& d) { return d.quantity == q; });
    };
    const auto factors = count(Quantity::cop_dhw) + count(Quantity::steady_cop);
    const auto powers = count(Quantity::heat_up_h) + count(Quantity::heat_w);
    const auto standing = count(Quantity::standby_w);
    std::vector<Parameter> out;
    if (factors > 0 && !compressor_known) out.push_back(Parameter::overall_peak);
    if (standing > 0) out.push_back(Parameter::standing_loss);
    if (powers > 0 && !compressor_known) out.push_back(Parameter::volumetric_at_unity);
    // With the compressor known, plate and condenser are what factors and powers tell of.
    const auto told = compressor_known ? 2 : 0;
    if (factors + powers + told > 2) out.push_back(Parameter::plate_to_refrigerant);
    if (factors + powers + told > 3) out.push_back(Parameter::condenser);
    return out;
}

}  // namespace wg::rating
