#pragma once
// One line of a table to one item of a price list. For the room's own .cpp files.

#include <string>
#include <string_view>
#include <vector>

#include "core/parts/price_import.h"

namespace wg::parts {

/// What is wrong with a cell, in words: the field, what, and what to do.
struct CellProblem {
    ImportField field = ImportField::id;
    std::string what;
    std::string remedy;
};

/// Reads lines of one table into items of one list.
class LineReader {
   public:
    LineReader(const ImportMapping& mapping, const PriceList& into) : mapping_(mapping), into_(into) {}

    /// The text under a field, without spaces around it, its guard, and with line ends as the list has them; empty:
    /// nothing.
    [[nodiscard]] std::string text_at(const std::vector<std::string>& row, ImportField field) const;
    /// The item with the line in it; `item` is the list's, or one with the id set that is new.
    void read(const std::vector<std::string>& row, bool is_new, PriceItem& item, std::vector<CellProblem>& problems);

    /// What a line says of many at once; nothing when it cannot be read, which is told.
    [[nodiscard]] std::optional<QuantityPrice> read_step(const std::vector<std::string>& row,
                                                         std::vector<CellProblem>& problems) const;

    /// "Stk as pc": units that were written another way, each once.
    [[nodiscard]] const std::vector<std::string>& units_taken() const { return units_taken_; }
    [[nodiscard]] std::size_t taxed_as_labour() const { return taxed_as_labour_; }

   private:
    void read_texts(const std::vector<std::string>& row, bool is_new, PriceItem& item,
                    std::vector<CellProblem>& problems);
    void read_unit(const std::string& text, PriceItem& item, std::vector<CellProblem>& problems);
    void read_costs(const std::vector<std::string>& row, PriceItem& item, std::vector<CellProblem>& problems);
    [[nodiscard]] std::optional<Money> money_at(const std::vector<std::string>& row, ImportField field,
                                                std::vector<CellProblem>& problems) const;
    [[nodiscard]] std::optional<double> number_at(const std::vector<std::string>& row, ImportField field, double most,
                                                  std::vector<CellProblem>& problems) const;
    [[nodiscard]] bool has(ImportField field) const { return mapping_.of(field) >= 0; }
    /// The line tells it: an empty cell changes nothing.
    [[nodiscard]] bool told(const std::vector<std::string>& row, ImportField field) const {
        return !text_at(row, field).empty();
    }

    const ImportMapping& mapping_;
    const PriceList& into_;
    std::vector<std::string> units_taken_;
    std::size_t taxed_as_labour_ = 0;
};

/// The fields in which they differ, in the order of the export.
[[nodiscard]] std::vector<ImportField> changed_fields(const PriceItem& old, const PriceItem& now);
/// Items and work are told apart by their ids alone.
[[nodiscard]] bool names_work(const PriceList& list, std::string_view id);

}  // namespace wg::parts
