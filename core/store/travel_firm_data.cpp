// What a job is planned with and does not come with the program travels with it.

#include "core/quantity/utf8.h"
#include "core/store/price_book.h"
#include "core/store/sql_store.h"
#include "core/store/travel.h"

namespace wg::store {

std::optional<Problem> Travel::send_firm_data(exchange::Parcel& parcel) const {
    const PriceBook prices(*store_);
    const std::string& list = parcel.job.price_list;
    const auto versions = prices.history(list);
    if (!versions) return versions.problems().front();
    if (versions.value().empty()) return std::nullopt;  // comes with the program
    const PriceListVersion& newest = versions.value().front();
    Result<std::string> content = prices.content(list, newest.version);
    if (!content) return content.problems().front();
    parcel.firm_data.push_back({"price_list", list, newest.saved_at, std::move(content).value()});
    return std::nullopt;
}

std::optional<Problem> Travel::add_firm_data(const exchange::Parcel& parcel, Taken& out) {
    PriceBook prices(*store_);
    for (const exchange::SentFirmData& data : parcel.firm_data) {
        if (data.kind != "price_list") continue;
        const std::string from = parcel.seat_name.empty() ? "another machine" : for_message(parcel.seat_name);
        const Result<bool> added =
            prices.put_from_elsewhere(data.id, data.content, data.saved_at, "came with a job from " + from);
        if (!added) {
            out.left_out.push_back("price list " + for_message(data.id) + ": " + added.problems().front().what);
            continue;
        }
        if (added.value()) ++out.firm_data;
    }
    return std::nullopt;
}

}  // namespace wg::store
