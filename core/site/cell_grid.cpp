#include "core/site/cell_grid.h"

#include <algorithm>
#include <cmath>

#include "core/site/vec.h"

namespace wg::site {

bool CellGrid::finish() {
    for (const double v : {first.x_m, first.y_m, first.z_m}) {
        if (!(std::abs(v) <= 1e9)) return false;
    }
    const Point3 area = cross(step_x, step_y);
    const double size = norm(area);
    if (!(size > 1e-12) || !std::isfinite(size)) return false;
    normal = area * (1.0 / size);
    const Point3 across = cross(step_y, normal), along = cross(normal, step_x);
    per_x = across * (1.0 / dot(step_x, across));
    per_y = along * (1.0 / dot(step_y, along));
    return true;
}

CellGrid CellGrid::over(const Surface& surface, double sketch_up_azimuth_deg, double cell_m, double off_m) {
    CellGrid grid;
    if (surface.outline.size() < 3 || !(cell_m > 0.0)) return grid;
    const Bounds b = bounds_of(surface.outline);
    const double columns = std::ceil(b.width_m() / cell_m - 1e-9), rows = std::ceil(b.height_m() / cell_m - 1e-9);
    if (!(columns * rows <= most_cells) || !(columns * rows >= 1.0)) return grid;
    const Frame frame = frame_of(surface, sketch_up_azimuth_deg);
    grid.step_x = frame.right * cell_m;
    grid.step_y = frame.up * cell_m;
    grid.first = to_space(frame, {b.min_x_m + 0.5 * cell_m, b.min_y_m + 0.5 * cell_m}, off_m);
    if (!grid.finish()) return grid;
    grid.columns = static_cast<int>(columns);
    grid.rows = static_cast<int>(rows);
    grid.middles.reserve(static_cast<std::size_t>(columns * rows));
    for (int r = 0; r < grid.rows; ++r) {
        for (int c = 0; c < grid.columns; ++c) {
            grid.middles.push_back(
                to_space(frame, {b.min_x_m + (c + 0.5) * cell_m, b.min_y_m + (r + 0.5) * cell_m}, off_m));
        }
    }
    return grid;
}

CellGrid CellGrid::over(const std::vector<Point3>& corners, int columns, int rows) {
    CellGrid grid;
    if (corners.size() != 4 || columns < 1 || rows < 1 || !(1.0 * columns * rows <= most_cells)) return grid;
    const Point3 along = corners[1] - corners[0], across = corners[3] - corners[0];
    grid.step_x = along * (1.0 / columns);
    grid.step_y = across * (1.0 / rows);
    grid.first = corners[0] + along * (0.5 / columns) + across * (0.5 / rows);
    if (!grid.finish()) return grid;
    grid.columns = columns;
    grid.rows = rows;
    for (int j = 0; j < rows; ++j) {
        for (int i = 0; i < columns; ++i)
            grid.middles.push_back(corners[0] + along * ((i + 0.5) / columns) + across * ((j + 0.5) / rows));
    }
    return grid;
}

int CellMask::count() const noexcept {
    int cells = 0;
    for (int r = row_from_; r < row_to_; ++r) {
        for (int w = 0; w < words_; ++w)
            cells += count(word(r, w));
    }
    return cells;
}

void CellMask::clear() noexcept {
    if (none()) return;
    std::fill(row(row_from_), row(row_from_) + static_cast<std::ptrdiff_t>(row_to_ - row_from_) * words_, 0);
    row_from_ = row_to_ = 0;
}

void CellMask::add(const CellMask& other) noexcept {
    if (other.none()) return;
    touch(other.row_from_);
    touch(other.row_to_ - 1);
    std::uint64_t* to = row(other.row_from_);
    const std::uint64_t* from = other.row(other.row_from_);
    const std::ptrdiff_t words = static_cast<std::ptrdiff_t>(other.row_to_ - other.row_from_) * words_;
    for (std::ptrdiff_t i = 0; i < words; ++i)
        to[i] |= from[i];
}

}  // namespace wg::site
