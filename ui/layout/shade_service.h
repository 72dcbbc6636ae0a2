#pragma once
// Shade maps of surfaces, worked out in the background and kept until something that throws shade changes.

#include <QFutureWatcher>
#include <QObject>
#include <map>
#include <memory>
#include <string>

#include "core/plan/reference.h"
#include "core/site/shade.h"

namespace wg::ui {

class JobSession;

class ShadeService : public QObject {
    Q_OBJECT
   public:
    explicit ShadeService(QObject* parent = nullptr);
    ~ShadeService() override;

    void set_session(JobSession* session);
    /// The map of a surface as the site is now; null while it is not ready. Orders it when it is missing.
    [[nodiscard]] const site::ShadeMap* map_of(const std::string& surface_id);
    [[nodiscard]] bool working() const { return watcher_.isRunning(); }

   Q_SIGNALS:
    void ready();

   private:
    struct Made {
        std::string surface_id;
        Site site;
        std::shared_ptr<const plan::PreparedWeather> weather;
        std::shared_ptr<const site::ShadeMap> map;
    };
    void start(const std::string& surface_id);
    void take();
    [[nodiscard]] bool current(const Made& made) const;

    JobSession* session_ = nullptr;
    QFutureWatcher<Made> watcher_;
    std::map<std::string, Made> made_;
    std::string waiting_;  ///< surface wanted while another map is being made
};

}  // namespace wg::ui
