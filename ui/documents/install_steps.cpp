#include "ui/documents/install_steps.h"

#include <cmath>
#include <map>

#include "ui/common/format.h"
#include "ui/documents/install_texts.h"

namespace wg::ui::paper {
namespace {

QString lagging_words(const pipework::Run& run) {
    const QString suction = quantity(run.insulation_mm, QStringLiteral("mm"));
    if (run.small_insulation_mm == run.insulation_mm) return QStringLiteral("%1 wall").arg(suction);
    if (!(run.small_insulation_mm > 0.0)) return QStringLiteral("%1 wall on the suction tube").arg(suction);
    return QStringLiteral("%1 wall on the suction tube, %2 on the small one")
        .arg(suction, quantity(run.small_insulation_mm, QStringLiteral("mm")));
}

std::map<QString, QString> figures_of(const plan::Plan& plan) {
    const plan::Plan& p = plan;
    int points = 0;
    for (const plan::PlacementPlan& placement : p.placements)
        points += static_cast<int>(placement.fixing.points.size());
    const auto& e = p.services.electrical;
    const auto& w = p.services.water;
    QString steps = qs(p.fixing_method.steps).trimmed();
    if (steps.isEmpty())
        steps =
            QStringLiteral("Fix each point by the method '%1', to its maker's sheet.").arg(qs(p.fixing_method.label));
    if (!steps.endsWith(QLatin1Char('.'))) steps += QLatin1Char('.');
    steps[0] = steps[0].toUpper();
    const auto torque = [](double od) {
        const QString t = flare_torque(od);
        return t.isEmpty() ? QStringLiteral("to the fitting maker's torque") : t;
    };
    const int screws =
        p.fixing_method.screws_per_point > 0 ? p.fixing_method.screws_per_point : p.collector.screws_per_point;
    return {
        {QStringLiteral("refrigerant"), QString::fromLatin1(name_of(p.block.refrigerant))},
        {QStringLiteral("safety_class"), safety_class(p.block.refrigerant)},
        {QStringLiteral("filled_mass"), quantity(p.services.filled_mass_kg, QStringLiteral("kg"))},
        {QStringLiteral("points"), QString::number(points)},
        {QStringLiteral("method_steps"), steps},
        {QStringLiteral("screws"), QString::number(screws)},
        {QStringLiteral("grip"), quantity(p.fixing_method.screw_grip_mm, QStringLiteral("mm"))},
        {QStringLiteral("insulation"), lagging_words(p.run)},
        {QStringLiteral("liquid_od"), quantity(p.block.liquid_od_mm, QStringLiteral("mm"), 2)},
        {QStringLiteral("suction_od"), quantity(p.block.suction_od_mm, QStringLiteral("mm"), 2)},
        {QStringLiteral("torque_liquid"), torque(p.block.liquid_od_mm)},
        {QStringLiteral("torque_suction"), torque(p.block.suction_od_mm)},
        {QStringLiteral("precharge"), quantity(w.vessel_precharge_bar, QStringLiteral("bar"), 1)},
        {QStringLiteral("safety_valve"), quantity(w.safety_valve_bar, QStringLiteral("bar"), 1)},
        {QStringLiteral("test_pressure"), quantity(p.expected.test_pressure_bar, QStringLiteral("bar"), 1)},
        {QStringLiteral("max_pressure"), quantity(p.expected.max_pressure_bar, QStringLiteral("bar"), 1)},
        {QStringLiteral("vacuum"), quantity(vacuum_target_pa, QStringLiteral("Pa"))},
        {QStringLiteral("vacuum_limit"), quantity(vacuum_limit_pa, QStringLiteral("Pa"))},
        {QStringLiteral("vacuum_wait"), QString::number(vacuum_wait_min)},
        {QStringLiteral("extra_charge"), quantity(p.run.extra_charge_kg, QStringLiteral("kg"), 3)},
        {QStringLiteral("total_charge"), quantity(p.run.total_charge_kg, QStringLiteral("kg"), 3)},
        {QStringLiteral("breaker"),
         qs(e.breaker_curve) + QLatin1Char(' ') + quantity(e.breaker_a, QStringLiteral("A"))},
        {QStringLiteral("rcd"), quantity(e.residual_current_ma, QStringLiteral("mA"))},
        {QStringLiteral("cable"), quantity(e.cable_mm2, QStringLiteral("mm²"), 1)},
        {QStringLiteral("set_point"), temperature(p.expected.set_point_c)},
    };
}

QString filled(const char16_t* text, const std::map<QString, QString>& figures) {
    QString out = QString::fromUtf16(text);
    for (const auto& [name, value] : figures)
        out.replace(QLatin1Char('{') + name + QLatin1Char('}'), value);
    return out;
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
        const char16_t* torque;
    };
    const Size sizes[] = {{6.35, u"14 to 18 N m"},
                          {9.52, u"33 to 42 N m"},
                          {12.7, u"50 to 62 N m"},
                          {15.88, u"63 to 77 N m"},
                          {19.05, u"97 to 117 N m"}};
    for (const Size& size : sizes) {
        // 9.52 and 9.53 mm are the same 3/8 inch tube.
        if (std::fabs(size.od_mm - outside_diameter_mm) < 0.05) return QString::fromUtf16(size.torque);
    }
    return QString();
}

StepFacts facts_of(const Job& job, const plan::Plan& plan) {
    StepFacts facts;
    const Choice* choice = find_choice(job, plan.choice_id);
    for (const plan::PlacementPlan& placed : plan.placements) {
        const Surface* surface = find_surface(job.site, placed.surface_id);
        if (surface != nullptr) {
            const bool level = surface->tilt_deg < 10.0;
            facts.on_roof = facts.on_roof || surface->kind == SurfaceKind::roof;
            facts.on_wall = facts.on_wall || surface->kind == SurfaceKind::wall;
            facts.on_level = facts.on_level || level || surface->kind == SurfaceKind::terrace ||
                             surface->kind == SurfaceKind::ground;
        }
        if (choice == nullptr) continue;
        for (const Placement& placement : choice->placements) {
            if (placement.id != placed.placement_id) continue;
            facts.left_hand = facts.left_hand || placement.hand == Hand::left;
            facts.right_hand = facts.right_hand || placement.hand == Hand::right;
            facts.on_frame = facts.on_frame || placement.frame_tilt_deg.has_value();
        }
    }
    facts.several = plan.placements.size() > 1;
    facts.into_timber = plan.fixing_method.needs_rafters && plan.fixing_method.screw_diameter_mm > 0.0;
    facts.immersed = plan.block.condenser == CondenserKind::immersed;
    facts.flammable_a3 = safety_class(plan.block.refrigerant) == QStringLiteral("A3");
    facts.flammable_a2l = safety_class(plan.block.refrigerant) == QStringLiteral("A2L");
    facts.extra_charge = plan.run.extra_charge_kg > 0.0005;
    facts.passages = plan.run.passages > 0;
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(job.site, choice->spot_id);
    facts.recirculation = spot != nullptr && spot->recirculation.present && plan.cylinder.recirculation_port;
    facts.anode = !plan.cylinder.anode.empty();
    facts.scaffold = job.survey.scaffold_needed;
    facts.collector_below = plan.run.lift_m < 0.0;
    return facts;
}

std::vector<Step> steps_for(const Job& job, const plan::Plan& plan) {
    const StepFacts facts = facts_of(job, plan);
    const std::map<QString, QString> figures = figures_of(plan);
    std::vector<Step> steps;
    int number = 0;
    for (const StepText& line : step_texts()) {
        if (!line.applies(facts)) continue;
        Step step;
        step.kind = line.kind;
        if (line.kind == Step::Kind::work) step.number = ++number;
        step.text = filled(line.text, figures);
        step.why = filled(line.why, figures);
        steps.push_back(std::move(step));
    }
    return steps;
}

QStringList tools_for(const Job& job, const plan::Plan& plan) {
    const StepFacts facts = facts_of(job, plan);
    const auto figures = figures_of(plan);
    QStringList tools;
    for (const ToolText& tool : tool_texts()) {
        if (tool.applies(facts)) tools += filled(tool.text, figures);
    }
    return tools;
}

std::vector<Flow::Notice> warnings_for(const Job& job, const plan::Plan& plan) {
    const StepFacts f = facts_of(job, plan);
    const auto figures = figures_of(plan);
    std::vector<Flow::Notice> warnings;
    if (f.on_roof || f.on_wall) {
        warnings.push_back(
            {Sign::height, QStringLiteral("Work at height"),
             filled(u"Edge protection, scaffold or tower first; two persons for the plate; not in wind, wet or frost.",
                    figures)});
    }
    warnings.push_back({Sign::pressure, QStringLiteral("Pressure"),
                        filled(u"Dry nitrogen only, regulator set, {test_pressure} gauge and never above "
                               u"{max_pressure}. Goggles. Stand aside when a valve opens.",
                               figures)});
    if (f.flammable_a3) {
        warnings.push_back({Sign::flame,
                            filled(u"Highly flammable refrigerant: {refrigerant} ({safety_class})", figures),
                            filled(u"{total_charge} in the circuit. No flame, no spark, no smoking; air the room; "
                                   u"detector on; tools fit for it. Only persons trained for flammable refrigerants.",
                                   figures)});
    } else if (f.flammable_a2l) {
        warnings.push_back(
            {Sign::flame, filled(u"Mildly flammable refrigerant: {refrigerant} ({safety_class})", figures),
             filled(u"{total_charge} in the circuit. No flame where it is opened; air the room; detector on.",
                    figures)});
    } else {
        warnings.push_back({Sign::caution, filled(u"Refrigerant {refrigerant} ({safety_class})", figures),
                            filled(u"{total_charge} in the circuit. Liquid burns the skin by cold, the gas displaces "
                                   u"air: gloves, goggles, air the room. Only persons certified for refrigerants.",
                                   figures)});
    }
    warnings.push_back({Sign::electricity, QStringLiteral("Electricity"),
                        QStringLiteral("Connection by a licensed person, after the circuit is charged. Lock off and "
                                       "test dead before any cover comes off.")});
    warnings.push_back({Sign::heat, QStringLiteral("Hot water and hot metal"),
                        QStringLiteral("Water over 60 °C scalds in seconds: mixing valve before use. The discharge "
                                       "tube burns; a plate in the sun too.")});
    warnings.push_back({Sign::hygiene, QStringLiteral("Drinking water"),
                        QStringLiteral("Clean tools and parts. Legionella: hold the store hot as the local rule asks, "
                                       "flush what stood for days.")});
    return warnings;
}

}  // namespace wg::ui::paper
