#include "ui/layout/house_pane.h"

#include <QFontMetrics>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/sky/sun_path.h"
#include "ui/common/job_session.h"
#include "ui/common/theme.h"
#include "ui/layout/house_canvas.h"

namespace wg::ui {
namespace {

constexpr int days = 365;
constexpr int minutes = 24 * 60;
constexpr int frame_ms = 33;
constexpr double played_in_s = 10.0;
constexpr int touch_height = 36;

QString day_text(int day) {
    const CivilDate date = sky::date_of_day(day);
    return QStringLiteral("%1 %2").arg(date.day).arg(QLocale::c().monthName(date.month, QLocale::ShortFormat));
}

QString clock_text(int minute) {
    return QStringLiteral("%1:%2").arg(minute / 60).arg(minute % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace

HousePane::HousePane(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    canvas_ = new HouseCanvas(this);
    column->addWidget(canvas_, 1);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    // Two lines are kept free: the picture must not jump while a day is played.
    words_->setMinimumHeight(2 * QFontMetrics(base_font()).lineSpacing());
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    column->addWidget(words_);

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    const auto slider = [this](const QString& name, int most, int step, int page) {
        auto* made = new QSlider(Qt::Horizontal, this);
        made->setRange(0, most);
        made->setSingleStep(step);
        made->setPageStep(page);
        made->setMinimumHeight(touch_height);
        made->setFocusPolicy(Qt::StrongFocus);
        made->setAccessibleName(name);
        return made;
    };
    day_ = slider(tr("Date"), days - 1, 1, 30);
    minute_ = slider(tr("Hour of the day"), minutes - 1, 10, 60);
    day_words_ = new QLabel(this);
    minute_words_ = new QLabel(this);
    const QFontMetrics metrics(base_font());
    const int wide = metrics.horizontalAdvance(QStringLiteral("30 Mar ")) + 4;
    day_words_->setMinimumWidth(wide);
    minute_words_->setMinimumWidth(wide);
    minute_words_->setToolTip(tr("Local standard time, without summer time"));
    grid->addWidget(new QLabel(tr("Date"), this), 0, 0);
    grid->addWidget(day_, 0, 1);
    grid->addWidget(day_words_, 0, 2);
    auto* jumps = new QHBoxLayout;
    jumps->setSpacing(4);
    for (const int month : {3, 6, 12}) {
        auto* jump = new QToolButton(this);
        jump->setText(QStringLiteral("21 %1").arg(QLocale::c().monthName(month, QLocale::ShortFormat)));
        jump->setToolTip(tr("Show 21 %1").arg(QLocale::c().monthName(month)));
        jumps->addWidget(jump);
        connect(jump, &QToolButton::clicked, this, [this, month] { day_->setValue(sky::day_index(month, 21)); });
    }
    grid->addLayout(jumps, 0, 3);
    grid->addWidget(new QLabel(tr("Time"), this), 1, 0);
    grid->addWidget(minute_, 1, 1);
    grid->addWidget(minute_words_, 1, 2);
    play_ = new QPushButton(this);
    play_->setToolTip(tr("From sunrise to sunset in ten seconds"));
    grid->addWidget(play_, 1, 3);
    grid->setColumnStretch(1, 1);
    column->addLayout(grid);

    tick_.setInterval(frame_ms);
    connect(&tick_, &QTimer::timeout, this, &HousePane::step);
    connect(play_, &QPushButton::clicked, this, [this] { playing() ? stop() : play(); });
    connect(day_, &QSlider::valueChanged, this, &HousePane::take_sliders);
    connect(minute_, &QSlider::valueChanged, this, &HousePane::take_sliders);
    connect(minute_, &QSlider::sliderPressed, this, &HousePane::stop);
    connect(canvas_, &HouseCanvas::scene_changed, this, &HousePane::refresh);
    show_moment(canvas_->moment());
}

void HousePane::set_session(JobSession* session) {
    stop();
    session_ = session;
    canvas_->set_session(session);
    if (isVisible()) refresh();
}

scene::Moment HousePane::moment() const {
    return {day_->value(), minute_->value() / 60.0};
}

void HousePane::show_moment(const scene::Moment& moment) {
    setting_ = true;
    day_->setValue(moment.day);
    minute_->setValue(static_cast<int>(std::lround(moment.hour * 60.0)));
    setting_ = false;
    take_sliders();
}

void HousePane::take_sliders() {
    if (setting_) return;
    canvas_->set_moment(moment());
    refresh();
    Q_EMIT moment_changed();
}

void HousePane::refresh() {
    day_words_->setText(day_text(day_->value()));
    minute_words_->setText(clock_text(minute_->value()));
    play_->setText(playing() ? tr("Stop") : tr("Play the day"));
    if (session_ == nullptr || !isVisible()) return;
    words_->setText(canvas_->sun_words());
    canvas_->setAccessibleDescription(words_->text());
    const bool sun = scene::daylight(session_->job().site, day_->value()).has_value();
    play_->setEnabled(sun || playing());
    if (!sun) words_->setText(words_->text() + tr(" On this date the sun does not rise here."));
}

QString HousePane::words() const {
    return words_->text();
}

void HousePane::play() {
    if (session_ == nullptr) return;
    const auto light = scene::daylight(session_->job().site, day_->value());
    if (!light) return;
    played_ = *light;
    minute_before_ = minute_->value();
    since_.start();
    tick_.start();
    step();
}

void HousePane::stop() {
    if (!playing()) return;
    tick_.stop();
    refresh();
}

void HousePane::step() {
    const double share = static_cast<double>(since_.elapsed()) / (1000.0 * played_in_s);
    if (share >= 1.0) {  // back to where the hand had left it
        tick_.stop();
        minute_->setValue(minute_before_);
        refresh();
        return;
    }
    const double hour = played_.from_h + share * (played_.to_h - played_.from_h);
    minute_->setValue(std::clamp(static_cast<int>(std::lround(hour * 60.0)), 0, minutes - 1));
    play_->setText(tr("Stop"));
}

void HousePane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void HousePane::hideEvent(QHideEvent* event) {
    stop();
    QWidget::hideEvent(event);
}

}  // namespace wg::ui
