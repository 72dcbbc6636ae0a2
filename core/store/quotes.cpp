// Issued quotes: written once.

#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t max_plan_bytes = std::size_t{64} * 1024 * 1024;

std::vector<Problem> check_quote(const IssuedQuote& quote) {
    std::vector<Problem> problems;
    const std::string where = "quote " + for_message(quote.number);
    if (!is_uuid(quote.id)) problems.push_back({where, "its id is not a UUID", "Issue it again"});
    if (quote.number.empty() || quote.number.size() > 64 || !is_utf8(quote.number)) {
        problems.push_back({where, "its number is empty or longer than 64 bytes", "Give it a number"});
    }
    if (!instant_from_iso8601(quote.issued_at)) {
        problems.push_back(
            {where, "its date of issue is '" + for_message(quote.issued_at) + "'", "Write it as 2027-06-21T12:30:00Z"});
    }
    if (quote.plan_json.empty() || quote.plan_json.size() > max_plan_bytes || !is_utf8(quote.plan_json)) {
        problems.push_back({where, "its plan is empty, too long or not text", "Plan the job again"});
    }
    if (quote.plan_json.rfind("\xEF\xBB\xBF", 0) == 0) {
        problems.push_back({where, "its plan begins with a byte order mark", "Leave the mark out"});
    }
    if (!quote.sha256.empty() && quote.sha256 != sha256_hex(quote.plan_json)) {
        problems.push_back({where, "the hash is not that of its plan", "Issue it again"});
    }
    const bool letters = quote.currency.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") == std::string::npos;
    if (quote.currency.size() != 3 || !letters) {
        problems.push_back({where, "its currency is '" + for_message(quote.currency) + "'",
                            "Write the three capital letters of ISO 4217"});
    }
    return problems;
}

}  // namespace

Result<IssuedQuote> SqlStore::issue_quote(const IssuedQuote& quote) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<IssuedQuote> issued = insert_quote(quote);
    if (!issued) return issued;
    if (auto failed = transaction.commit()) return *failed;
    return issued;
}

Result<IssuedQuote> SqlStore::insert_quote(const IssuedQuote& quote) {
    if (std::vector<Problem> problems = check_quote(quote); !problems.empty()) return problems;
    const std::string where = "quote " + for_message(quote.number);
    const auto revision = QVariant::fromValue(static_cast<qlonglong>(quote.job_revision));
    const Result<QVariant> known = database_->value(
        "SELECT count(*) FROM job_revision WHERE job_id = ? AND revision = ?", {to_qt(quote.job_id), revision});
    if (!known) return known.problems();
    if (known.value().toInt() == 0) {
        return Problem{where, "revision " + std::to_string(quote.job_revision) + " of its job is not in the database",
                       "Save the job before issuing a quote for it"};
    }
    const Result<QVariant> taken = database_->value("SELECT count(*) FROM quote_issued WHERE number = ? OR id = ?",
                                                    {to_qt(quote.number), to_qt(quote.id)});
    if (!taken) return taken.problems();
    if (taken.value().toInt() != 0) {
        return Problem{where, "was issued already and cannot be changed", "Give the new version a number of its own"};
    }
    IssuedQuote issued = quote;
    issued.sha256 = sha256_hex(quote.plan_json);
    const std::optional<Problem> problem = database_->run(
        "INSERT INTO quote_issued (id, job_id, job_revision, number, issued_at, plan_json, sha256, gross_minor, "
        "currency) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {to_qt(issued.id), to_qt(issued.job_id), revision, to_qt(issued.number), to_qt(issued.issued_at),
         to_qt(issued.plan_json), to_qt(issued.sha256), QVariant::fromValue(static_cast<qlonglong>(issued.gross_minor)),
         to_qt(issued.currency)});
    if (problem) return *problem;
    if (auto failed = database_->run(database_->words().keep_heat, {to_qt(issued.id)})) return *failed;
    if (auto failed = index_again(issued.job_id)) return *failed;
    return issued;
}

Result<std::vector<IssuedQuote>> SqlStore::quotes(const std::string& job_id) {
    Result<QSqlQuery> found = database_->query(
        "SELECT id, job_id, job_revision, number, issued_at, plan_json, sha256, gross_minor, currency "
        "FROM quote_issued WHERE job_id = ? ORDER BY issued_at DESC, number DESC",
        {to_qt(job_id)});
    if (!found) return found.problems();
    std::vector<IssuedQuote> out;
    QSqlQuery& row = found.value();
    const auto text = [&row](int column) { return row.value(column).toString().toStdString(); };
    while (row.next()) {
        IssuedQuote quote{text(0), text(1), row.value(2).toLongLong(), text(3), text(4),
                          text(5), text(6), row.value(7).toLongLong(), text(8)};
        if (sha256_hex(quote.plan_json) != quote.sha256) {
            return Problem{"quote " + quote.number, "is damaged: its plan no longer has the hash it was issued with",
                           "Go back to the last backup"};
        }
        out.push_back(std::move(quote));
    }
    return out;
}

}  // namespace wg::store
