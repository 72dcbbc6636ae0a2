// Jobs that leave one store and come into another, and come back.

#include "core/store/travel.h"

#include <gtest/gtest.h>

#include <QFile>
#include <algorithm>

#include "core/quantity/sha256.h"
#include "core/store/personal.h"
#include "core/store/quote_book.h"
#include "core/store/restore.h"
#include "tests/core/merge/random_edits.h"
#include "tests/core/store/sent.h"
#include "tests/core/store/store_fixture.h"
#include "tests/tools/sweep.h"

namespace wg::store::test {
namespace travel_test {
namespace {

constexpr const char* program = "Warmgable 0.1";

std::string all_open(Store& store, const std::string& job_id) {
    const auto open = Travel(store).open_fields(job_id);
    if (!open) return text_of(open.problems());
    std::string out;
    for (const merge::Open& one : open.value()) {
        out += merge::text_of(one);
        out += '\n';
    }
    return out;
}

Job edit(Store& store, const std::string& job_id, int minute, const std::function<void(Job&)>& change) {
    Job job = store.load(job_id).value();
    change(job);
    const auto saved = store.save(job, at(minute));
    EXPECT_TRUE(saved.ok()) << (saved.ok() ? "" : text_of(saved.problems()));
    return saved ? saved.value() : job;
}

std::string problems_of_take(Store& store, const exchange::Parcel& parcel) {
    const auto taken = Travel(store).take(parcel, at(50));
    return taken ? "" : text_of(taken.problems());
}

TEST_P(EachStore, AJobGoesOutIsEditedOnBothSidesAndComesBackWhole) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const Job job = office->save(sample_job(), at(1)).value();
    const Taken first = send(*office, *tablet, job.id, 2);
    EXPECT_TRUE(first.is_new);
    EXPECT_TRUE(first.open.empty());
    EXPECT_EQ(said(first.job), said(job));
    EXPECT_EQ(first.job.base_sha256, content_sha256(job));

    edit(*tablet, job.id, 5, [](Job& j) { j.client.phone = "0555 0177"; });
    edit(*tablet, job.id, 6, [](Job& j) { j.title = "Title of the tablet"; });
    edit(*office, job.id, 7, [](Job& j) { j.notes = "Price agreed"; });
    edit(*office, job.id, 8, [](Job& j) { j.title = "Title of the office"; });
    const Taken back = send(*tablet, *office, job.id, 9);
    EXPECT_FALSE(back.is_new);
    EXPECT_TRUE(back.changed);
    EXPECT_EQ(back.job.client.phone, "0555 0177");
    EXPECT_EQ(back.job.notes, "Price agreed");
    ASSERT_EQ(back.open.size(), 1U);
    EXPECT_EQ(back.open[0].path, "title");
    const auto phone = std::find_if(back.taken.begin(), back.taken.end(),
                                    [](const merge::Change& c) { return c.path == "client/phone"; });
    ASSERT_NE(phone, back.taken.end());
    EXPECT_EQ(phone->after, "\"0555 0177\"");
    EXPECT_EQ(phone->seat_name, "Tablet");

    // A second time it brings nothing; the other way both are the same.
    const Taken again = send(*tablet, *office, job.id, 11);
    EXPECT_FALSE(again.changed);
    EXPECT_TRUE(again.taken.empty());
    EXPECT_EQ(again.job.revision, back.job.revision);
    send(*office, *tablet, job.id, 13);
    EXPECT_EQ(said(office->load(job.id).value()), said(tablet->load(job.id).value()));
    EXPECT_EQ(all_open(*office, job.id), all_open(*tablet, job.id));

    // Deciding is an edit that travels, too.
    Travel travel(*office);
    const merge::Open open_title = travel.open_fields(job.id).value().at(0);
    std::size_t tablets = 0;
    while (open_title.sides.at(tablets).seat_name != "Tablet")
        ++tablets;
    EXPECT_FALSE(travel.choose(job.id, back.job.revision - 1, {{"title", tablets}}, at(15)).ok()) << "saved since";
    const auto chosen = travel.choose(job.id, back.job.revision, {{"title", tablets}}, at(15));
    ASSERT_TRUE(chosen.ok()) << text_of(chosen.problems());
    EXPECT_EQ(chosen.value().title, "Title of the tablet");
    EXPECT_EQ(office->load(job.id).value(), chosen.value());
    send(*office, *tablet, job.id, 16);
    EXPECT_EQ(all_open(*tablet, job.id), "");
    EXPECT_EQ(tablet->load(job.id).value().title, "Title of the tablet");
    EXPECT_EQ(office->check().value(), "ok");
    EXPECT_EQ(tablet->check().value(), "ok");
}

// Three machines edit at random and exchange at random; in the end each gets what the others have, in another order.
TEST_P(EachStore, ThreeStoresComeToTheSameJobWhateverTheOrder) {
    const int rounds = std::max(1, sweep::cases(6));
    for (int round = 0; round < rounds; ++round) {
        const std::string tag = std::to_string(round);
        std::unique_ptr<Store> stores[3] = {
            Store::open_place(path(("office" + tag).c_str()), at(0), "Office").value(),
            Store::open(file(("tablet" + tag + ".db").c_str()), at(0), "Tablet").value(),
            Store::open(file(("van" + tag + ".db").c_str()), at(0), "Van").value()};
        merge::test::RandomEdits edits(static_cast<std::uint64_t>(1000 + round));
        const Job job = stores[0]->save(sample_job(), at(1)).value();
        for (int other : {1, 2})
            send(*stores[0], *stores[other], job.id, 2);
        for (int step = 0; step < 24; ++step) {
            const auto seat = edits.below(3);
            if (edits.below(4) == 0) {
                send(*stores[seat], *stores[(seat + 1 + edits.below(2)) % 3], job.id, 10 + step);
                continue;
            }
            Job edited = stores[seat]->load(job.id).value();
            edits.apply(edited);
            ASSERT_TRUE(stores[seat]->save(edited, at(10 + step)).ok());
        }
        // 1 -> 0, 2 -> 0, 0 -> 1 -> 2: each has all.
        send(*stores[1], *stores[0], job.id, 50);
        send(*stores[2], *stores[0], job.id, 52);
        send(*stores[0], *stores[1], job.id, 54);
        send(*stores[1], *stores[2], job.id, 56);
        const std::string office = said(stores[0]->load(job.id).value());
        for (int other : {1, 2}) {
            EXPECT_EQ(said(stores[other]->load(job.id).value()), office) << "round " << round;
            EXPECT_EQ(all_open(*stores[other], job.id), all_open(*stores[0], job.id)) << "round " << round;
            EXPECT_FALSE(send(*stores[other], *stores[0], job.id, 58).changed) << "round " << round;
        }
    }
}

TEST_P(EachStore, PhotographsAndQuotesTravelAlongAndAreKeptOnce) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    Job job = sample_job();
    job.photographs.clear();
    job.site.underlays.clear();
    job.record.clear();
    Photograph photograph;
    photograph.id = id(0xA01);
    photograph.file_name = "roof.jpg";
    photograph.sha256 = office->add_photograph("\xFF\xD8\xFF" + std::string(5000, 'r'), at(1)).value();
    Photograph lost = photograph;
    lost.id = id(0xA02);
    lost.sha256 = std::string(64, 'b');
    job.photographs = {photograph, lost};
    job = office->save(job, at(2)).value();
    ASSERT_TRUE(
        office->issue_quote({id(0x900), job.id, 1, "Q-1", "2027-06-22T08:00:00Z", "{\"price\":1}", "", 100, "EUR"})
            .ok());
    QuoteBook book(*office);
    ASSERT_TRUE(
        book.issue({id(0x907), job.id, 1, "Q-7", "2027-06-22T08:00:00Z", "{}", "", 100, "EUR"}, "%PDF-1.7 x", at(3))
            .ok());
    QuoteAnswer answer;
    answer.id = id(0x908);
    answer.quote_id = id(0x907);
    answer.on = "2027-06-25";
    answer.who = "M. Lindholm";
    ASSERT_TRUE(book.answer(answer, at(3)).ok());
    EXPECT_EQ(Travel(*office).parcel_of(job.id, program, at(3)).value().missing.size(), 1U);
    const Taken taken = send(*office, *tablet, job.id, 3);
    EXPECT_EQ(taken.pictures, 1);
    EXPECT_EQ(taken.quotes, 2);
    EXPECT_EQ(taken.answers, 1);
    EXPECT_EQ(QuoteBook(*tablet).paper(id(0x907)).value(), "%PDF-1.7 x");
    EXPECT_EQ(QuoteBook(*tablet).answers(job.id).value(), book.answers(job.id).value());
    EXPECT_EQ(tablet->photograph(photograph.sha256).value(), office->photograph(photograph.sha256).value());
    EXPECT_EQ(tablet->quotes(job.id).value().at(0).sha256, office->quotes(job.id).value().at(0).sha256);
    const Taken again = send(*office, *tablet, job.id, 5);
    EXPECT_EQ(again.pictures + again.quotes + again.answers, 0);
    EXPECT_EQ(tablet->check().value(), "ok");

    // Another quote under the same number stays out and is told; the same quote with another content refuses it all.
    auto parcel = Travel(*office).parcel_of(job.id, program, at(7)).value().parcel;
    std::erase_if(parcel.quotes, [](const exchange::SentQuote& q) { return q.number != "Q-1"; });
    parcel.quotes[0].id = id(0x901);
    parcel.job.notes += "!";
    parcel.versions_json.clear();
    const auto other = Travel(*tablet).take(parcel, at(8));
    ASSERT_TRUE(other.ok()) << text_of(other.problems());
    ASSERT_EQ(other.value().left_out.size(), 1U);
    EXPECT_NE(other.value().left_out[0].find("quote Q-1"), std::string::npos);
    parcel.quotes[0].id = id(0x900);
    parcel.quotes[0].plan_json = "{\"price\":2}";
    parcel.quotes[0].plan_sha256 = sha256_hex(parcel.quotes[0].plan_json);
    parcel.job.notes += "?";
    const Job before = tablet->load(job.id).value();
    EXPECT_NE(problems_of_take(*tablet, parcel).find("another content"), std::string::npos);
    EXPECT_EQ(tablet->load(job.id).value(), before) << "all or nothing";
}

TEST_P(EachStore, ANumberThatTwoMachinesGaveIsKeptByTheOneThatIsHere) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    Job here = numbered_job(1);
    here.number = "2027-0001";
    here = office->save(here, at(1)).value();
    Job there = numbered_job(2);
    there.number = "2027-0001";
    there = tablet->save(there, at(2)).value();
    const Taken taken = send(*tablet, *office, there.id, 3);
    EXPECT_TRUE(taken.is_new);
    EXPECT_EQ(taken.other_number, "2027-0001");
    EXPECT_EQ(taken.job.number, "2027-0002");
    EXPECT_EQ(office->load(here.id).value().number, "2027-0001");
    // The new number travels back.
    EXPECT_EQ(send(*office, *tablet, there.id, 5).job.number, "2027-0002");
}

TEST_P(EachStore, ACopyUnderAnotherIdIsToldAndNotMerged) {
    const auto office = open();
    const Job job = office->save(sample_job(), at(1)).value();
    Job copy = job;
    copy.id = id(0xC0DE);
    copy.number = "2027-0099";
    copy.revision = 0;
    exchange::Parcel parcel;
    parcel.job = copy;
    const auto taken = Travel(*office).take(parcel, at(2));
    ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    EXPECT_TRUE(taken.value().is_new);
    EXPECT_EQ(taken.value().likely_same, std::vector<std::string>{job.number});
    EXPECT_EQ(office->count("").value(), 2);
}

TEST_P(EachStore, WhatWasRemovedComesBackAndWhatWasErasedDoesNot) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const Job job = office->save(sample_job(), at(1)).value();
    send(*office, *tablet, job.id, 2);
    ASSERT_TRUE(office->remove(job.id, at(4)).ok());
    const Taken back = send(*tablet, *office, job.id, 5);
    EXPECT_TRUE(back.brought_back);
    EXPECT_EQ(office->count("").value(), 1);
    ASSERT_TRUE(PersonalData(*office).erase({job.id}, "asked by letter", at(7)).ok());
    const auto parcel = Travel(*tablet).parcel_of(job.id, program, at(8)).value().parcel;
    EXPECT_NE(problems_of_take(*office, parcel).find("was erased here at the client's request on 2027-06-21"),
              std::string::npos);
    EXPECT_EQ(office->count("").value(), 0);
}

TEST_P(EachStore, ACopyWithoutVersionsLosesNothing) {
    const auto office = open();
    Job job = office->save(sample_job(), at(1)).value();
    exchange::Parcel parcel;
    parcel.job = job;
    parcel.job.title = "As an older program sent it";
    const auto taken = Travel(*office).take(parcel, at(2));
    ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    ASSERT_EQ(taken.value().open.size(), 1U) << "both titles are there";
    EXPECT_EQ(taken.value().open[0].path, "title");
}

TEST_P(EachStore, VersionsAreCaughtUpWhenAnOlderProgramSavedInBetween) {
    const auto office = open();
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const Job job = office->save(sample_job(), at(1)).value();
    send(*office, *tablet, job.id, 2);
    edit(*tablet, job.id, 4, [](Job& j) { j.client.phone = "0555 0177"; });
    edit(*office, job.id, 5, [](Job& j) { j.notes = "kept"; });
    EXPECT_EQ(sql(path(), "UPDATE job_versions SET revision = 1"), "") << "as if revision 2 came without them";
    const Taken back = send(*tablet, *office, job.id, 6);
    EXPECT_EQ(back.job.notes, "kept");
    EXPECT_EQ(back.job.client.phone, "0555 0177");
    // Damaged versions stop no work, and are told.
    EXPECT_EQ(sql(path(), "UPDATE job_versions SET content = " + bytes_literal("0000001061626364")), "");
    EXPECT_NE(office->check().value().find("versions of job"), std::string::npos);
    edit(*office, job.id, 8, [](Job& j) { j.notes = "and goes on"; });
    EXPECT_EQ(office->check().value(), "ok");
}

TEST_P(EachStore, ARefusedSaveIsBroughtTogetherWithWhatWasSavedInBetween) {
    const auto office = open();
    const Job job = office->save(sample_job(), at(1)).value();
    Job mine = job;
    mine.title = "Mine";
    mine.client.phone = "1";
    edit(*office, job.id, 2, [](Job& j) {
        j.title = "Theirs";
        j.notes = "Theirs, too";
    });
    EXPECT_FALSE(office->save(mine, at(3)).ok());
    const auto both = Travel(*office).bring_together(mine);
    ASSERT_TRUE(both.ok()) << text_of(both.problems());
    EXPECT_EQ(both.value().job.client.phone, "1");
    EXPECT_EQ(both.value().job.notes, "Theirs, too");
    ASSERT_EQ(both.value().open.size(), 1U);
    EXPECT_EQ(both.value().open[0].sides.size(), 2U);
    const auto saved = office->save(both.value().job, at(4));
    ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
    EXPECT_EQ(saved.value().revision, 3);
}

TEST_F(StoreTest, ACopiedOrRestoredFileIsAnotherMachine) {
    const std::string job_id = sample_job().id;
    const auto seat_now = [&](Store& store) {
        return Travel(store).parcel_of(job_id, program, at(9)).value().parcel.seat_id;
    };
    std::string first;
    {
        const auto store = open();
        static_cast<void>(store->save(sample_job(), at(1)));
        first = seat_now(*store);
    }
    {
        const auto store = open();
        EXPECT_EQ(seat_now(*store), first) << "the same file opened again is the same machine";
        ASSERT_TRUE(store->backup(file("backup.db")).ok());
    }
    ASSERT_TRUE(QFile::copy(QString::fromStdString(path()), QString::fromStdString(file("copy.db"))));
    EXPECT_NE(seat_now(*open(file("copy.db"))), first);
    ASSERT_TRUE(restore_backup(file("backup.db"), path(), at(10)).ok());
    EXPECT_NE(seat_now(*open()), first);
}

// Written over the store's file by hand, a backup keeps the file's place, number and birth.
TEST_F(StoreTest, EditsAfterABackupWasCopiedOverTheFileReachTheOthers) {
    const std::string job_id = sample_job().id;
    const auto tablet = open(file("tablet.db"));
    {
        const auto office = open();
        static_cast<void>(office->save(sample_job(), at(1)));
        edit(*office, job_id, 2, [](Job& j) { j.client.phone = "1"; });
        ASSERT_TRUE(office->backup(file("backup.db")).ok());
        edit(*office, job_id, 3, [](Job& j) { j.client.phone = "2"; });
        edit(*office, job_id, 4, [](Job& j) { j.client.phone = "3"; });
        send(*office, *tablet, job_id, 5);
    }
    write(path(), bytes_of(file("backup.db")));
    const auto office = open();
    edit(*office, job_id, 7, [](Job& j) { j.notes = "After the backup was put back"; });
    send(*office, *tablet, job_id, 8);
    send(*tablet, *office, job_id, 10);
    for (Store* store : {office.get(), tablet.get()}) {
        const Job job = store->load(job_id).value();
        EXPECT_EQ(job.notes, "After the backup was put back");
        EXPECT_EQ(job.client.phone, "3");
    }
}

TEST_P(EachStore, ACopyOfAStoreGetsASeatOfItsOwn) {
    const std::string job_id = sample_job().id;
    const auto seat_now = [&](Store& store) {
        return Travel(store).parcel_of(job_id, program, at(9)).value().parcel.seat_id;
    };
    const auto office = open();
    static_cast<void>(office->save(sample_job(), at(1)));
    const std::string first = seat_now(*office);
    const auto copy = open(path("copy.db"));
    const auto copied = office->copy_to(*copy);
    ASSERT_TRUE(copied.ok()) << text_of(copied.problems());
    EXPECT_NE(seat_now(*copy), first);
    EXPECT_EQ(seat_now(*office), first);
}

}  // namespace
}  // namespace travel_test
}  // namespace wg::store::test
