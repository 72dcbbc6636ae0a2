#pragma once
// Where on the site a collector goes best.

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/fixing/rules.h"
#include "core/job/job.h"
#include "core/siting/objective.h"
#include "core/siting/seats.h"
#include "core/sky/prepared.h"

namespace wg::siting {

/// What the light on a plate and the length of the run do to the year, worked out beforehand by years of operation at a
/// few points: straight lines between them by light, and a slope by run.
struct YieldCurve {
    std::vector<double> light_kwh_m2;  ///< rising, at least two
    std::vector<double> electricity_kwh, pump_heat_kwh;
    double at_run_m = 0.0;  ///< run of the points above
    double electricity_per_run_m = 0.0;
    double pump_heat_per_run_m = 0.0;
    [[nodiscard]] double electricity(double light, double run_m) const noexcept;
    [[nodiscard]] double pump_heat(double light, double run_m) const noexcept;
};

/// Light of a year on a plate in a seat without any shade, kWh/m2.
struct OpenLight {
    double beam = 0.0;  ///< with circumsolar
    double sky = 0.0;
    double ground = 0.0;
};

struct Input {
    const Site* site = nullptr;               ///< not owned
    const sky::PreparedYear* year = nullptr;  ///< not owned
    const Catalogue* catalogue = nullptr;     ///< not owned; fixing methods
    CollectorModel collector;
    BlockModel block;
    fixing::ActionRules rules;
    Choice choice;           ///< its other collectors stay where they are
    std::size_t moving = 0;  ///< which placement of the choice goes; its size: a further one is added
    Point3 block_connection;
    double refrigerant_kg = 0.5;
    std::vector<Seat> seats;
    std::vector<OpenLight> open_light;  ///< of each seat
    std::vector<YieldCurve> yields;     ///< of each seat
    Objective objective;
    double cell_m = 0.10;         ///< step of the places, and cell of the shade map; 0.02..1
    int places = 5;               ///< wanted at most
    double apart_m = 0.0;         ///< two places on one surface count as one when nearer; 0: the plate's long side
    bool keep_free_strip = true;  ///< the strip that the maker asks for round the plate
};

struct Place {
    std::size_t seat = 0;
    Placement placement;  ///< without id and label
    Measures measures;
    double score = 0.0;
};

struct Outcome {
    std::vector<Place> places;     ///< best first; none: no place keeps the rules
    std::size_t looked_at = 0;     ///< places that keep the rules of layout
    std::size_t judged = 0;        ///< of these, fixings and view worked out
    bool cancelled = false;        ///< `places` is empty then
    std::optional<Place> present;  ///< where the moving collector lies now, to the nearest cell, by the same estimate
    std::vector<std::string> remarks;  ///< surfaces without a place, and why
};

/// Called now and then with the share done, 0..1, from one thread at a time; false cancels.
using Progress = std::function<bool(double)>;

/// The same places, to the bit, as judging every place of the grid by `judge` and sorting by score, then by seat, row,
/// column and hand. Uses two threads. Input that is not complete (sizes that differ, no seats,
/// weights that are not valid) gives no places.
[[nodiscard]] Outcome best_places(const Input& input, const Progress& progress = {});

}  // namespace wg::siting
