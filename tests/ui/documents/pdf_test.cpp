#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "tests/ui/documents/sample.h"

namespace wg::ui {
namespace pdf_test {

constexpr Paper all_papers[] = {Paper::quote,  Paper::install_sheet, Paper::survey_sheet, Paper::workings,
                                Paper::record, Paper::service_sheet, Paper::booklet};

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Output of a program on a file; nullopt when the program is not installed.
std::optional<QString> output_of(const QString& program, const QString& path) {
    QProcess process;
    process.start(program, {path});
    if (!process.waitForStarted(5000)) return std::nullopt;
    process.waitForFinished(20000);
    return QString::fromUtf8(process.readAllStandardOutput());
}

TEST(PaperPdf, all_fonts_are_embedded_and_pages_are_a4) {
    QTemporaryDir folder;
    for (const Paper kind : all_papers) {
        const QString path = folder.filePath(file_name_of(kind));
        const auto written = write_pdf(kind, sample::input(), path);
        ASSERT_TRUE(written.ok()) << text_of(written.problems());
        const auto fonts = output_of(QStringLiteral("pdffonts"), path);
        const auto info = output_of(QStringLiteral("pdfinfo"), path);
        if (!fonts || !info) GTEST_SKIP() << "poppler's pdffonts and pdfinfo are not installed";
        const QStringList lines = fonts->trimmed().split(QLatin1Char('\n')).mid(2);
        ASSERT_FALSE(lines.isEmpty());
        for (const QString& line : lines) {
            // name type encoding emb sub uni object ID: 'emb' is the fifth column from the right.
            const QStringList columns = line.simplified().split(QLatin1Char(' '));
            ASSERT_GE(columns.size(), 7);
            EXPECT_EQ(columns[columns.size() - 5], QStringLiteral("yes")) << line.toStdString();
        }
        EXPECT_TRUE(info->contains(QStringLiteral("(A4)"))) << info->toStdString();
        const QString pages = QStringLiteral("Pages:");
        const QString count = info->mid(info->indexOf(pages) + pages.size()).trimmed().section(QLatin1Char('\n'), 0, 0);
        EXPECT_EQ(count.toInt(), static_cast<int>(written.value().pages.size()));
    }
}

TEST(PaperPdf, a_paper_that_cannot_be_written_leaves_what_was_there) {
    QTemporaryDir folder;
    const QString missing = folder.filePath(QStringLiteral("no such folder/quote.pdf"));
    const auto refused = write_pdf(Paper::quote, sample::input(), missing);
    ASSERT_FALSE(refused.ok());
    EXPECT_FALSE(refused.problems().front().remedy.empty());
    EXPECT_FALSE(QFile::exists(missing));
}

TEST(PaperPdf, an_older_paper_is_replaced_whole_and_nothing_else_is_left_in_the_folder) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("quote.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("older");
    old.close();
    ASSERT_TRUE(write_pdf(Paper::quote, sample::input(), path).ok());
    const QByteArray bytes = bytes_of(path);
    EXPECT_TRUE(bytes.startsWith("%PDF"));
    EXPECT_TRUE(bytes.trimmed().endsWith("%%EOF"));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

TEST(PaperPdf, preview_has_as_many_pages_as_the_paper_at_the_asked_size) {
    QTemporaryDir folder;
    const auto written = write_pdf(Paper::quote, sample::input(), folder.filePath(QStringLiteral("q.pdf")));
    ASSERT_TRUE(written.ok());
    const auto images = preview(Paper::quote, sample::input(), 40);
    EXPECT_EQ(images.size(), written.value().pages.size());
    EXPECT_EQ(images.front().size(), QSize(331, 468));  // A4 at 40 dpi
}

}  // namespace pdf_test
}  // namespace wg::ui
