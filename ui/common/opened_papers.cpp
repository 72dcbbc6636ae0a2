#include "ui/common/opened_papers.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

QDir cache_folder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::CacheLocation));
}

QDir folder_of_papers() {
    return QDir(cache_folder().filePath(QStringLiteral("papers")));
}

int remove_from(const QDir& folder, const QStringList& names, const QDateTime& written_before) {
    int gone = 0;
    for (const QFileInfo& file : folder.entryInfoList(names, QDir::Files | QDir::Hidden)) {
        // A link is removed itself, never what it leads to.
        if (written_before.isValid() && file.lastModified() >= written_before) continue;
        if (QFile::remove(file.filePath())) ++gone;
    }
    return gone;
}

}  // namespace

QString paper_file_stem(const std::string& number) {
    QString stem;
    for (const QChar c : qs(number))
        stem += c.isLetterOrNumber() || c == QLatin1Char('-') ? c : QLatin1Char('-');
    return stem;
}

QString place_for_opened_paper(const QString& file_name) {
    const QDir folder = folder_of_papers();
    folder.mkpath(QStringLiteral("."));
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    return folder.filePath(file_name);
}

int remove_opened_papers(const QDateTime& written_before) {
    // A program without a name has no folder of its own, and another one's is none of ours.
    if (QStandardPaths::writableLocation(QStandardPaths::CacheLocation).isEmpty()) return 0;
    int gone = remove_from(folder_of_papers(), {QStringLiteral("*.pdf")}, written_before);
    gone += remove_from(
        cache_folder(),
        {QStringLiteral("quote-*.pdf"), QStringLiteral("order-*.pdf"), QStringLiteral("change-order-*.pdf")},
        written_before);
    return gone;
}

}  // namespace wg::ui
