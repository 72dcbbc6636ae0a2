#pragma once
// Pieces of `provide`. Inside core/services.

#include <string>
#include <vector>

#include "core/services/services.h"

namespace wg::services {

/// Adds findings that belong to the spot.
struct SpotFindings {
    const Input& input;
    std::vector<Finding>& out;
    void add(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
             std::string rule, std::string source) const {
        out.push_back({code, severity, stage, input.spot.id, input.spot.label, std::move(message), std::move(remedy),
                       std::move(rule), std::move(source)});
    }
};

void provide_electrical(const Input& input, Outcome& out);
void provide_water(const Input& input, Outcome& out);
void provide_room(const Input& input, Outcome& out);

}  // namespace wg::services
