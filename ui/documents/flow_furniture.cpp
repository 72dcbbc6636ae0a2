// What stands round the body of every page.

#include "ui/documents/flow.h"

#include <QFontMetricsF>
#include <algorithm>

#include "ui/common/paper_words.h"
#include "ui/documents/flow_measures.h"

namespace wg::ui::paper {

using namespace measures;

void Flow::dress(Page& page_to_dress, std::size_t index, std::size_t count) const {
    const QString page_text = say("Page %1 of %2").arg(static_cast<int>(index) + 1).arg(static_cast<int>(count));
    QStringList head;
    const auto put = [&](double x, double top, const QString& text, const Style& style, double right_edge = 0.0) {
        if (text.isEmpty()) return;
        Lettering piece;
        const bool whole_line = text == furniture_.headline;
        const double room = right_edge > 0.0 ? right_edge - x : body_width * (whole_line ? 1.0 : 0.48);
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
    if (!furniture_.headline.isEmpty()) {
        put(margin, rule_y + gap_small / 2.0, furniture_.headline, strong);
        rule_y += line_height(strong);
    }
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
    keep(0.0);
    const std::size_t count = pages_.size();
    for (std::size_t i = 0; i < count; ++i)
        dress(pages_[i], i, count);
    return std::move(pages_);
}

}  // namespace wg::ui::paper
