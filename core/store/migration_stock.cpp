// The book of stock, purchase lists as they went out, and entries of the firm's books that are not saved yet.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int stock_step = 18;
constexpr const char* stock_what = "stock, purchase lists and entries not saved yet";

}  // namespace

Migration stock_and_purchases(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {stock_step,
                stock_what,
                {R"sql(
CREATE TABLE purchase_paper (
    seq     INTEGER PRIMARY KEY AUTOINCREMENT,
    id      TEXT NOT NULL UNIQUE,
    job_id  TEXT NOT NULL REFERENCES job (id),
    number  TEXT NOT NULL UNIQUE CHECK (number <> ''),
    sha256  TEXT NOT NULL CHECK (length(sha256) = 64),
    kept_at TEXT NOT NULL,
    kept_by TEXT NOT NULL,
    content BLOB NOT NULL CHECK (length(content) > 0)
))sql",
                 R"sql(
CREATE TRIGGER purchase_paper_no_update BEFORE UPDATE ON purchase_paper
BEGIN SELECT RAISE(ABORT, 'a purchase list is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER purchase_paper_no_replace BEFORE INSERT ON purchase_paper
WHEN EXISTS (SELECT 1 FROM purchase_paper WHERE id = NEW.id OR seq = NEW.seq OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'a purchase list is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER purchase_paper_no_delete BEFORE DELETE ON purchase_paper
BEGIN SELECT RAISE(ABORT, 'a purchase list is never deleted'); END)sql",
                 R"sql(
CREATE TABLE purchase_line (
    paper_id    TEXT NOT NULL REFERENCES purchase_paper (id),
    position    INTEGER NOT NULL CHECK (position >= 1),
    supplier    TEXT NOT NULL,
    item_id     TEXT NOT NULL,
    text        TEXT NOT NULL,
    unit        TEXT NOT NULL,
    thousandths INTEGER NOT NULL CHECK (thousandths BETWEEN 0 AND 1000000000000),
    PRIMARY KEY (paper_id, position)
))sql",
                 R"sql(
CREATE TRIGGER purchase_line_no_update BEFORE UPDATE ON purchase_line
BEGIN SELECT RAISE(ABORT, 'a line of a purchase list is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER purchase_line_no_replace BEFORE INSERT ON purchase_line
WHEN EXISTS (SELECT 1 FROM purchase_line WHERE paper_id = NEW.paper_id AND position = NEW.position)
BEGIN SELECT RAISE(ABORT, 'a line of a purchase list is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER purchase_line_no_delete BEFORE DELETE ON purchase_line
BEGIN SELECT RAISE(ABORT, 'a line of a purchase list is never deleted'); END)sql",
                 R"sql(
CREATE TABLE stock_move (
    seq           INTEGER PRIMARY KEY AUTOINCREMENT,
    id            TEXT NOT NULL UNIQUE,
    item_id       TEXT NOT NULL CHECK (item_id <> ''),
    unit          TEXT NOT NULL CHECK (unit IN ('pc', 'm', 'kg', 'h')),
    move          TEXT NOT NULL CHECK (move IN ('received', 'taken', 'counted', 'returned')),
    thousandths   INTEGER NOT NULL CHECK (thousandths BETWEEN 0 AND 1000000000000),
    job_id        TEXT REFERENCES job (id),
    purchase_id   TEXT,
    purchase_line INTEGER,
    note          TEXT NOT NULL,
    entered_by    TEXT NOT NULL,
    entered_at    TEXT NOT NULL,
    corrects_id   TEXT UNIQUE REFERENCES stock_move (id),
    CHECK ((purchase_id IS NULL) = (purchase_line IS NULL)),
    UNIQUE (purchase_id, purchase_line),
    FOREIGN KEY (purchase_id, purchase_line) REFERENCES purchase_line (paper_id, position)
))sql",
                 "CREATE INDEX stock_move_item ON stock_move (item_id, seq)", R"sql(
CREATE TRIGGER stock_move_no_update BEFORE UPDATE ON stock_move
WHEN NOT EXISTS (SELECT 1 FROM erasing WHERE job_id = OLD.job_id)
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER stock_move_no_replace BEFORE INSERT ON stock_move
WHEN EXISTS (SELECT 1 FROM stock_move WHERE id = NEW.id OR seq = NEW.seq OR corrects_id = NEW.corrects_id
             OR (purchase_id = NEW.purchase_id AND purchase_line = NEW.purchase_line))
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER stock_move_corrects_its_like BEFORE INSERT ON stock_move
WHEN NEW.corrects_id IS NOT NULL
 AND NOT EXISTS (SELECT 1 FROM stock_move
                 WHERE id = NEW.corrects_id AND item_id = NEW.item_id AND unit = NEW.unit)
BEGIN SELECT RAISE(ABORT, 'a correction is of the same item and unit'); END)sql",
                 R"sql(
CREATE TRIGGER stock_move_no_delete BEFORE DELETE ON stock_move
BEGIN SELECT RAISE(ABORT, 'a movement of stock is never deleted'); END)sql",
                 R"sql(
CREATE TABLE entries_kept (
    book        TEXT NOT NULL CHECK (book IN ('equipment', 'prices')),
    kept_by     TEXT NOT NULL,
    entry       TEXT NOT NULL,
    based_on    INTEGER NOT NULL CHECK (based_on >= 0),
    kept_at     TEXT NOT NULL,
    content     TEXT NOT NULL,
    text_sha256 TEXT NOT NULL,
    PRIMARY KEY (book, kept_by, entry)
))sql"}};
    }
    return {stock_step,
            stock_what,
            {R"sql(
CREATE TABLE purchase_paper (
    seq     bigint PRIMARY KEY,
    id      text COLLATE "C" NOT NULL UNIQUE,
    job_id  text COLLATE "C" NOT NULL REFERENCES job (id),
    number  text COLLATE "C" NOT NULL UNIQUE CHECK (number <> ''),
    sha256  text NOT NULL CHECK (length(sha256) = 64),
    kept_at text NOT NULL,
    kept_by text NOT NULL,
    content bytea NOT NULL CHECK (length(content) > 0)
))sql",
             "ALTER TABLE purchase_paper ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TRIGGER purchase_paper_no_update BEFORE UPDATE ON purchase_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('a purchase list is never changed'))sql",
             R"sql(
CREATE TRIGGER purchase_paper_no_delete BEFORE DELETE ON purchase_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('a purchase list is never deleted'))sql",
             R"sql(
CREATE TRIGGER purchase_paper_no_truncate BEFORE TRUNCATE ON purchase_paper
EXECUTE FUNCTION refuse_change('a purchase list is never deleted'))sql",
             R"sql(
CREATE TABLE purchase_line (
    paper_id    text COLLATE "C" NOT NULL REFERENCES purchase_paper (id),
    position    bigint NOT NULL CHECK (position >= 1),
    supplier    text NOT NULL,
    item_id     text NOT NULL,
    text        text NOT NULL,
    unit        text NOT NULL,
    thousandths bigint NOT NULL CHECK (thousandths BETWEEN 0 AND 1000000000000),
    PRIMARY KEY (paper_id, position)
))sql",
             R"sql(
CREATE TRIGGER purchase_line_no_update BEFORE UPDATE ON purchase_line
FOR EACH ROW EXECUTE FUNCTION refuse_change('a line of a purchase list is never changed'))sql",
             R"sql(
CREATE TRIGGER purchase_line_no_delete BEFORE DELETE ON purchase_line
FOR EACH ROW EXECUTE FUNCTION refuse_change('a line of a purchase list is never deleted'))sql",
             R"sql(
CREATE TRIGGER purchase_line_no_truncate BEFORE TRUNCATE ON purchase_line
EXECUTE FUNCTION refuse_change('a line of a purchase list is never deleted'))sql",
             R"sql(
CREATE TABLE stock_move (
    seq           bigint PRIMARY KEY,
    id            text COLLATE "C" NOT NULL UNIQUE,
    item_id       text COLLATE "C" NOT NULL CHECK (item_id <> ''),
    unit          text NOT NULL CHECK (unit IN ('pc', 'm', 'kg', 'h')),
    move          text NOT NULL CHECK (move IN ('received', 'taken', 'counted', 'returned')),
    thousandths   bigint NOT NULL CHECK (thousandths BETWEEN 0 AND 1000000000000),
    job_id        text COLLATE "C" REFERENCES job (id),
    purchase_id   text COLLATE "C",
    purchase_line bigint,
    note          text NOT NULL,
    entered_by    text NOT NULL,
    entered_at    text NOT NULL,
    corrects_id   text COLLATE "C" UNIQUE REFERENCES stock_move (id),
    CHECK ((purchase_id IS NULL) = (purchase_line IS NULL)),
    UNIQUE (purchase_id, purchase_line),
    FOREIGN KEY (purchase_id, purchase_line) REFERENCES purchase_line (paper_id, position)
))sql",
             "CREATE INDEX stock_move_item ON stock_move (item_id, seq)", R"sql(
CREATE FUNCTION refuse_correction_of_another() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NEW.corrects_id IS NOT NULL AND NOT EXISTS (SELECT 1 FROM stock_move
            WHERE id = NEW.corrects_id AND item_id = NEW.item_id AND unit = NEW.unit) THEN
        RAISE EXCEPTION 'a correction is of the same item and unit';
    END IF;
    RETURN NEW;
END $body$)sql",
             R"sql(
CREATE TRIGGER stock_move_corrects_its_like BEFORE INSERT ON stock_move
FOR EACH ROW EXECUTE FUNCTION refuse_correction_of_another())sql",
             R"sql(
CREATE TRIGGER stock_move_no_update BEFORE UPDATE ON stock_move
FOR EACH ROW EXECUTE FUNCTION refuse_unless_erasing('a movement of stock is never changed'))sql",
             R"sql(
CREATE TRIGGER stock_move_no_delete BEFORE DELETE ON stock_move
FOR EACH ROW EXECUTE FUNCTION refuse_change('a movement of stock is never deleted'))sql",
             R"sql(
CREATE TRIGGER stock_move_no_truncate BEFORE TRUNCATE ON stock_move
EXECUTE FUNCTION refuse_change('a movement of stock is never deleted'))sql",
             R"sql(
CREATE TABLE entries_kept (
    book        text COLLATE "C" NOT NULL CHECK (book IN ('equipment', 'prices')),
    kept_by     text COLLATE "C" NOT NULL,
    entry       text COLLATE "C" NOT NULL,
    based_on    bigint NOT NULL CHECK (based_on >= 0),
    kept_at     text NOT NULL,
    content     text NOT NULL,
    text_sha256 text NOT NULL,
    PRIMARY KEY (book, kept_by, entry)
))sql"}};
}

}  // namespace wg::store
