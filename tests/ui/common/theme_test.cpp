#include "ui/common/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetricsF>
#include <QImage>
#include <algorithm>
#include <cmath>

#include "ui/common/mark.h"

namespace wg::ui {
namespace {

constexpr double contrast_aa = 4.5;        ///< WCAG 2.1, success criterion 1.4.3, normal text
constexpr double contrast_sunlight = 7.0;  ///< the same, 1.4.6: enhanced

double luminance(const QColor& colour) {
    const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(static_cast<double>(colour.redF())) + 0.7152 * linear(static_cast<double>(colour.greenF())) +
           0.0722 * linear(static_cast<double>(colour.blueF()));
}

/// WCAG 2.1 contrast ratio.
double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

class ThemeOf : public testing::TestWithParam<ThemeKind> {};

TEST_P(ThemeOf, every_colour_of_words_is_readable_on_ground_and_panel) {
    const Theme theme = theme_of(GetParam());
    const double least = GetParam() == ThemeKind::sunlight ? contrast_sunlight : contrast_aa;
    for (const QColor& ground : {theme.ground, theme.panel}) {
        for (const QColor& ink :
             {theme.text, theme.muted, theme.accent, theme.stop, theme.caution, theme.note, theme.ready}) {
            EXPECT_GE(contrast(ink, ground), least)
                << ink.name().toStdString() << " on " << ground.name().toStdString();
        }
    }
}

TEST_P(ThemeOf, its_key_leads_back_to_it) {
    EXPECT_EQ(theme_from_key(theme_key(GetParam())), GetParam());
}

INSTANTIATE_TEST_SUITE_P(All, ThemeOf, testing::Values(ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight));

TEST(Theme, applying_one_makes_it_the_current_one) {
    apply_theme(*qApp, ThemeKind::dark);
    EXPECT_EQ(current_theme().kind, ThemeKind::dark);
    apply_theme(*qApp, ThemeKind::light);
    EXPECT_EQ(current_theme().kind, ThemeKind::light);
    EXPECT_FALSE(qApp->styleSheet().contains(QLatin1Char('<'))) << "a placeholder of the style sheet was not filled";
}

TEST(Theme, figures_of_the_base_font_are_equally_wide) {
    for (const QFont::Weight weight : {QFont::Normal, QFont::DemiBold, QFont::Bold}) {
        QFont font = base_font(40.0);
        font.setWeight(weight);
        const QFontMetricsF metrics(font);
        for (char digit = '1'; digit <= '9'; ++digit) {
            EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QLatin1Char(digit)),
                             metrics.horizontalAdvance(QLatin1Char('0')));
        }
    }
}

TEST(QuantityColour, gets_darker_all_the_way_and_in_even_steps) {
    // CIE lightness L* = 116 (Y/Yn)^(1/3) - 16 of ISO/CIE 11664-4:2019 (the same in CIE 15), luminance of sRGB by
    // IEC 61966-2-1; equal steps of it look equally large. Tolerance: rounding to 8 bits a channel is up to 0.4 of L*
    // at each end of a step.
    constexpr double step_tolerance = 0.8;
    const auto lightness = [](double share) { return 116.0 * std::cbrt(luminance(quantity_colour(share))) - 16.0; };
    constexpr int steps = 10;
    const double step = (lightness(0.0) - lightness(1.0)) / steps;
    EXPECT_GT(step, 5.0);
    for (int i = 0; i < steps; ++i) {
        EXPECT_NEAR(lightness(i / 10.0) - lightness((i + 1) / 10.0), step, step_tolerance) << i;
    }
}

TEST(QuantityColour, printed_in_grey_never_turns_back) {
    // Fine steps: a colour that the screen cannot show would be cut, and the scale would stand still or turn there.
    constexpr int steps = 100;
    const auto grey = [](double share) { return luminance(quantity_colour(share)); };
    for (int i = 0; i < steps; ++i)
        EXPECT_GT(grey(i / double{steps}), grey((i + 1) / double{steps})) << i;
    // From pale paper to near black, so that the whole width of grey is used.
    EXPECT_GT(grey(0.0), 0.85);
    EXPECT_LT(grey(1.0), 0.05);
}

TEST(QuantityColour, stays_at_its_ends_and_is_grey_for_no_number) {
    EXPECT_EQ(quantity_colour(-3.0), quantity_colour(0.0));
    EXPECT_EQ(quantity_colour(7.0), quantity_colour(1.0));
    EXPECT_EQ(quantity_colour(std::nan("")), QColor(0x808080));
}

TEST(Marks, no_two_look_the_same_in_black_and_white) {
    Theme grey = theme_of(ThemeKind::light);
    for (QColor* ink : {&grey.stop, &grey.caution, &grey.note, &grey.ready, &grey.muted})
        *ink = Qt::black;
    std::vector<QImage> images;
    for (const Mark mark : {Mark::stop, Mark::caution, Mark::note, Mark::ready, Mark::begun, Mark::empty}) {
        images.push_back(mark_icon(mark, grey, 16).pixmap(16, 16).toImage());
        for (std::size_t i = 0; i + 1 < images.size(); ++i)
            EXPECT_NE(images[i], images.back()) << i;
    }
}

}  // namespace
}  // namespace wg::ui
