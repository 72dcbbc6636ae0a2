#pragma once
// The texts of the install sheet's steps, as data. Which lines apply and what stands in the braces: install_steps.cpp.

#include <vector>

#include "ui/documents/install_steps.h"

namespace wg::ui::paper {

struct StepText {
    Step::Kind kind = Step::Kind::work;
    const char16_t* text = u"";
    const char16_t* why = u"";  ///< reason, or what goes wrong
    bool (*applies)(const StepFacts&) = [](const StepFacts&) { return true; };
};

/// In working order.
[[nodiscard]] const std::vector<StepText>& step_texts();

struct ToolText {
    const char16_t* text = u"";
    bool (*applies)(const StepFacts&) = [](const StepFacts&) { return true; };
};
[[nodiscard]] const std::vector<ToolText>& tool_texts();

}  // namespace wg::ui::paper
