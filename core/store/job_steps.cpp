#include "core/store/job_steps.h"

#include <QStringList>
#include <QVariant>
#include <algorithm>
#include <utility>

#include "core/store/database.h"
#include "core/store/job_list.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t jobs_at_once = 200;

constexpr std::pair<NextStep, const char*> kept_words[] = {
    {NextStep::survey, "survey"},
    {NextStep::plan, "plan"},
    {NextStep::send_quote, "send_quote"},
    {NextStep::await_answer, "await_answer"},
    {NextStep::after_refusal, "after_refusal"},
    {NextStep::fit, "fit"},
    {NextStep::hand_over, "hand_over"},
};

QString condition_of_step(NextStep step) {
    for (const auto& [value, word] : kept_words) {
        if (value == step) return QStringLiteral("j.next_step = '%1'").arg(QLatin1String(word));
    }
    if (step == NextStep::service) return QStringLiteral("j.next_step = 'in_service' AND j.service_due_on <= ?");
    return QStringLiteral(
        "j.next_step = 'closed' OR (j.next_step = 'in_service' AND (j.service_due_on IS NULL OR j.service_due_on > "
        "?))");
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

std::optional<Problem> add_days(const Database& database, const QString& in, const QVariantList& ids, Standings& out) {
    Result<QSqlQuery> found = database.query(
        QStringLiteral("SELECT job_id, at FROM job_state_day WHERE job_id IN (%1) ORDER BY job_id, revision").arg(in),
        ids);
    if (!found) return found.problems().front();
    while (found.value().next())
        out[found.value().value(0).toString().toStdString()].reached_on =
            found.value().value(1).toString().toStdString().substr(0, 10);
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

std::optional<NextStepOfJob> next_step_of(const KeptStep& kept, const std::string& today) {
    if (kept.step == "closed") return NextStepOfJob{NextStep::nothing, {}};
    if (kept.step == "in_service") {
        // ISO dates sort as their texts do.
        const bool due = !kept.service_due_on.empty() && kept.service_due_on <= today;
        return NextStepOfJob{due ? NextStep::service : NextStep::nothing, kept.service_due_on};
    }
    for (const auto& [value, word] : kept_words) {
        if (kept.step == word) return NextStepOfJob{value, kept.since};
    }
    return std::nullopt;
}

Result<Standings> standings_of(const Database& database, const QVariantList& job_ids) {
    const QString in = places_of(static_cast<std::size_t>(job_ids.size()));
    Standings out;
    if (auto problem = add_days(database, in, job_ids, out)) return *problem;
    if (auto problem = add_quotes(database, in, job_ids, out)) return *problem;
    if (auto problem = add_services(database, in, job_ids, out)) return *problem;
    return out;
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
        Result<QSqlQuery> found =
            database_.query(QStringLiteral("SELECT id, next_step, next_since, service_due_on FROM job WHERE id IN (%1)")
                                .arg(places_of(to - from)),
                            ids);
        if (!found) return found.problems();
        std::map<std::string, KeptStep> kept;
        while (found.value().next()) {
            const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
            kept[at(0)] = {at(1), at(2), at(3)};
        }
        for (std::size_t i = from; i < to; ++i)
            out.push_back(next_step_of(kept[rows[i].id], day).value_or(NextStepOfJob{}));
    }
    return out;
}

}  // namespace wg::store
