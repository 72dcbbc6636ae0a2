#pragma once
// What the job window expects of each of its six stages.

#include <QWidget>

namespace wg::ui {

class JobSession;

class StageWidget : public QWidget {
    Q_OBJECT
   public:
    using QWidget::QWidget;
    /// The session to show; null when the job closes. Called before the stage is first shown.
    virtual void set_session(JobSession* session) = 0;
    /// A finding was activated: bring its place into view and select it, when it belongs to this stage.
    virtual void show_place(const QString& place_id) { Q_UNUSED(place_id); }

   Q_SIGNALS:
    void status_text(const QString& text);  ///< for the bottom line: what the pointer is over, the tool's next click
    /// The working of a fixing point is to be shown; `point` 0: of the collector's worst one.
    void point_working_asked(const QString& placement_id, int point);
    void working_asked(const QString& key);  ///< of another working of the plan
    void weather_asked();                    ///< the weather year of the job is to be looked at or changed
    void customer_asked();                   ///< the client is to be shown among the firm's customers
};

}  // namespace wg::ui
