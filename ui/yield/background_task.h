#pragma once
// One piece of work of core in the background, with progress and stop. A newer one stops the older.

#include <QFutureWatcher>
#include <QObject>
#include <atomic>
#include <functional>
#include <memory>

#include "core/plan/study.h"

namespace wg::ui {

class BackgroundTask : public QObject {
    Q_OBJECT
   public:
    /// Called on the window's own thread once the work is done; empty: it was stopped.
    using Take = std::function<void()>;
    using Work = std::function<Take(const plan::Progress&)>;

    explicit BackgroundTask(QObject* parent = nullptr);
    ~BackgroundTask() override;

    /// `work` runs on another thread and must hold copies or shared pointers of all it needs.
    void start(Work work);
    void stop();
    [[nodiscard]] bool running() const { return watcher_.isRunning(); }

   Q_SIGNALS:
    void progressed(int percent);
    void finished();

   private:
    QFutureWatcher<std::shared_ptr<Take>> watcher_;
    std::shared_ptr<std::atomic<bool>> stop_;
};

}  // namespace wg::ui
