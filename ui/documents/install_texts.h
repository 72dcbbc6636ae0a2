#pragma once
// The texts of the install sheet's steps, as data. Which lines apply and what stands in the braces: install_steps.cpp.
// Every text is marked for translation (ui/common/paper_words.h).

#include <vector>

#include "ui/documents/install_steps.h"

namespace wg::ui::paper {

/// Who may do a step, where that is not everybody on site.
enum class Who { anybody, two_persons, refrigerants, electrician };

struct StepText {
    Step::Kind kind = Step::Kind::work;
    Who who = Who::anybody;
    const char* text = "";
    const char* why = "";  ///< reason, or what goes wrong
    bool (*applies)(const StepFacts&) = [](const StepFacts&) { return true; };
};

// In working order.
[[nodiscard]] const std::vector<StepText>& texts_of_access_and_place();
[[nodiscard]] const std::vector<StepText>& texts_of_fixing();  ///< by kind of fixing, up to the plate that hangs
[[nodiscard]] const std::vector<StepText>& texts_of_lines_and_water();
[[nodiscard]] const std::vector<StepText>& texts_of_tests_and_start();
/// All of the above.
[[nodiscard]] std::vector<StepText> step_texts();

struct ToolText {
    const char* place = "";  ///< in the van
    const char* text = "";
    bool (*applies)(const StepFacts&) = [](const StepFacts&) { return true; };
};
[[nodiscard]] const std::vector<ToolText>& tool_texts();

}  // namespace wg::ui::paper
