#pragma once
// Properties of one obstacle; only the sizes that count for its kind are shown.

#include <string>

#include "core/job/job.h"
#include "ui/visit/form_builder.h"

namespace wg::ui {

class JobSession;

class ObstacleEditor : public FormColumn {
    Q_OBJECT
   public:
    explicit ObstacleEditor(QWidget* parent = nullptr);
    void show_obstacle(JobSession* session, const std::string& obstacle_id);

   private:
    struct Shown {
        QWidget* field = nullptr;
        std::vector<ObstacleKind> kinds;
    };
    void refresh();
    [[nodiscard]] const Obstacle* obstacle() const;
    QString apply(const std::function<void(Obstacle&)>& change, NumberField* field = nullptr);
    void sized(const QString& label, const QString& unit, const NumberField::Range& range, double Obstacle::*member,
               std::vector<ObstacleKind> kinds);
    CalmCombo* month(const QString& label, int Obstacle::*member);

    JobSession* session_ = nullptr;
    std::string obstacle_id_;
    std::vector<Shown> shown_;
    std::vector<std::function<void(const Obstacle&)>> shows_;
};

}  // namespace wg::ui
