// From cold to set-point: the water's end and the time it took, against the model's at the day's weather.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/conditions.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

constexpr double reached_k = 3.0;          // sensor and layering, practice
constexpr double overshoot_k = 5.0;        // practice
constexpr double light_meter_share = 0.1;  // a light reading stands for the whole heating, practice
constexpr double longest_heating_h = 72.0;
constexpr double usual_wind_m_s = 2.0;
constexpr double clock_min = 20.0;  // what a person notes late, and a quarter-hour step of the model

bool could_be_water(double t_c) {
    return std::isfinite(t_c) && t_c > -5.0 && t_c < 105.0;
}

/// The end against the set-point: true when that settles the verdict.
bool end_settles(Assessment& a, double end_c, const Expected& expected, const std::string& words) {
    if (end_c > expected.set_point_c + overshoot_k) {
        conclude(a, Verdict::failed, words + ": the control does not switch off in time",
                 "Check the sensor in its pocket and the set-point; warn of scalding until it is mended");
        return true;
    }
    if (end_c < expected.set_point_c - reached_k) {
        conclude(a, Verdict::cannot_tell, words + ": not heated through yet",
                 "Read again when the pump has switched off");
        return true;
    }
    return false;
}

Working water_working(double end_c, const Expected& expected) {
    return {"commissioning.water",
            "Water temperature against set-point",
            "T_set - 3 K <= T <= T_set + 5 K",
            {{"T", fixed(end_c, 1) + " deg C"}, {"T_set", fixed(expected.set_point_c, 1) + " deg C"}},
            fixed(end_c - expected.set_point_c, 1) + " K",
            "common practice, no published source",
            false};
}

/// Readings of a kind from an hour before the start to an hour after the end.
std::vector<double> during(const Standing& record, ReadingKind kind, const Reading& start, const Reading& end) {
    constexpr double about_min = 60.0;
    std::vector<double> out;
    for (const Reading& reading : record) {
        if (reading.kind != kind || !std::isfinite(reading.value)) continue;
        const auto before = minutes_between(reading, start), after = minutes_between(end, reading);
        const bool readable = minutes_between(start, reading) || before;
        if (readable && before.value_or(0.0) <= about_min && after.value_or(0.0) <= about_min)
            out.push_back(reading.value);
    }
    return out;
}

std::optional<double> mean_of_readings(const std::vector<double>& values) {
    if (values.empty()) return std::nullopt;
    double sum = 0.0;
    for (const double v : values)
        sum += v;
    return sum / static_cast<double>(values.size());
}

void judge_time(Assessment& a, const Standing& record, const Reading& start, const Reading& end, double hours,
                const Model& model, const std::string& words) {
    std::vector<double> airs = during(record, ReadingKind::outdoor_temperature, start, end);
    for (const Reading* reading : {&start, &end})
        if (reading->second_value && std::isfinite(*reading->second_value)) airs.push_back(*reading->second_value);
    const auto air = mean_of_readings(airs);
    if (!air) {
        conclude(a, Verdict::cannot_tell,
                 words + "; the outdoor temperature was not read, so the time cannot be judged",
                 "Enter the outdoor temperature at start and end");
        return;
    }
    season::WarmUpConditions at;
    at.air_c = *air;
    at.wind_m_s = mean_of_readings(during(record, ReadingKind::wind_speed, start, end)).value_or(usual_wind_m_s);
    const auto read_light = mean_of_readings(during(record, ReadingKind::irradiance, start, end));
    std::optional<LightRange> light;
    std::string light_words;
    if (read_light) {
        light =
            LightRange{(1.0 - light_meter_share) * *read_light, *read_light, (1.0 + light_meter_share) * *read_light};
        light_words = fixed(*read_light, 0) + " W/m2, read";
    } else if (const auto when = month_and_hour(model, start.taken_at)) {
        light = light_range(model, *when, hours);
        if (light)
            light_words = fixed(light->low, 0) + " to " + fixed(light->high, 0) +
                          " W/m2, eight days in ten of that month by the plan's weather";
    }
    if (!light) {
        conclude(a, Verdict::cannot_tell,
                 words +
                     "; neither light read nor weather of the plan, so the time cannot be "
                     "judged",
                 "Enter the light on the plate, or plan the year");
        return;
    }
    const Result<HeatingSets> sets = HeatingSets::make(*model.input);
    const HeatingHours should = sets ? sets.value().hours(start.value, end.value, at, *light)
                                     : HeatingHours{0.0, 0.0, 0.0, text_of(sets.problems())};
    if (!(should.mid > 0.0)) {
        conclude(a, Verdict::cannot_tell, words + "; by the model the pump does not get there: " + should.why_not,
                 "Check the temperatures entered");
        return;
    }
    const double noted_h = clock_min / 60.0;
    const double low = should.low - noted_h, high = should.high > 0.0 ? should.high + noted_h : longest_heating_h;
    a.bands.push_back({"time to set-point", "h", 1, low, should.mid, high, hours});
    a.working = {"commissioning.first-heating",
                 "Time of the first heating against the model",
                 "warm-up at constant conditions, without draw-off and immersion heater",
                 {{"water", fixed(start.value, 1) + " to " + fixed(end.value, 1) + " deg C"},
                  {"outdoors", fixed(*air, 1) + " deg C +/- 1 K"},
                  {"light on the plate", light_words},
                  {"wind", fixed(at.wind_m_s, 1) + " m/s"},
                  {"set (assumed)", "plate to refrigerant 20 %, compressor 5 %, condenser 15 % together"},
                  {"clock (assumed)", "20 minutes"}},
                 fixed(low, 1) + " to " + fixed(high, 1) + " hours, middle " + fixed(should.mid, 1),
                 "docs/handbook/season.md",
                 true};
    const std::string found = words + " in " + fixed(hours, 1) + " hours; the model says " + fixed(low, 1) + " to " +
                              fixed(high, 1) + " at " + fixed(*air, 1) + " deg C outdoors, light " + light_words;
    if (hours < low) {
        conclude(a, Verdict::cannot_tell, found + ": faster than the pump alone",
                 "See whether the immersion heater helped, the cylinder was full and the start was read cold");
    } else if (hours > high) {
        conclude(a, Verdict::failed, found + ": too slow",
                 "See whether water was drawn meanwhile; then read the running pump and look for the cause there");
        a.causes = {"hot water was drawn, or the loop ran", "plate in shade, iced or not in the light planned",
                    "too little refrigerant, or a valve not fully open", "condenser passes little heat"};
    } else {
        conclude(a, Verdict::passed, found, "");
    }
}

}  // namespace

std::optional<Assessment> first_heating(const Standing& record, const Expected& expected, const Model* model) {
    const Pair pair = newest_pair(record, ReadingKind::heating_start, ReadingKind::heating_end);
    const Reading* water = newest(record, ReadingKind::water_temperature);
    const Reading* end = pair.second != nullptr ? pair.second : pair.first == nullptr ? water : nullptr;
    if (pair.first == nullptr && end == nullptr) return std::nullopt;
    Assessment a;
    a.subject = "First heating";
    for (const Reading* reading : {pair.first, end})
        if (reading != nullptr) a.reading_ids.push_back(reading->id);
    for (const Reading* reading : {pair.first, end}) {
        if (reading == nullptr || could_be_water(reading->value)) continue;
        conclude(a, Verdict::cannot_tell, "Water of " + fixed(reading->value, 1) + " deg C cannot be",
                 "Correct the entry");
        return a;
    }
    if (end == nullptr) {
        conclude(a, Verdict::cannot_tell, "Heating since water of " + fixed(pair.first->value, 1) + " deg C",
                 "Read the water and the time when the pump switches off");
        return a;
    }
    a.working = water_working(end->value, expected);
    const std::string words = fixed(end->value, 1) + " deg C, set to " + fixed(expected.set_point_c, 1) + " deg C";
    if (end_settles(a, end->value, expected, words)) return a;
    if (pair.first == nullptr || end->kind != ReadingKind::heating_end) {
        conclude(a, Verdict::passed, words, "");
        return a;
    }
    const auto minutes = minutes_between(*pair.first, *end);
    if (!minutes || !(*minutes > 0.0) || *minutes > 60.0 * longest_heating_h || pair.first->value >= end->value) {
        conclude(
            a, Verdict::cannot_tell,
            words + "; start and end do not tell how long it heated from " + fixed(pair.first->value, 1) + " deg C",
            "Correct times or temperatures of start and end");
        return a;
    }
    if (model == nullptr || model->input == nullptr) {
        conclude(a, Verdict::passed,
                 words + " in " + fixed(*minutes / 60.0, 1) + " hours; the time is not held against the model", "");
        return a;
    }
    judge_time(a, record, *pair.first, *end, *minutes / 60.0, *model, words);
    return a;
}

}  // namespace wg::commissioning::checks
