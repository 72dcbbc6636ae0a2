#include "ui/documents/install_steps.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/install_texts.h"

namespace wg::ui::paper {
namespace {

QString lagging_words(const pipework::Run& run) {
    const QString suction = quantity(run.insulation_mm, QStringLiteral("mm"));
    if (run.small_insulation_mm == run.insulation_mm) return say("%1 wall").arg(suction);
    if (!(run.small_insulation_mm > 0.0)) return say("%1 wall on the suction tube").arg(suction);
    return say("%1 wall on the suction tube, %2 on the small one")
        .arg(suction, quantity(run.small_insulation_mm, QStringLiteral("mm")));
}

/// "; 7 mm wide, 100 mm deep" where the method's data tell.
QString drill_words(const FixingMethod& method) {
    if (!(method.drill_mm > 0.0)) return QString();
    const QString wide = quantity(method.drill_mm, QStringLiteral("mm"));
    if (!(method.depth_mm > 0.0)) return say(", %1 wide").arg(wide);
    return say(", %1 wide and %2 deep").arg(wide, quantity(method.depth_mm, QStringLiteral("mm")));
}

QString torque_words(const FixingMethod& method) {
    if (!(method.torque_nm > 0.0)) return say(", to the torque its maker names");
    return say(", to %1").arg(quantity(method.torque_nm, QStringLiteral("N m")));
}

QString flare_words(double outside_diameter_mm) {
    const QString torque = flare_torque(outside_diameter_mm);
    return torque.isEmpty() ? say("to the fitting maker's torque") : torque;
}

QString level_side_words(LevelSide side) {
    switch (side) {
        case LevelSide::long_side: return say("long side");
        case LevelSide::short_side: return say("short side");
        case LevelSide::either: break;
    }
    return say("lower side");
}

using Figures = std::map<QString, QString>;

void add_fixing(Figures& figures, const plan::Plan& plan) {
    const FixingMethod& method = plan.fixing_method;
    int points = 0;
    for (const plan::PlacementPlan& placement : plan.placements)
        points += static_cast<int>(placement.fixing.points.size());
    const int screws = method.screws_per_point > 0 ? method.screws_per_point : plan.collector.screws_per_point;
    figures[QStringLiteral("points")] = QString::number(points);
    figures[QStringLiteral("method")] = qs(method.label);
    figures[QStringLiteral("screws")] = QString::number(screws);
    figures[QStringLiteral("screw")] = quantity(method.screw_diameter_mm, QStringLiteral("mm"));
    figures[QStringLiteral("grip")] = quantity(method.screw_grip_mm, QStringLiteral("mm"));
    figures[QStringLiteral("drill_words")] = drill_words(method);
    figures[QStringLiteral("torque_words")] = torque_words(method);
    figures[QStringLiteral("ballast")] = quantity(method.ballast_kg, QStringLiteral("kg"));
    figures[QStringLiteral("level_side")] = level_side_words(plan.collector.level_side);
}

void add_circuit(Figures& figures, const plan::Plan& plan) {
    const BlockModel& block = plan.block;
    figures[QStringLiteral("refrigerant")] = QString::fromLatin1(name_of(block.refrigerant));
    figures[QStringLiteral("safety_class")] = safety_class(block.refrigerant);
    figures[QStringLiteral("opening")] = quantity(plan.services.room.opening_m2 * 1e4, QStringLiteral("cm²"));
    figures[QStringLiteral("insulation")] = lagging_words(plan.run);
    figures[QStringLiteral("liquid_od")] = quantity(block.liquid_od_mm, QStringLiteral("mm"), 2);
    figures[QStringLiteral("suction_od")] = quantity(block.suction_od_mm, QStringLiteral("mm"), 2);
    figures[QStringLiteral("torque_liquid")] = flare_words(block.liquid_od_mm);
    figures[QStringLiteral("torque_suction")] = flare_words(block.suction_od_mm);
    figures[QStringLiteral("test_pressure")] = quantity(plan.expected.test_pressure_bar, QStringLiteral("bar"), 1);
    figures[QStringLiteral("max_pressure")] = quantity(plan.expected.max_pressure_bar, QStringLiteral("bar"), 1);
    figures[QStringLiteral("vacuum")] = quantity(vacuum_target_pa, QStringLiteral("Pa"));
    figures[QStringLiteral("vacuum_limit")] = quantity(vacuum_limit_pa, QStringLiteral("Pa"));
    figures[QStringLiteral("vacuum_wait")] = QString::number(vacuum_wait_min);
    figures[QStringLiteral("extra_charge")] = quantity(plan.run.extra_charge_kg, QStringLiteral("kg"), 3);
    figures[QStringLiteral("total_charge")] = quantity(plan.run.total_charge_kg, QStringLiteral("kg"), 3);
}

void add_services(Figures& figures, const plan::Plan& plan) {
    const auto& w = plan.services.water;
    figures[QStringLiteral("filled_mass")] = quantity(plan.services.filled_mass_kg, QStringLiteral("kg"));
    figures[QStringLiteral("precharge")] = quantity(w.vessel_precharge_bar, QStringLiteral("bar"), 1);
    figures[QStringLiteral("safety_valve")] = quantity(w.safety_valve_bar, QStringLiteral("bar"), 1);
    figures[QStringLiteral("set_point")] = temperature(plan.expected.set_point_c);
}

Figures figures_of(const plan::Plan& plan) {
    Figures figures;
    // Readings under the names that the record gives them, so that sheet and record can be laid side by side.
    for (const Word<ReadingKind>& word : words<ReadingKind>()) {
        const bool taken = word.value == ReadingKind::set_point;  // the wanted temperature has that name
        figures[QLatin1String(word.key) + (taken ? QStringLiteral("_reading") : QString())] = say(word.text);
    }
    add_fixing(figures, plan);
    add_circuit(figures, plan);
    add_services(figures, plan);
    return figures;
}

QString filled(const char* text, const Figures& figures) {
    QString out = say(text);
    for (const auto& [name, value] : figures)
        out.replace(QLatin1Char('{') + name + QLatin1Char('}'), value);
    return out;
}

QString who_words(Who who) {
    switch (who) {
        case Who::anybody: break;
        case Who::two_persons: return say("Two persons");
        case Who::refrigerants: return say("Certified for refrigerants");
        case Who::electrician: return say("Licensed electrician");
    }
    return QString();
}

void take_surface(StepFacts& facts, const Surface& surface) {
    facts.on_roof = facts.on_roof || surface.kind == SurfaceKind::roof;
    facts.on_wall = facts.on_wall || surface.kind == SurfaceKind::wall;
    facts.tiles = facts.tiles || surface.covering == Covering::clay_tile || surface.covering == Covering::concrete_tile;
    facts.membrane = facts.membrane || surface.covering == Covering::membrane;
    facts.render = facts.render || surface.covering == Covering::render;
    facts.soil = facts.soil || surface.covering == Covering::soil;
}

void take_placement(StepFacts& facts, const Placement& placement) {
    facts.left_hand = facts.left_hand || placement.hand == Hand::left;
    facts.right_hand = facts.right_hand || placement.hand == Hand::right;
    facts.on_frame = facts.on_frame || placement.frame_tilt_deg.has_value();
}

}  // namespace

QString safety_class(Refrigerant refrigerant) {
    switch (refrigerant) {
        case Refrigerant::r134a:
        case Refrigerant::r513a: return QStringLiteral("A1");
        case Refrigerant::r1234yf: return QStringLiteral("A2L");
        case Refrigerant::r290: return QStringLiteral("A3");
    }
    return QString();
}

QString flare_torque(double outside_diameter_mm) {
    struct Size {
        double od_mm;
        double least_nm, most_nm;
    };
    const Size sizes[] = {{6.35, 14, 18}, {9.52, 33, 42}, {12.7, 50, 62}, {15.88, 63, 77}, {19.05, 97, 117}};
    for (const Size& size : sizes) {
        // 9.52 and 9.53 mm are the same 3/8 inch tube.
        if (std::fabs(size.od_mm - outside_diameter_mm) < 0.05) {
            return say("%1 to %2").arg(number(size.least_nm), quantity(size.most_nm, QStringLiteral("N m")));
        }
    }
    return QString();
}

StepFacts facts_of(const Job& job, const plan::Plan& plan) {
    StepFacts facts;
    const Choice* choice = find_choice(job, plan.choice_id);
    for (const plan::PlacementPlan& placed : plan.placements) {
        const Surface* surface = find_surface(job.site, placed.surface_id);
        if (surface != nullptr) take_surface(facts, *surface);
        if (choice == nullptr) continue;
        for (const Placement& placement : choice->placements) {
            if (placement.id == placed.placement_id) take_placement(facts, placement);
        }
    }
    facts.kind = plan.fixing_method.kind;
    facts.into_timber = plan.fixing_method.needs_rafters && plan.fixing_method.screw_diameter_mm > 0.0;
    facts.several = plan.placements.size() > 1;
    facts.series = facts.several && choice != nullptr && choice->joined == Joined::series;
    facts.parallel = facts.several && !facts.series;
    const bool small_flared = !flare_torque(plan.block.liquid_od_mm).isEmpty();
    const bool suction_flared = !flare_torque(plan.block.suction_od_mm).isEmpty();
    facts.flared = small_flared || suction_flared;
    // Branches are brazed too.
    facts.brazed = !small_flared || !suction_flared || facts.parallel;
    facts.expansion_at_collector = plan.block.expansion == ExpansionPlace::collector;
    facts.oil_traps = !plan.run.oil.traps.empty();
    facts.collector_below = plan.run.lift_m < 0.0;
    facts.passages = plan.run.passages > 0;
    facts.extra_charge = plan.run.extra_charge_kg > 0.0005;
    facts.immersed = plan.block.condenser == CondenserKind::immersed;
    facts.anode = !plan.cylinder.anode.empty();
    facts.mixing_valve = plan.services.water.mixing_valve;
    facts.flammable_a3 = safety_class(plan.block.refrigerant) == QStringLiteral("A3");
    facts.flammable_a2l = safety_class(plan.block.refrigerant) == QStringLiteral("A2L");
    facts.room_opening = facts.flammable() && plan.services.room.opening_m2 > 0.0;
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(job.site, choice->spot_id);
    facts.recirculation = spot != nullptr && spot->recirculation.present && plan.cylinder.recirculation_port;
    facts.scaffold = job.survey.scaffold_needed;
    return facts;
}

std::vector<Step> steps_for(const Job& job, const plan::Plan& plan) {
    const StepFacts facts = facts_of(job, plan);
    const Figures figures = figures_of(plan);
    std::vector<Step> steps;
    int number = 0;
    for (const StepText& line : step_texts()) {
        if (!line.applies(facts)) continue;
        Step step;
        step.kind = line.kind;
        if (line.kind == Step::Kind::work) step.number = ++number;
        step.pattern = QString::fromUtf8(line.text);
        step.text = filled(line.text, figures);
        step.why = filled(line.why, figures);
        step.who = who_words(line.who);
        steps.push_back(std::move(step));
    }
    return steps;
}

int step_that_names(const std::vector<Step>& steps, const char* figure) {
    const auto found = std::find_if(steps.begin(), steps.end(), [figure](const Step& step) {
        return step.kind == Step::Kind::work && step.pattern.contains(QLatin1String(figure));
    });
    return found == steps.end() ? 0 : found->number;
}

std::vector<Tool> tools_for(const Job& job, const plan::Plan& plan) {
    const StepFacts facts = facts_of(job, plan);
    const auto figures = figures_of(plan);
    std::vector<Tool> tools;
    for (const ToolText& tool : tool_texts()) {
        if (tool.applies(facts)) tools.push_back({say(tool.place), filled(tool.text, figures)});
    }
    return tools;
}

std::vector<Flow::Notice> warnings_for(const Job& job, const plan::Plan& plan) {
    const StepFacts f = facts_of(job, plan);
    const auto figures = figures_of(plan);
    std::vector<Flow::Notice> warnings;
    if (f.on_roof || f.on_wall) {
        warnings.push_back(
            {Sign::height, say("Work at height"),
             filled(
                 marked(
                     "Edge protection, scaffold or tower first; two persons for the plate; not in wind, wet or frost."),
                 figures)});
    }
    warnings.push_back({Sign::pressure, say("Pressure"),
                        filled(marked("Dry nitrogen only, regulator set, never above {max_pressure}. Goggles. Stand "
                                      "aside when a valve opens."),
                               figures)});
    if (f.flammable_a3) {
        warnings.push_back(
            {Sign::flame, filled(marked("Highly flammable refrigerant: {refrigerant} ({safety_class})"), figures),
             filled(marked("{total_charge} in the circuit. No flame, no spark, no smoking; air the room; "
                           "detector on; tools fit for it. Only persons trained for flammable refrigerants."),
                    figures)});
    } else if (f.flammable_a2l) {
        warnings.push_back(
            {Sign::flame, filled(marked("Mildly flammable refrigerant: {refrigerant} ({safety_class})"), figures),
             filled(marked("{total_charge} in the circuit. No flame where it is opened; air the room; detector on."),
                    figures)});
    } else {
        warnings.push_back(
            {Sign::caution, filled(marked("Refrigerant {refrigerant} ({safety_class})"), figures),
             filled(marked("{total_charge} in the circuit. Liquid burns the skin by cold, the gas displaces "
                           "air: gloves, goggles, air the room. Only persons certified for refrigerants."),
                    figures)});
    }
    warnings.push_back({Sign::electricity, say("Electricity"),
                        say("Connection by a licensed person, after the circuit is charged. Lock off and "
                            "test dead before any cover comes off.")});
    warnings.push_back({Sign::heat, say("Hot water and hot metal"),
                        say("Water over 60 °C scalds in seconds: mixing valve before use. The discharge "
                            "tube burns; a plate in the sun too.")});
    warnings.push_back({Sign::hygiene, say("Drinking water"),
                        say("Clean tools and parts. Legionella: hold the store hot as the local rule asks, "
                            "flush what stood for days.")});
    return warnings;
}

}  // namespace wg::ui::paper
