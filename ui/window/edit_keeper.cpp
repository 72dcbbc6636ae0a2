#include "ui/window/edit_keeper.h"

#include <QDateTime>

#include "ui/common/format.h"

namespace wg::ui {

EditKeeper::EditKeeper(const store::Store& store, QObject* parent) : QObject(parent), open_beside_(store.beside()) {
    if (store.path() == ":memory:") return;
    in_thread_.moveToThread(&thread_);
    // A connection is closed in the thread that opened it.
    connect(
        &thread_, &QThread::finished, &in_thread_, [this] { store_.reset(); }, Qt::DirectConnection);
    thread_.setObjectName(QStringLiteral("edits"));
    thread_.start();
}

EditKeeper::~EditKeeper() {
    // Calls that were sent before come first.
    if (thread_.isRunning()) QMetaObject::invokeMethod(&in_thread_, [this] { thread_.quit(); });
    thread_.wait();
}

void EditKeeper::keep(const Job& job) {
    if (!thread_.isRunning()) return;
    {
        const std::lock_guard<std::mutex> lock(mutex_);
        const bool sent = waiting_.has_value();
        waiting_ = job;
        if (sent) return;
    }
    QMetaObject::invokeMethod(&in_thread_, [this] { write_waiting(); });
}

void EditKeeper::write_waiting() {
    std::optional<Job> job;
    {
        const std::lock_guard<std::mutex> lock(mutex_);
        job.swap(waiting_);
    }
    if (!job) return;
    std::vector<Problem> problems;
    if (store_ == nullptr) {
        Result<std::unique_ptr<store::Store>> opened = open_beside_();
        if (opened)
            store_ = std::move(opened).value();
        else
            problems = opened.problems();
    }
    if (store_ != nullptr) {
        const Result<bool> kept = store_->keep_unsaved(*job, Instant{QDateTime::currentSecsSinceEpoch()});
        if (!kept) problems = kept.problems();
    }
    const bool news = !problems.empty() && !told_;
    told_ = !problems.empty();
    if (news) Q_EMIT failed(qs(text_of(problems)));
}

}  // namespace wg::ui
