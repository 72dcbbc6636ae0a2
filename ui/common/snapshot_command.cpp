#include "ui/common/snapshot_command.h"

#include "ui/common/job_session.h"

namespace wg::ui {

SnapshotCommand::SnapshotCommand(JobSession& session, const QString& what, std::shared_ptr<JobSnapshot> before,
                                 std::shared_ptr<JobSnapshot> after, QString merge_key, int merge_generation)
    : QUndoCommand(what),
      session_(session),
      before_(std::move(before)),
      after_(std::move(after)),
      merge_key_(std::move(merge_key)),
      merge_generation_(merge_generation) {}

void SnapshotCommand::undo() {
    session_.replace_job(before_->job());
}

void SnapshotCommand::redo() {
    session_.replace_job(after_->job());
}

bool SnapshotCommand::takes_in(const QString& merge_key, int merge_generation) const {
    return !merge_key_.isEmpty() && merge_key == merge_key_ && merge_generation == merge_generation_;
}

bool SnapshotCommand::mergeWith(const QUndoCommand* later) {
    // All commands of the stack are of this class: only JobSession::edit() pushes.
    const auto* other = static_cast<const SnapshotCommand*>(later);
    if (!takes_in(other->merge_key_, other->merge_generation_)) return false;
    after_ = other->after_;
    // A drag that ends where it began leaves nothing to undo.
    setObsolete(before_->job() == after_->job());
    return true;
}

}  // namespace wg::ui
