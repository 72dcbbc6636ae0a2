// The firm's refrigerant register: added to, never changed.

#include <QVariant>
#include <cmath>

#include "core/quantity/utf8.h"
#include "core/quantity/uuid.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr double most_kg = 1e5;

QVariant text_or_null(const std::string& text) {
    return text.empty() ? QVariant() : QVariant(to_qt(text));
}

std::vector<Problem> check_entry(const RefrigerantEntry& entry) {
    std::vector<Problem> problems;
    const std::string where = "refrigerant register, entry of " + for_message(entry.on);
    if (!is_uuid(entry.id)) problems.push_back({where, "its id is not a UUID", "Enter it again"});
    if (!date_from_iso8601(entry.on)) problems.push_back({where, "its day cannot be read", "Write it as 2027-06-21"});
    if (!(entry.kg >= 0.0 && entry.kg <= most_kg))
        problems.push_back({where, "its mass is no mass", "Enter kilograms between 0 and 100 000"});
    if (entry.refrigerant.empty()) problems.push_back({where, "it names no refrigerant", "Choose one"});
    for (const std::string* text : {&entry.refrigerant, &entry.bottle, &entry.note, &entry.by}) {
        if (!is_utf8(*text)) problems.push_back({where, "holds something that is no text", "Enter it again"});
    }
    if (!entry.reading_id.empty() && entry.job_id.empty())
        problems.push_back({where, "names a reading and no job", "Enter it again"});
    return problems;
}

}  // namespace

std::optional<Problem> SqlStore::insert_refrigerant_entry(const RefrigerantEntry& entry, Instant now) const {
    // Numbered here, in the turn to write: a server's own counter leaves gaps when a write is undone.
    return database_->run(
        "INSERT INTO refrigerant_entry (seq, id, on_day, refrigerant, move, kg, bottle, note, entered_by, job_id, "
        "reading_id, corrects_id, entered_at) "
        "VALUES ((SELECT coalesce(max(seq), 0) + 1 FROM refrigerant_entry), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {to_qt(entry.id), to_qt(entry.on), to_qt(entry.refrigerant), QString(key_of(entry.move)), entry.kg,
         to_qt(entry.bottle), to_qt(entry.note), to_qt(entry.by), text_or_null(entry.job_id),
         text_or_null(entry.reading_id), text_or_null(entry.corrects_id), to_qt(iso8601(now))});
}

Result<bool> SqlStore::add_refrigerant_entry(const RefrigerantEntry& entry, Instant now) {
    if (std::vector<Problem> problems = check_entry(entry); !problems.empty()) return problems;
    const std::string where = "refrigerant register, entry of " + for_message(entry.on);
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    if (!entry.corrects_id.empty()) {
        const Result<QVariant> known =
            database_->value("SELECT count(*) FROM refrigerant_entry WHERE id = ?", {to_qt(entry.corrects_id)});
        if (!known) return known.problems();
        if (known.value().toInt() == 0)
            return Problem{where, "the entry it corrects is not in the register", "Read the register again"};
    }
    if (auto problem = insert_refrigerant_entry(entry, now)) return *problem;
    if (auto problem = transaction.commit()) return *problem;
    return true;
}

Result<int> SqlStore::mirror_refrigerant_entries(const std::vector<RefrigerantEntry>& entries, Instant now) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    int added = 0;
    for (const RefrigerantEntry& entry : entries) {
        const Result<QVariant> known =
            database_->value("SELECT count(*) FROM refrigerant_entry WHERE reading_id = ? OR id = ?",
                             {to_qt(entry.reading_id), to_qt(entry.id)});
        if (!known) return known.problems();
        if (known.value().toInt() != 0) continue;
        if (std::vector<Problem> problems = check_entry(entry); !problems.empty()) return problems;
        if (auto problem = insert_refrigerant_entry(entry, now)) return *problem;
        ++added;
    }
    if (auto problem = transaction.commit()) return *problem;
    return added;
}

Result<std::vector<RefrigerantEntry>> SqlStore::refrigerant_entries() {
    Result<QSqlQuery> found = database_->query(
        "SELECT id, on_day, refrigerant, move, kg, bottle, note, entered_by, job_id, reading_id, corrects_id "
        "FROM refrigerant_entry ORDER BY seq");
    if (!found) return found.problems();
    std::vector<RefrigerantEntry> out;
    QSqlQuery& row = found.value();
    const auto text = [&row](int column) { return row.value(column).toString().toStdString(); };
    while (row.next()) {
        const std::optional<RefrigerantMove> move = from_key<RefrigerantMove>(text(3));
        if (!move) {
            return Problem{database_->name(), "the refrigerant register has the unknown move '" + text(3) + "'",
                           "Open the database with the program that wrote it"};
        }
        out.push_back({text(0), text(1), text(2), *move, row.value(4).toDouble(), text(5), text(6), text(7), text(8),
                       text(9), text(10)});
    }
    return out;
}

}  // namespace wg::store
