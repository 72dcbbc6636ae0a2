#include "core/quote/frozen_offer.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/job/offer.h"

namespace wg::quote {
namespace {

using Json = nlohmann::json;

constexpr std::size_t max_plan_bytes = std::size_t{64} << 20U;
constexpr std::size_t most_lines = 10'000;

/// Reads members of a text that anybody may have altered; the first thing that is wrong is kept.
class FrozenReader {
   public:
    [[nodiscard]] bool good() const { return wrong_.empty(); }
    [[nodiscard]] const std::string& wrong() const { return wrong_; }

    std::string text(const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_string()) return found->get<std::string>();
        return miss(key, std::string());
    }
    double figure(const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_number()) {
            const double value = found->get<double>();
            if (std::isfinite(value) && std::fabs(value) <= 1e12) return value;
        }
        return miss(key, 0.0);
    }
    Money money(const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_number_integer()) {
            const auto minor = found->get<std::int64_t>();
            // A sum of lines may be beyond a line's own limit, never beyond what adding up stands.
            if (minor <= 1000 * max_minor && minor >= -1000 * max_minor) return {minor};
        }
        return miss(key, Money{});
    }
    Money money_if_there(const Json& object, const char* key) {
        return object.contains(key) ? money(object, key) : Money{};
    }
    bool flag(const Json& object, const char* key) {
        const auto found = object.find(key);
        return found != object.end() && found->is_boolean() && found->get<bool>();
    }
    const Json& list(const Json& object, const char* key) {
        static const Json none = Json::array();
        const auto found = object.find(key);
        if (found == object.end()) return none;
        if (found->is_array() && found->size() <= most_lines) {
            for (const Json& one : *found) {
                if (!one.is_object()) return miss(key, none);
            }
            return *found;
        }
        return miss(key, none);
    }

   private:
    template <class T>
    const T& miss(const char* key, const T& instead) {
        if (wrong_.empty()) wrong_ = key;
        return instead;
    }
    std::string wrong_;
};

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
