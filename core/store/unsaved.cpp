// Edits of the open job, kept between saves so that a crash costs less than a second of work.

#include <QVariant>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {

Result<bool> SqlStore::keep_unsaved(const Job& job, Instant now) {
    const std::string json = job_to_json(job);
    // A job that is not there, or has been saved on since, is none of ours to write for.
    if (auto problem = database_->run(
            QStringLiteral(
                "INSERT INTO unsaved (job_id, revision, kept_at, content, text_sha256) "
                "SELECT id, ?, ?, ?, ? FROM job WHERE id = ? AND revision = ? AND removed_at IS NULL "
                "ON CONFLICT (job_id) DO UPDATE SET revision = excluded.revision, "
                "kept_at = excluded.kept_at, content = excluded.content, text_sha256 = excluded.text_sha256"),
            {QVariant::fromValue(static_cast<qlonglong>(job.revision)), to_qt(iso8601(now)), to_qt(json),
             to_qt(sha256_hex(json)), to_qt(job.id), QVariant::fromValue(static_cast<qlonglong>(job.revision))}))
        return *problem;
    const Result<QVariant> kept =
        database_->value(QStringLiteral("SELECT 1 FROM unsaved WHERE job_id = ? AND revision = ?"),
                         {to_qt(job.id), QVariant::fromValue(static_cast<qlonglong>(job.revision))});
    if (!kept) return kept.problems();
    if (kept.value().isValid()) return true;
    const Result<std::optional<Head>> stored = head(job.id);
    if (!stored) return stored.problems();
    if (!stored.value()) return unknown_job(job.id);
    return false;
}

Result<std::optional<Unsaved>> SqlStore::unsaved(const std::string& job_id) {
    Result<QSqlQuery> found =
        database_->query(QStringLiteral("SELECT u.content, u.text_sha256, u.kept_at FROM unsaved u "
                                        "JOIN job j ON j.id = u.job_id AND j.revision = u.revision WHERE u.job_id = ?"),
                         {to_qt(job_id)});
    if (!found) return found.problems();
    if (!found.value().next()) return std::optional<Unsaved>();
    const std::string json = found.value().value(0).toString().toStdString();
    const std::string what = "what was not saved of job " + for_message(job_id);
    if (sha256_hex(json) != found.value().value(1).toString().toStdString())
        return Problem{database_->name(), what + " is damaged: its text no longer has its hash",
                       "Go on with the job as it was saved"};
    const Result<Job> job = job_from_json(json, what);
    if (!job) return job.problems();
    const Result<Job> saved = load(job_id);
    if (!saved) return saved.problems();
    if (content_sha256(saved.value()) == content_sha256(job.value())) return std::optional<Unsaved>();
    return std::optional<Unsaved>(Unsaved{job.value(), found.value().value(2).toString().toStdString()});
}

std::optional<Problem> SqlStore::drop_unsaved(const std::string& job_id) const {
    return database_->run(QStringLiteral("DELETE FROM unsaved WHERE job_id = ?"), {to_qt(job_id)});
}

Result<bool> SqlStore::forget_unsaved(const std::string& job_id) {
    if (auto problem = drop_unsaved(job_id)) return *problem;
    return true;
}

}  // namespace wg::store
