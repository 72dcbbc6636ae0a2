#pragma once
// Stratified cylinder: a stack of layers of their own volume and temperature, top first. Drawing shifts the stack
// exactly (no numerical smearing); when there are more layers than allowed, the two neighbours whose mixing destroys
// the least are joined. All changes keep energy to rounding. Methods: docs/handbook/cylinder.md.

#include <array>
#include <cstddef>
#include <span>

#include "core/equipment/equipment.h"

namespace wg::cylinder {

struct Geometry {
    double volume_l = 250.0;
    double height_m = 1.7;
    double loss_w_k = 1.389;  ///< whole surface, to the room
    double conduction_w_mk =
        1.6;  ///< water and wall together, vertical: 0.6 and about 1.0 for an enamelled steel shell
    std::size_t most_layers = 10;  ///< 2..40
};
/// Loss from the standing loss per 24 h at 45 K.
[[nodiscard]] Geometry geometry_of(const CylinderModel& model, std::size_t most_layers) noexcept;

/// J/K of one litre.
inline constexpr double heat_capacity_j_l_k = 4180.0;

/// What a draw gave.
struct Drawn {
    double useful_j = 0.0;     ///< over cold inflow; left the cylinder
    double shortfall_j = 0.0;  ///< asked for less given: the cylinder's water was colder than wanted
    double hot_l = 0.0;        ///< volume taken from the cylinder
    double short_l = 0.0;      ///< mixed water that came colder than wanted
    double coldest_c = 0.0;    ///< at the tap, at most the wanted temperature
};

class Store {
   public:
    static constexpr std::size_t capacity = 44;

    /// `layers` equal layers at one temperature.
    Store(const Geometry& geometry, double temperature_c, std::size_t layers = 1) noexcept;

    /// Takes a volume from the top, cold water follows at the bottom. Returns the heat over cold inflow that left, J.
    /// Any volume, more than the whole cylinder too.
    double shift(double volume_l, double cold_c) noexcept;

    /// A draw through the mixing valve: cold is added so that the tap gives `wanted_c`. Water below that comes as it
    /// is, in the volume that was asked for at the tap.
    Drawn draw(double useful_j, double wanted_c, double cold_c) noexcept;

    /// A loop: takes a volume from the top, which loses `heat_j` on its way and returns at a height. Energy is kept but
    /// for that heat. At most the water above the height goes round; returns the heat lost, J.
    double circulate(double volume_l, double heat_j, double to_height) noexcept;

    /// Share of the band between two heights (0 bottom, 1 top) that each layer fills; the shares sum to 1.
    void band_shares(double from, double to, std::span<double> shares) const noexcept;

    /// Heat to single layers, J each; inversions are then mixed.
    void add_heat(std::span<const double> heat_j) noexcept;
    /// Heat from a heater whose plume fills everything above `from`: the water there warms as one.
    void add_heat_above(double from, double heat_j) noexcept;

    /// Boundaries of layers at the `parts` equal slices of the band from the bottom to `to` (0..1), so that they can
    /// take different heat; no temperature changes.
    void divide(double to, std::size_t parts) noexcept;

    /// Loss to the room and conduction over a time step. Returns the heat lost, J (negative when the room is warmer).
    double rest(double room_c, double step_s) noexcept;

    [[nodiscard]] double temperature_at(double height) const noexcept;  ///< 0 bottom, 1 top
    [[nodiscard]] double top_c() const noexcept { return temperature_c_[0]; }
    [[nodiscard]] double bottom_c() const noexcept { return temperature_c_[count_ - 1]; }
    [[nodiscard]] double mean_c() const noexcept;
    [[nodiscard]] double energy_j() const noexcept;  ///< over 0 deg C
    [[nodiscard]] std::size_t count() const noexcept { return count_; }
    [[nodiscard]] double layer_c(std::size_t i) const noexcept { return temperature_c_[i]; }
    [[nodiscard]] double layer_l(std::size_t i) const noexcept { return volume_l_[i]; }
    [[nodiscard]] const Geometry& geometry() const noexcept { return geometry_; }

    /// Takes over the layers of another cylinder of the same geometry: assignment without the unused tail.
    void copy_from(const Store& other) noexcept;

    /// Mean temperatures of `out.size()` equal slices, top first.
    void resample(std::span<double> out) const noexcept;
    /// Replaces the layers by equal ones at those means: what a fixed grid would do after each draw. For comparison.
    void flatten(std::size_t layers) noexcept;

   private:
    void join(std::size_t upper) noexcept;  ///< with the layer below
    void split_at(double height) noexcept;
    void settle() noexcept;
    void reduce() noexcept;
    double rest_portion(double room_c, double step_s) noexcept;
    void conduct() noexcept;

    Geometry geometry_;
    double side_loss_w_k_per_l_ = 0.0;
    double end_loss_w_k_ = 0.0;
    double conduction_w_l_k_ = 0.0;  ///< between layers: this over the sum of half volumes
    double since_conduction_s_ = 0.0;
    std::size_t count_ = 0;
    std::array<double, capacity> volume_l_{};
    std::array<double, capacity> temperature_c_{};
};

}  // namespace wg::cylinder
