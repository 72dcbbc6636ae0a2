// Deliveries in parts, papers by supplier, lines whose rest does not come, and what is taken for a job that is fitted.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int deliveries_step = 21;
constexpr const char* deliveries_what = "deliveries in parts and papers by supplier";

}  // namespace

Migration deliveries_in_parts(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {
            deliveries_step,
            deliveries_what,
            {"ALTER TABLE purchase_line ADD COLUMN needed INTEGER CHECK (needed BETWEEN 0 AND 1000000000000)",
             "ALTER TABLE purchase_line ADD COLUMN service INTEGER NOT NULL DEFAULT 0 CHECK (service IN (0, 1))", R"sql(
CREATE TABLE purchase_supplier_paper (
    paper_id TEXT NOT NULL REFERENCES purchase_paper (id),
    supplier TEXT NOT NULL,
    sha256   TEXT NOT NULL CHECK (length(sha256) = 64),
    content  BLOB NOT NULL CHECK (length(content) > 0),
    PRIMARY KEY (paper_id, supplier)
))sql",
             R"sql(
CREATE TRIGGER purchase_supplier_paper_no_update BEFORE UPDATE ON purchase_supplier_paper
BEGIN SELECT RAISE(ABORT, 'the paper of a supplier is never changed'); END)sql",
             R"sql(
CREATE TRIGGER purchase_supplier_paper_no_replace BEFORE INSERT ON purchase_supplier_paper
WHEN EXISTS (SELECT 1 FROM purchase_supplier_paper WHERE paper_id = NEW.paper_id AND supplier = NEW.supplier)
BEGIN SELECT RAISE(ABORT, 'the paper of a supplier is never replaced'); END)sql",
             R"sql(
CREATE TRIGGER purchase_supplier_paper_no_delete BEFORE DELETE ON purchase_supplier_paper
BEGIN SELECT RAISE(ABORT, 'the paper of a supplier is never deleted'); END)sql",
             R"sql(
CREATE TABLE purchase_close (
    seq        INTEGER PRIMARY KEY AUTOINCREMENT,
    paper_id   TEXT NOT NULL,
    position   INTEGER NOT NULL,
    closed     INTEGER NOT NULL CHECK (closed IN (0, 1)),
    entered_by TEXT NOT NULL,
    entered_at TEXT NOT NULL,
    FOREIGN KEY (paper_id, position) REFERENCES purchase_line (paper_id, position)
))sql",
             "CREATE INDEX purchase_close_line ON purchase_close (paper_id, position, seq)", R"sql(
CREATE TRIGGER purchase_close_no_update BEFORE UPDATE ON purchase_close
BEGIN SELECT RAISE(ABORT, 'what was entered of a line is never changed'); END)sql",
             R"sql(
CREATE TRIGGER purchase_close_no_replace BEFORE INSERT ON purchase_close
WHEN EXISTS (SELECT 1 FROM purchase_close WHERE seq = NEW.seq)
BEGIN SELECT RAISE(ABORT, 'what was entered of a line is never replaced'); END)sql",
             R"sql(
CREATE TRIGGER purchase_close_no_delete BEFORE DELETE ON purchase_close
BEGIN SELECT RAISE(ABORT, 'what was entered of a line is never deleted'); END)sql",
             // A line comes in several deliveries from now on: SQLite takes a rule off a table by making it anew.
             R"sql(
CREATE TABLE stock_move_anew (
    seq           INTEGER PRIMARY KEY AUTOINCREMENT,
    id            TEXT NOT NULL UNIQUE,
    item_id       TEXT NOT NULL CHECK (item_id <> ''),
    unit          TEXT NOT NULL CHECK (unit IN ('pc', 'm', 'kg', 'h')),
    move          TEXT NOT NULL CHECK (move IN ('received', 'taken', 'counted', 'returned', 'fitted')),
    thousandths   INTEGER NOT NULL CHECK (thousandths BETWEEN 0 AND 1000000000000),
    job_id        TEXT REFERENCES job (id),
    purchase_id   TEXT,
    purchase_line INTEGER,
    note          TEXT NOT NULL,
    entered_by    TEXT NOT NULL,
    entered_at    TEXT NOT NULL,
    corrects_id   TEXT UNIQUE REFERENCES stock_move_anew (id),
    CHECK ((purchase_id IS NULL) = (purchase_line IS NULL)),
    CHECK (move <> 'fitted' OR job_id IS NOT NULL),
    FOREIGN KEY (purchase_id, purchase_line) REFERENCES purchase_line (paper_id, position)
))sql",
             R"sql(
INSERT INTO stock_move_anew (seq, id, item_id, unit, move, thousandths, job_id, purchase_id, purchase_line, note,
                             entered_by, entered_at, corrects_id)
SELECT seq, id, item_id, unit, move, thousandths, job_id, purchase_id, purchase_line, note, entered_by, entered_at,
       corrects_id
FROM stock_move ORDER BY seq)sql",
             "DROP TABLE stock_move", "ALTER TABLE stock_move_anew RENAME TO stock_move",
             "CREATE INDEX stock_move_item ON stock_move (item_id, seq)",
             "CREATE INDEX stock_move_purchase ON stock_move (purchase_id) WHERE purchase_id IS NOT NULL",
             "CREATE INDEX stock_move_job ON stock_move (job_id) WHERE job_id IS NOT NULL", R"sql(
CREATE TRIGGER stock_move_no_update BEFORE UPDATE ON stock_move
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never changed'); END)sql",
             R"sql(
CREATE TRIGGER stock_move_no_replace BEFORE INSERT ON stock_move
WHEN EXISTS (SELECT 1 FROM stock_move WHERE id = NEW.id OR seq = NEW.seq OR corrects_id = NEW.corrects_id)
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never replaced'); END)sql",
             R"sql(
CREATE TRIGGER stock_move_corrects_its_like BEFORE INSERT ON stock_move
WHEN NEW.corrects_id IS NOT NULL
 AND NOT EXISTS (SELECT 1 FROM stock_move
                 WHERE id = NEW.corrects_id AND item_id = NEW.item_id AND unit = NEW.unit)
BEGIN SELECT RAISE(ABORT, 'a correction is of the same item and unit'); END)sql",
             R"sql(
CREATE TRIGGER stock_move_no_delete BEFORE DELETE ON stock_move
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never deleted'); END)sql"}};
    }
    return {deliveries_step,
            deliveries_what,
            {"ALTER TABLE purchase_line ADD COLUMN needed bigint CHECK (needed BETWEEN 0 AND 1000000000000)",
             "ALTER TABLE purchase_line ADD COLUMN service bigint NOT NULL DEFAULT 0 CHECK (service IN (0, 1))", R"sql(
CREATE TABLE purchase_supplier_paper (
    paper_id text COLLATE "C" NOT NULL REFERENCES purchase_paper (id),
    supplier text COLLATE "C" NOT NULL,
    sha256   text NOT NULL CHECK (length(sha256) = 64),
    content  bytea NOT NULL CHECK (length(content) > 0),
    PRIMARY KEY (paper_id, supplier)
))sql",
             "ALTER TABLE purchase_supplier_paper ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TRIGGER purchase_supplier_paper_no_update BEFORE UPDATE ON purchase_supplier_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('the paper of a supplier is never changed'))sql",
             R"sql(
CREATE TRIGGER purchase_supplier_paper_no_delete BEFORE DELETE ON purchase_supplier_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('the paper of a supplier is never deleted'))sql",
             R"sql(
CREATE TRIGGER purchase_supplier_paper_no_truncate BEFORE TRUNCATE ON purchase_supplier_paper
EXECUTE FUNCTION refuse_change('the paper of a supplier is never deleted'))sql",
             R"sql(
CREATE TABLE purchase_close (
    seq        bigint PRIMARY KEY,
    paper_id   text COLLATE "C" NOT NULL,
    position   bigint NOT NULL,
    closed     bigint NOT NULL CHECK (closed IN (0, 1)),
    entered_by text NOT NULL,
    entered_at text NOT NULL,
    FOREIGN KEY (paper_id, position) REFERENCES purchase_line (paper_id, position)
))sql",
             "CREATE INDEX purchase_close_line ON purchase_close (paper_id, position, seq)", R"sql(
CREATE TRIGGER purchase_close_no_update BEFORE UPDATE ON purchase_close
FOR EACH ROW EXECUTE FUNCTION refuse_change('what was entered of a line is never changed'))sql",
             R"sql(
CREATE TRIGGER purchase_close_no_delete BEFORE DELETE ON purchase_close
FOR EACH ROW EXECUTE FUNCTION refuse_change('what was entered of a line is never deleted'))sql",
             R"sql(
CREATE TRIGGER purchase_close_no_truncate BEFORE TRUNCATE ON purchase_close
EXECUTE FUNCTION refuse_change('what was entered of a line is never deleted'))sql",
             "ALTER TABLE stock_move DROP CONSTRAINT stock_move_purchase_id_purchase_line_key",
             "ALTER TABLE stock_move DROP CONSTRAINT stock_move_move_check",
             "ALTER TABLE stock_move ADD CONSTRAINT stock_move_move_check "
             "CHECK (move IN ('received', 'taken', 'counted', 'returned', 'fitted'))",
             "ALTER TABLE stock_move ADD CONSTRAINT stock_move_fitted_check "
             "CHECK (move <> 'fitted' OR job_id IS NOT NULL)",
             "CREATE INDEX stock_move_purchase ON stock_move (purchase_id) WHERE purchase_id IS NOT NULL",
             "CREATE INDEX stock_move_job ON stock_move (job_id) WHERE job_id IS NOT NULL"}};
}

}  // namespace wg::store
