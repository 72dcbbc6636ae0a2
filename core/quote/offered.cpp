#include "core/quote/offered.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"

namespace wg::quote {
namespace {

constexpr double least_difference = 5e-4;  // quantities count in thousandths

bool applies(const std::string& to_choice, const std::string& choice_id) {
    return to_choice.empty() || to_choice == choice_id;
}

std::string amount(double quantity, const std::string& unit) {
    return plain(quantity, 3) + ' ' + unit;
}

Finding finding(const char* code, Severity severity, std::string place_id, std::string place, std::string message,
                std::string remedy) {
    return {code,
            severity,
            Stage::offer,
            std::move(place_id),
            std::move(place),
            std::move(message),
            std::move(remedy),
            "What is offered follows the plan, or the office has said why not",
            "common practice, no published source"};
}

class Builder {
   public:
    Builder(const Offer& offer, const std::string& choice_id, const TaxRules& rules)
        : offer_(offer), choice_id_(choice_id), rules_(rules) {}

    void take_planned(const std::vector<parts::Line>& planned) {
        std::vector<bool> used(offer_.changes.size(), false);
        out.lines.reserve(planned.size() + offer_.lines.size());
        for (const parts::Line& line : planned) {
            OfferedLine offered;
            offered.line = line;
            offered.line.net = line_net(line.unit_price, line.to_buy, rules_.rounding);
            // A change for this very choice goes before one for all.
            const LineChange* change = nullptr;
            for (std::size_t i = 0; i < offer_.changes.size(); ++i) {
                const LineChange& c = offer_.changes[i];
                if (c.item != line.item_id || !applies(c.choice_id, choice_id_)) continue;
                used[i] = true;
                if (change == nullptr || !c.choice_id.empty()) change = &c;
            }
            if (change != nullptr) apply(*change, offered);
            out.lines.push_back(std::move(offered));
        }
        for (std::size_t i = 0; i < offer_.changes.size(); ++i) {
            const LineChange& c = offer_.changes[i];
            if (used[i] || !applies(c.choice_id, choice_id_)) continue;
            out.findings.push_back(finding("offer.change-without-line", Severity::note, c.id, c.item,
                                           "A change is kept for \"" + c.item + "\", which the plan does not ask for",
                                           "Remove the change when it is not wanted any more"));
        }
    }

    void take_own() {
        for (const OfferLine& own : offer_.lines) {
            if (!applies(own.choice_id, choice_id_)) continue;
            if (own.kind == OfferLineKind::subsidy) {
                const Money granted = line_net({own.unit_price_minor}, own.quantity, rules_.rounding);
                out.subsidies.push_back({own.id, own.text, granted});
                out.granted += granted;
                continue;
            }
            OfferedLine offered = as_line(own);
            if (own.to_tick) {
                out.options.push_back({std::move(offered), own.ticked, {}});
            } else {
                out.lines.push_back(std::move(offered));
            }
        }
    }

    /// Lines that count, options included when ticked.
    [[nodiscard]] std::vector<parts::Line> counting() const {
        std::vector<parts::Line> lines;
        lines.reserve(out.lines.size() + out.options.size());
        for (const OfferedLine& line : out.lines)
            if (!line.left_out) lines.push_back(line.line);
        for (const Option& option : out.options)
            if (option.ticked) lines.push_back(option.line.line);
        return lines;
    }

    Offered out;

   private:
    void apply(const LineChange& change, OfferedLine& offered) {
        parts::Line& line = offered.line;
        offered.source = LineSource::changed;
        offered.element_id = change.id;
        offered.reason = change.reason;
        offered.planned_quantity = line.to_buy;
        offered.planned_price = line.unit_price;
        offered.left_out = change.left_out;
        if (change.planned_quantity && std::fabs(*change.planned_quantity - line.to_buy) > least_difference) {
            offered.overtaken = true;
            out.findings.push_back(finding(
                "offer.change-overtaken", Severity::caution, change.id, line.text,
                line.text + " was changed when the plan asked for " + amount(*change.planned_quantity, line.unit) +
                    "; now it asks for " + amount(line.to_buy, line.unit) +
                    (change.quantity ? ", offered are " + amount(*change.quantity, line.unit) : std::string()),
                "Set the quantity anew, or take the change back"));
        }
        if (change.quantity) line.to_buy = *change.quantity;
        if (change.unit_price_minor) {
            line.unit_price = {*change.unit_price_minor};
            line.priced = true;
        }
        if (!change.text.empty()) line.text = change.text;
        line.net = line_net(line.unit_price, line.to_buy, rules_.rounding);
    }

    [[nodiscard]] OfferedLine as_line(const OfferLine& own) const {
        OfferedLine offered;
        offered.source = LineSource::own;
        offered.element_id = own.id;
        offered.supplier = own.supplier;
        parts::Line& line = offered.line;
        line.text = own.text;
        line.unit = own.unit;
        line.quantity = line.to_buy = own.quantity;
        line.unit_price = {own.unit_price_minor};
        line.net = line_net(line.unit_price, line.to_buy, rules_.rounding);
        line.tax_class = own.tax_class;
        line.labour = own.kind == OfferLineKind::labour;
        offered.note = own.note;
        return offered;
    }

    const Offer& offer_;
    const std::string& choice_id_;
    const TaxRules& rules_;
};

void split_into_instalments(const Offer& offer, const TaxRules& rules, Offered& out) {
    if (offer.instalments.empty()) return;
    std::vector<double> percents;
    percents.reserve(offer.instalments.size());
    std::int64_t hundredths = 0;
    for (const Instalment& instalment : offer.instalments) {
        percents.push_back(instalment.percent);
        hundredths += in_last_place(instalment.percent, 2);
    }
    const std::vector<Money> sums = instalments_of(out.quote.gross, percents, rules.rounding);
    for (std::size_t i = 0; i < sums.size(); ++i) {
        const Instalment& of = offer.instalments[i];
        out.instalments.push_back({of.id, of.text, of.percent, sums[i]});
    }
    if (hundredths == 10'000) return;
    out.findings.push_back(
        finding("offer.instalments", Severity::stop, "", "",
                "The instalments are " + fixed(static_cast<double>(hundredths) / 100.0, 2) + " % together",
                "Change them so that they are 100 %"));
}

}  // namespace

std::vector<Money> instalments_of(Money whole, const std::vector<double>& percents, Rounding rounding) {
    std::vector<Money> out;
    out.reserve(percents.size());
    std::int64_t hundredths = 0;
    Money before;  // shares of the running sum: rounding never adds up
    for (const double percent : percents) {
        hundredths += in_last_place(percent, 2);
        const Money up_to = scaled_exact(whole, hundredths, 10'000, rounding);
        out.push_back(up_to - before);
        before = up_to;
    }
    return out;
}

Result<Offered> offered(const std::vector<parts::Line>& planned, const Offer& offer, const std::string& choice_id,
                        const std::string& currency, const TaxRules& rules, int valid_days) {
    Builder builder(offer, choice_id, rules);
    builder.take_planned(planned);
    builder.take_own();
    Result<Quote> priced = price(builder.counting(), currency, rules, offer.discount_percent);
    if (!priced) return priced.problems();
    Offered& out = builder.out;
    for (Option& option : out.options) {
        const Result<Quote> alone = price({option.line.line}, currency, rules, offer.discount_percent);
        if (!alone) return alone.problems();
        option.gross = alone.value().gross;
    }
    out.quote = std::move(priced.value());
    out.quote.valid_days = offer.valid_days > 0 ? offer.valid_days : valid_days;
    if (out.granted > out.quote.gross) {
        out.findings.push_back(finding("offer.subsidies", Severity::stop, "", "",
                                       "The subsidies, " + text(out.granted, currency) + ", are more than the price, " +
                                           text(out.quote.gross, currency),
                                       "Check what is granted"));
    }
    out.to_bring = std::max(Money{}, out.quote.gross - out.granted);
    split_into_instalments(offer, rules, out);
    return std::move(out);
}

}  // namespace wg::quote
