#include "core/store/quote_book.h"

#include <QByteArray>
#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"
#include "core/store/database.h"
#include "core/store/hashed_rows.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::pair<Answer, const char*> answer_words[] = {
    {Answer::accepted, "accepted"}, {Answer::declined, "declined"}, {Answer::withdrawn, "withdrawn"}};

}  // namespace

const char* key_of(Answer answer) noexcept {
    for (const auto& [value, word] : answer_words) {
        if (value == answer) return word;
    }
    return "";
}

std::optional<Answer> answer_from_key(std::string_view key) noexcept {
    for (const auto& [value, word] : answer_words) {
        if (key == word) return value;
    }
    return std::nullopt;
}

std::optional<Problem> QuoteBook::put_paper(const std::string& quote_id, std::string_view pdf,
                                            const std::string& kept_at) {
    if (pdf.substr(0, 5) != "%PDF-" || pdf.size() > max_paper_bytes)
        return Problem{"paper of a quote", "is no PDF, or larger than 60 MiB", "Print the quote again"};
    const QByteArray content(pdf.data(), static_cast<qsizetype>(pdf.size()));
    return database_.run("INSERT INTO quote_paper (quote_id, sha256, kept_at, content) VALUES (?, ?, ?, ?)",
                         {to_qt(quote_id), to_qt(sha256_hex(std::string(pdf))), to_qt(kept_at), content});
}

std::optional<Problem> QuoteBook::put_answer(const QuoteAnswer& answer) {
    const Result<QVariant> last = database_.value("SELECT max(seq) FROM quote_answer");
    if (!last) return last.problems().front();
    return database_.run(
        "INSERT INTO quote_answer (seq, id, quote_id, answer, on_day, who, note, entered_by, entered_at) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {QVariant::fromValue(last.value().toLongLong() + 1), to_qt(answer.id), to_qt(answer.quote_id),
         QString::fromLatin1(key_of(answer.answer)), to_qt(answer.on), to_qt(answer.who), to_qt(answer.note),
         to_qt(answer.entered_by), to_qt(answer.entered_at)});
}

Result<bool> QuoteBook::has_paper(const std::string& quote_id) const {
    const Result<QVariant> found = database_.value("SELECT 1 FROM quote_paper WHERE quote_id = ?", {to_qt(quote_id)});
    if (!found) return found.problems();
    return found.value().isValid();
}

Result<IssuedQuote> QuoteBook::issue(const IssuedQuote& quote, std::string_view pdf, Instant now) {
    const std::string where = "paper of quote " + for_message(quote.number);
    if (pdf.substr(0, 5) != "%PDF-" || pdf.size() > max_paper_bytes)
        return Problem{where, "is no PDF, or larger than 60 MiB", "Print the quote again"};
    auto* store = dynamic_cast<SqlStore*>(&store_);
    if (store == nullptr) return store_.issue_quote(quote);  // a store that keeps no papers
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<IssuedQuote> issued = store->insert_quote(quote);
    if (!issued) return issued;
    if (auto problem = put_paper(quote.id, pdf, iso8601(now))) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return issued;
}

Result<IssuedQuote> QuoteBook::issue_next(const IssuedQuote& quote, const PrintNumbered& print, Instant now) {
    auto* store = dynamic_cast<SqlStore*>(&store_);
    if (store == nullptr) return Problem{"quote", "this store gives no numbers", "Open the firm's jobs"};
    IssuedQuote numbered = quote;
    IssuedQuote issued;
    const auto given = keep_numbered(store_, {NumberKind::quote, quote.id, "quote"}, now, print,
                                     [&](const std::string& number, const std::string& pdf) -> std::optional<Problem> {
                                         numbered.number = number;
                                         Result<IssuedQuote> inserted = store->insert_quote(numbered);
                                         if (!inserted) return inserted.problems().front();
                                         issued = std::move(inserted).value();
                                         return put_paper(quote.id, pdf, iso8601(now));
                                     });
    if (!given) return given.problems();
    return issued;
}

std::optional<Problem> QuoteBook::put_signature(const std::string& answer_id, std::string_view image) {
    const bool png = image.substr(0, 8) == std::string_view("\x89PNG\r\n\x1A\n", 8);
    const bool jpeg = image.substr(0, 3) == std::string_view("\xFF\xD8\xFF", 3);
    if ((!png && !jpeg) || image.size() > max_signature_bytes)
        return Problem{"signature", "is neither PNG nor JPEG, or larger than 1 MiB", "Scan it anew, smaller"};
    const QByteArray content(image.data(), static_cast<qsizetype>(image.size()));
    return database_.run("INSERT INTO answer_signature (answer_id, sha256, content) VALUES (?, ?, ?)",
                         {to_qt(answer_id), to_qt(sha256_hex(std::string(image))), content});
}

Result<std::string> QuoteBook::signature(const std::string& answer_id) const {
    return hashed_content(database_, "SELECT sha256, content FROM answer_signature WHERE answer_id = ?",
                          {to_qt(answer_id)}, "signature",
                          {"answer", "has no signature kept with it", "See the paper that was signed"});
}

Result<std::string> QuoteBook::paper(const std::string& quote_id) const {
    return hashed_content(database_, "SELECT sha256, content FROM quote_paper WHERE quote_id = ?", {to_qt(quote_id)},
                          "paper of a quote",
                          {"quote", "has no paper kept with it: an older program issued it", "Print it from the job"});
}

std::optional<Problem> QuoteBook::refuse(const QuoteAnswer& answer) const {
    Result<QSqlQuery> quote =
        database_.query("SELECT number, issued_at FROM quote_issued WHERE id = ?", {to_qt(answer.quote_id)});
    if (!quote) return quote.problems().front();
    if (!quote.value().next()) return Problem{"answer", "names a quote that is not here", "Read the list again"};
    const std::string number = "quote " + for_message(quote.value().value(0).toString().toStdString());
    const std::string issued = quote.value().value(1).toString().toStdString().substr(0, 10);
    if (!is_uuid(answer.id)) return Problem{number, "the answer has no id", "Enter it again"};
    if (!date_from_iso8601(answer.on))
        return Problem{number, "was answered on '" + for_message(answer.on) + "'", "Write the day as 2027-06-21"};
    // A quote is dated in UTC: where the clock is ahead, the answer may bear the day before.
    const CivilDate day = date_from_iso8601(answer.on).value();
    const Result<CivilDate> issued_day = date_from_iso8601(issued);
    if (issued_day && days_from_civil(day) + 1 < days_from_civil(issued_day.value()))
        return Problem{number, "was issued on " + issued + ", after the day of the answer", "Check the day"};
    if (answer.who.size() > 200 || answer.note.size() > 2000 || !is_utf8(answer.who) || !is_utf8(answer.note))
        return Problem{number, "the answer's name or note is too long or no text", "Write it shorter"};
    if (answer.answer == Answer::accepted && answer.who.find_first_not_of(' ') == std::string::npos)
        return Problem{number, "nobody is named who accepted it", "Enter the client's name"};
    const Result<QVariant> last = database_.value(
        "SELECT answer FROM quote_answer WHERE quote_id = ? ORDER BY seq DESC LIMIT 1", {to_qt(answer.quote_id)});
    if (!last) return last.problems().front();
    const QString before = last.value().toString();
    if (before == "accepted" && answer.answer != Answer::withdrawn)
        return Problem{number, "was accepted already", "Withdraw it first, or issue a new one"};
    if (before == "withdrawn") return Problem{number, "was withdrawn", "Issue a new one"};
    return std::nullopt;
}

Result<QuoteAnswer> QuoteBook::answer(const QuoteAnswer& answer, Instant now, std::string_view signature) {
    if (!signature.empty() && answer.answer != Answer::accepted)
        return Problem{"signature", "stands under something else than an acceptance", "Enter the answer without it"};
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    if (auto problem = refuse(answer)) return *problem;
    QuoteAnswer entered = answer;
    entered.entered_by = store_.by();
    entered.entered_at = iso8601(now);
    if (auto problem = put_answer(entered)) return *problem;
    if (!signature.empty()) {
        if (auto problem = put_signature(entered.id, signature)) return *problem;
        entered.signature_sha256 = sha256_hex(std::string(signature));
    }
    if (auto problem = transaction.commit()) return *problem;
    return entered;
}

Result<std::map<std::string, std::vector<QuoteAnswer>>> QuoteBook::answers(const std::string& job_id) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT a.id, a.quote_id, a.answer, a.on_day, a.who, a.note, a.entered_by, a.entered_at, "
        "coalesce(s.sha256, '') FROM quote_answer a JOIN quote_issued q ON q.id = a.quote_id "
        "LEFT JOIN answer_signature s ON s.answer_id = a.id WHERE q.job_id = ? ORDER BY a.seq",
        {to_qt(job_id)});
    if (!found) return found.problems();
    std::map<std::string, std::vector<QuoteAnswer>> out;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        QuoteAnswer one{at(0), at(1), Answer::declined, at(3), at(4), at(5), at(6), at(7), at(8)};
        const std::string word = at(2);
        for (const auto& [value, text] : answer_words) {
            if (word == text) one.answer = value;
        }
        out[one.quote_id].push_back(std::move(one));
    }
    return out;
}

Result<std::vector<std::string>> damaged_papers(const Database& database) {
    return rows_without_hash(
        database, "SELECT p.sha256, p.content, q.number FROM quote_paper p JOIN quote_issued q ON q.id = p.quote_id");
}

Result<std::vector<std::string>> damaged_signatures(const Database& database) {
    return rows_without_hash(
        database,
        "SELECT s.sha256, s.content, q.number FROM answer_signature s JOIN quote_answer a ON a.id = s.answer_id "
        "JOIN quote_issued q ON q.id = a.quote_id");
}

}  // namespace wg::store
