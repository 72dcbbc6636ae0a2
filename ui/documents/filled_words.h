#pragma once
// What the computing rooms say comes with figures and names filled in. On a paper in another language it is told by
// its pattern: figures and names are taken out, the pattern is looked up, they are put back.

#include <QString>
#include <string>
#include <vector>

namespace wg::ui::paper {

/// Patterns of core's texts that can stand on a paper in another language, with %1, %2 ... in the English order.
[[nodiscard]] const std::vector<const char*>& core_phrases();

/// Those of them that a quote tells a client (core_phrases_offer.cpp).
[[nodiscard]] const std::vector<const char*>& offer_phrases();

/// The text in the language of the paper. Figures get that language's decimal sign. A text without a pattern stays
/// English, in quotes, and says so.
[[nodiscard]] QString say_filled(const std::string& english);
/// The same for what is mostly a name of the job or of the catalogue: as it stands when no pattern is its own.
[[nodiscard]] QString say_name(const std::string& english);
/// "lower (from corner 3)" of drawings.h.
[[nodiscard]] QString edge_words(const QString& english);

}  // namespace wg::ui::paper
