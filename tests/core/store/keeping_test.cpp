// A backup a day and which stay; a backup put in the store's place; everything written out as files.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QLockFile>
#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "core/store/export.h"
#include "core/store/keeping.h"
#include "core/store/migrations.h"
#include "core/store/restore.h"
#include "core/weather/read.h"
#include "tests/core/store/filled_store.h"
#include "tests/core/store/script.h"
#include "tests/core/store/some_prices.h"
#include "tests/core/store/some_rules.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace keeping_test {
namespace {

CivilDate day(const char* text) {
    return date_from_iso8601(text).value();
}

std::vector<KeptBackup> every_day(const char* first, int days, std::int64_t bytes = 1) {
    std::vector<KeptBackup> out;
    for (int i = 0; i < days; ++i)
        out.push_back({iso8601(civil_from_days(days_from_civil(day(first)) + i)), bytes});
    return out;
}

std::vector<std::string> left(std::vector<KeptBackup> kept, CivilDate today, const Keeping& keeping = {}) {
    const std::vector<std::string> gone = superseded(kept, today, keeping);
    std::vector<std::string> out;
    for (const KeptBackup& backup : kept)
        if (std::find(gone.begin(), gone.end(), backup.day) == gone.end()) out.push_back(backup.day);
    return out;
}

template <class T>
std::string words(const Result<T>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

// ------------------------------------------------------------------------------------ which stay

TEST(Keeping, SevenDaysFiveWeeksAndTwelveMonthsStay) {
    // 2027-06-16 is a Wednesday; the calendar says which days end a week and a month.
    const std::vector<std::string> expected = {
        "2026-07-31", "2026-08-31", "2026-09-30", "2026-10-31", "2026-11-30", "2026-12-31", "2027-01-31",
        "2027-02-28", "2027-03-31", "2027-04-30", "2027-05-23", "2027-05-30", "2027-05-31", "2027-06-06",
        "2027-06-10", "2027-06-11", "2027-06-12", "2027-06-13", "2027-06-14", "2027-06-15", "2027-06-16"};
    EXPECT_EQ(left(every_day("2026-01-01", 532), day("2027-06-16")), expected);
}

TEST(Keeping, KeepingDayByDayComesToTheSameAsKeepingAtOnce) {
    std::vector<KeptBackup> kept;
    const std::vector<KeptBackup> all = every_day("2026-01-01", 532);
    for (const KeptBackup& made : all) {
        kept.push_back(made);
        const std::vector<std::string> gone = superseded(kept, day(made.day.c_str()));
        EXPECT_LE(gone.size(), 3U) << made.day;
        std::erase_if(kept, [&gone](const KeptBackup& backup) {
            return std::find(gone.begin(), gone.end(), backup.day) != gone.end();
        });
        EXPECT_LE(kept.size(), 24U);
    }
    std::vector<std::string> days;
    for (const KeptBackup& backup : kept)
        days.push_back(backup.day);
    EXPECT_EQ(days, left(all, day("2027-06-16")));
}

TEST(Keeping, WhatIsFewStaysHoweverOldAndSoDoesTheFuture) {
    const std::vector<KeptBackup> few = {{"2019-01-03", 5}, {"2021-05-05", 5}, {"2030-01-01", 5}};
    EXPECT_TRUE(superseded(few, day("2027-06-16")).empty());
    EXPECT_TRUE(superseded({}, day("2027-06-16")).empty());
    EXPECT_TRUE(superseded({{"no day", 5}}, day("2027-06-16")).empty());
}

TEST(Keeping, TheNewestAlwaysStaysWhateverTheOrderAndTheGaps) {
    std::mt19937_64 random(5);
    for (int i = 0; i < 300; ++i) {
        std::vector<KeptBackup> kept;
        for (const KeptBackup& backup : every_day("2026-01-01", 400, static_cast<std::int64_t>(random() % 1000)))
            if (random() % 4 == 0) kept.push_back(backup);
        std::shuffle(kept.begin(), kept.end(), random);
        const std::vector<std::string> stay = left(kept, day("2027-06-16"));
        if (kept.empty()) continue;
        std::vector<std::string> all;
        for (const KeptBackup& backup : kept)
            all.push_back(backup.day);
        std::sort(all.rbegin(), all.rend());
        for (std::size_t k = 0; k < std::min<std::size_t>(7, all.size()); ++k)
            EXPECT_NE(std::find(stay.begin(), stay.end(), all[k]), stay.end()) << all[k];
        EXPECT_LE(stay.size(), 24U);
    }
}

TEST(Keeping, LargeOnesTakeNoMoreRoomThanIsGranted) {
    Keeping keeping;
    keeping.most_bytes = 50;
    EXPECT_EQ(left(every_day("2027-06-01", 16, 10), day("2027-06-16"), keeping),
              (std::vector<std::string>{"2027-06-12", "2027-06-13", "2027-06-14", "2027-06-15", "2027-06-16"}));
    EXPECT_EQ(left(every_day("2027-06-01", 16, 100), day("2027-06-16"), keeping),
              (std::vector<std::string>{"2027-06-14", "2027-06-15", "2027-06-16"}));
}

// ------------------------------------------------------------------------------------ a backup a day

TEST_F(StoreTest, OneBackupADayIsMadeBesideTheOpenStore) {
    const auto store = open();
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    const Result<std::string> made = keep_daily_backup(path(), day("2027-06-21"));
    ASSERT_TRUE(made.ok()) << words(made);
    EXPECT_EQ(made.value(), file("backups/jobs-2027-06-21.sqlite"));
    EXPECT_EQ(open(made.value())->load(sample_job().id).value().notes, sample_job().notes);
    const QByteArray bytes = bytes_of(made.value());
    ASSERT_TRUE(store->save(numbered_job(5), at(2)).ok());
    EXPECT_EQ(keep_daily_backup(path(), day("2027-06-21")).value(), "") << "today's is there";
    EXPECT_EQ(bytes_of(made.value()), bytes);
    const std::string next = keep_daily_backup(path(), day("2027-06-22")).value();
    EXPECT_EQ(open(next)->count("").value(), 2);
}

TEST_F(StoreTest, DailyBackupsThatNeedNotStayGoAndNothingElse) {
    static_cast<void>(open());
    QDir(folder_.path()).mkpath("backups");
    for (const KeptBackup& old : every_day("2026-01-01", 531))
        write(daily_file(path(), old.day), "x");
    const std::set<std::string> others = {"jobs-2026-01-02.sqlite.part", "other-2026-01-02.sqlite", "jobs-mine.sqlite",
                                          "letter.txt"};
    for (const std::string& name : others)
        write(file(("backups/" + name).c_str()), "x");
    ASSERT_TRUE(keep_daily_backup(path(), day("2027-06-16")).ok());
    std::vector<std::string> days;
    const QStringList names = QDir(folder_.filePath("backups")).entryList(QDir::Files, QDir::Name);
    int there = 0;
    for (const QString& name : names) {
        if (others.count(name.toStdString()) > 0)
            ++there;
        else
            days.push_back(name.mid(5, 10).toStdString());
    }
    EXPECT_EQ(there, 4);
    EXPECT_EQ(days, left(every_day("2026-01-01", 532), day("2027-06-16")));
}

TEST_F(StoreTest, WithoutANewBackupNoneIsRemoved) {
    {
        const auto store = open();
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    QDir(folder_.path()).mkpath("backups");
    for (const KeptBackup& old : every_day("2026-01-01", 100))
        write(daily_file(path(), old.day), "x");
    QByteArray bytes = bytes_of(path());
    bytes[bytes.indexOf("ground_albedo\": 0.2") + 17] = '3';
    write(path(), bytes);
    const Result<std::string> refused = keep_daily_backup(path(), day("2027-06-16"));
    EXPECT_NE(words(refused).find("is damaged and was not copied"), std::string::npos) << words(refused);
    EXPECT_EQ(QDir(folder_.filePath("backups")).entryList({"jobs-*"}, QDir::Files).size(), 100);
}

TEST_F(StoreTest, TwoWindowsMakeOneDailyBackup) {
    static_cast<void>(open());
    QDir(folder_.path()).mkpath("backups");
    QLockFile other(folder_.filePath("backups/.lock"));
    ASSERT_TRUE(other.tryLock(0));
    EXPECT_EQ(keep_daily_backup(path(), day("2027-06-16")).value(), "");
    other.unlock();
    EXPECT_NE(keep_daily_backup(path(), day("2027-06-16")).value(), "");
    EXPECT_FALSE(keep_daily_backup(file("no/such/jobs.db"), day("2027-06-16")).ok());
}

// ------------------------------------------------------------------------------------ a backup in the store's place

std::map<QString, QByteArray> everything_in(const QString& folder) {
    std::map<QString, QByteArray> out;
    for (const QString& name : QDir(folder).entryList(QDir::Files)) {
        QFile in(QDir(folder).filePath(name));
        if (in.open(QIODevice::ReadOnly)) out[name] = in.readAll();
    }
    return out;
}

TEST_F(StoreTest, ABackupTakesTheStoresPlaceAndThePresentOneIsKept) {
    {
        const auto store = open();
        fill(*store);
        ASSERT_TRUE(store->backup(file("monday.db")).ok());
        ASSERT_TRUE(store->save(numbered_job(70), at(80)).ok());
    }
    const std::string monday = digest_at(file("monday.db"));
    const QByteArray backup_bytes = bytes_of(file("monday.db"));
    const std::string present = digest_at(path());
    const Result<std::string> before = restore_backup(file("monday.db"), path(), at(90));
    ASSERT_TRUE(before.ok()) << words(before);
    EXPECT_EQ(before.value(), file("jobs.db.before-restore.2027-06-21T13-30-00Z.backup"));
    EXPECT_EQ(digest_at(path()), monday);
    EXPECT_EQ(digest_at(before.value()), present);
    EXPECT_EQ(bytes_of(file("monday.db")), backup_bytes);
    EXPECT_EQ(open()->check().value(), "ok");
    // And back again, within the same second.
    ASSERT_TRUE(restore_backup(before.value(), path(), at(90)).ok());
    EXPECT_EQ(digest_at(path()), present);
    EXPECT_TRUE(files().filter("restoring").isEmpty()) << files().join(' ').toStdString();
}

TEST_F(StoreTest, ABackupIsPutWhereThereIsNoStoreOrADamagedOne) {
    {
        const auto store = open(file("monday.db"));
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    EXPECT_EQ(restore_backup(file("monday.db"), path(), at(2)).value(), "");
    EXPECT_EQ(open()->load(sample_job().id).value().revision, 1);
    for (const QByteArray& rubbish : {QByteArray(5000, 'x'), bytes_of(path()).left(6000), QByteArray("short")}) {
        write(path(), rubbish);
        const Result<std::string> kept = restore_backup(file("monday.db"), path(), at(3));
        ASSERT_TRUE(kept.ok()) << words(kept);
        EXPECT_EQ(bytes_of(kept.value()), rubbish) << "what was there is kept, damaged as it is";
        EXPECT_EQ(open()->load(sample_job().id).value().revision, 1);
        QFile::remove(QString::fromStdString(kept.value()));
    }
}

TEST_F(StoreTest, DamagedAndForeignBackupsAreRefusedWithEveryByteUntouched) {
    {
        const auto store = open();
        ASSERT_TRUE(store->save(numbered_job(1), at(1)).ok());
        const auto other = open(file("flipped.db"));
        ASSERT_TRUE(other->save(sample_job(), at(1)).ok());
    }
    QByteArray flipped = bytes_of(file("flipped.db"));
    write(file("cut.db"), flipped.left(flipped.size() / 2));
    QByteArray page = flipped;
    for (qsizetype i = 0; i < 64; ++i)
        page[4096 + i] = static_cast<char>(0xA5);
    write(file("page.db"), page);
    flipped[flipped.indexOf("ground_albedo\": 0.2") + 17] = '3';
    write(file("flipped.db"), flipped);
    EXPECT_EQ(sql(file("foreign.db"), "CREATE TABLE recipe (name TEXT)"), "");
    write(file("letter.txt"), "Dear Mrs Lindholm");
    write(file("empty.db"), "");
    { const auto newer = open(file("newer.db")); }
    EXPECT_EQ(sql(file("newer.db"), "PRAGMA user_version = 99"), "");
    const auto before = everything_in(folder_.path());
    for (const auto& [name, why] :
         {std::pair{"flipped.db", "is damaged and was not put in place"}, std::pair{"cut.db", "cut.db: "},
          std::pair{"page.db", "page.db: "}, std::pair{"foreign.db", "belongs to another program"},
          std::pair{"letter.txt", "is not a database"}, std::pair{"empty.db", "is no backup"},
          std::pair{"newer.db", "newer program"}, std::pair{"missing.db", "is not there"}}) {
        const Result<std::string> refused = restore_backup(file(name), path(), at(5));
        ASSERT_FALSE(refused.ok()) << name;
        EXPECT_NE(words(refused).find(why), std::string::npos) << words(refused);
        EXPECT_EQ(everything_in(folder_.path()), before) << name;
    }
    EXPECT_FALSE(restore_backup(path(), path(), at(5)).ok()) << "the store itself";
    EXPECT_EQ(everything_in(folder_.path()), before);
}

TEST_F(StoreTest, AStoreThatIsOpenElsewhereIsNotReplaced) {
    {
        const auto other = open(file("monday.db"));
        ASSERT_TRUE(other->save(sample_job(), at(1)).ok());
    }
    const auto store = open();
    ASSERT_TRUE(store->save(numbered_job(1), at(1)).ok());
    const Result<std::string> refused = restore_backup(file("monday.db"), path(), at(5));
    EXPECT_NE(words(refused).find("is open in another window"), std::string::npos) << words(refused);
    EXPECT_EQ(store->count("").value(), 1);
    EXPECT_TRUE(store->save(numbered_job(2), at(6)).ok());
    EXPECT_TRUE(files().filter("restor").isEmpty()) << files().join(' ').toStdString();
}

// ------------------------------------------------------------------------------------ everything as files

TEST_P(EachStore, EverythingIsWrittenOutAsFiles) {
    const auto store = open();
    fill(*store);
    const std::string picture = "\x89PNG\r\n\x1A\n" + std::string(500, 'p');
    Job job = store->load(numbered_job(2).id).value();
    job.number = "../../2027 / 7";
    Photograph there;
    there.id = id(0x2001);
    there.sha256 = store->add_photograph(picture, at(50)).value();
    there.file_name = "gate.png";
    Photograph lost = there;
    lost.id = id(0x2002);
    lost.sha256 = std::string(64, 'c');
    lost.file_name = "lost.jpg";
    job.photographs = {there, lost};
    const Result<Job> saved = store->save(job, at(51));
    ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
    const Result<Exported> out = export_everything(*store, file("out"));
    ASSERT_TRUE(out.ok()) << words(out);
    EXPECT_EQ(out.value().jobs, 3);
    EXPECT_EQ(out.value().quotes, 1);
    EXPECT_EQ(out.value().weather_years, 1);
    const QByteArray text = bytes_of(file("out/jobs/------2027---7.json"));
    EXPECT_EQ(job_from_json(text.toStdString(), "exported").value(), saved.value());
    EXPECT_EQ(bytes_of(file("out/quotes/Q-2027-0042-1.json")), QByteArray("{\"price\":1}"));
    EXPECT_EQ(bytes_of(file(("out/photographs/" + there.sha256 + ".png").c_str())).toStdString(), picture);
    bool named = false;
    for (const std::string& line : out.value().missing)
        named = named || line.find("lost.jpg") != std::string::npos;
    EXPECT_TRUE(named);
    const QStringList years = QDir(folder_.filePath("out/weather")).entryList(QDir::Files);
    ASSERT_EQ(years.size(), 1);
    const std::string year = bytes_of(file(("out/weather/" + years[0].toStdString()).c_str())).toStdString();
    EXPECT_TRUE(weather::read_any(year, "exported").ok());
    EXPECT_EQ(out.value().equipment, 1) << "the withdrawn one stays out";
    EXPECT_EQ(bytes_of(file("out/equipment/own-cylinder.json")).toStdString(),
              invented_cylinder("own-cylinder", "L\xC3\xA4rche 255"));
    EXPECT_EQ(out.value().price_lists, 1) << "the same";
    EXPECT_EQ(bytes_of(file("out/prices/firm-2028.json")).toStdString(), price_list_text("firm-2028", "Next"));
    EXPECT_EQ(out.value().rule_sets, 1) << "the same";
    EXPECT_EQ(bytes_of(file("out/rules/own-rules.json")).toStdString(), rule_set_text("own-rules", "Own"));
    const Result<Exported> again = export_everything(*store, file("out"));
    EXPECT_NE(words(again).find("is not empty"), std::string::npos) << words(again);
    EXPECT_FALSE(export_everything(*store, file("out/jobs/------2027---7.json")).ok()) << "a file stands there";
}

}  // namespace
}  // namespace keeping_test
}  // namespace wg::store::test
