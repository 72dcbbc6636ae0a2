#pragma once
// Keeps the edits of the open job between saves, in a thread of its own: a disk that takes its time holds up nobody.

#include <QObject>
#include <QThread>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>

#include "core/job/job.h"
#include "core/store/store.h"

namespace wg::ui {

class EditKeeper : public QObject {
    Q_OBJECT
   public:
    /// `store` is open already and is not kept hold of: a connection beside it is. A store in memory keeps nothing.
    explicit EditKeeper(const store::Store& store, QObject* parent = nullptr);
    /// What was handed over is written first.
    ~EditKeeper() override;
    /// Hands a job over and returns at once; of several that wait, the last is written.
    void keep(const Job& job);

   Q_SIGNALS:
    void failed(const QString& text);  ///< once, until a write works again

   private:
    void write_waiting();  ///< in the thread

    std::function<Result<std::unique_ptr<store::Store>>()> open_beside_;
    QThread thread_;
    QObject in_thread_;  ///< lives there, and calls are sent to it
    std::mutex mutex_;
    std::optional<Job> waiting_;
    std::unique_ptr<store::Store> store_;  ///< the thread's own connection
    bool told_ = false;
};

}  // namespace wg::ui
