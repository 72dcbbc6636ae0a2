// Steps to tick: what to do and, smaller, why.

#include <algorithm>

#include "ui/documents/flow.h"
#include "ui/documents/flow_measures.h"

namespace wg::ui::paper {

using namespace measures;

namespace {

constexpr double column_gap = 5.0 * mm;
constexpr double number_gap = 0.5 * mm;
constexpr double words_gap = 1.2 * mm;  ///< between number and words
constexpr double work_gap = 0.8 * mm;   ///< below each step

double words_inset(const Sheet& sheet, double amount) {
    return tick_side + number_gap + sheet.grown(amount) + words_gap;
}

/// Sets the reason apart where it goes on in the step's own line, in grey print too.
const QString dash = QStringLiteral("\u2013");

}  // namespace

RunOn Flow::work_words(const WorkRoom& room, const Work& work) const {
    const double gap = text_width(QStringLiteral(" \u2013 "), type_.small);
    return run_on(work.text, type_.small, work.why, type_.reason, room.width - words_inset(sheet(), room.amount), gap);
}

double Flow::work_height(const WorkRoom& room, const Work& work) const {
    if (work.number == 0)
        return static_cast<double>(wrap(work.text, type_.subheading, room.width).size()) *
                   line_height(type_.subheading) +
               gap_small;
    return static_cast<double>(work_words(room, work).lines()) * line_height(type_.small) + work_gap;
}

void Flow::work_at(double x, const WorkRoom& room, const Work& work) {
    const double bottom = y_ + work_height(room, work);
    if (work.number == 0) {
        page().text += work.text;
        y_ += gap_small / 2.0;
        lines_at(x, y_, wrap(work.text, type_.subheading, room.width), type_.subheading);
        y_ = bottom;
        return;
    }
    const bool counted = work.number != unnumbered;
    const double words = x + words_inset(sheet(), room.amount);
    const QString amount = counted ? QString::number(work.number) : work.amount;
    page().text += counted ? amount + QLatin1String(". ") + work.text : work.text;
    if (!counted && !amount.isEmpty()) page().text += amount;
    if (!work.why.isEmpty()) page().text += work.why;
    page().boxes.push_back(
        {QRectF(x + 0.2 * mm, y_ + 0.2 * mm, tick_side - 0.6 * mm, tick_side - 0.6 * mm), firm_rule});
    const Style bold = sheet().lettered({least_pt, true, false});
    letter(x + tick_side + number_gap, y_, amount, counted ? bold : type_.small, sheet().grown(room.amount), true);
    const RunOn lines = work_words(room, work);
    lines_at(words, y_, lines.first, type_.small);
    if (lines.same_line) {
        y_ -= line_height(type_.small);
        letter(words + text_width(lines.first.back() + QLatin1Char(' '), type_.small), y_, dash, type_.reason);
        letter(words + lines.start, y_, lines.second.front(), type_.reason);
        y_ += line_height(type_.small);
    }
    lines_at(words, y_, lines.same_line ? lines.second.mid(1) : lines.second, type_.reason);
    y_ = bottom;
}

void Flow::work(const std::vector<Work>& all, double amount_mm) {
    // A long quantity would stand on its tick box.
    for (const Work& one : all)
        amount_mm = std::max(amount_mm, text_width(one.amount, type_.small) / sheet().grown(1.0 * mm));
    // What is longer than a column goes across the page and over as many as it takes.
    std::vector<Work> steps;
    steps.reserve(all.size());
    const WorkRoom narrow{(room_ - column_gap) / 2.0, amount_mm * mm};
    for (const Work& one : all) {
        if (work_height(narrow, one) < full_height() / 2.0) {
            steps.push_back(one);
            continue;
        }
        work_columns(steps, amount_mm);
        steps.clear();
        Work short_one = one;
        short_one.why.clear();
        const bool long_text = work_height(narrow, short_one) >= full_height() / 2.0;
        if (long_text) {
            paragraph(one.text, Style{least_pt, false, false});
        } else {
            work_columns({short_one}, amount_mm);
        }
        paragraph(one.why, Style{least_pt, false, true});
    }
    work_columns(steps, amount_mm);
}

void Flow::work_columns(const std::vector<Work>& steps, double amount_mm) {
    const std::size_t n = steps.size();
    const auto after_titles = [&](std::size_t from) {
        while (from < n && steps[from].number == 0)
            ++from;
        return std::min(from + 1, n);
    };
    if (sheet().large_print) {
        const WorkRoom whole{room_, amount_mm * mm};
        for (std::size_t i = 0; i < n;) {
            // A title goes with the step below it.
            double height = 0.0;
            const std::size_t end = after_titles(i);
            for (std::size_t k = i; k < end; ++k)
                height += work_height(whole, steps[k]);
            keep(std::min(height, full_height()));
            for (; i < end; ++i)
                work_at(x_, whole, steps[i]);
        }
        return;
    }
    const WorkRoom half{(room_ - column_gap) / 2.0, amount_mm * mm};
    const double width = half.width;
    // First step that no longer goes into a column of `height` begun with `from`.
    const auto filled_to = [&](std::size_t from, double height) {
        double used = 0.0;
        for (std::size_t i = from; i < n;) {
            const std::size_t end = after_titles(i);
            for (std::size_t k = i; k < end; ++k)
                used += work_height(half, steps[k]);
            if (used > height) return i;
            i = end;
        }
        return n;
    };
    for (std::size_t from = 0; from < n;) {
        double least = 0.0;
        for (std::size_t k = from; k < after_titles(from); ++k)
            least += work_height(half, steps[k]);
        keep(std::min(least, full_height()));
        double height = left();
        if (filled_to(filled_to(from, height), height) == n) {
            // All that is left: both columns as short as they go.
            double total = 0.0;
            for (std::size_t i = from; i < n; ++i)
                total += work_height(half, steps[i]);
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
            work_at(x_, half, steps[i]);
        double bottom = y_;
        if (end > turn) {
            y_ = top;
            for (std::size_t i = turn; i < end; ++i)
                work_at(x_ + width + column_gap, half, steps[i]);
            bottom = std::max(bottom, y_);
            const double middle = x_ + width + column_gap / 2.0;
            page().rules.push_back({QLineF(middle, top + 1.0 * mm, middle, bottom - work_gap), thin_rule});
        }
        y_ = bottom;
        from = end;
        if (from < n) page_break();
    }
}

double Flow::part_height(const Part& part, double x, double width) const {
    Flow trial = *this;
    trial.waiting_.clear();
    trial.new_page();
    trial.x_ = x;
    trial.room_ = width;
    const std::size_t pages = trial.pages_.size();
    const double top = trial.y_;
    part(trial);
    // A heading that leads the part stands higher on an empty page than below other blocks.
    return trial.pages_.size() == pages ? trial.y_ - top + gap_block : 2.0 * full_height();
}

void Flow::side_by_side(double left_share, const Part& left_part, const Part& right_part) {
    const double width = (room_ - column_gap) * left_share;
    const double rest = room_ - column_gap - width;
    const double x = x_;
    const double whole = room_;
    double height = 0.0;
    if (!sheet().large_print)
        height = std::max(part_height(left_part, x, width), part_height(right_part, x + width + column_gap, rest));
    if (sheet().large_print || height > full_height()) {
        left_part(*this);
        right_part(*this);
        return;
    }
    keep(height);
    const double top = y_;
    room_ = width;
    left_part(*this);
    const double bottom = y_;
    y_ = top;
    x_ = x + width + column_gap;
    room_ = rest;
    right_part(*this);
    y_ = std::max(bottom, y_);
    x_ = x;
    room_ = whole;
}

}  // namespace wg::ui::paper
