#pragma once
// A weather year from the user's own file in place of a job's climate. Which file a job is planned with is a setting
// of this desk (weather_file.<job id>): the job itself travels without it, since the path means nothing elsewhere.

#include <QString>
#include <memory>
#include <string>

#include "core/plan/reference.h"
#include "core/quantity/result.h"
#include "core/store/store.h"

namespace wg::ui {

/// The file's year, prepared; refused with line and column when the file is no weather year.
[[nodiscard]] Result<std::shared_ptr<const plan::PreparedWeather>> read_weather_file(const QString& path);

/// The reference with the file's year prepared and further years like it; refused with line and column when the file is
/// no weather year.
[[nodiscard]] Result<std::shared_ptr<const plan::Reference>> with_weather_file(const plan::Reference& reference,
                                                                               const QString& path);

/// Path of the file this job is planned with here; empty: the job's own climate.
[[nodiscard]] QString weather_file_of(store::Store& store, const std::string& job_id);
/// An empty path goes back to the job's climate.
[[nodiscard]] Result<bool> keep_weather_file(store::Store& store, const std::string& job_id, const QString& path);

}  // namespace wg::ui
