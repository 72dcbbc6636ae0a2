#include "ui/offer/firm_settings.h"

#include <QPixmap>
#include <QPixmapCache>

#include "core/quantity/base64.h"
#include "core/quantity/iban.h"
#include "core/quantity/sha256.h"
#include "ui/common/format.h"
#include "ui/documents/logo.h"

namespace wg::ui {
namespace {

constexpr std::size_t hash_length = 64;

/// Papers are laid out many times a minute: decoded once for each logo.
QImage drawn_logo(store::Store& store) {
    const auto file = read_logo(store);
    if (!file.ok() || file.value().isEmpty()) return {};
    const QString key = QStringLiteral("firm logo ") + qs(sha256_hex(file.value().toStdString()));
    QPixmap kept;
    if (QPixmapCache::find(key, &kept)) return kept.toImage().convertToFormat(QImage::Format_RGB32);
    const auto logo = logo_from_bytes(file.value());
    if (!logo.ok()) return {};
    QPixmapCache::insert(key, QPixmap::fromImage(logo.value()));
    return logo.value();
}

}  // namespace

Firm read_firm(store::Store* store) {
    Firm firm;
    if (store == nullptr) return firm;
    const auto read = [store](const char* key) {
        const auto value = store->setting(key, "");
        return value.ok() ? qs(value.value()) : QString();
    };
    firm.name = read(firm_name_key);
    firm.street = read(firm_street_key);
    firm.town = read(firm_town_key);
    firm.phone = read(firm_phone_key);
    firm.email = read(firm_email_key);
    firm.letter = read(firm_letter_key);
    firm.supplier_words = read(firm_supplier_words_key);
    firm.vat_id = read(firm_vat_id_key);
    firm.register_entry = read(firm_register_key);
    firm.bank = read(firm_bank_key);
    firm.iban = read(firm_iban_key);
    firm.bic = read(firm_bic_key);
    // A paper bears no account that money would be lost on.
    if (!firm.iban.isEmpty() && !is_iban(firm.iban.toStdString())) firm.iban.clear();
    if (!firm.bic.isEmpty() && !is_bic(firm.bic.toStdString())) firm.bic.clear();
    firm.logo = drawn_logo(*store);
    return firm;
}

std::optional<Problem> refuse_bank(const QString& iban, const QString& bic) {
    const std::string number = bare_bank_number(iban.toStdString());
    if (!number.empty() && !is_iban(number))
        return Problem{"IBAN", "is not right: its check digits do not fit it",
                       "Compare it with a statement of the bank"};
    const std::string bank = bare_bank_number(bic.toStdString());
    if (!bank.empty() && !is_bic(bank))
        return Problem{"BIC", "has 8 or 11 letters and digits, the fifth and sixth a country's",
                       "Compare it with a statement of the bank, or leave it empty"};
    return std::nullopt;
}

Result<bool> write_firm(store::Store& store, const Firm& firm) {
    if (const auto problem = refuse_bank(firm.iban, firm.bic)) return *problem;
    const auto bare = [](const QString& text) { return qs(bare_bank_number(text.toStdString())); };
    const std::pair<const char*, QString> entries[] = {{firm_name_key, firm.name},
                                                       {firm_street_key, firm.street},
                                                       {firm_town_key, firm.town},
                                                       {firm_phone_key, firm.phone},
                                                       {firm_email_key, firm.email},
                                                       {firm_letter_key, firm.letter},
                                                       {firm_supplier_words_key, firm.supplier_words},
                                                       {firm_vat_id_key, firm.vat_id},
                                                       {firm_register_key, firm.register_entry},
                                                       {firm_bank_key, firm.bank},
                                                       {firm_iban_key, bare(firm.iban)},
                                                       {firm_bic_key, bare(firm.bic)}};
    for (const auto& [key, value] : entries) {
        auto written = store.set_setting(key, value.trimmed().toStdString());
        if (!written.ok()) return written;
    }
    return true;
}

Result<QByteArray> read_logo(store::Store& store) {
    const auto kept = store.setting(firm_logo_key, "");
    if (!kept.ok()) return kept.problems();
    if (kept.value().empty()) return QByteArray();
    const Problem damaged{"firm's logo", "is damaged: its bytes no longer have their hash", "Choose its file again"};
    const std::string& text = kept.value();
    if (text.size() <= hash_length || text[hash_length] != ' ') return damaged;
    const auto bytes = from_base64(std::string_view(text).substr(hash_length + 1));
    if (!bytes || sha256_hex(*bytes) != text.substr(0, hash_length)) return damaged;
    return QByteArray::fromStdString(*bytes);
}

Result<bool> write_logo(store::Store& store, const QByteArray& file) {
    if (file.isEmpty()) return store.set_setting(firm_logo_key, "");
    const auto logo = logo_from_bytes(file);
    if (!logo.ok()) return logo.problems();
    const std::string bytes = file.toStdString();
    return store.set_setting(firm_logo_key, sha256_hex(bytes) + ' ' + to_base64(bytes));
}

Result<NumberSettings> read_numbers(store::Store& store) {
    const store::NumberRanges ranges(store);
    NumberSettings out;
    for (const store::NumberKind kind : store::number_kinds) {
        const auto pattern = ranges.pattern(kind);
        if (!pattern.ok()) return pattern.problems();
        out.patterns[kind] = pattern.value();
    }
    const auto suffix = ranges.suffix();
    if (!suffix.ok()) return suffix.problems();
    out.suffix = suffix.value();
    return out;
}

Result<bool> write_numbers(store::Store& store, const NumberSettings& numbers) {
    for (const auto& [kind, pattern] : numbers.patterns)
        if (const auto problem = store::refuse_pattern(pattern)) return *problem;
    if (const auto problem = store::refuse_suffix(numbers.suffix)) return *problem;
    store::NumberRanges ranges(store);
    const auto before = read_numbers(store);
    for (const auto& [kind, pattern] : numbers.patterns) {
        // What nobody changed stays the program's own.
        if (before.ok() && before.value().patterns.at(kind) == pattern) continue;
        auto written = ranges.set_pattern(kind, pattern);
        if (!written.ok()) return written;
    }
    return ranges.set_suffix(numbers.suffix);
}

}  // namespace wg::ui
