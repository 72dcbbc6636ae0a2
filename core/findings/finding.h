#pragma once
// What stands against a plan, and how a figure was reached. Both are plain values which every room can return
// and every screen and document can show.

#include <string>
#include <utility>
#include <vector>

namespace wg {

enum class Severity {
    note,     ///< worth knowing; nothing needs to change
    caution,  ///< may be done, but somebody has to decide or check
    stop,     ///< the plan must not be issued as it is
};

/// "stop", "caution", "note".
[[nodiscard]] const char* word(Severity severity) noexcept;

/// Where on the way from visit to aftercare a finding is mended.
enum class Stage { visit, layout, yield, offer, fitting, aftercare };
[[nodiscard]] const char* word(Stage stage) noexcept;

struct Finding {
    std::string code;  ///< stable name, e.g. "collector.tilt-outside-range"; same cause, same code
    Severity severity = Severity::note;
    Stage stage = Stage::layout;
    std::string place_id;  ///< UUID of the element (surface, obstacle, spot, placement ...); empty: the whole job
    std::string place;     ///< the element's label, for people
    std::string message;   ///< what is wrong, in words with figures
    std::string remedy;    ///< what would mend it; may be empty for notes
    std::string rule;      ///< the rule that asks for it, e.g. "Equipment data of Marl 21: tilt 15 to 90 deg"
    std::string source;    ///< where the rule comes from; "common practice, no published source" where so
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// How a figure was reached, for 'show working'.
struct Working {
    std::string key;                                          ///< stable name, e.g. "fixing.worst"
    std::string title;                                        ///< e.g. "Worst fixing point: pull-out"
    std::string formula;                                      ///< in the source's symbols
    std::vector<std::pair<std::string, std::string>> inputs;  ///< name, value with unit
    std::string result;                                       ///< value with unit
    std::string source;                                       ///< standard, author and year, or equipment data
    bool assumed = false;                                     ///< true when an input was assumed, not measured
    friend bool operator==(const Working&, const Working&) = default;
};

/// Worst first, then by stage, code, place: a stable order for lists and prints.
void sort_findings(std::vector<Finding>& findings);

[[nodiscard]] bool has_stop(const std::vector<Finding>& findings) noexcept;

}  // namespace wg
