#pragma once
// The "compressor" object of a block in an equipment file. Internal to core/equipment.

#include <nlohmann/json_fwd.hpp>

#include "core/equipment/equipment.h"
#include "core/equipment/fields.h"

namespace wg::compressor_codec {

/// Reads and checks; `least_lift_k` of the block: below it no state is ever computed.
[[nodiscard]] CompressorData read(fields::Reader& r, double least_lift_k);
[[nodiscard]] nlohmann::ordered_json to_json(const CompressorData& data);

}  // namespace wg::compressor_codec
