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
#include "ui/common/planner.h"

namespace wg::ui {

class JobSession : public QObject {
    Q_OBJECT
   public:
    JobSession(Job job, std::shared_ptr<const plan::Reference> reference, QObject* parent = nullptr);
    /// With another way to plan; tests pass slow or failing ones.
    JobSession(Job job, std::shared_ptr<const plan::Reference> reference, PlanFunction plan_function,
               QObject* parent = nullptr);
    ~JobSession() override;

    [[nodiscard]] const Job& job() const { return job_; }
    /// Reference data with the weather year of this job, once the first plan is there. Stays valid for the life of the
    /// session, but another object may take its place when the job's weather changes.
    [[nodiscard]] const plan::Reference& reference() const { return *reference_; }
    [[nodiscard]] std::shared_ptr<const plan::Reference> shared_reference() const { return reference_; }
    /// Makes a year of the firm's library known under its id, so that the job can be planned with it.
    void offer_weather(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather);
    [[nodiscard]] QUndoStack& undo_stack() { return undo_; }

    /// The choice on screen (not necessarily the chosen one).
    [[nodiscard]] const Choice* current_choice() const;
    void set_current_choice(const std::string& choice_id);

    /// The newest plan of the current choice; null before the first is ready or when the job cannot be planned.
    /// Right after an edit this is the quick plan: geometry, run, fixings and price are new, `has_yield` is false, and
    /// season, economy and the yearly figures are those from before the edit (see yield_carried()), so that screens
    /// can keep showing them, muted. Issue and print only a settled() plan.
    [[nodiscard]] std::shared_ptr<const plan::Plan> plan() const { return plan_; }
    /// True while the yearly figures in plan() are those from before the last edit.
    [[nodiscard]] bool yield_carried() const { return yield_carried_; }
    /// True when plan() is complete and belongs to the job as it stands now.
    [[nodiscard]] bool settled() const { return plan_ != nullptr && !yield_carried_ && !planning(); }
    /// Complete plan as it stood before the last step, for the signed differences in the ledger. All of a drag counts
    /// from where the drag began.
    [[nodiscard]] std::shared_ptr<const plan::Plan> earlier_plan() const { return earlier_plan_; }
    /// Why there is no plan; empty when there is one.
    [[nodiscard]] QString plan_problem() const { return plan_problem_; }
    [[nodiscard]] bool planning() const;

    /// The one door for changes: applies `change` to a copy; pushes one undo step when the job differs. Steps with the
    /// same non-empty `merge_key` in a row become one (a drag). `what` is the undo text.
    void edit(const QString& what, const std::function<void(Job&)>& change, const QString& merge_key = {});
    /// Ends merging: the next edit with the same key starts a new step.
    void end_merge();

    /// Adds to the record: at once and for good. Undo and redo leave the record alone, since it only grows. Sets id,
    /// the plan's revision and mark, and the link to the entry before. Returns the id.
    std::string append(Reading entry);
    /// Takes over what was kept of this job but not saved: the entries of its record that this one lacks for good, the
    /// rest as one undo step.
    void bring_back(const Job& kept, const QString& what);

    /// Takes over the revision and time that the store gave at saving; not undoable.
    void mark_saved(const Job& stored);
    [[nodiscard]] bool dirty() const;

   Q_SIGNALS:
    void job_changed();       ///< after every edit, undo and redo
    void plan_changed();      ///< a newer plan (quick or full) or a new plan problem
    void planning_changed();  ///< planning() flipped
    void choice_changed();    ///< another current choice
    void saved_changed();

   private:
    friend class SnapshotCommand;
    void replace_job(const Job& job);
    void replan();
    void take_entries(std::vector<Reading> entries);
    void remember_earlier_plan();
    void take_quick(const PlanAnswer& answer);
    void take_full(const PlanAnswer& answer);
    void take_problem(const std::vector<Problem>& problems);

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
    std::shared_ptr<const plan::Plan> full_plan_;  ///< newest with yield, of whichever edit; source of carried figures
    std::vector<std::shared_ptr<const plan::Reference>> references_;  ///< all handed out so far, kept alive
    bool yield_carried_ = false;
    bool continues_step_ = false;  ///< the edit under way becomes part of the step before it
    std::uint64_t shown_ = 0;      ///< number of the order behind plan_
};

}  // namespace wg::ui
