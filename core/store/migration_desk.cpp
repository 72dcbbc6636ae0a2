// The desk of a firm with very many jobs: more words to search for, and orders that need no sorting.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int desk_step = 11;
constexpr const char* desk_what = "addresses, telephone and quote numbers in the search";

}  // namespace

Migration desk_at_size(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {desk_step,
                desk_what,
                {"DROP TABLE job_search", R"sql(
CREATE VIRTUAL TABLE job_search USING fts5 (
    number, title, client, town, notes, address, contact, quotes,
    tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3'
))sql",
                 "CREATE INDEX job_by_number ON job (number COLLATE NOCASE, save_seq) WHERE removed_at IS NULL",
                 "CREATE INDEX job_by_client ON job (client COLLATE NOCASE, save_seq) WHERE removed_at IS NULL",
                 "CREATE INDEX job_by_title ON job (title COLLATE NOCASE, save_seq) WHERE removed_at IS NULL",
                 "CREATE INDEX job_by_town ON job (town COLLATE NOCASE, save_seq) WHERE removed_at IS NULL",
                 "CREATE INDEX job_by_state ON job (state, save_seq) WHERE removed_at IS NULL"},
                true};
    }
    return {desk_step,
            desk_what,
            {"DELETE FROM job_search",
             "CREATE INDEX job_by_number ON job (lower(number), save_seq) WHERE removed_at IS NULL",
             "CREATE INDEX job_by_client ON job (lower(client), save_seq) WHERE removed_at IS NULL",
             "CREATE INDEX job_by_title ON job (lower(title), save_seq) WHERE removed_at IS NULL",
             "CREATE INDEX job_by_town ON job (lower(town), save_seq) WHERE removed_at IS NULL",
             "CREATE INDEX job_by_state ON job (state, save_seq) WHERE removed_at IS NULL"},
            true};
}

}  // namespace wg::store
