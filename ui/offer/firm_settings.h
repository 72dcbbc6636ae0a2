#pragma once
// The firm's block, logo and words on papers, and the patterns of its numbers, kept in the store.

#include <QByteArray>
#include <map>
#include <optional>
#include <string>

#include "core/store/number_ranges.h"
#include "core/store/store.h"
#include "ui/documents/documents.h"

namespace wg::ui {

// Keys of the settings.
inline constexpr const char* firm_name_key = "firm.name";
inline constexpr const char* firm_street_key = "firm.street";
inline constexpr const char* firm_town_key = "firm.town";
inline constexpr const char* firm_phone_key = "firm.phone";
inline constexpr const char* firm_email_key = "firm.email";
inline constexpr const char* firm_letter_key = "firm.letter";
inline constexpr const char* firm_supplier_words_key = "firm.supplier_words";
inline constexpr const char* firm_vat_id_key = "firm.vat_id";
inline constexpr const char* firm_register_key = "firm.register_entry";
inline constexpr const char* firm_bank_key = "firm.bank";
inline constexpr const char* firm_iban_key = "firm.iban";
inline constexpr const char* firm_bic_key = "firm.bic";
/// SHA-256 of the file and its bytes in Base64, with a space between them; empty: no logo.
inline constexpr const char* firm_logo_key = "firm.logo";

/// Empty where nothing is set or the store cannot be read; null store: empty. A logo that lost its hash, or that papers
/// cannot draw, is left out.
[[nodiscard]] Firm read_firm(store::Store* store);
/// An account number or bank that cannot be right; nothing: both can be, or are empty. Blanks and small letters are
/// fine.
[[nodiscard]] std::optional<Problem> refuse_bank(const QString& iban, const QString& bic);
/// All but the logo. Refused, and nothing is written: what `refuse_bank` refuses.
[[nodiscard]] Result<bool> write_firm(store::Store& store, const Firm& firm);

/// The file of the logo as it was chosen; empty: none. Refused: bytes that lost their hash.
[[nodiscard]] Result<QByteArray> read_logo(store::Store& store);
/// Refused: what `logo_from_bytes` refuses; empty: no logo from now on.
[[nodiscard]] Result<bool> write_logo(store::Store& store, const QByteArray& file);

struct NumberSettings {
    std::map<store::NumberKind, std::string> patterns;
    std::string suffix;
};
[[nodiscard]] Result<NumberSettings> read_numbers(store::Store& store);
/// All or none.
[[nodiscard]] Result<bool> write_numbers(store::Store& store, const NumberSettings& numbers);

}  // namespace wg::ui
