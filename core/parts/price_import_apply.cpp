// What a table would change in a list, and the list with it.

#include <algorithm>
#include <string_view>
#include <unordered_set>

#include "core/equipment/fields.h"
#include "core/parts/price_cells.h"
#include "core/parts/price_import.h"
#include "core/quantity/text.h"

namespace wg::parts {

bool names_work(const PriceList& list, std::string_view id) {
    return std::any_of(list.tasks.begin(), list.tasks.end(), [id](const auto& task) { return task.id == id; });
}

std::vector<ImportField> changed_fields(const PriceItem& old, const PriceItem& now) {
    std::vector<ImportField> out;
    const auto differs = [&out](ImportField field, bool yes) {
        if (yes) out.push_back(field);
    };
    differs(ImportField::text, now.text != old.text);
    differs(ImportField::unit, now.unit != old.unit);
    differs(ImportField::price, now.price != old.price);
    differs(ImportField::cost, now.cost != old.cost);
    differs(ImportField::supplier_price, now.supplier_price != old.supplier_price);
    differs(ImportField::discount_group, now.discount_group != old.discount_group);
    differs(ImportField::pack, now.pack != old.pack);
    differs(ImportField::waste_percent, now.waste_percent != old.waste_percent);
    differs(ImportField::supplier, now.supplier != old.supplier);
    differs(ImportField::supplier_number, now.supplier_number != old.supplier_number);
    differs(ImportField::tax_class, now.tax_class != old.tax_class);
    differs(ImportField::from_quantity, now.quantity_prices != old.quantity_prices);
    return out;
}

Result<PriceList> apply_import(const ImportPreview& preview, const PriceList& into, const ImportChoice& choice) {
    if (preview.wrong_lines > 0 && !choice.leave_out_wrong_lines)
        return Problem{"The table",
                       "has " + counted(static_cast<long>(preview.wrong_lines), "line", "lines") + " with problems",
                       "Correct them in the file, or choose to leave them out"};
    if (choice.remove_gone && preview.nameless_lines > 0)
        return Problem{"The table",
                       "has " + counted(static_cast<long>(preview.nameless_lines), "line that does", "lines that do") +
                           " not tell their item, which may be one that would be removed",
                       "Correct them in the file, or keep items that are not in it"};
    const Problem other_list{"The price list", "is not the one that the preview was made for", "Read the table again"};
    PriceList out = into;
    std::unordered_set<std::string_view> ids;
    for (const PriceItem& item : into.items)
        ids.insert(item.id);
    for (const ImportRow& row : preview.rows) {
        if (!row.in_list) {
            if (ids.count(row.item.id) != 0 || names_work(into, row.item.id)) return other_list;
            if (choice.add_new) out.items.push_back(row.item);
            continue;
        }
        if (*row.in_list >= into.items.size() || into.items[*row.in_list].id != row.item.id) return other_list;
        out.items[*row.in_list] = row.item;
    }
    if (choice.remove_gone) {
        std::vector<bool> goes(out.items.size(), false);
        for (const std::size_t item : preview.gone) {
            if (item >= into.items.size()) return other_list;
            goes[item] = true;
        }
        std::size_t at = 0;
        std::erase_if(out.items, [&](const PriceItem&) { return goes[at++]; });
    }
    if (price_list_to_json(out).size() > fields::max_bytes)
        return Problem{"The price list", "would be longer than 16 MiB, which is what a list may have",
                       "Leave new items out, or take a part of the table"};
    return out;
}

}  // namespace wg::parts
