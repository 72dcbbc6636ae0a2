#include "core/services/pipes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/pipework/tube.h"
#include "core/quantity/constants.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

constexpr double gravity_m_s2 = 9.80665;
constexpr double no_limit = std::numeric_limits<double>::infinity();

}  // namespace

double loading_units(Fixture kind) noexcept {
    switch (kind) {
        case Fixture::basin:
        case Fixture::bidet:
        case Fixture::wc_cistern: return 1.0;
        case Fixture::shower:
        case Fixture::kitchen_sink:
        case Fixture::washing_machine:
        case Fixture::dishwasher: return 2.0;
        case Fixture::bath: return 4.0;
        case Fixture::garden_tap: return 5.0;
    }
    return 0.0;
}

bool takes_hot(Fixture kind) noexcept {
    switch (kind) {
        case Fixture::basin:
        case Fixture::bidet:
        case Fixture::shower:
        case Fixture::bath:
        case Fixture::kitchen_sink: return true;
        case Fixture::wc_cistern:
        case Fixture::washing_machine:
        case Fixture::dishwasher:
        case Fixture::garden_tap: return false;
    }
    return false;
}

double design_flow_l_s(double units, double largest_units) noexcept {
    constexpr double unit_l_s = 0.1, joins_units = 300.0, joins_l_s = 1.7;
    if (!(units > 0.0) || !(largest_units > 0.0)) return 0.0;
    if (units >= joins_units) return std::max(joins_l_s, unit_l_s * std::sqrt(units));
    const double all = std::max(units, largest_units), alone_l_s = unit_l_s * largest_units;
    if (largest_units >= joins_units) return alone_l_s;
    const double slope = std::log(joins_l_s / alone_l_s) / std::log(joins_units / largest_units);
    return alone_l_s * std::pow(all / largest_units, slope);
}

CopperPipe copper_for(double units, double largest_units, double length_m) noexcept {
    struct Row {
        CopperPipe pipe;
        double units, largest, length_m;
    };
    static constexpr std::array<Row, 13> rows{{{{12.0, 10.0}, 1.0, no_limit, 20.0},
                                               {{12.0, 10.0}, 2.0, no_limit, 7.0},
                                               {{12.0, 10.0}, 3.0, 2.0, 5.0},
                                               {{15.0, 13.0}, 3.0, no_limit, 15.0},
                                               {{15.0, 13.0}, 4.0, no_limit, 9.0},
                                               {{15.0, 13.0}, 6.0, 4.0, 7.0},
                                               {{18.0, 16.0}, 10.0, 5.0, no_limit},
                                               {{22.0, 20.0}, 20.0, 8.0, no_limit},
                                               {{28.0, 25.0}, 50.0, no_limit, no_limit},
                                               {{35.0, 32.0}, 165.0, no_limit, no_limit},
                                               {{42.0, 39.0}, 430.0, no_limit, no_limit},
                                               {{54.0, 50.0}, 1050.0, no_limit, no_limit},
                                               {{76.1, 72.1}, 2100.0, no_limit, no_limit}}};
    if (!(units > 0.0)) return {};
    for (const Row& row : rows)
        if (units <= row.units && largest_units <= row.largest && length_m <= row.length_m) return row.pipe;
    return {};
}

double water_viscosity_pa_s(double temperature_c) noexcept {
    return 2.414e-5 * std::pow(10.0, 247.8 / (temperature_c + 273.15 - 140.0));
}

double water_speed_m_s(double flow_l_s, double bore_mm) noexcept {
    if (!(bore_mm > 0.0)) return 0.0;
    const double bore_m = bore_mm * 1e-3;
    return flow_l_s * 1e-3 / (0.25 * pi * bore_m * bore_m);
}

double friction_loss_bar(double flow_l_s, double bore_mm, double length_m, double water_c) noexcept {
    if (!(flow_l_s > 0.0) || !(bore_mm > 0.0) || !(length_m > 0.0)) return 0.0;
    constexpr double roughness_mm = 0.0015;  // drawn copper
    const double speed = water_speed_m_s(flow_l_s, bore_mm), density = water_density_kg_m3(water_c);
    const double bore_m = bore_mm * 1e-3;
    const double reynolds = density * speed * bore_m / water_viscosity_pa_s(water_c);
    const double f = pipework::friction_churchill1977(reynolds, roughness_mm / bore_mm);
    return f * length_m / bore_m * 0.5 * density * speed * speed * 1e-5;
}

double head_bar(double height_m, double water_c) noexcept {
    return water_density_kg_m3(water_c) * gravity_m_s2 * height_m * 1e-5;
}

double tube_litres(double length_m, double bore_mm) noexcept {
    return 0.25 * pi * bore_mm * bore_mm * 1e-3 * length_m;
}

double litres_until_hot(double length_m, double bore_mm, double wall_mm) noexcept {
    constexpr double copper_j_cm3k = 8.94 * 0.385, water_j_cm3k = 4.11;  // at about 50 deg C
    if (!(bore_mm > 0.0)) return 0.0;
    const double outside_mm = bore_mm + 2.0 * wall_mm;
    const double metal_to_water = (outside_mm * outside_mm - bore_mm * bore_mm) / (bore_mm * bore_mm);
    return tube_litres(length_m, bore_mm) * (1.0 + metal_to_water * copper_j_cm3k / water_j_cm3k);
}

double valve_outlet_dn(double volume_l) noexcept {
    if (volume_l <= 200.0) return 15.0;
    return volume_l <= 1000.0 ? 20.0 : 25.0;
}

Discharge discharge_pipe(double outlet_dn, double length_m, int bends) noexcept {
    struct Size {
        double outside_mm, bend_m;
    };
    constexpr std::array<Size, 6> sizes{{{15.0, 0.0}, {22.0, 0.8}, {28.0, 1.0}, {35.0, 1.4}, {42.0, 1.7}, {54.0, 2.3}}};
    constexpr double step_m = 9.0;  // of resistance that each further size allows
    const std::size_t first = outlet_dn <= 15.0 ? 0 : outlet_dn <= 20.0 ? 1 : 2;
    Discharge out{sizes[first].outside_mm, 0.0};
    for (std::size_t larger = 1; larger <= 3; ++larger) {
        const Size& size = sizes[first + larger];
        if (length_m + bends * size.bend_m <= step_m * static_cast<double>(larger)) {
            out.from_tundish_mm = size.outside_mm;
            break;
        }
    }
    return out;
}

}  // namespace wg::services
