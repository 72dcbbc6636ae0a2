#pragma once
// What a laid-out page holds: lettering, rules, boxes and pictures at fixed places on a sheet. Laying out and painting
// are apart, so that the number of pages is known before the first is painted and tests can look at every piece.
//
// Units are hundredths of a millimetre on paper, y downwards: a drawing at 1:50 has 2000 units to the metre.

#include <QFont>
#include <QLineF>
#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

#include "ui/common/theme.h"

namespace wg::ui::paper {

inline constexpr double mm = 100.0;
inline constexpr double units_per_inch = 2540.0;
inline constexpr double units_per_point = units_per_inch / 72.0;
inline constexpr double margin = 15.0 * mm;
inline constexpr double least_pt = 9.0;  ///< nothing on paper is lettered smaller: it has to be read in rain
inline constexpr double body_pt = 9.5;
inline constexpr double least_large_pt = 14.0;  ///< the same in large print
inline constexpr double thin_rule = 0.1 * mm;
inline constexpr double firm_rule = 0.25 * mm;

struct Style {
    double size_pt = body_pt;
    bool bold = false;
    bool muted = false;
};

/// Size and manner of the sheets of one paper. Styles name sizes of usual print; `lettered` makes them those of this
/// sheet.
struct Sheet {
    double width = 210.0 * mm;  ///< ISO 216 A4
    double height = 297.0 * mm;
    bool large_print = false;
    bool black_and_white = false;
    QString name = QStringLiteral("A4");
    [[nodiscard]] double body_width() const { return width - 2.0 * margin; }
    [[nodiscard]] double least() const { return large_print ? least_large_pt : least_pt; }
    [[nodiscard]] Style lettered(const Style& style) const;
    /// Lengths that grow with the lettering, such as a column's width.
    [[nodiscard]] double grown(double length) const {
        return large_print ? length * least_large_pt / least_pt : length;
    }
    /// Colours for pictures: black on white alone where no tints are wanted.
    [[nodiscard]] Theme theme() const;
};

/// The printing font of a style, sized in page units.
[[nodiscard]] QFont font_of(const Style& style);
/// Height of lettering of `size_pt`, rounded up to whole units so that it never falls below the stated size.
[[nodiscard]] double text_units(double size_pt);
[[nodiscard]] double line_height(const Style& style);
[[nodiscard]] double text_width(const QString& text, const Style& style);
/// The text with the spaces between a figure and its unit made ones at which no line ends; as long as the text.
[[nodiscard]] QString with_units_held(const QString& text);
/// Breaks text into lines that fit `width`; breaks inside a word, or between a figure and its unit, only when that
/// alone is too long. At least one line. Control characters become spaces, '\n' stays a break.
[[nodiscard]] QStringList wrap(const QString& text, const Style& style, double width);

/// Two texts of which the second goes on where the first ends.
struct RunOn {
    QStringList first;
    QStringList second;
    bool same_line = false;  ///< the first line of `second` stands on the last of `first`
    double start = 0.0;      ///< x of that line
    [[nodiscard]] qsizetype lines() const { return first.size() + second.size() - (same_line ? 1 : 0); }
};
/// `gap` lies between the two on the line they share.
[[nodiscard]] RunOn run_on(const QString& first, const Style& first_style, const QString& second,
                           const Style& second_style, double width, double gap);

struct Lettering {
    QPointF baseline;  ///< left end
    QString text;
    Style style;
    double width = 0.0;
};

struct Rule {
    QLineF line;
    double width = thin_rule;
};

struct Box {
    QRectF rect;
    double width = thin_rule;
};

/// Something painted by a function inside its frame; clipped to it.
struct Picture {
    QRectF frame;
    QString name;              ///< for tests and messages, e.g. "surface South roof"
    double units_per_m = 0.0;  ///< 0: not to scale
    std::function<void(QPainter&, const QRectF&)> paint;
};

struct Page {
    Sheet sheet;
    std::vector<Lettering> lettering;
    std::vector<Rule> rules;
    std::vector<Box> boxes;
    std::vector<Picture> pictures;
    QStringList text;  ///< whole strings in reading order
};

/// Paints a page; the painter's units must already be page units with the paper's corner at the origin.
void paint_page(QPainter& painter, const Page& page);

}  // namespace wg::ui::paper
