#pragma once
// One open job: the data, its undo stack, and the plan that follows every edit in the background.
// Widgets never change a Job themselves: they call edit() through the verbs in edits.h.

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <functional>
#include <memory>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::ui {

class Planner;

class JobSession : public QObject {
    Q_OBJECT
   public:
    JobSession(Job job, std::shared_ptr<const plan::Reference> reference, QObject* parent = nullptr);
    ~JobSession() override;

    [[nodiscard]] const Job& job() const { return job_; }
    [[nodiscard]] const plan::Reference& reference() const { return *reference_; }
    [[nodiscard]] QUndoStack& undo_stack() { return undo_; }

    /// The choice on screen (not necessarily the chosen one).
    [[nodiscard]] const Choice* current_choice() const;
    void set_current_choice(const std::string& choice_id);

    /// The newest plan of the current choice; null before the first is ready or when the job cannot be planned.
    [[nodiscard]] std::shared_ptr<const plan::Plan> plan() const { return plan_; }
    /// Plan as it stood before the last edit with complete yield, for the signed differences in the ledger.
    [[nodiscard]] std::shared_ptr<const plan::Plan> earlier_plan() const { return earlier_plan_; }
    /// Why there is no plan; empty when there is one.
    [[nodiscard]] QString plan_problem() const { return plan_problem_; }
    [[nodiscard]] bool planning() const;

    /// The one door for changes: applies `change` to a copy; pushes one undo step when the job differs. Steps with the
    /// same non-empty `merge_key` in a row become one (a drag). `what` is the undo text.
    void edit(const QString& what, const std::function<void(Job&)>& change, const QString& merge_key = {});
    /// Ends merging: the next edit with the same key starts a new step.
    void end_merge();

    /// Takes over the revision and time that the store gave at saving; not undoable.
    void mark_saved(const Job& stored);
    [[nodiscard]] bool dirty() const;

   Q_SIGNALS:
    void job_changed();         ///< after every edit, undo and redo
    void plan_changed();        ///< a newer plan (quick or full) or a new plan problem
    void planning_changed();    ///< planning() flipped
    void choice_changed();      ///< another current choice
    void saved_changed();

   private:
    friend class SnapshotCommand;
    void replace_job(const Job& job);
    void replan();

    Job job_;
    Job saved_job_;
    std::shared_ptr<const plan::Reference> reference_;
    QUndoStack undo_;
    std::unique_ptr<Planner> planner_;
    std::shared_ptr<const plan::Plan> plan_;
    std::shared_ptr<const plan::Plan> earlier_plan_;
    QString plan_problem_;
    std::string current_choice_id_;
    int merge_generation_ = 0;
};

}  // namespace wg::ui
