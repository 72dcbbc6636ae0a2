#include "ui/common/figure_table.h"

#include <string>
#include <vector>

#include "core/tables/csv_writer.h"

namespace wg::ui {

QByteArray FigureTable::to_csv() const {
    std::vector<std::vector<std::string>> lines;
    lines.reserve(static_cast<std::size_t>(rows.size()) + 1);
    const auto add = [&lines](const QStringList& cells) {
        std::vector<std::string>& line = lines.emplace_back();
        line.reserve(static_cast<std::size_t>(cells.size()));
        for (const QString& cell : cells)
            line.push_back(cell.toStdString());
    };
    add(header);
    for (const QStringList& row : rows)
        add(row);
    return QByteArray::fromStdString(tables::write_csv(lines));
}

QString FigureTable::to_text() const {
    QString out;
    const auto add = [&out](const QStringList& cells) {
        QStringList plain = cells;
        plain.replaceInStrings(QStringLiteral("\t"), QStringLiteral(" "));
        plain.replaceInStrings(QStringLiteral("\n"), QStringLiteral(", "));
        out += plain.join(QLatin1Char('\t')) + QLatin1Char('\n');
    };
    add(header);
    for (const QStringList& row : rows)
        add(row);
    return out;
}

}  // namespace wg::ui
