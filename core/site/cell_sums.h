#pragma once
// Sums over cells that grow by runs of bits.

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace wg::site {

/// Adds an amount to runs of cells: a run is two entries, where it starts and where it has ended; the sums along the
/// rows are taken once at the end. Whole numbers, so that the sums are exact and in no order.
class CellSums {
   public:
    CellSums(int rows, int words_per_row)
        : width_(64 * static_cast<std::size_t>(words_per_row) + 1),
          steps_(static_cast<std::size_t>(rows) * width_, 0) {}

    void add(int row, int word, std::uint64_t bits, std::int64_t amount) noexcept {
        std::int64_t* at = steps_.data() + static_cast<std::size_t>(row) * width_ + 64 * static_cast<std::size_t>(word);
        while (bits != 0) {
            const int from = std::countr_zero(bits);
            const int to = from + std::countr_one(bits >> from);
            at[from] += amount;
            at[to] -= amount;
            if (to == 64) return;
            bits &= ~std::uint64_t{0} << to;
        }
    }
    /// Once, after the last `add` and before the first `sum`.
    void sum_up() noexcept {
        for (std::size_t row = 0; row < steps_.size(); row += width_) {
            for (std::size_t i = 1; i < width_; ++i)
                steps_[row + i] += steps_[row + i - 1];
        }
    }
    [[nodiscard]] std::int64_t sum(int row, int column) const noexcept {
        return steps_[static_cast<std::size_t>(row) * width_ + static_cast<std::size_t>(column)];
    }

   private:
    std::size_t width_;
    std::vector<std::int64_t> steps_;
};

}  // namespace wg::site
