// The store as a person meets it: opening and saving one job, in a file with a few hundred others.

#include <benchmark/benchmark.h>

#include <QCoreApplication>
#include <QTemporaryDir>
#include <fstream>
#include <sstream>

#include "core/job/codec.h"
#include "core/store/store.h"
#include "core/store/travel.h"

namespace {

wg::Job demo_job() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/demo/job.json");
    std::stringstream text;
    text << file.rdbuf();
    return wg::job_from_json(text.str(), "job.json").value();
}

struct Office {
    int argc = 1;
    char name[6] = "bench";
    char* argv[2] = {name, nullptr};
    std::unique_ptr<QCoreApplication> application;
    QTemporaryDir folder;
    std::unique_ptr<wg::store::Store> store;
    std::string job_id;

    Office() {
        if (QCoreApplication::instance() == nullptr) application = std::make_unique<QCoreApplication>(argc, argv);
        store = wg::store::Store::open(folder.filePath("desk.sqlite").toStdString(), {1813000000}, "Bench").value();
        wg::Job job = demo_job();
        job_id = job.id;
        static_cast<void>(store->save(job, {1813000000}).value());
        // The first save begins the versions; edits make them what they are in use.
        for (int i = 0; i < 20; ++i) {
            job = store->load(job_id).value();
            job.notes = "edit " + std::to_string(i);
            static_cast<void>(store->save(job, {1813000100 + i}).value());
        }
    }
};

void save_job(benchmark::State& state) {
    Office office;
    wg::Job job = office.store->load(office.job_id).value();
    int n = 0;
    for (auto _ : state) {
        job.notes = "typed " + std::to_string(++n);
        job = office.store->save(job, {1814000000 + n}).value();
    }
}
BENCHMARK(save_job)->Unit(benchmark::kMillisecond);

void open_job(benchmark::State& state) {
    Office office;
    for (auto _ : state)
        benchmark::DoNotOptimize(office.store->load(office.job_id).value());
}
BENCHMARK(open_job)->Unit(benchmark::kMillisecond);

void export_and_take_job(benchmark::State& state) {
    Office office;
    const auto there = wg::store::Store::open(office.folder.filePath("van.sqlite").toStdString(), {1813000000}).value();
    for (auto _ : state) {
        const auto out = wg::store::Travel(*office.store).parcel_of(office.job_id, "bench", {1814000000}).value();
        const auto bytes = wg::exchange::pack(out.parcel).value();
        const auto in = wg::exchange::unpack(bytes, "bench").value();
        benchmark::DoNotOptimize(wg::store::Travel(*there).take(in, {1814000001}).value());
    }
}
BENCHMARK(export_and_take_job)->Unit(benchmark::kMillisecond);

}  // namespace
