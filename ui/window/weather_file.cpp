#include "ui/window/weather_file.h"

#include "core/weather/read.h"
#include "ui/window/job_files.h"

namespace wg::ui {

Result<std::shared_ptr<const plan::PreparedWeather>> read_weather_file(const QString& path) {
    const Result<std::string> text = read_job_file(path);
    if (!text.ok()) return text.problems();
    Result<weather::Year> year = weather::read_any(text.value(), path.toStdString());
    if (!year.ok()) return year.problems();
    return plan::prepared(std::move(year).value());
}

bool is_kept_year(const std::string& weather_id) {
    return weather_id.rfind("year:", 0) == 0;
}

Result<std::shared_ptr<const plan::PreparedWeather>> kept_year(store::Store& store, const std::string& weather_id) {
    Result<weather::Year> year = store.weather_year(weather_id);
    if (!year.ok()) return year.problems();
    return plan::prepared(std::move(year).value());
}

std::vector<KeptYear> kept_years(store::Store& store) {
    std::vector<KeptYear> years;
    const Result<std::vector<store::WeatherYearRow>> rows = store.weather_years();
    if (!rows.ok()) return years;
    for (const store::WeatherYearRow& row : rows.value())
        years.push_back({row.id, row.label, row.invented, row.latitude_deg, row.longitude_deg, row.altitude_m});
    return years;
}

}  // namespace wg::ui
