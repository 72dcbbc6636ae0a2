#include "core/quote/margin.h"

namespace wg::quote {

Margin margin_of(const Offered& offered) {
    Margin out;
    Money known;
    Money unknown;
    for (const parts::Line& line : offered.quote.lines) {
        if (line.unit_cost) {
            known += line.net;
            out.cost += line_net(*line.unit_cost, line.to_buy);
        } else {
            unknown += line.net;
            ++out.unknown_lines;
        }
    }
    // The share of the known lines is rounded once; the rest is what remains, so that both are the quote's net.
    const Money all = offered.quote.lines_net;
    out.sold = known;
    if (offered.quote.discount.minor != 0 && all.minor != 0)
        out.sold = known - scaled_exact(offered.quote.discount, known.minor, all.minor);
    out.unknown_sold = offered.quote.net - out.sold;
    out.kept = out.sold - out.cost;
    if (out.cost.minor > 0)
        out.percent = 100.0 * static_cast<double>(out.kept.minor) / static_cast<double>(out.cost.minor);
    return out;
}

}  // namespace wg::quote
