// The schema of version 7 for PostgreSQL: the tables of SQLite's steps 1 to 7 with the same columns.

#include "core/store/migrations.h"

namespace wg::store {

// COLLATE "C": texts are ordered by their bytes, as SQLite does, whatever the database's locale.
Migration schema_of_version_7() {
    return {7,
            "the tables",
            {R"sql(
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0];
END $body$)sql",
             // A field of a job's JSON as text: empty when it is not there, NULL when the text cannot be read.
             R"sql(
CREATE FUNCTION field_of_json(content text, VARIADIC path text[]) RETURNS text LANGUAGE plpgsql IMMUTABLE AS $body$
BEGIN
    RETURN coalesce(content::json #>> path, '');
EXCEPTION WHEN data_exception THEN
    RETURN NULL;
END $body$)sql",
             R"sql(
CREATE TABLE job (
    id             text COLLATE "C" PRIMARY KEY,
    save_seq       bigint NOT NULL UNIQUE,
    number         text COLLATE "C" NOT NULL,
    title          text NOT NULL,
    client         text NOT NULL,
    town           text NOT NULL,
    state          text NOT NULL,
    invented       integer NOT NULL CHECK (invented IN (0, 1)),
    revision       bigint NOT NULL CHECK (revision >= 1),
    changed_at     text NOT NULL,
    content_sha256 text NOT NULL,
    base_sha256    text NOT NULL,
    base_revision  bigint NOT NULL,
    removed_at     text
))sql",
             "CREATE UNIQUE INDEX job_number ON job (number) WHERE number <> ''",
             "CREATE INDEX job_present ON job (save_seq) WHERE removed_at IS NULL", R"sql(
CREATE TABLE job_revision (
    job_id      text COLLATE "C" NOT NULL REFERENCES job (id),
    revision    bigint NOT NULL CHECK (revision >= 1),
    changed_at  text NOT NULL,
    content     text NOT NULL,
    text_sha256 text NOT NULL,
    PRIMARY KEY (job_id, revision)
))sql",
             R"sql(
CREATE TRIGGER job_revision_no_update BEFORE UPDATE ON job_revision
FOR EACH ROW EXECUTE FUNCTION refuse_change('an earlier content of a job is never changed'))sql",
             R"sql(
CREATE TRIGGER job_revision_no_delete BEFORE DELETE ON job_revision
FOR EACH ROW EXECUTE FUNCTION refuse_change('an earlier content of a job is never deleted'))sql",
             R"sql(
CREATE TRIGGER job_revision_no_truncate BEFORE TRUNCATE ON job_revision
EXECUTE FUNCTION refuse_change('an earlier content of a job is never deleted'))sql",
             "CREATE TABLE setting (key text COLLATE \"C\" PRIMARY KEY, value text NOT NULL)", R"sql(
CREATE TABLE quote_issued (
    id           text COLLATE "C" PRIMARY KEY,
    job_id       text COLLATE "C" NOT NULL,
    job_revision bigint NOT NULL,
    number       text COLLATE "C" NOT NULL UNIQUE CHECK (number <> ''),
    issued_at    text COLLATE "C" NOT NULL,
    plan_json    text NOT NULL,
    sha256       text NOT NULL,
    gross_minor  bigint NOT NULL,
    currency     text NOT NULL,
    FOREIGN KEY (job_id, job_revision) REFERENCES job_revision (job_id, revision)
))sql",
             "CREATE INDEX quote_issued_job ON quote_issued (job_id, issued_at)", R"sql(
CREATE TRIGGER quote_issued_no_update BEFORE UPDATE ON quote_issued
FOR EACH ROW EXECUTE FUNCTION refuse_change('an issued quote is never changed'))sql",
             R"sql(
CREATE TRIGGER quote_issued_no_delete BEFORE DELETE ON quote_issued
FOR EACH ROW EXECUTE FUNCTION refuse_change('an issued quote is never deleted'))sql",
             R"sql(
CREATE TRIGGER quote_issued_no_truncate BEFORE TRUNCATE ON quote_issued
EXECUTE FUNCTION refuse_change('an issued quote is never deleted'))sql",
             // Words as the program parts and folds them (core/store/fold.h), with their places for phrases.
             R"sql(
CREATE TABLE job_search (
    save_seq bigint PRIMARY KEY REFERENCES job (save_seq),
    words    tsvector NOT NULL
))sql",
             "CREATE INDEX job_search_words ON job_search USING gin (words)", R"sql(
CREATE TABLE weather_year (
    id            text COLLATE "C" PRIMARY KEY CHECK (id = 'year:' || substr(sha256, 1, 16)),
    sha256        text COLLATE "C" NOT NULL UNIQUE CHECK (length(sha256) = 64),
    label         text COLLATE "C" NOT NULL,
    source        text NOT NULL,
    format        text NOT NULL,
    invented      integer NOT NULL CHECK (invented IN (0, 1)),
    latitude_deg  double precision NOT NULL CHECK (latitude_deg BETWEEN -90 AND 90),
    longitude_deg double precision NOT NULL CHECK (longitude_deg BETWEEN -180 AND 180),
    altitude_m    double precision NOT NULL,
    utc_offset_h  double precision NOT NULL,
    global_kwh_m2 double precision NOT NULL,
    air_mean_c    double precision NOT NULL,
    imported_at   text NOT NULL,
    content       bytea NOT NULL
))sql",
             R"sql(
CREATE TRIGGER weather_year_no_update BEFORE UPDATE OF id, sha256, content ON weather_year
FOR EACH ROW EXECUTE FUNCTION refuse_change('a stored weather year is never changed'))sql",
             R"sql(
CREATE TABLE photograph (
    sha256   text COLLATE "C" PRIMARY KEY CHECK (length(sha256) = 64),
    added_at text NOT NULL,
    content  bytea NOT NULL CHECK (length(content) > 0)
))sql",
             // JPEG is packed already: compressing it again costs time and gains nothing.
             "ALTER TABLE photograph ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TRIGGER photograph_no_update BEFORE UPDATE ON photograph
FOR EACH ROW EXECUTE FUNCTION refuse_change('a stored photograph is never changed'))sql",
             R"sql(
CREATE TABLE unsaved (
    job_id      text COLLATE "C" PRIMARY KEY REFERENCES job (id),
    revision    bigint NOT NULL CHECK (revision >= 0),
    kept_at     text NOT NULL,
    content     text NOT NULL,
    text_sha256 text NOT NULL
))sql",
             R"sql(
CREATE TABLE service_due (
    job_id       text COLLATE "C" NOT NULL REFERENCES job (id),
    service_id   text COLLATE "C" NOT NULL CHECK (service_id <> ''),
    text         text NOT NULL,
    due_on       text COLLATE "C" NOT NULL CHECK (due_on ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'),
    last_done_on text NOT NULL,
    PRIMARY KEY (job_id, service_id)
))sql",
             "CREATE INDEX service_due_day ON service_due (due_on)", R"sql(
CREATE TABLE refrigerant_entry (
    seq         bigint PRIMARY KEY,
    id          text COLLATE "C" NOT NULL UNIQUE,
    on_day      text NOT NULL CHECK (on_day ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'),
    refrigerant text NOT NULL CHECK (refrigerant <> ''),
    move        text NOT NULL,
    kg          double precision NOT NULL CHECK (kg BETWEEN 0 AND 100000),
    bottle      text NOT NULL,
    note        text NOT NULL,
    entered_by  text NOT NULL,
    job_id      text COLLATE "C" REFERENCES job (id),
    reading_id  text COLLATE "C" UNIQUE,
    corrects_id text COLLATE "C" REFERENCES refrigerant_entry (id),
    entered_at  text NOT NULL,
    CHECK (reading_id IS NULL OR job_id IS NOT NULL)
))sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_update BEFORE UPDATE ON refrigerant_entry
FOR EACH ROW EXECUTE FUNCTION refuse_change('an entry of the refrigerant register is never changed'))sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_delete BEFORE DELETE ON refrigerant_entry
FOR EACH ROW EXECUTE FUNCTION refuse_change('an entry of the refrigerant register is never deleted'))sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_truncate BEFORE TRUNCATE ON refrigerant_entry
EXECUTE FUNCTION refuse_change('an entry of the refrigerant register is never deleted'))sql"}};
}

}  // namespace wg::store
