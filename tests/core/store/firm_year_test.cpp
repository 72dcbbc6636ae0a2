// A firm at work: office, tablet and van, each with a store of its own, take jobs from the first visit to the last
// service by random actions, and exchange them as files. Now and then a program is killed in the middle of its work.
// Nothing that was acknowledged may be missing in the end, and sums have to agree with what was done. 50 jobs;
// WG_SWEEP=40 makes the 2,000 of a year.

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "core/job/record_chain.h"
#include "core/quantity/sha256.h"
#include "core/store/job_list.h"
#include "core/store/quote_book.h"
#include "core/store/travel.h"
#include "tests/core/store/sent.h"
#include "tests/core/store/store_fixture.h"
#include "tests/tools/sweep.h"

namespace wg::store::test {
namespace firm_year_test {
namespace {

constexpr int seats = 3;
constexpr int actions_a_job = 14;

/// What was done, beside the stores.
struct Done {
    std::map<std::string, std::set<std::string>> obstacles;  ///< by job: ids that a seat acknowledged
    std::map<std::string, std::set<std::string>> readings;
    std::map<std::string, std::string> papers;  ///< by quote id: SHA-256 of what went out
    std::map<std::string, std::size_t> quotes;  ///< issued, by job
    std::map<std::string, std::int64_t> gross;  ///< by quote id
    std::set<std::string> accepted;             ///< quote ids
};

class Firm {
   public:
    Firm(std::vector<std::string> places, std::uint64_t seed) : places_(std::move(places)), random_(seed) {
        for (int seat = 0; seat < seats; ++seat)
            open_seat(seat);
    }

    void start_job() {
        const int seat = below(2);  // the van never does
        Job job = sample_job();
        job.id = fresh_id();
        job.number = "F-" + std::to_string(jobs_.size() + 1);
        job.record.clear();
        job.photographs.clear();
        job.site.underlays.clear();
        job.state = JobState::visit;
        ASSERT_TRUE(stores_[seat]->save(job, now()).ok());
        jobs_.push_back(job.id);
        where_[job.id].insert(seat);
    }

    void act() {
        const std::string job = jobs_[static_cast<std::size_t>(below(static_cast<int>(jobs_.size())))];
        const int seat = any_of(where_[job]);
        switch (below(8)) {
            case 0:
            case 1: edit(*stores_[seat], job, fresh_id(), false); break;
            case 2: edit(*stores_[seat], job, fresh_id(), true); break;
            case 3: issue(seat, job); break;
            case 4: answer(seat, job); break;
            case 5:
            case 6: send(seat, below(seats), job); break;
            default: move_on(seat, job); break;
        }
    }

    /// A program works on and is killed; what it told of is done.
    void work_and_be_killed() {
        const std::string job = jobs_[static_cast<std::size_t>(below(static_cast<int>(jobs_.size())))];
        int seat = any_of(where_[job]);
        if (is_address_of(seat)) return;  // a server's own death is tried elsewhere
        std::vector<std::string> ids;
        for (int i = 0; i < 30; ++i)
            ids.push_back(fresh_id());
        stores_[seat].reset();
        int ends[2] = {};
        ASSERT_EQ(pipe(ends), 0);
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            const auto store = Store::open(places_[static_cast<std::size_t>(seat)], at(0), "killed");
            if (!store) _exit(1);
            for (int i = 0; i < 30; ++i) {
                Job edited = store.value()->load(job).value();
                add_obstacle(edited, ids[static_cast<std::size_t>(i)]);
                if (!store.value()->save(edited, at(i))) _exit(2);
                if (::write(ends[1], &i, sizeof i) != sizeof i) _exit(3);
            }
            pause();
            _exit(4);
        }
        close(ends[1]);
        int last = -1;
        ASSERT_EQ(read(ends[0], &last, sizeof last), static_cast<ssize_t>(sizeof last))
            << "the program stopped by itself";
        usleep(static_cast<useconds_t>(below(20000)));
        ASSERT_EQ(kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "it ended by itself with " << WEXITSTATUS(status);
        int next = 0;
        while (read(ends[0], &next, sizeof next) == static_cast<ssize_t>(sizeof next))
            last = next;
        close(ends[0]);
        open_seat(seat);
        for (int i = 0; i <= last; ++i)
            done_.obstacles[job].insert(ids[static_cast<std::size_t>(i)]);
    }

    /// Everybody gives everything to everybody.
    void come_together() {
        for (const std::string& job : jobs_) {
            for (int round = 0; round < 2; ++round) {
                for (int seat = 0; seat < seats; ++seat)
                    send(seat, (seat + 1) % seats, job);
            }
        }
    }

    void check_everything() {
        std::map<std::string, std::int64_t> sums;
        for (int seat = 0; seat < seats; ++seat) {
            Store& store = *stores_[seat];
            ASSERT_EQ(store.check().value(), "ok") << seat;
            EXPECT_EQ(store.count("").value(), static_cast<int>(jobs_.size()));
            std::int64_t accepted = 0;
            for (const std::string& id : jobs_) {
                const Job job = store.load(id).value();
                EXPECT_EQ(said(job), said(stores_[0]->load(id).value())) << "seat " << seat << ", job " << job.number;
                for (const std::string& obstacle : done_.obstacles[id]) {
                    EXPECT_TRUE(std::any_of(job.site.obstacles.begin(), job.site.obstacles.end(),
                                            [&](const Obstacle& o) { return o.id == obstacle; }))
                        << "an acknowledged edit is lost at seat " << seat << ", job " << job.number;
                }
                for (const std::string& reading : done_.readings[id]) {
                    EXPECT_TRUE(std::any_of(job.record.begin(), job.record.end(),
                                            [&](const Reading& r) { return r.id == reading; }))
                        << "a reading is lost at seat " << seat << ", job " << job.number;
                }
                accepted += check_quotes(store, id);
            }
            sums["seat " + std::to_string(seat)] = accepted;
        }
        std::int64_t wanted = 0;
        for (const std::string& quote : done_.accepted)
            wanted += done_.gross[quote];
        for (const auto& [seat, sum] : sums)
            EXPECT_EQ(sum, wanted) << seat << ": what clients accepted does not add up";
        EXPECT_GT(done_.papers.size(), 0U);
        EXPECT_GT(done_.accepted.size(), 0U);
    }

    /// What the list says agrees with the jobs, whatever was done.
    void check_list(int seat) {
        JobList list(*stores_[seat]);
        int by_state = 0;
        for (int state = 0; state < 7; ++state) {
            JobFilter filter;
            filter.states = {static_cast<JobState>(state)};
            by_state += list.count(filter).value();
        }
        EXPECT_EQ(by_state, stores_[seat]->count("").value());
    }

   private:
    int below(int n) { return static_cast<int>(random_() % static_cast<std::uint64_t>(n)); }
    Instant now() { return at(++minute_); }
    std::string fresh_id() { return id(0x100000 + next_id_++); }
    int any_of(const std::set<int>& some) {
        auto it = some.begin();
        std::advance(it, below(static_cast<int>(some.size())));
        return *it;
    }
    bool is_address_of(int seat) const { return places_[static_cast<std::size_t>(seat)].rfind("postgresql", 0) == 0; }
    void open_seat(int seat) {
        static const char* const names[] = {"Office", "Tablet", "Van"};
        auto opened = Store::open_place(places_[static_cast<std::size_t>(seat)], at(0), names[seat]);
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        stores_[seat] = std::move(opened).value();
    }
    static void add_obstacle(Job& job, const std::string& obstacle_id) {
        Obstacle obstacle;
        obstacle.id = obstacle_id;
        obstacle.label = "Post " + obstacle_id.substr(30);
        job.site.obstacles.push_back(obstacle);
    }

    void edit(Store& store, const std::string& job_id, const std::string& token, bool on_the_record) {
        Job job = store.load(job_id).value();
        if (on_the_record) {
            Reading entry;
            entry.id = token;
            entry.kind = ReadingKind::vacuum_level;
            entry.taken_at = "2027-05-01T10:00:00+02:00";
            entry.value = 20.0;
            job.record.push_back(chained(std::move(entry), job.record));
        } else {
            add_obstacle(job, token);
            job.title = "Title " + token.substr(30);
        }
        // Typed, kept, and then saved.
        if (below(3) == 0) ASSERT_TRUE(store.keep_unsaved(job, now()).ok());
        const auto saved = store.save(job, now());
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        (on_the_record ? done_.readings : done_.obstacles)[job_id].insert(token);
    }

    void issue(int seat, const std::string& job_id) {
        Store& store = *stores_[seat];
        const Job job = store.load(job_id).value();
        const std::string number = job.number + "-" + std::to_string(done_.papers.size() + 1);
        const std::string plan = "{\"job\":\"" + job_id + "\",\"n\":" + std::to_string(next_id_) + "}";
        const std::string pdf = "%PDF-1.7 paper of " + number;
        IssuedQuote quote{
            fresh_id(), job_id, job.revision, number, "2027-06-21T08:00:00Z", plan, "", 100'000 + below(900'000),
            "EUR"};
        const auto issued = QuoteBook(store).issue(quote, pdf, now());
        ASSERT_TRUE(issued.ok()) << text_of(issued.problems());
        done_.papers[quote.id] = sha256_hex(pdf);
        ++done_.quotes[job_id];
        done_.gross[quote.id] = quote.gross_minor;
    }

    void answer(int seat, const std::string& job_id) {
        Store& store = *stores_[seat];
        const auto quotes = store.quotes(job_id).value();
        if (quotes.empty()) return;
        const IssuedQuote& quote = quotes[static_cast<std::size_t>(below(static_cast<int>(quotes.size())))];
        // One client answers once, wherever they do.
        if (!answered_.insert(quote.id).second) return;
        QuoteAnswer given;
        given.id = fresh_id();
        given.quote_id = quote.id;
        given.answer = below(2) == 0 ? Answer::accepted : Answer::declined;
        given.on = "2027-06-25";
        given.who = "Client";
        const auto entered = QuoteBook(store).answer(given, now());
        ASSERT_TRUE(entered.ok()) << text_of(entered.problems());
        if (given.answer == Answer::accepted) done_.accepted.insert(quote.id);
    }

    void move_on(int seat, const std::string& job_id) {
        Store& store = *stores_[seat];
        Job job = store.load(job_id).value();
        if (job.state == JobState::closed) return;
        job.state = static_cast<JobState>(static_cast<int>(job.state) + 1);
        ASSERT_TRUE(store.save(job, now()).ok());
        if (below(10) == 0) {
            ASSERT_TRUE(store.remove(job_id, now()).ok());
            ASSERT_TRUE(store.restore(job_id).ok());
        }
    }

    void send(int from, int to, const std::string& job_id) {
        if (from == to || where_[job_id].count(from) == 0) return;
        const auto parcel = Travel(*stores_[from]).parcel_of(job_id, "Warmgable 0.1", now());
        ASSERT_TRUE(parcel.ok()) << text_of(parcel.problems());
        const auto bytes = exchange::pack(parcel.value().parcel);
        ASSERT_TRUE(bytes.ok()) << text_of(bytes.problems());
        const auto taken = Travel(*stores_[to]).take(exchange::unpack(bytes.value(), "sent").value(), now());
        ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
        EXPECT_TRUE(taken.value().left_out.empty());
        where_[job_id].insert(to);
    }

    std::int64_t check_quotes(Store& store, const std::string& job_id) {
        std::int64_t accepted = 0;
        const auto answers = QuoteBook(store).answers(job_id).value();
        std::size_t papers = 0;
        for (const IssuedQuote& quote : store.quotes(job_id).value()) {
            EXPECT_EQ(sha256_hex(QuoteBook(store).paper(quote.id).value()), done_.papers[quote.id]);
            EXPECT_EQ(quote.gross_minor, done_.gross[quote.id]);
            ++papers;
            const auto given = answers.find(quote.id);
            if (given != answers.end() && given->second.back().answer == Answer::accepted)
                accepted += quote.gross_minor;
        }
        EXPECT_EQ(papers, done_.quotes[job_id]) << "a quote is lost";
        return accepted;
    }

    std::vector<std::string> places_;
    std::mt19937_64 random_;
    std::unique_ptr<Store> stores_[seats];
    std::vector<std::string> jobs_;
    std::map<std::string, std::set<int>> where_;  ///< seats that have the job
    std::set<std::string> answered_;
    Done done_;
    unsigned next_id_ = 0;
    int minute_ = 0;
};

TEST_P(EachStore, AYearOfAFirmLosesNothing) {
    Firm firm({path("office"), file("tablet.db"), file("van.db")}, 20261129);
    const int jobs = std::max(4, sweep::cases(50));
    for (int job = 0; job < jobs && !HasFatalFailure(); ++job) {
        firm.start_job();
        for (int action = 0; action < actions_a_job && !HasFatalFailure(); ++action)
            firm.act();
        if (job % 6 == 5) firm.work_and_be_killed();
        if (job % 10 == 9) firm.check_list(0);
    }
    ASSERT_FALSE(HasFatalFailure());
    firm.come_together();
    ASSERT_FALSE(HasFatalFailure());
    firm.check_everything();
}

}  // namespace
}  // namespace firm_year_test
}  // namespace wg::store::test
