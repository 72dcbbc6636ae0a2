#include "ui/layout/shade_service.h"

#include <QtConcurrent/QtConcurrentRun>

#include "ui/common/job_session.h"
#include "ui/common/shade_words.h"

namespace wg::ui {

ShadeService::ShadeService(QObject* parent) : QObject(parent) {
    connect(&watcher_, &QFutureWatcher<Made>::finished, this, &ShadeService::take);
}

ShadeService::~ShadeService() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void ShadeService::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    made_.clear();
    waiting_.clear();
    lean_months_ = {};
    if (session_ == nullptr) return;
    lean_months_ = plan::lean_months(nullptr, session_->job().site.location.latitude_deg);
    connect(session_, &JobSession::plan_changed, this, &ShadeService::follow_plan);
    follow_plan();
}

bool ShadeService::current(const Made& made) const {
    if (session_ == nullptr || made.weather != session_->reference().weather) return false;
    const Site& now = session_->job().site;
    // Spots and snow do not throw shade; moving a cylinder must not cost a new map.
    return made.site.surfaces == now.surfaces && made.site.obstacles == now.obstacles &&
           made.site.horizon == now.horizon && made.site.location == now.location &&
           made.site.sketch_up_azimuth_deg == now.sketch_up_azimuth_deg;
}

const ShadeService::Made* ShadeService::made_of(const std::string& surface_id) {
    if (session_ == nullptr || surface_id.empty()) return nullptr;
    const auto found = made_.find({surface_id, months()});
    if (found != made_.end() && current(found->second)) return &found->second;
    start(surface_id);
    return nullptr;
}

const site::ShadeMap* ShadeService::map_of(const std::string& surface_id) {
    const Made* made = made_of(surface_id);
    return made != nullptr ? made->map.get() : nullptr;
}

const site::Shade* ShadeService::shade_of(const std::string& surface_id) {
    const Made* made = made_of(surface_id);
    return made != nullptr ? made->shade.get() : nullptr;
}

void ShadeService::set_lean(bool lean) {
    if (lean == lean_) return;
    lean_ = lean;
    Q_EMIT period_changed();
}

QString ShadeService::period_words() const {
    return lean_ ? months_words(lean_months_.months) : QString();
}

void ShadeService::follow_plan() {
    if (session_ == nullptr) return;
    // While figures of the year are from before an edit, the months stay too.
    const auto plan = session_->plan();
    const bool known = plan != nullptr && plan->has_yield && !session_->yield_carried();
    if (!known && (lean_months_.from_year || plan == nullptr)) return;
    const plan::LeanMonths now =
        plan::lean_months(known ? &plan->season : nullptr, session_->job().site.location.latitude_deg);
    if (now.months == lean_months_.months && now.from_year == lean_months_.from_year) return;
    lean_months_ = now;
    Q_EMIT period_changed();
}

void ShadeService::start(const std::string& surface_id) {
    if (watcher_.isRunning()) {
        waiting_ = surface_id;
        return;
    }
    const std::shared_ptr<const plan::PreparedWeather> weather = session_->reference().weather;
    const Surface* surface = find_surface(session_->job().site, surface_id);
    if (weather == nullptr || surface == nullptr) return;
    watcher_.setFuture(QtConcurrent::run([site = session_->job().site, surface = *surface, weather, months = months()] {
        Made made;
        made.surface_id = surface.id;
        made.site = site;
        made.weather = weather;
        made.months = months;
        made.map = std::make_shared<const site::ShadeMap>(
            site::shade_map(site, surface, weather->sky, site::map_options_for(months)));
        made.shade = std::make_shared<const site::Shade>(site::shade_on_surface(site, surface, weather->sky));
        return made;
    }));
}

void ShadeService::take() {
    Made made = watcher_.result();
    constexpr std::size_t most_kept = 32;  // surfaces times periods; a map is some 100 kB
    if (made_.size() >= most_kept) made_.clear();
    const Key key{made.surface_id, made.months};
    made_[key] = std::move(made);
    if (!waiting_.empty() && session_ != nullptr) {
        const std::string next = std::exchange(waiting_, {});
        start(next);
    }
    Q_EMIT ready();
}

}  // namespace wg::ui
