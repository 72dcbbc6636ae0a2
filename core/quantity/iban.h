#pragma once
// Numbers of bank accounts as ISO 13616 writes them, and of banks by ISO 9362.

#include <string>
#include <string_view>

namespace wg {

/// Capitals without blanks: as it is kept.
[[nodiscard]] std::string bare_bank_number(std::string_view text);

/// ISO 13616-1: country, two check digits, 11 to 30 letters and digits; the number made of it leaves 1 when it is
/// divided by 97 (ISO/IEC 7064, MOD 97-10). The length each country has is not looked at. `bare` as `bare_bank_number`
/// gives it.
[[nodiscard]] bool is_iban(std::string_view bare) noexcept;
/// In groups of four, as people read it.
[[nodiscard]] std::string iban_in_groups(std::string_view bare);

/// ISO 9362: four letters or digits of the bank, two letters of the country, two of the place, three of the branch or
/// none. It has no check digits.
[[nodiscard]] bool is_bic(std::string_view bare) noexcept;

}  // namespace wg
