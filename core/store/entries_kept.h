#pragma once
// What was entered in the firm's books of prices and equipment and is not saved as a version yet, so that a crash costs
// less than a second of work. Of each seat its own.

#include <cstdint>
#include <string>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

enum class EntryBook { equipment, prices };

struct KeptEntry {
    std::string entry;          ///< what it is of, as its page calls it
    std::int64_t based_on = 0;  ///< version that it changes; 0: something new
    std::string kept_at;        ///< ISO 8601
    std::string content;        ///< as its page wrote it
    friend bool operator==(const KeptEntry&, const KeptEntry&) = default;
};

struct KeptEntries {
    std::vector<KeptEntry> entries;  ///< by `entry`
    std::vector<Problem> damaged;
};

class EntriesKept {
   public:
    /// The store must outlive it. Who enters is who the store was opened by.
    explicit EntriesKept(Store& store) : store_(store), database_(store.database()) {}

    /// In the place of what was kept of that entry. Refused: no text, more than 16 MiB.
    [[nodiscard]] Result<bool> keep(EntryBook book, const KeptEntry& entry, Instant now);
    [[nodiscard]] Result<KeptEntries> all(EntryBook book) const;
    [[nodiscard]] Result<bool> forget(EntryBook book, const std::string& entry);

   private:
    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
