#include "core/rating/report.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/quantity/text.h"

namespace wg::rating {
namespace {

std::string padded(const std::string& text, std::size_t width) {
    return text.size() >= width ? text : std::string(width - text.size(), ' ') + text;
}
std::string filled(const std::string& text, std::size_t width) {
    return text.size() >= width ? text : text + std::string(width - text.size(), ' ');
}

std::string closure_text(double share) {
    char out[32];
    std::snprintf(out, sizeof out, "%.1e", share);
    return out;
}

std::string air_text(const Air& air) {
    return fixed(air.dry_c, 0) + " (" + fixed(air.wet_c, 0) + ")";
}

std::string figure(double value) {
    if (!std::isfinite(value)) return "none";
    return fixed(value, std::abs(value) < 10.0 ? 2 : std::abs(value) < 100.0 ? 1 : 0);
}

}  // namespace

const char* letters_of(TappingCycle cycle) noexcept {
    switch (cycle) {
        case TappingCycle::s: return "S";
        case TappingCycle::m: return "M";
        case TappingCycle::l: return "L";
        case TappingCycle::xl: return "XL";
        case TappingCycle::xxl: return "XXL";
    }
    return "";
}

std::vector<std::string> assumptions_of(const Item& item, const Chamber& chamber, const Test& test) {
    std::vector<std::string> out;
    out.push_back(
        "Dark chamber: no light on the plate, all that it sees has the temperature of the air, both faces free.");
    out.push_back("Air speed over the plate " + fixed(chamber.air_speed_m_s, 1) +
                  " m/s: assumed unless the sheet states it.");
    out.push_back("Cold water " + fixed(chamber.cold_c, 0) + " deg C, room round the cylinder " +
                  fixed(chamber.room_c, 0) + " deg C, plate tilted " + fixed(chamber.tilt_deg, 0) + " deg (assumed).");
    out.push_back("Set-point " + fixed(item.set_point_c, 1) + " deg C, thermostat band " + fixed(item.hysteresis_k, 1) +
                  " K: assumed to be as delivered.");
    out.push_back("Immersion heater off: the pump is rated alone.");
    if (item.line_ua_w_k <= 0.0 && item.suction_drop_k <= 0.0)
        out.push_back("Suction line without heat gain and pressure drop: assumed.");
    out.push_back("Draw-off: " + counted(test.settling_days, "day", "days") + " to settle, " +
                  counted(test.counted_days, "day", "days") +
                  " counted; COP_DHW leaves out electricity that made the " + "store warmer.");
    out.push_back("Computed with the model of the yearly plan; no measurement and no certificate.");
    return out;
}

std::string text_of(const Item& item, const Chamber& chamber, const Test& test, const Table& table) {
    std::string out = "Rating test after EN 16147, computed\n" + counted(item.collectors, "plate ", "plates ") +
                      item.collector.name + ", block " + item.block.name + " (" + name_of(item.block.refrigerant) +
                      "), cylinder " + item.cylinder.name + "\n";
    if (item.collector.invented || item.block.invented || item.cylinder.invented)
        out += "INVENTED DATA: this equipment is for demonstration\n";
    out +=
        "\nAir dry  Cycle  Heat-up  COP_DHW  Standby     V40  Hot water  Short  Cool  Closure\n"
        " (wet) C              h               W       l          C\n";
    for (const Cell& cell : table.cells) {
        const Rating& r = cell.rating;
        out += padded(air_text(cell.air), 8) + padded(letters_of(cell.cycle), 7);
        if (!r.completed) {
            out += "  not finished. " + r.why_not + "\n";
            continue;
        }
        out += padded(fixed(r.heat_up_h, 2), 9) + padded(fixed(r.cop_dhw, 2), 9) + padded(fixed(r.standby_w, 1), 9) +
               padded(fixed(r.v40_l, 0), 8) + padded(fixed(r.hot_water_c, 1), 11) +
               padded(std::to_string(r.day.short_draws), 7) + padded(std::to_string(r.day.peaks_missed), 6) +
               padded(closure_text(r.closure), 9) + "\n";
    }
    out += "Short: draws that lack heat, cool: draws below the peak temperature asked for, of " +
           counted(test.counted_days, "day", "days") + " counted\n";
    out += "\nAssumptions\n";
    for (const std::string& line : assumptions_of(item, chamber, test))
        out += "  " + line + "\n";
    return out;
}

std::string text_of(const Fit& fit) {
    std::size_t widest = 8;
    for (const Residual& r : fit.residuals)
        widest = std::max(widest, r.name.size());
    std::string out = "\nFit to data sheet, " + counted(fit.evaluations, "evaluation", "evaluations") + "\n" +
                      filled("Value", widest) + "  Declared    Before     After  Off by  Tolerance\n";
    for (const Residual& r : fit.residuals)
        out += filled(r.name, widest) + padded(figure(r.declared.value), 10) + padded(figure(r.before), 10) +
               padded(figure(r.after), 10) +
               padded(std::isfinite(r.share) ? fixed(100.0 * r.share, 1) + " %" : "none", 8) +
               padded(fixed(100.0 * r.declared.tolerance, 1) + " %", 11) + (r.met ? "\n" : "  not met\n");
    out += "\nCalibrated figures\n";
    for (const Calibrated& c : fit.parameters)
        out += "  " + c.name + ": " + figure(c.before) + " to " + figure(c.after) + unit_of(c.parameter) + " (range " +
               figure(c.range.low) + " to " + figure(c.range.high) + (c.at_bound ? ", at bound)\n" : ")\n");
    if (fit.parameters.empty()) out += "  none: these values tell of no open figure\n";
    out += fit.met ? "\nAll values are met within their tolerances.\n" : "\nNot all values are met.\n";
    for (const std::string& warning : fit.warnings)
        out += "Warning: " + warning + "\n";
    return out;
}

}  // namespace wg::rating
