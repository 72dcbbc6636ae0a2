#include "core/quote/quote.h"

#include <algorithm>
#include <cmath>
#include <map>

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

constexpr std::int64_t million = 1'000'000;

Money tax_on(Money net, const TaxRate& rate, const TaxRules& rules) {
    return scaled_exact(net, in_last_place(rate.rate, 6), million, rules.rounding);
}

}  // namespace

TaxRules tax_rules_on(const TaxRules& rules, const parts::PriceList& list, const std::string& on) {
    std::map<std::string, const parts::DatedTaxRate*> in_force;
    for (const parts::DatedTaxRate& rate : list.tax_rates) {
        if (!on.empty() && rate.valid_from > on) continue;  // ISO dates of equal length sort as text
        const parts::DatedTaxRate*& newest = in_force[rate.tax_class];
        if (newest == nullptr || rate.valid_from > newest->valid_from) newest = &rate;
    }
    TaxRules out = rules;
    for (const auto& [tax_class, rate] : in_force) {
        const TaxRate own{tax_class, rate->label, rate->rate};
        const auto same = std::find_if(out.rates.begin(), out.rates.end(),
                                       [&](const TaxRate& of_rules) { return of_rules.tax_class == own.tax_class; });
        if (same != out.rates.end()) {
            *same = own;
        } else {
            out.rates.push_back(own);
        }
    }
    return out;
}

Result<Quote> price(const std::vector<parts::Line>& lines, const std::string& currency, const TaxRules& rules,
                    double discount_percent) {
    std::vector<Problem> problems = check(lines, rules);
    if (!(discount_percent >= 0.0 && discount_percent <= 100.0))
        problems.push_back({"discount", "lies outside 0 to 100 %", "Enter a share of the price"});
    if (!problems.empty()) return problems;

    Quote quote;
    quote.currency = currency;
    quote.lines = lines;
    std::stable_partition(quote.lines.begin(), quote.lines.end(), [](const parts::Line& line) { return !line.labour; });

    const std::int64_t hundredths = in_last_place(discount_percent, 2);
    for (const TaxRate& rate : rules.rates) {
        TaxSum sum;
        sum.rate = rate;
        bool used = false;
        for (const parts::Line& line : quote.lines) {
            if (line.tax_class != rate.tax_class) continue;
            used = true;
            sum.lines += line.net;
            if (!rules.tax_by_total) sum.tax += tax_on(line.net, rate, rules);
        }
        if (!used) continue;
        sum.discount = scaled_exact(sum.lines, hundredths, 10'000, rules.rounding);
        sum.net = sum.lines - sum.discount;
        if (rules.tax_by_total) {
            sum.tax = tax_on(sum.net, rate, rules);
        } else {
            sum.tax -= tax_on(sum.discount, rate, rules);
        }
        quote.lines_net += sum.lines;
        quote.discount += sum.discount;
        quote.net += sum.net;
        quote.gross += sum.net + sum.tax;
        quote.taxes.push_back(std::move(sum));
    }
    return quote;
}

}  // namespace wg::quote
