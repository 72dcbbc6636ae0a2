#include "core/merge/path.h"

#include <algorithm>

#include "core/quantity/uuid.h"

namespace wg::merge {
namespace {

constexpr std::size_t element_bytes = 37;  ///< "=" and a UUID
constexpr std::size_t most_path_bytes = 1024;
constexpr int most_segments = 40;
constexpr std::string_view record_list = "record";

std::string under(std::string_view parent) {
    std::string out;
    out.reserve(parent.size() + 40);
    out.append(parent);
    if (!parent.empty()) out += '/';
    return out;
}

bool is_element_segment(std::string_view segment) noexcept {
    return segment.size() == element_bytes && segment.front() == '=' && is_uuid(segment.substr(1));
}

bool is_member_segment(std::string_view segment) noexcept {
    if (segment.empty() || segment.find_first_of("=*") != std::string_view::npos) return false;
    for (std::size_t i = 0; i < segment.size(); ++i) {
        if (segment[i] != '~') continue;
        ++i;
        if (i >= segment.size() || segment[i] < '0' || segment[i] > '4') return false;
        if (segment[i] == '4' && segment.size() != 2) return false;
    }
    return true;
}

}  // namespace

std::string member_path(std::string_view parent, std::string_view key) {
    std::string out = under(parent);
    if (key.empty()) return out + "~4";
    for (const char c : key) {
        switch (c) {
            case '~': out += "~0"; break;
            case '/': out += "~1"; break;
            case '=': out += "~2"; break;
            case '*': out += "~3"; break;
            default: out += c;
        }
    }
    return out;
}

std::string element_path(std::string_view list, std::string_view id) {
    std::string out = under(list);
    out += '=';
    return out.append(id);
}

std::string special_path(std::string_view parent, std::string_view segment) {
    return under(parent).append(segment);
}

std::string name_of(std::string_view segment) {
    if (is_element_segment(segment)) return std::string(segment.substr(1));
    if (segment == "~4" || (!segment.empty() && segment.front() == '*')) {
        return segment == "~4" ? std::string() : std::string(segment);
    }
    constexpr std::string_view meant = "~/=*";
    std::string out;
    for (std::size_t i = 0; i < segment.size(); ++i) {
        const bool escaped = segment[i] == '~' && i + 1 < segment.size();
        out += escaped ? meant[static_cast<std::size_t>(segment[i + 1] - '0') % meant.size()] : segment[i];
        if (escaped) ++i;
    }
    return out;
}

std::string id_of(std::string_view path) {
    return std::string(last_segment(path).substr(1));
}

std::string_view holder_of(std::string_view path) noexcept {
    const std::size_t last = path.rfind('/');
    if (last == std::string_view::npos) return {};
    const std::string_view above = path.substr(0, last);
    const std::size_t at = above.rfind("/=");
    return at == std::string_view::npos ? std::string_view() : above.substr(0, at + 1 + element_bytes);
}

bool is_within(std::string_view path, std::string_view element) noexcept {
    return path.size() > element.size() && path[element.size()] == '/' && path.substr(0, element.size()) == element;
}

bool is_entry(std::string_view path) noexcept {
    return is_element(path) && parent_of(path) == record_list;
}

bool is_path(std::string_view path) noexcept {
    if (path.empty() || path.size() > most_path_bytes) return false;
    bool after_member = false;
    bool after_element = false;
    bool in_entry = false;
    std::size_t from = 0;
    for (int count = 0; from <= path.size(); ++count) {
        const std::size_t end = std::min(path.find('/', from), path.size());
        const std::string_view segment = path.substr(from, end - from);
        const bool last = end == path.size();
        if (count >= most_segments || segment.empty()) return false;
        if (segment.front() == '=') {
            if (!after_member || !is_element_segment(segment)) return false;
            in_entry = path.substr(0, from) == "record/";
            after_member = false;
            after_element = true;
        } else if (segment.front() == '*') {
            // Entries of the record are whole; they keep nothing besides but their place.
            if (!last || (segment == order_segment ? !after_member : segment == after_segment && !after_element))
                return false;
            return !in_entry || segment == after_segment;
        } else {
            if (in_entry || !is_member_segment(segment)) return false;
            after_member = true;
            after_element = false;
        }
        from = end + 1;
    }
    return true;
}

}  // namespace wg::merge
