#pragma once
// A way to draw on the site canvas that has the hand until it is finished: outlines, lines to measure by.

#include <QKeyEvent>
#include <QPainter>
#include <QString>

#include "core/quantity/geometry.h"
#include "ui/common/theme.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {

class CanvasTool {
   public:
    virtual ~CanvasTool() = default;
    CanvasTool() = default;
    CanvasTool(const CanvasTool&) = delete;
    CanvasTool& operator=(const CanvasTool&) = delete;

    /// `reach_m`: how near a hand aims, in the sketch.
    virtual void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) = 0;
    /// False: nothing of the tool's was meant; the canvas takes the press itself and lets the tool go, unless it gives
    /// way.
    virtual bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) = 0;
    virtual void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) = 0;
    virtual void release() = 0;
    /// True: the key was the tool's. `middle`: of the view, where a point without a pointer goes.
    virtual bool key(const QKeyEvent& event, Point2 middle) = 0;
    virtual void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const = 0;
    [[nodiscard]] virtual QString prompt() const = 0;  ///< stands on the canvas: what to do now
    [[nodiscard]] virtual QString words() const = 0;   ///< bottom line: where the hand is, and the snap's reason
    /// The canvas lets go of the tool. A tool that stays until another is taken never finishes.
    [[nodiscard]] virtual bool finished() const = 0;
    /// A tool that only adds handles to what is selected: what it does not take is the canvas's, and it stays.
    [[nodiscard]] virtual bool gives_way() const { return false; }
    /// A tool that draws among the parts of the house: the canvas keeps to the house, and leaves out names and the run.
    [[nodiscard]] virtual bool wants_quiet() const { return false; }
};

}  // namespace wg::ui
