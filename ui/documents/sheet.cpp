#include "ui/documents/sheet.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTextLayout>
#include <QTextOption>
#include <algorithm>
#include <cmath>

#include "ui/common/theme.h"

namespace wg::ui::paper {

double text_units(double size_pt) {
    return std::ceil(size_pt * units_per_point);
}

QFont font_of(const Style& style) {
    QFont font = base_font(style.size_pt);
    font.setPixelSize(static_cast<int>(text_units(style.size_pt)));
    if (style.bold) font.setWeight(QFont::DemiBold);
    // Positions must not depend on the device that happens to show the page.
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

namespace {

Theme black_theme() {
    Theme t = paper_theme();
    for (QColor* ink : {&t.text, &t.muted, &t.accent, &t.rule_line, &t.stop, &t.caution, &t.note, &t.ready, &t.hatch,
                        &t.collector_line})
        *ink = Qt::black;
    for (QColor* fill : {&t.ground, &t.panel, &t.roof, &t.wall, &t.terrace, &t.soil, &t.collector_fill})
        *fill = Qt::white;
    t.shade_fill = Qt::transparent;
    return t;
}

}  // namespace

Style Sheet::lettered(const Style& style) const {
    Style out = style;
    // Large print grows small lettering most: headings are read easily as they are.
    if (large_print) out.size_pt = least_large_pt + std::max(0.0, style.size_pt - least_pt) * 0.75;
    if (black_and_white) out.muted = false;
    return out;
}

Theme Sheet::theme() const {
    return black_and_white ? black_theme() : paper_theme();
}

double line_height(const Style& style) {
    return text_units(style.size_pt) * 1.2;
}

double text_width(const QString& text, const Style& style) {
    return QFontMetricsF(font_of(style)).horizontalAdvance(text);
}

namespace {

QString printable(QString text) {
    for (QChar& c : text) {
        if (c == QLatin1Char('\n')) c = QChar::LineSeparator;
        if (c.category() == QChar::Other_Control) c = QLatin1Char(' ');
    }
    return text;
}

}  // namespace

QString with_units_held(const QString& text) {
    static const QRegularExpression unit(QStringLiteral(
        "(?<=\\d) (?=(?:%|mm²|cm²|mm|cm|m²|m|bar|°C|Pa|kg|g|l|A|mA|V|K|min|minutes?|Minuten|minutos|h|MΩ|Ω|ms|W|kWh|kW"
        "|kN|N|t|pt)(?![\\w²]))|(?<=\\dN|\\d N|\\x{202f}N) (?=m\\b)"));
    QString held = text;
    held.replace(unit, QStringLiteral("\u00a0"));
    return held;
}

namespace {

/// The first line may be narrower than the others.
QStringList wrapped(const QString& text, const Style& style, double width, double first_width) {
    const QString clean = printable(text);
    // A unit such as W/m² is not parted behind its slash either.
    static const QRegularExpression slash(QStringLiteral("(?<=\\b[Wm]|\\bkN|\\bkWh|\\bg)/(?=[msl]|kg)"));
    const QString held = with_units_held(clean).replace(slash, QStringLiteral("/\u2060"));
    QTextLayout layout(held, font_of(style));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    layout.setTextOption(option);
    QStringList lines;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(lines.isEmpty() ? first_width : width);
        QString piece = held.mid(line.textStart(), line.textLength());
        piece.remove(QChar(0x2060));
        piece.replace(QChar(0x00A0), QLatin1Char(' '));
        piece.remove(QChar::LineSeparator);
        while (piece.endsWith(QLatin1Char(' ')))
            piece.chop(1);
        lines += piece;
    }
    layout.endLayout();
    if (lines.isEmpty()) lines += QString();
    return lines;
}

}  // namespace

QStringList wrap(const QString& text, const Style& style, double width) {
    return wrapped(text, style, width, width);
}

RunOn run_on(const QString& first, const Style& first_style, const QString& second, const Style& second_style,
             double width, double gap) {
    RunOn out;
    out.first = wrap(first, first_style, width);
    if (second.isEmpty()) return out;
    out.start = text_width(out.first.back(), first_style) + gap;
    // Two words at least, where there are two: one alone looks lost.
    const QString words = with_units_held(second).section(QLatin1Char(' '), 0, 1);
    out.same_line = out.start + text_width(words, second_style) <= width;
    out.second = wrapped(second, second_style, width, out.same_line ? width - out.start : width);
    return out;
}

void paint_page(QPainter& painter, const Page& page) {
    const Theme theme = page.sheet.theme();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    for (const Picture& picture : page.pictures) {
        painter.save();
        painter.setClipRect(picture.frame);
        picture.paint(painter, picture.frame);
        painter.restore();
    }
    painter.setBrush(Qt::NoBrush);
    for (const Box& box : page.boxes) {
        painter.setPen(QPen(theme.text, box.width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawRect(box.rect);
    }
    for (const Rule& rule : page.rules) {
        painter.setPen(QPen(theme.text, rule.width, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(rule.line);
    }
    for (const Lettering& piece : page.lettering) {
        painter.setFont(font_of(piece.style));
        painter.setPen(piece.style.muted ? theme.muted : theme.text);
        painter.drawText(piece.baseline, piece.text);
    }
}

}  // namespace wg::ui::paper
