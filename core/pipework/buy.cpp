#include "core/pipework/buy.h"

#include <array>
#include <cmath>

namespace wg::pipework {
namespace {

constexpr std::array<double, 4> usual_coils_m{15.0, 25.0, 30.0, 50.0};
constexpr double coil_noise_m = 1e-9;
constexpr double longest_counted_m = 2000.0;  // beyond any run; a distance of nonsense must not fill the memory

}  // namespace

std::vector<double> coils_for_m(double buy_m) {
    std::vector<double> out;
    if (!(buy_m > 0.0) || buy_m > longest_counted_m) return out;
    double left = buy_m;
    for (; left > usual_coils_m.back() + coil_noise_m; left -= usual_coils_m.back())
        out.push_back(usual_coils_m.back());
    for (const double coil : usual_coils_m) {
        if (left > coil + coil_noise_m) continue;
        out.push_back(coil);
        break;
    }
    return out;
}

LineToBuy to_buy(const std::vector<Leg>& legs, const std::vector<std::size_t>& trap_legs, bool lagged) {
    LineToBuy out;
    if (legs.empty()) return out;
    for (const Leg& leg : legs)
        out.pieces_m.push_back(leg.length_m);
    out.pieces_m.front() += collector_stub_m;
    out.pieces_m.back() += block_stub_m;
    for (const std::size_t leg : trap_legs)
        out.pieces_m[leg] += trap_m;
    for (const double piece : out.pieces_m)
        out.cut_m += piece;
    out.buy_m = out.cut_m * (1.0 + cutting_allowance);
    out.coils_m = coils_for_m(out.buy_m);
    out.joints = out.coils_m.empty() ? 0 : static_cast<int>(out.coils_m.size()) - 1;
    if (!lagged) return out;
    out.lagging_m = out.buy_m;
    if (out.lagging_m <= longest_counted_m)
        out.lagging_lengths = static_cast<int>(std::ceil(out.lagging_m / lagging_length_m - coil_noise_m));
    return out;
}

}  // namespace wg::pipework
