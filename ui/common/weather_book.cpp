#include "ui/common/weather_book.h"

namespace wg::ui {

WeatherBook::WeatherBook(std::shared_ptr<const plan::Reference> reference, std::string first_climate)
    : base_(std::move(reference)) {
    if (base_->weather != nullptr) by_climate_.emplace(std::move(first_climate), base_);
}

Result<std::shared_ptr<const plan::Reference>> WeatherBook::reference_for(const std::string& climate_id) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (const auto known = by_climate_.find(climate_id); known != by_climate_.end()) return known->second;
    if (base_->climates.find(climate_id) == base_->climates.end()) return base_;
    Result<std::shared_ptr<const plan::PreparedWeather>> weather = plan::weather_for(*base_, climate_id);
    if (!weather.ok()) return weather.problems();
    auto reference = std::make_shared<plan::Reference>(*base_);
    reference->weather = weather.value();
    std::shared_ptr<const plan::Reference> shared = std::move(reference);
    by_climate_.emplace(climate_id, shared);
    return shared;
}

}  // namespace wg::ui
