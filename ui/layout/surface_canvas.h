#pragma once
// A surface face-on under the hand: collectors are selected, dragged, nudged and turned; dimensions follow.

#include <optional>
#include <string>
#include <vector>

#include "ui/drawing/canvas.h"
#include "ui/drawing/surface_painter.h"
#include "ui/layout/snap.h"

namespace wg::ui {

class JobSession;
class ShadeService;

/// A place that a search found, drawn as a numbered broken outline over the surface that carries it.
struct ProposedPlace {
    std::string surface_id;
    std::vector<Point2> outline;
    int number = 1;
    bool marked = false;  ///< the one selected in the list
};

class SurfaceCanvas : public Canvas {
    Q_OBJECT
   public:
    explicit SurfaceCanvas(ShadeService* shade, QWidget* parent = nullptr);

    void set_session(JobSession* session);
    void set_surface(const std::string& surface_id);
    [[nodiscard]] const std::string& surface_id() const { return surface_id_; }
    void set_selected(const std::string& placement_id);
    [[nodiscard]] const std::string& selected() const { return selected_; }
    void set_snapping(bool on) { snapping_ = on; }
    void set_shade_shown(bool on);
    void set_proposals(std::vector<ProposedPlace> proposals);

    [[nodiscard]] PlaneView view() const { return {units_per_m(), origin()}; }

   Q_SIGNALS:
    void selection_changed(const QString& placement_id);
    void move_to_surface(int direction);  ///< page up or down: selected collector to the next surface

   protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] Fit fit_into(const QRectF& area) const override;
    void press(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void drag(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void release(QPointF at) override;
    void hover(QPointF at) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool next) override;

   private:
    [[nodiscard]] const Surface* surface() const;
    [[nodiscard]] const CollectorModel* model() const;
    [[nodiscard]] const Placement* placement(const std::string& id) const;
    [[nodiscard]] std::vector<const Placement*> placements() const;
    [[nodiscard]] SurfaceDrawing drawing() const;
    [[nodiscard]] SnapInput snap_input(const Placement& moved) const;
    [[nodiscard]] QString place_words(Point2 at) const;
    void select(const std::string& id);
    void nudge(double dx_m, double dy_m);
    void paint_proposals(QPainter& painter) const;

    ShadeService* shade_;
    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::string selected_;
    std::vector<ProposedPlace> proposals_;
    bool snapping_ = true;
    bool shade_shown_ = false;
    bool moving_ = false;
    Point2 grab_;                     ///< collector's middle less the pointer, when the drag began
    Point2 start_;                    ///< collector's middle when the drag began
    std::optional<QPointF> pointer_;  ///< while nothing is dragged
    QString reason_;                  ///< why the dragged collector rests where it is
};

}  // namespace wg::ui
