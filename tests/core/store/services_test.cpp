// Services that fall due over all jobs, and the refrigerant register.

#include <gtest/gtest.h>

#include "core/store/migrations.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace services_test {
namespace {

ServiceDueRow due(const char* id, const char* on, const char* last = "") {
    ServiceDueRow row;
    row.service_id = id;
    row.text = std::string("Do the ") + id;
    row.due_on = on;
    row.last_done_on = last;
    return row;
}

RefrigerantEntry entry(unsigned n, RefrigerantMove move, double kg) {
    RefrigerantEntry made;
    made.id = id(n);
    made.on = "2027-06-21";
    made.refrigerant = "R134a";
    made.move = move;
    made.kg = kg;
    made.bottle = "B7";
    made.note = "caf\u00e9, \"new\"";
    made.by = "A. Reed";
    return made;
}

std::vector<std::string> ids_of(const std::vector<ServiceDueRow>& rows) {
    std::vector<std::string> out;
    for (const ServiceDueRow& row : rows)
        out.push_back(row.number + "/" + row.service_id);
    return out;
}

TEST_P(EachStore, ServicesOfAllJobsAreListedSoonestFirstWithTheirClients) {
    const auto store = open();
    Job first = numbered_job(1), second = numbered_job(2);
    first.client.postcode = "SW4 1AA";
    first.client.town = "Upper Sallow";
    first.client.phone = "01000 555 017";
    ASSERT_TRUE(store->save(first, at(0)).ok());
    ASSERT_TRUE(store->save(second, at(0)).ok());
    ASSERT_TRUE(
        store->set_services_due(first.id, {due("anode", "2029-06-01"), due("look", "2028-06-01", "2027-06-01")}).ok());
    ASSERT_TRUE(store->set_services_due(second.id, {due("look", "2028-07-01")}).ok());
    const auto all = store->services_due("").value();
    EXPECT_EQ(ids_of(all),
              (std::vector<std::string>{first.number + "/look", second.number + "/look", first.number + "/anode"}));
    EXPECT_EQ(all[0].postcode, "SW4 1AA");
    EXPECT_EQ(all[0].town, "Upper Sallow");
    EXPECT_EQ(all[0].phone, "01000 555 017");
    EXPECT_EQ(all[0].last_done_on, "2027-06-01");
    EXPECT_EQ(all[0].text, "Do the look");
    EXPECT_EQ(all[0].job_id, first.id);
    EXPECT_EQ(store->services_due("2028-06-01").value().size(), 1U) << "the day itself is in";
    EXPECT_EQ(store->services_due("2028-05-31").value().size(), 0U);
    EXPECT_FALSE(store->services_due("soon").ok());
}

TEST_P(EachStore, WhatIsDueIsReplacedAsAWholeAndOfThatJobOnly) {
    const auto store = open();
    const Job first = numbered_job(1), second = numbered_job(2);
    ASSERT_TRUE(store->save(first, at(0)).ok());
    ASSERT_TRUE(store->save(second, at(0)).ok());
    ASSERT_TRUE(store->set_services_due(first.id, {due("anode", "2029-06-01"), due("look", "2028-06-01")}).ok());
    ASSERT_TRUE(store->set_services_due(second.id, {due("look", "2028-07-01")}).ok());
    ASSERT_TRUE(store->set_services_due(first.id, {due("look", "2029-05-20", "2028-05-20")}).ok());
    EXPECT_EQ(ids_of(store->services_due("").value()),
              (std::vector<std::string>{second.number + "/look", first.number + "/look"}));
    EXPECT_FALSE(store->set_services_due(first.id, {due("a", "2029-06-01"), due("a", "2029-06-02")}).ok());
    EXPECT_FALSE(store->set_services_due(first.id, {due("a", "2029-02-30")}).ok());
    EXPECT_FALSE(store->set_services_due(id(999), {due("a", "2029-06-01")}).ok());
    EXPECT_EQ(store->services_due("").value().size(), 2U) << "what is refused changes nothing";
}

TEST_P(EachStore, RemovedAndClosedJobsHaveNoServicesDue) {
    const auto store = open();
    const Job first = numbered_job(1);
    Job second = store->save(numbered_job(2), at(0)).value();
    ASSERT_TRUE(store->save(first, at(0)).ok());
    ASSERT_TRUE(store->set_services_due(first.id, {due("look", "2028-06-01")}).ok());
    ASSERT_TRUE(store->set_services_due(second.id, {due("look", "2028-07-01")}).ok());
    ASSERT_TRUE(store->remove(first.id, at(1)).ok());
    EXPECT_EQ(store->services_due("").value().size(), 1U);
    ASSERT_TRUE(store->restore(first.id).ok());
    EXPECT_EQ(store->services_due("").value().size(), 2U);
    second.state = JobState::closed;
    ASSERT_TRUE(store->save(second, at(2)).ok());
    EXPECT_EQ(store->services_due("").value().size(), 1U);
}

TEST_P(EachStore, TheRegisterGivesBackWhatWentInAndSurvivesClosing) {
    RefrigerantEntry second = entry(2, RefrigerantMove::used, 0.25);
    {
        const auto store = open();
        const Job job = store->save(sample_job(), at(0)).value();
        second.job_id = job.id;
        second.reading_id = id(77);
        ASSERT_TRUE(store->add_refrigerant_entry(entry(1, RefrigerantMove::received, 12.5), at(1)).ok());
        ASSERT_TRUE(store->add_refrigerant_entry(second, at(2)).ok());
    }
    const auto store = open();
    const auto found = store->refrigerant_entries().value();
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0], entry(1, RefrigerantMove::received, 12.5));
    EXPECT_EQ(found[1], second);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, TheRegisterRefusesWhatCannotBe) {
    const auto store = open();
    ASSERT_TRUE(store->add_refrigerant_entry(entry(1, RefrigerantMove::received, 1.0), at(1)).ok());
    const auto refused = [&](const std::function<void(RefrigerantEntry&)>& spoil) {
        RefrigerantEntry wrong = entry(2, RefrigerantMove::used, 1.0);
        spoil(wrong);
        return !store->add_refrigerant_entry(wrong, at(1)).ok();
    };
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.id = id(1); })) << "is there already";
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.id = "one"; }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.on = "2027-02-29"; }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.kg = -0.1; }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.kg = std::nan(""); }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.refrigerant.clear(); }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.note = "\xFF"; }));
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.corrects_id = id(5); })) << "corrects what is not there";
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.job_id = id(6); })) << "a job that is not there";
    EXPECT_TRUE(refused([](RefrigerantEntry& e) { e.reading_id = id(6); })) << "a reading without a job";
    EXPECT_FALSE(refused([](RefrigerantEntry& e) { e.corrects_id = id(1); }));
    EXPECT_EQ(store->refrigerant_entries().value().size(), 2U);
}

TEST_P(EachStore, AReadingIsMirroredOnce) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(0)).value();
    RefrigerantEntry first = entry(1, RefrigerantMove::used, 0.1), second = entry(2, RefrigerantMove::used, 0.2);
    for (RefrigerantEntry* e : {&first, &second}) {
        e->job_id = job.id;
        e->reading_id = e->id;
    }
    second.corrects_id = first.id;
    EXPECT_EQ(store->mirror_refrigerant_entries({first}, at(1)).value(), 1);
    EXPECT_EQ(store->mirror_refrigerant_entries({first, second}, at(2)).value(), 1);
    EXPECT_EQ(store->mirror_refrigerant_entries({first, second}, at(3)).value(), 0);
    EXPECT_EQ(store->refrigerant_entries().value().size(), 2U);
    RefrigerantEntry third = entry(3, RefrigerantMove::used, 0.3), wrong = entry(4, RefrigerantMove::used, -1.0);
    third.job_id = wrong.job_id = job.id;
    third.reading_id = third.id;
    wrong.reading_id = wrong.id;
    EXPECT_FALSE(store->mirror_refrigerant_entries({third, wrong}, at(4)).ok());
    EXPECT_EQ(store->refrigerant_entries().value().size(), 2U) << "all or none";
}

TEST_P(EachStore, NoSqlChangesAnEntryOfTheRegister) {
    {
        const auto store = open();
        ASSERT_TRUE(store->add_refrigerant_entry(entry(1, RefrigerantMove::received, 12.5), at(1)).ok());
    }
    const auto refuses = [&](const char* statement) {
        return sql(path(), QString::fromLatin1(statement)).find("never") != std::string::npos;
    };
    EXPECT_TRUE(refuses("UPDATE refrigerant_entry SET kg = 1"));
    EXPECT_TRUE(refuses("DELETE FROM refrigerant_entry"));
    if (dialect_ == Dialect::postgresql) {
        EXPECT_TRUE(refuses("TRUNCATE refrigerant_entry CASCADE"));
        EXPECT_TRUE(
            refuses("INSERT INTO refrigerant_entry SELECT * FROM refrigerant_entry ON CONFLICT (id) DO UPDATE "
                    "SET kg = 1"));
    } else {
        EXPECT_TRUE(
            refuses("INSERT OR REPLACE INTO refrigerant_entry SELECT seq, id, on_day, refrigerant, move, 1, bottle, "
                    "note, entered_by, job_id, reading_id, corrects_id, entered_at FROM refrigerant_entry"));
        EXPECT_TRUE(
            refuses("INSERT OR REPLACE INTO refrigerant_entry SELECT seq + 1, id, on_day, refrigerant, move, 1, "
                    "bottle, note, entered_by, job_id, reading_id, corrects_id, entered_at FROM refrigerant_entry"));
    }
    const auto store = open();
    EXPECT_DOUBLE_EQ(store->refrigerant_entries().value().at(0).kg, 12.5);
}

}  // namespace
}  // namespace services_test
}  // namespace wg::store::test
