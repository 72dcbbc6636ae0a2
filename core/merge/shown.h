#pragma once
// What of the versions is the job on screen: of every field the value that stands, of every element whether it is
// there, lists in order, and repairs where two valid copies together would not be valid.

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/merge/flat.h"
#include "core/merge/versions.h"

namespace wg::merge {

using Elements = std::set<std::string, std::less<>>;

/// A repair: an element that is gone stays since something names it, or a link to an edge that is gone is left out.
struct Repair {
    std::string path;   ///< of the element that stays, or of the link
    std::string names;  ///< path of the field that names it; empty: a link left out
};

struct Shown {
    Flat flat;
    Elements hidden;  ///< elements that are gone and not within another one that is gone
    std::vector<Repair> repairs;
};

/// `staying` are elements to show whatever their versions say.
[[nodiscard]] Shown shown(const Versions& versions, Elements staying = {});

/// The value that stands of those that nobody replaced: the one with the highest number, then with the highest seat id,
/// so the one made by who had seen more. Of an element's "is there" one that says so. Of an entry of the record the
/// first: entries are not altered.
[[nodiscard]] const Value& standing(std::string_view path, const std::vector<Value>& values) noexcept;

/// The ids of each list in order, those of elements that are gone too.
[[nodiscard]] std::map<std::string, std::vector<std::string>, std::less<>> orders(const Versions& versions);

/// The first place from `at` on that is not within `element`.
[[nodiscard]] std::map<std::string, std::vector<Value>, std::less<>>::const_iterator past(const Versions& versions,
                                                                                          std::string_view element);

/// The text that compact JSON holds; empty: it is something else.
[[nodiscard]] std::string plain_text(const std::string& value);

}  // namespace wg::merge
