#include "core/rating/declared_file.h"

#include <nlohmann/json.hpp>

#include "core/equipment/fields.h"

namespace wg::rating {
namespace {

using fields::Reader;
using nlohmann::ordered_json;

constexpr int schema = 1;

const std::vector<std::string>& quantity_keys() {
    static const std::vector<std::string> keys = [] {
        std::vector<std::string> out;
        for (const Quantity quantity : all_quantities)
            out.emplace_back(key_of(quantity));
        return out;
    }();
    return keys;
}

/// As people and sheets write it; the enumerators' order.
const std::vector<std::string>& cycle_keys() {
    static const std::vector<std::string> keys = {"S", "M", "L", "XL", "XXL"};
    return keys;
}

Declared read_value(Reader& r, const std::vector<Problem>& problems) {
    Declared d;
    const std::size_t before = problems.size();
    d.quantity = all_quantities[r.one_of("quantity", quantity_keys())];
    if (problems.size() != before) return d;  // which fields belong to it is not known
    r.name_by(key_of(d.quantity));
    const Range range = declarable(d.quantity);
    d.value = r.number("value", range.low, range.high, unit_of(d.quantity));
    d.tolerance = r.number_or("tolerance", d.tolerance, 0.001, 0.5, "(share of the value)");
    d.air.dry_c = r.number("air_dry_c", -20.0, 45.0, "deg C");
    d.air.wet_c = r.number_or("air_wet_c", d.air.dry_c - usual_wet_bulb_k, d.air.dry_c - 15.0, d.air.dry_c, "deg C");
    if (has_cycle(d.quantity)) d.cycle = static_cast<TappingCycle>(r.one_of("cycle", cycle_keys()));
    if (has_water(d.quantity)) d.water_c = r.number("water_c", 5.0, 70.0, "deg C");
    r.done();
    return d;
}

}  // namespace

Range declarable(Quantity quantity) noexcept {
    switch (quantity) {
        case Quantity::cop_dhw:
        case Quantity::steady_cop: return {0.1, 50.0};
        case Quantity::heat_up_h: return {0.05, 200.0};
        case Quantity::standby_w: return {0.1, 2000.0};
        case Quantity::v40_l: return {1.0, 10000.0};
        case Quantity::heat_w: return {10.0, 100000.0};
    }
    return {};
}

const char* key_of(Quantity quantity) noexcept {
    switch (quantity) {
        case Quantity::cop_dhw: return "cop_dhw";
        case Quantity::heat_up_h: return "heat_up_h";
        case Quantity::standby_w: return "standby_w";
        case Quantity::v40_l: return "v40_l";
        case Quantity::heat_w: return "heat_w";
        case Quantity::steady_cop: return "steady_cop";
    }
    return "";
}

const char* unit_of(Quantity quantity) noexcept {
    switch (quantity) {
        case Quantity::cop_dhw:
        case Quantity::steady_cop: return "";
        case Quantity::heat_up_h: return "h";
        case Quantity::standby_w:
        case Quantity::heat_w: return "W";
        case Quantity::v40_l: return "l";
    }
    return "";
}

bool has_cycle(Quantity quantity) noexcept {
    return quantity == Quantity::cop_dhw;
}
bool has_water(Quantity quantity) noexcept {
    return quantity == Quantity::heat_w || quantity == Quantity::steady_cop;
}

bool same_point(const Declared& a, const Declared& b) noexcept {
    return a.quantity == b.quantity && a.air == b.air && (!has_cycle(a.quantity) || a.cycle == b.cycle) &&
           (!has_water(a.quantity) || a.water_c == b.water_c);
}

Result<DeclaredSheet> sheet_from_json(std::string_view text, const std::string& file_name) {
    std::vector<Problem> problems;
    nlohmann::json document;
    if (!fields::parse(text, file_name, schema, document, problems)) return problems;
    Reader root(document, file_name, problems);
    (void)root.whole("schema", schema, schema);
    (void)root.text_or("note", "");
    DeclaredSheet sheet;
    sheet.source = root.text_or("source", "");
    if (root.has("set_point_c")) sheet.set_point_c = root.number("set_point_c", 40.0, 65.0, "deg C");
    if (root.has("air_speed_m_s")) sheet.air_speed_m_s = root.number("air_speed_m_s", 0.0, 5.0, "m/s");
    std::vector<Reader> entries = root.objects("values");
    if (entries.size() > most_declared) {
        root.problem(
            "values",
            "holds " + std::to_string(entries.size()) + " entries, allowed are " + std::to_string(most_declared),
            "Keep those that the sheet is chosen by");
        return problems;
    }
    for (Reader& r : entries) {
        const std::size_t before = problems.size();
        const Declared d = read_value(r, problems);
        if (problems.size() == before)
            for (const Declared& other : sheet.values)
                if (same_point(d, other))
                    r.problem("", name_of(d) + " stands twice", "Keep one of the two, or correct the conditions");
        sheet.values.push_back(d);
    }
    if (entries.empty() && problems.empty())
        root.problem("values", "is empty", "Enter at least one value of the data sheet");
    root.done();
    if (!problems.empty()) return problems;
    return sheet;
}

std::string sheet_to_json(const DeclaredSheet& sheet) {
    ordered_json values = ordered_json::array();
    for (const Declared& d : sheet.values) {
        ordered_json one = {{"quantity", key_of(d.quantity)},
                            {"value", d.value},
                            {"tolerance", d.tolerance},
                            {"air_dry_c", d.air.dry_c},
                            {"air_wet_c", d.air.wet_c}};
        if (has_cycle(d.quantity)) one["cycle"] = cycle_keys()[static_cast<std::size_t>(d.cycle)];
        if (has_water(d.quantity)) one["water_c"] = d.water_c;
        values.push_back(std::move(one));
    }
    ordered_json document = {{"schema", schema}, {"source", sheet.source}};
    if (sheet.set_point_c) document["set_point_c"] = *sheet.set_point_c;
    if (sheet.air_speed_m_s) document["air_speed_m_s"] = *sheet.air_speed_m_s;
    document["values"] = std::move(values);
    return document.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + '\n';
}

}  // namespace wg::rating
