#pragma once
// How findings of a fixing are put together. Inside core/fixing.

#include <string>
#include <utility>
#include <vector>

#include "core/fixing/fixing.h"
#include "core/fixing/loads.h"
#include "core/quantity/text.h"

namespace wg::fixing {

struct FixingChecker {
    const Input& input;
    std::vector<Finding>& out;

    void add(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
             std::string rule, std::string source) const {
        out.push_back({code, severity, stage, input.placement.id, input.placement.label, std::move(message),
                       std::move(remedy), std::move(rule), std::move(source)});
    }
    void method(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
                const std::string& rule) const {
        add(severity, stage, code, std::move(message), std::move(remedy),
            "Fixing method " + input.method.label + ": " + rule, "equipment data");
    }
};

/// What is assumed or simplified, and what the data leave untold.
void note_assumptions(const FixingChecker& c, const Worked& worked);

[[nodiscard]] inline std::string in_metres(double v) {
    return fixed(v, 2) + " m";
}
[[nodiscard]] inline std::string in_percent(double share) {
    return fixed(100.0 * share, 0) + " %";
}

}  // namespace wg::fixing
