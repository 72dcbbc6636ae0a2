#include "ui/rating/fit_run.h"

#include <QtConcurrent/QtConcurrentRun>

namespace wg::ui {

FitRun::FitRun(QObject* parent) : QObject(parent) {
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, this, &FitRun::take);
}

FitRun::~FitRun() {
    stop();
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void FitRun::start(const rating::Item& item, const rating::Chamber& chamber, std::vector<rating::Declared> declared,
                   std::shared_ptr<const plan::Reference> reference) {
    stop();
    watcher_.waitForFinished();  // a stopped fit ends within a few tests, some 10 ms
    forget();
    running_ = true;
    reference_ = std::move(reference);
    stop_ = std::make_shared<std::atomic<bool>>(false);
    rating::FitOptions options;
    options.chamber = chamber;
    watcher_.setFuture(QtConcurrent::run([this, item, options, declared = std::move(declared), stop = stop_] {
        // `this` outlives the fit: the destructor waits for it.
        const auto watch = [this, &stop](const rating::FitProgress& now) {
            QMetaObject::invokeMethod(
                this, [this, now] { Q_EMIT progressed(now.evaluations, now.worst_miss); }, Qt::QueuedConnection);
            return !stop->load();
        };
        auto answer = std::make_shared<Answer>();
        Result<rating::Fit> result = rating::fit(item, declared, options, watch);
        if (result.ok())
            answer->fit = std::move(result).value();
        else
            answer->problems = result.problems();
        return answer;
    }));
}

void FitRun::stop() {
    if (stop_ != nullptr) stop_->store(true);
}

void FitRun::forget() {
    fit_.reset();
    problems_.clear();
}

void FitRun::take() {
    const std::shared_ptr<Answer> answer = watcher_.result();
    running_ = false;
    fit_ = std::move(answer->fit);
    problems_ = std::move(answer->problems);
    Q_EMIT finished();
}

}  // namespace wg::ui
