// Whether the record is whole, and whether its entries were made for the plan as it is now.

#include <algorithm>

#include "core/job/record_chain.h"
#include "core/plan/parts_of_plan.h"

namespace wg::plan::steps {

void record_checks(const Job& job, Plan& plan) {
    const ChainReport chain = check_chain(job.record);
    if (chain.ends.size() > 1) {
        plan.findings.push_back({"record.ends", Severity::note, Stage::fitting, "", "record",
                                 "The record was written on " + std::to_string(chain.ends.size()) +
                                     " copies apart and put together: its chain has as many ends",
                                 "See that every end stands on a signed print; one that does not was put in later",
                                 "Entries are chained by SHA-256", "FIPS 180-4; docs/handbook/travel.md"});
    }
    for (const ChainBreak& broken : chain.breaks) {
        plan.findings.push_back({"record.chain", Severity::caution, Stage::fitting, "",
                                 "entry " + std::to_string(broken.index + 1) + " of the record",
                                 "Entry " + std::to_string(broken.index + 1) + " of " +
                                     job.record[broken.index].taken_at + " " + broken.what,
                                 "Compare with the signed print or a copy of the job; enter anew what cannot be proved",
                                 "Entries are chained by SHA-256", "FIPS 180-4; docs/handbook/commissioning.md"});
    }
    // Readings of the fitting alone: what is changed for a repair or later is a plan of its own.
    std::vector<const Reading*> other;
    for (const Reading& reading : job.record) {
        const bool fitted = reading.occasion != Occasion::service;
        const bool new_mark = std::none_of(other.begin(), other.end(),
                                           [&](const Reading* r) { return r->plan_mark == reading.plan_mark; });
        if (fitted && !reading.plan_mark.empty() && reading.plan_mark != plan.plan_mark && new_mark)
            other.push_back(&reading);
    }
    for (const Reading* reading : other) {
        const auto count = std::count_if(job.record.begin(), job.record.end(), [&](const Reading& r) {
            return r.occasion != Occasion::service && r.plan_mark == reading->plan_mark;
        });
        plan.findings.push_back({"record.plan-changed", Severity::note, Stage::fitting, "", "record",
                                 (count == 1 ? std::string("An entry of the record was")
                                             : std::to_string(count) + " entries of the record were") +
                                     " made for revision " + std::to_string(reading->plan_revision) + ", mark " +
                                     reading->plan_mark + "; the plan is now revision " + std::to_string(job.revision) +
                                     ", mark " + plan.plan_mark,
                                 "See what changed, and whether what was read and fitted still goes with it",
                                 "An entry tells the plan it was made for", "docs/handbook/commissioning.md"});
    }
}

}  // namespace wg::plan::steps
