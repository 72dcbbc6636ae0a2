#include "core/store/desk_figures.h"

#include <QVariant>
#include <optional>

#include "core/job/words.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

/// Month 0..11 of a text that begins with a date of that year; none otherwise.
std::optional<std::size_t> month_of(const QString& date, int year) {
    bool whole = false;
    const int month = date.mid(5, 2).toInt(&whole);
    if (!whole || month < 1 || month > 12 || date.left(4) != QString::number(year)) return std::nullopt;
    return static_cast<std::size_t>(month - 1);
}

QString of_whom(bool with_invented) {
    return with_invented ? QStringLiteral("j.removed_at IS NULL")
                         : QStringLiteral("j.removed_at IS NULL AND j.invented = 0");
}

struct QuoteRow {
    QString job_id;
    QString issued_at;
    std::int64_t gross_minor = 0;
    std::string currency;
    double heat_kwh = 0.0;  ///< 0: not known
    QString answer;         ///< the last; empty: none
    QString answered_on;
};

void count_quote(const QuoteRow& quote, bool newest, int year, DeskFigures& out) {
    const auto issued = month_of(quote.issued_at, year);
    if (issued) ++out.quotes_issued[*issued];
    if (newest && quote.answer.isEmpty()) ++out.quotes_open;
    if (newest && issued) {
        if (quote.heat_kwh > 0.0) {
            out.heat_offered_kwh[*issued] += quote.heat_kwh;
        } else {
            ++out.without_heat;
        }
    }
}

// Of a job whose client accepted one quote after the other the last counts: it took the other's place.
void count_accepted(const QuoteRow& quote, int year, DeskFigures& out) {
    const auto accepted = month_of(quote.answered_on, year);
    if (!accepted) return;
    ++out.quotes_accepted[*accepted];
    out.accepted_minor[quote.currency] += quote.gross_minor;
    out.heat_accepted_kwh[*accepted] += quote.heat_kwh;
    if (quote.heat_kwh <= 0.0) ++out.accepted_without_heat;
}

std::optional<Problem> count_quotes(const Database& database, int year, bool with_invented, DeskFigures& out) {
    // The last answer of each quote; the newest quote of a job is the last of its rows.
    Result<QSqlQuery> found = database.query(
        QStringLiteral(
            "SELECT q.job_id, q.issued_at, q.gross_minor, q.currency, h.heat_kwh, a.answer, a.on_day "
            "FROM quote_issued q JOIN job j ON j.id = q.job_id LEFT JOIN quote_heat h ON h.quote_id = q.id "
            "LEFT JOIN quote_answer a ON a.seq = (SELECT max(l.seq) FROM quote_answer l WHERE l.quote_id = q.id) "
            "WHERE %1 ORDER BY q.job_id, q.issued_at, q.number")
            .arg(of_whom(with_invented)));
    if (!found) return found.problems().front();
    std::optional<QuoteRow> before;
    std::optional<QuoteRow> accepted;  // the last of the job at hand
    const auto finish = [&](bool job_ends) {
        if (!before) return;
        count_quote(*before, job_ends, year, out);
        if (before->answer == QStringLiteral("accepted") && (!accepted || accepted->answered_on <= before->answered_on))
            accepted = before;
        if (!job_ends) return;
        if (accepted) count_accepted(*accepted, year, out);
        accepted.reset();
    };
    while (found.value().next()) {
        const QSqlQuery& at = found.value();
        QuoteRow row{at.value(0).toString(),   at.value(1).toString(),
                     at.value(2).toLongLong(), at.value(3).toString().toStdString(),
                     at.value(4).toDouble(),   at.value(5).toString(),
                     at.value(6).toString()};
        finish(before && before->job_id != row.job_id);
        before = std::move(row);
    }
    finish(true);
    return std::nullopt;
}

}  // namespace

Result<DeskFigures> desk_figures(Store& store, int year, bool with_invented) {
    if (year < 1900 || year > 9999)
        return Problem{"figures", "the year is " + std::to_string(year), "Take a year between 1900 and 9999"};
    const Database& database = store.database();
    DeskFigures out;
    Result<QSqlQuery> states = database.query(
        QStringLiteral("SELECT j.state, count(*) FROM job j WHERE %1 GROUP BY j.state").arg(of_whom(with_invented)));
    if (!states) return states.problems();
    while (states.value().next()) {
        const auto state = from_key<JobState>(states.value().value(0).toString().toStdString());
        if (state) out.by_state[*state] = states.value().value(1).toInt();
    }
    if (!with_invented) {
        const Result<QVariant> left_out =
            database.value("SELECT count(*) FROM job WHERE removed_at IS NULL AND invented <> 0");
        if (!left_out) return left_out.problems();
        out.left_out = left_out.value().toInt();
    }
    if (auto problem = count_quotes(database, year, with_invented, out)) return *problem;
    Result<QSqlQuery> due = database.query(
        QStringLiteral(
            "SELECT s.due_on FROM service_due s JOIN job j ON j.id = s.job_id WHERE %1 AND j.state <> 'closed' "
            "AND s.due_on >= ? AND s.due_on <= ?")
            .arg(of_whom(with_invented)),
        {QStringLiteral("%1-01-01").arg(year), QStringLiteral("%1-12-31").arg(year)});
    if (!due) return due.problems();
    while (due.value().next()) {
        if (const auto month = month_of(due.value().value(0).toString(), year)) ++out.services_due[*month];
    }
    return out;
}

}  // namespace wg::store
