#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <cmath>
#include <limits>

#include "tests/ui/documents/sample.h"
#include "ui/documents/drawings.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace papers_test {

constexpr Paper all_papers[] = {Paper::quote, Paper::install_sheet, Paper::survey_sheet};

std::vector<paper::Page> pages_of(Paper kind, const PaperInput& input) {
    return paper::lay_out(kind, std::make_shared<const PaperInput>(input));
}

QString all_text(Paper kind, const PaperInput& input) {
    QString text;
    for (const paper::Page& page : pages_of(kind, input))
        text += page.text.join(QLatin1Char('\n')) + QLatin1Char('\n');
    return text;
}

TEST(Papers, every_page_names_firm_title_job_revision_choice_and_its_number) {
    const PaperInput input = sample::input();
    for (const Paper kind : all_papers) {
        const auto pages = pages_of(kind, input);
        ASSERT_GE(pages.size(), 2U);
        for (std::size_t i = 0; i < pages.size(); ++i) {
            const QString text = pages[i].text.join(QLatin1Char('\n'));
            for (const QString& wanted : {input.firm.name, title_of(kind), QStringLiteral("Job 2027-0042, revision 3"),
                                          QStringLiteral("A: one plate on the roof"),
                                          QStringLiteral("Page %1 of %2").arg(i + 1).arg(pages.size())}) {
                EXPECT_TRUE(text.contains(wanted)) << wanted.toStdString() << " missing on page " << i + 1;
            }
        }
    }
}

TEST(Papers, a_job_changed_since_the_revision_says_so) {
    PaperInput input = sample::input();
    input.unsaved = true;
    EXPECT_TRUE(all_text(Paper::quote, input).contains(QStringLiteral("revision 3 with changes")));
}

TEST(Papers, invented_data_is_marked_on_every_page_and_true_data_is_not) {
    PaperInput input = sample::input();
    for (const Paper kind : all_papers) {
        for (const paper::Page& page : pages_of(kind, input)) {
            EXPECT_TRUE(page.text.contains(QStringLiteral("Invented data: for demonstration")));
        }
    }
    input.job.invented = input.plan.invented = input.firm.invented = false;
    for (const Paper kind : all_papers) {
        EXPECT_FALSE(all_text(kind, input).contains(QStringLiteral("Invented data")));
    }
}

TEST(Papers, a_plan_with_a_stop_is_marked_on_every_page_of_quote_and_install_sheet) {
    PaperInput input = sample::input();
    for (const Paper kind : {Paper::quote, Paper::install_sheet}) {
        EXPECT_FALSE(all_text(kind, input).contains(QStringLiteral("Not to be issued")));
    }
    input.plan.findings.insert(input.plan.findings.begin(), sample::stop());
    for (const Paper kind : {Paper::quote, Paper::install_sheet}) {
        for (const paper::Page& page : pages_of(kind, input)) {
            EXPECT_TRUE(page.text.contains(QStringLiteral("Not to be issued: has a stop")));
        }
        EXPECT_TRUE(all_text(kind, input).contains(QStringLiteral("Point 3 carries 1.12 times what it holds")));
    }
    EXPECT_FALSE(all_text(Paper::quote, input).contains(QStringLiteral("I order the system")))
        << "a stopped quote must not be ready to sign";
}

TEST(Papers, the_set_out_table_lists_every_fixing_point_with_both_distances) {
    const PaperInput input = sample::input();
    const auto pages = pages_of(Paper::install_sheet, input);
    QStringList cells;
    for (const paper::Page& page : pages)
        cells += page.text;
    qsizetype start =
        cells.indexOf(QStringLiteral("Fixing points, in millimetres along the surface from the edges named"));
    ASSERT_GE(start, 0);
    for (const fixing::FixingPoint& point : input.plan.placements.front().fixing.points) {
        const qsizetype row = cells.indexOf(QString::number(point.number), start);
        ASSERT_GE(row, 0) << "point " << point.number;
        EXPECT_EQ(cells[row + 1], QStringLiteral("left"));
        const auto millimetres = [](QString text) { return text.remove(QChar(0x202F)).toDouble(); };
        EXPECT_EQ(millimetres(cells[row + 2]), std::round(point.edge_a.distance_m * 1000.0));
        EXPECT_EQ(cells[row + 3], QStringLiteral("lower"));
        EXPECT_EQ(millimetres(cells[row + 4]), std::round(point.edge_b.distance_m * 1000.0));
        start = row + 10;  // past this row: its other cells hold small whole numbers too
    }
}

TEST(Papers, a_figure_that_is_not_a_number_never_reaches_paper_as_digits_or_words) {
    PaperInput input = sample::input();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    input.plan.placements.front().fixing.points[2].pull_n = nan;
    input.plan.run.lift_m = std::numeric_limits<double>::infinity();
    input.plan.figures.heat_kwh.high = nan;
    input.plan.services.electrical.cable_mm2 = nan;
    input.plan.warm_up_fair->hours = nan;
    for (const Paper kind : all_papers) {
        const QStringList words = all_text(kind, input).split(QRegularExpression(QStringLiteral("[^A-Za-z]+")));
        EXPECT_FALSE(words.contains(QStringLiteral("nan"), Qt::CaseInsensitive)) << title_of(kind).toStdString();
        EXPECT_FALSE(words.contains(QStringLiteral("inf"), Qt::CaseInsensitive)) << title_of(kind).toStdString();
    }
}

TEST(Papers, the_quote_groups_material_and_the_install_sheet_lists_every_part) {
    const PaperInput input = sample::input();
    const QString quote = all_text(Paper::quote, input);
    const QString sheet = all_text(Paper::install_sheet, input);
    EXPECT_FALSE(quote.contains(QStringLiteral("Wood screw")));
    for (const parts::Line& line : input.plan.parts.lines) {
        if (!line.labour) {
            EXPECT_TRUE(sheet.contains(QString::fromStdString(line.text))) << line.text;
        }
    }
    for (const char* wanted : {"Collector Marl 21", "Equipment", "Material", "Labour", "Net", "Total to pay"}) {
        EXPECT_TRUE(quote.contains(QString::fromUtf8(wanted))) << wanted;
    }
    EXPECT_TRUE(quote.contains(QStringLiteral("This quote holds for 30 days, until 12 May 2027")));
}

TEST(Papers, yearly_figures_in_the_quote_carry_their_range) {
    QString quote = all_text(Paper::quote, sample::input());
    quote.remove(QChar(0x202F));
    EXPECT_TRUE(quote.contains(QStringLiteral("1740kWh (1610 to 1820)"))) << quote.toStdString();
    EXPECT_TRUE(quote.contains(QStringLiteral("none of these figures is a promise")));
}

TEST(Papers, the_survey_sheet_needs_no_choice_and_no_plan) {
    PaperInput input = sample::input();
    input.job.choices.clear();
    input.job.chosen_choice_id.clear();
    input.plan = plan::Plan();
    const QString text = all_text(Paper::survey_sheet, input);
    EXPECT_TRUE(text.contains(QStringLiteral("No choice yet")));
    EXPECT_TRUE(text.contains(QStringLiteral("Utility room: what the floor carries")));
}

TEST(Papers, papers_of_an_empty_job_say_what_is_missing) {
    PaperInput input;
    for (const Paper kind : all_papers) {
        const auto pages = pages_of(kind, input);
        EXPECT_GE(pages.size(), 1U);
        EXPECT_TRUE(pages.front().text.contains(QStringLiteral("Firm's name and address not entered yet")));
    }
    EXPECT_TRUE(
        all_text(Paper::survey_sheet, input).contains(QStringLiteral("At least one surface for the collector")));
}

TEST(Papers, edges_are_named_as_a_fitter_says_them) {
    const std::vector<Point2> roof = {{0, 0}, {9, 0}, {9, 5}, {0, 5}};
    EXPECT_EQ(paper::edge_names(roof), QStringList({QStringLiteral("lower"), QStringLiteral("right"),
                                                    QStringLiteral("upper"), QStringLiteral("left")}));
    const std::vector<Point2> other_sense = {{0, 0}, {0, 5}, {9, 5}, {9, 0}};
    EXPECT_EQ(paper::edge_names(other_sense), QStringList({QStringLiteral("left"), QStringLiteral("upper"),
                                                           QStringLiteral("right"), QStringLiteral("lower")}));
    const std::vector<Point2> notched = {{0, 0}, {4, 0}, {4, 1}, {9, 1}, {9, 5}, {0, 5}};
    const QStringList names = paper::edge_names(notched);
    EXPECT_EQ(QSet<QString>(names.begin(), names.end()).size(), names.size()) << "no two edges share a name";
}

}  // namespace papers_test
}  // namespace wg::ui
