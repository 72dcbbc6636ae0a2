#pragma once
// Visit: the survey's form, the plan sketch, the selected element's properties and what is still to measure.

#include <functional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "ui/common/stage_widget.h"

class QLayout;
class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QTabWidget;

namespace wg::ui {

class BuildingEditor;
class FaceCanvas;
class ObstacleEditor;
class PhotoShelf;
class PhotoView;
class PhotosPage;
class RoomEditor;
class SiteCanvas;
class SpotEditor;
class SurfaceEditor;
class VisitForm;

class VisitStage : public StageWidget {
    Q_OBJECT
   public:
    explicit VisitStage(QWidget* parent = nullptr);
    /// Where photographs are kept and read; without one the page says so.
    void set_shelf(PhotoShelf* shelf);
    void set_session(JobSession* session) override;
    void show_place(const QString& place_id) override;

    [[nodiscard]] SiteCanvas* canvas() const { return canvas_; }
    [[nodiscard]] FaceCanvas* face() const { return face_; }
    [[nodiscard]] VisitForm* form() const { return form_; }
    [[nodiscard]] BuildingEditor* building_editor() const { return building_editor_; }
    [[nodiscard]] RoomEditor* room_editor() const { return room_editor_; }
    [[nodiscard]] const std::string& selected() const { return selected_; }
    [[nodiscard]] PhotosPage* photos() const { return photos_; }
    [[nodiscard]] PhotoView* photo_view() const { return photo_view_; }

    /// Gives the canvas a tool for a footprint; the building is made when it is closed.
    void draw_building(BuildingShape shape);
    /// The same for a surface by its outline in plan, first edge lowest, or a neighbouring building.
    void draw_surface(SurfaceKind kind);
    void draw_neighbour();
    /// Gives the canvas a tool for the outline of a room where no pipe goes.
    void draw_room();
    /// Gives the canvas a tool for the run of the choice on screen; the first choice is made when there is none.
    void draw_run();

   private:
    QWidget* build_sheets();
    QWidget* build_sketch();
    void select(const std::string& id, bool bring_forward);
    void refresh();
    void refresh_missing();
    void add_surface_at(int kind);
    void add_obstacle_at(int use);
    void add_menus(QWidget* holder, QLayout* bar);
    void draw_outline(const QString& what, std::function<void(const std::vector<Point2>&)> then);
    void add_roof_window_at();
    void add_zone_at(int kind);
    void add_views(QWidget* holder, QLayout* bar);
    void refresh_views();
    void select_on_face(const QString& id);
    void offer_handles(const std::string& building_id, const std::string& obstacle_id);
    QWidget* build_photo_page(QWidget* parent);
    void connect_photos();
    void show_photograph(const QString& id);
    void start_underlay(const std::string& photograph_id);
    void say(const QString& problem);
    void add_spot_at();
    void remove_selected();

    JobSession* session_ = nullptr;
    std::string selected_;
    QTabWidget* sheets_ = nullptr;
    VisitForm* form_ = nullptr;
    QScrollArea* form_area_ = nullptr;
    QStackedWidget* editors_ = nullptr;
    QLabel* nothing_ = nullptr;
    SurfaceEditor* surface_editor_ = nullptr;
    ObstacleEditor* obstacle_editor_ = nullptr;
    SpotEditor* spot_editor_ = nullptr;
    BuildingEditor* building_editor_ = nullptr;
    RoomEditor* room_editor_ = nullptr;
    QListWidget* missing_ = nullptr;
    QLabel* missing_words_ = nullptr;
    SiteCanvas* canvas_ = nullptr;
    FaceCanvas* face_ = nullptr;
    QPushButton* plan_button_ = nullptr;
    QPushButton* face_button_ = nullptr;
    QPushButton* zone_button_ = nullptr;
    QWidget* remove_ = nullptr;
    QLabel* refusal_ = nullptr;
    PhotoShelf* shelf_ = nullptr;
    PhotosPage* photos_ = nullptr;
    PhotoView* photo_view_ = nullptr;
    QStackedWidget* views_ = nullptr;  ///< sketch, photograph at large, a surface face-on
};

}  // namespace wg::ui
