#include "ui/yield/year_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include "ui/common/format.h"

namespace wg::ui {

QStringList month_names() {
    QStringList names;
    for (int month = 1; month <= 12; ++month)
        names += QLocale::c().monthName(month, QLocale::ShortFormat);
    return names;
}

YearPage::YearPage(QWidget* parent) : PicturePage(parent) {
    measures_ = new QComboBox(this);
    for (int i = 0; i < year_measures; ++i)
        measures_->addItem(name_of(static_cast<YearMeasure>(i)));
    measures_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("&Show"), this);
    label->setBuddy(measures_);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(label);
    row->addWidget(measures_);
    row->addStretch(1);
    column().insertLayout(0, row);
    connect(measures_, &QComboBox::currentIndexChanged, this, &YearPage::refresh);
    view().set_keys([this](int right, int) {
        if (plan_ == nullptr) return QString();
        const int from = cursor_ ? static_cast<int>(*cursor_) + right : (right >= 0 ? 0 : 11);
        cursor_ = static_cast<std::size_t>((from + 12) % 12);
        return words_of(*cursor_);
    });
}

void YearPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried) {
    plan_ = plan;
    set_carried(carried);
    refresh();
}

void YearPage::show_measure(YearMeasure measure) {
    measures_->setCurrentIndex(static_cast<int>(measure));
}

YearMeasure YearPage::measure() const {
    return static_cast<YearMeasure>(measures_->currentIndex());
}

BarsPicture YearPage::picture() const {
    return plan_ != nullptr ? year_picture(measure(), plan_->season, current_theme()) : BarsPicture{};
}

QString YearPage::words_of(std::size_t month) const {
    QStringList parts;
    for (const YearSeries& series : series_of(measure(), plan_->season)) {
        parts += QStringLiteral("%1 %2").arg(
            series.name, quantity(series.of(plan_->season.months[month]), unit_of(measure()), decimals_of(measure())));
    }
    return QLocale::c().monthName(static_cast<int>(month) + 1) + QStringLiteral(": ") +
           parts.join(QStringLiteral("; "));
}

void YearPage::refresh() {
    if (plan_ == nullptr) {
        show_reason(tr("No year of operation yet."));
        return;
    }
    if (measure() == YearMeasure::below_wanted && plan_->season.total.short_litres <= 0.0) {
        show_reason(year_words(measure(), *plan_));  // twelve bars of nothing say less
        return;
    }
    view().show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            BarsPicture shown = year_picture(measure(), plan_->season, theme);
            if (!view().saving()) shown.cursor = cursor_;
            paint_bars(painter, shown, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF at, double text_units) {
            const auto month = month_at(bars_frame(picture(), area, text_units), at);
            if (month != cursor_) view().update();
            cursor_ = month;
            return month ? words_of(*month) : QString();
        });
    set_words(year_words(measure(), *plan_));
}

QString YearPage::caption() const {
    return plan_ != nullptr ? caption_of(tr("%1, by months").arg(name_of(measure())), *plan_) : QString();
}

FigureTable YearPage::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("month")};
    if (plan_ == nullptr) return out;
    const std::vector<YearSeries> series = series_of(measure(), plan_->season);
    for (const YearSeries& each : series)
        out.header += each.key;
    for (std::size_t i = 0; i < 12; ++i) {
        QStringList row{QString::number(i + 1)};
        for (const YearSeries& each : series)
            row += cell_number(each.of(plan_->season.months[i]), 2);
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
