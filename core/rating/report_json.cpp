#include <cmath>
#include <nlohmann/json.hpp>

#include "core/rating/declared_file.h"
#include "core/rating/report.h"

namespace wg::rating {
namespace {

using nlohmann::ordered_json;

ordered_json known(double value) {
    return std::isfinite(value) ? ordered_json(value) : ordered_json(nullptr);
}

ordered_json to_json(const Cell& cell, int counted_days) {
    const Rating& r = cell.rating;
    ordered_json out = {{"cycle", letters_of(cell.cycle)},
                        {"air_dry_c", cell.air.dry_c},
                        {"air_wet_c", cell.air.wet_c},
                        {"completed", r.completed}};
    if (!r.completed) {
        out["why_not"] = r.why_not;
        return out;
    }
    out["heat_up_h"] = r.heat_up_h;
    out["heat_up_heat_kwh"] = r.heat_up_heat_kwh;
    out["heat_up_electricity_kwh"] = r.heat_up_electricity_kwh;
    out["standby_w"] = r.standby_w;
    out["cop_dhw"] = r.cop_dhw;
    out["v40_l"] = r.v40_l;
    out["hot_water_c"] = r.hot_water_c;
    out["closure"] = r.closure;
    out["day"] = {{"useful_kwh", r.day.useful_kwh},
                  {"shortfall_kwh", r.day.shortfall_kwh},
                  {"electricity_kwh", r.day.electricity_kwh()},
                  {"store_change_kwh", r.day.store_change_kwh},
                  {"running_h", r.day.running_h},
                  {"counted_days", counted_days},
                  {"short_draws", r.day.short_draws},
                  {"peaks_missed", r.day.peaks_missed}};
    return out;
}

ordered_json to_json(const Residual& r) {
    ordered_json out = {{"quantity", key_of(r.declared.quantity)},
                        {"name", r.name},
                        {"declared", r.declared.value},
                        {"tolerance", r.declared.tolerance},
                        {"air_dry_c", r.declared.air.dry_c},
                        {"air_wet_c", r.declared.air.wet_c}};
    if (has_cycle(r.declared.quantity)) out["cycle"] = letters_of(r.declared.cycle);
    if (has_water(r.declared.quantity)) out["water_c"] = r.declared.water_c;
    out["before"] = known(r.before);
    out["after"] = known(r.after);
    out["off_by"] = known(r.share);
    out["met"] = r.met;
    return out;
}

ordered_json to_json(const Fit& fit) {
    ordered_json residuals = ordered_json::array();
    for (const Residual& r : fit.residuals)
        residuals.push_back(to_json(r));
    ordered_json parameters = ordered_json::array();
    for (const Calibrated& c : fit.parameters)
        parameters.push_back({{"name", c.name},
                              {"before", c.before},
                              {"after", c.after},
                              {"unit", unit_of(c.parameter)},
                              {"low", c.range.low},
                              {"high", c.range.high},
                              {"at_bound", c.at_bound}});
    return {{"met", fit.met},
            {"evaluations", fit.evaluations},
            {"residuals", residuals},
            {"parameters", parameters},
            {"warnings", fit.warnings}};
}

}  // namespace

std::string to_json(const Item& item, const Chamber& chamber, const Test& test, const Table& table, const Fit* fit) {
    ordered_json tests = ordered_json::array();
    for (const Cell& cell : table.cells)
        tests.push_back(to_json(cell, test.counted_days));
    ordered_json document = {{"schema", 1},
                             {"item",
                              {{"collector", item.collector.id},
                               {"count", item.collectors},
                               {"block", item.block.id},
                               {"cylinder", item.cylinder.id},
                               {"invented", item.collector.invented || item.block.invented || item.cylinder.invented}}},
                             {"conditions",
                              {{"set_point_c", item.set_point_c},
                               {"hysteresis_k", item.hysteresis_k},
                               {"cold_c", chamber.cold_c},
                               {"room_c", chamber.room_c},
                               {"air_speed_m_s", chamber.air_speed_m_s},
                               {"assumptions", assumptions_of(item, chamber, test)}}},
                             {"tests", tests}};
    if (fit != nullptr) document["fit"] = to_json(*fit);
    return document.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + '\n';
}

}  // namespace wg::rating
