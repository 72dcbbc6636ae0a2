#include "core/weather/plain_header.h"

#include <algorithm>

#include "core/quantity/utf8.h"

namespace wg::weather::detail {
namespace {

constexpr int most_header_lines = 300;

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

struct Entry {
    std::string_view key, value;
    int line = 0;
    std::size_t column = 1;  ///< of the value
};

// `# key: value`. Spreadsheets fill such a line up with separators and may put it in quotes.
std::optional<Entry> entry_of(const Line& line) {
    std::string_view text = line.text;
    while (!text.empty() && (text.back() == ',' || text.back() == ';' || text.back() == ' '))
        text.remove_suffix(1);
    if (text.size() >= 2 && text.front() == '"' && text.back() == '"') text = text.substr(1, text.size() - 2);
    if (text.empty() || text.front() != '#') return std::nullopt;
    text.remove_prefix(1);
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    const std::string_view value = trimmed(text.substr(colon + 1));
    const std::string_view at = value.empty() ? text.substr(colon) : value;
    return Entry{trimmed(text.substr(0, colon)), value, line.number,
                 static_cast<std::size_t>(at.data() - line.text.data()) + 1};
}

bool is_comment(std::string_view line) {
    return starts_with(line, "#") || starts_with(line, "\"#");
}

class Entries {
   public:
    Entries(std::vector<Entry> list, const PlainHeader& header, Problems& problems)
        : list_(std::move(list)), header_(header), problems_(problems) {}

    // The one entry with this key; nullptr when there is none. A second one is a problem.
    const Entry* find(const char* key) {
        const Entry* found = nullptr;
        for (const Entry& e : list_) {
            if (e.key != key) continue;
            if (found != nullptr) {
                problems_.add(e.line, 1, std::string("'") + key + "' is given twice", "Leave one of the lines out");
                return nullptr;
            }
            found = &e;
        }
        return found;
    }
    const Entry* need(const char* key, const char* example) {
        const Entry* found = find(key);
        if (found == nullptr) {
            problems_.add(header_.column_line, 1, std::string("the header does not give '") + key + "'",
                          std::string("Write a line '# ") + key + ": " + example + "' above the column names");
        }
        return found;
    }
    void figure(const Entry* entry, double& out) {
        if (entry == nullptr) return;
        std::string buffer;
        const std::optional<double> value = number(with_point(entry->value, header_.separator, buffer));
        if (!value) {
            refuse(*entry, "is no number");
            return;
        }
        out = *value;
    }
    void refuse(const Entry& entry, const std::string& why) {
        problems_.add(entry.line, entry.column,
                      for_message(entry.key, 30) + " is '" + for_message(entry.value, 30) + "', which " + why,
                      "Correct the line; docs/weather-format.md tells what may stand there");
    }
    void texts(const char* key, std::vector<std::string>& out) {
        for (const Entry& e : list_) {
            if (e.key == key && out.size() < most_plain_remarks) out.push_back(one_line(e.value));
        }
    }

   private:
    std::vector<Entry> list_;
    const PlainHeader& header_;
    Problems& problems_;
};

void read_entries(std::vector<Entry> list, const std::string& file_name, Year& year, PlainHeader& header,
                  Problems& problems) {
    Entries entries(std::move(list), header, problems);
    const Entry* latitude = entries.need("latitude_deg", "47.40");
    if (latitude != nullptr) header.place_line = latitude->line;
    entries.figure(latitude, year.latitude_deg);
    entries.figure(entries.need("longitude_deg", "9.20"), year.longitude_deg);
    entries.figure(entries.need("altitude_m", "520"), year.altitude_m);
    entries.figure(entries.need("utc_offset_h", "1"), year.utc_offset_h);
    if (const Entry* stamp = entries.need("stamp", "start")) {
        if (stamp->value == "start") {
            header.stamp = StampOf::start;
        } else if (stamp->value == "middle") {
            header.stamp = StampOf::middle;
        } else if (stamp->value == "end") {
            header.stamp = StampOf::end;
        } else {
            entries.refuse(*stamp, "is none of start, middle, end");
        }
    }
    if (const Entry* minute = entries.find("sun_minute")) {
        header.sun_minute_given = true;
        entries.figure(minute, year.sun_minute);
        if (!(year.sun_minute >= 0.0 && year.sun_minute <= 60.0)) entries.refuse(*minute, "is outside 0 to 60");
    }
    if (const Entry* invented = entries.find("invented")) {
        if (invented->value != "yes" && invented->value != "no") entries.refuse(*invented, "is neither yes nor no");
        year.invented = invented->value == "yes";
    }
    const Entry* source = entries.find("source");
    year.source = one_line(source != nullptr ? source->value : std::string_view(file_name));
    const Entry* format = entries.find("from_format");
    year.format = format != nullptr ? one_line(format->value, 40) : "plain CSV";
    entries.texts("remark", year.remarks);
}

void read_column_names(const Line& line, const std::vector<Field>& fields, Year& year, PlainHeader& header,
                       Problems& problems) {
    const std::vector<PlainColumn>& known = plain_columns();
    header.at.assign(known.size(), std::nullopt);
    header.width = fields.size();
    bool time = false;
    std::vector<std::vector<double> RawYear::*> taken;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string_view name = fields[i].text;
        const auto twice = [&] {
            problems.add(line.number, fields[i].column,
                         "column '" + for_message(name, 30) + "' holds what another column holds already",
                         "Leave one of the two out");
        };
        if (name == "time") {
            if (time) twice();
            time = true;
            header.time_at = i;
            continue;
        }
        const auto column =
            std::find_if(known.begin(), known.end(), [name](const PlainColumn& c) { return name == c.name; });
        if (column == known.end()) {
            if (!name.empty() && year.remarks.size() < most_plain_remarks) {
                year.remarks.push_back("Column '" + for_message(name, 40) + "' is not known and not used.");
            }
            continue;
        }
        if (std::find(taken.begin(), taken.end(), column->series) != taken.end()) twice();
        taken.push_back(column->series);
        header.at[static_cast<std::size_t>(column - known.begin())] = i;
    }
    const auto need = [&](bool there, const char* name) {
        if (there) return;
        problems.add(line.number, 1, std::string("there is no column '") + name + "'",
                     "Name the columns as docs/weather-format.md does, with units and in small letters");
    };
    need(time, "time");
    need(header.has(&RawYear::global), "global_w_m2");
    need(header.has(&RawYear::air), "air_c");
}

}  // namespace

const std::vector<PlainColumn>& plain_columns() {
    constexpr double none = -infinite;
    static const std::vector<PlainColumn> columns = {
        {"global_w_m2", {"global_w_m2", "W/m2", lowest_light_w_m2, 1500, infinite, none}, &RawYear::global, true},
        {"beam_normal_w_m2",
         {"beam_normal_w_m2", "W/m2", lowest_light_w_m2, 1420, infinite, none},
         &RawYear::beam,
         true},
        {"diffuse_w_m2", {"diffuse_w_m2", "W/m2", lowest_light_w_m2, 1000, infinite, none}, &RawYear::diffuse, true},
        {"air_c", {"air_c", "deg C", -70, 60, infinite, none}, &RawYear::air, false},
        {"dew_point_c", {"dew_point_c", "deg C", -150, 60, infinite, none}, &RawYear::dew_point, false},
        {"relative_humidity_percent",
         {"relative_humidity_percent", "%", 0, 110, infinite, none},
         &RawYear::humidity,
         false},
        {"wind_m_s", {"wind_m_s", "m/s", 0, 60, infinite, none}, &RawYear::wind, false},
        {"pressure_pa", {"pressure_pa", "Pa", 40000, 110000, infinite, none}, &RawYear::pressure, false},
        {"pressure_hpa", {"pressure_hpa", "Pa", 40000, 110000, infinite, none, 100.0}, &RawYear::pressure, false},
        {"sky_long_wave_w_m2", {"sky_long_wave_w_m2", "W/m2", 50, 700, infinite, none}, &RawYear::long_wave, false},
        {"cloud_cover_share", {"cloud_cover_share", "parts of 1", 0, 1, infinite, none}, &RawYear::cover, false},
        {"cloud_cover_percent",
         {"cloud_cover_percent", "parts of 1", 0, 1, infinite, none, 0.01},
         &RawYear::cover,
         false},
        {"cloud_cover_octas", {"cloud_cover_octas", "parts of 1", 0, 1, infinite, none, 0.125}, &RawYear::cover, false},
    };
    return columns;
}

bool PlainHeader::has(std::vector<double> RawYear::*series) const {
    const std::vector<PlainColumn>& known = plain_columns();
    for (std::size_t i = 0; i < known.size(); ++i) {
        if (known[i].series == series && at[i]) return true;
    }
    return false;
}

bool looks_plain(std::string_view first_line) {
    return is_comment(first_line) || first_line.find("global_w_m2") != std::string_view::npos;
}

std::string one_line(std::string_view text, std::size_t most_bytes) {
    constexpr std::size_t dots = 3;  // what for_message ends a cut line with
    return for_message(text, text.size() <= most_bytes ? most_bytes : most_bytes - dots);
}

std::string_view with_point(std::string_view text, char separator, std::string& buffer) {
    const std::size_t comma = text.find(',');
    if (separator != ';' || comma == std::string_view::npos || text.find('.') != std::string_view::npos) return text;
    buffer.assign(text);
    buffer[comma] = '.';
    return buffer;
}

bool read_plain_header(Lines& lines, const std::string& file_name, Year& year, PlainHeader& header,
                       Problems& problems) {
    std::vector<Entry> entries;
    while (const auto line = lines.next()) {
        if (line->number > most_header_lines) {
            problems.add(line->number, 1, "no line with column names within the first 300 lines",
                         "Write a line with the names of the columns, 'time,global_w_m2,air_c'");
            return false;
        }
        if (is_comment(line->text)) {
            if (const std::optional<Entry> entry = entry_of(*line)) entries.push_back(*entry);
            continue;
        }
        const std::string_view only = trimmed(line->text);
        if (only.find_first_not_of(",;") == std::string_view::npos) continue;  // an empty row of a spreadsheet
        header.column_line = header.place_line = line->number;
        header.separator = line->text.find(';') != std::string_view::npos ? ';' : ',';
        std::vector<Field> fields;
        split(line->text, fields, header.separator);
        read_entries(std::move(entries), file_name, year, header, problems);
        read_column_names(*line, fields, year, header, problems);
        return problems.empty();
    }
    problems.add(lines.last_number() > 0 ? lines.last_number() : 1, 1, "the file ends before its column names",
                 "Write a line with the names of the columns, 'time,global_w_m2,air_c'");
    return false;
}

}  // namespace wg::weather::detail
