#include "core/store/entries_kept.h"

#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t most_entry_bytes = std::size_t{16} << 20U;

QString book_key(EntryBook book) {
    return book == EntryBook::equipment ? QStringLiteral("equipment") : QStringLiteral("prices");
}

}  // namespace

Result<bool> EntriesKept::keep(EntryBook book, const KeptEntry& entry, Instant now) {
    if (!is_utf8(entry.content) || !is_utf8(entry.entry) || entry.content.size() > most_entry_bytes ||
        entry.content.find('\0') != std::string::npos)
        return Problem{"entries of " + for_message(entry.entry), "are no text, or longer than 16 MiB",
                       "Save them as a version soon: a crash would lose them"};
    if (auto problem =
            database_.run("INSERT INTO entries_kept (book, kept_by, entry, based_on, kept_at, content, text_sha256) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (book, kept_by, entry) DO UPDATE SET "
                          "based_on = excluded.based_on, kept_at = excluded.kept_at, content = excluded.content, "
                          "text_sha256 = excluded.text_sha256",
                          {book_key(book), to_qt(store_.by()), to_qt(entry.entry),
                           QVariant::fromValue(static_cast<qlonglong>(entry.based_on)), to_qt(iso8601(now)),
                           to_qt(entry.content), to_qt(sha256_hex(entry.content))}))
        return *problem;
    return true;
}

Result<KeptEntries> EntriesKept::all(EntryBook book) const {
    Result<QSqlQuery> found = database_.query(
        "SELECT entry, based_on, kept_at, content, text_sha256 FROM entries_kept WHERE book = ? AND kept_by = ? "
        "ORDER BY entry",
        {book_key(book), to_qt(store_.by())});
    if (!found) return found.problems();
    KeptEntries out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        const auto text = [&row](int column) { return row.value(column).toString().toStdString(); };
        KeptEntry entry{text(0), row.value(1).toLongLong(), text(2), text(3)};
        if (sha256_hex(entry.content) == text(4))
            out.entries.push_back(std::move(entry));
        else
            out.damaged.push_back({"entries of " + for_message(entry.entry) + " that were not saved",
                                   "are damaged: their text no longer has its hash", "Enter them again"});
    }
    return out;
}

Result<bool> EntriesKept::forget(EntryBook book, const std::string& entry) {
    if (auto problem = database_.run("DELETE FROM entries_kept WHERE book = ? AND kept_by = ? AND entry = ?",
                                     {book_key(book), to_qt(store_.by()), to_qt(entry)}))
        return *problem;
    return true;
}

}  // namespace wg::store
