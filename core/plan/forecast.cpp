// What the running pump should show on a usual day of each month, and how long the first heating then takes.

#include <algorithm>
#include <array>
#include <cmath>
#include <future>

#include "core/commissioning/conditions.h"
#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/season/schedule.h"

namespace wg::plan::steps {
namespace {

/// Means over the hours in which the sun is up, and the light of single days.
struct Daylight {
    double hours = 0.0, light = 0.0, rear = 0.0, air = 0.0, wind = 0.0, sky_below = 0.0;
    std::vector<double> days;

    void add(const season::Input& input, std::size_t h) {
        hours += 1.0;
        light += input.mean_front_w_m2(h);
        air += input.air_c[h];
        sky_below += kelvin(input.air_c[h]) - input.sky_k[h];
        for (const season::PlateGroup& group : input.groups) {
            const double share = static_cast<double>(group.count) / input.plates();
            rear += share * group.rear_w_m2[h];
            wind += share * group.wind_plate_m_s[h];
        }
    }
};

Daylight daylight_of(const season::Input& input, int month) {
    Daylight sums;
    for (int day = first_hour_of_month(month); day < first_hour_of_month(month + 1); day += 24) {
        const double hours_before = sums.hours, light_before = sums.light;
        for (int i = day; i < day + 24; ++i) {
            const auto h = static_cast<std::size_t>(i);
            if (input.sun_up[h] > 0.0) sums.add(input, h);
        }
        if (sums.hours > hours_before) sums.days.push_back((sums.light - light_before) / (sums.hours - hours_before));
    }
    std::sort(sums.days.begin(), sums.days.end());
    return sums;
}

/// One day in ten is darker, one in ten brighter.
commissioning::LightRange tenths(const std::vector<double>& sorted, double mean) {
    const double last = static_cast<double>(sorted.size()) - 1.0;
    const auto at = [&](double share) { return sorted[static_cast<std::size_t>(std::lround(share * last))]; };
    return {std::min(at(0.1), mean), mean, std::max(at(0.9), mean)};
}

void widen(std::array<commissioning::StartBand, commissioning::start_quantities>& bands,
           const commissioning::StartResult& other) {
    if (other.verdict == commissioning::StartVerdict::cannot_run) return;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        bands[i].low = std::min(bands[i].low, other.bands[i].low);
        bands[i].high = std::max(bands[i].high, other.bands[i].high);
    }
}

commissioning::MonthForecast of_month(const commissioning::Model& model,
                                      const Result<commissioning::HeatingSets>& heating, int month, double cold_c) {
    const season::Input& input = *model.input;
    commissioning::MonthForecast f;
    f.month = month;
    f.water_from_c = cold_c;
    f.water_to_c = input.demand.set_point_c;
    const Daylight day = daylight_of(input, month);
    if (!(day.hours > 0.0)) return f;  // polar night: nothing to forecast by daylight
    f.air_c = day.air / day.hours;
    f.light_w_m2 = day.light / day.hours;
    f.wind_m_s = day.wind / day.hours;
    const commissioning::LightRange light = tenths(day.days, f.light_w_m2);

    commissioning::StartConditions c;
    c.surroundings = commissioning::surroundings_of(f.air_c, f.wind_m_s);
    c.surroundings.sky_k = kelvin(f.air_c) - day.sky_below / day.hours;
    c.surroundings.rear_w_m2 = day.rear / day.hours;
    c.light_known = true;
    c.water_c = 0.5 * (f.water_from_c + f.water_to_c);
    c.plate = model.plate;
    c.line = model.line;
    c.surroundings.front_w_m2 = light.mid;
    commissioning::StartResult usual = commissioning::judge(*model.pump, c, {});
    if (usual.verdict != commissioning::StartVerdict::cannot_run) {
        for (const double w_m2 : {light.low, light.high}) {
            c.surroundings.front_w_m2 = w_m2;
            widen(usual.bands, commissioning::judge(*model.pump, c, {}));
        }
        f.bands = commissioning::start_bands(usual.bands);
    }
    if (!heating || f.water_from_c >= f.water_to_c) return f;
    season::WarmUpConditions at;
    at.rear_light_w_m2 = day.rear / day.hours;
    at.air_c = f.air_c;
    at.wind_m_s = f.wind_m_s;
    at.sky_below_air_k = std::clamp(day.sky_below / day.hours, -5.0, 60.0);
    const commissioning::HeatingHours hours = heating.value().hours(f.water_from_c, f.water_to_c, at, light);
    f.hours_low = hours.low;
    f.hours_mid = hours.mid;
    f.hours_high = hours.high;
    return f;
}

}  // namespace

std::vector<commissioning::MonthForecast> forecasts(const commissioning::Model& model) {
    if (model.pump == nullptr || model.input == nullptr) return {};
    const std::array<double, 365> inflow = season::cold_inflow_c(model.input->air_c, model.input->demand);
    const auto heating = commissioning::HeatingSets::make(*model.input);
    std::vector<commissioning::MonthForecast> out(12);
    // Months are independent of each other: the order of finishing changes nothing.
    const auto half = [&](int from) {
        for (int month = from; month < from + 6; ++month) {
            double cold = 0.0;
            const int first = first_hour_of_month(month) / 24, end = first_hour_of_month(month + 1) / 24;
            for (int day = first; day < end; ++day)
                cold += inflow[static_cast<std::size_t>(day)] / (end - first);
            out[static_cast<std::size_t>(month - 1)] = of_month(model, heating, month, cold);
        }
    };
    auto second = std::async(std::launch::async, half, 7);
    half(1);
    second.get();
    const bool runs = std::any_of(out.begin(), out.end(), [](const auto& f) { return !f.bands.empty(); });
    if (!runs) out.clear();
    return out;
}

}  // namespace wg::plan::steps
