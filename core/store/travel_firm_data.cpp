// What a job is planned with and does not come with the program travels with it.

#include <set>

#include "core/quantity/utf8.h"
#include "core/store/equipment_book.h"
#include "core/store/price_book.h"
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
    PriceBook prices(*store_);
    EquipmentBook equipment(*store_);
    for (const exchange::SentFirmData& data : parcel.firm_data) {
        const bool list = data.kind == "price_list";
        const std::string from = parcel.seat_name.empty() ? "another machine" : for_message(parcel.seat_name);
        const Result<bool> added =
            list ? prices.put_from_elsewhere(data.id, data.content, data.saved_at, "came with a job from " + from)
                 : equipment.put_from_elsewhere(data.id, data.content, data.saved_at);
        if (!added) {
            std::string line = list ? "price list " : "equipment ";
            line.append(for_message(data.id)).append(": ").append(added.problems().front().what);
            out.left_out.push_back(std::move(line));
            continue;
        }
        if (added.value()) ++out.firm_data;
    }
    return std::nullopt;
}

}  // namespace wg::store
