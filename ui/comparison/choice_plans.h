#pragma once
// Plans of the job's choices beside the one on screen, made in the background one after the other and kept while what
// they were made of stands. One for each session, shared by every screen that compares choices.

#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace wg::ui {

class JobSession;

/// A choice's plan, or why there is none.
struct ChoicePlan {
    std::string choice_id;
    std::shared_ptr<const plan::Plan> plan;
    QString problem;
};

class ChoicePlans : public QObject {
    Q_OBJECT
   public:
    static constexpr std::size_t most_compared = 4;

    /// The one of this session; made when first asked for, and gone with the session.
    static ChoicePlans& of(JobSession& session);
    ~ChoicePlans() override;

    /// The choice's plan for the job as it stands; null while there is none.
    [[nodiscard]] const ChoicePlan* plan_of(const std::string& choice_id) const;
    /// `who` looks at these choices from now on: what is missing is planned. None: it no longer looks.
    void want(const QObject* who, const std::vector<std::string>& choice_ids);
    [[nodiscard]] bool busy() const { return watcher_.isRunning(); }
    /// No further plan until somebody wants again.
    void stop();
    [[nodiscard]] bool stopped() const { return stopped_; }

    /// Which choices stand side by side, in the job's order: at most `most_compared`. At first the chosen one, the one
    /// on screen and the first others; a choice that is added joins them while there is room.
    [[nodiscard]] std::vector<std::string> compared() const;
    /// False when there is no room for one more.
    bool set_compared(const std::string& choice_id, bool on);

   Q_SIGNALS:
    void changed();

   private:
    explicit ChoicePlans(JobSession& session);
    struct Made {
        ChoicePlan plan;
        std::shared_ptr<const Job> job;
        std::shared_ptr<const plan::PreparedWeather> weather;
    };
    void look();
    void plan_next();
    void take();
    void follow_choices();
    [[nodiscard]] bool current(const Made& made) const;

    JobSession& session_;
    QThreadPool pool_;
    QFutureWatcher<Made> watcher_;
    std::map<std::string, Made> made_;
    std::map<const QObject*, std::vector<std::string>> wanted_;
    std::vector<std::string> picked_;  ///< for comparing, in the order they were picked
    std::set<std::string> seen_;       ///< choices that were there before
    bool stopped_ = false;
};

}  // namespace wg::ui
