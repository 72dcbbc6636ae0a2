// When a job came into which state, what is to be done next on it, and the list's orders.
//
// What is to be done next is kept in the job's row: `next_step` (the words of core/job/next_step.h; 'in_service', which
// `service_due_on` decides on each day, and 'closed'), `next_since`, and `service_due_on`, NULL without a service. They
// follow from the state's days, the newest quote with its last answer and the services, and triggers keep them. The
// rules stand in core/job/next_step.h; `check` and tests hold the rows against them.

#include "core/store/migration_records.h"

namespace wg::store {
namespace {

// What the rows of a job give; both databases read it.
#define WG_STANDING(JOB)                                                                                        \
    "SELECT j.state, j.id, "                                                                                    \
    "(SELECT substr(d.at, 1, 10) FROM job_state_day d WHERE d.job_id = j.id ORDER BY d.revision DESC LIMIT 1) " \
    "AS reached, "                                                                                              \
    "(SELECT q.id FROM quote_issued q WHERE q.job_id = j.id ORDER BY q.issued_at DESC, q.id DESC LIMIT 1) "     \
    "AS quote_id FROM job j WHERE j.id = " JOB

#define WG_ANSWERED(JOB)                                                                                         \
    "SELECT s.state, coalesce(s.reached, '') AS reached, s.quote_id, "                                           \
    "coalesce((SELECT substr(q.issued_at, 1, 10) FROM quote_issued q WHERE q.id = s.quote_id), '') AS quoted, "  \
    "coalesce((SELECT a.answer FROM quote_answer a WHERE a.quote_id = s.quote_id ORDER BY a.seq DESC LIMIT 1), " \
    "'') AS answer, "                                                                                            \
    "coalesce((SELECT a.on_day FROM quote_answer a WHERE a.quote_id = s.quote_id ORDER BY a.seq DESC LIMIT 1), " \
    "'') AS answered FROM (" WG_STANDING(JOB) ") AS s"

#define WG_NEXT_STEP                                                                 \
    "CASE WHEN t.state = 'visit' THEN 'survey' "                                     \
    "WHEN t.state IN ('planning', 'offered') THEN "                                  \
    "CASE WHEN t.quote_id IS NULL THEN "                                             \
    "CASE t.state WHEN 'offered' THEN 'send_quote' ELSE 'plan' END "                 \
    "WHEN t.answer = '' THEN 'await_answer' WHEN t.answer = 'accepted' THEN 'fit' "  \
    "WHEN t.answer = 'declined' THEN 'after_refusal' ELSE 'send_quote' END "         \
    "WHEN t.state = 'accepted' THEN 'fit' WHEN t.state = 'fitted' THEN 'hand_over' " \
    "WHEN t.state IN ('in_service', 'closed') THEN t.state ELSE '' END"

#define WG_NEXT_SINCE                                                                                   \
    "CASE WHEN t.state IN ('visit', 'fitted') THEN t.reached "                                          \
    "WHEN t.state IN ('planning', 'offered') THEN "                                                     \
    "CASE WHEN t.quote_id IS NULL THEN t.reached WHEN t.answer = '' THEN t.quoted ELSE t.answered END " \
    "WHEN t.state = 'accepted' THEN CASE t.answer WHEN 'accepted' THEN t.answered ELSE t.reached END "  \
    "ELSE '' END"

#define WG_RECKONED(JOB) "SELECT " WG_NEXT_STEP ", " WG_NEXT_SINCE " FROM (" WG_ANSWERED(JOB) ") AS t"

// Whatever the list is narrowed by stands behind its order, so that no job's row is read that is not shown.
#define WG_NARROWED "state, invented, changed_at, next_step, service_due_on) WHERE removed_at IS NULL"

// A state that the stored texts tell; where the job's own row is meant, what that says.
#define WG_FILL_DAYS(STATE_OF_CONTENT)                                                    \
    "INSERT INTO job_state_day (job_id, revision, from_state, to_state, at, by_whom) "    \
    "SELECT job_id, revision, coalesce(before, ''), state, changed_at, changed_by FROM (" \
    "SELECT job_id, revision, state, changed_at, changed_by, "                            \
    "lag(state) OVER (PARTITION BY job_id ORDER BY revision) AS before FROM ("            \
    "SELECT r.job_id, r.revision, r.changed_at, r.changed_by, "                           \
    "CASE WHEN r.revision = j.revision THEN j.state ELSE " STATE_OF_CONTENT               \
    " END AS state FROM job_revision r JOIN job j ON j.id = r.job_id) AS every "          \
    "WHERE state <> '') AS told WHERE before IS NULL OR before <> state"

std::vector<const char*> of_file() {
    return {
        R"sql(
CREATE TABLE job_state_day (
    job_id     TEXT NOT NULL REFERENCES job (id),
    revision   INTEGER NOT NULL CHECK (revision >= 1),
    from_state TEXT NOT NULL,
    to_state   TEXT NOT NULL CHECK (to_state <> ''),
    at         TEXT NOT NULL,
    by_whom    TEXT NOT NULL,
    PRIMARY KEY (job_id, revision)
))sql",
        WG_FILL_DAYS("CASE WHEN json_valid(r.content) THEN json_extract(r.content, '$.state') END"),
        R"sql(
CREATE TRIGGER job_state_day_no_update BEFORE UPDATE ON job_state_day
BEGIN SELECT RAISE(ABORT, 'when a job came into a state is never changed'); END)sql",
        R"sql(
CREATE TRIGGER job_state_day_no_replace BEFORE INSERT ON job_state_day
WHEN EXISTS (SELECT 1 FROM job_state_day WHERE job_id = NEW.job_id AND revision = NEW.revision)
BEGIN SELECT RAISE(ABORT, 'when a job came into a state is never replaced'); END)sql",
        R"sql(
CREATE TRIGGER job_state_day_no_delete BEFORE DELETE ON job_state_day
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'when a job came into a state is never deleted'); END)sql",
        "ALTER TABLE job ADD COLUMN next_step TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE job ADD COLUMN next_since TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE job ADD COLUMN service_due_on TEXT",
        "UPDATE job SET service_due_on = (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = job.id)",
        "UPDATE job SET (next_step, next_since) = (" WG_RECKONED("job.id") ")", "DROP INDEX job_present",
        "DROP INDEX job_by_number", "DROP INDEX job_by_client", "DROP INDEX job_by_title", "DROP INDEX job_by_town",
        "DROP INDEX job_by_state", "CREATE INDEX job_newest ON job (save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_number ON job (number COLLATE NOCASE, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_client ON job (client COLLATE NOCASE, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_title ON job (title COLLATE NOCASE, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_town ON job (town COLLATE NOCASE, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_state ON job (state, save_seq, invented, changed_at, next_step, service_due_on) "
        "WHERE removed_at IS NULL",
        // Written to, never read: a row that comes in has its job's next step reckoned anew.
        "CREATE VIEW job_to_reckon AS SELECT id AS job_id FROM job",
        "CREATE TRIGGER job_next_step INSTEAD OF INSERT ON job_to_reckon BEGIN "
        "UPDATE job SET (next_step, next_since) = (" WG_RECKONED("NEW.job_id") ") WHERE id = NEW.job_id; END",
        "CREATE TRIGGER job_state_day_step AFTER INSERT ON job_state_day "
        "BEGIN INSERT INTO job_to_reckon (job_id) VALUES (NEW.job_id); END",
        "CREATE TRIGGER quote_issued_step AFTER INSERT ON quote_issued "
        "BEGIN INSERT INTO job_to_reckon (job_id) VALUES (NEW.job_id); END",
        "CREATE TRIGGER quote_issued_gone_step AFTER DELETE ON quote_issued "
        "BEGIN INSERT INTO job_to_reckon (job_id) VALUES (OLD.job_id); END",
        "CREATE TRIGGER quote_answer_step AFTER INSERT ON quote_answer "
        "BEGIN INSERT INTO job_to_reckon (job_id) SELECT job_id FROM quote_issued WHERE id = NEW.quote_id; END",
        "CREATE TRIGGER quote_answer_gone_step AFTER DELETE ON quote_answer "
        "BEGIN INSERT INTO job_to_reckon (job_id) SELECT job_id FROM quote_issued WHERE id = OLD.quote_id; END",
        R"sql(
CREATE TRIGGER service_due_step AFTER INSERT ON service_due
BEGIN
    UPDATE job SET service_due_on = NEW.due_on
    WHERE id = NEW.job_id AND (service_due_on IS NULL OR service_due_on > NEW.due_on);
END)sql",
        R"sql(
CREATE TRIGGER service_due_moved_step AFTER UPDATE ON service_due
BEGIN
    UPDATE job SET service_due_on = (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = job.id)
    WHERE id IN (OLD.job_id, NEW.job_id);
END)sql",
        R"sql(
CREATE TRIGGER service_due_gone_step AFTER DELETE ON service_due
BEGIN
    UPDATE job SET service_due_on = (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = OLD.job_id)
    WHERE id = OLD.job_id AND service_due_on = OLD.due_on;
END)sql"};
}

std::vector<const char*> of_server() {
    return {
        R"sql(
CREATE TABLE job_state_day (
    job_id     text COLLATE "C" NOT NULL REFERENCES job (id),
    revision   bigint NOT NULL CHECK (revision >= 1),
    from_state text NOT NULL,
    to_state   text NOT NULL CHECK (to_state <> ''),
    at         text NOT NULL,
    by_whom    text NOT NULL,
    PRIMARY KEY (job_id, revision)
))sql",
        WG_FILL_DAYS("field_of_json(r.content, 'state')"),
        R"sql(
CREATE TRIGGER job_state_day_no_update BEFORE UPDATE ON job_state_day
FOR EACH ROW EXECUTE FUNCTION refuse_change('when a job came into a state is never changed'))sql",
        R"sql(
CREATE TRIGGER job_state_day_no_delete BEFORE DELETE ON job_state_day
FOR EACH ROW EXECUTE FUNCTION refuse_unless_erasing('when a job came into a state is never deleted'))sql",
        R"sql(
CREATE TRIGGER job_state_day_no_truncate BEFORE TRUNCATE ON job_state_day
EXECUTE FUNCTION refuse_change('when a job came into a state is never deleted'))sql",
        R"sql(
ALTER TABLE job ADD COLUMN next_step text NOT NULL DEFAULT '',
                ADD COLUMN next_since text NOT NULL DEFAULT '',
                ADD COLUMN service_due_on text COLLATE "C")sql",
        // What the list is sorted by, as columns of their own, which an index can give back without the row; cut short,
        // since an entry of an index holds no more than some 2,700 bytes.
        R"sql(
ALTER TABLE job ADD COLUMN number_key text GENERATED ALWAYS AS (lower(left(number, 200))) STORED,
                ADD COLUMN client_key text GENERATED ALWAYS AS (lower(left(client, 200))) STORED,
                ADD COLUMN title_key text GENERATED ALWAYS AS (lower(left(title, 200))) STORED,
                ADD COLUMN town_key text GENERATED ALWAYS AS (lower(left(town, 200))) STORED)sql",
        "UPDATE job SET service_due_on = (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = job.id)",
        "UPDATE job SET (next_step, next_since) = (" WG_RECKONED("job.id") ")", "DROP INDEX job_present",
        "DROP INDEX job_by_number", "DROP INDEX job_by_client", "DROP INDEX job_by_title", "DROP INDEX job_by_town",
        "DROP INDEX job_by_state", "CREATE INDEX job_newest ON job (save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_number ON job (number_key, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_client ON job (client_key, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_title ON job (title_key, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_town ON job (town_key, save_seq, " WG_NARROWED,
        "CREATE INDEX job_by_state ON job (state, save_seq, invented, changed_at, next_step, service_due_on) "
        "WHERE removed_at IS NULL",
        // What few jobs have; its statistics tell the server so.
        "CREATE INDEX job_by_step ON job (next_step, save_seq, service_due_on) WHERE removed_at IS NULL",
        "CREATE INDEX job_by_change ON job (changed_at, save_seq) WHERE removed_at IS NULL",
        // plpgsql keeps the statement's plan, which takes longer to make than to run.
        "CREATE FUNCTION reckon_next_step(of_job text) RETURNS void LANGUAGE plpgsql AS $body$ BEGIN "
        "UPDATE job SET (next_step, next_since) = (" WG_RECKONED("of_job") ") WHERE id = of_job; END $body$",
        R"sql(
CREATE FUNCTION job_may_go_on() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF TG_OP = 'DELETE' THEN
        PERFORM reckon_next_step(OLD.job_id);
    ELSE
        PERFORM reckon_next_step(NEW.job_id);
    END IF;
    RETURN NULL;
END $body$)sql",
        R"sql(
CREATE FUNCTION job_of_answer_may_go_on() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    PERFORM reckon_next_step(q.job_id) FROM quote_issued q
    WHERE q.id = CASE TG_OP WHEN 'DELETE' THEN OLD.quote_id ELSE NEW.quote_id END;
    RETURN NULL;
END $body$)sql",
        R"sql(
CREATE FUNCTION first_service_of_job() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    UPDATE job SET service_due_on = (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = job.id)
    WHERE id = CASE TG_OP WHEN 'INSERT' THEN NEW.job_id ELSE OLD.job_id END
      AND service_due_on IS DISTINCT FROM (SELECT min(d.due_on) FROM service_due d WHERE d.job_id = job.id);
    RETURN NULL;
END $body$)sql",
        "CREATE TRIGGER job_state_day_step AFTER INSERT ON job_state_day "
        "FOR EACH ROW EXECUTE FUNCTION job_may_go_on()",
        "CREATE TRIGGER quote_issued_step AFTER INSERT OR DELETE ON quote_issued "
        "FOR EACH ROW EXECUTE FUNCTION job_may_go_on()",
        "CREATE TRIGGER quote_answer_step AFTER INSERT OR DELETE ON quote_answer "
        "FOR EACH ROW EXECUTE FUNCTION job_of_answer_may_go_on()",
        "CREATE TRIGGER service_due_step AFTER INSERT OR UPDATE OR DELETE ON service_due "
        "FOR EACH ROW EXECUTE FUNCTION first_service_of_job()"};
}

}  // namespace

std::vector<const char*> progress_statements(Dialect dialect) {
    return dialect == Dialect::sqlite ? of_file() : of_server();
}

}  // namespace wg::store
