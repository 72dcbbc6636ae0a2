#include "ui/comparison/choice_plans.h"

#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {
namespace {

/// What plan() reads of the job besides the choice itself.
bool same_ground(const Job& a, const Job& b) {
    return a.site == b.site && a.demand == b.demand && a.weather == b.weather && a.rule_set == b.rule_set &&
           a.price_list == b.price_list && a.offer == b.offer && a.survey == b.survey && a.invented == b.invented;
}

bool same_but_name(Choice a, const Choice& b) {
    a.label = b.label;
    return a == b;
}

bool holds(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

}  // namespace

ChoicePlans& ChoicePlans::of(JobSession& session) {
    if (auto* there = session.findChild<ChoicePlans*>(QString(), Qt::FindDirectChildrenOnly)) return *there;
    return *new ChoicePlans(session);
}

ChoicePlans::ChoicePlans(JobSession& session) : QObject(&session), session_(session) {
    pool_.setMaxThreadCount(1);
    // As the full plans of the session: the first figures of an edit go before.
    pool_.setThreadPriority(QThread::LowPriority);
    connect(&watcher_, &QFutureWatcher<Made>::finished, this, &ChoicePlans::take);
    for (const auto signal : {&JobSession::job_changed, &JobSession::plan_changed, &JobSession::planning_changed,
                              &JobSession::choice_changed})
        connect(&session, signal, this, &ChoicePlans::look);
    look();
}

ChoicePlans::~ChoicePlans() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();  // one year of operation with its range
}

bool ChoicePlans::current(const Made& made) const {
    const Choice* then = find_choice(*made.job, made.plan.choice_id);
    const Choice* now = find_choice(session_.job(), made.plan.choice_id);
    return then != nullptr && now != nullptr && made.weather == session_.reference().weather &&
           same_ground(*made.job, session_.job()) && same_but_name(*then, *now);
}

const ChoicePlan* ChoicePlans::plan_of(const std::string& choice_id) const {
    const auto found = made_.find(choice_id);
    return found != made_.end() && current(found->second) ? &found->second.plan : nullptr;
}

void ChoicePlans::want(const QObject* who, const std::vector<std::string>& choice_ids) {
    const auto found = wanted_.find(who);
    if (choice_ids.empty()) {
        if (found != wanted_.end()) wanted_.erase(found);
        return;
    }
    // Asking again for what was stopped stays stopped; looking anew does not.
    if (found != wanted_.end() && found->second == choice_ids) return;
    if (found == wanted_.end())
        connect(who, &QObject::destroyed, this, [this](const QObject* gone) { wanted_.erase(gone); });
    wanted_[who] = choice_ids;
    stopped_ = false;
    plan_next();
}

void ChoicePlans::stop() {
    stopped_ = true;
    Q_EMIT changed();
}

void ChoicePlans::look() {
    follow_choices();
    // The choice on screen is planned already.
    if (const auto shown = session_.plan(); shown != nullptr && session_.settled()) {
        made_[shown->choice_id] = Made{ChoicePlan{shown->choice_id, shown, QString()},
                                       std::make_shared<const Job>(session_.job()), session_.reference().weather};
    }
    plan_next();
    Q_EMIT changed();
}

void ChoicePlans::plan_next() {
    if (watcher_.isRunning() || stopped_ || session_.planning()) return;
    for (const auto& [who, ids] : wanted_) {
        for (const std::string& id : ids) {
            if (plan_of(id) != nullptr || find_choice(session_.job(), id) == nullptr) continue;
            auto job = std::make_shared<const Job>(session_.job());
            auto reference = session_.shared_reference();
            watcher_.setFuture(QtConcurrent::run(&pool_, [job, reference, id] {
                Made made;
                made.job = job;
                made.weather = reference->weather;
                made.plan.choice_id = id;
                plan::Options options;
                options.choice_id = id;
                options.keep_hours = false;
                auto planned = plan::plan(*job, *reference, options);
                if (planned.ok()) {
                    made.plan.plan = std::make_shared<const plan::Plan>(std::move(planned).value());
                } else {
                    made.plan.problem = qs(text_of(planned.problems()));
                }
                return made;
            }));
            return;
        }
    }
}

void ChoicePlans::take() {
    Made made = watcher_.result();
    // One that an edit has overtaken is no answer any more.
    if (current(made)) made_[made.plan.choice_id] = std::move(made);
    plan_next();
    Q_EMIT changed();
}

void ChoicePlans::follow_choices() {
    const Job& job = session_.job();
    const Choice* chosen = chosen_choice(job);
    const Choice* shown = session_.current_choice();
    picked_.erase(std::remove_if(picked_.begin(), picked_.end(),
                                 [&](const std::string& id) { return find_choice(job, id) == nullptr; }),
                  picked_.end());
    for (auto made = made_.begin(); made != made_.end();)
        made = find_choice(job, made->first) == nullptr ? made_.erase(made) : std::next(made);
    const auto join = [&](const Choice& choice) {
        if (!seen_.insert(choice.id).second) return;
        if (picked_.size() < most_compared) picked_.push_back(choice.id);
    };
    if (chosen != nullptr) join(*chosen);
    if (shown != nullptr) join(*shown);
    for (const Choice& choice : job.choices)
        join(choice);
}

std::vector<std::string> ChoicePlans::compared() const {
    std::vector<std::string> ids;
    for (const Choice& choice : session_.job().choices) {
        if (holds(picked_, choice.id)) ids.push_back(choice.id);
    }
    return ids;
}

bool ChoicePlans::set_compared(const std::string& choice_id, bool on) {
    if (holds(picked_, choice_id) == on) return true;
    if (on && picked_.size() >= most_compared) return false;
    if (on) {
        picked_.push_back(choice_id);
    } else {
        picked_.erase(std::find(picked_.begin(), picked_.end(), choice_id));
    }
    stopped_ = false;
    Q_EMIT changed();
    return true;
}

}  // namespace wg::ui
