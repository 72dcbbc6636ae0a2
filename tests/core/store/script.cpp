#include "tests/core/store/script.h"

#include <gtest/gtest.h>

#include "core/quantity/sha256.h"
#include "core/store/connection.h"
#include "core/store/copy.h"
#include "core/store/travel.h"
#include "core/weather/read.h"
#include "tests/core/store/store_fixture.h"
#include "tests/core/weather/made_files.h"

namespace wg::store::test {
namespace {

Result<bool> done(const Result<Job>& saved) {
    if (!saved) return saved.problems();
    return true;
}

const weather::Year& made_year() {
    static const weather::Year value =
        weather::read_epw(weather::epw_text(weather::made_year(47.4, 9.2, 520.0, 1.0)), "made.epw").value();
    return value;
}

RefrigerantEntry entry_of(unsigned number, const std::string& job_id) {
    RefrigerantEntry entry;
    entry.id = id(number);
    entry.on = "2027-06-21";
    entry.refrigerant = "R134a";
    entry.kg = 0.1 * number;
    if (!job_id.empty()) {
        entry.job_id = job_id;
        entry.reading_id = entry.id;
    }
    return entry;
}

}  // namespace

Result<bool> write_step(Store& store, int n) {
    const int kind = n % steps_of_all_kinds;
    const auto round = static_cast<unsigned>(n / steps_of_all_kinds);
    const std::string job_id = numbered_job(round + 1).id;
    if (kind == 0) return done(store.save(numbered_job(round + 1), at(n)));
    const Result<Job> stored = store.load(job_id);
    if (!stored) return stored.problems();
    Job job = stored.value();
    const std::string number = std::to_string(n);
    switch (kind) {
        case 1: job.notes = "edited " + number + std::string(3000, 'x'); return done(store.save(job, at(n)));
        case 2: job.notes = "typed " + number; return store.keep_unsaved(job, at(n));
        case 3: return store.set_setting("firm.name", number);
        case 4: {
            std::vector<ServiceDueRow> due(2);
            due[0].service_id = "look";
            due[1].service_id = "anode";
            due[0].due_on = due[1].due_on = "2028-06-01";
            return store.set_services_due(job_id, due);
        }
        case 5: {
            const Result<IssuedQuote> issued =
                store.issue_quote({id(0x50000 + round), job_id, 2, "Q-" + number, "2027-06-22T08:00:00Z",
                                   "{\"n\":" + number + "}", "", n, "EUR"});
            if (!issued) return issued.problems();
            return true;
        }
        case 6: return store.add_refrigerant_entry(entry_of(0x60000 + round, {}), at(n));
        case 7: {
            const Result<int> added = store.mirror_refrigerant_entries(
                {entry_of(0x70000 + 2 * round, job_id), entry_of(0x70001 + 2 * round, job_id)}, at(n));
            if (!added) return added.problems();
            return true;
        }
        case 8: {
            const Result<std::string> added = store.add_photograph(
                "\xFF\xD8\xFF" + number + std::string(40000, static_cast<char>('a' + n % 26)), at(n));
            if (!added) return added.problems();
            return true;
        }
        case 9: return store.remove(job_id, at(n));
        case 10: return store.restore(job_id);
        case 11: return store.forget_unsaved(job_id);
        case 12: {
            const Result<WeatherYearRow> added = store.add_weather_year(made_year(), "Roof", at(n));
            if (!added) return added.problems();
            return true;
        }
        case 13: {
            exchange::Parcel parcel;
            parcel.job = numbered_job(1000 + round);
            parcel.job.record.clear();
            parcel.job.site.underlays.clear();
            Photograph photograph;
            photograph.id = id(0x80000 + round);
            const std::string bytes = "\xFF\xD8\xFF" + number + std::string(30000, 'p');
            photograph.sha256 = sha256_hex(bytes);
            parcel.job.photographs = {photograph};
            parcel.pictures = {{photograph.sha256, bytes}};
            const std::string plan = "{\"n\":" + number + "}";
            parcel.quotes = {{id(0x90000 + round),
                              1,
                              "T-" + number,
                              "2027-06-22T08:00:00Z",
                              plan,
                              sha256_hex(plan),
                              n,
                              "EUR",
                              "%PDF-1.7 invented",
                              {}}};
            const Result<Taken> taken = Travel(store).take(parcel, at(n));
            if (!taken) return taken.problems();
            return true;
        }
        default: {
            const Result<std::vector<WeatherYearRow>> years = store.weather_years();
            if (!years) return years.problems();
            if (years.value().empty()) return Problem{"script", "there is no year to remove", "Add one"};
            return store.remove_weather_year(years.value().front().id);
        }
    }
}

std::string digest_at(const std::string& place) {
    const Result<std::unique_ptr<Database>> opened = is_address(place)
                                                         ? Database::connect(connection_from_address(place).value())
                                                         : Database::open(place, Access::read_write);
    if (!opened) return text_of(opened.problems());
    const Result<std::string> digest = digest_of_everything(*opened.value());
    return digest.ok() ? digest.value() : text_of(digest.problems());
}

Replay::Replay(std::string file) : file_(std::move(file)) {
    static_cast<void>(Store::open(file_, at(0)));
    digests_.push_back(digest_at(file_));
}

std::string Replay::after(int steps) {
    while (digests_.size() <= static_cast<std::size_t>(steps)) {
        {
            const auto store = Store::open(file_, at(0));
            const Result<bool> step = write_step(*store.value(), static_cast<int>(digests_.size()) - 1);
            EXPECT_TRUE(step.ok()) << "step " << digests_.size() - 1 << ": " << text_of(step.problems());
        }
        digests_.push_back(digest_at(file_));
    }
    return digests_[static_cast<std::size_t>(steps)];
}

}  // namespace wg::store::test
