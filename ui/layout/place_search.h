#pragma once
// The search for the best places in the background, with progress and cancel. A newer search cancels the older one.

#include <QFutureWatcher>
#include <QObject>
#include <atomic>
#include <memory>
#include <optional>

#include "core/plan/best_places.h"

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

   Q_SIGNALS:
    void progressed(int percent);
    void finished();

   private:
    struct Answer {
        std::optional<Found> found;
        std::vector<Problem> problems;
    };
    void take();

    QFutureWatcher<std::shared_ptr<Answer>> watcher_;
    std::shared_ptr<std::atomic<bool>> stop_;
    std::optional<Found> found_;
    std::vector<Problem> problems_;
};

}  // namespace wg::ui
