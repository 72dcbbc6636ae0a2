#pragma once
// Customers from another program's table: columns told by their headings, every line checked, and a preview of what
// would become of each. Nothing is kept here.

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/customers/customer.h"
#include "core/tables/csv_reader.h"

namespace wg::customers {

enum class Column {
    ignored,
    number,
    name,
    first_name,  ///< set before the name
    tax_id,
    notes,
    bill_street,
    bill_postcode,
    bill_town,
    site_street,
    site_postcode,
    site_town,
    contact_name,
    contact_role,
    phone,
    email,
    former_numbers,  ///< one a line in the cell
};

inline constexpr Column all_columns[] = {
    Column::ignored,       Column::number,        Column::name,          Column::first_name,   Column::tax_id,
    Column::notes,         Column::bill_street,   Column::bill_postcode, Column::bill_town,    Column::site_street,
    Column::site_postcode, Column::site_town,     Column::contact_name,  Column::contact_role, Column::phone,
    Column::email,         Column::former_numbers};

struct Mapping {
    std::vector<Column> columns;  ///< what each column of the table is
    bool headings = true;         ///< the first row names the columns and is no customer
};

/// By the words of the first row (English, German, Spanish; capitals, accents and punctuation aside). A column whose
/// words are not known, or that comes a second time, is ignored. Without any known word the first row is taken for a
/// customer.
[[nodiscard]] Mapping guess_mapping(const tables::CsvTable& table);

/// Nothing when the mapping can be used: a column of names, and none twice.
[[nodiscard]] std::vector<Problem> problems_of(const Mapping& mapping);

enum class Outcome { is_new, changed, same };

struct ImportedRow {
    int line = 0;                 ///< of the file
    std::vector<int> more_lines;  ///< that continue it
    Outcome outcome = Outcome::is_new;
    Customer customer;                 ///< as it would be kept: with id and revision of the one that is here
    std::vector<std::string> changes;  ///< "telephone: 'a' becomes 'b'"
};

struct ImportPreview {
    std::vector<ImportedRow> rows;
    std::vector<Problem> problems;  ///< lines that are left out, with what to do
};

/// Makes names comparable: "JOSÉ  Ruiz" and "josé ruiz" are one.
using NameKey = std::function<std::string(const std::string&)>;

/// A line continues an earlier one when it has that one's number, and its name or none: it brings a further address or
/// contact. What of these is already there word for word stays; the rest is written over what it fits or comes at the
/// end. (The line above is never guessed for one without number and name: it would give one client's data to another.)
/// A line is a customer that is here when the numbers are the same; without one of the file's, when the names are the
/// same and postcode, telephone or e-mail is one of theirs. A cell that is empty changes nothing; former numbers come
/// to those that are there, and none is taken away. Left out with a
/// problem: a line without a name that continues none, one that says another tax id or other notes than the line it
/// continues, what `problems_of` refuses, a line for the customer of an earlier line, one that
/// fits several customers, one with a former number that is another's. `file`: for messages.
[[nodiscard]] ImportPreview preview_import(const tables::CsvTable& table, const Mapping& mapping,
                                           const std::vector<Customer>& here, const std::string& file,
                                           const NameKey& key);

}  // namespace wg::customers
