#pragma once
// Properties of one building: shape, pitch however it was measured, heights, overhangs, edges.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

class QLabel;
class QTableWidget;

namespace wg::ui {

class JobSession;

class BuildingEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit BuildingEditor(QWidget* parent = nullptr);
    void show_building(JobSession* session, const std::string& building_id);

    [[nodiscard]] TextField* pitch_field() const { return pitch_; }
    [[nodiscard]] NumberField* ridge_field() const { return ridge_; }
    [[nodiscard]] CalmCombo* shape_field() const { return shape_; }
    [[nodiscard]] QTableWidget* edges() const { return edges_; }
    [[nodiscard]] QString problem() const;

   private:
    void build_roof();
    void build_edges();
    void refresh();
    void fill_edges(const Building& building);
    void edge_edited(int row, int column);
    void pitch_typed(const QString& text);
    void ridge_typed(double ridge_m);
    void apply(const std::function<void(Building&)>& change);
    void say(const QString& problem);
    [[nodiscard]] const Building* building() const;
    NumberField* measured(const QString& label, const NumberField::Range& range, double Building::*member);

    JobSession* session_ = nullptr;
    std::string building_id_;
    QLabel* problem_ = nullptr;
    QLabel* made_ = nullptr;
    TextField* pitch_ = nullptr;
    NumberField* ridge_ = nullptr;
    CalmCombo* shape_ = nullptr;
    CalmCombo* low_edge_ = nullptr;
    QTableWidget* edges_ = nullptr;
    std::vector<QWidget*> sloped_fields_, flat_fields_;
    std::vector<std::function<void(const Building&)>> shows_;
    bool filling_ = false;
};

}  // namespace wg::ui
