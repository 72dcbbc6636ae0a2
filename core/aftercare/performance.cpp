#include "core/aftercare/performance.h"

#include <algorithm>
#include <cmath>

#include "core/commissioning/commissioning.h"
#include "core/quantity/text.h"

namespace wg::aftercare {
namespace {

constexpr int meter_days_apart = 2;
constexpr double heat_capacity_kwh_m3_k = 1.163;  // of water: 4.187 MJ/(m3 K), 1000 kg/m3
// With the use metered the draws are known and only the set is left: plate, compressor and condenser move the factor by
// about this much (docs/handbook/ranges.md has their sizes). The plan's own range of the factor may be narrower, since
// in it more draws make up for a poorer set.
constexpr double least_metered_share = 0.12;
constexpr double heat_of_water_share = 0.10;  // of heat reckoned from a volume
constexpr double least_ratio = 0.2, most_ratio = 3.0;

struct MeterReading {
    CivilDate on;
    double value = 0.0;
};

std::vector<MeterReading> readings_of(const std::vector<Reading>& standing, ReadingKind kind) {
    std::vector<MeterReading> out;
    for (const Reading& reading : standing) {
        const std::optional<CivilDate> on = day_of(reading);
        if (reading.kind == kind && on && std::isfinite(reading.value)) out.push_back({*on, reading.value});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const MeterReading& a, const MeterReading& b) { return before(a.on, b.on); });
    return out;
}

std::optional<double> value_near(const std::vector<MeterReading>& readings, CivilDate day) {
    const MeterReading* best = nullptr;
    for (const MeterReading& r : readings) {
        const int off = std::abs(days_between(r.on, day));
        if (off <= meter_days_apart && (best == nullptr || off < std::abs(days_between(best->on, day)))) best = &r;
    }
    return best != nullptr ? std::optional<double>(best->value) : std::nullopt;
}

std::optional<double> amount_between(const std::vector<MeterReading>& readings, CivilDate from, CivilDate to) {
    const std::optional<double> first = value_near(readings, from);
    const std::optional<double> last = value_near(readings, to);
    if (!first || !last || *last < *first) return std::nullopt;
    return *last - *first;
}

std::size_t place_in_year(CivilDate date) {
    const int day = date.month == 2 ? std::min(date.day, 28) : date.day;
    return static_cast<std::size_t>(day_of_year({2027, date.month, day}) - 1);  // 2027 has no 29 February
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool names_year(const std::string& text, int year) {
    const std::string digits = std::to_string(year);
    for (std::size_t at = text.find(digits); at != std::string::npos; at = text.find(digits, at + 1)) {
        const bool opens = at == 0 || !is_digit(text[at - 1]);
        const std::size_t end = at + digits.size();
        if (opens && (end == text.size() || !is_digit(text[end]))) return true;
    }
    return false;
}

std::string percent_words(double share) {
    return fixed(100.0 * std::abs(share), 0) + " %";
}

void tell_weather(const std::string& weather_text, PerformanceCheck& out) {
    const int all = out.metered.days();
    const int named = days_named(weather_text, out.metered.from, out.metered.to);
    out.weather_of_period = all > 0 && named == all;
    if (out.weather_of_period) {
        out.weather_words = "The weather file names the period.";
    } else if (named > 0) {
        out.weather_words = "The weather file names the year of " + std::to_string(named) + " of the " +
                            std::to_string(all) + " days; for the others its days stand in.";
    } else {
        out.weather_words =
            "The weather file does not say that it is of this period: what it holds for the same days "
            "of the year stands in. A warm or dull year moves the use by several per cent.";
    }
}

}  // namespace

const char* text_of(Performance performance) noexcept {
    switch (performance) {
        case Performance::as_expected: return "as expected";
        case Performance::more: return "somewhat more";
        case Performance::clearly_more: return "clearly more";
        case Performance::less: return "somewhat less";
        case Performance::clearly_less: return "clearly less";
        case Performance::cannot_tell: return "cannot tell";
    }
    return "cannot tell";
}

std::vector<Metered> metered_periods(const std::vector<Reading>& record) {
    const std::vector<Reading> standing = commissioning::standing(record);
    const std::vector<MeterReading> electricity = readings_of(standing, ReadingKind::electricity_meter);
    const std::vector<MeterReading> heat = readings_of(standing, ReadingKind::heat_meter);
    const std::vector<MeterReading> water = readings_of(standing, ReadingKind::water_meter);
    std::vector<Metered> out;
    const auto add = [&](const MeterReading& first, const MeterReading& last) {
        out.push_back({first.on, last.on, last.value - first.value, amount_between(heat, first.on, last.on),
                       amount_between(water, first.on, last.on)});
    };
    bool whole = electricity.size() > 2;
    for (std::size_t i = 1; i < electricity.size(); ++i) {
        if (electricity[i].value < electricity[i - 1].value) whole = false;
        if (electricity[i].on == electricity[i - 1].on || electricity[i].value < electricity[i - 1].value) continue;
        add(electricity[i - 1], electricity[i]);
    }
    if (whole && out.size() > 1) add(electricity.front(), electricity.back());
    return out;
}

double heat_of_water_kwh(double water_m3, const Demand& demand) noexcept {
    return water_m3 * heat_capacity_kwh_m3_k * std::max(0.0, demand.set_point_c - demand.cold_mean_c);
}

std::optional<double> heat_read_kwh(const Metered& metered, const Demand& demand) noexcept {
    if (metered.heat_kwh) return metered.heat_kwh;
    if (metered.water_m3) return heat_of_water_kwh(*metered.water_m3, demand);
    return std::nullopt;
}

std::optional<DayModel> day_model(const plan::Plan& plan) {
    constexpr std::size_t hours_a_day = 24;
    if (!plan.has_yield || !plan.season.hours) return std::nullopt;
    const season::HourSeries& hours = *plan.season.hours;
    const std::size_t all = DayModel::days * hours_a_day;
    if (hours.electric_w.size() < all || hours.drawn_w.size() < all) return std::nullopt;
    DayModel model;
    for (std::size_t h = 0; h < all; ++h) {
        model.electricity_kwh[h / hours_a_day] += static_cast<double>(hours.electric_w[h]) * 1e-3;
        model.drawn_kwh[h / hours_a_day] += static_cast<double>(hours.drawn_w[h]) * 1e-3;
    }
    const auto share = [](double part, double whole) { return part > 0.0 && whole > 0.0 ? part / whole : 1.0; };
    const plan::Ranged& used = plan.figures.electricity_kwh;
    const plan::Ranged& factor = plan.figures.seasonal_factor;
    model.low_share = std::min(1.0, share(used.low, used.mid));
    model.high_share = std::max(1.0, share(used.high, used.mid));
    // With the heat known, electricity is heat over factor: only the factor's range is left.
    model.low_share_metered = std::min(1.0 - least_metered_share, share(factor.mid, factor.high));
    model.high_share_metered = std::max(1.0 + least_metered_share, share(factor.mid, factor.low));
    return model;
}

double sum_over(const std::array<double, DayModel::days>& values, CivilDate from, CivilDate to) noexcept {
    double sum = 0.0;
    const int days = days_between(from, to);
    for (int i = 0; i < days; ++i)
        sum += values[place_in_year(days_after(from, i))];
    return sum;
}

Demand scaled_draws(Demand demand, double ratio) noexcept {
    if (std::isfinite(ratio) && ratio > 0.0) demand.scale = std::clamp(demand.scale * ratio, least_ratio, most_ratio);
    return demand;
}

int days_named(const std::string& text, CivilDate from, CivilDate to) noexcept {
    int days = 0;
    for (int year = from.year; year <= to.year; ++year) {
        if (!names_year(text, year)) continue;
        const CivilDate first = before(from, {year, 1, 1}) ? CivilDate{year, 1, 1} : from;
        const CivilDate end = before({year + 1, 1, 1}, to) ? CivilDate{year + 1, 1, 1} : to;
        days += std::max(0, days_between(first, end));
    }
    return days;
}

PerformanceCheck check_performance(const Metered& metered, const DayModel& model, const Demand& demand,
                                   const std::string& weather_text, bool use_metered) {
    PerformanceCheck out;
    out.metered = metered;
    out.use_metered = use_metered;
    out.mid_kwh = sum_over(model.electricity_kwh, metered.from, metered.to);
    double down = 1.0 - (use_metered ? model.low_share_metered : model.low_share);
    double up = (use_metered ? model.high_share_metered : model.high_share) - 1.0;
    if (use_metered && !metered.heat_kwh) {
        down = std::hypot(down, heat_of_water_share);
        up = std::hypot(up, heat_of_water_share);
    }
    out.low_kwh = out.mid_kwh * (1.0 - down);
    out.high_kwh = out.mid_kwh * (1.0 + up);
    out.drawn_expected_kwh = sum_over(model.drawn_kwh, metered.from, metered.to);
    out.factor_expected = out.mid_kwh > 0.0 ? out.drawn_expected_kwh / out.mid_kwh : 0.0;
    out.heat_kwh = heat_read_kwh(metered, demand);
    if (out.heat_kwh && metered.electricity_kwh > 0.0) out.factor_read = *out.heat_kwh / metered.electricity_kwh;
    tell_weather(weather_text, out);
    if (metered.days() < least_days) {
        out.words = "only " + std::to_string(metered.days()) +
                    " days: too short to judge, read the meter again after " + std::to_string(least_days) +
                    " days or more";
        return out;
    }
    if (out.mid_kwh <= 0.0) {
        out.words = "the model uses nothing on these days: nothing to hold the meter against";
        return out;
    }
    const double off = metered.electricity_kwh / out.mid_kwh - 1.0;
    const std::string head = std::abs(off) < 0.005 ? "used as much as expected for this weather"
                                                   : "used " + percent_words(off) + (off > 0.0 ? " more" : " less") +
                                                         " than expected for this weather";
    const double read = metered.electricity_kwh;
    const double watch_kwh = watch_share * out.mid_kwh;
    if (read >= out.low_kwh && read <= out.high_kwh) {
        out.verdict = Performance::as_expected;
        out.words = head + ": within what is usual";
        return out;
    }
    if (read > out.high_kwh) {
        const bool clear = read > out.high_kwh + watch_kwh;
        out.verdict = clear ? Performance::clearly_more : Performance::more;
        out.words = head + (clear ? ": clearly more" : ": a little beyond what is usual, read again in a month");
        if (!use_metered)
            out.look_at.emplace_back("More hot water used than planned: ask, or read the water meter at both ends");
        out.look_at.emplace_back(
            "The immersion heater helps out too often: its setting, and whether the pump runs at all");
        out.look_at.emplace_back("Set-point, hygiene run and circulation as they are set now");
        out.look_at.emplace_back("Something before the plate, on it, or grown up since: leaves, snow, a tree");
        out.look_at.emplace_back("The circuit: take the running readings and look at how they moved");
        return out;
    }
    const bool clear = read < out.low_kwh - watch_kwh;
    out.verdict = clear ? Performance::clearly_less : Performance::less;
    out.words = head + (clear ? ": clearly less" : ": a little beyond what is usual, read again in a month");
    if (!use_metered) out.look_at.emplace_back("Less hot water used than planned: away, fewer people");
    out.look_at.emplace_back("The meter does not count everything: an immersion heater on another circuit");
    out.look_at.emplace_back("Another source heats the water too: a boiler, a stove");
    out.look_at.emplace_back("The set-point was lowered: measure the water at the tap");
    return out;
}

Result<PerformanceCheck> performance_of(const Job& job, const plan::Reference& reference, const Metered& metered,
                                        const std::string& weather_text) {
    const auto modelled = [&reference](const Job& planned, bool ranges) -> Result<DayModel> {
        plan::Options options;
        options.ranges = ranges;
        Result<plan::Plan> plan = plan::plan(planned, reference, options);
        if (!plan) return plan.problems();
        std::optional<DayModel> model = day_model(plan.value());
        if (!model)
            return Problem{"performance", "the plan has no year of operation", "Clear the stops of the plan first"};
        return *model;
    };
    Job as_metered = job;
    bool use_metered = false;
    if (const std::optional<double> heat = heat_read_kwh(metered, job.demand); heat && *heat > 0.0) {
        const Result<DayModel> first = modelled(job, false);
        if (!first) return first.problems();
        const double drawn = sum_over(first.value().drawn_kwh, metered.from, metered.to);
        if (drawn > 0.0) {
            as_metered.demand = scaled_draws(job.demand, *heat / drawn);
            // Beyond what the model takes, the use stays the planned one.
            use_metered = std::abs(as_metered.demand.scale - job.demand.scale * *heat / drawn) < 1e-9;
            if (!use_metered) as_metered.demand = job.demand;
        }
    }
    const Result<DayModel> model = modelled(as_metered, true);
    if (!model) return model.problems();
    return check_performance(metered, model.value(), job.demand, weather_text, use_metered);
}

}  // namespace wg::aftercare
