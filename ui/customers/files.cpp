#include "ui/customers/files.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QStringList>

#include "core/quantity/time.h"
#include "core/sheets/xlsx_writer.h"
#include "core/tables/csv_writer.h"
#include "ui/common/whole_file.h"

namespace wg::ui {

namespace {

constexpr std::size_t year_digits = 4;

/// Days that a spreadsheet does not count stay text.
sheets::Cell date_cell(const std::string& text) {
    if (text.substr(0, year_digits) < "1900") return text;
    if (const auto day = date_from_iso8601(text)) return day.value();
    if (const auto moment = instant_from_iso8601(text)) return moment.value();
    return text;
}

}  // namespace

Result<bool> write_table(const QString& path, const QString& name, const std::vector<std::vector<std::string>>& rows,
                         const std::set<std::size_t>& dates) {
    if (!path.endsWith(QStringLiteral(".xlsx"), Qt::CaseInsensitive)) return write_whole(path, tables::write_csv(rows));
    sheets::Sheet sheet;
    sheet.name = name.toStdString();
    if (!rows.empty()) sheet.heads = rows.front();
    for (std::size_t i = 1; i < rows.size(); ++i) {
        sheet.rows.emplace_back(rows[i].begin(), rows[i].end());
        for (const std::size_t column : dates) {
            if (column < rows[i].size()) sheet.rows.back()[column] = date_cell(rows[i][column]);
        }
    }
    return sheets::write_xlsx(path.toStdString(), sheet, {QDateTime::currentSecsSinceEpoch()});
}

QString table_files(bool csv_first) {
    const QString sheet = QCoreApplication::translate("Files", "Spreadsheet (*.xlsx)");
    const QString csv = QCoreApplication::translate("Files", "CSV (*.csv)");
    return (csv_first ? QStringList{csv, sheet} : QStringList{sheet, csv}).join(QStringLiteral(";;"));
}

}  // namespace wg::ui
