#pragma once
// Reference data and the demonstration job straight from the resources folder, for tests.

#include <fstream>
#include <memory>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <string>

#include "core/job/codec.h"
#include "core/plan/reference.h"

namespace wg::test {

inline std::optional<std::string> read_resource(const std::string& path) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/" + path, std::ios::binary);
    if (!file) return std::nullopt;
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// The built-in reference with the demonstration's climate prepared. Fails loudly: resources are part of the project.
inline plan::Reference reference() {
    auto loaded = plan::load_reference(read_resource);
    if (!loaded) throw std::runtime_error(text_of(loaded.problems()));
    plan::Reference reference = std::move(loaded).value();
    auto weather = plan::weather_for(reference, reference.climates.begin()->first);
    if (!weather) throw std::runtime_error(text_of(weather.problems()));
    reference.weather = weather.value();
    return reference;
}

inline Job demo_job() {
    auto job = job_from_json(read_resource("demo/job.json").value(), "demo/job.json");
    if (!job) throw std::runtime_error(text_of(job.problems()));
    return std::move(job).value();
}

}  // namespace wg::test
