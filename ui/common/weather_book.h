#pragma once
// Reference data with the right weather year for each job, prepared once a climate and height. Safe to use from several
// threads.

#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <utility>

#include "core/job/job.h"
#include "core/plan/reference.h"

namespace wg::ui {

class WeatherBook {
   public:
    WeatherBook(std::shared_ptr<const plan::Reference> reference, std::string first_climate);
    /// The reference to plan this job with: its weather and further years, at the site's height. A weather that is not
    /// known gets the reference without any: plan() then says what is missing. Problems when the climate's year cannot
    /// be made.
    [[nodiscard]] Result<std::shared_ptr<const plan::Reference>> reference_for(const Job& job);
    /// A year under the id that jobs name it by, e.g. one of the firm's library.
    void offer(const std::string& weather_id, std::shared_ptr<const plan::PreparedWeather> weather);

   private:
    std::mutex mutex_;
    std::shared_ptr<const plan::Reference> base_;
    std::map<std::string, std::shared_ptr<const plan::PreparedWeather>> offered_;
    std::map<std::pair<std::string, long>, std::shared_ptr<const plan::Reference>> made_;  ///< by weather and metres
};

}  // namespace wg::ui
