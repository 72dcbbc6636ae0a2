#include "core/store/dialect.h"

namespace wg::store {

// PostgreSQL lets several write at once; the store's rules (numbers, revisions, the order of saves) want one after the
// other, as SQLite has it. The lock is the database's own and goes with the transaction. 0x57674a62 is "WgJb".

const Wording& wording(Dialect dialect) {
    static const Wording sqlite = {
        .begin_write = "BEGIN IMMEDIATE",
        .take_turn = "",
        .begin_read = "BEGIN",
        .version = "PRAGMA user_version",
        .set_version = "PRAGMA user_version = %1",
        .index_job =
            "INSERT INTO job_search (rowid, number, title, client, town, notes, address, contact, quotes) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        .unindex_job = "DELETE FROM job_search WHERE rowid = ?",
        // CROSS JOIN keeps the order of the loops: the search walks backwards by rowid and stops at the limit.
        .matching_jobs =
            "FROM job_search s CROSS JOIN job j ON j.save_seq = s.rowid WHERE job_search MATCH ? "
            "ORDER BY s.rowid DESC LIMIT ? OFFSET ?",
        .count_matching = "SELECT count(*) FROM job_search WHERE job_search MATCH ?",
        .search_join = "FROM job_search s CROSS JOIN job j ON j.save_seq = s.rowid WHERE job_search MATCH ?",
        .search_alone = "FROM job_search WHERE job_search MATCH ?",
        .search_newest = "s.rowid",
        .folded = "%1 COLLATE NOCASE",
        .client_street = "json_extract(r.content, '$.client.street')",
        .client_postcode = "json_extract(r.content, '$.client.postcode')",
        .client_phone = "json_extract(r.content, '$.client.phone')",
        .client_email = "json_extract(r.content, '$.client.email')",
        .planned_heat =
            "CASE WHEN json_valid(q.plan_json) THEN json_extract(q.plan_json, '$.figures.heat_kwh.mid') END",
        // instr first: only a text that holds the id at all is parsed.
        .jobs_with_year =
            "SELECT j.number, j.title FROM job j JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
            "WHERE instr(r.content, ?) > 0 AND (NOT json_valid(r.content) OR "
            "json_extract(r.content, '$.weather') = ?) ORDER BY j.save_seq DESC"};
    static const Wording postgresql = {
        .begin_write = "BEGIN",
        .take_turn = "SELECT pg_advisory_xact_lock(1466387042, 1)",
        .begin_read = "BEGIN ISOLATION LEVEL REPEATABLE READ, READ ONLY",
        .version = "SELECT version FROM store_version",
        .set_version = "UPDATE store_version SET version = %1",
        .index_job = "INSERT INTO job_search (save_seq, words) VALUES (?, ?::tsvector)",
        .unindex_job = "DELETE FROM job_search WHERE save_seq = ?",
        .matching_jobs =
            "FROM job_search s JOIN job j ON j.save_seq = s.save_seq WHERE s.words @@ ?::tsquery "
            "ORDER BY s.save_seq DESC LIMIT ? OFFSET ?",
        .count_matching = "SELECT count(*) FROM job_search WHERE words @@ ?::tsquery",
        .search_join = "FROM job_search s JOIN job j ON j.save_seq = s.save_seq WHERE s.words @@ ?::tsquery",
        .search_alone = "FROM job_search WHERE words @@ ?::tsquery",
        .search_newest = "s.save_seq",
        .folded = "lower(%1)",
        .client_street = "field_of_json(r.content, 'client', 'street')",
        .client_postcode = "field_of_json(r.content, 'client', 'postcode')",
        .client_phone = "field_of_json(r.content, 'client', 'phone')",
        .client_email = "field_of_json(r.content, 'client', 'email')",
        .planned_heat = "nullif(field_of_json(q.plan_json, 'figures', 'heat_kwh', 'mid'), '')",
        .jobs_with_year =
            "SELECT j.number, j.title FROM job j JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
            "WHERE position(? in r.content) > 0 AND coalesce(field_of_json(r.content, 'weather') = ?, true) "
            "ORDER BY j.save_seq DESC"};
    return dialect == Dialect::sqlite ? sqlite : postgresql;
}

}  // namespace wg::store
