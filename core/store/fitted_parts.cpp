#include "core/store/fitted_parts.h"

#include <QVariant>
#include <algorithm>

#include "core/job/codec.h"
#include "core/store/database.h"
#include "core/store/search.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr int jobs_read_at_once = 100;

Result<std::vector<FittedRow>> fitted_rows(const Database& database, const QString& rest, const QString& value) {
    Result<QSqlQuery> found = database.query(
        "SELECT j.id, j.number, j.client, f.reading_id, f.part, f.item_id, f.serial, f.fitted_on, f.replaced_on "
        "FROM fitted_part f JOIN job j ON j.id = f.job_id " +
            rest,
        {value});
    if (!found) return found.problems();
    std::vector<FittedRow> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        out.push_back({at(0), at(1), at(2), {at(3), at(4), at(5), at(6), at(7), at(8)}});
    }
    return out;
}

Result<std::vector<FittedPart>> stored_parts(const Database& database, const std::string& job_id) {
    Result<std::vector<FittedRow>> rows =
        fitted_rows(database, QStringLiteral("WHERE f.job_id = ? ORDER BY f.seq"), to_qt(job_id));
    if (!rows) return rows.problems();
    std::vector<FittedPart> out;
    out.reserve(rows.value().size());
    for (FittedRow& row : rows.value())
        out.push_back(std::move(row.part));
    return out;
}

struct ReadJob {
    qlonglong save_seq = 0;
    bool removed = false;
    Job job;
};

// The next jobs after `last` that may have fitted parts; moves `last` on, to nothing at the end.
Result<std::vector<ReadJob>> next_jobs(const Database& database, std::optional<qlonglong>& last) {
    Result<QSqlQuery> found = database.query(
        "SELECT j.save_seq, j.removed_at, r.content FROM job j "
        "JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision WHERE j.save_seq > ? "
        "AND (j.state IN ('fitted', 'in_service') OR r.content LIKE '%serial_number%' "
        "OR (j.state = 'closed' AND r.content LIKE '%taken_at%')) ORDER BY j.save_seq LIMIT ?",
        {*last, jobs_read_at_once});
    if (!found) return found.problems();
    std::vector<ReadJob> out;
    int read = 0;
    while (found.value().next()) {
        ++read;
        last = found.value().value(0).toLongLong();
        Result<Job> job = job_from_json(found.value().value(2).toString().toStdString(), "a job of " + database.name());
        if (job) out.push_back({*last, !found.value().value(1).toString().isEmpty(), std::move(job).value()});
    }
    if (read < jobs_read_at_once) last.reset();
    return out;
}

}  // namespace

Result<std::vector<FittedRow>> FittedBook::of_item(const std::string& item_id) const {
    return fitted_rows(database_,
                       QStringLiteral("WHERE f.item_id = ? AND j.removed_at IS NULL ORDER BY j.number, j.id, f.seq"),
                       to_qt(item_id));
}

Result<std::vector<FittedRow>> FittedBook::of_customer(const std::string& customer_id) const {
    return fitted_rows(database_,
                       QStringLiteral("JOIN customer_job l ON l.job_id = j.id WHERE l.customer_id = ? "
                                      "AND j.removed_at IS NULL ORDER BY j.save_seq DESC, f.seq"),
                       to_qt(customer_id));
}

Result<std::vector<FittedItem>> FittedBook::items() const {
    Result<QSqlQuery> found = database_.query(
        "SELECT f.item_id, count(DISTINCT f.job_id) FROM fitted_part f JOIN job j ON j.id = f.job_id "
        "WHERE f.item_id <> '' AND f.replaced_on = '' AND j.removed_at IS NULL GROUP BY f.item_id ORDER BY f.item_id");
    if (!found) return found.problems();
    std::vector<FittedItem> out;
    while (found.value().next())
        out.push_back({found.value().value(0).toString().toStdString(), found.value().value(1).toInt()});
    return out;
}

std::optional<Problem> write_fitted_parts(const Database& database, const Job& job) {
    std::vector<FittedPart> parts = fitted_parts(job);
    const Result<std::vector<FittedPart>> stored = stored_parts(database, job.id);
    if (!stored) return stored.problems().front();
    for (FittedPart& part : parts) {
        if (part.replaced_on.empty()) continue;
        const auto known = std::find_if(stored.value().begin(), stored.value().end(),
                                        [&part](const FittedPart& one) { return one.reading_id == part.reading_id; });
        if (known != stored.value().end()) part.item_id = known->item_id;
    }
    if (parts == stored.value()) return std::nullopt;
    if (auto problem = database.run("DELETE FROM fitted_part WHERE job_id = ?", {to_qt(job.id)})) return problem;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const FittedPart& part = parts[i];
        if (auto problem = database.run(
                "INSERT INTO fitted_part (job_id, seq, reading_id, part, item_id, serial, fitted_on, replaced_on) "
                "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                {to_qt(job.id), static_cast<int>(i), to_qt(part.reading_id), to_qt(part.part), to_qt(part.item_id),
                 to_qt(part.serial), to_qt(part.fitted_on), to_qt(part.replaced_on)}))
            return problem;
    }
    return std::nullopt;
}

std::optional<Problem> fill_fitted_parts(const Database& database) {
    for (std::optional<qlonglong> last = 0; last;) {
        const Result<std::vector<ReadJob>> jobs = next_jobs(database, last);
        if (!jobs) return jobs.problems().front();
        for (const ReadJob& read : jobs.value()) {
            if (fitted_parts(read.job).empty()) continue;
            if (auto problem = write_fitted_parts(database, read.job)) return problem;
            if (read.removed) continue;
            if (auto problem = database.run(database.words().unindex_job, {read.save_seq})) return problem;
            if (auto problem = index_job(database, read.job, read.save_seq)) return problem;
        }
    }
    return std::nullopt;
}

}  // namespace wg::store
