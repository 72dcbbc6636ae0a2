#include "ui/common/format.h"

#include <gtest/gtest.h>

#include <limits>

namespace wg::ui {
namespace {

const QString dash = QStringLiteral("\u2014");
constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

TEST(Format, what_is_not_a_number_is_an_em_dash_without_unit) {
    EXPECT_EQ(quantity(nan, QStringLiteral("kWh")), dash);
    EXPECT_EQ(quantity(infinity, QStringLiteral("kWh")), dash);
    EXPECT_EQ(number(-infinity, 2), dash);
    EXPECT_EQ(length_m(nan), dash);
    EXPECT_EQ(length_mm(nan), dash);
    EXPECT_EQ(temperature(nan), dash);
    EXPECT_EQ(percent(nan), dash);
    EXPECT_EQ(bearing(nan), dash);
    EXPECT_EQ(ranged({1.0, nan, 3.0}, QStringLiteral("kWh")), dash);
}

TEST(Format, thousands_are_grouped_and_no_figure_can_break_over_lines) {
    EXPECT_EQ(quantity(1234567.24, QStringLiteral("kWh"), 1), QStringLiteral("1\u202f234\u202f567.2\u202fkWh"));
    EXPECT_EQ(number(999.0), QStringLiteral("999"));
    EXPECT_EQ(number(1000.0), QStringLiteral("1\u202f000"));
    EXPECT_FALSE(quantity(12345.6, QStringLiteral("kWh"), 1).contains(QLatin1Char(' ')));
}

TEST(Format, the_minus_is_a_true_minus_and_zero_has_no_sign) {
    EXPECT_EQ(number(-1234.5, 1), QStringLiteral("\u22121\u202f234.5"));
    EXPECT_EQ(number(-0.0), QStringLiteral("0"));
    EXPECT_EQ(number(-0.004, 2), QStringLiteral("0.00"));
}

TEST(Format, lengths_come_in_metres_and_for_set_out_in_millimetres) {
    EXPECT_EQ(length_m(12.4), QStringLiteral("12.40\u202fm"));
    EXPECT_EQ(length_mm(1.24), QStringLiteral("1\u202f240\u202fmm"));
}

TEST(Format, bearings_wrap_and_carry_the_compass_point) {
    EXPECT_EQ(bearing(172.0), QStringLiteral("172\u00b0\u202fS"));
    EXPECT_EQ(bearing(157.5), QStringLiteral("158\u00b0\u202fSSE"));
    EXPECT_EQ(bearing(-90.0), QStringLiteral("270\u00b0\u202fW"));
    EXPECT_EQ(bearing(359.7), QStringLiteral("0\u00b0\u202fN"));
}

TEST(Format, money_keeps_both_decimals_and_the_sign_of_small_amounts) {
    EXPECT_EQ(money({742000}, QStringLiteral("EUR")), QStringLiteral("7\u202f420.00\u202fEUR"));
    EXPECT_EQ(money({-5}, QStringLiteral("EUR")), QStringLiteral("\u22120.05\u202fEUR"));
    EXPECT_EQ(money({std::numeric_limits<std::int64_t>::min()}, QString()),
              QStringLiteral("\u221292\u202f233\u202f720\u202f368\u202f547\u202f758.08"));
}

TEST(Format, an_estimate_says_about_and_gives_its_range) {
    EXPECT_EQ(ranged({1080.0, 1240.0, 1390.0}, QStringLiteral("kWh")),
              QStringLiteral("about 1\u202f240\u202fkWh (1\u202f080 to 1\u202f390)"));
    EXPECT_EQ(ranged({1240.0, 1240.2, 1240.4}, QStringLiteral("kWh")), QStringLiteral("about 1\u202f240\u202fkWh"));
    EXPECT_EQ(ranged({nan, 1240.0, 1390.0}, QStringLiteral("kWh")), QStringLiteral("about 1\u202f240\u202fkWh"));
}

TEST(Format, differences_are_signed_and_silent_when_nothing_changed) {
    EXPECT_EQ(difference(12.0, QStringLiteral("kWh")), QStringLiteral("+12\u202fkWh"));
    EXPECT_EQ(difference(-0.31, QString(), 1), QStringLiteral("\u22120.3"));
    EXPECT_EQ(difference(0.04, QString(), 1), QString());
    EXPECT_EQ(difference(nan, QString()), QString());
    EXPECT_EQ(money_difference({0}, QStringLiteral("EUR")), QString());
    EXPECT_EQ(money_difference({1250}, QStringLiteral("EUR")), QStringLiteral("+12.50\u202fEUR"));
}

TEST(Format, dates_are_written_out_and_unreadable_ones_left_as_they_are) {
    EXPECT_EQ(day("2027-06-21"), QStringLiteral("21 June 2027"));
    EXPECT_EQ(day("soon"), QStringLiteral("soon"));
    EXPECT_EQ(day(""), QString());
}

TEST(Format, units_of_core_get_their_signs_and_names_keep_their_letters) {
    EXPECT_EQ(with_signs(QStringLiteral("0.65 kN/m2 on 3 m2, 20 cm2, 25 m3, 4 W/(m2 K)")),
              QStringLiteral("0.65 kN/m\u00b2 on 3 m\u00b2, 20 cm\u00b2, 25 m\u00b3, 4 W/(m\u00b2 K)"));
    EXPECT_EQ(with_signs(QStringLiteral("20 deg C (deg C), 5 MOhm +/- 1")),
              QStringLiteral("20\u202f\u00b0C (\u00b0C), 5 M\u03a9 \u00b1\u202f1"));
    EXPECT_EQ(with_signs(QStringLiteral("item M2, ram2, m24, km2x")), QStringLiteral("item M2, ram2, m24, km2x"));
}

}  // namespace
}  // namespace wg::ui
