#include "core/equipment/compressor_codec.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/quantity/constants.h"

namespace wg::compressor_codec {
namespace {

using fields::figure;
using fields::Reader;

constexpr double most_coefficient = 1e7;
constexpr double least_span_k = 5.0;
constexpr std::size_t most_corners = 24;
constexpr int probes = 16;  // along each axis of the range

std::string at(double te, double tc) {
    return " at " + figure(te) + " deg C evaporating and " + figure(tc) + " deg C condensing";
}

void read_range(Reader& r, CompressorData& c) {
    c.evaporating_min_c = r.number("evaporating_min_c", -45.0, 30.0, "deg C");
    c.evaporating_max_c = r.number("evaporating_max_c", -30.0, 45.0, "deg C");
    c.condensing_min_c = r.number("condensing_min_c", -10.0, 70.0, "deg C");
    c.condensing_max_c = r.number("condensing_max_c", 10.0, 95.0, "deg C");
    const auto spans = [&](const char* low_key, double low, const char* high_key, double high) {
        if (high - low >= least_span_k) return true;
        r.problem(
            low_key,
            "is " + figure(low) + ", not " + figure(least_span_k) + " K below " + high_key + " of " + figure(high),
            "Give the range that the maker states for the polynomials");
        return false;
    };
    const bool evaporating = spans("evaporating_min_c", c.evaporating_min_c, "evaporating_max_c", c.evaporating_max_c);
    const bool condensing = spans("condensing_min_c", c.condensing_min_c, "condensing_max_c", c.condensing_max_c);
    if (!r.has("range")) return;
    for (const auto& pair : r.pairs("range", 100.0, most_corners, "[evaporating, condensing] in deg C"))
        c.range.push_back({pair[0], pair[1]});
    if (!evaporating || !condensing || c.range.empty()) return;

    bool left = false;
    bool right = false;
    double area = 0.0;
    for (std::size_t i = 0; i < c.range.size(); ++i) {
        const CompressorState& p = c.range[i];
        const CompressorState& q = c.range[(i + 1) % c.range.size()];
        const CompressorState& s = c.range[(i + 2) % c.range.size()];
        if (p.evaporating_c < c.evaporating_min_c || p.evaporating_c > c.evaporating_max_c ||
            p.condensing_c < c.condensing_min_c || p.condensing_c > c.condensing_max_c) {
            r.problem("range", "entry " + std::to_string(i) + " lies outside the rectangle of the four limits",
                      "Correct the corner or the limits");
            return;
        }
        const double turn = (q.evaporating_c - p.evaporating_c) * (s.condensing_c - q.condensing_c) -
                            (q.condensing_c - p.condensing_c) * (s.evaporating_c - q.evaporating_c);
        left = left || turn > 0.0;
        right = right || turn < 0.0;
        area += p.evaporating_c * q.condensing_c - q.evaporating_c * p.condensing_c;
    }
    // Turning one way only, a line can still go round more than once: the evaporating temperature must rise once and
    // fall once.
    int reversals = 0;
    for (std::size_t i = 0; i < c.range.size(); ++i) {
        const std::size_t n = c.range.size();
        const double here = c.range[(i + 1) % n].evaporating_c - c.range[i].evaporating_c;
        double next = 0.0;
        for (std::size_t k = 1; k <= n && next == 0.0; ++k)
            next = c.range[(i + k + 1) % n].evaporating_c - c.range[(i + k) % n].evaporating_c;
        if (here * next < 0.0) ++reversals;
    }
    const CompressorData::Span wide = c.evaporating();
    if (left == right || reversals != 2 || wide.most_c - wide.least_c < least_span_k ||
        0.5 * std::abs(area) < least_span_k * least_span_k)
        r.problem("range", "is no convex polygon of at least three corners and some width",
                  "Give the corners in order round the maker's range, leaving out corners that point inwards");
}

/// What the polynomials alone must satisfy wherever they are used: inside the range, at the least lift and more.
/// What needs the refrigerant's enthalpies is checked where those are at hand.
void check(Reader& r, const CompressorData& c, double least_lift_k) {
    const bool capacity = c.output == CompressorOutput::capacity_w;
    const char* key = capacity ? "capacity_w" : "mass_flow_kg_h";
    const CompressorData::Span te_span = c.evaporating();
    bool used = false;
    for (int j = 0; j <= probes; ++j) {
        const double tc =
            c.condensing_min_c + (c.condensing_max_c - c.condensing_min_c) * static_cast<double>(j) / probes;
        double before = -HUGE_VAL;
        for (int i = 0; i <= probes; ++i) {
            const double te = te_span.least_c + (te_span.most_c - te_span.least_c) * static_cast<double>(i) / probes;
            if (tc < te + least_lift_k || !c.covers(te, tc)) continue;
            used = true;
            const double output = en12900(c.output_coefficients, te, tc);
            const double power_w = en12900(c.power_w, te, tc);
            if (!(output > 0.0)) {
                r.problem(key, "give " + figure(output) + at(te, tc), "Check the coefficients and their order");
                return;
            }
            if (!(output > before)) {
                r.problem(key, "do not rise with the evaporating temperature" + at(te, tc),
                          "Check the coefficients and their order, or narrow the range");
                return;
            }
            before = output;
            if (!(power_w > 0.0)) {
                r.problem("power_w", "give " + figure(power_w) + " W" + at(te, tc),
                          "Check the coefficients and their order");
                return;
            }
            const double factor = output / power_w;
            const double carnot = kelvin(te) / (tc - te);
            if (capacity && (factor > 0.95 * carnot || factor < 0.2)) {
                r.problem(key,
                          "over power_w give a cooling factor of " + figure(factor) + at(te, tc) + "; Carnot's is " +
                              figure(carnot),
                          "Check units: both polynomials give W");
                return;
            }
        }
    }
    if (!used)
        r.problem("evaporating_min_c",
                  "and the other limits leave no state with the least lift of " + figure(least_lift_k) + " K",
                  "Check evaporating against condensing temperatures");
}

}  // namespace

CompressorData read(Reader& r, double least_lift_k) {
    CompressorData c;
    bool whole = true;
    const auto coefficients = [&](const char* key) {
        const std::vector<double> given = r.numbers(key, 10, most_coefficient);
        TenCoefficients out{};
        if (given.size() == out.size())
            std::copy(given.begin(), given.end(), out.begin());
        else
            whole = false;
        return out;
    };
    if (r.has("capacity_w") == r.has("mass_flow_kg_h")) {
        const bool both = r.has("capacity_w");
        r.problem("capacity_w", both ? "and mass_flow_kg_h are both given" : "and mass_flow_kg_h are both missing",
                  "Give the ten coefficients of one of the two");
        r.skip("capacity_w");
        r.skip("mass_flow_kg_h");
        whole = false;
    } else if (r.has("capacity_w")) {
        c.output_coefficients = coefficients("capacity_w");
    } else {
        c.output = CompressorOutput::mass_flow_kg_h;
        c.output_coefficients = coefficients("mass_flow_kg_h");
    }
    c.power_w = coefficients("power_w");
    if (r.has("suction_superheat_k") == r.has("suction_gas_c")) {
        const bool both = r.has("suction_gas_c");
        r.problem("suction_superheat_k",
                  both ? "and suction_gas_c are both given" : "and suction_gas_c are both missing",
                  "Give the one that the maker's sheet names as rating condition");
        r.skip("suction_superheat_k");
        r.skip("suction_gas_c");
    } else if (r.has("suction_gas_c")) {
        c.suction_gas_c = r.number("suction_gas_c", -20.0, 50.0, "deg C");
    } else {
        c.suction_superheat_k = r.number("suction_superheat_k", 0.0, 40.0, "K");
    }
    c.subcooling_k = c.output == CompressorOutput::capacity_w ? r.number("subcooling_k", 0.0, 25.0, "K")
                                                              : r.number_or("subcooling_k", 0.0, 0.0, 25.0, "K");
    const std::size_t before = r.problem_count();
    read_range(r, c);
    if (c.suction_gas_c && r.problem_count() == before && *c.suction_gas_c < c.evaporating().most_c)
        r.problem("suction_gas_c",
                  "is " + figure(*c.suction_gas_c) + " deg C, below the evaporating temperature of " +
                      figure(c.evaporating().most_c) + " at which the range ends",
                  "Correct one of the two: the compressor takes in gas");
    r.done();
    if (whole && r.problem_count() == before) check(r, c, least_lift_k);
    return c;
}

nlohmann::ordered_json to_json(const CompressorData& c) {
    nlohmann::ordered_json out;
    out[c.output == CompressorOutput::capacity_w ? "capacity_w" : "mass_flow_kg_h"] = c.output_coefficients;
    out["power_w"] = c.power_w;
    if (c.suction_gas_c)
        out["suction_gas_c"] = *c.suction_gas_c;
    else
        out["suction_superheat_k"] = c.suction_superheat_k;
    out["subcooling_k"] = c.subcooling_k;
    out["evaporating_min_c"] = c.evaporating_min_c;
    out["evaporating_max_c"] = c.evaporating_max_c;
    out["condensing_min_c"] = c.condensing_min_c;
    out["condensing_max_c"] = c.condensing_max_c;
    if (!c.range.empty()) {
        out["range"] = nlohmann::ordered_json::array();
        for (const CompressorState& corner : c.range)
            out["range"].push_back({corner.evaporating_c, corner.condensing_c});
    }
    return out;
}

}  // namespace wg::compressor_codec
