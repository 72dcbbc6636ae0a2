#pragma once
// The window of one job: stages on top, the stage's own space, ledger and findings beside it, the bottom line.

#include <QPointer>
#include <QWidget>
#include <array>
#include <functional>

#include "core/findings/finding.h"
#include "ui/window/stage_marks.h"

class QLabel;
class QSplitter;
class QStackedWidget;

namespace wg::ui {

class ChoiceSelector;
class FindingsList;
class JobSession;
class Ledger;
class NoticeBar;
class StageBar;
class StageWidget;
class WorkingView;

using StageFactory = std::function<StageWidget*(QWidget* parent)>;

class JobPage : public QWidget {
    Q_OBJECT
   public:
    /// A stage is made when it is first shown: the program starts on the desk.
    explicit JobPage(std::array<StageFactory, stage_count> factories, QWidget* parent = nullptr);

    /// null: no job. The session must outlive the page's use of it.
    void set_session(JobSession* session);
    void show_stage(int stage);
    [[nodiscard]] int stage() const { return current_; }
    void set_saved_text(const QString& text);
    [[nodiscard]] NoticeBar& notice() { return *notice_; }
    /// All workings of the plan, at the one that belongs to the figure or finding with the focus.
    void show_workings();
    [[nodiscard]] WorkingView* working_view() const;

   Q_SIGNALS:
    void desk_asked();
    void weather_asked();   ///< from a stage
    void customer_asked();  ///< the same

   private:
    QWidget* make_head();
    QWidget* make_body();
    QWidget* make_foot();
    StageWidget* ensure_stage(int stage);
    void refresh_head();
    void refresh_marks();
    void refresh_planning();
    void go_to(const QString& place_id, Stage stage);
    /// The view of workings with the plan as it is, in front; null while there is no plan.
    WorkingView* open_workings();

    std::array<StageFactory, stage_count> factories_;
    std::array<StageWidget*, stage_count> stages_{};
    std::array<QWidget*, stage_count> holders_{};
    QPointer<JobSession> session_;
    int current_ = 0;
    QLabel* title_ = nullptr;
    StageBar* bar_ = nullptr;
    ChoiceSelector* choices_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    Ledger* ledger_ = nullptr;
    FindingsList* findings_ = nullptr;
    QPointer<WorkingView> workings_;
    QLabel* status_ = nullptr;
    QLabel* saved_ = nullptr;
    QLabel* planning_ = nullptr;
};

}  // namespace wg::ui
