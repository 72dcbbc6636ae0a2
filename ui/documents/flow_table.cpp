// Tables: widths, header that comes again, rows that never run off.

#include "ui/documents/flow.h"

#include <algorithm>
#include <cmath>

#include "ui/documents/flow_measures.h"

namespace wg::ui::paper {

using namespace measures;

namespace {

/// A column of words straight after one of figures needs more air than the cells' padding gives.
double inset_of(const Table& table, std::size_t column) {
    const bool after_figures = column > 0 && table.columns[column - 1].right && !table.columns[column].right;
    return after_figures ? 3.5 * mm : cell_pad;
}

double widest_word(const QString& text, const Style& style) {
    double widest = 0.0;
    for (const QString& word : with_units_held(text).split(QLatin1Char(' '), Qt::SkipEmptyParts))
        widest = std::max(widest, text_width(word, style));
    return widest;
}

/// What each column needs so that none of its words, nor a figure with its unit, is broken.
std::vector<double> least_widths(const Table& table, const Sheet& sheet, double room) {
    std::vector<double> least;
    least.reserve(table.columns.size());
    const Style head = sheet.lettered({least_pt, true, false});
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        double word = std::max(table.columns[i].tick ? 4.5 * mm : 0.0, widest_word(table.columns[i].title, head));
        for (const Row& row : table.rows) {
            const auto at = static_cast<qsizetype>(i);
            if (row.kind == Row::Kind::group || at >= row.cells.size()) continue;
            const Style style = sheet.lettered({table.size_pt, row.kind != Row::Kind::plain, false});
            word = std::max(word, widest_word(row.cells[at], style));
        }
        // A single endless word is broken rather than given the whole row.
        least.push_back(std::min(word, room / 2.0) + inset_of(table, i) + cell_pad + 0.2 * mm);
    }
    return least;
}

/// Widths as the columns name them, but at least what their longest words ask for; the others give in proportion to
/// what they have to spare. In large print, where all words are wider than named for, all share what is left.
std::vector<double> widths_of(const Table& table, const Sheet& sheet, double room) {
    double fixed = 0.0;
    int shared = 0;
    for (const Column& column : table.columns) {
        fixed += column.width_mm * mm;
        if (column.width_mm <= 0.0) ++shared;
    }
    std::vector<double> widths;
    widths.reserve(table.columns.size());
    for (const Column& column : table.columns)
        widths.push_back(column.width_mm > 0.0 ? column.width_mm * mm : (room - fixed) / std::max(1, shared));
    const std::vector<double> least = least_widths(table, sheet, room);
    double needed = 0.0;
    double spare = 0.0;
    double lacking = fixed > room + 1.0 ? 1.0 : 0.0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        needed += least[i];
        spare += std::max(0.0, widths[i] - least[i]);
        lacking += std::max(0.0, least[i] - widths[i]);
    }
    if (!sheet.large_print && lacking <= 0.0) return widths;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        widths[i] = needed >= room || spare <= 0.0
                        ? least[i] * room / needed
                        : least[i] + (room - needed) * std::max(0.0, widths[i] - least[i]) / spare;
    }
    return widths;
}

/// The table's columns one group below the other, each group as many as stand side by side with their words whole.
/// Tables that fit, and forms ruled as a grid, stay as they are.
std::vector<Table> bands_of(const Table& table, const Sheet& sheet, double room) {
    const std::vector<double> least = least_widths(table, sheet, room);
    double used = 0.0;
    std::vector<std::size_t> starts{0};
    for (std::size_t i = 0; i < least.size(); ++i) {
        if (used + least[i] > room && i > starts.back()) {
            starts.push_back(i);
            used = 0.0;
        }
        used += least[i];
    }
    if (starts.size() == 1 || table.grid) return {table};
    std::vector<Table> bands;
    bands.reserve(starts.size());
    for (std::size_t b = 0; b < starts.size(); ++b) {
        const std::size_t from = starts[b];
        const std::size_t to = b + 1 < starts.size() ? starts[b + 1] : table.columns.size();
        Table band = table;
        band.columns.assign(table.columns.begin() + static_cast<std::ptrdiff_t>(from),
                            table.columns.begin() + static_cast<std::ptrdiff_t>(to));
        for (Row& row : band.rows) {
            row.struck.clear();
            if (row.kind != Row::Kind::group)
                row.cells = row.cells.mid(static_cast<qsizetype>(from), static_cast<qsizetype>(to - from));
        }
        bands.push_back(std::move(band));
    }
    return bands;
}

}  // namespace

void Flow::header_row(const Table& table, const std::vector<double>& widths) {
    const Style style = sheet().lettered({least_pt, true, false});
    std::vector<QStringList> cells;
    qsizetype most = 1;
    bool any = false;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        cells.push_back(wrap(table.columns[i].title, style, widths[i] - inset_of(table, i) - cell_pad));
        most = std::max(most, cells.back().size());
        any = any || !table.columns[i].title.isEmpty();
    }
    if (!any) return;
    double x = x_;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double inset = inset_of(table, i);
        if (!table.columns[i].title.isEmpty()) page().text += table.columns[i].title;
        // Titles of one line stand on the rule beside those of two.
        double top = y_ + static_cast<double>(most - cells[i].size()) * line_height(style);
        for (const QString& line : cells[i]) {
            letter(x + inset, top, line, style, widths[i] - inset - cell_pad, table.columns[i].right);
            top += line_height(style);
        }
        x += widths[i];
    }
    y_ += static_cast<double>(most) * line_height(style) + 0.8 * mm;
    page().rules.push_back({QLineF(x_, y_, x_ + room_, y_), firm_rule});
}

std::vector<Flow::Cell> Flow::cells_of(const Table& table, const std::vector<double>& widths, const Row& row) const {
    const Style style = sheet().lettered({table.size_pt, row.kind != Row::Kind::plain, false});
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const auto at = static_cast<qsizetype>(i);
        const QString text = at < row.cells.size() ? row.cells[at] : QString();
        const double width = row.kind == Row::Kind::group ? room_ : widths[i];
        cells.push_back({wrap(text, style, width - inset_of(table, i) - cell_pad), style});
        if (row.kind == Row::Kind::group) break;
    }
    return cells;
}

double Flow::height_of(const Table& table, const std::vector<double>& widths, const Row& row) const {
    qsizetype most = 1;
    double each = line_height(sheet().lettered({table.size_pt, false, false}));
    for (const Cell& cell : cells_of(table, widths, row)) {
        most = std::max(most, cell.lines.size());
        each = line_height(cell.style);
    }
    return std::max(static_cast<double>(most) * each + row_pad, table.least_row_mm * mm);
}

void Flow::body_row(const Table& table, const std::vector<double>& widths, const Row& row, bool ruled) {
    const std::vector<Cell> cells = cells_of(table, widths, row);
    qsizetype most = 1;
    for (const Cell& cell : cells)
        most = std::max(most, cell.lines.size());
    const double each = line_height(sheet().lettered({table.size_pt, row.kind != Row::Kind::plain, false}));
    double height = height_of(table, widths, row);
    // A group's title goes with its first rows.
    const double wanted = row.kind == Row::Kind::group ? height + 2.0 * (each + row_pad) : height;
    if (wanted > left() && !at_top()) {
        new_page();
        header_row(table, widths);
    }
    for (const QString& cell : row.cells) {
        if (!cell.isEmpty()) page().text += cell;
    }
    // A row longer than a page goes on over pages line by line.
    qsizetype from = 0;
    while (from < most) {
        const auto room = std::max<qsizetype>(1, static_cast<qsizetype>(std::floor((left() - row_pad + 1.0) / each)));
        const qsizetype count = std::min(room, most - from);
        double x = x_;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double inset = inset_of(table, i);
            double top = y_ + row_pad / 2.0;
            for (const QString& line : cells[i].lines.mid(from, count)) {
                const bool right = table.columns[i].right && row.kind != Row::Kind::group;
                letter(x + inset, top, line, cells[i].style, widths[i] - inset - cell_pad, right);
                if (!line.isEmpty() && std::count(row.struck.begin(), row.struck.end(), i) > 0) {
                    const Lettering& words = page().lettering.back();
                    const double middle = top + each * 0.52;
                    page().rules.push_back(
                        {QLineF(words.baseline.x(), middle, words.baseline.x() + words.width, middle), firm_rule});
                }
                top += each;
            }
            if (table.columns[i].tick && from == 0 && row.kind == Row::Kind::plain) {
                page().boxes.push_back(
                    {QRectF(x + inset, y_ + row_pad / 2.0 + 0.3 * mm, 3.4 * mm, 3.4 * mm), firm_rule});
            }
            x += widths[i];
        }
        from += count;
        height = std::max(static_cast<double>(count) * each + row_pad, from < most ? 0.0 : table.least_row_mm * mm);
        if (table.grid) {
            double upright = x_;
            for (std::size_t i = 0; i + 1 < widths.size(); ++i) {
                upright += widths[i];
                page().rules.push_back({QLineF(upright, y_, upright, y_ + height), thin_rule});
            }
        }
        y_ += height;
        if (ruled)
            page().rules.push_back(
                {QLineF(x_, y_, x_ + room_, y_), row.kind == Row::Kind::plain ? thin_rule : firm_rule});
        if (from < most) {
            new_page();
            header_row(table, widths);
        }
    }
}

double Flow::header_height(const Table& table, const std::vector<double>& widths) const {
    const Style head = sheet().lettered({least_pt, true, false});
    qsizetype lines = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const QString& title = table.columns[i].title;
        if (!title.isEmpty())
            lines = std::max(lines, wrap(title, head, widths[i] - inset_of(table, i) - cell_pad).size());
    }
    return static_cast<double>(lines) * line_height(head) + 1.0 * mm;
}

void Flow::table(const Table& table) {
    const std::vector<Table> bands = bands_of(table, sheet(), room_);
    if (bands.size() > 1) {
        banded_table(bands);
        return;
    }
    const std::vector<double> widths = widths_of(table, sheet(), room_);
    // The header goes with at least the first three rows.
    double wanted = header_height(table, widths);
    // First rows too long for any page: at least the header with two lines.
    const double header_and_two = wanted + 2.0 * line_height(type_.body) + row_pad;
    std::size_t together = table.whole ? table.rows.size() : std::min<std::size_t>(table.rows.size(), 3);
    if (!table.whole && !table.rows.empty() && table.rows.front().kind == Row::Kind::group) ++together;
    for (std::size_t i = 0; i < std::min(together, table.rows.size()); ++i) {
        wanted += height_of(table, widths, table.rows[i]);
    }
    keep(wanted <= full_height() ? wanted : header_and_two);
    header_row(table, widths);
    const std::size_t rows = table.rows.size();
    // The last row never stands alone on a page.
    const std::size_t last = std::max<std::size_t>(table.last_together, 2);
    for (std::size_t i = 0; i < rows; ++i) {
        if (i > 0 && (i + last == rows || i + 2 == rows) && !at_top()) {
            double of_last = 0.0;
            for (std::size_t row = i; row < rows; ++row)
                of_last += height_of(table, widths, table.rows[row]);
            if (of_last > left() && of_last <= 0.5 * full_height()) {
                new_page();
                header_row(table, widths);
            }
        }
        body_row(table, widths, table.rows[i]);
    }
    y_ += gap_small;
}

void Flow::banded_table(const std::vector<Table>& bands) {
    std::vector<std::vector<double>> widths;
    widths.reserve(bands.size());
    double head = 0.0;
    for (const Table& band : bands) {
        widths.push_back(widths_of(band, sheet(), room_));
        head += header_height(band, widths.back());
    }
    const auto heads = [&] {
        for (std::size_t b = 0; b < bands.size(); ++b)
            header_row(bands[b], widths[b]);
    };
    const auto row_height = [&](std::size_t row) {
        double height = 0.0;
        for (std::size_t b = 0; b < bands.size(); ++b) {
            height += height_of(bands[b], widths[b], bands[b].rows[row]);
            if (bands[b].rows[row].kind == Row::Kind::group) break;
        }
        return height;
    };
    const std::size_t rows = bands.front().rows.size();
    for (std::size_t i = 0; i < rows; ++i) {
        double wanted = row_height(i);
        // A group's title goes with its first row.
        if (bands.front().rows[i].kind == Row::Kind::group && i + 1 < rows) wanted += row_height(i + 1);
        if (const std::size_t last = bands.front().last_together; last > 0 && i + last == rows) {
            double of_last = 0.0;
            for (std::size_t row = i; row < rows; ++row)
                of_last += row_height(row);
            if (of_last <= 0.5 * full_height()) wanted = of_last;
        }
        if (i == 0) {
            keep(std::min(head + wanted, full_height()));
            heads();
        } else if (wanted > left() && !at_top()) {
            new_page();
            heads();
        }
        if (bands.front().rows[i].kind == Row::Kind::group) {
            body_row(bands.front(), widths.front(), bands.front().rows[i]);
            continue;
        }
        for (std::size_t b = 0; b < bands.size(); ++b)
            body_row(bands[b], widths[b], bands[b].rows[i], b + 1 == bands.size());
    }
    y_ += gap_small;
}

void Flow::keep_with(const Table& table, const QStringList& formula_parts, const QString& below, const Style& asked) {
    const Style style = sheet().lettered(asked);
    const std::vector<double> widths = widths_of(table, sheet(), room_);
    double wanted =
        gap_small * 2.0 + 2.0 * (line_height(type_.body) + row_pad);  // the table asks for its header's room
    for (const QString& part : formula_parts)
        wanted += static_cast<double>(wrap(part, type_.formula, room_ - 8.0 * mm).size()) * line_height(type_.formula);
    for (const Row& row : table.rows)
        wanted += height_of(table, widths, row);
    if (!below.isEmpty()) wanted += static_cast<double>(wrap(below, style, room_).size()) * line_height(style);
    // Longer than a page: it begins where it stands and goes on.
    if (wanted <= full_height() - 4.0 * line_height(style)) keep(wanted);
}

void Flow::pairs(const std::vector<std::pair<QString, QString>>& entries, bool two_columns, double label_mm,
                 double size_pt) {
    Table form;
    form.size_pt = size_pt;
    if (two_columns && !sheet().large_print) {
        form.columns = {{QString(), 34.0}, {QString(), 0.0}, {QString(), 34.0}, {QString(), 0.0}};
        const std::size_t half = (entries.size() + 1) / 2;
        for (std::size_t i = 0; i < half; ++i) {
            QStringList cells{entries[i].first, entries[i].second};
            if (i + half < entries.size()) cells << entries[i + half].first << entries[i + half].second;
            form.rows.push_back({cells});
        }
    } else {
        // Narrow labels grow with the lettering.
        form.columns = {{QString(), label_mm < 40.0 ? sheet().grown(label_mm) : label_mm}, {QString(), 0.0}};
        for (const auto& [what, value] : entries)
            form.rows.push_back({QStringList{what, value}});
    }
    table(form);
}

}  // namespace wg::ui::paper
