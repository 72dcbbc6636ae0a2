#include <cmath>

#include "core/plan/parts_of_plan.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/site/view.h"

namespace wg::plan::steps {
namespace {

/// Sums by month and kind of light. `open` is the same plane without shade on the beam.
void add_months(const sky::PlaneYear& plane, const sky::PlaneYear& open, PlacementPlan& placed) {
    for (int hour = 0; hour < weather::hours_in_year; ++hour) {
        const auto h = static_cast<std::size_t>(hour);
        const auto month = static_cast<std::size_t>(month_of_hour(hour) - 1);
        placed.plane_month_kwh_m2[month] +=
            1e-3 * (plane.beam_w_m2[h] + plane.sky_diffuse_w_m2[h] + plane.ground_w_m2[h]);
        placed.plane_month_beam_kwh_m2[month] += 1e-3 * plane.beam_w_m2[h];
        placed.plane_month_diffuse_kwh_m2[month] += 1e-3 * plane.sky_diffuse_w_m2[h];
        placed.plane_month_ground_kwh_m2[month] += 1e-3 * plane.ground_w_m2[h];
        placed.plane_month_shade_loss_kwh_m2[month] += 1e-3 * (open.beam_w_m2[h] - plane.beam_w_m2[h]);
    }
}

}  // namespace

sky::PlaneInput plane_of(const Job& job, const PlacementPlan& placed) {
    sky::PlaneInput input;
    input.tilt_deg = placed.placed.tilt_deg;
    input.azimuth_deg = placed.placed.azimuth_deg;
    input.albedo = job.site.ground_albedo;
    input.model = placed.diffuse_model;
    input.sky_view = placed.shade.sky_view;
    input.ground_view = placed.shade.ground_view;
    // Walls, trees and hills take the place of the sky and ground that they hide, and are as bright as bare ground.
    const double up = std::cos(radians(input.tilt_deg));
    const double things = 0.5 * (1.0 + up) * (1.0 - input.sky_view) + 0.5 * (1.0 - up) * (1.0 - input.ground_view);
    input.from_things = site::ViewFactors::assumed_things_albedo * things;
    input.rear_open = placed.on_frame ? 1.0 : 0.0;
    return input;
}

std::vector<sky::PlaneYear> light(const Job& job, const Selection& with, const Options& options, Plan& plan) {
    std::vector<sky::PlaneYear> planes;
    const sky::PreparedYear& year = with.weather->sky;
    for (const Placement& placement : with.choice->placements) {
        const Surface& surface = *find_surface(job.site, placement.surface_id);
        PlacementPlan placed;
        placed.placement_id = placement.id;
        placed.label = placement.label;
        placed.surface_id = surface.id;
        placed.surface_label = surface.label;
        placed.placed = site::place(surface, job.site.sketch_up_azimuth_deg, placement, *with.collector);
        placed.on_frame = placement.frame_tilt_deg.has_value();
        if (!options.yield) {
            plan.placements.push_back(std::move(placed));
            continue;
        }
        placed.shade =
            site::shade_of(job.site, placed.placed, surface.id, year, options.shade_samples_x, options.shade_samples_y);

        const sky::PlaneInput input = plane_of(job, placed);
        sky::PlaneYear plane = sky::plane_year(year, input, placed.shade.beam_share);
        placed.plane_kwh_m2 = plane.total_kwh_m2;
        placed.plane_unshaded_kwh_m2 = plane.unshaded_kwh_m2;
        sky::PlaneInput front = input;
        front.rear_open = 0.0;
        add_months(plane, sky::plane_year(year, front, {}), placed);
        planes.push_back(std::move(plane));
        plan.placements.push_back(std::move(placed));
    }
    return planes;
}

}  // namespace wg::plan::steps
