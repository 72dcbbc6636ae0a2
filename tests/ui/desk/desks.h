#pragma once
// Stores with jobs for the desk's tests.

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "core/store/store.h"
#include "tests/ui/common/fake_store.h"
#include "tests/ui/common/sample.h"

namespace wg::ui::desks {

using sample::FakeStore;

inline void fill(FakeStore& store, int jobs) {
    for (int i = 0; i < jobs; ++i) {
        Job job = sample::job();
        job.id = "job-" + std::to_string(10000 + i);
        job.number = "T-" + std::to_string(i);
        job.client.name = i % 2 == 0 ? "Even (invented)" : "Odd (invented)";
        store.jobs[job.id] = job;
    }
}

/// A real store with jobs of every state.
inline std::unique_ptr<store::Store> real_desk(int jobs) {
    auto store = store::Store::open(":memory:", Instant{1'800'000'000}).value();
    for (int i = 0; i < jobs; ++i) {
        Job job = sample::job();
        job.id = "00000000-0000-4000-8000-000000000" + std::to_string(500 + i);
        job.number = "T-" + std::to_string(100 + i);
        job.client.name = i % 2 == 0 ? "adler" : "Brook";
        job.state = static_cast<JobState>(i % 3);
        job.revision = 0;
        job.invented = false;
        EXPECT_TRUE(store->save(job, Instant{1'800'000'000 + i}).ok());
    }
    return store;
}

inline store::ServiceDueRow due_row(const char* job, const char* service, const char* on, const char* postcode = "",
                                    const char* town = "") {
    store::ServiceDueRow row;
    row.job_id = job;
    row.service_id = service;
    row.text = service;
    row.due_on = on;
    row.postcode = postcode;
    row.town = town;
    return row;
}

}  // namespace wg::ui::desks
