#include "core/parts/price_entry.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

#include "core/parts/price_figures.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

namespace wg::parts {
namespace price_entry {

constexpr double most_units = 1e7;  // as the reader of price lists has it
constexpr double most_from = 1e6;
constexpr std::size_t longest_quantity_text = 4000;

/// With decimal point or comma, never with marks of thousands: nothing can be read two ways.
std::optional<double> plain_figure(std::string_view text) {
    std::string bare(without_outer_spaces(text));
    for (char& c : bare)
        if (c == ',') c = '.';
    if (bare.empty() || bare.find_first_not_of("0123456789.") != std::string::npos) return std::nullopt;
    double value = 0.0;
    const auto [end, error] = std::from_chars(bare.data(), bare.data() + bare.size(), value);
    if (error != std::errc() || end != bare.data() + bare.size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

Problem no_quantity_price(std::string_view part) {
    return {"Prices of quantities", "'" + for_message(part, 40) + "' is no quantity with its price",
            "Write them as 50: 6.90; 100: 6.50"};
}

/// The shortest digits that are the same number, without an exponent.
std::string digits_of_quantity(double value) {
    char out[400];
    const auto [end, error] = std::to_chars(out, out + sizeof out, value, std::chars_format::fixed);
    return error == std::errc() ? std::string(out, end) : std::string();
}

}  // namespace price_entry

using namespace price_entry;

std::optional<Money> money_of_units(double units) noexcept {
    if (!(units >= 0.0 && units <= most_units)) return std::nullopt;
    const double minor = units * 100.0;
    const double whole = std::round(minor);
    if (std::fabs(minor - whole) > 1e-6 * std::fmax(1.0, minor * 1e-6)) return std::nullopt;
    return Money{std::llround(minor)};
}

double units_of(Money amount) noexcept {
    return static_cast<double>(amount.minor) / 100.0;
}

double minor_of_units(double units) noexcept {
    return std::round(units * 1e8) / 1e6;
}

double share_of_percent(double percent) noexcept {
    return std::round(percent * 1e6) / 1e8;
}

double percent_of_share(double share) noexcept {
    return std::round(share * 1e8) / 1e6;
}

std::string quantity_prices_text(const std::vector<QuantityPrice>& prices) {
    std::string out;
    for (const QuantityPrice& step : prices) {
        if (!out.empty()) out += "; ";
        out += digits_of_quantity(step.from);
        out += ": ";
        std::string minor = std::to_string(step.price.minor);
        if (minor.size() < 3) minor.insert(0, 3 - minor.size(), '0');
        out += minor.insert(minor.size() - 2, 1, '.');
    }
    return out;
}

Result<std::vector<QuantityPrice>> quantity_prices_from(std::string_view text) {
    std::vector<QuantityPrice> out;
    if (text.size() > longest_quantity_text)
        return Problem{"Prices of quantities", "are longer than 4,000 characters", "Leave some out"};
    for (std::string_view rest = text; !without_outer_spaces(rest).empty();) {
        const std::string_view part = rest.substr(0, rest.find(';'));
        rest.remove_prefix(std::min(rest.size(), part.size() + 1));
        if (without_outer_spaces(part).empty()) continue;
        const std::size_t colon = part.find(':');
        if (colon == std::string_view::npos) return no_quantity_price(part);
        const std::optional<double> from = plain_figure(part.substr(0, colon));
        const std::optional<double> units = plain_figure(part.substr(colon + 1));
        const std::optional<Money> price = units ? money_of_units(*units) : std::nullopt;
        if (!from || !price || *from > most_from) return no_quantity_price(part);
        if (!out.empty() && *from <= out.back().from)
            return Problem{"Prices of quantities", plain(*from, 6) + " does not lie above the quantity before it",
                           "Put them in rising order"};
        out.push_back({*from, *price});
    }
    return out;
}

void reckon_cost(PriceItem& item, const std::vector<DiscountGroup>& groups) {
    if (!item.supplier_price) return;
    const auto group = std::find_if(groups.begin(), groups.end(),
                                    [&](const DiscountGroup& one) { return one.id == item.discount_group; });
    item.cost = cost_after_discount(*item.supplier_price, group == groups.end() ? 0.0 : group->percent);
}

void reckon_costs(PriceList& list) {
    for (PriceItem& item : list.items)
        reckon_cost(item, list.discount_groups);
}

double waste_share_of(const PriceItem& item) noexcept {
    if (item.waste_percent) return *item.waste_percent / 100.0;
    return item.id.starts_with("insulation-") ? insulation_waste : 0.0;
}

std::vector<Problem> problems_beside_items(const PriceList& list) {
    std::set<std::string_view> tasks, groups;
    for (const LabourTask& task : list.tasks)
        tasks.insert(task.id);
    PriceList slim;
    for (const PriceItem& item : list.items) {
        const bool new_group = !item.discount_group.empty() && groups.insert(item.discount_group).second;
        if (new_group || tasks.contains(item.id)) slim.items.push_back(item);
    }
    slim.note = list.note;
    slim.id = list.id;
    slim.label = list.label;
    slim.invented = list.invented;
    slim.currency = list.currency;
    slim.valid_from = list.valid_from;
    slim.valid_to = list.valid_to;
    slim.labour_hour = list.labour_hour;
    slim.labour_cost = list.labour_cost;
    slim.labour_tax_class = list.labour_tax_class;
    slim.labour_rates = list.labour_rates;
    slim.discount_groups = list.discount_groups;
    slim.tasks = list.tasks;
    slim.difficulty = list.difficulty;
    slim.travel = list.travel;
    slim.tax_rates = list.tax_rates;
    slim.tariffs = list.tariffs;
    const Result<PriceList> read = price_list_from_json(price_list_to_json(slim), "price list " + for_message(list.id));
    return read.ok() ? std::vector<Problem>{} : read.problems();
}

}  // namespace wg::parts
