#pragma once
// A firm's own prices, rules, equipment and weather beside those of the program, for planning without a window.

#include <QString>
#include <memory>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/store/store.h"

namespace wg::app {

/// A store that is there already: a mistyped name makes no empty one. `place`: a file or a server's address.
[[nodiscard]] Result<std::unique_ptr<store::Store>> open_store_of_firm(const QString& place);

/// The job with this number. Refused: none or several have it.
[[nodiscard]] Result<Job> job_of_store(store::Store& store, const std::string& number);

struct WithFirm {
    plan::Reference reference;
    /// Lists, sets and items that could not be taken; the others are there.
    std::vector<Problem> left_out;
};

/// As the window plans the job: the firm's price lists, its rule sets and equipment that are not withdrawn or that the
/// job names, and its own weather year where the job is planned with one. Refused: a store that cannot be read.
[[nodiscard]] Result<WithFirm> with_what_the_firm_has(store::Store& store, const plan::Reference& program,
                                                      const Job& job);

}  // namespace wg::app
