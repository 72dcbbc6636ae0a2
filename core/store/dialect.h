#pragma once
// Where SQLite and PostgreSQL want different words: both stand side by side in dialect.cpp, and nowhere else but in the
// steps of migrations.

namespace wg::store {

enum class Dialect { sqlite, postgresql };

/// Statements that say the same in each. What is not here is the same text for both.
struct Wording {
    const char* begin_write;  ///< nobody else writes until the end of the transaction
    const char* take_turn;    ///< run after it; empty: not needed
    const char* begin_read;   ///< everything read in the transaction is of one moment
    const char* version;
    const char* set_version;     ///< with %1
    const char* index_job;       ///< save_seq, then the values of search_values()
    const char* unindex_job;     ///< save_seq
    const char* matching_jobs;   ///< FROM clause onwards: expression, limit, offset
    const char* count_matching;  ///< expression
    const char* search_join;     ///< FROM and WHERE with one condition: expression
    const char* search_alone;    ///< the same without the jobs
    const char* search_walk;     ///< with the order's index %1: from the jobs, for a word that very many have
    const char* search_all;      ///< the same, with all that is found looked up at once; empty: search_walk does so
    const char* search_newest;   ///< with search_join: what grows with every save, walked without sorting
    const char* folded;          ///< of a column, for sorting whatever the capitals
    const char* client_street;   ///< of r.content
    const char* client_postcode;
    const char* client_phone;
    const char* client_email;
    const char* in_order_of;     ///< index, with %1, that the rows are read by; empty: the database sees to it
    const char* page;            ///< of the list: %1 FROM and WHERE, %2 the order; limit, offset
    const char* keep_heat;       ///< of the quote of this id, where its plan foretells one
    const char* other_heat;      ///< numbers of quotes whose kept heat is not that of the plan; limit
    const char* jobs_with_year;  ///< id twice; a job whose text cannot be read counts as one
};

[[nodiscard]] const Wording& wording(Dialect dialect);

}  // namespace wg::store
