#pragma once
// Where this job's collector would go best: core/siting fed with years of operation of this job's equipment.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/siting/siting.h"

namespace wg::plan {

struct PlaceWish {
    std::string choice_id;   ///< empty: the chosen one
    std::size_t moving = 0;  ///< which of its collectors goes; their number: one more is placed
    siting::Aim aim = siting::Aim::running_cost;
    std::optional<siting::Objective> weights;  ///< in place of the aim's own
    double cell_m = 0.10;                      ///< 0.02..1
    int places = 5;
    bool keep_free_strip = true;
};

struct FoundPlaces {
    siting::Outcome outcome;
    std::vector<siting::Seat> seats;
    siting::Objective objective;
    std::string method;  ///< how places were compared, for people
};

/// Electricity and heat of a place come from years of operation at three amounts of light and two lengths of run for
/// each way the plate can lie, with straight lines between: good for ranking. plan() gives the figures of a place.
/// Problems as plan() has them, or when no surface can carry the collector or a weight is out of range.
[[nodiscard]] Result<FoundPlaces> best_places(const Job& job, const Reference& reference, const PlaceWish& wish,
                                              const siting::Progress& progress = {});

/// The job with the collector moved to the place (or added there). The fixing method of the place's seat is taken over.
[[nodiscard]] Job with_place(Job job, const PlaceWish& wish, const FoundPlaces& found, std::size_t place);

}  // namespace wg::plan
