#pragma once
// All workings of a plan in order, grouped as a fitter asks for them, and the way from a finding or a fixing point to
// the working that belongs to it. Keys are taken by their words, so that further workings find their group.

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace wg::ui {

enum class WorkingSubject { wind_and_snow, fixing, run, electrics, water, room, yield, money, readings, other };

struct NamedWorking {
    Working working;
    std::string placement_id;  ///< of the collector it is about; empty: the whole plan
    QString place;             ///< that collector's label, or those of the ones it holds for, or "all collectors"
    int holds_for = 1;         ///< how many collectors
    int point = 0;             ///< number of the fixing point it is about; 0: none
};

struct WorkingGroup {
    WorkingSubject subject = WorkingSubject::other;
    QString title;  ///< "Fixing points: Collector 1"
    std::vector<NamedWorking> workings;
};

/// Every working of the plan, its placements, services and assessed readings once; the use of each fixing point and the
/// price build-up ("quote.price") as further ones. Groups without a working are left out.
[[nodiscard]] std::vector<WorkingGroup> grouped_workings(const plan::Plan& plan);

[[nodiscard]] WorkingSubject subject_of(const std::string& key);

/// Position of a working: its group and its place there.
struct WorkingAt {
    std::size_t group = 0;
    std::size_t row = 0;
    friend bool operator==(const WorkingAt&, const WorkingAt&) = default;
};
[[nodiscard]] const NamedWorking& at(const std::vector<WorkingGroup>& groups, const WorkingAt& where);

/// By key, of the collector when one is named. Of several the first; of "fixing.worst" the one with the greatest use
/// (`plan` tells).
[[nodiscard]] std::optional<WorkingAt> find_working(const std::vector<WorkingGroup>& groups, const plan::Plan& plan,
                                                    const std::string& key, const std::string& placement_id = {});
/// Of one fixing point.
[[nodiscard]] std::optional<WorkingAt> working_of_point(const std::vector<WorkingGroup>& groups,
                                                        const std::string& placement_id, int point);
/// The one that a finding rests on: of the same name, else of the same subject with most words in common, else the
/// chief one of its subject; none where that would only mislead.
[[nodiscard]] std::optional<WorkingAt> working_of(const std::vector<WorkingGroup>& groups, const Finding& finding);

}  // namespace wg::ui
