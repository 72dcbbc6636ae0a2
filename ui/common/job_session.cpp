#include "ui/common/job_session.h"

#include <algorithm>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/snapshot_command.h"

namespace wg::ui {
namespace {

/// Members that saving and exporting set; they are no part of what the user edits.
void copy_bookkeeping(const Job& from, Job& to) {
    to.revision = from.revision;
    to.changed_at = from.changed_at;
    to.base_sha256 = from.base_sha256;
    to.base_revision = from.base_revision;
}

/// The record only grows, by append(); edits, undo and redo go past it.
void keep_record(const Job& from, Job& to) {
    to.record = from.record;
}

/// The quick plan with the yearly figures of an earlier full plan, so that screens need not go blank.
plan::Plan with_yield_of(plan::Plan quick, const plan::Plan& full) {
    quick.season = full.season;
    quick.standstill = full.standstill;
    quick.warm_up_good = full.warm_up_good;
    quick.warm_up_fair = full.warm_up_fair;
    quick.warm_up_poor = full.warm_up_poor;
    quick.range_method = full.range_method;
    quick.weather_spread = full.weather_spread;
    quick.economy = full.economy;
    quick.figures.heat_kwh = full.figures.heat_kwh;
    quick.figures.electricity_kwh = full.figures.electricity_kwh;
    quick.figures.seasonal_factor = full.figures.seasonal_factor;
    quick.figures.running_cost_minor = full.figures.running_cost_minor;
    // The quick pass has neither workings nor findings of the year; without the old ones lists would flicker.
    for (const Working& working : full.workings) {
        const auto same_key = [&working](const Working& w) { return w.key == working.key; };
        if (std::none_of(quick.workings.begin(), quick.workings.end(), same_key)) quick.workings.push_back(working);
    }
    for (const Finding& finding : full.findings) {
        const auto same_code = [&finding](const Finding& f) { return f.code == finding.code; };
        const bool carried =
            finding.stage == Stage::yield && std::none_of(quick.findings.begin(), quick.findings.end(), same_code);
        if (carried) quick.findings.push_back(finding);
    }
    sort_findings(quick.findings);
    return quick;
}

constexpr int whole_steps = 100;  ///< kept unpacked, counted back from the last

}  // namespace

JobSession::JobSession(Job job, std::shared_ptr<const plan::Reference> reference, QObject* parent)
    : JobSession(std::move(job), std::move(reference), &plan::plan, parent) {}

JobSession::JobSession(Job job, std::shared_ptr<const plan::Reference> reference, PlanFunction plan_function,
                       QObject* parent)
    : QObject(parent), job_(std::move(job)), saved_job_(job_), reference_(std::move(reference)) {
    references_.push_back(reference_);
    planner_ = std::make_unique<Planner>(reference_, job_.weather, std::move(plan_function));
    connect(planner_.get(), &Planner::quick_ready, this, &JobSession::take_quick);
    connect(planner_.get(), &Planner::full_ready, this, &JobSession::take_full);
    connect(planner_.get(), &Planner::busy_changed, this, &JobSession::planning_changed);
    if (const Choice* chosen = chosen_choice(job_)) current_choice_id_ = chosen->id;
    replan();
}

JobSession::~JobSession() {
    // The stack tells views about its end; nobody should hear of half a session.
    blockSignals(true);
    planner_.reset();
}

bool JobSession::planning() const {
    return planner_ != nullptr && planner_->busy();
}

void JobSession::offer_weather(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather) {
    planner_->offer_weather(weather_id, std::move(weather));
}

const Choice* JobSession::current_choice() const {
    if (const Choice* current = find_choice(job_, current_choice_id_)) return current;
    return chosen_choice(job_);
}

void JobSession::set_current_choice(const std::string& choice_id) {
    if (choice_id == current_choice_id_ || find_choice(job_, choice_id) == nullptr) return;
    current_choice_id_ = choice_id;
    end_merge();
    // Figures of another choice are no 'before' to compare with, and must not be carried over.
    plan_.reset();
    full_plan_.reset();
    earlier_plan_.reset();
    yield_carried_ = false;
    replan();
    Q_EMIT choice_changed();
    Q_EMIT plan_changed();
}

void JobSession::edit(const QString& what, const std::function<void(Job&)>& change, const QString& merge_key) {
    Job changed = job_;
    change(changed);
    copy_bookkeeping(job_, changed);
    keep_record(job_, changed);
    if (changed == job_) return;
    // Only this class pushes, and only commands of this kind.
    const auto* last = static_cast<const SnapshotCommand*>(undo_.command(undo_.index() - 1));
    continues_step_ = last != nullptr && last->takes_in(merge_key, merge_generation_);
    // What the last step led to is what this one starts from: one copy serves both.
    std::shared_ptr<JobSnapshot> before;
    if (last != nullptr && last->after()->whole() != nullptr) {
        Job reached = *last->after()->whole();
        copy_bookkeeping(job_, reached);
        keep_record(job_, reached);
        if (reached == job_) before = last->after();
    }
    if (before == nullptr) before = std::make_shared<JobSnapshot>(job_);
    undo_.push(new SnapshotCommand(*this, what, std::move(before), std::make_shared<JobSnapshot>(std::move(changed)),
                                   merge_key, merge_generation_));
    if (undo_.index() > whole_steps) {
        auto* old = const_cast<QUndoCommand*>(undo_.command(undo_.index() - 1 - whole_steps));
        static_cast<SnapshotCommand*>(old)->pack();
    }
    continues_step_ = false;
}

std::string JobSession::append(Reading entry) {
    entry.id = new_id();
    entry.plan_revision = job_.revision;
    entry.plan_mark = plan_mark(job_);
    std::string id = entry.id;
    take_entries({chained(std::move(entry), job_.record)});
    return id;
}

void JobSession::bring_back(const Job& kept, const QString& what) {
    std::vector<Reading> missing;
    for (const Reading& entry : kept.record) {
        const auto same = [&entry](const Reading& r) { return r.id == entry.id; };
        if (std::none_of(job_.record.begin(), job_.record.end(), same)) missing.push_back(entry);
    }
    if (!missing.empty()) take_entries(std::move(missing));
    edit(what, [&kept](Job& job) { job = kept; });
}

void JobSession::take_entries(std::vector<Reading> entries) {
    end_merge();
    for (Reading& entry : entries)
        job_.record.push_back(std::move(entry));
    replan();
    Q_EMIT job_changed();
    Q_EMIT saved_changed();
}

void JobSession::end_merge() {
    ++merge_generation_;
}

void JobSession::mark_saved(const Job& stored) {
    copy_bookkeeping(stored, job_);
    saved_job_ = stored;
    Q_EMIT saved_changed();
}

bool JobSession::dirty() const {
    Job saved = saved_job_;
    copy_bookkeeping(job_, saved);
    return saved != job_;
}

void JobSession::replace_job(const Job& job) {
    Job next = job;
    // Undo brings back what the user had, not the revision: the store would take that for somebody else's save.
    copy_bookkeeping(job_, next);
    keep_record(job_, next);
    job_ = std::move(next);
    remember_earlier_plan();
    const std::string shown = current_choice_id_;
    if (find_choice(job_, current_choice_id_) == nullptr) {
        const Choice* chosen = chosen_choice(job_);
        current_choice_id_ = chosen != nullptr ? chosen->id : std::string();
    }
    const bool other_choice = shown != current_choice_id_;
    if (other_choice) {
        plan_.reset();
        full_plan_.reset();
        earlier_plan_.reset();
        yield_carried_ = false;
    }
    replan();
    Q_EMIT job_changed();
    Q_EMIT saved_changed();
    if (other_choice) {
        Q_EMIT choice_changed();
        Q_EMIT plan_changed();
    }
}

void JobSession::remember_earlier_plan() {
    if (continues_step_) return;
    if (plan_ != nullptr && !yield_carried_ && plan_ == full_plan_) earlier_plan_ = plan_;
}

void JobSession::replan() {
    if (job_.choices.empty()) {
        plan_.reset();
        full_plan_.reset();
        yield_carried_ = false;
        shown_ = planner_->newest_order();
        plan_problem_ = tr("There is no choice to plan yet. Add one on the Layout stage.");
        Q_EMIT plan_changed();
        return;
    }
    planner_->order(job_, current_choice_id_);
}

void JobSession::take_quick(const PlanAnswer& answer) {
    // Older than what is shown, or overtaken by its own full plan.
    if (answer.order <= shown_) return;
    if (answer.plan == nullptr) {
        if (answer.order == planner_->newest_order()) take_problem(answer.problems);
        return;
    }
    if (answer.plan->choice_id != current_choice_id_) return;
    shown_ = answer.order;
    plan_problem_.clear();
    const bool carry = full_plan_ != nullptr && full_plan_->has_yield;
    plan_ = carry ? std::make_shared<const plan::Plan>(with_yield_of(*answer.plan, *full_plan_)) : answer.plan;
    yield_carried_ = carry;
    Q_EMIT plan_changed();
}

void JobSession::take_full(const PlanAnswer& answer) {
    if (answer.plan == nullptr) {
        if (answer.order == planner_->newest_order()) take_problem(answer.problems);
        return;
    }
    if (job_.choices.empty() || answer.plan->choice_id != current_choice_id_) return;
    if (answer.reference != nullptr && answer.reference != reference_) {
        reference_ = answer.reference;
        references_.push_back(reference_);
    }
    full_plan_ = answer.plan;
    plan_problem_.clear();
    if (answer.order >= shown_) {
        shown_ = answer.order;
        plan_ = answer.plan;
        // With a newer order under way this plan is complete, but already from before the last edit.
        yield_carried_ = answer.order != planner_->newest_order();
    } else if (plan_ != nullptr && full_plan_->has_yield) {
        // A newer quick plan is on screen: only the carried figures move on, so that a long drag shows them following.
        plan_ = std::make_shared<const plan::Plan>(with_yield_of(*plan_, *full_plan_));
        yield_carried_ = true;
    }
    Q_EMIT plan_changed();
}

void JobSession::take_problem(const std::vector<Problem>& problems) {
    plan_.reset();
    full_plan_.reset();
    yield_carried_ = false;
    shown_ = planner_->newest_order();
    plan_problem_ = qs(text_of(problems));
    Q_EMIT plan_changed();
}

}  // namespace wg::ui
