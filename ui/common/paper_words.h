#pragma once
// The language of a paper, which need not be that of the window: words are looked up in the language of the paper that
// is being laid out or painted on this thread. English is the source text itself, and what screens show.

#include <QString>

namespace wg::ui {

enum class Language { english, spanish, german };

/// While it lives, this thread lays out and paints in that language.
class PaperLanguage {
   public:
    explicit PaperLanguage(Language language) noexcept;
    ~PaperLanguage();
    PaperLanguage(const PaperLanguage&) = delete;
    PaperLanguage& operator=(const PaperLanguage&) = delete;
    [[nodiscard]] static Language now() noexcept;

   private:
    Language before_;
};

/// Marks a text in a table for tests/tools/update_translations.sh; say() it where it is printed.
constexpr const char* marked(const char* english) {
    return english;
}

/// The text in the language of the paper; English where it has no translation.
[[nodiscard]] QString say(const char* english);
[[nodiscard]] QString say(const QString& english);
/// Whether the language of the paper has this text. English has every one.
[[nodiscard]] bool can_say(const QString& english);

}  // namespace wg::ui
