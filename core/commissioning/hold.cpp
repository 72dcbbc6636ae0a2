#include "core/commissioning/hold.h"

#include <algorithm>
#include <cmath>

#include "core/commissioning/nitrogen.h"
#include "core/quantity/constants.h"

namespace wg::commissioning {
namespace {

constexpr double pa_per_bar = 1e5;

// A limit of error is a rectangle (JCGM 100:2008, 4.3.7): its standard deviation is the limit over root 3.
constexpr double rectangle = 0.57735026918962576;
// A sound hold goes beyond two standard deviations on this side in one case of forty (coverage factor of JCGM 100:2008,
// G.6.6); a leak of the size told is missed in one of twenty (decision and detection as in ISO 11843-1).
constexpr double for_decision = 2.0, for_detection = 1.645;
// Gauges read over the air, whose pressure goes on its own: what it moves by in the hold, standard deviation; common
// practice of forecasters for temperate latitudes, no published source.
constexpr double air_bar_root_hour = 0.0015, air_bar_most = 0.010;
constexpr double least_drive_bar = 0.01;  // over the air: below it all is lost, and the leak at least that large

/// Amount of gas for one bar and litre, up to a constant: sum of V/(Z T).
double capacity(double pressure_bar_abs, double share, double plate_c, double indoors_c) {
    const double p = pressure_bar_abs * pa_per_bar;
    return share / (nitrogen_compressibility(p, plate_c) * kelvin(plate_c)) +
           (1.0 - share) / (nitrogen_compressibility(p, indoors_c) * kelvin(indoors_c));
}

struct Temperatures {
    double start_plate_c, start_indoors_c, end_plate_c, end_indoors_c;
};

double expected_bar(const HoldTest& t, double start_bar, double share, const Temperatures& at) {
    return tight_pressure_bar(start_bar, t.air_pressure_bar, std::clamp(share, 0.0, 1.0), at.start_plate_c,
                              at.start_indoors_c, at.end_plate_c, at.end_indoors_c);
}

/// Standard deviation of the expected less the read pressure.
double deviation_bar(const HoldTest& t, const Temperatures& at, double expected) {
    const HoldInstruments& i = t.instruments;
    double squares = i.gauge_bar * i.gauge_bar;  // at the end
    const auto add = [&](double moved) { squares += (moved - expected) * (moved - expected); };
    add(expected_bar(t, t.start.gauge_bar + i.gauge_bar, t.outdoors_share, at));
    for (double Temperatures::*which : {&Temperatures::start_plate_c, &Temperatures::start_indoors_c,
                                        &Temperatures::end_plate_c, &Temperatures::end_indoors_c}) {
        Temperatures moved = at;
        moved.*which += i.thermometer_k;
        add(expected_bar(t, t.start.gauge_bar, t.outdoors_share, moved));
    }
    // Towards the middle, so that a share near 0 or 1 is varied too.
    const double other = t.outdoors_share + (t.outdoors_share > 0.5 ? -i.share : i.share);
    add(expected_bar(t, t.start.gauge_bar, other, at));
    const double air = std::min(air_bar_root_hour * std::sqrt(t.hours), air_bar_most);
    return std::sqrt(squares * rectangle * rectangle + air * air);
}

bool plausible(double c) {
    return std::isfinite(c) && c > -40.0 && c < 90.0;
}

}  // namespace

double tight_pressure_bar(double start_bar_gauge, double air_pressure_bar, double outdoors_share, double start_plate_c,
                          double start_indoors_c, double end_plate_c, double end_indoors_c) {
    const double start = start_bar_gauge + air_pressure_bar;
    const double amount = start * capacity(start, outdoors_share, start_plate_c, start_indoors_c);
    double end = start;
    for (int i = 0; i < 20; ++i)
        end = amount / capacity(end, outdoors_share, end_plate_c, end_indoors_c);
    return end - air_pressure_bar;
}

double leak_g_year(double nitrogen_pa_m3_s, double pressure_bar_abs, double air_pressure_bar, double nitrogen_c) {
    constexpr double refrigerant_bar = 5.717, refrigerant_viscosity = 11.62e-6, refrigerant_kg_mol = 0.10203;
    constexpr double gas_constant = 8.314462618, at_k = 293.15, year_s = 365.25 * 86400.0;
    const double drive = pressure_bar_abs * pressure_bar_abs - air_pressure_bar * air_pressure_bar;
    if (!(drive > 0.0)) return 0.0;
    const double refrigerant_pa_m3_s = nitrogen_pa_m3_s * nitrogen_viscosity_pa_s(nitrogen_c) / refrigerant_viscosity *
                                       (refrigerant_bar * refrigerant_bar - air_pressure_bar * air_pressure_bar) /
                                       drive;
    return refrigerant_pa_m3_s * refrigerant_kg_mol / (gas_constant * at_k) * year_s * 1000.0;
}

HoldResult judge(const HoldTest& t) {
    HoldResult r;
    const bool known = t.start.plate_c && t.start.indoors_c && t.end.plate_c && t.end.indoors_c &&
                       plausible(*t.start.plate_c) && plausible(*t.start.indoors_c) && plausible(*t.end.plate_c) &&
                       plausible(*t.end.indoors_c);
    if (!known || t.start.plate_in_sun || t.end.plate_in_sun || !(t.hours > 0.0) || !(t.volume_l > 0.0) ||
        !(t.start.gauge_bar > 0.0) || !(t.end.gauge_bar > -t.air_pressure_bar))
        return r;
    const Temperatures at{*t.start.plate_c, *t.start.indoors_c, *t.end.plate_c, *t.end.indoors_c};
    r.expected_bar = expected_bar(t, t.start.gauge_bar, t.outdoors_share, at);
    const double before =
        t.outdoors_share / kelvin(at.start_plate_c) + (1.0 - t.outdoors_share) / kelvin(at.start_indoors_c);
    const double after =
        t.outdoors_share / kelvin(at.end_plate_c) + (1.0 - t.outdoors_share) / kelvin(at.end_indoors_c);
    r.ideal_gas_bar = (t.start.gauge_bar + t.air_pressure_bar) * before / after - t.air_pressure_bar;
    const double deviation = deviation_bar(t, at, r.expected_bar);
    r.spread_bar = for_decision * deviation;
    r.missing_bar = r.expected_bar - t.end.gauge_bar;

    const double gas_c = t.outdoors_share * at.end_plate_c + (1.0 - t.outdoors_share) * at.end_indoors_c;
    const double air = t.air_pressure_bar, from = std::max(r.expected_bar, least_drive_bar) + air;
    // Laminar: dp/dt = -k (p^2 - air^2), so ln((p - air)/(p + air)) falls in a straight line, however much is lost.
    const auto rate = [&](double lost_bar, double hours) {
        const double to = std::max(r.expected_bar - lost_bar, least_drive_bar) + air;
        const double fallen = std::log((from - air) / (from + air) * (to + air) / (to - air));
        const double bar_s = fallen / (2.0 * air * hours * 3600.0) * (from * from - air * air);
        return leak_g_year(bar_s * pa_per_bar * t.volume_l * 1e-3, from, air, gas_c);
    };
    const double missing = std::max(0.0, r.missing_bar);
    r.detectable_g_year = rate((for_decision + for_detection) * deviation, t.hours);
    r.leak_g_year = rate(missing, t.hours);
    // What was read may be by luck more than there is: a leak that would hide behind it is not ruled out.
    r.ruled_out_g_year = rate(missing + for_detection * deviation, t.hours);
    if (r.missing_bar > r.spread_bar) {
        r.verdict = HoldVerdict::leak;
    } else if (r.missing_bar < -r.spread_bar) {
        r.verdict = HoldVerdict::gained;
    } else if (r.ruled_out_g_year > t.leak_limit_g_year) {
        r.verdict = HoldVerdict::wait_longer;
        HoldTest longer = t;  // the air moves on meanwhile: a few turns, each nearer from below
        for (int turn = 0; turn < 20; ++turn) {
            const double lost = missing + for_detection * deviation_bar(longer, at, r.expected_bar);
            longer.hours *= rate(lost, longer.hours) / t.leak_limit_g_year;
        }
        r.hours_needed = longer.hours;
    } else {
        r.verdict = HoldVerdict::tight;
    }
    return r;
}

}  // namespace wg::commissioning
