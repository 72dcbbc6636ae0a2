// Versions of the demonstration job: begun, edited, put together, written and read.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "core/job/codec.h"
#include "core/merge/join.h"
#include "core/merge/versions_codec.h"

namespace {

using namespace wg;

Job demo_job() {
    std::ifstream file(WG_RESOURCES_DIR "/demo/job.json");
    std::stringstream text;
    text << file.rdbuf();
    return job_from_json(text.str(), "job.json").value();
}

struct Copies {
    Job mine = demo_job();
    Job theirs = mine;
    merge::Versions begun = merge::begin(mine);
    merge::Versions my_versions;
    merge::Versions their_versions;

    Copies() {
        mine.client.phone = "000 000 00 02";
        mine.site.surfaces.front().tilt_deg += 1.0;
        theirs.notes = "Ring first";
        theirs.choices.front().placements.front().x_m += 0.1;
        theirs.site.surfaces.front().tilt_deg += 2.0;
        my_versions = merge::edited(begun, mine, {"office", "Office"}, {1}).value();
        their_versions = merge::edited(begun, theirs, {"tablet", "Tablet"}, {2}).value();
    }
};

void merge_begin(benchmark::State& state) {
    const Job job = demo_job();
    for (auto _ : state)
        benchmark::DoNotOptimize(merge::begin(job));
}
BENCHMARK(merge_begin)->Unit(benchmark::kMillisecond);

void merge_edited(benchmark::State& state) {
    const Copies copies;
    for (auto _ : state)
        benchmark::DoNotOptimize(merge::edited(copies.begun, copies.mine, {"office", "Office"}, {1}));
}
BENCHMARK(merge_edited)->Unit(benchmark::kMillisecond);

/// One edit and the whole of putting two copies together, with what was taken and what is open in words.
void merge_job(benchmark::State& state) {
    const Copies copies;
    for (auto _ : state) {
        const merge::Versions mine = merge::edited(copies.begun, copies.mine, {"office", "Office"}, {1}).value();
        benchmark::DoNotOptimize(merge::join(copies.mine, mine, copies.theirs, copies.their_versions));
    }
}
BENCHMARK(merge_job)->Unit(benchmark::kMillisecond);

void merge_versions_json(benchmark::State& state) {
    const Copies copies;
    for (auto _ : state)
        benchmark::DoNotOptimize(
            merge::versions_from_json(merge::versions_to_json(copies.my_versions), "versions.json"));
}
BENCHMARK(merge_versions_json)->Unit(benchmark::kMillisecond);

}  // namespace
