#include "core/plan/parts_of_plan.h"
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

}  // namespace

season::Input season_input(const Job& job, const Selection& with, const std::vector<sky::PlaneYear>& planes,
                           const std::vector<PlacementPlan>& placements, const pipework::Run& run) {
    season::Input input;
    input.collector = *with.collector;
    input.collectors = static_cast<int>(placements.size());
    input.block = *with.block;
    input.cylinder = *with.cylinder;
    input.refrigerant = with.refrigerant;
    const sky::PreparedYear& year = with.weather->sky;
    const std::size_t hours = year.sun_up.size();
    input.front_w_m2.assign(hours, 0.0);
    input.rear_w_m2.assign(hours, 0.0);
    const double share = 1.0 / static_cast<double>(planes.size());
    double height_m = 0.0;
    double tilt_deg = 0.0;
    double sky_view = 0.0;
    bool all_free = true;
    for (std::size_t i = 0; i < planes.size(); ++i) {
        const sky::PlaneYear& plane = planes[i];
        for (std::size_t h = 0; h < hours; ++h) {
            input.front_w_m2[h] += share * (plane.beam_w_m2[h] + plane.sky_diffuse_w_m2[h] + plane.ground_w_m2[h]);
            input.rear_w_m2[h] += share * plane.rear_w_m2[h];
        }
        const site::PlacedCollector& placed = placements[i].placed;
        height_m += share * 0.5 * (placed.lowest_m + placed.highest_m);
        tilt_deg += share * placed.tilt_deg;
        sky_view += share * placements[i].shade.sky_view;
        all_free = all_free && placements[i].on_frame;
    }
    input.sun_up = year.sun_up;
    input.air_c = year.air_c;
    input.dew_point_c = year.dew_point_c;
    input.sky_k = year.sky_temperature_k;
    input.pressure_pa = year.pressure_pa;
    input.wind_plate_m_s = year.wind_10m_m_s;
    const double wind_share = sky::wind_factor_other_terrain(height_m, roughness_m(job.site.terrain));
    for (double& wind : input.wind_plate_m_s)
        wind *= wind_share;
    input.tilt_deg = tilt_deg;
    input.sky_view = sky_view;
    input.rear_free = all_free;
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
