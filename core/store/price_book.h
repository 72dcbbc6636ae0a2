#pragma once
// The firm's price lists. Every version stays as it was saved: what an old quote was reckoned with can be read again.

#include <string>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

struct PriceListVersion {
    std::string list_id;
    int version = 0;  ///< 1, 2, 3 ... of the list
    bool withdrawn = false;
    std::string note;  ///< why it was saved, in the words of who did
    std::string saved_by;
    std::string saved_at;  ///< ISO 8601
    std::string sha256;    ///< of the content
};

/// As much as the reader of price lists takes: some fifty thousand items.
inline constexpr std::size_t max_price_list_bytes = std::size_t{16} << 20U;

class PriceBook {
   public:
    /// The store must outlive it.
    explicit PriceBook(Store& store) : store_(store), database_(store.database()) {}

    /// A list as its file has it (docs/price-format.md). The book keeps the text: that it is a list, and that the id is
    /// its own, is for the caller to have read. `based_on`: the version that was changed, 0 for a list that is new.
    /// Refused: a list that somebody else saved in between, the same content again, no UTF-8, nothing, or more than
    /// `max_price_list_bytes`.
    [[nodiscard]] Result<PriceListVersion> save(const std::string& list_id, const std::string& content, int based_on,
                                                const std::string& note, Instant now);
    /// No longer offered for jobs; its versions stay, and a later save brings it back.
    [[nodiscard]] Result<PriceListVersion> withdraw(const std::string& list_id, int based_on, const std::string& note,
                                                    Instant now);
    /// The newest version of each list, withdrawn ones included, by id.
    [[nodiscard]] Result<std::vector<PriceListVersion>> lists() const;
    /// Newest first.
    [[nodiscard]] Result<std::vector<PriceListVersion>> history(const std::string& list_id) const;
    /// Refused: a version that is not here, or whose text lost its hash.
    [[nodiscard]] Result<std::string> content(const std::string& list_id, int version) const;

   private:
    [[nodiscard]] Result<PriceListVersion> add(const std::string& list_id, const std::string& content, int based_on,
                                               const std::string& note, bool withdrawn, Instant now);

    Store& store_;
    const Database& database_;
};

/// Lists and versions whose text no longer has its hash, in words.
[[nodiscard]] Result<std::vector<std::string>> damaged_price_lists(const Database& database);

}  // namespace wg::store
