#include "core/job/job.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "core/job/words.h"
#include "tests/core/job/sample_job.h"

namespace wg {
namespace {

TEST(JobLookUp, FindsElementsByIdAndNothingElse) {
    const Job job = test::sample_job();
    ASSERT_NE(find_surface(job.site, test::id(14)), nullptr);
    EXPECT_EQ(find_surface(job.site, test::id(14))->label, "West wall");
    EXPECT_EQ(find_surface(job.site, test::id(30)), nullptr);
    ASSERT_NE(find_spot(job.site, test::id(31)), nullptr);
    EXPECT_EQ(find_spot(job.site, test::id(31))->label, "Loft");
    EXPECT_EQ(find_spot(job.site, ""), nullptr);
    ASSERT_NE(find_choice(job, test::id(50)), nullptr);
    EXPECT_EQ(find_choice(job, test::id(50))->label, "Terrace frame, cellar");
}

TEST(JobLookUp, ChosenChoiceIsTheMarkedOneElseTheFirst) {
    Job job = test::sample_job();
    job.chosen_choice_id = test::id(50);
    EXPECT_EQ(chosen_choice(job), &job.choices[1]);
    job.chosen_choice_id.clear();
    EXPECT_EQ(chosen_choice(job), &job.choices[0]);
    job.choices.clear();
    EXPECT_EQ(chosen_choice(job), nullptr);
}

TEST(JobEquality, OneChangedFieldMakesJobsUnequal) {
    const Job job = test::sample_job();
    Job other = job;
    EXPECT_EQ(job, other);
    other.site.surfaces[0].keep_outs[0].outline[2].y_m += 1e-9;
    EXPECT_NE(job, other);
}

template <class E>
void expect_words_whole(std::size_t count) {
    std::set<std::string> keys;
    std::set<std::string> texts;
    EXPECT_EQ(words<E>().size(), count);
    for (const Word<E>& w : words<E>()) {
        keys.insert(w.key);
        texts.insert(w.text);
        EXPECT_EQ(from_key<E>(w.key), w.value);
        EXPECT_STREQ(key_of(w.value), w.key);
        EXPECT_STREQ(text_of(w.value), w.text);
        EXPECT_EQ(std::string(w.key).find_first_not_of("abcdefghijklmnopqrstuvwxyz_0123456789"), std::string::npos);
    }
    EXPECT_EQ(keys.size(), count);
    EXPECT_EQ(texts.size(), count);
    EXPECT_EQ(from_key<E>("no such word"), std::nullopt);
    EXPECT_STREQ(key_of(static_cast<E>(1000)), "");
}

TEST(Words, EveryEnumeratorHasOneKeyAndOneText) {
    expect_words_whole<Terrain>(5);
    expect_words_whole<SurfaceKind>(4);
    expect_words_whole<Covering>(10);
    expect_words_whole<RoofForm>(5);
    expect_words_whole<KeepOutKind>(4);
    expect_words_whole<ObstacleKind>(4);
    expect_words_whole<TappingCycle>(5);
    expect_words_whole<Fuel>(5);
    expect_words_whole<Hand>(2);
    expect_words_whole<RoutePointKind>(4);
    expect_words_whole<ReadingKind>(41);
    expect_words_whole<Occasion>(3);
    expect_words_whole<PlateState>(4);
    expect_words_whole<JobState>(7);
}

}  // namespace
}  // namespace wg
