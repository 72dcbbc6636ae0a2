#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <cmath>
#include <limits>

#include "tests/ui/documents/record_sample.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/format.h"
#include "ui/documents/drawings.h"
#include "ui/documents/papers.h"

namespace wg::ui {
namespace papers_test {

constexpr Paper all_papers[] = {Paper::quote,  Paper::install_sheet, Paper::survey_sheet, Paper::workings,
                                Paper::record, Paper::service_sheet, Paper::booklet};

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
        ASSERT_GE(pages.size(), kind == Paper::workings ? 1U : 2U);
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
        start = row + 7;  // past this row: its other cells hold small whole numbers too
    }
}

TEST(Papers, a_figure_that_is_not_a_number_never_reaches_paper_as_digits_or_words) {
    PaperInput input = sample::recorded_input();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    input.job.record[6].value = input.job.record[17].value = nan;
    input.job.record[6].indoors_c = nan;
    for (commissioning::Assessment& one : input.plan.assessments) {
        if (one.curve) one.curve->read[1].y = nan;
        for (commissioning::Band& band : one.bands)
            band.high = nan;
    }
    input.plan.season.months[3].compressor_kwh = nan;
    input.plan.cylinder.volume_l = nan;
    input.plan.run.total_charge_t_co2e = nan;
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

TEST(Papers, the_workings_give_every_one_with_its_page_rule_set_and_what_it_is_not) {
    PaperInput input = sample::input();
    input.plan.rule_set_label = "Neutral default, assumed";
    input.plan.workings.clear();
    for (int i = 0; i < 60; ++i) {
        const std::string n = std::to_string(i);
        input.plan.workings.push_back({(i < 40 ? "run.figure-" : "economy.figure-") + n,
                                       "Working number " + n + ".",
                                       "a_" + n + " = b + c; the lesser",
                                       {{"b", "12 m"}, {"c", n + " kg"}},
                                       n + " Pa",
                                       "EN 1234",
                                       i % 2 == 0});
    }
    const auto pages = pages_of(Paper::workings, input);
    ASSERT_GE(pages.size(), 5U);
    QStringList all;
    int money_page = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].text.contains(paper::workings_headline())) << "page " << i + 1;
        if (i > 0 && pages[i].text.contains(QStringLiteral("Money"))) money_page = static_cast<int>(i) + 1;
        all += pages[i].text;
        for (const paper::Lettering& piece : pages[i].lettering) {
            EXPECT_GE(piece.style.size_pt, paper::least_pt);
            EXPECT_LE(piece.baseline.x() + piece.width, pages[i].sheet.width - paper::margin + 1.0)
                << piece.text.toStdString();
        }
    }
    for (int i = 0; i < 60; ++i) {
        EXPECT_TRUE(all.contains(QStringLiteral("Working number %1.").arg(i))) << i;
        EXPECT_TRUE(all.contains(QStringLiteral("a_%1 = b + c").arg(i))) << "the formula, parts apart";
    }
    EXPECT_TRUE(all.contains(QStringLiteral("Neutral default, assumed")));
    EXPECT_EQ(all.filter(QStringLiteral("Assumed: at least one input")).size(), 30);
    // The contents name the page on which the group's heading stands.
    ASSERT_GT(money_page, 1);
    const qsizetype row = pages.front().text.indexOf(QStringLiteral("Money"));
    ASSERT_GE(row, 0);
    EXPECT_EQ(pages.front().text[row + 3], QString::number(money_page));
}

TEST(Papers, a_working_stays_on_one_page_with_its_inputs_and_source) {
    PaperInput input = sample::input();
    input.plan.workings.clear();
    for (int i = 0; i < 25; ++i)
        input.plan.workings.push_back({"run.figure",
                                       "Working " + std::to_string(i) + ".",
                                       "x = y",
                                       {{"first input", "1"}, {"second", "2"}, {"third", "3"}, {"fourth", "4"}},
                                       "result " + std::to_string(i),
                                       "Source of " + std::to_string(i),
                                       false});
    for (const paper::Page& page : pages_of(Paper::workings, input)) {
        for (int i = 0; i < 25; ++i) {
            const bool title = page.text.contains(QStringLiteral("Working %1.").arg(i));
            EXPECT_EQ(title, page.text.contains(QStringLiteral("result %1").arg(i))) << i;
            EXPECT_EQ(title, page.text.contains(QStringLiteral("Source: Source of %1").arg(i))) << i;
        }
    }
}

TEST(Papers, the_drill_schedule_gives_hole_torque_and_the_worst_point_by_shape_and_word) {
    PaperInput input = sample::input();
    input.plan.fixing_method.label = "Hook over the tile";
    input.plan.fixing_method.drill_mm = 5.0;
    input.plan.fixing_method.depth_mm = 70.0;
    input.plan.fixing_method.torque_nm = 20.0;
    const QString sheet = all_text(Paper::install_sheet, input);
    EXPECT_TRUE(sheet.contains(QStringLiteral("5 \u00d7 70")));
    EXPECT_TRUE(sheet.contains(QStringLiteral("Collector 1: Hook over the tile")));
    EXPECT_EQ(sheet.count(QStringLiteral("\u25c6\u00a0worst\u00a0")), 1) << "one worst point on one collector";
    input.plan.fixing_method.drill_mm = input.plan.fixing_method.torque_nm = 0.0;
    const QString untold = all_text(Paper::install_sheet, input);
    EXPECT_TRUE(untold.contains(QStringLiteral("ask for none")));
    EXPECT_TRUE(untold.contains(QStringLiteral("Torque: not told")));
    input.plan.placements.front().fixing.points[1].utilisation = 1.2;
    EXPECT_TRUE(all_text(Paper::install_sheet, input).contains(QStringLiteral("\u00a0\u25a0")));
}

TEST(Papers, the_points_stand_close_up_at_a_larger_scale_than_the_whole_surface) {
    PaperInput input = sample::input();
    const auto scales = [](const PaperInput& of) {
        std::pair<double, double> found{0.0, 0.0};  // whole surface, close up
        for (const paper::Page& page : pages_of(Paper::install_sheet, of)) {
            for (const paper::Picture& picture : page.pictures) {
                if (picture.name.contains(QStringLiteral("points close up"))) found.second = picture.units_per_m;
                if (picture.name.contains(QStringLiteral("seen face-on"))) found.first = picture.units_per_m;
                EXPECT_LE(picture.frame.bottom(), page.sheet.height - paper::margin);
            }
        }
        return found;
    };
    const auto [whole, close] = scales(input);
    EXPECT_GT(whole, 0.0);
    EXPECT_GT(close, whole);
    // A surface hardly larger than its collector is drawn large enough as it is.
    input.job.site.surfaces.front().outline = {{1.9, 2.0}, {4.9, 2.0}, {4.9, 3.6}, {1.9, 3.6}};
    input.job.site.surfaces.front().keep_outs.clear();
    const auto [small, again] = scales(input);
    EXPECT_TRUE(again == 0.0 || again >= 1.5 * small) << small << " " << again;
}

TEST(Papers, the_survey_sheet_prints_what_is_known_of_the_house_and_leaves_blanks_for_the_rest) {
    PaperInput input = sample::input();
    const QString blank = all_text(Paper::survey_sheet, input);
    for (const char* wanted :
         {"Earthing system", "Main fuse, each phase", "Pressure at rest", "Total hardness", "Rooms where no pipe goes",
          "Snow guard or parapet holds the snow", "washbasin", "Hot pipes that cool between draws", "level ground"})
        EXPECT_TRUE(blank.contains(QString::fromUtf8(wanted))) << wanted;
    EXPECT_EQ(blank.count(QStringLiteral("Water over 60 \u00b0C scalds")), 1) << "once";
    EXPECT_FALSE(blank.contains(QStringLiteral("TN-C-S")));
    Site& site = input.job.site;
    site.hill.kind = HillKind::cliff;
    site.electrics.earthing = EarthingSystem::tn_c_s;
    site.electrics.main_fuse_a = 63.0;
    site.water.static_pressure_bar = 5.5;
    site.water.fixtures = {{"", Fixture::shower, 7, ""}};
    site.water.dead_legs = {{"", "Attic bath", 9.5, 10.0, true, ""}};
    site.rooms.push_back({"", "Nursery", {}, 2.7, 5.2, true, ""});
    site.surfaces.front().snow_held = true;
    const QString told = all_text(Paper::survey_sheet, input);
    for (const char* wanted : {"TN-C-S", "cliff or escarpment", "Attic bath", "the loop", "Nursery", "none through it"})
        EXPECT_TRUE(told.contains(QString::fromUtf8(wanted))) << wanted;
    EXPECT_TRUE(told.contains(quantity(5.5, QStringLiteral("bar gauge"), 1)));
    EXPECT_TRUE(told.contains(quantity(63.0, QStringLiteral("A"))));
    EXPECT_FALSE(told.contains(QStringLiteral("Mains water pressure at rest, and hardness")) &&
                 site.water.hardness_mmol_l.has_value());
}

}  // namespace papers_test
}  // namespace wg::ui
