#include "ui/yield/day_page.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr int first_shown = 79;  // 21 March: neither summer nor winter

QString day_name(int day) {
    return QLocale::c().toString(date_of_day(day), QStringLiteral("d MMMM"));
}

}  // namespace

DayPage::DayPage(QWidget* parent) : PicturePage(parent) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto button = [this, row](const QString& text, const QString& tip) {
        auto* made = new QToolButton(this);
        made->setText(text);
        made->setToolTip(tip);
        row->addWidget(made);
        return made;
    };
    auto* before = button(QStringLiteral("\u2039"), tr("Day before"));
    before->setAccessibleName(tr("Day before"));
    date_ = new QDateEdit(date_of_day(first_shown), this);
    date_->setLocale(QLocale::c());
    date_->setDisplayFormat(QStringLiteral("d MMMM"));
    date_->setDateRange(date_of_day(0), date_of_day(days_in_year - 1));
    date_->setWrapping(true);
    date_->setAccessibleName(tr("Day of the year"));
    date_->setMinimumWidth(150);
    row->addWidget(date_);
    auto* after = button(QStringLiteral("\u203a"), tr("Day after"));
    after->setAccessibleName(tr("Day after"));
    row->addSpacing(12);
    jumps_ = {{NotableDay::coldest, button(tr("Coldest"), tr("The day with the coldest air"))},
              {NotableDay::darkest, button(tr("Darkest"), tr("The day with the least light on the plate"))},
              {NotableDay::brightest, button(tr("Brightest"), tr("The day with the most light on the plate"))},
              {NotableDay::most_short, button(tr("Most short"), tr("The day with most litres below the wanted "
                                                                   "temperature"))},
              {NotableDay::most_electricity, button(tr("Most electricity"), tr("The day that uses most electricity"))}};
    row->addStretch(1);
    column().insertLayout(0, row);
    connect(before, &QToolButton::clicked, this, [this] { show_day(day() - 1); });
    connect(after, &QToolButton::clicked, this, [this] { show_day(day() + 1); });
    connect(date_, &QDateEdit::dateChanged, this, &DayPage::refresh);
    for (const auto& [which, jump] : jumps_)
        connect(jump, &QToolButton::clicked, this, [this, kind = which] { show_notable(kind); });
    view().set_keys([this](int right, int up) { return step(right, up); });
}

int DayPage::day() const {
    return date_->date().dayOfYear() - 1;
}

void DayPage::show_day(int day) {
    date_->setDate(date_of_day((day % days_in_year + days_in_year) % days_in_year));
}

void DayPage::show_notable(NotableDay which) {
    if (const auto* series = hours()) {
        if (const int found = notable_day(*series, which); found >= 0) show_day(found);
    }
}

const season::HourSeries* DayPage::hours() const {
    return plan_ != nullptr ? whole_hours(plan_->season) : nullptr;
}

CurvesPicture DayPage::picture() const {
    const auto* series = hours();
    return series != nullptr ? day_picture(*series, day(), current_theme()) : CurvesPicture{};
}

/// Left and right go by hours and over midnight, up and down by days.
QString DayPage::step(int hours_on, int days_on) {
    const auto* series = hours();
    if (series == nullptr) return {};
    int hour = day() * 24 + cursor_.value_or(hours_on > 0 ? -1 : (hours_on < 0 ? 24 : 12)) + hours_on + days_on * 24;
    hour = (hour % 8760 + 8760) % 8760;
    cursor_ = hour % 24;
    show_day(hour / 24);
    return hour_words(*series, hour);
}

void DayPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried) {
    plan_ = plan;
    set_carried(carried);
    for (const auto& [which, jump] : jumps_)
        jump->setEnabled(hours() != nullptr && notable_day(*hours(), which) >= 0);
    refresh();
}

void DayPage::refresh() {
    const season::HourSeries* series = hours();
    if (series == nullptr) {
        show_reason(tr("Hours are kept with a complete plan only."));
        return;
    }
    view().show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            CurvesPicture shown = day_picture(*hours(), day(), theme);
            if (cursor_ && !view().saving()) shown.cursor = *cursor_ + 0.5;
            paint_curves(painter, shown, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF at, double text_units) {
            const auto x = curves_x_at(curves_frames(picture(), area, text_units), at);
            if (!x) return QString();
            const int hour = std::clamp(static_cast<int>(*x), 0, 23);
            if (cursor_ != hour) view().update();
            cursor_ = hour;
            return hour_words(*hours(), day() * 24 + hour);
        });
    double heat = 0.0;
    double electricity = 0.0;
    double drawn = 0.0;
    double short_litres = 0.0;
    const auto from = static_cast<std::size_t>(day()) * 24;
    for (std::size_t hour = from; hour < from + 24; ++hour) {
        heat += static_cast<double>(series->condenser_w[hour]) / 1000.0;
        electricity += static_cast<double>(series->electric_w[hour]) / 1000.0;
        drawn += static_cast<double>(series->drawn_w[hour]) / 1000.0;
        if (optional_series(series->short_litres) != nullptr)
            short_litres += static_cast<double>(series->short_litres[hour]);
    }
    const QString kwh = QStringLiteral("kWh");
    QString text =
        tr("%1: about %2 of heat from the pump, %3 of electricity, %4 of hot water drawn.")
            .arg(day_name(day()), quantity(heat, kwh, 1), quantity(electricity, kwh, 1), quantity(drawn, kwh, 1));
    if (short_litres > 0.0)
        text += tr(" About %1 of mixed water below the wanted temperature.")
                    .arg(quantity(short_litres, QStringLiteral("l")));
    // Rows of the picture that are left out are named.
    const auto* frost = optional_series(series->frost_kg_m2);
    if (frost != nullptr && std::all_of(frost->begin() + day() * 24, frost->begin() + (day() + 1) * 24,
                                        [](float kg_m2) { return kg_m2 <= 0.0F; }))
        text += tr(" No frost on the plate.");
    if (optional_series(series->short_litres) != nullptr && short_litres <= 0.0)
        text += tr(" All draws reach the wanted temperature.");
    set_words(text + tr(" One weather year; other years differ."));
}

QString DayPage::caption() const {
    return plan_ != nullptr ? caption_of(tr("%1, hour by hour").arg(day_name(day())), *plan_) : QString();
}

FigureTable DayPage::figures() const {
    FigureTable out;
    out.header = {QStringLiteral("date"), QStringLiteral("hour")};
    const season::HourSeries* series = hours();
    if (series == nullptr) return out;
    struct Column {
        const char* key;
        const std::vector<float>* values;
        int decimals;
    };
    const std::array<Column, 13> columns{{{"top_c", &series->top_c, 1},
                                          {"bottom_c", &series->bottom_c, 1},
                                          {"set_point_c", &series->set_point_c, 1},
                                          {"plate_c", &series->plate_c, 1},
                                          {"air_c", &series->air_c, 1},
                                          {"light_w_m2", &series->light_w_m2, 1},
                                          {"condenser_w", &series->condenser_w, 1},
                                          {"electric_w", &series->electric_w, 1},
                                          {"immersion_w", &series->immersion_w, 1},
                                          {"drawn_w", &series->drawn_w, 1},
                                          {"wanted_w", &series->wanted_w, 1},
                                          {"frost_kg_m2", &series->frost_kg_m2, 3},
                                          {"below_wanted_l", &series->short_litres, 1}}};
    const bool layers = series->node_c.size() == 8760;
    for (const Column& column : columns) {
        if (optional_series(*column.values) != nullptr) out.header += QString::fromLatin1(column.key);
    }
    for (int layer = 1; layers && layer <= 10; ++layer)
        out.header += QStringLiteral("layer_%1_c").arg(layer);
    for (int hour = 0; hour < 24; ++hour) {
        const auto at = static_cast<std::size_t>(day() * 24 + hour);
        QStringList row{date_of_day(day()).toString(QStringLiteral("MM-dd")), QString::number(hour)};
        for (const Column& column : columns) {
            if (optional_series(*column.values) != nullptr)
                row += cell_number(static_cast<double>((*column.values)[at]), column.decimals);
        }
        if (layers) {
            for (const float value : series->node_c[at])
                row += cell_number(static_cast<double>(value), 1);
        }
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
