#pragma once

#include <QRect>
#include <QSize>
#include <vector>

class QWidget;

namespace wg::ui {

/// What of a page is clicked or typed into and can be seen, in the page's own pixels; not what belongs to `without`.
[[nodiscard]] std::vector<QRect> controls_of(const QWidget& page, const QWidget* without = nullptr);
/// Where something of that size covers none of the controls, or the fewest: as low as there is such a place, left
/// before right.
[[nodiscard]] QRect free_place(QSize size, const QRect& room, const std::vector<QRect>& controls);

}  // namespace wg::ui
