#include "core/plan/rule_sources.h"

#include <algorithm>

namespace wg::plan {
namespace {

// Of ASCII letters alone: a locale has no say in what a file means.
std::string in_small_letters(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return out;
}

}  // namespace

const std::vector<std::string>& values_with_source() {
    static const std::vector<std::string> names = {"basic_wind_m_s",
                                                   "wind_altitude_per_m",
                                                   "air_density_kg_m3",
                                                   "ground_snow_kn_m2",
                                                   "snow_rule",
                                                   "snow_zone",
                                                   "snow_exposure",
                                                   "snow_thermal",
                                                   "snow_density_kn_m3",
                                                   "snow_slides",
                                                   "gamma_permanent_unfavourable",
                                                   "gamma_permanent_favourable",
                                                   "gamma_variable",
                                                   "psi_0_wind",
                                                   "psi_0_snow",
                                                   "k_mod",
                                                   "gamma_timber",
                                                   "gamma_bolt",
                                                   "timber_density_kg_m3",
                                                   "deflection_span_share",
                                                   "net_pressure",
                                                   "standing_off_net_factor",
                                                   "hidden_face_share",
                                                   "net_uplift_middle",
                                                   "net_uplift_edge",
                                                   "net_pressure_all"};
    return names;
}

const char* group_source_of(std::string_view value) {
    const bool net = value == "net_pressure" || value == "standing_off_net_factor" || value == "hidden_face_share" ||
                     value == "net_uplift_middle" || value == "net_uplift_edge" || value == "net_pressure_all";
    return net ? "net_pressure_source" : "source";
}

bool says_assumed(std::string_view source) {
    if (source.find_first_not_of(" \n") == std::string_view::npos) return true;
    const std::string small = in_small_letters(source);
    return small.find("assumed") != std::string::npos || small.find("invented") != std::string::npos;
}

}  // namespace wg::plan
