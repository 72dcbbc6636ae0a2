#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/sky/wind.h"

namespace wg::plan::steps {
namespace {

/// Roughness length, EN 1991-1-4 table 4.1.
double roughness_m(Terrain terrain) {
    switch (terrain) {
        case Terrain::sea_0: return 0.003;
        case Terrain::open_i: return 0.01;
        case Terrain::farmland_ii: return 0.05;
        case Terrain::suburb_iii: return 0.3;
        case Terrain::town_iv: return 1.0;
    }
    return 0.3;
}

/// Share of the light on a tested collector that its incidence modifiers leave, hour by hour.
std::vector<double> incidence_of(const sky::PreparedYear& year, const sky::PlaneYear& plane,
                                 const site::PlacedCollector& placed, const Iso9806& tested) {
    const double tilt = radians(placed.tilt_deg);
    const double azimuth = radians(placed.azimuth_deg);
    const double east = std::sin(tilt) * std::sin(azimuth);
    const double north = std::sin(tilt) * std::cos(azimuth);
    std::vector<double> share(year.sun_up.size());
    for (std::size_t h = 0; h < share.size(); ++h) {
        const double cosine = east * year.sun_east[h] + north * year.sun_north[h] + std::cos(tilt) * year.sun_up[h];
        share[h] = tested.incidence(plane.beam_w_m2[h], cosine, plane.sky_diffuse_w_m2[h] + plane.ground_w_m2[h]);
    }
    return share;
}

season::PlateGroup group_of(const Job& job, const sky::PreparedYear& year, const sky::PlaneYear& plane,
                            const PlacementPlan& placement, const std::optional<Iso9806>& tested) {
    season::PlateGroup group;
    const std::size_t hours = year.sun_up.size();
    group.front_w_m2.resize(hours);
    group.rear_w_m2 = plane.rear_w_m2;
    for (std::size_t h = 0; h < hours; ++h)
        group.front_w_m2[h] = plane.beam_w_m2[h] + plane.sky_diffuse_w_m2[h] + plane.ground_w_m2[h];
    const site::PlacedCollector& placed = placement.placed;
    const double height_m = 0.5 * (placed.lowest_m + placed.highest_m);
    const double wind_share = sky::wind_factor_other_terrain(height_m, roughness_m(job.site.terrain));
    group.wind_plate_m_s = year.wind_10m_m_s;
    for (double& wind : group.wind_plate_m_s)
        wind *= wind_share;
    group.tilt_deg = placed.tilt_deg;
    group.sky_view = placement.shade.sky_view;
    group.rear_free = placement.on_frame;
    if (tested) group.incidence = incidence_of(year, plane, placed, *tested);
    return group;
}

// Two collectors side by side under a passing shadow differ by less. Their mean leaves out only what is not linear in
// the light, and a year of one group costs half the time of two.
constexpr double alike_light = 0.02;  // of the year's light, hour by hour
constexpr double alike_wind = 0.02;
constexpr double alike_view = 0.02;

double sum_of(const std::vector<double>& values) {
    return std::accumulate(values.begin(), values.end(), 0.0);
}

bool nearly_alike(const season::PlateGroup& a, const season::PlateGroup& b) {
    if (a.tilt_deg != b.tilt_deg || a.rear_free != b.rear_free || std::abs(a.sky_view - b.sky_view) > alike_view)
        return false;
    const double wind = sum_of(a.wind_plate_m_s);
    if (std::abs(sum_of(b.wind_plate_m_s) - wind) > alike_wind * wind) return false;
    double apart = 0.0;
    double light = 0.0;
    for (std::size_t h = 0; h < a.front_w_m2.size(); ++h) {
        apart += std::abs(a.front_w_m2[h] - b.front_w_m2[h]) + std::abs(a.rear_w_m2[h] - b.rear_w_m2[h]);
        light += a.front_w_m2[h] + a.rear_w_m2[h];
    }
    return apart <= alike_light * light;
}

/// One more collector in a group: everything that reaches it becomes the mean.
void take_in(season::PlateGroup& group, const season::PlateGroup& one) {
    const double share = 1.0 / (group.count + 1.0);
    const auto mean = [share](std::vector<double>& into, const std::vector<double>& other) {
        for (std::size_t h = 0; h < into.size(); ++h)
            into[h] += share * (other[h] - into[h]);
    };
    mean(group.front_w_m2, one.front_w_m2);
    mean(group.rear_w_m2, one.rear_w_m2);
    mean(group.wind_plate_m_s, one.wind_plate_m_s);
    if (!group.incidence.empty()) mean(group.incidence, one.incidence);
    group.sky_view += share * (one.sky_view - group.sky_view);
    ++group.count;
}

/// Collectors nearly alike in everything that reaches them are one group of several. Joined in series the order counts,
/// so only neighbours are put together.
std::vector<season::PlateGroup> groups_of(const Job& job, const sky::PreparedYear& year, Joined joined,
                                          const std::optional<Iso9806>& tested,
                                          const std::vector<sky::PlaneYear>& planes,
                                          const std::vector<PlacementPlan>& placements) {
    std::vector<season::PlateGroup> groups;
    for (std::size_t i = 0; i < planes.size(); ++i) {
        season::PlateGroup next = group_of(job, year, planes[i], placements[i], tested);
        next.count = 1;
        const std::ptrdiff_t first = joined == Joined::series && !groups.empty() ? std::ssize(groups) - 1 : 0;
        const auto same = std::find_if(groups.begin() + first, groups.end(),
                                       [&next](const season::PlateGroup& g) { return nearly_alike(g, next); });
        if (same != groups.end())
            take_in(*same, next);
        else
            groups.push_back(std::move(next));
    }
    return groups;
}

}  // namespace

season::Input season_input(const Job& job, const Selection& with, const std::vector<sky::PlaneYear>& planes,
                           const std::vector<PlacementPlan>& placements, const pipework::Run& run) {
    season::Input input;
    input.collector = *with.collector;
    input.block = *with.block;
    input.cylinder = *with.cylinder;
    input.refrigerant = with.refrigerant;
    input.groups = groups_of(job, with.weather->sky, with.choice->joined, with.collector->iso9806, planes, placements);
    input.joined = with.choice->joined;
    const sky::PreparedYear& year = with.weather->sky;
    input.sun_up = year.sun_up;
    input.air_c = year.air_c;
    input.dew_point_c = year.dew_point_c;
    input.sky_k = year.sky_temperature_k;
    input.pressure_pa = year.pressure_pa;
    input.room_c = with.spot->room_temperature_c;
    input.line_ua_w_k = run.line_ua_w_k;
    input.suction_drop_k = run.suction_drop_k;
    input.demand = job.demand;
    input.first_weekday = 4;  // of 2027, whose sun the year has: a Friday
    input.surplus_w = photovoltaic_surplus_w(job, year);
    return input;
}

season::Options options_for_comparing() noexcept {
    season::Options options;
    options.step_s = 900.0;
    options.warm_up_days = 5;
    options.keep_hours = false;
    return options;
}

}  // namespace wg::plan::steps
