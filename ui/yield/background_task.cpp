#include "ui/yield/background_task.h"

#include <QtConcurrent/QtConcurrentRun>

namespace wg::ui {

BackgroundTask::BackgroundTask(QObject* parent) : QObject(parent) {
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Take>>::finished, this, [this] {
        const std::shared_ptr<Take> take = watcher_.result();
        if (*take && !stop_->load()) (*take)();
        Q_EMIT finished();
    });
}

BackgroundTask::~BackgroundTask() {
    stop();
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void BackgroundTask::start(Work work) {
    stop();
    watcher_.waitForFinished();  // stopped work ends within a few years of operation, some 50 ms
    stop_ = std::make_shared<std::atomic<bool>>(false);
    // `this` outlives the work: the destructor waits for it.
    watcher_.setFuture(QtConcurrent::run([this, work = std::move(work), stop = stop_] {
        return std::make_shared<Take>(work([this, &stop](double share) {
            QMetaObject::invokeMethod(
                this, [this, share] { Q_EMIT progressed(static_cast<int>(100.0 * share)); }, Qt::QueuedConnection);
            return !stop->load();
        }));
    }));
}

void BackgroundTask::stop() {
    if (stop_ != nullptr) stop_->store(true);
}

}  // namespace wg::ui
