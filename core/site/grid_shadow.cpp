#include "core/site/grid_shadow.h"

#include <utility>

namespace wg::site {

GridShadow::GridShadow(CellGrid grid, std::vector<Occluder> occluders)
    : grid_(std::move(grid)),
      occluders_(std::move(occluders)),
      scratch_(grid_),
      opaque_(grid_.columns, grid_.rows),
      own_opaque_(opaque_),
      own_crown_(opaque_) {
    if (grid_.empty()) return;
    shadows_.reserve(occluders_.size());
    for (const Occluder& occluder : occluders_)
        shadows_.emplace_back(occluder, grid_);
}

void GridShadow::start() {
    opaque_.clear();
    for (std::size_t i = 0; i < crowns_in_use_; ++i)
        crowns_[i].cells.clear();
    crowns_in_use_ = 0;
}

void GridShadow::keep_crown(std::size_t occluder) {
    if (crowns_in_use_ == crowns_.size()) crowns_.push_back({0, CellMask(grid_.columns, grid_.rows)});
    Crown& crown = crowns_[crowns_in_use_++];
    crown.occluder = occluder;
    std::swap(crown.cells, own_crown_);  // the cleared mask of an earlier sun comes back
}

std::vector<double> GridShadow::passed(int month) const {
    std::vector<double> share(grid_.size(), 1.0);
    groups([&](std::size_t k) { return occluders_[k].crown_transmittance(month); },
           [&](int row, int word, std::uint64_t bits, double passed) {
               for (; bits != 0; bits &= bits - 1) {
                   share[static_cast<std::size_t>(row) * static_cast<std::size_t>(grid_.columns) +
                         static_cast<std::size_t>(64 * word + std::countr_zero(bits))] = passed;
               }
           });
    return share;
}

}  // namespace wg::site
