#pragma once
// Machines for tests: each has its copy of a job and its versions, edits it and exchanges it with others.

#include <gtest/gtest.h>

#include <cctype>
#include <functional>
#include <string>

#include "core/job/codec.h"
#include "core/merge/join.h"
#include "core/merge/versions_codec.h"
#include "tests/core/job/sample_job.h"

namespace wg::merge::test {

/// Without what belongs to the copy.
inline Job travelling(Job job) {
    job.revision = 0;
    job.changed_at.clear();
    job.base_sha256.clear();
    job.base_revision = 0;
    return job;
}

inline std::string content_of(const Job& job) {
    return job_to_json(travelling(job));
}

inline std::string all_open(const std::vector<Open>& open) {
    std::string out;
    for (const Open& one : open)
        out += one.path + " | " + text_of(one) + '\n';
    return out;
}

inline Seat seat(const std::string& name) {
    std::string id = name;
    for (char& c : id)
        c = std::isalnum(static_cast<unsigned char>(c)) != 0
                ? static_cast<char>(std::tolower(static_cast<unsigned char>(c)))
                : '-';
    return {id, name};
}

struct Machine {
    Seat seat;
    Job job;
    Versions versions;
    std::int64_t clock_s = 1800000000;

    Machine(const std::string& name, const Job& from) : Machine(name, from, begin(from)) {}
    Machine(const std::string& name, const Job& from, const Versions& begun)
        : seat(test::seat(name)), job(from), versions(begun) {}

    void edit(const std::function<void(Job&)>& change) {
        change(job);
        Result<Versions> after = edited(versions, job, seat, {clock_s});
        ASSERT_TRUE(after.ok()) << wg::text_of(after.problems());
        versions = std::move(after.value());
        clock_s += 60;
        // What the versions describe is what was edited.
        const Result<Job> described = job_of(versions);
        ASSERT_TRUE(described.ok()) << wg::text_of(described.problems());
        ASSERT_TRUE(described.value() == travelling(job)) << content_of(described.value()) << content_of(job);
    }
    Merged take(const Machine& other) {
        Result<Merged> merged = join(job, versions, other.job, other.versions);
        EXPECT_TRUE(merged.ok()) << (merged.ok() ? "" : wg::text_of(merged.problems()));
        if (!merged.ok()) return {};
        EXPECT_TRUE(validate(merged.value().job).empty()) << wg::text_of(validate(merged.value().job));
        job = merged.value().job;
        versions = std::move(merged.value().versions);
        return std::move(merged.value());  // its versions are the machine's now
    }
    void decide(const std::string& path, std::size_t side) {
        Result<Versions> after = choose(versions, path, side, seat, {clock_s});
        ASSERT_TRUE(after.ok()) << wg::text_of(after.problems());
        versions = std::move(after.value());
        clock_s += 60;
        const Result<Job> described = job_of(versions);
        ASSERT_TRUE(described.ok());
        job = described.value();
    }
};

inline void expect_same(const Machine& a, const Machine& b) {
    EXPECT_EQ(content_of(a.job), content_of(b.job));
    EXPECT_EQ(all_open(open_fields(a.versions)), all_open(open_fields(b.versions)));
    EXPECT_TRUE(a.versions == b.versions) << versions_to_json(a.versions) << '\n' << versions_to_json(b.versions);
}

}  // namespace wg::merge::test
