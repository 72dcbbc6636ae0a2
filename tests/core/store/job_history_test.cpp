// Who changed what, told from the revisions.

#include "core/store/job_history.h"

#include <gtest/gtest.h>

#include "tests/core/store/store_fixture.h"

namespace wg::store::test {

TEST_P(EachStore, EveryRevisionTellsWhoChangedWhat) {
    Job job = sample_job();
    {
        const auto ada = open(path(), "Ada on desk-2");
        job = ada->save(job, at(1)).value();
    }
    const auto store = open(path(), "Ben on van-1");
    job.client.phone = "0555 0177";
    job.site.surfaces.at(0).tilt_deg += 2.5;
    job = store->save(job, at(2)).value();
    Obstacle post;
    post.id = id(0x777);
    post.label = "Aerial";
    job.site.obstacles.push_back(post);
    job = store->save(job, at(3)).value();

    const JobHistory history(*store);
    const auto revisions = history.revisions(job.id);
    ASSERT_TRUE(revisions.ok()) << text_of(revisions.problems());
    ASSERT_EQ(revisions.value().size(), 3U);
    EXPECT_EQ(revisions.value()[0].changed_by, "Ben on van-1");
    EXPECT_EQ(revisions.value()[0].changed_at, iso8601(at(3)));
    EXPECT_EQ(revisions.value()[2].changed_by, "Ada on desk-2");

    EXPECT_TRUE(history.changes(job.id, 1).value().empty()) << "the first changes nothing";
    const auto second = history.changes(job.id, 2).value();
    ASSERT_EQ(second.size(), 2U);
    EXPECT_EQ(second[0].path, "client/phone");
    EXPECT_EQ(second[0].after, "\"0555 0177\"");
    EXPECT_NE(second[1].where.find("tilt"), std::string::npos);
    const auto third = history.changes(job.id, 3).value();
    ASSERT_EQ(third.size(), 1U);
    EXPECT_EQ(third[0].kind, merge::Change::Kind::added);
    EXPECT_NE(third[0].where.find("Aerial"), std::string::npos) << third[0].where;
    EXPECT_FALSE(history.changes(job.id, 4).ok());
    EXPECT_FALSE(history.revisions(id(0xFFF)).ok());
}

}  // namespace wg::store::test
