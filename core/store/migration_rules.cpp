// The firm's rule sets, version by version.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int rules_step = 17;
constexpr const char* rules_what = "rule sets of the firm";

}  // namespace

Migration rule_sets_of_the_firm(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {rules_step,
                rules_what,
                {R"sql(
CREATE TABLE rule_set (
    rule_id   TEXT NOT NULL CHECK (rule_id <> ''),
    version   INTEGER NOT NULL CHECK (version >= 1),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    came      INTEGER NOT NULL CHECK (came IN (0, 1)),
    note      TEXT NOT NULL,
    saved_by  TEXT NOT NULL,
    saved_at  TEXT NOT NULL,
    sha256    TEXT NOT NULL CHECK (length(sha256) = 64),
    content   TEXT NOT NULL CHECK (content <> ''),
    PRIMARY KEY (rule_id, version)
))sql",
                 R"sql(
CREATE TRIGGER rule_set_no_update BEFORE UPDATE ON rule_set
BEGIN SELECT RAISE(ABORT, 'a version of a rule set is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER rule_set_no_delete BEFORE DELETE ON rule_set
BEGIN SELECT RAISE(ABORT, 'a version of a rule set is never deleted'); END)sql",
                 R"sql(
CREATE TRIGGER rule_set_no_replace BEFORE INSERT ON rule_set
WHEN EXISTS (SELECT 1 FROM rule_set WHERE rule_id = NEW.rule_id AND version = NEW.version)
BEGIN SELECT RAISE(ABORT, 'a version of a rule set is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER rule_set_follows BEFORE INSERT ON rule_set
WHEN NEW.version > 1 AND NOT EXISTS (SELECT 1 FROM rule_set WHERE rule_id = NEW.rule_id AND version = NEW.version - 1)
BEGIN SELECT RAISE(ABORT, 'a version of a rule set follows the one before it'); END)sql"}};
    }
    return {rules_step,
            rules_what,
            {R"sql(
CREATE TABLE rule_set (
    rule_id   text COLLATE "C" NOT NULL CHECK (rule_id <> ''),
    version   integer NOT NULL CHECK (version >= 1),
    withdrawn integer NOT NULL CHECK (withdrawn IN (0, 1)),
    came      integer NOT NULL CHECK (came IN (0, 1)),
    note      text NOT NULL,
    saved_by  text NOT NULL,
    saved_at  text NOT NULL,
    sha256    text NOT NULL CHECK (length(sha256) = 64),
    content   text NOT NULL CHECK (content <> ''),
    PRIMARY KEY (rule_id, version)
))sql",
             R"sql(
CREATE FUNCTION refuse_rules_that_do_not_follow() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NEW.version > 1 AND NOT EXISTS (SELECT 1 FROM rule_set
            WHERE rule_id = NEW.rule_id AND version = NEW.version - 1) THEN
        RAISE EXCEPTION 'a version of a rule set follows the one before it';
    END IF;
    RETURN NEW;
END $body$)sql",
             R"sql(
CREATE TRIGGER rule_set_follows BEFORE INSERT ON rule_set
FOR EACH ROW EXECUTE FUNCTION refuse_rules_that_do_not_follow())sql",
             R"sql(
CREATE TRIGGER rule_set_no_update BEFORE UPDATE ON rule_set
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of a rule set is never changed'))sql",
             R"sql(
CREATE TRIGGER rule_set_no_delete BEFORE DELETE ON rule_set
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of a rule set is never deleted'))sql",
             R"sql(
CREATE TRIGGER rule_set_no_truncate BEFORE TRUNCATE ON rule_set
EXECUTE FUNCTION refuse_change('a version of a rule set is never deleted'))sql"}};
}

}  // namespace wg::store
