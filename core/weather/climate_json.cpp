#include <cmath>
#include <nlohmann/json.hpp>

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "core/weather/climate.h"

namespace wg::weather {
namespace {

using Json = nlohmann::json;

constexpr std::size_t largest_text = 1u << 20;

// Fields of one object, with every problem kept.
class Fields {
   public:
    Fields(const Json& object, std::string file) : object_(object), file_(std::move(file)) {}

    std::string text(const char* key, bool needed) {
        const Json* value = find(key, needed);
        if (value == nullptr) return {};
        if (!value->is_string() || (needed && value->get_ref<const std::string&>().empty())) {
            add(key, "is not a text", "Write it in quotes");
            return {};
        }
        return value->get<std::string>();
    }

    double figure(const char* key, ClimateRange range) {
        const Json* value = find(key, true);
        return value == nullptr ? range.low : checked(*value, key, range);
    }

    std::array<double, 12> months(const char* key, ClimateRange range) {
        std::array<double, 12> out{};
        out.fill(range.low);
        const Json* value = find(key, true);
        if (value == nullptr) return out;
        if (!value->is_array() || value->size() != out.size()) {
            add(key, "is not a list of twelve figures", "Give January to December");
            return out;
        }
        for (std::size_t m = 0; m < out.size(); ++m) {
            out[m] = checked((*value)[m], std::string(key) + "[" + std::to_string(m) + "]", range);
        }
        return out;
    }

    std::optional<std::array<double, 12>> months_if_given(const char* key, ClimateRange range) {
        if (find(key, false) == nullptr) return std::nullopt;
        return months(key, range);
    }

    bool flag(const char* key) {
        const Json* value = find(key, true);
        if (value != nullptr && !value->is_boolean())
            add(key, "is not true or false", "Say whether the climate is invented");
        return value != nullptr && value->is_boolean() && value->get<bool>();
    }

    std::uint64_t seed(const char* key) {
        const Json* value = find(key, false);
        if (value == nullptr) return 1;
        if (!value->is_number_unsigned()) {
            add(key, "is not a whole number from 0 up", "Give any whole number; it selects the sequence of days");
            return 1;
        }
        return value->get<std::uint64_t>();
    }

    [[nodiscard]] std::vector<Problem>& problems() { return problems_; }

   private:
    const Json* find(const char* key, bool needed) {
        const auto at = object_.find(key);
        if (at != object_.end()) return &*at;
        if (needed) add(key, "is missing", "Add it");
        return nullptr;
    }
    double checked(const Json& value, const std::string& key, ClimateRange range) {
        const auto [low, high] = range;
        if (!value.is_number()) {
            add(key, "is not a number", "Give a figure from " + fixed(low, 1) + " to " + fixed(high, 1));
            return low;
        }
        const double figure = value.get<double>();
        if (!(figure >= low && figure <= high)) {
            add(key, "is " + fixed(figure, 3) + ", outside " + fixed(low, 1) + " to " + fixed(high, 1),
                "Correct the figure");
            return low;
        }
        return figure;
    }
    void add(const std::string& key, std::string what, std::string remedy) {
        problems_.push_back({file_ + ": " + key, std::move(what), std::move(remedy)});
    }

    const Json& object_;
    std::string file_;
    std::vector<Problem> problems_;
};

Problem not_json(const std::string& file, std::string_view text, const Json::parse_error& error) {
    int line = 1;
    int column = 1;
    for (std::size_t i = 0; i + 1 < error.byte && i < text.size(); ++i) {
        column = text[i] == '\n' ? 1 : column + 1;
        line += text[i] == '\n' ? 1 : 0;
    }
    return {file + ":" + std::to_string(line) + ":" + std::to_string(column), "the text is no valid JSON here",
            "Correct the text; a comma, quote or bracket may be missing"};
}

}  // namespace

Result<Climate> climate_from_json(std::string_view text, const std::string& file_name) {
    if (text.size() > largest_text) {
        return Problem{file_name, "the file is larger than 1 MB, too large for a climate", "Choose a climate file"};
    }
    Json root;
    try {
        root = Json::parse(text);
    } catch (const Json::parse_error& error) {
        return not_json(file_name, text, error);
    } catch (const Json::exception&) {  // a number too large, for one
        return Problem{file_name, "the text holds a value that cannot be read", "Correct the figures"};
    }
    if (!root.is_object())
        return Problem{file_name, "the text is no climate", "Give one object with the climate's fields"};

    Fields fields(root, file_name);
    Climate climate;
    climate.id = fields.text("id", true);
    climate.label = fields.text("label", true);
    climate.country = fields.text("country", false);
    climate.invented = fields.flag("invented");
    climate.source = fields.text("source", true);
    climate.latitude_deg = fields.figure("latitude_deg", climate_range::latitude_deg);
    climate.longitude_deg = fields.figure("longitude_deg", climate_range::longitude_deg);
    climate.altitude_m = fields.figure("altitude_m", climate_range::altitude_m);
    climate.utc_offset_h = fields.figure("utc_offset_h", climate_range::utc_offset_h);
    climate.global_kwh_m2_day = fields.months("global_kwh_m2_day", climate_range::global_kwh_m2_day);
    climate.air_mean_c = fields.months("air_mean_c", climate_range::air_mean_c);
    climate.air_daily_swing_k = fields.months("air_daily_swing_k", climate_range::air_daily_swing_k);
    climate.relative_humidity = fields.months("relative_humidity", climate_range::relative_humidity);
    climate.wind_m_s = fields.months("wind_m_s", climate_range::wind_m_s);
    climate.global_variation = fields.months_if_given("global_variation", climate_range::global_variation);
    climate.air_spread_k = fields.months_if_given("air_spread_k", climate_range::air_spread_k);
    climate.seed = fields.seed("seed");
    if (!fields.problems().empty()) return std::move(fields.problems());
    return climate;
}

}  // namespace wg::weather
