// The desk's list: search and numbers.

#include <QStringList>
#include <QVariant>

#include "core/job/codec.h"
#include "core/job/fitted.h"
#include "core/job/words.h"
#include "core/store/fold.h"
#include "core/store/search.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// More words than anybody types; FTS5's own limits lie far above.
constexpr qsizetype max_words = 32;

// Counted as the tokenizer `unicode61` counts: letters and digits make a word.
bool has_letter_or_digit(const QString& word) {
    for (const char32_t c : word.toStdU32String()) {
        if (QChar::isLetterOrNumber(c)) return true;
    }
    return false;
}

// The words of a query that can be searched for. Empty: everything.
Result<QStringList> words_to_find(const std::string& query) {
    QStringList wanted;
    for (QString word : to_qt(query).simplified().split(' ', Qt::SkipEmptyParts)) {
        word.remove(QChar(u'\0'));
        if (has_letter_or_digit(word)) wanted << word;
    }
    if (wanted.size() <= max_words) return wanted;
    return Problem{"search", "holds " + std::to_string(wanted.size()) + " words",
                   "Search for at most " + std::to_string(max_words) + " words"};
}

// An expression that wants every word, each as the beginning of a word. In FTS5, quoting makes the rest of its language
// (AND, NEAR, column names) plain text.
QString match_expression(QStringList words, Dialect dialect) {
    if (dialect == Dialect::postgresql) return query_of(words);
    for (QString& word : words)
        word = '"' + word.replace('"', "\"\"") + "\"*";
    return words.join(' ');
}

}  // namespace

Result<std::vector<JobRow>> rows_of_list(const Database& database, QSqlQuery& at) {
    std::vector<JobRow> rows;
    const auto text = [&at](int column) { return at.value(column).toString().toStdString(); };
    while (at.next()) {
        JobRow row{text(0),
                   text(1),
                   text(2),
                   text(3),
                   text(4),
                   JobState::visit,
                   text(6),
                   at.value(7).toLongLong(),
                   at.value(8).toInt() != 0};
        const std::string state = text(5);
        const std::optional<JobState> known = from_key<JobState>(state);
        if (!known) {
            return Problem{database.name(), "job " + row.number + " has the unknown state '" + state + "'",
                           "Open the database with the program that wrote it"};
        }
        row.state = *known;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::optional<Problem> SqlStore::index(const Job& job, std::int64_t save_seq) const {
    return index_job(*database_, job, save_seq);
}

std::optional<Problem> index_job(const Database& database, const Job& job, std::int64_t save_seq) {
    Result<QSqlQuery> quotes = database.query("SELECT number FROM quote_issued WHERE job_id = ?", {to_qt(job.id)});
    if (!quotes) return quotes.problems().front();
    QStringList numbers;
    while (quotes.value().next())
        numbers << quotes.value().value(0).toString();
    for (const FittedPart& part : fitted_parts(job))
        numbers << to_qt(part.serial) << to_qt(part.item_id);
    const Client& client = job.client;
    const QStringList fields{to_qt(job.number),
                             to_qt(job.title),
                             to_qt(client.name),
                             to_qt(client.town),
                             to_qt(job.notes),
                             to_qt(client.street) + '\n' + to_qt(client.postcode),
                             to_qt(client.phone) + '\n' + to_qt(client.email),
                             numbers.join('\n')};
    QVariantList values{QVariant::fromValue(static_cast<qlonglong>(save_seq))};
    if (database.dialect() == Dialect::postgresql) {
        values << vector_of(fields);
    } else {
        for (const QString& field : fields)
            values << field;
    }
    return database.run(database.words().index_job, values);
}

std::optional<Problem> index_all_jobs(const Database& database) {
    constexpr int at_once = 100;
    qlonglong last = 0;
    for (int read = at_once; read == at_once;) {
        Result<QSqlQuery> found = database.query(
            "SELECT j.save_seq, r.content, j.id, j.number, j.title, j.client, j.town FROM job j "
            "LEFT JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
            "WHERE j.removed_at IS NULL AND j.save_seq > ? ORDER BY j.save_seq LIMIT ?",
            {last, at_once});
        if (!found) return found.problems().front();
        read = 0;
        std::vector<std::pair<qlonglong, Job>> jobs;
        jobs.reserve(at_once);
        while (found.value().next()) {
            const auto text = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
            Result<Job> job = job_from_json(text(1), "a job of " + database.name());
            if (!job) {
                Job listed;
                listed.id = text(2);
                listed.number = text(3);
                listed.title = text(4);
                listed.client.name = text(5);
                listed.client.town = text(6);
                job = std::move(listed);
            }
            jobs.emplace_back(found.value().value(0).toLongLong(), std::move(job).value());
        }
        for (const auto& [save_seq, job] : jobs) {
            if (std::optional<Problem> problem = index_job(database, job, save_seq)) return problem;
            last = save_seq;
            ++read;
        }
    }
    return std::nullopt;
}

Result<QString> match_of(const std::string& query, Dialect dialect) {
    const Result<QStringList> words = words_to_find(query);
    if (!words) return words.problems();
    return match_expression(words.value(), dialect);
}

std::optional<Problem> SqlStore::unindex(std::int64_t save_seq) const {
    return database_->run(database_->words().unindex_job, {QVariant::fromValue(static_cast<qlonglong>(save_seq))});
}

std::optional<Problem> SqlStore::index_again(const std::string& job_id) {
    const Result<std::optional<Head>> found = head(job_id);
    if (!found) return found.problems().front();
    if (!found.value() || !found.value()->removed_at.empty()) return std::nullopt;
    const Result<Job> job = load(job_id);
    if (!job) return job.problems().front();
    if (auto problem = unindex(found.value()->save_seq)) return problem;
    return index(job.value(), found.value()->save_seq);
}

Result<std::vector<JobRow>> SqlStore::list(const std::string& query, int limit, int offset) {
    if (limit < 0 || offset < 0) return Problem{"list", "limit and offset must not be negative", "Start from 0"};
    const Result<QStringList> words = words_to_find(query);
    if (!words) return words.problems();
    const QString match = match_expression(words.value(), database_->dialect());
    const QString columns = QString::fromLatin1(list_columns);
    QVariantList values;
    QString sql;
    if (match.isEmpty()) {
        const QString hint = QString::fromLatin1(database_->words().in_order_of).replace("%1", "job_newest");
        sql = columns + QString::fromLatin1(database_->words().page)
                            .arg("FROM job j " + hint + " WHERE j.removed_at IS NULL",
                                 QStringLiteral(" ORDER BY j.save_seq DESC"));
    } else {
        sql = columns + database_->words().matching_jobs;
        values << match;
    }
    values << limit << offset;
    Result<QSqlQuery> found = database_->query(sql, values);
    if (!found) return found.problems();
    return rows_of_list(*database_, found.value());
}

Result<int> SqlStore::count(const std::string& query) {
    const Result<QStringList> words = words_to_find(query);
    if (!words) return words.problems();
    const QString match = match_expression(words.value(), database_->dialect());
    const Result<QVariant> found = match.isEmpty()
                                       ? database_->value("SELECT count(*) FROM job WHERE removed_at IS NULL")
                                       : database_->value(database_->words().count_matching, {match});
    if (!found) return found.problems();
    return found.value().toInt();
}

Result<std::string> SqlStore::next_job_number(int year) {
    if (year < 1900 || year > 9999) {
        return Problem{"job number", "the year is " + std::to_string(year), "Take a year between 1900 and 9999"};
    }
    const QString prefix = QString::number(year) + '-';
    // '.' follows '-': all numbers which begin with the prefix, by the index.
    Result<QSqlQuery> found =
        database_->query("SELECT number FROM job WHERE number >= ? AND number < ? AND number <> ''",
                         {prefix, QString::number(year) + '.'});
    if (!found) return found.problems();
    constexpr qsizetype max_digits = 9;
    int last = 0;
    while (found.value().next()) {
        const QString digits = found.value().value(0).toString().mid(prefix.size());
        if (digits.size() > max_digits) continue;
        bool whole = false;
        const int value = digits.toInt(&whole);
        if (whole && value > last) last = value;
    }
    return (prefix + QStringLiteral("%1").arg(last + 1, 4, 10, QChar('0'))).toStdString();
}

}  // namespace wg::store
