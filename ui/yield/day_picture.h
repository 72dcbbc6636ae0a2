#pragma once
// One day of the hourly series as curves, and an hour of it in words.

#include <QDate>

#include "core/season/season.h"
#include "ui/drawing/curves_painter.h"

namespace wg::ui {

inline constexpr int days_in_year = 365;

/// Day 0..364 of a year without 29 February.
[[nodiscard]] QDate date_of_day(int day);
/// The day's hours when every series that the picture cannot do without is whole; null otherwise.
[[nodiscard]] const season::HourSeries* whole_hours(const season::Year& year);
/// A series that may be missing: whole or null.
[[nodiscard]] const std::vector<float>* optional_series(const std::vector<float>& series);

/// Notable days of the year.
enum class NotableDay { coldest, darkest, brightest, most_short, most_electricity };
/// -1: there is no such day, such as no litre short all year.
[[nodiscard]] int notable_day(const season::HourSeries& hours, NotableDay which);

[[nodiscard]] CurvesPicture day_picture(const season::HourSeries& hours, int day, const Theme& theme);
/// Everything of one hour, for pointer and keyboard.
[[nodiscard]] QString hour_words(const season::HourSeries& hours, int hour_of_year);

}  // namespace wg::ui
