#include "core/parts/price_many.h"

#include <algorithm>
#include <set>

#include "core/parts/price_figures.h"

namespace wg::parts {

void LinesOfMany::part(std::size_t first, const KeyOf& key_of) {
    if (mapping_.of(ImportField::from_quantity) < 0) return;
    std::unordered_set<std::string> own;
    for (std::size_t row = first; row < table_.rows.size(); ++row) {
        std::string key = key_of(table_.rows[row]);
        if (key.empty()) continue;  // told when it is read
        if (reader_.text_at(table_.rows[row], ImportField::from_quantity).empty()) {
            own.insert(std::move(key));
            continue;
        }
        of_others_.insert(row);
        rows_of_[std::move(key)].push_back(row);
    }
    for (auto& [key, rows] : rows_of_) {
        if (own.contains(key)) continue;
        const auto of_one = std::find_if(rows.begin(), rows.end(), [this](std::size_t row) {
            std::vector<CellProblem> unread;
            const std::optional<QuantityPrice> step = reader_.read_step(table_.rows[row], unread);
            return step && step->from <= 1.0;
        });
        if (of_one == rows.end()) {
            of_others_.erase(rows.front());
            standing_.insert(rows.front());
            continue;
        }
        ++taken_as_own_;
        of_others_.erase(*of_one);
        rows.erase(of_one);
    }
}

bool LinesOfMany::take(const std::string& key, std::size_t own_row, PriceItem& item, const Wrong& wrong) const {
    if (mapping_.of(ImportField::from_quantity) < 0) return true;
    item.quantity_prices.clear();
    const auto found = rows_of_.find(key);
    if (found == rows_of_.end()) return true;
    std::set<std::size_t> told;
    const auto tell = [&](std::size_t row, ImportField field, std::string what, std::string remedy) {
        if (told.insert(row).second) wrong(row, field, std::move(what), std::move(remedy));
    };
    const std::size_t names =
        mapping_.names_row < 0 ? 0 : table_.rows[static_cast<std::size_t>(mapping_.names_row)].size();
    std::vector<std::pair<QuantityPrice, std::size_t>> steps;
    for (const std::size_t row : found->second) {
        const std::vector<std::string>& cells = table_.rows[row];
        for (std::size_t i = names; names > 0 && i < cells.size(); ++i) {
            if (without_outer_spaces(cells[i]).empty()) continue;
            tell(row, ImportField::from_quantity, "stands in a line of more cells than the line of names has",
                 "Put cells that hold the separator into quotes, or part the file by semicolons");
        }
        std::vector<CellProblem> problems;
        const std::optional<QuantityPrice> step = reader_.read_step(cells, problems);
        for (CellProblem& one : problems)
            tell(row, one.field, std::move(one.what), std::move(one.remedy));
        if (!step) continue;
        if (const std::optional<ImportField> other = differs_from_own(row, own_row))
            tell(row, *other, "is another than in the item's own line", "Leave it empty beside a quantity");
        steps.emplace_back(*step, row);
    }
    std::stable_sort(steps.begin(), steps.end(),
                     [](const auto& a, const auto& b) { return a.first.from < b.first.from; });
    for (const auto& [step, row] : steps) {
        if (!item.quantity_prices.empty() && step.from <= item.quantity_prices.back().from)
            tell(row, ImportField::from_quantity, "stands twice for the item", "Keep one line for the quantity");
        item.quantity_prices.push_back(step);
    }
    return told.empty();
}

/// A line of many may repeat what its item's own line says, and no more.
std::optional<ImportField> LinesOfMany::differs_from_own(std::size_t row, std::size_t own_row) const {
    for (std::size_t i = 0; i < import_field_count; ++i) {
        const auto field = static_cast<ImportField>(i);
        if (field == ImportField::price || field == ImportField::from_quantity || mapping_.of(field) < 0) continue;
        const std::string text = reader_.text_at(table_.rows[row], field);
        if (!text.empty() && text != reader_.text_at(table_.rows[own_row], field)) return field;
    }
    return std::nullopt;
}

}  // namespace wg::parts
