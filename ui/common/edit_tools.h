#pragma once
// Shared by the sources of edits.h only.

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

/// The element of that id; nullptr when there is none.
template <class T>
[[nodiscard]] T* with_id(std::vector<T>& elements, const std::string& id) {
    const auto at = std::find_if(elements.begin(), elements.end(), [&id](const T& e) { return e.id == id; });
    return at == elements.end() ? nullptr : &*at;
}
template <class T>
[[nodiscard]] const T* with_id(const std::vector<T>& elements, const std::string& id) {
    const auto at = std::find_if(elements.begin(), elements.end(), [&id](const T& e) { return e.id == id; });
    return at == elements.end() ? nullptr : &*at;
}
template <class T>
void erase_id(std::vector<T>& elements, const std::string& id) {
    elements.erase(std::remove_if(elements.begin(), elements.end(), [&id](const T& e) { return e.id == id; }),
                   elements.end());
}

/// Survey coordinates are whole millimetres.
[[nodiscard]] inline double to_mm(double value_m) {
    return std::round(value_m * 1000.0) / 1000.0;
}
[[nodiscard]] inline bool finite(const Point3& p) {
    return std::isfinite(p.x_m) && std::isfinite(p.y_m) && std::isfinite(p.z_m);
}
[[nodiscard]] inline Point3 to_mm(const Point3& p) {
    return {to_mm(p.x_m), to_mm(p.y_m), to_mm(p.z_m)};
}

/// "Roof 2" for the second roof: the word with the first number no label uses yet.
template <class T>
[[nodiscard]] std::string free_label(const std::vector<T>& elements, const std::string& word) {
    for (std::size_t n = 1;; ++n) {
        std::string label = word + " " + std::to_string(n);
        const bool taken = std::any_of(elements.begin(), elements.end(), [&](const T& e) { return e.label == label; });
        if (!taken) return label;
    }
}

class JobSession;
/// A new collector of the choice's model at a free place of the surface; not yet part of any job.
[[nodiscard]] Placement proposed_collector(const JobSession& session, const Choice& choice, const Surface& surface);

}  // namespace wg::ui
