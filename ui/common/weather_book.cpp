#include "ui/common/weather_book.h"

#include <cmath>

#include "core/plan/weather_ensemble.h"

namespace wg::ui {

WeatherBook::WeatherBook(std::shared_ptr<const plan::Reference> reference, std::string first_climate)
    : base_(std::move(reference)) {
    if (base_->weather != nullptr) offered_.emplace(std::move(first_climate), base_->weather);
}

void WeatherBook::offer(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (weather == nullptr) return;
    offered_.insert_or_assign(weather_id, std::move(weather));
    std::erase_if(made_, [&weather_id](const auto& made) { return made.first.first == weather_id; });
}

Result<std::shared_ptr<const plan::Reference>> WeatherBook::reference_for(const Job& job) {
    const std::lock_guard<std::mutex> lock(mutex_);
    const double altitude_m = job.site.location.altitude_m;
    const std::pair<std::string, long> key{job.weather, std::isfinite(altitude_m) ? std::lround(altitude_m) : 0};
    if (const auto known = made_.find(key); known != made_.end()) return known->second;
    const auto offered = offered_.find(job.weather);
    plan::Reference bare = *base_;
    bare.weather = offered != offered_.end() ? offered->second : nullptr;
    if (bare.weather == nullptr && base_->climates.find(job.weather) == base_->climates.end()) {
        // Never another job's year in its place: plan() is to say that this one is missing.
        bare.further_years.reset();
        return made_.emplace(key, std::make_shared<const plan::Reference>(std::move(bare))).first->second;
    }
    Result<std::shared_ptr<const plan::Reference>> made = plan::with_weather_and_years(bare, job.weather, altitude_m);
    if (made.ok()) made_.emplace(key, made.value());
    return made;
}

}  // namespace wg::ui
