#pragma once
// Layout: collectors on a surface, the run in plan and in space, and the equipment of the choice on screen.

#include <string>

#include "ui/common/stage_widget.h"

class QButtonGroup;
class QCheckBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTabWidget;
class QToolButton;

namespace wg::ui {

class CollectorPanel;
class Comparison;
class EquipmentPanel;
class FlowLayout;
class HousePane;
class PlacesPanel;
class PointsBox;
class RunPanel;
class RunView;
class ShadeBar;
class ShadeNote;
class ShadeService;
class SiteCanvas;
class SunPathPane;
class SurfaceCanvas;

class LayoutStage : public StageWidget {
    Q_OBJECT
   public:
    enum class View { surface, site_plan, run, house, compare };

    explicit LayoutStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    void show_place(const QString& place_id) override;

    void show_view(View view);
    [[nodiscard]] View view() const;
    [[nodiscard]] SurfaceCanvas* surface_canvas() const { return surface_canvas_; }
    [[nodiscard]] CollectorPanel* collector_panel() const { return collectors_; }
    [[nodiscard]] QCheckBox* zones_box() const { return zones_box_; }
    [[nodiscard]] PlacesPanel* places_panel() const { return places_; }
    [[nodiscard]] PointsBox* points_box() const { return points_; }
    [[nodiscard]] SiteCanvas* site_canvas() const { return site_canvas_; }
    [[nodiscard]] HousePane* house_pane() const { return house_; }
    [[nodiscard]] SunPathPane* sun_path_pane() const { return sun_path_; }
    void show_sun_path(bool on);  ///< below whichever drawing is shown

   private:
    QWidget* build_tools();
    QWidget* build_drawing();
    void connect_parts();
    void connect_house();
    void show_surface(const std::string& surface_id);
    void select_placement(const std::string& placement_id);
    void select_placements(const QStringList& placement_ids);
    void after_selection();
    void show_state(const std::string& surface_id);  ///< to the panels, with what is selected on the drawing
    void after_job_change();
    void step_surface(int direction);
    void fit_view();

    JobSession* session_ = nullptr;
    ShadeService* shade_ = nullptr;
    CollectorPanel* collectors_ = nullptr;
    EquipmentPanel* equipment_ = nullptr;
    PlacesPanel* places_ = nullptr;
    PointsBox* points_ = nullptr;
    RunPanel* run_panel_ = nullptr;
    QTabWidget* panels_ = nullptr;  ///< beside the drawing; the comparison takes their room
    QStackedWidget* tools_ = nullptr;
    QStackedWidget* drawings_ = nullptr;
    QButtonGroup* views_ = nullptr;
    FlowLayout* bar_ = nullptr;
    SurfaceCanvas* surface_canvas_ = nullptr;
    SiteCanvas* site_canvas_ = nullptr;
    RunView* run_view_ = nullptr;
    HousePane* house_ = nullptr;
    SunPathPane* sun_path_ = nullptr;
    QCheckBox* sun_path_box_ = nullptr;
    Comparison* comparison_ = nullptr;
    QCheckBox* snap_ = nullptr;
    QCheckBox* zones_box_ = nullptr;
    ShadeBar* shade_bar_ = nullptr;
    ShadeNote* shade_note_ = nullptr;
    QPushButton* fit_ = nullptr;
    QWidget* no_choice_ = nullptr;
};

}  // namespace wg::ui
