#include <gtest/gtest.h>

#include "core/job/words.h"
#include "tests/ui/documents/sample.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/install_texts.h"
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

/// A surface and a method that fit each other, one for each kind of fixing.
struct Site {
    const char* name;
    SurfaceKind kind;
    Covering covering;
    double tilt_deg;
    FixingKind fixing;
};
constexpr Site sites[] = {{"tiles", SurfaceKind::roof, Covering::clay_tile, 38.0, FixingKind::hook},
                          {"slate", SurfaceKind::roof, Covering::slate, 38.0, FixingKind::screw_through},
                          {"seam", SurfaceKind::roof, Covering::standing_seam, 15.0, FixingKind::seam_clamp},
                          {"brick", SurfaceKind::wall, Covering::masonry, 90.0, FixingKind::anchor},
                          {"render", SurfaceKind::wall, Covering::render, 90.0, FixingKind::anchor},
                          {"flat roof", SurfaceKind::roof, Covering::membrane, 0.0, FixingKind::ballast},
                          {"terrace", SurfaceKind::terrace, Covering::paving, 0.0, FixingKind::anchor},
                          {"garden", SurfaceKind::ground, Covering::soil, 0.0, FixingKind::anchor}};

PaperInput input_at(const Site& site) {
    PaperInput input = sample::input();
    Surface& surface = input.job.site.surfaces.front();
    surface.kind = site.kind;
    surface.covering = site.covering;
    surface.tilt_deg = site.tilt_deg;
    FixingMethod& method = input.plan.fixing_method;
    method.kind = site.fixing;
    method.needs_rafters = site.fixing == FixingKind::hook || site.fixing == FixingKind::screw_through;
    method.screw_diameter_mm = method.needs_rafters ? 8.0 : 0.0;
    method.ballast_kg = site.fixing == FixingKind::ballast ? 60.0 : 0.0;
    return input;
}

TEST(InstallSteps, numbers_run_from_one_without_gaps_for_every_refrigerant_and_fixing) {
    for (const Refrigerant refrigerant :
         {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
        for (const Site& site : sites) {
            PaperInput input = input_at(site);
            input.plan.block.refrigerant = refrigerant;
            int expected = 0;
            for (const Step& step : steps_for(input.job, input.plan)) {
                if (step.kind == Step::Kind::work) {
                    EXPECT_EQ(step.number, ++expected) << site.name;
                }
            }
            EXPECT_GT(expected, 45) << site.name;
        }
    }
}

TEST(InstallSteps, each_kind_of_fixing_has_its_own_steps_and_none_of_another) {
    const QString grind = QStringLiteral("Grind a notch into the underside");
    const QString sleeve = QStringLiteral("set the sleeve through covering and underlay");
    const QString clamp = QStringLiteral("Clamp to the seam");
    const QString blow = QStringLiteral("blow out, brush, blow out again");
    const QString render = QStringLiteral("through the render into the masonry");
    const QString ballast = QStringLiteral("lay the ballast: 60\u202fkg at each of the 6 points");
    const QString footing = QStringLiteral("cast a footing under each foot");
    const QString anchor_foot = QStringLiteral("Anchor each foot into footing or slab");
    const std::map<std::string, QStringList> wanted = {{"tiles", {grind}},         {"slate", {sleeve}},
                                                       {"seam", {clamp}},          {"brick", {blow}},
                                                       {"render", {blow, render}}, {"flat roof", {ballast}},
                                                       {"terrace", {anchor_foot}}, {"garden", {footing, anchor_foot}}};
    for (const Site& site : sites) {
        const PaperInput input = input_at(site);
        const QString text = steps_text(input);
        for (const QString& phrase : {grind, sleeve, clamp, blow, render, ballast, footing, anchor_foot})
            EXPECT_EQ(text.contains(phrase), wanted.at(site.name).contains(phrase))
                << site.name << ": " << phrase.toStdString();
        // Nothing is pierced under ballast or a clamp, so nothing is drilled or sealed there.
        const bool open = site.fixing != FixingKind::ballast && site.fixing != FixingKind::seam_clamp;
        EXPECT_EQ(text.contains(QStringLiteral("Mark, drill, sleeve and seal")), open) << site.name;
    }
}

TEST(InstallSteps, what_is_not_fitted_is_not_named) {
    PaperInput input = sample::input();
    const auto says = [&](const char* phrase) { return steps_text(input).contains(QString::fromLatin1(phrase)); };
    EXPECT_FALSE(says("side by side in the circuit"));
    EXPECT_FALSE(says("one after the other in the circuit"));
    EXPECT_FALSE(says("oil traps"));
    EXPECT_FALSE(says("expansion device sits at the collector"));
    EXPECT_FALSE(says("permanent opening"));
    EXPECT_FALSE(says("recirculation"));
    EXPECT_TRUE(says("No extra charge"));
    EXPECT_FALSE(says("Weigh in"));

    input.plan.run.oil.traps.push_back({});
    input.plan.block.expansion = ExpansionPlace::collector;
    input.plan.run.extra_charge_kg = 0.08;
    input.job.site.spots.front().recirculation.present = true;
    input.plan.cylinder.recirculation_port = true;
    EXPECT_TRUE(says("Bend the oil traps"));
    EXPECT_TRUE(says("expansion device sits at the collector"));
    EXPECT_TRUE(says("Connect the recirculation"));
    EXPECT_TRUE(says("Weigh in"));
    EXPECT_FALSE(says("No extra charge"));
    input.plan.services.room.opening_m2 = 0.2;
    EXPECT_FALSE(says("permanent opening")) << "asked for by flammable charge alone";
    input.plan.block.refrigerant = Refrigerant::r290;
    EXPECT_TRUE(says("permanent opening"));

    input.plan.placements.push_back(input.plan.placements.front());
    EXPECT_TRUE(says("side by side in the circuit"));
    EXPECT_FALSE(says("one after the other in the circuit"));
    input.job.choices.front().joined = Joined::series;
    EXPECT_FALSE(says("side by side in the circuit"));
    EXPECT_TRUE(says("one after the other in the circuit"));
}

TEST(InstallSteps, each_step_that_not_everybody_may_do_says_who_may) {
    int refrigerant = 0;
    int electrician = 0;
    for (const Step& step : steps_for(sample::job(), sample::plan(sample::job()))) {
        if (step.text.startsWith(QStringLiteral("Hang the plate"))) {
            EXPECT_EQ(step.who, QStringLiteral("Two persons"));
        }
        const bool circuit = step.text.contains(QStringLiteral("service port")) ||
                             step.text.contains(QStringLiteral("open the liquid valve"));
        if (circuit) {
            EXPECT_EQ(step.who, QStringLiteral("Certified for refrigerants")) << step.text.toStdString();
            ++refrigerant;
        }
        if (step.text.contains(QStringLiteral("Own protected circuit"))) {
            EXPECT_EQ(step.who, QStringLiteral("Licensed electrician"));
            ++electrician;
        }
    }
    EXPECT_GE(refrigerant, 3);
    EXPECT_EQ(electrician, 1);
}

TEST(InstallSteps, every_step_of_work_has_its_reason_and_readings_have_the_record_s_names) {
    QString all;
    for (const StepText& line : step_texts()) {
        const bool maker_first = QString::fromUtf8(line.text).contains(QStringLiteral("{method}"));
        if (line.kind == Step::Kind::work && !maker_first) {
            EXPECT_STRNE(line.why, "") << line.text;
        }
    }
    all = steps_text(sample::input());
    for (const ReadingKind kind :
         {ReadingKind::pressure_hold_start, ReadingKind::pressure_hold_end, ReadingKind::vacuum_level,
          ReadingKind::vacuum_after_rise, ReadingKind::wall_contact, ReadingKind::water_vented,
          ReadingKind::insulation_resistance, ReadingKind::heating_start, ReadingKind::set_point})
        EXPECT_TRUE(all.contains(QLatin1Char('\'') + QString::fromLatin1(wg::text_of(kind)) + QLatin1Char('\'')))
            << wg::text_of(kind);
}

TEST(InstallSteps, no_brace_is_left_unfilled) {
    for (const Refrigerant refrigerant : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf}) {
        for (const Site& site : sites) {
            PaperInput input = input_at(site);
            input.plan.block.refrigerant = refrigerant;
            input.plan.run.extra_charge_kg = 0.08;
            QString text = steps_text(input);
            for (const Tool& tool : tools_for(input.job, input.plan))
                text += tool.place + QLatin1Char('\n') + tool.text + QLatin1Char('\n');
            EXPECT_FALSE(text.contains(QLatin1Char('{'))) << text.toStdString();
        }
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
                                text.indexOf(QStringLiteral("Weigh in the extra charge")),
                                text.indexOf(QStringLiteral("open the liquid valve slowly")),
                                text.indexOf(QStringLiteral("Own protected circuit from the board")),
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
    EXPECT_EQ(flare_torque(6.35), QStringLiteral("14 to 18\u202fN m"));
    EXPECT_EQ(flare_torque(9.53), flare_torque(9.52));
    EXPECT_TRUE(flare_torque(8.0).isEmpty());
}

}  // namespace
}  // namespace wg::ui::paper
