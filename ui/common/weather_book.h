#pragma once
// Reference data with the right weather year for each job, prepared once a climate. Safe to use from several threads.

#include <map>
#include <memory>
#include <mutex>
#include <string>

#include "core/plan/reference.h"

namespace wg::ui {

class WeatherBook {
   public:
    WeatherBook(std::shared_ptr<const plan::Reference> reference, std::string first_climate);
    /// The reference to plan a job of this climate with. An unknown climate gets the reference as it is: plan() then
    /// says what is missing. Problems when the climate's year cannot be made.
    [[nodiscard]] Result<std::shared_ptr<const plan::Reference>> reference_for(const std::string& climate_id);

   private:
    std::mutex mutex_;
    std::shared_ptr<const plan::Reference> base_;
    std::map<std::string, std::shared_ptr<const plan::Reference>> by_climate_;
};

}  // namespace wg::ui
