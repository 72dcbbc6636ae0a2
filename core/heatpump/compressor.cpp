#include "core/heatpump/compressor.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"

namespace wg::heatpump {
namespace {

constexpr double runs_out_k = 5.0;         // the polynomials are followed this far beyond their range, ever more slowly
constexpr double least_share = 0.2;        // of what they give at the range's edge, whatever they do beyond
constexpr double least_work_lift_k = 4.0;  // nearer to each other, two isentropic works have no ratio to go by

/// Where the search may stand and what the polynomials are asked there: continuous with its slope at the range's edge.
double eased(double value, double low, double high) noexcept {
    const double held = std::clamp(value, low, high);
    const double beyond = value - held;
    if (beyond == 0.0) return held;
    return held + std::copysign(runs_out_k * -std::expm1(-std::abs(beyond) / runs_out_k), beyond);
}

class Data {
   public:
    Data(const BlockModel& block, const refrigerant::Properties& refrigerant) noexcept
        : block_(block), data_(*block.compressor), refrigerant_(refrigerant) {}

    /// As rated: mass flow at the rating's superheat.
    [[nodiscard]] double mass_flow_kg_s(double te, double tc) const noexcept {
        const double output = en12900(data_.output_coefficients, te, tc);
        if (data_.output == CompressorOutput::mass_flow_kg_h) return output / 3600.0;
        const double suction = refrigerant_.vapour(te, rated_superheat_k(te)).enthalpy_j_kg;
        const double liquid_c = std::max(refrigerant_.min_c(), tc - data_.subcooling_k);
        return output / (suction - refrigerant_.liquid_enthalpy_j_kg(liquid_c));
    }
    [[nodiscard]] double work_w(double te, double tc) const noexcept { return en12900(data_.power_w, te, tc); }
    [[nodiscard]] double rated_superheat_k(double te) const noexcept {
        return std::max(0.0, data_.rated_superheat_k(te));
    }
    [[nodiscard]] double isentropic_j_kg(double te, double superheat_k, double tc) const noexcept {
        const auto suction = refrigerant_.vapour(te, superheat_k);
        const double to_c = std::min(refrigerant_.max_c(), std::max(tc, te + least_work_lift_k));
        return refrigerant_.isentropic_outlet(suction.entropy_j_kgk, to_c).enthalpy_j_kg - suction.enthalpy_j_kg;
    }

    [[nodiscard]] Compressed at(double te, double tc) const noexcept {
        const auto allowed = data_.evaporating();
        const double te_held = std::clamp(te, allowed.least_c, allowed.most_c);
        auto condensing = data_.condensing_at(te_held);
        condensing.least_c = std::min(condensing.most_c, std::max(condensing.least_c, te_held + block_.least_lift_k));
        const double tc_held = std::clamp(tc, condensing.least_c, condensing.most_c);
        const double te_asked = std::max(refrigerant_.min_c(), eased(te, allowed.least_c, allowed.most_c));
        const double tc_asked = std::min(refrigerant_.max_c(), eased(tc, condensing.least_c, condensing.most_c));
        double rated_kg_s = mass_flow_kg_s(te_asked, tc_asked);
        double work = work_w(te_asked, tc_asked);
        if (te_asked != te_held || tc_asked != tc_held) {
            rated_kg_s = std::max({1e-6, least_share * mass_flow_kg_s(te_held, tc_held), rated_kg_s});
            work = std::max({1e-3, least_share * work_w(te_held, tc_held), work});
        }
        const double rated_superheat = rated_superheat_k(te_asked);
        const double rated_density = refrigerant_.vapour(te_asked, rated_superheat).density_kg_m3;
        const double own_density = refrigerant_.vapour(te_asked, block_.superheat_k).density_kg_m3;
        const double density = refrigerant_.vapour(te, block_.superheat_k).density_kg_m3;
        const double flow_factor =
            (1.0 + superheat_share * (own_density / rated_density - 1.0)) * density / own_density;
        const double work_factor =
            isentropic_j_kg(te, block_.superheat_k, tc) / isentropic_j_kg(te_asked, rated_superheat, tc_asked);
        return {rated_kg_s * flow_factor, work * flow_factor * work_factor};
    }

   private:
    const BlockModel& block_;
    const CompressorData& data_;
    const refrigerant::Properties& refrigerant_;
};

constexpr int probes = 16;
constexpr double least_efficiency = 0.05;
constexpr double most_efficiency = 0.95;

}  // namespace

Compressed compressed_by_data(const BlockModel& block, const refrigerant::Properties& refrigerant, double evaporating_c,
                              double condensing_c) noexcept {
    return Data(block, refrigerant).at(evaporating_c, condensing_c);
}

bool covered_by_data(const BlockModel& block, double evaporating_c, double condensing_c) noexcept {
    return !block.compressor || block.compressor->covers(evaporating_c, condensing_c);
}

std::vector<Problem> problems_of_data(const BlockModel& block, const refrigerant::Properties& refrigerant) {
    if (!block.compressor) return {};
    const CompressorData& data = *block.compressor;
    const std::string item = "block \"" + block.name + "\".compressor";
    const std::string output = item + (data.output == CompressorOutput::capacity_w ? ".capacity_w" : ".mass_flow_kg_h");
    const auto at = [](double te, double tc) {
        return " at " + fixed(te, 1) + " deg C evaporating and " + fixed(tc, 1) + " deg C condensing";
    };
    const auto span = data.evaporating();
    const double low = std::max({span.least_c, block.evaporating_min_c, refrigerant.min_c()});
    const double high = std::min(span.most_c, block.evaporating_max_c);
    const double most_c = std::min({data.condensing_max_c, block.condensing_max_c, refrigerant.max_c()});
    const double least_c = std::max(data.condensing_min_c, refrigerant.min_c());
    const Data compressor(block, refrigerant);
    bool used = false;
    for (int j = 0; j <= probes; ++j) {
        double before = -HUGE_VAL;
        for (int i = 0; i <= probes; ++i) {
            const double te = low + (high - low) * static_cast<double>(i) / probes;
            const double tc = least_c + (most_c - least_c) * static_cast<double>(j) / probes;
            if (!(high > low && tc >= te + block.least_lift_k && data.covers(te, tc))) continue;
            used = true;
            if (!(data.rated_superheat_k(te) >= 0.0 && data.rated_superheat_k(te) <= 80.0))
                return {{item + ".suction_gas_c",
                         "the rating's superheat is " + fixed(data.rated_superheat_k(te), 1) + " K" + at(te, tc),
                         "Correct the rating condition or the range"}};
            const double flow = compressor.mass_flow_kg_s(te, tc);
            if (!(flow > 0.0 && flow < 10.0))
                return {{output, "the mass flow is " + fixed(3600.0 * flow, 3) + " kg/h" + at(te, tc),
                         "Check the coefficients, their order and their unit"}};
            if (!(flow > before))
                return {{output, "the mass flow does not rise with the evaporating temperature" + at(te, tc),
                         "Check the coefficients and their order, or narrow the range"}};
            before = flow;
            const double efficiency =
                flow * compressor.isentropic_j_kg(te, compressor.rated_superheat_k(te), tc) / compressor.work_w(te, tc);
            if (!(efficiency >= least_efficiency && efficiency <= most_efficiency))
                return {{item + ".power_w",
                         "with the mass flow it gives an overall isentropic efficiency of " + fixed(efficiency, 3) +
                             at(te, tc) + ", outside " + fixed(least_efficiency, 2) + " to " +
                             fixed(most_efficiency, 2),
                         "Check units, coefficients and refrigerant"}};
        }
    }
    if (!used)
        return {{item, "its range has no state in common with the block's own envelope",
                 "Correct the range, or evaporating and condensing limits of the block"}};
    return {};
}

void scale_efficiency(BlockModel& block, double factor) noexcept {
    if (block.compressor)
        for (double& c : block.compressor->power_w)
            c /= factor;
    else
        block.overall_peak *= factor;
}

void scale_filling(BlockModel& block, double factor) noexcept {
    if (block.compressor) {
        for (double& c : block.compressor->output_coefficients)
            c *= factor;
        for (double& c : block.compressor->power_w)
            c *= factor;
    } else {
        block.volumetric_at_unity *= factor;
    }
}

}  // namespace wg::heatpump
