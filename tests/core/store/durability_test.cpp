// What is acknowledged stays, whatever ends the program, the server or the room on the disk; the rest is whole.

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <algorithm>
#include <atomic>
#include <random>
#include <thread>

#include "core/store/connection.h"
#include "tests/core/store/file_limit.h"
#include "tests/core/store/script.h"
#include "tests/core/store/server.h"
#include "tests/core/store/store_fixture.h"
#include "tests/tools/sweep.h"

namespace wg::store::test {
namespace durability_test {
namespace {

std::string problem_of(const Result<bool>& result) {
    return result.ok() ? "" : text_of(result.problems());
}

// ------------------------------------------------------------------------------------ the program is killed

// Child: takes one step after the other, acknowledges each, and makes a backup now and then.
[[noreturn]] void write_until_killed(const std::string& file, int pipe) {
    const Result<std::unique_ptr<Store>> opened = Store::open(file, at(0));
    if (!opened) _exit(1);
    for (int n = 0;; ++n) {
        if (!write_step(*opened.value(), n)) _exit(2);
        if (::write(pipe, &n, sizeof n) != sizeof n) _exit(3);
        if (n % 9 == 8 && !opened.value()->backup(file + ".copy-" + std::to_string(n))) _exit(4);
    }
}

TEST_F(StoreTest, AProgramKilledInAnyWriteLosesNothingAcknowledged) {
    Replay whole(file("whole.db"));
    std::mt19937_64 random(20261129);
    const int rounds = std::max(4, sweep::cases(8));
    for (int round = 0; round < rounds; ++round) {
        const std::string killed = file(("killed" + std::to_string(round) + ".db").c_str());
        int ends[2] = {};
        ASSERT_EQ(pipe(ends), 0);
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) write_until_killed(killed, ends[1]);
        close(ends[1]);
        int acknowledged = -1;
        const auto before = static_cast<int>(random() % (2 * steps_of_all_kinds));
        for (int i = 0; i <= before; ++i)
            ASSERT_EQ(read(ends[0], &acknowledged, sizeof acknowledged), static_cast<ssize_t>(sizeof acknowledged))
                << "the child stopped after step " << acknowledged;
        usleep(static_cast<useconds_t>(random() % 30000));
        ASSERT_EQ(kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself with " << WEXITSTATUS(status);
        int last = 0;
        while (read(ends[0], &last, sizeof last) == static_cast<ssize_t>(sizeof last))
            acknowledged = last;
        close(ends[0]);

        const auto store = open(killed);
        ASSERT_NE(store, nullptr);
        EXPECT_EQ(store->check().value(), "ok");
        // One step may have been finished without its acknowledgement.
        const std::string found = digest_at(killed);
        EXPECT_TRUE(found == whole.after(acknowledged + 1) || found == whole.after(acknowledged + 2))
            << "after step " << acknowledged;
        for (const QString& name : files().filter(QString::fromStdString(killed).section('/', -1) + ".copy-")) {
            if (name.endsWith(".part") || name.contains(".part-")) continue;
            const auto copy = open(file(name.toUtf8().constData()));
            ASSERT_NE(copy, nullptr);
            EXPECT_EQ(copy->check().value(), "ok") << name.toStdString() << " has its name and is not whole";
        }
    }
}

// ------------------------------------------------------------------------------------ the disk is full

TEST_F(StoreTest, AWriteThatFindsNoRoomChangesNothingAndWorksOnceThereIsSome) {
    Replay whole(file("whole.db"));
    std::mt19937_64 random(7);
    auto store = open();
    int failed = 0;
    const int steps = 3 * steps_of_all_kinds;
    for (int n = 0; n < steps; ++n) {
        {
            const auto log_bytes = static_cast<std::uint64_t>(QFile(QString::fromStdString(path() + "-wal")).size());
            const FileLimit limit(log_bytes + random() % 40000);
            const Result<bool> step = write_step(*store, n);
            if (step.ok()) continue;
            ++failed;
            EXPECT_NE(problem_of(step).find("jobs.db: "), std::string::npos) << problem_of(step);
            EXPECT_TRUE(store->list("", 10, 0).ok()) << "what is there can be read";
        }
        EXPECT_EQ(digest_at(path()), whole.after(n)) << "a refused step " << n << " left something";
        const Result<bool> again = write_step(*store, n);
        ASSERT_TRUE(again.ok()) << "step " << n << ": " << problem_of(again);
        EXPECT_EQ(digest_at(path()), whole.after(n + 1)) << n;
        if (n % 5 == 0) {
            store.reset();
            store = open();
        }
    }
    EXPECT_GT(failed, steps / 3);
    EXPECT_EQ(store->check().value(), "ok");
}

TEST_F(StoreTest, ABackupThatFindsNoRoomLeavesNoFile) {
    const auto store = open();
    for (int n = 0; n < 9; ++n)
        ASSERT_TRUE(write_step(*store, n).ok());
    const std::string before = digest_at(path());
    for (const rlim_t bytes : {0UL, 5000UL, 60000UL}) {
        {
            const FileLimit limit(bytes);
            EXPECT_FALSE(store->backup(file("copy.db")).ok()) << bytes;
        }
        EXPECT_TRUE(files().filter("copy").isEmpty()) << files().join(' ').toStdString();
    }
    EXPECT_TRUE(store->backup(file("copy.db")).ok());
    EXPECT_EQ(digest_at(file("copy.db")), before);
}

TEST_F(StoreTest, OpeningANewFileWithoutRoomIsRefusedAndWorksLater) {
    int refused = 0;
    for (rlim_t bytes = 2000; bytes < 200000; bytes += 9000) {
        const std::string name = file(("new" + std::to_string(bytes) + ".db").c_str());
        {
            const FileLimit limit(bytes);
            refused += refusal(name).empty() ? 0 : 1;
        }
        const auto store = open(name);
        ASSERT_NE(store, nullptr) << bytes;
        EXPECT_EQ(store->check().value(), "ok");
        EXPECT_TRUE(write_step(*store, 0).ok());
    }
    EXPECT_GT(refused, 3);
}

// A disk of its own, one megabyte large.
class SmallDisk {
   public:
    explicit SmallDisk(QString folder) : folder_(std::move(folder)) {
        QDir().mkpath(folder_);
        mounted_ = mount("tmpfs", folder_.toLocal8Bit().constData(), "tmpfs", 0, "size=1600k") == 0;
    }
    ~SmallDisk() {
        if (mounted_) umount2(folder_.toLocal8Bit().constData(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    [[nodiscard]] bool mounted() const { return mounted_; }
    /// Takes all room but about so many bytes.
    void fill_but(std::size_t bytes) const {
        QFile ballast(folder_ + "/ballast");
        ballast.remove();
        if (!ballast.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) return;
        const QByteArray page(4096, 'x');
        while (ballast.write(page) == page.size()) {
        }
        ballast.resize(std::max<qint64>(0, ballast.size() - static_cast<qint64>(bytes)));
    }
    void clear() const { QFile::remove(folder_ + "/ballast"); }

   private:
    QString folder_;
    bool mounted_ = false;
};

TEST_F(StoreTest, AFullDiskIsSaidAndCostsNothingAcknowledged) {
    const SmallDisk disk(folder_.filePath("disk"));
    if (!disk.mounted()) GTEST_SKIP() << "SKIPPED: a small disk cannot be mounted here";
    Replay whole(file("whole.db"));
    const std::string place = file("disk/jobs.db");
    std::mt19937_64 random(11);
    auto store = open(place);
    int failed = 0;
    for (int n = 0; n < 12; ++n) {
        disk.fill_but(random() % 5 * 4096);
        const Result<bool> step = write_step(*store, n);
        if (!step) {
            ++failed;
            EXPECT_NE(problem_of(step).find("Make room on the disk"), std::string::npos) << problem_of(step);
            if (n % 3 == 0) {
                // The program ends with the disk still full and starts again on it.
                store.reset();
                disk.clear();
                store = open(place);
                ASSERT_NE(store, nullptr);
            }
            disk.clear();
            EXPECT_EQ(digest_at(place), whole.after(n)) << n;
            const Result<bool> again = write_step(*store, n);
            ASSERT_TRUE(again.ok()) << n << ": " << problem_of(again);
        }
        disk.clear();
    }
    EXPECT_GT(failed, 3);
    EXPECT_EQ(digest_at(place), whole.after(12));
    EXPECT_EQ(store->check().value(), "ok");
}

// ------------------------------------------------------------------------------------ the server is killed

TEST_F(ServerStore, AServerKilledWhileSavingLosesNothingAcknowledgedAndTheSeatGoesOn) {
    Replay whole(file("whole.db"));
    const std::string place = path();
    static_cast<void>(open());
    std::mt19937_64 random(20261129);
    std::atomic<int> acknowledged = 0;  // steps
    std::atomic<bool> enough = false;
    std::atomic<int> lost = 0;
    std::atomic<bool> gave_up = false;
    std::string why;
    // One seat with one connection through all of it.
    std::thread seat([&] {
        const auto opened = Store::open_place(place, at(0));
        int tries = 0;
        while (!enough && opened.ok()) {
            const Result<bool> step = write_step(*opened.value(), acknowledged);
            if (step) {
                ++acknowledged;
                tries = 0;
                continue;
            }
            ++lost;
            // A step whose answer was lost may have been made; what says so is taken as its answer.
            if (tries++ > 0 && digest_at(place) == whole.after(acknowledged + 1)) {
                ++acknowledged;
                tries = 0;
            }
            if (tries > 2000) {
                why = text_of(step.problems());
                gave_up = true;
                return;
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        }
    });
    const int rounds = std::max(2, sweep::cases(3));
    for (int round = 0; round < rounds; ++round) {
        const int before = acknowledged;
        while (acknowledged < before + 5 && !gave_up)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 20000));
        Server::shared()->kill_hard();
        const int at_death = acknowledged;
        ASSERT_TRUE(Server::shared()->start());
        EXPECT_GE(acknowledged, at_death);
        const auto store = open();
        ASSERT_NE(store, nullptr);
        EXPECT_EQ(store->check().value(), "ok");
    }
    const int before = acknowledged;
    while (acknowledged < before + 3 && !gave_up)
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    enough = true;
    seat.join();
    EXPECT_EQ(why, "");
    EXPECT_GT(lost, 0) << "no kill met a write";
    EXPECT_EQ(digest_at(place), whole.after(acknowledged));
}

}  // namespace
}  // namespace durability_test
}  // namespace wg::store::test
