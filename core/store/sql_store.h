#pragma once
// The store on either database. Public face: core/store/store.h.

#include <QSqlQuery>
#include <memory>

#include "core/merge/versions.h"
#include "core/store/database.h"
#include "core/store/store.h"

namespace wg::store {

class SqlStore final : public Store {
   public:
    /// `by`: who saves, for others to read.
    SqlStore(std::unique_ptr<Database> database, std::string by) : database_(std::move(database)), by_(std::move(by)) {}

    [[nodiscard]] std::string path() const override { return database_->path(); }
    [[nodiscard]] std::function<Result<std::unique_ptr<Store>>()> beside() const override;
    [[nodiscard]] Result<bool> copy_to(Store& other) override;
    [[nodiscard]] Result<bool> keep_unsaved(const Job& job, Instant now) override;
    [[nodiscard]] Result<std::optional<Unsaved>> unsaved(const std::string& job_id) override;
    [[nodiscard]] Result<bool> forget_unsaved(const std::string& job_id) override;
    [[nodiscard]] Result<Job> save(const Job& job, Instant now) override;
    [[nodiscard]] Result<Job> load(const std::string& job_id) override;
    [[nodiscard]] Result<std::vector<JobRow>> list(const std::string& query, int limit, int offset) override;
    [[nodiscard]] Result<int> count(const std::string& query) override;
    [[nodiscard]] Result<std::vector<std::pair<std::int64_t, std::string>>> history(const std::string& job_id) override;
    [[nodiscard]] Result<Job> load_revision(const std::string& job_id, std::int64_t revision) override;
    [[nodiscard]] Result<bool> remove(const std::string& job_id, Instant now) override;
    [[nodiscard]] Result<bool> restore(const std::string& job_id) override;
    [[nodiscard]] Result<IssuedQuote> issue_quote(const IssuedQuote& quote) override;
    [[nodiscard]] Result<std::vector<IssuedQuote>> quotes(const std::string& job_id) override;
    [[nodiscard]] Result<std::string> setting(const std::string& key, const std::string& fallback) override;
    [[nodiscard]] Result<bool> set_setting(const std::string& key, const std::string& value) override;
    [[nodiscard]] Result<WeatherYearRow> add_weather_year(const weather::Year& year, const std::string& label,
                                                          Instant now) override;
    [[nodiscard]] Result<std::vector<WeatherYearRow>> weather_years() override;
    [[nodiscard]] Result<weather::Year> weather_year(const std::string& id) override;
    [[nodiscard]] Result<bool> remove_weather_year(const std::string& id) override;
    [[nodiscard]] Result<std::string> add_photograph(std::string_view bytes, Instant now) override;
    [[nodiscard]] Result<std::string> photograph(const std::string& sha256) override;
    [[nodiscard]] Result<bool> has_photograph(const std::string& sha256) override;
    [[nodiscard]] Result<bool> set_services_due(const std::string& job_id,
                                                const std::vector<ServiceDueRow>& rows) override;
    [[nodiscard]] Result<std::vector<ServiceDueRow>> services_due(const std::string& until_on) override;
    [[nodiscard]] Result<bool> add_refrigerant_entry(const RefrigerantEntry& entry, Instant now) override;
    [[nodiscard]] Result<int> mirror_refrigerant_entries(const std::vector<RefrigerantEntry>& entries,
                                                         Instant now) override;
    [[nodiscard]] Result<std::vector<RefrigerantEntry>> refrigerant_entries() override;
    [[nodiscard]] Result<std::string> check() override;
    [[nodiscard]] Result<bool> backup(const std::string& to_path) override;
    [[nodiscard]] Result<std::string> next_job_number(int year) override;
    [[nodiscard]] int schema_version() const override;
    [[nodiscard]] const Database& database() const noexcept override { return *database_; }
    [[nodiscard]] const std::string& by() const noexcept override { return by_; }

   private:
    /// A row of the table job, without its content.
    struct Head {
        std::int64_t revision = 0;
        std::int64_t save_seq = 0;
        std::string changed_at;
        std::string content_sha256;
        std::string base_sha256;
        std::int64_t base_revision = 0;
        std::string removed_at;  ///< empty: present
        std::string state;       ///< its key
    };
    /// Writes the job's next revision with everything that hangs on it; within a transaction.
    [[nodiscard]] std::optional<Problem> put(const Job& next, const std::optional<Head>& stored,
                                             const merge::Versions& versions) const;
    /// Those of the stored revision, begun or caught up when they are not there.
    [[nodiscard]] Result<merge::Versions> versions_of_stored(const std::string& job_id, std::int64_t revision);
    /// Those after the job becomes `next` here.
    [[nodiscard]] Result<merge::Versions> versions_after(const Job& next, const std::optional<Head>& stored,
                                                         Instant now);
    // Within a transaction.
    [[nodiscard]] std::optional<Problem> index_again(const std::string& job_id);
    [[nodiscard]] Result<IssuedQuote> insert_quote(const IssuedQuote& quote);
    [[nodiscard]] Result<std::string> insert_photograph(std::string_view bytes, Instant now);
    friend class Travel;
    friend class QuoteBook;
    [[nodiscard]] Result<std::optional<Head>> head(const std::string& job_id) const;
    [[nodiscard]] std::optional<Problem> refuse_save(const Job& job, const std::optional<Head>& stored) const;
    [[nodiscard]] std::optional<Problem> write(const Job& job, const std::string& json, std::int64_t save_seq) const;
    [[nodiscard]] std::optional<Problem> index(const Job& job, std::int64_t save_seq) const;
    [[nodiscard]] std::optional<Problem> drop_unsaved(const std::string& job_id) const;
    [[nodiscard]] std::optional<Problem> unindex(std::int64_t save_seq) const;
    [[nodiscard]] Result<std::int64_t> next_save_seq() const;
    [[nodiscard]] Result<Job> read_job(Result<QSqlQuery> found, const std::string& what) const;
    [[nodiscard]] Problem unknown_job(const std::string& job_id) const;
    [[nodiscard]] Result<std::optional<WeatherYearRow>> weather_row(const std::string& id) const;
    [[nodiscard]] Problem unknown_weather_year(const std::string& id) const;
    /// Labels of stored years whose content no longer has its hash.
    [[nodiscard]] Result<std::vector<std::string>> damaged_weather_years() const;

    [[nodiscard]] std::optional<Problem> insert_refrigerant_entry(const RefrigerantEntry& entry, Instant now) const;

    /// Hashes of photographs whose bytes no longer have them.
    [[nodiscard]] Result<std::vector<std::string>> damaged_photographs() const;

    std::unique_ptr<Database> database_;
    std::string by_;
};

}  // namespace wg::store
