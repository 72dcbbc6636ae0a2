#include "ui/common/job_snapshot.h"

#include "core/job/codec.h"

namespace wg::ui {
namespace {

constexpr int fast_level = 1;  ///< of zlib's; a job's text shrinks to a fifth at any level

}  // namespace

Job JobSnapshot::job() const {
    if (job_ != nullptr) return *job_;
    const QByteArray text = qUncompress(text_);
    // pack() has seen it come back.
    return job_from_json(std::string(text.constData(), static_cast<std::size_t>(text.size())), "step").value();
}

void JobSnapshot::pack() {
    if (job_ == nullptr || tried_) return;
    tried_ = true;
    const std::string text = job_to_json(*job_);
    const Result<Job> back = job_from_json(text, "step");
    if (!back || back.value() != *job_) return;
    text_ = qCompress(QByteArray(text.data(), static_cast<qsizetype>(text.size())), fast_level);
    job_.reset();
}

}  // namespace wg::ui
