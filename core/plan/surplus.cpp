// What the house's own photovoltaics leave over in each hour.
#include <algorithm>

#include "core/plan/parts_of_plan.h"

namespace wg::plan::steps {
namespace {

// Of the peak power at 1000 W/m2: heat of the modules, inverter, wiring, dirt (common practice, no published source).
constexpr double performance_ratio = 0.8;

}  // namespace

std::vector<double> photovoltaic_surplus_w(const Job& job, const sky::PreparedYear& year) {
    const SurplusSignal& signal = job.demand.control.surplus;
    if (!(signal.peak_kw > 0.0)) return {};
    sky::PlaneInput plane;
    plane.tilt_deg = signal.tilt_deg;
    plane.azimuth_deg = signal.azimuth_deg;
    plane.albedo = job.site.ground_albedo;
    const sky::PlaneYear light = sky::plane_year(year, plane, {});  // its shade is not surveyed
    std::vector<double> surplus_w(light.beam_w_m2.size());
    for (std::size_t h = 0; h < surplus_w.size(); ++h) {
        const double light_w_m2 = light.beam_w_m2[h] + light.sky_diffuse_w_m2[h] + light.ground_w_m2[h];
        surplus_w[h] = std::max(0.0, light_w_m2 * signal.peak_kw * performance_ratio - signal.base_load_w);
    }
    return surplus_w;
}

}  // namespace wg::plan::steps
