#pragma once
// The firm's own equipment: collectors, blocks, cylinders and fixing methods besides those of the program. Every
// version of an item is kept; to change an item, to withdraw it and to bring it back each add a version.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

struct TextVersion;

enum class ItemKind { collector, block, cylinder, fixing_method };
[[nodiscard]] const char* key_of(ItemKind kind) noexcept;  ///< "collector", ...

struct EquipmentVersion {
    std::string item_id;       ///< that of the item, which price lists and jobs name
    std::int64_t version = 0;  ///< 1, 2, 3 ... of the item
    ItemKind kind = ItemKind::collector;
    std::string content;  ///< docs/equipment-format.md, a file of this one item
    std::string sha256;   ///< of content
    bool withdrawn = false;
    bool came = false;  ///< with a job from another machine
    std::string saved_at, saved_by;
    // The newest approval of this very version; empty: nobody approved it.
    std::string approved_by, approved_at;
    friend bool operator==(const EquipmentVersion&, const EquipmentVersion&) = default;
};

/// What could be read, and a problem for each item that could not.
struct EquipmentKept {
    std::vector<EquipmentVersion> items;
    std::vector<Problem> damaged;
};

inline constexpr std::size_t max_item_bytes = std::size_t{256} << 10U;
inline constexpr std::size_t max_approver_bytes = 200;

class EquipmentBook {
   public:
    /// The store must outlive it.
    explicit EquipmentBook(Store& store) : store_(store), database_(store.database()) {}

    /// Adds an item (`from_version` 0), or a version that follows `from_version`. The same text as before makes none,
    /// unless the item was withdrawn: then it comes back with it. Refused: what catalogue_from_json refuses, more or
    /// less than one item, an id that a different kind of item has, a text longer than `max_item_bytes`, and a
    /// `from_version` that is no longer the newest.
    [[nodiscard]] Result<EquipmentVersion> save(std::string_view text, std::int64_t from_version, Instant now);
    /// A version with the same content that no new plan uses. Withdrawn twice is withdrawn once. Refused: an item that
    /// is not here, a `from_version` that is no longer the newest.
    [[nodiscard]] Result<EquipmentVersion> withdraw(const std::string& item_id, std::int64_t from_version, Instant now);
    [[nodiscard]] Result<EquipmentVersion> bring_back(const std::string& item_id, std::int64_t from_version,
                                                      Instant now);
    /// Somebody answers for the data of one version; a later version has to be approved anew. Refused: a name that is
    /// none, a version that is not the newest or is withdrawn.
    [[nodiscard]] Result<EquipmentVersion> approve(const std::string& item_id, std::int64_t version,
                                                   const std::string& who, Instant now);

    /// The newest version of each item, withdrawn ones included, by id.
    [[nodiscard]] Result<EquipmentKept> current() const;
    /// Newest first. Nothing for an item that is not here.
    [[nodiscard]] Result<EquipmentKept> history(const std::string& item_id) const;

    /// Within a transaction: a version that came with a job from another machine becomes the newest here when there is
    /// none, or when the newest here came, too, and is older. What was saved here is never overtaken by what comes.
    /// False: nothing was added. Refused: what `save` refuses of the text, and another id than `item_id`.
    [[nodiscard]] Result<bool> put_from_elsewhere(const std::string& item_id, const std::string& text,
                                                  const std::string& saved_at);

   private:
    [[nodiscard]] Result<EquipmentVersion> newest(const std::string& item_id, std::int64_t from_version) const;
    [[nodiscard]] Result<EquipmentVersion> turn(const std::string& item_id, std::int64_t from_version, bool withdrawn,
                                                Instant now) const;
    /// `item_id`: whose texts these are; empty: of many.
    [[nodiscard]] Result<EquipmentKept> with_approvals(const std::string& item_id,
                                                       std::vector<TextVersion> texts) const;

    Store& store_;
    const Database& database_;
};

/// Items with a version whose text no longer has its hash, in words.
[[nodiscard]] Result<std::vector<std::string>> damaged_equipment(const Database& database);

}  // namespace wg::store
