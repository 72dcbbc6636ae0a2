#include "core/merge/edit.h"

#include <algorithm>

#include "core/merge/path.h"
#include "core/quantity/utf8.h"

namespace wg::merge {
namespace {

/// The seat's place in the list, put in where its id belongs.
std::uint32_t place_of(Versions& versions, const Seat& seat) {
    const auto by_id = [](const SeenSeat& a, const std::string& id) { return a.seat.id < id; };
    const auto at = std::lower_bound(versions.seats.begin(), versions.seats.end(), seat.id, by_id);
    const auto place = static_cast<std::uint32_t>(at - versions.seats.begin());
    if (at != versions.seats.end() && at->seat.id == seat.id) {
        at->seat.name = seat.name;
        return place;
    }
    versions.seats.insert(at, {seat, 0});
    for (auto& [path, values] : versions.fields) {
        for (Value& value : values)
            value.seat += value.seat >= place ? 1 : 0;
    }
    return place;
}

}  // namespace

std::vector<Problem> seat_problems(const Seat& seat) {
    std::vector<Problem> out;
    const bool id = !seat.id.empty() && seat.id.size() <= 64 &&
                    seat.id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
    if (!id) {
        out.push_back({"id of the machine", "is '" + for_message(seat.id) + "'",
                       "It has to be 1 to 64 of the signs a-z, 0-9 and -: a UUID"});
    }
    if (seat.name.size() > 200 || !is_utf8(seat.name) || seat.name.find('\0') != std::string::npos) {
        out.push_back({"name of the machine", "is longer than 200 bytes or no text", "Give it a shorter name"});
    }
    return out;
}

Edit::Edit(Versions versions, const Seat& seat, Instant at) : versions_(std::move(versions)), at_(at) {
    for (const SeenSeat& seen : versions_.seats)
        number_ = std::max(number_, seen.seen);
    ++number_;
    seat_ = place_of(versions_, seat);
    versions_.seats[seat_].seen = number_;
}

Value Edit::value(std::optional<std::string> json) const {
    return {seat_, number_, at_, std::move(json)};
}

void Edit::replace(const std::string& path, std::optional<std::string> json) {
    made_ = true;
    if (is_element(path)) answered_.insert(path);
    std::vector<Value>& values = versions_.fields[path];
    values.clear();
    values.push_back(value(std::move(json)));
    confirm_holders(path);
}

void Edit::put_beside(const std::string& path, std::optional<std::string> json) {
    made_ = true;
    std::vector<Value>& values = versions_.fields[path];
    values.push_back(value(std::move(json)));
    std::sort(values.begin(), values.end(),
              [](const Value& a, const Value& b) { return a.seat != b.seat ? a.seat < b.seat : a.number < b.number; });
}

void Edit::confirm(std::string_view element) {
    if (!answered_.insert(std::string(element)).second) return;
    const auto found = versions_.fields.find(element);
    if (found == versions_.fields.end()) return;
    std::vector<Value>& values = found->second;
    values.erase(std::remove_if(values.begin(), values.end(), [](const Value& v) { return v.json.has_value(); }),
                 values.end());
    put_beside(std::string(element), "true");
}

void Edit::confirm_holders(std::string_view path) {
    for (std::string_view element = holder_of(path); !element.empty(); element = holder_of(element))
        confirm(element);
}

}  // namespace wg::merge
