#include "core/commissioning/vacuum_curve.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/commissioning/hold.h"
#include "core/heatpump/moist_air.h"
#include "core/quantity/constants.h"

namespace wg::commissioning {
namespace {

constexpr double least_verdict_c = 5.0;  // common practice, no published source
constexpr double vapour_band = 0.25;     // within this share of the vapour pressure: moisture
constexpr std::size_t least_readings = 4;

/// Straight part and swell by their factors: p = a + b t + s (1 - exp(-t/tau)).
struct Fit {
    double a = 0.0, b = 0.0, s = 0.0, tau = 0.0;
    double squares = 0.0;
};

/// Solves the normal equations of up to three unknowns by elimination with the greatest pivot; false when they do not
/// determine them.
bool solve(std::array<std::array<double, 4>, 3>& m, std::size_t n, std::array<double, 3>& x) {
    for (std::size_t c = 0; c < n; ++c) {
        std::size_t best = c;
        for (std::size_t r = c + 1; r < n; ++r)
            if (std::fabs(m[r][c]) > std::fabs(m[best][c])) best = r;
        if (!(std::fabs(m[best][c]) > 1e-12)) return false;
        std::swap(m[c], m[best]);
        for (std::size_t r = 0; r < n; ++r) {
            if (r == c) continue;
            const double k = m[r][c] / m[c][c];
            for (std::size_t j = c; j <= n; ++j)
                m[r][j] -= k * m[c][j];
        }
    }
    for (std::size_t c = 0; c < n; ++c)
        x[c] = m[c][n] / m[c][c];
    return true;
}

/// Least squares with the columns asked for; tau 0: without the swell.
Fit fit_with(const std::vector<VacuumReading>& rise, bool straight, double tau) {
    const auto column = [&](std::size_t c, double t) {
        if (c == 0) return 1.0;
        if (straight && c == 1) return t;
        return 1.0 - std::exp(-t / tau);
    };
    const std::size_t n = 1 + (straight ? 1U : 0U) + (tau > 0.0 ? 1U : 0U);
    std::array<std::array<double, 4>, 3> m{};
    for (const VacuumReading& r : rise)
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t j = 0; j < n; ++j)
                m[i][j] += column(i, r.minutes) * column(j, r.minutes);
            m[i][n] += column(i, r.minutes) * r.pa;
        }
    Fit f;
    std::array<double, 3> x{};
    f.squares = HUGE_VAL;
    if (!solve(m, n, x)) return f;
    f.a = x[0];
    if (straight) f.b = x[1];
    if (tau > 0.0) {
        f.s = x[n - 1];
        f.tau = tau;
    }
    f.squares = 0.0;
    for (const VacuumReading& r : rise) {
        const double model = f.a + f.b * r.minutes + (f.tau > 0.0 ? f.s * (1.0 - std::exp(-r.minutes / f.tau)) : 0.0);
        f.squares += (r.pa - model) * (r.pa - model);
    }
    return f;
}

/// The best settling time among a fine ladder; a swell that falls or a straight part that falls is not physical.
Fit best_swell(const std::vector<VacuumReading>& rise, bool straight, double span_min) {
    Fit best;
    best.squares = HUGE_VAL;
    constexpr int steps = 240;
    for (int i = 0; i <= steps; ++i) {
        const double tau = span_min * std::pow(10.0, -1.7 + 2.0 * i / steps);  // a fiftieth to twice the wait
        const Fit f = fit_with(rise, straight, tau);
        if (f.s < 0.0 || f.b < 0.0) continue;
        if (f.squares < best.squares) best = f;
    }
    return best;
}

}  // namespace

double VacuumResult::at(double minutes) const noexcept {
    const double swell = settle_min > 0.0 ? swell_pa * (1.0 - std::exp(-minutes / settle_min)) : 0.0;
    return start_pa + slope_pa_min * minutes + swell;
}

double water_vapour_pa(double t_c) noexcept {
    return t_c >= 0.0 ? heatpump::vapour_pressure_over_water_pa(t_c) : heatpump::vapour_pressure_over_ice_pa(t_c);
}

VacuumResult judge(const VacuumTest& test) {
    VacuumResult r;
    std::vector<VacuumReading> rise = test.rise;
    r.vapour_pa = water_vapour_pa(test.coldest_c);
    const auto cannot_be = [](const VacuumReading& p) {
        return !std::isfinite(p.minutes) || p.minutes < 0.0 || !(p.pa > 0.0) || !(p.pa < 2.0 * standard_pressure_pa);
    };
    if (!std::isfinite(test.coldest_c) || test.coldest_c < -60.0 || test.coldest_c > 90.0 ||
        std::any_of(rise.begin(), rise.end(), cannot_be)) {
        r.verdict = VacuumVerdict::not_true;
        return r;
    }
    std::stable_sort(rise.begin(), rise.end(),
                     [](const VacuumReading& a, const VacuumReading& b) { return a.minutes < b.minutes; });
    if (rise.size() < 2) return r;
    const double span = rise.back().minutes - rise.front().minutes;
    if (!(span > 0.0)) return r;

    const double noise = test.gauge_share * rise.back().pa + test.gauge_pa;
    const double n = static_cast<double>(rise.size());
    Fit chosen = fit_with(rise, true, 0.0);
    const auto clearly_better = [&](const Fit& f) {
        return f.squares < 0.25 * chosen.squares && std::sqrt(chosen.squares / n) > 0.2 * test.gauge_pa;
    };
    if (rise.size() >= least_readings) {
        const Fit swell = best_swell(rise, false, span);
        if (clearly_better(swell)) chosen = swell;
        if (rise.size() > least_readings) {
            const Fit both = best_swell(rise, true, span);
            if (clearly_better(both)) chosen = both;
        }
    }
    r.start_pa = chosen.a;
    r.slope_pa_min = chosen.b;
    r.swell_pa = chosen.s;
    r.settle_min = chosen.tau;
    r.residual_pa = std::sqrt(chosen.squares / n);
    r.end_pa = r.at(rise.back().minutes);
    r.levels_at_pa = r.start_pa + r.swell_pa;

    // Air into the vacuum by the slope, driven by one atmosphere: turned by the same laminar path into refrigerant out.
    // (p^2 of vacuum is nothing against that of the air.)
    const double throughput = std::max(0.0, r.slope_pa_min) / 60.0 * test.volume_l * 1e-3;
    const double air_bar = standard_pressure_pa * 1e-5;
    r.leak_g_year = leak_g_year(throughput, std::sqrt(2.0) * air_bar, air_bar, 20.0);

    if (rise.size() < least_readings || span < test.least_minutes) return r;
    if (test.coldest_c < least_verdict_c) {
        r.verdict = VacuumVerdict::too_cold;
        return r;
    }
    const double risen_by_slope = r.slope_pa_min * span;
    const bool rises_on = risen_by_slope > noise && risen_by_slope > 0.5 * (r.end_pa - rise.front().pa);
    const double level = r.settle_min > 0.0 ? r.levels_at_pa : r.end_pa;
    if (r.end_pa <= test.limit_pa && !(rises_on && r.at(2.0 * span) > test.limit_pa)) {
        r.verdict = VacuumVerdict::dry_and_tight;
    } else if (!rises_on && std::fabs(level - r.vapour_pa) <= vapour_band * r.vapour_pa) {
        r.verdict = VacuumVerdict::moisture;
    } else if (!rises_on && level < r.vapour_pa) {
        r.verdict = VacuumVerdict::outgassing;
    } else {
        r.verdict = VacuumVerdict::leak;
    }
    return r;
}

}  // namespace wg::commissioning
