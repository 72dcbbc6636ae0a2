#pragma once
// What a print says of itself, and whether it is of the plan as it is now.

#include <QString>
#include <cstdint>
#include <optional>
#include <string>

#include "core/plan/plan.h"

namespace wg::ui {

/// "warmgable:1:JOB-ID:REVISION:MARK"; empty without a plan that has a mark. Documented in docs/handbook/papers.md.
[[nodiscard]] QString print_code(const plan::Plan& plan);

struct PrintCode {
    QString job_id;  ///< empty: only the mark was typed
    std::int64_t revision = 0;
    QString mark;  ///< "3FA9-07B2"
};
/// Reads a scanned code, or a mark typed by hand: with or without its dash, in small letters, with spaces round it.
[[nodiscard]] std::optional<PrintCode> read_print_code(const QString& text);

enum class PrintState { unreadable, present, outdated, other_job };
struct PrintCheck {
    PrintState state = PrintState::unreadable;
    QString words;  ///< to show; never empty
};
/// `revision` and `mark` are those of the job now.
[[nodiscard]] PrintCheck check_print(const QString& text, const std::string& job_id, std::int64_t revision,
                                     const std::string& mark);

}  // namespace wg::ui
