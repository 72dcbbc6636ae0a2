#pragma once
// A job that is sent from one store to another as people send it: as the bytes of an exchange file.

#include <gtest/gtest.h>

#include <string>

#include "core/job/codec.h"
#include "core/store/travel.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {

/// What a job says, whichever revision of whichever store it is.
inline std::string said(Job job) {
    job.revision = 0;
    job.changed_at.clear();
    job.base_sha256.clear();
    job.base_revision = 0;
    return job_to_json(job);
}

/// Out of one store, through a file's bytes, into the other.
inline Taken send(Store& from, Store& to, const std::string& job_id, int minute) {
    const auto parcel = Travel(from).parcel_of(job_id, "Warmgable 0.1", at(minute));
    EXPECT_TRUE(parcel.ok()) << (parcel.ok() ? "" : text_of(parcel.problems()));
    if (!parcel) return {};
    const auto bytes = exchange::pack(parcel.value().parcel);
    EXPECT_TRUE(bytes.ok()) << (bytes.ok() ? "" : text_of(bytes.problems()));
    const auto read = exchange::unpack(bytes.value(), "sent.warmgable");
    EXPECT_TRUE(read.ok()) << (read.ok() ? "" : text_of(read.problems()));
    const auto taken = Travel(to).take(read.value(), at(minute + 1));
    EXPECT_TRUE(taken.ok()) << (taken.ok() ? "" : text_of(taken.problems()));
    return taken ? taken.value() : Taken{};
}

}  // namespace wg::store::test
