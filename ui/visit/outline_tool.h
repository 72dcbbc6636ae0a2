#pragma once
// Draws a closed outline by clicks and by typed lengths and angles, with the snap and its reason shown.

#include <QCoreApplication>
#include <functional>
#include <optional>
#include <vector>

#include "core/sketch/snap.h"
#include "ui/drawing/canvas_tool.h"

namespace wg::ui {

class OutlineTool : public CanvasTool {
    Q_DECLARE_TR_FUNCTIONS(OutlineTool)
   public:
    using Done = std::function<void(const std::vector<Point2>&)>;
    /// `others`: closed outlines to snap to. `done` gets the corners in the order drawn; called once.
    OutlineTool(QString what, std::vector<std::vector<Point2>> others, Done done);

    void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void release() override {}
    bool key(const QKeyEvent& event, Point2 middle) override;
    void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool finished() const override { return finished_; }

    [[nodiscard]] const std::vector<Point2>& drawn() const { return scene_.drawn; }
    [[nodiscard]] const QString& typed() const { return typed_; }
    [[nodiscard]] const QString& problem() const { return problem_; }
    [[nodiscard]] const sketch::Snap& snap() const { return snap_; }

   private:
    void look(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers);
    void set_corner(Point2 at);
    void close();
    void enter(Point2 middle);
    [[nodiscard]] double heading_deg() const;  ///< counter-clockwise from the sketch's x axis
    [[nodiscard]] std::optional<double> last_heading_deg() const;

    QString what_;
    sketch::Scene scene_;
    Done done_;
    sketch::Snap snap_;
    bool seen_ = false;                  ///< the pointer has been over the canvas since the last corner
    std::optional<double> key_heading_;  ///< by arrow key, in place of the pointer's
    QString typed_;
    QString problem_;
    bool finished_ = false;
};

}  // namespace wg::ui
