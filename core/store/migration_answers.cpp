// What became of issued quotes: the paper as it went out, and what the client answered.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int answers_step = 12;
constexpr const char* answers_what = "papers and answers of issued quotes";

}  // namespace

Migration papers_and_answers(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {answers_step,
                answers_what,
                {R"sql(
CREATE TABLE quote_paper (
    quote_id TEXT PRIMARY KEY NOT NULL REFERENCES quote_issued (id),
    sha256   TEXT NOT NULL CHECK (length(sha256) = 64),
    kept_at  TEXT NOT NULL,
    content  BLOB NOT NULL CHECK (length(content) > 0)
))sql",
                 R"sql(
CREATE TRIGGER quote_paper_no_update BEFORE UPDATE ON quote_paper
BEGIN SELECT RAISE(ABORT, 'the paper of a quote is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER quote_paper_no_replace BEFORE INSERT ON quote_paper
WHEN EXISTS (SELECT 1 FROM quote_paper WHERE quote_id = NEW.quote_id)
BEGIN SELECT RAISE(ABORT, 'the paper of a quote is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER quote_paper_no_delete BEFORE DELETE ON quote_paper
WHEN NOT EXISTS (SELECT 1 FROM erasing)
BEGIN SELECT RAISE(ABORT, 'the paper of a quote is never deleted'); END)sql",
                 R"sql(
CREATE TABLE quote_answer (
    seq        INTEGER PRIMARY KEY AUTOINCREMENT,
    id         TEXT NOT NULL UNIQUE,
    quote_id   TEXT NOT NULL REFERENCES quote_issued (id),
    answer     TEXT NOT NULL CHECK (answer IN ('accepted', 'declined', 'withdrawn')),
    on_day     TEXT NOT NULL CHECK (on_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    who        TEXT NOT NULL,
    note       TEXT NOT NULL,
    entered_by TEXT NOT NULL,
    entered_at TEXT NOT NULL
))sql",
                 "CREATE INDEX quote_answer_quote ON quote_answer (quote_id, seq)", R"sql(
CREATE TRIGGER quote_answer_no_update BEFORE UPDATE ON quote_answer
BEGIN SELECT RAISE(ABORT, 'an answer to a quote is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER quote_answer_no_replace BEFORE INSERT ON quote_answer
WHEN EXISTS (SELECT 1 FROM quote_answer WHERE id = NEW.id OR seq = NEW.seq)
BEGIN SELECT RAISE(ABORT, 'an answer to a quote is never replaced'); END)sql",
                 R"sql(
CREATE TRIGGER quote_answer_no_delete BEFORE DELETE ON quote_answer
WHEN NOT EXISTS (SELECT 1 FROM erasing)
BEGIN SELECT RAISE(ABORT, 'an answer to a quote is never deleted'); END)sql"}};
    }
    return {answers_step,
            answers_what,
            {R"sql(
CREATE FUNCTION refuse_unless_anything_is_erased() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NOT EXISTS (SELECT 1 FROM erasing) THEN
        RAISE EXCEPTION '%', TG_ARGV[0];
    END IF;
    RETURN OLD;
END $body$)sql",
             R"sql(
CREATE TABLE quote_paper (
    quote_id text COLLATE "C" PRIMARY KEY REFERENCES quote_issued (id),
    sha256   text NOT NULL CHECK (length(sha256) = 64),
    kept_at  text NOT NULL,
    content  bytea NOT NULL CHECK (length(content) > 0)
))sql",
             "ALTER TABLE quote_paper ALTER COLUMN content SET STORAGE EXTERNAL", R"sql(
CREATE TRIGGER quote_paper_no_update BEFORE UPDATE ON quote_paper
FOR EACH ROW EXECUTE FUNCTION refuse_change('the paper of a quote is never changed'))sql",
             R"sql(
CREATE TRIGGER quote_paper_no_delete BEFORE DELETE ON quote_paper
FOR EACH ROW EXECUTE FUNCTION refuse_unless_anything_is_erased('the paper of a quote is never deleted'))sql",
             R"sql(
CREATE TRIGGER quote_paper_no_truncate BEFORE TRUNCATE ON quote_paper
EXECUTE FUNCTION refuse_change('the paper of a quote is never deleted'))sql",
             R"sql(
CREATE TABLE quote_answer (
    seq        bigint PRIMARY KEY,
    id         text COLLATE "C" NOT NULL UNIQUE,
    quote_id   text COLLATE "C" NOT NULL REFERENCES quote_issued (id),
    answer     text NOT NULL CHECK (answer IN ('accepted', 'declined', 'withdrawn')),
    on_day     text NOT NULL CHECK (on_day ~ '^[0-9]{4}-[0-9]{2}-[0-9]{2}$'),
    who        text NOT NULL,
    note       text NOT NULL,
    entered_by text NOT NULL,
    entered_at text NOT NULL
))sql",
             "CREATE INDEX quote_answer_quote ON quote_answer (quote_id, seq)", R"sql(
CREATE TRIGGER quote_answer_no_update BEFORE UPDATE ON quote_answer
FOR EACH ROW EXECUTE FUNCTION refuse_change('an answer to a quote is never changed'))sql",
             R"sql(
CREATE TRIGGER quote_answer_no_delete BEFORE DELETE ON quote_answer
FOR EACH ROW EXECUTE FUNCTION refuse_unless_anything_is_erased('an answer to a quote is never deleted'))sql",
             R"sql(
CREATE TRIGGER quote_answer_no_truncate BEFORE TRUNCATE ON quote_answer
EXECUTE FUNCTION refuse_change('an answer to a quote is never deleted'))sql"}};
}

}  // namespace wg::store
