#pragma once
// Mixed water that a hot cylinder gives, for people who ask how many showers that is.

namespace wg::cylinder {

/// Share of a cylinder's volume that comes out hot before the mixing in it shows (common practice, no published
/// source): a fast draw with a poor inlet, the usual, a slow draw.
inline constexpr double usable_low = 0.75;
inline constexpr double usable_mid = 0.85;
inline constexpr double usable_high = 0.95;

/// Litres at `tap_c` from `volume_l` at `store_c` and cold water: V s (T_store - T_cold)/(T_tap - T_cold), the mixing
/// of water with the same heat capacity. 0 when the store is not hotter than the tap or the tap not hotter than the
/// cold.
[[nodiscard]] constexpr double mixed_litres(double volume_l, double usable_share, double store_c, double cold_c,
                                            double tap_c) noexcept {
    if (!(store_c >= tap_c) || !(tap_c > cold_c) || !(volume_l > 0.0)) return 0.0;
    return volume_l * usable_share * (store_c - cold_c) / (tap_c - cold_c);
}

}  // namespace wg::cylinder
