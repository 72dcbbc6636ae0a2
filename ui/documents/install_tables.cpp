#include "ui/documents/install_tables.h"

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/documents/drawings.h"
#include "ui/documents/filled_words.h"
#include "ui/documents/install_steps.h"
#include "ui/documents/papers.h"

namespace wg::ui::paper {
namespace {

QString whole_mm(double value_m) {
    return number(value_m * 1000.0);
}

QString kilonewton(double value_n) {
    return number(value_n / 1000.0, 2);
}

/// "8 x 70 mm": drill and depth.
QString hole_words(const FixingMethod& method) {
    const QString drill = method.depth_mm > 0.0 ? number(method.drill_mm) + QStringLiteral(" \u00d7 ") : QString();
    return drill + quantity(method.depth_mm > 0.0 ? method.depth_mm : method.drill_mm, QStringLiteral("mm"));
}

/// All points of the surface stand on rafters, or none does.
bool on_rafter_alike(const plan::Plan& plan, const Surface& surface) {
    int on = 0;
    int off = 0;
    for (const plan::PlacementPlan& placed : plan.placements)
        if (placed.surface_id == surface.id)
            for (const fixing::FixingPoint& point : placed.fixing.points)
                ++(point.on_rafter ? on : off);
    return on == 0 || off == 0;
}

QString fixing_words(const plan::Plan& plan) {
    const FixingMethod& method = plan.fixing_method;
    QString words = qs(method.label);
    if (method.ballast_kg > 0.0)
        words += say(", %1 of ballast a point").arg(quantity(method.ballast_kg, QStringLiteral("kg")));
    const int screws = method.screws_per_point > 0 ? method.screws_per_point : plan.collector.screws_per_point;
    if (method.screw_diameter_mm > 0.0 && screws > 0)
        words += say(", %1 screws %2 \u00d7 %3 mm in the timber a point")
                     .arg(screws)
                     .arg(number(method.screw_diameter_mm, method.screw_diameter_mm < 10.0 ? 1 : 0),
                          number(method.screw_grip_mm));
    if (method.drill_mm > 0.0) words += say("; hole %1").arg(hole_words(method));
    if (method.torque_nm > 0.0) words += say("; torque %1").arg(quantity(method.torque_nm, QStringLiteral("N m")));
    return words;
}

}  // namespace

bool set_out_table(Flow& flow, const PaperInput& input, const Surface& surface) {
    const QStringList edges = edge_names(surface.outline);
    const auto name = [&](std::size_t edge) {
        return static_cast<qsizetype>(edge) < edges.size() ? edges[static_cast<qsizetype>(edge)] : QStringLiteral("?");
    };
    flow.subheading(say("Fixing points, in millimetres along the surface from the edges named"));
    // What all points have in common stands once, over them.
    const bool told_by_point = !on_rafter_alike(input.plan, surface);
    Table table;
    table.columns = {{say("Point"), 12.0, true},
                     {say("Across, from edge"), 0.0},
                     {QStringLiteral("mm"), 13.0, true},
                     {say("Up or down, from edge"), 0.0},
                     {QStringLiteral("mm"), 13.0, true}};
    if (told_by_point) table.columns.push_back({say("On rafter"), 20.0});
    table.columns.push_back({say("Pull, shear kN"), 29.0, true});
    table.columns.push_back({say("Hold used"), 30.0, true});
    for (const plan::PlacementPlan& placed : input.plan.placements) {
        if (placed.surface_id != surface.id) continue;
        if (placed.fixing.points.empty()) continue;
        table.rows.push_back(
            {QStringList{
                 qs(placed.label) + QStringLiteral(": ") + fixing_words(input.plan) +
                 (told_by_point || !placed.fixing.points.front().on_rafter ? QString() : say("; all on rafters"))},
             Row::Kind::group});
        for (const fixing::FixingPoint& point : placed.fixing.points) {
            const bool worst = point.number == placed.fixing.worst_point;
            // One column for across and one for up, whichever edge is nearer.
            const bool swapped = name(point.edge_a.edge).startsWith(QStringLiteral("lower")) ||
                                 name(point.edge_a.edge).startsWith(QStringLiteral("upper"));
            const site::EdgeOffset& across = swapped ? point.edge_b : point.edge_a;
            const site::EdgeOffset& up = swapped ? point.edge_a : point.edge_b;
            QString used = percent(point.utilisation);
            if (worst) used = say("\u25c6 worst ") + used;
            if (point.utilisation > 1.0) used += QStringLiteral(" \u25a0");
            QStringList cells{QString::number(point.number), edge_words(name(across.edge)), whole_mm(across.distance_m),
                              edge_words(name(up.edge)), whole_mm(up.distance_m)};
            if (told_by_point) cells << (point.on_rafter ? say("yes") : say("no"));
            cells << kilonewton(point.pull_n) + QStringLiteral(", ") + kilonewton(point.shear_n)
                  << used.replace(QLatin1Char(' '), QChar(0x00A0));  // one figure with its marks
            table.rows.push_back({cells, worst ? Row::Kind::total : Row::Kind::plain});
        }
    }
    if (table.rows.empty()) {
        flow.paragraph(say("No fixing points are worked out for this surface."));
        return false;
    }
    table.size_pt = least_pt;
    flow.table(table);
    return true;
}

void set_out_words(Flow& flow, const PaperInput& input) {
    const FixingMethod& method = input.plan.fixing_method;
    if (!method.steps.empty()) flow.paragraph(say("Fixing: ") + qs(method.steps), Style{least_pt, false, false});
    QString hole = method.drill_mm > 0.0 ? say("Hole: drill x depth, as the method's data ask; verify with its maker. ")
                                         : say("Hole: the method's data ask for none. ");
    if (!(method.torque_nm > 0.0)) hole += say("Torque: not told in the method's data, ask its maker. ");
    flow.paragraph(hole + say("Pull and shear are design values for one point, worst of wind, snow and weight; 'hold "
                              "used' is their share of what the point holds. \u25c6 and bold: the worst point of each "
                              "collector; \u25a0: over what it holds. Dimensions were moved to the rafters as "
                              "surveyed: check them on the place."),
                   Style{least_pt, false, false});
}

QString wall_words(double wall_mm) {
    return wall_mm > 0.0 ? quantity(wall_mm, QStringLiteral("mm")) : say("none");
}

QString trap_words(const pipework::OilReturn& oil) {
    QStringList where;
    for (const pipework::OilTrap& trap : oil.traps)
        where << (trap.foot ? say("foot of leg %1") : say("leg %1 at %2"))
                     .arg(QString::number(trap.leg + 1), length_m(trap.at.z_m));
    return where.isEmpty() ? say("none") : where.join(QStringLiteral(", "));
}

void cut_list(Flow& flow, const PaperInput& input) {
    const pipework::Run& run = input.plan.run;
    flow.subheading(say("Cut list of the run"));
    Table table;
    table.columns = {{say("Leg"), 8.0, true},
                     {say("Length"), 18.0, true},
                     {say("Rise"), 18.0, true},
                     {say("Ends at"), 0.0},
                     {say("Cut"), 8.0, false, true}};
    table.size_pt = least_pt;
    table.whole = true;
    for (std::size_t i = 0; i < run.legs.size(); ++i) {
        const pipework::Leg& leg = run.legs[i];
        const bool last = i + 1 == run.legs.size();
        const QString end =
            last ? say("block") : (leg.ends_at == RoutePointKind::free ? say("bend") : say(text_of(leg.ends_at)));
        table.rows.push_back(
            {QStringList{QString::number(i + 1), length_mm(leg.length_m), length_mm(leg.to.z_m - leg.from.z_m), end}});
    }
    table.rows.push_back({QStringList{QString(), length_mm(run.length_m), QString(),
                                      run.bends == 1 ? say("1 bend") : say("%1 bends").arg(run.bends)},
                          Row::Kind::total});
    flow.table(table);
    flow.pairs({{say("Liquid tube"), say("%1, coil of %2")
                                         .arg(quantity(input.plan.block.liquid_od_mm, QStringLiteral("mm"), 2),
                                              quantity(run.coil_liquid_m, QStringLiteral("m"), 1))},
                {say("Suction tube"), say("%1, coil of %2")
                                          .arg(quantity(input.plan.block.suction_od_mm, QStringLiteral("mm"), 2),
                                               quantity(run.coil_suction_m, QStringLiteral("m"), 1))},
                {say("Insulation"), say("%1 on the suction tube, %2 on the small tube")
                                        .arg(wall_words(run.insulation_mm), wall_words(run.small_insulation_mm))},
                {say("Allow besides"), say("%1 at the collector, %2 at the block, %3 for each oil trap")
                                           .arg(length_mm(pipework::collector_stub_m),
                                                length_mm(pipework::block_stub_m), length_mm(pipework::trap_m))},
                {say("Oil traps"), trap_words(run.oil)},
                {say("Total charge"), say("%1, as carbon dioxide %2")
                                          .arg(quantity(run.total_charge_kg, QStringLiteral("kg"), 3),
                                               carbon_words(run.total_charge_t_co2e))}},
               false, 24.0, least_pt);
}

void spot_table(Flow& flow, const PaperInput& input) {
    const Choice* choice = find_choice(input.job, input.plan.choice_id);
    const CylinderSpot* spot = choice == nullptr ? nullptr : find_spot(input.job.site, choice->spot_id);
    flow.heading(say("Cylinder's place"));
    if (spot == nullptr) {
        flow.paragraph(say("No place is chosen."));
        return;
    }
    const CylinderModel& cylinder = input.plan.cylinder;
    Table table;
    table.columns = {
        {say("Service"), 31.0}, {say("As surveyed"), 0.0}, {say("Needed"), 92.0}, {say("Checked"), 15.0, false, true}};
    table.whole = true;
    table.size_pt = least_pt;
    const auto& e = input.plan.services.electrical;
    const auto row = [&](const QString& what, const QString& found, const QString& needed) {
        table.rows.push_back({QStringList{what, found, needed, QString()}});
    };
    row(say("Place"), qs(spot->label),
        say("%1 wide, %2 high").arg(length_m(cylinder.diameter_m), length_m(cylinder.height_m)));
    row(say("Headroom"), length_m(spot->headroom_m), say("cylinder and room to draw the anode"));
    row(say("Free width × depth"), length_m(spot->free_width_m) + QStringLiteral(" × ") + length_m(spot->free_depth_m),
        length_m(cylinder.diameter_m));
    row(say("Floor carries"),
        quantity(spot->floor_load_kg, QStringLiteral("kg")) +
            (spot->floor_load_measured ? say(", checked") : say(", assumed: check")),
        quantity(input.plan.services.filled_mass_kg, say("kg filled")));
    row(say("Own supply circuit"), service_words(spot->supply),
        say("breaker %1, RCD %2; cable %3, %4, drop %5 %")
            .arg(qs(e.breaker_curve) + QLatin1Char(' ') + quantity(e.breaker_a, QStringLiteral("A")),
                 quantity(e.residual_current_ma, QStringLiteral("mA")), quantity(e.cable_mm2, QStringLiteral("mm²"), 1),
                 quantity(e.cable_m, QStringLiteral("m")), number(e.drop_percent, 1)));
    row(say("Earth"), service_words(spot->earth), say("as the wiring rules ask"));
    row(say("Cold water"), service_words(spot->cold), qs(cylinder.connections));
    row(say("Hot water"), service_words(spot->hot), say("through the mixing valve"));
    row(say("Drain"), service_words(spot->drain), say("open tundish for valve and condensate"));
    row(say("Recirculation"), service_words(spot->recirculation),
        cylinder.recirculation_port ? say("port there") : say("no port"));
    row(say("Ventilated"), spot->ventilated ? say("yes") : say("no"), QString());
    row(say("Ignition source"), spot->ignition_source ? say("yes") : say("none seen"), QString());
    flow.table(table);
}

}  // namespace wg::ui::paper
