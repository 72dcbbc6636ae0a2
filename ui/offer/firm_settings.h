#pragma once
// The firm's block on papers, kept as settings in the store.

#include "core/store/store.h"
#include "ui/documents/documents.h"

namespace wg::ui {

// Keys of the settings.
inline constexpr const char* firm_name_key = "firm.name";
inline constexpr const char* firm_street_key = "firm.street";
inline constexpr const char* firm_town_key = "firm.town";
inline constexpr const char* firm_phone_key = "firm.phone";
inline constexpr const char* firm_email_key = "firm.email";

/// Empty where nothing is set or the store cannot be read; null store: empty.
[[nodiscard]] Firm read_firm(store::Store* store);
[[nodiscard]] Result<bool> write_firm(store::Store& store, const Firm& firm);

}  // namespace wg::ui
