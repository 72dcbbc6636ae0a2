#pragma once
// Lines of a table that tell the price of many: which item they belong to. For the room's own .cpp files.

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/parts/price_cells.h"

namespace wg::parts {

/// Lines with a quantity belong to their item's own line, wherever it stands. Where none is there, that of quantity 1
/// or less is it; a list's item without either stays as it is but for its prices of quantities.
class LinesOfMany {
   public:
    using KeyOf = std::function<std::string(const std::vector<std::string>& cells)>;
    using Wrong = std::function<void(std::size_t row, ImportField field, std::string what, std::string remedy)>;

    LinesOfMany(const tables::CsvTable& table, const ImportMapping& mapping, const LineReader& reader)
        : table_(table), mapping_(mapping), reader_(reader) {}

    /// Looks at the lines from `first` on. `key_of`: what tells the item; empty: the line does not.
    void part(std::size_t first, const KeyOf& key_of);
    [[nodiscard]] bool belongs_to_another(std::size_t row) const { return of_others_.contains(row); }
    /// It has a quantity, and no line of its item has none.
    [[nodiscard]] bool stands_for_its_item(std::size_t row) const { return standing_.contains(row); }
    /// Items whose line of quantity 1 was taken as their own.
    [[nodiscard]] std::size_t taken_as_own() const { return taken_as_own_; }
    /// Puts the item's prices of quantities in the place of those it has; false: a line of them is wrong, and is told.
    [[nodiscard]] bool take(const std::string& key, std::size_t own_row, PriceItem& item, const Wrong& wrong) const;

   private:
    [[nodiscard]] std::optional<ImportField> differs_from_own(std::size_t row, std::size_t own_row) const;

    const tables::CsvTable& table_;
    const ImportMapping& mapping_;
    const LineReader& reader_;
    std::map<std::string, std::vector<std::size_t>> rows_of_;  ///< by the item's key
    std::unordered_set<std::size_t> of_others_, standing_;
    std::size_t taken_as_own_ = 0;
};

}  // namespace wg::parts
