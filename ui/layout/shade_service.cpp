#include "ui/layout/shade_service.h"

#include <QtConcurrent/QtConcurrentRun>

#include "ui/common/job_session.h"

namespace wg::ui {

ShadeService::ShadeService(QObject* parent) : QObject(parent) {
    connect(&watcher_, &QFutureWatcher<Made>::finished, this, &ShadeService::take);
}

ShadeService::~ShadeService() {
    watcher_.disconnect(this);
    watcher_.waitForFinished();
}

void ShadeService::set_session(JobSession* session) {
    session_ = session;
    made_.clear();
    waiting_.clear();
}

bool ShadeService::current(const Made& made) const {
    if (session_ == nullptr || made.weather != session_->reference().weather) return false;
    const Site& now = session_->job().site;
    // Spots and snow do not throw shade; moving a cylinder must not cost a new map.
    return made.site.surfaces == now.surfaces && made.site.obstacles == now.obstacles &&
           made.site.horizon == now.horizon && made.site.location == now.location &&
           made.site.sketch_up_azimuth_deg == now.sketch_up_azimuth_deg;
}

const site::ShadeMap* ShadeService::map_of(const std::string& surface_id) {
    if (session_ == nullptr || surface_id.empty()) return nullptr;
    const auto found = made_.find(surface_id);
    if (found != made_.end() && current(found->second)) return found->second.map.get();
    start(surface_id);
    return nullptr;
}

void ShadeService::start(const std::string& surface_id) {
    if (watcher_.isRunning()) {
        waiting_ = surface_id;
        return;
    }
    const std::shared_ptr<const plan::PreparedWeather> weather = session_->reference().weather;
    const Surface* surface = find_surface(session_->job().site, surface_id);
    if (weather == nullptr || surface == nullptr) return;
    watcher_.setFuture(QtConcurrent::run([site = session_->job().site, surface = *surface, weather] {
        Made made;
        made.surface_id = surface.id;
        made.site = site;
        made.weather = weather;
        made.map = std::make_shared<const site::ShadeMap>(site::shade_map(site, surface, weather->sky));
        return made;
    }));
}

void ShadeService::take() {
    Made made = watcher_.result();
    const std::string surface_id = made.surface_id;
    made_[surface_id] = std::move(made);
    if (!waiting_.empty() && session_ != nullptr) {
        const std::string next = std::exchange(waiting_, {});
        start(next);
    }
    Q_EMIT ready();
}

}  // namespace wg::ui
