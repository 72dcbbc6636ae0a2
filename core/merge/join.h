#pragma once
// Two copies of a job put together. Any number of copies, in any order, any of them several times: the same job comes
// out, with the same versions and the same left open (join-semilattice: M. Shapiro, N. Preguiça, C. Baquero, M.
// Zawirski, "Conflict-free replicated data types", SSS 2011, LNCS 6976).

#include <optional>
#include <string>
#include <vector>

#include "core/merge/open.h"
#include "core/merge/versions.h"

namespace wg::merge {

/// What the other copy brought to mine.
struct Change {
    enum class Kind { changed, added, removed };
    Kind kind = Kind::changed;
    std::string path;
    std::string where;   ///< for people
    std::string before;  ///< in words, of mine
    std::string after;
    std::string seat_id;
    std::string seat_name;
    Instant at;
    friend bool operator==(const Change&, const Change&) = default;
};

struct Merged {
    Job job;  ///< valid; revision the higher of both, base and times of mine
    Versions versions;
    std::vector<Change> taken;
    std::vector<Open> open;
    /// Buildings that both changed: their roofs and walls have to be made anew (core/roof), which is an edit.
    std::vector<std::string> buildings_to_remake;
};

/// Refused: versions of different jobs, and two machines under one seat id.
[[nodiscard]] Result<Versions> joined(const Versions& mine, const Versions& theirs);

/// What a job says that its versions do not is taken up first, as of_copy does.
[[nodiscard]] Result<Merged> join(const Job& mine, const Versions& my_versions, const Job& theirs,
                                  const Versions& their_versions);

/// Two copies without versions, from the job that both were copied from. Names are for people: "Office", "A file".
[[nodiscard]] Result<Merged> join_from_base(const Job& base, const Job& mine, const std::string& my_name,
                                            const Job& theirs, const std::string& their_name);

}  // namespace wg::merge
