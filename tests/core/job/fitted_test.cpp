#include "core/job/fitted.h"

#include <gtest/gtest.h>

#include "tests/core/job/sample_job.h"

namespace wg::test {
namespace fitted_test {
namespace {

Reading number_of(unsigned n, const char* part, const char* serial, const char* day) {
    Reading entry;
    entry.id = id(0x700 + n);
    entry.kind = ReadingKind::serial_number;
    entry.taken_at = std::string(day) + "T10:00:00+02:00";
    entry.subject = part;
    entry.note = serial;
    return entry;
}

TEST(FittedParts, AreTheNumbersOfTheRecordAfterCorrections) {
    Job job = sample_job();
    job.record = {number_of(1, "collector 1", "C-1", "2027-06-21"), number_of(2, "collector 2", "C-2", "2027-06-21"),
                  number_of(3, "block", "B-1", "2027-06-21"), number_of(4, "pump", "P-1", "2027-06-21")};
    Reading corrected = number_of(5, "block", "B-2", "2027-06-22");
    corrected.corrects_id = job.record[2].id;
    job.record.push_back(corrected);
    const std::vector<FittedPart> parts = fitted_parts(job);
    ASSERT_EQ(parts.size(), 4U);
    EXPECT_EQ(parts[0], (FittedPart{id(0x701), "collector 1", "sample-plate-20", "C-1", "2027-06-21", ""}));
    EXPECT_EQ(parts[1].item_id, "sample-plate-20");
    EXPECT_EQ(parts[2].serial, "B-2") << "a correction is no replacement";
    EXPECT_EQ(parts[2].item_id, "sample-block-300");
    EXPECT_EQ(parts[3].item_id, "") << "the plan names no pump";
    for (const FittedPart& part : parts)
        EXPECT_EQ(part.replaced_on, "") << part.part;
}

TEST(FittedParts, ALaterNumberTakesThePartsPlace) {
    Job job = sample_job();
    job.record = {number_of(1, "block", "B-1", "2027-06-21"), number_of(2, "block", "B-1", "2028-06-21"),
                  number_of(3, "block", "B-7", "2029-01-02"), number_of(4, "", "X-1", "2029-01-02"),
                  number_of(5, "", "X-2", "2029-01-03")};
    const std::vector<FittedPart> parts = fitted_parts(job);
    ASSERT_EQ(parts.size(), 4U) << "read again at a service it is the same part";
    EXPECT_EQ(parts[0].fitted_on, "2027-06-21");
    EXPECT_EQ(parts[0].replaced_on, "2029-01-02");
    EXPECT_EQ(parts[1].serial, "B-7");
    EXPECT_EQ(parts[1].replaced_on, "");
    EXPECT_EQ(parts[2].replaced_on, "") << "of parts without a name nobody knows which took whose place";
}

TEST(FittedParts, OfAFittedJobFollowFromThePlanWhereNoNumberWasEntered) {
    Job job = sample_job();
    job.record = {number_of(1, "block", "B-1", "2027-06-21")};
    for (const JobState state : {JobState::visit, JobState::planning, JobState::offered, JobState::accepted}) {
        job.state = state;
        EXPECT_EQ(fitted_parts(job).size(), 1U);
    }
    for (const JobState state : {JobState::fitted, JobState::in_service, JobState::closed}) {
        job.state = state;
        const std::vector<FittedPart> parts = fitted_parts(job);
        ASSERT_EQ(parts.size(), 3U);
        EXPECT_EQ(parts[1], (FittedPart{"", "collector", "sample-plate-20", "", "", ""}));
        EXPECT_EQ(parts[2].item_id, "sample-cylinder-300");
    }
    job.record.clear();
    EXPECT_TRUE(fitted_parts(job).empty()) << "closed without a record: nothing was fitted";
    job.state = JobState::in_service;
    job.choices.clear();
    EXPECT_TRUE(fitted_parts(job).empty()) << "no choice tells what stands there";
}

TEST(FittedParts, ADayThatIsNoneIsLeftOut) {
    Job job = sample_job();
    job.record = {number_of(1, "block", "B-1", "2027-13-41")};
    EXPECT_EQ(fitted_parts(job).at(0).fitted_on, "");
}

}  // namespace
}  // namespace fitted_test
}  // namespace wg::test
