// Steps to tick: what to do and, smaller, why.

#include <algorithm>

#include "ui/documents/flow.h"
#include "ui/documents/flow_measures.h"

namespace wg::ui::paper {

using namespace measures;

namespace {

constexpr double column_gap = 6.0 * mm;
constexpr double number_gap = 0.5 * mm;
constexpr double work_gap = 1.4 * mm;  ///< below each step

double words_inset(const Sheet& sheet) {
    return tick_side + number_gap + sheet.grown(7.0 * mm);
}

}  // namespace

double Flow::work_height(const Work& work, double width) const {
    if (work.number == 0)
        return static_cast<double>(wrap(work.text, type_.subheading, width).size()) * line_height(type_.subheading) +
               gap_small;
    const double room = width - words_inset(sheet());
    double height = static_cast<double>(wrap(work.text, type_.body, room).size()) * line_height(type_.body);
    if (!work.why.isEmpty())
        height += static_cast<double>(wrap(work.why, type_.reason, room).size()) * line_height(type_.reason);
    return height + work_gap;
}

void Flow::work_at(double x, double width, const Work& work) {
    const double bottom = y_ + work_height(work, width);
    if (work.number == 0) {
        page().text += work.text;
        y_ += gap_small / 2.0;
        lines_at(x, y_, wrap(work.text, type_.subheading, width), type_.subheading);
    } else {
        const double words = words_inset(sheet());
        page().text += QString::number(work.number) + QLatin1String(". ") + work.text;
        if (!work.why.isEmpty()) page().text += work.why;
        page().boxes.push_back({QRectF(x + 0.2 * mm, y_ + 0.2 * mm, tick_side, tick_side), firm_rule});
        letter(x + tick_side + number_gap, y_, QString::number(work.number), type_.strong, sheet().grown(5.5 * mm),
               true);
        lines_at(x + words, y_, wrap(work.text, type_.body, width - words), type_.body);
        if (!work.why.isEmpty()) lines_at(x + words, y_, wrap(work.why, type_.reason, width - words), type_.reason);
    }
    y_ = bottom;
}

void Flow::work(const std::vector<Work>& steps) {
    const std::size_t n = steps.size();
    const auto after_titles = [&](std::size_t from) {
        while (from < n && steps[from].number == 0)
            ++from;
        return std::min(from + 1, n);
    };
    if (sheet().large_print) {
        for (std::size_t i = 0; i < n;) {
            // A title goes with the step below it.
            double height = 0.0;
            const std::size_t end = after_titles(i);
            for (std::size_t k = i; k < end; ++k)
                height += work_height(steps[k], body_width());
            keep(std::min(height, full_height()));
            for (; i < end; ++i)
                work_at(margin, body_width(), steps[i]);
        }
        return;
    }
    const double width = (body_width() - column_gap) / 2.0;
    // First step that no longer goes into a column of `height` begun with `from`.
    const auto filled_to = [&](std::size_t from, double height) {
        double used = 0.0;
        for (std::size_t i = from; i < n;) {
            const std::size_t end = after_titles(i);
            for (std::size_t k = i; k < end; ++k)
                used += work_height(steps[k], width);
            if (used > height) return i;
            i = end;
        }
        return n;
    };
    for (std::size_t from = 0; from < n;) {
        double least = 0.0;
        for (std::size_t k = from; k < after_titles(from); ++k)
            least += work_height(steps[k], width);
        keep(std::min(least, full_height()));
        double height = left();
        if (filled_to(filled_to(from, height), height) == n) {
            // All that is left: both columns as short as they go.
            double total = 0.0;
            for (std::size_t i = from; i < n; ++i)
                total += work_height(steps[i], width);
            double even = std::max(total / 2.0, least);
            while (even < height && filled_to(filled_to(from, even), even) < n)
                even += 0.5 * mm;
            height = std::min(even, height);
        }
        // A step longer than a page stands where it is.
        const std::size_t turn = std::max(filled_to(from, height), after_titles(from));
        const std::size_t end = std::max(filled_to(turn, height), turn);
        const double top = y_;
        for (std::size_t i = from; i < turn; ++i)
            work_at(margin, width, steps[i]);
        double bottom = y_;
        if (end > turn) {
            y_ = top;
            for (std::size_t i = turn; i < end; ++i)
                work_at(margin + width + column_gap, width, steps[i]);
            bottom = std::max(bottom, y_);
            const double middle = margin + width + column_gap / 2.0;
            page().rules.push_back({QLineF(middle, top + 1.0 * mm, middle, bottom - work_gap), thin_rule});
        }
        y_ = bottom;
        from = end;
        if (from < n) page_break();
    }
}

}  // namespace wg::ui::paper
