#pragma once
// The firm's price lists. Every version stays as it was saved: what an old quote was reckoned with can be read again.

#include <optional>
#include <string>
#include <vector>

#include "core/store/store.h"

namespace wg::store {

struct PriceListVersion {
    std::string list_id;
    int version = 0;  ///< 1, 2, 3 ... of the list
    bool withdrawn = false;
    bool came = false;  ///< with a job from another machine
    std::string note;   ///< why it was saved, in the words of who did
    std::string saved_by;
    std::string saved_at;  ///< ISO 8601
    std::string sha256;    ///< of the content
    friend bool operator==(const PriceListVersion&, const PriceListVersion&) = default;
};

class PriceBook {
   public:
    /// The store must outlive it.
    explicit PriceBook(Store& store) : store_(store) {}

    /// A list as its file has it (docs/price-format.md). `based_on`: the version that was changed, 0 for a list that is
    /// new. Refused: what its reader refuses, another id than its own, a list that somebody else saved in between, the
    /// same content again.
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

    /// Within a transaction: a version that came with a job from another machine becomes the newest here when there is
    /// none, or when the newest here came, too, and is older. What was saved here is never overtaken by what comes.
    /// False: nothing was added. Refused: what `save` refuses of the text.
    [[nodiscard]] Result<bool> put_from_elsewhere(const std::string& list_id, const std::string& content,
                                                  const std::string& saved_at, const std::string& note);

   private:
    Store& store_;
};

/// Lists and versions whose text no longer has its hash, in words.
[[nodiscard]] Result<std::vector<std::string>> damaged_price_lists(const Database& database);

}  // namespace wg::store
