#include "core/customers/import.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "core/quantity/utf8.h"
#include "core/tables/csv_writer.h"

namespace wg::customers {
namespace {

std::string trimmed(std::string_view cell) {
    cell = tables::without_guard(cell);
    const std::size_t from = cell.find_first_not_of(" \t\r\n");
    if (from == std::string_view::npos) return {};
    return std::string(cell.substr(from, cell.find_last_not_of(" \t\r\n") - from + 1));
}

/// The cells of one line by what they are; empty ones are not there.
using Cells = std::map<Column, std::string>;

Cells cells_of(const std::vector<std::string>& row, const Mapping& mapping) {
    Cells out;
    for (std::size_t i = 0; i < row.size() && i < mapping.columns.size(); ++i) {
        std::string text = trimmed(row[i]);
        if (mapping.columns[i] != Column::ignored && !text.empty()) out[mapping.columns[i]] = std::move(text);
    }
    if (const auto first = out.find(Column::first_name); first != out.end()) {
        std::string& name = out[Column::name];
        name = name.empty() ? first->second : first->second + " " + name;
        out.erase(Column::first_name);
    }
    return out;
}

std::string cell_of(const Cells& cells, Column column) {
    const auto found = cells.find(column);
    return found == cells.end() ? std::string() : found->second;
}

/// Writes cells over what is there and notes what changed.
class Overwrite {
   public:
    Overwrite(const Cells& cells, std::vector<std::string>& changes) : cells_(cells), changes_(changes) {}

    void field(Column column, std::string& into, const char* what) const {
        const auto found = cells_.find(column);
        if (found == cells_.end() || found->second == into) return;
        std::string change = what;
        change += ": '" + for_message(into) + "' becomes '" + for_message(found->second) + "'";
        changes_.push_back(std::move(change));
        into = found->second;
    }

    void address(Customer& customer, AddressUse use, Column street, Column postcode, Column town) const {
        if (!has(street) && !has(postcode) && !has(town)) return;
        auto at = std::find_if(customer.addresses.begin(), customer.addresses.end(),
                               [use](const Address& one) { return one.use == use; });
        if (at == customer.addresses.end()) {
            customer.addresses.push_back({use, {}, {}, {}});
            at = std::prev(customer.addresses.end());
        }
        const bool bill = use == AddressUse::bill;
        field(street, at->street, bill ? "street" : "street of the site");
        field(postcode, at->postcode, bill ? "postcode" : "postcode of the site");
        field(town, at->town, bill ? "town" : "town of the site");
    }

    void contact(Customer& customer, const NameKey& key) const {
        if (!has(Column::contact_name) && !has(Column::contact_role) && !has(Column::phone) && !has(Column::email))
            return;
        const std::string name = key(cell_of(cells_, Column::contact_name));
        auto at = std::find_if(customer.contacts.begin(), customer.contacts.end(), [&name, &key](const Contact& one) {
            return name.empty() || one.name.empty() || key(one.name) == name;
        });
        if (at == customer.contacts.end()) {
            customer.contacts.emplace_back();
            at = std::prev(customer.contacts.end());
        }
        field(Column::contact_name, at->name, "contact");
        field(Column::contact_role, at->role, "role");
        field(Column::phone, at->phone, "telephone");
        field(Column::email, at->email, "e-mail");
    }

   private:
    [[nodiscard]] bool has(Column column) const { return cells_.contains(column); }

    const Cells& cells_;
    std::vector<std::string>& changes_;
};

void write_cells(const Cells& cells, const NameKey& key, Customer& customer, std::vector<std::string>& changes) {
    const Overwrite over(cells, changes);
    over.field(Column::name, customer.name, "name");
    over.field(Column::tax_id, customer.tax_id, "tax id");
    over.field(Column::notes, customer.notes, "notes");
    over.address(customer, AddressUse::bill, Column::bill_street, Column::bill_postcode, Column::bill_town);
    over.address(customer, AddressUse::site, Column::site_street, Column::site_postcode, Column::site_town);
    over.contact(customer, key);
}

class Previewer {
   public:
    Previewer(const Mapping& mapping, const std::vector<Customer>& here, const std::string& file, const NameKey& key)
        : mapping_(mapping), here_(here), file_(for_message(file)), key_(key) {
        for (std::size_t i = 0; i < here.size(); ++i) {
            by_name_.emplace(key(here[i].name), i);
            by_number_.emplace(plain_key(here[i].number), i);
            for (const std::string& former : here[i].former_numbers)
                by_number_.emplace(plain_key(former), i);
        }
    }

    void line(const std::vector<std::string>& row, int number, ImportPreview& out) {
        const Cells cells = cells_of(row, mapping_);
        if (cells.empty()) return;  // a line of separators alone
        const std::string where = file_ + ", line " + std::to_string(number);
        const auto refuse = [&out, &where](std::string what, std::string remedy) {
            out.problems.push_back({where, std::move(what), std::move(remedy)});
        };
        const std::vector<std::size_t> fitting = who_is(cells);
        if (fitting.size() > 1) {
            std::string numbers;
            for (const std::size_t i : fitting)
                numbers += (numbers.empty() ? "" : ", ") + here_[i].number;
            refuse("fits several customers: " + numbers,
                   "Bring them together first, or write the customer's number in the line");
            return;
        }
        const std::string name = cell_of(cells, Column::name);
        if (!fitting.empty() && !name.empty()) {
            // The other program's numbers may be others' here: nobody is written over for a number alone.
            const Customer& one = here_[fitting.front()];
            if (key_(one.name) != key_(name) && !shares_any(one, cells)) {
                refuse("has the number of '" + for_message(one.name) + "', but is of '" + for_message(name) + "'",
                       "Take the number out of the line, or change the name of the customer who is here first");
                return;
            }
        }
        ImportedRow made;
        made.line = number;
        if (!fitting.empty()) made.customer = here_[fitting.front()];
        if (made.customer.number.empty()) made.customer.number = cell_of(cells, Column::number);
        std::vector<std::string> changes;
        write_cells(cells, key_, made.customer, changes);
        if (fitting.empty() && name.empty()) {
            refuse("has no name", "Fill the name in, or choose the column that holds it");
            return;
        }
        if (std::vector<Problem> problems = problems_of(made.customer); !problems.empty()) {
            for (Problem& one : problems)
                refuse(one.where + ": " + one.what, one.remedy);
            return;
        }
        if (const std::optional<int> earlier = earlier_line(made, fitting)) {
            refuse("is the customer of line " + std::to_string(*earlier) + " again", "Leave one of the lines");
            return;
        }
        made.outcome = fitting.empty() ? Outcome::is_new : changes.empty() ? Outcome::same : Outcome::changed;
        if (made.outcome == Outcome::changed) made.changes = std::move(changes);
        taken(made, fitting);
        out.rows.push_back(std::move(made));
    }

   private:
    /// The customers that are here and may be meant.
    [[nodiscard]] std::vector<std::size_t> who_is(const Cells& cells) const {
        const std::string number = plain_key(cell_of(cells, Column::number));
        if (!number.empty()) {
            const auto found = by_number_.find(number);
            if (found != by_number_.end()) return {found->second};
        }
        std::vector<std::size_t> out;
        const auto [from, to] = by_name_.equal_range(key_(cell_of(cells, Column::name)));
        for (auto at = from; at != to; ++at) {
            if (shares_any(here_[at->second], cells)) out.push_back(at->second);
        }
        return out;
    }

    [[nodiscard]] static bool shares_any(const Customer& one, const Cells& cells) {
        return shares_a_trait(one, cell_of(cells, Column::bill_postcode), cell_of(cells, Column::phone),
                              cell_of(cells, Column::email)) ||
               shares_a_trait(one, cell_of(cells, Column::site_postcode), {}, {});
    }

    [[nodiscard]] std::optional<int> earlier_line(const ImportedRow& made,
                                                  const std::vector<std::size_t>& fitting) const {
        if (!fitting.empty()) {
            const auto found = line_of_here_.find(fitting.front());
            return found == line_of_here_.end() ? std::nullopt : std::optional(found->second);
        }
        if (!made.customer.number.empty()) {
            const auto found = line_of_number_.find(plain_key(made.customer.number));
            if (found != line_of_number_.end()) return found->second;
        }
        const auto [from, to] = new_by_name_.equal_range(key_(made.customer.name));
        for (auto at = from; at != to; ++at) {
            const Customer& other = at->second.customer;
            // Two numbers are two customers, whatever their names.
            if (!other.number.empty() && !made.customer.number.empty()) continue;
            for (const Address& address : made.customer.addresses) {
                if (shares_a_trait(other, address.postcode, {}, {})) return at->second.line;
            }
            for (const Contact& contact : made.customer.contacts) {
                if (shares_a_trait(other, {}, contact.phone, contact.email)) return at->second.line;
            }
        }
        return std::nullopt;
    }

    void taken(const ImportedRow& made, const std::vector<std::size_t>& fitting) {
        if (!fitting.empty()) {
            line_of_here_[fitting.front()] = made.line;
            return;
        }
        if (!made.customer.number.empty()) line_of_number_[plain_key(made.customer.number)] = made.line;
        new_by_name_.emplace(key_(made.customer.name), made);
    }

    const Mapping& mapping_;
    const std::vector<Customer>& here_;
    std::string file_;
    const NameKey& key_;
    std::multimap<std::string, std::size_t> by_name_;
    std::map<std::string, std::size_t> by_number_;
    std::map<std::size_t, int> line_of_here_;
    std::map<std::string, int> line_of_number_;
    std::multimap<std::string, ImportedRow> new_by_name_;
};

}  // namespace

std::vector<Problem> problems_of(const Mapping& mapping) {
    std::vector<Problem> out;
    std::set<Column> seen;
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        if (mapping.columns[i] == Column::ignored || seen.insert(mapping.columns[i]).second) continue;
        out.push_back({"column " + std::to_string(i + 1), "is chosen for what another column holds already",
                       "Choose something else for one of them"});
    }
    if (!seen.contains(Column::name))
        out.push_back({"columns", "none is chosen for the name", "Choose the column that holds the customers' names"});
    return out;
}

ImportPreview preview_import(const tables::CsvTable& table, const Mapping& mapping, const std::vector<Customer>& here,
                             const std::string& file, const NameKey& key) {
    ImportPreview out;
    out.problems = problems_of(mapping);
    if (!out.problems.empty()) return out;
    Previewer previewer(mapping, here, file, key);
    for (std::size_t i = mapping.headings ? 1 : 0; i < table.rows.size(); ++i)
        previewer.line(table.rows[i], table.line_of_row[i], out);
    return out;
}

}  // namespace wg::customers
