#pragma once
// What is offered: the plan's parts list with the office's changes and lines, priced, with options, subsidies and
// instalments. Pure.

#include <string>
#include <vector>

#include "core/findings/finding.h"
#include "core/job/offer.h"
#include "core/quote/quote.h"

namespace wg::quote {

enum class LineSource {
    plan,     ///< as the parts list has it
    changed,  ///< of the parts list, changed by the office
    own,      ///< entered by the office
};

struct OfferedLine {
    parts::Line line;  ///< as offered
    LineSource source = LineSource::plan;
    std::string element_id;  ///< of the change or the own line; empty: as planned
    std::string reason;      ///< the office's words for its change
    std::string supplier;    ///< of an own line
    std::string note;        ///< of an own line: for the firm, never on paper
    // With LineSource::changed, what the parts list has now.
    double planned_quantity = 0.0;
    Money planned_price;
    bool left_out = false;   ///< stands in no sum
    bool overtaken = false;  ///< the list asks for another quantity than when the change was made
};

/// A line that the client may tick, and what it adds.
struct Option {
    OfferedLine line;
    bool ticked = false;  ///< in the sums
    Money gross;          ///< with tax and discount, by itself
};

struct Subsidy {
    std::string element_id;
    std::string text;
    Money granted;
};

struct InstalmentSum {
    std::string element_id;
    std::string text;
    double percent = 0.0;
    Money sum;
};

struct Offered {
    std::vector<OfferedLine> lines;  ///< all but those to tick, in the order of the parts list, own ones after it
    std::vector<Option> options;
    std::vector<Subsidy> subsidies;
    Money granted;
    Quote quote;                             ///< over lines that are in and ticked options
    Money to_bring;                          ///< by the client: gross less what is granted, 0 at least
    std::vector<InstalmentSum> instalments;  ///< of the gross; together exactly it
    std::vector<Finding> findings;
};

/// `valid_days` serves when the offer names none. A problem names the line; findings tell what the office has to look
/// at: changes that the plan has overtaken or has no line for, instalments that are not 100 % together, subsidies
/// beyond the price.
[[nodiscard]] Result<Offered> offered(const std::vector<parts::Line>& planned, const Offer& offer,
                                      const std::string& choice_id, const std::string& currency, const TaxRules& rules,
                                      int valid_days = 30);

/// Shares of `whole` in percent with two decimals. Each is the rounded sum up to it less the one before, so that none
/// is off by more than a minor unit and together they are `whole` when the percentages are 100 together.
[[nodiscard]] std::vector<Money> instalments_of(Money whole, const std::vector<double>& percents, Rounding rounding);

}  // namespace wg::quote
