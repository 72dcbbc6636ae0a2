#include "ui/common/planner.h"

#include <QDate>

#include "ui/common/weather_book.h"

namespace wg::ui {
namespace {

plan::Options options_for(const std::string& choice_id, bool full) {
    plan::Options options;
    options.choice_id = choice_id;
    options.on = QDate::currentDate().toString(Qt::ISODate).toStdString();
    options.yield = full;
    options.ranges = full;
    options.keep_hours = full;
    return options;
}

}  // namespace

Planner::Planner(std::shared_ptr<const plan::Reference> reference, std::string first_climate,
                 PlanFunction plan_function, QObject* parent)
    : QObject(parent),
      weather_(std::make_shared<WeatherBook>(std::move(reference), std::move(first_climate))),
      plan_function_(std::move(plan_function)) {
    full_.full = true;
    quick_.pool.setMaxThreadCount(1);
    full_.pool.setMaxThreadCount(1);
    // The first figures of a drag must not queue behind the year of operation on a small machine.
    full_.pool.setThreadPriority(QThread::LowPriority);
}

Planner::~Planner() {
    quick_.pool.waitForDone();
    full_.pool.waitForDone();
}

void Planner::offer_weather(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather) {
    weather_->offer(weather_id, std::move(weather));
}

bool Planner::busy() const {
    return quick_.running || full_.running || quick_.waiting.has_value() || full_.waiting.has_value();
}

std::uint64_t Planner::order(const Job& job, const std::string& choice_id) {
    const bool was_busy = busy();
    ++newest_;
    const Order order{newest_, std::make_shared<const Job>(job), choice_id};
    for (Lane* lane : {&quick_, &full_}) {
        lane->waiting = order;
        if (!lane->running) start(*lane);
    }
    if (!was_busy) Q_EMIT busy_changed();
    return newest_;
}

void Planner::start(Lane& lane) {
    const Order order = *lane.waiting;
    lane.waiting.reset();
    lane.running = true;
    Lane* const at = &lane;
    // The pools end before this object does, so a task never outlives the planner it reports to.
    lane.pool.start([this, at, order, full = lane.full, weather = weather_, plan_function = plan_function_] {
        PlanAnswer answer;
        answer.order = order.number;
        Result<std::shared_ptr<const plan::Reference>> reference = weather->reference_for(*order.job);
        if (reference.ok()) {
            answer.reference = reference.value();
            Result<plan::Plan> planned =
                plan_function(*order.job, *answer.reference, options_for(order.choice_id, full));
            if (planned.ok()) {
                answer.plan = std::make_shared<const plan::Plan>(std::move(planned).value());
            } else {
                answer.problems = planned.problems();
            }
        } else {
            answer.problems = reference.problems();
        }
        QMetaObject::invokeMethod(
            this, [this, at, answer] { finish(*at, answer); }, Qt::QueuedConnection);
    });
}

void Planner::finish(Lane& lane, const PlanAnswer& answer) {
    lane.running = false;
    if (lane.waiting) start(lane);
    const bool idle = !busy();
    if (lane.full) {
        Q_EMIT full_ready(answer);
    } else {
        Q_EMIT quick_ready(answer);
    }
    if (idle) Q_EMIT busy_changed();
}

}  // namespace wg::ui
