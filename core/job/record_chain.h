#pragma once
// Entries of the record chained by hash: an entry names the one before it by its SHA-256, so what is altered, put in
// or taken out later shows. A chain without a key does not keep out somebody who reckons it anew from the altered entry
// on: the head printed on the signed record is what holds then.

#include <cstddef>
#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg {

/// The entry with `previous_sha256` and `sha256` set, to be appended to `record`.
[[nodiscard]] Reading chained(Reading entry, const std::vector<Reading>& record);

struct ChainBreak {
    std::size_t index = 0;  ///< of the entry in the record
    std::string reading_id;
    std::string what;  ///< in words
};

struct ChainReport {
    std::vector<ChainBreak> breaks;
    std::size_t chained = 0;  ///< entries with a hash
    std::size_t older = 0;    ///< entries without, all before the first that has one
    std::string head;         ///< hash of the last entry; empty: none is chained
    /// Hashes of the entries that no later one names, in the record's order. A record written on one machine has one,
    /// the head. Copies written on apart and put together have one each, for good: an entry put in later cannot hide,
    /// it is an end that no signed print has.
    std::vector<std::string> ends;
    [[nodiscard]] bool whole() const noexcept { return breaks.empty(); }
};

/// Every entry's own hash, that the one it names stands before it, and that entries without a hash stand only at the
/// beginning. No break: several entries that name the same one, or that name none, as copies have that were written on
/// apart and put together again; that adds to `ends`.
[[nodiscard]] ChainReport check_chain(const std::vector<Reading>& record);

}  // namespace wg
