// Copies of papers that other programs were shown go again.

#include "ui/common/opened_papers.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace wg::ui {
namespace opened_papers_test {
namespace {

/// A cache folder of its own while it lives.
class OwnCache {
   public:
    OwnCache() : before_(qgetenv("XDG_CACHE_HOME")) { qputenv("XDG_CACHE_HOME", folder_.path().toLocal8Bit()); }
    ~OwnCache() { before_.isNull() ? qunsetenv("XDG_CACHE_HOME") : qputenv("XDG_CACHE_HOME", before_); }
    OwnCache(const OwnCache&) = delete;
    OwnCache& operator=(const OwnCache&) = delete;

   private:
    QByteArray before_;
    QTemporaryDir folder_;
};

void put(const QString& path, const QDateTime& written) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.write("%PDF-1.7");
    ASSERT_TRUE(file.flush()) << "writing later would make it new again";
    ASSERT_TRUE(file.setFileTime(written, QFileDevice::FileModificationTime));
}

TEST(OpenedPapers, old_ones_go_by_themselves_and_all_at_erasing) {
    const OwnCache own;
    const QDateTime now = QDateTime::currentDateTime();
    const QString fresh = place_for_opened_paper(QStringLiteral("quote-Q1.pdf"));
    const QString old = place_for_opened_paper(QStringLiteral("order-O1.pdf"));
    const QDir beside(QStandardPaths::writableLocation(QStandardPaths::CacheLocation));
    const QString older_program = beside.filePath(QStringLiteral("quote-Q0.pdf"));
    const QString not_ours = beside.filePath(QStringLiteral("shades.bin"));
    put(fresh, now.addSecs(-3600));
    for (const QString& path : {old, older_program, not_ours})
        put(path, now.addDays(-2));
    EXPECT_FALSE(QFile::permissions(QFileInfo(fresh).path()) & (QFile::ReadOther | QFile::ReadGroup));

    EXPECT_EQ(remove_opened_papers(now.addDays(-1)), 2);
    EXPECT_TRUE(QFile::exists(fresh));
    EXPECT_FALSE(QFile::exists(old));
    EXPECT_FALSE(QFile::exists(older_program));
    EXPECT_EQ(remove_opened_papers(), 1);
    EXPECT_FALSE(QFile::exists(fresh));
    EXPECT_TRUE(QFile::exists(not_ours));
    EXPECT_EQ(remove_opened_papers(), 0);
}

TEST(OpenedPapers, a_link_goes_and_what_it_leads_to_stays) {
    const OwnCache own;
    const QTemporaryDir elsewhere;
    const QString target = elsewhere.filePath(QStringLiteral("kept.pdf"));
    put(target, QDateTime::currentDateTime());
    const QString link = place_for_opened_paper(QStringLiteral("quote-link.pdf"));
    ASSERT_TRUE(QFile::link(target, link));
    EXPECT_EQ(remove_opened_papers(), 1);
    EXPECT_FALSE(QFile::exists(link));
    EXPECT_TRUE(QFile::exists(target));
}

}  // namespace
}  // namespace opened_papers_test
}  // namespace wg::ui
