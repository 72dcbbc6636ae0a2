// What a client asked to have erased: the one way past the guards that keep history and quotes as they were.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int erasure_step = 9;
constexpr const char* erasure_what = "erasing a client's data";

}  // namespace

// `erasing` holds rows within an erasing transaction only.
Migration erasure(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {
            erasure_step,
            erasure_what,
            {R"sql(
CREATE TABLE erasure (
    seq        INTEGER PRIMARY KEY AUTOINCREMENT,
    job_id     TEXT NOT NULL REFERENCES job (id),
    number     TEXT NOT NULL,
    erased_at  TEXT NOT NULL,
    erased_by  TEXT NOT NULL,
    reason     TEXT NOT NULL,
    kept_until TEXT NOT NULL CHECK (kept_until = '' OR
                                    kept_until GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
))sql",
             R"sql(
CREATE TRIGGER erasure_no_update BEFORE UPDATE ON erasure
BEGIN SELECT RAISE(ABORT, 'what was erased, when and why is never changed'); END)sql",
             R"sql(
CREATE TRIGGER erasure_no_delete BEFORE DELETE ON erasure
BEGIN SELECT RAISE(ABORT, 'what was erased, when and why is never deleted'); END)sql",
             "CREATE TABLE erasing (job_id TEXT PRIMARY KEY NOT NULL)", "DROP TRIGGER job_revision_no_update", R"sql(
CREATE TRIGGER job_revision_no_update BEFORE UPDATE ON job_revision
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'an earlier content of a job is never changed'); END)sql",
             "DROP TRIGGER job_revision_no_delete", R"sql(
CREATE TRIGGER job_revision_no_delete BEFORE DELETE ON job_revision
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'an earlier content of a job is never deleted'); END)sql",
             "DROP TRIGGER quote_issued_no_delete", R"sql(
CREATE TRIGGER quote_issued_no_delete BEFORE DELETE ON quote_issued
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'an issued quote is never deleted'); END)sql"}};
    }
    return {erasure_step,
            erasure_what,
            {R"sql(
CREATE TABLE erasure (
    seq        bigint PRIMARY KEY,
    job_id     text COLLATE "C" NOT NULL REFERENCES job (id),
    number     text NOT NULL,
    erased_at  text NOT NULL,
    erased_by  text NOT NULL,
    reason     text NOT NULL,
    kept_until text NOT NULL CHECK (kept_until = '' OR kept_until ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$')
))sql",
             R"sql(
CREATE TRIGGER erasure_no_update BEFORE UPDATE ON erasure
FOR EACH ROW EXECUTE FUNCTION refuse_change('what was erased, when and why is never changed'))sql",
             R"sql(
CREATE TRIGGER erasure_no_delete BEFORE DELETE ON erasure
FOR EACH ROW EXECUTE FUNCTION refuse_change('what was erased, when and why is never deleted'))sql",
             R"sql(
CREATE TRIGGER erasure_no_truncate BEFORE TRUNCATE ON erasure
EXECUTE FUNCTION refuse_change('what was erased, when and why is never deleted'))sql",
             "CREATE TABLE erasing (job_id text COLLATE \"C\" PRIMARY KEY)", R"sql(
CREATE FUNCTION refuse_unless_erasing() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id) THEN
        RAISE EXCEPTION '%', TG_ARGV[0];
    END IF;
    IF TG_OP = 'DELETE' THEN
        RETURN OLD;
    END IF;
    RETURN NEW;
END $body$)sql",
             "DROP TRIGGER job_revision_no_update ON job_revision", R"sql(
CREATE TRIGGER job_revision_no_update BEFORE UPDATE ON job_revision
FOR EACH ROW EXECUTE FUNCTION refuse_unless_erasing('an earlier content of a job is never changed'))sql",
             "DROP TRIGGER job_revision_no_delete ON job_revision", R"sql(
CREATE TRIGGER job_revision_no_delete BEFORE DELETE ON job_revision
FOR EACH ROW EXECUTE FUNCTION refuse_unless_erasing('an earlier content of a job is never deleted'))sql",
             "DROP TRIGGER quote_issued_no_delete ON quote_issued", R"sql(
CREATE TRIGGER quote_issued_no_delete BEFORE DELETE ON quote_issued
FOR EACH ROW EXECUTE FUNCTION refuse_unless_erasing('an issued quote is never deleted'))sql"}};
}

}  // namespace wg::store
