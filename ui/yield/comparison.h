#pragma once
// The job's choices side by side. Choices other than the one on screen are planned in the background, one after the
// other; a job edited meanwhile starts over.

#include <QFutureWatcher>
#include <QPointer>
#include <QWidget>
#include <map>
#include <memory>
#include <string>

#include "core/plan/plan.h"
#include "ui/yield/yield_page.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class JobSession;

/// A choice's plan, or why there is none.
struct ChoicePlan {
    std::string choice_id;
    std::shared_ptr<const plan::Plan> plan;
    QString problem;
};

class Comparison : public QWidget {
    Q_OBJECT
   public:
    explicit Comparison(QWidget* parent = nullptr);
    ~Comparison() override;

    void set_session(JobSession* session);
    /// Plans what is not planned yet for the job as it stands. Only while the tab is looked at or the plans are wanted
    /// by another.
    void refresh();
    void set_wanted(bool wanted);
    /// By id of the choice, as far as they are there.
    [[nodiscard]] const std::map<std::string, ChoicePlan>& plans() const { return plans_; }
    [[nodiscard]] FigureTable figures() const;
    [[nodiscard]] bool busy() const { return watcher_.isRunning(); }

   Q_SIGNALS:
    void plans_changed();

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    void plan_next();
    void take_plan();
    void fill();

    QPointer<JobSession> session_;
    QFutureWatcher<ChoicePlan> watcher_;
    std::string content_;  ///< of the job the plans below belong to
    std::string planning_content_;
    bool cancelled_ = false;
    bool wanted_ = false;
    std::map<std::string, ChoicePlan> plans_;
    QTableWidget* table_ = nullptr;
    QLabel* progress_ = nullptr;
    QPushButton* cancel_ = nullptr;
};

}  // namespace wg::ui
