// What a block does by itself, over a grid of temperatures.

#include "core/heatpump/circuit_search.h"
#include "core/heatpump/compressor.h"
#include "core/heatpump/operating_point.h"

namespace wg::heatpump {

PerformanceMap performance_map(const HeatPump& pump, const std::vector<double>& evaporating_c,
                               const std::vector<double>& water_c) {
    PerformanceMap out{evaporating_c, water_c, {}};
    out.points.reserve(evaporating_c.size() * water_c.size());
    const BlockModel& block = pump.block();
    const refrigerant::Properties& refrigerant = pump.refrigerant();
    const Line no_line;
    for (const double te : evaporating_c)
        for (const double water : water_c) {
            MapPoint at;
            if (te < block.evaporating_min_c || te > block.evaporating_max_c) {
                at.off = Off::too_cold;
                out.points.push_back(at);
                continue;
            }
            const CondenserZone zone = CondenserZone::uniform(block.condenser_w_k, water, block.condenser_glide_k);
            detail::Search<CycleMap> search(pump.map(), block, refrigerant, pump.map().lowest_condensing_c(),
                                            pump.map().highest_condensing_c(), zone, no_line, te);
            search.start_at(te, water + 10.0);
            const detail::Circuit circuit = search.circuit(te);
            at.condensing_c = circuit.condensing_c;
            const double ratio =
                refrigerant.saturation_pressure_pa(at.condensing_c) / refrigerant.saturation_pressure_pa(te);
            if (at.condensing_c > block.condensing_max_c)
                at.off = Off::condensing;
            else if (ratio > block.pressure_ratio_max)
                at.off = Off::pressure_ratio;
            else if (!covered_by_data(block, te, at.condensing_c))
                at.off = Off::beyond_data;
            else if (pump.map().discharge_c(te, at.condensing_c) > block.discharge_max_c)
                at.off = Off::discharge;
            if (at.off == Off::none) {
                at.evaporator_w = circuit.evaporator_w;
                at.work_w = circuit.work_w;
                at.condenser_w = circuit.condenser_w;
            }
            out.points.push_back(at);
        }
    return out;
}

}  // namespace wg::heatpump
