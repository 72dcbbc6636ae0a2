#include <gtest/gtest.h>

#include "tests/ui/documents/sample.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

QString text_of(const std::vector<Step>& steps) {
    QString text;
    for (const Step& step : steps)
        text += step.text + QLatin1Char('\n') + step.why + QLatin1Char('\n');
    return text;
}

QString steps_text(const PaperInput& input) {
    return text_of(steps_for(input.job, input.plan));
}

TEST(InstallSteps, numbers_run_from_one_without_gaps_for_every_refrigerant_and_place) {
    for (const Refrigerant refrigerant :
         {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
        for (const SurfaceKind kind : {SurfaceKind::roof, SurfaceKind::wall, SurfaceKind::terrace}) {
            PaperInput input = sample::input();
            input.plan.block.refrigerant = refrigerant;
            input.job.site.surfaces.front().kind = kind;
            int expected = 0;
            for (const Step& step : steps_for(input.job, input.plan)) {
                if (step.kind == Step::Kind::work) {
                    EXPECT_EQ(step.number, ++expected);
                }
            }
            EXPECT_GT(expected, 30);
        }
    }
}

TEST(InstallSteps, no_brace_is_left_unfilled) {
    for (const Refrigerant refrigerant : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf}) {
        PaperInput input = sample::input();
        input.plan.block.refrigerant = refrigerant;
        input.plan.run.extra_charge_kg = 0.08;
        const QString text = steps_text(input) + tools_for(input.job, input.plan).join(QLatin1Char('\n'));
        EXPECT_FALSE(text.contains(QLatin1Char('{'))) << text.toStdString();
    }
}

TEST(InstallSteps, propane_steps_and_warning_stand_only_with_propane) {
    PaperInput input = sample::input();
    const auto warns_of_fire = [&] {
        for (const Flow::Notice& notice : warnings_for(input.job, input.plan)) {
            if (notice.sign == Sign::flame) return true;
        }
        return false;
    };
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("propane")));
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("R290")));
    EXPECT_FALSE(warns_of_fire());
    input.plan.block.refrigerant = Refrigerant::r290;
    EXPECT_TRUE(steps_text(input).contains(QStringLiteral("propane")));
    EXPECT_TRUE(warns_of_fire());
    input.plan.block.refrigerant = Refrigerant::r1234yf;
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("propane")));
    EXPECT_TRUE(warns_of_fire());
}

TEST(InstallSteps, the_hand_of_the_collector_decides_the_side_that_is_said) {
    PaperInput input = sample::input();
    EXPECT_TRUE(steps_text(input).contains(QStringLiteral("RIGHT")));
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("LEFT")));
    input.job.choices.front().placements.front().hand = Hand::left;
    EXPECT_TRUE(steps_text(input).contains(QStringLiteral("LEFT")));
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("RIGHT")));
}

TEST(InstallSteps, a_wrapped_condenser_has_no_flange_to_tighten) {
    PaperInput input = sample::input();
    EXPECT_TRUE(steps_text(input).contains(QStringLiteral("flange's screws crosswise")));
    input.plan.block.condenser = CondenserKind::wrapped;
    EXPECT_FALSE(steps_text(input).contains(QStringLiteral("flange's screws crosswise")));
}

TEST(InstallSteps, pressure_test_comes_before_vacuum_before_charge_before_power) {
    PaperInput input = sample::input();
    input.plan.run.extra_charge_kg = 0.08;
    const QString text = steps_text(input);
    const qsizetype places[] = {text.indexOf(QStringLiteral("dry nitrogen from a regulator")),
                                text.indexOf(QStringLiteral("Let the nitrogen out")),
                                text.indexOf(QStringLiteral("Evacuate collector and lines")),
                                text.indexOf(QStringLiteral("open the liquid valve slowly")),
                                text.indexOf(QStringLiteral("Weigh in the extra charge")),
                                text.indexOf(QStringLiteral("Own circuit from the board")),
                                text.indexOf(QStringLiteral("Switch on, set"))};
    for (std::size_t i = 0; i < std::size(places); ++i) {
        ASSERT_GE(places[i], 0) << i;
        if (i > 0) {
            EXPECT_GT(places[i], places[i - 1]) << i;
        }
    }
}

TEST(InstallSteps, nitrogen_and_vacuum_steps_keep_the_blocks_valves_shut) {
    for (const Step& step : steps_for(sample::job(), sample::plan(sample::job()))) {
        const bool opens = step.text.contains(QStringLiteral("only, fill collector")) ||
                           step.text.startsWith(QStringLiteral("Evacuate collector"));
        if (opens) {
            EXPECT_TRUE(step.text.contains(QStringLiteral("SHUT"))) << step.text.toStdString();
        }
    }
}

TEST(InstallSteps, flare_torque_is_given_for_tube_sizes_in_the_table_only) {
    EXPECT_EQ(flare_torque(6.35), QStringLiteral("14 to 18 N m"));
    EXPECT_EQ(flare_torque(9.53), flare_torque(9.52));
    EXPECT_TRUE(flare_torque(8.0).isEmpty());
}

}  // namespace
}  // namespace wg::ui::paper
