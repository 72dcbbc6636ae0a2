#pragma once
// The verbs about several collectors of the current choice at once (see edits.h): one undo step whatever their number.

#include <QString>
#include <string>
#include <vector>

#include "core/fixing/arrange.h"
#include "core/job/job.h"

namespace wg::ui {

class JobSession;

struct PlacedAt {
    std::string id;
    Point2 middle;
};
/// Moves each to its place. The same collectors in a row of calls become one step (a drag); end with end_merge().
void place_collectors(JobSession& session, const std::vector<PlacedAt>& to);
void align_collectors(JobSession& session, const std::vector<std::string>& ids, fixing::Align to);
/// Returns why not; empty: done. Positions are whole millimetres, so that gaps may differ by one.
QString distribute_collectors(JobSession& session, const std::vector<std::string>& ids, fixing::Along along);
/// Each to the next turn that the maker allows; direction 1 counter-clockwise. Returns why none turned; empty: done.
QString turn_collectors(JobSession& session, const std::vector<std::string>& ids, int direction);
void set_hands(JobSession& session, const std::vector<std::string>& ids, Hand hand);
void remove_collectors(JobSession& session, const std::vector<std::string>& ids);

struct RowAdded {
    std::vector<std::string> ids;  ///< of the new collectors; empty: refused
    QString refusal;               ///< in words
};
/// `count` more like it beside it, `gap_m` apart.
RowAdded add_row(JobSession& session, const std::string& placement_id, int count, double gap_m);

}  // namespace wg::ui
