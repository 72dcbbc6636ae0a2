#pragma once
// The catalogue as JSON (docs/equipment-format.md): {"schema":1,"collectors":[...],"blocks":[...],...}.

#include <string>
#include <string_view>

#include "core/equipment/equipment.h"
#include "core/quantity/result.h"

namespace wg {

/// Reads a catalogue. Every figure is checked for unit-plausible range and mutual sense (recommended tilt within
/// allowed tilt, fixing points and connections within the plate, face area not above length x width ...);
/// a missing required field, an unknown field, or a wrong figure is a problem that names item and field.
[[nodiscard]] Result<Catalogue> catalogue_from_json(std::string_view text, const std::string& file_name);
/// `note`: free text at the top of the file; empty: none.
[[nodiscard]] std::string catalogue_to_json(const Catalogue& catalogue, const std::string& note = {});

}  // namespace wg
