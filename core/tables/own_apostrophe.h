#pragma once
// Texts that begin with an apostrophe of their own, so that taking the guard of csv_writer.h away is never taking away
// what was the text's.

#include <string>
#include <string_view>

namespace wg::tables {

/// A text that begins with an apostrophe and then a formula gets one more.
[[nodiscard]] std::string guarded_once_more(std::string_view text);
/// The text as it was before that and before `write_csv` guarded it.
[[nodiscard]] std::string_view without_one_guard(std::string_view cell);

}  // namespace wg::tables
