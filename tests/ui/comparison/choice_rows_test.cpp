// What decides between choices, in words, on plans made by hand.

#include <gtest/gtest.h>

#include "tests/ui/documents/sample.h"
#include "ui/comparison/choice_rows.h"

namespace wg::ui {
namespace choice_rows_test {

struct Rows : testing::Test {
    Job job = sample::job();
    plan::Plan a = sample::plan(job);
    plan::Plan b = a;
    plan::Plan c = a;

    [[nodiscard]] std::vector<ComparedRow> rows(std::size_t basis = 0) const {
        std::vector<ComparedChoice> choices(3);
        const plan::Plan* plans[] = {&a, &b, &c};
        for (std::size_t i = 0; i < 3; ++i) {
            choices[i].label = QString(QChar(static_cast<char16_t>('A' + i)));
            choices[i].plan = plans[i];
            choices[i].choice = &job.choices.front();
            choices[i].site = &job.site;
        }
        return compare(choices, basis);
    }
    [[nodiscard]] static ComparedRow row(const std::vector<ComparedRow>& rows, const QString& what) {
        for (const ComparedRow& one : rows) {
            if (one.what == what) return one;
        }
        ADD_FAILURE() << "no row " << what.toStdString();
        return {};
    }
    static std::vector<bool> best(const ComparedRow& row) {
        std::vector<bool> out;
        for (const ComparedCell& cell : row.cells)
            out.push_back(cell.best);
        return out;
    }
};

TEST_F(Rows, EveryFigureThatDecidesHasARow) {
    const std::vector<ComparedRow> all = rows();
    for (const char* what :
         {"Collectors", "They lie on", "Fixing method", "Heat pump", "Cylinder", "It stands at", "Price with tax",
          "Paid back in", "Annual heat", "Electricity a year", "Seasonal factor", "Cost a year", "Warm-up, fair light",
          "Run, one way", "Refrigerant", "Worst fixing point", "Stands against it"}) {
        const ComparedRow one = row(all, QString::fromUtf8(what));
        ASSERT_EQ(one.cells.size(), 3U) << what;
        EXPECT_EQ(one.cells[0].state, ComparedCell::State::known) << what;
        EXPECT_FALSE(one.cells[0].figure.isEmpty()) << what;
    }
}

TEST_F(Rows, ChoicesThatAreTheSameDifferInNothingAndNoneIsBest) {
    for (const ComparedRow& one : rows()) {
        EXPECT_FALSE(one.differs) << one.what.toStdString();
        for (const ComparedCell& cell : one.cells) {
            EXPECT_FALSE(cell.best || cell.differs) << one.what.toStdString();
            EXPECT_TRUE(cell.change.isEmpty()) << one.what.toStdString();
        }
    }
}

TEST_F(Rows, TheLeastElectricityAndTheMostHeatAreBest) {
    a.figures.electricity_kwh = {900.0, 1000.0, 1100.0};
    b.figures.electricity_kwh = {820.0, 920.0, 1010.0};
    c.figures.electricity_kwh = {1000.0, 1100.0, 1200.0};
    a.figures.heat_kwh = {2900.0, 3000.0, 3100.0};
    b.figures.heat_kwh = c.figures.heat_kwh = {3000.0, 3100.0, 3200.0};
    const auto all = rows();
    const ComparedRow electricity = row(all, QStringLiteral("Electricity a year"));
    EXPECT_EQ(best(electricity), (std::vector<bool>{false, true, false}));
    EXPECT_TRUE(electricity.differs);
    EXPECT_FALSE(electricity.cells[0].differs) << "the others are held against this one";
    EXPECT_TRUE(electricity.cells[1].differs && electricity.cells[2].differs);
    EXPECT_EQ(electricity.cells[1].change, QStringLiteral("\u221280\u202fkWh"));
    EXPECT_EQ(electricity.cells[2].change, QStringLiteral("+100\u202fkWh"));
    EXPECT_TRUE(electricity.cells[1].figure.startsWith(QStringLiteral("about ")));
    EXPECT_EQ(electricity.cells[1].range, QStringLiteral("820 to 1\u202f010\u202fkWh"));
    EXPECT_TRUE(electricity.cells[1].words().endsWith(QStringLiteral(", best")));
    EXPECT_EQ(best(row(all, QStringLiteral("Annual heat"))), (std::vector<bool>{false, true, true}));
    EXPECT_EQ(row(rows(1), QStringLiteral("Electricity a year")).cells[0].change, QStringLiteral("+80\u202fkWh"));
}

TEST_F(Rows, DifferencesSmallerThanWhatIsShownAreNone) {
    a.figures.electricity_kwh.mid = 1000.2;
    b.figures.electricity_kwh.mid = 999.8;
    const ComparedRow electricity = row(rows(), QStringLiteral("Electricity a year"));
    EXPECT_FALSE(electricity.cells[1].differs);
    EXPECT_FALSE(electricity.cells[1].best);
}

TEST_F(Rows, OneStopWeighsMoreThanManyCautions) {
    Finding stop, caution;
    stop.severity = Severity::stop;
    caution.severity = Severity::caution;
    a.findings = {stop};
    b.findings = {caution, caution, caution};
    c.findings = {stop, caution};
    const ComparedRow against = row(rows(), QStringLiteral("Stands against it"));
    EXPECT_EQ(best(against), (std::vector<bool>{false, true, false}));
    EXPECT_EQ(against.cells[0].figure, QStringLiteral("1 stop, 0 cautions"));
    EXPECT_EQ(against.cells[2].figure, QStringLiteral("1 stop, 1 caution"));
    EXPECT_TRUE(against.cells[1].change.isEmpty());
}

TEST_F(Rows, AYearThatWasNotWorkedOutIsNotTheBest) {
    b.has_yield = false;
    b.figures.electricity_kwh = {};
    c.figures.electricity_kwh.mid = a.figures.electricity_kwh.mid + 50.0;
    const ComparedRow electricity = row(rows(), QStringLiteral("Electricity a year"));
    EXPECT_EQ(electricity.cells[1].figure, QStringLiteral("\u2014"));
    EXPECT_EQ(best(electricity), (std::vector<bool>{true, false, false}));
    EXPECT_FALSE(electricity.cells[1].differs);
}

TEST_F(Rows, WhatIsBeingPlannedSaysSoAndWhatCannotBePlannedIsADash) {
    std::vector<ComparedChoice> choices(2);
    choices[1].problem = QStringLiteral("no such cylinder");
    const std::vector<ComparedRow> all = compare(choices, 0);
    for (const ComparedRow& one : all) {
        EXPECT_EQ(one.cells[0].figure, QStringLiteral("working"));
        EXPECT_EQ(one.cells[1].figure, QStringLiteral("\u2014"));
        EXPECT_FALSE(one.differs);
    }
}

TEST_F(Rows, NeverPaidBackIsSaidInWords) {
    b.economy.simple_payback_y = 0.0;
    b.economy.cumulative.assign(21, Money{});
    a.economy.simple_payback_y = 11.24;
    a.economy.cumulative.assign(21, Money{});
    const ComparedRow payback = row(rows(), QStringLiteral("Paid back in"));
    EXPECT_EQ(payback.cells[0].figure, QStringLiteral("about 11.2\u202fyears"));
    EXPECT_EQ(payback.cells[1].figure, QStringLiteral("not within 20\u202fyears"));
    EXPECT_FALSE(payback.cells[1].best);
}

TEST_F(Rows, TheTableToPassOnHoldsFigureRangeAndBest) {
    a.figures.electricity_kwh = {900.0, 1000.0, 1100.0};
    const FigureTable table = table_of(rows(), {QStringLiteral("A, south"), QStringLiteral("B"), QStringLiteral("C")});
    ASSERT_EQ(table.header.size(), 4);
    const QString csv = QString::fromUtf8(table.to_csv());
    EXPECT_TRUE(csv.startsWith(QStringLiteral("what,\"A, south\",B,C\r\n")));
    EXPECT_TRUE(csv.contains(QStringLiteral("900 to 1\u202f100\u202fkWh)")));
    const QString text = table.to_text();
    EXPECT_EQ(text.count(QLatin1Char('\n')), static_cast<int>(table.rows.size()) + 1);
    EXPECT_TRUE(text.startsWith(QStringLiteral("what\tA, south\tB\tC\n")));
}

}  // namespace choice_rows_test
}  // namespace wg::ui
