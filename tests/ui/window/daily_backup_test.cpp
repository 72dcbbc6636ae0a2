// The backup a day as the window makes it.

#include "ui/window/daily_backup.h"

#include <gtest/gtest.h>

#include <QDate>
#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "core/store/keeping.h"
#include "core/store/store.h"
#include "tests/ui/common/sample.h"

namespace wg::ui {
namespace daily_backup_test {
namespace {

std::string todays(const std::string& place) {
    return store::daily_file(place, QDate::currentDate().toString(Qt::ISODate).toStdString());
}

TEST(DailyBackupOfTheWindow, is_made_beside_the_open_store_without_a_word) {
    QTemporaryDir folder;
    const std::string place = folder.filePath(QStringLiteral("desk.sqlite")).toStdString();
    auto store = store::Store::open(place, Instant{1'800'000'000});
    ASSERT_TRUE(store.ok());
    Job job = sample::job();
    job.revision = 0;
    ASSERT_TRUE(store.value()->save(job, Instant{1'800'000'000}).ok());
    const std::string made = todays(place);
    {
        DailyBackup keeper(store.value()->path());
        QSignalSpy failed(&keeper, &DailyBackup::failed);
        keeper.begin();
        EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(QString::fromStdString(made)); }, 20000));
        EXPECT_EQ(failed.count(), 0);
    }
    auto copy = store::Store::open(made, Instant{1'800'000'000});
    ASSERT_TRUE(copy.ok());
    EXPECT_EQ(copy.value()->load(job.id).value().title, job.title);
}

TEST(DailyBackupOfTheWindow, says_when_none_could_be_made_and_ends_with_the_window) {
    QTemporaryDir folder;
    const std::string place = folder.filePath(QStringLiteral("desk.sqlite")).toStdString();
    auto store = store::Store::open(place, Instant{1'800'000'000});
    ASSERT_TRUE(store.ok());
    QFile in_the_way(folder.filePath(QStringLiteral("backups")));
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    DailyBackup keeper(place);
    QSignalSpy failed(&keeper, &DailyBackup::failed);
    keeper.begin();
    EXPECT_TRUE(QTest::qWaitFor([&] { return failed.count() == 1; }, 20000));
    EXPECT_TRUE(failed.value(0).value(0).toString().contains(QStringLiteral("cannot be made")));
    // Begun and left at once: the destructor waits.
    in_the_way.remove();
    {
        DailyBackup left(place);
        left.begin();
    }
    EXPECT_TRUE(QFile::exists(QString::fromStdString(todays(place))));
}

TEST(DailyBackupOfTheWindow, leaves_memory_and_servers_alone) {
    for (const char* place : {":memory:", "postgresql://ada@127.0.0.1:1/firm"}) {
        DailyBackup keeper{std::string(place)};
        QSignalSpy failed(&keeper, &DailyBackup::failed);
        keeper.begin();
        QTest::qWait(50);
        EXPECT_EQ(failed.count(), 0) << place;
    }
}

}  // namespace
}  // namespace daily_backup_test
}  // namespace wg::ui
