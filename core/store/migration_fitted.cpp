// Parts that stand at the client's, and what the plans of issued quotes foretell.

#include "core/store/migration_records.h"

namespace wg::store {

// `fitted_part` follows from a job's content and is replaced with it: no history and no trigger.
std::vector<const char*> fitted_and_heat_statements(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {R"sql(
CREATE TABLE fitted_part (
    job_id      TEXT NOT NULL REFERENCES job (id),
    seq         INTEGER NOT NULL CHECK (seq >= 0),
    reading_id  TEXT NOT NULL,
    part        TEXT NOT NULL,
    item_id     TEXT NOT NULL,
    serial      TEXT NOT NULL,
    fitted_on   TEXT NOT NULL CHECK (fitted_on = '' OR fitted_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    replaced_on TEXT NOT NULL CHECK (replaced_on = '' OR
                                     replaced_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    PRIMARY KEY (job_id, seq)
))sql",
                "CREATE INDEX fitted_part_item ON fitted_part (item_id, job_id)", R"sql(
CREATE TABLE quote_heat (
    quote_id TEXT PRIMARY KEY NOT NULL REFERENCES quote_issued (id) ON DELETE CASCADE,
    heat_kwh REAL NOT NULL CHECK (heat_kwh >= 0)
))sql",
                R"sql(
INSERT INTO quote_heat (quote_id, heat_kwh)
SELECT id, heat FROM (
    SELECT q.id, CASE WHEN json_valid(q.plan_json) AND
        json_type(q.plan_json, '$.figures.heat_kwh.mid') IN ('integer', 'real')
        THEN json_extract(q.plan_json, '$.figures.heat_kwh.mid') END AS heat
    FROM quote_issued q)
WHERE heat = 0 OR heat BETWEEN 1e-300 AND 1e300)sql",
                R"sql(
CREATE TRIGGER quote_heat_no_update BEFORE UPDATE ON quote_heat
BEGIN SELECT RAISE(ABORT, 'the heat of an issued quote is never changed'); END)sql",
                R"sql(
CREATE TRIGGER quote_heat_no_replace BEFORE INSERT ON quote_heat
WHEN EXISTS (SELECT 1 FROM quote_heat WHERE quote_id = NEW.quote_id)
BEGIN SELECT RAISE(ABORT, 'the heat of an issued quote is never replaced'); END)sql",
                // It goes with its quote, whose own guards decide.
                R"sql(
CREATE TRIGGER quote_heat_no_delete BEFORE DELETE ON quote_heat
WHEN EXISTS (SELECT 1 FROM quote_issued WHERE id = OLD.quote_id)
BEGIN SELECT RAISE(ABORT, 'the heat of an issued quote is never deleted'); END)sql"};
    }
    return {R"sql(
CREATE TABLE fitted_part (
    job_id      text COLLATE "C" NOT NULL REFERENCES job (id),
    seq         bigint NOT NULL CHECK (seq >= 0),
    reading_id  text NOT NULL,
    part        text NOT NULL,
    item_id     text COLLATE "C" NOT NULL,
    serial      text NOT NULL,
    fitted_on   text NOT NULL CHECK (fitted_on = '' OR fitted_on ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'),
    replaced_on text NOT NULL CHECK (replaced_on = '' OR replaced_on ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'),
    PRIMARY KEY (job_id, seq)
))sql",
            "CREATE INDEX fitted_part_item ON fitted_part (item_id, job_id)", R"sql(
CREATE TABLE quote_heat (
    quote_id text COLLATE "C" PRIMARY KEY REFERENCES quote_issued (id) ON DELETE CASCADE,
    heat_kwh double precision NOT NULL CHECK (heat_kwh >= 0)
))sql",
            // The yearly heat of a frozen plan; NULL where it has none, or no number that can be held.
            R"sql(
CREATE FUNCTION heat_of_plan(plan text) RETURNS double precision LANGUAGE plpgsql IMMUTABLE AS $body$
DECLARE
    mid json;
BEGIN
    mid := plan::json #> '{figures,heat_kwh,mid}';
    IF json_typeof(mid) = 'number' AND
       (mid::text::double precision = 0 OR mid::text::double precision BETWEEN 1e-300 AND 1e300) THEN
        RETURN mid::text::double precision;
    END IF;
    RETURN NULL;
-- Nested too deep for the server: program_limit_exceeded.
EXCEPTION WHEN data_exception OR program_limit_exceeded THEN
    RETURN NULL;
END $body$)sql",
            R"sql(
INSERT INTO quote_heat (quote_id, heat_kwh)
SELECT id, heat FROM (SELECT id, heat_of_plan(plan_json) AS heat FROM quote_issued) AS foretold
WHERE heat IS NOT NULL)sql",
            R"sql(
CREATE TRIGGER quote_heat_no_update BEFORE UPDATE ON quote_heat
FOR EACH ROW EXECUTE FUNCTION refuse_change('the heat of an issued quote is never changed'))sql",
            R"sql(
CREATE FUNCTION refuse_while_quote_stands() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF EXISTS (SELECT 1 FROM quote_issued WHERE id = OLD.quote_id) THEN
        RAISE EXCEPTION '%', TG_ARGV[0];
    END IF;
    RETURN OLD;
END $body$)sql",
            R"sql(
CREATE TRIGGER quote_heat_no_delete BEFORE DELETE ON quote_heat
FOR EACH ROW EXECUTE FUNCTION refuse_while_quote_stands('the heat of an issued quote is never deleted'))sql",
            R"sql(
CREATE TRIGGER quote_heat_no_truncate BEFORE TRUNCATE ON quote_heat
EXECUTE FUNCTION refuse_change('the heat of an issued quote is never deleted'))sql"};
}

}  // namespace wg::store
