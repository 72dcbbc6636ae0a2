// Which heading means which column: words of the trade's offices in three languages.

#include <algorithm>
#include <string>

#include "core/customers/import.h"

namespace wg::customers {
namespace {

struct HeadingWord {
    Column column;
    const char* word;
};

// Compared without capitals, punctuation and letters outside ASCII.
constexpr HeadingWord heading_words[] = {
    {Column::number, "customer number"},
    {Column::number, "customer no"},
    {Column::number, "client number"},
    {Column::number, "number"},
    {Column::number, "Kundennummer"},
    {Column::number, "Kundennr"},
    {Column::number, "Kunden-Nr"},
    {Column::number, "Nummer"},
    {Column::number, "número de cliente"},
    {Column::number, "n.º cliente"},
    {Column::number, "código cliente"},
    {Column::number, "código"},
    {Column::number, "número"},
    {Column::name, "name"},
    {Column::name, "customer"},
    {Column::name, "customer name"},
    {Column::name, "client"},
    {Column::name, "company"},
    {Column::name, "last name"},
    {Column::name, "surname"},
    {Column::name, "Kunde"},
    {Column::name, "Kundenname"},
    {Column::name, "Firma"},
    {Column::name, "Nachname"},
    {Column::name, "cliente"},
    {Column::name, "empresa"},
    {Column::name, "razón social"},
    {Column::name, "apellidos"},
    {Column::name, "nombre y apellidos"},
    {Column::name, "nombre o razón social"},
    {Column::first_name, "first name"},
    {Column::first_name, "given name"},
    {Column::first_name, "Vorname"},
    {Column::first_name, "nombre"},
    {Column::tax_id, "tax id"},
    {Column::tax_id, "tax number"},
    {Column::tax_id, "vat number"},
    {Column::tax_id, "vat id"},
    {Column::tax_id, "Steuernummer"},
    {Column::tax_id, "USt-IdNr"},
    {Column::tax_id, "USt-ID"},
    {Column::tax_id, "UID"},
    {Column::tax_id, "NIF"},
    {Column::tax_id, "CIF"},
    {Column::tax_id, "NIF/CIF"},
    {Column::tax_id, "DNI"},
    {Column::notes, "notes"},
    {Column::notes, "note"},
    {Column::notes, "remarks"},
    {Column::notes, "comment"},
    {Column::notes, "Notiz"},
    {Column::notes, "Notizen"},
    {Column::notes, "Bemerkung"},
    {Column::notes, "Bemerkungen"},
    {Column::notes, "notas"},
    {Column::notes, "observaciones"},
    {Column::bill_street, "street"},
    {Column::bill_street, "address"},
    {Column::bill_street, "billing street"},
    {Column::bill_street, "billing address"},
    {Column::bill_street, "Straße"},
    {Column::bill_street, "Strasse"},
    {Column::bill_street, "Anschrift"},
    {Column::bill_street, "Adresse"},
    {Column::bill_street, "Rechnungsanschrift"},
    {Column::bill_street, "calle"},
    {Column::bill_street, "dirección"},
    {Column::bill_street, "domicilio"},
    {Column::bill_street, "dirección de facturación"},
    {Column::bill_postcode, "postcode"},
    {Column::bill_postcode, "post code"},
    {Column::bill_postcode, "postal code"},
    {Column::bill_postcode, "zip"},
    {Column::bill_postcode, "zip code"},
    {Column::bill_postcode, "PLZ"},
    {Column::bill_postcode, "Postleitzahl"},
    {Column::bill_postcode, "código postal"},
    {Column::bill_postcode, "CP"},
    {Column::bill_town, "town"},
    {Column::bill_town, "city"},
    {Column::bill_town, "Ort"},
    {Column::bill_town, "Stadt"},
    {Column::bill_town, "Wohnort"},
    {Column::bill_town, "localidad"},
    {Column::bill_town, "población"},
    {Column::bill_town, "ciudad"},
    {Column::bill_town, "municipio"},
    {Column::site_street, "site street"},
    {Column::site_street, "site address"},
    {Column::site_street, "installation address"},
    {Column::site_street, "Objektanschrift"},
    {Column::site_street, "Objekt Straße"},
    {Column::site_street, "Baustelle"},
    {Column::site_street, "dirección de obra"},
    {Column::site_street, "dirección de instalación"},
    {Column::site_postcode, "site postcode"},
    {Column::site_postcode, "Objekt PLZ"},
    {Column::site_postcode, "código postal de obra"},
    {Column::site_town, "site town"},
    {Column::site_town, "site city"},
    {Column::site_town, "Objekt Ort"},
    {Column::site_town, "localidad de obra"},
    {Column::contact_name, "contact"},
    {Column::contact_name, "contact name"},
    {Column::contact_name, "contact person"},
    {Column::contact_name, "Ansprechpartner"},
    {Column::contact_name, "Kontakt"},
    {Column::contact_name, "contacto"},
    {Column::contact_name, "persona de contacto"},
    {Column::contact_role, "role"},
    {Column::contact_role, "position"},
    {Column::contact_role, "Funktion"},
    {Column::contact_role, "cargo"},
    {Column::phone, "phone"},
    {Column::phone, "phone number"},
    {Column::phone, "telephone"},
    {Column::phone, "mobile"},
    {Column::phone, "Telefon"},
    {Column::phone, "Tel"},
    {Column::phone, "Telefonnummer"},
    {Column::phone, "Mobil"},
    {Column::phone, "Handy"},
    {Column::phone, "teléfono"},
    {Column::phone, "móvil"},
    {Column::email, "email"},
    {Column::email, "e-mail address"},
    {Column::email, "mail"},
    {Column::email, "E-Mail-Adresse"},
    {Column::email, "correo"},
    {Column::email, "correo electrónico"},
    {Column::former_numbers, "former numbers"},
    {Column::former_numbers, "former number"},
    {Column::former_numbers, "frühere Nummern"},
    {Column::former_numbers, "frühere Kundennummern"},
    {Column::former_numbers, "números anteriores"},
};

std::string heading_key(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c >= 'A' && c <= 'Z') out += static_cast<char>(c - 'A' + 'a');
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) out += c;
    }
    return out;
}

/// The text with the accented letters of the three languages as plain ones: headings are written either way.
std::string without_accents(std::string text) {
    constexpr std::pair<std::string_view, std::string_view> plain[] = {
        {"á", "a"}, {"é", "e"}, {"í", "i"}, {"ó", "o"}, {"ú", "u"}, {"ü", "u"}, {"ö", "o"},
        {"ä", "a"}, {"ñ", "n"}, {"Á", "a"}, {"É", "e"}, {"Í", "i"}, {"Ó", "o"}, {"Ú", "u"},
        {"Ü", "u"}, {"Ö", "o"}, {"Ä", "a"}, {"Ñ", "n"}, {"ß", "ss"}};
    for (const auto& [from, to] : plain) {
        for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
            text.replace(at, from.size(), to);
    }
    return text;
}

Column column_of_heading(const std::string& heading) {
    const std::string key = heading_key(without_accents(heading));
    if (key.empty()) return Column::ignored;
    for (const HeadingWord& one : heading_words) {
        if (heading_key(without_accents(one.word)) == key) return one.column;
    }
    return Column::ignored;
}

}  // namespace

Mapping guess_mapping(const tables::CsvTable& table) {
    Mapping out;
    std::size_t width = 0;
    for (const auto& row : table.rows)
        width = std::max(width, row.size());
    out.columns.assign(width, Column::ignored);
    if (table.rows.empty()) return out;
    const std::vector<std::string>& first = table.rows.front();
    bool any = false;
    for (std::size_t i = 0; i < first.size(); ++i) {
        const Column column = column_of_heading(first[i]);
        if (column == Column::ignored) continue;
        any = true;
        if (std::find(out.columns.begin(), out.columns.end(), column) == out.columns.end()) out.columns[i] = column;
    }
    // "nombre" with no surname beside it is the whole name.
    const auto name = std::find(out.columns.begin(), out.columns.end(), Column::name);
    const auto first_name = std::find(out.columns.begin(), out.columns.end(), Column::first_name);
    if (name == out.columns.end() && first_name != out.columns.end()) *first_name = Column::name;
    out.headings = any;
    return out;
}

}  // namespace wg::customers
