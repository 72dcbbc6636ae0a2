#pragma once
// Fit to data sheet: calibrates what the sheet leaves open so that the computed test gives the declared values.

#include <functional>
#include <string>
#include <vector>

#include "core/rating/declared.h"

namespace wg::rating {

struct FitOptions {
    Chamber chamber;                    ///< its air is taken from each declared value
    std::vector<Parameter> parameters;  ///< to calibrate; empty: open_parameters()
    double step_s = 300.0;              ///< of the test
    int most_evaluations = 500;         ///< of all tests together, a start; 20..5000
};

struct Residual {
    Declared declared;
    std::string name;
    double before = 0.0;  ///< as the item stands
    double after = 0.0;   ///< calibrated
    double share = 0.0;   ///< after/declared - 1
    bool met = false;     ///< within the declared value's tolerance
};

struct Calibrated {
    Parameter parameter = Parameter::overall_peak;
    std::string name;
    double before = 0.0;
    double after = 0.0;
    Range range;
    bool at_bound = false;
};

struct Fit {
    Item item;                        ///< calibrated
    std::vector<Residual> residuals;  ///< in the order of the declared values
    std::vector<Calibrated> parameters;
    std::vector<std::string> warnings;  ///< plain sentences: contradictions, values not met, parameters at a bound
    bool met = false;                   ///< every value within its tolerance
    int evaluations = 0;
    bool stopped = false;  ///< before the end, as asked: the best so far
};

/// How a fit gets on.
struct FitProgress {
    int evaluations = 0;
    int most_evaluations = 0;  ///< it ends earlier as a rule
    double worst_miss = 0.0;   ///< of the best so far: largest miss of a value, in its tolerances; 1 and less: all met
};
/// Called from the calling thread; false stops.
using WatchFit = std::function<bool(const FitProgress&)>;

/// Minimises the squares of (computed/declared - 1)/tolerance over the logarithms of the parameters within their
/// ranges, with a weak pull to the item's own figures (a thousandth of a tolerance over the whole range), so that what
/// the values say nothing about stays. From the item's figures, and again from the middle of the ranges when a value
/// is missed. Deterministic to the bit. Problems: item or conditions out of range, no values, a value not positive,
/// an efficiency of a compressor asked for that the block states by its maker's coefficients.
[[nodiscard]] Result<Fit> fit(const Item& item, const std::vector<Declared>& declared, const FitOptions& options = {},
                              const WatchFit& watch = {});

}  // namespace wg::rating
