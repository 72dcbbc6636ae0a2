#include "ui/common/theme.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QStyleFactory>
#include <QVariant>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/common/style_sheet.h"

namespace wg::ui {
namespace {

// Contrast of text, muted, accent and the four meanings against ground and panel is held to by tests/ui/common.
Theme light_theme() {
    Theme t;
    t.kind = ThemeKind::light;
    t.ground = QColor(0xf6f4ee);
    t.panel = QColor(0xffffff);
    t.text = QColor(0x24313a);
    t.muted = QColor(0x566570);
    t.accent = QColor(0x9a4f1c);
    t.rule_line = QColor(0xd8d3c6);
    t.stop = QColor(0x9b1c31);
    t.caution = QColor(0x7a5a00);
    t.note = QColor(0x2f5d8a);
    t.ready = QColor(0x2e6b45);
    t.roof = QColor(0xe9dccf);
    t.wall = QColor(0xe6e6e1);
    t.terrace = QColor(0xe2e4d6);
    t.soil = QColor(0xe3ead9);
    t.hatch = QColor(0xa08c7c);
    t.collector_fill = QColor(0x9a, 0x4f, 0x1c, 46);
    t.collector_line = QColor(0x9a4f1c);
    t.shade_fill = QColor(0x24, 0x31, 0x3a, 64);
    return t;
}

Theme dark_theme() {
    Theme t;
    t.kind = ThemeKind::dark;
    t.ground = QColor(0x1d262c);
    t.panel = QColor(0x263139);
    t.text = QColor(0xe9e6dc);
    t.muted = QColor(0xa9b3ba);
    t.accent = QColor(0xe39a66);
    t.rule_line = QColor(0x3d4a53);
    t.stop = QColor(0xff8a94);
    t.caution = QColor(0xe6c35c);
    t.note = QColor(0x8fbce6);
    t.ready = QColor(0x86cf9f);
    t.roof = QColor(0x4a3f38);
    t.wall = QColor(0x3b444a);
    t.terrace = QColor(0x41463a);
    t.soil = QColor(0x36443a);
    t.hatch = QColor(0x8a7a6e);
    t.collector_fill = QColor(0xe3, 0x9a, 0x66, 56);
    t.collector_line = QColor(0xe39a66);
    t.shade_fill = QColor(0, 0, 0, 110);
    return t;
}

Theme sunlight_theme() {
    Theme t;
    t.kind = ThemeKind::sunlight;
    t.ground = QColor(Qt::white);
    t.panel = QColor(Qt::white);
    t.text = QColor(Qt::black);
    t.muted = QColor(0x2b2b2b);
    t.accent = QColor(0x6b2f08);
    t.rule_line = QColor(Qt::black);
    t.stop = QColor(0x7d0018);
    t.caution = QColor(0x523c00);
    t.note = QColor(0x0f3c69);
    t.ready = QColor(0x0b4a25);
    t.roof = QColor(0xf4ede6);
    t.wall = QColor(0xf2f2f2);
    t.terrace = QColor(0xf0f2e8);
    t.soil = QColor(0xeef4ea);
    t.hatch = QColor(0x4a4a4a);
    t.collector_fill = QColor(0x6b, 0x2f, 0x08, 40);
    t.collector_line = QColor(0x6b2f08);
    t.shade_fill = QColor(0, 0, 0, 90);
    t.line_scale = 1.8;
    return t;
}

QPalette palette_of(const Theme& t) {
    QPalette p;
    p.setColor(QPalette::Window, t.ground);
    p.setColor(QPalette::WindowText, t.text);
    p.setColor(QPalette::Base, t.panel);
    p.setColor(QPalette::AlternateBase, t.ground);
    p.setColor(QPalette::Text, t.text);
    p.setColor(QPalette::PlaceholderText, t.muted);
    p.setColor(QPalette::Button, t.panel);
    p.setColor(QPalette::ButtonText, t.text);
    p.setColor(QPalette::Highlight, t.accent);
    p.setColor(QPalette::HighlightedText, t.panel);
    p.setColor(QPalette::ToolTipBase, t.panel);
    p.setColor(QPalette::ToolTipText, t.text);
    p.setColor(QPalette::Link, t.accent);
    p.setColor(QPalette::LinkVisited, t.accent);
    p.setColor(QPalette::BrightText, t.stop);
    p.setColor(QPalette::Light, t.panel);
    p.setColor(QPalette::Midlight, t.rule_line);
    p.setColor(QPalette::Mid, t.rule_line);
    p.setColor(QPalette::Dark, t.muted);
    p.setColor(QPalette::Shadow, t.rule_line);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        p.setColor(QPalette::Disabled, role, t.muted);
    }
    return p;
}

/// CIE L*a*b* (D65) to sRGB, clipped to what a screen can show.
QColor from_lab(double lightness, double a, double b) {
    const auto inverse = [](double t) {
        constexpr double delta = 6.0 / 29.0;
        return t > delta ? t * t * t : 3.0 * delta * delta * (t - 4.0 / 29.0);
    };
    const double fy = (lightness + 16.0) / 116.0;
    const double x = 0.95047 * inverse(fy + a / 500.0);
    const double y = inverse(fy);
    const double z = 1.08883 * inverse(fy - b / 200.0);
    const auto gamma = [](double c) {
        const double clipped = std::clamp(c, 0.0, 1.0);
        return clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * std::pow(clipped, 1.0 / 2.4) - 0.055;
    };
    return QColor::fromRgbF(static_cast<float>(gamma(3.2406 * x - 1.5372 * y - 0.4986 * z)),
                            static_cast<float>(gamma(-0.9689 * x + 1.8758 * y + 0.0415 * z)),
                            static_cast<float>(gamma(0.0557 * x - 0.2040 * y + 1.0570 * z)));
}

constexpr const char* theme_property = "wg_theme";

}  // namespace

Theme theme_of(ThemeKind kind) {
    switch (kind) {
        case ThemeKind::light: return light_theme();
        case ThemeKind::dark: return dark_theme();
        case ThemeKind::sunlight: return sunlight_theme();
    }
    return light_theme();
}

Theme paper_theme() {
    Theme t = light_theme();
    t.ground = QColor(Qt::white);
    t.panel = QColor(Qt::white);
    t.text = QColor(Qt::black);
    t.muted = QColor(0x404040);
    t.rule_line = QColor(0x707070);
    return t;
}

void apply_theme(QApplication& app, ThemeKind kind) {
    const Theme theme = theme_of(kind);
    app.setProperty(theme_property, static_cast<int>(kind));
    app.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    app.setFont(base_font());
    app.setPalette(palette_of(theme));
    app.setStyleSheet(style_sheet(theme));
}

const Theme& current_theme() {
    static const std::array<Theme, 3> themes = {theme_of(ThemeKind::light), theme_of(ThemeKind::dark),
                                                theme_of(ThemeKind::sunlight)};
    const QVariant kind =
        QCoreApplication::instance() != nullptr ? QCoreApplication::instance()->property(theme_property) : QVariant();
    const int index = kind.isValid() ? std::clamp(kind.toInt(), 0, 2) : 0;
    return themes[static_cast<std::size_t>(index)];
}

QString theme_key(ThemeKind kind) {
    switch (kind) {
        case ThemeKind::light: return QStringLiteral("light");
        case ThemeKind::dark: return QStringLiteral("dark");
        case ThemeKind::sunlight: return QStringLiteral("sunlight");
    }
    return QStringLiteral("light");
}

ThemeKind theme_from_key(const QString& key) {
    for (const ThemeKind kind : {ThemeKind::dark, ThemeKind::sunlight}) {
        if (key == theme_key(kind)) return kind;
    }
    return ThemeKind::light;
}

QFont base_font(double point_size) {
    // Asking for a family goes through the platform's font settings each time, and a drawing asks for every picture.
    static const QString found = [] {
        for (const QString& family : {QStringLiteral("Noto Sans"), QStringLiteral("Inter")}) {
            if (QFontDatabase::hasFamily(family)) return family;
        }
        return QString();
    }();
    QFont font;
    if (!found.isEmpty()) font.setFamily(found);
    font.setPointSizeF(point_size);
    font.setStyleHint(QFont::SansSerif);
    return font;
}

QColor quantity_colour(double share) {
    if (!std::isfinite(share)) return QColor(0x808080);
    // Even steps of CIE lightness from 95 to 25 keep equal differences of value equal to the eye and readable in
    // grey print; hue turns from lime-wash over copper to slate, chroma rises and falls on the way.
    const double t = std::clamp(share, 0.0, 1.0);
    const double lightness = 95.0 - 70.0 * t;
    const double hue = (95.0 - 75.0 * t) * 3.14159265358979323846 / 180.0;
    const double chroma = 8.0 + 46.0 * std::sin(3.14159265358979323846 * t) * (1.0 - 0.25 * t);
    return from_lab(lightness, chroma * std::cos(hue), chroma * std::sin(hue));
}

}  // namespace wg::ui
