#include "core/parts/parts.h"

#include <cmath>

#include "core/parts/price_entry.h"
#include "core/quantity/text.h"

namespace wg::parts {
namespace {

// Common practice, no published source; stated in each line's `why`.
constexpr double clip_spacing_m = 0.8;
constexpr double smallest_elbow_od_mm = 15.0;  ///< thinner tube from the coil is bent by hand
constexpr double refrigerant_step_kg = 0.01;
constexpr double hour_step = 0.1;
constexpr double quantity_step = 0.001;  ///< in which money counts quantities
constexpr double quantity_noise = 1e-9;  ///< 15.000000000000002 m still fit a coil of 15 m

double up_to_step(double quantity, double step) {
    return std::ceil(quantity / step - quantity_noise) * step;
}

class Lister {
   public:
    explicit Lister(const Input& input) : in_(input) {}

    Outcome list() {
        equipment();
        fixings();
        run();
        charge();
        electrical();
        water();
        extras();
        labour();
        travel();
        return std::move(out_);
    }

   private:
    [[nodiscard]] double collectors() const { return static_cast<double>(in_.choice.placements.size()); }

    /// `text` and `unit` serve when the price list has no such item.
    void add(const std::string& id, const std::string& text, const char* unit, double needed, double to_buy,
             std::string why) {
        if (!(needed > 0.0) || !std::isfinite(needed))
            return;  // nothing needed, or not known because of a stop upstream
        Line line;
        line.item_id = id;
        line.text = text;
        line.unit = unit;
        line.quantity = needed;
        line.to_buy = up_to_step(to_buy, quantity_step);
        line.why = std::move(why);
        const PriceItem* item = find_item(in_.prices, id);
        if (item != nullptr) {
            line.text = item->text;
            line.unit = item->unit;
            line.tax_class = item->tax_class;
            line.unit_cost = item->cost;
            line.supplier = item->supplier;
            line.supplier_number = item->supplier_number;
            if (item->waste_percent) {
                to_buy = needed * (1.0 + *item->waste_percent / 100.0);
                line.to_buy = up_to_step(to_buy, quantity_step);
                if (*item->waste_percent > 0.0) line.why += "; " + plain(*item->waste_percent) + " % for cutting";
            }
            if (item->pack > 0.0) {
                const double packed = up_to_step(to_buy, item->pack);
                if (packed > to_buy + quantity_noise) {
                    line.why += "; sold by " + plain(item->pack) + ' ' + item->unit;
                }
                line.to_buy = packed;
            }
            line.unit_price = unit_price_of(*item, line.to_buy);
            if (line.unit_price != item->price) line.why += "; price for so many";
            line.net = line_net(line.unit_price, line.to_buy);
        } else {
            line.priced = false;
            line.tax_class = in_.prices.labour_tax_class;
            unpriced(line);
        }
        out_.lines.push_back(std::move(line));
    }

    void add(const std::string& id, const std::string& text, const char* unit, double needed, std::string why) {
        add(id, text, unit, needed, needed, std::move(why));
    }

    void unpriced(const Line& line) {
        Finding f;
        f.code = "parts.unpriced";
        f.severity = Severity::caution;
        f.stage = Stage::offer;
        f.place = line.text;
        f.message = "The price list \"" + in_.prices.label + "\" has no price for " + plain(line.to_buy) + ' ' +
                    line.unit + " of " + line.text + " (" + line.item_id + "); the quote counts it as nothing";
        f.remedy = "Add the item " + line.item_id + " to the price list";
        f.rule = "Every line of a quote has a price";
        f.source = "common practice, no published source";
        out_.findings.push_back(std::move(f));
    }

    void equipment() {
        const auto name = [](const auto& model) { return model.maker + ' ' + model.name; };
        add(in_.collector.id, "Collector " + name(in_.collector), "pc", collectors(),
            "collectors placed in the layout");
        add(in_.block.id, "Block " + name(in_.block), "pc", 1.0, "one a system");
        add(in_.cylinder.id, "Cylinder " + name(in_.cylinder), "pc", 1.0, "one a system");
    }

    void fixings() {
        const double points = in_.fixing_points;
        add("fixing-" + in_.method.id, "Fixing set: " + in_.method.label, "pc", points,
            counted(in_.fixing_points, "fixing point", "fixing points") + " on the set-out drawing");
        double frames = 0.0;
        for (const Placement& placement : in_.choice.placements)
            frames += placement.frame_tilt_deg ? 1.0 : 0.0;
        add("plate-frame", "Frame for a collector on a level surface", "pc", frames,
            "one for each collector on a frame");
    }

    void tube(double od_mm, double coil_m, const char* side) {
        const std::string od = fixed(od_mm, 2);
        add("tube-" + od, "Copper tube " + od + " mm", "m", coil_m,
            std::string(side) + " line: run of " + fixed(in_.run.length_m, 1) +
                " m one way, cutting allowance included");
    }

    void lagging(double wall_mm, double lines, const char* side) {
        if (!(wall_mm > 0.0)) return;
        const double length_m = lines * in_.run.length_m;
        const std::string wall = fixed(wall_mm, 0);
        const PriceItem* item = find_item(in_.prices, "insulation-" + wall);
        const bool told = item != nullptr && item->waste_percent;
        add("insulation-" + wall, "Insulation with " + wall + " mm wall", "m", length_m,
            length_m * (1.0 + insulation_waste),
            std::string(side) + " of " + fixed(in_.run.length_m, 1) + " m" + (lines > 1.0 ? " each" : "") +
                (told ? "" : ", 5 % for cutting") + "; wall against condensation");
    }

    void run() {
        const pipework::Run& run = in_.run;
        if (!(run.length_m > 0.0)) return;
        tube(in_.block.liquid_od_mm, run.coil_liquid_m, "liquid");
        tube(in_.block.suction_od_mm, run.coil_suction_m, "suction");
        // Both lines are cold where the expansion device sits in the block; walls of one size are one item.
        const bool one_wall = run.small_insulation_mm == run.insulation_mm;
        lagging(run.insulation_mm, one_wall ? 2.0 : 1.0, one_wall ? "small and suction line" : "suction line");
        if (!one_wall) lagging(run.small_insulation_mm, 1.0, "small line");
        add("tube-joint-pair", "Joint set for a pair of tube ends", "pc", 1.0 + collectors(),
            "one at the block and one at each collector");
        if (collectors() > 1.0) {
            add("tube-branch-pair", "Branch set to a further collector", "pc", collectors() - 1.0,
                "each collector after the first");
        }
        add("tube-clip", "Insulated pipe clip", "pc", std::ceil(run.length_m / clip_spacing_m),
            "one every " + fixed(clip_spacing_m, 1) + " m");
        if (in_.block.suction_od_mm > smallest_elbow_od_mm) {
            const std::string od = fixed(in_.block.suction_od_mm, 2);
            add("elbow-" + od, "Brazing elbow " + od + " mm", "pc", run.bends,
                counted(run.bends, "bend", "bends") + "; tube of this size is not bent by hand");
        }
        passages(RoutePointKind::roof_passage, "passage-roof", "Roof passage");
        passages(RoutePointKind::wall_passage, "passage-wall", "Wall passage");
        passages(RoutePointKind::floor_passage, "passage-floor", "Floor passage");
        add("nitrogen", "Dry nitrogen", "pc", 1.0, "brazing under nitrogen, flushing and pressure hold");
    }

    void passages(RoutePointKind kind, const char* id, const char* text) {
        long count = 0;
        for (const RoutePoint& point : in_.choice.route)
            count += point.kind == kind ? 1 : 0;
        add(id, text, "pc", static_cast<double>(count),
            counted(count, "such passage", "such passages") + " on the route");
    }

    void charge() {
        const double kg = in_.run.extra_charge_kg;
        const std::string name = name_of(in_.block.refrigerant);
        add("refrigerant-" + name, "Refrigerant " + name, "kg", kg, up_to_step(kg, refrigerant_step_kg),
            "run of " + fixed(in_.run.length_m, 1) + " m is beyond the " + plain(in_.block.precharged_max_m) +
                " m of the factory charge: " + plain(in_.block.extra_charge_g_m) + " g for each further metre");
    }

    void electrical() {
        const services::Electrical& e = in_.services.electrical;
        if (e.cable_mm2 > 0.0) {
            const std::string section = plain(e.cable_mm2);
            add("cable-" + section, "Cable " + section + " mm2", "m", e.cable_m,
                plain(e.cable_m) + " m one way to the supply; voltage drop " + fixed(e.drop_percent, 1) + " %" +
                    (e.carries_a > 0.0 ? ", carries " + fixed(e.carries_a, 1) + " A as laid" : ""));
        }
        if (e.breaker_a > 0.0) {
            const std::string rating = e.breaker_curve + plain(e.breaker_a);
            add("breaker-" + rating, "Circuit breaker " + rating, "pc", 1.0,
                "own circuit for the block, as its maker asks");
        }
        if (e.residual_current_ma > 0.0) {
            const std::string rating = plain(e.residual_current_ma);
            add("rcd-" + rating, "Residual-current device " + rating + " mA", "pc", 1.0,
                "own circuit for the block" +
                    (e.residual_current_type.empty() ? std::string() : ", type " + e.residual_current_type));
        }
        add("isolator", "Isolating switch", "pc", 1.0, "within reach of the block, for service");
    }

    void water() {
        const services::Water& w = in_.services.water;
        add("water-connection", "Connection set for the cylinder", "pc", 1.0, "cold, hot and shut-off at the cylinder");
        add("safety-group", "Safety group", "pc", 1.0,
            w.safety_valve_bar > 0.0 ? "valve opens at " + plain(w.safety_valve_bar) + " bar" : "one a cylinder");
        if (w.reducing_valve) {
            add("reducing-valve", "Pressure reducing valve with gauge", "pc", 1.0,
                "keeps the cold water to " + plain(std::round(10.0 * w.pressure_at_cylinder_bar) / 10.0) +
                    " bar at the cylinder");
        }
        if (w.vessel_l > 0.0) {
            const std::string litres = plain(w.vessel_l);
            add("vessel-" + litres, "Expansion vessel " + litres + " l", "pc", 1.0,
                "takes up " + fixed(w.expansion_l, 1) + " l of expansion at a pre-charge of " +
                    fixed(w.vessel_precharge_bar, 1) + " bar");
        }
        if (w.mixing_valve) {
            add("mixing-valve", "Thermostatic mixing valve", "pc", 1.0, "stored water is hotter than the tap may be");
        }
        add("drain-set", "Drain set", "pc", 1.0,
            "discharge of the safety valve to the drain" +
                (w.discharge_mm > 0.0 ? ": " + plain(w.valve_outlet_mm) + " mm to the tundish, " +
                                            plain(w.discharge_mm) + " mm from there"
                                      : std::string()));
        for (const std::string& service : w.to_be_made) {
            // Cable, breaker and labour of the electrical supply are lines of their own already.
            if (service.rfind("electrical supply", 0) == 0 && in_.services.electrical.cable_m > 0.0) continue;
            add("service-connection", "Bringing a missing service to the spot", "pc", 1.0, "to be made: " + service);
        }
    }

    void extras() {
        for (const ExtraItem& extra : in_.choice.extras) {
            add(extra.price_item, extra.price_item, "pc", extra.quantity, "extra of this choice");
        }
    }

    void labour() {
        for (const LabourTask& task : in_.prices.tasks) {
            const double points = in_.fixing_points;
            const double plain_hours = task.hours + task.hours_per_m * in_.run.length_m +
                                       task.hours_per_point * points + task.hours_per_collector * collectors();
            const Stretch stretch = stretch_of(task, in_.prices.difficulty, in_.circumstances);
            const double hours = plain_hours * stretch.factor;
            if (!(hours > 0.0) || !std::isfinite(hours)) continue;
            Line line;
            line.item_id = task.id;
            line.text = task.text;
            line.unit = "h";
            line.quantity = hours;
            line.to_buy = up_to_step(hours, hour_step);
            line.unit_price = in_.prices.labour_hour;
            line.unit_cost = in_.prices.labour_cost;
            line.why = reason(task);
            for (const LabourRate& rate : in_.prices.labour_rates) {
                if (rate.id != task.rate) continue;
                line.unit_price = rate.hour;
                line.unit_cost = rate.cost;
                line.why += ", " + rate.text;
            }
            if (!stretch.why.empty()) line.why = "(" + line.why + ") x " + stretch.why;
            line.net = line_net(line.unit_price, line.to_buy);
            line.tax_class = in_.prices.labour_tax_class;
            line.labour = true;
            out_.labour_h += line.to_buy;
            out_.lines.push_back(std::move(line));
        }
    }

    void travel() {
        if (!in_.prices.travel || !in_.circumstances.distance_km) return;
        const Travel& travel = *in_.prices.travel;
        const int trips = in_.circumstances.trips > 0 ? in_.circumstances.trips : travel.trips;
        const double km = 2.0 * *in_.circumstances.distance_km * trips;
        const std::string way =
            counted(trips, "trip", "trips") + " there and back of " + plain(*in_.circumstances.distance_km) + " km";
        drive("travel-km", "Travel, distance", "km", km, travel.km, way);
        drive("travel-hours", "Travel, time", "h", up_to_step(km / travel.km_h, hour_step), travel.hour,
              way + " at " + plain(travel.km_h) + " km/h");
    }

    void drive(const char* id, const char* text, const char* unit, double amount, Money price, std::string why) {
        if (!(amount > 0.0) || price.minor == 0) return;
        Line line;
        line.item_id = id;
        line.text = text;
        line.unit = unit;
        line.quantity = amount;
        line.to_buy = up_to_step(amount, quantity_step);
        line.unit_price = price;
        line.net = line_net(price, line.to_buy);
        line.tax_class = in_.prices.travel->tax_class;
        line.labour = true;
        line.why = std::move(why);
        out_.lines.push_back(std::move(line));
    }

    [[nodiscard]] std::string reason(const LabourTask& task) const {
        std::string why;
        const auto part = [&why](const std::string& text) { why += (why.empty() ? "" : " + ") + text; };
        if (task.hours > 0.0) part(plain(task.hours) + " h");
        if (task.hours_per_m > 0.0) part(plain(task.hours_per_m) + " h x " + fixed(in_.run.length_m, 1) + " m");
        if (task.hours_per_point > 0.0) {
            part(plain(task.hours_per_point) + " h x " + counted(in_.fixing_points, "point", "points"));
        }
        if (task.hours_per_collector > 0.0) {
            part(plain(task.hours_per_collector) + " h x " +
                 counted(static_cast<long>(in_.choice.placements.size()), "collector", "collectors"));
        }
        return why;
    }

    const Input& in_;
    Outcome out_;
};

}  // namespace

Outcome list_parts(const Input& input) {
    return Lister(input).list();
}

}  // namespace wg::parts
