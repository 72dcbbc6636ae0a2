#pragma once
// A plane cut in cells, and sets of its cells as bits: 64 cells a word.

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/site/geometry.h"

namespace wg::site {

/// Cells of equal size in a plane, row-major. A cell stands for its middle.
struct CellGrid {
    Point3 first;           ///< middle of the cell in column 0 of row 0
    Point3 step_x, step_y;  ///< from a middle to the next column's and the next row's
    Point3 normal;          ///< unit vector along step_x x step_y, towards the open side
    Point3 per_x, per_y;    ///< dot with an arrow in the plane: how many columns, how many rows it spans
    int columns = 0;
    int rows = 0;
    std::vector<Point3> middles;

    [[nodiscard]] bool empty() const noexcept { return middles.empty(); }
    [[nodiscard]] std::size_t size() const noexcept { return middles.size(); }

    /// Over the bounding box of the surface's outline, `off_m` over its plane. Empty for fewer than three corners, a
    /// cell size that is not positive, and more than `most_cells`.
    [[nodiscard]] static CellGrid over(const Surface& surface, double sketch_up_azimuth_deg, double cell_m,
                                       double off_m);
    /// `columns` x `rows` points spread over a plate given by its four corners. Empty for a plate without area.
    [[nodiscard]] static CellGrid over(const std::vector<Point3>& corners, int columns, int rows);
    static constexpr double most_cells = 1e6;

   private:
    [[nodiscard]] bool finish();  ///< normal, per_x and per_y from the steps; false without area or far off
};

/// A set of cells.
class CellMask {
   public:
    CellMask() = default;
    CellMask(int columns, int rows)
        : columns_(columns), rows_(rows), words_((columns + 63) / 64), bits_(index(rows_, 0), 0) {}

    [[nodiscard]] int columns() const noexcept { return columns_; }
    [[nodiscard]] int rows() const noexcept { return rows_; }
    [[nodiscard]] int words_per_row() const noexcept { return words_; }
    [[nodiscard]] std::uint64_t word(int row, int word) const noexcept { return bits_[index(row, word)]; }
    [[nodiscard]] std::uint64_t* row(int row) noexcept { return bits_.data() + index(row, 0); }
    [[nodiscard]] const std::uint64_t* row(int row) const noexcept { return bits_.data() + index(row, 0); }
    [[nodiscard]] bool test(int column, int row) const noexcept {
        return ((word(row, column / 64) >> (column % 64)) & 1U) != 0;
    }
    void set(int column, int row, bool on) noexcept {
        const std::uint64_t bit = std::uint64_t{1} << (column % 64);
        std::uint64_t& word = bits_[index(row, column / 64)];
        word = on ? word | bit : word & ~bit;
        touch(row);
    }
    /// Sets the columns from..to-1; both within the grid, from < to.
    void set_span(int row_number, int from, int to) noexcept {
        touch(row_number);
        set_bits(row(row_number), from, to);
    }
    static void set_bits(std::uint64_t* words, int from, int to) noexcept {
        const int first = from >> 6, last = (to - 1) >> 6;
        const std::uint64_t head = ~std::uint64_t{0} << (from & 63), tail = ~std::uint64_t{0} >> (63 - ((to - 1) & 63));
        if (first == last) {
            words[first] |= head & tail;
            return;
        }
        words[first] |= head;
        for (int w = first + 1; w < last; ++w)
            words[w] = ~std::uint64_t{0};
        words[last] |= tail;
    }
    void touch_rows(int from, int to) noexcept {  ///< from < to
        touch(from);
        touch(to - 1);
    }
    /// Rows that may hold cells: from..to-1.
    [[nodiscard]] int row_from() const noexcept { return row_from_; }
    [[nodiscard]] int row_to() const noexcept { return row_to_; }
    [[nodiscard]] bool none() const noexcept { return row_from_ >= row_to_; }
    [[nodiscard]] int count() const noexcept;
    /// Set bits of a word. (std::popcount is a library call on plain x86-64.)
    [[nodiscard]] static int count(std::uint64_t bits) noexcept {
        bits -= (bits >> 1) & 0x5555555555555555U;
        bits = (bits & 0x3333333333333333U) + ((bits >> 2) & 0x3333333333333333U);
        bits = (bits + (bits >> 4)) & 0x0f0f0f0f0f0f0f0fU;
        return static_cast<int>((bits * 0x0101010101010101U) >> 56);
    }
    void clear() noexcept;
    void add(const CellMask& other) noexcept;  ///< of the same size

   private:
    [[nodiscard]] std::size_t index(int row, int word) const noexcept {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(words_) + static_cast<std::size_t>(word);
    }
    void touch(int row) noexcept {
        if (none()) row_from_ = row, row_to_ = row + 1;
        if (row < row_from_) row_from_ = row;
        if (row >= row_to_) row_to_ = row + 1;
    }
    int columns_ = 0, rows_ = 0, words_ = 0;
    int row_from_ = 0, row_to_ = 0;
    std::vector<std::uint64_t> bits_;
};

}  // namespace wg::site
