#pragma once
// What a survey still lacks before the office can plan without guessing.

#include <QString>
#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

struct Missing {
    QString what;          ///< e.g. "Wind: no value for the place"
    QString until_then;    ///< what the plan uses meanwhile
    std::string place_id;  ///< element to go to; empty: a field of the form
    QString field;         ///< key of the form's field; empty when `place_id` says where
};

/// Nobody has named the place: a new job begins with the position of its weather year.
[[nodiscard]] bool place_is_assumed(const Job& job);

/// In the order of a walk round the house: place, access, roof, spots, demand.
[[nodiscard]] std::vector<Missing> still_to_measure(const Job& job);

}  // namespace wg::ui
