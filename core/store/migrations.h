#pragma once
// The steps that made the database what it is. A step that has left the house is never edited: a new one is added.

#include <optional>
#include <vector>

#include "core/quantity/result.h"
#include "core/store/dialect.h"

namespace wg::store {

class Database;

/// The mark by which databases of this program are told from others: "WgJb".
inline constexpr int application_id = 0x57674a62;

struct Migration {
    int version = 0;                      ///< of the schema after the step; steps are numbered 1, 2, 3 ...
    const char* what = "";                ///< in words, for messages
    std::vector<const char*> statements;  ///< one SQL statement each
    bool index_again = false;             ///< the search is empty after them and has to be filled by the program
    /// What the program does last, in the step's transaction, with tables that SQL alone cannot fill.
    std::optional<Problem> (*then)(const Database& database) = nullptr;
};

/// All steps, oldest first; docs/store.md describes the tables. PostgreSQL begins with the schema of step 7 as one
/// step, and from there on both have the same numbers.
[[nodiscard]] const std::vector<Migration>& migrations(Dialect dialect);

/// The newest version, of both.
[[nodiscard]] int newest_version();

/// PostgreSQL's step 7 (migrations_postgresql.cpp).
[[nodiscard]] Migration schema_of_version_7();

// Later steps with a file of their own (migration_*.cpp).
[[nodiscard]] Migration erasure(Dialect dialect);
[[nodiscard]] Migration versions_of_fields(Dialect dialect);
[[nodiscard]] Migration desk_at_size(Dialect dialect);
[[nodiscard]] Migration papers_and_answers(Dialect dialect);
[[nodiscard]] Migration price_lists(Dialect dialect);
[[nodiscard]] Migration equipment_of_the_firm(Dialect dialect);
[[nodiscard]] Migration numbers_and_orders(Dialect dialect);
[[nodiscard]] Migration customer_list(Dialect dialect);
[[nodiscard]] Migration rule_sets_of_the_firm(Dialect dialect);
[[nodiscard]] Migration stock_and_purchases(Dialect dialect);
[[nodiscard]] Migration records_of_progress(Dialect dialect);
[[nodiscard]] Migration deliveries_in_parts(Dialect dialect);

}  // namespace wg::store
