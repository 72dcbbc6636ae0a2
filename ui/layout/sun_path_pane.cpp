#include "ui/layout/sun_path_pane.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/job_session.h"

namespace wg::ui {

namespace {

constexpr int room_for_all_lines = 26;  ///< lines of text high

}  // namespace

SunPathPane::SunPathPane(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    column->addWidget(words_);
    view_ = new PictureView(this);
    view_->setMinimumSize(240, 190);
    column->addWidget(view_, 1);
    connect(view_, &PictureView::pointed_at, this, &SunPathPane::pointed_at);
    soon_.setSingleShot(true);
    soon_.setInterval(0);
    connect(&soon_, &QTimer::timeout, this, &SunPathPane::refresh);
}

void SunPathPane::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    placement_id_.clear();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, &SunPathPane::later);
        connect(session_, &JobSession::choice_changed, this, &SunPathPane::later);
    }
    later();
}

void SunPathPane::set_placement(const std::string& placement_id) {
    placement_id_ = placement_id;
    later();
}

void SunPathPane::set_moment(const std::optional<scene::Moment>& moment) {
    moment_ = moment;
    later();
}

void SunPathPane::later() {
    if (isVisible()) soon_.start();
}

const Placement* SunPathPane::placement() const {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr || choice->placements.empty()) return nullptr;
    for (const Placement& one : choice->placements) {
        if (one.id == placement_id_) return &one;
    }
    return &choice->placements.front();
}

void SunPathPane::refresh() {
    if (session_ == nullptr) return;
    const Site& site = session_->job().site;
    const Placement* on = placement();
    const Surface* surface = on != nullptr ? find_surface(site, on->surface_id) : nullptr;
    const CollectorModel* model =
        on != nullptr ? find_collector(session_->reference().catalogue, session_->current_choice()->collector_model)
                      : nullptr;
    if (surface != nullptr && model != nullptr) {
        const site::PlacedCollector placed = site::place(*surface, site.sketch_up_azimuth_deg, *on, *model);
        source_.show_plate(site, &placed, surface->id);
    } else {
        source_.show_plate(site, nullptr, {});
    }
    source_.mark_sun({});
    if (moment_) {
        const scene::SunOverSite sun = scene::sun_over(site, *moment_);
        const int minutes = static_cast<int>(std::lround(moment_->hour * 60.0));
        const CivilDate date = sky::date_of_day(moment_->day);
        if (sun.up) {
            source_.mark_sun(SunPathPicture::SunMark{sun.azimuth_deg, sun.elevation_deg,
                                                     QStringLiteral("%1 %2, %3:%4")
                                                         .arg(date.day)
                                                         .arg(QLocale::c().monthName(date.month, QLocale::ShortFormat))
                                                         .arg(minutes / 60)
                                                         .arg(minutes % 60, 2, 10, QLatin1Char('0'))});
        }
    }
    QString text = surface != nullptr && model != nullptr ? tr("The sky seen from the middle of %1.").arg(qs(on->label))
                                                          : tr("The sky over the site; no collector is placed yet.");
    if (site.horizon.empty()) text += tr(" No horizon was surveyed: it counts as free.");
    words_->setText(text);
    view_->setAccessibleName(text + QLatin1Char(' ') + sun_path_words(source_.picture()));
    source_.put_into(*view_);
}

void SunPathPane::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    source_.show_few_lines(height() < room_for_all_lines * fontMetrics().lineSpacing());
}

QString SunPathPane::words() const {
    return words_->text();
}

void SunPathPane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

}  // namespace wg::ui
