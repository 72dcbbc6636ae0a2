#pragma once
// The day's work in order: which entries each part of it wants, and how far it is.

#include <QDate>
#include <QString>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "ui/common/entry_breaks.h"
#include "ui/common/mark.h"

namespace wg::ui {

/// One entry that a part of the work wants.
struct Want {
    ReadingKind kind = ReadingKind::remark;
    std::string subject{};  ///< hold point, part or role; empty: of any
    QString name;           ///< as shown
    bool needed = true;     ///< false: where there is an instrument for it, or where it happened
    QString note{};         ///< hold point: what must be true
};

struct WorkStage {
    QString title;
    std::vector<Want> wants;
};

/// Place and fixings, water side, pressure hold, evacuation, charge, electrical, start, first heating, hand-over; what
/// the plan does not ask for is not needed there. `plan` null: all of it. With `service`: what a service looks at.
[[nodiscard]] std::vector<WorkStage> work_stages(const Job& job, const plan::Plan* plan, bool service = false);

/// Entries that count for the occasion, corrections in place: of fitting and repair together, or of a service's own
/// day.
[[nodiscard]] std::vector<Reading> entries_of(const std::vector<Reading>& record, Occasion occasion,
                                              const QDate& today);

/// The newest of `standing` that a want asks for; null: none yet.
[[nodiscard]] const Reading* entry_for(const Want& want, const std::vector<Reading>& standing);

/// Assessments that rest on a reading of this part of the work.
[[nodiscard]] std::vector<commissioning::Assessment> assessments_of(
    const WorkStage& stage, const std::vector<Reading>& standing,
    const std::vector<commissioning::Assessment>& assessments);

struct WorkState {
    Mark mark = Mark::empty;
    QString words;  ///< "outstanding", "2 of 4 entered", "failed", "altered", "held", "not settled", "done"
};
/// `breaks`: a part with an entry that the chain speaks against is neither passed nor failed.
[[nodiscard]] WorkState state_of(const WorkStage& stage, const std::vector<Reading>& standing,
                                 const std::vector<commissioning::Assessment>& assessments,
                                 const EntryBreaks& breaks = {});

/// The verdict on the record's chain: it is about the record, and no verdict on the part where the entry stands.
[[nodiscard]] bool of_the_chain(const commissioning::Assessment& assessment);

/// What a reading of that day should be by plan and limits, "25.0 bar, never above 29.0 bar"; empty: nothing is
/// expected of it.
[[nodiscard]] QString expected_words(ReadingKind kind, const plan::Plan& plan, const QDate& day);

}  // namespace wg::ui
