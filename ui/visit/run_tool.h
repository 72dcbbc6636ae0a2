#pragma once
// Draws the pipe run through the plan: bends by clicks, levels typed, passages by a key.

#include <QCoreApplication>
#include <functional>
#include <optional>
#include <vector>

#include "core/job/job.h"
#include "core/sketch/snap.h"
#include "ui/drawing/canvas_tool.h"

namespace wg::ui {

class RunTool : public CanvasTool {
    Q_DECLARE_TR_FUNCTIONS(RunTool)
   public:
    struct Ends {
        std::optional<Point3> collector;  ///< its connections
        std::optional<Point3> block;
    };
    /// A new bend is at this level when nothing has been typed yet.
    using LevelAt = std::function<double(Point2)>;
    using Done = std::function<void(const std::vector<RoutePoint>&)>;
    RunTool(Ends ends, LevelAt level_at, Done done);

    [[nodiscard]] const std::vector<RoutePoint>& points() const { return points_; }
    [[nodiscard]] const QString& problem() const { return problem_; }

    void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void release() override {}
    bool key(const QKeyEvent& event, Point2 middle) override;
    void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool finished() const override { return finished_; }
    [[nodiscard]] bool wants_quiet() const override { return true; }

   private:
    void look(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers);
    void add(Point2 at);
    void enter();
    void pass(RoutePointKind kind);
    [[nodiscard]] std::optional<Point3> last() const;

    Ends ends_;
    LevelAt level_at_;
    Done done_;
    std::vector<RoutePoint> points_;
    sketch::Snap snap_;
    QString typed_;
    QString problem_;
    bool seen_ = false;
    bool finished_ = false;
};

}  // namespace wg::ui
