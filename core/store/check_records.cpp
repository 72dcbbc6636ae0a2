#include "core/store/check_records.h"

#include <QVariant>
#include <map>

#include "core/job/words.h"
#include "core/quantity/utf8.h"
#include "core/store/job_steps.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr int jobs_held_at_once = 500;
constexpr std::size_t most_named = 20;

struct JobHeld {
    std::string number;
    std::string state;
    KeptStep kept;
};

// Whether the kept row says what the rules say, on a day before every service and on one after all.
bool agrees(const JobHeld& job, const JobStanding& standing) {
    for (const char* day : {"0000-01-01", "9999-12-31"}) {
        if (next_step_of(job.kept, day) != next_step(standing, day)) return false;
    }
    return true;
}

std::string name_of_job(const std::string& number, const std::string& id) {
    return "job " + for_message(number.empty() ? id : number);
}

// The next jobs after `last`, by id.
Result<std::map<std::string, JobHeld>> jobs_after(const Database& database, const std::string& last) {
    Result<QSqlQuery> found = database.query(
        "SELECT id, number, state, next_step, next_since, service_due_on FROM job WHERE id > ? ORDER BY id LIMIT ?",
        {to_qt(last), jobs_held_at_once});
    if (!found) return found.problems();
    std::map<std::string, JobHeld> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out[at(0)] = {at(1), at(2), {at(3), at(4), at(5)}};
    }
    return out;
}

std::optional<Problem> hold_next_steps(const Database& database, std::vector<std::string>& out) {
    std::size_t named = 0;
    for (std::string last; named < most_named;) {
        const Result<std::map<std::string, JobHeld>> jobs = jobs_after(database, last);
        if (!jobs) return jobs.problems().front();
        if (jobs.value().empty()) return std::nullopt;
        QVariantList ids;
        for (const auto& [id, job] : jobs.value())
            ids << to_qt(id);
        Result<std::map<std::string, JobStanding>> standings = standings_of(database, ids);
        if (!standings) return standings.problems().front();
        for (const auto& [id, job] : jobs.value()) {
            const auto state = from_key<JobState>(job.state);
            if (!state) continue;  // which the list tells
            JobStanding& standing = standings.value()[id];
            standing.state = *state;
            if (agrees(job, standing) || ++named > most_named) continue;
            out.push_back("what is to be done next on ");
            out.back().append(name_of_job(job.number, id)).append(" is not what its state, quotes and services say");
        }
        last = jobs.value().rbegin()->first;
    }
    return std::nullopt;
}

std::optional<Problem> hold_state_days(const Database& database, std::vector<std::string>& out) {
    Result<QSqlQuery> found = database.query(
        "SELECT j.number, j.id FROM job j WHERE coalesce((SELECT d.to_state FROM job_state_day d "
        "WHERE d.job_id = j.id ORDER BY d.revision DESC LIMIT 1), '') <> j.state ORDER BY j.id LIMIT ?",
        {static_cast<int>(most_named)});
    if (!found) return found.problems().front();
    while (found.value().next()) {
        out.push_back("the days of states of ");
        out.back()
            .append(name_of_job(found.value().value(0).toString().toStdString(),
                                found.value().value(1).toString().toStdString()))
            .append(" do not end with the state it has");
    }
    return std::nullopt;
}

std::optional<Problem> hold_heat(const Database& database, std::vector<std::string>& out) {
    Result<QSqlQuery> found = database.query(database.words().other_heat, {static_cast<int>(most_named)});
    if (!found) return found.problems().front();
    while (found.value().next()) {
        out.push_back("the heat kept of quote ");
        out.back()
            .append(for_message(found.value().value(0).toString().toStdString()))
            .append(" is not that of its plan");
    }
    return std::nullopt;
}

}  // namespace

Result<std::vector<std::string>> disagreeing_records(const Database& database) {
    std::vector<std::string> out;
    for (const auto hold : {hold_state_days, hold_next_steps, hold_heat}) {
        if (auto problem = hold(database, out)) return *problem;
    }
    return out;
}

}  // namespace wg::store
