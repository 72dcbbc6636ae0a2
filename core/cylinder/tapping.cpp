#include "core/cylinder/tapping.h"

#include <array>

namespace wg::cylinder {

namespace {

constexpr int at(int hour, int minute) {
    return 60 * hour + minute;
}

// Kinds of draw in the table: small draws at 25 or 40 deg C, floor cleaning, dish washing, shower, bath.
constexpr Tapping small(int minute) {
    return {minute, 0.105, 3.0, 25.0, 0.0};
}
constexpr Tapping cleaning(int minute) {
    return {minute, 0.105, 3.0, 40.0, 0.0};
}
constexpr Tapping floor(int minute) {
    return {minute, 0.105, 3.0, 10.0, 40.0};
}
constexpr Tapping dishes(int minute, double kwh) {
    return {minute, kwh, 4.0, 10.0, 55.0};
}
constexpr Tapping shower(int minute, double kwh) {
    return {minute, kwh, 6.0, 40.0, 0.0};
}
constexpr Tapping bath(int minute, double kwh, double flow) {
    return {minute, kwh, flow, 10.0, 40.0};
}

constexpr std::array draws_s{small(at(7, 0)),
                             small(at(7, 30)),
                             small(at(8, 30)),
                             small(at(9, 30)),
                             small(at(11, 30)),
                             small(at(11, 45)),
                             dishes(at(12, 45), 0.315),
                             small(at(18, 0)),
                             cleaning(at(18, 15)),
                             dishes(at(20, 30), 0.420),
                             Tapping{at(21, 30), 0.525, 5.0, 45.0, 0.0}};

constexpr std::array draws_m{
    small(at(7, 0)),           shower(at(7, 5), 1.4), small(at(7, 30)),       small(at(8, 1)),
    small(at(8, 15)),          small(at(8, 30)),      small(at(8, 45)),       small(at(9, 0)),
    small(at(9, 30)),          floor(at(10, 30)),     small(at(11, 30)),      small(at(11, 45)),
    dishes(at(12, 45), 0.315), small(at(14, 30)),     small(at(15, 30)),      small(at(16, 30)),
    small(at(18, 0)),          cleaning(at(18, 15)),  cleaning(at(18, 30)),   small(at(19, 0)),
    dishes(at(20, 30), 0.735), small(at(21, 15)),     shower(at(21, 30), 1.4)};

constexpr std::array draws_l{small(at(7, 0)),
                             shower(at(7, 5), 1.4),
                             small(at(7, 30)),
                             small(at(7, 45)),
                             bath(at(8, 5), 3.605, 10.0),
                             small(at(8, 25)),
                             small(at(8, 30)),
                             small(at(8, 45)),
                             small(at(9, 0)),
                             small(at(9, 30)),
                             floor(at(10, 30)),
                             small(at(11, 30)),
                             small(at(11, 45)),
                             dishes(at(12, 45), 0.315),
                             small(at(14, 30)),
                             small(at(15, 30)),
                             small(at(16, 30)),
                             small(at(18, 0)),
                             cleaning(at(18, 15)),
                             cleaning(at(18, 30)),
                             small(at(19, 0)),
                             dishes(at(20, 30), 0.735),
                             bath(at(21, 0), 3.605, 10.0),
                             small(at(21, 30))};

/// XL and XXL differ in the baths alone.
constexpr std::array<Tapping, 30> large_day(double bath_kwh, double bath_flow) {
    return {small(at(7, 0)),           shower(at(7, 15), 1.82),
            small(at(7, 26)),          bath(at(7, 45), bath_kwh, bath_flow),
            small(at(8, 1)),           small(at(8, 15)),
            small(at(8, 30)),          small(at(8, 45)),
            small(at(9, 0)),           small(at(9, 30)),
            small(at(10, 0)),          floor(at(10, 30)),
            small(at(11, 0)),          small(at(11, 30)),
            small(at(11, 45)),         dishes(at(12, 45), 0.735),
            small(at(14, 30)),         small(at(15, 0)),
            small(at(15, 30)),         small(at(16, 0)),
            small(at(16, 30)),         small(at(17, 0)),
            small(at(18, 0)),          cleaning(at(18, 15)),
            cleaning(at(18, 30)),      small(at(19, 0)),
            dishes(at(20, 30), 0.735), bath(at(20, 46), bath_kwh, bath_flow),
            small(at(21, 15)),         bath(at(21, 30), bath_kwh, bath_flow)};
}
constexpr auto draws_xl = large_day(4.42, 10.0);
constexpr auto draws_xxl = large_day(6.24, 16.0);

}  // namespace

TappingDay tapping_day(TappingCycle cycle) noexcept {
    switch (cycle) {
        case TappingCycle::s: return {draws_s.data(), draws_s.size(), 2.100};
        case TappingCycle::m: return {draws_m.data(), draws_m.size(), 5.845};
        case TappingCycle::l: return {draws_l.data(), draws_l.size(), 11.655};
        case TappingCycle::xl: return {draws_xl.data(), draws_xl.size(), 19.07};
        case TappingCycle::xxl: return {draws_xxl.data(), draws_xxl.size(), 24.53};
    }
    return {};
}

}  // namespace wg::cylinder
