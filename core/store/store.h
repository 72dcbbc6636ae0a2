#pragma once
// The firm's jobs in SQLite. The only part of core that uses Qt (QtSql). One Store a thread.

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"

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

class Store {
   public:
    /// Opens or creates the database file (":memory:" for tests), applies migrations in one transaction each after a
    /// backup beside the file, sets WAL, foreign keys, synchronous FULL. Refuses: a file that is not a database, a
    /// newer schema, a file of another program, a failed integrity check; the file stays untouched then.
    [[nodiscard]] static Result<std::unique_ptr<Store>> open(const std::string& path, Instant now);
    virtual ~Store();

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

    /// Quotes are immutable once issued.
    [[nodiscard]] virtual Result<IssuedQuote> issue_quote(const IssuedQuote& quote) = 0;
    [[nodiscard]] virtual Result<std::vector<IssuedQuote>> quotes(const std::string& job_id) = 0;

    /// Small settings of the firm (name, address lines for documents).
    [[nodiscard]] virtual Result<std::string> setting(const std::string& key, const std::string& fallback) = 0;
    [[nodiscard]] virtual Result<bool> set_setting(const std::string& key, const std::string& value) = 0;

    /// PRAGMA integrity_check and foreign_key_check in words; "ok" when whole.
    [[nodiscard]] virtual Result<std::string> check() = 0;
    [[nodiscard]] virtual Result<bool> backup(const std::string& to_path) = 0;
    [[nodiscard]] virtual Result<std::string> next_job_number(int year) = 0;  ///< e.g. "2027-0042"
    [[nodiscard]] virtual int schema_version() const = 0;
};

}  // namespace wg::store
