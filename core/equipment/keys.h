#pragma once
// The spelling of the catalogue's enumerators in files, and the limits of figures, for reader and writer alike.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"

namespace wg::equipment_keys {

/// In the order of the enumerators.
inline const std::vector<std::string>& level_side() {
    static const std::vector<std::string> keys = {"long_side", "short_side", "either"};
    return keys;
}
inline const std::vector<std::string>& refrigerant() {
    static const std::vector<std::string> keys = {"R134a", "R290", "R1234yf", "R513A"};
    return keys;
}
inline const std::vector<std::string>& condenser() {
    static const std::vector<std::string> keys = {"immersed", "wrapped"};
    return keys;
}
inline const std::vector<std::string>& defrost() {
    static const std::vector<std::string> keys = {"none", "reverse"};
    return keys;
}
inline const std::vector<std::string>& expansion() {
    static const std::vector<std::string> keys = {"block", "collector"};
    return keys;
}
inline const std::vector<std::string>& fixing_kind() {
    static const std::vector<std::string> keys = {"hook", "screw_through", "seam_clamp", "anchor", "ballast"};
    return keys;
}

}  // namespace wg::equipment_keys
