#pragma once
// What a hand that draws in plan is held by, the same in every tool.

#include <Qt>

#include "core/sketch/snap.h"

namespace wg::ui {

/// Corners, edges and angles within reach and steps of 5 cm; with Alt the millimetre and nothing else.
[[nodiscard]] inline sketch::SnapSettings snap_by_hand(double reach_m, Qt::KeyboardModifiers modifiers) {
    sketch::SnapSettings settings;
    settings.reach_m = reach_m;
    settings.grid_m = 0.05;
    if ((modifiers & Qt::AltModifier) != 0) {
        settings.grid_m = 0.001;
        settings.corners = settings.edges = settings.angles = false;
    }
    return settings;
}

}  // namespace wg::ui
