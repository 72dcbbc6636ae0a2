#include "core/store/sql_store.h"
#include "core/store/text.h"

#include <QVariant>

#include "core/job/codec.h"
#include "core/job/words.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/backup.h"
#include "core/store/copy.h"
#include "core/store/fitted_parts.h"
#include "core/store/quote_book.h"
#include "core/store/state_days.h"
#include "core/store/versions_kept.h"

namespace wg::store {
namespace {

QVariant number(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

// 2027-06-21 12:07 UTC, of the instant as it is stored.
std::string readable(const std::string& changed_at) {
    if (changed_at.size() < 16) return for_message(changed_at);
    return changed_at.substr(0, 10) + ' ' + changed_at.substr(11, 5) + " UTC";
}

std::string named(const Job& job) {
    const std::string& name = job.number.empty() ? job.title : job.number;
    return name.empty() ? "the job" : "job " + for_message(name);
}

}  // namespace

Problem SqlStore::unknown_job(const std::string& job_id) const {
    return {database_->name(), "there is no job with the id '" + for_message(job_id) + "'", "Read the list again"};
}

Result<std::optional<SqlStore::Head>> SqlStore::head(const std::string& job_id) const {
    Result<QSqlQuery> found = database_->query(
        "SELECT revision, save_seq, changed_at, content_sha256, base_sha256, base_revision, removed_at, state "
        "FROM job WHERE id = ?",
        {to_qt(job_id)});
    if (!found) return found.problems();
    QSqlQuery& row = found.value();
    if (!row.next()) return std::optional<Head>();
    Head head;
    head.revision = row.value(0).toLongLong();
    head.save_seq = row.value(1).toLongLong();
    head.changed_at = row.value(2).toString().toStdString();
    head.content_sha256 = row.value(3).toString().toStdString();
    head.base_sha256 = row.value(4).toString().toStdString();
    head.base_revision = row.value(5).toLongLong();
    head.removed_at = row.value(6).toString().toStdString();
    head.state = row.value(7).toString().toStdString();
    return std::optional<Head>(head);
}

Result<std::int64_t> SqlStore::next_save_seq() const {
    const Result<QVariant> last = database_->value("SELECT max(save_seq) FROM job");
    if (!last) return last.problems();
    return std::int64_t{last.value().toLongLong() + 1};
}

std::optional<Problem> SqlStore::refuse_save(const Job& job, const std::optional<Head>& stored) const {
    if (stored && !stored->removed_at.empty()) {
        return Problem{named(job), "was removed at " + stored->removed_at, "Restore it first"};
    }
    if (stored && stored->revision != job.revision) {
        const Result<QVariant> by =
            database_->value("SELECT changed_by FROM job_revision WHERE job_id = ? AND revision = ?",
                             {to_qt(job.id), number(stored->revision)});
        if (!by) return by.problems().front();
        const std::string who = for_message(by.value().toString().toStdString());
        return Problem{named(job),
                       "was read at revision " + std::to_string(job.revision) + ", but revision " +
                           std::to_string(stored->revision) + " was saved " + (who.empty() ? "" : "by " + who + " ") +
                           "at " + readable(stored->changed_at),
                       "Read it again and bring your changes over"};
    }
    if (job.number.empty()) return std::nullopt;
    // The condition on '' lets SQLite use the index, which holds the numbers that are not empty.
    Result<QSqlQuery> other =
        database_->query("SELECT title, client FROM job WHERE number = ? AND number <> '' AND id <> ?",
                         {to_qt(job.number), to_qt(job.id)});
    if (!other) return other.problems().front();
    if (!other.value().next()) return std::nullopt;
    const std::string title = other.value().value(0).toString().toStdString();
    const std::string client = other.value().value(1).toString().toStdString();
    return Problem{named(job), "the number is taken by '" + for_message(title) + "' for '" + for_message(client) + "'",
                   "Give the job another number"};
}

Result<Job> SqlStore::save(const Job& job, Instant now) {
    if (std::vector<Problem> problems = validate(job); !problems.empty()) return problems;
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<Head>> found = head(job.id);
    if (!found) return found.problems();
    const std::optional<Head>& stored = found.value();
    const bool same = stored && stored->content_sha256 == content_sha256(job) &&
                      stored->base_sha256 == job.base_sha256 && stored->base_revision == job.base_revision;
    if (same && stored->removed_at.empty() && stored->revision == job.revision + 1) {
        // The save that follows this copy says the same: its answer was lost with the connection, say.
        if (auto problem = drop_unsaved(job.id)) return *problem;
        if (auto problem = transaction.commit()) return *problem;
        return load(job.id);
    }
    if (auto problem = refuse_save(job, stored)) return *problem;

    Job next = job;
    if (same) {
        next.changed_at = stored->changed_at;
        if (auto problem = drop_unsaved(job.id)) return *problem;
        if (auto problem = transaction.commit()) return *problem;
        return next;
    }
    next.revision = job.revision + 1;
    next.changed_at = iso8601(now);
    if (next.created_at.empty()) next.created_at = next.changed_at;
    const Result<merge::Versions> versions = versions_after(next, stored, now);
    if (!versions) return versions.problems();
    if (auto problem = put(next, stored, versions.value())) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return next;
}

std::optional<Problem> SqlStore::put(const Job& next, const std::optional<Head>& stored,
                                     const merge::Versions& versions) const {
    const std::string json = job_to_json(next);
    // What is stored can be read again, or it is not stored.
    if (const Result<Job> again = job_from_json(json, named(next)); !again) return again.problems().front();
    const Result<std::int64_t> save_seq = next_save_seq();
    if (!save_seq) return save_seq.problems().front();
    if (stored && stored->removed_at.empty()) {
        if (auto problem = unindex(stored->save_seq)) return problem;
    }
    if (auto problem = write(next, json, save_seq.value())) return problem;
    if (!stored || stored->state != key_of(next.state)) {
        StateDay day = state_day_of(next, versions, by_);
        if (stored) day.from = stored->state;
        if (auto problem = write_state_day(*database_, next.id, day)) return problem;
    }
    if (auto problem = write_fitted_parts(*database_, next)) return problem;
    if (auto problem = index(next, save_seq.value())) return problem;
    if (auto problem = drop_unsaved(next.id)) return problem;
    return write_versions(*database_, next.revision, versions);
}

Result<merge::Versions> SqlStore::versions_of_stored(const std::string& job_id, std::int64_t revision) {
    const Result<std::optional<KeptVersions>> kept = read_versions(*database_, job_id);
    if (kept && kept.value() && kept.value()->revision == revision) return kept.value()->versions;
    const Result<Job> job = load(job_id);
    if (!job) return job.problems();
    // Saved in between by a program that keeps no versions; or never by one that does, or they are damaged, which
    // `check` tells.
    if (kept && kept.value()) return merge::of_copy(kept.value()->versions, job.value(), "An older program");
    return merge::begin(job.value());
}

Result<merge::Versions> SqlStore::versions_after(const Job& next, const std::optional<Head>& stored, Instant now) {
    if (!stored) return merge::begin(next);
    const Result<merge::Versions> before = versions_of_stored(next.id, stored->revision);
    if (!before) return before.problems();
    const Result<merge::Seat> seat = seat_of(*database_, by_);
    if (!seat) return seat.problems();
    return merge::edited(before.value(), next, seat.value(), now);
}

std::optional<Problem> SqlStore::write(const Job& job, const std::string& json, std::int64_t save_seq) const {
    std::optional<Problem> problem = database_->run(
        "INSERT INTO job (id, save_seq, number, title, client, town, state, invented, revision, changed_at, "
        "content_sha256, base_sha256, base_revision) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (id) DO UPDATE SET save_seq = excluded.save_seq, number = excluded.number, "
        "title = excluded.title, client = excluded.client, town = excluded.town, state = excluded.state, "
        "invented = excluded.invented, revision = excluded.revision, changed_at = excluded.changed_at, "
        "content_sha256 = excluded.content_sha256, base_sha256 = excluded.base_sha256, "
        "base_revision = excluded.base_revision",
        {to_qt(job.id), number(save_seq), to_qt(job.number), to_qt(job.title), to_qt(job.client.name),
         to_qt(job.client.town), QString(key_of(job.state)), job.invented ? 1 : 0, number(job.revision),
         to_qt(job.changed_at), to_qt(content_sha256(job)), to_qt(job.base_sha256), number(job.base_revision)});
    if (problem) return problem;
    return database_->run(
        "INSERT INTO job_revision (job_id, revision, changed_at, content, text_sha256, changed_by) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        {to_qt(job.id), number(job.revision), to_qt(job.changed_at), to_qt(json), to_qt(sha256_hex(json)), to_qt(by_)});
}

Result<Job> SqlStore::read_job(Result<QSqlQuery> found, const std::string& what) const {
    if (!found) return found.problems();
    QSqlQuery& row = found.value();
    if (!row.next()) return Problem{database_->name(), what + " is not in the database", "Read the list again"};
    const std::string json = row.value(0).toString().toStdString();
    if (sha256_hex(json) != row.value(1).toString().toStdString()) {
        return Problem{database_->name(), what + " is damaged: its text no longer has the hash it was stored with",
                       "Take an earlier revision, or go back to the last backup"};
    }
    return job_from_json(json, what);
}

Result<Job> SqlStore::load(const std::string& job_id) {
    return read_job(database_->query("SELECT r.content, r.text_sha256 FROM job j JOIN job_revision r "
                                     "ON r.job_id = j.id AND r.revision = j.revision WHERE j.id = ?",
                                     {to_qt(job_id)}),
                    "job " + for_message(job_id));
}

Result<Job> SqlStore::load_revision(const std::string& job_id, std::int64_t revision) {
    return read_job(database_->query("SELECT content, text_sha256 FROM job_revision WHERE job_id = ? AND revision = ?",
                                     {to_qt(job_id), number(revision)}),
                    "revision " + std::to_string(revision) + " of job " + for_message(job_id));
}

Result<std::vector<std::pair<std::int64_t, std::string>>> SqlStore::history(const std::string& job_id) {
    Result<QSqlQuery> found = database_->query(
        "SELECT revision, changed_at FROM job_revision WHERE job_id = ? ORDER BY revision DESC", {to_qt(job_id)});
    if (!found) return found.problems();
    std::vector<std::pair<std::int64_t, std::string>> out;
    while (found.value().next()) {
        out.emplace_back(found.value().value(0).toLongLong(), found.value().value(1).toString().toStdString());
    }
    if (out.empty()) return unknown_job(job_id);
    return out;
}

Result<bool> SqlStore::remove(const std::string& job_id, Instant now) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<Head>> found = head(job_id);
    if (!found) return found.problems();
    if (!found.value()) return unknown_job(job_id);
    if (!found.value()->removed_at.empty()) return true;
    if (auto problem = unindex(found.value()->save_seq)) return *problem;
    if (auto problem =
            database_->run("UPDATE job SET removed_at = ? WHERE id = ?", {to_qt(iso8601(now)), to_qt(job_id)})) {
        return *problem;
    }
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<bool> SqlStore::restore(const std::string& job_id) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<Head>> found = head(job_id);
    if (!found) return found.problems();
    if (!found.value()) return unknown_job(job_id);
    if (found.value()->removed_at.empty()) return true;
    const Result<Job> job = load(job_id);
    if (!job) return job.problems();
    if (auto problem = index(job.value(), found.value()->save_seq)) return *problem;
    if (auto problem = database_->run("UPDATE job SET removed_at = NULL WHERE id = ?", {to_qt(job_id)}))
        return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<std::string> SqlStore::setting(const std::string& key, const std::string& fallback) {
    const Result<QVariant> found = database_->value("SELECT value FROM setting WHERE key = ?", {to_qt(key)});
    if (!found) return found.problems();
    return found.value().isValid() ? found.value().toString().toStdString() : fallback;
}

Result<bool> SqlStore::set_setting(const std::string& key, const std::string& value) {
    if (key.empty() || !is_utf8(key) || !is_utf8(value)) {
        return Problem{"setting '" + for_message(key) + "'", "is not text", "Enter it again"};
    }
    const std::optional<Problem> problem = database_->run(
        "INSERT INTO setting (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value",
        {to_qt(key), to_qt(value)});
    if (problem) return *problem;
    return true;
}

Result<bool> SqlStore::backup(const std::string& to_path) {
    const Result<std::string> whole = check();
    if (!whole) return whole.problems();
    if (whole.value() != "ok") {
        return Problem{database_->name(), "is damaged and was not copied: " + whole.value(),
                       "Go back to the last backup"};
    }
    if (auto problem = write_backup(*database_, to_qt(to_path))) return *problem;
    return true;
}

Result<bool> SqlStore::copy_to(Store& other) {
    auto* target = dynamic_cast<SqlStore*>(&other);
    if (target == nullptr) return Store::copy_to(other);
    if (auto problem = copy_everything(*database_, *target->database_)) return *problem;
    return true;
}

int SqlStore::schema_version() const {
    const Result<QVariant> version = database_->value(database_->words().version);
    return version ? version.value().toInt() : 0;
}

}  // namespace wg::store
