#include "ui/desk/new_job.h"

#include "core/plan/own_lists.h"
#include "ui/common/edits.h"

namespace wg::ui {

Job new_job(const plan::Reference& reference, const std::string& number, Instant now, const std::string& rule_set) {
    Job job;
    job.id = new_id();
    job.number = number;
    job.created_at = iso8601(now);
    job.changed_at = job.created_at;
    if (!reference.climates.empty()) {
        const weather::Climate& climate = reference.climates.begin()->second;
        job.weather = climate.id;
        // Without its name: the plan needs some position to begin with, but nobody has told where the site lies.
        job.site.location.latitude_deg = climate.latitude_deg;
        job.site.location.longitude_deg = climate.longitude_deg;
        job.site.location.altitude_m = climate.altitude_m;
        job.site.location.utc_offset_h = climate.utc_offset_h;
    }
    job.rule_set = rule_set;
    if (rule_set.empty() && !reference.rule_sets.empty()) job.rule_set = reference.rule_sets.begin()->first;
    job.price_list = plan::list_for_new_jobs(reference, iso8601(now).substr(0, 10));
    return job;
}

}  // namespace wg::ui
