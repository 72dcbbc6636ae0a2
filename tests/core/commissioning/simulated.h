#pragma once
// What the simulated installations of this folder share: random draws that are the same on every machine, weather, and
// nitrogen by the values of CoolProp in tests/reference, not by the code that is judged.

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <nlohmann/json.hpp>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace wg::simulated {

class Draw {
   public:
    explicit Draw(std::uint64_t seed) : random_(seed) {}
    double unit() { return static_cast<double>(random_() >> 11) * 0x1.0p-53; }
    double between(double low, double high) { return low + (high - low) * unit(); }
    double log_between(double low, double high) { return low * std::pow(high / low, unit()); }
    bool chance(double share) { return unit() < share; }
    double normal(double deviation) {
        const double radius = std::sqrt(-2.0 * std::log(1.0 - unit()));
        return deviation * radius * std::cos(2.0 * std::numbers::pi * unit());
    }
    template <std::size_t N>
    double one_of(const double (&values)[N]) {
        return values[static_cast<std::size_t>(unit() * N)];
    }

   private:
    std::mt19937_64 random_;
};

/// An instrument whose every reading is within its limit of error. Either each reading is off on its own, anywhere
/// within the limit, which is the worst that the limit allows; or the calibration is off for good and the reading by
/// little more.
class Instrument {
   public:
    Instrument(Draw& draw, double limit) : limit_(limit), each_(draw.chance(0.5)) {
        if (!each_) off_ = draw.between(-0.8, 0.8) * limit;
    }
    double read(Draw& draw, double truth) const {
        return truth + (each_ ? draw.between(-limit_, limit_) : off_ + draw.between(-0.2, 0.2) * limit_);
    }

   private:
    double limit_, off_ = 0.0;
    bool each_;
};

inline const nlohmann::json& outside() {
    static const nlohmann::json values =
        nlohmann::json::parse(std::ifstream(std::string(WG_TESTS_DIR) + "/reference/commissioning_values.json"));
    return values;
}

/// Compressibility between the nodes of CoolProp's grid in a straight line: steps of 2 bar and 5 K leave below 3e-5.
class Nitrogen {
   public:
    Nitrogen() {
        const nlohmann::json& grid = outside()["nitrogen_compressibility"];
        pressure_ = grid["pressure_pa"].get<std::vector<double>>();
        temperature_ = grid["temperature_c"].get<std::vector<double>>();
        z_ = grid["z"].get<std::vector<std::vector<double>>>();
    }
    [[nodiscard]] double z(double pa, double c) const {
        const auto [i, x] = place(pressure_, pa);
        const auto [j, y] = place(temperature_, c);
        return (1 - x) * ((1 - y) * z_[i][j] + y * z_[i][j + 1]) + x * ((1 - y) * z_[i + 1][j] + y * z_[i + 1][j + 1]);
    }

   private:
    static std::pair<std::size_t, double> place(const std::vector<double>& nodes, double at) {
        const auto above = std::upper_bound(nodes.begin() + 1, nodes.end() - 1, at);
        const std::size_t i = static_cast<std::size_t>(above - nodes.begin()) - 1;
        return {i, std::clamp((at - nodes[i]) / (nodes[i + 1] - nodes[i]), 0.0, 1.0)};
    }
    std::vector<double> pressure_, temperature_;
    std::vector<std::vector<double>> z_;
};

/// Outdoor air, light on a plate and the plate itself, minute by minute: a day's swing, drift, clouds that come and go.
class Weather {
   public:
    explicit Weather(Draw& draw)
        : draw_(&draw),
          hour_(draw.between(7.0, 19.0)),
          mean_c_(draw.between(-5.0, 28.0)),
          swing_k_(draw.between(1.5, 7.0)),
          cloud_(draw.between(0.0, 1.0)),
          per_light_(draw.between(0.012, 0.035)),
          night_k_(draw.between(1.0, 5.0)) {
        plate_c_ = air_c() + excess();
    }
    void step(double minutes) {
        hour_ += minutes / 60.0;
        drift_k_ += draw_->normal(0.5 * std::sqrt(minutes / 60.0)) - drift_k_ * minutes / 60.0 / 24.0;
        cloud_ = std::clamp(cloud_ + draw_->normal(0.12 * std::sqrt(minutes / 10.0)), 0.0, 1.0);
        plate_c_ += (air_c() + excess() - plate_c_) * (1.0 - std::exp(-minutes / 12.0));
    }
    [[nodiscard]] double air_c() const {
        return mean_c_ + swing_k_ * std::sin(2.0 * std::numbers::pi * (hour_ - 9.0) / 24.0) + drift_k_;
    }
    [[nodiscard]] double light_w_m2() const {
        const double height = std::sin(std::numbers::pi * (std::fmod(hour_, 24.0) - 6.0) / 12.0);
        return height > 0.0 ? 950.0 * height * (1.0 - 0.92 * cloud_) : 0.0;
    }
    [[nodiscard]] double plate_c() const { return plate_c_; }

   private:
    [[nodiscard]] double excess() const {
        const double light = light_w_m2();
        return light > 0.0 ? per_light_ * light : -night_k_ * (1.0 - cloud_);
    }
    Draw* draw_;
    double hour_, mean_c_, swing_k_, cloud_, per_light_, night_k_;
    double drift_k_ = 0.0, plate_c_ = 0.0;
};

/// Counts of one population: how many of it, and what was said of them.
struct Tally {
    int all = 0, passed = 0, failed = 0, cannot_tell = 0;
    [[nodiscard]] double share(int count) const { return all > 0 ? static_cast<double>(count) / all : 0.0; }
    /// Whether a count is under a share of all. Of a handful, as under sanitizers, two may be more by chance.
    [[nodiscard]] bool under(int count, double limit) const { return count < limit * all + (all < 150 ? 3.0 : 0.0); }
};

}  // namespace wg::simulated
