#pragma once
// Members of a text that anybody may have altered, read one by one; the first thing that is wrong is kept. For .cpp
// files.

#include <cmath>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

#include "core/quantity/money.h"

namespace wg::quote {

/// Of a sum: a thousand lines at their own limit (core/job/offer.h).
inline constexpr std::int64_t max_frozen_minor = 100'000'000'000'000;
inline constexpr std::size_t most_frozen_lines = 10'000;

class FrozenReader {
   public:
    using Json = nlohmann::json;
    [[nodiscard]] bool good() const { return wrong_.empty(); }
    /// Name of the first member that is not there, or not what it should be.
    [[nodiscard]] const std::string& wrong() const { return wrong_; }

    std::string text(const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_string()) return found->get<std::string>();
        return miss(key, std::string());
    }
    /// Finite, at most 1e12 either way.
    double figure(const Json& object, const char* key) {
        const auto found = object.find(key);
        if (found != object.end() && found->is_number()) {
            const double value = found->get<double>();
            if (std::isfinite(value) && std::fabs(value) <= 1e12) return value;
        }
        return miss(key, 0.0);
    }
    std::int64_t whole(const Json& object, const char* key, std::int64_t low, std::int64_t high) {
        const auto found = object.find(key);
        // An unsigned number beyond 63 bits would come out negative.
        if (found != object.end() && found->is_number_integer() &&
            (!found->is_number_unsigned() || found->get<std::uint64_t>() <= static_cast<std::uint64_t>(INT64_MAX))) {
            const auto value = found->get<std::int64_t>();
            if (value >= low && value <= high) return value;
        }
        return miss(key, low);
    }
    Money money(const Json& object, const char* key) {
        const std::int64_t minor = whole(object, key, -max_frozen_minor, max_frozen_minor);
        return good() ? Money{minor} : Money{};
    }
    Money money_if_there(const Json& object, const char* key) {
        return object.contains(key) ? money(object, key) : Money{};
    }
    /// Not there: false.
    bool flag(const Json& object, const char* key) {
        const auto found = object.find(key);
        return found != object.end() && found->is_boolean() && found->get<bool>();
    }
    /// Of objects; not there: empty.
    const Json& list(const Json& object, const char* key) {
        static const Json none = Json::array();
        const auto found = object.find(key);
        if (found == object.end()) return none;
        if (found->is_array() && found->size() <= most_frozen_lines) {
            for (const Json& one : *found) {
                if (!one.is_object()) return miss(key, none);
            }
            return *found;
        }
        return miss(key, none);
    }
    const Json& object(const Json& of, const char* key) {
        static const Json none = Json::object();
        const auto found = of.find(key);
        return found != of.end() && found->is_object() ? *found : miss(key, none);
    }
    /// What the caller itself found wrong.
    void refuse(const char* key) { miss(key, 0); }

   private:
    template <class T>
    const T& miss(const char* key, const T& instead) {
        if (wrong_.empty()) wrong_ = key;
        return instead;
    }
    std::string wrong_;
};

}  // namespace wg::quote
