// A server's database: told from others, and brought up to date.

#include "core/store/backup.h"
#include "core/store/open.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// Unlike a save, the steps of another seat may take their time.
constexpr const char* patience = "SET LOCAL lock_timeout = '120s'";

// The schema's version: 0 with an empty database, nothing with one that is not ours.
Result<std::optional<int>> version_on_server(const Database& database) {
    // Both counts of one moment: another seat may be making the tables.
    Result<QSqlQuery> tables = database.query(
        "SELECT count(*) FILTER (WHERE relname = 'store_version'), count(*) FROM pg_catalog.pg_class "
        "WHERE relkind IN ('r', 'p', 'v', 'm', 'f') AND "
        "relnamespace = (SELECT oid FROM pg_catalog.pg_namespace WHERE nspname = current_schema())");
    if (!tables) return tables.problems();
    if (!tables.value().next()) return std::optional<int>();
    if (tables.value().value(0).toInt() == 0)
        return tables.value().value(1).toInt() == 0 ? std::optional<int>(0) : std::optional<int>();
    Result<QSqlQuery> found = database.query("SELECT application_id, version FROM store_version");
    if (!found) return found.problems();
    if (!found.value().next() || found.value().value(0).toInt() != application_id) return std::optional<int>();
    return std::optional<int>(found.value().value(1).toInt());
}

std::optional<Problem> make_mark(const Database& database) {
    if (auto problem =
            database.run("CREATE TABLE store_version (only_row integer PRIMARY KEY DEFAULT 1 CHECK (only_row = 1), "
                         "application_id integer NOT NULL, version integer NOT NULL)")) {
        return problem;
    }
    return database.run("INSERT INTO store_version (application_id, version) VALUES (?, 0)", {application_id});
}

std::optional<Problem> refuse_version(const Database& database, const std::optional<int>& version) {
    if (!version) {
        return Problem{database.name(), "this database belongs to another program",
                       "Choose the firm's job database, or an empty one"};
    }
    if (*version > newest_version()) return newer_program(database.name(), *version);
    return std::nullopt;
}

// Nobody else writes meanwhile: savers wait for this transaction's turn, the others for its lock of the tables.
std::optional<Problem> keep_as_it_was(const Database& database, int version) {
    const std::string& chosen = database.connection()->backup_folder;
    const std::string folder = chosen.empty() ? usual_backup_folder() : chosen;
    std::optional<Problem> problem = write_older_backup(database, version, to_qt(folder));
    if (!problem) return std::nullopt;
    return Problem{database.name(),
                   "is of an older version and stays so, since it could not be backed up in " + folder + ": " +
                       problem->where + " " + problem->what,
                   problem->remedy};
}

std::optional<Problem> bring_up_to_date(const Database& database) {
    const Result<std::optional<int>> before = version_on_server(database);
    if (!before) return before.problems().front();
    if (auto problem = refuse_version(database, before.value())) return problem;
    if (*before.value() == newest_version()) return std::nullopt;
    // Of several seats that start at once, one takes the steps and the others find them taken.
    Transaction transaction(database);
    if (auto problem = transaction.begin(patience)) return problem;
    const Result<std::optional<int>> now = version_on_server(database);
    if (!now) return now.problems().front();
    if (auto problem = refuse_version(database, now.value())) return problem;
    if (*now.value() == newest_version()) return std::nullopt;  // the one that came first has done it
    if (*now.value() == 0) {
        if (auto problem = make_mark(database)) return problem;
    }
    if (*now.value() > 0) {
        if (auto problem = keep_as_it_was(database, *now.value())) return problem;
    }
    for (const Migration& step : migrations(Dialect::postgresql)) {
        if (step.version <= *now.value()) continue;
        if (auto problem = take_step(database, step)) return problem;
    }
    return transaction.commit();
}

}  // namespace

Result<std::unique_ptr<Store>> Store::connect(const Connection& connection, const std::string& by) {
    Result<std::unique_ptr<Database>> opened = Database::connect(connection);
    if (!opened) return opened.problems();
    if (std::optional<Problem> problem = bring_up_to_date(*opened.value())) return *problem;
    return std::unique_ptr<Store>(new SqlStore(std::move(opened).value(), by));
}

}  // namespace wg::store
