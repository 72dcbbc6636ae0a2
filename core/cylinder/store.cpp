#include "core/cylinder/store.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::cylinder {

namespace {

constexpr double test_difference_k = 45.0;  // EN 12897: 65 deg C store, 20 deg C room
constexpr double same_water_k = 0.02;       // inflow this close to the lowest layer joins it
// Conduction moves heat by some 4 cm in this time: applied in such portions it costs little and misses little.
constexpr double conduction_every_s = 1800.0;
constexpr double least_layer_l = 1e-9;  // below this a remainder of a shift is rounding

}  // namespace

Geometry geometry_of(const CylinderModel& model, std::size_t most_layers) noexcept {
    Geometry g;
    g.volume_l = model.volume_l;
    g.height_m = model.height_m;
    g.loss_w_k = model.standing_loss_kwh_24h * 1000.0 / 24.0 / test_difference_k;
    g.most_layers = std::clamp<std::size_t>(most_layers, 2, 40);
    return g;
}

Store::Store(const Geometry& geometry, double temperature_c, std::size_t layers) noexcept : geometry_(geometry) {
    // The loss spreads over the surface of a cylinder of this volume and height.
    const double cross_m2 = geometry.volume_l * 1e-3 / geometry.height_m;
    const double diameter_m = std::sqrt(4.0 * cross_m2 / pi);
    const double side_m2 = pi * diameter_m * geometry.height_m;
    const double all_m2 = side_m2 + 2.0 * cross_m2;
    side_loss_w_k_per_l_ = geometry.loss_w_k * side_m2 / all_m2 / geometry.volume_l;
    end_loss_w_k_ = geometry.loss_w_k * cross_m2 / all_m2;
    // lambda A / distance, with distance = litres between the middles / litres per metre.
    conduction_w_l_k_ = geometry.conduction_w_mk * cross_m2 * (geometry.volume_l / geometry.height_m);
    count_ = std::clamp<std::size_t>(layers, 1, geometry.most_layers);
    for (std::size_t i = 0; i < count_; ++i) {
        volume_l_[i] = geometry.volume_l / static_cast<double>(count_);
        temperature_c_[i] = temperature_c;
    }
}

void Store::copy_from(const Store& other) noexcept {
    assert(&other != this);
    count_ = other.count_;
    since_conduction_s_ = other.since_conduction_s_;
    for (std::size_t i = 0; i < count_; ++i) {
        volume_l_[i] = other.volume_l_[i];
        temperature_c_[i] = other.temperature_c_[i];
    }
}

void Store::join(std::size_t upper) noexcept {
    const double sum = volume_l_[upper] + volume_l_[upper + 1];
    temperature_c_[upper] =
        (volume_l_[upper] * temperature_c_[upper] + volume_l_[upper + 1] * temperature_c_[upper + 1]) / sum;
    volume_l_[upper] = sum;
    for (std::size_t i = upper + 1; i + 1 < count_; ++i) {
        volume_l_[i] = volume_l_[i + 1];
        temperature_c_[i] = temperature_c_[i + 1];
    }
    --count_;
}

/// Warm water under cold mixes with it at once. One pass from the top with a look back (pool adjacent violators).
void Store::settle() noexcept {
    bool sorted = true;
    for (std::size_t i = 1; i < count_; ++i)
        sorted = sorted && temperature_c_[i] <= temperature_c_[i - 1];
    if (sorted) return;
    std::size_t last = 0;
    for (std::size_t i = 1; i < count_; ++i) {
        double volume = volume_l_[i];
        double temperature = temperature_c_[i];
        bool first = false;
        while (temperature > temperature_c_[last]) {
            const double sum = volume + volume_l_[last];
            temperature = (volume * temperature + volume_l_[last] * temperature_c_[last]) / sum;
            volume = sum;
            if (last == 0) {
                first = true;
                break;
            }
            --last;
        }
        if (!first) ++last;
        volume_l_[last] = volume;
        temperature_c_[last] = temperature;
    }
    count_ = last + 1;
}

void Store::reduce() noexcept {
    while (count_ > geometry_.most_layers) {
        std::size_t cheapest = 0;
        double least = 0.0;
        for (std::size_t i = 0; i + 1 < count_; ++i) {
            const double difference = temperature_c_[i] - temperature_c_[i + 1];
            // Variance that mixing the two destroys.
            const double cost =
                difference * difference * volume_l_[i] * volume_l_[i + 1] / (volume_l_[i] + volume_l_[i + 1]);
            if (i == 0 || cost < least) {
                least = cost;
                cheapest = i;
            }
        }
        join(cheapest);
    }
}

double Store::shift(double volume_l, double cold_c) noexcept {
    if (!(volume_l > 0.0)) return 0.0;
    double heat_j = 0.0;
    double left = std::min(volume_l, geometry_.volume_l);
    const double entering = left;
    std::size_t gone = 0;
    while (gone < count_ && left >= volume_l_[gone] - least_layer_l) {
        heat_j += volume_l_[gone] * (temperature_c_[gone] - cold_c);
        left -= volume_l_[gone];
        ++gone;
    }
    if (gone < count_ && left > 0.0) {
        heat_j += left * (temperature_c_[gone] - cold_c);
        volume_l_[gone] -= left;
    }
    if (gone > 0) {
        for (std::size_t i = gone; i < count_; ++i) {
            volume_l_[i - gone] = volume_l_[i];
            temperature_c_[i - gone] = temperature_c_[i];
        }
        count_ -= gone;
    }
    volume_l_[count_] = entering;
    temperature_c_[count_] = cold_c;
    ++count_;
    // Layers that vanished within rounding leave a trace of volume: the inflow makes the sum whole again.
    double sum = 0.0;
    for (std::size_t i = 0; i < count_; ++i)
        sum += volume_l_[i];
    volume_l_[count_ - 1] += geometry_.volume_l - sum;
    if (count_ > 1 && std::abs(temperature_c_[count_ - 2] - cold_c) < same_water_k) join(count_ - 2);
    settle();
    reduce();
    return heat_j * heat_capacity_j_l_k;
}

Drawn Store::draw(double useful_j, double wanted_c, double cold_c) noexcept {
    Drawn out;
    out.coldest_c = wanted_c;
    double mixed_left_l = useful_j / (heat_capacity_j_l_k * (wanted_c - cold_c));
    if (!(mixed_left_l > 0.0)) return out;
    // Layer by layer, so that a draw which reaches colder water ends colder.
    std::size_t i = 0;
    double available = volume_l_[0];
    while (mixed_left_l > 0.0) {
        const double hot_c = i < count_ ? temperature_c_[i] : cold_c;
        const double hot_share = hot_c > wanted_c ? (wanted_c - cold_c) / (hot_c - cold_c) : 1.0;
        const double needed_l = mixed_left_l * hot_share;
        const double taken_l = i < count_ ? std::min(needed_l, available) : needed_l;
        const double mixed_l = needed_l > taken_l ? taken_l / hot_share : mixed_left_l;
        out.hot_l += taken_l;
        if (hot_c < wanted_c && mixed_l > 0.0) {
            out.shortfall_j += mixed_l * (wanted_c - hot_c) * heat_capacity_j_l_k;
            out.short_l += mixed_l;
            out.coldest_c = std::min(out.coldest_c, hot_c);
        }
        mixed_left_l -= mixed_l;
        if (needed_l <= taken_l) break;
        ++i;
        available = i < count_ ? volume_l_[i] : 0.0;
    }
    out.useful_j = shift(out.hot_l, cold_c);
    return out;
}

double Store::circulate(double volume_l, double heat_j, double to_height) noexcept {
    const double above_l = (1.0 - to_height) * geometry_.volume_l;
    double left = std::min(volume_l, 0.5 * above_l);
    if (!(left > 0.0)) return 0.0;
    const double going_l = left;
    split_at(to_height);
    double sum_l_k = 0.0;
    std::size_t gone = 0;
    while (left >= volume_l_[gone] - least_layer_l && gone + 1 < count_) {
        sum_l_k += volume_l_[gone] * temperature_c_[gone];
        left -= volume_l_[gone];
        ++gone;
    }
    if (left > 0.0) {
        sum_l_k += left * temperature_c_[gone];
        volume_l_[gone] -= left;
    }
    // What is left above the height, then the returning water.
    std::size_t layer = gone;
    double passed_l = going_l;
    std::size_t into = 0;
    std::array<double, capacity> volume{};
    std::array<double, capacity> temperature{};
    const auto put = [&](double litres, double c) {
        volume[into] = litres;
        temperature[into] = c;
        ++into;
    };
    for (; layer < count_ && passed_l < above_l - 1e-6; ++layer) {
        passed_l += volume_l_[layer];
        put(volume_l_[layer], temperature_c_[layer]);
    }
    put(going_l, (sum_l_k - heat_j / heat_capacity_j_l_k) / going_l);
    for (; layer < count_; ++layer)
        put(volume_l_[layer], temperature_c_[layer]);
    count_ = into;
    volume_l_ = volume;
    temperature_c_ = temperature;
    settle();
    reduce();
    return heat_j;
}

void Store::band_shares(double from, double to, std::span<double> shares) const noexcept {
    assert(shares.size() >= count_ && to > from);
    const double low_l = from * geometry_.volume_l;
    const double high_l = to * geometry_.volume_l;
    const double per_litre = 1.0 / (high_l - low_l);
    double upper = geometry_.volume_l;
    for (std::size_t i = 0; i < count_; ++i) {
        // The lowest layer ends at the bottom exactly, whatever rounding the sum of volumes carries.
        const double lower = i + 1 == count_ ? 0.0 : upper - volume_l_[i];
        shares[i] = std::max(0.0, std::min(upper, high_l) - std::max(lower, low_l)) * per_litre;
        upper = lower;
    }
}

void Store::add_heat(std::span<const double> heat_j) noexcept {
    for (std::size_t i = 0; i < count_; ++i)
        temperature_c_[i] += heat_j[i] / (heat_capacity_j_l_k * volume_l_[i]);
    settle();
}

void Store::split_at(double height) noexcept {
    const double wanted_l = (1.0 - height) * geometry_.volume_l;  // from the top
    double above = 0.0;
    for (std::size_t i = 0; i < count_; ++i) {
        const double below = above + volume_l_[i];
        if (wanted_l > above + 1e-6 && wanted_l < below - 1e-6) {
            if (count_ == capacity) return;
            for (std::size_t k = count_; k > i; --k) {
                volume_l_[k] = volume_l_[k - 1];
                temperature_c_[k] = temperature_c_[k - 1];
            }
            ++count_;
            volume_l_[i] = wanted_l - above;
            volume_l_[i + 1] = below - wanted_l;
            return;
        }
        above = below;
    }
}

void Store::divide(double to, std::size_t parts) noexcept {
    for (std::size_t i = 1; i < parts; ++i)
        split_at(to * static_cast<double>(i) / static_cast<double>(parts));
}

void Store::add_heat_above(double from, double heat_j) noexcept {
    split_at(from);
    // The plume rises from the heater's height: the coldest water above it is warmed first, which is the same as
    // giving the heat to the layer just above the heater and mixing upwards.
    const double heated_l = (1.0 - from) * geometry_.volume_l;
    double above = 0.0;
    std::size_t lowest = 0;
    for (std::size_t i = 0; i < count_ && above < heated_l - 1e-6; ++i) {
        above += volume_l_[i];
        lowest = i;
    }
    temperature_c_[lowest] += heat_j / (heat_capacity_j_l_k * volume_l_[lowest]);
    settle();
    reduce();
}

double Store::rest(double room_c, double step_s) noexcept {
    // Losses, conduction and mixing by turns: a long step goes in portions.
    double lost_j = 0.0;
    for (; step_s > conduction_every_s; step_s -= conduction_every_s)
        lost_j += rest_portion(room_c, conduction_every_s);
    return lost_j + rest_portion(room_c, step_s);
}

double Store::rest_portion(double room_c, double step_s) noexcept {
    // 1 - exp(-x), to third order while x is small; a thin end layer in a long step takes the exponential itself.
    const auto decayed = [](double x) { return x < 0.01 ? x / (1.0 + x * (0.5 + x / 12.0)) : -std::expm1(-x); };
    const double side = side_loss_w_k_per_l_ * step_s / heat_capacity_j_l_k;
    const double side_share = decayed(side);
    const double end = end_loss_w_k_ * step_s / heat_capacity_j_l_k;
    double lost_l_k = 0.0;
    const auto cool = [&](std::size_t i, double share) {
        const double fall_k = (temperature_c_[i] - room_c) * share;
        temperature_c_[i] -= fall_k;
        lost_l_k += volume_l_[i] * fall_k;
    };
    const std::size_t last = count_ - 1;
    cool(0, decayed(side + (last == 0 ? 2.0 : 1.0) * end / volume_l_[0]));
    for (std::size_t i = 1; i < last; ++i)
        cool(i, side_share);
    if (last > 0) cool(last, decayed(side + end / volume_l_[last]));
    since_conduction_s_ += step_s;
    if (since_conduction_s_ >= conduction_every_s) conduct();
    settle();
    return lost_l_k * heat_capacity_j_l_k;
}

/// Pair by pair and implicit: never overshoots however thin a layer is. With the distance of a pair taken as half the
/// sum of volumes, the heat exchanged is g (Ti - Tj) Vi Vj / ((Vi + Vj) (Vi Vj / 2 + g)), in litre kelvin.
void Store::conduct() noexcept {
    const double g = conduction_w_l_k_ * since_conduction_s_ / heat_capacity_j_l_k;
    since_conduction_s_ = 0.0;
    for (std::size_t i = 0; i + 1 < count_; ++i) {
        const double upper_l = volume_l_[i];
        const double lower_l = volume_l_[i + 1];
        const double flow =
            g * (temperature_c_[i] - temperature_c_[i + 1]) / ((upper_l + lower_l) * (0.5 * upper_l * lower_l + g));
        temperature_c_[i] -= flow * lower_l;
        temperature_c_[i + 1] += flow * upper_l;
    }
}

double Store::temperature_at(double height) const noexcept {
    double above = (1.0 - height) * geometry_.volume_l;
    for (std::size_t i = 0; i + 1 < count_; ++i) {
        if (above < volume_l_[i]) return temperature_c_[i];
        above -= volume_l_[i];
    }
    return temperature_c_[count_ - 1];
}

double Store::energy_j() const noexcept {
    double sum = 0.0;
    for (std::size_t i = 0; i < count_; ++i)
        sum += volume_l_[i] * temperature_c_[i];
    return sum * heat_capacity_j_l_k;
}

double Store::mean_c() const noexcept {
    return energy_j() / (heat_capacity_j_l_k * geometry_.volume_l);
}

void Store::resample(std::span<double> out) const noexcept {
    const double slice_l = geometry_.volume_l / static_cast<double>(out.size());
    std::size_t layer = 0;
    double left = volume_l_[0];
    for (double& slice : out) {
        double need = slice_l;
        double sum = 0.0;
        while (need > 0.0) {
            if (layer + 1 == count_ || left >= need) {
                sum += need * temperature_c_[layer];
                left -= need;
                break;
            }
            sum += left * temperature_c_[layer];
            need -= left;
            ++layer;
            left = volume_l_[layer];
        }
        slice = sum / slice_l;
    }
}

void Store::flatten(std::size_t layers) noexcept {
    layers = std::clamp<std::size_t>(layers, 1, geometry_.most_layers);
    std::array<double, capacity> means{};
    resample(std::span(means.data(), layers));
    count_ = layers;
    for (std::size_t i = 0; i < layers; ++i) {
        volume_l_[i] = geometry_.volume_l / static_cast<double>(layers);
        temperature_c_[i] = means[i];
    }
}

}  // namespace wg::cylinder
