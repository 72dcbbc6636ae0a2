// Lists made at random, written as CSV and read back: the same items, whatever stands in them.
#include <gtest/gtest.h>

#include <random>

#include "core/parts/price_import.h"
#include "core/quantity/text.h"
#include "tests/tools/sweep.h"

namespace wg::parts {
namespace price_round_trip_test {
namespace {

class Maker {
   public:
    explicit Maker(unsigned seed) : random_(seed) {}

    PriceList list() {
        PriceList out;
        out.id = "made";
        out.label = "Made";
        out.currency = "EUR";
        out.valid_from = "2027-01-01";
        out.valid_to = "2027-12-31";
        out.labour_tax_class = "standard";
        out.discount_groups = {{"a", "", 35.0}, {"b" + text(), "", 12.5}};
        const int count = 1 + below(12);
        for (int i = 0; i < count; ++i)
            out.items.push_back(item(text() + '#' + std::to_string(i), out));
        return out;
    }

    int below(int most) { return static_cast<int>(random_() % static_cast<unsigned>(most)); }

   private:
    /// Without spaces around it, which a table does not keep.
    std::string text() {
        static const char* const pieces[] = {
            "=1+2", "+", "-", "@",   "'",  "''=", "'-5",      "\"",           ";",    ",", "\t", "\n", "a", "Z",
            "7",    "0", ".", "1.5", "-5", "%",   "\xC3\xA4", "\xE2\x82\xAC", "tube", " "};
        std::string out;
        for (int i = below(6); i >= 0; --i)
            out += pieces[below(static_cast<int>(std::size(pieces)))];
        std::erase(out, '\t');
        const std::size_t first = out.find_first_not_of(" \n");
        if (first == std::string::npos) return "x";
        return out.substr(first, out.find_last_not_of(" \n") - first + 1);
    }

    std::string text_or_none() { return below(2) == 0 ? std::string() : text(); }

    Money money() {
        static const std::int64_t some[] = {0, 1, 9, 10, 99, 100, 123, 100'000, 123'456'789, 1'000'000'000};
        return {below(2) == 0 ? some[below(10)] : below(1'000'000)};
    }

    double number(double most) {
        switch (below(4)) {
            case 0: return below(static_cast<int>(most)) + 1.0;
            case 1: return 0.125;
            case 2: return 1.234;
            default: return most * (static_cast<double>(random_()) + 1.0) / 4294967296.0;
        }
    }

    PriceItem item(std::string id, const PriceList& list) {
        PriceItem out;
        out.id = std::move(id);
        out.text = text();
        static const char* const units[] = {"pc", "m", "kg", "h"};
        out.unit = units[below(4)];
        out.price = money();
        if (below(2) == 0) out.pack = std::max(0.001, number(10000.0));
        out.tax_class = text();
        if (below(3) == 0) {
            out.supplier_price = money();
            double percent = 0.0;
            if (below(2) == 0) {
                const DiscountGroup& group = list.discount_groups[static_cast<std::size_t>(below(2))];
                out.discount_group = group.id;
                percent = group.percent;
            }
            out.cost = cost_after_discount(*out.supplier_price, percent);
        } else if (below(2) == 0) {
            out.cost = money();
        }
        out.supplier = text_or_none();
        out.supplier_number = text_or_none();
        if (below(2) == 0) out.waste_percent = below(3) == 0 ? 0.0 : number(100.0);
        for (int steps = below(4); steps > 0; --steps) {
            const double from = number(1e6);
            if (out.quantity_prices.empty() || from > out.quantity_prices.back().from)
                out.quantity_prices.push_back({from, money()});
        }
        return out;
    }

    std::mt19937 random_;
};

/// Which fields differ, for a failure to tell.
std::string differences(const ImportPreview& preview) {
    std::string out;
    for (const ImportRow& row : preview.rows)
        for (const ImportField field : row.changed)
            out += row.item.id + ' ' + column_name(field) + " is '" + field_text(row.item, field) + "'\n";
    return out;
}

ImportPreview preview_of(const std::string& csv, const PriceList& into) {
    const auto read = tables::read_csv(csv, "made.csv");
    EXPECT_TRUE(read.ok()) << text_of(read.problems()) << csv;
    if (!read.ok()) return {};
    const ImportGuess guess = guess_mapping(read.value(), into);
    for (std::size_t i = 0; i < import_field_count; ++i)
        EXPECT_EQ(guess.mapping.column[i], static_cast<int>(i));
    const auto out = preview_import(read.value(), "made.csv", guess.mapping, into);
    EXPECT_TRUE(out.ok());
    return out.ok() ? out.value() : ImportPreview{};
}

TEST(PriceRoundTrip, export_reads_back_equal) {
    for (int seed = 0; seed < sweep::cases(600); ++seed) {
        Maker make(static_cast<unsigned>(seed));
        const PriceList list = make.list();
        const std::string csv = items_to_csv(list);
        const ImportPreview same = preview_of(csv, list);
        ASSERT_EQ(same.same, list.items.size()) << seed << '\n' << text_of(same.problems) << differences(same) << csv;
        ASSERT_TRUE(same.gone.empty());
        PriceList empty = list;
        empty.items.clear();
        const ImportPreview added = preview_of(csv, empty);
        const Result<PriceList> read = apply_import(added, empty, {});
        ASSERT_TRUE(read.ok()) << seed << '\n' << csv;
        ASSERT_EQ(read.value().items, list.items) << seed << '\n' << csv;
    }
}

/// What an item is after a table's line: an empty cell changes nothing, but a cost that is told does away with a
/// supplier's price that says otherwise.
PriceItem after(const PriceItem& line, const PriceItem& was) {
    PriceItem out = line;
    if (line.supplier.empty()) out.supplier = was.supplier;
    if (line.supplier_number.empty()) out.supplier_number = was.supplier_number;
    if (line.pack == 0.0) out.pack = was.pack;
    if (!line.waste_percent) out.waste_percent = was.waste_percent;
    if (line.supplier_price) {  // its cost follows and has no cell
        if (!line.discount_group.empty() || was.discount_group.empty()) return out;
        out.discount_group = was.discount_group;
        out.cost = cost_after_discount(*line.supplier_price, 35.0);
        return out;
    }
    std::optional<Money> follows;
    if (was.supplier_price) follows = cost_after_discount(*was.supplier_price, was.discount_group.empty() ? 0.0 : 35.0);
    if (line.cost && line.cost != follows) return out;
    out.supplier_price = was.supplier_price;
    out.discount_group = was.discount_group;
    out.cost = follows ? follows : was.cost;
    return out;
}

// One list becomes the other, from whatever it was.
TEST(PriceRoundTrip, a_list_becomes_the_other) {
    for (int seed = 0; seed < sweep::cases(300); ++seed) {
        Maker make(static_cast<unsigned>(seed) + 100'000U);
        const PriceList wanted = make.list();
        PriceList from = make.list();
        from.discount_groups = wanted.discount_groups;
        for (std::size_t i = 0; i < from.items.size(); ++i) {
            if (!from.items[i].discount_group.empty()) from.items[i].discount_group = "a";
            if (i < wanted.items.size() && make.below(2) == 0) from.items[i].id = wanted.items[i].id;
        }
        const Result<PriceList> read = apply_import(preview_of(items_to_csv(wanted), from), from, {true, true, false});
        ASSERT_TRUE(read.ok()) << seed << '\n' << text_of(read.problems());
        ASSERT_EQ(read.value().items.size(), wanted.items.size()) << seed;
        for (const PriceItem& item : wanted.items) {
            const PriceItem* found = find_item(read.value(), item.id);
            ASSERT_NE(found, nullptr) << seed;
            const PriceItem* was = find_item(from, item.id);
            const PriceItem expected = was == nullptr ? item : after(item, *was);
            for (std::size_t field = 0; field < import_field_count; ++field)
                EXPECT_EQ(field_text(*found, static_cast<ImportField>(field)),
                          field_text(expected, static_cast<ImportField>(field)))
                    << seed << ' ' << column_name(static_cast<ImportField>(field));
            ASSERT_EQ(*found, expected) << seed;
        }
    }
}

// Any money in any of the two ways of marking decimals, with and without thousands.
TEST(PriceRoundTrip, amounts_are_exact_in_every_notation) {
    Maker make(7);
    PriceList list;
    list.currency = "EUR";
    list.labour_tax_class = "standard";
    for (int i = 0; i < sweep::cases(2000); ++i) {
        const std::int64_t minor = make.below(1'000'000'000);
        std::string point = text(Money{minor}, "");  // 1,234.50
        std::string comma = point;
        for (char& c : comma)
            c = c == '.' ? ',' : c == ',' ? '.' : c;
        std::string plain = point;
        std::erase(plain, ',');
        for (const std::string& written : {point, comma, plain}) {
            const std::string csv = "id;text;unit;price\nx;X;pc;" + written + "\n";
            const auto read = tables::read_csv(csv, "x.csv").value();
            const ImportPreview preview =
                preview_import(read, "x.csv", guess_mapping(read, list).mapping, list).value();
            ASSERT_EQ(preview.rows.size(), 1U) << written;
            ASSERT_EQ(preview.rows[0].item.price.minor, minor) << written;
        }
    }
}

TEST(PriceRoundTrip, nothing_runs_as_a_formula) {
    PriceList list;
    PriceItem item;
    item.id = "=cmd";
    item.text = "@sum";
    item.supplier = "+x";
    item.unit = "pc";
    list.items = {item};
    const std::string csv = items_to_csv(list);
    EXPECT_NE(csv.find("\n'=cmd,'@sum,pc,0.00,"), std::string::npos) << csv;
    EXPECT_NE(csv.find(",'+x,"), std::string::npos) << csv;
}

}  // namespace
}  // namespace price_round_trip_test
}  // namespace wg::parts
