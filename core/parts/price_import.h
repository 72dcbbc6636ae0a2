#pragma once
// Prices from a table that another program wrote: which column is what, what would change, and the list with it.
// Nothing is decided in silence: what was taken for what is told, and a line that cannot be read is told with its
// number.

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/parts/prices.h"
#include "core/tables/csv_reader.h"

namespace wg::parts {

/// What a column can hold, in the order of the export.
enum class ImportField {
    id,
    text,
    unit,
    price,
    cost,
    supplier_price,
    discount_group,
    pack,
    waste_percent,
    supplier,
    supplier_number,
    tax_class,
    from_quantity  ///< a line with one tells the price of many of its item
};
inline constexpr std::size_t import_field_count = 13;
inline constexpr std::size_t most_import_lines = 100'000;
inline constexpr std::size_t most_import_problems = 200;  ///< told one by one; the rest are counted

/// "supplier_price": as in docs/price-format.md and in the first line of the export.
[[nodiscard]] const char* column_name(ImportField field) noexcept;
/// Of an item, as a line of the export has it; of its prices of quantities all of them. Empty: it has none.
[[nodiscard]] std::string field_text(const PriceItem& item, ImportField field);

/// What parts the units from the tenths. `undecided`: figures that can be read in one way only are read so, and "1.234"
/// is a problem.
enum class DecimalSign { undecided, point, comma };

struct ImportMapping {
    int names_row = -1;  ///< row of the table with the names of the columns; items follow it; -1: there is none
    std::array<int, import_field_count> column = {-1, -1, -1, -1, -1, -1, -1,
                                                  -1, -1, -1, -1, -1, -1};  ///< -1: not there
    DecimalSign decimal = DecimalSign::undecided;

    [[nodiscard]] int of(ImportField field) const noexcept { return column[static_cast<std::size_t>(field)]; }
    void set(ImportField field, int to) noexcept { column[static_cast<std::size_t>(field)] = to; }
    friend bool operator==(const ImportMapping&, const ImportMapping&) = default;
};

struct ImportGuess {
    ImportMapping mapping;
    std::vector<std::string> notes;  ///< what was taken for what, in words
};

/// By the words above the columns (English, German, Spanish), by the figures below them, and by what the list holds.
[[nodiscard]] ImportGuess guess_mapping(const tables::CsvTable& table, const PriceList& into);
/// The sign of decimals in the columns that hold figures, told in `notes` with the line that shows it.
[[nodiscard]] DecimalSign decimal_sign_of(const tables::CsvTable& table, const ImportMapping& mapping,
                                          std::vector<std::string>& notes);

enum class ItemChange { added, changed, same };

struct ImportRow {
    int line = 0;  ///< of the file
    ItemChange change = ItemChange::same;
    std::optional<std::size_t> in_list;  ///< index of the list's item; none: it is new
    PriceItem item;                      ///< as it would be
    std::vector<ImportField> changed;    ///< of an item that is in the list
    std::optional<Money> old_price;
    std::optional<double> price_change_percent;  ///< none for a new item, or an old price of 0
};

struct ImportPreview {
    std::vector<ImportRow> rows;     ///< lines that can be taken, in the file's order
    std::vector<std::size_t> gone;   ///< items of the list that no line names, lines with problems included
    std::vector<Problem> problems;   ///< by line, `most_import_problems` at most
    std::vector<int> problem_lines;  ///< the line of each of `problems`
    std::size_t wrong_lines = 0;     ///< all of them
    std::size_t nameless_lines = 0;  ///< of those: it cannot be told which item they mean
    std::size_t added = 0;
    std::size_t changed = 0;
    std::size_t same = 0;
    std::vector<std::string> notes;
};

/// What the table would do to the list. Items are found by id, or, where no column is the id, by the supplier's number
/// (and the supplier, where a column tells it); one that is new gets the number as id then. Fields without a column
/// stay as they are, and so do those whose cell is empty, which is a problem where the field must not be empty. A line
/// that tells a cost takes away a supplier's price from which another would follow. A line with a `from_quantity` gives
/// the price of so many; the item's own line has none, or, where no such line is there, is that of quantity 1. With
/// that column an item's prices of quantities are those of the table. Refused: no column tells the item, nothing but
/// that is mapped, a column that is not there, more than `most_import_lines`.
[[nodiscard]] Result<ImportPreview> preview_import(const tables::CsvTable& table, const std::string& file_name,
                                                   const ImportMapping& mapping, const PriceList& into);

struct ImportChoice {
    bool add_new = true;
    bool remove_gone = false;
    bool leave_out_wrong_lines = false;
};

/// The list with the preview's lines in it: items keep their place, new ones follow in the file's order. Refused: lines
/// with problems that are not to be left out, removing while it cannot be told which items lines mean, another list
/// than the preview was made for, a list that grows longer than its file may be (16 MiB).
[[nodiscard]] Result<PriceList> apply_import(const ImportPreview& preview, const PriceList& into,
                                             const ImportChoice& choice);

/// The items as RFC 4180 CSV, '.' as decimal sign, guarded against formulas; an item's prices of quantities follow it
/// in lines of their own. Read back by the functions above they are the same, but for spaces around a text.
[[nodiscard]] std::string items_to_csv(const PriceList& list);

}  // namespace wg::parts
