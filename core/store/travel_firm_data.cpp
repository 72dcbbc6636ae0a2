// What a job is planned with and does not come with the program travels with it.

#include <set>

#include "core/quantity/utf8.h"
#include "core/store/equipment_book.h"
#include "core/store/price_book.h"
#include "core/store/rule_book.h"
#include "core/store/sql_store.h"
#include "core/store/travel.h"

namespace wg::store {
namespace {

std::set<std::string> equipment_named_in(const Job& job) {
    std::set<std::string> out;
    for (const Choice& choice : job.choices)
        out.insert({choice.collector_model, choice.block_model, choice.cylinder_model, choice.fixing_method});
    out.erase("");
    return out;
}

}  // namespace

std::optional<Problem> Travel::send_firm_data(Outgoing& out) const {
    exchange::Parcel& parcel = out.parcel;
    const PriceBook prices(*store_);
    const std::string& list = parcel.job.price_list;
    const auto versions = prices.history(list);
    if (!versions) return versions.problems().front();
    if (!versions.value().empty()) {  // else it comes with the program
        const PriceListVersion& newest = versions.value().front();
        Result<std::string> content = prices.content(list, newest.version);
        if (content) {
            parcel.firm_data.push_back({"price_list", list, newest.saved_at, std::move(content).value()});
        } else {
            out.missing.push_back("price list " + for_message(list) + ": " + content.problems().front().what);
        }
    }
    const RuleBook rules(*store_);
    const auto sets = rules.history(parcel.job.rule_set);
    if (!sets) return sets.problems().front();
    if (!sets.value().empty()) {
        const RuleSetVersion& newest = sets.value().front();
        Result<std::string> content = rules.content(newest.id, newest.version);
        if (content) {
            parcel.firm_data.push_back({"rule_set", newest.id, newest.saved_at, std::move(content).value()});
        } else {
            out.missing.push_back(content.problems().front().where + ": " + content.problems().front().what);
        }
    }
    const EquipmentBook equipment(*store_);
    for (const std::string& id : equipment_named_in(parcel.job)) {
        Result<EquipmentKept> kept = equipment.history(id);
        if (!kept) return kept.problems().front();
        for (const Problem& damaged : kept.value().damaged)
            out.missing.push_back(damaged.where + ": " + damaged.what);
        if (kept.value().items.empty()) continue;
        EquipmentVersion& newest = kept.value().items.front();
        parcel.firm_data.push_back({"equipment", id, newest.saved_at, std::move(newest.content)});
    }
    return std::nullopt;
}

std::optional<Problem> Travel::add_firm_data(const exchange::Parcel& parcel, Taken& out) {
    const std::string note =
        "came with a job from " + (parcel.seat_name.empty() ? "another machine" : for_message(parcel.seat_name));
    for (const exchange::SentFirmData& data : parcel.firm_data) {
        const Result<bool> added = [&] {
            if (data.kind == "price_list")
                return PriceBook(*store_).put_from_elsewhere(data.id, data.content, data.saved_at, note);
            if (data.kind == "rule_set")
                return RuleBook(*store_).put_from_elsewhere(data.id, data.content, data.saved_at, note);
            return EquipmentBook(*store_).put_from_elsewhere(data.id, data.content, data.saved_at);
        }();
        if (!added) {
            std::string line = data.kind == "price_list" ? "price list "
                               : data.kind == "rule_set" ? "rule set "
                                                         : "equipment ";
            line.append(for_message(data.id)).append(": ").append(added.problems().front().what);
            out.left_out.push_back(std::move(line));
            continue;
        }
        if (added.value()) ++out.firm_data;
    }
    return std::nullopt;
}

}  // namespace wg::store
