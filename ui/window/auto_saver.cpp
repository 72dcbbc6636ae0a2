#include "ui/window/auto_saver.h"

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/window/edit_keeper.h"

namespace wg::ui {
namespace {

constexpr int quiet_ms = 1000;  ///< without edits before a save
constexpr int keep_ms = 250;    ///< after the first edit that is not kept yet

}  // namespace

AutoSaver::AutoSaver(store::Store& store, QObject* parent) : QObject(parent), store_(store) {
    delay_.setSingleShot(true);
    delay_.setInterval(quiet_ms);
    connect(&delay_, &QTimer::timeout, this, &AutoSaver::save_now);
    keeper_ = new EditKeeper(store_, this);
    connect(keeper_, &EditKeeper::failed, this, &AutoSaver::not_kept);
    keep_delay_.setSingleShot(true);
    keep_delay_.setInterval(keep_ms);
    connect(&keep_delay_, &QTimer::timeout, this, [this] {
        if (session_ != nullptr && session_->dirty()) keeper_->keep(session_->job());
    });
}

void AutoSaver::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    delay_.stop();
    keep_delay_.stop();
    session_ = session;
    saved_at_ = {};
    problem_.clear();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, [this] {
            delay_.start(quiet_ms);
            // A drag goes on for long: this one is not put off by the next edit.
            if (!keep_delay_.isActive()) keep_delay_.start();
        });
    }
}

bool AutoSaver::save_now() {
    delay_.stop();
    keep_delay_.stop();
    if (session_ == nullptr || !session_->dirty()) return true;
    const QDateTime now = QDateTime::currentDateTime();
    const Result<Job> stored = store_.save(session_->job(), Instant{now.toSecsSinceEpoch()});
    if (!stored.ok()) {
        // Said once: every further edit would repeat the same words otherwise.
        const QString text = qs(text_of(stored.problems()));
        const bool news = text != problem_;
        problem_ = text;
        if (news) Q_EMIT failed(text);
        delay_.start(again_ms_);
        return false;
    }
    const bool after_failure = !problem_.isEmpty();
    problem_.clear();
    saved_at_ = now;
    session_->mark_saved(stored.value());
    Q_EMIT saved(after_failure);
    return true;
}

}  // namespace wg::ui
