#pragma once
// Shade maps of surfaces, worked out in the background and kept until something that throws shade changes.

#include <QFutureWatcher>
#include <QObject>
#include <map>
#include <memory>
#include <string>

#include "core/plan/lean_months.h"
#include "core/plan/reference.h"
#include "core/site/shade_period.h"

namespace wg::ui {

class JobSession;

class ShadeService : public QObject {
    Q_OBJECT
   public:
    explicit ShadeService(QObject* parent = nullptr);
    ~ShadeService() override;

    void set_session(JobSession* session);
    /// The map of a surface for the period, as the site is now; null while it is not ready. Orders it when it is
    /// missing.
    [[nodiscard]] const site::ShadeMap* map_of(const std::string& surface_id);
    /// The shade over the whole of a surface, the year round; null as above.
    [[nodiscard]] const site::Shade* shade_of(const std::string& surface_id);
    /// Whole year, or the lean months of the choice on screen. They follow its plan.
    void set_lean(bool lean);
    [[nodiscard]] bool lean() const { return lean_; }
    [[nodiscard]] const plan::LeanMonths& lean_months() const { return lean_months_; }
    [[nodiscard]] const site::Months& months() const { return lean_ ? lean_months_.months : site::whole_year; }
    /// "November to April"; empty for the whole year.
    [[nodiscard]] QString period_words() const;
    [[nodiscard]] bool working() const { return watcher_.isRunning(); }

   Q_SIGNALS:
    void ready();
    void period_changed();

   private:
    struct Made {
        std::string surface_id;
        Site site;
        std::shared_ptr<const plan::PreparedWeather> weather;
        site::Months months{};
        std::shared_ptr<const site::ShadeMap> map;
        std::shared_ptr<const site::Shade> shade;
    };
    using Key = std::pair<std::string, site::Months>;
    [[nodiscard]] const Made* made_of(const std::string& surface_id);
    void follow_plan();
    void start(const std::string& surface_id);
    void take();
    [[nodiscard]] bool current(const Made& made) const;

    JobSession* session_ = nullptr;
    QFutureWatcher<Made> watcher_;
    std::map<Key, Made> made_;
    bool lean_ = false;
    plan::LeanMonths lean_months_;
    std::string waiting_;  ///< surface wanted while another map is being made
};

}  // namespace wg::ui
