#pragma once
// The verbs about what is offered (see ui/common/edits.h): each makes one undo step.

#include <string>

#include "core/quote/offered.h"
#include "ui/common/job_session.h"

namespace wg::ui {

/// The office's change of the parts list's line as it is now; a fresh one, for this choice alone, when there is none.
[[nodiscard]] LineChange change_of(const JobSession& session, const quote::OfferedLine& line);
/// Puts the change in place of the one of the same id, or adds it; one that changes nothing is taken away.
void set_change(JobSession& session, const LineChange& change);
void take_change_back(JobSession& session, const std::string& change_id);

/// A fresh line of this kind in the current choice; its id.
std::string add_own_line(JobSession& session, OfferLineKind kind);
void set_own_line(JobSession& session, const OfferLine& line);
void remove_own_line(JobSession& session, const std::string& line_id);

/// Everything of the offer beside its lines.
void set_terms(JobSession& session, const Offer& offer);
/// Whether a choice stands on the quote beside the one that is offered.
void set_on_offer(JobSession& session, const std::string& choice_id, bool on);
void add_instalment(JobSession& session);
void remove_instalment(JobSession& session, const std::string& instalment_id);

}  // namespace wg::ui
