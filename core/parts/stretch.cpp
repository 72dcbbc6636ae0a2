#include <algorithm>

#include "core/job/words.h"
#include "core/parts/parts.h"
#include "core/quantity/text.h"

namespace wg::parts {

Stretch stretch_of(const LabourTask& task, const Difficulty& difficulty, const Circumstances& at) {
    Stretch out;
    const auto take = [&out](double factor, const std::string& words) {
        if (factor == 1.0) return;
        out.factor *= factor;
        out.why += (out.why.empty() ? "" : " x ") + plain(factor) + " (" + words + ")";
    };
    if (task.by_height && at.height_m) {
        double factor = 1.0;
        for (const Difficulty::Height& step : difficulty.heights)
            if (*at.height_m > step.over_m) factor = step.factor;
        take(factor, fixed(*at.height_m, 1) + " m over ground");
    }
    if (task.by_covering) {
        // Of several coverings the hardest counts: the work is priced once for all plates.
        const Difficulty::OfCovering* hardest = nullptr;
        for (const Difficulty::OfCovering& one : difficulty.coverings) {
            const bool here = std::find(at.coverings.begin(), at.coverings.end(), one.covering) != at.coverings.end();
            if (here && (hardest == nullptr || one.factor > hardest->factor)) hardest = &one;
        }
        if (hardest != nullptr) take(hardest->factor, text_of(hardest->covering));
    }
    if (task.by_access) {
        for (const Difficulty::Access& one : difficulty.access)
            if (one.id == at.access) take(one.factor, one.text);
    }
    if (task.by_storeys && at.storeys > 0)
        take(1.0 + difficulty.each_storey * at.storeys, counted(at.storeys, "storey", "storeys") + " to carry");
    return out;
}

}  // namespace wg::parts
