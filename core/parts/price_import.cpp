#include "core/parts/price_import.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <unordered_map>

#include "core/parts/price_cells.h"
#include "core/parts/price_figures.h"
#include "core/parts/price_many.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

namespace wg::parts {
namespace price_import {

constexpr std::size_t longest_id = 2000;
constexpr double suspicious_percent = 50.0;
constexpr std::size_t most_names_told = 12;

std::string joined(const std::vector<std::string>& texts) {
    std::string out;
    for (const std::string& text : texts)
        out += (out.empty() ? "" : ", ") + text;
    return out;
}

bool all_blank(const std::vector<std::string>& row, std::size_t from = 0) {
    for (std::size_t i = from; i < row.size(); ++i)
        if (!without_outer_spaces(row[i]).empty()) return false;
    return true;
}

std::string figures_of(std::size_t count, const char* one, const char* many) {
    return counted(static_cast<long>(count), one, many);
}

class Previewer {
   public:
    Previewer(const tables::CsvTable& table, const std::string& file_name, const ImportMapping& mapping,
              const PriceList& into)
        : table_(table),
          file_(for_message(file_name)),
          mapping_(mapping),
          into_(into),
          reader_(mapping, into),
          many_(table, mapping, reader_) {}

    Result<ImportPreview> preview() {
        if (std::optional<Problem> refused = refuse()) return *refused;
        index_list();
        seen_in_line_.resize(into_.items.size(), 0);
        const std::size_t first = first_row();
        out_.rows.reserve(table_.rows.size() - first);
        many_.part(first, [this](const std::vector<std::string>& cells) { return key_of_line(cells); });
        for (std::size_t row = first; row < table_.rows.size(); ++row)
            if (!all_blank(table_.rows[row]) && !many_.belongs_to_another(row)) read_line(row);
        for (std::size_t item = 0; item < into_.items.size(); ++item)
            if (seen_in_line_[item] == 0) out_.gone.push_back(item);
        tell();
        return std::move(out_);
    }

   private:
    [[nodiscard]] std::size_t first_row() const { return static_cast<std::size_t>(mapping_.names_row + 1); }

    std::optional<Problem> refuse() {
        if (mapping_.names_row < -1 || first_row() > table_.rows.size())
            return Problem{file_, "has no line with that number for the names of the columns", "Choose another line"};
        if (table_.rows.size() - first_row() > most_import_lines)
            return Problem{file_, "holds more than 100,000 lines", "Split the file into parts"};
        for (const std::vector<std::string>& row : table_.rows)
            columns_ = std::max(columns_, row.size());
        bool any = false;
        for (std::size_t field = 0; field < import_field_count; ++field) {
            const int column = mapping_.column[field];
            if (column < -1 || column >= static_cast<int>(columns_))
                return Problem{file_, "has no column " + std::to_string(static_cast<long>(column) + 1),
                               "Choose the columns again"};
            any = any || (column >= 0 && static_cast<ImportField>(field) != key_field());
        }
        if (mapping_.of(key_field()) < 0)
            return Problem{file_, "has no column yet that tells which item a line means",
                           "Choose the column of the id, or of the supplier's number"};
        if (!any)
            return Problem{file_, "has no column yet with something about the items", "Choose one, such as the price"};
        return std::nullopt;
    }

    [[nodiscard]] ImportField key_field() const {
        return mapping_.of(ImportField::id) >= 0 ? ImportField::id : ImportField::supplier_number;
    }
    [[nodiscard]] bool by_supplier() const {
        return key_field() == ImportField::supplier_number && mapping_.of(ImportField::supplier) >= 0;
    }

    [[nodiscard]] std::string key_of_item(const PriceItem& item) const {
        if (key_field() == ImportField::id) return std::string(without_outer_spaces(item.id));
        std::string key(without_outer_spaces(item.supplier_number));
        if (key.empty()) return key;
        if (by_supplier()) key.append(1, '\0').append(without_outer_spaces(item.supplier));
        return key;
    }

    /// As `key_of_item` has it.
    [[nodiscard]] std::string key_of_line(const std::vector<std::string>& cells) const {
        std::string key = reader_.text_at(cells, key_field());
        if (!key.empty() && by_supplier()) key.append(1, '\0').append(reader_.text_at(cells, ImportField::supplier));
        return key;
    }

    void index_list() {
        for (std::size_t i = 0; i < into_.items.size(); ++i) {
            ids_.emplace(std::string(without_outer_spaces(into_.items[i].id)), i);
            std::string key = key_of_item(into_.items[i]);
            if (key.empty()) continue;
            const auto [place, added] = of_key_.emplace(std::move(key), i);
            if (!added) twice_.insert(place->first);
        }
    }

    void problem(std::size_t row, const std::string& where, std::string what, std::string remedy) {
        if (out_.problems.size() >= most_import_problems) return;
        std::string place = file_ + ", line " + std::to_string(table_.line_of_row[row]);
        if (!where.empty()) place += ", " + where;
        out_.problems.push_back({std::move(place), std::move(what), std::move(remedy)});
        out_.problem_lines.push_back(table_.line_of_row[row]);
    }

    void wrong_line(std::size_t row, ImportField field, std::string what, std::string remedy) {
        ++out_.wrong_lines;
        problem(row, column_name(field), std::move(what), std::move(remedy));
    }

    /// Which item the line means; false: it cannot be told, and is told so.
    bool find(std::size_t row, std::optional<std::size_t>& in_list, std::string& id) {
        const std::vector<std::string>& cells = table_.rows[row];
        const ImportField field = key_field();
        id = reader_.text_at(cells, field);
        std::string key;
        const auto nameless = [&](std::string what, std::string remedy) {
            ++out_.nameless_lines;
            wrong_line(row, field, std::move(what), std::move(remedy));
            return false;
        };
        if (id.empty())
            return nameless("is empty: the line does not tell its item", "Fill it in, or take the line out");
        if (id.size() > longest_id) return nameless("is longer than 2000 characters", "Shorten it");
        if (std::any_of(id.begin(), id.end(),
                        [](char c) { return static_cast<unsigned char>(c) < 0x20U && c != '\n'; }))
            return nameless("holds a control character", "Remove it");
        key = key_of_line(cells);
        const std::string shown = "'" + for_message(id, 40) + "'";
        if (twice_.count(key) != 0)
            return nameless(shown + " is the number of more than one item of the list", "Choose the column of the id");
        const auto found = of_key_.find(key);
        if (found != of_key_.end()) in_list = found->second;
        int& seen = in_list ? seen_in_line_[*in_list] : seen_new_[key];
        if (seen != 0) {
            wrong_line(row, field, shown + " stands in line " + std::to_string(seen) + " already",
                       "Keep one line for the item");
            return false;
        }
        seen = table_.line_of_row[row];
        // Without a column of ids a new item is called by its number.
        if (!in_list && field != ImportField::id && (ids_.count(id) != 0 || !new_ids_.insert(id).second)) {
            wrong_line(row, field, shown + " is the id of another item", "Give ids in a column of their own");
            return false;
        }
        // Items and work are told apart by their ids alone.
        if (!in_list && names_work(into_, id)) {
            wrong_line(row, field, shown + " is the id of work in this list", "Give the item another id");
            return false;
        }
        return true;
    }

    void read_line(std::size_t row) {
        const std::vector<std::string>& cells = table_.rows[row];
        std::optional<std::size_t> in_list;
        std::string id;
        if (!find(row, in_list, id)) return;
        if (mapping_.names_row >= 0) {
            const std::size_t names = table_.rows[static_cast<std::size_t>(mapping_.names_row)].size();
            if (cells.size() > names && !all_blank(cells, names)) {
                wrong_line(row, key_field(),
                           "stands in a line of " + std::to_string(cells.size()) + " cells, the line of names has " +
                               std::to_string(names),
                           "Put cells that hold the separator into quotes, or part the file by semicolons");
                return;
            }
        }
        ImportRow out;
        out.line = table_.line_of_row[row];
        out.in_list = in_list;
        if (in_list)
            out.item = into_.items[*in_list];
        else
            out.item.id = id;
        std::vector<CellProblem> problems;
        if (many_.stands_for_its_item(row)) {
            if (!in_list) {
                wrong_line(row, ImportField::from_quantity,
                           "stands in every line of an item that is not in the list yet",
                           "Add a line without a quantity, with the item's own price");
                return;
            }
        } else {
            reader_.read(cells, !in_list, out.item, problems);
        }
        const bool many_sound =
            many_.take(key_of_line(cells), row, out.item,
                       [this](std::size_t at, ImportField field, std::string what, std::string remedy) {
                           wrong_line(at, field, std::move(what), std::move(remedy));
                       });
        if (!problems.empty()) {
            ++out_.wrong_lines;
            for (CellProblem& one : problems)
                problem(row, column_name(one.field), std::move(one.what), std::move(one.remedy));
            return;
        }
        if (!many_sound) return;
        compare(out);
        out_.rows.push_back(std::move(out));
    }

    void compare(ImportRow& row) {
        if (!row.in_list) {
            row.change = ItemChange::added;
            ++out_.added;
            check_tax_class(row.item);
            return;
        }
        const PriceItem& old = into_.items[*row.in_list];
        row.old_price = old.price;
        if (old.price.minor != 0)
            row.price_change_percent = 100.0 * static_cast<double>(row.item.price.minor - old.price.minor) /
                                       static_cast<double>(old.price.minor);
        if (row.item == old) {
            ++out_.same;
            return;
        }
        row.change = ItemChange::changed;
        ++out_.changed;
        const PriceItem& now = row.item;
        row.changed = changed_fields(old, now);
        if (now.price != old.price && now.quantity_prices == old.quantity_prices && !now.quantity_prices.empty())
            ++with_quantity_prices_;
        if (row.price_change_percent && std::fabs(*row.price_change_percent) > suspicious_percent) ++suspicious_;
        if (now.tax_class != old.tax_class) check_tax_class(now);
    }

    void check_tax_class(const PriceItem& item) {
        const std::string& of = item.tax_class;
        if (known_classes_.empty()) {
            known_classes_.insert(into_.labour_tax_class);
            for (const PriceItem& one : into_.items)
                known_classes_.insert(one.tax_class);
            for (const DatedTaxRate& rate : into_.tax_rates)
                known_classes_.insert(rate.tax_class);
        }
        if (known_classes_.count(of) == 0 && new_classes_.size() < most_names_told)
            new_classes_.insert("'" + for_message(of, 30) + "'");
    }

    void tell() {
        tell_columns();
        std::vector<std::string>& notes = out_.notes;
        if (!reader_.units_taken().empty()) notes.push_back("Units taken: " + joined(reader_.units_taken()));
        if (reader_.taxed_as_labour() > 0)
            notes.push_back("New items have the tax class of labour, '" + for_message(into_.labour_tax_class, 30) +
                            "': no column tells theirs");
        if (!new_classes_.empty())
            notes.push_back("Tax classes that the list does not use yet: " +
                            joined({new_classes_.begin(), new_classes_.end()}) + ". A quote needs a rate for each");
        if (suspicious_ > 0)
            notes.push_back(figures_of(suspicious_, "price changes", "prices change") +
                            " by more than half: check the sign of decimals and for how many units a price is");
        if (many_.taken_as_own() > 0)
            notes.push_back("The line of quantity 1 is the item's own for " +
                            figures_of(many_.taken_as_own(), "item", "items") + " without a line that has no quantity");
        if (with_quantity_prices_ > 0)
            notes.push_back(
                figures_of(with_quantity_prices_, "item with a new price has", "items with a new price have") +
                " prices of quantities, which stay as they are");
        if (out_.wrong_lines > 0 && out_.problems.size() == most_import_problems)
            notes.push_back("Only the first " + std::to_string(most_import_problems) + " problems are shown");
    }

    void tell_columns() {
        if (mapping_.names_row < 0) return;
        const std::vector<std::string>& names = table_.rows[static_cast<std::size_t>(mapping_.names_row)];
        std::vector<std::string> aside;
        for (std::size_t i = 0; i < names.size(); ++i) {
            const bool used =
                std::find(mapping_.column.begin(), mapping_.column.end(), static_cast<int>(i)) != mapping_.column.end();
            if (!used && aside.size() < most_names_told && !without_outer_spaces(names[i]).empty())
                aside.push_back("'" + for_message(names[i], 30) + "'");
        }
        if (!aside.empty()) out_.notes.push_back("Columns left aside: " + joined(aside));
    }

    const tables::CsvTable& table_;
    std::string file_;
    const ImportMapping& mapping_;
    const PriceList& into_;
    LineReader reader_;
    LinesOfMany many_;
    std::size_t columns_ = 0;
    std::unordered_map<std::string, std::size_t> of_key_, ids_;
    std::set<std::string> twice_, new_ids_, known_classes_, new_classes_;
    std::vector<int> seen_in_line_;
    std::unordered_map<std::string, int> seen_new_;
    std::size_t suspicious_ = 0, with_quantity_prices_ = 0;
    ImportPreview out_;
};

}  // namespace price_import

Result<ImportPreview> preview_import(const tables::CsvTable& table, const std::string& file_name,
                                     const ImportMapping& mapping, const PriceList& into) {
    return price_import::Previewer(table, file_name, mapping, into).preview();
}

}  // namespace wg::parts
