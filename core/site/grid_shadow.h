#pragma once
// The shadows of everything on the site on one grid of cells, sun by sun.

#include <bit>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/site/cell_grid.h"
#include "core/site/occluders.h"
#include "core/site/shadow.h"

namespace wg::site {

/// Holds the grid, the occluders and the shadows at the last sun. One for each thread. Not to be copied: shadows point
/// to grid and occluders.
class GridShadow {
   public:
    GridShadow(CellGrid grid, std::vector<Occluder> occluders);
    GridShadow(const GridShadow&) = delete;
    GridShadow& operator=(const GridShadow&) = delete;

    struct Crown {
        std::size_t occluder = 0;
        CellMask cells;  ///< whose ray meets the crown; behind something opaque either way
    };

    [[nodiscard]] const CellGrid& grid() const noexcept { return grid_; }
    [[nodiscard]] const std::vector<Occluder>& occluders() const noexcept { return occluders_; }
    [[nodiscard]] const CellMask& opaque() const noexcept { return opaque_; }  ///< ray stopped
    [[nodiscard]] std::size_t crown_count() const noexcept { return crowns_in_use_; }
    [[nodiscard]] const Crown& crown(std::size_t i) const noexcept { return crowns_[i]; }  ///< order of the occluders

    /// The shadows when the sun stands in that direction (unit vector, sketch). Identical, cell by cell, to the product
    /// of `Occluder::passes` from the cells' middles. Calls `each(k, opaque, crown)` for each occluder that may throw
    /// shade, with its own cells. False when there is none. Without shadow for a sun behind the plane.
    template <class Each>
    bool cast(Point3 to_sun, Each each);
    bool cast(Point3 to_sun) {
        return cast(to_sun, [](std::size_t, const CellMask&, const CellMask&) {});
    }

    /// The same for some of the occluders only, in ascending order.
    template <class Each>
    bool cast(Point3 to_sun, const std::vector<std::size_t>& which, Each each);
    /// Shadow::covered of occluder k.
    [[nodiscard]] double covered(const SunOnGrid& sun, std::size_t k) { return shadows_[k].covered(sun, scratch_); }

    /// Calls `group(row, word, bits, passed)` for cells in shade: those of `bits` in that word of the row let the share
    /// `passed` of the beam through. No cell comes twice. `transmittance(k)` is the crown's of occluder k.
    template <class Transmittance, class Group>
    void groups(Transmittance transmittance, Group group) const;
    /// Share that passes at each cell, row-major, for tests and pictures; not fast.
    [[nodiscard]] std::vector<double> passed(int month) const;

   private:
    void start();
    template <class Each>
    bool cast_one(const SunOnGrid& sun, std::size_t k, Each& each);
    void keep_crown(std::size_t occluder);

    CellGrid grid_;
    std::vector<Occluder> occluders_;
    std::vector<Shadow> shadows_;
    ShadowScratch scratch_;
    CellMask opaque_, own_opaque_, own_crown_;
    std::vector<Crown> crowns_;  ///< those behind `crowns_in_use_` are kept for their memory
    std::size_t crowns_in_use_ = 0;
};

template <class Each>
bool GridShadow::cast_one(const SunOnGrid& sun, std::size_t k, Each& each) {
    if (!shadows_[k].cast(sun, scratch_, own_opaque_, own_crown_)) return false;
    each(k, static_cast<const CellMask&>(own_opaque_), static_cast<const CellMask&>(own_crown_));
    if (opaque_.none()) {
        std::swap(opaque_, own_opaque_);  // empty masks come back
    } else {
        opaque_.add(own_opaque_);
        own_opaque_.clear();
    }
    if (!own_crown_.none()) keep_crown(k);
    return true;
}

template <class Each>
bool GridShadow::cast(Point3 to_sun, Each each) {
    start();
    const SunOnGrid sun = on_grid(grid_, to_sun);
    bool any = false;
    for (std::size_t k = 0; k < shadows_.size(); ++k)
        any = cast_one(sun, k, each) || any;
    return any;
}

template <class Each>
bool GridShadow::cast(Point3 to_sun, const std::vector<std::size_t>& which, Each each) {
    start();
    const SunOnGrid sun = on_grid(grid_, to_sun);
    bool any = false;
    for (const std::size_t k : which)
        any = cast_one(sun, k, each) || any;
    return any;
}

template <class Transmittance, class Group>
void GridShadow::groups(Transmittance transmittance, Group group) const {
    const int words = opaque_.words_per_row();
    for (int row = opaque_.row_from(); row < opaque_.row_to(); ++row) {
        for (int w = 0; w < words; ++w) {
            if (const std::uint64_t bits = opaque_.word(row, w); bits != 0) group(row, w, bits, 0.0);
        }
    }
    if (crowns_in_use_ == 0) return;
    int from = grid_.rows, to = 0;
    for (std::size_t i = 0; i < crowns_in_use_; ++i) {
        if (crowns_[i].cells.row_from() < from) from = crowns_[i].cells.row_from();
        if (crowns_[i].cells.row_to() > to) to = crowns_[i].cells.row_to();
    }
    for (int row = from; row < to; ++row) {
        for (int w = 0; w < words; ++w) {
            const std::uint64_t open = ~opaque_.word(row, w);
            std::uint64_t once = 0, again = 0;
            for (std::size_t i = 0; i < crowns_in_use_; ++i) {
                const std::uint64_t bits = crowns_[i].cells.word(row, w) & open;
                again |= once & bits;
                once |= bits;
            }
            if (once == 0) continue;
            for (std::size_t i = 0; i < crowns_in_use_; ++i) {
                const std::uint64_t bits = crowns_[i].cells.word(row, w) & open & ~again;
                if (bits != 0) group(row, w, bits, transmittance(crowns_[i].occluder));
            }
            while (again != 0) {  // behind several crowns, one after another; cells behind the same ones at once
                const std::uint64_t bit = again & (~again + 1);
                std::uint64_t alike = again;
                double passed = 1.0;
                for (std::size_t i = 0; i < crowns_in_use_; ++i) {
                    const std::uint64_t bits = crowns_[i].cells.word(row, w);
                    const bool meets = (bits & bit) != 0;
                    alike &= meets ? bits : ~bits;
                    if (meets) passed *= transmittance(crowns_[i].occluder);
                }
                group(row, w, alike, passed);
                again &= ~alike;
            }
        }
    }
}

}  // namespace wg::site
