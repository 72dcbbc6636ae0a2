#pragma once
// Colours of the whole-house view: a tint for each kind of thing, from shade to full sun. Internal to ui/drawing.

#include <QColor>

#include "core/scene/scene.h"
#include "core/scene/shadows.h"
#include "ui/common/theme.h"

namespace wg::ui::house {

[[nodiscard]] QColor mixed(const QColor& a, const QColor& b, double share_of_b);
/// Tint of a thing without any light on it.
[[nodiscard]] QColor tint_of(const scene::Thing& thing, const Theme& theme);
/// `light`: 0 deep shade, 1 the sun square on.
[[nodiscard]] QColor in_light(const QColor& tint, double light, const Theme& theme);
/// Light on a face that the sun reaches at that cosine, in steps that the eye can tell apart.
[[nodiscard]] double sunlit(double cosine);
/// Light on a face in the shade: a little more from above, a little less from the side, so that edges stay seen.
[[nodiscard]] double shaded(Point3 normal, Point3 right, bool night);

}  // namespace wg::ui::house
