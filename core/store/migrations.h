#pragma once
// The steps that made the database what it is. A step that has left the house is never edited: a new one is added.

#include <vector>

namespace wg::store {

/// The mark by which SQLite files of this program are told from others: "WgJb".
inline constexpr int application_id = 0x57674a62;

struct Migration {
    int version = 0;                      ///< PRAGMA user_version after the step; steps are numbered 1, 2, 3 ...
    const char* what = "";                ///< in words, for messages
    std::vector<const char*> statements;  ///< one SQL statement each
};

/// All steps, oldest first. docs/store.md describes the tables.
[[nodiscard]] const std::vector<Migration>& migrations();

}  // namespace wg::store
