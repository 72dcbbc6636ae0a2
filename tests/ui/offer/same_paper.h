#pragma once
// Whether two prints are of the same paper.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <string>

namespace wg::ui::paper_year_test {

inline QByteArray run_tool(const QString& program, const QStringList& arguments) {
    QProcess tool;
    tool.start(program, arguments);
    EXPECT_TRUE(tool.waitForFinished(60000)) << program.toStdString();
    EXPECT_EQ(tool.exitCode(), 0) << program.toStdString() << tool.readAllStandardError().toStdString();
    return tool.readAllStandardOutput();
}

/// Without what tells one print of the same paper from another: dates and identifiers of the file.
inline QByteArray without_times(QByteArray pdf) {
    static const QRegularExpression changing(
        QStringLiteral("\\(D:[^)]*\\)|uuid:[0-9a-fA-F-]{36}|\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d[^<]*|/ID "
                       "\\[[^\\]]*\\]"));
    return QString::fromLatin1(pdf).remove(changing).toLatin1();
}

/// Words, pages and pictures as other programs read them; empty: no difference.
inline std::string difference(const QByteArray& one, const QByteArray& other) {
    if (without_times(one) == without_times(other)) return {};
    const QTemporaryDir folder;
    QByteArray words[2];
    QByteArray pages[2];
    int n = 0;
    for (const QByteArray& pdf : {one, other}) {
        const QString path = folder.filePath(QStringLiteral("%1.pdf").arg(n));
        QFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size()) return "cannot be written";
        file.close();
        words[n] = run_tool(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
        // One picture file a page: their number is that of pages.
        const QString at = folder.filePath(QStringLiteral("pages%1").arg(n));
        QDir().mkpath(at);
        run_tool(QStringLiteral("pdftoppm"),
                 {QStringLiteral("-r"), QStringLiteral("50"), path, at + QStringLiteral("/page")});
        for (const QFileInfo& page : QDir(at).entryInfoList(QDir::Files, QDir::Name)) {
            QFile picture(page.filePath());
            if (picture.open(QIODevice::ReadOnly)) pages[n] += picture.readAll();
        }
        ++n;
    }
    if (words[0].isEmpty() || pages[0].isEmpty()) return "cannot be read";
    if (words[0] != words[1]) return "other words:\n" + words[0].toStdString() + "\n---\n" + words[1].toStdString();
    return pages[0] == pages[1] ? std::string() : "other pictures or pages";
}

}  // namespace wg::ui::paper_year_test
