#pragma once
// The user's own weather years: read from a file, kept in the firm's library, named by the job.

#include <QString>
#include <memory>
#include <string>
#include <vector>

#include "core/plan/reference.h"
#include "core/quantity/result.h"
#include "core/store/store.h"
#include "ui/weather/weather_dialog.h"

namespace wg::ui {

/// The file's year, prepared; refused with line and column when the file is no weather year.
[[nodiscard]] Result<std::shared_ptr<const plan::PreparedWeather>> read_weather_file(const QString& path);

/// Whether a job's weather names a year of the library and not a built-in climate.
[[nodiscard]] bool is_kept_year(const std::string& weather_id);
/// A year of the library, prepared.
[[nodiscard]] Result<std::shared_ptr<const plan::PreparedWeather>> kept_year(store::Store& store,
                                                                             const std::string& weather_id);
/// Those to choose from; empty when the library cannot be read.
[[nodiscard]] std::vector<KeptYear> kept_years(store::Store& store);

}  // namespace wg::ui
