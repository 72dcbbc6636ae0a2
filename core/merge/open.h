#pragma once
// What two machines did without knowing of one another and cannot both stand: shown with both sides until someone
// decides.

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "core/merge/versions.h"

namespace wg::merge {

enum class OpenKind {
    field,            ///< changed to different values
    removed_changed,  ///< removed on one machine, changed on another: it stays
    removed_named,    ///< removed on one machine, named by something on another: it stays
    order,            ///< put in different orders
    link_lost,        ///< linked to an edge that is gone: the link is left out
    entry_altered,    ///< an entry of the record that a copy has otherwise or not at all: it stays as it was
};

struct Side {
    std::string words;  ///< the value for people: "35 deg", "removed", "Terrace; South roof"
    bool gone = false;  ///< removed, or left out
    std::string seat_id;
    std::string seat_name;  ///< empty: as the job was when versions began
    Instant at;
    std::uint64_t number = 0;  ///< of the edit, as in Value
    friend bool operator==(const Side&, const Side&) = default;
};

struct Open {
    OpenKind kind = OpenKind::field;
    std::string path;
    std::string where;        ///< for people: `surface "South roof", tilt`
    std::vector<Side> sides;  ///< first the one that the job shows
    std::string names;        ///< removed_named: what names it, for people
    friend bool operator==(const Open&, const Open&) = default;
};

/// All that is open in the job of these versions, by path.
[[nodiscard]] std::vector<Open> open_fields(const Versions& versions);
struct Shown;
/// With what is shown of them already made (shown.h).
[[nodiscard]] std::vector<Open> open_fields(const Versions& versions, const Shown& now);

/// In a sentence: `Surface "South roof", tilt: 35 deg (Office, 2027-03-02T09:15:00Z) or 38 deg (Tablet, ...)`.
[[nodiscard]] std::string text_of(const Open& open);

/// Decides for a side: an edit like any other, which replaces all values. Refused: nothing is open there, no such side,
/// a malformed seat, an entry of the record to be removed, and a removal of what is still named: that has to go first.
[[nodiscard]] Result<Versions> choose(const Versions& versions, const std::string& path, std::size_t side,
                                      const Seat& seat, Instant at);

}  // namespace wg::merge
