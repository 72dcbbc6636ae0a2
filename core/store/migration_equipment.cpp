// The firm's own equipment: every version of every item, and who approved which.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int equipment_step = 14;
constexpr const char* equipment_what = "the firm's own equipment";

}  // namespace

Migration equipment_of_the_firm(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {equipment_step,
                equipment_what,
                {R"sql(
CREATE TABLE equipment_version (
    item_id   TEXT NOT NULL CHECK (item_id <> ''),
    version   INTEGER NOT NULL CHECK (version >= 1),
    kind      TEXT NOT NULL CHECK (kind IN ('collector', 'block', 'cylinder', 'fixing_method')),
    content   TEXT NOT NULL CHECK (content <> ''),
    sha256    TEXT NOT NULL CHECK (length(sha256) = 64),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    came      INTEGER NOT NULL CHECK (came IN (0, 1)),
    saved_at  TEXT NOT NULL,
    saved_by  TEXT NOT NULL,
    PRIMARY KEY (item_id, version)
))sql",
                 R"sql(
CREATE TRIGGER equipment_version_no_update BEFORE UPDATE ON equipment_version
BEGIN SELECT RAISE(ABORT, 'a version of equipment is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER equipment_version_no_delete BEFORE DELETE ON equipment_version
BEGIN SELECT RAISE(ABORT, 'a version of equipment is never deleted'); END)sql",
                 R"sql(
CREATE TRIGGER equipment_version_no_replace BEFORE INSERT ON equipment_version
WHEN EXISTS (SELECT 1 FROM equipment_version WHERE item_id = NEW.item_id AND version = NEW.version)
BEGIN SELECT RAISE(ABORT, 'a version of equipment is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER equipment_version_follows BEFORE INSERT ON equipment_version
WHEN NEW.version > 1
 AND NOT EXISTS (SELECT 1 FROM equipment_version
                 WHERE item_id = NEW.item_id AND version = NEW.version - 1 AND kind = NEW.kind)
BEGIN SELECT RAISE(ABORT, 'a version of equipment follows the one before it, of the same kind'); END)sql",
                 R"sql(
CREATE TABLE equipment_approval (
    seq         INTEGER PRIMARY KEY AUTOINCREMENT,
    item_id     TEXT NOT NULL,
    version     INTEGER NOT NULL,
    approved_by TEXT NOT NULL CHECK (approved_by <> ''),
    entered_by  TEXT NOT NULL,
    approved_at TEXT NOT NULL,
    FOREIGN KEY (item_id, version) REFERENCES equipment_version (item_id, version)
))sql",
                 "CREATE INDEX equipment_approval_version ON equipment_approval (item_id, version, seq)", R"sql(
CREATE TRIGGER equipment_approval_no_update BEFORE UPDATE ON equipment_approval
BEGIN SELECT RAISE(ABORT, 'an approval of equipment is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER equipment_approval_no_delete BEFORE DELETE ON equipment_approval
BEGIN SELECT RAISE(ABORT, 'an approval of equipment is never deleted'); END)sql",
                 R"sql(
CREATE TRIGGER equipment_approval_no_replace BEFORE INSERT ON equipment_approval
WHEN EXISTS (SELECT 1 FROM equipment_approval WHERE seq = NEW.seq)
BEGIN SELECT RAISE(ABORT, 'an approval of equipment is never replaced'); END)sql"}};
    }
    return {equipment_step,
            equipment_what,
            {R"sql(
CREATE TABLE equipment_version (
    item_id   text COLLATE "C" NOT NULL CHECK (item_id <> ''),
    version   bigint NOT NULL CHECK (version >= 1),
    kind      text NOT NULL CHECK (kind IN ('collector', 'block', 'cylinder', 'fixing_method')),
    content   text NOT NULL CHECK (content <> ''),
    sha256    text NOT NULL CHECK (length(sha256) = 64),
    withdrawn integer NOT NULL CHECK (withdrawn IN (0, 1)),
    came      integer NOT NULL CHECK (came IN (0, 1)),
    saved_at  text NOT NULL,
    saved_by  text NOT NULL,
    PRIMARY KEY (item_id, version)
))sql",
             R"sql(
CREATE FUNCTION refuse_version_that_does_not_follow() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NEW.version > 1 AND NOT EXISTS (SELECT 1 FROM equipment_version
            WHERE item_id = NEW.item_id AND version = NEW.version - 1 AND kind = NEW.kind) THEN
        RAISE EXCEPTION 'a version of equipment follows the one before it, of the same kind';
    END IF;
    RETURN NEW;
END $body$)sql",
             R"sql(
CREATE TRIGGER equipment_version_follows BEFORE INSERT ON equipment_version
FOR EACH ROW EXECUTE FUNCTION refuse_version_that_does_not_follow())sql",
             R"sql(
CREATE TRIGGER equipment_version_no_update BEFORE UPDATE ON equipment_version
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of equipment is never changed'))sql",
             R"sql(
CREATE TRIGGER equipment_version_no_delete BEFORE DELETE ON equipment_version
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of equipment is never deleted'))sql",
             R"sql(
CREATE TRIGGER equipment_version_no_truncate BEFORE TRUNCATE ON equipment_version
EXECUTE FUNCTION refuse_change('a version of equipment is never deleted'))sql",
             R"sql(
CREATE TABLE equipment_approval (
    seq         bigint PRIMARY KEY,
    item_id     text COLLATE "C" NOT NULL,
    version     bigint NOT NULL,
    approved_by text NOT NULL CHECK (approved_by <> ''),
    entered_by  text NOT NULL,
    approved_at text NOT NULL,
    FOREIGN KEY (item_id, version) REFERENCES equipment_version (item_id, version)
))sql",
             "CREATE INDEX equipment_approval_version ON equipment_approval (item_id, version, seq)", R"sql(
CREATE TRIGGER equipment_approval_no_update BEFORE UPDATE ON equipment_approval
FOR EACH ROW EXECUTE FUNCTION refuse_change('an approval of equipment is never changed'))sql",
             R"sql(
CREATE TRIGGER equipment_approval_no_delete BEFORE DELETE ON equipment_approval
FOR EACH ROW EXECUTE FUNCTION refuse_change('an approval of equipment is never deleted'))sql",
             R"sql(
CREATE TRIGGER equipment_approval_no_truncate BEFORE TRUNCATE ON equipment_approval
EXECUTE FUNCTION refuse_change('an approval of equipment is never deleted'))sql"}};
}

}  // namespace wg::store
