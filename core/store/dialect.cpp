#include "core/store/dialect.h"

// The number that a frozen plan foretells as its yearly heat; true and text are none.
#define WG_HEAT(PLAN)                                     \
    "CASE WHEN json_valid(" PLAN ") AND json_type(" PLAN  \
    ", '$.figures.heat_kwh.mid') IN ('integer', 'real') " \
    "THEN json_extract(" PLAN ", '$.figures.heat_kwh.mid') END"

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
        .search_join =
            "FROM job_search s CROSS JOIN job j INDEXED BY job_newest ON j.save_seq = s.rowid AND j.removed_at IS NULL "
            "WHERE job_search MATCH ?",
        .search_alone = "FROM job_search WHERE job_search MATCH ?",
        .search_walk =
            "FROM job j INDEXED BY %1 WHERE j.removed_at IS NULL AND +j.save_seq IN "
            "(SELECT rowid FROM job_search WHERE job_search MATCH ?)",
        .search_all = "",
        .search_newest = "s.rowid",
        .folded = "%1 COLLATE NOCASE",
        .client_street = "json_extract(r.content, '$.client.street')",
        .client_postcode = "json_extract(r.content, '$.client.postcode')",
        .client_phone = "json_extract(r.content, '$.client.phone')",
        .client_email = "json_extract(r.content, '$.client.email')",
        // Its own choice, made without statistics, reads every job's row.
        .in_order_of = "INDEXED BY %1",
        .page = "%1%2 LIMIT ? OFFSET ?",
        .keep_heat =
            "INSERT INTO quote_heat (quote_id, heat_kwh) SELECT id, heat FROM (SELECT id, "
            WG_HEAT("plan_json") " AS heat FROM quote_issued WHERE id = ?) WHERE heat = 0 OR heat BETWEEN 1e-300 AND 1e300",
        // Both databases round the last digit in their own way.
        .other_heat =
            "SELECT number FROM (SELECT q.number, h.heat_kwh AS kept, "
            WG_HEAT("q.plan_json") " AS heat "
            "FROM quote_issued q LEFT JOIN quote_heat h ON h.quote_id = q.id) WHERE CASE "
            "WHEN heat = 0 OR heat BETWEEN 1e-300 AND 1e300 "
            "THEN coalesce(abs(kept - heat) > 1e-9 * heat, 1) ELSE kept IS NOT NULL END LIMIT ?",
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
        // OFFSET keeps the server from joining all that is found before it sorts.
        .search_walk =
            "FROM job j WHERE j.removed_at IS NULL AND EXISTS (SELECT 1 FROM job_search s "
            "WHERE s.save_seq = j.save_seq AND s.words @@ ?::tsquery OFFSET 0)",
        // IS TRUE keeps the server from making a join of it, which reads every job: it hashes what is found and walks.
        .search_all =
            "FROM job j WHERE j.removed_at IS NULL AND (j.save_seq IN (SELECT s.save_seq FROM job_search s "
            "WHERE s.words @@ ?::tsquery)) IS TRUE",
        .search_newest = "j.save_seq",
        .folded = "%1_key",
        .client_street = "field_of_json(r.content, 'client', 'street')",
        .client_postcode = "field_of_json(r.content, 'client', 'postcode')",
        .client_phone = "field_of_json(r.content, 'client', 'phone')",
        .client_email = "field_of_json(r.content, 'client', 'email')",
        .in_order_of = "",
        // First which jobs, from the order's index alone; then their rows.
        .page = "FROM job j WHERE j.save_seq IN (SELECT j.save_seq %1%2 LIMIT ? OFFSET ?)%2",
        .keep_heat =
            "INSERT INTO quote_heat (quote_id, heat_kwh) SELECT id, heat FROM (SELECT id, heat_of_plan(plan_json) "
            "AS heat FROM quote_issued WHERE id = ?) AS foretold WHERE heat IS NOT NULL",
        .other_heat =
            "SELECT number FROM (SELECT q.number, h.heat_kwh AS kept, heat_of_plan(q.plan_json) AS heat "
            "FROM quote_issued q LEFT JOIN quote_heat h ON h.quote_id = q.id) AS both_heats WHERE CASE "
            "WHEN heat IS NULL THEN kept IS NOT NULL ELSE coalesce(abs(kept - heat) > 1e-9 * heat, true) END LIMIT ?",
        .jobs_with_year =
            "SELECT j.number, j.title FROM job j JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision "
            "WHERE position(? in r.content) > 0 AND coalesce(field_of_json(r.content, 'weather') = ?, true) "
            "ORDER BY j.save_seq DESC"};
    return dialect == Dialect::sqlite ? sqlite : postgresql;
}

}  // namespace wg::store
