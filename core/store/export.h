#pragma once
// Everything that a firm would want to have without this program, as files that others can read.

#include <optional>
#include <string>

#include "core/store/store.h"

namespace wg::store {

struct Exported {
    int jobs = 0;
    int quotes = 0;
    int photographs = 0;
    int weather_years = 0;
    int equipment = 0;                 ///< items of the firm, the newest version of each
    int price_lists = 0;               ///< of the firm, the newest version of each
    int rule_sets = 0;                 ///< of the firm, the newest version of each
    std::vector<std::string> missing;  ///< photographs that jobs name and the store does not have whole, in words
};

/// Into a folder that is new or empty: jobs/NUMBER.json, quotes/NUMBER.json (the frozen plan, byte for byte),
/// photographs/SHA256.jpg (.png, .webp), weather/NAME.csv, equipment/ID.json, prices/ID.json, rules/ID.json.
/// Removed jobs and what is withdrawn are left out; what is damaged is among what is missing.
[[nodiscard]] Result<Exported> export_everything(Store& store, const std::string& folder);

/// One file of an export: whole, or a problem with its path.
[[nodiscard]] std::optional<Problem> write_file(const std::string& path, const std::string& content);
/// A name for every system's files: letters, digits, '-' and '_' of `wanted`, or the id.
[[nodiscard]] std::string plain_file_name(const std::string& wanted, const std::string& id);
/// ".jpg", ".png" or ".webp", by how the bytes begin.
[[nodiscard]] const char* picture_ending(const std::string& bytes);

}  // namespace wg::store
