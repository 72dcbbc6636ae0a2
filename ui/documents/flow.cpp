#include "ui/documents/flow.h"

#include <algorithm>
#include <cmath>

#include "ui/common/paper_words.h"
#include "ui/documents/flow_measures.h"
#include "ui/documents/print_square.h"

namespace wg::ui::paper {
using namespace measures;

Flow::Flow(Furniture furniture)
    : furniture_(std::move(furniture)), type_(furniture_.sheet), room_(furniture_.sheet.body_width()) {
    for (const QString& part : furniture_.below) {
        const QString longer = below_.isEmpty() ? part : below_.back() + QStringLiteral(" \u00b7 ") + part;
        if (!below_.isEmpty() && text_width(longer, type_.small) <= body_width()) {
            below_.back() = longer;
        } else {
            below_ += part;
        }
    }
    new_page();
}

double Flow::body_top(std::size_t page_index) const {
    double top = margin;
    if (page_index == 0) {
        const double left = logo_over_lines() + static_cast<double>(furniture_.firm.size()) * line_height(type_.small);
        const double right =
            line_height(type_.title) + (furniture_.mark.isEmpty() ? 3.0 : 4.0) * line_height(type_.small);
        top += std::max({left, right, logo_size().height()});
    } else {
        top += (sheet().large_print ? 3.0 : 2.0) * line_height(type_.small);
    }
    top += gap_small;
    if (!furniture_.headline.isEmpty()) top += line_height(type_.strong);
    if (!furniture_.marks.isEmpty() && !marks_in_head()) top += mark_room() + gap_small;
    return top + head_gap;
}

double Flow::body_bottom() const {
    return sheet().height - margin - static_cast<double>(1 + below_.size()) * line_height(type_.small) - gap_small;
}

double Flow::left() const {
    double below = body_bottom() - y_;
    for (const Waiting& heading : waiting_)
        below -= height_of(heading);
    return below;
}

double Flow::full_height() const {
    return body_bottom() - body_top(1);
}

void Flow::new_page() {
    if (!pages_.empty()) ends_.push_back(y_);
    pages_.emplace_back();
    page().sheet = sheet();
    y_ = body_top(pages_.size() - 1);
}

bool Flow::at_top() const {
    return y_ <= body_top(pages_.size() - 1) + 1.0;
}

void Flow::page_break() {
    if (!at_top()) new_page();
}

void Flow::keep(double height) {
    if (height > left()) page_break();
    set_headings();
}

double Flow::mark_room() const {
    return std::max(mark_height, line_height(type_.strong) + 2.0 * mm);
}

void Flow::code(const QStringList& words) {
    const PrintSquare square = print_square(furniture_.code);
    if (square.side == 0) return;
    const double side = square.paper_side();
    const double inset = side + 3.0 * mm;
    QStringList lines;
    for (const QString& one : words)
        lines += wrap(one, type_.body, room_ - inset - 2.0 * mm);
    const double height = std::max(side, static_cast<double>(lines.size()) * line_height(type_.body)) + 2.0 * mm;
    keep(height + gap_small);
    page().boxes.push_back({QRectF(x_, y_, room_, height), firm_rule});
    page().pictures.push_back({QRectF(x_ + 1.0 * mm, y_ + (height - side) / 2.0, side, side), QStringLiteral("code"),
                               0.0,
                               [square](QPainter& painter, const QRectF& at) { paint_square(painter, square, at); }});
    double top = y_ + (height - static_cast<double>(lines.size()) * line_height(type_.body)) / 2.0;
    page().text += words;
    lines_at(x_ + inset, top, lines, type_.body);
    y_ += height + gap_small;
    code_page_ = pages_.size() - 1;
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

void Flow::heading(const QString& text, double size_pt) {
    const Style style = sheet().lettered({size_pt, true, false});
    waiting_.push_back({wrap(text, style, room_), text, false, style});
}

void Flow::subheading(const QString& text) {
    waiting_.push_back({wrap(text, type_.subheading, room_), text, true, type_.subheading});
}

double Flow::height_of(const Waiting& heading) const {
    const double lines = static_cast<double>(heading.lines.size());
    return heading.sub ? gap_small + lines * line_height(heading.style) + 0.5 * mm
                       : gap_block + lines * line_height(heading.style) + gap_small;
}

void Flow::set_headings() {
    const std::vector<Waiting> headings = std::move(waiting_);
    waiting_.clear();
    for (const Waiting& heading : headings) {
        if (!at_top()) y_ += heading.sub ? gap_small : gap_block;
        page().text += heading.text;
        lines_at(x_, y_, heading.lines, heading.style);
        if (heading.sub) {
            y_ += 0.5 * mm;
        } else {
            page().rules.push_back({QLineF(x_, y_ + 0.5 * mm, x_ + room_, y_ + 0.5 * mm), firm_rule});
            y_ += gap_small;
        }
    }
}

void Flow::paragraph(const QString& text, const Style& asked) {
    if (text.isEmpty()) return;
    const Style style = sheet().lettered(asked);
    const QStringList lines = wrap(text, style, room_);
    const double each = line_height(style);
    keep(static_cast<double>(std::min<qsizetype>(2, lines.size())) * each);
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
        lines_at(x_, y_, lines.mid(at, count), style);
        at += count;
    }
    y_ += gap_small;
}

void Flow::bullet(const QString& text, const Style& style) {
    const double indent = 4.0 * mm;
    const Style drawn = sheet().lettered(style);
    const QStringList lines = wrap(text, drawn, room_ - indent);
    keep(std::min(static_cast<double>(lines.size()) * line_height(drawn), full_height()));
    page().text += text;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        if (left() < line_height(drawn)) new_page();
        if (i == 0) {
            const double middle = y_ + line_height(drawn) * 0.52;
            page().rules.push_back({QLineF(x_ + 0.5 * mm, middle, x_ + 2.5 * mm, middle), 0.3 * mm});
        }
        letter(x_ + indent, y_, lines[i], drawn);
        y_ += line_height(drawn);
    }
    y_ += 0.8 * mm;
}

void Flow::formula(const QStringList& parts) {
    const double indent = 8.0 * mm;
    for (const QString& part : parts) {
        const QStringList lines = wrap(part, type_.formula, room_ - indent);
        const double height = static_cast<double>(lines.size()) * line_height(type_.formula);
        keep(std::min(height, full_height()));
        page().text += part;
        page().rules.push_back({QLineF(x_ + 4.0 * mm, y_, x_ + 4.0 * mm, y_ + height), 0.5 * mm});
        lines_at(x_ + indent, y_, lines, type_.formula);
    }
    if (!parts.isEmpty()) y_ += gap_small / 2.0;
}

double Flow::notice_height(double width, const Notice& notice) const {
    const double room = width - sign_side - 3.0 * notice_pad;
    const Style plain = sheet().lettered({notice.size_pt, false, false});
    qsizetype lines = wrap(notice.title, sheet().lettered({notice.size_pt, true, false}), room).size();
    if (!notice.text.isEmpty()) lines += wrap(notice.text, plain, room).size();
    return std::max(static_cast<double>(lines) * line_height(plain), sign_side) + 2.0 * notice_pad;
}

void Flow::notice_at(double x, double width, double height, const Notice& notice) {
    const double inset = sign_side + 2.0 * notice_pad;
    const Style plain = sheet().lettered({notice.size_pt, false, false});
    const Style bold = sheet().lettered({notice.size_pt, true, false});
    const QStringList head = wrap(notice.title, bold, width - inset - notice_pad);
    const QStringList lines =
        notice.text.isEmpty() ? QStringList() : wrap(notice.text, plain, width - inset - notice_pad);
    page().text += notice.title;
    if (!notice.text.isEmpty()) page().text += notice.text;
    page().boxes.push_back({QRectF(x, y_, width, height), firm_rule});
    const QRectF frame(x + notice_pad, y_ + (height - sign_side) / 2.0, sign_side, sign_side);
    page().pictures.push_back(
        {frame, QStringLiteral("sign"), 0.0,
         [sign = notice.sign](QPainter& painter, const QRectF& at) { paint_sign(painter, sign, at); }});
    const double words = static_cast<double>(head.size() + lines.size()) * line_height(plain);
    double top = y_ + std::max(notice_pad, (height - words) / 2.0);
    lines_at(x + inset, top, head, bold);
    lines_at(x + inset, top, lines, plain);
}

void Flow::caution(Sign sign, const QString& title, const QString& text) {
    caution(Notice{sign, title, text});
}

void Flow::caution(const Notice& notice) {
    const double height = notice_height(room_, notice);
    if (height > full_height()) {
        // Longer than a page: the sign and title in the box, the rest as text below it.
        caution(Notice{notice.sign, notice.title, QString(), notice.size_pt});
        paragraph(notice.text, Style{notice.size_pt, false, false});
        return;
    }
    keep(height + gap_small);
    notice_at(x_, room_, height, notice);
    y_ += height + gap_small;
}

void Flow::cautions(const std::vector<Notice>& notices) {
    if (sheet().large_print) {
        for (const Notice& one : notices)
            caution(one.sign, one.title, one.text);
        return;
    }
    const double width = (room_ - gap_small) / 2.0;
    for (std::size_t i = 0; i < notices.size(); i += 2) {
        const bool pair = i + 1 < notices.size();
        if (!pair) {
            caution(notices[i]);
            break;
        }
        const double height = std::max(notice_height(width, notices[i]), notice_height(width, notices[i + 1]));
        keep(height + gap_small);
        notice_at(x_, width, height, notices[i]);
        notice_at(x_ + width + gap_small, width, height, notices[i + 1]);
        y_ += height + gap_small;
    }
}

void Flow::hold_point(const QString& title, const QString& text) {
    sign_off(say("HOLD POINT: ") + title, text, {say("Checked and may go on")});
}

void Flow::sign_off(const QString& title, const QString& text, const QStringList& roles) {
    const double pad = 1.2 * mm;
    // In large print the role stands over what is written in.
    const bool two_lines = sheet().large_print;
    const double row = two_lines ? 2.0 * line_height(type_.small) + 6.0 * mm : (roles.size() > 1 ? 9.0 : 7.5) * mm;
    // With one to sign, the text goes on behind the title.
    const double words = room_ - 2.0 * pad;
    const double beside = roles.size() == 1 ? 2.5 * mm : 2.0 * words;
    const RunOn lines = run_on(title, type_.strong, text, type_.small, words, beside);
    const double height = static_cast<double>(lines.lines()) * line_height(type_.body) +
                          static_cast<double>(roles.size()) * row + 2.0 * pad;
    keep(height + gap_small);
    y_ += 0.5 * mm;
    page().text += title;
    if (!text.isEmpty()) page().text += text;
    page().boxes.push_back({QRectF(x_, y_, room_, height), 0.5 * mm});
    double top = y_ + pad;
    lines_at(x_ + pad, top, lines.first, type_.strong);
    if (lines.same_line)
        letter(x_ + pad + lines.start, top - line_height(type_.strong), lines.second.front(), type_.small);
    lines_at(x_ + pad, top, lines.same_line ? lines.second.mid(1) : lines.second, type_.small);
    for (const QString& role : roles) {
        const double foot = top + row - 2.0 * mm;
        struct Blank {
            double x_mm, width_mm;
            QString word;
        };
        std::vector<Blank> parts = {
            {42.0, 44.0, say("Name")}, {88.0, 50.0, say("Signature")}, {140.0, 36.0, say("Date, time")}};
        if (two_lines) {
            letter(x_ + pad, top, role, type_.small);
            parts[0] = {0.0, 54.0, parts[0].word};
            parts[1] = {56.0, 60.0, parts[1].word};
            parts[2] = {118.0, 58.0, parts[2].word};
        } else {
            parts.insert(parts.begin(), {0.0, 0.0, role});
        }
        for (const Blank& part : parts) {
            const double x = x_ + pad + part.x_mm * mm;
            const double word = text_width(part.word, type_.small);
            letter(x, foot - line_height(type_.small) * 0.82, part.word, type_.small);
            if (part.width_mm > 0.0) {
                page().rules.push_back({QLineF(x + word + 1.0 * mm, foot, x + part.width_mm * mm, foot), thin_rule});
            }
        }
        page().text += role;
        top += row;
    }
    y_ += height + gap_small;
}

void Flow::picture(const QString& name, double height, double units_per_m,
                   std::function<void(QPainter&, const QRectF&)> paint, const QString& caption) {
    const QStringList lines = caption.isEmpty() ? QStringList() : wrap(caption, type_.small, room_);
    const double words = static_cast<double>(lines.size()) * line_height(type_.small);
    keep(height + words);
    page().text += name;
    page().pictures.push_back({QRectF(x_, y_, room_, height), name, units_per_m, std::move(paint)});
    y_ += height;
    if (!caption.isEmpty()) page().text += caption;
    lines_at(x_, y_, lines, type_.small);
    y_ += gap_small;
}

}  // namespace wg::ui::paper
