#pragma once
// Reference data that a plan needs besides the job. Read once, then shared; nothing here changes afterwards.

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/parts/prices.h"
#include "core/plan/rule_set.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"
#include "core/sky/prepared.h"
#include "core/weather/climate.h"
#include "core/weather/year.h"

namespace wg::plan {

/// A weather year and what is derived from it once.
struct PreparedWeather {
    weather::Year year;
    sky::PreparedYear sky;
};

struct Reference {
    Catalogue catalogue;
    std::map<std::string, parts::PriceList> price_lists;
    std::set<std::string> own_lists;        ///< ids of the firm's, the others come with the program
    std::set<std::string> withdrawn_lists;  ///< ids: priced with where a job names them, not to be chosen any more
    std::map<std::string, RuleSet> rule_sets;
    std::map<std::string, weather::Climate> climates;
    std::map<Refrigerant, std::shared_ptr<const refrigerant::Properties>> refrigerants;
    std::shared_ptr<const PreparedWeather>
        weather;  ///< the year to plan with; set by weather_for or by the user's file
    /// Further years of the same climate, over which the yearly figures get their range (weather_ensemble.h); null or
    /// empty: none, and the light is varied by an assumed size instead.
    std::shared_ptr<const std::vector<std::shared_ptr<const PreparedWeather>>> further_years;
};

/// Text of a resource by its path below resources/, e.g. "refrigerants/R134a.json"; nullopt when there is none.
using ReadResource = std::function<std::optional<std::string>(const std::string& path)>;

/// Reads "index.json" and every file it names. All problems at once, each with its file.
[[nodiscard]] Result<Reference> load_reference(const ReadResource& read);

/// The prepared year of a built-in climate.
[[nodiscard]] Result<std::shared_ptr<const PreparedWeather>> weather_for(const Reference& reference,
                                                                         const std::string& climate_id);
/// A year read from the user's file, prepared.
[[nodiscard]] std::shared_ptr<const PreparedWeather> prepared(weather::Year year);

}  // namespace wg::plan
