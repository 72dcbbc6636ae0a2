#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "tests/ui/common/sample.h"
#include "ui/common/edits.h"
#include "ui/common/findings_list.h"
#include "ui/common/ledger.h"
#include "ui/common/ledger_lines.h"
#include "ui/common/notice_bar.h"
#include "ui/common/working_view.h"

namespace wg::ui {
namespace {

plan::Plan sample_plan() {
    plan::Plan plan;
    plan.has_yield = true;
    plan.currency = "EUR";
    plan.figures.heat_kwh = {1080, 1240, 1390};
    plan.figures.electricity_kwh = {400, 450, 520};
    plan.figures.seasonal_factor = {2.4, 2.72, 3.0};
    plan.figures.running_cost_minor = {12000, 13500, 15600};
    plan.figures.run_m = 11.4;
    plan.figures.charge_kg = 1.32;
    plan.figures.worst_utilisation = 0.62;
    plan.figures.worst_point = 3;
    plan.figures.price_gross = {742000};
    plan.figures.price_net = {623529};
    plan.quote.emplace();
    plan.workings = {{"yield.heat", "Heat", "a < b", {{"in", "1"}}, "1 240 kWh", "Source", true}};
    return plan;
}

TEST(Ledger, every_estimate_says_about_and_has_a_unit_and_a_range) {
    const plan::Plan plan = sample_plan();
    const std::vector<LedgerLine> lines = ledger_lines(&plan, nullptr, false);
    ASSERT_EQ(lines.size(), 7U);
    EXPECT_EQ(lines[0].value, QStringLiteral("about 1\u202f240\u202fkWh"));
    EXPECT_EQ(lines[0].range, QStringLiteral("1\u202f080 to 1\u202f390\u202fkWh"));
    EXPECT_EQ(lines[2].value, QStringLiteral("about 2.72"));
    EXPECT_EQ(lines[3].value, QStringLiteral("about 135\u202fEUR"));
    EXPECT_EQ(lines[4].value, QStringLiteral("11.4\u202fm, 1.32\u202fkg"));
    EXPECT_EQ(lines[5].value, QStringLiteral("62\u202f% used"));
    EXPECT_EQ(lines[6].value, QStringLiteral("7\u202f420.00\u202fEUR"));
    for (const LedgerLine& line : lines)
        EXPECT_TRUE(line.change.isEmpty()) << line.title.toStdString();
}

TEST(Ledger, without_a_plan_there_are_dashes_and_no_zeros) {
    for (const LedgerLine& line : ledger_lines(nullptr, nullptr, false))
        EXPECT_EQ(line.value, QStringLiteral("\u2014"));
    plan::Plan quick = sample_plan();
    quick.has_yield = false;
    EXPECT_EQ(ledger_lines(&quick, nullptr, false)[0].value, QStringLiteral("\u2014"));
}

TEST(Ledger, carried_figures_are_marked_and_show_no_difference) {
    plan::Plan quick = sample_plan();
    quick.has_yield = false;
    plan::Plan earlier = sample_plan();
    earlier.figures.heat_kwh.mid = 1000;
    const std::vector<LedgerLine> lines = ledger_lines(&quick, &earlier, true);
    EXPECT_TRUE(lines[0].carried);
    EXPECT_EQ(lines[0].value, QStringLiteral("about 1\u202f240\u202fkWh"));
    EXPECT_TRUE(lines[0].change.isEmpty());
    EXPECT_FALSE(lines[4].carried);
}

TEST(Ledger, differences_are_those_of_the_figures_shown) {
    const plan::Plan plan = sample_plan();
    plan::Plan earlier = sample_plan();
    earlier.figures.heat_kwh.mid = 1227.6;
    earlier.figures.run_m = 12.4;
    earlier.figures.price_gross = {741000};
    const std::vector<LedgerLine> lines = ledger_lines(&plan, &earlier, false);
    EXPECT_EQ(lines[0].change, QStringLiteral("+12\u202fkWh"));
    EXPECT_TRUE(lines[1].change.isEmpty());
    EXPECT_EQ(lines[4].change, QStringLiteral("\u22121.0\u202fm"));
    EXPECT_EQ(lines[6].change, QStringLiteral("+10.00\u202fEUR"));
}

TEST(Ledger, only_figures_with_a_working_offer_it) {
    const plan::Plan plan = sample_plan();
    const std::vector<LedgerLine> lines = ledger_lines(&plan, nullptr, false);
    EXPECT_EQ(lines[0].working_key, QStringLiteral("yield.heat"));
    EXPECT_TRUE(lines[1].working_key.isEmpty());
    LedgerRow row;
    row.set_line(lines[0]);
    EXPECT_TRUE(row.isEnabled());
    row.set_line(lines[1]);
    EXPECT_FALSE(row.isEnabled());
}

TEST(Working, the_price_has_one_that_adds_up) {
    plan::Plan plan = sample_plan();
    plan.quote->currency = "EUR";
    plan.quote->lines.resize(2);
    plan.quote->lines[0].net = {60000};
    plan.quote->lines[1].net = {40000};
    plan.quote->lines[1].labour = true;
    plan.quote->net = {100000};
    plan.quote->taxes = {{{"standard", "Tax", 0.19}, {100000}, {}, {100000}, {19000}}};
    plan.quote->gross = {119000};
    const auto groups = grouped_workings(plan);
    const Working working = groups.back().workings.back().working;
    EXPECT_EQ(working.key, "quote.price");
    EXPECT_EQ(ledger_lines(&plan, nullptr, false)[6].working_key, QStringLiteral("quote.price"));
    EXPECT_EQ(working_text(working),
              QStringLiteral(
                  "Price with tax\nequipment and material + labour + tax\nequipment and material: "
                  "600.00\u202fEUR\nlabour: 400.00\u202fEUR\nnet: 1\u202f000.00\u202fEUR\nTax, 19.0\u202f% of "
                  "1\u202f000.00\u202fEUR: 190.00\u202fEUR\nResult: 1\u202f190.00\u202fEUR\nSource: Price list: ; rule "
                  "set: "));
}

TEST(Working, text_from_files_cannot_become_markup) {
    const plan::Plan plan = sample_plan();
    EXPECT_TRUE(working_html(plan.workings[0]).contains(QStringLiteral("a &lt; b")));
    EXPECT_TRUE(working_text(plan.workings[0]).contains(QStringLiteral("Assumed")));
}

std::vector<Finding> two_findings() {
    return {{"a", Severity::stop, Stage::layout, sample::placement_id, "Collector 1", "Too near", "Move it", "Rule",
             "Source"},
            {"b", Severity::note, Stage::visit, "", "", "Assumed snow", "", "", ""}};
}

TEST(Findings, the_model_keeps_the_rules_of_item_models) {
    FindingsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.set_findings(two_findings());
    EXPECT_EQ(model.rowCount(), 2);
    std::vector<Finding> changed = two_findings();
    changed[0].message = "Nearer still";
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.set_findings(changed);
    EXPECT_EQ(reset.count(), 0);
    EXPECT_TRUE(model.data(model.index(0), Qt::DisplayRole).toString().contains(QStringLiteral("Nearer still")));
    model.set_findings({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(Findings, counts_are_said_in_words) {
    EXPECT_EQ(count_text(two_findings()), QStringLiteral("1 stop, 1 note"));
    EXPECT_EQ(count_text({}), QStringLiteral("none"));
}

TEST(Findings, enter_and_double_click_lead_to_the_place) {
    const PlanFunction with_findings = [](const Job& job, const plan::Reference& reference,
                                          const plan::Options& options) {
        Result<plan::Plan> plan = sample::quick_to_read_plan(job, reference, options);
        plan.value().findings = two_findings();
        return plan;
    };
    JobSession session(sample::job(), sample::reference(), with_findings);
    ASSERT_TRUE(sample::settle(session));
    FindingsList list;
    list.resize(320, 400);
    list.set_session(&session);
    list.show();
    QSignalSpy activated(&list, &FindingsList::activated);
    list.view()->setCurrentIndex(list.view()->model()->index(0, 0));
    QTest::keyClick(list.view(), Qt::Key_Return);
    ASSERT_EQ(activated.count(), 1);
    EXPECT_EQ(activated[0][0].toString().toStdString(), sample::placement_id);
    EXPECT_EQ(activated[0][1].value<Stage>(), Stage::layout);
    const QRect row = list.view()->visualRect(list.view()->model()->index(1, 0));
    QTest::mouseClick(list.view()->viewport(), Qt::LeftButton, {}, row.center());
    QTest::mouseDClick(list.view()->viewport(), Qt::LeftButton, {}, row.center());
    ASSERT_EQ(activated.count(), 2);
    EXPECT_EQ(activated[1][1].value<Stage>(), Stage::visit);
}

TEST(NoticeBar, stays_until_closed_and_keeps_what_nobody_has_read) {
    NoticeBar bar;
    EXPECT_TRUE(bar.isHidden());
    bar.add(Mark::stop, QStringLiteral("first"));
    bar.add(Mark::stop, QStringLiteral("second"));
    EXPECT_FALSE(bar.isHidden());
    EXPECT_EQ(bar.text(), QStringLiteral("first\nsecond"));
    bar.add(Mark::stop, QStringLiteral("first"));
    EXPECT_EQ(bar.text(), QStringLiteral("second\nfirst"));
    bar.clear();
    EXPECT_TRUE(bar.isHidden());
}

}  // namespace
}  // namespace wg::ui
