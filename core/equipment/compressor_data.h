#pragma once
// A compressor as its maker tests it: ten coefficients each of capacity or mass flow and of power.

#include <array>
#include <optional>
#include <vector>

namespace wg {

/// Coefficients in the order of EN 12900 and AHRI 540: 1, s, d, s2, s d, d2, s3, s2 d, s d2, d3, with s the evaporating
/// and d the condensing dew-point temperature, deg C.
using TenCoefficients = std::array<double, 10>;

/// The polynomial, in the unit of the sheet. It means something only inside the maker's stated range.
[[nodiscard]] inline double en12900(const TenCoefficients& c, double evaporating_c, double condensing_c) noexcept {
    const double s = evaporating_c;
    const double d = condensing_c;
    return c[0] + c[1] * s + c[2] * d + c[3] * s * s + c[4] * s * d + c[5] * d * d + c[6] * s * s * s +
           c[7] * d * s * s + c[8] * s * d * d + c[9] * d * d * d;
}

enum class CompressorOutput { capacity_w, mass_flow_kg_h };

/// One pair of evaporating and condensing dew-point temperature.
struct CompressorState {
    double evaporating_c = 0.0;
    double condensing_c = 0.0;
    friend bool operator==(const CompressorState&, const CompressorState&) = default;
};

/// Replaces displacement and efficiency curves of a block that has it.
struct CompressorData {
    CompressorOutput output = CompressorOutput::capacity_w;
    TenCoefficients output_coefficients{};
    TenCoefficients power_w{};
    std::optional<double> suction_gas_c;  ///< rated at this temperature of the suction gas, not at a superheat
    double suction_superheat_k = 10.0;    ///< of the rating, where suction_gas_c is absent
    double subcooling_k = 0.0;            ///< of the rating; a mass flow does not ask for it
    double evaporating_min_c = -20.0;     ///< stated range: a rectangle,
    double evaporating_max_c = 20.0;
    double condensing_min_c = 20.0;
    double condensing_max_c = 70.0;
    std::vector<CompressorState> range;  ///< and corners of a convex polygon in it; empty: the whole rectangle

    [[nodiscard]] double rated_superheat_k(double evaporating_c) const noexcept {
        return suction_gas_c ? *suction_gas_c - evaporating_c : suction_superheat_k;
    }
    /// Least and greatest condensing temperature of the range at an evaporating one (held within the range).
    struct Span {
        double least_c, most_c;
    };
    [[nodiscard]] Span condensing_at(double evaporating_c) const noexcept;
    /// Evaporating temperatures that the range spans: those of the polygon where there is one.
    [[nodiscard]] Span evaporating() const noexcept;
    [[nodiscard]] bool covers(double evaporating_c, double condensing_c) const noexcept;

    friend bool operator==(const CompressorData&, const CompressorData&) = default;
};

}  // namespace wg
