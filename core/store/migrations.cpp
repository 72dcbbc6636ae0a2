#include "core/store/migrations.h"

namespace wg::store {
namespace {

Migration jobs_and_history() {
    return {1,
            "jobs, their history and the firm's settings",
            {R"sql(
CREATE TABLE job (
    id             TEXT PRIMARY KEY NOT NULL,
    save_seq       INTEGER NOT NULL UNIQUE,
    number         TEXT NOT NULL,
    title          TEXT NOT NULL,
    client         TEXT NOT NULL,
    town           TEXT NOT NULL,
    state          TEXT NOT NULL,
    invented       INTEGER NOT NULL CHECK (invented IN (0, 1)),
    revision       INTEGER NOT NULL CHECK (revision >= 1),
    changed_at     TEXT NOT NULL,
    content_sha256 TEXT NOT NULL,
    base_sha256    TEXT NOT NULL,
    base_revision  INTEGER NOT NULL,
    removed_at     TEXT
))sql",
             "CREATE UNIQUE INDEX job_number ON job (number) WHERE number <> ''",
             "CREATE INDEX job_present ON job (save_seq) WHERE removed_at IS NULL", R"sql(
CREATE TABLE job_revision (
    job_id      TEXT NOT NULL REFERENCES job (id),
    revision    INTEGER NOT NULL CHECK (revision >= 1),
    changed_at  TEXT NOT NULL,
    content     TEXT NOT NULL,
    text_sha256 TEXT NOT NULL,
    PRIMARY KEY (job_id, revision)
))sql",
             R"sql(
CREATE TRIGGER job_revision_no_update BEFORE UPDATE ON job_revision
BEGIN SELECT RAISE(ABORT, 'an earlier content of a job is never changed'); END)sql",
             R"sql(
CREATE TRIGGER job_revision_no_delete BEFORE DELETE ON job_revision
BEGIN SELECT RAISE(ABORT, 'an earlier content of a job is never deleted'); END)sql",
             // INSERT OR REPLACE deletes without calling the trigger above.
             R"sql(
CREATE TRIGGER job_revision_no_replace BEFORE INSERT ON job_revision
WHEN EXISTS (SELECT 1 FROM job_revision WHERE job_id = NEW.job_id AND revision = NEW.revision)
BEGIN SELECT RAISE(ABORT, 'an earlier content of a job is never replaced'); END)sql",
             "CREATE TABLE setting (key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL)"}};
}

Migration issued_quotes() {
    return {2,
            "issued quotes",
            {R"sql(
CREATE TABLE quote_issued (
    id           TEXT PRIMARY KEY NOT NULL,
    job_id       TEXT NOT NULL,
    job_revision INTEGER NOT NULL,
    number       TEXT NOT NULL UNIQUE CHECK (number <> ''),
    issued_at    TEXT NOT NULL,
    plan_json    TEXT NOT NULL,
    sha256       TEXT NOT NULL,
    gross_minor  INTEGER NOT NULL,
    currency     TEXT NOT NULL,
    FOREIGN KEY (job_id, job_revision) REFERENCES job_revision (job_id, revision)
))sql",
             "CREATE INDEX quote_issued_job ON quote_issued (job_id, issued_at)", R"sql(
CREATE TRIGGER quote_issued_no_update BEFORE UPDATE ON quote_issued
BEGIN SELECT RAISE(ABORT, 'an issued quote is never changed'); END)sql",
             R"sql(
CREATE TRIGGER quote_issued_no_delete BEFORE DELETE ON quote_issued
BEGIN SELECT RAISE(ABORT, 'an issued quote is never deleted'); END)sql",
             R"sql(
CREATE TRIGGER quote_issued_no_replace BEFORE INSERT ON quote_issued
WHEN EXISTS (SELECT 1 FROM quote_issued WHERE id = NEW.id OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'an issued quote is never replaced'); END)sql"}};
}

Migration search() {
    // rowid is the job's save_seq: walking the index backwards gives the newest first without sorting.
    return {3,
            "search over the list of jobs",
            {R"sql(
CREATE VIRTUAL TABLE job_search USING fts5 (
    number, title, client, town, notes, tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3'
))sql",
             R"sql(
INSERT INTO job_search (rowid, number, title, client, town, notes)
SELECT j.save_seq, j.number, j.title, j.client, j.town, json_extract(r.content, '$.notes')
FROM job j JOIN job_revision r ON r.job_id = j.id AND r.revision = j.revision
WHERE j.removed_at IS NULL)sql"}};
}

Migration weather_years() {
    // BLOB: the bytes come back as they went in, whatever they hold.
    return {4,
            "weather years",
            {R"sql(
CREATE TABLE weather_year (
    id            TEXT PRIMARY KEY NOT NULL CHECK (id = 'year:' || substr(sha256, 1, 16)),
    sha256        TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64),
    label         TEXT NOT NULL,
    source        TEXT NOT NULL,
    format        TEXT NOT NULL,
    invented      INTEGER NOT NULL CHECK (invented IN (0, 1)),
    latitude_deg  REAL NOT NULL CHECK (latitude_deg BETWEEN -90 AND 90),
    longitude_deg REAL NOT NULL CHECK (longitude_deg BETWEEN -180 AND 180),
    altitude_m    REAL NOT NULL,
    utc_offset_h  REAL NOT NULL,
    global_kwh_m2 REAL NOT NULL,
    air_mean_c    REAL NOT NULL,
    imported_at   TEXT NOT NULL,
    content       BLOB NOT NULL
))sql",
             R"sql(
CREATE TRIGGER weather_year_no_update BEFORE UPDATE OF id, sha256, content ON weather_year
BEGIN SELECT RAISE(ABORT, 'a stored weather year is never changed'); END)sql",
             R"sql(
CREATE TRIGGER weather_year_no_replace BEFORE INSERT ON weather_year
WHEN EXISTS (SELECT 1 FROM weather_year WHERE id = NEW.id OR sha256 = NEW.sha256)
BEGIN SELECT RAISE(ABORT, 'a stored weather year is never replaced'); END)sql"}};
}

Migration photographs() {
    return {5,
            "photographs",
            {R"sql(
CREATE TABLE photograph (
    sha256   TEXT PRIMARY KEY NOT NULL CHECK (length(sha256) = 64),
    added_at TEXT NOT NULL,
    content  BLOB NOT NULL CHECK (length(content) > 0)
))sql",
             R"sql(
CREATE TRIGGER photograph_no_update BEFORE UPDATE ON photograph
BEGIN SELECT RAISE(ABORT, 'a stored photograph is never changed'); END)sql",
             R"sql(
CREATE TRIGGER photograph_no_replace BEFORE INSERT ON photograph
WHEN EXISTS (SELECT 1 FROM photograph WHERE sha256 = NEW.sha256)
BEGIN SELECT RAISE(ABORT, 'a stored photograph is never replaced'); END)sql"}};
}

Migration unsaved_edits() {
    // One row a job, written over and over while it is edited; no history and no trigger.
    return {6, "edits not yet saved", {R"sql(
CREATE TABLE unsaved (
    job_id      TEXT PRIMARY KEY NOT NULL REFERENCES job (id),
    revision    INTEGER NOT NULL CHECK (revision >= 0),
    kept_at     TEXT NOT NULL,
    content     TEXT NOT NULL,
    text_sha256 TEXT NOT NULL
))sql"}};
}

Migration services_and_refrigerant() {
    return {7,
            "services that fall due and the refrigerant register",
            {// Worked out from a job's plan and replaced with it: no history and no trigger.
             R"sql(
CREATE TABLE service_due (
    job_id       TEXT NOT NULL REFERENCES job (id),
    service_id   TEXT NOT NULL CHECK (service_id <> ''),
    text         TEXT NOT NULL,
    due_on       TEXT NOT NULL CHECK (due_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    last_done_on TEXT NOT NULL,
    PRIMARY KEY (job_id, service_id)
))sql",
             "CREATE INDEX service_due_day ON service_due (due_on)", R"sql(
CREATE TABLE refrigerant_entry (
    seq         INTEGER PRIMARY KEY AUTOINCREMENT,
    id          TEXT NOT NULL UNIQUE,
    on_day      TEXT NOT NULL CHECK (on_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    refrigerant TEXT NOT NULL CHECK (refrigerant <> ''),
    move        TEXT NOT NULL,
    kg          REAL NOT NULL CHECK (kg BETWEEN 0 AND 100000),
    bottle      TEXT NOT NULL,
    note        TEXT NOT NULL,
    entered_by  TEXT NOT NULL,
    job_id      TEXT REFERENCES job (id),
    reading_id  TEXT UNIQUE,
    corrects_id TEXT REFERENCES refrigerant_entry (id),
    entered_at  TEXT NOT NULL,
    CHECK (reading_id IS NULL OR job_id IS NOT NULL)
))sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_update BEFORE UPDATE ON refrigerant_entry
BEGIN SELECT RAISE(ABORT, 'an entry of the refrigerant register is never changed'); END)sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_delete BEFORE DELETE ON refrigerant_entry
BEGIN SELECT RAISE(ABORT, 'an entry of the refrigerant register is never deleted'); END)sql",
             R"sql(
CREATE TRIGGER refrigerant_entry_no_replace BEFORE INSERT ON refrigerant_entry
WHEN EXISTS (SELECT 1 FROM refrigerant_entry
             WHERE id = NEW.id OR seq = NEW.seq OR (NEW.reading_id IS NOT NULL AND reading_id = NEW.reading_id))
BEGIN SELECT RAISE(ABORT, 'an entry of the refrigerant register is never replaced'); END)sql"}};
}

// From here on both databases take the same steps, with the words of each where they differ.

Migration who_saved() {
    return {8, "who saved each revision", {"ALTER TABLE job_revision ADD COLUMN changed_by TEXT NOT NULL DEFAULT ''"}};
}

/// Ids of papers with a blank between them; empty: it takes the place of none, or was made before this was kept.
Migration replaced_orders() {
    return {20,
            "which papers of an order a later one takes the place of",
            {"ALTER TABLE order_paper ADD COLUMN takes_place_of TEXT NOT NULL DEFAULT ''"}};
}

}  // namespace

const std::vector<Migration>& migrations(Dialect dialect) {
    static const std::vector<Migration> sqlite = {jobs_and_history(),
                                                  issued_quotes(),
                                                  search(),
                                                  weather_years(),
                                                  photographs(),
                                                  unsaved_edits(),
                                                  services_and_refrigerant(),
                                                  who_saved(),
                                                  erasure(Dialect::sqlite),
                                                  versions_of_fields(Dialect::sqlite),
                                                  desk_at_size(Dialect::sqlite),
                                                  papers_and_answers(Dialect::sqlite),
                                                  price_lists(Dialect::sqlite),
                                                  equipment_of_the_firm(Dialect::sqlite),
                                                  numbers_and_orders(Dialect::sqlite),
                                                  customer_list(Dialect::sqlite),
                                                  rule_sets_of_the_firm(Dialect::sqlite),
                                                  stock_and_purchases(Dialect::sqlite),
                                                  records_of_progress(Dialect::sqlite),
                                                  replaced_orders(),
                                                  deliveries_in_parts(Dialect::sqlite)};
    static const std::vector<Migration> postgresql = {schema_of_version_7(),
                                                      who_saved(),
                                                      erasure(Dialect::postgresql),
                                                      versions_of_fields(Dialect::postgresql),
                                                      desk_at_size(Dialect::postgresql),
                                                      papers_and_answers(Dialect::postgresql),
                                                      price_lists(Dialect::postgresql),
                                                      equipment_of_the_firm(Dialect::postgresql),
                                                      numbers_and_orders(Dialect::postgresql),
                                                      customer_list(Dialect::postgresql),
                                                      rule_sets_of_the_firm(Dialect::postgresql),
                                                      stock_and_purchases(Dialect::postgresql),
                                                      records_of_progress(Dialect::postgresql),
                                                      replaced_orders(),
                                                      deliveries_in_parts(Dialect::postgresql)};
    return dialect == Dialect::sqlite ? sqlite : postgresql;
}

int newest_version() {
    return migrations(Dialect::sqlite).back().version;
}

}  // namespace wg::store
