#include "core/commissioning/gauge_log_names.h"

#include <algorithm>
#include <array>
#include <optional>

namespace wg::commissioning::gauge_log {
namespace {

struct Unit {
    std::string_view name;
    Holds holds;
    double factor;
    double offset = 0.0;
};

// BIPM, The International System of Units, 9th edition, tables 8 and 9 and their notes: 1 atm = 101,325 Pa exactly,
// Torr is a 760th of it, mmHg 133.322387415 Pa (conventional density of mercury and gravity), a micron a thousandth
// of that; psi is 0.45359237 kg at 9.80665 m/s2 on a square inch of 25.4 mm, exactly.
constexpr double torr_pa = 101325.0 / 760.0;
constexpr double mm_hg_pa = 13595.1 * 9.80665e-3;
constexpr double psi_pa = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

constexpr std::array<Unit, 39> units = {{
    {"pa", Holds::absolute, 1.0},
    {"hpa", Holds::absolute, 100.0},
    {"kpa", Holds::either, 1e3},
    {"mbar", Holds::absolute, 100.0},
    {"mbara", Holds::absolute, 100.0},
    {"bar", Holds::gauge, 1e5},
    {"barg", Holds::gauge, 1e5},
    {"bara", Holds::absolute, 1e5},
    {"psi", Holds::gauge, psi_pa},
    {"psig", Holds::gauge, psi_pa},
    {"psia", Holds::absolute, psi_pa},
    {"micron", Holds::absolute, 1e-3 * mm_hg_pa},
    {"microns", Holds::absolute, 1e-3 * mm_hg_pa},
    {"torr", Holds::absolute, torr_pa},
    {"mtorr", Holds::absolute, 1e-3 * torr_pa},
    {"mmhg", Holds::absolute, mm_hg_pa},
    {"ms", Holds::elapsed, 1e-3},
    {"s", Holds::elapsed, 1.0},
    {"sec", Holds::elapsed, 1.0},
    {"secs", Holds::elapsed, 1.0},
    {"second", Holds::elapsed, 1.0},
    {"seconds", Holds::elapsed, 1.0},
    {"sek", Holds::elapsed, 1.0},
    {"min", Holds::elapsed, 60.0},
    {"mins", Holds::elapsed, 60.0},
    {"minute", Holds::elapsed, 60.0},
    {"minutes", Holds::elapsed, 60.0},
    {"h", Holds::elapsed, 3600.0},
    {"hr", Holds::elapsed, 3600.0},
    {"hrs", Holds::elapsed, 3600.0},
    {"hour", Holds::elapsed, 3600.0},
    {"hours", Holds::elapsed, 3600.0},
    {"c", Holds::temperature, 1.0},
    {"degc", Holds::temperature, 1.0},
    {"celsius", Holds::temperature, 1.0},
    {"f", Holds::temperature, 5.0 / 9.0, 32.0},
    {"degf", Holds::temperature, 5.0 / 9.0, 32.0},
    {"fahrenheit", Holds::temperature, 5.0 / 9.0, 32.0},
    {"kelvin", Holds::temperature, 1.0, 273.15},
}};

template <std::size_t N>
bool any_of(const std::vector<std::string>& words, const std::array<std::string_view, N>& known) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(known.begin(), known.end(), word) != known.end();
    });
}

constexpr std::array<std::string_view, 7> dates = {"date", "datum", "day", "fecha", "data", "dato", "dag"};
constexpr std::array<std::string_view, 14> times = {"time",    "timestamp", "datetime", "stamp",   "clock",
                                                    "elapsed", "duration",  "zeit",     "uhrzeit", "zeitstempel",
                                                    "heure",   "hora",      "ora",      "tid"};
constexpr std::array<std::string_view, 4> from_start_words = {"elapsed", "duration", "dauer", "since"};
constexpr std::array<std::string_view, 8> pressures = {"pressure", "vacuum", "vac",      "druck",
                                                       "vakuum",   "press",  "pression", "presion"};
constexpr std::array<std::string_view, 4> temperatures = {"temperature", "temperatur", "temp", "deg"};
constexpr std::array<std::string_view, 2> absolute_words = {"abs", "absolute"};
constexpr std::array<std::string_view, 2> gauge_words = {"rel", "relative"};

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool letter_or_digit(char c) {
    return (lower(c) >= 'a' && lower(c) <= 'z') || (c >= '0' && c <= '9');
}

/// Runs of letters and digits in small letters. Degree signs of any encoding part words as blanks do.
std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words;
    bool inside = false;
    for (const char c : text) {
        if (!letter_or_digit(c)) {
            inside = false;
            continue;
        }
        if (!inside) words.emplace_back();
        words.back().push_back(lower(c));
        inside = true;
    }
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (words[i] != "mm" || words[i + 1] != "hg") continue;
        words[i] = "mmhg";
        words.erase(words.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
    return words;
}

const Unit* unit_named(const std::string& word) {
    const auto found = std::find_if(units.begin(), units.end(), [&](const Unit& unit) { return unit.name == word; });
    return found == units.end() ? nullptr : &*found;
}

bool is_pressure(const Unit& unit) {
    return unit.holds == Holds::absolute || unit.holds == Holds::gauge || unit.holds == Holds::either;
}

/// The last of the words that is a unit of a pressure; else the last word if it is a unit.
const Unit* unit_in(const std::vector<std::string>& words) {
    for (auto word = words.rbegin(); word != words.rend(); ++word)
        if (const Unit* unit = unit_named(*word); unit != nullptr && is_pressure(*unit)) return unit;
    return words.empty() ? nullptr : unit_named(words.back());
}

/// "bar (a)", "mbar gauge", "gauge pressure (psi)"; the letter of "channel A (bar)" and the gauge of "gauge 1, mbar"
/// are names.
std::optional<Holds> over_what(const std::vector<std::string>& words) {
    const bool absolute = any_of(words, absolute_words), gauge = any_of(words, gauge_words);
    if (absolute != gauge) return absolute ? Holds::absolute : Holds::gauge;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Unit* before = i > 0 ? unit_named(words[i - 1]) : nullptr;
        const bool after_unit = before != nullptr && is_pressure(*before);
        if (after_unit && words[i] == "a") return Holds::absolute;
        if (after_unit && words[i] == "g") return Holds::gauge;
        const bool before_pressure = i + 1 < words.size() && words[i + 1] == "pressure";
        if ((words[i] == "gauge" || words[i] == "gage") && (after_unit || before_pressure)) return Holds::gauge;
    }
    return std::nullopt;
}

/// "T (C)", "t_c", "probe, C" are marked off as units; the C of "channel C" is a name.
bool marked_off(std::string_view name) {
    std::size_t end = name.size();
    while (end > 0 && !letter_or_digit(name[end - 1]))
        --end;
    std::size_t from = end;
    while (from > 0 && letter_or_digit(name[from - 1]))
        --from;
    return from == 0 || name[from - 1] != ' ' ||
           (from > 1 && std::string_view(",/:-").find(name[from - 2]) != std::string_view::npos);
}

}  // namespace

ColumnName column_named(std::string_view name, std::string_view unit_below) {
    ColumnName column;
    column.name = std::string(name);
    const std::vector<std::string> words = words_of(name);
    const std::vector<std::string> below = words_of(unit_below);
    const Unit* unit = unit_in(below);
    const bool by_name = unit == nullptr;
    if (by_name) unit = unit_in(words);
    if (unit != nullptr && is_pressure(*unit)) {
        column.holds = unit->holds;
        column.factor = unit->factor;
        // The name's own word stands above what the unit is usually meant over.
        std::optional<Holds> said = over_what(below);
        if (!said) said = over_what(words);
        column.holds = said.value_or(unit->holds);
        return column;
    }
    if (any_of(words, pressures)) {
        column.holds = Holds::unitless_pressure;
        return column;
    }
    const bool timed = any_of(words, times);
    column.from_start = any_of(words, from_start_words);
    if (unit != nullptr && unit->holds == Holds::temperature && !timed) {
        if (by_name && !any_of(words, temperatures) && !marked_off(name)) return column;
        column.holds = Holds::temperature;
        column.factor = unit->factor;
        column.offset = unit->offset;
    } else if (unit != nullptr && unit->holds == Holds::elapsed) {
        column.holds = Holds::elapsed;
        column.factor = unit->factor;
    } else if (timed) {
        column.holds = Holds::time;
    } else if (any_of(words, dates)) {
        column.holds = Holds::date;
    }
    return column;
}

bool is_unit(std::string_view text) {
    const std::vector<std::string> words = words_of(text);
    return !words.empty() && words.size() <= 2 && unit_in(words) != nullptr;
}

void split(std::string_view line, char separator, std::vector<LogField>& fields) {
    fields.clear();
    const auto blank = [&](std::size_t i) { return line[i] == ' ' || line[i] == '\t'; };
    bool quoted = false;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && line[i] == '"') quoted = !quoted;
        if (i < line.size() && (line[i] != separator || quoted)) continue;
        std::size_t first = from, end = i;
        while (first < end && blank(first))
            ++first;
        while (end > first && blank(end - 1))
            --end;
        const bool in_quotes = end - first >= 2 && line[first] == '"' && line[end - 1] == '"';
        if (in_quotes) {
            ++first;
            --end;
        }
        fields.push_back({line.substr(first, end - first), first + 1, in_quotes});
        from = i + 1;
    }
}

}  // namespace wg::commissioning::gauge_log
