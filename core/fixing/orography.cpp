#include "core/fixing/orography.h"

#include <algorithm>
#include <cmath>

namespace wg::fixing {
namespace {

constexpr double gentle = 0.05;  ///< slopes below it do not count, (A.1)
constexpr double steep = 0.3;    ///< from it on the slope counts no more, (A.3)

/// (A.5) and (A.12).
double crest_value(double z) {
    return 0.1552 * std::pow(z, 4) - 0.8575 * std::pow(z, 3) + 1.8133 * z * z - 1.9115 * z + 1.0124;
}

/// (A.7) to (A.10), x and z over L_e.
double behind_cliff(double x, double z) {
    const double lz = std::log10(z), lx = std::log10(x);
    const double a = -1.3420 * std::pow(lz, 3) - 0.8222 * lz * lz + 0.4609 * lz - 0.0791;
    const double b = -1.0196 * std::pow(lz, 3) - 0.8910 * lz * lz + 0.5343 * lz - 0.1156;
    const double c = 0.8030 * std::pow(lz, 3) + 0.4236 * lz * lz - 0.5738 * lz + 0.1606;
    return a * lx * lx + b * lx + c;
}

}  // namespace

Orography orography_of(const Hill& hill, double height_m) {
    Orography o;
    if (hill.kind == HillKind::none || !(hill.height_m > 0.0) || !(hill.upwind_length_m > 0.0)) return o;
    o.slope = hill.height_m / hill.upwind_length_m;
    if (o.slope < gentle) {
        o.outside = "the windward slope is below 0.05, which annex A.3 takes for level ground";
        return o;
    }
    o.effective_length_m = o.slope < steep ? hill.upwind_length_m : hill.height_m / steep;
    const double x_m = hill.crest_distance_m, z = std::max(0.0, height_m) / o.effective_length_m;
    if (z > 2.0) {
        o.outside = "the house stands higher over the ground than 2 L_e, where annex A.3 sees no influence";
        return o;
    }
    if (x_m <= 0.0) {
        const double x = x_m / hill.upwind_length_m;
        if (x < -1.5) {
            o.outside = "the house stands more than 1.5 L_u before the crest, where annex A.3 sees no influence";
            return o;
        }
        o.location = crest_value(z) * std::exp((0.3542 * z * z - 1.0577 * z + 2.6456) * x);  // (A.4), (A.6)
    } else if (hill.kind == HillKind::hill) {
        const double x = x_m / std::max(hill.downwind_length_m, 1e-9);
        if (x > 2.0) {
            o.outside = "the house stands more than 2 L_d behind the crest, where annex A.3 sees no influence";
            return o;
        }
        o.location = crest_value(z) * std::exp((-0.3056 * z * z + 1.0212 * z - 1.7637) * x);  // (A.11), (A.13)
    } else {
        const double x = x_m / o.effective_length_m, z_used = std::max(z, 0.1);
        if (x > 3.5) {
            o.outside = "the house stands more than 3.5 L_e behind the edge, where annex A.3 sees no influence";
            return o;
        }
        // Between the edge and a tenth of L_e behind it the annex runs straight.
        o.location = x >= 0.1 ? behind_cliff(x, z_used)
                              : crest_value(z) + (behind_cliff(0.1, z_used) - crest_value(z)) * x / 0.1;
    }
    o.location = std::max(0.0, o.location);
    o.factor = 1.0 + o.location * (o.slope < steep ? 2.0 * o.slope : 0.6);  // (A.2), (A.3)
    return o;
}

}  // namespace wg::fixing
