// Opening, refusing, migrating, backing up, and what a crash leaves.

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QStringList>
#include <random>

#include "core/quantity/sha256.h"
#include "core/store/customers.h"
#include "core/store/equipment_book.h"
#include "core/store/migrations.h"
#include "core/store/purchase_book.h"
#include "core/store/quote_book.h"
#include "core/store/rule_book.h"
#include "core/store/stock_book.h"
#include "core/store/store.h"
#include "tests/core/store/file_limit.h"
#include "tests/core/store/filled_store.h"
#include "tests/core/store/some_rules.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace open_test {

bool mentions(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

TEST_F(StoreTest, ANewFileIsBroughtToTheNewestVersionAndIsWhole) {
    const auto store = open();
    EXPECT_EQ(store->schema_version(), migrations(Dialect::sqlite).back().version);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_F(StoreTest, MigrationsAreNumberedOneByOne) {
    for (std::size_t i = 0; i < migrations(Dialect::sqlite).size(); ++i) {
        EXPECT_EQ(migrations(Dialect::sqlite)[i].version, static_cast<int>(i) + 1);
    }
    const std::vector<Migration>& server = migrations(Dialect::postgresql);
    for (std::size_t i = 1; i < server.size(); ++i)
        EXPECT_EQ(server[i].version, server[i - 1].version + 1) << server[i].what;
    EXPECT_EQ(server.back().version, newest_version()) << "both end at the same step";
}

TEST_F(StoreTest, ATableThatIsMissingIsToldAsAStoreThatIsNotWhole) {
    const auto store = open();
    EXPECT_EQ(sql(path(), "DROP TABLE service_due"), "");
    const auto due = store->services_due("2030-01-01");
    ASSERT_FALSE(due.ok());
    EXPECT_TRUE(mentions(text_of(due.problems()), "no such table")) << text_of(due.problems());
    EXPECT_TRUE(mentions(text_of(due.problems()), "warmgable store check")) << text_of(due.problems());
    EXPECT_FALSE(mentions(text_of(due.problems()), "permissions"));
}

TEST_F(StoreTest, AFileLeftEmptyOrUnfinishedByACrashIsCompleted) {
    write(path("empty.db"), "");
    EXPECT_EQ(open(path("empty.db"))->check().value(), "ok");
    // Killed between the first write and the first step.
    EXPECT_EQ(sql(path("marked.db"), QStringLiteral("PRAGMA application_id = %1").arg(application_id)), "");
    const auto store = open(path("marked.db"));
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    EXPECT_EQ(store->schema_version(), migrations(Dialect::sqlite).back().version);
}

TEST_F(StoreTest, TheFileIsInWriteAheadModeWithOurMark) {
    { const auto store = open(); }
    const QByteArray header = bytes_of(path()).left(100);
    EXPECT_EQ(header.mid(68, 4), QByteArray("WgJb"));
    EXPECT_EQ(header[18], 2) << "SQLite file format 1.3: 2 means WAL";
}

TEST_F(StoreTest, NothingIsLeftBesideTheFileAfterClosing) {
    {
        const auto store = open();
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    EXPECT_EQ(files(), QStringList{"jobs.db"});
}

TEST_F(StoreTest, FilesOfOtherKindsAreRefusedAndStayAsTheyAre) {
    EXPECT_EQ(sql(path("foreign.db"), "CREATE TABLE recipe (name TEXT)"), "");
    EXPECT_EQ(sql(path("marked.db"), "PRAGMA application_id = 1234"), "");
    EXPECT_EQ(sql(path("marked.db"), "CREATE TABLE recipe (name TEXT)"), "");
    write(path("letter.txt"), "Dear Mrs Lindholm,\n" + QByteArray(500, 'x'));
    write(path("short"), "SQLite format 3");
    write(path("zeros"), QByteArray(4096, '\0'));
    const std::pair<const char*, const char*> cases[] = {{"foreign.db", "belongs to another program"},
                                                         {"marked.db", "belongs to another program"},
                                                         {"letter.txt", "is not a database"},
                                                         {"short", "is not a database"},
                                                         {"zeros", "is not a database"}};
    const QStringList before = files();
    for (const auto& [name, words] : cases) {
        const QByteArray bytes = bytes_of(path(name));
        EXPECT_TRUE(mentions(refusal(path(name)), words)) << name << ": " << refusal(path(name));
        EXPECT_EQ(bytes_of(path(name)), bytes) << name;
    }
    EXPECT_EQ(files(), before);
}

TEST_F(StoreTest, ADatabaseOfANewerProgramIsRefusedAndStaysAsItIs) {
    {
        const auto store = open();
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    EXPECT_EQ(sql(path(), "PRAGMA user_version = 99"), "");
    const QByteArray bytes = bytes_of(path());
    EXPECT_TRUE(mentions(refusal(path()), "was written by a newer program (database version 99")) << refusal(path());
    EXPECT_EQ(bytes_of(path()), bytes);
    EXPECT_EQ(files(), QStringList{"jobs.db"});
}

TEST_F(StoreTest, ADamagedDatabaseIsRefusedAndStaysAsItIs) {
    {
        const auto store = open();
        for (unsigned n = 1; n <= 30; ++n)
            ASSERT_TRUE(store->save(numbered_job(n), at(1)).ok());
    }
    const QByteArray whole = bytes_of(path());
    constexpr qsizetype page = 4096;
    int refused = 0;
    // Every page but the first in turn (the first holds the mark), its header overwritten.
    for (qsizetype at_byte = page; at_byte + page <= whole.size(); at_byte += 8 * page) {
        QByteArray bytes = whole;
        for (qsizetype i = 0; i < 64; ++i)
            bytes[at_byte + i] = static_cast<char>(0xA5);
        write(path("damaged.db"), bytes);
        const std::string said = refusal(path("damaged.db"));
        if (said.empty()) continue;  // a page of long text: found by its hash, not by the structure
        ++refused;
        EXPECT_EQ(bytes_of(path("damaged.db")), bytes) << at_byte;
    }
    EXPECT_GT(refused, 0);
    QByteArray cut = whole.left(whole.size() / 2);
    write(path("damaged.db"), cut);
    EXPECT_NE(refusal(path("damaged.db")), "");
    EXPECT_EQ(bytes_of(path("damaged.db")), cut);
}

TEST_F(StoreTest, AFlippedBitInAJobsTextIsNoticed) {
    {
        const auto store = open();
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    QByteArray bytes = bytes_of(path());
    const qsizetype place = bytes.indexOf("ground_albedo\": 0.2");
    ASSERT_GT(place, 0);
    bytes[place + 17] = '3';
    write(path(), bytes);
    const auto store = open();
    const Result<Job> read = store->load(sample_job().id);
    ASSERT_FALSE(read.ok());
    EXPECT_TRUE(mentions(text_of(read.problems()), "no longer has the hash")) << text_of(read.problems());
    EXPECT_TRUE(mentions(store->check().value(), "no longer has its hash")) << store->check().value();
    EXPECT_FALSE(store->backup(path("copy.db")).ok());
    EXPECT_FALSE(QFile::exists(QString::fromStdString(path("copy.db"))));
}

TEST_F(StoreTest, FoldersAndPathsThatDoNotExistAreRefused) {
    EXPECT_TRUE(mentions(refusal(folder_.path().toStdString()), "is a folder"));
    EXPECT_TRUE(mentions(refusal(path("no/such/jobs.db")), "does not exist"));
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(StoreTest, RandomBytesAfterOurMarkNeverCrash) {
    std::mt19937_64 random(20270621);
    {
        const auto store = open();
        ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    }
    const QByteArray whole = bytes_of(path());
    for (int i = 0; i < 60; ++i) {
        QByteArray bytes = whole;
        for (int k = 0; k < 40; ++k) {
            const auto place = static_cast<qsizetype>(random() % static_cast<std::uint64_t>(bytes.size()));
            if (place >= 68 && place < 72) continue;
            bytes[place] = static_cast<char>(random() & 0xffU);
        }
        for (const char* rest : {"fuzzed.db-wal", "fuzzed.db-shm"})
            QFile::remove(QString::fromStdString(path(rest)));
        write(path("fuzzed.db"), bytes);
        const Result<std::unique_ptr<Store>> opened = Store::open(path("fuzzed.db"), at(0));
        if (!opened) {
            EXPECT_EQ(bytes_of(path("fuzzed.db")), bytes);
            EXPECT_FALSE(opened.problems().front().what.empty());
            continue;
        }
        // What was opened answers, with rows or with words.
        const std::unique_ptr<Store>& store = opened.value();
        const auto answers = [](const auto& result) { return result.ok() || !result.problems().front().what.empty(); };
        EXPECT_TRUE(answers(store->list("lindholm", 10, 0)));
        EXPECT_TRUE(answers(store->load(sample_job().id)));
        EXPECT_TRUE(answers(store->history(sample_job().id)));
        EXPECT_TRUE(answers(store->check()));
        EXPECT_TRUE(answers(store->save(numbered_job(3), at(2))));
    }
}

// ------------------------------------------------------------------------------------ migration and backup

// The database as an earlier version left it, with one job in it and, from version 2 on, a quote.
/// A list of which a line was received and corrected, as the program of that version kept it.
void fill_stock_of_18(QSqlQuery& query, const Job& job) {
    const QString paper = QStringLiteral(
                              "INSERT INTO purchase_paper VALUES (1, 'p', '%1', 'P2027-0001', '%2', '', '', "
                              "CAST('%PDF-1' AS BLOB))")
                              .arg(QString::fromStdString(job.id), QString::fromStdString(sha256_hex("%PDF-1")));
    for (const QString& sql :
         {paper, QStringLiteral("INSERT INTO purchase_line VALUES ('p', 1, 'Pellow', 'tube', 'Tube', 'm', 15000)"),
          QStringLiteral("INSERT INTO purchase_line VALUES ('p', 2, 'Pellow', 'clip', 'Clip', 'pc', 4000)"),
          QStringLiteral("INSERT INTO stock_move VALUES (1, 'a', 'tube', 'm', 'received', 15000, NULL, 'p', 1, '', '', "
                         "'2027-06-20T10:00:00Z', NULL)"),
          QStringLiteral("INSERT INTO stock_move VALUES (2, 'b', 'tube', 'm', 'received', 14000, NULL, NULL, NULL, '', "
                         "'', '2027-06-20T11:00:00Z', 'a')")})
        ASSERT_TRUE(query.exec(sql)) << sql.toStdString();
}

void make_version(int version, const std::string& file) {
    {
        QSqlDatabase database = QSqlDatabase::addDatabase("QSQLITE", "older-version");
        database.setDatabaseName(QString::fromStdString(file));
        ASSERT_TRUE(database.open());
        QSqlQuery query(database);
        ASSERT_TRUE(query.exec(QStringLiteral("PRAGMA application_id = %1").arg(application_id)));
        for (const char* statement : migrations(Dialect::sqlite).front().statements)
            ASSERT_TRUE(query.exec(statement)) << statement;
        Job job = sample_job();
        job.revision = 1;
        job.changed_at = "2027-06-20T10:00:00Z";
        const std::string json = job_to_json(job);
        ASSERT_TRUE(query.prepare("INSERT INTO job VALUES (?, 1, ?, ?, ?, ?, 'planning', 1, 1, ?, ?, '', 0, NULL)"));
        for (const std::string& value :
             {job.id, job.number, job.title, job.client.name, job.client.town, job.changed_at, content_sha256(job)}) {
            query.addBindValue(QString::fromStdString(value));
        }
        ASSERT_TRUE(query.exec());
        ASSERT_TRUE(query.prepare("INSERT INTO job_revision VALUES (?, 1, ?, ?, ?)"));
        for (const std::string& value : {job.id, job.changed_at, json, sha256_hex(json)}) {
            query.addBindValue(QString::fromStdString(value));
        }
        ASSERT_TRUE(query.exec());
        for (int step = 2; step <= version; ++step) {
            for (const char* statement : migrations(Dialect::sqlite)[static_cast<std::size_t>(step) - 1].statements)
                ASSERT_TRUE(query.exec(statement)) << statement;
            if (migrations(Dialect::sqlite)[static_cast<std::size_t>(step) - 1].index_again) {
                ASSERT_TRUE(query.prepare("INSERT INTO job_search (rowid, number, title, client) VALUES (1, ?, ?, ?)"));
                for (const std::string& value : {job.number, job.title, job.client.name})
                    query.addBindValue(QString::fromStdString(value));
                ASSERT_TRUE(query.exec());
            }
            if (step == 18) fill_stock_of_18(query, job);
            if (step == 5) {
                ASSERT_TRUE(query.prepare("INSERT INTO photograph VALUES (?, ?, ?)"));
                const std::string bytes = "\xFF\xD8\xFF photograph";
                query.addBindValue(QString::fromStdString(sha256_hex(bytes)));
                query.addBindValue(QString::fromStdString(job.changed_at));
                query.addBindValue(QByteArray::fromStdString(bytes));
                ASSERT_TRUE(query.exec());
            }
            if (step == 6) {
                ASSERT_TRUE(query.prepare("INSERT INTO unsaved VALUES (?, 1, ?, ?, ?)"));
                Job edited = job;
                edited.notes = "not saved yet";
                const std::string kept = job_to_json(edited);
                for (const std::string& value : {job.id, job.changed_at, kept, sha256_hex(kept)})
                    query.addBindValue(QString::fromStdString(value));
                ASSERT_TRUE(query.exec());
            }
            if (std::string_view(migrations(Dialect::sqlite)[static_cast<std::size_t>(step) - 1].what) == "customers") {
                ASSERT_TRUE(
                    query.exec(QStringLiteral("INSERT INTO customer VALUES ('%1', 'C-0001', 'Lindholm', '', '', "
                                              "'', 1, '', '', 'lindholm', ' lindholm ')")
                                   .arg(QString::fromStdString(id(0xC1)))));
                ASSERT_TRUE(query.exec(QStringLiteral("INSERT INTO customer_job VALUES ('%1', '%2')")
                                           .arg(QString::fromStdString(job.id), QString::fromStdString(id(0xC1)))));
            }
            if (step == 15) {
                ASSERT_TRUE(query.prepare("INSERT INTO order_paper VALUES (1, ?, 'order', ?, 'O-1', ?, ?, '', ?)"));
                const std::string paper = "%PDF-1.7 order";
                for (const std::string& value : {id(0xE1), id(77), sha256_hex(paper), job.changed_at})
                    query.addBindValue(QString::fromStdString(value));
                query.addBindValue(QByteArray::fromStdString(paper));
                ASSERT_TRUE(query.exec()) << query.lastError().text().toStdString();
            }
            if (step != 2) continue;
            ASSERT_TRUE(
                query.prepare("INSERT INTO quote_issued VALUES (?, ?, 1, '2027-0042', ?, '{}', ?, 100, 'EUR')"));
            for (const std::string& value : {id(77), job.id, job.changed_at, sha256_hex("{}")})
                query.addBindValue(QString::fromStdString(value));
            ASSERT_TRUE(query.exec());
        }
        ASSERT_TRUE(query.exec(QStringLiteral("PRAGMA user_version = %1").arg(version)));
    }
    QSqlDatabase::removeDatabase("older-version");
}

TEST_F(StoreTest, AnOlderDatabaseIsCopiedThenBroughtUpToDate) {
    make_version(1, path());
    {
        const auto store = open();
        ASSERT_NE(store, nullptr);
        EXPECT_EQ(store->schema_version(), migrations(Dialect::sqlite).back().version);
        EXPECT_EQ(store->list("lindholm neighbour", 10, 0).value().size(), 1U);
        Job job = store->load(sample_job().id).value();
        job.notes = "later";
        EXPECT_EQ(store->save(job, at(1)).value().revision, 2);
        EXPECT_EQ(store->check().value(), "ok");
    }
    const QString copy = "jobs.db.version-1.2027-06-21T12-00-00Z.backup";
    EXPECT_EQ(files(), (QStringList{"jobs.db", copy}));
    EXPECT_EQ(open(path(copy.toUtf8().constData()))->load(sample_job().id).value().notes, sample_job().notes);
}

TEST_F(StoreTest, EveryEarlierVersionKeepsItsJobsAndQuotes) {
    for (int version = 1; version < migrations(Dialect::sqlite).back().version; ++version) {
        const std::string file = path(("version" + std::to_string(version) + ".db").c_str());
        make_version(version, file);
        const auto store = open(file);
        ASSERT_NE(store, nullptr) << version;
        EXPECT_EQ(store->schema_version(), migrations(Dialect::sqlite).back().version);
        EXPECT_EQ(store->load(sample_job().id).value().title, sample_job().title);
        EXPECT_EQ(store->list("lindholm", 10, 0).value().size(), 1U) << version;
        EXPECT_EQ(store->quotes(sample_job().id).value().size(), version >= 2 ? 1U : 0U);
        EXPECT_TRUE(store->weather_years().value().empty());
        EXPECT_EQ(store->has_photograph(sha256_hex("\xFF\xD8\xFF photograph")).value(), version >= 5);
        EXPECT_EQ(store->unsaved(sample_job().id).value().has_value(), version >= 6);
        CustomerBook book(*store);
        const std::size_t customers_then = book.all().value().size();
        EXPECT_EQ(book.at_one_look(id(0xC1)).ok(), customers_then == 1) << version;
        EXPECT_TRUE(book.save(CustomerBook::of_client(sample_job().client), at(1)).ok()) << version;
        EXPECT_EQ(book.count("lindholm").value(), static_cast<int>(customers_then) + 1);
        EXPECT_TRUE(store->services_due("").value().empty());
        EXPECT_TRUE(store->refrigerant_entries().value().empty());
        ServiceDueRow due;
        due.service_id = "look";
        due.due_on = "2028-06-01";
        ASSERT_TRUE(store->set_services_due(sample_job().id, {due}).ok()) << version;
        EXPECT_EQ(store->services_due("").value().at(0).town, sample_job().client.town);
        EXPECT_EQ(store->services_due("").value().at(0).postcode, sample_job().client.postcode);
        const auto orders = OrderBook(*store).papers_of(sample_job().id).value();
        EXPECT_EQ(orders.size(), version >= 15 ? 1U : 0U) << version;
        if (!orders.empty()) {
            EXPECT_EQ(orders[0].number, "O-1");
            EXPECT_TRUE(orders[0].takes_place_of.empty());
            EXPECT_EQ(OrderBook(*store).paper(orders[0].id).value(), "%PDF-1.7 order");
        }
        EquipmentBook equipment(*store);
        EXPECT_TRUE(equipment.current().value().items.empty()) << version;
        ASSERT_TRUE(equipment.save(invented_cylinder("own", "Own"), 0, at(1)).ok()) << version;
        EXPECT_EQ(equipment.current().value().items.size(), 1U);
        RuleBook rules(*store);
        EXPECT_TRUE(rules.sets().value().empty()) << version;
        ASSERT_TRUE(rules.save("own", rule_set_text("own", "Own"), 0, "", at(1)).ok()) << version;
        EXPECT_EQ(StockBook(*store).levels().value().size(), version >= 18 ? 1U : 0U) << version;
        if (version >= 18) {
            PurchaseBook purchases(*store);
            const auto lines = purchases.lines("p").value();
            ASSERT_EQ(lines.size(), 2U) << version;
            EXPECT_EQ(lines[0].received, 14'000) << version;
            EXPECT_FALSE(lines[0].needed.has_value());
            EXPECT_EQ(purchases.receive("p", {{1, 14'000, 1'000}, {2, 0, 3'000}}, "", at(1)).value(), 2) << version;
            EXPECT_EQ(purchases.take_back(purchases.bookings("p").value().at(0), at(2)).value(), 2) << version;
            EXPECT_EQ(purchases.lines("p").value()[0].received, 14'000) << version;
        }
        parts::StockMove move;
        move.item_id = "clip";
        move.unit = "pc";
        move.kind = parts::StockMoveKind::fitted;
        move.job_id = sample_job().id;
        EXPECT_TRUE(StockBook(*store).enter(move, at(1)).ok()) << version;
        EXPECT_EQ(store->check().value(), "ok");
    }
}

TEST_F(StoreTest, AMigrationThatFailsLeavesTheOlderDatabase) {
    make_version(1, path());
    EXPECT_EQ(sql(path(), "CREATE TABLE job_search (in_the_way TEXT)"), "");
    EXPECT_TRUE(mentions(refusal(path()), "step 3 (search over the list of jobs)")) << refusal(path());
    EXPECT_EQ(sql(path(), "DROP TABLE job_search"), "");
    EXPECT_EQ(open()->list("lindholm", 10, 0).value().size(), 1U);
}

TEST_F(StoreTest, AMigrationThatFindsNoRoomLeavesTheOlderDatabaseForLater) {
    int refused = 0;
    for (rlim_t room = 0; room < 200000; room += 40000) {
        const std::string older = path(("older" + std::to_string(room) + ".db").c_str());
        make_version(5, older);
        {
            // The copy beside the file, then the log of the steps.
            const FileLimit limit(room);
            refused += refusal(older).empty() ? 0 : 1;
        }
        const auto store = open(older);
        ASSERT_NE(store, nullptr) << room;
        EXPECT_EQ(store->schema_version(), newest_version());
        EXPECT_EQ(store->load(sample_job().id).value().notes, sample_job().notes);
        EXPECT_EQ(store->quotes(sample_job().id).value().size(), 1U);
        EXPECT_TRUE(store->has_photograph(sha256_hex("\xFF\xD8\xFF photograph")).value());
        EXPECT_EQ(store->check().value(), "ok");
    }
    EXPECT_GT(refused, 2);
    EXPECT_TRUE(files().filter(".part").isEmpty()) << files().join(' ').toStdString();
}

TEST_F(StoreTest, ABackupIsAWholeDatabaseOfItsOwn) {
    const auto store = open();
    const Job job = store->save(sample_job(), at(1)).value();
    const Result<bool> done = store->backup(path("copy.db"));
    ASSERT_TRUE(done.ok()) << text_of(done.problems());
    EXPECT_EQ(open(path("copy.db"))->load(job.id).value(), job);
    EXPECT_FALSE(files().contains("copy.db.part"));
    const QByteArray bytes = bytes_of(path("copy.db"));
    EXPECT_TRUE(mentions(text_of(store->backup(path("copy.db")).problems()), "exists already"));
    EXPECT_EQ(bytes_of(path("copy.db")), bytes);
    EXPECT_FALSE(store->backup(path("no/such/copy.db")).ok());
    EXPECT_EQ(store->save(job, at(2)).value(), job) << "the store goes on after a backup";
}

// ------------------------------------------------------------------------------------ several windows, crashes

TEST_F(StoreTest, TwoWindowsSeeOneAnothersSaves) {
    const auto first = open();
    const auto second = open();
    for (unsigned n = 1; n <= 10; ++n) {
        Store& writer = n % 2 == 0 ? *first : *second;
        Store& reader = n % 2 == 0 ? *second : *first;
        ASSERT_TRUE(writer.save(numbered_job(n), at(1)).ok());
        EXPECT_EQ(reader.count("").value(), static_cast<int>(n));
    }
}

// Child of the crash test: saves one revision after the other and acknowledges each through the pipe.
[[noreturn]] void save_until_killed(const std::string& file, int pipe) {
    const Result<std::unique_ptr<Store>> opened = Store::open(file, at(0));
    if (!opened) _exit(1);
    Result<Job> job = opened.value()->load(sample_job().id);
    if (!job) _exit(2);
    Job current = job.value();
    for (;;) {
        current.notes = "saved after revision " + std::to_string(current.revision);
        const Result<Job> saved = opened.value()->save(current, at(1));
        if (!saved) _exit(3);
        current = saved.value();
        if (::write(pipe, &current.revision, sizeof current.revision) != sizeof current.revision) _exit(4);
    }
}

TEST_F(StoreTest, AProgramKilledWhileSavingLosesNoAcknowledgedSave) {
    ASSERT_TRUE(open()->save(sample_job(), at(0)).ok());
    std::mt19937_64 random(20270621);
    for (int round = 0; round < 6; ++round) {
        int ends[2] = {};
        ASSERT_EQ(pipe(ends), 0);
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) save_until_killed(path(), ends[1]);
        close(ends[1]);
        std::int64_t acknowledged = 0;
        const std::uint64_t saves = 3 + random() % 20;
        for (std::uint64_t i = 0; i < saves; ++i) {
            ASSERT_EQ(read(ends[0], &acknowledged, sizeof acknowledged), static_cast<ssize_t>(sizeof acknowledged));
        }
        usleep(static_cast<useconds_t>(random() % 4000));
        ASSERT_EQ(kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself with " << WEXITSTATUS(status);
        std::int64_t last = 0;
        while (read(ends[0], &last, sizeof last) == static_cast<ssize_t>(sizeof last))
            acknowledged = last;
        close(ends[0]);

        const auto store = open();
        ASSERT_NE(store, nullptr);
        EXPECT_EQ(store->check().value(), "ok");
        const Job job = store->load(sample_job().id).value();
        // One save may have been finished without its acknowledgement.
        EXPECT_GE(job.revision, acknowledged);
        EXPECT_LE(job.revision, acknowledged + 1);
        EXPECT_EQ(job.notes, "saved after revision " + std::to_string(job.revision - 1));
        EXPECT_EQ(store->history(job.id).value().size(), static_cast<std::size_t>(job.revision));
        EXPECT_EQ(store->count(std::to_string(job.revision - 1)).value(), 1);
    }
}

}  // namespace open_test
}  // namespace wg::store::test
