#pragma once

#include <QLabel>

namespace wg::ui {

/// A heading of a part of a page, in the style's own letters.
[[nodiscard]] inline QLabel* heading_label(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setProperty("role", QStringLiteral("heading"));
    return label;
}

}  // namespace wg::ui
