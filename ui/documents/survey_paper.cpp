// The survey sheet: what is known of the place, and blank fields for what is still to be measured.

#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/documents/drawings.h"
#include "ui/documents/papers.h"
#include "ui/documents/survey_house.h"

namespace wg::ui::paper {
namespace {

constexpr double write_row_mm = 8.0;

QString outline_size(const std::vector<Point2>& outline) {
    if (outline.size() < 3) return QString();
    double left = outline[0].x_m, right = left, low = outline[0].y_m, high = low;
    for (const Point2& p : outline) {
        left = std::min(left, p.x_m);
        right = std::max(right, p.x_m);
        low = std::min(low, p.y_m);
        high = std::max(high, p.y_m);
    }
    return length_m(right - left) + QStringLiteral(" × ") + length_m(high - low);
}

void place_table(Flow& flow, const Job& job, const plan::Plan& plan) {
    const Site& site = job.site;
    const auto measured = [](const std::optional<double>& value, const QString& unit, int decimals) {
        return value ? quantity(*value, unit, decimals) : QStringLiteral("not known, rule set's value");
    };
    flow.pairs({{QStringLiteral("Client"), qs(job.client.name)},
                {QStringLiteral("Address"), client_address(job.client)},
                {QStringLiteral("Telephone"), qs(job.client.phone)},
                {QStringLiteral("Surveyor"), qs(job.survey.surveyor)},
                {QStringLiteral("Visited on"), qs(job.survey.visited_on)},
                {QStringLiteral("Access"), qs(job.survey.access)},
                {QStringLiteral("Scaffold"),
                 job.survey.scaffold_needed ? QStringLiteral("needed") : QStringLiteral("not needed")},
                {QStringLiteral("Roof condition"), qs(job.survey.roof_condition)},
                {QStringLiteral("Place"), qs(site.location.place_name)},
                {QStringLiteral("Latitude, longitude"),
                 QStringLiteral("%1°, %2°")
                     .arg(number(site.location.latitude_deg, 4), number(site.location.longitude_deg, 4))},
                {QStringLiteral("Altitude"), quantity(site.location.altitude_m, QStringLiteral("m"))},
                {QStringLiteral("Terrain"), QString::fromUtf8(text_of(site.terrain))},
                {QStringLiteral("Lies on"), hill_words(site.hill)},
                {QStringLiteral("Rule set"), qs(plan.rule_set_label.empty() ? job.rule_set : plan.rule_set_label)},
                {QStringLiteral("Basic wind"), measured(site.basic_wind_m_s, QStringLiteral("m/s"), 1)},
                {QStringLiteral("Ground snow"), measured(site.ground_snow_kn_m2, QStringLiteral("kN/m²"), 2)}});
    if (!job.survey.wishes.empty()) flow.paragraph(QStringLiteral("Wishes: ") + qs(job.survey.wishes));
}

void surfaces_table(Flow& flow, const Site& site) {
    flow.heading(QStringLiteral("Surfaces"));
    Table table;
    table.columns = {{QStringLiteral("Surface"), 0.0},         {QStringLiteral("Kind, covering"), 34.0},
                     {QStringLiteral("Size"), 32.0, true},     {QStringLiteral("Tilt"), 12.0, true},
                     {QStringLiteral("Looks to"), 24.0, true}, {QStringLiteral("Rafters"), 36.0}};
    for (const Surface& s : site.surfaces) {
        const QString rafters = s.rafters.present
                                    ? QStringLiteral("every %1, %2 × %3 mm")
                                          .arg(length_mm(s.rafters.spacing_m), number(s.rafters.width_m * 1000.0),
                                               number(s.rafters.depth_m * 1000.0))
                                    : QStringLiteral("none or not known");
        table.rows.push_back({QStringList{
            qs(s.label),
            QString::fromUtf8(text_of(s.kind)) + QStringLiteral(", ") + QString::fromUtf8(text_of(s.covering)),
            outline_size(s.outline), temperature(s.tilt_deg).remove(QLatin1Char('C')).trimmed(), bearing(s.azimuth_deg),
            rafters}});
        for (const KeepOut& k : s.keep_outs) {
            table.rows.push_back({QStringList{QStringLiteral("  kept free: ") + qs(k.label),
                                              QString::fromUtf8(text_of(k.kind)), outline_size(k.outline), QString(),
                                              QString(), QStringLiteral("clear %1").arg(length_mm(k.clearance_m))}});
        }
    }
    for (int i = 0; i < 2; ++i)
        table.rows.push_back({QStringList{QString()}});
    table.least_row_mm = 7.0;
    flow.table(table);
}

void obstacles_table(Flow& flow, const Site& site) {
    flow.heading(QStringLiteral("What throws shade"));
    Table table;
    table.columns = {{QStringLiteral("Obstacle"), 0.0},
                     {QStringLiteral("Kind"), 24.0},
                     {QStringLiteral("Top over foot"), 26.0, true},
                     {QStringLiteral("Size in plan"), 36.0, true},
                     {QStringLiteral("Checked"), 24.0}};
    for (const Obstacle& o : site.obstacles) {
        QString size;
        if (o.kind == ObstacleKind::box) size = length_m(o.width_m) + QStringLiteral(" × ") + length_m(o.depth_m);
        if (o.kind == ObstacleKind::prism) size = outline_size(o.outline);
        if (o.kind == ObstacleKind::post || o.kind == ObstacleKind::tree) {
            size = QStringLiteral("diameter ") + length_m(2.0 * o.radius_m);
        }
        table.rows.push_back(
            {QStringList{qs(o.label), QString::fromUtf8(text_of(o.kind)), length_m(o.height_m), size, QString()}});
    }
    for (int i = 0; i < 2; ++i)
        table.rows.push_back({QStringList{QString()}});
    table.least_row_mm = 7.0;
    flow.table(table);
    if (site.horizon.empty()) {
        flow.paragraph(
            QStringLiteral("Horizon: taken as free. Note hills and buildings as bearing and height in degrees."));
    } else {
        QStringList points;
        for (const HorizonPoint& p : site.horizon) {
            points += QStringLiteral("%1°: %2°").arg(number(p.azimuth_deg), number(p.elevation_deg, 1));
        }
        flow.paragraph(QStringLiteral("Horizon, bearing and height: ") + points.join(QStringLiteral("; ")));
    }
}

void spots_table(Flow& flow, const Site& site) {
    flow.heading(QStringLiteral("Places for the cylinder"));
    for (const CylinderSpot& spot : site.spots) {
        flow.subheading(qs(spot.label));
        flow.pairs({{QStringLiteral("Headroom"), length_m(spot.headroom_m)},
                    {QStringLiteral("Free width × depth"),
                     length_m(spot.free_width_m) + QStringLiteral(" × ") + length_m(spot.free_depth_m)},
                    {QStringLiteral("Room"), quantity(spot.floor_area_m2, QStringLiteral("m²"), 1) +
                                                 QStringLiteral(", ") + temperature(spot.room_temperature_c)},
                    {QStringLiteral("Floor carries"),
                     quantity(spot.floor_load_kg, QStringLiteral("kg")) +
                         (spot.floor_load_measured ? QStringLiteral(", checked") : QStringLiteral(", assumed"))},
                    {QStringLiteral("Ventilated"), spot.ventilated ? QStringLiteral("yes") : QStringLiteral("no")},
                    {QStringLiteral("Ignition source"),
                     spot.ignition_source ? QStringLiteral("yes") : QStringLiteral("none seen")},
                    {QStringLiteral("Own supply circuit"), service_words(spot.supply)},
                    {QStringLiteral("Earth"), service_words(spot.earth)},
                    {QStringLiteral("Cold water"), service_words(spot.cold)},
                    {QStringLiteral("Hot water"), service_words(spot.hot)},
                    {QStringLiteral("Drain"), service_words(spot.drain)},
                    {QStringLiteral("Recirculation"), service_words(spot.recirculation)},
                    {QStringLiteral("Way from the board"),
                     spot.distribution_m > 0.0 ? quantity(spot.distribution_m, QStringLiteral("m"), 1) : QString()},
                    {QStringLiteral("Its cable"),
                     QStringLiteral("%1; warmest place %2; circuits side by side: %3")
                         .arg(QString::fromUtf8(text_of(spot.cable.method)), temperature(spot.cable.ambient_c))
                         .arg(spot.cable.circuits_together)}});
    }
    if (site.spots.empty()) flow.paragraph(QStringLiteral("None noted yet."));
}

/// What the plan would otherwise have to assume.
QStringList still_to_measure(const Job& job) {
    QStringList open;
    if (job.survey.visited_on.empty()) open += QStringLiteral("Date of the visit and surveyor");
    if (job.survey.access.empty()) open += QStringLiteral("Access: gate, keys, where ladder or scaffold can stand");
    if (job.survey.roof_condition.empty()) open += QStringLiteral("Condition of covering, underlay and timber");
    if (!job.site.basic_wind_m_s) open += QStringLiteral("Basic wind velocity of the place (national map)");
    if (!job.site.ground_snow_kn_m2) open += QStringLiteral("Snow load on the ground (national map)");
    if (job.site.surfaces.empty()) open += QStringLiteral("At least one surface for the collector");
    for (const Surface& s : job.site.surfaces) {
        if ((s.kind == SurfaceKind::roof || s.covering == Covering::timber) && !s.rafters.present) {
            open += QStringLiteral("%1: rafters or studs, first from the edge, spacing, width, depth").arg(qs(s.label));
        }
    }
    if (job.site.spots.empty()) open += QStringLiteral("A place for the cylinder with its services");
    for (const CylinderSpot& spot : job.site.spots) {
        if (!spot.floor_load_measured) open += QStringLiteral("%1: what the floor carries").arg(qs(spot.label));
    }
    if (job.photographs.empty()) {
        open += QStringLiteral("Photographs: each surface, way up, cylinder's place, board, earth terminal");
    }
    if (!job.site.water.static_pressure_bar || !job.site.water.hardness_mmol_l)
        open += QStringLiteral("Mains water pressure at rest, and hardness");
    if (job.site.electrics.earthing == EarthingSystem::unknown || !job.site.electrics.main_fuse_a)
        open += QStringLiteral("Earthing system, phases and main fuse");
    open += QStringLiteral("Free ways on the distribution board and its residual current device");
    return open;
}

}  // namespace

std::vector<Page> lay_out_survey_sheet(const SharedInput& input) {
    const Job& job = input->job;
    Flow flow(furniture_of(Paper::survey_sheet, *input));
    flow.heading(QStringLiteral("The place"));
    place_table(flow, job, input->plan);
    flow.cautions(survey_warnings());
    surfaces_table(flow, job.site);
    loads_table(flow, job.site);
    obstacles_table(flow, job.site);
    spots_table(flow, job.site);
    electrics_block(flow, job.site.electrics);
    water_block(flow, job.site.water);
    rooms_table(flow, job.site);
    flow.heading(QStringLiteral("Still to be measured or asked"));
    Table open;
    open.columns = {{QStringLiteral("What"), 84.0}, {QStringLiteral("Found"), 0.0}};
    open.least_row_mm = write_row_mm;
    open.grid = true;
    for (const QString& item : still_to_measure(job))
        open.rows.push_back({QStringList{item}});
    for (int i = 0; i < 3; ++i)
        open.rows.push_back({QStringList{QString()}});
    flow.table(open);
    if (!job.notes.empty()) {
        flow.heading(QStringLiteral("Notes"));
        flow.paragraph(qs(job.notes));
    }
    flow.sign_off(QStringLiteral("Survey"), QString(), {QStringLiteral("Surveyor")});
    draw_site(flow, input);
    return flow.finish();
}

}  // namespace wg::ui::paper
