#include "core/store/equipment_book.h"

#include <QVariant>
#include <optional>

#include "core/equipment/codec.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::pair<ItemKind, const char*> kind_words[] = {{ItemKind::collector, "collector"},
                                                           {ItemKind::block, "block"},
                                                           {ItemKind::cylinder, "cylinder"},
                                                           {ItemKind::fixing_method, "fixing_method"}};

std::optional<ItemKind> kind_from_key(const QString& key) {
    for (const auto& [kind, word] : kind_words) {
        if (key == QLatin1String(word)) return kind;
    }
    return std::nullopt;
}

std::string item_named(const std::string& id) {
    return "equipment '" + for_message(id) + "'";
}

struct OneItem {
    std::string id;
    ItemKind kind = ItemKind::collector;
};

Result<OneItem> one_item(std::string_view text) {
    if (text.size() > max_item_bytes)
        return Problem{"equipment", "is longer than 256 KiB", "Save one item at a time, without a long note"};
    // SQLite drops a byte order mark, and the text would come back without its hash.
    if (text.substr(0, 3) == "\xEF\xBB\xBF")
        return Problem{"equipment", "begins with a byte order mark", "Save the file as UTF-8 without one"};
    const Result<Catalogue> read = catalogue_from_json(text, "equipment");
    if (!read) return read.problems();
    const Catalogue& c = read.value();
    const std::size_t count = c.collectors.size() + c.blocks.size() + c.cylinders.size() + c.fixing_methods.size();
    if (count != 1)
        return Problem{"equipment", "holds " + std::to_string(count) + " items instead of one",
                       "Save each item by itself"};
    if (!c.collectors.empty()) return OneItem{c.collectors.front().id, ItemKind::collector};
    if (!c.blocks.empty()) return OneItem{c.blocks.front().id, ItemKind::block};
    if (!c.cylinders.empty()) return OneItem{c.cylinders.front().id, ItemKind::cylinder};
    return OneItem{c.fixing_methods.front().id, ItemKind::fixing_method};
}

// Columns: item_id, version, kind, content, sha256, withdrawn, saved_at, saved_by, approved_by, approved_at.
Result<EquipmentVersion> version_of_row(const QSqlQuery& row) {
    EquipmentVersion out;
    out.item_id = row.value(0).toString().toStdString();
    out.version = row.value(1).toLongLong();
    const std::optional<ItemKind> kind = kind_from_key(row.value(2).toString());
    out.content = row.value(3).toString().toStdString();
    out.sha256 = row.value(4).toString().toStdString();
    if (!kind || sha256_hex(out.content) != out.sha256)
        return Problem{item_named(out.item_id),
                       "version " + std::to_string(out.version) + " is damaged: its text no longer has its hash",
                       "Save the item again, or go back to the last backup"};
    out.kind = *kind;
    out.withdrawn = row.value(5).toLongLong() != 0;
    out.came = row.value(6).toLongLong() != 0;
    out.saved_at = row.value(7).toString().toStdString();
    out.saved_by = row.value(8).toString().toStdString();
    out.approved_by = row.value(9).toString().toStdString();
    out.approved_at = row.value(10).toString().toStdString();
    return out;
}

constexpr const char* select_versions =
    "SELECT v.item_id, v.version, v.kind, v.content, v.sha256, v.withdrawn, v.came, v.saved_at, v.saved_by, "
    "a.approved_by, "
    "a.approved_at FROM equipment_version v LEFT JOIN equipment_approval a ON a.item_id = v.item_id AND a.version = "
    "v.version AND a.seq = (SELECT max(b.seq) FROM equipment_approval b WHERE b.item_id = v.item_id AND b.version = "
    "v.version)";

}  // namespace

const char* key_of(ItemKind kind) noexcept {
    for (const auto& [value, word] : kind_words) {
        if (value == kind) return word;
    }
    return "";
}

Result<EquipmentKept> EquipmentBook::read(const std::string& item_id, bool all) const {
    QString sql = QString::fromLatin1(select_versions);
    QVariantList values;
    if (!all) sql += " WHERE v.version = (SELECT max(w.version) FROM equipment_version w WHERE w.item_id = v.item_id)";
    if (!item_id.empty()) {
        sql += all ? " WHERE v.item_id = ?" : " AND v.item_id = ?";
        values << to_qt(item_id);
    }
    sql += " ORDER BY v.item_id, v.version DESC";
    Result<QSqlQuery> found = database_.query(sql, values);
    if (!found) return found.problems();
    EquipmentKept out;
    while (found.value().next()) {
        Result<EquipmentVersion> one = version_of_row(found.value());
        if (one) {
            out.items.push_back(std::move(one).value());
        } else {
            out.damaged.push_back(one.problems().front());
        }
    }
    return out;
}

Result<EquipmentKept> EquipmentBook::current() const {
    return read({}, false);
}

Result<EquipmentKept> EquipmentBook::history(const std::string& item_id) const {
    if (item_id.empty()) return EquipmentKept{};
    return read(item_id, true);
}

Result<EquipmentVersion> EquipmentBook::newest(const std::string& item_id, std::int64_t from_version) const {
    Result<EquipmentKept> kept = item_id.empty() ? Result<EquipmentKept>(EquipmentKept{}) : read(item_id, false);
    if (!kept) return kept.problems();
    if (!kept.value().damaged.empty()) return kept.value().damaged.front();
    if (kept.value().items.empty())
        return Problem{item_named(item_id), "is not in the firm's list", "Read the list again"};
    EquipmentVersion& found = kept.value().items.front();
    if (found.version != from_version)
        return Problem{item_named(item_id),
                       "is at version " + std::to_string(found.version) + " since " + found.saved_at +
                           (found.saved_by.empty() ? std::string() : ", saved by " + for_message(found.saved_by)) +
                           ", and this was version " + std::to_string(from_version),
                       "Look at the newest version, then make the change again"};
    return std::move(found);
}

Result<EquipmentVersion> EquipmentBook::put(EquipmentVersion version, Instant now) const {
    ++version.version;
    version.saved_at = iso8601(now);
    version.saved_by = store_.by();
    version.approved_by.clear();
    version.approved_at.clear();
    version.came = false;
    if (auto problem = insert(version)) return *problem;
    return version;
}

std::optional<Problem> EquipmentBook::insert(const EquipmentVersion& version) const {
    return database_.run(
        "INSERT INTO equipment_version (item_id, version, kind, content, sha256, withdrawn, came, saved_at, saved_by) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {to_qt(version.item_id), QVariant::fromValue(static_cast<qlonglong>(version.version)),
         QString::fromLatin1(key_of(version.kind)), to_qt(version.content), to_qt(version.sha256),
         version.withdrawn ? 1 : 0, version.came ? 1 : 0, to_qt(version.saved_at), to_qt(version.saved_by)});
}

Result<bool> EquipmentBook::put_from_elsewhere(const std::string& item_id, const std::string& text,
                                               const std::string& saved_at) {
    const Result<OneItem> item = one_item(text);
    if (!item) return item.problems();
    if (item.value().id != item_id)
        return Problem{item_named(item_id), "calls itself '" + for_message(item.value().id) + "'",
                       "Ask for the file to be exported and sent again"};
    const Result<EquipmentKept> here = history(item_id);
    if (!here) return here.problems();
    if (!here.value().damaged.empty()) return here.value().damaged.front();
    EquipmentVersion made;
    made.item_id = item_id;
    made.version = 1;
    made.kind = item.value().kind;
    made.content = text;
    made.sha256 = sha256_hex(text);
    made.came = true;
    made.saved_at = saved_at;  // which of two is newer has to come out the same on every machine
    made.saved_by = store_.by();
    for (const EquipmentVersion& known : here.value().items)
        if (known.sha256 == made.sha256) return false;
    if (!here.value().items.empty()) {
        const EquipmentVersion& newest_here = here.value().items.front();
        if (!newest_here.came || newest_here.saved_at >= saved_at) return false;
        if (newest_here.kind != made.kind)
            return Problem{item_named(item_id), std::string("is a ") + key_of(newest_here.kind) + " here",
                           "Give one of the two an id of its own"};
        made.version = newest_here.version + 1;
    }
    if (auto problem = insert(made)) return *problem;
    return true;
}

Result<EquipmentVersion> EquipmentBook::save(std::string_view text, std::int64_t from_version, Instant now) {
    const Result<OneItem> item = one_item(text);
    if (!item) return item.problems();
    const std::string& item_id = item.value().id;
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<QVariant> last =
        database_.value("SELECT max(version) FROM equipment_version WHERE item_id = ?", {to_qt(item_id)});
    if (!last) return last.problems();
    EquipmentVersion next;
    next.item_id = item_id;
    next.kind = item.value().kind;
    const std::int64_t stored = last.value().toLongLong();
    if (from_version == 0 && stored != 0)
        return Problem{item_named(item_id), "is in the firm's list already, at version " + std::to_string(stored),
                       "Give the new item an id of its own, or change the one that is there"};
    if (from_version != 0) {
        const Result<QVariant> sound = database_.value(
            "SELECT version FROM equipment_version WHERE item_id = ? AND version = ? AND version = "
            "(SELECT max(version) FROM equipment_version WHERE item_id = ?)",
            {to_qt(item_id), QVariant::fromValue(static_cast<qlonglong>(from_version)), to_qt(item_id)});
        if (!sound) return sound.problems();
        const Result<EquipmentVersion> before = newest(item_id, from_version);
        // A version that is damaged may be followed by one that is whole.
        if (!before && !sound.value().isValid()) return before.problems();
        if (before && before.value().kind != next.kind)
            return Problem{item_named(item_id), std::string("is a ") + key_of(before.value().kind) + " in the list",
                           "Give the new item an id of its own"};
        if (before && !before.value().withdrawn && before.value().content == text) return before;
        next.version = from_version;
    }
    next.content = std::string(text);
    next.sha256 = sha256_hex(next.content);
    Result<EquipmentVersion> saved = put(std::move(next), now);
    if (!saved) return saved;
    if (auto problem = transaction.commit()) return *problem;
    return saved;
}

Result<EquipmentVersion> EquipmentBook::turn(const std::string& item_id, std::int64_t from_version, bool withdrawn,
                                             Instant now) const {
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<EquipmentVersion> before = newest(item_id, from_version);
    if (!before || before.value().withdrawn == withdrawn) return before;
    EquipmentVersion next = std::move(before).value();
    next.withdrawn = withdrawn;
    Result<EquipmentVersion> saved = put(std::move(next), now);
    if (!saved) return saved;
    if (auto problem = transaction.commit()) return *problem;
    return saved;
}

Result<EquipmentVersion> EquipmentBook::withdraw(const std::string& item_id, std::int64_t from_version, Instant now) {
    return turn(item_id, from_version, true, now);
}

Result<EquipmentVersion> EquipmentBook::bring_back(const std::string& item_id, std::int64_t from_version, Instant now) {
    return turn(item_id, from_version, false, now);
}

Result<EquipmentVersion> EquipmentBook::approve(const std::string& item_id, std::int64_t version,
                                                const std::string& who, Instant now) {
    if (who.size() > max_approver_bytes || !is_utf8(who) || who.find('\0') != std::string::npos ||
        who.find_first_not_of(' ') == std::string::npos)
        return Problem{item_named(item_id), "nobody is named who approves it, or the name is too long",
                       "Enter the name of who answers for these data"};
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<EquipmentVersion> found = newest(item_id, version);
    if (!found) return found;
    if (found.value().withdrawn)
        return Problem{item_named(item_id), "is withdrawn", "Bring it back before it is approved"};
    const Result<QVariant> last = database_.value("SELECT max(seq) FROM equipment_approval");
    if (!last) return last.problems();
    found.value().approved_by = who;
    found.value().approved_at = iso8601(now);
    const std::optional<Problem> problem = database_.run(
        "INSERT INTO equipment_approval (seq, item_id, version, approved_by, entered_by, approved_at) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        {QVariant::fromValue(last.value().toLongLong() + 1), to_qt(item_id),
         QVariant::fromValue(static_cast<qlonglong>(version)), to_qt(who), to_qt(store_.by()),
         to_qt(found.value().approved_at)});
    if (problem) return *problem;
    if (auto failed = transaction.commit()) return *failed;
    return found;
}

Result<std::vector<std::string>> damaged_equipment(const Database& database) {
    Result<QSqlQuery> found =
        database.query("SELECT item_id, version, content, sha256 FROM equipment_version", {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (sha256_hex(row.value(2).toString().toStdString()) != row.value(3).toString().toStdString())
            out.push_back("version " + std::to_string(row.value(1).toLongLong()) + " of equipment '" +
                          for_message(row.value(0).toString().toStdString()) + "'");
    }
    return out;
}

}  // namespace wg::store
