#include "ui/weather/weather_pictures.h"

#include <QButtonGroup>
#include <QFontDatabase>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPlainTextEdit>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/sky/sun_path.h"
#include "ui/common/format.h"
#include "ui/drawing/picture_view.h"
#include "ui/drawing/weather_painters.h"

namespace wg::ui {
namespace {

QString light_unit() {
    return QStringLiteral("W/m²");
}
QString sum_unit() {
    return QStringLiteral("kWh/m²");
}

QString month_name(std::size_t month) {
    return QLocale::c().monthName(static_cast<int>(month) + 1);
}

QString light_words(const YearLook& look) {
    const auto& months = look.report.global_kwh_m2;
    const auto most = static_cast<std::size_t>(std::max_element(months.begin(), months.end()) - months.begin());
    const auto least = static_cast<std::size_t>(std::min_element(months.begin(), months.end()) - months.begin());
    return WeatherPictures::tr(
               "Light on the level ground. In a year %1, of it %2 from the sky; most in %3 with %4, least "
               "in %5 with %6. Light outside the dashed lines would be light at night.")
        .arg(quantity(look.report.global_year_kwh_m2, sum_unit()),
             quantity(look.report.diffuse_year_kwh_m2, sum_unit()), month_name(most),
             quantity(months[most], sum_unit()), month_name(least), quantity(months[least], sum_unit()));
}

QString temperature_words(const YearLook& look) {
    return WeatherPictures::tr(
               "Air temperature: mean of the year %1, coldest hour %2, warmest hour %3. Mean wind at 10 m: "
               "%4.")
        .arg(temperature(look.report.air_mean_year_c, 1), temperature(look.report.air_min_c, 1),
             temperature(look.report.air_max_c, 1),
             quantity(look.report.wind_mean_m_s, QStringLiteral("m/\u2060s"), 1));
}

QString clear_words(const YearLook& look) {
    if (look.report.clear_days < 1 || look.clear_days.days < 1) {
        return WeatherPictures::tr("No clear day in this year: mornings and afternoons cannot be compared.");
    }
    QString text = WeatherPictures::tr(
                       "%1 clear days. With the right time stamps the lines of mornings and afternoons lie "
                       "on each other; apart at low sun they tell of a clock that is off, or of hills and "
                       "haze on one side.")
                       .arg(look.report.clear_days);
    const double shift = look.report.best_shift_min;
    if (std::fabs(shift) >= 1.0) {
        text += WeatherPictures::tr(" Best match with the stamps %1 min %2; up to 15 min is usual.")
                    .arg(std::lround(std::fabs(shift)))
                    .arg(shift > 0.0 ? WeatherPictures::tr("later") : WeatherPictures::tr("earlier"));
    } else {
        text += WeatherPictures::tr(" They match as they stand.");
    }
    return text;
}

bool any_flag(const weather::QualityReport& report) {
    return std::any_of(report.flags.begin(), report.flags.end(), [](std::uint8_t f) { return f != 0; });
}

QString doubt_words(const weather::QualityReport& report) {
    if (!any_flag(report)) return WeatherPictures::tr("No hour is in doubt.");
    QStringList kinds;
    for (const weather::FlagWords& kind : weather::flag_words()) {
        if (const int hours = report.hours(kind.flag); hours > 0) {
            kinds += WeatherPictures::tr("%1: %2 h").arg(QString::fromUtf8(kind.name)).arg(hours);
        }
    }
    return WeatherPictures::tr(
               "Hours in doubt, marked over the light. %1. A few dozen in a year are usual; look for "
               "blocks and bands.")
        .arg(kinds.join(QStringLiteral("; ")));
}

WeatherMonths months_of(const weather::QualityReport& report) {
    return {report.beam_horizontal_kwh_m2, report.diffuse_kwh_m2, report.air_mean_c};
}

}  // namespace

WeatherPictures::WeatherPictures(QWidget* parent) : QWidget(parent) {
    views_ = new QButtonGroup(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    int number = 0;
    for (const QString& words :
         {tr("Light"), tr("Temperature"), tr("Months"), tr("Clear days"), tr("Hours in doubt"), tr("Report")}) {
        auto* button = new QToolButton(this);
        button->setText(words);
        button->setCheckable(true);
        views_->addButton(button, number++);
        row->addWidget(button);
    }
    row->addStretch(1);
    view_ = new PictureView(this);
    report_ = new QPlainTextEdit(this);
    report_->setReadOnly(true);
    QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    fixed.setPointSizeF(10.0);
    report_->setFont(fixed);
    report_->setAccessibleName(tr("Report on the weather year"));
    stack_ = new QStackedWidget(this);
    stack_->addWidget(view_);
    stack_->addWidget(report_);
    pointer_ = new QLabel(this);
    pointer_->setProperty("role", QStringLiteral("muted"));
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(row);
    column->addWidget(stack_, 1);
    column->addWidget(pointer_);
    column->addWidget(words_);
    views_->button(0)->setChecked(true);
    connect(views_, &QButtonGroup::idClicked, this, [this](int view) { show_view(static_cast<View>(view)); });
    connect(view_, &PictureView::pointed_at, pointer_, &QLabel::setText);
    refresh();
}

void WeatherPictures::show_year(const std::shared_ptr<const YearLook>& look) {
    look_ = look;
    refresh();
}

void WeatherPictures::show_view(View view) {
    shown_ = view;
    views_->button(static_cast<int>(view))->setChecked(true);
    refresh();
}

QString WeatherPictures::words() const {
    return words_->text();
}

QString WeatherPictures::words_at(int hour) const {
    if (hour < 0 || look_ == nullptr) return {};
    const auto i = static_cast<std::size_t>(hour);
    const CivilDate date = sky::date_of_day(hour / 24);
    const weather::Year& year = look_->weather->year;
    QString text = tr("%1 %2, %3:00 to %4:00: light %5, air %6")
                       .arg(date.day)
                       .arg(QLocale::c().monthName(date.month))
                       .arg(hour % 24)
                       .arg(hour % 24 + 1)
                       .arg(quantity(year.global_w_m2[i], light_unit()), temperature(year.air_c[i], 1));
    if (look_->report.flags.size() <= i) return text;
    for (const weather::FlagWords& kind : weather::flag_words()) {
        if (look_->report.has(i, kind.flag)) text += QStringLiteral("; ") + QString::fromUtf8(kind.name);
    }
    return text;
}

void WeatherPictures::show_carpet(const std::vector<double>& values, const QString& unit, double least, double most) {
    carpet_ = CarpetPicture{};
    carpet_.values = &values;
    carpet_.unit = unit;
    set_scale(carpet_, least, most);
    carpet_.line_a = look_->sunrise_h;
    carpet_.line_b = look_->sunset_h;
    carpet_.line_words = tr("Sunrise and sunset");
    if (shown_ == View::doubts) {
        carpet_.flags = look_->report.flags;
        carpet_.flag_words = tr("In doubt");
    }
    view_->show_picture([this](QPainter& painter, const QRectF& area, const Theme& theme,
                               double text_units) { paint_carpet(painter, carpet_, area, theme, text_units); },
                        [this](const QRectF& area, QPointF at, double text_units) {
                            return words_at(hour_at(carpet_frame(carpet_, area, text_units), at));
                        });
}

void WeatherPictures::refresh() {
    pointer_->setText(QStringLiteral(" "));
    carpet_ = CarpetPicture{};
    stack_->setCurrentWidget(shown_ == View::report && look_ != nullptr ? static_cast<QWidget*>(report_) : view_);
    pointer_->setVisible(shown_ != View::report);
    if (look_ == nullptr) {
        view_->show_picture({}, {});
        words_->setText(tr("Working out the year."));
        return;
    }
    const weather::Year& year = look_->weather->year;
    switch (shown_) {
        case View::light:
        case View::doubts: {
            const double most = *std::max_element(year.global_w_m2.begin(), year.global_w_m2.end());
            show_carpet(year.global_w_m2, light_unit(), 0.0, most);
            words_->setText(shown_ == View::light ? light_words(*look_) : doubt_words(look_->report));
            break;
        }
        case View::temperature:
            show_carpet(year.air_c, QStringLiteral("°C"), look_->report.air_min_c, look_->report.air_max_c);
            words_->setText(temperature_words(*look_));
            break;
        case View::months:
            view_->show_picture(
                [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
                    paint_weather_months(painter, months_of(look_->report), area, theme, text_units);
                },
                [this](const QRectF& area, QPointF at, double text_units) {
                    const PlotFrame frame = weather_months_frame(months_of(look_->report), area, text_units);
                    if (!frame.plot.contains(at)) return QString();
                    const auto month = static_cast<std::size_t>(std::clamp(frame.value_at(at).x(), 0.0, 11.99));
                    return tr("%1: direct %2, from the sky %3, mean air %4")
                        .arg(month_name(month), quantity(look_->report.beam_horizontal_kwh_m2[month], sum_unit(), 1),
                             quantity(look_->report.diffuse_kwh_m2[month], sum_unit(), 1),
                             temperature(look_->report.air_mean_c[month], 1));
                });
            words_->setText(
                tr("Light on the level ground by months, %1 in a year; under each month its mean air temperature.")
                    .arg(quantity(look_->report.global_year_kwh_m2, sum_unit())));
            break;
        case View::clear_days:
            view_->show_picture(
                [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
                    paint_clear_days(painter, look_->clear_days, area, theme, text_units);
                },
                {});
            words_->setText(clear_words(*look_));
            break;
        case View::report:
            report_->setPlainText(with_signs(weather::text(year, look_->report)));
            words_->setText(look_->report.remarks.empty()
                                ? tr("Nothing stands out in this year.")
                                : tr("%1 remarks at the end of the report.").arg(look_->report.remarks.size()));
            break;
    }
}

}  // namespace wg::ui
