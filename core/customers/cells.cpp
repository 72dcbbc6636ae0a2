#include "core/customers/cells.h"

#include <algorithm>
#include <initializer_list>
#include <optional>

#include "core/quantity/utf8.h"
#include "core/tables/csv_writer.h"

namespace wg::customers {

std::string cell_of(const Cells& cells, Column column) {
    const auto found = cells.find(column);
    return found == cells.end() ? std::string() : found->second;
}

bool says(const Cells& cells, Column column, const std::string& text) {
    const auto found = cells.find(column);
    return found == cells.end() || found->second == text;
}

namespace {

std::string trimmed(std::string_view cell) {
    cell = tables::without_guard(cell);
    const std::size_t from = cell.find_first_not_of(" \t\r\n");
    if (from == std::string_view::npos) return {};
    return std::string(cell.substr(from, cell.find_last_not_of(" \t\r\n") - from + 1));
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

   private:
    const Cells& cells_;
    std::vector<std::string>& changes_;
};

bool has_any(const Cells& cells, std::initializer_list<Column> columns) {
    return std::any_of(columns.begin(), columns.end(), [&cells](Column column) { return cells.contains(column); });
}

/// Lines that bring an address or contact, each with its place among those that are there: first those that are there
/// word for word, then what `fits`, in the order of the lines; what fits none comes at the end.
template <class Part>
void put_parts(const std::vector<const Cells*>& lines, std::vector<Part>& parts,
               const std::function<bool(const Cells&, const Part&)>& same,
               const std::function<bool(const Cells&, const Part&)>& fits, const std::function<Part()>& fresh,
               const std::function<void(const Cells&, Part&)>& write) {
    std::vector<bool> taken(parts.size(), false);
    std::vector<std::optional<std::size_t>> place(lines.size());
    for (const auto* match : {&same, &fits}) {
        for (std::size_t line = 0; line < lines.size(); ++line) {
            for (std::size_t i = 0; i < taken.size() && !place[line]; ++i) {
                if (taken[i] || !(*match)(*lines[line], parts[i])) continue;
                taken[i] = true;
                place[line] = i;
            }
        }
    }
    for (std::size_t line = 0; line < lines.size(); ++line) {
        if (!place[line]) {
            parts.push_back(fresh());
            place[line] = parts.size() - 1;
        }
        write(*lines[line], parts[*place[line]]);
    }
}

void put_addresses(const std::vector<Cells>& group, AddressUse use, Customer& customer,
                   std::vector<std::string>& changes) {
    const bool bill = use == AddressUse::bill;
    const Column street = bill ? Column::bill_street : Column::site_street;
    const Column postcode = bill ? Column::bill_postcode : Column::site_postcode;
    const Column town = bill ? Column::bill_town : Column::site_town;
    std::vector<const Cells*> lines;
    for (const Cells& cells : group)
        if (has_any(cells, {street, postcode, town})) lines.push_back(&cells);
    put_parts<Address>(
        lines, customer.addresses,
        [&](const Cells& cells, const Address& one) {
            return one.use == use && says(cells, street, one.street) && says(cells, postcode, one.postcode) &&
                   says(cells, town, one.town);
        },
        [use](const Cells&, const Address& one) { return one.use == use; },
        [use] {
            return Address{use, {}, {}, {}};
        },
        [&](const Cells& cells, Address& one) {
            const Overwrite over(cells, changes);
            over.field(street, one.street, bill ? "street" : "street of the site");
            over.field(postcode, one.postcode, bill ? "postcode" : "postcode of the site");
            over.field(town, one.town, bill ? "town" : "town of the site");
        });
}

void put_contacts(const std::vector<Cells>& group, const NameKey& key, Customer& customer,
                  std::vector<std::string>& changes) {
    std::vector<const Cells*> lines;
    for (const Cells& cells : group)
        if (has_any(cells, {Column::contact_name, Column::contact_role, Column::phone, Column::email}))
            lines.push_back(&cells);
    put_parts<Contact>(
        lines, customer.contacts,
        [](const Cells& cells, const Contact& one) {
            return says(cells, Column::contact_name, one.name) && says(cells, Column::contact_role, one.role) &&
                   says(cells, Column::phone, one.phone) && says(cells, Column::email, one.email);
        },
        [&key](const Cells& cells, const Contact& one) {
            const std::string name = key(cell_of(cells, Column::contact_name));
            return name.empty() || one.name.empty() || key(one.name) == name;
        },
        [] { return Contact{}; },
        [&](const Cells& cells, Contact& one) {
            const Overwrite over(cells, changes);
            over.field(Column::contact_name, one.name, "contact");
            over.field(Column::contact_role, one.role, "role");
            over.field(Column::phone, one.phone, "telephone");
            over.field(Column::email, one.email, "e-mail");
        });
}

void put_former_numbers(const std::vector<Cells>& group, Customer& customer, std::vector<std::string>& changes) {
    for (const Cells& cells : group) {
        for (std::string& number : numbers_of(cell_of(cells, Column::former_numbers))) {
            const std::string key = plain_key(number);
            const bool there = key == plain_key(customer.number) ||
                               std::any_of(customer.former_numbers.begin(), customer.former_numbers.end(),
                                           [&key](const std::string& one) { return plain_key(one) == key; });
            if (there) continue;
            std::string change = "former number: '";
            change += for_message(number) + "' is added";
            changes.push_back(std::move(change));
            customer.former_numbers.push_back(std::move(number));
        }
    }
}

}  // namespace

std::vector<std::string> numbers_of(std::string_view cell) {
    std::vector<std::string> out;
    while (!cell.empty()) {
        const std::size_t end = std::min(cell.find('\n'), cell.size());
        const std::string_view line = cell.substr(0, end);
        if (const std::size_t from = line.find_first_not_of(" \t\r"); from != std::string_view::npos)
            out.emplace_back(line.substr(from, line.find_last_not_of(" \t\r") - from + 1));
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return out;
}

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

void write_cells(const std::vector<Cells>& group, const NameKey& key, Customer& customer,
                 std::vector<std::string>& changes) {
    const Overwrite over(group.front(), changes);
    over.field(Column::name, customer.name, "name");
    over.field(Column::tax_id, customer.tax_id, "tax id");
    over.field(Column::notes, customer.notes, "notes");
    put_addresses(group, AddressUse::bill, customer, changes);
    put_addresses(group, AddressUse::site, customer, changes);
    put_contacts(group, key, customer, changes);
    put_former_numbers(group, customer, changes);
}

}  // namespace wg::customers
