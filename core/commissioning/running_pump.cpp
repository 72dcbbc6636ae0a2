// The running pump as entered: readings that belong together, held against the model by start.h.

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

#include "core/commissioning/checks.h"
#include "core/commissioning/conditions.h"
#include "core/commissioning/model.h"
#include "core/commissioning/start.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

constexpr double together_min = 90.0;     // readings of one run, practice
constexpr double oil_limit_c = 120.0;     // discharge above it harms oil, practice
constexpr double least_work_k = 10.0;     // discharge over suction when compressing, practice
constexpr double superheat_half_k = 5.0;  // gas 4 K and saturation 3 K as root of squares, as start.h assumes them
constexpr double most_light_w_m2 = 1000.0;
constexpr double shade_light_w_m2 = 250.0;  // diffuse light on a plate in shade, practice
constexpr double assumed_wind_m_s = 2.0, calm_m_s = 0.5, fresh_m_s = 5.0;
constexpr double frost_seen_kg_m2 = 1.0;  // assumed where frost is told

bool of_the_run(ReadingKind kind) {
    return kind == ReadingKind::suction_temperature || kind == ReadingKind::discharge_temperature ||
           kind == ReadingKind::suction_pressure || kind == ReadingKind::discharge_pressure ||
           kind == ReadingKind::superheat;
}

/// Readings within 90 minutes of the newest one of the run; the nearest of each kind counts.
class Together {
   public:
    explicit Together(const Standing& record) : record_(record) {
        for (auto it = record.rbegin(); it != record.rend() && anchor_ == nullptr; ++it)
            if (of_the_run(it->kind)) anchor_ = &*it;
    }
    [[nodiscard]] const Reading* anchor() const { return anchor_; }

    [[nodiscard]] const Reading* of(ReadingKind kind) const {
        const Reading* best = nullptr;
        double nearest = together_min;
        for (const Reading& reading : record_) {
            if (reading.kind != kind || reading.occasion != anchor_->occasion) continue;
            const auto after = minutes_between(*anchor_, reading), before = minutes_between(reading, *anchor_);
            if (!after && !before) {
                if (&reading == anchor_ || reading.taken_at == anchor_->taken_at) best = &reading;
                continue;
            }
            const double apart = after ? *after : *before;
            if (apart > nearest) continue;
            nearest = apart;  // of two as near, the later entry
            best = &reading;
        }
        return best;
    }
    [[nodiscard]] std::optional<double> value(ReadingKind kind) const {
        const Reading* reading = of(kind);
        return reading != nullptr && std::isfinite(reading->value) ? std::optional(reading->value) : std::nullopt;
    }
    [[nodiscard]] PlateState plate() const {
        PlateState state = PlateState::not_told;
        for (const Reading& reading : record_)
            if (reading.plate != PlateState::not_told && of(reading.kind) == &reading) state = reading.plate;
        return state;
    }

   private:
    const Standing& record_;
    const Reading* anchor_ = nullptr;
};

constexpr std::array run_kinds{ReadingKind::suction_temperature, ReadingKind::suction_pressure,
                               ReadingKind::discharge_temperature, ReadingKind::discharge_pressure,
                               ReadingKind::supply_current};

std::string list_of(const std::vector<std::string>& names) {
    std::string out;
    for (std::size_t i = 0; i < names.size(); ++i)
        out += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    return out;
}

/// What must hold for any set; true when it settles the verdict.
bool settled_for_any_set(Assessment& a, const Together& run) {
    const auto suction = run.value(ReadingKind::suction_temperature);
    const auto discharge = run.value(ReadingKind::discharge_temperature);
    for (const ReadingKind kind : {ReadingKind::suction_temperature, ReadingKind::discharge_temperature}) {
        const Reading* reading = run.of(kind);
        if (reading == nullptr || (reading->value > -60.0 && reading->value < 250.0)) continue;
        conclude(a, Verdict::cannot_tell, "A temperature of " + fixed(reading->value, 1) + " deg C cannot be",
                 "Correct the entry");
        return true;
    }
    for (const ReadingKind kind : {ReadingKind::suction_pressure, ReadingKind::discharge_pressure}) {
        const Reading* reading = run.of(kind);
        if (reading == nullptr || (reading->value > -1.0 && reading->value < 100.0)) continue;
        conclude(a, Verdict::cannot_tell, "A pressure of " + fixed(reading->value, 2) + " bar gauge cannot be",
                 "Correct the entry: pressures are in bar gauge");
        return true;
    }
    if (discharge && *discharge > oil_limit_c) {
        conclude(a, Verdict::failed,
                 "Discharge of " + fixed(*discharge, 1) + " deg C is above " + fixed(oil_limit_c, 0) +
                     " deg C, which harms the oil",
                 "Switch off; check the charge and that the run is free");
        return true;
    }
    if (suction && discharge && *discharge - *suction < least_work_k) {
        conclude(a, Verdict::failed,
                 "Discharge of " + fixed(*discharge, 1) + " deg C is hardly over suction of " + fixed(*suction, 1) +
                     " deg C",
                 "Check that the probes are not swapped; else the compressor does not compress");
        return true;
    }
    return false;
}

void without_model(Assessment& a, const Together& run) {
    const auto suction = run.value(ReadingKind::suction_temperature);
    const auto discharge = run.value(ReadingKind::discharge_temperature);
    if (!suction || !discharge) {
        conclude(a, Verdict::cannot_tell,
                 std::string(suction     ? "The suction temperature alone is read"
                             : discharge ? "The discharge temperature alone is read"
                                         : "No temperature of suction and discharge is read"),
                 "Read suction and discharge after ten minutes of running");
        return;
    }
    conclude(a, Verdict::passed,
             "Suction " + fixed(*suction, 1) + " deg C, discharge " + fixed(*discharge, 1) +
                 " deg C; not held against the model",
             "");
}

/// Bands of two judgements together.
void widen(StartResult& into, const StartResult& other) {
    if (other.verdict == StartVerdict::cannot_run) return;
    for (std::size_t i = 0; i < start_quantities; ++i) {
        into.bands[i].low = std::min(into.bands[i].low, other.bands[i].low);
        into.bands[i].high = std::max(into.bands[i].high, other.bands[i].high);
    }
}

void add_bands(Assessment& a, const StartResult& r, const Together& run, const heatpump::HeatPump& pump,
               double air_pressure_bar) {
    a.bands = start_bands(r.bands);
    Band superheat{"superheat", "K", 1, 0.0, pump.block().superheat_k, 0.0, run.value(ReadingKind::superheat)};
    superheat.low = std::max(0.0, superheat.mid - superheat_half_k);
    superheat.high = superheat.mid + superheat_half_k;
    if (superheat.read) {
        a.bands.push_back(superheat);
        return;
    }
    // Not shown by an instrument: from gas and pressure, told beside them and not judged twice.
    const auto gas = run.value(ReadingKind::suction_temperature), bar = run.value(ReadingKind::suction_pressure);
    if (!gas || !bar || !(*bar + air_pressure_bar > 0.0)) return;
    const auto& fluid = pump.refrigerant();
    const double pa = (*bar + air_pressure_bar) * 1e5;
    double low = fluid.min_c(), high = fluid.critical_c();
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (fluid.pressure_up_to_critical_pa(middle) < pa ? low : high) = middle;
    }
    a.words += "; superheat by gas and pressure " + fixed(*gas - 0.5 * (low + high), 1) + " K";
}

}  // namespace

std::optional<Assessment> running_pump(const Standing& record, const Model* model) {
    const Together run(record);
    if (run.anchor() == nullptr) return std::nullopt;
    Assessment a;
    a.subject = "Running pump";
    for (const Reading& reading : record) {
        const bool counts = of_the_run(reading.kind) || reading.kind == ReadingKind::supply_current ||
                            reading.kind == ReadingKind::outdoor_temperature ||
                            reading.kind == ReadingKind::water_temperature || reading.kind == ReadingKind::irradiance ||
                            reading.kind == ReadingKind::wind_speed;
        if (counts && run.of(reading.kind) == &reading) a.reading_ids.push_back(reading.id);
    }
    if (settled_for_any_set(a, run)) return a;
    if (model == nullptr || model->pump == nullptr) {
        without_model(a, run);
        return a;
    }
    const auto air = run.value(ReadingKind::outdoor_temperature), water = run.value(ReadingKind::water_temperature);
    if (!air || !water || *air < -50.0 || *air > 60.0 || *water < 0.0 || *water > 95.0) {
        std::vector<std::string> names;
        if (!air || *air < -50.0 || *air > 60.0) names.emplace_back("outdoor air");
        if (!water || *water < 0.0 || *water > 95.0) names.emplace_back("water in the lower part");
        conclude(a, Verdict::cannot_tell,
                 "To hold the pump against the model " + list_of(names) + (names.size() > 1 ? " are" : " is") +
                     " missing within 90 minutes of the readings",
                 "Read " + list_of(names) + " while the pump runs");
        return a;
    }

    StartConditions c;
    std::vector<std::string> assumed;
    c.surroundings = surroundings_of(*air, run.value(ReadingKind::wind_speed).value_or(assumed_wind_m_s));
    assumed.emplace_back("air of 65 % humidity, sky 10 K below the air");
    c.water_c = *water;
    c.plate = model->plate;
    c.line = model->line;
    const PlateState plate = run.plate();
    if (plate == PlateState::frosted) {
        c.frost.front_kg_m2 = c.frost.rear_kg_m2 = frost_seen_kg_m2;
        assumed.emplace_back("frost of 1 kg/m2 on each face");
    }
    const auto light = run.value(ReadingKind::irradiance);
    c.light_known = light && *light >= 0.0 && *light <= 1500.0;
    if (c.light_known) {
        c.surroundings.front_w_m2 = *light;
    } else {
        c.surroundings.front_w_m2 = brightest_w_m2(*model, run.anchor()->taken_at).value_or(most_light_w_m2);
        if (plate == PlateState::in_shade)
            c.surroundings.front_w_m2 = std::min(c.surroundings.front_w_m2, shade_light_w_m2);
        assumed.push_back("light between 0 and " + fixed(c.surroundings.front_w_m2, 0) + " W/m2");
    }
    StartReadings read;
    read.suction_gas_c = run.value(ReadingKind::suction_temperature);
    read.suction_bar = run.value(ReadingKind::suction_pressure);
    read.discharge_c = run.value(ReadingKind::discharge_temperature);
    read.discharge_bar = run.value(ReadingKind::discharge_pressure);
    read.current_a = run.value(ReadingKind::supply_current);
    StartResult r = judge(*model->pump, c, read);
    if (!run.value(ReadingKind::wind_speed) && r.verdict != StartVerdict::cannot_run) {
        assumed.push_back("wind between " + fixed(calm_m_s, 1) + " and " + fixed(fresh_m_s, 0) + " m/s");
        for (const double wind : {calm_m_s, fresh_m_s}) {
            c.surroundings.wind_m_s = wind;
            widen(r, judge(*model->pump, c, {}));
        }
    }
    std::vector<std::string> missing;
    for (std::size_t i = 0; i < start_quantities; ++i)
        if (run.of(run_kinds[i]) == nullptr) missing.emplace_back(text_of(static_cast<StartQuantity>(i)));
    const std::string at = "At " + fixed(*air, 1) + " deg C outdoors and water of " + fixed(*water, 1) + " deg C";
    a.working = {"commissioning.running-pump",
                 "The running pump against the model",
                 "plate, circuit and condenser in balance at the conditions read",
                 {{"outdoors", fixed(*air, 1) + " deg C"},
                  {"water", fixed(*water, 1) + " deg C"},
                  {"assumed", list_of(assumed)},
                  {"bands (assumed)", "saturation 3 K, gas 4 K, discharge 8 K, current 12 %"}},
                 "",
                 "docs/handbook/plate-and-cycle.md",
                 true};

    if (r.verdict == StartVerdict::cannot_run) {
        conclude(a, Verdict::cannot_tell, at + " the model keeps the pump off: " + r.why_not,
                 "Read again in milder weather, or check the outdoor and water temperature entered");
        return a;
    }
    if (r.verdict == StartVerdict::not_running) {
        conclude(a, Verdict::cannot_tell, at + " the current says that the compressor stands",
                 "Start the pump, wait ten minutes, and read again");
        return a;
    }
    add_bands(a, r, run, *model->pump, c.air_pressure_bar);
    const std::string superheat_words = a.words;
    std::vector<std::string> outside;
    for (const Band& band : a.bands)
        if (band.outside())
            outside.push_back(band.label + " " + fixed(*band.read, band.decimals) + " " + band.unit + " (" +
                              fixed(band.low, band.decimals) + " to " + fixed(band.high, band.decimals) + ")");
    const std::string not_read = missing.empty() ? std::string() : "; not read: " + list_of(missing);
    if (outside.empty()) {
        a.working.result = "within the bands";
        conclude(a, Verdict::passed, at + " every reading lies within its band" + superheat_words + not_read, "");
        return a;
    }
    a.working.result = "outside";
    std::string next = "Check the probes and read again; then have a refrigeration technician look";
    if (!r.suspects.empty()) next = remedy_of(r.suspects.front().fault);
    for (const Suspect& suspect : r.suspects)
        a.causes.push_back(std::string(text_of(suspect.fault)) + ": " + remedy_of(suspect.fault));
    if (const Band& last = a.bands.back(); last.label == "superheat" && last.outside()) {
        const bool low = *last.read < last.low;
        a.causes.emplace_back(low ? "liquid comes back to the compressor: check the expansion device and the charge"
                                  : "the plate is starved: weigh the charge, see that the lines are free");
        if (r.suspects.empty())
            next = low ? "Switch off before liquid harms the compressor; check expansion device and charge"
                       : "Weigh the charge; see that both service valves are open";
    }
    conclude(a, Verdict::failed, at + " outside the band: " + list_of(outside) + superheat_words + not_read, next);
    return a;
}

}  // namespace wg::commissioning::checks
