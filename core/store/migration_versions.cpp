// Versions of a job's fields, by which copies from other machines are put together with it (docs/handbook/travel.md).

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int versions_step = 10;
constexpr const char* versions_what = "versions of each job's fields";

}  // namespace

// `revision` is the one that the versions describe: a program that keeps none may have saved since. Packed as zlib
// does.
Migration versions_of_fields(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {versions_step,
                versions_what,
                {R"sql(
CREATE TABLE job_versions (
    job_id      TEXT PRIMARY KEY NOT NULL REFERENCES job (id),
    revision    INTEGER NOT NULL CHECK (revision >= 1),
    content_sha256 TEXT NOT NULL CHECK (length(content_sha256) = 64),
    content     BLOB NOT NULL CHECK (length(content) > 0)
))sql",
                 R"sql(
CREATE TABLE seat (
    anchor TEXT PRIMARY KEY NOT NULL,
    id     TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
    name   TEXT NOT NULL
))sql",
                 R"sql(
CREATE TRIGGER seat_no_update BEFORE UPDATE OF anchor, id ON seat
BEGIN SELECT RAISE(ABORT, 'a machine keeps the id it was given'); END)sql"}};
    }
    return {versions_step,
            versions_what,
            {R"sql(
CREATE TABLE job_versions (
    job_id      text COLLATE "C" PRIMARY KEY REFERENCES job (id),
    revision    bigint NOT NULL CHECK (revision >= 1),
    content_sha256 text NOT NULL CHECK (length(content_sha256) = 64),
    content     bytea NOT NULL CHECK (length(content) > 0)
))sql",
             "ALTER TABLE job_versions ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TABLE seat (
    anchor text COLLATE "C" PRIMARY KEY,
    id     text COLLATE "C" NOT NULL UNIQUE CHECK (length(id) = 36),
    name   text NOT NULL
))sql",
             R"sql(
CREATE TRIGGER seat_no_update BEFORE UPDATE OF anchor, id ON seat
FOR EACH ROW EXECUTE FUNCTION refuse_change('a machine keeps the id it was given'))sql"}};
}

}  // namespace wg::store
