#pragma once
// A building of the job and what stands among the site's surfaces and obstacles because of it. Editing the building
// makes those anew; what people entered on them (names, rafters, roof windows, collectors) stays where it was measured.

#include <functional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/roof/building.h"

namespace wg::roof {

/// Gives a new UUID at each call.
using NewId = std::function<std::string()>;

struct Rebuilt {
    Job job;
    /// What went with planes that the building no longer has, in words; empty: nothing.
    std::vector<std::string> lost;
};

/// The job with this building in place of the one of its id, or added. A surface or parapet over an edge that was there
/// before keeps its id, label, rafters and keep-outs, which are measured from the lower left corner of its plane, and
/// its covering unless it had the building's and that changes. Problems: a house that cannot be (footprint, pitch,
/// overhang), or a collector on a plane that would go.
[[nodiscard]] Result<Rebuilt> with_building(const Job& job, const Building& building, const NewId& new_id);

/// Without the building and all that was made from it. Problem: no such building, or a collector stands on it.
[[nodiscard]] Result<Rebuilt> without_building(const Job& job, const std::string& building_id);

/// The building forgotten, its surfaces and parapets kept as drawn free.
[[nodiscard]] Result<Job> released(const Job& job, const std::string& building_id);

/// A corner more on an edge: the edge keeps its id up to the corner. Problem: no such edge, or an outline that crosses.
[[nodiscard]] Result<Building> with_corner(const Building& building, std::size_t edge, const Point2& corner,
                                           const NewId& new_id);
/// A corner less: the edge that began there goes. Problem: three corners are the least, or the outline would cross.
[[nodiscard]] Result<Building> without_corner(const Building& building, std::size_t corner);
/// A corner elsewhere. Problem: no such corner, or an outline that crosses.
[[nodiscard]] Result<Building> with_corner_at(const Building& building, std::size_t corner, const Point2& place);

/// An edge at another length: the next edge moves along it, so that angles stay. Problem: as above.
[[nodiscard]] Result<Building> with_edge_length(const Building& building, std::size_t edge, double length_m);
/// The whole building moved over the ground.
[[nodiscard]] Building moved(const Building& building, double dx_m, double dy_m);
/// The pitch at which the ridge would lie at this height over the ground. Problem: a flat roof, a ridge not above the
/// eaves, or a pitch out of range.
[[nodiscard]] Result<double> pitch_for_ridge(const Building& building, double ridge_m);

/// Measures of the building as house_of wants them.
[[nodiscard]] HouseForm form_of(const Building& building);
[[nodiscard]] std::vector<Point2> footprint_of(const Building& building);
/// True bearing that the wall over an edge looks to, whichever way round the footprint was drawn.
[[nodiscard]] double wall_faces_deg(const Building& building, std::size_t edge, double sketch_up_azimuth_deg);

}  // namespace wg::roof
