#include "ui/common/whole_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

namespace wg::ui {
namespace whole_file_test {
namespace {

TEST(WholeFile, WhatWasWrittenIsRead) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("caf\u00e9.bin"));
    const std::string bytes("\0one\r\ntwo\xff", 10);
    ASSERT_TRUE(write_whole(path, bytes));
    EXPECT_EQ(read_whole(path).value(), bytes);
    ASSERT_TRUE(write_whole(path, QByteArray("shorter"))) << "over the old one";
    EXPECT_EQ(read_whole(path).value(), "shorter");
    ASSERT_TRUE(write_whole(path, QByteArray()));
    EXPECT_EQ(read_whole(path).value(), "");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1) << "nothing is left beside it";
}

TEST(WholeFile, RefusesWhatIsNoFileOrTooLong) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("long"));
    ASSERT_TRUE(write_whole(path, std::string(mebibyte + 1, 'x')));
    EXPECT_EQ(read_whole(path, mebibyte).problems().front().what, "is larger than 1 MiB");
    EXPECT_TRUE(read_whole(path, mebibyte + 1)) << "as long as is allowed";
    EXPECT_EQ(read_whole(folder.path()).problems().front().what, "is a folder, not a file");
    EXPECT_FALSE(read_whole(folder.filePath(QStringLiteral("none"))));
    // A device without an end is left after as much as is allowed.
    EXPECT_EQ(read_whole(QStringLiteral("/dev/zero"), mebibyte).problems().front().what, "is larger than 1 MiB");
}

TEST(WholeFile, AFailedWriteLeavesTheOldFile) {
    const QTemporaryDir folder;
    // A pipe is neither written to nor replaced by a file.
    const QString pipe = folder.filePath(QStringLiteral("pipe"));
    ASSERT_EQ(mkfifo(pipe.toUtf8().constData(), 0600), 0);
    EXPECT_FALSE(write_whole(pipe, QByteArray("x")));
    EXPECT_FALSE(QFileInfo(pipe).isFile());
    EXPECT_FALSE(write_whole(folder.path(), QByteArray("x")));
    const Result<bool> written = write_whole(folder.filePath(QStringLiteral("none/file")), QByteArray("x"));
    ASSERT_FALSE(written);
    EXPECT_NE(written.problems().front().where.find("none"), std::string::npos);
    EXPECT_FALSE(written.problems().front().remedy.empty());
}

}  // namespace
}  // namespace whole_file_test
}  // namespace wg::ui
