#pragma once
// Edits a building's footprint on the canvas: corners are dragged, edges get new ones, with the snap shown. Roof planes
// and walls follow at once.

#include <QCoreApplication>
#include <optional>
#include <string>

#include "core/sketch/snap.h"
#include "ui/drawing/canvas_tool.h"

namespace wg::ui {

class JobSession;

class CornerTool : public CanvasTool {
    Q_DECLARE_TR_FUNCTIONS(CornerTool)
   public:
    CornerTool(JobSession& session, std::string building_id);

    void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void release() override;
    bool key(const QKeyEvent& event, Point2 middle) override;
    void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool finished() const override;

    [[nodiscard]] const std::string& building_id() const { return building_id_; }
    [[nodiscard]] std::optional<std::size_t> corner() const { return corner_; }

   private:
    [[nodiscard]] const Building* building() const;
    void move_corner(Point2 to);
    void nudge(double dx_m, double dy_m);

    JobSession& session_;
    std::string building_id_;
    std::optional<std::size_t> corner_;  ///< chosen
    std::optional<std::size_t> over_;    ///< under the pointer: a corner
    std::optional<std::size_t> edge_;    ///< under the pointer: the middle of an edge
    sketch::Snap snap_;
    bool dragging_ = false;
    bool ended_ = false;
    QString problem_;
};

}  // namespace wg::ui
