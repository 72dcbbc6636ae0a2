#pragma once
// Pieces of `provide`. Inside core/services.

#include <string>
#include <utility>
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

/// Last line of every working that could be taken for a certificate.
inline const std::pair<std::string, std::string> electricians_word{
    "standing", "planning aid; local code and a licensed electrician decide"};
inline const std::pair<std::string, std::string> plumbers_word{
    "standing", "planning aid; local code and a licensed plumber decide"};
inline const std::pair<std::string, std::string> refrigeration_word{
    "standing", "planning aid; local code and a licensed refrigeration engineer decide"};

/// Adds a field that the survey leaves open to a list: "voltage, main fuse".
inline void add_missing(std::string& list, const char* field) {
    if (!list.empty()) list += ", ";
    list += field;
}

/// Voltage of a single-phase circuit of the house as told, else as the block asks for.
[[nodiscard]] double to_neutral_v(const Input& input);

void provide_electrical(const Input& input, Outcome& out);
/// Supply check list, and what of it the survey leaves open. After `provide_electrical`.
void provide_supply_checks(const Input& input, Outcome& out);
/// Residual current, fault loop, bonding, lightning protection, surges. After `provide_electrical`.
void provide_earthing(const Input& input, Outcome& out);
void provide_water(const Input& input, Outcome& out);
/// Pipe sizes, losses and the way to hot water at the taps. After `provide_water`.
void provide_hot_pipes(const Input& input, Outcome& out);
void provide_hygiene(const Input& input, Outcome& out);
void provide_room(const Input& input, Outcome& out);
void provide_flammable(const Input& input, Outcome& out);

}  // namespace wg::services
