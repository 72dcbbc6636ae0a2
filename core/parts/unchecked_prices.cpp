#include "core/parts/unchecked_prices.h"

#include <map>

namespace wg::parts {
namespace {

template <class T, class Price>
void add_same(const std::vector<T>& list, const std::vector<T>& invented, Price price, std::vector<std::string>& out) {
    std::map<std::string_view, Money> known;
    for (const T& one : invented)
        known[one.id] = price(one);
    for (const T& one : list) {
        const auto found = known.find(one.id);
        if (found == known.end() || found->second != price(one) || price(one).minor == 0) continue;
        std::string name = one.text;
        name.append(" (").append(one.id).append(")");
        out.push_back(std::move(name));
    }
}

}  // namespace

std::vector<std::string> same_prices(const PriceList& list, const PriceList& invented) {
    std::vector<std::string> out;
    add_same(
        list.items, invented.items, [](const PriceItem& item) { return item.price; }, out);
    const auto add = [&out](const char* name, auto one, auto other) {
        if (one == other && one != decltype(one){}) out.emplace_back(name);
    };
    add("an hour of work", list.labour_hour, invented.labour_hour);
    add_same(
        list.labour_rates, invented.labour_rates, [](const LabourRate& rate) { return rate.hour; }, out);
    if (list.travel && invented.travel) {
        add("a kilometre", list.travel->km, invented.travel->km);
        add("an hour on the road", list.travel->hour, invented.travel->hour);
    }
    const economy::Tariffs& is = list.tariffs;
    const economy::Tariffs& was = invented.tariffs;
    add("electricity, a kWh", is.electricity_minor_kwh, was.electricity_minor_kwh);
    add("gas, a kWh", is.gas_minor_kwh, was.gas_minor_kwh);
    add("liquid gas, a kWh", is.lpg_minor_kwh, was.lpg_minor_kwh);
    add("oil, a kWh", is.oil_minor_kwh, was.oil_minor_kwh);
    add("wood, a kWh", is.wood_minor_kwh, was.wood_minor_kwh);
    add("service a year", is.yearly_service_minor, was.yearly_service_minor);
    return out;
}

}  // namespace wg::parts
