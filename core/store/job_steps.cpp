#include "core/store/job_steps.h"

#include <QStringList>
#include <QVariant>
#include <map>

#include "core/store/database.h"
#include "core/store/job_list.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t jobs_at_once = 200;

// The last answer to the newest quote of j: NULL without a quote or without an answer.
constexpr const char* last_answer =
    "(SELECT a.answer FROM quote_answer a WHERE a.quote_id = (SELECT q.id FROM quote_issued q WHERE q.job_id = j.id "
    "ORDER BY q.issued_at DESC, q.id DESC LIMIT 1) ORDER BY a.seq DESC LIMIT 1)";
constexpr const char* any_quote = "EXISTS (SELECT 1 FROM quote_issued q WHERE q.job_id = j.id)";
constexpr const char* any_service_due = "EXISTS (SELECT 1 FROM service_due d WHERE d.job_id = j.id AND d.due_on <= ?)";

QString condition_of_step(NextStep step) {
    const QString open = QStringLiteral("j.state IN ('planning', 'offered')");
    const auto answered = [&open](const char* answer) {
        return open + QStringLiteral(" AND %1 = '%2'").arg(QString::fromLatin1(last_answer), QLatin1String(answer));
    };
    switch (step) {
        case NextStep::survey: return QStringLiteral("j.state = 'visit'");
        case NextStep::plan: return QStringLiteral("j.state = 'planning' AND NOT %1").arg(QLatin1String(any_quote));
        case NextStep::send_quote:
            // Few quotes are withdrawn: those jobs alone are looked at closely.
            return open + QStringLiteral(
                              " AND ((j.state = 'offered' AND NOT %1) OR (j.id IN (SELECT w.job_id FROM quote_answer v "
                              "JOIN quote_issued w ON w.id = v.quote_id WHERE v.answer = 'withdrawn') "
                              "AND %2 = 'withdrawn'))")
                              .arg(QLatin1String(any_quote), QLatin1String(last_answer));
        case NextStep::await_answer:
            return open +
                   QStringLiteral(" AND %1 AND %2 IS NULL").arg(QLatin1String(any_quote), QLatin1String(last_answer));
        case NextStep::after_refusal: return answered("declined");
        case NextStep::fit: return QStringLiteral("j.state = 'accepted' OR (%1)").arg(answered("accepted"));
        case NextStep::hand_over: return QStringLiteral("j.state = 'fitted'");
        case NextStep::service:
            return QStringLiteral("j.state = 'in_service' AND %1").arg(QLatin1String(any_service_due));
        case NextStep::nothing:
            return QStringLiteral("j.state = 'closed' OR (j.state = 'in_service' AND NOT %1)")
                .arg(QLatin1String(any_service_due));
    }
    return {};
}

QString places_of(std::size_t count) {
    return QStringList(QList<QString>(static_cast<qsizetype>(count), QStringLiteral("?"))).join(QStringLiteral(", "));
}

using Standings = std::map<std::string, JobStanding>;

std::optional<Problem> add_quotes(const Database& database, const QString& in, const QVariantList& ids,
                                  Standings& out) {
    // Oldest first: what comes later stands for what came before.
    Result<QSqlQuery> found = database.query(
        QStringLiteral("SELECT q.job_id, q.issued_at, "
                       "(SELECT a.answer FROM quote_answer a WHERE a.quote_id = q.id ORDER BY a.seq DESC LIMIT 1), "
                       "(SELECT a.on_day FROM quote_answer a WHERE a.quote_id = q.id ORDER BY a.seq DESC LIMIT 1) "
                       "FROM quote_issued q WHERE q.job_id IN (%1) ORDER BY q.job_id, q.issued_at, q.id")
            .arg(in),
        ids);
    if (!found) return found.problems().front();
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        JobStanding& one = out[at(0)];
        one.quoted_on = at(1).substr(0, 10);
        one.answer = at(2);
        one.answered_on = at(3);
    }
    return std::nullopt;
}

std::optional<Problem> add_services(const Database& database, const QString& in, const QVariantList& ids,
                                    Standings& out) {
    Result<QSqlQuery> found = database.query(
        QStringLiteral("SELECT job_id, min(due_on) FROM service_due WHERE job_id IN (%1) GROUP BY job_id").arg(in),
        ids);
    if (!found) return found.problems().front();
    while (found.value().next())
        out[found.value().value(0).toString().toStdString()].service_due_on =
            found.value().value(1).toString().toStdString();
    return std::nullopt;
}

}  // namespace

QString condition_of_steps(const std::vector<NextStep>& steps, const std::string& today, QVariantList& values) {
    QStringList conditions;
    for (const NextStep step : steps) {
        const QString one = condition_of_step(step);
        for (qsizetype i = 0; i < one.count(QLatin1Char('?')); ++i)
            values << to_qt(today);
        conditions << QLatin1Char('(') + one + QLatin1Char(')');
    }
    return QLatin1Char('(') + conditions.join(QStringLiteral(" OR ")) + QLatin1Char(')');
}

Result<std::vector<NextStepOfJob>> JobList::next_steps(const std::vector<JobRow>& rows, CivilDate today) const {
    const std::string day = iso8601(today);
    std::vector<NextStepOfJob> out;
    out.reserve(rows.size());
    for (std::size_t from = 0; from < rows.size(); from += jobs_at_once) {
        const std::size_t to = std::min(rows.size(), from + jobs_at_once);
        QVariantList ids;
        for (std::size_t i = from; i < to; ++i)
            ids << to_qt(rows[i].id);
        const QString in = places_of(to - from);
        Standings standings;
        if (auto problem = add_quotes(database_, in, ids, standings)) return *problem;
        if (auto problem = add_services(database_, in, ids, standings)) return *problem;
        for (std::size_t i = from; i < to; ++i) {
            JobStanding& one = standings[rows[i].id];
            one.state = rows[i].state;
            one.changed_on = rows[i].changed_at.substr(0, 10);
            out.push_back(next_step(one, day));
        }
    }
    return out;
}

}  // namespace wg::store
