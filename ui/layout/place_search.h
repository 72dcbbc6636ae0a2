#pragma once
// The search for the best places in the background, with progress and cancel, and after it the plan of each place
// found. A newer search cancels the older one.

#include <QFutureWatcher>
#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <memory>
#include <optional>
#include <vector>

#include "core/plan/best_places.h"
#include "core/plan/plan.h"

namespace wg::ui {

class JobSession;

class PlaceSearch : public QObject {
    Q_OBJECT
   public:
    explicit PlaceSearch(QObject* parent = nullptr);
    ~PlaceSearch() override;

    /// Searches with the session's job as it stands now.
    void start(const JobSession& session, const plan::PlaceWish& wish);
    void cancel();
    [[nodiscard]] bool running() const { return watcher_.isRunning(); }

    /// What the last finished search found, and for which job and wish; nullopt: none yet, cancelled or failed.
    struct Found {
        plan::PlaceWish wish;
        plan::FoundPlaces places;
        Job job;
    };
    [[nodiscard]] const std::optional<Found>& found() const { return found_; }
    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }
    void forget();

    /// The places of the last search as plan() has them, one after the other; null while it is not there yet.
    [[nodiscard]] const plan::Plan* plan_of(std::size_t place) const;
    /// The choice as it was when the search began.
    [[nodiscard]] const plan::Plan* present_plan() const { return present_.get(); }
    [[nodiscard]] bool planning() const { return planned_ < to_plan_; }

   Q_SIGNALS:
    void progressed(int percent);
    void finished();
    void planned();  ///< one more place

   private:
    struct Answer {
        std::optional<Found> found;
        std::vector<Problem> problems;
    };
    void take();
    void plan_places();
    void take_plan(std::size_t which, std::shared_ptr<const plan::Plan> plan);

    QFutureWatcher<std::shared_ptr<Answer>> watcher_;
    std::shared_ptr<std::atomic<bool>> stop_;
    std::shared_ptr<const Job> job_;
    std::shared_ptr<const plan::Reference> reference_;
    std::shared_ptr<const plan::Plan> present_;
    std::vector<std::shared_ptr<const plan::Plan>> plans_;  ///< of the places
    std::size_t planned_ = 0, to_plan_ = 0;
    QThreadPool pool_;
    std::optional<Found> found_;
    std::vector<Problem> problems_;
};

}  // namespace wg::ui
