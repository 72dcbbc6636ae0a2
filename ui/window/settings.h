#pragma once
// Settings of the window, kept in the store: view.theme is "light" (default), "dark" or "sunlight". The firm's own
// settings are in ui/offer/firm_settings.h.

#include "core/store/store.h"
#include "ui/common/theme.h"
#include "ui/documents/documents.h"

namespace wg::ui {

[[nodiscard]] ThemeKind theme_setting(store::Store& store);
[[nodiscard]] Result<bool> keep_theme(store::Store& store, ThemeKind kind);

/// The look papers were last given.
[[nodiscard]] PaperLook paper_look_setting(store::Store& store);
Result<bool> keep_paper_look(store::Store& store, const PaperLook& look);

}  // namespace wg::ui
