#pragma once
// A store in memory with the manners of the real one, for tests of rooms that only need its face.

#include <algorithm>
#include <map>
#include <memory>

#include "core/store/store.h"

namespace wg::ui::sample {

class FakeStore : public store::Store {
   public:
    std::map<std::string, Job> jobs;
    std::map<std::string, Job> removed;
    std::map<std::string, store::Unsaved> kept;
    std::map<std::string, std::string> settings;
    std::map<std::pair<std::string, std::int64_t>, Job> revisions;
    std::map<std::string, std::vector<store::ServiceDueRow>> services;
    std::vector<RefrigerantEntry> refrigerant;
    bool refuse = false;  ///< every save fails
    int lists = 0;        ///< how often list() was asked

    Result<Job> save(const Job& job, Instant now) override {
        const auto known = jobs.find(job.id);
        if (refuse) return Problem{"store", "the disk is full", "Free some space"};
        if (known != jobs.end() && known->second.revision != job.revision) {
            return Problem{"job " + job.number, "somebody else saved it in between", "Read it again"};
        }
        Job stored = job;
        ++stored.revision;
        stored.changed_at = iso8601(now);
        jobs[job.id] = stored;
        revisions[{stored.id, stored.revision}] = stored;
        return stored;
    }
    Result<Job> load(const std::string& job_id) override {
        const auto known = jobs.find(job_id);
        if (known == jobs.end()) return Problem{"store", "there is no job " + job_id, "Look in the list"};
        return known->second;
    }
    Result<std::vector<store::JobRow>> list(const std::string& query, int limit, int offset) override {
        ++lists;
        std::vector<store::JobRow> rows;
        for (const auto& [id, job] : jobs) {
            if (!query.empty() && job.client.name.find(query) == std::string::npos) continue;
            rows.push_back({id, job.number, job.title, job.client.name, job.client.town, job.state, job.changed_at,
                            job.revision, job.invented});
        }
        const auto from = std::min(rows.size(), static_cast<std::size_t>(offset));
        const auto to = std::min(rows.size(), from + static_cast<std::size_t>(limit));
        return std::vector<store::JobRow>(rows.begin() + static_cast<std::ptrdiff_t>(from),
                                          rows.begin() + static_cast<std::ptrdiff_t>(to));
    }
    Result<int> count(const std::string& query) override {
        const auto all = list(query, 1'000'000, 0);
        --lists;
        return static_cast<int>(all.value().size());
    }
    Result<std::vector<std::pair<std::int64_t, std::string>>> history(const std::string&) override {
        return std::vector<std::pair<std::int64_t, std::string>>();
    }
    Result<Job> load_revision(const std::string& job_id, std::int64_t revision) override {
        const auto known = revisions.find({job_id, revision});
        if (known == revisions.end()) return Problem{"store", "there is no such revision", "Look in the history"};
        return known->second;
    }
    Result<bool> remove(const std::string& job_id, Instant) override {
        const auto known = jobs.find(job_id);
        if (known == jobs.end()) return Problem{"store", "there is no job " + job_id, "Look in the list"};
        removed.insert(jobs.extract(known));
        return true;
    }
    Result<bool> restore(const std::string& job_id) override {
        const auto known = removed.find(job_id);
        if (known == removed.end()) return Problem{"store", "there is no removed job " + job_id, "Look in the list"};
        jobs.insert(removed.extract(known));
        return true;
    }
    [[nodiscard]] std::string path() const override { return ":memory:"; }
    Result<bool> keep_unsaved(const Job& job, Instant now) override {
        kept.insert_or_assign(job.id, store::Unsaved{job, iso8601(now)});
        return true;
    }
    Result<std::optional<store::Unsaved>> unsaved(const std::string& job_id) override {
        const auto known = kept.find(job_id);
        return known == kept.end() ? std::optional<store::Unsaved>() : known->second;
    }
    Result<bool> forget_unsaved(const std::string& job_id) override {
        kept.erase(job_id);
        return true;
    }
    Result<store::IssuedQuote> issue_quote(const store::IssuedQuote& quote) override { return quote; }
    Result<std::vector<store::IssuedQuote>> quotes(const std::string&) override {
        return std::vector<store::IssuedQuote>();
    }
    Result<std::string> setting(const std::string& key, const std::string& fallback) override {
        const auto known = settings.find(key);
        return known == settings.end() ? fallback : known->second;
    }
    Result<bool> set_setting(const std::string& key, const std::string& value) override {
        settings[key] = value;
        return true;
    }
    Result<store::WeatherYearRow> add_weather_year(const weather::Year&, const std::string&, Instant) override {
        return Problem{"store", "keeps no weather years", "Use a real one"};
    }
    Result<std::vector<store::WeatherYearRow>> weather_years() override { return std::vector<store::WeatherYearRow>(); }
    Result<weather::Year> weather_year(const std::string& id) override {
        return Problem{"store", "there is no weather year " + id, "Look in the list"};
    }
    Result<std::string> add_photograph(std::string_view, Instant) override {
        return Problem{"photograph", "none here", ""};
    }
    Result<std::string> photograph(const std::string&) override { return Problem{"photograph", "none here", ""}; }
    Result<bool> has_photograph(const std::string&) override { return false; }
    Result<bool> remove_weather_year(const std::string& id) override {
        return Problem{"store", "there is no weather year " + id, "Look in the list"};
    }
    Result<bool> set_services_due(const std::string& job_id, const std::vector<store::ServiceDueRow>& rows) override {
        services[job_id] = rows;
        return true;
    }
    Result<std::vector<store::ServiceDueRow>> services_due(const std::string& until_on) override {
        std::vector<store::ServiceDueRow> out;
        for (const auto& [id, rows] : services) {
            const auto job = jobs.find(id);
            if (job == jobs.end() || job->second.state == JobState::closed) continue;
            for (store::ServiceDueRow row : rows) {
                if (!until_on.empty() && row.due_on > until_on) continue;
                const Client& client = job->second.client;
                row.job_id = id;
                row.number = job->second.number;
                row.client = client.name;
                row.street = client.street;
                row.postcode = client.postcode;
                row.town = client.town;
                row.phone = client.phone;
                out.push_back(row);
            }
        }
        std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.due_on < b.due_on; });
        return out;
    }
    Result<bool> add_refrigerant_entry(const RefrigerantEntry& entry, Instant) override {
        if (refuse) return Problem{"store", "the disk is full", "Free some space"};
        refrigerant.push_back(entry);
        return true;
    }
    Result<int> mirror_refrigerant_entries(const std::vector<RefrigerantEntry>& entries, Instant) override {
        int added = 0;
        for (const RefrigerantEntry& entry : entries) {
            const bool known = std::any_of(refrigerant.begin(), refrigerant.end(),
                                           [&](const RefrigerantEntry& e) { return e.id == entry.id; });
            if (known) continue;
            refrigerant.push_back(entry);
            ++added;
        }
        return added;
    }
    Result<std::vector<RefrigerantEntry>> refrigerant_entries() override { return refrigerant; }
    Result<std::string> check() override { return std::string("ok"); }
    Result<bool> backup(const std::string&) override { return true; }
    Result<std::string> next_job_number(int year) override { return std::to_string(year) + "-0001"; }
    [[nodiscard]] int schema_version() const override { return 1; }
    /// The books beside the jobs are real ones, in memory.
    [[nodiscard]] const store::Database& database() const noexcept override { return books_->database(); }
    [[nodiscard]] const std::string& by() const noexcept override { return books_->by(); }

   private:
    std::unique_ptr<store::Store> books_ = store::Store::open(":memory:", Instant{0}, "Test").value();
};

}  // namespace wg::ui::sample
