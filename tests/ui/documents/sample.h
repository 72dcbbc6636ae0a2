#pragma once
// A job and a plan made by hand, complete enough for every paper and stage. Figures are plausible and invented; they
// come from no calculation, so that tests of papers do not depend on the rooms that compute.

#include <string>

#include "ui/documents/documents.h"

namespace wg::ui::sample {

inline std::string uuid(int n) {
    std::string tail = std::to_string(n);
    return "00000000-0000-4000-8000-" + std::string(12 - tail.size(), '0') + tail;
}

inline Job job() {
    Job job;
    job.id = uuid(1);
    job.number = "2027-0042";
    job.title = "Hot water for Lindqvist, Quarry Lane";
    job.invented = true;
    job.revision = 3;
    job.client = {
        "Marta Lindqvist", "7 Quarry Lane", "Upper Sallow", "SW4 1AA", "01000 555 017", "marta@example.org", ""};
    job.survey.surveyor = "J. Okoro";
    job.survey.visited_on = "2027-03-02";
    job.survey.access = "Gate code from client; ladder from the yard, scaffold can stand on the paving";
    job.survey.scaffold_needed = true;
    job.survey.roof_condition = "Clay tiles of 1994, sound; two slipped near the chimney";
    job.site.location = {"Upper Sallow", 51.5, -1.2, 90.0, 0.0, ""};
    Surface roof;
    roof.id = uuid(10);
    roof.label = "South roof";
    roof.tilt_deg = 38.0;
    roof.azimuth_deg = 172.0;
    roof.origin = {0.0, 0.0, 3.1};
    roof.outline = {{0.0, 0.0}, {9.2, 0.0}, {9.2, 5.6}, {0.0, 5.6}};
    roof.rafters = {true, 0.3, 0.6, 0.06, 0.16};
    KeepOut window;
    window.id = uuid(11);
    window.label = "Roof window";
    window.kind = KeepOutKind::roof_window;
    window.outline = {{6.4, 1.6}, {7.3, 1.6}, {7.3, 2.9}, {6.4, 2.9}};
    window.clearance_m = 0.2;
    roof.keep_outs.push_back(window);
    job.site.surfaces.push_back(roof);
    Obstacle chimney;
    chimney.id = uuid(20);
    chimney.label = "Chimney";
    chimney.base = {7.6, 3.4, 5.0};
    chimney.width_m = 0.7;
    chimney.depth_m = 0.5;
    chimney.height_m = 2.2;
    job.site.obstacles.push_back(chimney);
    CylinderSpot spot;
    spot.id = uuid(30);
    spot.label = "Utility room";
    spot.position = {2.0, 2.5, 0.0};
    spot.supply = {false, 9.0};
    spot.earth.present = spot.cold.present = spot.hot.present = true;
    spot.drain = {false, 1.5};
    job.site.spots.push_back(spot);
    Choice choice;
    choice.id = uuid(40);
    choice.label = "A: one plate on the roof";
    choice.collector_model = "plate";
    choice.block_model = "block";
    choice.cylinder_model = "cylinder";
    choice.spot_id = spot.id;
    choice.fixing_method = "hooks";
    Placement placement;
    placement.id = uuid(41);
    placement.label = "Collector 1";
    placement.surface_id = roof.id;
    placement.x_m = 3.4;
    placement.y_m = 2.8;
    placement.hand = Hand::right;
    choice.placements.push_back(placement);
    choice.route = {{uuid(42), RoutePointKind::roof_passage, {4.6, 1.6, 4.4}, ""},
                    {uuid(43), RoutePointKind::free, {4.6, 2.5, 4.2}, ""},
                    {uuid(44), RoutePointKind::floor_passage, {2.4, 2.5, 2.6}, ""}};
    job.choices.push_back(choice);
    job.chosen_choice_id = choice.id;
    return job;
}

inline parts::Line line(const char* id, const char* text, const char* unit, double quantity, std::int64_t price_minor,
                        const char* why, bool labour = false) {
    parts::Line line;
    line.item_id = id;
    line.text = text;
    line.unit = unit;
    line.quantity = line.to_buy = quantity;
    line.unit_price = {price_minor};
    line.net = scaled(line.unit_price, quantity);
    line.tax_class = "full";
    line.why = why;
    line.labour = labour;
    return line;
}

inline void add_fixing(plan::PlacementPlan& placed) {
    int number = 0;
    for (const double y : {2.5, 3.1}) {
        for (const double x : {2.7, 3.3, 4.5}) {
            fixing::FixingPoint p;
            p.number = ++number;
            p.placement_id = placed.placement_id;
            p.position = p.nominal = {x, y};
            p.on_rafter = true;
            p.edge_a = {3, x, {0.0, y}};
            p.edge_b = {0, y, {x, 0.0}};
            p.pull_n = 640.0 + 35.0 * number;
            p.push_n = 410.0;
            p.shear_n = 220.0;
            p.resistance_pull_n = 1900.0;
            p.resistance_shear_n = 1400.0;
            p.utilisation = p.pull_n / p.resistance_pull_n;
            p.worst_combination = "wind uplift";
            placed.fixing.points.push_back(p);
        }
    }
    placed.fixing.worst_point = number;
    placed.fixing.worst_utilisation = placed.fixing.points.back().utilisation;
}

inline plan::Plan plan(const Job& job) {
    const Choice& choice = job.choices.front();
    plan::Plan p;
    p.job_id = job.id;
    p.job_number = job.number;
    p.title = job.title;
    p.job_revision = job.revision;
    p.content_sha256 = "4f2a9c07d1b3e58846aa10c3f7e2d95b6c81f0a4e7d3925b8c60f1a2b3c4d5e6";
    p.invented = true;
    p.choice_id = choice.id;
    p.choice_label = choice.label;
    p.collector.id = "plate";
    p.collector.name = "Marl 21";
    p.collector.length_m = 2.1;
    p.collector.width_m = 0.8;
    p.collector.fixing_points = {{0.3, 0.1}, {1.05, 0.1}, {1.8, 0.1}, {0.3, 0.7}, {1.05, 0.7}, {1.8, 0.7}};
    p.collector.liquid_connection = {1.9, 0.0};
    p.collector.suction_connection = {2.0, 0.0};
    p.block.id = "block";
    p.block.name = "Tarn 14";
    p.cylinder.id = "cylinder";
    p.cylinder.name = "Fell 250";
    p.cylinder.anode = "magnesium";
    p.cylinder.connections = "cold 3/4, hot 3/4";
    p.fixing_method.label = "Roof hooks on rafters";
    p.fixing_method.steps = "lift the tiles, screw the hook to the rafter, notch the tile above so that it lies flat";
    p.weather_source = "Invented temperate climate";
    p.weather_invented = true;
    p.rule_set_label = "Neutral, assumed";
    p.price_list_label = "Invented prices 2027";
    p.currency = "EUR";
    plan::PlacementPlan placed;
    placed.placement_id = choice.placements.front().id;
    placed.label = "Collector 1";
    placed.surface_id = job.site.surfaces.front().id;
    placed.surface_label = job.site.surfaces.front().label;
    placed.placed.outline = {{2.35, 2.4}, {4.45, 2.4}, {4.45, 3.2}, {2.35, 3.2}};
    placed.placed.liquid_connection = {4.25, 2.4};
    placed.placed.suction_connection = {4.35, 2.4};
    placed.placed.connection_in_space = {4.3, 1.9, 4.6};
    placed.placed.tilt_deg = 38.0;
    placed.placed.azimuth_deg = 172.0;
    add_fixing(placed);
    for (const fixing::FixingPoint& point : placed.fixing.points)
        placed.placed.fixing_points.push_back(point.position);
    p.placements.push_back(placed);

    p.has_yield = true;
    for (std::size_t m = 0; m < 12; ++m) {
        const double summer = 1.0 - std::abs(static_cast<double>(m) - 5.5) / 5.5;
        season::MonthSums& month = p.season.months[m];
        month.light_kwh = 40.0 + 60.0 * summer;
        month.air_kwh = 50.0 + 10.0 * summer;
        month.long_wave_kwh = -8.0;
        month.latent_kwh = 6.0;
        month.compressor_kwh = 48.0 - 14.0 * summer;
        month.immersion_kwh = m < 2 ? 9.0 : 0.0;
        month.standby_kwh = 3.0;
        month.condenser_kwh = 170.0;
        month.drawn_kwh = 145.0;
        month.wanted_kwh = 146.0;
        month.shortfall_kwh = m < 2 ? 1.0 : 0.0;
        month.running_h = 110.0;
        p.season.total.drawn_kwh += month.drawn_kwh;
        p.season.total.light_kwh += month.light_kwh;
        p.season.total.air_kwh += month.air_kwh;
        p.season.total.latent_kwh += month.latent_kwh;
        p.season.total.compressor_kwh += month.compressor_kwh;
        p.season.total.immersion_kwh += month.immersion_kwh;
        p.season.total.standby_kwh += month.standby_kwh;
        p.season.total.condenser_kwh += month.condenser_kwh;
        p.season.total.wanted_kwh += month.wanted_kwh;
        p.season.total.shortfall_kwh += month.shortfall_kwh;
        p.season.total.running_h += month.running_h;
    }
    p.season.useful_factor = 3.1;
    p.season.lowest_top_c = 44.2;
    p.season.shortfall_draws = 6;
    season::HourSeries hours;
    for (int h = 0; h < 8760; ++h) {
        const auto day = static_cast<float>(h % 24);
        hours.condenser_w.push_back(day > 8.0F && day < 15.0F ? 1400.0F : 0.0F);
        hours.electric_w.push_back(day > 8.0F && day < 15.0F ? 430.0F : 5.0F);
        hours.light_w_m2.push_back(day > 7.0F && day < 18.0F ? 300.0F : 0.0F);
        hours.plate_c.push_back(4.0F + day * 0.3F);
        hours.top_c.push_back(52.0F + day * 0.1F);
        hours.bottom_c.push_back(30.0F + day);
        hours.drawn_w.push_back(day == 7.0F || day == 20.0F ? 2600.0F : 0.0F);
        hours.air_c.push_back(10.0F);
    }
    p.season.hours = hours;
    p.warm_up_good = season::WarmUp{true, 4.6, 9.8, 2.4, 4.1, ""};
    p.warm_up_fair = season::WarmUp{true, 6.9, 9.8, 2.9, 3.4, ""};
    p.warm_up_poor = season::WarmUp{true, 12.8, 9.8, 3.9, 2.5, ""};
    p.range_method = "air 1 K colder and warmer, light 7 % less and more";
    p.run.legs = {{{4.3, 1.9, 4.6}, {4.6, 1.6, 4.4}, 0.47, RoutePointKind::roof_passage},
                  {{4.6, 1.6, 4.4}, {4.6, 2.5, 4.2}, 0.92, RoutePointKind::free},
                  {{4.6, 2.5, 4.2}, {2.4, 2.5, 2.6}, 2.72, RoutePointKind::floor_passage},
                  {{2.4, 2.5, 2.6}, {2.0, 2.5, 1.0}, 1.65, RoutePointKind::free}};
    p.run.length_m = 5.76;
    p.run.lift_m = 3.6;
    p.run.bends = 3;
    p.run.passages = 2;
    p.run.total_charge_kg = 1.2;
    p.run.total_charge_t_co2e = 1.72;
    p.run.coil_liquid_m = p.run.coil_suction_m = 6.1;
    p.run.insulation_mm = 13.0;
    p.services.electrical = {12.5, 24.0, 2.5, 9.0, 1.1, 16.0, "C", 30.0};
    p.services.water = {5.2, 18.0, 3.5, 6.0, true, {"Electrical supply, own circuit: 9.0 m", "Drain: 1.5 m"}};
    p.services.filled_mass_kg = 355.0;
    p.parts.lines = {
        line("plate", "Collector Marl 21", "pc", 1, 98000, "one placement"),
        line("block", "Heat pump Tarn 14", "pc", 1, 164000, "the choice"),
        line("cylinder", "Cylinder Fell 250", "pc", 1, 142000, "the choice"),
        line("hook", "Roof hook, stainless", "pc", 6, 1450, "6 fixing points"),
        line("screw-8x120", "Wood screw 8 x 120", "pc", 12, 110, "2 screws a point"),
        line("tube-6", "Copper tube 6.35 mm, coil", "m", 6.1, 410, "run of 5.8 m one way, 5 % for cutting"),
        line("tube-9", "Copper tube 9.52 mm, coil", "m", 6.1, 590, "run of 5.8 m one way, 5 % for cutting"),
        line("vessel-18", "Expansion vessel 18 l", "pc", 1, 5200, "5.2 l of expansion"),
        line("fit", "Fitting", "h", 14.5, 5800, "roof, run, cylinder", true),
        line("start", "Tests and start", "h", 3.0, 5800, "hold, vacuum, record", true)};
    p.parts.labour_h = 17.5;
    quote::Quote quote;
    quote.currency = "EUR";
    quote.lines = p.parts.lines;
    for (const parts::Line& each : quote.lines)
        quote.net += each.net;
    quote.lines_net = quote.net;
    quote::TaxSum tax{{"full", "Value added tax", 0.2}, quote.net, {}, quote.net, scaled(quote.net, 0.2)};
    quote.taxes = {tax};
    quote.gross = quote.net + tax.tax;
    p.quote = quote;
    p.economy.running_cost = {16700};
    p.economy.present_cost = {52200};
    p.economy.yearly_saving = {29500};
    p.economy.co2_kg = 168.0;
    p.economy.present_co2_kg = 522.0;
    p.economy.simple_payback_y = 16.8;
    for (int year = 0; year <= 20; ++year)
        p.economy.cumulative.push_back({-580000 + year * 29000});
    p.expected.test_pressure_bar = p.expected.max_pressure_bar = 25.0;
    p.expected.rated_current_a = 6.0;
    p.expected.set_point_c = 55.0;
    p.expected.volume_outdoors = 0.7;
    p.plan_mark = "3FA9-07B2";
    p.service = {{"water", "Lift the safety valve, look for drips", 12, "for every system", "common practice"},
                 {"anode", "Check the anode", 24, "the cylinder has an anode", "maker's data"}};
    p.figures.heat_kwh = {1610.0, 1740.0, 1820.0};
    p.figures.electricity_kwh = {500.0, 556.0, 640.0};
    p.figures.seasonal_factor = {2.7, 3.1, 3.4};
    p.figures.running_cost_minor = {15000.0, 16700.0, 19200.0};
    p.figures.run_m = 5.76;
    p.figures.charge_kg = 1.2;
    p.figures.price_gross = quote.gross;
    p.figures.price_net = quote.net;
    Finding note;
    note.code = "run.short";
    note.severity = Severity::caution;
    note.stage = Stage::layout;
    note.place = "Collector 1";
    note.message = "The collector is 0.35 m from the chimney's shadow line at noon in January";
    note.remedy = "Move it 0.40 m to the left";
    p.findings = {note};
    return p;
}

inline Finding stop() {
    Finding finding;
    finding.code = "fixing.over";
    finding.severity = Severity::stop;
    finding.stage = Stage::fitting;
    finding.place = "Collector 1";
    finding.message = "Point 3 carries 1.12 times what it holds";
    finding.remedy = "Add two points or use longer screws";
    return finding;
}

inline PaperInput input() {
    PaperInput in;
    in.job = job();
    in.plan = plan(in.job);
    in.firm = {QStringLiteral("Heatherside Hot Water"), QStringLiteral("3 Tannery Row"),
               QStringLiteral("Lower Sallow"),          QStringLiteral("01000 555 020"),
               QStringLiteral("post@example.org"),      true};
    in.printed_on = QDate(2027, 4, 12);
    return in;
}

}  // namespace wg::ui::sample
