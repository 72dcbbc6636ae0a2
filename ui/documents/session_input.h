#pragma once
// What a paper of the open job is made from.

#include <memory>

#include "ui/documents/documents.h"

namespace wg::ui {

class JobSession;

/// The session's job and plan as they stand; null when there is no plan. A plan does not change with the number that
/// saving gives to the same content, so the revision printed is the job's.
[[nodiscard]] std::shared_ptr<const PaperInput> input_of(
    const JobSession& session, const Firm& firm, const QDate& today,
    const std::function<QImage(const std::string& sha256)>& picture = {});

/// A photograph or drawn signature from its bytes, the right way up and no larger than paper needs; null when they are
/// no picture.
[[nodiscard]] QImage picture_for_paper(const std::string& bytes);

}  // namespace wg::ui
