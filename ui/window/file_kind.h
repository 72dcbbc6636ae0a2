#pragma once
// What a file is, told by what it holds and not by its name.

#include <string_view>

namespace wg::ui {

enum class FileKind {
    exchange,  ///< a job from another machine (docs/exchange-format.md)
    job,       ///< docs/job-format.md
    weather,   ///< EPW, TMY3, PVGIS or plain CSV
    prices,    ///< docs/price-format.md
    equipment,
    rules,
    unknown,
};

/// Of the whole file's bytes. Only what tells the kinds apart is looked at: the reader of the kind says what is wrong.
[[nodiscard]] FileKind kind_of_file(std::string_view bytes);

}  // namespace wg::ui
