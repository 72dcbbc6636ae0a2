#include "ui/documents/flow.h"

#include <algorithm>
#include <cmath>

#include "ui/common/theme.h"

namespace wg::ui::paper {
namespace {

constexpr double gap_small = 2.0 * mm;
constexpr double gap_block = 4.0 * mm;
constexpr double head_gap = 3.0 * mm;
constexpr double mark_height = 7.0 * mm;
constexpr double cell_pad = 1.0 * mm;
constexpr double row_pad = 1.2 * mm;
constexpr double sign_side = 11.0 * mm;
constexpr double notice_pad = 1.6 * mm;
constexpr double tick_side = 4.0 * mm;
const Style body{};
const Style small{least_pt, false, false};
const Style strong{body_pt, true, false};
const Style title_style{13.0, true, false};
const Style heading_style{12.0, true, false};
const Style subheading_style{10.0, true, false};

}  // namespace

Flow::Flow(Furniture furniture) : furniture_(std::move(furniture)) {
    new_page();
}

double Flow::body_top(std::size_t page_index) const {
    double top = margin;
    if (page_index == 0) {
        const double left = static_cast<double>(furniture_.firm.size()) * line_height(small);
        const double right = line_height(title_style) + 3.0 * line_height(small);
        top += std::max(left, right);
    } else {
        top += 2.0 * line_height(small);
    }
    top += gap_small;
    if (!furniture_.marks.isEmpty()) top += mark_height + gap_small;
    return top + head_gap;
}

double Flow::body_bottom() const {
    return page_height - margin - line_height(small) - gap_small;
}

double Flow::left() const {
    return body_bottom() - y_;
}

double Flow::full_height() const {
    return body_bottom() - body_top(1);
}

void Flow::new_page() {
    pages_.emplace_back();
    y_ = body_top(pages_.size() - 1);
}

void Flow::page_break() {
    if (y_ > body_top(pages_.size() - 1) + 1.0) new_page();
}

void Flow::keep(double height) {
    if (height > left()) page_break();
}

void Flow::gap(double height_mm) {
    y_ += height_mm * mm;
}

void Flow::letter(double x, double top, const QString& text, const Style& style, double width, bool right) {
    if (text.isEmpty()) return;
    Lettering piece;
    piece.text = text;
    piece.style = style;
    piece.width = text_width(text, style);
    piece.baseline = QPointF(right ? x + width - piece.width : x, top + line_height(style) * 0.78);
    page().lettering.push_back(std::move(piece));
}

void Flow::lines_at(double x, double& top, const QStringList& lines, const Style& style) {
    for (const QString& line : lines) {
        letter(x, top, line, style);
        top += line_height(style);
    }
}

void Flow::heading(const QString& text, double room) {
    const QStringList lines = wrap(text, heading_style, body_width);
    // A heading alone at the foot of a page leads nowhere: it takes room for a few lines along.
    keep(static_cast<double>(lines.size()) * line_height(heading_style) + gap_block +
         std::max(room, 5.0 * line_height(body)));
    if (y_ > body_top(pages_.size() - 1) + 1.0) y_ += gap_block;
    page().text += text;
    lines_at(margin, y_, lines, heading_style);
    page().rules.push_back({QLineF(margin, y_ + 0.5 * mm, margin + body_width, y_ + 0.5 * mm), firm_rule});
    y_ += gap_small;
}

void Flow::subheading(const QString& text, double room) {
    const QStringList lines = wrap(text, subheading_style, body_width);
    keep(static_cast<double>(lines.size()) * line_height(subheading_style) + gap_small +
         std::max(room, 4.0 * line_height(body)));
    if (y_ > body_top(pages_.size() - 1) + 1.0) y_ += gap_small;
    page().text += text;
    lines_at(margin, y_, lines, subheading_style);
    y_ += 0.5 * mm;
}

void Flow::paragraph(const QString& text, const Style& style) {
    if (text.isEmpty()) return;
    const QStringList lines = wrap(text, style, body_width);
    const double each = line_height(style);
    qsizetype at = 0;
    while (at < lines.size()) {
        // At least two lines stay together on either side of a break.
        const qsizetype rest = lines.size() - at;
        qsizetype fit = static_cast<qsizetype>(std::floor((left() + 1.0) / each));
        if (fit < rest && (fit < 2 || rest <= 3)) fit = 0;
        if (fit < rest && rest - fit == 1) --fit;
        if (fit <= 0) {
            const std::size_t before = pages_.size();
            page_break();
            if (pages_.size() != before) continue;
            fit = 1;
        }
        const qsizetype count = std::min(fit, rest);
        page().text += lines.mid(at, count).join(QLatin1Char(' '));
        lines_at(margin, y_, lines.mid(at, count), style);
        at += count;
    }
    y_ += gap_small;
}

void Flow::bullet(const QString& text) {
    const double indent = 4.0 * mm;
    const QStringList lines = wrap(text, body, body_width - indent);
    keep(std::min(static_cast<double>(lines.size()) * line_height(body), full_height()));
    page().text += text;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        if (left() < line_height(body)) new_page();
        if (i == 0) {
            const double middle = y_ + line_height(body) * 0.52;
            page().rules.push_back({QLineF(margin + 0.5 * mm, middle, margin + 2.5 * mm, middle), 0.3 * mm});
        }
        letter(margin + indent, y_, lines[i], body);
        y_ += line_height(body);
    }
    y_ += 0.8 * mm;
}

namespace {

std::vector<double> widths_of(const Table& table) {
    double fixed = 0.0;
    int shared = 0;
    for (const Column& column : table.columns) {
        fixed += column.width_mm * mm;
        if (column.width_mm <= 0.0) ++shared;
    }
    std::vector<double> widths;
    for (const Column& column : table.columns) {
        widths.push_back(column.width_mm > 0.0 ? column.width_mm * mm : (body_width - fixed) / std::max(1, shared));
    }
    return widths;
}

}  // namespace

namespace {

/// A column of words straight after one of figures needs more air than the cells' padding gives.
double inset_of(const Table& table, std::size_t column) {
    const bool after_figures = column > 0 && table.columns[column - 1].right && !table.columns[column].right;
    return after_figures ? 3.5 * mm : cell_pad;
}

}  // namespace

void Flow::header_row(const Table& table, const std::vector<double>& widths) {
    const Style style{least_pt, true, false};
    std::vector<QStringList> cells;
    qsizetype most = 1;
    bool any = false;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        cells.push_back(wrap(table.columns[i].title, style, widths[i] - inset_of(table, i) - cell_pad));
        most = std::max(most, cells.back().size());
        any = any || !table.columns[i].title.isEmpty();
    }
    if (!any) return;
    double x = margin;
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
    page().rules.push_back({QLineF(margin, y_, margin + body_width, y_), firm_rule});
}

std::vector<Flow::Cell> Flow::cells_of(const Table& table, const std::vector<double>& widths, const Row& row) const {
    const Style style = row.kind == Row::Kind::plain ? body : strong;
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const auto at = static_cast<qsizetype>(i);
        const QString text = at < row.cells.size() ? row.cells[at] : QString();
        const double width = row.kind == Row::Kind::group ? body_width : widths[i];
        cells.push_back({wrap(text, style, width - inset_of(table, i) - cell_pad), style});
        if (row.kind == Row::Kind::group) break;
    }
    return cells;
}

double Flow::height_of(const Table& table, const std::vector<double>& widths, const Row& row) const {
    qsizetype most = 1;
    double each = line_height(body);
    for (const Cell& cell : cells_of(table, widths, row)) {
        most = std::max(most, cell.lines.size());
        each = line_height(cell.style);
    }
    return std::max(static_cast<double>(most) * each + row_pad, table.least_row_mm * mm);
}

void Flow::body_row(const Table& table, const std::vector<double>& widths, const Row& row) {
    const std::vector<Cell> cells = cells_of(table, widths, row);
    qsizetype most = 1;
    for (const Cell& cell : cells)
        most = std::max(most, cell.lines.size());
    const double each = line_height(row.kind == Row::Kind::plain ? body : strong);
    double height = height_of(table, widths, row);
    // A group's title goes with its first rows.
    const double wanted = row.kind == Row::Kind::group ? height + 2.0 * (each + row_pad) : height;
    if (wanted > left() && y_ > body_top(pages_.size() - 1) + 1.0) {
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
        double x = margin;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double inset = inset_of(table, i);
            double top = y_ + row_pad / 2.0;
            for (const QString& line : cells[i].lines.mid(from, count)) {
                const bool right = table.columns[i].right && row.kind != Row::Kind::group;
                letter(x + inset, top, line, cells[i].style, widths[i] - inset - cell_pad, right);
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
            double upright = margin;
            for (std::size_t i = 0; i + 1 < widths.size(); ++i) {
                upright += widths[i];
                page().rules.push_back({QLineF(upright, y_, upright, y_ + height), thin_rule});
            }
        }
        y_ += height;
        page().rules.push_back(
            {QLineF(margin, y_, margin + body_width, y_), row.kind == Row::Kind::plain ? thin_rule : firm_rule});
        if (from < most) {
            new_page();
            header_row(table, widths);
        }
    }
}

void Flow::table(const Table& table) {
    const std::vector<double> widths = widths_of(table);
    // The header goes with at least the first three rows.
    double wanted = 2.0 * (line_height(body) + row_pad);
    std::size_t together = table.whole ? table.rows.size() : std::min<std::size_t>(table.rows.size(), 3);
    if (!table.whole && !table.rows.empty() && table.rows.front().kind == Row::Kind::group) ++together;
    for (std::size_t i = 0; i < std::min(together, table.rows.size()); ++i) {
        wanted += height_of(table, widths, table.rows[i]);
    }
    if (wanted <= full_height()) keep(wanted);
    header_row(table, widths);
    for (const Row& row : table.rows)
        body_row(table, widths, row);
    y_ += gap_small;
}

void Flow::pairs(const std::vector<std::pair<QString, QString>>& entries, bool two_columns) {
    Table sheet;
    if (two_columns) {
        sheet.columns = {{QString(), 34.0}, {QString(), 0.0}, {QString(), 34.0}, {QString(), 0.0}};
        const std::size_t half = (entries.size() + 1) / 2;
        for (std::size_t i = 0; i < half; ++i) {
            QStringList cells{entries[i].first, entries[i].second};
            if (i + half < entries.size()) cells << entries[i + half].first << entries[i + half].second;
            sheet.rows.push_back({cells});
        }
    } else {
        sheet.columns = {{QString(), 46.0}, {QString(), 0.0}};
        for (const auto& [what, value] : entries)
            sheet.rows.push_back({QStringList{what, value}});
    }
    table(sheet);
}

double Flow::notice_height(double width, const Notice& notice) const {
    const double room = width - sign_side - 3.0 * notice_pad;
    qsizetype lines = wrap(notice.title, strong, room).size();
    if (!notice.text.isEmpty()) lines += wrap(notice.text, body, room).size();
    return std::max(static_cast<double>(lines) * line_height(body), sign_side) + 2.0 * notice_pad;
}

void Flow::notice_at(double x, double width, double height, const Notice& notice) {
    const double inset = sign_side + 2.0 * notice_pad;
    const QStringList head = wrap(notice.title, strong, width - inset - notice_pad);
    const QStringList lines =
        notice.text.isEmpty() ? QStringList() : wrap(notice.text, body, width - inset - notice_pad);
    page().text += notice.title;
    if (!notice.text.isEmpty()) page().text += notice.text;
    page().boxes.push_back({QRectF(x, y_, width, height), firm_rule});
    const QRectF frame(x + notice_pad, y_ + (height - sign_side) / 2.0, sign_side, sign_side);
    page().pictures.push_back(
        {frame, QStringLiteral("sign"), 0.0,
         [sign = notice.sign](QPainter& painter, const QRectF& at) { paint_sign(painter, sign, at); }});
    const double words = static_cast<double>(head.size() + lines.size()) * line_height(body);
    double top = y_ + std::max(notice_pad, (height - words) / 2.0);
    lines_at(x + inset, top, head, strong);
    lines_at(x + inset, top, lines, body);
}

void Flow::caution(Sign sign, const QString& title, const QString& text) {
    const Notice notice{sign, title, text};
    const double height = notice_height(body_width, notice);
    if (height > full_height()) {
        // Longer than a page: the sign and title in the box, the rest as text below it.
        caution(sign, title, QString());
        paragraph(text);
        return;
    }
    keep(height + gap_small);
    notice_at(margin, body_width, height, notice);
    y_ += height + gap_small;
}

void Flow::cautions(const std::vector<Notice>& notices) {
    const double width = (body_width - gap_small) / 2.0;
    for (std::size_t i = 0; i < notices.size(); i += 2) {
        const bool pair = i + 1 < notices.size();
        if (!pair) {
            caution(notices[i].sign, notices[i].title, notices[i].text);
            break;
        }
        const double height = std::max(notice_height(width, notices[i]), notice_height(width, notices[i + 1]));
        keep(height + gap_small);
        notice_at(margin, width, height, notices[i]);
        notice_at(margin + width + gap_small, width, height, notices[i + 1]);
        y_ += height + gap_small;
    }
}

void Flow::step(int number, const QString& text, const QString& why) {
    const double number_x = margin + tick_side + 2.0 * mm;
    const double text_x = number_x + 8.0 * mm;
    const double width = margin + body_width - text_x;
    const Style reason{least_pt, false, true};
    const QStringList lines = wrap(text, body, width);
    const QStringList reasons = why.isEmpty() ? QStringList() : wrap(why, reason, width);
    const double height = static_cast<double>(lines.size()) * line_height(body) +
                          static_cast<double>(reasons.size()) * line_height(reason) + 1.6 * mm;
    keep(height);
    page().text += QString::number(number) + QLatin1String(". ") + text;
    if (!why.isEmpty()) page().text += why;
    page().boxes.push_back({QRectF(margin + 0.2 * mm, y_ + 0.2 * mm, tick_side, tick_side), firm_rule});
    letter(number_x, y_, QString::number(number), strong, 6.0 * mm, true);
    double top = y_;
    lines_at(text_x, top, lines, body);
    lines_at(text_x, top, reasons, reason);
    y_ += height;
}

void Flow::hold_point(const QString& title, const QString& text) {
    sign_off(QStringLiteral("HOLD POINT: ") + title, text, {QStringLiteral("Checked and may go on")});
}

void Flow::sign_off(const QString& title, const QString& text, const QStringList& roles) {
    const double pad = 2.0 * mm;
    const double row = 11.0 * mm;
    const QStringList head = wrap(title, strong, body_width - 2.0 * pad);
    const QStringList lines = text.isEmpty() ? QStringList() : wrap(text, body, body_width - 2.0 * pad);
    const double height = static_cast<double>(head.size() + lines.size()) * line_height(body) +
                          static_cast<double>(roles.size()) * row + 2.0 * pad;
    keep(height + gap_block);
    y_ += 1.0 * mm;
    page().text += title;
    if (!text.isEmpty()) page().text += text;
    page().boxes.push_back({QRectF(margin, y_, body_width, height), 0.5 * mm});
    double top = y_ + pad;
    lines_at(margin + pad, top, head, strong);
    lines_at(margin + pad, top, lines, body);
    for (const QString& role : roles) {
        const double foot = top + row - 2.0 * mm;
        struct Part {
            double x_mm, width_mm;
            QString word;
        };
        const Part parts[] = {{0.0, 0.0, role},
                              {42.0, 44.0, QStringLiteral("Name")},
                              {88.0, 50.0, QStringLiteral("Signature")},
                              {140.0, 36.0, QStringLiteral("Date, time")}};
        for (const Part& part : parts) {
            const double x = margin + pad + part.x_mm * mm;
            const double word = text_width(part.word, small);
            letter(x, foot - line_height(small) * 0.82, part.word, small);
            if (part.width_mm > 0.0) {
                page().rules.push_back({QLineF(x + word + 1.0 * mm, foot, x + part.width_mm * mm, foot), thin_rule});
            }
        }
        page().text += role;
        top += row;
    }
    y_ += height + gap_block;
}

void Flow::picture(const QString& name, double height, double units_per_m,
                   std::function<void(QPainter&, const QRectF&)> paint) {
    height = std::min(height, full_height());
    keep(height);
    page().text += name;
    page().pictures.push_back({QRectF(margin, y_, body_width, height), name, units_per_m, std::move(paint)});
    y_ += height + gap_small;
}

void Flow::dress(Page& page_to_dress, std::size_t index, std::size_t count) const {
    const QString page_text =
        QStringLiteral("Page %1 of %2").arg(static_cast<int>(index) + 1).arg(static_cast<int>(count));
    QStringList head;
    const auto put = [&](double x, double top, const QString& text, const Style& style, double right_edge = 0.0) {
        if (text.isEmpty()) return;
        Lettering piece;
        const double room = right_edge > 0.0 ? right_edge - x : body_width * 0.48;
        // One line each: a long firm or choice label is shortened rather than run into its neighbour.
        piece.text = QFontMetricsF(font_of(style)).elidedText(text, Qt::ElideRight, room);
        piece.style = style;
        piece.width = text_width(piece.text, style);
        piece.baseline = QPointF(right_edge > 0.0 ? right_edge - piece.width : x, top + line_height(style) * 0.78);
        page_to_dress.lettering.push_back(piece);
        head += text;
    };
    const double edge = margin + body_width;
    const double half = margin + body_width * 0.5;
    double top = margin;
    double rule_y = margin;
    if (index == 0) {
        for (qsizetype i = 0; i < furniture_.firm.size(); ++i) {
            put(margin, top, furniture_.firm[i], Style{least_pt, i == 0, false});
            top += line_height(small);
        }
        rule_y = top;
        top = margin;
        put(half, top, furniture_.title, title_style, edge);
        top += line_height(title_style);
        for (const QString& text : {furniture_.job, furniture_.choice, page_text}) {
            put(half, top, text, small, edge);
            top += line_height(small);
        }
        rule_y = std::max(rule_y, top);
    } else {
        put(margin, top, furniture_.firm.isEmpty() ? QString() : furniture_.firm.front(), Style{least_pt, true, false});
        put(half, top, page_text, small, edge);
        top += line_height(small);
        put(margin, top, furniture_.title + QStringLiteral(", ") + furniture_.job, small);
        put(half, top, furniture_.choice, small, edge);
        rule_y = top + line_height(small);
    }
    rule_y += gap_small / 2.0;
    page_to_dress.rules.push_back({QLineF(margin, rule_y, edge, rule_y), firm_rule});
    double x = margin;
    const double mark_top = rule_y + gap_small;
    for (const QString& mark : furniture_.marks) {
        const double width = text_width(mark, strong) + 6.0 * mm;
        page_to_dress.boxes.push_back({QRectF(x, mark_top, width, mark_height - 1.0 * mm), 0.5 * mm});
        put(x + 3.0 * mm, mark_top + (mark_height - 1.0 * mm - line_height(strong)) / 2.0, mark, strong);
        x += width + 3.0 * mm;
    }
    const double foot_top = page_height - margin - line_height(small);
    page_to_dress.rules.push_back({QLineF(margin, foot_top - 0.6 * mm, edge, foot_top - 0.6 * mm), thin_rule});
    page_to_dress.text = head + page_to_dress.text;
    Lettering foot;
    foot.style = Style{least_pt, false, true};
    foot.text = QFontMetricsF(font_of(foot.style)).elidedText(furniture_.foot, Qt::ElideRight, body_width);
    foot.width = text_width(foot.text, foot.style);
    foot.baseline = QPointF(margin, foot_top + line_height(small) * 0.78);
    page_to_dress.lettering.push_back(foot);
    page_to_dress.text += furniture_.foot;
}

std::vector<Page> Flow::finish() {
    const std::size_t count = pages_.size();
    for (std::size_t i = 0; i < count; ++i)
        dress(pages_[i], i, count);
    return std::move(pages_);
}

}  // namespace wg::ui::paper
