#pragma once
// A surface face-on under the hand: collectors are selected, one or several, dragged, nudged and turned; dimensions and
// the rules of place follow at once.

#include <optional>
#include <string>
#include <vector>

#include "ui/common/arrange_edits.h"
#include "ui/drawing/canvas.h"
#include "ui/drawing/surface_painter.h"
#include "ui/layout/live_rules.h"
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
    /// The last is the one that figures and snapping are about.
    void set_selection(const std::vector<std::string>& placement_ids);
    [[nodiscard]] std::string selected() const { return selection_.empty() ? std::string() : selection_.back(); }
    [[nodiscard]] const std::vector<std::string>& selection() const { return selection_; }
    [[nodiscard]] const LiveRules& rules() const { return live_; }
    void set_snapping(bool on) { snapping_ = on; }
    void set_shade_shown(bool on);
    void set_zones_shown(bool on);
    void set_proposals(std::vector<ProposedPlace> proposals);
    /// Rings a fixing point; 0: none.
    void mark_point(const std::string& placement_id, int number);
    /// Where the numbers of fixing points stand, as last painted.
    [[nodiscard]] const std::vector<PointNumber>& point_numbers() const { return numbers_; }

    [[nodiscard]] PlaneView view() const { return {units_per_m(), origin()}; }

   Q_SIGNALS:
    void selection_changed();
    void point_chosen(const QString& placement_id, int number);
    void point_working_asked(const QString& placement_id, int number);  ///< 0: of the collector's worst point
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
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool focusNextPrevChild(bool next) override;

   private:
    [[nodiscard]] const Surface* surface() const;
    [[nodiscard]] const CollectorModel* model() const;
    [[nodiscard]] const Placement* placement(const std::string& id) const;
    [[nodiscard]] std::vector<const Placement*> placements() const;
    [[nodiscard]] SurfaceDrawing drawing() const;
    [[nodiscard]] SnapInput snap_input(const Placement& moved) const;
    [[nodiscard]] QString place_words(Point2 at) const;
    [[nodiscard]] std::string at_pointer(Point2 pointer) const;  ///< topmost collector there
    [[nodiscard]] bool is_selected(const std::string& id) const;
    void select(std::vector<std::string> ids);
    void select_all();
    void refresh_live();
    void after_content();
    void begin_move(Point2 pointer);
    void end_band(QPointF at);
    void nudge(double dx_m, double dy_m);
    void turn(int direction);
    void say(const QString& where);
    void paint_proposals(QPainter& painter) const;
    struct PointHit {
        const PointNumber* point = nullptr;  ///< null: none there
        bool on_number = false;
    };
    [[nodiscard]] PointHit point_at(QPointF at) const;
    [[nodiscard]] QString point_words(const PointNumber& point) const;
    void ask_about(PointNumber point);

    ShadeService* shade_;
    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::vector<std::string> selection_;
    LiveRules live_;
    fixing::WindZones zones_;
    std::vector<ProposedPlace> proposals_;
    bool snapping_ = true;
    bool shade_shown_ = false;
    bool zones_shown_ = false;
    bool moving_ = false;
    bool moved_ = false;              ///< the hand has gone further than it trembles
    bool keeps_selection_ = false;    ///< pressed on one of several: a click without a drag selects it alone
    Point2 grab_;                     ///< middle of the collector under the hand less the pointer, when the drag began
    std::vector<PlacedAt> start_;     ///< where the selected ones were then
    std::optional<QPointF> pointer_;  ///< while nothing is dragged
    QString reason_;                  ///< why the dragged collector rests where it is
    bool banding_ = false;
    QPointF band_from_, band_to_;
    std::vector<std::string> band_adds_to_;
    std::vector<PointNumber> numbers_;
    std::string marked_point_of_;
    int marked_point_ = 0;
    std::optional<PointNumber> pressed_point_;  ///< whose number was pressed, until the hand moves or lets go
};

}  // namespace wg::ui
