#include "ui/visit/guarded_edit.h"

#include <algorithm>

#include "core/job/codec.h"
#include "ui/common/format.h"

namespace wg::ui {

QString refusal(const Job& job, const std::function<void(Job&)>& change) {
    Job tried = job;
    change(tried);
    const std::vector<Problem> before = validate(job);
    for (const Problem& problem : validate(tried)) {
        if (std::find(before.begin(), before.end(), problem) != before.end()) continue;
        return problem.remedy.empty() ? qs(problem.what) : qs(problem.what) + QStringLiteral(". ") + qs(problem.remedy);
    }
    return {};
}

}  // namespace wg::ui
