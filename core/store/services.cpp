// Services that fall due, over all jobs.

#include <QVariant>
#include <set>

#include "core/quantity/utf8.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

std::vector<Problem> check_services(const std::vector<ServiceDueRow>& rows) {
    std::vector<Problem> problems;
    std::set<std::string> ids;
    for (const ServiceDueRow& row : rows) {
        const std::string where = "service " + for_message(row.service_id);
        if (row.service_id.empty() || !is_utf8(row.service_id) || !is_utf8(row.text))
            problems.push_back({where, "its id or text is no text", "Look at the rule set"});
        if (!ids.insert(row.service_id).second)
            problems.push_back({where, "is named twice", "Look at the rule set: each service has an id of its own"});
        if (!date_from_iso8601(row.due_on))
            problems.push_back({where, "is due on '" + for_message(row.due_on) + "'", "Write it as 2027-06-21"});
        if (!row.last_done_on.empty() && !date_from_iso8601(row.last_done_on))
            problems.push_back(
                {where, "was done on '" + for_message(row.last_done_on) + "'", "Write it as 2027-06-21"});
    }
    return problems;
}

}  // namespace

Result<bool> SqlStore::set_services_due(const std::string& job_id, const std::vector<ServiceDueRow>& rows) {
    if (std::vector<Problem> problems = check_services(rows); !problems.empty()) return problems;
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<Head>> found = head(job_id);
    if (!found) return found.problems();
    if (!found.value()) return unknown_job(job_id);
    if (auto problem = database_->run("DELETE FROM service_due WHERE job_id = ?", {to_qt(job_id)})) return *problem;
    for (const ServiceDueRow& row : rows) {
        if (auto problem = database_->run(
                "INSERT INTO service_due (job_id, service_id, text, due_on, last_done_on) VALUES (?, ?, ?, ?, ?)",
                {to_qt(job_id), to_qt(row.service_id), to_qt(row.text), to_qt(row.due_on), to_qt(row.last_done_on)}))
            return *problem;
    }
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<std::vector<ServiceDueRow>> SqlStore::services_due(const std::string& until_on) {
    if (!until_on.empty() && !date_from_iso8601(until_on))
        return Problem{"services", "'" + for_message(until_on) + "' is no day", "Write it as 2027-06-21"};
    // Street, postcode and telephone stand in the job's content alone.
    const Wording& words = database_->words();
    QString sql = QStringLiteral(
                      "SELECT s.job_id, s.service_id, s.text, s.due_on, s.last_done_on, j.number, j.client, "
                      "%1, %2, j.town, %3, j.invented ")
                      .arg(QString::fromLatin1(words.client_street), QString::fromLatin1(words.client_postcode),
                           QString::fromLatin1(words.client_phone)) +
                  "FROM service_due s JOIN job j ON j.id = s.job_id "
                  "JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
                  "WHERE j.removed_at IS NULL AND j.state <> 'closed'";
    QVariantList values;
    if (!until_on.empty()) {
        sql += " AND s.due_on <= ?";
        values << to_qt(until_on);
    }
    sql += " ORDER BY s.due_on, j.number, s.service_id";
    Result<QSqlQuery> found = database_->query(sql, values);
    if (!found) return found.problems();
    std::vector<ServiceDueRow> rows;
    QSqlQuery& at = found.value();
    const auto text = [&at](int column) { return at.value(column).toString().toStdString(); };
    while (at.next()) {
        rows.push_back({text(0), text(1), text(2), text(3), text(4), text(5), text(6), text(7), text(8), text(9),
                        text(10), at.value(11).toInt() != 0});
    }
    return rows;
}

}  // namespace wg::store
