#include "ui/window/aftercare_keeper.h"

#include <QDateTime>

#include "core/aftercare/register.h"
#include "core/aftercare/service.h"
#include "core/job/codec.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {

AftercareKeeper::AftercareKeeper(store::Store& store, QObject* parent) : QObject(parent), store_(store) {}

void AftercareKeeper::set_session(JobSession* session) {
    if (session_ != nullptr) session_->disconnect(this);
    session_ = session;
    kept_.clear();
    problem_.clear();
    if (session_ == nullptr) return;
    connect(session_, &JobSession::saved_changed, this, &AftercareKeeper::keep_now);
    connect(session_, &JobSession::plan_changed, this, &AftercareKeeper::keep_now);
    connect(session_, &JobSession::planning_changed, this, &AftercareKeeper::keep_now);
}

bool AftercareKeeper::keep_now() {
    if (session_ == nullptr || session_->dirty() || !session_->settled()) return false;
    const plan::Plan& plan = *session_->plan();
    const Job& job = session_->job();
    // Another choice may be on screen; what is fitted is the chosen one.
    const Choice* chosen = chosen_choice(job);
    if (chosen == nullptr || plan.choice_id != chosen->id || job.revision == 0) return false;
    const std::string content = content_sha256(job);
    if (kept_ == content) return true;
    const CivilDate today{QDate::currentDate().year(), QDate::currentDate().month(), QDate::currentDate().day()};
    std::vector<store::ServiceDueRow> rows;
    for (const aftercare::ServiceDate& date : aftercare::service_dates(plan.service, job.record, today)) {
        if (!date.due_on) continue;
        store::ServiceDueRow row;
        row.service_id = date.service.id;
        row.text = date.service.text;
        row.due_on = iso8601(*date.due_on);
        if (date.last_done_on) row.last_done_on = iso8601(*date.last_done_on);
        rows.push_back(std::move(row));
    }
    const Result<bool> services = store_.set_services_due(job.id, rows);
    const Result<int> moves = store_.mirror_refrigerant_entries(
        aftercare::entries_of(job, name_of(plan.block.refrigerant)), Instant{QDateTime::currentSecsSinceEpoch()});
    QString text;
    if (!services.ok()) text = qs(text_of(services.problems()));
    if (!moves.ok()) text += (text.isEmpty() ? QString() : QStringLiteral("\n")) + qs(text_of(moves.problems()));
    if (text.isEmpty()) kept_ = content;
    // Said once: every further save would repeat the same words otherwise.
    if (!text.isEmpty() && text != problem_) Q_EMIT failed(text);
    problem_ = text;
    return text.isEmpty();
}

}  // namespace wg::ui
