// Customers with their addresses, contacts and jobs; what the list asks of quotes to say what is to be done next.

#include "core/store/migrations.h"

namespace wg::store {
namespace {

constexpr int customers_step = 16;
constexpr const char* customers_what = "customers";

}  // namespace

// `name_key` and `words` are the name and everything that can be searched for, folded by the program
// (core/store/fold.h), so that both databases find the same.
Migration customer_list(Dialect dialect) {
    if (dialect == Dialect::sqlite) {
        return {customers_step,
                customers_what,
                {R"sql(
CREATE TABLE customer (
    id             TEXT PRIMARY KEY NOT NULL CHECK (length(id) = 36),
    number         TEXT NOT NULL UNIQUE CHECK (number <> ''),
    name           TEXT NOT NULL CHECK (name <> ''),
    tax_id         TEXT NOT NULL,
    notes          TEXT NOT NULL,
    former_numbers TEXT NOT NULL,
    revision       INTEGER NOT NULL CHECK (revision >= 1),
    changed_at     TEXT NOT NULL,
    changed_by     TEXT NOT NULL,
    name_key       TEXT NOT NULL,
    words          TEXT NOT NULL
))sql",
                 R"sql(
CREATE TABLE customer_address (
    customer_id TEXT NOT NULL REFERENCES customer (id),
    seq         INTEGER NOT NULL CHECK (seq >= 0),
    use         TEXT NOT NULL CHECK (use IN ('bill', 'site')),
    street      TEXT NOT NULL,
    postcode    TEXT NOT NULL,
    town        TEXT NOT NULL,
    PRIMARY KEY (customer_id, seq)
))sql",
                 R"sql(
CREATE TABLE customer_contact (
    customer_id TEXT NOT NULL REFERENCES customer (id),
    seq         INTEGER NOT NULL CHECK (seq >= 0),
    name        TEXT NOT NULL,
    role        TEXT NOT NULL,
    phone       TEXT NOT NULL,
    email       TEXT NOT NULL,
    PRIMARY KEY (customer_id, seq)
))sql",
                 R"sql(
CREATE TABLE customer_job (
    job_id      TEXT PRIMARY KEY NOT NULL REFERENCES job (id),
    customer_id TEXT NOT NULL REFERENCES customer (id)
))sql",
                 R"sql(
CREATE TABLE customer_erasure (
    seq       INTEGER PRIMARY KEY AUTOINCREMENT,
    number    TEXT NOT NULL,
    erased_at TEXT NOT NULL,
    erased_by TEXT NOT NULL,
    reason    TEXT NOT NULL
))sql",
                 "CREATE INDEX customer_by_name ON customer (name_key, id)",
                 "CREATE INDEX customer_job_customer ON customer_job (customer_id)",
                 // For what is to be done next: the newest quote and its last answer without reading their rows.
                 "CREATE INDEX quote_issued_newest ON quote_issued (job_id, issued_at, id)",
                 "CREATE INDEX quote_answer_last ON quote_answer (quote_id, seq, answer)",
                 "CREATE INDEX quote_answer_kind ON quote_answer (answer, quote_id)",
                 R"sql(
CREATE TRIGGER customer_no_other_number BEFORE UPDATE OF id, number ON customer
WHEN NEW.id <> OLD.id OR NEW.number <> OLD.number
BEGIN SELECT RAISE(ABORT, 'a customer keeps the number it was given'); END)sql",
                 R"sql(
CREATE TRIGGER customer_erasure_no_update BEFORE UPDATE ON customer_erasure
BEGIN SELECT RAISE(ABORT, 'which customer was erased, when and why is never changed'); END)sql",
                 R"sql(
CREATE TRIGGER customer_erasure_no_delete BEFORE DELETE ON customer_erasure
BEGIN SELECT RAISE(ABORT, 'which customer was erased, when and why is never deleted'); END)sql"}};
    }
    return {customers_step,
            customers_what,
            {R"sql(
CREATE TABLE customer (
    id             text COLLATE "C" PRIMARY KEY CHECK (length(id) = 36),
    number         text COLLATE "C" NOT NULL UNIQUE CHECK (number <> ''),
    name           text NOT NULL CHECK (name <> ''),
    tax_id         text NOT NULL,
    notes          text NOT NULL,
    former_numbers text NOT NULL,
    revision       bigint NOT NULL CHECK (revision >= 1),
    changed_at     text NOT NULL,
    changed_by     text NOT NULL,
    name_key       text COLLATE "C" NOT NULL,
    words          text NOT NULL
))sql",
             R"sql(
CREATE TABLE customer_address (
    customer_id text COLLATE "C" NOT NULL REFERENCES customer (id),
    seq         bigint NOT NULL CHECK (seq >= 0),
    use         text NOT NULL CHECK (use IN ('bill', 'site')),
    street      text NOT NULL,
    postcode    text NOT NULL,
    town        text NOT NULL,
    PRIMARY KEY (customer_id, seq)
))sql",
             R"sql(
CREATE TABLE customer_contact (
    customer_id text COLLATE "C" NOT NULL REFERENCES customer (id),
    seq         bigint NOT NULL CHECK (seq >= 0),
    name        text NOT NULL,
    role        text NOT NULL,
    phone       text NOT NULL,
    email       text NOT NULL,
    PRIMARY KEY (customer_id, seq)
))sql",
             R"sql(
CREATE TABLE customer_job (
    job_id      text COLLATE "C" PRIMARY KEY REFERENCES job (id),
    customer_id text COLLATE "C" NOT NULL REFERENCES customer (id)
))sql",
             R"sql(
CREATE TABLE customer_erasure (
    seq       bigint PRIMARY KEY,
    number    text NOT NULL,
    erased_at text NOT NULL,
    erased_by text NOT NULL,
    reason    text NOT NULL
))sql",
             "CREATE INDEX customer_by_name ON customer (name_key, id)",
             "CREATE INDEX customer_job_customer ON customer_job (customer_id)",
             // For what is to be done next: the newest quote and its last answer without reading their rows.
             "CREATE INDEX quote_issued_newest ON quote_issued (job_id, issued_at, id)",
             "CREATE INDEX quote_answer_last ON quote_answer (quote_id, seq, answer)",
             "CREATE INDEX quote_answer_kind ON quote_answer (answer, quote_id)",
             R"sql(
CREATE FUNCTION refuse_other_number() RETURNS trigger LANGUAGE plpgsql AS $body$
BEGIN
    IF NEW.id <> OLD.id OR NEW.number <> OLD.number THEN
        RAISE EXCEPTION 'a customer keeps the number it was given';
    END IF;
    RETURN NEW;
END $body$)sql",
             R"sql(
CREATE TRIGGER customer_no_other_number BEFORE UPDATE ON customer
FOR EACH ROW EXECUTE FUNCTION refuse_other_number())sql",
             R"sql(
CREATE TRIGGER customer_erasure_no_update BEFORE UPDATE ON customer_erasure
FOR EACH ROW EXECUTE FUNCTION refuse_change('which customer was erased, when and why is never changed'))sql",
             R"sql(
CREATE TRIGGER customer_erasure_no_delete BEFORE DELETE ON customer_erasure
FOR EACH ROW EXECUTE FUNCTION refuse_change('which customer was erased, when and why is never deleted'))sql",
             R"sql(
CREATE TRIGGER customer_erasure_no_truncate BEFORE TRUNCATE ON customer_erasure
EXECUTE FUNCTION refuse_change('which customer was erased, when and why is never deleted'))sql"}};
}

}  // namespace wg::store
