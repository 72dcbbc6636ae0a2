#include "ui/yield/comfort_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/plan/plan.h"
#include "core/quantity/time.h"
#include "ui/common/format.h"
#include "ui/yield/day_picture.h"

namespace wg::ui {
namespace {

constexpr int hours_in_year = 8760;

struct Kind {
    const char* name;
    const char* key;  ///< in the figures file
    const char* unit;
    std::vector<float> season::HourSeries::*series;
    int decimals;
    bool from_zero;
};

const std::array<Kind, 5>& kinds() {
    static const std::array<Kind, 5> all{
        {{QT_TRANSLATE_NOOP("ComfortPage", "Hot water drawn"), "drawn_w", "W", &season::HourSeries::drawn_w, 0, true},
         {QT_TRANSLATE_NOOP("ComfortPage", "Litres below wanted"), "below_wanted_l", "l",
          &season::HourSeries::short_litres, 1, true},
         {QT_TRANSLATE_NOOP("ComfortPage", "Water at the top"), "top_c", "°C", &season::HourSeries::top_c, 1, false},
         {QT_TRANSLATE_NOOP("ComfortPage", "Electric power"), "electric_w", "W", &season::HourSeries::electric_w, 0,
          true},
         {QT_TRANSLATE_NOOP("ComfortPage", "Heat from the running pump"), "condenser_w", "W",
          &season::HourSeries::condenser_w, 0, true}}};
    return all;
}

/// Litres short over the year, hours of them and the month with most.
QString short_words(const std::vector<float>* litres) {
    if (litres == nullptr) return ComfortPage::tr("How many litres fall short is not known in this plan.");
    double sum = 0.0;
    int hours = 0;
    std::array<double, 12> months{};
    for (int hour = 0; hour < hours_in_year; ++hour) {
        const auto value = static_cast<double>((*litres)[static_cast<std::size_t>(hour)]);
        if (value <= 0.0) continue;
        sum += value;
        ++hours;
        months[static_cast<std::size_t>(month_of_hour(hour) - 1)] += value;
    }
    if (hours == 0) return ComfortPage::tr("No draw falls below the wanted temperature all year.");
    const auto worst = std::max_element(months.begin(), months.end()) - months.begin();
    return ComfortPage::tr("Below the wanted temperature: about %1 of mixed water in %2 hours of the year, most in %3.")
        .arg(quantity(sum, QStringLiteral("l")))
        .arg(hours)
        .arg(QLocale::c().monthName(static_cast<int>(worst) + 1));
}

}  // namespace

ComfortPage::ComfortPage(QWidget* parent) : PicturePage(parent) {
    measures_ = new QComboBox(this);
    for (const Kind& kind : kinds())
        measures_->addItem(tr(kind.name));
    measures_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("&Show"), this);
    label->setBuddy(measures_);
    auto* help = new QLabel(tr("Click an hour, or arrow keys and Return, for its day"), this);
    help->setProperty("role", QStringLiteral("muted"));
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(label);
    row->addWidget(measures_);
    row->addStretch(1);
    row->addWidget(help);
    column().insertLayout(0, row);
    connect(measures_, &QComboBox::currentIndexChanged, this, &ComfortPage::refresh);
    view().set_keys([this](int right, int up) { return step(right, up); },
                    [this](const QRectF& area, const QPointF* at, double text_units) {
                        if (values_.empty()) return;
                        const int hour =
                            at != nullptr ? hour_at(carpet_frame(picture_, area, text_units), *at) : cursor_;
                        if (hour >= 0) Q_EMIT day_asked(hour / 24);
                    });
}

void ComfortPage::set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried) {
    plan_ = plan;
    set_carried(carried);
    refresh();
}

void ComfortPage::show_measure(Measure measure) {
    measures_->setCurrentIndex(static_cast<int>(measure));
}

ComfortPage::Measure ComfortPage::measure() const {
    return static_cast<Measure>(measures_->currentIndex());
}

const season::HourSeries* ComfortPage::hours() const {
    return plan_ != nullptr ? whole_hours(plan_->season) : nullptr;
}

QString ComfortPage::step(int days_on, int hours_on) {
    if (values_.empty()) return {};
    // The first press shows the cursor at noon of the year's end that it came from; later ones move it.
    if (cursor_ < 0) {
        cursor_ = days_on < 0 ? hours_in_year - 12 : 12;
    } else {
        const int day = (cursor_ / 24 + days_on + days_in_year) % days_in_year;
        const int hour = std::clamp(cursor_ % 24 + hours_on, 0, 23);
        cursor_ = day * 24 + hour;
    }
    return words_at(cursor_);
}

QString ComfortPage::words_at(int hour) const {
    return hour >= 0 && hours() != nullptr ? hour_words(*hours(), hour) : QString();
}

void ComfortPage::refresh() {
    values_.clear();
    picture_ = CarpetPicture{};
    const season::HourSeries* all = hours();
    if (all == nullptr) {
        show_reason(tr("Hours are kept with a complete plan only."));
        return;
    }
    const Kind& kind = kinds()[static_cast<std::size_t>(measures_->currentIndex())];
    const auto* shown = optional_series(all->*kind.series);
    const auto* litres = optional_series(all->short_litres);
    if (shown == nullptr) {
        show_reason(tr("%1: not known in this plan.").arg(tr(kind.name)));
        return;
    }
    if (kind.series == &season::HourSeries::short_litres &&
        std::all_of(shown->begin(), shown->end(), [](float l) { return l <= 0.0F; })) {
        show_reason(short_words(shown));  // a carpet of one colour says less
        return;
    }
    values_.assign(shown->begin(), shown->end());
    picture_.values = &values_;
    picture_.dark_is_much = true;
    picture_.unit = QString::fromUtf8(kind.unit);
    const auto [least, most] = std::minmax_element(values_.begin(), values_.end());
    set_scale(picture_, kind.from_zero ? 0.0 : *least, *most);
    if (litres != nullptr) {
        picture_.flags.reserve(litres->size());
        for (const float value : *litres)
            picture_.flags.push_back(value > 0.0F ? 1 : 0);
        picture_.flag_words = tr("Water below wanted");
        picture_.flag_lozenges = true;
    }
    view().show_picture(
        [this](QPainter& painter, const QRectF& area, const Theme& theme, double text_units) {
            CarpetPicture painted = picture_;
            painted.cursor = view().saving() ? -1 : cursor_;
            paint_carpet(painter, painted, area, theme, text_units);
        },
        [this](const QRectF& area, QPointF at, double text_units) {
            return words_at(hour_at(carpet_frame(picture_, area, text_units), at));
        });
    set_words(tr("%1, hour by hour over the year: dark is much, pale is little. ").arg(tr(kind.name)) +
              short_words(litres));
}

QString ComfortPage::caption() const {
    if (plan_ == nullptr) return {};
    return caption_of(tr("%1, hour by hour over the year").arg(measures_->currentText()), *plan_);
}

FigureTable ComfortPage::figures() const {
    FigureTable out;
    const Kind& kind = kinds()[static_cast<std::size_t>(measures_->currentIndex())];
    out.header = {QStringLiteral("date"), QStringLiteral("hour"), QString::fromLatin1(kind.key)};
    const bool flags = picture_.flags.size() == static_cast<std::size_t>(hours_in_year);
    if (flags) out.header += QStringLiteral("water_below_wanted");
    for (std::size_t i = 0; i < values_.size(); ++i) {
        const int hour = static_cast<int>(i);
        QStringList row{date_of_day(hour / 24).toString(QStringLiteral("MM-dd")), QString::number(hour % 24),
                        cell_number(values_[i], kind.decimals)};
        if (flags) row += QString::number(picture_.flags[i]);
        out.rows.push_back(row);
    }
    return out;
}

}  // namespace wg::ui
