// A firm's file goes to a server and back, and nothing is lost on the way.

#include <gtest/gtest.h>

#include <QStringList>

#include "tests/core/store/filled_store.h"
#include "tests/core/store/script.h"
#include "tests/core/store/server.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace copy_test {
namespace {

std::string why(const Result<bool>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

TEST_P(EachStore, EverythingIsCopiedRowByRowToAFile) {
    const auto store = open(path(), "Ada on desk-2");
    fill(*store);
    {
        const auto copy = open(file("copy.db"));
        const Result<bool> copied = store->copy_to(*copy);
        ASSERT_TRUE(copied.ok()) << why(copied);
        EXPECT_EQ(copy->check().value(), "ok");
        expect_same_answers(*store, *copy);
        const Result<bool> again = store->copy_to(*copy);
        EXPECT_NE(why(again).find("is not empty"), std::string::npos) << why(again);
    }
    EXPECT_EQ(digest_at(file("copy.db")), digest_at(path()));
}

TEST_F(ServerStore, AFilesContentsGoToTheServerAndBack) {
    const std::string first = file("first.db");
    const auto store = open(first, "Ada on desk-2");
    fill(*store);
    const auto server = open();
    const Result<bool> there = store->copy_to(*server);
    ASSERT_TRUE(there.ok()) << why(there);
    EXPECT_EQ(server->check().value(), "ok");
    expect_same_answers(*store, *server);
    const Result<bool> back = server->backup(file("back.db"));
    ASSERT_TRUE(back.ok()) << why(back);
    EXPECT_EQ(files().filter("back"), QStringList{"back.db"}) << "nothing is left beside it";
    const std::string digest = digest_at(first);
    EXPECT_EQ(digest_at(path()), digest);
    EXPECT_EQ(digest_at(file("back.db")), digest);
    // Both go on from where the copy was made.
    const auto returned = open(file("back.db"));
    for (Store* each : {server.get(), returned.get()}) {
        RefrigerantEntry entry;
        entry.id = id(0x777);
        entry.on = "2027-07-01";
        entry.refrigerant = "R134a";
        ASSERT_TRUE(each->add_refrigerant_entry(entry, at(90)).ok());
        EXPECT_EQ(each->refrigerant_entries().value().back().id, id(0x777));
        Job job = each->load(numbered_job(2).id).value();
        job.notes = "went on";
        ASSERT_TRUE(each->save(job, at(91)).ok());
        EXPECT_EQ(each->list("", 1, 0).value().front().id, job.id);
    }
}

TEST_F(ServerStore, ADigestTellsTheSmallestDifference) {
    const auto store = open();
    fill(*store);
    const std::string before = digest_at(path());
    EXPECT_EQ(sql(path(), "UPDATE setting SET value = value || ' ' WHERE key = 'firm.name'"), "");
    EXPECT_NE(digest_at(path()), before);
    EXPECT_EQ(sql(path(), "UPDATE setting SET value = rtrim(value) WHERE key = 'firm.name'"), "");
    EXPECT_EQ(digest_at(path()), before);
    EXPECT_EQ(sql(path(), "UPDATE weather_year SET altitude_m = altitude_m + 1e-9"), "");
    EXPECT_NE(digest_at(path()), before);
}

TEST_F(ServerStore, ACopyThatIsCutShortLeavesTheTargetEmpty) {
    const auto store = open(file("first.db"));
    fill(*store);
    const auto server = open();
    EXPECT_EQ(sql(path(), "ALTER TABLE setting ADD CHECK (key <> 'firm.name')"), "");
    EXPECT_FALSE(store->copy_to(*server).ok());
    EXPECT_EQ(server->count("").value(), 0);
    EXPECT_TRUE(server->weather_years().value().empty());
    EXPECT_EQ(sql(path(), "ALTER TABLE setting DROP CONSTRAINT setting_key_check"), "");
    EXPECT_TRUE(store->copy_to(*server).ok());
}

}  // namespace
}  // namespace copy_test
}  // namespace wg::store::test
