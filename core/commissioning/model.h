#pragma once
// The set as planned, for verdicts that need the model of it.

#include "core/heatpump/operating_point.h"
#include "core/season/season.h"

namespace wg::commissioning {

/// Nothing is owned: what is pointed at must outlive the call.
struct Model {
    const heatpump::HeatPump* pump = nullptr;  ///< null: the running pump is not held against the model
    heatpump::Plate plate;                     ///< all plates as one, in the plane of the first
    heatpump::Line line;
    const season::Input* input = nullptr;  ///< null: the first heating is not held against the model
    double utc_offset_h = 0.0;             ///< of the input's hours, local standard time
};

}  // namespace wg::commissioning
