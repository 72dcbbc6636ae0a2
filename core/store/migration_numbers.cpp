// Numbers of papers, the papers of orders, and signatures under acceptances.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int numbers_step = 15;
constexpr const char* numbers_what = "numbers of papers, orders and signatures";

}  // namespace

Migration numbers_and_orders(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {numbers_step,
                numbers_what,
                {R"sql(
CREATE TABLE number_range (
    kind    TEXT PRIMARY KEY NOT NULL CHECK (kind IN ('quote', 'order', 'change-order', 'purchase')),
    pattern TEXT NOT NULL CHECK (pattern <> '')
))sql",
                 R"sql(
CREATE TABLE number_given (
    kind     TEXT NOT NULL CHECK (kind IN ('quote', 'order', 'change-order', 'purchase')),
    series   TEXT NOT NULL,
    number   INTEGER NOT NULL CHECK (number > 0),
    text     TEXT NOT NULL CHECK (text <> ''),
    given_to TEXT NOT NULL,
    given_at TEXT NOT NULL,
    PRIMARY KEY (kind, series, number),
    UNIQUE (kind, text)
))sql",
                 R"sql(
CREATE TRIGGER number_given_no_gap BEFORE INSERT ON number_given
WHEN NEW.number <> (SELECT coalesce(max(number), 0) + 1 FROM number_given
                    WHERE kind = NEW.kind AND series = NEW.series)
BEGIN SELECT RAISE(ABORT, 'numbers are given one after the other'); END)sql",
                 R"sql(
CREATE TRIGGER number_given_no_update BEFORE UPDATE ON number_given
BEGIN SELECT RAISE(ABORT, 'a number that was given is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER number_given_no_delete BEFORE DELETE ON number_given
BEGIN SELECT RAISE(ABORT, 'a number that was given is never taken back'); END)sql",
                 R"sql(
CREATE TABLE order_paper (
    seq      INTEGER PRIMARY KEY AUTOINCREMENT,
    id       TEXT NOT NULL UNIQUE,
    kind     TEXT NOT NULL CHECK (kind IN ('order', 'change-order')),
    quote_id TEXT NOT NULL REFERENCES quote_issued (id),
    number   TEXT NOT NULL CHECK (number <> ''),
    sha256   TEXT NOT NULL CHECK (length(sha256) = 64),
    kept_at  TEXT NOT NULL,
    kept_by  TEXT NOT NULL,
    content  BLOB NOT NULL CHECK (length(content) > 0),
    UNIQUE (kind, number)
))sql",
                 "CREATE INDEX order_paper_quote ON order_paper (quote_id, seq)", R"sql(
CREATE TRIGGER order_paper_no_update BEFORE UPDATE ON order_paper
BEGIN SELECT RAISE(ABORT, 'the paper of an order is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER order_paper_no_replace BEFORE INSERT ON order_paper
WHEN EXISTS (SELECT 1 FROM order_paper
             WHERE id = NEW.id OR seq = NEW.seq OR (kind = NEW.kind AND number = NEW.number))
BEGIN SELECT RAISE(ABORT, 'the paper of an order is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER order_paper_no_delete BEFORE DELETE ON order_paper
WHEN NOT EXISTS (SELECT 1 FROM erasing)
BEGIN SELECT RAISE(ABORT, 'the paper of an order is never deleted'); END)sql",
                 R"sql(
CREATE TABLE answer_signature (
    answer_id TEXT PRIMARY KEY NOT NULL REFERENCES quote_answer (id),
    sha256    TEXT NOT NULL CHECK (length(sha256) = 64),
    content   BLOB NOT NULL CHECK (length(content) > 0)
))sql",
                 R"sql(
CREATE TRIGGER answer_signature_no_update BEFORE UPDATE ON answer_signature
BEGIN SELECT RAISE(ABORT, 'a signature is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER answer_signature_no_replace BEFORE INSERT ON answer_signature
WHEN EXISTS (SELECT 1 FROM answer_signature WHERE answer_id = NEW.answer_id)
BEGIN SELECT RAISE(ABORT, 'a signature is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER answer_signature_no_delete BEFORE DELETE ON answer_signature
WHEN NOT EXISTS (SELECT 1 FROM erasing)
BEGIN SELECT RAISE(ABORT, 'a signature is never deleted'); END)sql"}};
    }
    return {numbers_step,
            numbers_what,
            {R"sql(
CREATE TABLE number_range (
    kind    text COLLATE "C" PRIMARY KEY CHECK (kind IN ('quote', 'order', 'change-order', 'purchase')),
    pattern text NOT NULL CHECK (pattern <> '')
))sql",
             R"sql(
CREATE TABLE number_given (
    kind     text COLLATE "C" NOT NULL CHECK (kind IN ('quote', 'order', 'change-order', 'purchase')),
    series   text COLLATE "C" NOT NULL,
    number   bigint NOT NULL CHECK (number > 0),
    text     text COLLATE "C" NOT NULL CHECK (text <> ''),
    given_to text NOT NULL,
    given_at text NOT NULL,
    PRIMARY KEY (kind, series, number),
    UNIQUE (kind, text)
))sql",
             R"sql(
CREATE FUNCTION refuse_gap() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NEW.number <> (SELECT coalesce(max(number), 0) + 1 FROM number_given
                      WHERE kind = NEW.kind AND series = NEW.series) THEN
        RAISE EXCEPTION 'numbers are given one after the other';
    END IF;
    RETURN NEW;
END $body$)sql",
             R"sql(
CREATE TRIGGER number_given_no_gap BEFORE INSERT ON number_given
FOR EACH ROW EXECUTE FUNCTION refuse_gap())sql",
             R"sql(
CREATE TRIGGER number_given_no_update BEFORE UPDATE ON number_given
FOR EACH ROW EXECUTE FUNCTION refuse_change('a number that was given is never changed'))sql",
             R"sql(
CREATE TRIGGER number_given_no_delete BEFORE DELETE ON number_given
FOR EACH ROW EXECUTE FUNCTION refuse_change('a number that was given is never taken back'))sql",
             R"sql(
CREATE TRIGGER number_given_no_truncate BEFORE TRUNCATE ON number_given
EXECUTE FUNCTION refuse_change('a number that was given is never taken back'))sql",
             R"sql(
CREATE TABLE order_paper (
    seq      bigint PRIMARY KEY,
    id       text COLLATE "C" NOT NULL UNIQUE,
    kind     text COLLATE "C" NOT NULL CHECK (kind IN ('order', 'change-order')),
    quote_id text COLLATE "C" NOT NULL REFERENCES quote_issued (id),
    number   text COLLATE "C" NOT NULL CHECK (number <> ''),
    sha256   text NOT NULL CHECK (length(sha256) = 64),
    kept_at  text NOT NULL,
    kept_by  text NOT NULL,
    content  bytea NOT NULL CHECK (length(content) > 0),
    UNIQUE (kind, number)
))sql",
             "CREATE INDEX order_paper_quote ON order_paper (quote_id, seq)",
             "ALTER TABLE order_paper ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TRIGGER order_paper_no_update BEFORE UPDATE ON order_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('the paper of an order is never changed'))sql",
             R"sql(
CREATE TRIGGER order_paper_no_delete BEFORE DELETE ON order_paper
FOR EACH ROW EXECUTE FUNCTION refuse_unless_anything_is_erased('the paper of an order is never deleted'))sql",
             R"sql(
CREATE TRIGGER order_paper_no_truncate BEFORE TRUNCATE ON order_paper
EXECUTE FUNCTION refuse_change('the paper of an order is never deleted'))sql",
             R"sql(
CREATE TABLE answer_signature (
    answer_id text COLLATE "C" PRIMARY KEY REFERENCES quote_answer (id),
    sha256    text NOT NULL CHECK (length(sha256) = 64),
    content   bytea NOT NULL CHECK (length(content) > 0)
))sql",
             R"sql(
CREATE TRIGGER answer_signature_no_update BEFORE UPDATE ON answer_signature
FOR EACH ROW EXECUTE FUNCTION refuse_change('a signature is never changed'))sql",
             R"sql(
CREATE TRIGGER answer_signature_no_delete BEFORE DELETE ON answer_signature
FOR EACH ROW EXECUTE FUNCTION refuse_unless_anything_is_erased('a signature is never deleted'))sql",
             R"sql(
CREATE TRIGGER answer_signature_no_truncate BEFORE TRUNCATE ON answer_signature
EXECUTE FUNCTION refuse_change('a signature is never deleted'))sql"}};
}

}  // namespace wg::store
