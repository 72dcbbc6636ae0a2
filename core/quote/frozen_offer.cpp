#include "core/quote/frozen_offer.h"

#include <nlohmann/json.hpp>

#include "core/quote/frozen_reader.h"

namespace wg::quote {
namespace {

using Json = nlohmann::json;

constexpr std::size_t max_plan_bytes = std::size_t{64} << 20U;

FrozenLine line_of(FrozenReader& read, const Json& object) {
    FrozenLine line;
    line.key = read.text(object, "item");
    line.text = read.text(object, "text");
    line.unit = read.text(object, "unit");
    line.quantity = read.figure(object, "to_buy");
    line.unit_price = read.money(object, "unit_price_minor");
    line.net = read.money(object, "net_minor");
    line.labour = read.flag(object, "labour");
    return line;
}

void read_price(FrozenReader& read, const Json& money, FrozenOffer& out) {
    const Json& price = money["quote"];
    out.net = read.money(price, "net_minor");
    out.gross = read.money(price, "gross_minor");
    out.discount = read.money_if_there(price, "discount_minor");
    out.granted = read.money_if_there(price, "granted_minor");
    out.to_bring = price.contains("to_bring_minor") ? read.money(price, "to_bring_minor") : out.gross;
    for (const Json& tax : read.list(price, "taxes")) {
        out.taxes.push_back({read.text(tax, "label"), read.figure(tax, "rate"), read.money(tax, "net_minor"),
                             read.money(tax, "tax_minor")});
    }
    for (const Json& part : read.list(money, "instalments"))
        out.instalments.push_back(
            {read.text(part, "text"), read.figure(part, "percent"), read.money(part, "sum_minor")});
}

}  // namespace

Result<FrozenOffer> frozen_offer(std::string_view plan_json, const std::string& where) {
    const auto refuse = [&where](const std::string& what) {
        return Problem{where, what, "Issue the quote again, or go back to the last backup"};
    };
    if (plan_json.size() > max_plan_bytes) return refuse("the plan kept with it is too long to be one");
    const Json plan = Json::parse(plan_json, nullptr, false);
    if (!plan.is_object()) return refuse("the plan kept with it cannot be read");
    const auto money = plan.find("money");
    if (money == plan.end() || !money->is_object() || !money->contains("quote") || !(*money)["quote"].is_object())
        return refuse("the plan kept with it has no price");
    FrozenReader read;
    FrozenOffer out;
    out.currency = read.text(*money, "currency");
    if (const auto choice = plan.find("choice"); choice != plan.end() && choice->is_object()) {
        out.choice_label = read.text(*choice, "label");
        if (choice->contains("id")) out.choice_id = read.text(*choice, "id");
    }
    const bool whole = money->contains("offered");
    for (const Json& object : read.list(*money, whole ? "offered" : "parts")) {
        if (read.flag(object, "left_out")) continue;
        out.lines.push_back(line_of(read, object));
    }
    read_price(read, *money, out);
    if (!read.good())
        return refuse("the plan kept with it lacks \"" + read.wrong() + "\", or it is not what it should be");
    Money sum;
    for (const FrozenLine& line : out.lines)
        sum += line.net;
    out.lines_are_the_sum = sum - out.discount == out.net;
    if (whole && !out.lines_are_the_sum) return refuse("the lines of the plan kept with it do not add up to its price");
    return out;
}

}  // namespace wg::quote
