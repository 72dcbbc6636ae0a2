#pragma once
// What the firm asks for, beside what the plan's parts list gives: changed lines, lines of its own, terms. Money in
// minor units of the price list's currency.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wg {

/// More than any quote of this trade: a thousand million units of money.
inline constexpr std::int64_t max_minor = 100'000'000'000;

/// A line of the parts list as the office wants it. It stays when the plan changes; what the plan had when it was made
/// is remembered, so that a change that was overtaken shows.
struct LineChange {
    std::string id;
    std::string choice_id;  ///< empty: in every choice
    std::string item;       ///< of the parts list, by its price item or task
    bool left_out = false;
    std::optional<double> quantity;                ///< to buy, in the line's unit, 0..1e6, thousandths
    std::optional<std::int64_t> unit_price_minor;  ///< net, -max_minor..max_minor
    std::string text;                              ///< empty: the list's
    std::string reason;
    std::optional<double> planned_quantity;  ///< what the plan asked for when the change was made
    std::string extra_json;
    friend bool operator==(const LineChange&, const LineChange&) = default;
};

enum class OfferLineKind {
    part,
    labour,
    subsidy,  ///< paid by somebody else, after tax: taken off what the client has to bring
};

/// A line that no plan asks for.
struct OfferLine {
    std::string id;
    std::string choice_id;  ///< empty: in every choice
    OfferLineKind kind = OfferLineKind::part;
    std::string text;
    std::string unit = "pc";
    double quantity = 1.0;               ///< 0..1e6, thousandths
    std::int64_t unit_price_minor = 0;   ///< net; of a subsidy, what is granted
    std::string tax_class = "standard";  ///< of no account for a subsidy
    std::string supplier;
    bool to_tick = false;  ///< the client may have it or not
    bool ticked = false;   ///< and wants it
    std::string note;      ///< for the firm, never on paper
    std::string extra_json;
    friend bool operator==(const OfferLine&, const OfferLine&) = default;
};

/// A part of the sum with its own day.
struct Instalment {
    std::string id;
    std::string text;      ///< when it falls due, e.g. "on order"
    double percent = 0.0;  ///< of the sum with tax, 0..100, hundredths; together 100
    std::string extra_json;
    friend bool operator==(const Instalment&, const Instalment&) = default;
};

struct Offer {
    std::vector<LineChange> changes;
    std::vector<OfferLine> lines;
    double discount_percent = 0.0;  ///< of all lines, 0..100, hundredths
    std::string discount_reason;
    std::vector<Instalment> instalments;
    int valid_days = 0;    ///< 0: the firm's
    std::string covering;  ///< letter's own words; empty: the firm's
    std::string terms;     ///< empty: the firm's
    // What of the place makes work slower, and the way there.
    std::string access;                 ///< id of the price list's way to reach the collector; empty: not told
    int storeys = 0;                    ///< that the cylinder is carried up or down, 0..50
    std::optional<double> distance_km;  ///< from the firm, one way, 0..2000
    int trips = 0;                      ///< there and back, 0..100; 0: as the price list has it
    std::string extra_json;
    friend bool operator==(const Offer&, const Offer&) = default;
};

}  // namespace wg
