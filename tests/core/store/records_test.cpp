// What the store keeps of a job's progress: days of states, next steps, fitted parts, heat of quotes.

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/job/words.h"
#include "core/quantity/sha256.h"
#include "core/store/database.h"
#include "core/store/fitted_parts.h"
#include "core/store/job_list.h"
#include "core/store/migrations.h"
#include "core/store/personal.h"
#include "core/store/quote_book.h"
#include "core/store/state_days.h"
#include "core/store/travel.h"
#include "tests/core/store/store_fixture.h"
#include "tests/tools/sweep.h"

namespace wg::store::test {
namespace records_test {
namespace {

constexpr int day_minutes = 24 * 60;

Job saved(Store& store, Job job, int minute) {
    const Result<Job> done = store.save(job, at(minute));
    EXPECT_TRUE(done.ok()) << (done.ok() ? "" : text_of(done.problems()));
    return done ? done.value() : job;
}

std::string told(Store& store, const std::string& job_id) {
    std::string out;
    for (const StateDay& day : StateDays(store).of(job_id).value()) {
        out.append(out.empty() ? "" : ", ").append(day.from).append(">").append(day.to);
        out.append(" ").append(day.at.substr(0, 10)).append(" ").append(day.by);
    }
    return out;
}

Reading number_of(unsigned n, const char* part, const std::string& serial, const char* day) {
    Reading entry;
    entry.id = id(0x700 + n);
    entry.kind = ReadingKind::serial_number;
    entry.taken_at = std::string(day) + "T10:00:00Z";
    entry.subject = part;
    entry.note = serial;
    return entry;
}

TEST_P(EachStore, TheDayOnWhichAStateWasReachedStays) {
    const auto store = open(path(), "Ada");
    Job job = saved(*store, numbered_job(1), 0);
    job.state = JobState::offered;
    job = saved(*store, job, 2 * day_minutes);
    job.notes = "typed later";
    job = saved(*store, job, 9 * day_minutes);
    EXPECT_EQ(told(*store, job.id), ">planning 2027-06-21 Ada, planning>offered 2027-06-23 Ada");
    const auto steps = [&] {
        JobList list(*store);
        return list.next_steps(list.page({}, 10, 0).value(), {2027, 7, 15}).value();
    };
    EXPECT_EQ(steps().at(0), (NextStepOfJob{NextStep::send_quote, "2027-06-23"})) << "whatever was typed since";
    job.state = JobState::planning;
    job = saved(*store, job, 10 * day_minutes);
    EXPECT_EQ(steps().at(0), (NextStepOfJob{NextStep::plan, "2027-07-01"})) << "planned anew";
    ASSERT_TRUE(store->remove(job.id, at(20 * day_minutes)).ok());
    ASSERT_TRUE(store->restore(job.id).ok());
    EXPECT_EQ(steps().at(0), (NextStepOfJob{NextStep::plan, "2027-07-01"})) << "brought back as it was";
    EXPECT_EQ(store->check().value(), "ok");
    for (const char* sql_text : {"UPDATE job_state_day SET at = '2020-01-01T00:00:00Z'", "DELETE FROM job_state_day"})
        EXPECT_NE(sql(path(), sql_text), "") << "days only grow";
    ASSERT_TRUE(PersonalData(*store).erase({job.id}, "asked by letter", at(30 * day_minutes)).ok());
    EXPECT_EQ(told(*store, job.id), ">closed 2027-07-21 Ada") << "what an erased job was is not told";
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, AStateThatCameInAParcelWasReachedWhereItWasEntered) {
    const auto office = open(path(), "Office");
    const auto tablet = Store::open(file("tablet.db"), at(0), "Tablet").value();
    const auto send = [](Store& from, Store& to, const std::string& job_id, int minute) {
        const auto parcel = Travel(from).parcel_of(job_id, "Warmgable 0.1", at(minute));
        ASSERT_TRUE(parcel.ok());
        const auto taken = Travel(to).take(parcel.value().parcel, at(minute));
        ASSERT_TRUE(taken.ok()) << text_of(taken.problems());
    };
    Job job = saved(*office, numbered_job(1), 0);
    send(*office, *tablet, job.id, day_minutes);
    Job there = tablet->load(job.id).value();
    there.state = JobState::fitted;
    there.record.push_back(number_of(1, "block", "BX-9", "2027-06-24"));
    saved(*tablet, there, 3 * day_minutes);
    send(*tablet, *office, job.id, 8 * day_minutes);
    EXPECT_EQ(told(*office, job.id), ">planning 2027-06-21 Office, planning>fitted 2027-06-24 Tablet");
    JobList list(*office);
    EXPECT_EQ(list.next_steps(list.page({}, 10, 0).value(), {2027, 7, 15}).value().at(0),
              (NextStepOfJob{NextStep::hand_over, "2027-06-24"}));
    EXPECT_EQ(FittedBook(*office).of_item("sample-block-300").value().at(0).part.serial, "BX-9");
    EXPECT_EQ(office->list("bx-9", 10, 0).value().size(), 1U);
    EXPECT_EQ(office->check().value(), "ok");
}

TEST_P(EachStore, WhateverIsDoneTheKeptNextStepIsThatOfTheRules) {
    const auto store = open();
    std::mt19937_64 random(20270621);
    const auto any = [&random](std::size_t of) { return static_cast<unsigned>(random() % of); };
    constexpr unsigned jobs = 6;
    std::vector<std::pair<std::string, std::string>> quotes;  // id, day
    for (unsigned n = 1; n <= jobs; ++n)
        saved(*store, numbered_job(n), 0);
    const int rounds = sweep::cases(240);
    for (int round = 1; round <= rounds; ++round) {
        const std::string job_id = numbered_job(1 + any(jobs)).id;
        const auto n = static_cast<unsigned>(round);
        switch (any(7)) {
            case 0:
            case 1: {
                const auto read = store->load(job_id);
                ASSERT_TRUE(read.ok());
                Job job = read.value();
                job.state = words<JobState>()[any(words<JobState>().size())].value;
                job.notes = std::to_string(round);
                static_cast<void>(store->save(job, at(round * 60)));  // refused while removed
                break;
            }
            case 2: {
                const std::string on = "2027-0" + std::to_string(1 + any(9)) + "-1" + std::to_string(any(9));
                const IssuedQuote quote{
                    id(0x1000 + n), job_id, 1, "Q-" + std::to_string(round), on + "T08:00:00Z", "{}", "", 100, "EUR"};
                ASSERT_TRUE(store->issue_quote(quote).ok());
                quotes.emplace_back(quote.id, on);
                break;
            }
            case 3:
            case 4: {
                if (quotes.empty()) break;
                const auto& [quote_id, on] = quotes[any(quotes.size())];
                QuoteAnswer answer;
                answer.id = id(0x8000 + n);
                answer.quote_id = quote_id;
                answer.answer = static_cast<Answer>(any(3));
                answer.on = on;
                answer.who = "M. Lindholm";
                static_cast<void>(QuoteBook(*store).answer(answer, at(round)));  // refused after an acceptance
                break;
            }
            case 5: {
                std::vector<ServiceDueRow> due(any(4));
                for (std::size_t i = 0; i < due.size(); ++i) {
                    due[i].service_id = "service " + std::to_string(i);
                    due[i].due_on = "2027-0" + std::to_string(1 + any(9)) + "-15";
                }
                ASSERT_TRUE(store->set_services_due(job_id, due).ok());
                break;
            }
            default: ASSERT_TRUE((any(2) == 0 ? store->remove(job_id, at(round)) : store->restore(job_id)).ok()); break;
        }
        if (round % 20 != 0) continue;
        ASSERT_EQ(store->check().value(), "ok") << "after " << round;
        // Every job stands under its step, and under no other.
        JobList list(*store);
        const auto rows = list.page({}, 100, 0).value();
        const auto steps = list.next_steps(rows, {2027, 5, 15}).value();
        for (std::size_t i = 0; i < rows.size(); ++i) {
            for (const NextStep step :
                 {NextStep::survey, NextStep::plan, NextStep::send_quote, NextStep::await_answer,
                  NextStep::after_refusal, NextStep::fit, NextStep::hand_over, NextStep::service, NextStep::nothing}) {
                JobFilter filter;
                filter.steps = {step};
                filter.today = "2027-05-15";
                const auto found = list.page(filter, 100, 0).value();
                const bool there =
                    std::any_of(found.begin(), found.end(), [&](const JobRow& row) { return row.id == rows[i].id; });
                ASSERT_EQ(there, steps[i].step == step) << "after " << round;
            }
        }
    }
}

TEST_P(EachStore, ACheckTellsARowThatDisagrees) {
    const auto store = open();
    Job job = saved(*store, numbered_job(1), 0);
    ASSERT_TRUE(store
                    ->issue_quote({id(0x900), job.id, 1, "Q-1", "2027-06-22T08:00:00Z",
                                   R"({"figures":{"heat_kwh":{"mid":3412.25}}})", "", 1, "EUR"})
                    .ok());
    ASSERT_EQ(store->check().value(), "ok");
    const auto found = [&](const char* words) { return store->check().value().find(words) != std::string::npos; };
    EXPECT_EQ(sql(path(), "UPDATE job SET next_step = 'fit'"), "");
    EXPECT_TRUE(found("what is to be done next on job 2027-0001 is not")) << store->check().value();
    EXPECT_EQ(sql(path(), "UPDATE job SET next_step = 'await_answer', service_due_on = '2027-06-01'"), "");
    EXPECT_TRUE(store->check().value() == "ok") << "only a job in service waits for a service";
    EXPECT_EQ(sql(path(), "UPDATE job SET service_due_on = NULL, next_since = '2027-06-01'"), "");
    EXPECT_TRUE(found("what is to be done next on job"));
    EXPECT_EQ(sql(path(), "UPDATE job SET next_since = '2027-06-22'"), "");
    ASSERT_EQ(store->check().value(), "ok");
    EXPECT_EQ(sql(path(), "UPDATE job SET state = 'visit', next_step = 'survey', next_since = '2027-06-21'"), "");
    EXPECT_TRUE(found("the days of states of job 2027-0001 do not end")) << store->check().value();
    EXPECT_EQ(sql(path(), "UPDATE job SET state = 'planning', next_step = 'await_answer', next_since = '2027-06-22'"),
              "");
    ASSERT_EQ(store->check().value(), "ok");
    EXPECT_NE(sql(path(), "UPDATE quote_heat SET heat_kwh = 1"), "") << "guarded";
    EXPECT_NE(sql(path(), "DELETE FROM quote_heat"), "") << "guarded";
    EXPECT_EQ(sql(path(), dialect_ == Dialect::sqlite ? "DROP TRIGGER quote_heat_no_update"
                                                      : "DROP TRIGGER quote_heat_no_update ON quote_heat"),
              "");
    EXPECT_EQ(sql(path(), "UPDATE quote_heat SET heat_kwh = 3412"), "");
    EXPECT_TRUE(found("the heat kept of quote Q-1 is not that of its plan")) << store->check().value();
}

TEST_P(EachStore, PartsWithTheirNumbersAreFoundOverAllJobs) {
    const auto store = open();
    Job one = numbered_job(1);
    one.record = {number_of(1, "block", "QX77-1001", "2027-06-21"), number_of(2, "collector", "PL-5", "2027-06-21")};
    one.state = JobState::in_service;
    one = saved(*store, one, 0);
    Job two = numbered_job(2);
    two.state = JobState::fitted;
    two.record.clear();
    two = saved(*store, two, 1);
    saved(*store, numbered_job(3), 2);
    FittedBook book(*store);
    auto rows = book.of_item("sample-block-300").value();
    ASSERT_EQ(rows.size(), 2U) << "the planned job has nothing fitted";
    EXPECT_EQ(rows[0].job_number, one.number);
    EXPECT_EQ(rows[0].client, one.client.name);
    EXPECT_EQ(rows[0].part, (FittedPart{id(0x701), "block", "sample-block-300", "QX77-1001", "2027-06-21", ""}));
    EXPECT_EQ(rows[1].part.serial, "") << "fitted, the number was not entered";
    EXPECT_EQ(book.items().value(),
              (std::vector<FittedItem>{{"sample-block-300", 2}, {"sample-cylinder-300", 2}, {"sample-plate-20", 2}}));
    JobList list(*store);
    const auto found = [&list](const std::string& words, const std::string& item = {}) {
        JobFilter filter;
        filter.words = words;
        filter.item_id = item;
        const auto page = list.page(filter, 100, 0);
        EXPECT_TRUE(page.ok()) << (page.ok() ? "" : text_of(page.problems()));
        EXPECT_EQ(list.count(filter).value(), static_cast<int>(page.value().size()));
        std::string out;
        for (const JobRow& row : page.value())
            out += row.number + " ";
        return out;
    };
    EXPECT_EQ(found("qx77-1001"), one.number + " ");
    EXPECT_EQ(found("QX77-10"), one.number + " ") << "a prefix of the number";
    EXPECT_EQ(found("sample plate 20"), two.number + " " + one.number + " ") << "the item's name, as its id has it";
    EXPECT_EQ(found("", "sample-block-300"), two.number + " " + one.number + " ");
    EXPECT_EQ(found("qx77", "sample-block-300"), one.number + " ");
    EXPECT_EQ(found("", "sample-cylinder-200"), "");

    // Another block takes its place, of another make; the one it was stays known as what it was.
    one.record.push_back(number_of(3, "block", "ZZ-1", "2029-03-01"));
    one.choices[0].block_model = "other-block";
    one = saved(*store, one, 3);
    rows = book.of_item("sample-block-300").value();
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].part.replaced_on, "2029-03-01");
    EXPECT_EQ(book.of_item("other-block").value().at(0).part.serial, "ZZ-1");
    EXPECT_EQ(found("", "sample-block-300"), two.number + " ") << "it does not stand there any more";
    one.notes = "and a save later";
    one = saved(*store, one, 4);
    EXPECT_EQ(book.of_item("sample-block-300").value(), rows);

    JobView view;
    view.name = "Recall";
    view.item_id = "sample-block-300";
    ASSERT_TRUE(list.keep_view(view).ok());
    EXPECT_EQ(list.views().value(), std::vector<JobView>{view});
    ASSERT_TRUE(store->remove(two.id, at(5)).ok());
    EXPECT_EQ(book.of_item("sample-block-300").value().size(), 1U);
    EXPECT_EQ(found("", "sample-block-300"), "");
    ASSERT_TRUE(PersonalData(*store).erase({one.id}, "asked by letter", at(6)).ok());
    EXPECT_TRUE(book.items().value().empty());
}

TEST_P(EachStore, HeatIsKeptOfPlansThatForetellOneAndGoesWithItsQuote) {
    const auto store = open();
    const Job job = saved(*store, numbered_job(1), 0);
    const char* const plans[] = {R"({"figures":{"heat_kwh":{"mid":3412.25}}})",
                                 R"({"figures":{"heat_kwh":{"mid":0}}})",
                                 R"({"figures":{"heat_kwh":{"mid":-5}}})",
                                 R"({"figures":{"heat_kwh":{"mid":1e999}}})",
                                 R"({"figures":{"heat_kwh":{"mid":"3412"}}})",
                                 R"({"figures":{"heat_kwh":null}})",
                                 R"({"figures":7})",
                                 "[]",
                                 "no json at all"};
    unsigned n = 0;
    for (const char* plan : plans) {
        const auto issued = store->issue_quote(
            {id(0x900 + n), job.id, 1, "Q-" + std::to_string(n), "2027-06-22T08:00:00Z", plan, "", 1, "EUR"});
        EXPECT_TRUE(issued.ok()) << plan << ": " << (issued.ok() ? "" : text_of(issued.problems()));
        ++n;
    }
    EXPECT_EQ(store->database().value("SELECT count(*) FROM quote_heat").value().toInt(), 2);
    EXPECT_EQ(store->check().value(), "ok");
    ASSERT_TRUE(PersonalData(*store).erase({job.id}, "asked", at(60 * 24 * 366 * 20)).ok());
    EXPECT_EQ(store->database().value("SELECT count(*) FROM quote_issued").value().toInt(), 0);
    EXPECT_EQ(store->database().value("SELECT count(*) FROM quote_heat").value().toInt(), 0);
}

QString sql_text(const std::string& value) {
    return "'" + QString::fromStdString(value).replace("'", "''") + "'";
}

// A store of the version before, whose revisions tell what the days were.
TEST_P(EachStore, AnOlderStoreIsFilledFromItsRevisions) {
    QStringList statements;
    const bool server = dialect_ == Dialect::postgresql;
    if (server)
        statements << "CREATE TABLE store_version (only_row integer PRIMARY KEY DEFAULT 1, application_id integer NOT "
                      "NULL, version integer NOT NULL)";
    const std::vector<Migration>& steps = migrations(dialect_);
    int version = 0;
    for (const Migration& step : steps) {
        if (step.then != nullptr) break;
        version = step.version;
        for (const char* statement : step.statements)
            statements << statement;
    }
    Job job = numbered_job(1);
    struct Revision {
        JobState state;
        const char* at;
        const char* by;
        bool readable;
    };
    const Revision revisions[] = {{JobState::visit, "2026-01-02T10:00:00Z", "Ada", true},
                                  {JobState::planning, "2026-02-02T10:00:00Z", "Bo", true},
                                  {JobState::planning, "2026-03-02T10:00:00Z", "Ada", true},
                                  {JobState::offered, "2026-03-09T10:00:00Z", "Ada", false},
                                  {JobState::in_service, "2026-04-02T10:00:00Z", "Bo", true},
                                  {JobState::in_service, "2026-05-02T10:00:00Z", "Ada", true}};
    job.record = {number_of(1, "block", "OLD-55", "2026-04-01")};
    QStringList contents;
    for (const Revision& one : revisions) {
        job.state = one.state;
        job.changed_at = one.at;
        ++job.revision;
        const std::string json = one.readable ? job_to_json(job) : "damaged";
        contents
            << "INSERT INTO job_revision (job_id, revision, changed_at, content, text_sha256, changed_by) VALUES (" +
                   sql_text(job.id) + ", " + QString::number(job.revision) + ", " + sql_text(one.at) + ", " +
                   sql_text(json) + ", " + sql_text(sha256_hex(json)) + ", " + sql_text(one.by) + ")";
    }
    statements << "INSERT INTO job (id, save_seq, number, title, client, town, state, invented, revision, changed_at, "
                  "content_sha256, base_sha256, base_revision) VALUES (" +
                      sql_text(job.id) + ", 1, 'N-1', 'Title', 'Client', '', 'in_service', 0, 6, " +
                      sql_text(job.changed_at) + ", " + sql_text(content_sha256(job)) + ", '', 0)";
    statements << contents;
    statements
        << "INSERT INTO quote_issued VALUES ('q1', " + sql_text(job.id) +
               ", 1, 'Q-1', '2026-03-10T08:00:00Z', '{\"figures\":{\"heat_kwh\":{\"mid\":2500.5}}}', '', 1, 'EUR')"
        << "INSERT INTO service_due VALUES (" + sql_text(job.id) + ", 'look', '', '2027-06-01', '')"
        << "INSERT INTO service_due VALUES (" + sql_text(job.id) + ", 'anode', '', '2027-05-01', '')";
    statements << (server ? QStringLiteral("INSERT INTO store_version (application_id, version) VALUES (%1, %2)")
                                .arg(application_id)
                                .arg(version)
                          : QStringLiteral("PRAGMA application_id = %1").arg(application_id));
    if (!server) statements << QStringLiteral("PRAGMA user_version = %1").arg(version);
    const std::string place = path();
    for (const QString& statement : statements)
        ASSERT_EQ(sql(place, statement), "") << statement.toStdString();
    const auto store = open(place);
    ASSERT_NE(store, nullptr);
    EXPECT_EQ(told(*store, job.id),
              ">visit 2026-01-02 Ada, visit>planning 2026-02-02 Bo, planning>in_service 2026-04-02 Bo")
        << "a revision that cannot be read tells nothing";
    JobList list(*store);
    const auto rows = list.page({}, 10, 0).value();
    EXPECT_EQ(list.next_steps(rows, {2027, 5, 2}).value().at(0), (NextStepOfJob{NextStep::service, "2027-05-01"}));
    EXPECT_EQ(FittedBook(*store).of_item("sample-block-300").value().at(0).part.serial, "OLD-55");
    EXPECT_EQ(store->list("old-55", 10, 0).value().size(), 1U);
    EXPECT_EQ(store->database().value("SELECT heat_kwh FROM quote_heat").value().toDouble(), 2500.5);
    EXPECT_EQ(store->check().value(), "ok");
}

// A word that very many jobs have is looked for another way; what is found is the same, on every page.
TEST_P(EachStore, AFrequentWordIsSortedAsARareOneIs) {
    // "heat" is in so many jobs that they are walked through, "warm" in many, which are looked up at once on a server,
    // "cool" in few, which are sorted; a page deep in the list is found in yet another way.
    constexpr std::size_t hot = 20'100;
    constexpr std::size_t warm = 2'500;
    constexpr std::size_t cool = 150;
    const auto store = open();
    {
        Transaction transaction(store->database());
        ASSERT_FALSE(transaction.begin().has_value());
        const bool server = dialect_ == Dialect::postgresql;
        ASSERT_FALSE(store->database()
                         .run(QStringLiteral("INSERT INTO job (id, save_seq, number, title, client, town, state, "
                                             "invented, revision, changed_at, content_sha256, base_sha256, "
                                             "base_revision) WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 "
                                             "FROM n WHERE i < %1) SELECT 'job' || i, i, 'N' || i, 'Heat', "
                                             "'Client ' || (i % 37), '', 'visit', 0, 1, '', '', '', 0 FROM n")
                                  .arg(hot))
                         .has_value());
        const QString words = QStringLiteral(
                                  "CASE WHEN save_seq <= %1 THEN 'heat warm cool' WHEN save_seq <= %2 THEN 'heat warm' "
                                  "ELSE 'heat' END")
                                  .arg(cool)
                                  .arg(warm);
        const QString filled =
            server ? QStringLiteral("INSERT INTO job_search (save_seq, words) SELECT save_seq, (%1)::tsvector FROM job")
                   : QStringLiteral("INSERT INTO job_search (rowid, title) SELECT save_seq, %1 FROM job");
        ASSERT_FALSE(store->database().run(filled.arg(words)).has_value());
        ASSERT_FALSE(transaction.commit().has_value());
    }
    JobList list(*store);
    for (const bool backwards : {false, true}) {
        JobFilter all;
        all.order = JobOrder::client;
        all.backwards = backwards;
        const auto plain = list.page(all, 30'000, 0).value();
        ASSERT_EQ(plain.size(), hot);
        for (const auto& [word, count] : {std::pair{"heat", hot}, std::pair{"warm", warm}, std::pair{"cool", cool}}) {
            JobFilter worded = all;
            worded.words = word;
            std::vector<std::string> wanted;
            for (const JobRow& row : plain) {
                if (std::stoul(row.id.substr(3)) <= count) wanted.push_back(row.id);
            }
            const auto found = list.page(worded, 3000, 0).value();
            ASSERT_EQ(found.size(), std::min<std::size_t>(3000, count)) << word;
            for (std::size_t i = 0; i < found.size(); ++i)
                ASSERT_EQ(found[i].id, wanted[i]) << word << ' ' << i;
            const auto last = list.page(worded, 100, static_cast<int>(count) - 50).value();
            ASSERT_EQ(last.size(), 50U) << word;
            for (std::size_t i = 0; i < last.size(); ++i)
                ASSERT_EQ(last[i].id, wanted[count - 50 + i]) << word << ' ' << i;
            EXPECT_EQ(list.count(worded, 30'000).value(), static_cast<int>(count)) << word;
        }
    }
}

}  // namespace
}  // namespace records_test
}  // namespace wg::store::test
