#include "core/parts/price_cells.h"

#include <algorithm>
#include <charconv>

#include "core/parts/price_figures.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "core/tables/csv_writer.h"

namespace wg::parts {
namespace price_cells {

// As the reader of price lists has them: what is taken here can be saved and read again.
constexpr std::size_t longest_text = 2000;
constexpr std::int64_t most_minor = 1'000'000'000;
constexpr double largest_pack = 10000.0;
constexpr double least_pack = 0.001;
constexpr double largest_waste_percent = 100.0;
constexpr double largest_from = 1e6;

std::string quoted(std::string_view text) {
    return "'" + for_message(text, 40) + "'";
}

/// The list's unit for a word; empty: none of them.
std::string_view unit_of(std::string_view word) {
    struct Words {
        std::string_view unit;
        std::vector<std::string_view> known;
    };
    static const std::vector<Words> units = {
        {"pc",
         {"pc", "pcs", "piece", "pieces", "ea", "each", "stk", "st", "stck",
          "st\303\274ck",  // octal: it ends after three digits
          "stueck", "pza", "pieza", "piezas", "ud", "uds", "unidad", "unidades"}},
        {"m", {"m", "metre", "metres", "meter", "meters", "mtr", "lm", "lfm", "lfdm", "metro", "metros"}},
        {"kg", {"kg", "kgs", "kilo", "kilogram", "kilograms", "kilogramm", "kilogramo", "kilogramos"}},
        {"h", {"h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden", "hora", "horas"}}};
    std::string small;
    for (const char c : word)
        if (c != '.') small += c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    for (const Words& one : units)
        if (std::find(one.known.begin(), one.known.end(), small) != one.known.end()) return one.unit;
    return {};
}

bool holds_control_character(std::string_view text) {
    return std::any_of(text.begin(), text.end(),
                       [](char c) { return static_cast<unsigned char>(c) < 0x20U && c != '\n'; });
}

/// Leaves what differs in outer spaces alone.
void take_text(std::string& out, std::string text) {
    if (without_outer_spaces(out) != text) out = std::move(text);
}

}  // namespace price_cells

using namespace price_cells;

std::string LineReader::text_at(const std::vector<std::string>& row, ImportField field) const {
    const int column = mapping_.of(field);
    if (column < 0 || static_cast<std::size_t>(column) >= row.size()) return {};
    const std::string_view cell = tables::without_guard(without_outer_spaces(row[static_cast<std::size_t>(column)]));
    std::string out;
    for (std::size_t i = 0; i < cell.size(); ++i) {
        if (cell[i] == '\r' && i + 1 < cell.size() && cell[i + 1] == '\n') continue;
        out += cell[i];
    }
    return out;
}

std::optional<Money> LineReader::money_at(const std::vector<std::string>& row, ImportField field,
                                          std::vector<CellProblem>& problems) const {
    const std::string text = text_at(row, field);
    if (text.empty()) return std::nullopt;
    const auto wrong = [&](const std::string& what, const char* remedy) {
        problems.push_back({field, quoted(text) + " " + what, remedy});
        return std::nullopt;
    };
    std::string_view amount = text;
    if (!take_off_currency(amount, into_.currency))
        return wrong("is not in " + into_.currency + ", the list's currency", "Convert the prices first");
    const WrittenFigure figure = read_figure(amount, mapping_.decimal);
    if (*figure.wrong != '\0') return wrong(figure.wrong, figure.remedy);
    std::string_view digits = figure.digits;
    // Minus nought is nought.
    if (digits.front() == '-') {
        if (digits.find_first_of("123456789") != std::string_view::npos)
            return wrong("is less than nothing", "Give what one unit costs");
        digits.remove_prefix(1);
    }
    const std::size_t point = digits.find('.');
    std::string_view part = point == std::string_view::npos ? std::string_view() : digits.substr(point + 1);
    while (part.size() > 2 && part.back() == '0')
        part.remove_suffix(1);
    if (part.size() > 2) return wrong("has more than two decimals", "Round it to two decimals");
    std::string minor(digits.substr(0, point));
    minor += part;
    minor.append(2 - part.size(), '0');
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(minor.data(), minor.data() + minor.size(), value);
    if (error != std::errc() || end != minor.data() + minor.size() || value > most_minor)
        return wrong("is more than 10,000,000", "Check the figure");
    return Money{value};
}

std::optional<double> LineReader::number_at(const std::vector<std::string>& row, ImportField field, double most,
                                            std::vector<CellProblem>& problems) const {
    const std::string text = text_at(row, field);
    if (text.empty()) return std::nullopt;
    std::string_view bare = text;
    if (field == ImportField::waste_percent && bare.back() == '%')
        bare = without_outer_spaces(bare.substr(0, bare.size() - 1));
    const WrittenFigure figure = read_figure(bare, mapping_.decimal);
    double value = 0.0;
    if (*figure.wrong != '\0') {
        problems.push_back({field, quoted(text) + " " + figure.wrong, figure.remedy});
        return std::nullopt;
    }
    const auto [end, error] = std::from_chars(figure.digits.data(), figure.digits.data() + figure.digits.size(), value);
    if (error != std::errc() || !(value >= 0.0 && value <= most)) {
        problems.push_back({field, quoted(text) + " is not within 0 to " + plain(most), "Check the figure"});
        return std::nullopt;
    }
    return value;
}

void LineReader::read_unit(const std::string& text, PriceItem& item, std::vector<CellProblem>& problems) {
    const std::string_view unit = unit_of(text);
    if (unit.empty()) {
        problems.push_back({ImportField::unit, quoted(text) + " is no unit of a price list", "Use pc, m, kg or h"});
        return;
    }
    item.unit = unit;
    if (unit == text) return;
    std::string taken = quoted(text) + " as " + item.unit;
    if (units_taken_.size() < 20 && std::find(units_taken_.begin(), units_taken_.end(), taken) == units_taken_.end())
        units_taken_.push_back(std::move(taken));
}

void LineReader::read_texts(const std::vector<std::string>& row, bool is_new, PriceItem& item,
                            std::vector<CellProblem>& problems) {
    const auto needed = [&](ImportField field) {
        if (has(field))
            problems.push_back({field, "is empty", "Fill it in"});
        else
            problems.push_back({field, "has no column, and the item is not in the list yet",
                                "Choose a column for it, or leave new items out"});
    };
    const auto text = [&](ImportField field, std::string& out, bool must) {
        std::string found = text_at(row, field);
        if (found.size() > longest_text) {
            problems.push_back({field, "is longer than 2000 characters", "Shorten the text"});
        } else if (holds_control_character(found)) {
            problems.push_back({field, "holds a control character", "Remove it"});
        } else if (!found.empty()) {
            take_text(out, std::move(found));
        } else if (must && (has(field) || is_new)) {
            needed(field);
        }
    };
    text(ImportField::text, item.text, true);
    text(ImportField::supplier, item.supplier, false);
    text(ImportField::supplier_number, item.supplier_number, false);
    text(ImportField::discount_group, item.discount_group, false);
    if (has(ImportField::tax_class) || !is_new) {
        text(ImportField::tax_class, item.tax_class, true);
    } else {
        item.tax_class = into_.labour_tax_class;
        ++taxed_as_labour_;
    }
    const std::string unit = text_at(row, ImportField::unit);
    if (!unit.empty())
        read_unit(unit, item, problems);
    else if (has(ImportField::unit) || is_new)
        needed(ImportField::unit);
    if (!has(ImportField::price) || text_at(row, ImportField::price).empty()) {
        if (has(ImportField::price) || is_new) needed(ImportField::price);
    } else if (const std::optional<Money> price = money_at(row, ImportField::price, problems)) {
        item.price = *price;
    }
}

// As the list's own file: the cost stands, or follows from the supplier's price less the group's discount.
void LineReader::read_costs(const std::vector<std::string>& row, PriceItem& item, std::vector<CellProblem>& problems) {
    const std::size_t problems_before = problems.size();
    const bool tells_supplier_price = told(row, ImportField::supplier_price);
    if (tells_supplier_price) item.supplier_price = money_at(row, ImportField::supplier_price, problems);
    const std::optional<Money> cost = money_at(row, ImportField::cost, problems);
    if (problems.size() > problems_before) return;
    if (item.supplier_price) {
        double discount = 0.0;
        if (!item.discount_group.empty()) {
            const auto group = std::find_if(into_.discount_groups.begin(), into_.discount_groups.end(),
                                            [&](const DiscountGroup& g) { return g.id == item.discount_group; });
            if (group == into_.discount_groups.end()) {
                problems.push_back({ImportField::discount_group,
                                    quoted(item.discount_group) + " is no discount group of the list",
                                    "Add the group to the list first, or correct it"});
                return;
            }
            discount = group->percent;
        }
        // A cost that is the supplier's price itself says that nothing is taken off.
        const bool in_full = tells_supplier_price && cost == item.supplier_price && discount != 0.0;
        if (in_full && has(ImportField::discount_group) && !told(row, ImportField::discount_group)) {
            item.discount_group.clear();
            discount = 0.0;
        }
        const Money follows = cost_after_discount(*item.supplier_price, discount);
        if (!cost || *cost == follows) {
            item.cost = follows;
            return;
        }
        if (tells_supplier_price) {
            problems.push_back({ImportField::cost,
                                quoted(text_at(row, ImportField::cost)) +
                                    " stands beside the supplier's price, from which " + text(follows, into_.currency) +
                                    " follows",
                                "Give one of the two"});
            return;
        }
        // The line tells what is paid: the list's old way to it no longer holds.
        item.supplier_price.reset();
        if (!told(row, ImportField::discount_group)) item.discount_group.clear();
    }
    if (!item.discount_group.empty()) {
        problems.push_back({ImportField::discount_group, "stands without a supplier's price to take it off",
                            "Give the supplier's price, or leave the group empty"});
        return;
    }
    if (cost) item.cost = cost;
}

void LineReader::read(const std::vector<std::string>& row, bool is_new, PriceItem& item,
                      std::vector<CellProblem>& problems) {
    read_texts(row, is_new, item, problems);
    read_costs(row, item, problems);
    if (told(row, ImportField::pack)) {
        item.pack = number_at(row, ImportField::pack, largest_pack, problems).value_or(0.0);
        if (item.pack > 0.0 && item.pack < least_pack)
            problems.push_back({ImportField::pack, "is below a thousandth of the unit",
                                "Give the units in a pack, or leave it empty"});
    }
    if (told(row, ImportField::waste_percent))
        item.waste_percent = number_at(row, ImportField::waste_percent, largest_waste_percent, problems);
}

std::optional<QuantityPrice> LineReader::read_step(const std::vector<std::string>& row,
                                                   std::vector<CellProblem>& problems) const {
    const std::optional<double> from = number_at(row, ImportField::from_quantity, largest_from, problems);
    const std::optional<Money> price = money_at(row, ImportField::price, problems);
    if (!has(ImportField::price) || text_at(row, ImportField::price).empty())
        problems.push_back({ImportField::price, "is empty beside a quantity", "Give the price of one of so many"});
    if (!from || !price) return std::nullopt;
    return QuantityPrice{*from, *price};
}

}  // namespace wg::parts
