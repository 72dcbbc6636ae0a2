#include "ui/documents/session_input.h"

#include "ui/common/job_session.h"

namespace wg::ui {

std::shared_ptr<const PaperInput> input_of(const JobSession& session, const Firm& firm, const QDate& today) {
    const auto plan = session.plan();
    if (plan == nullptr) return nullptr;
    auto input = std::make_shared<PaperInput>();
    input->job = session.job();
    input->plan = *plan;
    input->plan.job_revision = input->job.revision;
    input->firm = firm;
    input->printed_on = today;
    input->unsaved = session.dirty();
    return input;
}

}  // namespace wg::ui
