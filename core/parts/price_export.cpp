#include <algorithm>
#include <charconv>

#include "core/parts/price_cells.h"
#include "core/parts/price_entry.h"
#include "core/parts/price_import.h"
#include "core/tables/csv_writer.h"

namespace wg::parts {
namespace price_export {

/// The shortest digits that are the same number, without an exponent.
std::string exact(double value) {
    char out[400];
    const auto [end, error] = std::to_chars(out, out + sizeof out, value, std::chars_format::fixed);
    return error == std::errc() ? std::string(out, end) : std::string();
}

std::string amount(const std::optional<Money>& money) {
    if (!money) return {};
    std::string out = std::to_string(money->minor);
    const std::size_t sign = money->minor < 0 ? 1 : 0;
    if (out.size() < 3 + sign) out.insert(sign, 3 + sign - out.size(), '0');
    return out.insert(out.size() - 2, 1, '.');
}

}  // namespace price_export

using namespace price_export;

std::string field_text(const PriceItem& item, ImportField field) {
    switch (field) {
        case ImportField::id: return item.id;
        case ImportField::text: return item.text;
        case ImportField::unit: return item.unit;
        case ImportField::price: return amount(item.price);
        // Where it follows from the supplier's price it is not told twice: one of the two may be changed.
        case ImportField::cost: return item.supplier_price ? std::string() : amount(item.cost);
        case ImportField::supplier_price: return amount(item.supplier_price);
        case ImportField::discount_group: return item.discount_group;
        case ImportField::pack: return item.pack > 0.0 ? exact(item.pack) : std::string();
        case ImportField::waste_percent: return item.waste_percent ? exact(*item.waste_percent) : std::string();
        case ImportField::supplier: return item.supplier;
        case ImportField::supplier_number: return item.supplier_number;
        case ImportField::tax_class: return item.tax_class;
        case ImportField::from_quantity: return quantity_prices_text(item.quantity_prices);
    }
    return {};
}

std::string items_to_csv(const PriceList& list) {
    std::vector<std::vector<std::string>> rows(1);
    for (std::size_t i = 0; i < import_field_count; ++i)
        rows.front().emplace_back(column_name(static_cast<ImportField>(i)));
    for (const PriceItem& item : list.items) {
        std::vector<std::string>& row = rows.emplace_back();
        for (std::size_t i = 0; i < import_field_count; ++i) {
            const auto field = static_cast<ImportField>(i);
            row.push_back(field == ImportField::from_quantity ? std::string() : field_text(item, field));
        }
        for (const QuantityPrice& step : item.quantity_prices) {
            std::vector<std::string> of_many(import_field_count);
            of_many[static_cast<std::size_t>(ImportField::id)] = item.id;
            of_many[static_cast<std::size_t>(ImportField::price)] = amount(step.price);
            of_many[static_cast<std::size_t>(ImportField::from_quantity)] = exact(step.from);
            rows.push_back(std::move(of_many));
        }
    }
    return tables::write_csv(rows);
}

}  // namespace wg::parts
