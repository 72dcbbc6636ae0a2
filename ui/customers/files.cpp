#include "ui/customers/files.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "core/sheets/xlsx_writer.h"
#include "core/tables/csv_writer.h"

namespace wg::ui {
namespace {

constexpr qint64 most_file_bytes = qint64{64} << 20;

}  // namespace

Result<std::string> bytes_of_file(const QString& path) {
    const std::string name = QFileInfo(path).fileName().toStdString();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{name, file.errorString().toStdString(), "Check that the file may be read"};
    if (file.size() > most_file_bytes) return Problem{name, "is longer than 64 MB", "Split it into parts"};
    const QByteArray bytes = file.read(most_file_bytes + 1);
    if (file.error() != QFileDevice::NoError)
        return Problem{name, file.errorString().toStdString(), "Check that the file may be read"};
    return bytes.toStdString();
}

Result<bool> write_file_whole(const QString& path, std::string_view bytes) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes.size());
    if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit()) return true;
    return Problem{path.toStdString(), "cannot be written: " + file.errorString().toStdString(),
                   "Choose a folder you may write to"};
}

Result<bool> write_table(const QString& path, const QString& name, const std::vector<std::vector<std::string>>& rows) {
    if (!path.endsWith(QStringLiteral(".xlsx"), Qt::CaseInsensitive))
        return write_file_whole(path, tables::write_csv(rows));
    sheets::Sheet sheet;
    sheet.name = name.toStdString();
    if (!rows.empty()) sheet.heads = rows.front();
    for (std::size_t i = 1; i < rows.size(); ++i)
        sheet.rows.emplace_back(rows[i].begin(), rows[i].end());
    return sheets::write_xlsx(path.toStdString(), sheet, {QDateTime::currentSecsSinceEpoch()});
}

QString table_files() {
    return QCoreApplication::translate("Files", "Spreadsheet (*.xlsx);;CSV (*.csv)");
}

}  // namespace wg::ui
