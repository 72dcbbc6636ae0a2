#pragma once
// What is to be done next on many jobs at once, as a condition on the list and as a column of it. The rules are those
// of core/job/next_step.h; here they stand once more as SQL, and a test holds both against each other.

#include <QString>
#include <QVariantList>
#include <string>
#include <vector>

#include "core/job/next_step.h"

namespace wg::store {

/// A condition on `j` of the list, in brackets, whose values are added in the order of their places.
[[nodiscard]] QString condition_of_steps(const std::vector<NextStep>& steps, const std::string& today,
                                         QVariantList& values);

}  // namespace wg::store
