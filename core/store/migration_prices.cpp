// The firm's price lists, version by version.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int prices_step = 13;
constexpr const char* prices_what = "price lists of the firm";

}  // namespace

Migration price_lists(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {prices_step,
                prices_what,
                {R"sql(
CREATE TABLE price_list (
    list_id   TEXT NOT NULL CHECK (list_id <> ''),
    version   INTEGER NOT NULL CHECK (version >= 1),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    came      INTEGER NOT NULL CHECK (came IN (0, 1)),
    note      TEXT NOT NULL,
    saved_by  TEXT NOT NULL,
    saved_at  TEXT NOT NULL,
    sha256    TEXT NOT NULL CHECK (length(sha256) = 64),
    content   TEXT NOT NULL CHECK (content <> ''),
    PRIMARY KEY (list_id, version)
))sql",
                 R"sql(
CREATE TRIGGER price_list_no_update BEFORE UPDATE ON price_list
BEGIN SELECT RAISE(ABORT, 'a version of a price list is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER price_list_no_delete BEFORE DELETE ON price_list
BEGIN SELECT RAISE(ABORT, 'a version of a price list is never deleted'); END)sql",
                 R"sql(
CREATE TRIGGER price_list_no_replace BEFORE INSERT ON price_list
WHEN EXISTS (SELECT 1 FROM price_list WHERE list_id = NEW.list_id AND version = NEW.version)
BEGIN SELECT RAISE(ABORT, 'a version of a price list is never replaced'); END)sql"}};
    }
    return {prices_step,
            prices_what,
            {R"sql(
CREATE TABLE price_list (
    list_id   text COLLATE "C" NOT NULL CHECK (list_id <> ''),
    version   integer NOT NULL CHECK (version >= 1),
    withdrawn integer NOT NULL CHECK (withdrawn IN (0, 1)),
    came      integer NOT NULL CHECK (came IN (0, 1)),
    note      text NOT NULL,
    saved_by  text NOT NULL,
    saved_at  text NOT NULL,
    sha256    text NOT NULL CHECK (length(sha256) = 64),
    content   text NOT NULL CHECK (content <> ''),
    PRIMARY KEY (list_id, version)
))sql",
             R"sql(
CREATE TRIGGER price_list_no_update BEFORE UPDATE ON price_list
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of a price list is never changed'))sql",
             R"sql(
CREATE TRIGGER price_list_no_delete BEFORE DELETE ON price_list
FOR EACH ROW EXECUTE FUNCTION refuse_change('a version of a price list is never deleted'))sql",
             R"sql(
CREATE TRIGGER price_list_no_truncate BEFORE TRUNCATE ON price_list
EXECUTE FUNCTION refuse_change('a version of a price list is never deleted'))sql"}};
}

}  // namespace wg::store
