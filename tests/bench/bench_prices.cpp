// A supplier's list of ten thousand lines taken into a price list as long: read, columns guessed, previewed, applied.

#include <benchmark/benchmark.h>

#include <cstdlib>

#include "core/parts/price_import.h"

namespace {

constexpr int price_lines = 10'000;

wg::parts::PriceList priced_list() {
    wg::parts::PriceList out;
    out.currency = "EUR";
    out.labour_tax_class = "standard";
    out.discount_groups = {{"a", "tube", 35.0}};
    for (int i = 0; i < price_lines; ++i) {
        wg::parts::PriceItem item;
        item.id = "item-" + std::to_string(i);
        item.text = "Invented part no. " + std::to_string(i) + ", bright; \"as sold\"";
        item.unit = i % 3 == 0 ? "m" : "pc";
        item.price = {100 + i * 7 % 90'000};
        item.tax_class = "standard";
        item.supplier = "Pellow Copper";
        item.supplier_number = "PC-" + std::to_string(100'000 + i);
        if (i % 2 == 0) {
            item.supplier_price = wg::Money{90 + i};
            item.discount_group = "a";
            item.cost = wg::parts::cost_after_discount(*item.supplier_price, 35.0);
        }
        out.items.push_back(std::move(item));
    }
    return out;
}

void import_10k_prices(benchmark::State& state) {
    const wg::parts::PriceList into = priced_list();
    wg::parts::PriceList theirs = into;
    for (std::size_t i = 0; i < theirs.items.size(); ++i) {
        if (i % 2 == 0) theirs.items[i].price.minor += 30;
        if (i % 10 == 0) theirs.items[i].id = "new-" + std::to_string(i);
    }
    const std::string csv = wg::parts::items_to_csv(theirs);
    for (auto _ : state) {
        const wg::tables::CsvTable table = wg::tables::read_csv(csv, "theirs.csv").value();
        const wg::parts::ImportGuess guess = wg::parts::guess_mapping(table, into);
        const wg::parts::ImportPreview preview =
            wg::parts::preview_import(table, "theirs.csv", guess.mapping, into).value();
        if (preview.wrong_lines != 0 || preview.added != price_lines / 10) std::abort();
        benchmark::DoNotOptimize(wg::parts::apply_import(preview, into, {}).value());
    }
    state.SetItemsProcessed(state.iterations() * price_lines);
}
BENCHMARK(import_10k_prices)->Unit(benchmark::kMillisecond);

}  // namespace
