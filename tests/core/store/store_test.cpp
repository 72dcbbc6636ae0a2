#include "core/store/store.h"

#include <gtest/gtest.h>

#include <QStringList>

#include "core/quantity/sha256.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace store_test {

bool mentions(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

template <class T>
std::string why(const Result<T>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

// ------------------------------------------------------------------------------------ saving and reading

TEST_P(EachStore, ASavedJobIsReadBackEqual) {
    const auto store = open();
    const Result<Job> saved = store->save(sample_job(), at(1));
    ASSERT_TRUE(saved.ok()) << why(saved);
    EXPECT_EQ(saved.value().revision, 1);
    EXPECT_EQ(saved.value().changed_at, "2027-06-21T12:01:00Z");
    EXPECT_EQ(store->load(sample_job().id).value(), saved.value());
    Job expected = sample_job();
    expected.revision = 1;
    expected.changed_at = "2027-06-21T12:01:00Z";
    EXPECT_EQ(saved.value(), expected);
}

TEST_P(EachStore, AJobOutlivesTheProgram) {
    Job saved;
    saved = open()->save(sample_job(), at(1)).value();
    EXPECT_EQ(open()->load(saved.id).value(), saved);
}

TEST_P(EachStore, FieldsOfANewerProgramAreStored) {
    const auto store = open(":memory:");
    Job job = sample_job();
    job.site.surfaces[0].extra_json = R"({"snow_guard":true})";
    ASSERT_TRUE(store->save(job, at(1)).ok());
    EXPECT_EQ(store->load(job.id).value().site.surfaces[0].extra_json, R"({"snow_guard":true})");
}

TEST_P(EachStore, ARevisionIsMadeOnlyWhenTheContentChanged) {
    const auto store = open(":memory:");
    Job job = store->save(sample_job(), at(1)).value();
    const Job again = store->save(job, at(2)).value();
    EXPECT_EQ(again, job);
    job.notes += " Rang back.";
    const Job changed = store->save(job, at(3)).value();
    EXPECT_EQ(changed.revision, 2);
    EXPECT_EQ(changed.changed_at, "2027-06-21T12:03:00Z");
    Job travelled = changed;
    travelled.base_sha256 = content_sha256(changed);
    travelled.base_revision = 2;
    EXPECT_EQ(store->save(travelled, at(4)).value().revision, 3);
    EXPECT_EQ(store->load(job.id).value().base_revision, 2);
}

TEST_P(EachStore, HistoryKeepsEveryContent) {
    const auto store = open(":memory:");
    Job job = sample_job();
    std::vector<Job> saved;
    for (int i = 0; i < 5; ++i) {
        job.title = "Title " + std::to_string(i);
        job = store->save(job, at(i)).value();
        saved.push_back(job);
    }
    const auto history = store->history(job.id);
    ASSERT_TRUE(history.ok()) << why(history);
    ASSERT_EQ(history.value().size(), 5U);
    EXPECT_EQ(history.value().front(), (std::pair<std::int64_t, std::string>{5, "2027-06-21T12:04:00Z"}));
    EXPECT_EQ(history.value().back().first, 1);
    for (const Job& earlier : saved)
        EXPECT_EQ(store->load_revision(job.id, earlier.revision).value(), earlier);
    EXPECT_FALSE(store->load_revision(job.id, 6).ok());
    EXPECT_FALSE(store->history(id(5)).ok());
}

TEST_P(EachStore, AnInvalidJobIsRefusedAndNothingIsStored) {
    const auto store = open(":memory:");
    Job job = sample_job();
    job.demand.set_point_c = 90.0;
    job.site.surfaces[0].outline = {{0, 0}, {4, 6}, {4, 0}, {0, 6}};
    const Result<Job> saved = store->save(job, at(1));
    ASSERT_FALSE(saved.ok());
    EXPECT_EQ(saved.problems().size(), 2U);
    EXPECT_EQ(store->count("").value(), 0);
    EXPECT_FALSE(store->load(job.id).ok());
}

TEST_F(StoreTest, AJobTooLargeToBeReadAgainIsNotStored) {
    const auto store = open(":memory:");
    Job job = sample_job();
    const std::string long_text(65536, 'x');
    for (unsigned i = 0; i < 1100; ++i) {
        Photograph photograph;
        photograph.id = id(0x2000 + i);
        photograph.sha256 = std::string(64, 'c');
        photograph.file_name = "p.jpg";
        photograph.caption = long_text;
        job.photographs.push_back(photograph);
    }
    EXPECT_EQ(text_of(validate(job)), "");
    const Result<Job> saved = store->save(job, at(1));
    ASSERT_FALSE(saved.ok());
    EXPECT_TRUE(mentions(why(saved), "at most 67108864 are read")) << why(saved);
    EXPECT_EQ(store->count("").value(), 0);
}

TEST_P(EachStore, SavingOverSomebodyElsesSaveNamesBothRevisionsAndTheTime) {
    const auto office = open();
    const auto van = open();
    const Job start = office->save(sample_job(), at(1)).value();
    Job mine = van->load(start.id).value();
    Job theirs = start;
    theirs.notes = "office";
    ASSERT_TRUE(office->save(theirs, at(7)).ok());
    mine.notes = "van";
    const Result<Job> refused = van->save(mine, at(8));
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(mentions(why(refused), "was read at revision 1, but revision 2 was saved at 2027-06-21 12:07 UTC"))
        << why(refused);
    EXPECT_EQ(van->load(start.id).value().notes, "office");
}

TEST_P(EachStore, ARefusedSaveSaysWhoSavedInBetween) {
    const auto office = open(path(), "Ada Reed on desk-2");
    const auto van = open(path(), "Bo on van");
    const Job start = van->save(sample_job(), at(1)).value();
    Job theirs = start;
    theirs.notes = "office";
    ASSERT_TRUE(office->save(theirs, at(7)).ok());
    Job mine = start;
    mine.notes = "van";
    const Result<Job> refused = van->save(mine, at(8));
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(mentions(why(refused), "but revision 2 was saved by Ada Reed on desk-2 at 2027-06-21 12:07 UTC"))
        << why(refused);
}

TEST_P(EachStore, ASaveWhoseAnswerWasLostCountsWhenItIsMadeAgain) {
    const auto store = open();
    Job job = store->save(sample_job(), at(1)).value();
    job.notes = "said once";
    const Job saved = store->save(job, at(2)).value();
    const Result<Job> again = store->save(job, at(3));
    ASSERT_TRUE(again.ok()) << why(again);
    EXPECT_EQ(again.value(), saved);
    EXPECT_EQ(store->history(job.id).value().size(), 2U);
    job.notes = "something else";
    EXPECT_FALSE(store->save(job, at(4)).ok()) << "an older copy that says something else";
}

TEST_P(EachStore, AJobThatComesFromElsewhereKeepsCounting) {
    const auto store = open(":memory:");
    Job job = sample_job();
    job.revision = 7;
    EXPECT_EQ(store->save(job, at(1)).value().revision, 8);
}

TEST_P(EachStore, TwoJobsNeverShareANumber) {
    const auto store = open(":memory:");
    ASSERT_TRUE(store->save(numbered_job(1), at(1)).ok());
    Job other = numbered_job(2);
    other.number = "2027-0001";
    const Result<Job> refused = store->save(other, at(2));
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(mentions(why(refused), "the number is taken by 'Job 1' for 'Ada Lindholm'")) << why(refused);
    for (const unsigned n : {3U, 4U}) {
        Job unnumbered = numbered_job(n);
        unnumbered.number.clear();
        EXPECT_TRUE(store->save(unnumbered, at(3)).ok());
    }
}

TEST_P(EachStore, ARemovedJobLeavesTheListAndComesBack) {
    const auto store = open(":memory:");
    const Job job = store->save(sample_job(), at(1)).value();
    ASSERT_TRUE(store->remove(job.id, at(2)).ok());
    ASSERT_TRUE(store->remove(job.id, at(3)).ok());
    EXPECT_EQ(store->count("").value(), 0);
    EXPECT_EQ(store->count("lindholm").value(), 0);
    EXPECT_TRUE(store->list("", 10, 0).value().empty());
    EXPECT_EQ(store->load(job.id).value(), job);
    Job changed = job;
    changed.notes = "x";
    EXPECT_TRUE(mentions(why(store->save(changed, at(4))), "was removed at 2027-06-21T12:02:00Z"));
    ASSERT_TRUE(store->restore(job.id).ok());
    ASSERT_TRUE(store->restore(job.id).ok());
    EXPECT_EQ(store->count("lindholm").value(), 1);
    EXPECT_EQ(store->list("", 10, 0).value().size(), 1U);
    EXPECT_TRUE(store->save(changed, at(5)).ok());
    EXPECT_FALSE(store->remove(id(9), at(6)).ok());
    EXPECT_FALSE(store->restore(id(9)).ok());
}

// ------------------------------------------------------------------------------------ list and search

TEST_P(EachStore, TheListShowsTheLastSavedFirstInPages) {
    const auto store = open(":memory:");
    for (unsigned n = 1; n <= 5; ++n)
        ASSERT_TRUE(store->save(numbered_job(n), at(0)).ok());
    Job second = store->load(numbered_job(2).id).value();
    second.state = JobState::in_service;
    ASSERT_TRUE(store->save(second, at(0)).ok());
    std::vector<std::string> numbers;
    for (int offset = 0; offset < 6; offset += 2) {
        for (const JobRow& row : store->list("", 2, offset).value())
            numbers.push_back(row.number);
    }
    EXPECT_EQ(numbers, (std::vector<std::string>{"2027-0002", "2027-0005", "2027-0004", "2027-0003", "2027-0001"}));
    const JobRow row = store->list("", 1, 0).value().front();
    EXPECT_EQ(row.id, second.id);
    EXPECT_EQ(row.title, "Job 2");
    EXPECT_EQ(row.client, "Ada Lindholm");
    EXPECT_EQ(row.town, "Västerby");
    EXPECT_EQ(row.state, JobState::in_service);
    EXPECT_EQ(row.revision, 2);
    EXPECT_TRUE(row.invented);
    EXPECT_TRUE(store->list("", 0, 0).value().empty());
    EXPECT_FALSE(store->list("", -1, 0).ok());
    EXPECT_FALSE(store->list("", 1, -1).ok());
}

TEST_P(EachStore, SearchFindsEveryWordByItsBeginningInAnyField) {
    const auto store = open(":memory:");
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    Job other = numbered_job(7);
    other.client.name = "Bo Marsh";
    other.client.town = "Eastport";
    other.notes = "Slate roof, steep";
    ASSERT_TRUE(store->save(other, at(2)).ok());
    const auto found = [&store](const std::string& query) {
        const Result<std::vector<JobRow>> rows = store->list(query, 10, 0);
        EXPECT_TRUE(rows.ok()) << query << ": " << why(rows);
        EXPECT_EQ(store->count(query).value(), static_cast<int>(rows.value().size())) << query;
        std::string numbers;
        for (const JobRow& row : rows.value())
            numbers += row.number + ' ';
        return numbers;
    };
    const std::string sample = "2027-0042 ";
    const std::string marsh = "2027-0007 ";
    EXPECT_EQ(found("lind"), sample);
    EXPECT_EQ(found("LINDHOLM ada"), sample);
    EXPECT_EQ(found("vaster"), sample);
    EXPECT_EQ(found("2027-0042"), sample);
    EXPECT_EQ(found("2027-00"), marsh + sample);
    EXPECT_EQ(found("neighb"), sample);
    EXPECT_EQ(found("s"), marsh);
    EXPECT_EQ(found("marsh slate east"), marsh);
    EXPECT_EQ(found("marsh lindholm"), "");
    EXPECT_EQ(found("indholm"), "");
    EXPECT_EQ(found("   "), marsh + sample);
}

TEST_P(EachStore, SearchTakesAnyTextAsPlainWords) {
    const auto store = open(":memory:");
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    for (const std::string query :
         {"\"", "\"\"\"", "*", "-", "NOT", "lindholm OR", "title:hot", "NEAR(a b)", "{title} : x",
          "'; DROP TABLE job; --", "^lind", "a AND", "(", "\\", "%", "\xff\xfe", "\xF0\x9F\x8F\xA0", "x\ty\nz"}) {
        EXPECT_TRUE(store->list(query, 10, 0).ok()) << query << why(store->list(query, 10, 0));
        EXPECT_TRUE(store->count(query).ok()) << query;
    }
    EXPECT_EQ(store->count("- lindholm \"").value(), 1);
    EXPECT_TRUE(store->list(std::string("lind\0holm", 9), 10, 0).ok());
    std::string many;
    for (int i = 0; i < 33; ++i)
        many += "a ";
    EXPECT_TRUE(mentions(why(store->list(many, 10, 0)), "holds 33 words"));
}

TEST_P(EachStore, SearchForgetsWhatAJobNoLongerSays) {
    const auto store = open(":memory:");
    Job job = store->save(sample_job(), at(1)).value();
    job.title = "Something else";
    ASSERT_TRUE(store->save(job, at(2)).ok());
    EXPECT_EQ(store->count("water").value(), 0);
    EXPECT_EQ(store->count("something").value(), 1);
}

TEST_P(EachStore, TheNextNumberFollowsTheHighestOfTheYear) {
    const auto store = open(":memory:");
    EXPECT_EQ(store->next_job_number(2027).value(), "2027-0001");
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    EXPECT_EQ(store->next_job_number(2027).value(), "2027-0043");
    EXPECT_EQ(store->next_job_number(2028).value(), "2028-0001");
    unsigned n = 500;
    for (const char* number : {"2027-x", "2027-99999999999999", "2027-0050b", "20270-9999", "2027-10000"}) {
        Job job = numbered_job(n++);
        job.number = number;
        ASSERT_TRUE(store->save(job, at(2)).ok());
    }
    EXPECT_EQ(store->next_job_number(2027).value(), "2027-10001");
    ASSERT_TRUE(store->remove(numbered_job(504).id, at(3)).ok());
    EXPECT_EQ(store->next_job_number(2027).value(), "2027-10001") << "a removed job keeps its number";
    EXPECT_FALSE(store->next_job_number(27).ok());
}

// ------------------------------------------------------------------------------------ quotes and settings

IssuedQuote sample_quote(const Job& job) {
    return {id(0x900), job.id, job.revision, "Q-2027-0042-1", "2027-06-22T08:00:00Z", "{\"price\":1}",
            "",        123450, "EUR"};
}

TEST_P(EachStore, AnIssuedQuoteIsReadBackWithTheHashOfItsPlan) {
    const auto store = open(":memory:");
    const Job job = store->save(sample_job(), at(1)).value();
    IssuedQuote quote = sample_quote(job);
    quote.plan_json = "{\"note\": \"V\xC3\xA4sterby\",\n \"sum\": 1}\n";
    const Result<IssuedQuote> issued = store->issue_quote(quote);
    ASSERT_TRUE(issued.ok()) << why(issued);
    const auto quotes = store->quotes(job.id);
    ASSERT_TRUE(quotes.ok()) << why(quotes);
    ASSERT_EQ(quotes.value().size(), 1U);
    EXPECT_EQ(quotes.value()[0].plan_json, quote.plan_json);
    EXPECT_EQ(quotes.value()[0].sha256, sha256_hex(quote.plan_json));
    EXPECT_EQ(quotes.value()[0].gross_minor, 123450);
    EXPECT_EQ(quotes.value()[0].number, "Q-2027-0042-1");
    EXPECT_TRUE(store->quotes(id(3)).value().empty());
}

TEST_P(EachStore, QuotesThatCannotStandAreRefused) {
    const auto store = open(":memory:");
    const Job job = store->save(sample_job(), at(1)).value();
    const IssuedQuote good = sample_quote(job);
    const auto refused = [&store](IssuedQuote quote, const std::string& words) {
        const Result<IssuedQuote> issued = store->issue_quote(quote);
        EXPECT_TRUE(mentions(why(issued), words)) << why(issued);
    };
    IssuedQuote bad = good;
    bad.job_revision = 2;
    refused(bad, "revision 2 of its job is not in the database");
    bad = good;
    bad.sha256 = std::string(64, '0');
    refused(bad, "the hash is not that of its plan");
    bad = good;
    bad.plan_json = "\xEF\xBB\xBF{}";
    refused(bad, "begins with a byte order mark");
    bad = good;
    bad.id = "1";
    bad.number = "";
    bad.issued_at = "today";
    bad.plan_json = "";
    bad.currency = "eur";
    EXPECT_EQ(store->issue_quote(bad).problems().size(), 5U);
    ASSERT_TRUE(store->issue_quote(good).ok());
    refused(good, "was issued already");
    bad = good;
    bad.id = id(0x901);
    refused(bad, "was issued already");
    EXPECT_EQ(store->quotes(job.id).value().size(), 1U);
}

TEST_P(EachStore, HistoryAndQuotesCannotBeChangedEvenBySql) {
    Job job;
    {
        const auto store = open();
        job = store->save(sample_job(), at(1)).value();
        ASSERT_TRUE(store->issue_quote(sample_quote(job)).ok());
    }
    EXPECT_EQ(sql(path(), "UPDATE job_revision SET content = '{}'"), "an earlier content of a job is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM job_revision"), "an earlier content of a job is never deleted");
    EXPECT_EQ(sql(path(), "UPDATE quote_issued SET gross_minor = 1"), "an issued quote is never changed");
    EXPECT_EQ(sql(path(), "DELETE FROM quote_issued"), "an issued quote is never deleted");
    if (dialect_ == Dialect::postgresql) {
        EXPECT_EQ(sql(path(),
                      "INSERT INTO quote_issued SELECT * FROM quote_issued "
                      "ON CONFLICT (id) DO UPDATE SET gross_minor = 1"),
                  "an issued quote is never changed");
        EXPECT_EQ(sql(path(), "TRUNCATE quote_issued CASCADE"), "an issued quote is never deleted");
        EXPECT_EQ(sql(path(), "TRUNCATE job_revision CASCADE"), "an earlier content of a job is never deleted");
    } else {
        EXPECT_EQ(sql(path(),
                      "INSERT OR REPLACE INTO quote_issued SELECT id, job_id, job_revision, number, issued_at, "
                      "plan_json, sha256, 1, currency FROM quote_issued"),
                  "an issued quote is never replaced");
        EXPECT_EQ(sql(path(),
                      "REPLACE INTO job_revision SELECT job_id, revision, changed_at, '{}', '', '' FROM job_revision"),
                  "an earlier content of a job is never replaced");
    }
    EXPECT_EQ(open()->quotes(job.id).value()[0].gross_minor, 123450);
}

TEST_P(EachStore, SettingsFallBackUntilTheyAreSet) {
    {
        const auto store = open();
        EXPECT_EQ(store->setting("firm.name", "Your firm").value(), "Your firm");
        ASSERT_TRUE(store->set_setting("firm.name", "Alder & Sons \xE2\x80\x93 heating").ok());
        ASSERT_TRUE(store->set_setting("firm.line2", "").ok());
        EXPECT_FALSE(store->set_setting("", "x").ok());
        EXPECT_FALSE(store->set_setting("x", "\xff").ok());
    }
    const auto store = open();
    EXPECT_EQ(store->setting("firm.name", "").value(), "Alder & Sons \xE2\x80\x93 heating");
    EXPECT_EQ(store->setting("firm.line2", "fallback").value(), "");
}

}  // namespace store_test
}  // namespace wg::store::test
