#include "core/store/versioned_texts.h"

#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/hashed_rows.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

std::string words_at(const QSqlQuery& row, int column) {
    return row.value(column).toString().toStdString();
}

TextVersion version_at(const QSqlQuery& row, Ask ask) {
    TextVersion out;
    out.id = words_at(row, 0);
    out.version = row.value(1).toLongLong();
    out.withdrawn = row.value(2).toInt() != 0;
    out.came = row.value(3).toInt() != 0;
    out.note = words_at(row, 4);
    out.saved_by = words_at(row, 5);
    out.saved_at = words_at(row, 6);
    out.sha256 = words_at(row, 7);
    if (ask == Ask::rows) return out;
    out.content = bytes_of(row.value(8));
    out.damaged = sha256_hex(out.content) != out.sha256;
    return out;
}

QVariant whole(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

std::string text_named(const TextTable& table, std::string_view id) {
    std::string out = table.what;
    out.append(" '").append(for_message(std::string(id))).append("'");
    return out;
}

QString words_of_table(const char* words) {
    return QString::fromLatin1(words);
}

}  // namespace

VersionedTexts::VersionedTexts(Store& store, const TextTable& table)
    : store_(store), database_(store.database()), table_(table) {}

std::string VersionedTexts::name_of(std::string_view id) const {
    return text_named(table_, id);
}

Result<std::vector<TextVersion>> VersionedTexts::read(const std::string& id, bool newest_only, Ask ask) const {
    const QString table = words_of_table(table_.table);
    const QString id_column = words_of_table(table_.id_column);
    QString sql = QStringLiteral("SELECT %1, version, withdrawn, came, %2, saved_by, saved_at, sha256%3 FROM %4 t")
                      .arg(id_column, words_of_table(table_.note_column),
                           words_of_table(ask == Ask::contents ? ", content" : ""), table);
    QStringList conditions;
    if (newest_only)
        conditions
            << QStringLiteral("version = (SELECT max(n.version) FROM %1 n WHERE n.%2 = t.%2)").arg(table, id_column);
    QVariantList values;
    if (!id.empty()) {
        conditions << id_column + QStringLiteral(" = ?");
        values << to_qt(id);
    }
    if (!conditions.isEmpty()) sql += QStringLiteral(" WHERE ") + conditions.join(QStringLiteral(" AND "));
    sql += QStringLiteral(" ORDER BY %1, version DESC").arg(id_column);
    Result<QSqlQuery> found = database_.query(sql, values);
    if (!found) return found.problems();
    std::vector<TextVersion> out;
    while (found.value().next())
        out.push_back(version_at(found.value(), ask));
    return out;
}

Result<std::vector<TextVersion>> VersionedTexts::newest_of_each(Ask ask) const {
    return read({}, true, ask);
}

Result<std::optional<TextVersion>> VersionedTexts::newest(const std::string& id, Ask ask) const {
    if (id.empty()) return std::optional<TextVersion>{};
    Result<std::vector<TextVersion>> found = read(id, true, ask);
    if (!found) return found.problems();
    if (found.value().empty()) return std::optional<TextVersion>{};
    return std::optional<TextVersion>(std::move(found.value().front()));
}

Result<std::vector<TextVersion>> VersionedTexts::history(const std::string& id, Ask ask) const {
    if (id.empty()) return std::vector<TextVersion>{};
    return read(id, false, ask);
}

Result<std::string> VersionedTexts::content(const std::string& id, std::int64_t version) const {
    const std::string which = "version " + std::to_string(version) + " of " + name_of(id);
    return hashed_content(database_,
                          QStringLiteral("SELECT sha256, content FROM %1 WHERE %2 = ? AND version = ?")
                              .arg(words_of_table(table_.table), words_of_table(table_.id_column)),
                          {to_qt(id), whole(version)}, which,
                          {which, std::string("is not in ") + table_.place, "Read the list again"});
}

Result<std::optional<TextVersion>> VersionedTexts::followed(const std::string& id, std::int64_t based_on,
                                                            Ask ask) const {
    Result<std::optional<TextVersion>> found = newest(id, ask);
    if (!found) return found;
    const std::string place = table_.place;
    if (!found.value()) {
        if (based_on == 0) return found;
        return Problem{name_of(id), "is not in " + place, "Read the list again"};
    }
    const TextVersion& there = *found.value();
    if (there.version == based_on) return found;
    if (based_on == 0)
        return Problem{name_of(id), "is in " + place + " already, at version " + std::to_string(there.version),
                       "Give the new one an id of its own, or change the one that is there"};
    return Problem{name_of(id),
                   "was changed by " +
                       (there.saved_by.empty() ? std::string("somebody") : for_message(there.saved_by)) + " at " +
                       there.saved_at + ": it is at version " + std::to_string(there.version) +
                       ", and this was version " + std::to_string(based_on),
                   "Read the list again and make the change in what is there now"};
}

Result<TextVersion> VersionedTexts::put_after(std::int64_t after, TextVersion version, Instant now) const {
    version.version = after + 1;
    version.came = false;
    version.damaged = false;
    version.saved_at = iso8601(now);
    version.saved_by = store_.by();
    version.sha256 = sha256_hex(version.content);
    if (auto problem = insert(version)) return *problem;
    return version;
}

Result<TextVersion> VersionedTexts::save(const TextVersion& version, std::int64_t based_on, Instant now) const {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<TextVersion>> before = followed(version.id, based_on, Ask::rows);
    if (!before) return before.problems();
    if (before.value() && before.value()->sha256 == sha256_hex(version.content) &&
        before.value()->withdrawn == version.withdrawn)
        return Problem{name_of(version.id), "is as it was saved last", "There is nothing to save"};
    Result<TextVersion> saved = put_after(based_on, version, now);
    if (!saved) return saved;
    if (auto problem = transaction.commit()) return *problem;
    return saved;
}

Result<TextVersion> VersionedTexts::withdraw(const std::string& id, std::int64_t based_on, const std::string& note,
                                             Instant now) const {
    if (based_on == 0) return Problem{name_of(id), std::string("is not in ") + table_.place, "Choose one that is"};
    Result<std::string> text = content(id, based_on);
    if (!text) return text.problems();
    TextVersion version;
    version.id = id;
    version.withdrawn = true;
    version.note = note;
    version.content = std::move(text).value();
    return save(version, based_on, now);
}

Result<bool> VersionedTexts::put_from_elsewhere(TextVersion version) const {
    const Result<std::vector<TextVersion>> here = history(version.id, Ask::rows);
    if (!here) return here.problems();
    version.sha256 = sha256_hex(version.content);
    for (const TextVersion& known : here.value())
        if (known.sha256 == version.sha256) return false;
    version.version = 1;
    if (!here.value().empty()) {
        const TextVersion& newest_here = here.value().front();
        if (!newest_here.came || newest_here.saved_at >= version.saved_at) return false;
        version.version = newest_here.version + 1;
    }
    version.came = true;
    version.withdrawn = false;
    version.saved_by = store_.by();
    // saved_at stays: which of two is newer has to come out the same on every machine.
    if (auto problem = insert(version)) return *problem;
    return true;
}

std::optional<Problem> VersionedTexts::insert(const TextVersion& version) const {
    return database_.run(
        QStringLiteral("INSERT INTO %1 (%2, version, withdrawn, came, %3, saved_by, saved_at, sha256, content) "
                       "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
            .arg(words_of_table(table_.table), words_of_table(table_.id_column), words_of_table(table_.note_column)),
        {to_qt(version.id), whole(version.version), version.withdrawn ? 1 : 0, version.came ? 1 : 0,
         to_qt(version.note), to_qt(version.saved_by), to_qt(version.saved_at), to_qt(version.sha256),
         to_qt(version.content)});
}

Result<std::vector<std::string>> damaged_versions_of(const Database& database, const TextTable& table) {
    return rows_without_hash(database,
                             QStringLiteral("SELECT sha256, content, %2, version FROM %1")
                                 .arg(words_of_table(table.table), words_of_table(table.id_column)),
                             [&table](const QSqlQuery& row) {
                                 return "version " + std::to_string(row.value(3).toLongLong()) + " of " +
                                        text_named(table, words_at(row, 2));
                             });
}

}  // namespace wg::store
