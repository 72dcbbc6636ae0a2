#include "core/rating/course.h"

#include <algorithm>
#include <cmath>

#include "core/cylinder/tapping.h"
#include "core/heatpump/operating_point.h"

namespace wg::rating {

namespace {

constexpr double longest_heating_s = 120.0 * 3600.0;
constexpr double longest_cycle_s = 1000.0 * 3600.0;  // a perfectly insulated cylinder never calls

season::Options options_of(const Test& test) {
    season::Options options;
    options.step_s = test.step_s;
    options.nodes = test.nodes;
    return options;
}

}  // namespace

Course::Course(const Item& item, const Chamber& chamber, const Test& test, const heatpump::HeatPump& pump)
    : step_s_(test.step_s),
      cold_c_(chamber.cold_c),
      standby_w_(item.block.standby_w),
      day_(cylinder::tapping_day(test.cycle)),
      schedule_(season::schedule_of(input_of(item, chamber, test).demand, test.step_s)),
      simulation_(input_of(item, chamber, test), pump, options_of(test), chamber.cold_c) {
    simulation_.set_weather(surroundings_of(chamber));
}

season::Ledger Course::step(double step_s, const double* draws_j, int count) {
    const season::Ledger ledger = simulation_.step(step_s, draws_j, count, cold_c_);
    all_.add(ledger);
    return ledger;
}

void Course::note(const season::Ledger& ledger, double step_s, std::vector<CurvePoint>& curve) const {
    const cylinder::Store& store = simulation_.store();
    const double hours = curve.empty() ? 0.0 : curve.back().hours;
    curve.push_back({hours + step_s / 3600.0, store.mean_c(), store.top_c(), ledger.condenser / step_s,
                     (ledger.compressor + ledger.defrost) / step_s + standby_w_});
}

Stretch Course::until(double longest_s, std::vector<CurvePoint>* curve) {
    Stretch out;
    out.duration_s = carried_s_;
    out.electricity_j = carried_j_;
    while (out.duration_s < longest_s) {
        const season::Ledger ledger = step(step_s_, nullptr, 0);
        out.sum.add(ledger);
        const double pump_j = ledger.compressor + ledger.defrost;
        const bool stops = ledger.running_s > 0.0 && !simulation_.running();
        if (curve != nullptr) note(ledger, stops ? ledger.running_s : step_s_, *curve);
        if (stops) {
            out.stopped = true;
            out.duration_s += ledger.running_s;
            out.electricity_j += pump_j + standby_w_ * ledger.running_s;
            carried_s_ = step_s_ - ledger.running_s;
            carried_j_ = standby_w_ * carried_s_;
            return out;
        }
        out.duration_s += step_s_;
        out.electricity_j += pump_j + ledger.standby;
        // Frost may melt and let the pump start again; without frost nothing in a chamber changes. A call that the
        // envelope ended below the set-point is no stop of the thermostat, though the water is hot enough for now.
        const bool off = simulation_.off_reason() != heatpump::Off::none;
        if (off && (!simulation_.frost().lies() || !simulation_.calling())) {
            out.why_not = heatpump::reason_text(simulation_.off_reason());
            out.why_not += " with water at " + std::to_string(std::lround(simulation_.store().mean_c())) + " deg C";
            return out;
        }
    }
    out.why_not = "the thermostat did not stop the pump within " + std::to_string(std::lround(longest_s / 3600.0)) +
                  " hours (water at " + std::to_string(std::lround(simulation_.store().mean_c())) + " deg C)";
    return out;
}

Stretch Course::until_stop(std::vector<CurvePoint>* curve) {
    simulation_.demand_heat();
    if (curve != nullptr) curve->push_back({0.0, simulation_.store().mean_c(), simulation_.store().top_c(), 0.0, 0.0});
    return until(longest_heating_s, curve);
}

Stretch Course::until_next_stop() {
    return until(longest_cycle_s, nullptr);
}

season::Ledger Course::draw_off_day(int* peaks_missed) {
    season::Ledger sum;
    for (const season::Slot& slot : schedule_.slots) {
        if (peaks_missed != nullptr)
            for (int i = 0; i < slot.draw_count; ++i)
                if (day_.draws[slot.first_draw + i].peak_c > simulation_.store().top_c()) ++*peaks_missed;
        sum.add(step(slot.length_s, schedule_.draws_j.data() + slot.first_draw, slot.draw_count));
    }
    carried_s_ = 0.0;
    carried_j_ = 0.0;
    return sum;
}

double Course::closure() const noexcept {
    const auto share = [](double miss, double throughput) { return throughput > 0.0 ? miss / throughput : 0.0; };
    return std::max(share(all_.circuit_miss(), all_.circuit_throughput()),
                    share(all_.water_miss(), all_.water_throughput()));
}

}  // namespace wg::rating
