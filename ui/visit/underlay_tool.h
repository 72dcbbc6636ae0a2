#pragma once
// Fits a picture under the sketch: a known length gives its scale, a line of known bearing its turn, a drag its place.

#include <QCoreApplication>
#include <QString>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/sketch/underlay.h"
#include "ui/drawing/canvas_tool.h"

namespace wg::ui {

class JobSession;

class UnderlayTool : public CanvasTool {
    Q_DECLARE_TR_FUNCTIONS(UnderlayTool)
   public:
    enum class Task { scale, turn, move };
    UnderlayTool(JobSession& session, std::string underlay_id, Task task);

    void hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    bool press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) override;
    void release() override;
    bool key(const QKeyEvent& event, Point2 middle) override;
    void paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] bool finished() const override;

   private:
    [[nodiscard]] const UnderlayPicture* picture() const;
    void take_typed();
    void move_by(double dx_m, double dy_m);

    JobSession& session_;
    std::string id_;
    Task task_;
    std::vector<Point2> line_;  ///< marked so far, sketch coordinates
    Point2 pointer_;
    Point2 grabbed_;
    bool dragging_ = false;
    QString typed_, problem_;
    bool ended_ = false;
};

}  // namespace wg::ui
