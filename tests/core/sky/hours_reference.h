#pragma once
// Every hour of a real year by pvlib (tests/reference/pvlib_hours.json, made by pvlib_hours.py), and how far the worst
// hour lies from it.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/weather/read.h"

namespace wg::test {

struct HoursReference {
    nlohmann::json head;
    std::vector<std::size_t> hour;
    std::vector<std::vector<double>> columns;
    [[nodiscard]] const std::vector<double>& column(const std::string& name) const {
        const auto& names = head["columns"];
        const auto at = std::find(names.begin(), names.end(), name);
        EXPECT_NE(at, names.end()) << name;
        return columns[static_cast<std::size_t>(at - names.begin())];
    }
};

inline HoursReference hours_reference() {
    HoursReference reference;
    std::ifstream file(std::string(WG_TESTS_DIR) + "/reference/pvlib_hours.json");
    EXPECT_TRUE(file) << "committed reference values are missing";
    reference.head = nlohmann::json::parse(file);
    reference.columns.resize(reference.head["columns"].size());
    for (const auto& row : reference.head["rows"]) {
        for (std::size_t k = 0; k < row.size(); ++k)
            reference.columns[k].push_back(row[k]);
        reference.hour.push_back(row[0].get<std::size_t>());
    }
    reference.head.erase("rows");
    return reference;
}

/// The real year of the reference, where it has been fetched.
inline std::optional<weather::Year> greensboro(std::string& path) {
    path = std::string(WG_CACHE_DIR) + "/weather/tmy3_greensboro.csv";
    std::ifstream file(path, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    if (text.empty()) return std::nullopt;
    return weather::read_tmy3(text, path).value();
}

/// 12 March 07:00 for hour of the year.
inline std::string name_of_hour(std::size_t hour) {
    constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    int day = static_cast<int>(hour / 24);
    int month = 0;
    while (day >= days[month])
        day -= days[month++];
    char text[64];
    std::snprintf(text, sizeof text, "hour %zu, %02d-%02d %02zu:00", hour, month + 1, day + 1, hour % 24);
    return text;
}

/// Compares hour by hour, allows `share` of the expected value and `floor_w_m2` besides, and names the worst hour.
class WorstHour {
   public:
    WorstHour(std::string what, double share, double floor_w_m2)
        : what_(std::move(what)), share_(share), floor_(floor_w_m2) {}
    void look(std::size_t hour, double found, double expected) {
        const double off = std::fabs(found - expected);
        ++count_;
        squares_ += off * off;
        if (off > worst_) {
            worst_ = off;
            hour_ = hour;
            found_ = found;
            expected_ = expected;
        }
        EXPECT_LE(off, share_ * std::fabs(expected) + floor_) << what_ << ": " << name_of_hour(hour);
    }
    void report(int at_least) const {
        EXPECT_GE(count_, at_least) << what_;
        std::printf("%s: %d hours, root mean square %.1e, worst %.1e W/m2 (%.3f for %.3f) in %s\n", what_.c_str(),
                    count_, std::sqrt(squares_ / std::max(1, count_)), worst_, found_, expected_,
                    name_of_hour(hour_).c_str());
    }

   private:
    std::string what_;
    double share_, floor_;
    int count_ = 0;
    double squares_ = 0.0, worst_ = 0.0, found_ = 0.0, expected_ = 0.0;
    std::size_t hour_ = 0;
};

}  // namespace wg::test
