#include "core/customers/import.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "core/customers/cells.h"
#include "core/quantity/utf8.h"

namespace wg::customers {
namespace {

/// Lines of one customer.
struct Group {
    std::vector<Cells> cells;
    std::vector<int> lines;
};

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

    /// Which lines are one customer.
    void line(const std::vector<std::string>& row, int number) {
        Cells cells = cells_of(row, mapping_);
        if (cells.empty()) return;  // a line of separators alone
        const std::string customer = plain_key(cell_of(cells, Column::number));
        const std::string name = cell_of(cells, Column::name);
        std::size_t into = groups_.size();
        if (!customer.empty()) {
            const auto known = group_of_number_.find(customer);
            if (known != group_of_number_.end() &&
                (name.empty() || key_(cell_of(groups_[known->second].cells.front(), Column::name)) == key_(name)))
                into = known->second;
        }
        if (into == groups_.size()) {
            groups_.emplace_back();
            if (!customer.empty()) group_of_number_.emplace(customer, into);
        }
        groups_[into].cells.push_back(std::move(cells));
        groups_[into].lines.push_back(number);
    }

    void preview(ImportPreview& out) {
        for (const Group& group : groups_)
            customer(group, out);
    }

   private:
    void customer(const Group& group, ImportPreview& out) {
        const Cells& cells = group.cells.front();
        const int number = group.lines.front();
        const std::string where = file_ + ", line " + std::to_string(number);
        const auto refuse = [&out, &where](std::string what, std::string remedy) {
            out.problems.push_back({where, std::move(what), std::move(remedy)});
        };
        for (const Column column : {Column::tax_id, Column::notes}) {
            const std::string first = cell_of(cells, column);
            for (std::size_t i = 1; i < group.cells.size(); ++i) {
                if (says(group.cells[i], column, first)) continue;
                out.problems.push_back({file_ + ", line " + std::to_string(group.lines[i]),
                                        std::string("says another ") + (column == Column::notes ? "note" : "tax id") +
                                            " than line " + std::to_string(number) + ", which it continues",
                                        "Leave it in the first of the customer's lines alone"});
                return;
            }
        }
        const std::vector<std::size_t> fitting = who_is(group);
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
            if (key_(one.name) != key_(name) && !shares_any(one, group)) {
                refuse("has the number of '" + for_message(one.name) + "', but is of '" + for_message(name) + "'",
                       "Take the number out of the line, or change the name of the customer who is here first");
                return;
            }
        }
        ImportedRow made;
        made.line = number;
        made.more_lines.assign(group.lines.begin() + 1, group.lines.end());
        if (!fitting.empty()) made.customer = here_[fitting.front()];
        if (made.customer.number.empty()) made.customer.number = cell_of(cells, Column::number);
        std::vector<std::string> changes;
        write_cells(group.cells, key_, made.customer, changes);
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
        if (std::string whose = whose_former(made, fitting); !whose.empty()) {
            refuse(std::move(whose), "Bring the two together first, or take the number out of the line");
            return;
        }
        made.outcome = fitting.empty() ? Outcome::is_new : changes.empty() ? Outcome::same : Outcome::changed;
        if (made.outcome == Outcome::changed) made.changes = std::move(changes);
        taken(made, fitting);
        out.rows.push_back(std::move(made));
    }

    /// The customers that are here and may be meant.
    [[nodiscard]] std::vector<std::size_t> who_is(const Group& group) const {
        const Cells& cells = group.cells.front();
        const std::string number = plain_key(cell_of(cells, Column::number));
        if (!number.empty()) {
            const auto found = by_number_.find(number);
            if (found != by_number_.end()) return {found->second};
        }
        std::vector<std::size_t> out;
        const auto [from, to] = by_name_.equal_range(key_(cell_of(cells, Column::name)));
        for (auto at = from; at != to; ++at) {
            if (shares_any(here_[at->second], group)) out.push_back(at->second);
        }
        return out;
    }

    [[nodiscard]] static bool shares_any(const Customer& one, const Group& group) {
        return std::any_of(group.cells.begin(), group.cells.end(), [&one](const Cells& cells) {
            return shares_a_trait(one, cell_of(cells, Column::bill_postcode), cell_of(cells, Column::phone),
                                  cell_of(cells, Column::email)) ||
                   shares_a_trait(one, cell_of(cells, Column::site_postcode), {}, {});
        });
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

    /// What is wrong with a former number that is another customer's; empty: nothing.
    [[nodiscard]] std::string whose_former(const ImportedRow& made, const std::vector<std::size_t>& fitting) const {
        for (const std::string& number : made.customer.former_numbers) {
            const std::string key = plain_key(number);
            const auto here = by_number_.find(key);
            if (here != by_number_.end() && (fitting.empty() || here->second != fitting.front()))
                return "has the former number '" + for_message(number) + "', which is that of '" +
                       for_message(here_[here->second].name) + "'";
            const auto line = line_of_number_.find(key);
            if (line != line_of_number_.end())
                return "has the former number '" + for_message(number) + "', which is that of line " +
                       std::to_string(line->second);
        }
        return {};
    }

    void taken(const ImportedRow& made, const std::vector<std::size_t>& fitting) {
        for (const std::string& former : made.customer.former_numbers)
            line_of_number_[plain_key(former)] = made.line;
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
    std::vector<Group> groups_;
    std::map<std::string, std::size_t> group_of_number_;
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
        previewer.line(table.rows[i], table.line_of_row[i]);
    previewer.preview(out);
    return out;
}

}  // namespace wg::customers
