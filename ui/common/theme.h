#pragma once
// Our own light, dark and sunlight (black on white, thick lines) looks, as named colour roles.

#include <QColor>
#include <QFont>

class QApplication;

namespace wg::ui {

enum class ThemeKind { light, dark, sunlight };

struct Theme {
    ThemeKind kind = ThemeKind::light;
    QColor ground, panel, text, muted, accent, rule_line;
    QColor stop, caution, note, ready;
    // Drawing tints by kind of surface; hatch for keep-outs; shadow.
    QColor roof, wall, terrace, soil, hatch, collector_fill, collector_line, shade_fill;
    double line_scale = 1.0;  ///< thicker lines for sunlight
};

[[nodiscard]] Theme theme_of(ThemeKind kind);
/// The theme documents are printed with: light, black on white.
[[nodiscard]] Theme paper_theme();
/// Palette, style sheet and font of the whole program. Remembered on the application object as the current theme.
void apply_theme(QApplication& app, ThemeKind kind);
[[nodiscard]] const Theme& current_theme();
[[nodiscard]] QString theme_key(ThemeKind kind);             ///< "light", "dark", "sunlight": for the settings file
[[nodiscard]] ThemeKind theme_from_key(const QString& key);  ///< light when unknown

/// The program's family: Noto Sans, else Inter, else the platform's. Noto Sans comes first because its figures are
/// tabular in every weight; Inter needs a font feature for that which Qt 6.4 cannot switch on.
[[nodiscard]] QFont base_font(double point_size = 10.5);

/// Perceptually uniform scale of our own for quantities, light (0) to dark (1); readable in grey print.
[[nodiscard]] QColor quantity_colour(double share);

}  // namespace wg::ui
