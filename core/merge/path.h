#pragma once
// Paths of fields: `site/surfaces/=UUID/tilt_deg`. Segments are members, elements of a list ("=" and the id) or what
// versions keep besides ("*order" of a list, "*after" and groups of an element). In members "~", "/", "=" and "*" stand
// as ~0, ~1, ~2 and ~3 (the first two as in RFC 6901), a member without a name as ~4: no job can imitate the others.

#include <string>
#include <string_view>

namespace wg::merge {

inline constexpr std::string_view order_segment = "*order";  ///< of a list: its ids as someone put them
inline constexpr std::string_view after_segment = "*after";  ///< of an element: the one it was put in behind

[[nodiscard]] std::string member_path(std::string_view parent, std::string_view key);
[[nodiscard]] std::string element_path(std::string_view list, std::string_view id);
/// `segment` as it is: one of those with a star.
[[nodiscard]] std::string special_path(std::string_view parent, std::string_view segment);

[[nodiscard]] inline std::string_view parent_of(std::string_view path) noexcept {  ///< empty: the job
    const std::size_t at = path.rfind('/');
    return at == std::string_view::npos ? std::string_view() : path.substr(0, at);
}
[[nodiscard]] inline std::string_view last_segment(std::string_view path) noexcept {
    return path.substr(path.rfind('/') + 1);  // npos + 1 is 0: the whole
}
/// The member's name in the job; an element's id; a special segment as it is.
[[nodiscard]] std::string name_of(std::string_view segment);
[[nodiscard]] inline bool is_element(std::string_view path) noexcept {
    constexpr std::size_t bytes = 37;
    return path.size() > bytes && path[path.size() - bytes] == '=' && path[path.size() - bytes - 1] == '/';
}
/// The id of an element's path.
[[nodiscard]] std::string id_of(std::string_view path);
/// The innermost element that holds the path, itself excluded; empty: none.
[[nodiscard]] std::string_view holder_of(std::string_view path) noexcept;
[[nodiscard]] bool is_within(std::string_view path, std::string_view element) noexcept;
/// An entry of the record: it is one field, never taken apart.
[[nodiscard]] bool is_entry(std::string_view path) noexcept;

/// Whether a path from outside is one that this room could have made.
[[nodiscard]] bool is_path(std::string_view path) noexcept;

}  // namespace wg::merge
