#include "core/store/state_days.h"

#include <QVariant>

#include "core/job/words.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {

Result<std::vector<StateDay>> StateDays::of(const std::string& job_id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT revision, from_state, to_state, at, by_whom FROM job_state_day WHERE job_id = ? ORDER BY revision",
        {to_qt(job_id)});
    if (!found) return found.problems();
    std::vector<StateDay> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({found.value().value(0).toLongLong(), at(1), at(2), at(3), at(4)});
    }
    return out;
}

StateDay state_day_of(const Job& job, const merge::Versions& versions, const std::string& by) {
    StateDay out{job.revision, {}, key_of(job.state), job.changed_at, by};
    const auto field = versions.fields.find("state");
    if (field == versions.fields.end()) return out;
    const std::string json = '"' + out.to + '"';
    const Result<Instant> changed = instant_from_iso8601(job.changed_at);
    const merge::Value* found = nullptr;
    for (const merge::Value& value : field->second) {
        // A job's first versions name no machine: they are the same wherever they were begun.
        const bool named = value.seat < versions.seats.size() && !versions.seats[value.seat].seat.name.empty();
        const bool told = value.at.unix_s > 0 && changed && value.at.unix_s <= changed.value().unix_s;
        if (named && told && value.json == json && (found == nullptr || value.at.unix_s > found->at.unix_s))
            found = &value;
    }
    if (found == nullptr) return out;
    out.at = iso8601(found->at);
    out.by = versions.seats[found->seat].seat.name;
    return out;
}

std::optional<Problem> write_state_day(const Database& database, const std::string& job_id, const StateDay& day) {
    return database.run(
        "INSERT INTO job_state_day (job_id, revision, from_state, to_state, at, by_whom) VALUES (?, ?, ?, ?, ?, ?)",
        {to_qt(job_id), QVariant::fromValue(static_cast<qlonglong>(day.revision)), to_qt(day.from), to_qt(day.to),
         to_qt(day.at), to_qt(day.by)});
}

}  // namespace wg::store
