#pragma once

#include <QRect>
#include <QSize>
#include <vector>

class QWidget;

namespace wg::ui {

/// What of a page is clicked or typed into and can be seen, in the page's own pixels; not what belongs to `without`.
[[nodiscard]] std::vector<QRect> controls_of(const QWidget& page, const QWidget* without = nullptr);
/// Its scroll bars, in the same way.
[[nodiscard]] std::vector<QRect> scroll_bars_of(const QWidget& page, const QWidget* without = nullptr);
/// What of it is read, seen in the same way: labels with words, and the rows of lists and tables.
[[nodiscard]] std::vector<QRect> texts_of(const QWidget& page, const QWidget* without = nullptr);
/// Where something of that size covers none of the controls, or the fewest; of those places one over the fewest scroll
/// bars, and of those the one over the least of the texts: as low as there is such a place, left before right.
[[nodiscard]] QRect free_place(QSize size, const QRect& room, const std::vector<QRect>& controls,
                               const std::vector<QRect>& bars = {}, const std::vector<QRect>& texts = {});

}  // namespace wg::ui
