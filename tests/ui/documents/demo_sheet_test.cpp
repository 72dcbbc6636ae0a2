// The demonstration job's install sheet as it comes from the planner: how long it is, and that what a fitter ticks,
// signs or fills in is all there.

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "core/job/codec.h"
#include "core/plan/plan.h"
#include "core/plan/reference.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/papers.h"
#include "ui/drawing/run_painter.h"

namespace wg::ui {
namespace demo_sheet_test {

std::optional<std::string> from_resources(const std::string& path) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + '/' + path);
    if (!file) return std::nullopt;
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

/// Planned once: a plan takes a second.
const PaperInput& demo() {
    static const PaperInput input = [] {
        PaperInput in = sample::input();
        const Result<plan::Reference> reference = plan::load_reference(from_resources);
        const Result<Job> job = job_from_json(from_resources("demo/job.json").value_or(""), "demo/job.json");
        EXPECT_TRUE(reference.ok() && job.ok());
        in.job = job.value();
        const Result<plan::Plan> plan = plan::plan(in.job, reference.value(), {});
        EXPECT_TRUE(plan.ok());
        in.plan = plan.value();
        in.look = {};
        return in;
    }();
    return input;
}

std::vector<paper::Page> sheet_of(const PaperInput& input) {
    return paper::lay_out(Paper::install_sheet, std::make_shared<const PaperInput>(input));
}

/// The lowest thing of the body, the page's foot and the code beside it left out.
double body_end(const paper::Page& page) {
    const double foot = page.sheet.height - paper::margin - 6.0 * paper::mm;
    double end = 0.0;
    for (const paper::Lettering& piece : page.lettering)
        if (piece.baseline.y() < foot) end = std::max(end, piece.baseline.y());
    for (const paper::Box& box : page.boxes)
        end = std::max(end, box.rect.bottom());
    return end;
}

TEST(DemoSheet, has_at_most_eight_pages_and_the_last_is_at_least_a_third_full) {
    const auto pages = sheet_of(demo());
    EXPECT_LE(pages.size(), 8U);
    const paper::Sheet& sheet = pages.back().sheet;
    EXPECT_GE(body_end(pages.back()) - paper::margin, (sheet.height - 2.0 * paper::margin) / 3.0);
}

TEST(DemoSheet, no_page_of_any_look_is_empty) {
    for (const bool large : {false, true})
        for (const PageForm form : {PageForm::a4, PageForm::letter})
            for (const Language language : {Language::english, Language::spanish, Language::german}) {
                PaperInput input = demo();
                input.look = {form, large, false, language};
                const auto pages = sheet_of(input);
                for (std::size_t i = 0; i < pages.size(); ++i)
                    EXPECT_GT(body_end(pages[i]), 60.0 * paper::mm)
                        << look_key(input.look).toStdString() << " page " << i + 1;
            }
}

TEST(DemoSheet, every_step_caution_and_hold_point_is_there_with_its_box) {
    const auto pages = sheet_of(demo());
    QStringList text;
    std::size_t boxes = 0;
    for (const paper::Page& page : pages) {
        text += page.text;
        boxes += page.boxes.size();
    }
    std::size_t wanted = 0;
    for (const paper::Step& step : paper::steps_for(demo().job, demo().plan)) {
        const QString words = step.who.isEmpty() ? step.text : step.who + QStringLiteral(": ") + step.text;
        const QString line = step.kind == paper::Step::Kind::work
                                 ? QString::number(step.number) + QStringLiteral(". ") + words
                             : step.kind == paper::Step::Kind::hold ? QStringLiteral("HOLD POINT: ") + words
                                                                    : words;
        EXPECT_TRUE(text.contains(line)) << line.toStdString();
        if (!step.why.isEmpty()) {
            EXPECT_TRUE(text.contains(step.why)) << step.why.toStdString();
        }
        if (step.kind != paper::Step::Kind::section) ++wanted;
    }
    for (const paper::Tool& tool : paper::tools_for(demo().job, demo().plan)) {
        EXPECT_TRUE(text.contains(tool.text)) << tool.text.toStdString();
        ++wanted;
    }
    for (const parts::Line& line : demo().plan.parts.lines)
        if (!line.labour) ++wanted;
    for (const paper::Flow::Notice& notice : paper::warnings_for(demo().job, demo().plan)) {
        EXPECT_TRUE(text.contains(notice.text)) << notice.text.toStdString();
        ++wanted;
    }
    EXPECT_GE(boxes, wanted);
}

TEST(DemoSheet, figures_of_supply_and_test_pressure_stand_once) {
    QString text;
    for (const paper::Page& page : sheet_of(demo()))
        text += page.text.join(QLatin1Char('\n')) + QLatin1Char('\n');
    const auto& plan = demo().plan;
    const auto shown = [](double value, const char* unit, int decimals) {
        return quantity(value, QString::fromUtf8(unit), decimals);
    };
    EXPECT_EQ(text.count(shown(plan.expected.test_pressure_bar, "bar", 1)), 1);
    EXPECT_EQ(text.count(shown(plan.services.electrical.residual_current_ma, "mA", 0)), 1);
    EXPECT_EQ(text.count(shown(plan.services.electrical.cable_mm2, "mm²", 1)), 1);
}

TEST(DemoSheet, no_label_of_the_run_stands_on_another_for_either_hand_in_any_language) {
    for (const Hand hand : {Hand::left, Hand::right})
        for (const Language language : {Language::english, Language::spanish, Language::german}) {
            const PaperLanguage spoken(language);
            PaperInput input = demo();
            for (Choice& choice : input.job.choices)
                for (Placement& placement : choice.placements)
                    placement.hand = hand;
            const Result<plan::Reference> reference = plan::load_reference(from_resources);
            ASSERT_TRUE(reference.ok());
            const Result<plan::Plan> plan = plan::plan(input.job, reference.value(), {});
            ASSERT_TRUE(plan.ok());
            QImage image(10, 10, QImage::Format_ARGB32_Premultiplied);
            QPainter painter(&image);
            const QRectF area(0.0, 0.0, 80.0 * paper::mm, 78.0 * paper::mm);
            const auto labels = paint_run(painter, input.job, plan.value(), area, paper_theme(),
                                          paper::text_units(paper::least_pt), 18.0);
            EXPECT_GE(labels.size(), plan.value().run.legs.size() + 4);
            for (std::size_t i = 0; i < labels.size(); ++i)
                for (std::size_t k = i + 1; k < labels.size(); ++k)
                    EXPECT_FALSE(labels[i].box.intersects(labels[k].box))
                        << labels[i].text.toStdString() << " over " << labels[k].text.toStdString();
        }
}

TEST(PaperFlow, no_figure_is_parted_from_its_unit_and_no_word_broken_in_a_narrow_table) {
    for (const bool large : {false, true}) {
        paper::Furniture furniture;
        furniture.sheet.large_print = large;
        paper::Flow flow(furniture);
        paper::Table table;
        for (const char* title :
             {"Point", "Across", "mm", "Upwards", "mm", "On rafter", "Hole", "Torque", "Pull, shear", "Utilisation"})
            table.columns.push_back({QString::fromLatin1(title), 14.0});
        table.rows.push_back({QStringList{QStringLiteral("1"), QStringLiteral("left-hand"), QStringLiteral("12 mm"),
                                          QStringLiteral("Traufkante"), QStringLiteral("1234 mm"),
                                          QStringLiteral("yes"), QStringLiteral("8 mm"), QStringLiteral("20 N m"),
                                          QStringLiteral("12.4 kN"), QStringLiteral("worst 479 %")},
                              paper::Row::Kind::total});
        flow.table(table);
        QStringList lines;
        for (const paper::Page& page : flow.finish())
            for (const paper::Lettering& piece : page.lettering)
                lines += piece.text;
        for (const char* whole : {"Traufkante", "1234 mm", "20 N m", "12.4 kN", "479 %", "left-hand"})
            EXPECT_TRUE(std::any_of(lines.begin(), lines.end(),
                                    [&](const QString& line) { return line.contains(QString::fromLatin1(whole)); }))
                << whole << (large ? " in large print" : "");
    }
}

}  // namespace demo_sheet_test
}  // namespace wg::ui
