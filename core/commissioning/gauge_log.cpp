#include "core/commissioning/gauge_log.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdio>

#include "core/commissioning/gauge_log_names.h"
#include "core/commissioning/gauge_log_time.h"
#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

namespace wg::commissioning {
namespace gauge_log {

constexpr std::size_t largest_log = 8u << 20;
constexpr std::size_t longest_log_line = 4096;
constexpr int most_log_lines = 200000;
constexpr int names_within_lines = 60;
constexpr std::size_t most_log_problems = 20;
constexpr double longest_log_s = 60.0 * 86400.0;
constexpr double midnight_s = 86400.0;

class LogReader {
   public:
    LogReader(std::string_view text, const std::string& file_name) : rest_(text), file_(file_name) {}

    Result<GaugeLog> read() {
        if (!plausible() || !find_names()) return std::move(problems_);
        std::string_view line;
        std::vector<LogField> fields;
        while (problems_.size() < most_log_problems && next(line)) {
            if (line.find_first_not_of(" \t,;") == std::string_view::npos || line.front() == '#') continue;
            split(line, separator_, fields);
            row(fields);
        }
        if (problems_.size() >= most_log_problems)
            problems_.back().what += " (reading stopped here: too many problems)";
        if (problems_.empty() && log_.points.size() < 2)
            problem(1, "the log holds fewer than two readings", "Choose the log of the whole wait");
        if (!problems_.empty()) return std::move(problems_);
        note_counts();
        return std::move(log_);
    }

   private:
    void problem(std::size_t column, std::string what, std::string remedy) {
        problems_.push_back({file_ + ":" + std::to_string(std::max(line_number_, 1)) + ":" + std::to_string(column),
                             std::move(what), std::move(remedy)});
    }

    bool next(std::string_view& line) {
        if (rest_.empty()) return false;
        const std::size_t end = rest_.find('\n');
        line = rest_.substr(0, end);
        rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end + 1);
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        ++line_number_;
        if (line.size() > longest_log_line) {
            problem(longest_log_line, "the line is longer than 4096 characters",
                    "The file is damaged or no log of a gauge; export it again");
            return false;
        }
        if (line_number_ > most_log_lines) {
            problem(1, "the log has more than 200,000 lines", "Export a shorter time or a longer step");
            return false;
        }
        return true;
    }

    bool plausible() {
        constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
        if (rest_.size() > largest_log) {
            problem(1, "the file is larger than 8 MB", "Export a shorter time or a longer step");
        } else if (rest_.find('\0') != std::string_view::npos) {
            problem(1, "the file holds bytes that no text has", "Export the log as comma-separated text in UTF-8");
        } else {
            if (rest_.substr(0, 3) == byte_order_mark) rest_.remove_prefix(3);
            return true;
        }
        return false;
    }

    /// The line of names is the first that names a time and a pressure, with units in it or in the line below.
    bool find_names() {
        std::string_view line;
        std::vector<LogField> fields, below;
        std::string seen;  // the best reason so far why no line was taken
        int seen_line = 1;
        while (line_number_ < names_within_lines && next(line)) {
            const std::string_view after = rest_;
            const int number = line_number_;
            for (const char separator : {'\t', ';', ','}) {
                if (line.find(separator) == std::string_view::npos) continue;
                separator_ = separator;
                split(line, separator, fields);
                std::string_view second;
                bool units_below = false;
                if (next(second)) {
                    split(second, separator, below);
                    units_below = below.size() == fields.size() && line_of_units(below);
                }
                if (!problems_.empty()) return false;
                line_number_ = number;
                std::string reason;
                if (take_names(fields, units_below ? below : std::vector<LogField>(), reason)) {
                    if (!units_below) rest_ = after;
                    if (units_below) ++line_number_;
                    return true;
                }
                rest_ = after;
                if (!reason.empty() && seen.empty()) {
                    seen = reason;
                    seen_line = number;
                }
            }
        }
        if (!problems_.empty()) return false;
        line_number_ = seen_line;
        problem(1, seen.empty() ? "no line names a time and a pressure with its unit" : seen,
                "Put a line of names above the readings, such as: time (s); pressure (mbar abs); plate (C)");
        return false;
    }

    static bool line_of_units(const std::vector<LogField>& fields) {
        bool any = false;
        for (const LogField& field : fields) {
            if (std::any_of(field.text.begin(), field.text.end(), [](char c) { return c >= '0' && c <= '9'; }))
                return false;
            any = any || is_unit(field.text);
        }
        return any;
    }

    bool take_names(const std::vector<LogField>& names, const std::vector<LogField>& units, std::string& reason) {
        columns_.clear();
        log_.notes.clear();
        constexpr std::size_t none = static_cast<std::size_t>(-1);
        date_ = time_ = elapsed_ = absolute_ = gauge_ = temperature_ = none;
        bool either = false, unitless = false;
        for (std::size_t i = 0; i < names.size(); ++i) {
            columns_.push_back(column_named(names[i].text, units.empty() ? std::string_view() : units[i].text));
            std::size_t* place = nullptr;
            switch (columns_.back().holds) {
                case Holds::date: place = &date_; break;
                case Holds::time: place = &time_; break;
                case Holds::elapsed: place = &elapsed_; break;
                case Holds::absolute: place = &absolute_; break;
                case Holds::gauge: place = &gauge_; break;
                case Holds::temperature: place = &temperature_; break;
                case Holds::either: either = true; break;
                case Holds::unitless_pressure: unitless = true; break;
                case Holds::unknown: break;
            }
            if (place != nullptr && *place == none)
                *place = i;
            else
                aside(names[i].text);
        }
        while (columns_.size() > 1 && columns_.back().name.empty() && columns_.back().holds == Holds::unknown)
            columns_.pop_back();
        // A date without a clock beside it holds both.
        if (time_ == none && date_ != none && elapsed_ == none) {
            time_ = date_;
            date_ = none;
        }
        if (time_ != none && elapsed_ != none) {
            aside(names[elapsed_].text);
            elapsed_ = none;
        }
        const bool timed = time_ != none || elapsed_ != none;
        const bool pressed = absolute_ != none || gauge_ != none;
        if (timed && !pressed && either)
            reason = "a pressure in kPa does not say whether it is absolute or over the air";
        else if (timed && !pressed && unitless)
            reason = "the pressure has no unit that is known";
        else if (timed && !pressed)
            reason = "no column is a pressure with its unit";
        else if (!timed && pressed)
            reason = "no column is a time";
        log_.has_absolute = absolute_ != none;
        log_.has_gauge = gauge_ != none;
        log_.has_temperature = temperature_ != none;
        return timed && pressed;
    }

    void aside(std::string_view name) {
        if (!name.empty() && log_.notes.size() < 12)
            log_.notes.push_back("Column '" + for_message(name, 40) + "' left aside");
    }

    static bool has(std::size_t column) { return column != static_cast<std::size_t>(-1); }

    void row(std::vector<LogField>& fields) {
        while (fields.size() > columns_.size() && fields.back().text.empty())
            fields.pop_back();  // separators may end a line
        if (fields.size() != columns_.size()) {
            problem(fields.back().column,
                    "the line has " + std::to_string(fields.size()) + " columns, the line of names " +
                        std::to_string(columns_.size()),
                    "Give every column; where commas mark decimals, part columns by semicolons");
            return;
        }
        const std::size_t problems_before = problems_.size();
        const std::optional<double> at_s = time_of(fields);
        if (!at_s) return;
        GaugePoint point;
        if (has(absolute_)) point.absolute_pa = figure(fields[absolute_], columns_[absolute_], 0.0, 2e7, "Pa absolute");
        if (point.absolute_pa == 0.0) point.absolute_pa.reset();  // below what the gauge shows
        if (has(gauge_)) {
            point.gauge_bar = figure(fields[gauge_], columns_[gauge_], -1.2e5, 1e7, "Pa over the air");
            if (point.gauge_bar) *point.gauge_bar *= 1e-5;
        }
        if (has(temperature_)) point.c = figure(fields[temperature_], columns_[temperature_], -100.0, 250.0, "deg C");
        if (problems_.size() > problems_before) return;
        if (!point.absolute_pa && !point.gauge_bar) {
            ++without_reading_;
            return;
        }
        add(point, *at_s, fields);
    }

    void add(GaugePoint point, double at_s, const std::vector<LogField>& fields) {
        const std::size_t column = fields[has(time_) ? time_ : elapsed_].column;
        if (log_.points.empty()) {
            first_s_ = at_s;
            tell_start(fields);
        }
        point.seconds = at_s - first_s_;
        if (point.seconds > longest_log_s) {
            problem(column, "the reading is more than 60 days after the first", "Cut the log to one wait");
        } else if (log_.points.empty() || point.seconds > log_.points.back().seconds) {
            log_.points.push_back(point);
        } else if (point.seconds == log_.points.back().seconds) {
            ++same_time_;  // more readings than the clock has steps: the first stands
        } else {
            problem(column, "the time goes back by " + fixed(log_.points.back().seconds - point.seconds, 1) + " s",
                    "Keep one log in the file, in the order of time");
        }
    }

    void tell_start(const std::vector<LogField>& fields) {
        if (!has(time_)) return;
        const std::optional<LogTime> time = clock_of(fields);
        if (!time || columns_[time_].from_start || time->s_of_day >= midnight_s) return;
        log_.started_s_of_day = time->s_of_day;
        if (!time->date) return;
        const int s = static_cast<int>(time->s_of_day);
        std::array<char, 32> clock{};
        std::snprintf(clock.data(), clock.size(), "T%02d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
        log_.started_at = iso8601(*time->date) + clock.data();
        if (!time->offset_min) return;
        const int offset = *time->offset_min, size = std::abs(offset);
        std::snprintf(clock.data(), clock.size(), "%c%02d:%02d", offset < 0 ? '-' : '+', size / 60, size % 60);
        log_.started_at += offset == 0 ? "Z" : clock.data();
    }

    std::optional<LogTime> clock_of(const std::vector<LogField>& fields) const {
        std::optional<LogTime> time = log_time(fields[time_].text);
        if (time && !time->date && has(date_)) {
            time->date = log_date(fields[date_].text);
            if (!time->date || time->s_of_day >= midnight_s) return std::nullopt;
        }
        return time;
    }

    /// Seconds on one scale for the whole log.
    std::optional<double> time_of(const std::vector<LogField>& fields) {
        if (!has(time_)) return figure(fields[elapsed_], columns_[elapsed_], 0.0, longest_log_s, "s", true);
        const std::optional<LogTime> time = clock_of(fields);
        if (!time) {
            const LogField& shown = has(date_) && log_time(fields[time_].text) ? fields[date_] : fields[time_];
            if (ambiguous_date(shown.text))
                problem(shown.column, "'" + for_message(shown.text, 24) + "' may be two days",
                        "Write dates as 2026-11-28");
            else
                problem(shown.column, "'" + for_message(shown.text, 24) + "' is not a time",
                        "Write times as 2026-11-28 19:20:34 or 19:20:34, or name the unit of a number: time (s)");
            return std::nullopt;
        }
        if (!kind_) kind_ = Kind{time->date.has_value(), time->offset_min.has_value()};
        if (kind_->dated != time->date.has_value() || kind_->offset != time->offset_min.has_value()) {
            problem(fields[time_].column, "the time is written in another way than above", "Write all times one way");
            return std::nullopt;
        }
        double s = time->s_of_day - 60.0 * time->offset_min.value_or(0);
        if (time->date) return s + midnight_s * static_cast<double>(days_from_civil(*time->date));
        // A clock alone: back by more than half a day is past midnight.
        s += midnight_s * midnights_;
        if (last_clock_s_ && s < *last_clock_s_ - 0.5 * midnight_s && !columns_[time_].from_start) {
            ++midnights_;
            s += midnight_s;
        }
        last_clock_s_ = s;
        return s;
    }

    static bool gap(std::string_view text) {
        if (text.find_first_not_of("-.") == std::string_view::npos) return true;
        for (const std::string_view known : {"OL", "ol", "O.L.", "OVER", "over", "n/a", "N/A"})
            if (text == known) return true;
        return false;
    }

    /// The number in the unit that `column` gives; nullopt for a gap and, with a problem, for what cannot be.
    std::optional<double> figure(const LogField& field, const ColumnName& column, double low, double high,
                                 const char* unit, bool needed = false) {
        if (gap(field.text) && !needed) return std::nullopt;
        const std::string shown = "'" + for_message(field.text, 24) + "'";
        std::string text(field.text);
        if (!text.empty() && text.front() == '+') text.erase(0, 1);
        const std::size_t comma = text.find(','), point = text.find('.');
        if (comma != std::string::npos) {
            // Between commas "1,234" may be a thousand or one and a bit.
            const bool two_ways = separator_ == ',' && text.size() - comma == 4;
            if (point != std::string::npos || text.find(',', comma + 1) != std::string::npos || two_ways || points_) {
                problem(field.column, shown + " can be read in two ways",
                        "Mark decimals one way in the whole file, and no thousands");
                return std::nullopt;
            }
            commas_ = true;
            text[comma] = '.';
        } else if (point != std::string::npos) {
            if (commas_) {
                problem(field.column, shown + " marks decimals by a point, lines above by a comma",
                        "Mark decimals one way in the whole file");
                return std::nullopt;
            }
            points_ = true;
        }
        double value = 0.0;
        const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
        if (error != std::errc() || stop != text.data() + text.size() || !std::isfinite(value)) {
            problem(field.column, shown + " is not a number", "Correct it or take the line out");
            return std::nullopt;
        }
        value = (value - column.offset) * column.factor;
        if (value >= low && value <= high) return value;
        problem(field.column,
                shown + " under '" + for_message(column.name, 30) + "' cannot be: " + fixed(value, 1) + " " + unit,
                "Check the unit in the line of names");
        return std::nullopt;
    }

    void note_counts() {
        if (without_reading_ > 0)
            log_.notes.push_back(counted(without_reading_, "line", "lines") + " without a reading left aside");
        if (same_time_ > 0)
            log_.notes.push_back(counted(same_time_, "line", "lines") + " at the time of the one before left aside");
    }

    struct Kind {
        bool dated = false, offset = false;
    };
    std::string_view rest_;
    std::string file_;
    int line_number_ = 0;
    char separator_ = ',';
    std::vector<ColumnName> columns_;
    std::size_t date_ = 0, time_ = 0, elapsed_ = 0, absolute_ = 0, gauge_ = 0, temperature_ = 0;
    std::optional<Kind> kind_;
    std::optional<double> last_clock_s_;
    int midnights_ = 0;
    bool commas_ = false, points_ = false;
    long without_reading_ = 0, same_time_ = 0;
    double first_s_ = 0.0;
    GaugeLog log_;
    std::vector<Problem> problems_;
};

}  // namespace gauge_log

Result<GaugeLog> gauge_log_from_csv(std::string_view text, const std::string& file_name) {
    return gauge_log::LogReader(text, file_name).read();
}

}  // namespace wg::commissioning
