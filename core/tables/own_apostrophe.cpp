#include "core/tables/own_apostrophe.h"

#include <algorithm>

#include "core/tables/csv_writer.h"

namespace wg::tables {
namespace {

std::string_view without_apostrophes(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of('\''), text.size()));
    return text;
}

/// What `write_csv` would guard.
bool would_be_guarded(std::string_view text) {
    return without_guard("'" + std::string(text)) == text;
}

}  // namespace

std::string guarded_once_more(std::string_view text) {
    const std::string_view rest = without_apostrophes(text);
    return rest.size() < text.size() && would_be_guarded(rest) ? "'" + std::string(text) : std::string(text);
}

std::string_view without_one_guard(std::string_view cell) {
    const std::string_view rest = without_apostrophes(cell);
    if (rest.size() < cell.size() && would_be_guarded(rest)) cell.remove_prefix(1);
    return cell;
}

}  // namespace wg::tables
