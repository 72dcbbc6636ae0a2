#include <string>
#include <vector>

#include "core/parts/parts.h"
#include "core/quantity/text.h"
#include "core/tables/csv_writer.h"

namespace wg::parts {
namespace {

// Money without the commas between thousands.
std::string plain_amount(Money money) {
    std::string out;
    for (const char c : text(money, "")) {
        if (c != ',') out += c;
    }
    return out;
}

}  // namespace

std::string to_csv(const std::vector<Line>& lines, const std::string& currency) {
    std::vector<std::vector<std::string>> rows{{"item", "text", "kind", "quantity needed", "quantity to buy", "unit",
                                                "unit price net", "net", "currency", "tax class", "why"}};
    rows.reserve(lines.size() + 1);
    for (const Line& line : lines) {
        // An unpriced line has no price: an empty cell, not 0.00.
        const std::string unit_price = line.priced ? plain_amount(line.unit_price) : "";
        const std::string net = line.priced ? plain_amount(line.net) : "";
        rows.push_back({line.item_id, line.text, line.labour ? "labour" : "goods", fixed(line.quantity, 3),
                        fixed(line.to_buy, 3), line.unit, unit_price, net, currency, line.tax_class, line.why});
    }
    return tables::write_csv(rows);
}

}  // namespace wg::parts
