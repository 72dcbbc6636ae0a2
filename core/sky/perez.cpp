#include "core/sky/perez.h"

#include <array>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"

namespace wg::sky {
namespace {

constexpr std::array<double, 7> bin_upper_edges = {1.065, 1.230, 1.500, 1.950, 2.800, 4.500, 6.200};

struct Row {
    double f11, f12, f13, f21, f22, f23;
};
constexpr std::array<Row, 8> table_6 = {{{-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
                                         {0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
                                         {0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
                                         {0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
                                         {0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
                                         {1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
                                         {1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
                                         {0.678, -0.327, -0.250, 0.156, -1.377, 0.251}}};
constexpr double kappa = 1.041;  // for zenith in radians

}  // namespace

PerezBrightness perez_brightness(double beam_normal_w_m2, double diffuse_w_m2, double extraterrestrial_normal_w_m2,
                                 double apparent_zenith_deg, double relative_air_mass) noexcept {
    const double z = radians(apparent_zenith_deg);
    const double cubed = kappa * z * z * z;
    const double clearness = ((diffuse_w_m2 + beam_normal_w_m2) / diffuse_w_m2 + cubed) / (1.0 + cubed);
    const double brightness = diffuse_w_m2 * relative_air_mass / extraterrestrial_normal_w_m2;

    std::size_t bin = 0;
    while (bin < bin_upper_edges.size() && clearness >= bin_upper_edges[bin])
        ++bin;
    const Row& r = table_6[bin];
    PerezBrightness b;
    b.bin = static_cast<int>(bin) + 1;
    b.f1 = std::fmax(0.0, r.f11 + r.f12 * brightness + r.f13 * z);
    b.f2 = r.f21 + r.f22 * brightness + r.f23 * z;
    return b;
}

}  // namespace wg::sky
