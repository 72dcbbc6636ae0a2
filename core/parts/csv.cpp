#include <string_view>

#include "core/parts/parts.h"
#include "core/quantity/text.h"

namespace wg::parts {
namespace {

// RFC 4180: a cell with comma, quote or line break stands in quotes, quotes doubled.
std::string cell(const std::string& text) {
    std::string out = text;
    // A spreadsheet would run these as a formula; the apostrophe marks text (OWASP, "CSV Injection").
    if (!out.empty() && std::string_view("=+-@\t\r").find(out.front()) != std::string_view::npos) out.insert(0, "'");
    if (out.find_first_of(",\"\r\n") == std::string::npos) return out;
    std::string quoted = "\"";
    for (const char c : out) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

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
    std::string out =
        "item,text,kind,quantity needed,quantity to buy,unit,unit price net,net,currency,tax class,why\r\n";
    for (const Line& line : lines) {
        out += cell(line.item_id) + ',' + cell(line.text) + ',' + (line.labour ? "labour" : "goods") + ',' +
               fixed(line.quantity, 3) + ',' + fixed(line.to_buy, 3) + ',' + cell(line.unit) + ',';
        // An unpriced line has no price: an empty cell, not 0.00.
        out += line.priced ? plain_amount(line.unit_price) + ',' + plain_amount(line.net) : ",";
        out += ',' + cell(currency) + ',' + cell(line.tax_class) + ',' + cell(line.why) + "\r\n";
    }
    return out;
}

}  // namespace wg::parts
