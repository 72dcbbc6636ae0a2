#include "ui/yield/chart_page.h"

#include <QAbstractAxis>
#include <QChartView>
#include <QLabel>
#include <QLegend>
#include <QLegendMarker>
#include <QPainter>
#include <QSaveFile>
#include <QVBoxLayout>
#include <QValueAxis>

namespace wg::ui {
ChartColours chart_colours() {
    return chart_colours(current_theme().kind);
}

ChartColours chart_colours(ThemeKind kind) {
    switch (kind) {
        case ThemeKind::dark:
            return {QColor(0xf0d48a), QColor(0x6fa3c7), QColor(0xa9cdb5), QColor(0xc97a45),
                    QColor(0xe9e6dc), QColor(0xff9c7a), QColor(0x8fbce6)};
        case ThemeKind::sunlight:
            return {QColor(0xe0e0e0),  QColor(0x8c8c8c),  QColor(0xb8b8b8), QColor(0x303030),
                    QColor(Qt::black), QColor(Qt::black), QColor(0x555555)};
        case ThemeKind::light: break;
    }
    return {QColor(0xe9c46a), QColor(0x4f83a8), QColor(0xa5c8b1), QColor(0x8a4417),
            QColor(0x24313a), QColor(0xb0432b), QColor(0x2f5d8a)};
}

ChartPage::ChartPage(QWidget* parent) : YieldPage(parent) {
    chart_ = new QChart;
    view_ = new QChartView(chart_, this);  // takes the chart over
    view_->setRenderHint(QPainter::Antialiasing);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setMinimumHeight(220);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(16, 8, 16, 16);
    column_->setSpacing(8);
    column_->addWidget(view_, 1);
    column_->addWidget(words_);
}

QString ChartPage::words() const {
    return words_->text();
}

void ChartPage::set_words(const QString& text) {
    words_->setText(text);
}

void ChartPage::clear_chart() {
    chart_->removeAllSeries();
    const auto axes = chart_->axes();
    for (QAbstractAxis* axis : axes) {
        chart_->removeAxis(axis);
        delete axis;
    }
}

void ChartPage::dress_axis(QValueAxis& axis, const QString& title) const {
    const Theme& theme = current_theme();
    axis.setTitleText(title);
    axis.setTitleFont(base_font(10.0));
    axis.setLabelsFont(base_font(10.0));
    axis.setTitleBrush(theme.muted);
    axis.setLabelsColor(theme.text);
    axis.setGridLineColor(theme.rule_line);
    axis.setLinePenColor(theme.muted);
}

void ChartPage::dress_chart() const {
    const Theme& theme = current_theme();
    chart_->setBackgroundBrush(theme.panel);
    chart_->setBackgroundRoundness(0);
    chart_->setMargins(QMargins(8, 8, 8, 8));
    chart_->legend()->setAlignment(Qt::AlignTop);
    chart_->legend()->setMarkerShape(QLegend::MarkerShapeRectangle);
    chart_->legend()->setFont(base_font(10.0));
    chart_->legend()->setLabelColor(theme.text);
    chart_->setAnimationOptions(QChart::NoAnimation);
    // Dashed and dotted lines look so in the legend too; bars drawn from their series would be hollow there.
    for (QLegendMarker* marker : chart_->legend()->markers()) {
        if (marker->type() == QLegendMarker::LegendMarkerTypeXY) marker->setShape(QLegend::MarkerShapeFromSeries);
    }
    // A legend that is already laid out keeps the widths of its former font and cuts its words: laid out anew it does
    // not.
    chart_->legend()->hide();
    chart_->legend()->show();
}

bool ChartPage::save_picture(const QString& path) const {
    // A picture to pass on: as on screen, but never smaller than a page's width asks.
    const QSize size = (view_->size() * 2).expandedTo(QSize(1600, 1000));
    QImage image(size, QImage::Format_RGB32);
    image.fill(current_theme().panel);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    view_->render(&painter, QRectF(QPointF(0, 0), size));
    painter.end();
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) && image.save(&file, "PNG") && file.commit();
}

}  // namespace wg::ui
