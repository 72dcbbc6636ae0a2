#include "ui/common/weather_book.h"

#include "core/plan/weather_ensemble.h"

namespace wg::ui {

WeatherBook::WeatherBook(std::shared_ptr<const plan::Reference> reference, std::string first_climate)
    : base_(std::move(reference)) {
    if (base_->weather != nullptr) by_climate_.emplace(std::move(first_climate), base_);
}

Result<std::shared_ptr<const plan::Reference>> WeatherBook::reference_for(const std::string& climate_id) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (const auto known = by_climate_.find(climate_id); known != by_climate_.end()) return known->second;
    if (base_->climates.find(climate_id) == base_->climates.end()) return base_;
    plan::Reference bare = *base_;
    bare.weather.reset();
    Result<std::shared_ptr<const plan::Reference>> made = plan::with_weather_and_years(bare, climate_id);
    if (made.ok()) by_climate_.emplace(climate_id, made.value());
    return made;
}

}  // namespace wg::ui
