#pragma once
// Shapes of workings shared by the sources that make them. Inside core/fixing.

#include <string>
#include <utility>
#include <vector>

#include "core/findings/finding.h"
#include "core/fixing/loads.h"
#include "core/quantity/text.h"

namespace wg::fixing {

[[nodiscard]] inline std::string newtons(double v) {
    return fixed(v, 0) + " N";
}
[[nodiscard]] inline std::string metres_of(double v) {
    return fixed(v, 2) + " m";
}

/// The working with the formula filled in and what it is valid for, as the last two of its inputs.
[[nodiscard]] inline Working shown(Working w, std::string numbers, std::string valid) {
    if (!numbers.empty()) w.inputs.emplace_back("in figures", std::move(numbers));
    if (!valid.empty()) w.inputs.emplace_back("holds for", std::move(valid));
    return w;
}

/// "c_net = 1.30 c_pe".
[[nodiscard]] std::string net_formula(const ActionRules& rules);
/// From the plate's actions to the use of the worst point, part by part; profiles and ballast.
void worst_workings(const Input& input, const Worked& worked, std::vector<Working>& out);
void hold_workings(const Input& input, const Worked& worked, std::vector<Working>& out);
/// How pull and shear go together in the parts there are.
[[nodiscard]] std::string rules_of(const Resistance& resistance, bool ballast);

}  // namespace wg::fixing
