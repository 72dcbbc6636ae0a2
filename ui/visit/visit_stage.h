#pragma once
// Visit: the survey's form, the plan sketch, the selected element's properties and what is still to measure.

#include <string>

#include "ui/common/stage_widget.h"

class QLabel;
class QListWidget;
class QScrollArea;
class QStackedWidget;
class QTabWidget;

namespace wg::ui {

class ObstacleEditor;
class SiteCanvas;
class SpotEditor;
class SurfaceEditor;
class VisitForm;

class VisitStage : public StageWidget {
    Q_OBJECT
   public:
    explicit VisitStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    void show_place(const QString& place_id) override;

    [[nodiscard]] SiteCanvas* canvas() const { return canvas_; }
    [[nodiscard]] VisitForm* form() const { return form_; }

   private:
    QWidget* build_sheets();
    QWidget* build_sketch();
    void select(const std::string& id, bool bring_forward);
    void refresh();
    void refresh_missing();
    void add_surface_at(int kind);
    void add_obstacle_at(int kind);
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
    QListWidget* missing_ = nullptr;
    QLabel* missing_words_ = nullptr;
    SiteCanvas* canvas_ = nullptr;
    QWidget* remove_ = nullptr;
};

}  // namespace wg::ui
