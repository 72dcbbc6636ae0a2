#pragma once
// Plans in the background. Every order gets two passes, quick (no yield) and full, in two lanes of one thread each.
// A lane that is busy keeps only the newest order waiting: while a drag goes on, orders in between are never run.

#include <QObject>
#include <QThreadPool>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::ui {

/// How to plan; plan::plan by default.
using PlanFunction = std::function<Result<plan::Plan>(const Job&, const plan::Reference&, const plan::Options&)>;

struct PlanAnswer {
    std::uint64_t order = 0;                           ///< number of the order it belongs to; grows with every order
    std::shared_ptr<const plan::Plan> plan;            ///< null: see problems
    std::shared_ptr<const plan::Reference> reference;  ///< the one used, with the job's weather
    std::vector<Problem> problems;
};

class WeatherBook;

class Planner : public QObject {
    Q_OBJECT
   public:
    /// A reference that already holds weather keeps it for jobs whose climate is `first_climate`: that is the year
    /// the user gave. Other climates are prepared when first asked for.
    Planner(std::shared_ptr<const plan::Reference> reference, std::string first_climate, PlanFunction plan_function,
            QObject* parent = nullptr);
    /// Drops waiting orders and waits for those under way (each takes well under a second).
    ~Planner() override;

    /// Orders a plan of this job and choice; returns the order's number.
    std::uint64_t order(const Job& job, const std::string& choice_id);
    /// A year that jobs may name by this id from now on.
    void offer_weather(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather);
    [[nodiscard]] std::uint64_t newest_order() const { return newest_; }
    [[nodiscard]] bool busy() const;

   Q_SIGNALS:
    void quick_ready(const wg::ui::PlanAnswer& answer);
    void full_ready(const wg::ui::PlanAnswer& answer);
    void busy_changed();

   private:
    struct Order {
        std::uint64_t number = 0;
        std::shared_ptr<const Job> job;
        std::string choice_id;
    };
    struct Lane {
        QThreadPool pool;
        std::optional<Order> waiting;
        bool running = false;
        bool full = false;
    };

    void start(Lane& lane);
    void finish(Lane& lane, const PlanAnswer& answer);

    std::shared_ptr<WeatherBook> weather_;
    PlanFunction plan_function_;
    Lane quick_;
    Lane full_;
    std::uint64_t newest_ = 0;
};

}  // namespace wg::ui
