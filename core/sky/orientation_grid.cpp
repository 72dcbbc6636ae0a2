// Sums over a grid of orientations. For planes facing one azimuth g, h = east sin g + north cos g, and the cosine of
// incidence up cos b + h sin b is positive up to the tilt b at which h/up = -cot b. With q = h/(up + |h|), which grows
// with h/up and needs no arc tangent, that is q > e(b) = -cos b/(sin b + |cos b|). So the pair (up, h) of every hour is
// added to the bin between two edges in which its q lies, and for each tilt the bins above its edge are the hours that
// light it. The azimuth half a turn further has -h and -q: the same bins read from below, when the edges come in pairs
// of either sign. An hour that rounding puts on the wrong side of an edge has a cosine of rounding size there: what is
// lost or won is as small.

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>

#include "core/quantity/constants.h"
#include "core/sky/orientation.h"
#include "core/sky/orientation_detail.h"

namespace wg::sky {
namespace {

constexpr double same_edge = 1e-13;
constexpr double same_azimuth_deg = 1e-10;
constexpr std::size_t block = 256;

double edge_of(double sin_tilt, double cos_tilt) {
    return -cos_tilt / (sin_tilt + std::fabs(cos_tilt));
}

// Sorted edges with a table that leads from q to its bin in one look and one comparison.
class Bins {
   public:
    explicit Bins(std::vector<double> edges) : edges_(std::move(edges)) {
        std::sort(edges_.begin(), edges_.end());
        edges_.erase(std::unique(edges_.begin(), edges_.end(), [](double a, double b) { return b - a < same_edge; }),
                     edges_.end());
        // Fine enough that a cell of the table holds one edge; the usual grids need 128 to 256 cells.
        for (cells_ = 128; cells_ <= 8192; cells_ *= 2) {
            fill();
            if (one_edge_a_cell_) break;
        }
        if (cells_ > 8192) cells_ = 8192;
        edges_.push_back(std::numeric_limits<double>::infinity());
    }
    [[nodiscard]] std::size_t count() const noexcept { return edges_.size(); }  ///< bins: one more than edges
    [[nodiscard]] std::size_t edge_index(double edge) const noexcept {
        const auto at = std::lower_bound(edges_.begin(), edges_.end(), edge - same_edge);
        return static_cast<std::size_t>(at - edges_.begin());
    }
    [[nodiscard]] const double* edges() const noexcept { return edges_.data(); }
    [[nodiscard]] const std::uint16_t* first_edge() const noexcept { return first_edge_.data(); }
    [[nodiscard]] double half_cells() const noexcept { return 0.5 * static_cast<double>(cells_); }
    [[nodiscard]] bool one_edge_a_cell() const noexcept { return one_edge_a_cell_; }

   private:
    void fill() {
        first_edge_.assign(cells_ + 1, 0);
        one_edge_a_cell_ = true;
        std::vector<int> in_cell(cells_ + 1, 0);
        for (const double edge : edges_)
            one_edge_a_cell_ = ++in_cell[static_cast<std::size_t>((edge + 1.0) * half_cells())] < 2 && one_edge_a_cell_;
        std::size_t before = 0;
        for (std::size_t c = 0; c <= cells_; ++c) {
            first_edge_[c] = static_cast<std::uint16_t>(before);
            before += static_cast<std::size_t>(in_cell[c]);
        }
    }
    std::vector<double> edges_;
    std::vector<std::uint16_t> first_edge_;
    std::size_t cells_ = 0;
    bool one_edge_a_cell_ = true;
};

struct Lit {
    double up = 0.0, level = 0.0;
};

// Adds every hour to its bin. Two sets of bins in turn, so that neighbouring hours in one bin need not wait for each
// other.
template <bool one_edge_a_cell>
void gather(const DaylightYear& year, double sin_axis, double cos_axis, const Bins& bins, std::vector<Lit>& even,
            std::vector<Lit>& odd) {
    const std::size_t count = year.direct_up.size();  // a multiple of 8
    std::array<double, block> level;
    std::array<double, block> q;
    std::array<std::int32_t, block> cell;
    const double half_cells = bins.half_cells();
    const double* edges = bins.edges();
    const std::uint16_t* first_edge = bins.first_edge();
    for (std::size_t start = 0; start < count; start += block) {
        const std::size_t size = std::min(block, count - start);
        const double* east = &year.direct_east[start];
        const double* north = &year.direct_north[start];
        const double* up = &year.direct_up[start];
        for (std::size_t i = 0; i < size; ++i) {
            const double h = east[i] * sin_axis + north[i] * cos_axis;
            level[i] = h;
            // The padding at the end is zero and must not divide by it; no real hour is so faint.
            q[i] = h / (up[i] + std::fabs(h) + 1e-300);
            cell[i] = static_cast<std::int32_t>((q[i] + 1.0) * half_cells);
        }
        const auto bin_of = [&](std::size_t i) {
            std::size_t bin = first_edge[static_cast<std::size_t>(cell[i])];
            if constexpr (one_edge_a_cell) {
                bin += q[i] > edges[bin] ? 1U : 0U;
            } else {
                while (q[i] > edges[bin])
                    ++bin;
            }
            return bin;
        };
        for (std::size_t i = 0; i < size; i += 2) {
            Lit& a = even[bin_of(i)];
            a.up += up[i];
            a.level += level[i];
            Lit& b = odd[bin_of(i + 1)];
            b.up += up[i + 1];
            b.level += level[i + 1];
        }
    }
}

// Azimuths that lie on one axis: facing along it, or against it.
struct Axis {
    double azimuth_deg = 0.0;
    std::vector<std::size_t> along, against;
};

std::vector<Axis> axes_of(const std::vector<double>& azimuths_deg) {
    struct Facing {
        double axis_deg;
        std::size_t index;
        bool against;
    };
    std::vector<Facing> all;
    for (std::size_t i = 0; i < azimuths_deg.size(); ++i) {
        double a = std::fmod(azimuths_deg[i], 360.0);
        if (a < 0.0) a += 360.0;
        bool against = a >= 180.0;
        if (against) a -= 180.0;
        if (a > 180.0 - same_azimuth_deg) {  // just short of half a turn: the same as 0, facing the other way
            a = 0.0;
            against = !against;
        }
        all.push_back({a, i, against});
    }
    std::stable_sort(all.begin(), all.end(), [](const Facing& a, const Facing& b) { return a.axis_deg < b.axis_deg; });
    std::vector<Axis> axes;
    for (const Facing& f : all) {
        if (axes.empty() || f.axis_deg - axes.back().azimuth_deg > same_azimuth_deg)
            axes.push_back({f.axis_deg, {}, {}});
        (f.against ? axes.back().against : axes.back().along).push_back(f.index);
    }
    return axes;
}

struct Tilt {
    double sin, cos, sin_sky;  ///< `sin_sky`: by the cosine, as plane_year has it
    double fixed_kwh_m2;       ///< diffuse and ground
    std::size_t edge, mirrored_edge;
    bool usual;  ///< 0..180
};

}  // namespace

OrientationGrid orientation_grid(const DaylightYear& year, std::vector<double> tilts_deg,
                                 std::vector<double> azimuths_deg, double albedo, double sky_view) {
    OrientationGrid grid{std::move(tilts_deg), std::move(azimuths_deg), {}};
    grid.kwh_m2.resize(grid.tilts_deg.size() * grid.azimuths_deg.size());

    std::vector<Tilt> tilts;
    std::vector<double> edges;
    for (const double tilt_deg : grid.tilts_deg) {
        Tilt t{};
        t.sin = std::sin(radians(tilt_deg));
        t.cos = std::cos(radians(tilt_deg));
        t.sin_sky = std::sqrt(std::fmax(0.0, 1.0 - t.cos * t.cos));
        t.fixed_kwh_m2 = detail::diffuse_and_ground_kwh_m2(year, t.cos, t.sin_sky, albedo, sky_view);
        t.usual = tilt_deg >= 0.0 && tilt_deg <= 180.0;
        if (t.usual) {
            const double edge = edge_of(std::fabs(t.sin), t.cos);
            edges.insert(edges.end(), {edge, -edge});
        }
        tilts.push_back(t);
    }
    const Bins bins(std::move(edges));
    for (Tilt& t : tilts) {
        const double edge = edge_of(std::fabs(t.sin), t.cos);
        t.edge = bins.edge_index(edge);
        t.mirrored_edge = bins.edge_index(-edge);
    }

    const std::size_t azimuths = grid.azimuths_deg.size();
    std::vector<Lit> even, odd;
    std::vector<Lit> above(bins.count() + 1), below(bins.count() + 1);
    for (const Axis& axis : axes_of(grid.azimuths_deg)) {
        even.assign(bins.count(), {});
        odd.assign(bins.count(), {});
        const double sin_axis = std::sin(radians(axis.azimuth_deg));
        const double cos_axis = std::cos(radians(axis.azimuth_deg));
        (bins.one_edge_a_cell() ? gather<true> : gather<false>)(year, sin_axis, cos_axis, bins, even, odd);
        // below[k]: bins before k; above[k]: bins from k on.
        above[bins.count()] = {};
        for (std::size_t k = 0; k < bins.count(); ++k) {
            const std::size_t down = bins.count() - 1 - k;
            below[k + 1] = {below[k].up + even[k].up + odd[k].up, below[k].level + even[k].level + odd[k].level};
            above[down] = {above[down + 1].up + even[down].up + odd[down].up,
                           above[down + 1].level + even[down].level + odd[down].level};
        }
        for (std::size_t i = 0; i < tilts.size(); ++i) {
            const Tilt& t = tilts[i];
            const auto put = [&](const std::vector<std::size_t>& where, double facing, const Lit& lit) {
                if (where.empty()) return;
                double kwh = 0.0;
                if (t.usual) {
                    const double east = facing * t.sin * sin_axis;
                    const double north = facing * t.sin * cos_axis;
                    kwh = 1e-3 * (t.cos * lit.up + facing * t.sin * lit.level) + t.fixed_kwh_m2 +
                          detail::dark_horizon_kwh_m2(year.dark_horizon, east, north, t.cos, t.sin_sky, sky_view);
                } else {
                    kwh = orientation_kwh_m2(year, grid.tilts_deg[i], grid.azimuths_deg[where[0]], albedo, sky_view);
                }
                for (const std::size_t k : where)
                    grid.kwh_m2[i * azimuths + k] = kwh;
            };
            put(axis.along, 1.0, above[t.edge + 1]);
            put(axis.against, -1.0, below[t.mirrored_edge + 1]);
        }
    }
    return grid;
}

}  // namespace wg::sky
