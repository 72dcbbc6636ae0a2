#include "core/commissioning/conditions.h"

#include <algorithm>
#include <cmath>

#include "core/heatpump/compressor.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"

namespace wg::commissioning {
namespace {

constexpr double assumed_humidity = 0.65, assumed_sky_below_k = 10.0;
constexpr double tenth = 0.1;
constexpr double air_known_k = 1.0;

/// Inputs of the model moved together, as for a year's range (docs/handbook/ranges.md).
struct ModelVariation {
    double plate = 1.0, compressor = 1.0, condenser = 1.0;
};
constexpr ModelVariation poorer_set{0.80, 0.95, 0.85}, better_set{1.20, 1.05, 1.15};

/// Only what a warm-up needs: the hourly series stay behind.
season::Input without_hours(const season::Input& input) {
    season::Input out;
    out.collector = input.collector;
    out.block = input.block;
    out.cylinder = input.cylinder;
    out.refrigerant = input.refrigerant;
    out.groups.clear();
    for (const season::PlateGroup& group : input.groups) {
        season::PlateGroup bare;
        bare.count = group.count;
        bare.tilt_deg = group.tilt_deg;
        bare.sky_view = group.sky_view;
        bare.rear_free = group.rear_free;
        out.groups.push_back(std::move(bare));
    }
    out.joined = input.joined;
    out.room_c = input.room_c;
    out.line_ua_w_k = input.line_ua_w_k;
    out.suction_drop_k = input.suction_drop_k;
    out.demand = input.demand;
    return out;
}

season::Input moved(season::Input input, const ModelVariation& by) {
    input.collector.plate_to_refrigerant_w_m2k *= by.plate;
    heatpump::scale_efficiency(input.block, by.compressor);
    input.block.condenser_w_k *= by.condenser;
    return input;
}

season::Options quarter_hours() {
    season::Options options;
    options.step_s = 900.0;
    options.keep_hours = false;
    return options;
}

double quantile(const std::vector<double>& sorted, double share) {
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto low = static_cast<std::size_t>(at);
    const std::size_t high = std::min(low + 1, sorted.size() - 1);
    return sorted[low] + (at - static_cast<double>(low)) * (sorted[high] - sorted[low]);
}

}  // namespace

heatpump::Surroundings surroundings_of(double air_c, double wind_m_s) {
    heatpump::Surroundings s;
    const double x = std::log(assumed_humidity) + 17.62 * air_c / (243.12 + air_c);  // Magnus form over water
    s.air_c = air_c;
    s.dew_point_c = 243.12 * x / (17.62 - x);
    s.wind_m_s = wind_m_s;
    s.sky_k = kelvin(air_c - assumed_sky_below_k);
    return s;
}

std::optional<MonthAndHour> month_and_hour(const Model& model, const std::string& stamp) {
    const Result<Instant> at = instant_from_iso8601(stamp);
    if (!at) return std::nullopt;
    const auto local = at.value().unix_s + static_cast<std::int64_t>(std::lround(model.utc_offset_h * 3600.0));
    constexpr std::int64_t day_s = 86400;
    const std::int64_t second = ((local % day_s) + day_s) % day_s;
    return MonthAndHour{civil_from_days((local - second) / day_s).month, static_cast<double>(second) / 3600.0};
}

std::optional<double> brightest_w_m2(const Model& model, const std::string& stamp) {
    const auto at = month_and_hour(model, stamp);
    if (!at || model.input == nullptr || model.input->groups.front().front_w_m2.size() != 8760) return std::nullopt;
    double most = 0.0;
    for (int h = first_hour_of_month(at->month); h < first_hour_of_month(at->month + 1); ++h) {
        double apart = std::fabs(h % 24 + 0.5 - at->hour);
        apart = std::min(apart, 24.0 - apart);
        if (apart <= 1.0) most = std::max(most, model.input->mean_front_w_m2(static_cast<std::size_t>(h)));
    }
    return most;
}

std::optional<LightRange> light_range(const Model& model, const MonthAndHour& from, double hours) {
    if (model.input == nullptr || model.input->groups.front().front_w_m2.size() != 8760 || !(hours > 0.0))
        return std::nullopt;
    std::vector<double> days;
    const int first = first_hour_of_month(from.month), end = first_hour_of_month(from.month + 1);
    const int count = std::clamp(static_cast<int>(std::ceil(hours)), 1, 72);
    for (int day = first; day < end; day += 24) {
        double sum = 0.0;
        for (int i = 0; i < count; ++i) {
            const int h = (day + static_cast<int>(from.hour) + i) % 8760;
            sum += model.input->mean_front_w_m2(static_cast<std::size_t>(h));
        }
        days.push_back(sum / count);
    }
    std::sort(days.begin(), days.end());
    return LightRange{quantile(days, tenth), quantile(days, 0.5), quantile(days, 1.0 - tenth)};
}

std::vector<Band> start_bands(const std::array<StartBand, start_quantities>& bands) {
    struct Unit {
        const char* unit;
        int decimals;
    };
    static constexpr std::array<Unit, start_quantities> units{
        {{"deg C", 1}, {"bar", 2}, {"deg C", 1}, {"bar", 2}, {"A", 1}}};
    std::vector<Band> out;
    for (std::size_t i = 0; i < start_quantities; ++i)
        out.push_back({text_of(static_cast<StartQuantity>(i)), units[i].unit, units[i].decimals, bands[i].low,
                       bands[i].mid, bands[i].high, bands[i].read});
    return out;
}

Result<HeatingSets> HeatingSets::make(const season::Input& input) {
    HeatingSets out;
    season::Input bare = without_hours(input);
    for (const ModelVariation& by : {ModelVariation{}, better_set, poorer_set}) {
        season::Input set = moved(bare, by);
        auto pump = heatpump::HeatPump::make(set.block, *set.refrigerant);
        if (!pump) return pump.problems();
        out.sets_.push_back({std::move(set), std::move(pump.value())});
    }
    return out;
}

HeatingHours HeatingSets::hours(double from_c, double to_c, const season::WarmUpConditions& at,
                                const LightRange& light) const {
    HeatingHours out;
    const auto run = [&](const Set& set, double light_w_m2, double air_k) -> double {
        season::Input input = set.input;
        input.demand.set_point_c = to_c;
        season::WarmUpConditions c = at;
        c.start_c = from_c;
        c.light_w_m2 = light_w_m2;
        c.air_c += air_k;
        const Result<season::WarmUp> warm = season::warm_up(input, set.pump, c, quarter_hours());
        if (!warm) {
            out.why_not = text_of(warm.problems());
            return 0.0;
        }
        if (!warm.value().reached) out.why_not = warm.value().why_not;
        return warm.value().reached ? warm.value().hours : 0.0;
    };
    out.mid = run(sets_[0], light.mid, 0.0);
    if (!(out.mid > 0.0)) return out;
    out.low = run(sets_[1], light.high, air_known_k);
    out.high = run(sets_[2], light.low, -air_known_k);
    if (!(out.low > 0.0)) out.low = out.mid;
    return out;
}

}  // namespace wg::commissioning
