#pragma once
// The desk's list with what it is narrowed by, its order, and views that the firm keeps.

#include <string>
#include <vector>

#include "core/job/next_step.h"
#include "core/store/store.h"

namespace wg::store {

enum class JobOrder { newest, number, client, title, town, state };

struct JobFilter {
    std::string words;             ///< each has to begin a word; empty: all
    std::vector<JobState> states;  ///< empty: all
    bool without_invented = false;
    std::string due_until;        ///< ISO 8601 date: a service falls due by then; empty: whatever falls due
    std::string changed_until;    ///< ISO 8601 date: not changed after it; empty: whenever
    std::vector<NextStep> steps;  ///< what is to be done next; empty: whatever
    std::string today;            ///< ISO 8601 date: decides which services are due; needed with `steps`
    std::string item_id;          ///< of the catalogue: it stands there (core/store/fitted_parts.h); empty: whatever
    JobOrder order = JobOrder::newest;
    bool backwards = false;
    friend bool operator==(const JobFilter&, const JobFilter&) = default;
};

/// A filter under a name. Days are kept as numbers of days from today: a view is for any day.
struct JobView {
    std::string name;
    std::vector<JobState> states;
    bool without_invented = false;
    int due_within_days = -1;  ///< -1: whatever falls due
    int quiet_for_days = -1;   ///< not changed for so long; -1: whenever
    std::vector<NextStep> steps;
    std::string item_id;
    JobOrder order = JobOrder::newest;
    bool backwards = false;
    friend bool operator==(const JobView&, const JobView&) = default;
};

[[nodiscard]] JobFilter filter_of(const JobView& view, const std::string& words, CivilDate today);

class JobList {
   public:
    /// The store must outlive it.
    explicit JobList(Store& store) : store_(store), database_(store.database()) {}

    [[nodiscard]] Result<std::vector<JobRow>> page(const JobFilter& filter, int limit, int offset) const;
    /// What is to be done next on these jobs, in their order; nothing for one that is not there.
    [[nodiscard]] Result<std::vector<NextStepOfJob>> next_steps(const std::vector<JobRow>& rows, CivilDate today) const;
    /// `most`: counts no further; one more than it means more. A word that half of all jobs have takes longer to count
    /// to its end than to be typed on.
    [[nodiscard]] Result<int> count(const JobFilter& filter, int most = 2'000'000'000) const;

    /// In the order of their names. A text that is no list of views is refused and stays.
    [[nodiscard]] Result<std::vector<JobView>> views() const;
    /// In place of the one of the same name. Refused: an empty name, or more than 50 views.
    [[nodiscard]] Result<bool> keep_view(const JobView& view);
    /// Refused where the views cannot be read.
    [[nodiscard]] Result<bool> drop_view(const std::string& name);
    /// Also those that cannot be read.
    [[nodiscard]] Result<bool> drop_all_views();

   private:
    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
