// What a client may ask for: to see what is kept, and to have it gone, but for what the law keeps.

#include "core/store/personal.h"

#include <gtest/gtest.h>

#include <QDir>

#include "core/store/customers.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace personal_test {
namespace {

constexpr const char* family = "Quillfeather";
constexpr const char* reason = "asked by letter";

Instant day(const std::string& date) {
    return instant_from_iso8601(date + "T09:00:00Z").value();
}

/// A job of two revisions with a photograph of its own, one that another job names too, something due and something not
/// saved.
Job keep_job_of_the_family(Store& store) {
    std::string own(60000, 'o');
    own.replace(0, 3, "\xFF\xD8\xFF");
    std::string shared(60000, 's');
    shared.replace(0, 3, "\xFF\xD8\xFF");
    Photograph one;
    one.id = id(0xA01);
    one.sha256 = store.add_photograph(own, at(1)).value();
    one.file_name = "roof.jpg";
    Photograph two = one;
    two.id = id(0xA02);
    two.sha256 = store.add_photograph(shared, at(1)).value();
    Job job = numbered_job(1);
    job.client.name = std::string("Ines ") + family;
    job.client.email = "ines@quillfeather.example";
    job.client.phone = "0555 0101 22";
    job.photographs = {one, two};
    job = store.save(job, at(2)).value();
    job.notes = std::string("Mrs ") + family + " has the key";
    job = store.save(job, at(3)).value();
    Job other = numbered_job(2);
    other.photographs = {two};
    static_cast<void>(store.save(other, at(4)).value());
    Job typed = job;
    typed.notes += ", typed";
    EXPECT_TRUE(store.keep_unsaved(typed, at(5)).ok());
    ServiceDueRow due;
    due.service_id = "look";
    due.due_on = "2028-06-01";
    EXPECT_TRUE(store.set_services_due(job.id, {due}).ok());
    RefrigerantEntry entry;
    entry.id = id(0x601);
    entry.on = "2027-06-21";
    entry.refrigerant = "R134a";
    entry.kg = 0.9;
    entry.job_id = job.id;
    entry.reading_id = id(0x602);
    EXPECT_TRUE(store.add_refrigerant_entry(entry, at(6)).ok());
    return job;
}

void issue(Store& store, const Job& job, unsigned n, std::int64_t revision, const std::string& on) {
    const auto issued = store.issue_quote({id(0xB00 + n), job.id, revision, "Q-" + std::to_string(n), on + "T08:00:00Z",
                                           R"({"client":"Quillfeather"})", "", 100, "EUR"});
    ASSERT_TRUE(issued.ok()) << text_of(issued.problems());
}

TEST_P(EachStore, AClientIsFoundByWhatTheyGaveWhateverTheCase) {
    const auto store = open();
    const Job job = keep_job_of_the_family(*store);
    ASSERT_TRUE(store->remove(job.id, at(8)).ok());
    const PersonalData data(*store);
    for (const char* words : {"quillFEATHER ines", "ines@quill", "0555 0101"}) {
        const auto found = data.find(words, at(9));
        ASSERT_TRUE(found.ok()) << text_of(found.problems());
        ASSERT_EQ(found.value().size(), 1U) << words;
        EXPECT_EQ(found.value()[0].job_id, job.id);
        EXPECT_TRUE(found.value()[0].removed);
        EXPECT_EQ(found.value()[0].street, job.client.street);
    }
    EXPECT_TRUE(data.find("nobody of that name", at(9)).value().empty());
    EXPECT_FALSE(data.find("  ", at(9)).ok());
}

TEST_P(EachStore, AllThatIsKeptOfAClientCanBeHandedOut) {
    const auto store = open();
    const Job job = keep_job_of_the_family(*store);
    issue(*store, job, 1, 2, "2027-06-22");
    const PersonalData data(*store);
    const auto out = data.export_to({job.id}, file("handed"));
    ASSERT_TRUE(out.ok()) << text_of(out.problems());
    EXPECT_EQ(out.value().jobs, 1);
    EXPECT_EQ(out.value().revisions, 2);
    EXPECT_EQ(out.value().quotes, 1);
    EXPECT_EQ(out.value().photographs, 2);
    EXPECT_TRUE(out.value().missing.empty());
    const QDir history(QString::fromStdString(file("handed/history")));
    ASSERT_EQ(history.entryList(QDir::Files).size(), 2);
    const auto again = job_from_json(
        bytes_of(history.filePath(history.entryList(QDir::Files, QDir::Name).last()).toStdString()).toStdString(), "x");
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(again.value().notes, job.notes);
    EXPECT_NE(text_of(data.export_to({job.id}, file("handed")).problems()).find("is not empty"), std::string::npos);
}

TEST_P(EachStore, WhatIsErasedIsGoneAndTheRestIsWhole) {
    std::string others_before;
    {
        const auto store = open();
        const Job job = keep_job_of_the_family(*store);
        others_before = job_to_json(store->load(numbered_job(2).id).value());
        PersonalData data(*store);
        EXPECT_FALSE(data.erase({job.id}, "  ", at(10)).ok());
        EXPECT_FALSE(data.erase({job.id, id(0xFFF)}, reason, at(10)).ok()) << "all or none";
        EXPECT_EQ(store->load(job.id).value().client.name, job.client.name);

        const auto erased = data.erase({job.id, job.id}, reason, at(10));
        ASSERT_TRUE(erased.ok()) << text_of(erased.problems());
        EXPECT_EQ(erased.value().jobs, 1);
        EXPECT_EQ(erased.value().revisions, 2);
        EXPECT_EQ(erased.value().photographs, 1) << "the other job's photograph stays";
        EXPECT_EQ(store->check().value(), "ok");
        EXPECT_TRUE(data.find(family, at(11)).value().empty());
        EXPECT_TRUE(store->list(family, 10, 0).value().empty());
        EXPECT_EQ(store->history(job.id).value().size(), 1U);
        const Job bare = store->load(job.id).value();
        EXPECT_EQ(bare.number, job.number);
        EXPECT_TRUE(bare.client.name.empty());
        EXPECT_EQ(bare.revision, job.revision + 1);
        EXPECT_FALSE(store->has_photograph(job.photographs[0].sha256).value());
        EXPECT_TRUE(store->has_photograph(job.photographs[1].sha256).value());
        EXPECT_TRUE(store->services_due("").value().empty());
        EXPECT_FALSE(store->unsaved(job.id).value().has_value());
        ASSERT_EQ(store->refrigerant_entries().value().size(), 1U) << "the register is kept by law";
        EXPECT_EQ(store->refrigerant_entries().value()[0].job_id, job.id);
        const auto log = data.erasures().value();
        ASSERT_EQ(log.size(), 1U);
        EXPECT_EQ(log[0].number, job.number);
        EXPECT_EQ(log[0].reason, reason);
        EXPECT_EQ(log[0].erased_at, iso8601(at(10)));
        EXPECT_EQ(log[0].kept_until, "");
        EXPECT_EQ(job_to_json(store->load(numbered_job(2).id).value()), others_before);
        EXPECT_NE(store->next_job_number(2027).value(), job.number) << "a number is not given twice";
    }
    if (dialect_ == Dialect::sqlite) {
        for (const QString& name : files())
            EXPECT_FALSE(bytes_of(file(name.toUtf8().constData())).toLower().contains("quillfeather"))
                << name.toStdString() << " still holds the name";
    }
}

TEST_P(EachStore, QuotesStayForTheirYearsAndGoWhenTheseAreOver) {
    const auto store = open();
    const Job job = keep_job_of_the_family(*store);
    issue(*store, job, 1, 1, "2020-02-29");
    issue(*store, job, 2, 2, "2027-06-22");
    PersonalData data(*store);
    EXPECT_EQ(data.years_kept().value(), 10);
    EXPECT_FALSE(data.set_years_kept(-1).ok());
    ASSERT_TRUE(data.set_years_kept(6).ok());
    EXPECT_EQ(data.find(family, day("2027-07-01")).value()[0].quotes_kept_until, "2033-06-22");

    const auto erased = data.erase({job.id}, reason, day("2027-07-01"));
    ASSERT_TRUE(erased.ok()) << text_of(erased.problems());
    EXPECT_EQ(erased.value().quotes, 1);
    EXPECT_EQ(erased.value().quotes_kept, 1);
    ASSERT_EQ(store->quotes(job.id).value().size(), 1U);
    EXPECT_EQ(store->quotes(job.id).value()[0].number, "Q-2");
    EXPECT_TRUE(store->load_revision(job.id, 2).value().client.name.empty()) << "its revision is a bare row";
    EXPECT_EQ(data.erasures().value().back().kept_until, "2033-06-22");

    EXPECT_EQ(data.erase_what_is_over(day("2033-06-21")).value().quotes, 0);
    const auto over = data.erase_what_is_over(day("2033-06-22"));
    ASSERT_TRUE(over.ok()) << text_of(over.problems());
    EXPECT_EQ(over.value().quotes, 1);
    EXPECT_TRUE(store->quotes(job.id).value().empty());
    EXPECT_EQ(data.erasures().value().size(), 2U);
    EXPECT_EQ(data.erase_what_is_over(day("2040-01-01")).value().jobs, 0);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, TheGuardsStandAgainAfterwardsAndTheLogOnlyGrows) {
    const auto store = open();
    const Job job = keep_job_of_the_family(*store);
    issue(*store, job, 1, 2, "2027-06-22");
    PersonalData data(*store);
    ASSERT_TRUE(data.erase({job.id}, reason, at(10)).ok());
    EXPECT_EQ(sql(path(), "UPDATE job_revision SET content = 'x'"), "an earlier content of a job is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM job_revision"), "an earlier content of a job is never deleted");
    EXPECT_EQ(sql(path(), "DELETE FROM quote_issued"), "an issued quote is never deleted");
    EXPECT_EQ(sql(path(), "UPDATE erasure SET reason = ''"), "what was erased, when and why is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM erasure"), "what was erased, when and why is never deleted");
}

TEST_P(EachStore, TheCustomerGoesWithTheJobsAndOnlyTheNumberStays) {
    {
        const auto store = open();
        const Job job = keep_job_of_the_family(*store);
        CustomerBook book(*store);
        customers::Customer family_kept = CustomerBook::of_client(job.client);
        family_kept.notes = "Quillfeather junior has the key";
        family_kept.contacts.push_back({"Otto Quillfeather", "son", "", ""});
        family_kept = book.save(family_kept, at(6)).value();
        ASSERT_TRUE(book.link(job.id, family_kept.id).ok());
        customers::Customer other;
        other.name = "Works Ltd";
        other = book.save(other, at(6)).value();
        ASSERT_TRUE(book.link(numbered_job(2).id, other.id).ok());
        customers::Customer alone = family_kept;
        alone.id.clear();
        alone.number.clear();
        alone.revision = 0;
        alone = book.save(alone, at(7)).value();
        PersonalData data(*store);
        const auto handed = data.export_to({job.id}, file("handed"), {alone.id});
        ASSERT_TRUE(handed.ok()) << text_of(handed.problems());
        EXPECT_EQ(handed.value().customers, 2);
        EXPECT_EQ(bytes_of(file("handed/customers.csv")).count("Otto Quillfeather"), 2);
        EXPECT_FALSE(bytes_of(file("handed/customers.csv")).contains("Works Ltd"));
        ASSERT_TRUE(QDir(QString::fromStdString(file("handed"))).removeRecursively());

        const auto packed = data.export_as_file({{job.id}, {alone.id}});
        ASSERT_TRUE(packed.ok()) << text_of(packed.problems());
        EXPECT_EQ(packed.value().substr(0, 4), "PK\x03\x04");
        for (const char* entry : {"customers.csv", "jobs/", "history/", "photographs/"})
            EXPECT_NE(packed.value().find(entry), std::string::npos) << entry;
        const auto named = data.named({family_kept.number, alone.number});
        ASSERT_TRUE(named.ok()) << text_of(named.problems());
        EXPECT_EQ(named.value().job_ids, std::vector{job.id});
        EXPECT_EQ(named.value().customer_ids, (std::vector{family_kept.id, alone.id}));
        EXPECT_FALSE(data.named({"C-9999"}).ok());
        EXPECT_NE(text_of(data.erase({}, reason, at(8), {family_kept.id}).problems()).find("has jobs that are not"),
                  std::string::npos);
        const auto erased = data.erase({job.id}, reason, at(10), {alone.id});
        ASSERT_TRUE(erased.ok()) << text_of(erased.problems());
        EXPECT_EQ(erased.value().customers, 2);
        EXPECT_EQ(book.count("").value(), 1);
        EXPECT_EQ(book.count(family).value(), 0);
        EXPECT_EQ(book.next_number().value(), "C-0004");
        customers::Customer again;
        again.name = "Someone else";
        again.number = family_kept.number;
        EXPECT_NE(text_of(book.save(again, at(11)).problems()).find("whose data were erased"), std::string::npos);
        EXPECT_EQ(store->check().value(), "ok");
        EXPECT_EQ(sql(path(), "UPDATE customer_erasure SET reason = ''"),
                  "which customer was erased, when and why is never changed");
        EXPECT_EQ(sql(path(), "DELETE FROM customer_erasure"),
                  "which customer was erased, when and why is never deleted");
    }
    if (dialect_ == Dialect::sqlite) {
        for (const QString& name : files())
            EXPECT_FALSE(bytes_of(file(name.toUtf8().constData())).toLower().contains("quillfeather"))
                << name.toStdString() << " still holds the name";
    }
}

}  // namespace
}  // namespace personal_test
}  // namespace wg::store::test
