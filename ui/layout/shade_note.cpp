#include "ui/layout/shade_note.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/shade_words.h"
#include "ui/layout/shade_service.h"

namespace wg::ui {
namespace {

constexpr std::size_t causes_named = 3;

QString causes_or_none(const site::Shade& shade, const ShadeService& service) {
    const QString period = service.period_words();
    const QString words = shade_causes_words(site::shade_within(shade, service.months()), causes_named, period);
    return words.isEmpty() ? ShadeNote::tr("Nothing takes half a kWh/m\u00b2 of direct sun, %1.")
                                 .arg(period.isEmpty() ? ShadeNote::tr("whole year") : period)
                           : words;
}

}  // namespace

ShadeNote::ShadeNote(ShadeService* shade, QWidget* parent) : QWidget(parent), shade_(shade) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    about_ = new QLabel(this);
    about_->setProperty("role", QStringLiteral("heading"));
    about_->setWordWrap(true);
    words_ = new QLabel(this);
    words_->setProperty("role", QStringLiteral("muted"));
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column->addWidget(about_);
    column->addWidget(words_);
    connect(shade_, &ShadeService::ready, this, &ShadeNote::refresh);
    connect(shade_, &ShadeService::period_changed, this, &ShadeNote::refresh);
}

void ShadeNote::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    if (session_ != nullptr) connect(session_, &JobSession::plan_changed, this, &ShadeNote::refresh);
    refresh();
}

void ShadeNote::show_state(const std::string& surface_id, const std::string& placement_id) {
    if (surface_id == surface_id_ && placement_id == placement_id_) return;
    surface_id_ = surface_id;
    placement_id_ = placement_id;
    refresh();
}

void ShadeNote::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

QString ShadeNote::words() const {
    return words_->text();
}

/// Empty while no complete plan knows it.
QString ShadeNote::words_of_collector() const {
    const auto plan = session_->plan();
    if (plan == nullptr || !plan->has_yield || session_->yield_carried()) return {};
    for (const plan::PlacementPlan& one : plan->placements) {
        if (one.placement_id == placement_id_) return causes_or_none(one.shade, *shade_);
    }
    return {};
}

QString ShadeNote::words_of_surface() const {
    const site::Shade* shade = shade_->shade_of(surface_id_);
    return shade != nullptr ? causes_or_none(*shade, *shade_) : QString();
}

void ShadeNote::refresh() {
    // Nothing is worked out for a panel that nobody sees.
    if (!isVisible()) return;
    const Surface* surface = session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
    const Placement* collector = nullptr;
    if (session_ != nullptr && session_->current_choice() != nullptr) {
        for (const Placement& one : session_->current_choice()->placements)
            collector = one.id == placement_id_ ? &one : collector;
    }
    about_->setVisible(surface != nullptr);
    words_->setVisible(surface != nullptr);
    if (surface == nullptr) return;
    const QString about = tr("Shade on %1").arg(qs(collector != nullptr ? collector->label : surface->label));
    QString words = collector != nullptr ? words_of_collector() : words_of_surface();
    if (words.isEmpty()) {
        // During a drag the words of before stay; they are of the same collector and come anew in a moment.
        if (about == about_->text() && !words_->text().isEmpty()) return;
        words = tr("working");
    }
    about_->setText(about);
    words_->setText(words);
}

}  // namespace wg::ui
