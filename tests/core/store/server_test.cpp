// What a server adds to a file: who may come in, several seats at once, and connections that are lost.

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <thread>

#include "core/job/codec.h"
#include "core/quantity/sha256.h"
#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/purchase_book.h"
#include "core/store/quote_book.h"
#include "core/store/stock_book.h"
#include "tests/core/store/server.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace server_test {
namespace {

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

template <class T>
std::string said(const Result<T>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

// ------------------------------------------------------------------------------------ opening

TEST_F(ServerStore, AnEmptyDatabaseIsBroughtToTheNewestVersionOnceBySeatsThatStartTogether) {
    const std::string place = path();
    constexpr int seats = 6;
    std::vector<std::string> failed(seats);
    std::vector<std::thread> threads;
    threads.reserve(seats);
    for (int i = 0; i < seats; ++i)
        threads.emplace_back([&place, &failed, i] {
            const auto opened = Store::open_place(place, at(0), "seat");
            failed[static_cast<std::size_t>(i)] =
                opened.ok() ? opened.value()->save(numbered_job(static_cast<unsigned>(i) + 1), at(1)).ok() ? "" : "save"
                            : said(opened);
        });
    for (std::thread& thread : threads)
        thread.join();
    for (const std::string& words : failed)
        EXPECT_EQ(words, "");
    const auto store = open();
    EXPECT_EQ(store->schema_version(), newest_version());
    EXPECT_EQ(store->count("").value(), seats);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_F(ServerStore, BothKindsEndAtTheSameVersionByStepsOfTheSameNumbers) {
    const auto& server = migrations(Dialect::postgresql);
    const auto& file = migrations(Dialect::sqlite);
    EXPECT_EQ(server.front().version, 7);
    for (std::size_t i = 0; i < server.size(); ++i)
        EXPECT_EQ(server[i].version, file[i + 6].version);
    EXPECT_EQ(server.back().version, file.back().version);
}

TEST_F(ServerStore, EveryEarlierVersionIsBroughtUpWithEverythingInIt) {
    const auto text = [](const std::string& value) {
        return QString("'" + QString::fromStdString(value).replace("'", "''") + "'");
    };
    Job job = sample_job();
    job.revision = 1;
    job.changed_at = "2027-06-20T10:00:00Z";
    const std::string json = job_to_json(job);
    for (int version = 7; version < newest_version(); ++version) {
        const std::string place = path(("version" + std::to_string(version)).c_str());
        // As the program of that version left it.
        QStringList statements{
            "CREATE TABLE store_version (only_row integer PRIMARY KEY DEFAULT 1, application_id integer NOT NULL, "
            "version integer NOT NULL)",
            QString("INSERT INTO store_version (application_id, version) VALUES (%1, %2)")
                .arg(application_id)
                .arg(version)};
        for (const Migration& step : migrations(Dialect::postgresql)) {
            if (step.version > version) break;
            for (const char* statement : step.statements)
                statements << statement;
        }
        statements << "INSERT INTO job VALUES (" + text(job.id) + ", 1, " + text(job.number) + ", " + text(job.title) +
                          ", " + text(job.client.name) + ", '', 'planning', 1, 1, " + text(job.changed_at) + ", " +
                          text(content_sha256(job)) + ", '', 0, NULL)"
                   << "INSERT INTO job_revision (job_id, revision, changed_at, content, text_sha256) VALUES (" +
                          text(job.id) + ", 1, " + text(job.changed_at) + ", " + text(json) + ", " +
                          text(sha256_hex(json)) + ")"
                   << "INSERT INTO quote_issued VALUES (" + text(id(77)) + ", " + text(job.id) + ", 1, '2027-0042', " +
                          text(job.changed_at) + ", '{}', " + text(sha256_hex("{}")) + ", 100, 'EUR')";
        if (version >= 15)
            statements << "INSERT INTO order_paper VALUES (1, " + text(id(0xE1)) + ", 'order', " + text(id(77)) +
                              ", 'O-1', " + text(sha256_hex("%PDF-1.7 order")) + ", " + text(job.changed_at) +
                              ", '', '%PDF-1.7 order')";
        const auto& steps = migrations(Dialect::postgresql);
        const bool keeps_days = std::any_of(steps.begin(), steps.end(), [version](const Migration& step) {
            return step.version <= version && step.then != nullptr;
        });
        if (keeps_days)
            statements << "INSERT INTO job_state_day VALUES (" + text(job.id) + ", 1, '', 'planning', " +
                              text(job.changed_at) + ", '')";
        if (version >= 18)
            statements << "INSERT INTO purchase_paper VALUES (1, 'p', " + text(job.id) + ", 'P2027-0001', " +
                              text(sha256_hex("%PDF-1")) + ", '', '', '%PDF-1')"
                       << "INSERT INTO purchase_line VALUES ('p', 1, 'Pellow', 'tube', 'Tube', 'm', 15000)"
                       << "INSERT INTO stock_move VALUES (1, 'a', 'tube', 'm', 'received', 15000, NULL, 'p', 1, '', "
                          "'', '2027-06-20T10:00:00Z', NULL)"
                       << "INSERT INTO stock_move VALUES (2, 'b', 'tube', 'm', 'received', 14000, NULL, NULL, NULL, "
                          "'', '', '2027-06-20T11:00:00Z', 'a')";
        for (const QString& statement : statements)
            ASSERT_EQ(sql(place, statement), "") << version;
        Connection connection = connection_from_address(place).value();
        connection.backup_folder = file("kept");
        auto opened = Store::connect(connection);
        ASSERT_TRUE(opened.ok()) << version << ": " << said(opened);
        const std::unique_ptr<Store> store = std::move(opened).value();
        // As it was, in a file of that version, which this program opens, too.
        const QString kept = QDir(QString::fromStdString(file("kept")))
                                 .filePath(QStringLiteral("version%1-127-0-0-1.version-%1.backup").arg(version));
        ASSERT_TRUE(QFile::exists(kept))
            << kept.toStdString() << QDir(QString::fromStdString(file("kept"))).entryList().join(' ').toStdString();
        EXPECT_EQ(bytes_of(kept.toStdString()).mid(60, 4),
                  QByteArray::fromHex(QByteArray::number(version, 16).rightJustified(8, '0')));
        {
            const auto old = open(kept.toStdString());
            ASSERT_NE(old, nullptr) << version;
            EXPECT_EQ(old->load(job.id).value().notes, job.notes);
            EXPECT_EQ(old->list("lindholm", 10, 0).value().size(), 1U) << version;
            EXPECT_EQ(old->quotes(job.id).value().size(), 1U);
            EXPECT_EQ(old->check().value(), "ok") << version;
        }
        EXPECT_EQ(store->schema_version(), newest_version());
        EXPECT_EQ(store->load(job.id).value().notes, job.notes);
        EXPECT_EQ(store->quotes(job.id).value().size(), 1U);
        const auto orders = OrderBook(*store).papers_of(job.id).value();
        ASSERT_EQ(orders.size(), version >= 15 ? 1U : 0U) << version;
        if (!orders.empty()) {
            EXPECT_TRUE(orders[0].takes_place_of.empty());
            EXPECT_EQ(OrderBook(*store).paper(orders[0].id).value(), "%PDF-1.7 order");
        }
        job.revision = 1;
        Job next = store->load(job.id).value();
        next.notes += " and more";
        EXPECT_TRUE(store->save(next, at(5)).ok()) << version;
        parts::StockMove move;
        if (version >= 18) {
            EXPECT_EQ(PurchaseBook(*store).lines("p").value().at(0).received, 14'000) << version;
            EXPECT_EQ(PurchaseBook(*store).receive("p", {{1, 14'000, 1'000}}, "", at(5)).value(), 1) << version;
        }
        move.item_id = "clip";
        move.unit = "pc";
        move.kind = parts::StockMoveKind::fitted;
        move.job_id = job.id;
        EXPECT_TRUE(StockBook(*store).enter(move, at(6)).ok()) << version;
        EXPECT_EQ(store->check().value(), "ok") << version;
    }
}

TEST_F(ServerStore, WithoutABackupAnOlderDatabaseStaysAsItIs) {
    static_cast<void>(open());
    EXPECT_EQ(sql(path(), QString("UPDATE store_version SET version = %1").arg(newest_version() - 1)), "");
    Connection connection = connection_from_address(path()).value();
    write(file("no-folder"), "a file");
    connection.backup_folder = file("no-folder");
    const std::string words = said(Store::connect(connection));
    EXPECT_TRUE(has(words, "is of an older version and stays so, since it could not be backed up in")) << words;
    EXPECT_FALSE(has(words, "step")) << "none was taken";
    EXPECT_EQ(sql(path(), QString("UPDATE store_version SET version = 1 / (CASE WHEN version = %1 THEN 1 ELSE 0 END) * "
                                  "%2")
                              .arg(newest_version() - 1)
                              .arg(newest_version())),
              "")
        << "the version is what it was";
    EXPECT_EQ(open()->check().value(), "ok");
}

TEST_F(ServerStore, AStepThatFailsLeavesTheDatabaseAsItWas) {
    static_cast<void>(open());
    EXPECT_EQ(sql(path(), "UPDATE store_version SET version = 7"), "");
    const std::string words = refusal(path());
    EXPECT_TRUE(has(words, "step 8 (who saved each revision)")) << words;
    EXPECT_EQ(
        sql(path(), QString("UPDATE store_version SET version = 1 / (CASE WHEN version = 7 THEN 1 ELSE 0 END) * %1")
                        .arg(newest_version())),
        "");
    EXPECT_EQ(open()->check().value(), "ok");
}

TEST_F(ServerStore, OtherDatabasesAreRefusedAndStayAsTheyAre) {
    EXPECT_EQ(sql(path("recipes"), "CREATE TABLE recipe (name text)"), "");
    EXPECT_TRUE(has(refusal(path("recipes")), "belongs to another program")) << refusal(path("recipes"));
    EXPECT_EQ(sql(path("recipes"), "DROP TABLE recipe"), "") << "nothing stands beside it";
    EXPECT_EQ(sql(path("recipes"), "SELECT 1 FROM store_version"), "relation \"store_version\" does not exist");

    static_cast<void>(open(path("marked")));
    EXPECT_EQ(sql(path("marked"), "UPDATE store_version SET application_id = 1234"), "");
    EXPECT_TRUE(has(refusal(path("marked")), "belongs to another program"));

    static_cast<void>(open(path("newer")));
    EXPECT_EQ(sql(path("newer"), "UPDATE store_version SET version = 99"), "");
    EXPECT_TRUE(has(refusal(path("newer")), "was written by a newer program (database version 99"))
        << refusal(path("newer"));

    EXPECT_EQ(
        Server::shared()->sql("postgres", "CREATE DATABASE bytes TEMPLATE template0 ENCODING 'SQL_ASCII' LOCALE 'C'"),
        "");
    EXPECT_TRUE(has(refusal(Server::shared()->address("bytes")), "encoding is SQL_ASCII"))
        << refusal(Server::shared()->address("bytes"));
}

TEST_F(ServerStore, WhatCannotBeReachedIsSaidInOneLine) {
    const std::string missing = Server::shared()->address("no_such_database");
    EXPECT_TRUE(has(refusal(missing), "database \"no_such_database\" does not exist")) << refusal(missing);
    EXPECT_FALSE(has(refusal(missing), "\n"));
    const std::string nobody = "postgresql://postgres@127.0.0.1:1/firm?sslmode=disable";
    EXPECT_TRUE(has(refusal(nobody), "refused")) << refusal(nobody);
    EXPECT_TRUE(has(refusal(nobody), "Check that the server runs")) << refusal(nobody);
}

TEST_F(ServerStore, APasswordIsAskedForAndNeverKept) {
    static_cast<void>(open());
    const Server& server = *Server::shared();
    EXPECT_EQ(server.sql("jobs.db", "CREATE ROLE reed LOGIN PASSWORD 'alder''s gate'"), "");
    EXPECT_EQ(server.sql("jobs.db", "GRANT ALL ON ALL TABLES IN SCHEMA public TO reed"), "");
    Connection connection = connection_from_address(path()).value();
    connection.user = "reed";
    int asked = 0;
    connection.password = [&asked](const Connection& to) {
        ++asked;
        return to.user == "reed" ? "alder's gate" : "";
    };
    {
        const auto opened = Store::connect(connection, "Reed");
        ASSERT_TRUE(opened.ok()) << said(opened);
        EXPECT_EQ(asked, 1);
        EXPECT_TRUE(opened.value()->save(sample_job(), at(1)).ok());
        EXPECT_FALSE(has(opened.value()->path(), "gate"));
        const auto beside = opened.value()->beside()();
        ASSERT_TRUE(beside.ok()) << said(beside);
        EXPECT_EQ(asked, 2);
    }
    connection.password = [](const Connection&) { return "wrong"; };
    const auto refused = Store::connect(connection, "Reed");
    EXPECT_TRUE(has(said(refused), "password authentication failed")) << said(refused);
    // From the file that PGPASSFILE names, which others may not read.
    connection.password = nullptr;
    const QString name = folder_.filePath("pass");
    write(name.toStdString(), QStringLiteral("127.0.0.1:%1:*:reed:alder's gate\n").arg(server.port()).toUtf8());
    QFile::setPermissions(name, QFile::ReadOwner | QFile::WriteOwner);
    qputenv("PGPASSFILE", name.toLocal8Bit());
    const auto from_file = Store::connect(connection, "Reed");
    qunsetenv("PGPASSFILE");
    EXPECT_TRUE(from_file.ok()) << said(from_file);
}

TEST_F(ServerStore, TheServerProvesWhoItIs) {
    if (!Server::shared()->has_certificate()) GTEST_SKIP() << "there is no openssl to make a certificate with";
    static_cast<void>(open());
    Connection connection = connection_from_address(path()).value();
    connection.tls = Tls::verify_full;
    connection.root_certificate = (Server::shared()->folder() + "/server.crt").toStdString();
    connection.host = "localhost";
    const auto opened = Store::connect(connection);
    ASSERT_TRUE(opened.ok()) << said(opened);
    EXPECT_TRUE(opened.value()->save(sample_job(), at(1)).ok());
    // The certificate is made out to localhost alone.
    connection.host = "127.0.0.1";
    EXPECT_TRUE(has(said(Store::connect(connection)), "certificate")) << said(Store::connect(connection));
    connection.host = "localhost";
    connection.root_certificate = "/no/such/root.crt";
    EXPECT_TRUE(has(said(Store::connect(connection)), "root")) << said(Store::connect(connection));
}

// ------------------------------------------------------------------------------------ several seats, lost connections

TEST_F(ServerStore, SeatsThatSaveTogetherLoseNothing) {
    const std::string place = path();
    const Job shared_job = open()->save(sample_job(), at(0)).value();
    constexpr unsigned seats = 4;
    constexpr int saves = 8;
    std::vector<int> refused(seats, 0);
    std::vector<std::string> failed(seats);
    std::vector<std::thread> threads;
    threads.reserve(seats);
    for (unsigned seat = 0; seat < seats; ++seat)
        threads.emplace_back([&, seat] {
            const auto opened = Store::open_place(place, at(0), "seat " + std::to_string(seat));
            if (!opened) {
                failed[seat] = said(opened);
                return;
            }
            Store& store = *opened.value();
            Job own = numbered_job(100 + seat);
            for (int i = 0; i < saves; ++i) {
                own.notes = std::to_string(i);
                Result<Job> saved = store.save(own, at(i));
                if (!saved) failed[seat] += said(saved);
                if (saved) own = saved.value();
                // All add a line to the same job; who comes second reads again.
                for (;;) {
                    Job job = store.load(shared_job.id).value();
                    job.notes += "+" + std::to_string(seat);
                    const Result<Job> added = store.save(job, at(i));
                    if (added) break;
                    if (!has(said(added), "was saved by seat")) failed[seat] += said(added);
                    if (!failed[seat].empty()) break;
                    ++refused[seat];
                }
            }
        });
    for (std::thread& thread : threads)
        thread.join();
    for (const std::string& words : failed)
        EXPECT_EQ(words, "");
    const auto store = open();
    const Job job = store->load(shared_job.id).value();
    EXPECT_EQ(job.revision, 1 + static_cast<int>(seats) * saves);
    EXPECT_EQ(std::count(job.notes.begin(), job.notes.end(), '+'), static_cast<int>(seats) * saves);
    for (unsigned seat = 0; seat < seats; ++seat)
        EXPECT_EQ(store->history(numbered_job(100 + seat).id).value().size(), static_cast<std::size_t>(saves));
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_P(EachStore, ASecondSeatWaitsForTheFirstAndIsToldWhenItTakesTooLong) {
    const std::string place = path();
    // A file's wait is fixed; a server's is shortened to spare the tests time.
    const bool on_server = dialect_ == Dialect::postgresql;
    std::unique_ptr<Store> store;
    if (on_server) {
        Connection connection = connection_from_address(place).value();
        connection.turn_timeout_ms = 800;
        store = Store::connect(connection).value();
    } else {
        store = open();
    }
    const Job job = store->save(sample_job(), at(0)).value();
    // Holds the turn to write for some time, in a thread with a connection of its own.
    const auto hold = [&](int hold_ms, std::atomic<bool>& held) {
        return std::thread([&held, hold_ms, place, server = on_server] {
            {
                QSqlDatabase database = QSqlDatabase::addDatabase(server ? "QPSQL" : "QSQLITE", "holder");
                if (server) {
                    const Connection to = connection_from_address(place).value();
                    database.setHostName(QString::fromStdString(to.host));
                    database.setPort(to.port);
                    database.setUserName(QString::fromStdString(to.user));
                    database.setConnectOptions("sslmode=disable");
                    database.setDatabaseName(QString::fromStdString(to.database));
                } else {
                    database.setDatabaseName(QString::fromStdString(place));
                }
                if (!database.open()) return;
                QSqlQuery query(database);
                query.exec(QString::fromLatin1(wording(server ? Dialect::postgresql : Dialect::sqlite).begin_write));
                if (server) query.exec(QString::fromLatin1(wording(Dialect::postgresql).take_turn));
                query.finish();
                held = true;
                std::this_thread::sleep_for(std::chrono::milliseconds(hold_ms));
                query.exec("ROLLBACK");
            }
            QSqlDatabase::removeDatabase("holder");
        });
    };
    const int too_long_ms = on_server ? 1300 : 5600;
    for (const int hold_ms : {400, too_long_ms}) {
        std::atomic<bool> held = false;
        std::thread holder = hold(hold_ms, held);
        while (!held)
            std::this_thread::yield();
        Job edited = store->load(job.id).value();
        edited.notes = "waited " + std::to_string(hold_ms);
        QElapsedTimer clock;
        clock.start();
        const Result<Job> saved = store->save(edited, at(1));
        const qint64 waited_ms = clock.elapsed();
        holder.join();
        EXPECT_GE(waited_ms, hold_ms < too_long_ms ? 200 : 700);
        EXPECT_EQ(saved.ok(), hold_ms < too_long_ms) << said(saved);
        if (!saved) EXPECT_TRUE(has(said(saved), "is writing; try again in a moment")) << said(saved);
    }
    EXPECT_EQ(store->load(job.id).value().notes, "waited 400");
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_F(ServerStore, AServerStartedAnewIsConnectedToAgain) {
    const auto store = open();
    Job job = store->save(sample_job(), at(0)).value();
    // What an administrator's restart does to this connection.
    EXPECT_EQ(
        sql(path(), "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'warmgable'"), "");
    EXPECT_EQ(store->load(job.id).value().notes, job.notes);
    EXPECT_EQ(
        sql(path(), "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'warmgable'"), "");
    job.notes = "after the restart";
    const Result<Job> saved = store->save(job, at(1));
    ASSERT_TRUE(saved.ok()) << said(saved);
    EXPECT_EQ(saved.value().revision, 2);
}

TEST_F(ServerStore, AServerThatFellSilentIsNotWaitedForAgainAndAgain) {
    const std::string place = path();
    Connection connection = connection_from_address(place).value();
    connection.rest_ms = 1500;
    const auto opened = Store::connect(connection);
    ASSERT_TRUE(opened.ok()) << said(opened);
    Store& store = *opened.value();
    const Job job = store.save(sample_job(), at(0)).value();
    EXPECT_EQ(sql(place, "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'warmgable'"),
              "");
    Server::shared()->fall_silent();
    QElapsedTimer clock;
    clock.start();
    const std::string first = said(store.load(job.id));
    const qint64 first_ms = clock.restart();
    const std::string second = said(store.load(job.id));
    const qint64 second_ms = clock.restart();
    Server::shared()->wake();
    EXPECT_TRUE(has(first, "Check that the server runs")) << first;
    EXPECT_GE(first_ms, 1000);
    EXPECT_LE(first_ms, 5000);
    EXPECT_EQ(second, first);
    EXPECT_LE(second_ms, 200) << "the window would stand still at every edit";
    std::this_thread::sleep_for(std::chrono::milliseconds(1700));
    EXPECT_EQ(store.load(job.id).value(), job) << "after the rest it is tried again";
}

TEST_F(ServerStore, TextsThatAServerCannotHoldAreRefusedInWords) {
    const auto store = open();
    const Result<bool> set = store->set_setting("firm.name", std::string("a\0b", 3));
    EXPECT_TRUE(has(said(set), "holds the character 0")) << said(set);
    for (const std::string text :
         {"it's", "back\\slash", "\\'; DROP TABLE job; --", "?", "'?'", "$1", "%1", ":x", "\xC3\xA4\xF0\x9F\x8F\xA0"}) {
        ASSERT_TRUE(store->set_setting("k", text).ok()) << text;
        EXPECT_EQ(store->setting("k", "").value(), text);
    }
}

TEST_F(ServerStore, DamageOnTheServerIsFoundAndNotCopied) {
    const auto store = open();
    ASSERT_TRUE(store->save(sample_job(), at(1)).ok());
    EXPECT_EQ(sql(path(), "ALTER TABLE job_revision DISABLE TRIGGER USER"), "");
    EXPECT_EQ(sql(path(), "UPDATE job_revision SET content = replace(content, 'neighbour', 'neighbor')"), "");
    EXPECT_FALSE(store->load(sample_job().id).ok());
    EXPECT_TRUE(has(store->check().value(), "no longer has its hash")) << store->check().value();
    EXPECT_FALSE(store->backup(file("copy.db")).ok());
    EXPECT_TRUE(files().isEmpty()) << files().join(' ').toStdString();
}

}  // namespace
}  // namespace server_test
}  // namespace wg::store::test
