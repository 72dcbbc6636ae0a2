#pragma once
// Layout: collectors on a surface, the run in plan and in space, and the equipment of the choice on screen.

#include <string>

#include "ui/common/stage_widget.h"

class QButtonGroup;
class QCheckBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTabWidget;
class QToolButton;

namespace wg::ui {

class CollectorPanel;
class Comparison;
class EquipmentPanel;
class PlacesPanel;
class RunPanel;
class RunView;
class ShadeBar;
class ShadeNote;
class ShadeService;
class SiteCanvas;
class SurfaceCanvas;

class LayoutStage : public StageWidget {
    Q_OBJECT
   public:
    enum class View { surface, site_plan, run, compare };

    explicit LayoutStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    void show_place(const QString& place_id) override;

    void show_view(View view);
    [[nodiscard]] View view() const;
    [[nodiscard]] SurfaceCanvas* surface_canvas() const { return surface_canvas_; }
    [[nodiscard]] PlacesPanel* places_panel() const { return places_; }
    [[nodiscard]] SiteCanvas* site_canvas() const { return site_canvas_; }

   protected:
    void resizeEvent(QResizeEvent* event) override;

   private:
    QWidget* build_tools();
    QWidget* build_drawing();
    void put_options(QHBoxLayout& row);
    void fit_bar();
    void connect_parts();
    void show_state(const std::string& surface_id, const std::string& placement_id);
    void show_surface(const std::string& surface_id);
    void select_placement(const std::string& placement_id);
    void after_job_change();
    void step_surface(int direction);
    void fit_view();

    JobSession* session_ = nullptr;
    ShadeService* shade_ = nullptr;
    CollectorPanel* collectors_ = nullptr;
    EquipmentPanel* equipment_ = nullptr;
    PlacesPanel* places_ = nullptr;
    RunPanel* run_panel_ = nullptr;
    QTabWidget* panels_ = nullptr;  ///< beside the drawing; the comparison takes their room
    QStackedWidget* tools_ = nullptr;
    QStackedWidget* drawings_ = nullptr;
    QButtonGroup* views_ = nullptr;
    QHBoxLayout* bar_ = nullptr;
    QHBoxLayout* second_bar_ = nullptr;
    bool options_beside_ = true;  ///< the views, in one row
    SurfaceCanvas* surface_canvas_ = nullptr;
    SiteCanvas* site_canvas_ = nullptr;
    RunView* run_view_ = nullptr;
    Comparison* comparison_ = nullptr;
    QCheckBox* snap_ = nullptr;
    ShadeBar* shade_bar_ = nullptr;
    ShadeNote* shade_note_ = nullptr;
    QPushButton* fit_ = nullptr;
    QWidget* no_choice_ = nullptr;
};

}  // namespace wg::ui
