#include "core/plan/best_places.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <future>
#include <utility>

#include "core/plan/parts_of_plan.h"

namespace wg::plan {
namespace {

using steps::Selection;

constexpr std::array<double, 2> run_points_m = {6.0, 16.0};
struct LightPoint {
    double beam_share, sky_view;
};
constexpr std::array<LightPoint, 3> light_points = {{{0.0, 0.7}, {0.5, 1.0}, {1.0, 1.0}}};

/// Tilt, bearing and height of a plate in the middle of its surface stand for the seat.
PlacementPlan nominal(const Job& job, const Selection& with, const siting::Seat& seat) {
    const Surface& surface = *find_surface(job.site, seat.surface_id);
    const site::Bounds b = site::bounds_of(surface.outline);
    const Placement placement =
        siting::placement_in(seat, {0.5 * (b.min_x_m + b.max_x_m), 0.5 * (b.min_y_m + b.max_y_m)}, Hand::right);
    PlacementPlan out;
    out.surface_id = surface.id;
    out.surface_label = surface.label;
    out.on_frame = seat.frame_tilt_deg.has_value();
    out.placed = site::place(surface, job.site.sketch_up_azimuth_deg, placement, *with.collector);
    return out;
}

pipework::Run run_of_length(const Selection& with, double length_m) {
    pipework::Input input = steps::run_input(with);
    input.collector_connection = input.block_connection;
    input.collector_connection.x_m += length_m;
    return pipework::run_of(input).run;
}

struct SeatYield {
    siting::OpenLight open;
    siting::YieldCurve curve;
    std::vector<Problem> problems;
};

SeatYield yield_of(const Job& job, const Selection& with, const siting::Seat& seat, std::size_t collectors) {
    SeatYield out;
    const sky::PreparedYear& year = with.weather->sky;
    std::vector<PlacementPlan> placements(1, nominal(job, with, seat));
    sky::PlaneInput plane;
    plane.tilt_deg = placements[0].placed.tilt_deg;
    plane.azimuth_deg = placements[0].placed.azimuth_deg;
    plane.albedo = job.site.ground_albedo;
    plane.rear_open = placements[0].on_frame ? 1.0 : 0.0;
    const auto sum_kwh = [](const std::vector<double>& series) {
        double sum = 0.0;
        for (const double w : series)
            sum += w;
        return 1e-3 * sum;
    };
    const auto run_year = [&](const LightPoint& at, double run_m) -> std::optional<season::Year> {
        plane.sky_view = at.sky_view;
        const std::vector<float> share(year.sun_up.size(), static_cast<float>(at.beam_share));
        std::vector<sky::PlaneYear> planes(1, sky::plane_year(year, plane, share));
        placements[0].shade.sky_view = at.sky_view;
        if (at.beam_share == 1.0 && at.sky_view == 1.0) {
            out.open = {sum_kwh(planes[0].beam_w_m2), sum_kwh(planes[0].sky_diffuse_w_m2),
                        sum_kwh(planes[0].ground_w_m2)};
        }
        if (run_m == run_points_m[0]) out.curve.light_kwh_m2.push_back(planes[0].total_kwh_m2);
        season::Input input = steps::season_input(job, with, planes, placements, run_of_length(with, run_m));
        input.groups[0].count = static_cast<int>(collectors);
        Result<season::Year> result = season::run(input, steps::options_for_comparing());
        if (result) return std::move(result).value();
        out.problems = result.problems();
        return std::nullopt;
    };
    for (const LightPoint& at : light_points) {
        const std::optional<season::Year> result = run_year(at, run_points_m[0]);
        if (!result) return out;
        out.curve.electricity_kwh.push_back(result->total.electricity_kwh());
        out.curve.pump_heat_kwh.push_back(result->total.condenser_kwh);
    }
    const std::optional<season::Year> longer = run_year(light_points.back(), run_points_m[1]);
    if (!longer) return out;
    const double span_m = run_points_m[1] - run_points_m[0];
    out.curve.at_run_m = run_points_m[0];
    out.curve.electricity_per_run_m = (longer->total.electricity_kwh() - out.curve.electricity_kwh.back()) / span_m;
    out.curve.pump_heat_per_run_m = (longer->total.condenser_kwh - out.curve.pump_heat_kwh.back()) / span_m;
    return out;
}

/// Why a surface has no seat; empty when it has one.
std::string why_none(const Surface& surface, const CollectorModel& collector, const std::vector<siting::Seat>& seats,
                     bool others) {
    const auto has_seat = [&](const siting::Seat& s) { return s.surface_id == surface.id; };
    if (std::any_of(seats.begin(), seats.end(), has_seat)) return {};
    if (surface.outline.size() < 3) return surface.label + ": no outline";
    if (surface.tilt_deg > collector.tilt_max_deg) return surface.label + ": steeper than the collector's data allow";
    return surface.label + ": no fixing method suits its covering" + (others ? " and the other collectors' too" : "");
}

std::vector<SeatYield> yields_of(const Job& job, const Selection& with, const std::vector<siting::Seat>& seats,
                                 std::size_t collectors, const siting::Progress& progress, bool& cancelled) {
    std::vector<SeatYield> out(seats.size());
    std::atomic<std::size_t> next = 0;
    std::atomic<bool> stop = false;
    const auto work = [&](bool reports) {
        for (std::size_t i = next++; i < seats.size() && !stop; i = next++) {
            if (reports && progress && !progress(0.6 * static_cast<double>(i) / static_cast<double>(seats.size()))) {
                stop = true;
                return;
            }
            out[i] = yield_of(job, with, seats[i], collectors);
        }
    };
    std::future<void> other = std::async(std::launch::async, work, false);
    work(true);
    other.get();
    cancelled = stop;
    return out;
}

}  // namespace

Result<FoundPlaces> best_places(const Job& job, const Reference& reference, const PlaceWish& wish,
                                const siting::Progress& progress) {
    if (wish.weights && !wish.weights->valid()) {
        return Problem{"weights", "a weight is negative, too large or not a number",
                       "Enter weights from 0 to 10 000 points"};
    }
    Options options;
    options.choice_id = wish.choice_id;
    Result<Selection> selected = steps::select(job, reference, options);
    if (!selected) return selected.problems();
    const Selection with = std::move(selected).value();

    const std::vector<Placement>& placements = with.choice->placements;
    const std::size_t moving = std::min(wish.moving, placements.size());
    std::vector<Covering> others_on;
    for (std::size_t i = 0; i < placements.size(); ++i) {
        if (i != moving) others_on.push_back(find_surface(job.site, placements[i].surface_id)->covering);
    }
    FoundPlaces found;
    found.seats =
        siting::seats_of(job.site, *with.collector, reference.catalogue, with.choice->fixing_method, others_on);
    if (found.seats.empty()) {
        return Problem{"site.surfaces", "no surface can carry the collector: tilt, covering or size do not suit",
                       "Sketch another surface in Visit, or choose another collector"};
    }
    siting::Input input;
    input.site = &job.site;
    input.year = &with.weather->sky;
    input.catalogue = &reference.catalogue;
    input.collector = *with.collector;
    input.block = *with.block;
    input.rules = with.rules->actions;
    input.choice = *with.choice;
    input.moving = moving;
    const std::size_t collectors = placements.size() + (moving == placements.size() ? 1 : 0);
    input.block_connection = steps::block_connection(*with.spot, *with.cylinder);
    input.refrigerant_kg = with.block->charge_kg / static_cast<double>(collectors);
    input.objective = found.objective = wish.weights ? *wish.weights : siting::objective_for(wish.aim);
    input.cell_m = wish.cell_m;
    input.places = wish.places;
    input.keep_free_strip = wish.keep_free_strip;
    input.seats = found.seats;

    bool cancelled = false;
    for (SeatYield& yield : yields_of(job, with, found.seats, collectors, progress, cancelled)) {
        if (!yield.problems.empty()) return yield.problems;
        input.open_light.push_back(yield.open);
        input.yields.push_back(std::move(yield.curve));
    }
    if (cancelled) {
        found.outcome.cancelled = true;
        return found;
    }
    found.outcome = siting::best_places(
        input, progress ? [&](double share) { return progress(0.6 + 0.4 * share); } : siting::Progress{});
    for (const Surface& surface : job.site.surfaces) {
        std::string why = why_none(surface, *with.collector, found.seats, !others_on.empty());
        if (!why.empty()) found.outcome.remarks.push_back(std::move(why));
    }
    found.method =
        "every place of a grid on every surface, both hands; light by the shade of each cell, electricity and heat by "
        "years of operation at three amounts of light and two lengths of run, straight lines between; weather " +
        with.weather->year.source;
    return found;
}

Job with_place(Job job, const PlaceWish& wish, const FoundPlaces& found, std::size_t place) {
    if (place >= found.outcome.places.size()) return job;
    const siting::Place& at = found.outcome.places[place];
    const Choice* selected = wish.choice_id.empty() ? chosen_choice(job) : find_choice(job, wish.choice_id);
    if (selected == nullptr) return job;
    Choice& choice = job.choices[static_cast<std::size_t>(selected - job.choices.data())];
    Placement placement = at.placement;
    if (wish.moving < choice.placements.size()) {
        Placement& old = choice.placements[wish.moving];
        placement.id = old.id;
        placement.label = old.label;
        placement.extra_json = old.extra_json;
        old = std::move(placement);
    } else {
        choice.placements.push_back(std::move(placement));
    }
    choice.fixing_method = found.seats[at.seat].fixing_method;
    return job;
}

}  // namespace wg::plan
