#include "core/quantity/iban.h"

#include <algorithm>

namespace wg {
namespace {

constexpr std::size_t least_iban = 15;
constexpr std::size_t most_iban = 34;

bool is_letter(char c) {
    return c >= 'A' && c <= 'Z';
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_either(char c) {
    return is_letter(c) || is_digit(c);
}

}  // namespace

std::string bare_bank_number(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == ' ' || c == '\t') continue;
        out += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return out;
}

bool is_iban(std::string_view bare) noexcept {
    if (bare.size() < least_iban || bare.size() > most_iban) return false;
    if (!is_letter(bare[0]) || !is_letter(bare[1]) || !is_digit(bare[2]) || !is_digit(bare[3])) return false;
    if (!std::all_of(bare.begin(), bare.end(), is_either)) return false;
    // Country and check digits go to the end; a letter counts as two digits, A as 10.
    int rest = 0;
    for (std::size_t i = 0; i < bare.size(); ++i) {
        const char c = bare[(i + 4) % bare.size()];
        rest = is_digit(c) ? (rest * 10 + (c - '0')) % 97 : (rest * 100 + (c - 'A' + 10)) % 97;
    }
    return rest == 1;
}

std::string iban_in_groups(std::string_view bare) {
    std::string out;
    for (std::size_t i = 0; i < bare.size(); ++i) {
        if (i > 0 && i % 4 == 0) out += ' ';
        out += bare[i];
    }
    return out;
}

bool is_bic(std::string_view bare) noexcept {
    if (bare.size() != 8 && bare.size() != 11) return false;
    return is_letter(bare[4]) && is_letter(bare[5]) && std::all_of(bare.begin(), bare.end(), is_either);
}

}  // namespace wg
