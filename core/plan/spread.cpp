// The yearly figures over further years of the climate.
#include <algorithm>
#include <atomic>
#include <future>
#include <iterator>

#include "core/plan/parts_of_plan.h"

namespace wg::plan::steps {
namespace {

struct OneYear {
    double light_kwh_m2 = 0.0;
    season::MonthSums total;
    double seasonal_factor = 0.0;
    std::vector<Problem> problems;
};

bool same_sun(const sky::PreparedYear& a, const sky::PreparedYear& b) {
    return a.sun_up == b.sun_up && a.sun_east == b.sun_east && a.sun_north == b.sun_north;
}

OneYear one_year(const Job& job, const Selection& with, const std::vector<PlacementPlan>& placements,
                 const pipework::Run& run) {
    OneYear out;
    std::vector<sky::PlaneYear> planes;
    for (const PlacementPlan& placed : placements) {
        planes.push_back(sky::plane_year(with.weather->sky, plane_of(job, placed), placed.shade.beam_share));
        out.light_kwh_m2 += planes.back().total_kwh_m2 / static_cast<double>(placements.size());
    }
    Result<season::Year> year = season::run(season_input(job, with, planes, placements, run), options_for_comparing());
    if (!year) {
        out.problems = year.problems();
        return out;
    }
    out.total = year.value().total;
    out.seasonal_factor = year.value().seasonal_factor;
    return out;
}

}  // namespace

Result<std::optional<WeatherSpread>> spread_over_years(const Job& job, const Selection& with, const Plan& plan) {
    if (with.further_years == nullptr || with.further_years->empty() || plan.placements.empty()) {
        return std::optional<WeatherSpread>();
    }
    const auto& years = *with.further_years;
    // Made years stand for the middle of each hour, a file may not: then the shade of each hour is worked out again.
    std::vector<PlacementPlan> placements = plan.placements;
    if (!same_sun(with.weather->sky, years.front()->sky)) {
        for (PlacementPlan& placed : placements) {
            placed.shade = site::shade_of(job.site, placed.placed, placed.surface_id, years.front()->sky);
        }
    }
    std::vector<OneYear> found(years.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < years.size(); i = next++) {
            Selection that_year = with;
            that_year.weather = years[i];
            found[i] = one_year(job, that_year, placements, plan.run);
        }
    };
    std::future<void> other = std::async(std::launch::async, work);
    work();
    other.get();

    std::vector<Problem> problems;
    const auto quantiles_of = [&](auto of) {
        std::vector<double> values;
        std::transform(found.begin(), found.end(), std::back_inserter(values), of);
        const Result<weather::Quantiles> q = weather::quantiles(std::move(values));
        if (q) return q.value();
        problems.insert(problems.end(), q.problems().begin(), q.problems().end());
        return weather::Quantiles();
    };
    for (const OneYear& year : found) {
        if (!year.problems.empty()) return year.problems;
    }
    WeatherSpread spread;
    spread.years = static_cast<int>(years.size());
    spread.light_kwh_m2 = quantiles_of([](const OneYear& y) { return y.light_kwh_m2; });
    spread.electricity_kwh = quantiles_of([](const OneYear& y) { return y.total.electricity_kwh(); });
    spread.heat_kwh = quantiles_of([](const OneYear& y) { return y.total.drawn_kwh; });
    spread.seasonal_factor = quantiles_of([](const OneYear& y) { return y.seasonal_factor; });
    if (!problems.empty()) return problems;
    return std::optional<WeatherSpread>(spread);
}

}  // namespace wg::plan::steps
