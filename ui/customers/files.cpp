#include "ui/customers/files.h"

#include <QCoreApplication>
#include <QDateTime>

#include "core/sheets/xlsx_writer.h"
#include "core/tables/csv_writer.h"
#include "ui/common/whole_file.h"

namespace wg::ui {
Result<bool> write_table(const QString& path, const QString& name, const std::vector<std::vector<std::string>>& rows) {
    if (!path.endsWith(QStringLiteral(".xlsx"), Qt::CaseInsensitive)) return write_whole(path, tables::write_csv(rows));
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
