#pragma once
// The run's bends and passages in order from collector to block.

#include <QWidget>
#include <string>
#include <vector>

#include "core/job/job.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace wg::ui {

class CalmCombo;
class JobSession;
class NumberField;

class RunPanel : public QWidget {
    Q_OBJECT
   public:
    explicit RunPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_selected(const std::string& point_id);

   Q_SIGNALS:
    void point_chosen(const QString& point_id);

   private:
    void refresh();
    void refresh_selected();
    void commit_position();
    void add_bend();
    void suggest();

    JobSession* session_ = nullptr;
    std::string point_id_;
    std::vector<RoutePoint> suggested_;  ///< as put in: its note stays while the route is that
    QLabel* words_ = nullptr;
    QPushButton* suggest_ = nullptr;
    QLabel* note_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* remove_ = nullptr;
    QWidget* selected_box_ = nullptr;
    CalmCombo* kind_ = nullptr;
    NumberField* x_ = nullptr;
    NumberField* y_ = nullptr;
    NumberField* z_ = nullptr;
};

}  // namespace wg::ui
