#include "core/weather/climate_table.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "core/weather/text_lines.h"

namespace wg::weather {
namespace {

using detail::Field;
using detail::Line;

constexpr std::size_t largest_text = 4u << 20;
constexpr std::size_t longest_text_field = 200;
constexpr std::size_t longest_id = 64;
constexpr std::size_t most_places = 5000;

struct Single {
    const char* name;
    double Climate::*field;
    ClimateRange range;
};
constexpr std::array<Single, 4> singles = {{
    {"latitude_deg", &Climate::latitude_deg, climate_range::latitude_deg},
    {"longitude_deg", &Climate::longitude_deg, climate_range::longitude_deg},
    {"altitude_m", &Climate::altitude_m, climate_range::altitude_m},
    {"utc_offset_h", &Climate::utc_offset_h, climate_range::utc_offset_h},
}};

/// Twelve columns `name`_1 to `name`_12.
struct Months {
    const char* name;
    ClimateRange range;
    bool needed;
};
enum MonthsAt : std::size_t { global, air, swing, humidity, wind, global_variation, air_spread, month_groups };
constexpr std::array<Months, month_groups> months = {{
    {"global", climate_range::global_kwh_m2_day, true},
    {"air", climate_range::air_mean_c, true},
    {"swing", climate_range::air_daily_swing_k, false},
    {"humidity", climate_range::relative_humidity, false},
    {"wind", climate_range::wind_m_s, false},
    {"global_variation", climate_range::global_variation, false},
    {"air_spread", climate_range::air_spread_k, false},
}};

constexpr std::array<const char*, 4> texts = {"id", "label", "country", "source"};
enum TextsAt : std::size_t { id, label, country, source };

class Table {
   public:
    Table(std::string_view text, const std::string& file_name) : text_(text), problems_(file_name) {}

    Result<std::vector<Climate>> read() {
        if (!plausible()) return problems_.take();
        detail::Lines lines(text_);
        bool headed = false;
        std::vector<Field> fields;
        while (const std::optional<Line> line = lines.next()) {
            if (problems_.full()) break;
            const std::size_t first = line->text.find_first_not_of(" \t");
            if (first == std::string_view::npos || line->text[first] == '#') continue;
            detail::split(line->text, fields);
            if (headed) {
                place(*line, fields);
            } else {
                header(*line, fields);
                headed = true;
                if (!problems_.empty()) break;  // without the names nothing else can be told
            }
        }
        if (problems_.empty() && climates_.empty())
            problems_.add(1, 1, "the table holds no place", "Give a line of column names and a line for each place");
        if (!problems_.empty()) return problems_.take();
        return std::move(climates_);
    }

   private:
    bool plausible() {
        if (text_.size() > largest_text) {
            problems_.add(1, 1, "the file is larger than 4 MB, too large for a table of climates",
                          "Choose a file with one line a place");
            return false;
        }
        const std::size_t good = valid_utf8_prefix(text_);
        if (good < text_.size()) {
            const std::string_view before = text_.substr(0, good);
            const std::size_t line_start = before.rfind('\n') + 1;  // npos + 1 is 0
            problems_.add(static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1, good - line_start + 1,
                          "the text is not in UTF-8 here", "Save the table as UTF-8");
            return false;
        }
        detail::Lines lines(text_);
        while (const std::optional<Line> line = lines.next()) {
            if (line->text.size() <= detail::longest_line) continue;
            problems_.add(line->number, detail::longest_line, "the line is longer than 16384 characters",
                          "Give one place a line");
            return false;
        }
        return true;
    }

    void header(const Line& line, const std::vector<Field>& fields) {
        if (fields.size() == 1 && line.text.find(';') != std::string_view::npos) {
            problems_.add(line.number, line.text.find(';') + 1, "the columns are parted by semicolons",
                          "Save the table with commas between columns and points in figures");
            return;
        }
        width_ = fields.size();
        const std::set<std::string> known = names();
        for (std::size_t i = 0; i < fields.size() && !problems_.full(); ++i) {
            const std::string name(fields[i].text);
            if (known.count(name) == 0) {
                problems_.add(line.number, fields[i].column, "there is no column '" + for_message(name) + "'",
                              "Use the names of docs/climate-format.md");
            } else if (!column_.emplace(name, i).second) {
                problems_.add(line.number, fields[i].column, "the column '" + name + "' stands here twice",
                              "Keep one of the two");
            }
        }
        const auto need = [&](const std::string& name) {
            if (column_.count(name) == 0)
                problems_.add(line.number, 1, "the column '" + name + "' is missing", "Add it");
        };
        for (const char* name : {"id", "label", "source"})
            need(name);
        for (const Single& single : singles)
            need(single.name);
        for (std::size_t group = 0; group < month_groups; ++group) {
            given_[group] = months[group].needed;
            for (int month = 1; month <= 12; ++month)
                given_[group] = given_[group] || column_.count(column_name(group, month)) > 0;
            for (int month = 1; given_[group] && month <= 12; ++month) {
                const std::string name = column_name(group, month);
                need(name);
                if (column_.count(name) > 0) month_column_[group][static_cast<std::size_t>(month) - 1] = column_[name];
            }
        }
    }

    static std::string column_name(std::size_t group, int month) {
        return std::string(months[group].name) + "_" + std::to_string(month);
    }

    static std::set<std::string> names() {
        std::set<std::string> out(texts.begin(), texts.end());
        for (const Single& single : singles)
            out.insert(single.name);
        for (std::size_t group = 0; group < month_groups; ++group) {
            for (int month = 1; month <= 12; ++month)
                out.insert(column_name(group, month));
        }
        return out;
    }

    void place(const Line& line, const std::vector<Field>& fields) {
        if (fields.size() != width_) {
            problems_.add(line.number, fields.back().column,
                          "the line has " + std::to_string(fields.size()) + " columns, the first line names " +
                              std::to_string(width_),
                          "Give every column; put a text with commas in double quotes");
            return;
        }
        if (climates_.size() >= most_places) {
            problems_.add(line.number, 1, "the table holds more than 5000 places", "Part it into several tables");
            return;
        }
        Climate climate;
        climate.id = text(line, fields, id);
        climate.label = text(line, fields, label);
        climate.source = text(line, fields, source);
        if (column_.count(texts[country]) > 0) climate.country = text(line, fields, country);
        check_id(line, fields, climate.id);
        if (!climate.country.empty() &&
            !(climate.country.size() == 2 && std::all_of(climate.country.begin(), climate.country.end(),
                                                         [](char c) { return c >= 'A' && c <= 'Z'; }))) {
            problems_.add(line.number, at(fields, texts[country]).column, "the country is not two capital letters",
                          "Use the code of ISO 3166-1, e.g. CH");
        }
        for (const Single& single : singles)
            climate.*single.field = figure(line, at(fields, single.name), single.range);
        take_months(line, fields, climate);
        climate.seed = seed_of_id(climate.id);
        climates_.push_back(std::move(climate));
    }

    void take_months(const Line& line, const std::vector<Field>& fields, Climate& climate) {
        climate.global_kwh_m2_day = year(line, fields, global);
        climate.air_mean_c = year(line, fields, air);
        climate.air_daily_swing_k.fill(assumed_climate::air_daily_swing_k);
        climate.relative_humidity.fill(assumed_climate::relative_humidity);
        climate.wind_m_s.fill(assumed_climate::wind_m_s);
        std::string assumed;
        const auto take = [&](std::size_t group, std::array<double, 12>& into, const char* what) {
            if (given_[group]) {
                into = year(line, fields, group);
            } else {
                assumed += (assumed.empty() ? "" : ", ") + std::string(what);
            }
        };
        take(swing, climate.air_daily_swing_k, "daily swing");
        take(humidity, climate.relative_humidity, "humidity");
        take(wind, climate.wind_m_s, "wind");
        if (!assumed.empty()) climate.source += "; assumed: " + assumed;
        if (given_[global_variation]) climate.global_variation = year(line, fields, global_variation);
        if (given_[air_spread]) climate.air_spread_k = year(line, fields, air_spread);
    }

    std::array<double, 12> year(const Line& line, const std::vector<Field>& fields, std::size_t group) {
        std::array<double, 12> out{};
        for (int month = 1; month <= 12; ++month) {
            out[static_cast<std::size_t>(month) - 1] =
                figure(line, fields[month_column_[group][static_cast<std::size_t>(month) - 1]], months[group].range);
        }
        return out;
    }

    [[nodiscard]] const Field& at(const std::vector<Field>& fields, const std::string& name) const {
        return fields[column_.at(name)];
    }

    std::string text(const Line& line, const std::vector<Field>& fields, TextsAt which) {
        const Field& field = at(fields, texts[which]);
        const std::string_view t = field.text;
        const auto bad = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F || c == '"'; };
        if (t.empty() && which != country) {
            problems_.add(line.number, field.column, std::string("the ") + texts[which] + " is empty", "Give it");
        } else if (t.size() > longest_text_field) {
            problems_.add(line.number, field.column, std::string("the ") + texts[which] + " is longer than 200 bytes",
                          "Shorten it");
        } else if (const auto found = std::find_if(t.begin(), t.end(), bad); found != t.end()) {
            problems_.add(line.number, field.column + static_cast<std::size_t>(found - t.begin()),
                          std::string("the ") + texts[which] + " holds a control character or a double quote",
                          "Take it out");
        } else {
            return std::string(t);
        }
        return {};
    }

    void check_id(const Line& line, const std::vector<Field>& fields, const std::string& value) {
        if (value.empty()) return;
        const auto fits = [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == ':' || c == '-' || c == '_' || c == '.';
        };
        const std::size_t column = at(fields, texts[id]).column;
        if (value.size() > longest_id || !std::all_of(value.begin(), value.end(), fits)) {
            problems_.add(line.number, column, "the id '" + for_message(value) + "' has other characters than it may",
                          "Use up to 64 of a-z, 0-9, colon, hyphen, underscore and point");
        } else if (!ids_.insert(value).second) {
            problems_.add(line.number, column, "the id '" + value + "' stands on another line, too",
                          "Give each place its own id");
        }
    }

    double figure(const Line& line, const Field& field, ClimateRange range) {
        const std::optional<double> value = detail::number(field.text);
        if (value && *value >= range.low && *value <= range.high) return *value;
        const std::string bounds = fixed(range.low, 2) + " to " + fixed(range.high, 2);
        if (!value) {
            problems_.add(line.number, field.column, "'" + for_message(field.text, 24) + "' is not a number",
                          "Give a figure from " + bounds);
        } else {
            problems_.add(line.number, field.column, fixed(*value, 3) + " is outside " + bounds, "Correct the figure");
        }
        return range.low;
    }

    std::string_view text_;
    detail::Problems problems_;
    std::size_t width_ = 0;
    std::map<std::string, std::size_t> column_;
    std::array<bool, month_groups> given_{};
    std::array<std::array<std::size_t, 12>, month_groups> month_column_{};
    std::set<std::string> ids_;
    std::vector<Climate> climates_;
};

}  // namespace

Result<std::vector<Climate>> climates_from_csv(std::string_view text, const std::string& file_name) {
    return Table(text, file_name).read();
}

std::uint64_t seed_of_id(std::string_view id) noexcept {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (const char c : id) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3ULL;
    }
    return hash;
}

}  // namespace wg::weather
