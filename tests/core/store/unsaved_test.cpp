// Edits kept between saves.

#include <gtest/gtest.h>

#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace unsaved_test {
namespace {

TEST_P(EachStore, EditsAreKeptUntilTheNextSave) {
    Job edited;
    {
        const auto store = open();
        const Job saved = store->save(sample_job(), at(0)).value();
        EXPECT_FALSE(store->unsaved(saved.id).value().has_value());
        edited = saved;
        edited.notes = "gate sticks";
        ASSERT_TRUE(store->keep_unsaved(edited, at(1)).ok());
        edited.notes = "gate sticks; dog";
        ASSERT_TRUE(store->keep_unsaved(edited, at(2)).ok());
    }
    const auto store = open();
    const auto kept = store->unsaved(edited.id);
    ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
    ASSERT_TRUE(kept.value().has_value());
    EXPECT_EQ(kept.value()->job, edited);
    EXPECT_EQ(store->history(edited.id).value().size(), 1U) << "no revision comes of it";
    EXPECT_EQ(store->load(edited.id).value().notes, sample_job().notes);
    ASSERT_TRUE(store->save(edited, at(3)).ok());
    EXPECT_FALSE(store->unsaved(edited.id).value().has_value());
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, WhatASaveOvertookIsNotBroughtBack) {
    const auto store = open();
    const Job first = store->save(sample_job(), at(0)).value();
    Job late = first;
    late.notes = "written late";
    Job saved = first;
    saved.notes = "saved meanwhile";
    ASSERT_TRUE(store->save(saved, at(1)).ok());
    const auto kept = store->keep_unsaved(late, at(2));
    ASSERT_TRUE(kept.ok()) << "being late is nobody's fault: " << text_of(kept.problems());
    EXPECT_FALSE(kept.value());
    EXPECT_FALSE(store->unsaved(first.id).value().has_value());
    EXPECT_EQ(store->load(first.id).value().notes, "saved meanwhile");
}

TEST_P(EachStore, EditsTakenBackLeaveNothingToBringBack) {
    const auto store = open();
    Job job = store->save(sample_job(), at(0)).value();
    const std::string notes = job.notes;
    job.notes = "typed";
    ASSERT_TRUE(store->keep_unsaved(job, at(1)).ok());
    job.notes = notes;
    ASSERT_TRUE(store->keep_unsaved(job, at(2)).ok());
    EXPECT_FALSE(store->unsaved(job.id).value().has_value());
    job.notes = "typed again";
    ASSERT_TRUE(store->keep_unsaved(job, at(3)).ok());
    EXPECT_TRUE(store->forget_unsaved(job.id).value());
    EXPECT_FALSE(store->unsaved(job.id).value().has_value());
}

TEST_P(EachStore, KeptEditsOfUnknownJobsAreRefusedAndDamagedOnesSaid) {
    const auto store = open();
    EXPECT_FALSE(store->keep_unsaved(sample_job(), at(0)).ok());
    Job job = store->save(sample_job(), at(1)).value();
    job.notes = "typed";
    ASSERT_TRUE(store->keep_unsaved(job, at(2)).ok());
    EXPECT_EQ(sql(path(), "UPDATE unsaved SET content = replace(content, 'typed', 'tyqed')"), "");
    const auto kept = store->unsaved(job.id);
    ASSERT_FALSE(kept.ok());
    EXPECT_NE(text_of(kept.problems()).find("damaged"), std::string::npos);
    EXPECT_EQ(store->load(job.id).value().notes, sample_job().notes);
}

TEST_P(EachStore, ASecondConnectionKeepsEditsBesideTheFirst) {
    const auto store = open();
    Job job = store->save(sample_job(), at(0)).value();
    auto beside = store->beside()();
    ASSERT_TRUE(beside.ok()) << text_of(beside.problems());
    job.notes = "from the other thread";
    ASSERT_TRUE(beside.value()->keep_unsaved(job, at(1)).ok());
    EXPECT_EQ(store->unsaved(job.id).value()->job.notes, job.notes);
    EXPECT_FALSE(Store::open_beside(file("none.db")).ok());
    EXPECT_FALSE(Store::open_beside(":memory:").ok());
}

}  // namespace
}  // namespace unsaved_test
}  // namespace wg::store::test
