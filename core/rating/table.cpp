#include "core/rating/table.h"

#include <atomic>

#include "core/rating/course.h"
#include "core/rating/parallel.h"

namespace wg::rating {

Result<Table> rate_table(const Item& item, const Chamber& chamber, const Test& test,
                         const std::vector<TappingCycle>& cycles, const std::vector<Air>& airs,
                         const Progress& progress) {
    if (cycles.empty() || airs.empty())
        return Problem{"rating test", "no draw-off cycle or no air was asked for", "Choose at least one of each"};
    for (const Air& air : airs) {
        Chamber with_air = chamber;
        with_air.air = air;
        if (auto problems = problems_of(item, with_air, test); !problems.empty()) return problems;
    }
    const auto made = heatpump::HeatPump::make(item.block, *item.refrigerant);
    if (!made) return made.problems();

    Table table;
    for (const Air& air : airs)
        for (const TappingCycle cycle : cycles)
            table.cells.push_back({cycle, air, {}});
    std::atomic<std::size_t> done{0};
    const bool all = for_each_index(
        table.cells.size(),
        [&](std::size_t i) {
            Cell& cell = table.cells[i];
            Test one = test;
            one.cycle = cell.cycle;
            one.curve = i % cycles.size() == 0;
            Chamber with_air = chamber;
            with_air.air = cell.air;
            cell.rating = rate_with(made.value(), item, with_air, one);
            done.fetch_add(1);
        },
        [&] {
            const auto share = static_cast<double>(done.load()) / static_cast<double>(table.cells.size());
            return !progress || progress(share);
        });
    if (!all) {
        table.cells.clear();
        table.stopped = true;
    }
    return table;
}

}  // namespace wg::rating
