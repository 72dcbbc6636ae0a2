#include "core/store/job_history.h"

#include <QVariant>

#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {

Result<std::vector<JobRevision>> JobHistory::revisions(const std::string& job_id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT revision, changed_at, changed_by FROM job_revision WHERE job_id = ? ORDER BY revision DESC",
        {to_qt(job_id)});
    if (!found) return found.problems();
    std::vector<JobRevision> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        out.push_back(
            {row.value(0).toLongLong(), row.value(1).toString().toStdString(), row.value(2).toString().toStdString()});
    }
    if (out.empty()) return Problem{"job " + for_message(job_id), "is not in the store", "Read the list again"};
    return out;
}

Result<std::vector<merge::Change>> JobHistory::changes(const std::string& job_id, std::int64_t revision) const {
    const Result<Job> after = store_.load_revision(job_id, revision);
    if (!after) return after.problems();
    // Revisions are numbered without a gap but where data were erased.
    const Result<QVariant> earlier =
        database_.value("SELECT max(revision) FROM job_revision WHERE job_id = ? AND revision < ?",
                        {to_qt(job_id), QVariant::fromValue(static_cast<qlonglong>(revision))});
    if (!earlier) return earlier.problems();
    if (earlier.value().isNull()) return std::vector<merge::Change>();
    const Result<Job> before = store_.load_revision(job_id, earlier.value().toLongLong());
    if (!before) return before.problems();
    // Put together with what came after it, the earlier one takes over exactly what changed.
    Result<merge::Merged> merged =
        merge::join_from_base(before.value(), before.value(), "Before", after.value(), "After");
    if (!merged) return merged.problems();
    return std::move(merged.value().taken);
}

}  // namespace wg::store
