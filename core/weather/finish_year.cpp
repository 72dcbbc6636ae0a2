// Closes the gaps of what a reader gathered, or refuses them.

#include <cmath>

#include "core/quantity/text.h"
#include "core/sun/extraterrestrial.h"
#include "core/sun/year.h"
#include "core/weather/diffuse_split.h"
#include "core/weather/humidity.h"
#include "core/weather/raw_year.h"

namespace wg::weather::detail {
namespace {

constexpr std::size_t longest_gap_h = 6;
constexpr std::size_t longest_light_gap_h = 3;  // common practice, no published source
constexpr double most_global_w_m2 = 1500.0;
constexpr double most_diffuse_w_m2 = 1000.0;
constexpr double low_sun = 0.1;  // sine of the sun's height, about 6 deg

bool is_missing(double value) {
    return std::isnan(value);
}

std::size_t count_missing(const std::vector<double>& series) {
    std::size_t count = 0;
    for (const double v : series)
        count += is_missing(v) ? 1U : 0U;
    return count;
}

// Length of the longest run of missing values; `start` gets its first row.
std::size_t longest_run(const std::vector<double>& series, std::size_t& start) {
    std::size_t longest = 0;
    std::size_t run = 0;
    for (std::size_t i = 0; i < series.size(); ++i) {
        run = is_missing(series[i]) ? run + 1 : 0;
        if (run > longest) {
            longest = run;
            start = i + 1 - run;
        }
    }
    return longest;
}

// Straight line over every gap; gaps at an end take the nearest value.
void interpolate(std::vector<double>& series) {
    const std::size_t n = series.size();
    std::size_t known = n;
    for (std::size_t i = 0; i < n; ++i) {
        if (is_missing(series[i])) continue;
        const std::size_t gap_start = known == n ? 0 : known + 1;
        const double from = known == n ? series[i] : series[known];
        const double steps = static_cast<double>(i - gap_start + 1);
        for (std::size_t k = gap_start; k < i; ++k) {
            series[k] = from + (series[i] - from) * static_cast<double>(k - gap_start + 1) / steps;
        }
        known = i;
    }
    for (std::size_t k = known + 1; known < n && k < n; ++k)
        series[k] = series[known];
}

// Values that must be there: gaps of up to six hours are bridged, longer ones refused.
void require(std::vector<double>& series, const char* name, RawYear& raw, Problems& problems) {
    const std::size_t gaps = count_missing(series);
    if (gaps == 0) return;
    std::size_t start = 0;
    const std::size_t run = longest_run(series, start);
    if (run > longest_gap_h) {
        problems.add(raw.line_of_row[start], 1,
                     std::string(name) + " is missing for " + std::to_string(run) + " hours in a row",
                     "Choose a file without long gaps, or fill the gap from a neighbouring station");
        return;
    }
    interpolate(series);
    raw.year.remarks.push_back(std::string(name) + ": " +
                               counted(static_cast<long>(gaps), "missing hour", "missing hours") +
                               " filled by a straight line.");
}

// Series that improve the result but are not needed: dropped when the gaps are long.
void optional_series(std::vector<double>& series, const char* name, const char* instead, RawYear& raw) {
    const std::size_t gaps = count_missing(series);
    if (gaps == 0) return;
    std::size_t start = 0;
    if (longest_run(series, start) > longest_gap_h) {
        if (gaps < series.size()) {
            raw.year.remarks.push_back(std::string(name) + " has gaps of more than six hours and is left out; " +
                                       instead + ".");
        }
        series.clear();
        return;
    }
    interpolate(series);
}

void finish_humidity(RawYear& raw, Problems& problems) {
    long from_humidity = 0;
    for (std::size_t i = 0; i < raw.rows(); ++i) {
        if (!is_missing(raw.dew_point[i]) || is_missing(raw.humidity[i]) || is_missing(raw.air[i])) continue;
        raw.dew_point[i] = dew_point_c(raw.air[i], 0.01 * std::fmin(100.0, raw.humidity[i]));
        ++from_humidity;
    }
    if (from_humidity > 0) {
        raw.year.remarks.push_back("Dew point of " + counted(from_humidity, "hour", "hours") +
                                   " worked out from relative humidity.");
    }
    require(raw.dew_point, "dew point", raw, problems);
    if (!problems.empty()) return;
    long lowered = 0;
    double most_k = 0.0;
    for (std::size_t i = 0; i < raw.rows(); ++i) {
        const double over_k = raw.dew_point[i] - raw.air[i];
        if (over_k <= 0.0) continue;
        raw.dew_point[i] = raw.air[i];
        ++lowered;
        most_k = std::fmax(most_k, over_k);
    }
    if (lowered > 0) {
        raw.year.remarks.push_back("Dew point above air temperature in " + counted(lowered, "hour", "hours") +
                                   " (by up to " + fixed(most_k, 1) + " K) lowered to it.");
    }
}

void finish_pressure(RawYear& raw) {
    const std::size_t gaps = count_missing(raw.pressure);
    if (gaps == 0) return;
    std::size_t start = 0;
    if (longest_run(raw.pressure, start) <= longest_gap_h) {
        interpolate(raw.pressure);
    } else {
        const double standard_pa = sun::standard_pressure_pa_at(raw.year.altitude_m);
        for (double& p : raw.pressure) {
            if (is_missing(p)) p = standard_pa;
        }
    }
    raw.year.remarks.push_back("Air pressure: " + counted(static_cast<long>(gaps), "missing hour", "missing hours") +
                               " taken from neighbours or from the standard atmosphere at the station's height.");
}

struct LightCounts {
    long erbs = 0, beam = 0, diffuse = 0, global = 0, night = 0, bridged = 0;
};

// Light above the atmosphere on the horizontal, mean over the hour; 0 with too low a sun to tell a clearness.
double above_atmosphere_w_m2(const sun::YearSun& sun, std::size_t i) {
    if (sun.up[i] * sun.up_share[i] < low_sun) return 0.0;
    return sun.extraterrestrial_normal_w_m2[i] * sun.up[i] * sun.up_share[i];
}

bool no_light_known(const RawYear& raw, std::size_t i) {
    return is_missing(raw.global[i]) && (is_missing(raw.beam[i]) || is_missing(raw.diffuse[i]));
}

// Up to three hours without light by day take the clearness of the hours on either side.
long bridge_light(RawYear& raw, const sun::YearSun& sun) {
    long bridged = 0;
    for (std::size_t i = 0; i < raw.rows();) {
        if (!no_light_known(raw, i) || sun.up_share[i] == 0.0) {
            ++i;
            continue;
        }
        std::size_t end = i;
        while (end < raw.rows() && no_light_known(raw, end) && sun.up_share[end] > 0.0)
            ++end;
        const auto clearness = [&](std::size_t k) {
            const double above = k < raw.rows() ? above_atmosphere_w_m2(sun, k) : 0.0;
            return above > 0.0 ? std::fmin(1.0, raw.global[k] / above) : missing;
        };
        double before = i > 0 ? clearness(i - 1) : missing;
        double after = clearness(end);
        if (is_missing(before)) before = after;
        if (is_missing(after)) after = before;
        if (end - i <= longest_light_gap_h && !is_missing(before)) {
            for (std::size_t k = i; k < end; ++k) {
                const double along = static_cast<double>(k - i + 1) / static_cast<double>(end - i + 1);
                raw.global[k] = (before + (after - before) * along) * sun.extraterrestrial_normal_w_m2[k] *
                                std::fmax(0.0, sun.up[k]) * sun.up_share[k];
                // One part alone was not read together with this sum.
                raw.beam[k] = raw.diffuse[k] = missing;
                ++bridged;
            }
        }
        i = end;
    }
    return bridged;
}

// What was worked out from other parts can come out beyond what a year may hold.
void check_worked_out(const RawYear& raw, std::size_t i, Problems& problems) {
    if (raw.global[i] <= most_global_w_m2 && raw.diffuse[i] <= most_diffuse_w_m2) return;
    problems.add(raw.line_of_row[i], 1,
                 "global, beam and diffuse do not fit together: worked out from one another, global is " +
                     fixed(raw.global[i], 0) + " and diffuse " + fixed(raw.diffuse[i], 0) + " W/m2",
                 "Correct the values of this hour");
}

void say(std::vector<std::string>& remarks, long count, const char* text) {
    if (count > 0) remarks.push_back("Light: " + counted(count, "hour", "hours") + " " + text);
}

void finish_light(RawYear& raw, Problems& problems) {
    if (count_missing(raw.global) + count_missing(raw.beam) + count_missing(raw.diffuse) == 0) return;
    const Year& year = raw.year;
    const sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                            year.sun_minute, sun::weather_sun_year});
    LightCounts counts;
    counts.bridged = bridge_light(raw, sun);
    for (std::size_t i = 0; i < raw.rows() && !problems.full(); ++i) {
        double& global = raw.global[i];
        double& beam = raw.beam[i];
        double& diffuse = raw.diffuse[i];
        const double up = std::fmax(0.0, sun.up[i]);
        if (!is_missing(global) && !is_missing(beam) && !is_missing(diffuse)) continue;
        if (is_missing(global)) {
            if (!is_missing(beam) && !is_missing(diffuse)) {
                global = diffuse + beam * up;
                ++counts.global;
                check_worked_out(raw, i, problems);
            } else if (sun.up_share[i] == 0.0) {
                global = beam = diffuse = 0.0;
                ++counts.night;
            } else {
                problems.add(raw.line_of_row[i], 1,
                             "global light is missing with the sun up, in more than three hours or beside other gaps",
                             "Choose a file with complete light");
            }
            continue;
        }
        const Split split = split_erbs(global, sun.up[i], sun.extraterrestrial_normal_w_m2[i], sun.up_share[i]);
        if (is_missing(beam) && is_missing(diffuse)) {
            beam = split.beam_normal_w_m2;
            diffuse = split.diffuse_w_m2;
            ++counts.erbs;
        } else if (is_missing(diffuse)) {
            diffuse = std::fmax(0.0, global - beam * up);
            ++counts.diffuse;
        } else {
            // Near the horizon the difference of two small figures over a smaller one means nothing: clean air bounds
            // it.
            const double normal = sun.extraterrestrial_normal_w_m2[i];
            const double bound = up > low_sun ? normal : clean_air_beam_w_m2(up, normal, sun.up_share[i]);
            beam = up > 0.0 ? std::fmin(std::fmax(0.0, global - diffuse) / up, bound) : 0.0;
            ++counts.beam;
        }
        check_worked_out(raw, i, problems);
    }
    say(raw.year.remarks, counts.bridged, "missing by day given the clearness of the hours beside them.");
    say(raw.year.remarks, counts.erbs, "parted into beam and diffuse by Erbs 1982.");
    say(raw.year.remarks, counts.beam, "with beam worked out from global and diffuse.");
    say(raw.year.remarks, counts.diffuse, "with diffuse worked out from global and beam.");
    say(raw.year.remarks, counts.global, "with global worked out from beam and diffuse.");
    say(raw.year.remarks, counts.night, "without values at night set to 0.");
}

}  // namespace

Result<Year> finish(RawYear raw, int header_line, Problems& problems) {
    check_place(raw.year, header_line, problems);
    if (!problems.empty()) return problems.take();
    require(raw.air, "air temperature", raw, problems);
    require(raw.wind, "wind speed", raw, problems);
    finish_humidity(raw, problems);
    finish_pressure(raw);
    optional_series(raw.long_wave, "Long-wave from the sky", "sky temperature is worked out from humidity and cloud",
                    raw);
    optional_series(raw.cover, "Cloud cover", "it is worked out from the light", raw);
    finish_light(raw, problems);
    if (!problems.empty()) return problems.take();

    if (raw.small_negatives > 0) {
        raw.year.remarks.push_back("Light: " + counted(raw.small_negatives, "value", "values") +
                                   " slightly below 0 set to 0.");
    }
    Year year = std::move(raw.year);
    year.global_w_m2 = std::move(raw.global);
    year.beam_normal_w_m2 = std::move(raw.beam);
    year.diffuse_w_m2 = std::move(raw.diffuse);
    year.air_c = std::move(raw.air);
    year.dew_point_c = std::move(raw.dew_point);
    year.wind_m_s = std::move(raw.wind);
    year.pressure_pa = std::move(raw.pressure);
    year.sky_long_wave_w_m2 = std::move(raw.long_wave);
    year.sky_cover = std::move(raw.cover);
    return year;
}

}  // namespace wg::weather::detail
