#include "core/store/price_book.h"

#include <QVariant>

#include "core/parts/prices.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* version_columns = "list_id, version, withdrawn, came, note, saved_by, saved_at, sha256";
constexpr std::size_t longest_list_id = 100;
constexpr std::size_t longest_list_note = 2000;

std::string text_in(const QSqlQuery& row, int column) {
    return row.value(column).toString().toStdString();
}

PriceListVersion price_list_row(const QSqlQuery& row) {
    PriceListVersion out;
    out.list_id = text_in(row, 0);
    out.version = row.value(1).toInt();
    out.withdrawn = row.value(2).toInt() != 0;
    out.came = row.value(3).toInt() != 0;
    out.note = text_in(row, 4);
    out.saved_by = text_in(row, 5);
    out.saved_at = text_in(row, 6);
    out.sha256 = text_in(row, 7);
    return out;
}

std::string list_name(const std::string& id) {
    return "price list " + for_message(id);
}

std::optional<Problem> refuse_list(const std::string& id, const std::string& content, const std::string& note) {
    if (id.empty() || id.size() > longest_list_id || !is_utf8(id))
        return Problem{list_name(id), "has no id of 1 to 100 characters", "Give the list a short id, e.g. firm-2027"};
    // Qt would drop a byte order mark, and the text would lose its hash: the first byte has to be the file's own.
    if (content.empty() || content.front() != '{')
        return Problem{list_name(id), "does not begin as a price list file", "Write the list to a file again"};
    const Result<parts::PriceList> read = parts::price_list_from_json(content, list_name(id));
    if (!read) return read.problems().front();
    if (read.value().id != id)
        return Problem{list_name(id), "calls itself '" + for_message(read.value().id) + "'",
                       "Keep it under the id that stands in it"};
    if (note.size() > longest_list_note || !is_utf8(note))
        return Problem{list_name(id), "the note is longer than 2,000 characters", "Write it shorter"};
    return std::nullopt;
}

}  // namespace

Result<PriceListVersion> PriceBook::add(const std::string& list_id, const std::string& content, int based_on,
                                        const std::string& note, bool withdrawn, Instant now) {
    if (auto problem = refuse_list(list_id, content, note)) return *problem;
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::vector<PriceListVersion>> before = history(list_id);
    if (!before) return before.problems();
    const PriceListVersion newest = before.value().empty() ? PriceListVersion{} : before.value().front();
    if (newest.version != based_on) {
        if (based_on == 0)
            return Problem{list_name(list_id), "is in the book already", "Give the new list an id of its own"};
        return Problem{
            list_name(list_id),
            "was changed by " + (newest.saved_by.empty() ? "somebody" : newest.saved_by) + " at " + newest.saved_at,
            "Read the list again and make the change in what is there now"};
    }
    PriceListVersion made;
    made.list_id = list_id;
    made.version = newest.version + 1;
    made.withdrawn = withdrawn;
    made.note = note;
    made.saved_by = store_.by();
    made.saved_at = iso8601(now);
    made.sha256 = sha256_hex(content);
    if (newest.version > 0 && newest.sha256 == made.sha256 && newest.withdrawn == withdrawn)
        return Problem{list_name(list_id), "is as it was saved last", "There is nothing to save"};
    if (auto problem = insert(made, content)) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return made;
}

std::optional<Problem> PriceBook::insert(const PriceListVersion& version, const std::string& content) {
    return database_.run(
        "INSERT INTO price_list (list_id, version, withdrawn, came, note, saved_by, saved_at, sha256, content) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {to_qt(version.list_id), version.version, version.withdrawn ? 1 : 0, version.came ? 1 : 0, to_qt(version.note),
         to_qt(version.saved_by), to_qt(version.saved_at), to_qt(version.sha256), to_qt(content)});
}

Result<bool> PriceBook::put_from_elsewhere(const std::string& list_id, const std::string& content,
                                           const std::string& saved_at, const std::string& note) {
    if (auto problem = refuse_list(list_id, content, note)) return *problem;
    const Result<std::vector<PriceListVersion>> here = history(list_id);
    if (!here) return here.problems();
    PriceListVersion made;
    made.sha256 = sha256_hex(content);
    for (const PriceListVersion& version : here.value())
        if (version.sha256 == made.sha256) return false;
    if (!here.value().empty() && (!here.value().front().came || here.value().front().saved_at >= saved_at))
        return false;
    made.came = true;
    made.list_id = list_id;
    made.version = here.value().empty() ? 1 : here.value().front().version + 1;
    made.note = note;
    made.saved_by = store_.by();
    made.saved_at = saved_at;  // which of two is newer has to come out the same on every machine
    if (auto problem = insert(made, content)) return *problem;
    return true;
}

Result<PriceListVersion> PriceBook::save(const std::string& list_id, const std::string& content, int based_on,
                                         const std::string& note, Instant now) {
    return add(list_id, content, based_on, note, false, now);
}

Result<PriceListVersion> PriceBook::withdraw(const std::string& list_id, int based_on, const std::string& note,
                                             Instant now) {
    if (based_on == 0) return Problem{list_name(list_id), "is not in the book", "Choose one that is"};
    const Result<std::string> text = content(list_id, based_on);
    if (!text) return text.problems();
    return add(list_id, text.value(), based_on, note, true, now);
}

Result<std::vector<PriceListVersion>> PriceBook::lists() const {
    Result<QSqlQuery> found = database_.query(
        QStringLiteral("SELECT %1 FROM price_list p "
                       "WHERE version = (SELECT max(version) FROM price_list l WHERE l.list_id = p.list_id) "
                       "ORDER BY list_id")
            .arg(QString::fromLatin1(version_columns)));
    if (!found) return found.problems();
    std::vector<PriceListVersion> out;
    while (found.value().next())
        out.push_back(price_list_row(found.value()));
    return out;
}

Result<std::vector<PriceListVersion>> PriceBook::history(const std::string& list_id) const {
    Result<QSqlQuery> found =
        database_.query(QStringLiteral("SELECT %1 FROM price_list WHERE list_id = ? ORDER BY version DESC")
                            .arg(QString::fromLatin1(version_columns)),
                        {to_qt(list_id)});
    if (!found) return found.problems();
    std::vector<PriceListVersion> out;
    while (found.value().next())
        out.push_back(price_list_row(found.value()));
    return out;
}

Result<std::string> PriceBook::content(const std::string& list_id, int version) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT content, sha256 FROM price_list WHERE list_id = ? AND version = ?", {to_qt(list_id), version});
    if (!found) return found.problems();
    if (!found.value().next())
        return Problem{list_name(list_id), "version " + std::to_string(version) + " is not in the book",
                       "Read the lists again"};
    std::string text = text_in(found.value(), 0);
    if (sha256_hex(text) != text_in(found.value(), 1))
        return Problem{list_name(list_id), "version " + std::to_string(version) + " is damaged: it lost its hash",
                       "Go back to the last backup"};
    return text;
}

Result<std::vector<std::string>> damaged_price_lists(const Database& database) {
    Result<QSqlQuery> found =
        database.query("SELECT list_id, version, sha256, content FROM price_list", {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (sha256_hex(text_in(row, 3)) == text_in(row, 2)) continue;
        out.push_back(list_name(text_in(row, 0)) + ", version " + std::to_string(row.value(1).toInt()));
    }
    return out;
}

}  // namespace wg::store
