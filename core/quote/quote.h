#pragma once
// Price build-up with tax and rounding.

#include <string>
#include <vector>

#include "core/parts/parts.h"
#include "core/quantity/money.h"

namespace wg::quote {

struct TaxRate {
    std::string tax_class;
    std::string label;
    double rate = 0.0;  ///< 0..1, counted in millionths
    friend bool operator==(const TaxRate&, const TaxRate&) = default;
};

struct TaxRules {
    std::vector<TaxRate> rates;
    bool tax_by_total = true;  ///< EN 16931 BR-CO-17: tax on the sum of a rate's lines; false: line by line
    Rounding rounding = Rounding::half_up;
    std::string source;
};

/// The rule set's rates with those that the price list has in force on a day (ISO 8601; empty: the newest it has) in
/// the place of, or beside, them.
[[nodiscard]] TaxRules tax_rules_on(const TaxRules& rules, const parts::PriceList& list, const std::string& on);

struct TaxSum {
    TaxRate rate;
    Money lines;     ///< of the rate, net
    Money discount;  ///< its share of the discount
    Money net;       ///< taxable amount: lines less discount
    Money tax;
};

struct Quote {
    std::string currency;
    std::vector<parts::Line> lines;  ///< in the order shown: equipment, material, labour
    Money lines_net;                 ///< before the discount
    Money discount;
    Money net;
    std::vector<TaxSum> taxes;
    Money gross;
    int valid_days = 30;
};

/// Lines of unknown tax class are a problem, not tax-free. The discount, in percent of all lines with two decimals, is
/// an allowance on the document by tax rate (EN 16931-1, BG-20): each rate's share is rounded once, taxable amounts and
/// taxes follow from it (BR-CO-13, BR-CO-17), also where tax goes line by line.
[[nodiscard]] Result<Quote> price(const std::vector<parts::Line>& lines, const std::string& currency,
                                  const TaxRules& rules, double discount_percent = 0.0);

}  // namespace wg::quote
