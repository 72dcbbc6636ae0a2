#pragma once
// Whether the rows of an hourly file follow one another, and in words what is the matter when they do not.

#include <string>
#include <vector>

#include "core/weather/text_lines.h"

namespace wg::weather::detail {

/// The hour a row's stamp stands for, 0..8759 from 1 January in a year without 29 February, and its line.
struct RowHour {
    int hour = 0;
    int line = 0;
};

/// Hour of a year without 29 February; -1 when there is no such day or hour. `hour` 0..23 starts the hour.
[[nodiscard]] int hour_of_year(int month, int day, int hour) noexcept;
/// "month 02 day 11, the hour from 07:00".
[[nodiscard]] std::string hour_in_words(int hour_of_year);

enum class DaylightSaving { no, may_be, looks_like };
/// `looks_like`: one hour of a night is missing and one is there twice, the rest following hour by hour. `may_be`: one
/// hour of a night in spring (either hemisphere's) is missing and nothing else, as where the doubled hour was taken
/// out. Says so in `words`.
[[nodiscard]] DaylightSaving daylight_saving(const std::vector<RowHour>& rows, std::string& words);
/// What to do about it.
inline constexpr const char* standard_time_remedy =
    "Write every row in standard time, without changing the clocks in spring and autumn";
inline constexpr const char* order_remedy = "Rows are missing, doubled or out of order; fetch the file again";

/// The calendar of a format whose files must be whole: expects hour after hour from 1 January, without 29 February.
/// After the first row that does not follow it only listens, so that the refusal can tell why.
class Calendar {
   public:
    enum class Answer {
        take,
        skip_leap_day,
        wrong,  ///< the first row that does not follow: name it with `lost_at`
        lost,   ///< a row after that
    };
    /// `hour` 0..23 is the hour's start.
    [[nodiscard]] Answer accept(int month, int day, int hour, int line);
    /// `row` is what the wrong row says of its time, in words.
    void lost_at(int line, std::size_t column, const std::string& row);
    [[nodiscard]] bool is_lost() const noexcept { return lost_; }
    [[nodiscard]] int taken() const noexcept { return next_; }
    [[nodiscard]] bool leap_day_left_out() const noexcept { return leap_; }
    /// Adds the problem of a file whose rows do not follow, or that ends early. True when all rows are there.
    [[nodiscard]] bool whole(int last_line, Problems& problems) const;

   private:
    int next_ = 0;
    bool leap_ = false;
    bool lost_ = false;
    std::vector<RowHour> rows_;
    int line_ = 0;
    std::size_t column_ = 1;
    std::string what_;
};

}  // namespace wg::weather::detail
