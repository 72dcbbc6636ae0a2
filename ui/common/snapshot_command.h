#pragma once
// Used by the undo machinery only; everybody else calls JobSession::edit() through the verbs in edits.h.

#include <QUndoCommand>
#include <memory>

#include "core/job/job.h"
#include "ui/common/job_snapshot.h"

namespace wg::ui {

class JobSession;

/// Keeps the job before and after one step. A job is some tens of kilobytes (photographs are kept by hash), so whole
/// copies are cheaper than a command class for each kind of edit, and undo is exact by construction. Old ones are
/// packed.
class SnapshotCommand : public QUndoCommand {
   public:
    SnapshotCommand(JobSession& session, const QString& what, std::shared_ptr<JobSnapshot> before,
                    std::shared_ptr<JobSnapshot> after, QString merge_key, int merge_generation);

    void undo() override;
    void redo() override;
    [[nodiscard]] int id() const override { return 1; }
    [[nodiscard]] const std::shared_ptr<JobSnapshot>& after() const { return after_; }
    void pack() { before_->pack(); }
    bool mergeWith(const QUndoCommand* later) override;
    /// Whether a step with this key and generation would become part of this one.
    [[nodiscard]] bool takes_in(const QString& merge_key, int merge_generation) const;

   private:
    JobSession& session_;  ///< owns the stack that owns this command
    std::shared_ptr<JobSnapshot> before_;
    std::shared_ptr<JobSnapshot> after_;  ///< the next command's before
    QString merge_key_;
    int merge_generation_;
};

}  // namespace wg::ui
