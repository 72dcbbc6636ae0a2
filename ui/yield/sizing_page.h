#pragma once
// Choosing a set: every set of the catalogue by cost and comfort, a year by tilt and bearing, warm-up by month.

#include <QPointer>
#include <memory>
#include <optional>
#include <string>

#include "core/plan/sizing_advice.h"
#include "ui/drawing/facing_painter.h"
#include "ui/drawing/sets_painter.h"
#include "ui/drawing/warm_up_painter.h"
#include "ui/yield/yield_page.h"

class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace wg::ui {

class BackgroundTask;
class ComfortRow;
class EmptyPane;
class JobSession;
class PictureView;
class TaskRow;

class SizingPage : public YieldPage {
    Q_OBJECT
   public:
    enum class View { sets, facing, warm_up };
    /// Everything that one press of the button works out.
    struct Answer {
        plan::SizingWish wish;
        plan::SizingAdvice advice;
        plan::FacingYields facing;
        plan::MonthsWarmUp warm_up;
        Demand demand;
    };

    explicit SizingPage(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// After any change of job or choice: figures of another state are marked so.
    void refresh();
    void start();
    [[nodiscard]] BackgroundTask* task() const { return task_; }
    void show_answer(const Answer& answer);
    [[nodiscard]] const std::optional<Answer>& answer() const { return answer_; }
    [[nodiscard]] bool outdated() const;

    void show_view(View view);
    void select_point(int index);
    /// The selected set becomes a further choice of the job; its id, empty when nothing could be done.
    std::string make_choice();
    [[nodiscard]] QPushButton* make_button() const { return make_; }
    /// What counts as comfortable; another target judges the sets anew without another year.
    [[nodiscard]] ComfortRow* comfort() const { return comfort_; }
    [[nodiscard]] bool shows_empty_pane() const;

    [[nodiscard]] FigureTable figures() const override;
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;
    [[nodiscard]] const SetsPicture& sets_picture() const { return sets_; }
    [[nodiscard]] const FacingPicture& facing_picture() const { return facing_; }

   private:
    void build();
    void fill();
    void fill_state();
    void show_pictures();
    void judge();
    [[nodiscard]] View view_shown() const;
    [[nodiscard]] std::string state_key() const;

    QPointer<JobSession> session_;
    BackgroundTask* task_ = nullptr;
    TaskRow* row_ = nullptr;
    QButtonGroup* views_ = nullptr;
    QWidget* wishes_ = nullptr;  ///< row of the view of sets alone
    QComboBox* cost_ = nullptr;
    ComfortRow* comfort_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    PictureView* view_ = nullptr;
    QLabel* words_ = nullptr;
    QLabel* chosen_ = nullptr;
    QPushButton* make_ = nullptr;
    std::optional<Answer> answer_;
    std::string key_;
    QString problem_;
    SetsPicture sets_;
    FacingPicture facing_;
    WarmUpPicture warm_up_;
};

}  // namespace wg::ui
