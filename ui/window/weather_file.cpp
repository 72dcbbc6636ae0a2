#include "ui/window/weather_file.h"

#include "core/plan/weather_ensemble.h"
#include "core/weather/read.h"
#include "ui/common/format.h"
#include "ui/window/job_files.h"

namespace wg::ui {
namespace {

std::string key_of(const std::string& job_id) {
    return "weather_file." + job_id;
}

}  // namespace

Result<std::shared_ptr<const plan::PreparedWeather>> read_weather_file(const QString& path) {
    const Result<std::string> text = read_job_file(path);
    if (!text.ok()) return text.problems();
    Result<weather::Year> year = weather::read_any(text.value(), path.toStdString());
    if (!year.ok()) return year.problems();
    return plan::prepared(std::move(year).value());
}

Result<std::shared_ptr<const plan::Reference>> with_weather_file(const plan::Reference& reference,
                                                                 const QString& path) {
    const auto read = read_weather_file(path);
    if (!read.ok()) return read.problems();
    plan::Reference own = reference;
    own.weather = read.value();
    return plan::with_weather_and_years(own, std::string());
}

QString weather_file_of(store::Store& store, const std::string& job_id) {
    const Result<std::string> kept = store.setting(key_of(job_id), std::string());
    return kept.ok() ? qs(kept.value()) : QString();
}

Result<bool> keep_weather_file(store::Store& store, const std::string& job_id, const QString& path) {
    return store.set_setting(key_of(job_id), path.toStdString());
}

}  // namespace wg::ui
