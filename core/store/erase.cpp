// Erasing a client's data: everything of a job but its number, what the law keeps, and the refrigerant register.

#include <QRegularExpression>
#include <QVariant>
#include <algorithm>
#include <map>
#include <set>

#include "core/job/codec.h"
#include "core/job/words.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/personal.h"
#include "core/store/state_days.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

QVariant whole_number(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

// What stays of the job: a number that was given, so that the row of numbers has no gap nobody can explain.
Job bare_job(const std::string& id, const std::string& number, std::int64_t revision, const std::string& at) {
    Job job;
    job.id = id;
    job.number = number;
    job.title = "Erased at the client's request";
    job.state = JobState::closed;
    job.revision = revision;
    job.created_at = at;
    job.changed_at = at;
    return job;
}

// "?, ?, ?" for the values.
QString places_for(std::size_t count) {
    return QStringList(QList<QString>(static_cast<qsizetype>(count), QStringLiteral("?"))).join(QStringLiteral(", "));
}

QVariantList values_of(const std::vector<std::string>& ids) {
    QVariantList out;
    for (const std::string& id : ids)
        out << to_qt(id);
    return out;
}

// Anything in the texts that looks like a SHA-256: also where a text is too damaged to be read as a job.
Result<std::set<QString>> hashes_in_contents(const Database& database, const std::vector<std::string>& job_ids) {
    static const QRegularExpression hash(QStringLiteral("[0-9a-f]{64}"));
    Result<QSqlQuery> found = database.query(
        QStringLiteral("SELECT content FROM job_revision WHERE job_id IN (%1)").arg(places_for(job_ids.size())),
        values_of(job_ids));
    if (!found) return found.problems();
    std::set<QString> out;
    while (found.value().next()) {
        const QString content = found.value().value(0).toString();
        for (auto match = hash.globalMatch(content); match.hasNext();)
            out.insert(match.next().captured());
    }
    return out;
}

}  // namespace

std::optional<Problem> PersonalData::drop_photographs(const std::vector<std::string>& job_ids, Erased& out) const {
    const Result<std::set<QString>> named = hashes_in_contents(database_, job_ids);
    if (!named) return named.problems().front();
    const QString elsewhere =
        QStringLiteral("SELECT 1 FROM job_revision WHERE job_id NOT IN (%1) AND content LIKE ? LIMIT 1")
            .arg(places_for(job_ids.size()));
    for (const QString& sha256 : named.value()) {
        const Result<QVariant> here = database_.value("SELECT 1 FROM photograph WHERE sha256 = ?", {sha256});
        if (!here) return here.problems().front();
        if (!here.value().isValid()) continue;
        const Result<QVariant> other = database_.value(elsewhere, values_of(job_ids) << QString('%' + sha256 + '%'));
        if (!other) return other.problems().front();
        if (other.value().isValid()) continue;
        if (auto problem = database_.run("DELETE FROM photograph WHERE sha256 = ?", {sha256})) return problem;
        ++out.photographs;
    }
    return std::nullopt;
}

std::optional<Problem> PersonalData::erase_one(const std::string& job_id, const std::string& reason, Instant now,
                                               Erased& out) const {
    const QString id = to_qt(job_id);
    Result<QSqlQuery> found =
        database_.query("SELECT number, revision, save_seq, removed_at FROM job WHERE id = ?", {id});
    if (!found) return found.problems().front();
    if (!found.value().next())
        return Problem{"job " + for_message(job_id), "is not in the store", "Read the list again"};
    const std::string number = found.value().value(0).toString().toStdString();
    const std::int64_t revision = found.value().value(1).toLongLong() + 1;
    const QVariant save_seq = found.value().value(2);
    const bool removed = !found.value().value(3).toString().isEmpty();
    const Result<KeptQuotes> quotes = quotes_of(job_id, now);
    if (!quotes) return quotes.problems().front();
    const KeptQuotes& kept = quotes.value();
    const std::string at = iso8601(now);

    if (!removed) {
        if (auto problem = database_.run(database_.words().unindex_job, {save_seq})) return problem;
    }
    for (const char* sql : {"INSERT INTO erasing (job_id) VALUES (?)", "DELETE FROM unsaved WHERE job_id = ?",
                            "DELETE FROM job_versions WHERE job_id = ?", "DELETE FROM service_due WHERE job_id = ?",
                            "DELETE FROM customer_job WHERE job_id = ?", "DELETE FROM fitted_part WHERE job_id = ?",
                            "DELETE FROM job_state_day WHERE job_id = ?",
                            "UPDATE stock_move SET note = '' WHERE job_id = ? AND note <> ''"}) {
        if (auto problem = database_.run(sql, {id})) return problem;
    }
    for (const std::string& quote : kept.over) {
        for (const char* sql :
             {"DELETE FROM answer_signature WHERE answer_id IN (SELECT id FROM quote_answer WHERE quote_id = ?)",
              "DELETE FROM order_paper WHERE quote_id = ?", "DELETE FROM quote_answer WHERE quote_id = ?",
              "DELETE FROM quote_paper WHERE quote_id = ?"}) {
            if (auto problem = database_.run(sql, {to_qt(quote)})) return problem;
        }
        if (auto problem = database_.run("DELETE FROM quote_issued WHERE id = ?", {to_qt(quote)})) return problem;
        ++out.quotes;
    }
    out.quotes_kept += kept.kept;

    const auto text_and_hash = [&](std::int64_t of) {
        const std::string json = job_to_json(bare_job(job_id, number, of, at));
        return std::pair{json, sha256_hex(json)};
    };
    Result<QSqlQuery> history = database_.query("SELECT revision FROM job_revision WHERE job_id = ?", {id});
    if (!history) return history.problems().front();
    while (history.value().next()) {
        const std::int64_t of = history.value().value(0).toLongLong();
        ++out.revisions;
        // A kept quote hangs on the revision it was issued for: its row stays, without its content.
        const bool stays = std::find(kept.revisions.begin(), kept.revisions.end(), of) != kept.revisions.end();
        const auto [json, hash] = text_and_hash(of);
        auto problem =
            stays ? database_.run(
                        "UPDATE job_revision SET content = ?, text_sha256 = ?, changed_by = '' "
                        "WHERE job_id = ? AND revision = ?",
                        {to_qt(json), to_qt(hash), id, whole_number(of)})
                  : database_.run("DELETE FROM job_revision WHERE job_id = ? AND revision = ?", {id, whole_number(of)});
        if (problem) return problem;
    }
    const auto [json, hash] = text_and_hash(revision);
    if (auto problem =
            database_.run("INSERT INTO job_revision (job_id, revision, changed_at, content, text_sha256, changed_by) "
                          "VALUES (?, ?, ?, ?, ?, ?)",
                          {id, whole_number(revision), to_qt(at), to_qt(json), to_qt(hash), to_qt(store_.by())}))
        return problem;
    const Job bare = bare_job(job_id, number, revision, at);
    if (auto problem =
            database_.run("UPDATE job SET title = ?, client = '', town = '', state = ?, revision = ?, changed_at = ?, "
                          "content_sha256 = ?, base_sha256 = '', base_revision = 0, removed_at = ? WHERE id = ?",
                          {to_qt(bare.title), QString(key_of(bare.state)), whole_number(revision), to_qt(at),
                           to_qt(content_sha256(bare)), to_qt(at), id}))
        return problem;
    if (auto problem = write_state_day(database_, job_id, {revision, {}, key_of(bare.state), at, store_.by()}))
        return problem;
    const Result<QVariant> last = database_.value("SELECT max(seq) FROM erasure");
    if (!last) return last.problems().front();
    if (auto problem =
            database_.run("INSERT INTO erasure (seq, job_id, number, erased_at, erased_by, reason, kept_until) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?)",
                          {whole_number(last.value().toLongLong() + 1), id, to_qt(number), to_qt(at),
                           to_qt(store_.by()), to_qt(reason), to_qt(kept.until)}))
        return problem;
    ++out.jobs;
    return database_.run("DELETE FROM erasing WHERE job_id = ?", {id});
}

// Deleted rows stay readable in the file's free pages, in its log and in the search's old parts until they are swept.
std::optional<Problem> PersonalData::sweep_file() const {
    if (database_.dialect() == Dialect::postgresql) return database_.run("VACUUM");
    for (const char* sql :
         {"INSERT INTO job_search (job_search) VALUES ('optimize')", "VACUUM", "PRAGMA wal_checkpoint(TRUNCATE)"}) {
        if (auto problem = database_.run(sql)) return problem;
    }
    return std::nullopt;
}

Result<Erased> PersonalData::erase(const std::vector<std::string>& job_ids, const std::string& reason, Instant now,
                                   const std::vector<std::string>& customer_ids) {
    if (reason.find_first_not_of(" \t\r\n") == std::string::npos || reason.size() > 1000 || !is_utf8(reason))
        return Problem{"erasing", "no reason was given, or more than 1,000 bytes",
                       "Say in a few words why, without the client's name"};
    if (job_ids.empty() && customer_ids.empty())
        return Problem{"erasing", "no job and no customer was named", "Search for the client first"};
    if (job_ids.size() > 500 || customer_ids.size() > 500)
        return Problem{"erasing", "more than 500 jobs or customers at once", "Erase fewer at a time"};
    const std::set<std::string> once(job_ids.begin(), job_ids.end());
    const std::vector<std::string> ids(once.begin(), once.end());
    Erased out;
    {
        Transaction transaction(database_);
        if (auto problem = transaction.begin()) return *problem;
        if (auto problem = ids.empty() ? std::nullopt : drop_photographs(ids, out)) return *problem;
        Result<std::set<std::string>> linked = customers_of(ids);
        if (!linked) return linked.problems();
        for (const std::string& id : ids) {
            if (auto problem = erase_one(id, reason, now, out)) return *problem;
        }
        // One who has other jobs, too, stays for them unless named.
        for (auto at = linked.value().begin(); at != linked.value().end();) {
            const Result<QVariant> others =
                database_.value("SELECT 1 FROM customer_job WHERE customer_id = ? LIMIT 1", {to_qt(*at)});
            if (!others) return others.problems();
            at = others.value().isValid() ? linked.value().erase(at) : std::next(at);
        }
        linked.value().insert(customer_ids.begin(), customer_ids.end());
        if (auto problem = erase_customers(linked.value(), reason, now, out)) return *problem;
        if (auto problem = transaction.commit()) return *problem;
    }
    if (auto problem = sweep_file()) {
        problem->what = "the data are erased, but may still be read in the file's free space: " + problem->what;
        problem->remedy = "Close other windows on this store and erase what is over once more";
        return *problem;
    }
    return out;
}

Result<Erased> PersonalData::erase_what_is_over(Instant now) {
    const Result<std::vector<ErasureRow>> rows = erasures();
    if (!rows) return rows.problems();
    const std::string today = iso8601(now).substr(0, 10);
    std::map<std::string, ErasureRow> newest;
    for (const ErasureRow& row : rows.value())
        newest[row.job_id] = row;
    Erased out;
    {
        Transaction transaction(database_);
        if (auto problem = transaction.begin()) return *problem;
        for (const auto& [id, row] : newest) {
            if (row.kept_until.empty() || row.kept_until > today) continue;
            if (auto problem = erase_one(id, row.reason, now, out)) return *problem;
        }
        if (auto problem = transaction.commit()) return *problem;
    }
    if (auto problem = sweep_file()) return *problem;
    return out;
}

}  // namespace wg::store
