// Which column holds what: by the words above it, told in what the guess says.

#include <algorithm>
#include <unordered_set>

#include "core/parts/price_figures.h"
#include "core/parts/price_import.h"
#include "core/quantity/utf8.h"

namespace wg::parts {
namespace price_columns {

constexpr std::size_t rows_to_find_names_in = 20;
constexpr std::size_t fewest_names = 2;

/// Words of the trade for each field: English, German, Spanish; as `folded` leaves them.
const std::array<std::vector<std::string_view>, import_field_count>& known_words() {
    static const std::array<std::vector<std::string_view>, import_field_count> words = {{
        {"id",
         "item id",
         "item no",
         "item number",
         "item code",
         "article",
         "article no",
         "article number",
         "article id",
         "part no",
         "part number",
         "code",
         "key",
         "number",
         "no",
         "artikel",
         "artikelnummer",
         "artikelnr",
         "artikel nr",
         "art nr",
         "nummer",
         "nr",
         "teilenummer",
         "kurzel",
         "codigo",
         "codigo articulo",
         "codigo de articulo",
         "articulo",
         "referencia",
         "ref",
         "numero",
         "clave"},
        {"text",     "item",        "description", "item description",   "name",         "designation", "label",
         "title",    "product",     "bezeichnung", "artikelbezeichnung", "beschreibung", "benennung",   "kurztext",
         "langtext", "artikeltext", "ware",        "descripcion",        "denominacion", "nombre",      "texto",
         "concepto", "producto"},
        {"unit", "units", "unit of measure", "measure", "uom", "einheit", "mengeneinheit", "me", "eh", "unidad", "ud",
         "uds", "unidad de medida", "medida"},
        {"price", "unit price", "sales price", "selling price", "our price", "price per unit", "preis", "einzelpreis",
         "verkaufspreis", "vk", "vk preis", "ep", "stuckpreis", "precio", "precio unitario", "precio de venta",
         "precio venta", "pvp"},
        {"cost", "unit cost", "cost price", "purchase price", "buying price", "our cost", "kosten", "einkaufspreis",
         "einkauf", "ek", "ek preis", "einstandspreis", "coste", "costo", "coste unitario", "precio de compra",
         "precio compra", "precio de coste", "precio coste"},
        {"supplier price", "supplier s price", "list price", "catalogue price", "catalog price", "gross price",
         "listenpreis", "bruttopreis", "bruttolistenpreis", "katalogpreis", "lieferantenpreis", "tarifa",
         "precio de tarifa", "precio tarifa", "precio de lista", "precio de catalogo", "precio proveedor",
         "precio del proveedor", "precio bruto"},
        {"discount group", "discount class", "discount code", "rebate group", "rabattgruppe", "rabattklasse", "rg",
         "rabattgr", "grupo de descuento", "grupo descuento", "familia de descuento"},
        {"pack", "pack size", "packing", "package", "packaging unit", "pack quantity", "quantity per pack", "packung",
         "packungsgrosse", "packungseinheit", "verpackungseinheit", "vpe", "gebinde", "envase", "paquete",
         "unidades por envase", "unidades por paquete", "cantidad por envase", "embalaje"},
        {"waste", "waste percent", "cutting waste", "cutting allowance", "verschnitt", "verschnitt prozent", "merma",
         "desperdicio", "recorte"},
        {"supplier", "vendor", "wholesaler", "supplier name", "lieferant", "grosshandler", "handler", "proveedor",
         "distribuidor", "mayorista"},
        {"supplier number",
         "supplier s number",
         "supplier no",
         "supplier item number",
         "supplier article number",
         "supplier part number",
         "order number",
         "order no",
         "lieferantennummer",
         "lieferantenartikelnummer",
         "lieferanten artikelnummer",
         "lieferanten nr",
         "bestellnummer",
         "bestellnr",
         "bestell nr",
         "best nr",
         "referencia proveedor",
         "referencia del proveedor",
         "codigo proveedor",
         "codigo del proveedor",
         "numero de pedido"},
        {"tax class", "tax", "tax code", "vat", "vat class", "steuerklasse", "steuerschlussel", "steuer", "mwst",
         "mwst klasse", "clase de impuesto", "clase impuesto", "impuesto", "iva", "tipo de iva", "tipo iva"},
        {"from quantity",  "quantity from",   "from qty",    "qty from",       "minimum quantity", "min quantity",
         "min qty",        "quantity break",  "price break", "break quantity", "scale quantity",   "ab menge",
         "menge ab",       "staffelmenge",    "staffel",     "mindestmenge",   "preisstaffel",     "desde cantidad",
         "cantidad desde", "cantidad minima", "a partir de", "desde unidades"},
    }};
    return words;
}

/// Capital and accented letters of the three languages as plain small ones; what is no letter or digit parts words.
std::string folded(std::string_view text) {
    static constexpr std::pair<std::string_view, std::string_view> letters[] = {
        {"\xC3\xA4", "a"}, {"\xC3\x84", "a"}, {"\xC3\xA1", "a"}, {"\xC3\x81", "a"},  {"\xC3\xA9", "e"},
        {"\xC3\x89", "e"}, {"\xC3\xAD", "i"}, {"\xC3\x8D", "i"}, {"\xC3\xB6", "o"},  {"\xC3\x96", "o"},
        {"\xC3\xB3", "o"}, {"\xC3\x93", "o"}, {"\xC3\xBC", "u"}, {"\xC3\x9C", "u"},  {"\xC3\xBA", "u"},
        {"\xC3\x9A", "u"}, {"\xC3\xB1", "n"}, {"\xC3\x91", "n"}, {"\xC3\x9F", "ss"}, {"%", " percent "}};
    std::string out;
    while (!text.empty()) {
        std::string_view plain;
        std::size_t length = 1;
        const char c = text.front();
        const bool capital = c >= 'A' && c <= 'Z';
        const char small = capital ? static_cast<char>(c + 32) : c;
        for (const auto& [accented, letter] : letters) {
            if (!text.starts_with(accented)) continue;
            plain = letter;
            length = accented.size();
        }
        if (!plain.empty()) {
            out += plain;
        } else if ((small >= 'a' && small <= 'z') || (small >= '0' && small <= '9')) {
            out += small;
        } else if (!out.empty() && out.back() != ' ') {
            out += ' ';
        }
        text.remove_prefix(length);
    }
    std::string single;
    for (const char c : out)
        if (c != ' ' || (!single.empty() && single.back() != ' ')) single += c;
    while (!single.empty() && single.back() == ' ')
        single.pop_back();
    return single;
}

/// Without what a heading says beside its field: "price net in EUR" is a price.
std::string without_asides(const std::string& words, const std::string& currency) {
    const std::string code = folded(currency);
    std::string out;
    for (std::size_t at = 0; at < words.size();) {
        const std::size_t end = std::min(words.find(' ', at), words.size());
        const std::string word = words.substr(at, end - at);
        at = end + 1;
        static const std::vector<std::string_view> asides = {"in", "net", "netto", "neto", "en", "percent", "prozent"};
        if (word == code || std::find(asides.begin(), asides.end(), word) != asides.end()) continue;
        out += (out.empty() ? "" : " ") + word;
    }
    return out;
}

std::optional<std::size_t> field_of(const std::string& words) {
    for (std::size_t field = 0; field < import_field_count; ++field) {
        const std::vector<std::string_view>& known = known_words()[field];
        if (std::find(known.begin(), known.end(), words) != known.end()) return field;
    }
    return std::nullopt;
}

/// What the row names, the first column of two that name the same.
ImportMapping named_by(const std::vector<std::string>& row, const std::string& currency) {
    ImportMapping out;
    for (std::size_t column = 0; column < row.size(); ++column) {
        const std::string words = folded(row[column].size() > 200 ? std::string() : row[column]);
        std::optional<std::size_t> field = field_of(words);
        if (!field) field = field_of(without_asides(words, currency));
        if (field && out.column[*field] < 0) out.column[*field] = static_cast<int>(column);
    }
    return out;
}

std::size_t named_count(const ImportMapping& mapping) {
    return static_cast<std::size_t>(
        std::count_if(mapping.column.begin(), mapping.column.end(), [](int column) { return column >= 0; }));
}

/// A column called "number" may be the firm's or the supplier's: what the list holds decides.
void tell_numbers_apart(const tables::CsvTable& table, const PriceList& into, ImportGuess& guess) {
    ImportMapping& mapping = guess.mapping;
    const int column = mapping.of(ImportField::id);
    if (column < 0 || mapping.of(ImportField::supplier_number) >= 0) return;
    std::unordered_set<std::string_view> ids, numbers;
    for (const PriceItem& item : into.items) {
        ids.insert(item.id);
        if (!item.supplier_number.empty()) numbers.insert(item.supplier_number);
    }
    std::size_t as_id = 0, as_number = 0;
    for (std::size_t row = static_cast<std::size_t>(mapping.names_row + 1); row < table.rows.size(); ++row) {
        if (static_cast<std::size_t>(column) >= table.rows[row].size()) continue;
        const std::string_view cell = without_outer_spaces(table.rows[row][static_cast<std::size_t>(column)]);
        as_id += ids.count(cell);
        as_number += numbers.count(cell);
    }
    if (as_number <= as_id) return;
    mapping.set(ImportField::id, -1);
    mapping.set(ImportField::supplier_number, column);
    guess.notes.push_back("Column " + std::to_string(column + 1) +
                          " holds the supplier's numbers: more of the list's items have such a number than such an id");
}

constexpr std::array<ImportField, 6> figure_fields = {ImportField::price,          ImportField::cost,
                                                      ImportField::supplier_price, ImportField::pack,
                                                      ImportField::waste_percent,  ImportField::from_quantity};

/// The figure without what may stand beside it, whatever its currency.
std::string_view bare_figure(std::string_view text) {
    const auto belongs = [](char c) { return (c >= '0' && c <= '9') || c == '-' || c == '.' || c == ','; };
    while (!text.empty() && !belongs(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && !(text.back() >= '0' && text.back() <= '9'))
        text.remove_suffix(1);
    return text;
}

struct Shown {
    int line = 0;
    std::string figure;
    void take(int at, std::string_view text) {
        if (line != 0) return;
        line = at;
        figure = for_message(text, 24);
    }
    [[nodiscard]] std::string words() const { return "line " + std::to_string(line) + ", '" + figure + "'"; }
};

}  // namespace price_columns

DecimalSign decimal_sign_of(const tables::CsvTable& table, const ImportMapping& mapping,
                            std::vector<std::string>& notes) {
    using namespace price_columns;
    Shown point, comma, two_ways;
    for (std::size_t row = static_cast<std::size_t>(std::max(mapping.names_row, -1) + 1); row < table.rows.size();
         ++row) {
        for (const ImportField field : figure_fields) {
            const int column = mapping.of(field);
            if (column < 0 || static_cast<std::size_t>(column) >= table.rows[row].size()) continue;
            const std::string_view figure = bare_figure(table.rows[row][static_cast<std::size_t>(column)]);
            const DecimalSign sign = sign_shown_by(figure);
            if (sign == DecimalSign::point) {
                point.take(table.line_of_row[row], figure);
            } else if (sign == DecimalSign::comma) {
                comma.take(table.line_of_row[row], figure);
            } else if (reads_two_ways(figure)) {
                two_ways.take(table.line_of_row[row], figure);
            }
        }
    }
    if (point.line != 0 && comma.line != 0) {
        notes.push_back("Decimals are marked by a point (" + point.words() + ") and by a comma (" + comma.words() +
                        "): figures that can be read in one way only are read so");
        return DecimalSign::undecided;
    }
    if (point.line != 0) {
        notes.push_back("A point marks the decimals: " + point.words());
        return DecimalSign::point;
    }
    if (comma.line != 0) {
        notes.push_back("A comma marks the decimals: " + comma.words());
        return DecimalSign::comma;
    }
    if (two_ways.line != 0)
        notes.push_back("Nothing tells whether point or comma marks the decimals (" + two_ways.words() + "): choose");
    return DecimalSign::undecided;
}

ImportGuess guess_mapping(const tables::CsvTable& table, const PriceList& into) {
    using namespace price_columns;
    ImportGuess out;
    std::size_t most = 0;
    for (std::size_t row = 0; row < std::min(table.rows.size(), rows_to_find_names_in); ++row) {
        ImportMapping named = named_by(table.rows[row], into.currency);
        const std::size_t count = named_count(named);
        if (count < fewest_names || count <= most) continue;
        most = count;
        named.names_row = static_cast<int>(row);
        out.mapping = named;
    }
    if (most == 0) {
        out.notes.emplace_back("No line names the columns in words that are known: choose what each holds");
        return out;
    }
    if (out.mapping.names_row > 0)
        out.notes.push_back("Names of the columns stand in line " +
                            std::to_string(table.line_of_row[static_cast<std::size_t>(out.mapping.names_row)]) +
                            "; what stands above is passed over");
    tell_numbers_apart(table, into, out);
    out.mapping.decimal = decimal_sign_of(table, out.mapping, out.notes);
    return out;
}

const char* column_name(ImportField field) noexcept {
    static constexpr std::array<const char*, import_field_count> names = {
        "id",   "text",          "unit",     "price",           "cost",      "supplier_price", "discount_group",
        "pack", "waste_percent", "supplier", "supplier_number", "tax_class", "from_quantity"};
    return names[static_cast<std::size_t>(field)];
}

}  // namespace wg::parts
