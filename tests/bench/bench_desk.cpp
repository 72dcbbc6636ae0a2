// A desk with a hundred thousand jobs. They are made once, in a file of their own, the quick way: by SQL.

#include <benchmark/benchmark.h>

#include <QCoreApplication>
#include <QTemporaryDir>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "core/store/database.h"
#include "core/store/job_list.h"
#include "core/store/search.h"

namespace {

constexpr int jobs = 100'000;

const char* const names[] = {"Fennimore", "Okoro", "Lindqvist", "Adeyemi", "Quill", "Marchetti", "Sorrel", "Vance"};
const char* const towns[] = {"Harrowmere", "Upper Sallow", "Westwick", "Birchfold", "Oakhill"};

struct BigDesk {
    int argc = 1;
    char name[6] = "bench";
    char* argv[2] = {name, nullptr};
    std::unique_ptr<QCoreApplication> application;
    QTemporaryDir folder;
    std::string path;

    BigDesk() {
        if (QCoreApplication::instance() == nullptr) application = std::make_unique<QCoreApplication>(argc, argv);
        path = folder.filePath("desk.sqlite").toStdString();
        const auto store = wg::store::Store::open(path, {1813000000}).value();
        const wg::store::Database& database = store->database();
        wg::store::Transaction transaction(database);
        if (transaction.begin()) std::abort();
        for (int i = 1; i <= jobs; ++i) {
            wg::Job job;
            char id[37];
            std::snprintf(id, sizeof id, "00000000-0000-4000-8000-%012d", i);
            job.id = id;
            job.number = std::to_string(2000 + i % 28) + "-" + std::to_string(10000 + i);
            job.client.name = std::string(names[i % 8]) + " " + std::to_string(i % 977);
            job.client.town = towns[i % 5];
            job.client.street = "Mill Lane " + std::to_string(i % 300);
            job.title = "Hot water from the " + std::string(i % 2 == 0 ? "south" : "west") + " roof";
            job.state = static_cast<wg::JobState>(i % 7);
            job.revision = 1;
            job.changed_at = "2027-01-01T00:00:00Z";
            const std::string text = wg::job_to_json(job);
            const auto q = [](const std::string& s) { return QVariant(QString::fromStdString(s)); };
            static const char* const states[] = {"visit",  "planning",   "offered", "accepted",
                                                 "fitted", "in_service", "closed"};
            if (database.run("INSERT INTO job (id, save_seq, number, title, client, town, state, invented, revision, "
                             "changed_at, content_sha256, base_sha256, base_revision) "
                             "VALUES (?, ?, ?, ?, ?, ?, ?, 0, 1, ?, '', '', 0)",
                             {q(job.id), i, q(job.number), q(job.title), q(job.client.name), q(job.client.town),
                              q(states[i % 7]), q(job.changed_at)}) ||
                database.run("INSERT INTO job_revision (job_id, revision, changed_at, content, text_sha256) VALUES (?, "
                             "1, ?, ?, ?)",
                             {q(job.id), q(job.changed_at), q(text), q(wg::sha256_hex(text))}) ||
                database.run("INSERT INTO job_state_day VALUES (?, 1, '', ?, ?, '')",
                             {q(job.id), q(states[i % 7]), q(job.changed_at)}))
                std::abort();
            // Quotes of those offered and accepted, half of them answered; services of those in use.
            const bool quoted = i % 7 == 2 || i % 7 == 3;
            if (quoted && database.run("INSERT INTO quote_issued VALUES (?, ?, 1, ?, ?, '{}', '', 1, 'EUR')",
                                       {q(job.id), q(job.id), q("Q" + job.number), q(job.changed_at)}))
                std::abort();
            if (quoted && i % 2 == 0 &&
                database.run("INSERT INTO quote_answer VALUES (?, ?, ?, 'declined', '2027-02-01', '', '', '', '')",
                             {i, q(job.id), q(job.id)}))
                std::abort();
            // A number for each block that was fitted, and the part in the table.
            if ((i % 7 == 4 || i % 7 == 5) &&
                database.run("INSERT INTO fitted_part VALUES (?, 0, '', 'block', ?, ?, '2027-01-01', '')",
                             {q(job.id), q("block-" + std::to_string(i % 40)), q("SN-" + std::to_string(i))}))
                std::abort();
            if (i % 7 == 5 && database.run("INSERT INTO service_due VALUES (?, 'look', '', ?, '')",
                                           {q(job.id), q(i % 2 == 0 ? "2027-06-01" : "2028-06-01")}))
                std::abort();
        }
        if (wg::store::index_all_jobs(database) || transaction.commit()) std::abort();
    }
};

BigDesk& desk() {
    static BigDesk one;
    return one;
}

// A keystroke: the first page and the count, for a word as it is typed.
void desk_search_100k(benchmark::State& state) {
    const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
    const wg::store::JobList list(*store);
    const char* const typed[] = {"l", "li", "lin", "lindqvist", "lindqvist west", "2014-1", "mill lane 4"};
    wg::store::JobFilter filter;
    filter.words = typed[state.range(0)];
    state.SetLabel(filter.words);
    for (auto _ : state) {
        benchmark::DoNotOptimize(list.page(filter, 100, 0).value());
        benchmark::DoNotOptimize(list.count(filter, 5000).value());
    }
}
BENCHMARK(desk_search_100k)->DenseRange(0, 6)->Unit(benchmark::kMillisecond);

void desk_sort_and_filter_100k(benchmark::State& state) {
    const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
    const wg::store::JobList list(*store);
    wg::store::JobFilter filter;
    filter.order = static_cast<wg::store::JobOrder>(state.range(0));
    if (state.range(1) != 0) filter.states = {wg::JobState::offered};
    for (auto _ : state) {
        benchmark::DoNotOptimize(list.page(filter, 100, 0).value());
        benchmark::DoNotOptimize(list.count(filter, 5000).value());
    }
}
BENCHMARK(desk_sort_and_filter_100k)->ArgsProduct({{0, 2, 5}, {0, 1}})->Unit(benchmark::kMillisecond);

// What is to be done next: the first page with its column, and the count, narrowed to one step.
void desk_next_steps_100k(benchmark::State& state) {
    const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
    const wg::store::JobList list(*store);
    wg::store::JobFilter filter;
    filter.today = "2027-07-01";
    if (state.range(0) >= 0) filter.steps = {static_cast<wg::NextStep>(state.range(0))};
    for (auto _ : state) {
        const auto rows = list.page(filter, 100, 0).value();
        benchmark::DoNotOptimize(list.next_steps(rows, {2027, 7, 1}).value());
        benchmark::DoNotOptimize(list.count(filter, 5000).value());
    }
}
BENCHMARK(desk_next_steps_100k)->DenseRange(-1, 8)->Unit(benchmark::kMillisecond);

// Narrowed in the other ways, in every order: the first page and the count.
void desk_narrowed_100k(benchmark::State& state) {
    const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
    const wg::store::JobList list(*store);
    wg::store::JobFilter filter;
    filter.today = "2027-07-01";
    filter.order = static_cast<wg::store::JobOrder>(state.range(1));
    const char* const labels[] = {"service due", "quiet", "send a quote", "west", "lindqvist", "item"};
    state.SetLabel(labels[state.range(0)]);
    switch (state.range(0)) {
        case 0: filter.due_until = "2027-07-31"; break;
        case 1: filter.changed_until = "2026-06-01"; break;
        case 2: filter.steps = {wg::NextStep::send_quote}; break;
        case 3:
        case 4: filter.words = labels[state.range(0)]; break;
        default: filter.item_id = "block-7"; break;
    }
    for (auto _ : state) {
        benchmark::DoNotOptimize(list.page(filter, 100, 0).value());
        benchmark::DoNotOptimize(list.count(filter, 5000).value());
    }
}
BENCHMARK(desk_narrowed_100k)->ArgsProduct({{0, 1, 2, 3, 4, 5}, {0, 2, 5}})->Unit(benchmark::kMillisecond);

// The last page but one, in every order.
void desk_deep_page_100k(benchmark::State& state) {
    const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
    const wg::store::JobList list(*store);
    wg::store::JobFilter filter;
    filter.order = static_cast<wg::store::JobOrder>(state.range(0));
    filter.backwards = state.range(1) != 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(list.page(filter, 100, 99'900).value());
}
BENCHMARK(desk_deep_page_100k)->ArgsProduct({{0, 1, 2, 3, 4, 5}, {0, 1}})->Unit(benchmark::kMillisecond);

void start_with_100k_jobs(benchmark::State& state) {
    desk();
    for (auto _ : state) {
        const auto store = wg::store::Store::open(desk().path, {1813000000}).value();
        benchmark::DoNotOptimize(store->list("", 100, 0).value());
        benchmark::DoNotOptimize(store->count("").value());
    }
}
BENCHMARK(start_with_100k_jobs)->Unit(benchmark::kMillisecond);

}  // namespace
