#pragma once
// Rules on a whole job that no single field can tell.

#include "core/job/field_rules.h"
#include "core/job/job.h"

namespace wg::job_fields {

/// Ids unique in the job; references that exist; corrections that do not go round in a circle.
void check_references(ProblemList& problems, const Job& job);

/// Every field of the job against its rule, then check_references.
void check_job(ProblemList& problems, const Job& job);

}  // namespace wg::job_fields
