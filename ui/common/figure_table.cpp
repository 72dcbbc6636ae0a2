#include "ui/common/figure_table.h"

namespace wg::ui {
namespace {

QString quoted_cell(QString text) {
    // A spreadsheet would run these as a formula (OWASP, "CSV Injection"); a negative number is none.
    bool is_number = false;
    text.toDouble(&is_number);
    const bool formula = !text.isEmpty() && !is_number && QStringLiteral("=+-@\t\r").contains(text.front());
    if (formula) text.prepend(QLatin1Char('\''));
    if (text.contains(QLatin1Char('"')) || text.contains(QLatin1Char(',')) || text.contains(QLatin1Char('\n')) ||
        text.contains(QLatin1Char('\r'))) {
        text.replace(QLatin1Char('"'), QStringLiteral("\"\""));
        text = QLatin1Char('"') + text + QLatin1Char('"');
    }
    return text;
}

}  // namespace

QByteArray FigureTable::to_csv() const {
    QString out;
    const auto add = [&out](const QStringList& cells) {
        QStringList quoted;
        for (const QString& text : cells)
            quoted += quoted_cell(text);
        out += quoted.join(QLatin1Char(',')) + QStringLiteral("\r\n");
    };
    add(header);
    for (const QStringList& row : rows)
        add(row);
    return out.toUtf8();
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
