#pragma once
// A place that a search found, in words: by the search's estimate, and by the plan once that is there.

#include <QString>

#include "core/plan/plan.h"
#include "core/siting/siting.h"

namespace wg::ui {

/// What is said of one place. `plan` is null until the place is planned, `present` until the choice as it stands is.
struct FoundPlace {
    int number = 1;
    const siting::Place* place = nullptr;
    const Site* site = nullptr;
    const CollectorModel* model = nullptr;
    const plan::Plan* plan = nullptr;
    const plan::Plan* present = nullptr;
    bool planning = false;  ///< further plans are on their way
};

/// Short lines: the list is as narrow as the panel.
[[nodiscard]] QString place_words(const FoundPlace& found);
/// What does not fit: light on the plate, and what stands against the place.
[[nodiscard]] QString place_details(const FoundPlace& found);
/// "seen from 25 % of the street's side", or all round where no street is marked.
[[nodiscard]] QString seen_words(double seen, const Site& site);
/// The present place in one line, by the same estimate.
[[nodiscard]] QString measures_words(const siting::Measures& measures, const Site& site);

}  // namespace wg::ui
