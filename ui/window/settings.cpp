#include "ui/window/settings.h"

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr const char* theme_setting_key = "view.theme";
constexpr const char* look_setting_key = "papers.look";

}  // namespace

ThemeKind theme_setting(store::Store& store) {
    const Result<std::string> kept = store.setting(theme_setting_key, theme_key(ThemeKind::light).toStdString());
    return kept.ok() ? theme_from_key(qs(kept.value())) : ThemeKind::light;
}

Result<bool> keep_theme(store::Store& store, ThemeKind kind) {
    return store.set_setting(theme_setting_key, theme_key(kind).toStdString());
}

PaperLook paper_look_setting(store::Store& store) {
    const Result<std::string> kept = store.setting(look_setting_key, "");
    return kept.ok() ? look_from_key(qs(kept.value())) : PaperLook();
}

Result<bool> keep_paper_look(store::Store& store, const PaperLook& look) {
    return store.set_setting(look_setting_key, look_key(look).toStdString());
}

}  // namespace wg::ui
