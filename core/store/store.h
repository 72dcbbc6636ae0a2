#pragma once
// The firm's jobs in a SQLite file or on a PostgreSQL server. The only part of core that uses Qt (QtSql). One Store a
// thread.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/job/refrigerant_entry.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"
#include "core/weather/year.h"

namespace wg::store {

struct JobRow {
    std::string id;
    std::string number;
    std::string title;
    std::string client;
    std::string town;
    JobState state = JobState::visit;
    std::string changed_at;
    std::int64_t revision = 0;
    bool invented = false;
};

struct IssuedQuote {
    std::string id;
    std::string job_id;
    std::int64_t job_revision = 0;
    std::string number;
    std::string issued_at;
    std::string plan_json;  ///< frozen snapshot
    std::string sha256;     ///< of plan_json
    std::int64_t gross_minor = 0;
    std::string currency;
};

/// What the list of stored weather years shows of each.
struct WeatherYearRow {
    std::string id;      ///< "year:" and the first 16 hex digits of sha256: what Job::weather holds
    std::string sha256;  ///< of the year as plain CSV (docs/weather-format.md)
    std::string label;
    std::string source;
    std::string format;  ///< it first came in, e.g. "EPW"
    bool invented = false;
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    double altitude_m = 0.0;
    double utc_offset_h = 0.0;
    double global_kwh_m2 = 0.0;  ///< on the horizontal, of the year
    double air_mean_c = 0.0;
    std::string imported_at;
};

/// Edits of a job that were kept, but not saved before the program ended.
struct Unsaved {
    Job job;  ///< as it was kept; revision and times are those of the saved one it came from
    std::string kept_at;
};

/// A service of a job that falls due, as its plan and record have it.
struct ServiceDueRow {
    std::string job_id;
    std::string service_id;
    std::string text;
    std::string due_on;        ///< ISO 8601 date
    std::string last_done_on;  ///< the same; empty: not yet
    // Of the job, filled in when listed.
    std::string number;
    std::string client;
    std::string street;
    std::string postcode;
    std::string town;
    std::string phone;
    bool invented = false;
};

struct Connection;  // core/store/connection.h
class Database;     // core/store/database.h

inline constexpr std::size_t max_photograph_bytes = 60U << 20U;

class Store {
   public:
    /// Opens or creates the database file (":memory:" for tests), applies migrations in one transaction each after a
    /// backup beside the file, sets WAL, foreign keys, synchronous FULL. Refuses: a file that is not a database, a
    /// newer schema, a file of another program, a failed integrity check; the file stays untouched then.
    /// `by`: who saves, kept with each revision ("Ada Reed on desk-2").
    [[nodiscard]] static Result<std::unique_ptr<Store>> open(const std::string& path, Instant now,
                                                             const std::string& by = {});
    /// The same on a server: an empty database gets the tables, an older one the missing steps, all or none. Refused: a
    /// database of another program, a newer schema, an encoding other than UTF-8.
    [[nodiscard]] static Result<std::unique_ptr<Store>> connect(const Connection& connection,
                                                                const std::string& by = {});
    /// A file's path, or a server's address (core/store/connection.h) whose password comes from PGPASSWORD or
    /// ~/.pgpass.
    [[nodiscard]] static Result<std::unique_ptr<Store>> open_place(const std::string& place, Instant now,
                                                                   const std::string& by = {});
    /// A second connection, for another thread, to a file that `open` has opened in this program: without checks and
    /// steps.
    [[nodiscard]] static Result<std::unique_ptr<Store>> open_beside(const std::string& path);
    virtual ~Store();
    /// As opened; ":memory:" has nothing beside it. On a server: its address.
    [[nodiscard]] virtual std::string path() const = 0;
    /// What opens a second connection, without checks and steps, in the thread that calls it; good for as long as the
    /// program runs.
    [[nodiscard]] virtual std::function<Result<std::unique_ptr<Store>>()> beside() const;

    /// Saves the job as a new revision when its content changed. Refused when the stored revision is not the one this
    /// copy was read at (somebody else saved in between). Returns the job as stored (revision, changed_at set).
    [[nodiscard]] virtual Result<Job> save(const Job& job, Instant now) = 0;
    [[nodiscard]] virtual Result<Job> load(const std::string& job_id) = 0;
    /// Newest first; `query` matches number, title, client, town, notes (every word, by prefix); empty: all.
    [[nodiscard]] virtual Result<std::vector<JobRow>> list(const std::string& query, int limit, int offset) = 0;
    [[nodiscard]] virtual Result<int> count(const std::string& query) = 0;
    /// Earlier contents of a job, newest first, as (revision, changed_at).
    [[nodiscard]] virtual Result<std::vector<std::pair<std::int64_t, std::string>>> history(
        const std::string& job_id) = 0;
    [[nodiscard]] virtual Result<Job> load_revision(const std::string& job_id, std::int64_t revision) = 0;
    /// Marks the job removed; it stays in the file and `restore` brings it back.
    [[nodiscard]] virtual Result<bool> remove(const std::string& job_id, Instant now) = 0;
    [[nodiscard]] virtual Result<bool> restore(const std::string& job_id) = 0;

    /// Keeps the edits of a job that is open, until the next `save` of it: not a revision, and not checked. The job's
    /// revision says which saved one they belong to. False: a save, or the job's removal, came before it, and there is
    /// nothing left to keep. Refused: a job that is not in the store.
    [[nodiscard]] virtual Result<bool> keep_unsaved(const Job& job, Instant now) = 0;
    /// What was kept of the job's present revision and differs from it; nothing when there is none. What is older than
    /// the present revision was overtaken and counts as none.
    [[nodiscard]] virtual Result<std::optional<Unsaved>> unsaved(const std::string& job_id) = 0;
    [[nodiscard]] virtual Result<bool> forget_unsaved(const std::string& job_id) = 0;

    /// Quotes are immutable once issued.
    [[nodiscard]] virtual Result<IssuedQuote> issue_quote(const IssuedQuote& quote) = 0;
    [[nodiscard]] virtual Result<std::vector<IssuedQuote>> quotes(const std::string& job_id) = 0;

    /// Small settings of the firm (name, address lines for documents).
    [[nodiscard]] virtual Result<std::string> setting(const std::string& key, const std::string& fallback) = 0;
    [[nodiscard]] virtual Result<bool> set_setting(const std::string& key, const std::string& value) = 0;

    /// Keeps a weather year in the firm's library. The same year, whatever its label, is kept once: the row that is
    /// there is returned then. `label` empty: the year's source. Refused: a year that could not be read back as it is.
    [[nodiscard]] virtual Result<WeatherYearRow> add_weather_year(const weather::Year& year, const std::string& label,
                                                                  Instant now) = 0;
    /// By label. For the nearest to a site: core/weather/nearest.h.
    [[nodiscard]] virtual Result<std::vector<WeatherYearRow>> weather_years() = 0;
    /// The year bit for bit as it was added. A content that no longer has its hash is refused.
    [[nodiscard]] virtual Result<weather::Year> weather_year(const std::string& id) = 0;
    /// Refused while a job, a removed one included, is planned with it.
    [[nodiscard]] virtual Result<bool> remove_weather_year(const std::string& id) = 0;

    /// Keeps a photograph's bytes as they are, under their hash; the same bytes twice are kept once. Returns the
    /// SHA-256. Refused: what does not begin as JPEG, PNG or WebP, nothing, or more than `max_photograph_bytes`.
    [[nodiscard]] virtual Result<std::string> add_photograph(std::string_view bytes, Instant now) = 0;
    /// The bytes as they were added. Refused: unknown, or no longer what the hash says.
    [[nodiscard]] virtual Result<std::string> photograph(const std::string& sha256) = 0;
    [[nodiscard]] virtual Result<bool> has_photograph(const std::string& sha256) = 0;

    /// Replaces all that is due of a job. Refused: a job that is not in the store, a date that is none, a service named
    /// twice.
    [[nodiscard]] virtual Result<bool> set_services_due(const std::string& job_id,
                                                        const std::vector<ServiceDueRow>& rows) = 0;
    /// Of all jobs that are neither removed nor closed, soonest first; `until_on` (ISO 8601 date): due on that day or
    /// before; empty: all.
    [[nodiscard]] virtual Result<std::vector<ServiceDueRow>> services_due(const std::string& until_on) = 0;

    /// Adds to the firm's refrigerant register, which only grows. Refused: what is there already, a correction of
    /// something that is not there, a job that is not in the store, mass or date that cannot be.
    [[nodiscard]] virtual Result<bool> add_refrigerant_entry(const RefrigerantEntry& entry, Instant now) = 0;
    /// Adds those entries of a job's record that the register lacks; returns how many. All or none.
    [[nodiscard]] virtual Result<int> mirror_refrigerant_entries(const std::vector<RefrigerantEntry>& entries,
                                                                 Instant now) = 0;
    /// In the order in which they were added.
    [[nodiscard]] virtual Result<std::vector<RefrigerantEntry>> refrigerant_entries() = 0;

    /// Everything against its hash, and a file's own integrity, in words; "ok" when whole.
    [[nodiscard]] virtual Result<std::string> check() = 0;
    /// A whole SQLite file of everything, from a server too. Refused: a file that exists, a store that is not whole.
    [[nodiscard]] virtual Result<bool> backup(const std::string& to_path) = 0;
    /// Copies everything into a store that is empty, and compares it row by row before it counts. All or nothing.
    [[nodiscard]] virtual Result<bool> copy_to(Store& other);
    [[nodiscard]] virtual Result<std::string> next_job_number(int year) = 0;  ///< e.g. "2027-0042"
    [[nodiscard]] virtual int schema_version() const = 0;

    /// What the books beside the jobs are kept in (customers, prices, answers, ...; each has a header of its own here).
    [[nodiscard]] virtual const Database& database() const noexcept = 0;
    /// Who saves, as opened.
    [[nodiscard]] virtual const std::string& by() const noexcept = 0;
};

}  // namespace wg::store
