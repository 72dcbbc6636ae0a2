// What stands round the body of every page.

#include "ui/documents/flow.h"

#include <QFontMetricsF>
#include <algorithm>

#include "ui/common/paper_words.h"
#include "ui/documents/flow_measures.h"
#include "ui/documents/print_square.h"

namespace wg::ui::paper {

using namespace measures;

void Flow::dress(Page& page_to_dress, std::size_t index, std::size_t count) const {
    const QString page_text = say("Page %1 of %2").arg(static_cast<int>(index) + 1).arg(static_cast<int>(count));
    QStringList head;
    const auto put = [&](double x, double top, const QString& text, const Style& style, double right_edge = 0.0,
                         double left_room = 0.0) {
        if (text.isEmpty()) return;
        Lettering piece;
        const bool whole_line = text == furniture_.headline;
        const double room = right_edge > 0.0  ? right_edge - x
                            : left_room > 0.0 ? left_room
                                              : body_width() * (whole_line ? 1.0 : 0.48);
        // One line each: a long firm or choice label is shortened rather than run into its neighbour.
        piece.text = QFontMetricsF(font_of(style)).elidedText(text, Qt::ElideRight, room);
        piece.style = style;
        piece.width = text_width(piece.text, style);
        piece.baseline = QPointF(right_edge > 0.0 ? right_edge - piece.width : x, top + line_height(style) * 0.78);
        page_to_dress.lettering.push_back(piece);
        head += text;
    };
    const double edge = margin + body_width();
    const double half = margin + body_width() * 0.5;
    double top = margin;
    double rule_y = margin;
    if (index == 0) {
        const double beside = logo_room();
        if (const QSizeF size = logo_size(); !size.isEmpty()) {
            page_to_dress.pictures.push_back({QRectF(QPointF(margin, margin), size), QStringLiteral("logo"), 0.0,
                                              [logo = furniture_.logo](QPainter& painter, const QRectF& at) {
                                                  painter.setRenderHint(QPainter::SmoothPixmapTransform);
                                                  painter.drawImage(at, logo);
                                              }});
        }
        top += logo_over_lines();
        for (qsizetype i = 0; i < furniture_.firm.size(); ++i) {
            put(margin + beside, top, furniture_.firm[i], sheet().lettered(Style{least_pt, i == 0, false}), 0.0,
                body_width() * 0.48 - beside);
            top += line_height(type_.small);
        }
        rule_y = top;
        top = margin;
        put(half, top, furniture_.title, type_.title, edge);
        top += line_height(type_.title);
        for (const QString& text : {furniture_.job, furniture_.mark, furniture_.choice, page_text}) {
            if (text.isEmpty()) continue;
            put(half, top, text, type_.small, edge);
            top += line_height(type_.small);
        }
        rule_y = std::max({rule_y, top, margin + logo_size().height()});
    } else {
        put(margin, top, furniture_.firm.isEmpty() ? QString() : furniture_.firm.front(),
            sheet().lettered(Style{least_pt, true, false}));
        put(half, top, page_text, type_.small, edge);
        top += line_height(type_.small);
        QString what = furniture_.title + QStringLiteral(", ") + furniture_.job;
        if (!furniture_.mark.isEmpty()) what += QStringLiteral(", ") + furniture_.mark;
        // The mark has to be read whole: the choice takes what is left, in large print a line of its own.
        const double most = sheet().large_print ? body_width() : body_width() * 0.72;
        const double used = std::max(std::min(text_width(what, type_.small) + 1.0 * mm, most), body_width() * 0.48);
        put(margin, top, what, type_.small, 0.0, used);
        if (sheet().large_print) {
            top += line_height(type_.small);
            put(margin, top, furniture_.choice, type_.small, 0.0, body_width());
        } else {
            put(margin + used + 2.0 * mm, top, furniture_.choice, type_.small, edge);
        }
        rule_y = top + line_height(type_.small);
    }
    rule_y += gap_small / 2.0;
    page_to_dress.rules.push_back({QLineF(margin, rule_y, edge, rule_y), firm_rule});
    if (!furniture_.headline.isEmpty()) {
        put(margin, rule_y + gap_small / 2.0, furniture_.headline, type_.strong);
        rule_y += line_height(type_.strong);
    }
    const bool in_head = marks_in_head();
    const double mark_side = in_head ? line_height(type_.small) + 0.2 * mm : mark_room() - 1.0 * mm;
    const double mark_top = in_head ? margin - 0.5 * mm : rule_y + gap_small;
    double x = in_head ? margin + (index == 0 ? logo_room() : 0.0) +
                             text_width(furniture_.firm.value(0), bold_small()) + 4.0 * mm
                       : margin;
    for (const QString& mark : furniture_.marks) {
        const Style style = in_head ? bold_small() : type_.strong;
        const double width = text_width(mark, style) + (in_head ? 3.0 : 6.0) * mm;
        page_to_dress.boxes.push_back({QRectF(x, mark_top, width, mark_side), 0.5 * mm});
        put(x + (in_head ? 1.5 : 3.0) * mm, in_head ? margin : mark_top + (mark_side - line_height(style)) / 2.0, mark,
            style, 0.0, width);
        x += width + 3.0 * mm;
    }
    const double foot_top = sheet().height - margin - line_height(type_.small);
    const double below_top = foot_top - static_cast<double>(below_.size()) * line_height(type_.small);
    page_to_dress.rules.push_back({QLineF(margin, below_top - 0.6 * mm, edge, below_top - 0.6 * mm), thin_rule});
    for (qsizetype i = 0; i < below_.size(); ++i)
        put(margin, below_top + static_cast<double>(i) * line_height(type_.small), below_[i], type_.small, 0.0,
            body_width());
    page_to_dress.text = head + page_to_dress.text;
    Lettering foot;
    foot.style = type_.reason;
    foot.text = QFontMetricsF(font_of(foot.style)).elidedText(furniture_.foot, Qt::ElideRight, body_width());
    foot.width = text_width(foot.text, foot.style);
    foot.baseline = QPointF(margin, foot_top + line_height(type_.small) * 0.78);
    page_to_dress.lettering.push_back(foot);
    page_to_dress.text += furniture_.foot;
}

QSizeF Flow::logo_size() const {
    if (furniture_.logo.isNull()) return {};
    return QSizeF(furniture_.logo.size()).scaled(logo_width, logo_height, Qt::KeepAspectRatio);
}

double Flow::logo_over_lines() const {
    const QSizeF size = logo_size();
    return size.isEmpty() || !sheet().large_print ? 0.0 : size.height() + 1.0 * mm;
}

double Flow::logo_room() const {
    const QSizeF size = logo_size();
    return size.isEmpty() || sheet().large_print ? 0.0 : size.width() + 3.0 * mm;
}

Style Flow::bold_small() const {
    return sheet().lettered(Style{least_pt, true, false});
}

bool Flow::marks_in_head() const {
    if (sheet().large_print || !furniture_.headline.isEmpty()) return false;
    // On the right the title or the page's number.
    double used = logo_room() + text_width(furniture_.firm.value(0), bold_small()) +
                  std::max(30.0 * mm, text_width(furniture_.title, type_.title) + 6.0 * mm);
    for (const QString& mark : furniture_.marks)
        used += text_width(mark, bold_small()) + 6.0 * mm;
    return used < body_width();
}

void Flow::code_at_foot(Page& on, double body_end) {
    const PrintSquare square = print_square(furniture_.code);
    const double side = square.paper_side();
    if (square.side == 0 || body_bottom() - body_end < side + gap_small) return;
    on.pictures.push_back({QRectF(margin + body_width() - side, body_bottom() - side, side, side),
                           QStringLiteral("code"), 0.0,
                           [square](QPainter& painter, const QRectF& at) { paint_square(painter, square, at); }});
}

std::vector<Page> Flow::finish() {
    if (!waiting_.empty()) keep(0.0);
    const std::size_t count = pages_.size();
    ends_.push_back(y_);
    for (std::size_t i = 0; i < count; ++i) {
        if (i != code_page_) code_at_foot(pages_[i], ends_[i]);
        dress(pages_[i], i, count);
    }
    return std::move(pages_);
}

}  // namespace wg::ui::paper
