// All workings in one place: their groups, the way to them from figure, finding and point, search and copying.

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

#include "tests/ui/common/sample.h"
#include "ui/common/findings_list.h"
#include "ui/common/working_groups.h"
#include "ui/common/working_view.h"

namespace wg::ui {
namespace workings_test {

fixing::FixingPoint point(int number, double utilisation) {
    fixing::FixingPoint made;
    made.number = number;
    made.pull_n = 1000.0 * utilisation;
    made.resistance_pull_n = 1000.0;
    made.utilisation = utilisation;
    made.worst_combination = "wind uplift";
    return made;
}

/// Two collectors under the same wind, each with its own worst point; services, run, yield and money.
plan::Plan sample_plan() {
    plan::Plan plan;
    plan.currency = "EUR";
    plan.placements.resize(2);
    const Working wind{"fixing.wind",
                       "Peak velocity pressure",
                       "q_p = c_e q_b",
                       {{"v_b", "26 m/s"}},
                       "612 Pa",
                       "EN 1991-1-4:2005, 4.5",
                       true};
    for (int i = 0; i < 2; ++i) {
        plan::PlacementPlan& one = plan.placements[static_cast<std::size_t>(i)];
        one.placement_id = "id-" + std::to_string(i + 1);
        one.label = "Collector " + std::to_string(i + 1);
        one.fixing.worst_utilisation = i == 0 ? 0.4 : 0.9;
        one.fixing.worst_point = i == 0 ? 1 : 3;
        one.fixing.points = {point(2 * i + 1, i == 0 ? 0.4 : 0.9), point(2 * i + 2, 0.2)};
        one.fixing.workings = {wind,
                               {"fixing.worst",
                                "Worst fixing point",
                                "F_p/R_p; the greater",
                                {{"point", std::to_string(one.fixing.worst_point)}},
                                i == 0 ? "40 %" : "90 %",
                                "EN 1990",
                                false}};
        plan.workings.insert(plan.workings.end(), one.fixing.workings.begin(), one.fixing.workings.end());
    }
    plan.services.workings = {
        {"services.cable", "Cable and voltage drop", "", {}, "2.5 mm2", "IEC 60364-5-52", false},
        {"services.expansion", "Expansion of the water", "", {}, "6 l", "water tables", true},
        {"services.mass", "Mass of the filled cylinder", "", {}, "310 kg", "equipment data", false}};
    plan.workings.push_back({"run.charge", "Charge", "", {}, "1.3 kg", "equipment data", false});
    plan.workings.insert(plan.workings.end(), plan.services.workings.begin(), plan.services.workings.end());
    plan.workings.push_back({"economy.running-cost", "Cost a year", "", {}, "135 EUR", "", false});
    plan.workings.push_back({"yield.heat", "Heat", "", {}, "1 240 kWh", "simulation", true});
    return plan;
}

QStringList titles(const std::vector<WorkingGroup>& groups) {
    QStringList all;
    for (const WorkingGroup& group : groups)
        all << group.title;
    return all;
}

TEST(Workings, are_grouped_in_the_order_in_which_a_roof_is_thought_through) {
    const auto groups = grouped_workings(sample_plan());
    EXPECT_EQ(titles(groups),
              QStringList({QStringLiteral("Wind and snow"), QStringLiteral("Fixing points: Collector 1"),
                           QStringLiteral("Fixing points: Collector 2"), QStringLiteral("Run"),
                           QStringLiteral("Electrics"), QStringLiteral("Water"), QStringLiteral("Room and charge"),
                           QStringLiteral("Yield"), QStringLiteral("Money")}));
    ASSERT_EQ(groups[0].workings.size(), 1U) << "the same wind on two collectors stands once";
    EXPECT_EQ(groups[0].workings[0].place, QStringLiteral("all collectors"));
    EXPECT_EQ(groups[4].workings.size(), 1U) << "services stand in the plan's list and their own, here once";
}

TEST(Workings, none_of_the_plan_is_lost_whatever_its_key) {
    plan::Plan plan = sample_plan();
    plan.workings.push_back({"quite.new", "A new room's figure", "", {}, "1", "", false});
    plan.placements[0].fixing.workings.push_back({"fixing.new-check", "A new check", "", {}, "1", "", false});
    plan.workings.push_back(plan.placements[0].fixing.workings.back());
    const auto groups = grouped_workings(plan);
    std::size_t count = 0;
    for (const WorkingGroup& group : groups)
        for (const NamedWorking& one : group.workings)
            count += one.point == 0 ? 1 : 0;
    EXPECT_EQ(count, plan.workings.size() - 1) << "only the second, equal wind is left out";
    EXPECT_EQ(groups.back().title, QStringLiteral("Other"));
}

TEST(Workings, the_worst_fixing_of_all_is_found_and_that_of_a_collector_when_one_is_named) {
    const plan::Plan plan = sample_plan();
    const auto groups = grouped_workings(plan);
    EXPECT_EQ(at(groups, *find_working(groups, plan, "fixing.worst")).working.result, "90 %");
    EXPECT_EQ(at(groups, *find_working(groups, plan, "fixing.worst", "id-1")).working.result, "40 %");
    EXPECT_FALSE(find_working(groups, plan, "fixing.worst", "id-9").has_value());
    const auto of_point = working_of_point(groups, "id-2", 4);
    ASSERT_TRUE(of_point.has_value());
    EXPECT_EQ(at(groups, *of_point).working.title, "Point 4");
    EXPECT_TRUE(QString::fromStdString(at(groups, *of_point).working.result).startsWith(QStringLiteral("20")));
    EXPECT_EQ(at(groups, *of_point).working.formula, "F_p/R_p; the greater") << "reached as the worst one";
    EXPECT_FALSE(working_of_point(groups, "id-1", 4).has_value());
}

TEST(Workings, a_finding_leads_to_what_it_rests_on) {
    const auto groups = grouped_workings(sample_plan());
    const auto leads_to = [&](const char* code, const char* place_id = "") -> std::string {
        Finding finding;
        finding.code = code;
        finding.place_id = place_id;
        const auto where = working_of(groups, finding);
        return where ? at(groups, *where).working.key + " " + at(groups, *where).working.result : "none";
    };
    EXPECT_EQ(leads_to("fixing.overloaded", "id-2"), "fixing.worst 90 %");
    EXPECT_EQ(leads_to("fixing.overloaded", "id-1"), "fixing.worst 40 %");
    EXPECT_EQ(leads_to("site.wind-assumed"), "fixing.wind 612 Pa");
    EXPECT_EQ(leads_to("supply.voltage-drop"), "services.cable 2.5 mm2");
    EXPECT_EQ(leads_to("water.pressure"), "services.expansion 6 l");
    EXPECT_EQ(leads_to("spot.floor-load"), "services.mass 310 kg");
    EXPECT_EQ(leads_to("run.too-long"), "run.charge 1.3 kg");
    EXPECT_EQ(leads_to("comfort.shortfall"), "yield.heat 1 240 kWh");
    EXPECT_EQ(leads_to("water.scald"), "none") << "the vessel's volume says nothing of a scald";
    EXPECT_EQ(leads_to("collector.edge-clearance", "id-1"), "none") << "a distance rests on no figure";
}

struct View : testing::Test {
    WorkingView view;
    void SetUp() override {
        view.set_plan(sample_plan());
        view.show();
    }
    int listed() {
        int count = 0;
        for (int g = 0; g < view.list()->topLevelItemCount(); ++g) {
            const QTreeWidgetItem* head = view.list()->topLevelItem(g);
            if (head->isHidden()) continue;
            for (int r = 0; r < head->childCount(); ++r)
                count += head->child(r)->isHidden() ? 0 : 1;
        }
        return count;
    }
};

TEST_F(View, search_looks_into_inputs_and_sources_and_says_when_nothing_fits) {
    const int all = listed();
    EXPECT_EQ(all, 13);
    view.search()->setText(QStringLiteral("60364"));
    EXPECT_EQ(listed(), 1);
    ASSERT_NE(view.shown(), nullptr);
    EXPECT_EQ(view.shown()->working.key, "services.cable") << "the first that fits is shown";
    view.search()->setText(QStringLiteral("greater collector 2"));
    EXPECT_EQ(listed(), 4) << "every word, in any order: the second's worst and points, and point 2 of the first";
    view.search()->setText(QStringLiteral("no such word"));
    EXPECT_EQ(listed(), 0);
    EXPECT_EQ(view.shown(), nullptr);
    view.show_key(QStringLiteral("run.charge"));
    EXPECT_EQ(view.shown()->working.key, "run.charge") << "what is asked for comes in sight";
    EXPECT_EQ(listed(), all);
}

TEST_F(View, copying_gives_the_one_shown_or_all_that_are_listed) {
    view.search()->setText(QStringLiteral("wind"));
    view.show_key(QStringLiteral("fixing.wind"));
    for (QPushButton* button : view.findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Copy")) button->click();
    }
    const QString one = QApplication::clipboard()->text();
    EXPECT_TRUE(one.contains(QStringLiteral("q_p = c_e q_b"))) << one.toStdString();
    EXPECT_TRUE(one.contains(QStringLiteral("Assumed"))) << one.toStdString();
    const QString all = view.listed_text();
    EXPECT_TRUE(all.contains(QStringLiteral("WIND AND SNOW")));
    EXPECT_FALSE(all.contains(QStringLiteral("Cable")));
}

TEST_F(View, a_new_plan_keeps_what_is_read_in_sight) {
    view.show_point("id-2", 3);
    ASSERT_NE(view.shown(), nullptr);
    EXPECT_EQ(view.shown()->point, 3);
    plan::Plan next = sample_plan();
    next.placements[1].fixing.points[0].utilisation = 0.77;
    next.placements.erase(next.placements.begin());  // the rows move up
    view.set_plan(next);
    ASSERT_NE(view.shown(), nullptr);
    EXPECT_EQ(view.shown()->point, 3);
    EXPECT_TRUE(view.findChild<QTextBrowser*>()->toPlainText().contains(QStringLiteral("77")));
}

TEST_F(View, an_assumed_input_is_marked_in_the_list_by_shape_and_word) {
    int marked = 0;
    for (int g = 0; g < view.list()->topLevelItemCount(); ++g)
        for (int r = 0; r < view.list()->topLevelItem(g)->childCount(); ++r)
            marked += view.list()->topLevelItem(g)->child(r)->text(1) == QStringLiteral("\u25c6 assumed") ? 1 : 0;
    EXPECT_EQ(marked, 3);
    for (QWidget* widget : std::initializer_list<QWidget*>{view.list(), view.search(), view.findChild<QTextBrowser*>()})
        EXPECT_FALSE(widget->accessibleName().isEmpty());
}

TEST(Workings, the_findings_offer_theirs_by_a_click_on_the_words) {
    const PlanFunction with_findings = [](const Job&, const plan::Reference&, const plan::Options& options) {
        plan::Plan plan = sample_plan();
        plan.choice_id = options.choice_id;
        plan.has_yield = options.yield;
        Finding supply{"supply.voltage-drop", Severity::caution, Stage::visit, "", "Cellar", "Drop 6 %", "", "", ""};
        Finding gap{"collector.edge-clearance", Severity::caution, Stage::layout, "", "Roof", "Near", "", "", ""};
        plan.findings = {supply, gap};
        return Result<plan::Plan>(plan);
    };
    JobSession session(sample::job(), sample::reference(), with_findings);
    ASSERT_TRUE(sample::settle(session));
    FindingsList list;
    list.resize(320, 400);
    list.set_session(&session);
    list.show();
    QSignalSpy asked(&list, &FindingsList::working_asked);
    const auto click_at_link = [&](int row) {
        const QRect box = list.view()->visualRect(list.view()->model()->index(row, 0));
        QTest::mouseClick(list.view()->viewport(), Qt::LeftButton, {}, QPoint(box.right() - 30, box.top() + 16));
    };
    click_at_link(1);
    EXPECT_EQ(asked.count(), 0) << "it has none";
    click_at_link(0);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<Finding>().code, "supply.voltage-drop");
    list.view()->setFocus();
    list.view()->setCurrentIndex(list.view()->model()->index(0, 0));
    if (list.view()->hasFocus()) EXPECT_NE(list.focused_with_working(), nullptr);
}

}  // namespace workings_test
}  // namespace wg::ui
