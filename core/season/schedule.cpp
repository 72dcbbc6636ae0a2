#include "core/season/schedule.h"

#include <algorithm>
#include <cmath>

#include "core/cylinder/store.h"
#include "core/cylinder/tapping.h"
#include "core/heatpump/cycle.h"
#include "core/quantity/constants.h"
#include "core/season/calendar.h"
#include "core/season/household.h"

namespace wg::season {

namespace {

/// A draw at a second of the day.
struct Ask {
    double at_s = 0.0;
    double useful_j = 0.0;
};

/// Cuts a day where draws begin; `asks` in order of time.
Schedule cut_day(const std::vector<Ask>& asks, double step_s) {
    Schedule out;
    out.parts_per_hour = static_cast<int>(std::lround(3600.0 / step_s));
    const int steps = 24 * out.parts_per_hour;
    std::size_t draw = 0;
    for (int step = 0; step < steps; ++step) {
        double begin = step * step_s;
        const double end = (step + 1) * step_s;
        Slot slot;
        slot.hour = step / out.parts_per_hour;
        slot.part = step % out.parts_per_hour;
        while (begin < end) {
            slot.first_draw = static_cast<int>(draw);
            slot.draw_count = 0;
            while (draw < asks.size() && asks[draw].at_s <= begin) {
                out.draws_j.push_back(asks[draw].useful_j);
                ++slot.draw_count;
                ++draw;
            }
            const double next = draw < asks.size() ? asks[draw].at_s : end;
            const double until = std::min(end, next);
            slot.length_s = until - begin;
            out.slots.push_back(slot);
            begin = until;
        }
    }
    for (std::size_t i = out.slots.size(); i-- > 0;) {
        Slot& slot = out.slots[i];
        slot.quiet_s = slot.length_s;
        if (i + 1 == out.slots.size()) continue;
        const Slot& next = out.slots[i + 1];
        if (next.hour != slot.hour || next.draw_count > 0) continue;
        slot.quiet_s += next.quiet_s;
        slot.quiet_slots += next.quiet_slots;
    }
    return out;
}

/// The draws of a day at home. Draws within a step of the first of a group join it, so that a busy household does not
/// cut the day into hundreds of steps; each stays a draw of its own.
std::vector<Ask> asks_of(const HouseholdDay& day, const Demand& demand, double step_s, double cold_c) {
    const double joule_per_l = cylinder::heat_capacity_j_l_k * (40.0 - cold_c) * demand.scale;
    std::vector<Ask> asks;
    double group_s = -step_s;
    for (const HouseholdDraw& draw : day) {
        const double at_s = 60.0 * draw.minute_of_day;
        if (at_s >= group_s + step_s) group_s = at_s;
        asks.push_back({group_s, draw.litres_40 * joule_per_l});
    }
    return asks;
}

}  // namespace

Schedule schedule_of(const Demand& demand, double step_s) {
    const auto day = cylinder::tapping_day(demand.cycle);
    std::vector<Ask> asks;
    for (std::size_t i = 0; i < day.count; ++i)
        asks.push_back({day.draws[i].minute_of_day * 60.0, day.draws[i].useful_kwh * demand.scale * joule_per_kwh});
    return cut_day(asks, step_s);
}

DaySchedules::DaySchedules(const Demand& demand, int first_weekday, double step_s,
                           const std::array<double, 365>& cold_c) {
    const Calendar calendar(demand.holidays, first_weekday);
    const bool people = demand.draw_source == DrawSource::household;
    all_.push_back(people ? cut_day({}, step_s) : schedule_of(demand, step_s));
    if (!people) {
        if (demand.holidays.empty()) return;
        all_.push_back(cut_day({}, step_s));
        for (int day = 0; day < 365; ++day)
            which_[static_cast<std::size_t>(day)] = calendar.holiday(day) ? 1 : 0;
        return;
    }
    const auto coldest = static_cast<int>(std::min_element(cold_c.begin(), cold_c.end()) - cold_c.begin());
    const auto year = household_year(demand.household, calendar, coldest);
    all_.reserve(366);
    for (std::size_t day = 0; day < 365; ++day) {
        if (year[day].empty()) continue;
        which_[day] = static_cast<int>(all_.size());
        all_.push_back(cut_day(asks_of(year[day], demand, step_s, cold_c[day]), step_s));
    }
}

void light_shape(const std::vector<double>& sun_up, int hour, int parts, double* shape) noexcept {
    const auto at = [&](int h) { return std::max(0.0, sun_up[static_cast<std::size_t>((h + 8760) % 8760)]); };
    const double before = at(hour - 1);
    const double here = at(hour);
    const double after = at(hour + 1);
    double sum = 0.0;
    for (int i = 0; i < parts; ++i) {
        const double offset = (i + 0.5) / parts - 0.5;  // from the hour's middle, in hours
        shape[i] = offset < 0.0 ? here + offset * (here - before) : here + offset * (after - here);
        sum += shape[i];
    }
    for (int i = 0; i < parts; ++i)
        shape[i] = sum > 0.0 ? shape[i] * parts / sum : 1.0;
}

std::array<double, 365> cold_inflow_c(const std::vector<double>& air_c, const Demand& demand) {
    double cosine = 0.0;
    double sine = 0.0;
    for (int day = 0; day < 365; ++day) {
        double mean = 0.0;
        for (int h = 0; h < 24; ++h)
            mean += air_c[static_cast<std::size_t>(24 * day + h)] / 24.0;
        const double angle = 2.0 * pi * (day + 0.5) / 365.0;
        cosine += mean * std::cos(angle);
        sine += mean * std::sin(angle);
    }
    const double warmest = std::atan2(sine, cosine) + 2.0 * pi * cold_delay_days / 365.0;
    std::array<double, 365> out{};
    for (int day = 0; day < 365; ++day)
        out[static_cast<std::size_t>(day)] =
            demand.cold_mean_c + demand.cold_swing_k * std::cos(2.0 * pi * (day + 0.5) / 365.0 - warmest);
    return out;
}

namespace {

class Check {
   public:
    void range(const std::string& where, double value, double low, double high, const char* remedy) {
        if (value >= low && value <= high) return;
        problems.push_back({where,
                            "the value " + std::to_string(value) + " lies outside " + std::to_string(low) + " to " +
                                std::to_string(high),
                            remedy});
    }
    /// The first bad hour only: a broken series is broken thousands of times.
    void series(const char* name, const std::vector<double>& values, double low, double high) {
        const std::string where = std::string("hourly series ") + name;
        const char* remedy = "Prepare the weather year again";
        if (values.size() != 8760) {
            problems.push_back({where, "has " + std::to_string(values.size()) + " values, not 8760", remedy});
            return;
        }
        for (std::size_t i = 0; i < values.size(); ++i)
            if (!(values[i] >= low && values[i] <= high)) {
                range(where + ", hour " + std::to_string(i), values[i], low, high, remedy);
                return;
            }
    }
    std::vector<Problem> problems;
};

}  // namespace

std::vector<Problem> problems_of(const Input& input, const Options& options, bool series) {
    Check check;
    const char* equipment = "Correct the equipment file";
    const char* survey = "Correct the survey";
    if (input.refrigerant == nullptr)
        check.problems.push_back({"refrigerant", "no property table was given", "Load resources/refrigerants"});
    else
        check.problems = heatpump::problems_of(input.block, *input.refrigerant);
    if (input.refrigerant != nullptr && input.refrigerant->name() != name_of(input.block.refrigerant))
        check.problems.push_back({"refrigerant",
                                  "the block holds " + std::string(name_of(input.block.refrigerant)) +
                                      ", the property table is of " + input.refrigerant->name(),
                                  "Load the table of the block's refrigerant"});
    const std::string plate = "collector \"" + input.collector.name + "\".";
    if (input.groups.empty() || input.groups.size() > most_groups)
        check.problems.push_back({"plate groups", "there are " + std::to_string(input.groups.size()) + " of them",
                                  "Give 1 to " + std::to_string(most_groups)});
    check.range("number of collectors", input.plates(), 1, 50, "Place at least one collector");
    check.range(plate + "face_area_m2", input.collector.face_area_m2, 0.2, 20.0, equipment);
    check.range(plate + "absorptance", input.collector.absorptance, 0.05, 1.0, equipment);
    check.range(plate + "emittance", input.collector.emittance, 0.02, 1.0, equipment);
    check.range(plate + "plate_to_refrigerant_w_m2k", input.collector.plate_to_refrigerant_w_m2k, 10.0, 2000.0,
                equipment);
    check.range(plate + "rear_exposure", input.collector.rear_exposure, 0.0, 1.0, equipment);
    check.range(plate + "frost_limit_kg_m2", input.collector.frost_limit_kg_m2, 0.05, 20.0, equipment);
    check.range(plate + "channel_drop_k", input.collector.channel_drop_k, 0.0, 10.0, equipment);
    check.range(plate + "channel_drop_at_w", input.collector.channel_drop_at_w, 100.0, 20000.0, equipment);
    if (input.collector.iso9806) {
        const CollectorModel& c = input.collector;
        for (const Iso9806Fault& fault :
             faults_of(*c.iso9806, c.face_area_m2 / (c.length_m * c.width_m), Iso9806::moved_slack))
            check.problems.push_back({plate + "iso9806." + fault.field, fault.what, fault.remedy});
    }
    const std::string tank = "cylinder \"" + input.cylinder.name + "\".";
    check.range(tank + "volume_l", input.cylinder.volume_l, 20.0, 5000.0, equipment);
    check.range(tank + "height_m", input.cylinder.height_m, 0.3, 5.0, equipment);
    check.range(tank + "standing_loss_kwh_24h", input.cylinder.standing_loss_kwh_24h, 0.0, 50.0, equipment);
    check.range(tank + "sensor_height", input.cylinder.sensor_height, 0.05, 0.95, equipment);
    check.range(tank + "immersion_height", input.cylinder.immersion_height, 0.02, 0.9, equipment);
    check.range(tank + "immersion_w", input.cylinder.immersion_w, 0.0, 20000.0, equipment);
    for (const PlateGroup& group : input.groups) {
        check.range("collectors of a group", group.count, 1, 50, "Place at least one collector");
        check.range("plate tilt, deg", group.tilt_deg, 0.0, 90.0, survey);
        check.range("sky view of the plate", group.sky_view, 0.0, 1.0, survey);
    }
    check.range("room temperature, deg C", input.room_c, -20.0, 50.0, survey);
    check.range("suction line conductance, W/K", input.line_ua_w_k, 0.0, 50.0, "Correct the pipe run");
    check.range("suction line drop, K", input.suction_drop_k, 0.0, 10.0, "Correct the pipe run");
    const char* demand = "Correct the demand";
    check.range("demand.scale", input.demand.scale, 0.05, 10.0, demand);
    check.range("demand.set_point_c", input.demand.set_point_c, 35.0, 70.0, demand);
    check.range("demand.hysteresis_k", input.demand.hysteresis_k, 1.0, 20.0, demand);
    check.range("demand.wanted_c", input.demand.wanted_c, 30.0, 60.0, demand);
    check.range("demand.cold_mean_c", input.demand.cold_mean_c, 0.0, 30.0, demand);
    check.range("demand.cold_swing_k", input.demand.cold_swing_k, 0.0, 15.0, demand);
    check.range("warmest cold inflow, deg C", input.demand.cold_mean_c + input.demand.cold_swing_k, 0.0,
                input.demand.wanted_c - 5.0, demand);
    check.range("coldest cold inflow, deg C", input.demand.cold_mean_c - input.demand.cold_swing_k, 0.0, 40.0, demand);
    add_demand_problems(input, check.problems);
    check.range("options.nodes", options.nodes, 5, 40, "Choose 5 to 40");
    check.range("options.warm_up_days", options.warm_up_days, 0, 60, "Choose 0 to 60");
    check.range("options.step_s", options.step_s, 60.0, 900.0, "Choose 60 to 900 s");
    const double parts = 3600.0 / options.step_s;
    if (std::isfinite(parts) && std::abs(parts - std::round(parts)) > 1e-9)
        check.problems.push_back({"options.step_s",
                                  "a step of " + std::to_string(options.step_s) + " s does not divide the hour",
                                  "Choose 60, 120, 300, 600 or 900 s"});
    if (series) {
        for (const PlateGroup& group : input.groups) {
            check.series("front_w_m2", group.front_w_m2, 0.0, 2000.0);
            check.series("rear_w_m2", group.rear_w_m2, 0.0, 2000.0);
            check.series("wind_plate_m_s", group.wind_plate_m_s, 0.0, 80.0);
            if (!group.incidence.empty()) check.series("incidence", group.incidence, 0.0, 1.2);
        }
        check.series("sun_up", input.sun_up, -1.0, 1.0);
        check.series("air_c", input.air_c, -70.0, 60.0);
        check.series("dew_point_c", input.dew_point_c, -90.0, 50.0);
        check.series("sky_k", input.sky_k, 150.0, 340.0);
        check.series("pressure_pa", input.pressure_pa, 40000.0, 110000.0);
    }
    return std::move(check.problems);
}

}  // namespace wg::season
