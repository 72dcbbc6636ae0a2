#include "ui/layout/place_search.h"

#include <QtConcurrent/QtConcurrentRun>

#include "ui/common/job_session.h"

namespace wg::ui {

PlaceSearch::PlaceSearch(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
    pool_.setThreadPriority(QThread::LowPriority);  // the figures of an edit go before
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, this, &PlaceSearch::take);
}

PlaceSearch::~PlaceSearch() {
    cancel();
    watcher_.disconnect(this);
    watcher_.waitForFinished();
    pool_.waitForDone();  // at most one year of operation with its range
}

void PlaceSearch::start(const JobSession& session, const plan::PlaceWish& wish) {
    cancel();
    watcher_.waitForFinished();  // a cancelled search ends within one year of operation, some 20 ms
    forget();
    stop_ = std::make_shared<std::atomic<bool>>(false);
    const auto job = job_ = std::make_shared<const Job>(session.job());
    const auto reference = reference_ = session.shared_reference();
    watcher_.setFuture(QtConcurrent::run([this, job, reference, wish, stop = stop_] {
        auto answer = std::make_shared<Answer>();
        // `this` outlives the search: the destructor waits for it.
        const auto progress = [this, &stop](double share) {
            QMetaObject::invokeMethod(
                this, [this, share] { Q_EMIT progressed(static_cast<int>(100.0 * share)); }, Qt::QueuedConnection);
            return !stop->load();
        };
        Result<plan::FoundPlaces> result = plan::best_places(*job, *reference, wish, progress);
        if (!result.ok()) {
            answer->problems = result.problems();
        } else if (!result.value().outcome.cancelled) {
            answer->found = Found{wish, std::move(result).value(), *job};
        }
        return answer;
    }));
}

void PlaceSearch::cancel() {
    if (stop_ != nullptr) stop_->store(true);
}

void PlaceSearch::forget() {
    cancel();
    found_.reset();
    problems_.clear();
    present_.reset();
    plans_.clear();
    planned_ = to_plan_ = 0;
}

void PlaceSearch::take() {
    const std::shared_ptr<Answer> answer = watcher_.result();
    found_ = std::move(answer->found);
    problems_ = std::move(answer->problems);
    if (found_) plan_places();
    Q_EMIT finished();
}

void PlaceSearch::plan_places() {
    plans_.assign(found_->places.outcome.places.size(), nullptr);
    to_plan_ = plans_.size() + 1;
    // The choice as it stands first: it is what the others are held against. `this` outlives the pool.
    pool_.start([this, stop = stop_, job = job_, reference = reference_, wish = found_->wish, places = found_->places] {
        plan::Options options;
        options.choice_id = wish.choice_id;
        options.keep_hours = false;
        for (std::size_t i = 0; i <= places.outcome.places.size() && !stop->load(); ++i) {
            std::shared_ptr<const plan::Plan> made;
            auto planned = plan::plan(i == 0 ? *job : plan::with_place(*job, wish, places, i - 1), *reference, options);
            if (planned.ok()) made = std::make_shared<const plan::Plan>(std::move(planned).value());
            QMetaObject::invokeMethod(
                this,
                [this, stop, i, made] {
                    if (!stop->load()) take_plan(i, made);
                },
                Qt::QueuedConnection);
        }
    });
}

void PlaceSearch::take_plan(std::size_t which, std::shared_ptr<const plan::Plan> plan) {
    if (which > plans_.size()) return;  // forgotten meanwhile
    (which == 0 ? present_ : plans_[which - 1]) = std::move(plan);
    ++planned_;
    Q_EMIT planned();
}

const plan::Plan* PlaceSearch::plan_of(std::size_t place) const {
    return place < plans_.size() ? plans_[place].get() : nullptr;
}

}  // namespace wg::ui
