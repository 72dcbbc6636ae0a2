#include "core/store/equipment_book.h"

#include <QVariant>
#include <map>
#include <optional>
#include <tuple>

#include "core/equipment/codec.h"
#include "core/quantity/utf8.h"
#include "core/store/database.h"
#include "core/store/text.h"
#include "core/store/versioned_texts.h"

namespace wg::store {
namespace {

constexpr TextTable equipment_kept{"equipment_version", "item_id", "kind", "equipment", "the firm's list"};
constexpr std::pair<ItemKind, const char*> kind_words[] = {{ItemKind::collector, "collector"},
                                                           {ItemKind::block, "block"},
                                                           {ItemKind::cylinder, "cylinder"},
                                                           {ItemKind::fixing_method, "fixing_method"}};

std::optional<ItemKind> kind_from_key(const std::string& key) {
    for (const auto& [kind, word] : kind_words) {
        if (key == word) return kind;
    }
    return std::nullopt;
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

Result<EquipmentVersion> version_of_item(const VersionedTexts& texts, TextVersion text) {
    const std::optional<ItemKind> kind = kind_from_key(text.note);
    if (!kind || text.damaged)
        return Problem{texts.name_of(text.id),
                       "version " + std::to_string(text.version) + " is damaged: its text no longer has its hash",
                       "Save the item again, or go back to the last backup"};
    EquipmentVersion out;
    out.item_id = std::move(text.id);
    out.version = text.version;
    out.kind = *kind;
    out.content = std::move(text.content);
    out.sha256 = std::move(text.sha256);
    out.withdrawn = text.withdrawn;
    out.came = text.came;
    out.saved_at = std::move(text.saved_at);
    out.saved_by = std::move(text.saved_by);
    return out;
}

TextVersion text_of_item(const OneItem& item, std::string_view content) {
    TextVersion out;
    out.id = item.id;
    out.note = key_of(item.kind);
    out.content = std::string(content);
    return out;
}

}  // namespace

const char* key_of(ItemKind kind) noexcept {
    for (const auto& [value, word] : kind_words) {
        if (value == kind) return word;
    }
    return "";
}

Result<EquipmentKept> EquipmentBook::with_approvals(const std::string& item_id, std::vector<TextVersion> texts) const {
    // The newest approval of each version.
    QString sql =
        "SELECT item_id, version, approved_by, approved_at FROM equipment_approval a WHERE seq = "
        "(SELECT max(b.seq) FROM equipment_approval b WHERE b.item_id = a.item_id AND b.version = a.version)";
    QVariantList values;
    if (!item_id.empty()) {
        sql += " AND item_id = ?";
        values << to_qt(item_id);
    }
    Result<QSqlQuery> found = database_.query(sql, values);
    if (!found) return found.problems();
    std::map<std::pair<std::string, std::int64_t>, std::pair<std::string, std::string>> approvals;
    while (found.value().next()) {
        const auto at = [&row = found.value()](int column) { return row.value(column).toString().toStdString(); };
        approvals[{at(0), found.value().value(1).toLongLong()}] = {at(2), at(3)};
    }
    const VersionedTexts kept(store_, equipment_kept);
    EquipmentKept out;
    for (TextVersion& text : texts) {
        Result<EquipmentVersion> one = version_of_item(kept, std::move(text));
        if (!one) {
            out.damaged.push_back(one.problems().front());
            continue;
        }
        EquipmentVersion& version = one.value();
        if (const auto approval = approvals.find({version.item_id, version.version}); approval != approvals.end())
            std::tie(version.approved_by, version.approved_at) = approval->second;
        out.items.push_back(std::move(version));
    }
    return out;
}

Result<EquipmentKept> EquipmentBook::current() const {
    Result<std::vector<TextVersion>> texts = VersionedTexts(store_, equipment_kept).newest_of_each(Ask::contents);
    if (!texts) return texts.problems();
    return with_approvals({}, std::move(texts).value());
}

Result<EquipmentKept> EquipmentBook::history(const std::string& item_id) const {
    Result<std::vector<TextVersion>> texts = VersionedTexts(store_, equipment_kept).history(item_id, Ask::contents);
    if (!texts) return texts.problems();
    return with_approvals(item_id, std::move(texts).value());
}

Result<EquipmentVersion> EquipmentBook::newest(const std::string& item_id, std::int64_t from_version) const {
    const VersionedTexts texts(store_, equipment_kept);
    Result<std::optional<TextVersion>> found = texts.followed(item_id, from_version, Ask::contents);
    if (!found) return found.problems();
    if (!found.value()) return Problem{texts.name_of(item_id), "is not in the firm's list", "Read the list again"};
    Result<EquipmentKept> kept = with_approvals(item_id, {std::move(*found.value())});
    if (!kept) return kept.problems();
    if (!kept.value().damaged.empty()) return kept.value().damaged.front();
    return std::move(kept.value().items.front());
}

Result<bool> EquipmentBook::put_from_elsewhere(const std::string& item_id, const std::string& text,
                                               const std::string& saved_at) {
    const VersionedTexts texts(store_, equipment_kept);
    const Result<OneItem> item = one_item(text);
    if (!item) return item.problems();
    if (item.value().id != item_id)
        return Problem{texts.name_of(item_id), "calls itself '" + for_message(item.value().id) + "'",
                       "Ask for the file to be exported and sent again"};
    TextVersion came = text_of_item(item.value(), text);
    came.saved_at = saved_at;
    const Result<std::optional<TextVersion>> here = texts.newest(item_id, Ask::rows);
    if (!here) return here.problems();
    if (here.value() && here.value()->note != came.note)
        return Problem{texts.name_of(item_id), "is a " + for_message(here.value()->note) + " here",
                       "Give one of the two an id of its own"};
    return texts.put_from_elsewhere(std::move(came));
}

Result<EquipmentVersion> EquipmentBook::save(std::string_view text, std::int64_t from_version, Instant now) {
    const VersionedTexts texts(store_, equipment_kept);
    const Result<OneItem> item = one_item(text);
    if (!item) return item.problems();
    TextVersion next = text_of_item(item.value(), text);
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    const Result<std::optional<TextVersion>> before = texts.followed(next.id, from_version, Ask::contents);
    if (!before) return before.problems();
    if (before.value()) {
        if (before.value()->note != next.note)
            return Problem{texts.name_of(next.id), "is a " + for_message(before.value()->note) + " in the list",
                           "Give the new item an id of its own"};
        // A version that is damaged may be followed by one that is whole.
        if (!before.value()->damaged && !before.value()->withdrawn && before.value()->content == text)
            return newest(next.id, from_version);
    }
    const Result<TextVersion> saved = texts.put_after(from_version, std::move(next), now);
    if (!saved) return saved.problems();
    if (auto problem = transaction.commit()) return *problem;
    return version_of_item(texts, saved.value());
}

Result<EquipmentVersion> EquipmentBook::turn(const std::string& item_id, std::int64_t from_version, bool withdrawn,
                                             Instant now) const {
    const VersionedTexts texts(store_, equipment_kept);
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<EquipmentVersion> before = newest(item_id, from_version);
    if (!before || before.value().withdrawn == withdrawn) return before;
    TextVersion next = text_of_item({item_id, before.value().kind}, before.value().content);
    next.withdrawn = withdrawn;
    const Result<TextVersion> saved = texts.put_after(from_version, std::move(next), now);
    if (!saved) return saved.problems();
    if (auto problem = transaction.commit()) return *problem;
    return version_of_item(texts, saved.value());
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
        return Problem{VersionedTexts(store_, equipment_kept).name_of(item_id),
                       "nobody is named who approves it, or the name is too long",
                       "Enter the name of who answers for these data"};
    Transaction transaction(database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<EquipmentVersion> found = newest(item_id, version);
    if (!found) return found;
    if (found.value().withdrawn)
        return Problem{VersionedTexts(store_, equipment_kept).name_of(item_id), "is withdrawn",
                       "Bring it back before it is approved"};
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
    return damaged_versions_of(database, equipment_kept);
}

}  // namespace wg::store
