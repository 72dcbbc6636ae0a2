#include "core/quote/quote.h"

#include <algorithm>
#include <cmath>

namespace wg::quote {
namespace {

const TaxRate* find_rate(const TaxRules& rules, const std::string& tax_class) {
    for (const TaxRate& rate : rules.rates) {
        if (rate.tax_class == tax_class) return &rate;
    }
    return nullptr;
}

std::vector<Problem> check(const std::vector<parts::Line>& lines, const TaxRules& rules) {
    std::vector<Problem> problems;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::string where = "line " + std::to_string(i + 1) + " \"" + lines[i].text + '"';
        if (find_rate(rules, lines[i].tax_class) == nullptr) {
            problems.push_back({where,
                                lines[i].tax_class.empty() ? "has no tax class"
                                                           : "has the tax class '" + lines[i].tax_class +
                                                                 "', which the rule set does not know",
                                "Correct the class in the price list, or add its rate to the rule set"});
        }
        if (!std::isfinite(lines[i].to_buy)) {
            problems.push_back({where, "has no finite quantity", "Check the layout that the line comes from"});
        }
    }
    return problems;
}

}  // namespace

Result<Quote> price(const std::vector<parts::Line>& lines, const std::string& currency, const TaxRules& rules) {
    std::vector<Problem> problems = check(lines, rules);
    if (!problems.empty()) return problems;

    Quote quote;
    quote.currency = currency;
    quote.lines = lines;
    std::stable_partition(quote.lines.begin(), quote.lines.end(), [](const parts::Line& line) { return !line.labour; });

    for (const TaxRate& rate : rules.rates) {
        TaxSum sum{rate, {}, {}};
        bool used = false;
        for (const parts::Line& line : quote.lines) {
            if (line.tax_class != rate.tax_class) continue;
            used = true;
            sum.net += line.net;
            if (!rules.tax_by_total) sum.tax += scaled(line.net, rate.rate, rules.rounding);
        }
        if (!used) continue;
        if (rules.tax_by_total) sum.tax = scaled(sum.net, rate.rate, rules.rounding);
        quote.net += sum.net;
        quote.gross += sum.net + sum.tax;
        quote.taxes.push_back(std::move(sum));
    }
    return quote;
}

}  // namespace wg::quote
