#pragma once
// Handles on the selected obstacle in the sketch: corners, the turn of a box, the spread of a tree or post.

#include <QCoreApplication>
#include <optional>
#include <string>

#include "core/site/resize.h"
#include "ui/drawing/canvas_tool.h"

namespace wg::ui {

class JobSession;

class SizeTool : public CanvasTool {
    Q_DECLARE_TR_FUNCTIONS(SizeTool)
   public:
    SizeTool(JobSession& session, std::string obstacle_id);

    [[nodiscard]] const std::string& obstacle_id() const { return obstacle_id_; }

    void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void release() override;
    bool key(const QKeyEvent& event, Point2 middle) override;
    void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const override;
    [[nodiscard]] QString prompt() const override { return problem_; }
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool finished() const override { return obstacle() == nullptr; }
    [[nodiscard]] bool gives_way() const override { return true; }

   private:
    [[nodiscard]] const Obstacle* obstacle() const;
    [[nodiscard]] std::vector<site::Handle> handles() const;
    [[nodiscard]] std::optional<std::size_t> near(Point2 at, double reach_m) const;
    /// Large enough on the screen that handles leave room to take the thing itself.
    [[nodiscard]] bool roomy() const;
    void move_to(Point2 to);

    JobSession& session_;
    std::string obstacle_id_;
    mutable double reach_m_ = 0.2;  ///< follows the scale, and with it the turn handle's arm
    std::optional<std::size_t> taken_, over_;
    bool dragging_ = false;
    Point2 grab_;
    QString problem_;
};

}  // namespace wg::ui
