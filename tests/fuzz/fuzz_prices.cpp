// Entry for a coverage-guided fuzzer (clang++ -fsanitize=fuzzer,address): any bytes as a price list, or as a table of
// prices that is taken into one. The first byte chooses: '{' or a space begins a list, all else a table.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/parts/price_import.h"
#include "core/quantity/utf8.h"

namespace {

namespace wp = wg::parts;

void check_refusal(const std::vector<wg::Problem>& problems) {
    if (problems.empty()) std::abort();
    for (const wg::Problem& problem : problems) {
        if (problem.where.empty() || problem.what.empty() || problem.remedy.empty()) std::abort();
        if (!wg::is_utf8(problem.text())) std::abort();
    }
}

/// A list that was read or made can be written and is the same when read again.
void check_list(const wp::PriceList& list) {
    const std::string text = wp::price_list_to_json(list);
    const wg::Result<wp::PriceList> again = wp::price_list_from_json(text, "again.json");
    if (!again.ok() || !(again.value().items == list.items) || wp::price_list_to_json(again.value()) != text)
        std::abort();
}

const wp::PriceList& small_list() {
    static const wp::PriceList list = [] {
        const char* const text =
            R"({"schema":2,"id":"l","label":"L","currency":"EUR","valid_from":"2027-01-01","valid_to":"2027-12-31",)"
            R"("labour_hour":60,"labour_tax_class":"s","discount_groups":[{"id":"a","percent":35}],"items":[)"
            R"({"id":"t","text":"T","unit":"m","supplier_price":7.8,"discount_group":"a","price":7.4,"pack":5,)"
            R"("tax_class":"s","supplier":"P","supplier_number":"1","quantity_prices":[{"from":50,"price":6.9}]},)"
            R"({"id":"u","text":"U","unit":"pc","cost":1,"price":2,"tax_class":"s","supplier_number":"2"}],)"
            R"("tasks":[{"id":"w","text":"W","hours":1}],"tariffs":{"electricity_minor_kwh":30,"gas_minor_kwh":10,)"
            R"("lpg_minor_kwh":10,"oil_minor_kwh":10,"wood_minor_kwh":10,"electricity_kg_co2_kwh":0.3,)"
            R"("gas_kg_co2_kwh":0.2,"lpg_kg_co2_kwh":0.2,"oil_kg_co2_kwh":0.3,"wood_kg_co2_kwh":0,"yearly_rise":0,)"
            R"("discount_rate":0,"years":20,"yearly_service_minor":0,"source":"made"}})";
        const wg::Result<wp::PriceList> read = wp::price_list_from_json(text, "small.json");
        if (!read.ok()) std::abort();
        return read.value();
    }();
    return list;
}

void take_table(std::string_view bytes, const wp::PriceList& into) {
    const wg::Result<wg::tables::CsvTable> table = wg::tables::read_csv(bytes, "fuzz.csv");
    if (!table.ok()) return check_refusal(table.problems());
    const wp::ImportGuess guess = wp::guess_mapping(table.value(), into);
    const wg::Result<wp::ImportPreview> made = wp::preview_import(table.value(), "fuzz.csv", guess.mapping, into);
    if (!made.ok()) return check_refusal(made.problems());
    const wp::ImportPreview& preview = made.value();
    if (!preview.problems.empty()) check_refusal(preview.problems);
    if (preview.added + preview.changed + preview.same != preview.rows.size()) std::abort();
    if ((preview.wrong_lines == 0) != preview.problems.empty()) std::abort();
    for (const std::string& note : preview.notes)
        if (!wg::is_utf8(note)) std::abort();
    for (const std::string& note : guess.notes)
        if (!wg::is_utf8(note)) std::abort();
    if (preview.wrong_lines > 0 && wp::apply_import(preview, into, {}).ok()) std::abort();
    const wg::Result<wp::PriceList> taken = wp::apply_import(preview, into, {true, preview.nameless_lines == 0, true});
    if (!taken.ok()) return check_refusal(taken.problems());
    check_list(taken.value());
    // Out as a table and in again: nothing changes.
    const std::string csv = wp::items_to_csv(taken.value());
    const wg::tables::CsvTable again = wg::tables::read_csv(csv, "again.csv").value();
    const wg::Result<wp::ImportPreview> same =
        wp::preview_import(again, "again.csv", wp::guess_mapping(again, taken.value()).mapping, taken.value());
    if (!same.ok() || same.value().same != taken.value().items.size()) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (size == 0) return 0;
    if (text.front() != '{' && text.front() != ' ') {
        take_table(text, small_list());
        return 0;
    }
    const wg::Result<wp::PriceList> read = wp::price_list_from_json(text, "fuzz.json");
    if (!read.ok()) {
        check_refusal(read.problems());
        return 0;
    }
    check_list(read.value());
    return 0;
}
