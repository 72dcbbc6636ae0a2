#pragma once
// Which widget stands for which stage.

#include <array>

#include "core/store/store.h"
#include "ui/window/job_page.h"

namespace wg::ui {

/// The store must outlive the widgets made.
[[nodiscard]] std::array<StageFactory, stage_count> stage_factories(store::Store& store);

}  // namespace wg::ui
