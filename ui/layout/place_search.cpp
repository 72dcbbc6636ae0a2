#include "ui/layout/place_search.h"

#include <QtConcurrent/QtConcurrentRun>

#include "ui/common/job_session.h"

namespace wg::ui {

PlaceSearch::PlaceSearch(QObject* parent) : QObject(parent) {
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, this, &PlaceSearch::take);
}

PlaceSearch::~PlaceSearch() {
    cancel();
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void PlaceSearch::start(const JobSession& session, const plan::PlaceWish& wish) {
    cancel();
    watcher_.waitForFinished();  // a cancelled search ends within one year of operation, some 20 ms
    forget();
    stop_ = std::make_shared<std::atomic<bool>>(false);
    const auto job = std::make_shared<const Job>(session.job());
    const auto reference = session.shared_reference();
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
    found_.reset();
    problems_.clear();
}

void PlaceSearch::take() {
    const std::shared_ptr<Answer> answer = watcher_.result();
    found_ = std::move(answer->found);
    problems_ = std::move(answer->problems);
    Q_EMIT finished();
}

}  // namespace wg::ui
