// Prices from a table of another program. Lists and figures invented.
#include "core/parts/price_import.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/parts/price_figures.h"

namespace wg::parts {
namespace price_import_test {
namespace {

PriceItem item(const std::string& id, std::int64_t minor) {
    PriceItem out;
    out.id = id;
    out.text = "Text of " + id;
    out.unit = "m";
    out.price = {minor};
    out.tax_class = "standard";
    return out;
}

PriceList list() {
    PriceList out;
    out.id = "firm";
    out.label = "Firm";
    out.currency = "EUR";
    out.valid_from = "2027-01-01";
    out.valid_to = "2027-12-31";
    out.labour_tax_class = "standard";
    out.discount_groups = {{"a", "tube", 35.0}};
    out.items = {item("tube-6.35", 390), item("tube-9.52", 500), item("clip", 80)};
    out.items[1].supplier = "Pellow Copper";
    out.items[1].supplier_number = "PC-1021";
    return out;
}

tables::CsvTable table(const std::string& text) {
    return tables::read_csv(text, "prices.csv").value();
}

ImportPreview previewed(const std::string& text, const PriceList& into) {
    const tables::CsvTable read = table(text);
    const ImportGuess guess = guess_mapping(read, into);
    Result<ImportPreview> out = preview_import(read, "prices.csv", guess.mapping, into);
    EXPECT_TRUE(out.ok()) << text_of(out.ok() ? std::vector<Problem>{} : out.problems());
    return out.ok() ? out.value() : ImportPreview{};
}

bool told(const std::vector<std::string>& notes, const std::string& words) {
    return std::any_of(notes.begin(), notes.end(),
                       [&](const std::string& note) { return note.find(words) != std::string::npos; });
}

/// The one problem of a text, "line: what".
std::string only_problem(const std::string& text, const PriceList& into) {
    const ImportPreview preview = previewed(text, into);
    EXPECT_EQ(preview.problems.size(), 1U) << text_of(preview.problems);
    if (preview.problems.size() != 1) return {};
    EXPECT_FALSE(preview.problems[0].remedy.empty());
    return preview.problems[0].where + ": " + preview.problems[0].what;
}

TEST(PriceFigure, is_read_as_people_write_it) {
    const auto digits = [](const char* text, DecimalSign sign) { return read_figure(text, sign).digits; };
    EXPECT_EQ(digits("1.234,50", DecimalSign::comma), "1234.50");
    EXPECT_EQ(digits("1,234.50", DecimalSign::point), "1234.50");
    EXPECT_EQ(digits("1'234.50", DecimalSign::point), "1234.50");
    EXPECT_EQ(digits("1\xE2\x80\x99"
                     "234.50",
                     DecimalSign::point),
              "1234.50")
        << "apostrophe of print";
    EXPECT_EQ(digits("1\xE2\x80\xAF"
                     "234\xE2\x80\xAF"
                     "567,5",
                     DecimalSign::comma),
              "1234567.5")
        << "narrow no-break space";
    EXPECT_EQ(digits(" 12 ", DecimalSign::comma), "12");
    EXPECT_EQ(digits("-3,5", DecimalSign::comma), "-3.5");
    EXPECT_EQ(digits(",5", DecimalSign::comma), "0.5");
    EXPECT_EQ(digits("1.234", DecimalSign::comma), "1234");
    EXPECT_EQ(digits("1.234", DecimalSign::point), "1.234");
    // By itself: what can be read in one way only.
    EXPECT_EQ(digits("12,50", DecimalSign::undecided), "12.50");
    EXPECT_EQ(digits("0,125", DecimalSign::undecided), "0.125");
    EXPECT_EQ(digits("1234.567", DecimalSign::undecided), "1234.567");
    EXPECT_EQ(digits("1.234.567", DecimalSign::undecided), "1234567");
    EXPECT_EQ(digits("1.234,5", DecimalSign::undecided), "1234.5");
}

TEST(PriceFigure, that_is_none_or_does_not_fit_is_refused) {
    for (const char* text : {"", "abc", "1e5", "0x10", "1..2", "1.", "5,-", "--1", "1-2", "1 2 3", "12 34", "nan",
                             "inf", "1,23,456", "1.234,567.8", "11111111111111111111111111111111111111111"}) {
        for (const DecimalSign sign : {DecimalSign::undecided, DecimalSign::point, DecimalSign::comma}) {
            const WrittenFigure figure = read_figure(text, sign);
            EXPECT_TRUE(*figure.wrong != '\0' && *figure.remedy != '\0' && figure.digits.empty()) << text;
        }
    }
    EXPECT_STRNE(read_figure("12,50", DecimalSign::point).wrong, "");
    EXPECT_STRNE(read_figure("12.50", DecimalSign::comma).wrong, "");
    EXPECT_STRNE(read_figure("1.234", DecimalSign::undecided).wrong, "") << "two ways";
    EXPECT_STRNE(read_figure("1,234", DecimalSign::undecided).wrong, "") << "two ways";
}

TEST(PriceFigure, sheds_its_own_currency_only) {
    const auto bare = [](std::string_view text, const char* currency) {
        return take_off_currency(text, currency) ? std::string(text) : "refused";
    };
    EXPECT_EQ(bare("12.50 EUR", "EUR"), "12.50");
    EXPECT_EQ(bare("eur 12.50", "EUR"), "12.50");
    EXPECT_EQ(bare("12,50\xC2\xA0\xE2\x82\xAC", "EUR"), "12,50");
    EXPECT_EQ(bare("12.50 USD", "EUR"), "refused");
    EXPECT_EQ(bare("$12.50", "EUR"), "refused");
    EXPECT_EQ(bare("$12.50", "USD"), "12.50");
    EXPECT_EQ(bare("\xC2\xA3"
                   "3",
                   "GBP"),
              "3");
}

TEST(PriceColumns, are_found_by_words_of_three_languages) {
    const auto fields = [](const std::string& text) {
        const ImportMapping mapping = guess_mapping(table(text), list()).mapping;
        std::string out;
        for (std::size_t i = 0; i < import_field_count; ++i)
            if (mapping.column[i] >= 0)
                out += std::string(column_name(static_cast<ImportField>(i))) + '=' + std::to_string(mapping.column[i]) +
                       ' ';
        return out;
    };
    EXPECT_EQ(fields("Article no.,Description,Unit,Price (EUR),Cost,Tax class\na,b,m,1.50,1.10,s\n"),
              "id=0 text=1 unit=2 price=3 cost=4 tax_class=5 ");
    EXPECT_EQ(fields("Artikelnr.;Bezeichnung;Einheit;VK-Preis netto;EK-Preis;Listenpreis;Rabattgruppe;VPE;Verschnitt %;"
                     "Lieferant;Bestellnummer;Steuerschl\xC3\xBCssel\na;b;m;1;1;1;a;1;1;x;y;s\n"),
              "id=0 text=1 unit=2 price=3 cost=4 supplier_price=5 discount_group=6 pack=7 waste_percent=8 supplier=9 "
              "supplier_number=10 tax_class=11 ");
    EXPECT_EQ(fields("C\xC3\xB3"
                     "digo;Descripci\xC3\xB3n;Ud.;Precio neto;Coste;Precio de tarifa;Merma (%);Proveedor;IVA\n"
                     "a;b;m;1;1;1;1;x;s\n"),
              "id=0 text=1 unit=2 price=3 cost=4 supplier_price=5 waste_percent=6 supplier=7 tax_class=8 ");
    EXPECT_EQ(fields("a,b,c\n1,2,3\n"), "") << "nothing is made up";
}

TEST(PriceColumns, stand_below_a_heading_and_tell_the_suppliers_number) {
    const tables::CsvTable read =
        table("Pellow Copper;;\nvalid from 2027-01-01;;\nArtikelnummer;Preis;x\nPC-1021;5,20;\n");
    const ImportGuess guess = guess_mapping(read, list());
    EXPECT_EQ(guess.mapping.names_row, 2);
    EXPECT_EQ(guess.mapping.of(ImportField::id), -1);
    EXPECT_EQ(guess.mapping.of(ImportField::supplier_number), 0);
    EXPECT_EQ(guess.mapping.decimal, DecimalSign::comma);
    EXPECT_TRUE(told(guess.notes, "line 3")) << "where the names stand";
    EXPECT_TRUE(told(guess.notes, "supplier's numbers"));
    EXPECT_TRUE(told(guess.notes, "A comma marks the decimals: line 4, '5,20'"));
    const ImportPreview preview = preview_import(read, "p.csv", guess.mapping, list()).value();
    ASSERT_EQ(preview.rows.size(), 1U);
    EXPECT_EQ(preview.rows[0].item.id, "tube-9.52");
    EXPECT_EQ(preview.rows[0].item.price.minor, 520);
    EXPECT_TRUE(told(preview.notes, "left aside: 'x'"));
}

TEST(PriceImport, tells_new_changed_gone_and_same) {
    const ImportPreview preview = previewed(
        "id;text;unit;price\ntube-6.35;Text of tube-6.35;m;4,29\ntube-9.52;Text of "
        "tube-9.52;m;5,00\nbend;Bend;Stk;1.020,00\n",
        list());
    ASSERT_EQ(preview.rows.size(), 3U) << text_of(preview.problems);
    EXPECT_EQ(preview.rows[0].change, ItemChange::changed);
    EXPECT_EQ(preview.rows[0].old_price->minor, 390);
    EXPECT_EQ(preview.rows[0].item.price.minor, 429);
    EXPECT_NEAR(*preview.rows[0].price_change_percent, 10.0, 1e-12);
    EXPECT_EQ(preview.rows[0].changed, std::vector<ImportField>{ImportField::price});
    EXPECT_EQ(preview.rows[1].change, ItemChange::same);
    EXPECT_EQ(preview.rows[1].item, list().items[1]) << "the supplier, who has no column, stays";
    EXPECT_EQ(preview.rows[2].change, ItemChange::added);
    EXPECT_EQ(preview.rows[2].line, 4);
    EXPECT_EQ(preview.rows[2].item.unit, "pc");
    EXPECT_EQ(preview.rows[2].item.price.minor, 102000);
    EXPECT_EQ(preview.rows[2].item.tax_class, "standard");
    EXPECT_TRUE(told(preview.notes, "'Stk' as pc"));
    EXPECT_TRUE(told(preview.notes, "tax class of labour"));
    EXPECT_EQ(preview.gone, std::vector<std::size_t>{2});
    EXPECT_EQ(preview.added + preview.changed + preview.same, 3U);
    const auto ids = [&](const ImportChoice& choice) {
        std::string out;
        for (const PriceItem& one : apply_import(preview, list(), choice).value().items)
            out += one.id + ' ';
        return out;
    };
    EXPECT_EQ(ids({}), "tube-6.35 tube-9.52 clip bend ");
    EXPECT_EQ(ids({false, false, false}), "tube-6.35 tube-9.52 clip ");
    EXPECT_EQ(ids({true, true, false}), "tube-6.35 tube-9.52 bend ");
    EXPECT_EQ(apply_import(preview, list(), {}).value().items[0].price.minor, 429);
}

TEST(PriceImport, tells_each_problem_by_line_and_what_to_do) {
    const PriceList into = list();
    EXPECT_EQ(only_problem("id,price,cost\nclip,0.90,0.50\nclip,0.95,0.50\n", into),
              "prices.csv, line 3, id: 'clip' stands in line 2 already");
    EXPECT_EQ(only_problem("id,price\nclip,0.90\n,0.95\n", into),
              "prices.csv, line 3, id: is empty: the line does not tell its item");
    EXPECT_EQ(only_problem("id,price\nclip,0.9055\n", into),
              "prices.csv, line 2, price: '0.9055' has more than two decimals");
    EXPECT_EQ(only_problem("id,price\nclip,\n", into), "prices.csv, line 2, price: is empty");
    EXPECT_EQ(only_problem("id,price\nclip,-1.00\n", into), "prices.csv, line 2, price: '-1.00' is less than nothing");
    EXPECT_EQ(only_problem("id,price\nclip,10000000.01\n", into),
              "prices.csv, line 2, price: '10000000.01' is more than 10,000,000");
    EXPECT_EQ(only_problem("id,price\nclip,99999999999999999999999.5\n", into),
              "prices.csv, line 2, price: '99999999999999999999999.5' is more than 10,000,000");
    EXPECT_EQ(only_problem("id,price\nclip,1.50 USD\n", into),
              "prices.csv, line 2, price: '1.50 USD' is not in EUR, the list's currency");
    EXPECT_EQ(only_problem("id,unit,price\nclip,roll,1.50\n", into),
              "prices.csv, line 2, unit: 'roll' is no unit of a price list");
    EXPECT_EQ(only_problem("id,price,pack\nclip,1.50,20000\n", into),
              "prices.csv, line 2, pack: '20000' is not within 0 to 10000");
    EXPECT_EQ(only_problem("id,price,pack\nclip,1.50,0.0001\n", into),
              "prices.csv, line 2, pack: is below a thousandth of the unit");
    EXPECT_EQ(only_problem("id,price,waste %\nclip,1.50,101 %\n", into),
              "prices.csv, line 2, waste_percent: '101 %' is not within 0 to 100");
    EXPECT_EQ(only_problem("id,price\nclip,1,50\n", into),
              "prices.csv, line 2, id: stands in a line of 3 cells, the line of names has 2")
        << "a decimal comma between commas must not become 1.00";
    EXPECT_EQ(only_problem("id,text,price\nclip,\"a\x01z\",1.50\n", into),
              "prices.csv, line 2, text: holds a control character");
    EXPECT_EQ(only_problem("id,text,price\nclip," + std::string(2001, 'x') + ",1.50\n", into),
              "prices.csv, line 2, text: is longer than 2000 characters");
    EXPECT_EQ(previewed("id,price\nvalve,1.50\n", into).problems.size(), 2U) << "text and unit of a new item";
}

TEST(PriceImport, refuses_a_new_item_under_the_id_of_work) {
    PriceList with_work = list();
    with_work.tasks.push_back({});
    with_work.tasks.back().id = "survey";
    EXPECT_EQ(only_problem("id,text,unit,price,tax_class\nsurvey,Survey,pc,1.00,standard\n", with_work),
              "prices.csv, line 2, id: 'survey' is the id of work in this list");
}

TEST(PriceImport, takes_no_figure_that_reads_two_ways) {
    const PriceList into = list();
    const tables::CsvTable read = table("id;price\nclip;1.234\n");
    ImportGuess guess = guess_mapping(read, into);
    EXPECT_EQ(guess.mapping.decimal, DecimalSign::undecided);
    EXPECT_TRUE(told(guess.notes, "choose"));
    EXPECT_EQ(preview_import(read, "p.csv", guess.mapping, into).value().wrong_lines, 1U);
    guess.mapping.decimal = DecimalSign::comma;
    EXPECT_EQ(preview_import(read, "p.csv", guess.mapping, into).value().rows[0].item.price.minor, 123400);
    guess.mapping.decimal = DecimalSign::point;
    EXPECT_EQ(preview_import(read, "p.csv", guess.mapping, into).value().wrong_lines, 1U) << "three decimals";
    // Both ways in one file: told, and each figure by itself.
    const tables::CsvTable both = table("id;price\nclip;1.25\ntube-6.35;3,80\ntube-9.52;4.000\n");
    guess = guess_mapping(both, into);
    EXPECT_TRUE(told(guess.notes, "by a point (line 2, '1.25') and by a comma (line 3, '3,80')"));
    const ImportPreview preview = preview_import(both, "p.csv", guess.mapping, into).value();
    ASSERT_EQ(preview.rows.size(), 2U);
    EXPECT_EQ(preview.rows[1].item.price.minor, 380);
    EXPECT_EQ(preview.problem_lines, std::vector<int>{4});
}

TEST(PriceImport, lines_with_problems_are_left_out_only_when_asked) {
    const ImportPreview preview = previewed("id,price\nclip,abc\ntube-6.35,4.00\n", list());
    EXPECT_EQ(preview.wrong_lines, 1U);
    EXPECT_EQ(preview.gone, std::vector<std::size_t>{1}) << "an item whose line is wrong is not gone";
    EXPECT_FALSE(apply_import(preview, list(), {}).ok());
    const PriceList out = apply_import(preview, list(), {true, true, true}).value();
    ASSERT_EQ(out.items.size(), 2U);
    EXPECT_EQ(out.items[0].price.minor, 400);
    EXPECT_EQ(out.items[1], list().items[2]);
    const ImportPreview nameless = previewed("id,price\n,1.00\ntube-6.35,4.00\n", list());
    EXPECT_TRUE(apply_import(nameless, list(), {true, false, true}).ok());
    EXPECT_FALSE(apply_import(nameless, list(), {true, true, true}).ok()) << "the line may be of one that would go";
    PriceList other = list();
    std::swap(other.items[0], other.items[1]);
    EXPECT_FALSE(apply_import(preview, other, {true, false, true}).ok()) << "not the list of the preview";
}

TEST(PriceImport, reckons_the_cost_from_the_suppliers_price) {
    PriceList into = list();
    const std::string head = "id,cost,supplier price,discount group\n";
    ImportPreview preview = previewed(head + "clip,,1.00,a\n", into);
    ASSERT_EQ(preview.rows.size(), 1U) << text_of(preview.problems);
    EXPECT_EQ(preview.rows[0].item.cost->minor, 65) << "1.00 less 35 %";
    EXPECT_EQ(previewed(head + "clip,0.65,1.00,a\n", into).rows.size(), 1U) << "says the same";
    EXPECT_EQ(only_problem(head + "clip,0.70,1.00,a\n", into),
              "prices.csv, line 2, cost: '0.70' stands beside the supplier's price, from which 0.65 EUR follows");
    EXPECT_EQ(only_problem(head + "clip,,1.00,b\n", into),
              "prices.csv, line 2, discount_group: 'b' is no discount group of the list");
    EXPECT_EQ(only_problem(head + "clip,0.70,,a\n", into),
              "prices.csv, line 2, discount_group: stands without a supplier's price to take it off");
    // A supplier's new price alone: the group stays, the cost follows.
    into.items[2].supplier_price = Money{100};
    into.items[2].discount_group = "a";
    into.items[2].cost = Money{65};
    preview = previewed("id,list price\nclip,2.00\n", into);
    ASSERT_EQ(preview.rows.size(), 1U);
    EXPECT_EQ(preview.rows[0].item.cost->minor, 130);
    EXPECT_EQ(preview.rows[0].item.discount_group, "a");
    // A cost alone takes the place of the old way to it, unless it says the same.
    preview = previewed("id,cost\nclip,0.70\n", into);
    EXPECT_EQ(preview.rows[0].item.cost->minor, 70);
    EXPECT_FALSE(preview.rows[0].item.supplier_price.has_value());
    EXPECT_EQ(preview.rows[0].item.discount_group, "");
    EXPECT_EQ(previewed("id,cost\nclip,0.65\n", into).same, 1U);
}

TEST(PriceImport, warns_of_prices_that_leap_and_of_what_stays) {
    PriceList into = list();
    into.items[2].quantity_prices = {{100.0, {60}}};
    const ImportPreview preview = previewed("id,price,tax class\nclip,80.00,new\n", into);
    EXPECT_TRUE(told(preview.notes, "1 price changes by more than half"));
    EXPECT_TRUE(told(preview.notes, "prices of quantities, which stay"));
    EXPECT_TRUE(told(preview.notes, "does not use yet: 'new'"));
    EXPECT_EQ(preview.rows[0].item.quantity_prices, into.items[2].quantity_prices);
}

TEST(PriceImport, takes_prices_of_quantities_from_lines_of_their_own) {
    PriceList into = list();
    // Wherever the item's own line stands, and in whatever order; what repeats it is no contradiction.
    ImportPreview preview =
        previewed("Artikelnr;Bezeichnung;ab Menge;Preis\nclip;;200;0,80\nclip;Clip;;1,00\nclip;Clip;50;0,90\n", into);
    ASSERT_EQ(preview.rows.size(), 1U) << text_of(preview.problems);
    EXPECT_EQ(preview.rows[0].item.quantity_prices, (std::vector<QuantityPrice>{{50.0, {90}}, {200.0, {80}}}));
    EXPECT_EQ(preview.rows[0].item.price.minor, 100);
    EXPECT_EQ(preview.wrong_lines, 0U);
    // A supplier's table begins at one piece: that line is the item's own, and it is said.
    preview = previewed("id,from quantity,price\nclip,1,1.10\nclip,25,1.00\n", into);
    ASSERT_EQ(preview.rows.size(), 1U);
    EXPECT_EQ(preview.rows[0].item.price.minor, 110);
    EXPECT_EQ(preview.rows[0].item.quantity_prices, (std::vector<QuantityPrice>{{25.0, {100}}}));
    EXPECT_TRUE(told(preview.notes, "line of quantity 1"));
    // Many alone leave the list's item as it is.
    into.items[2].quantity_prices = {{5.0, {1}}};
    const PriceItem before = into.items[2];
    preview = previewed("id,from quantity,price\nclip,25,1.00\n", into);
    ASSERT_EQ(preview.rows.size(), 1U);
    EXPECT_EQ(preview.rows[0].item.price, before.price);
    EXPECT_EQ(preview.rows[0].item.quantity_prices, (std::vector<QuantityPrice>{{25.0, {100}}}));
    // The column is there and empty: the item has none. No column: they stay.
    EXPECT_TRUE(previewed("id,from quantity,price\nclip,,1.00\n", into).rows.at(0).item.quantity_prices.empty());
    EXPECT_EQ(previewed("id,price\nclip,1.00\n", into).rows.at(0).item.quantity_prices, before.quantity_prices);
}

TEST(PriceImport, an_empty_cell_changes_nothing) {
    PriceList into = list();
    PriceItem& tube = into.items[1];
    tube.supplier_price = Money{600};
    tube.discount_group = "a";
    tube.cost = cost_after_discount({600}, 35.0);
    tube.pack = 25.0;
    tube.waste_percent = 5.0;
    const char* head = "id,text,price,cost,supplier_price,discount_group,pack,waste_percent,supplier,supplier_number\n";
    ImportPreview preview = previewed(std::string(head) + "tube-9.52,Tube,5.50,,,,,,,\n", into);
    ASSERT_EQ(preview.rows.size(), 1U) << text_of(preview.problems);
    PriceItem expected = tube;
    expected.text = "Tube";
    expected.price = {550};
    EXPECT_EQ(preview.rows[0].item, expected);
    // A cost that is the list price itself says that nothing is taken off.
    preview = previewed(std::string(head) + "tube-9.52,Tube,5.50,6.00,6.00,,,,,\n", into);
    ASSERT_EQ(preview.rows.size(), 1U) << text_of(preview.problems);
    EXPECT_EQ(preview.rows[0].item.discount_group, "");
    EXPECT_EQ(preview.rows[0].item.cost, Money{600});
    // A cost that is told does away with the way to another one.
    preview = previewed(std::string(head) + "tube-9.52,Tube,5.50,4.00,,,,,,\n", into);
    ASSERT_EQ(preview.rows.size(), 1U) << text_of(preview.problems);
    expected.cost = Money{400};
    expected.supplier_price.reset();
    expected.discount_group.clear();
    EXPECT_EQ(preview.rows[0].item, expected);
}

TEST(PriceImport, refuses_an_item_whose_prices_of_quantities_cannot_be_read) {
    const PriceList into = list();
    for (const char* lines :
         {"clip,Clip,,1.00\nclip,,25,\n", "clip,Clip,,1.00\nclip,,many,0.90\n",
          "clip,Clip,,1.00\nclip,,25,0.90\nclip,,25,0.80\n", "clip,Clip,,1.00\nclip,Other,25,0.90\n",
          "clip,Clip,,1.00\nclip,,1000001,0.90\n", "clip,Clip,,1.00\nclip,,25,0.90,7\n", "new,New,25,0.90\n"}) {
        const ImportPreview preview = previewed(std::string("id,text,from quantity,price\n") + lines, into);
        EXPECT_EQ(preview.rows.size(), 0U) << lines;
        EXPECT_EQ(preview.wrong_lines, 1U) << lines << text_of(preview.problems);
    }
}

TEST(PriceImport, refuses_what_cannot_be_an_import) {
    const tables::CsvTable read = table("id,price\nclip,1.00\n");
    const auto refused = [&](const ImportMapping& mapping, const tables::CsvTable& from) {
        return !preview_import(from, "p.csv", mapping, list()).ok();
    };
    const ImportMapping good = guess_mapping(read, list()).mapping;
    EXPECT_FALSE(refused(good, read));
    ImportMapping mapping = good;
    mapping.set(ImportField::id, -1);
    EXPECT_TRUE(refused(mapping, read)) << "nothing tells the item";
    mapping = good;
    mapping.set(ImportField::price, -1);
    EXPECT_TRUE(refused(mapping, read)) << "nothing to take";
    for (const int column : {2, -2, 1 << 30}) {
        mapping = good;
        mapping.set(ImportField::price, column);
        EXPECT_TRUE(refused(mapping, read)) << column;
    }
    mapping = good;
    mapping.names_row = 5;
    EXPECT_TRUE(refused(mapping, read));
    tables::CsvTable long_one = read;
    long_one.rows.resize(most_import_lines + 2, {"clip", "1.00"});
    long_one.line_of_row.resize(most_import_lines + 2, 7);
    EXPECT_TRUE(refused(good, long_one));
    long_one.rows.pop_back();
    long_one.line_of_row.pop_back();
    EXPECT_FALSE(refused(good, long_one));
}

TEST(PriceImport, counts_problems_that_it_does_not_show) {
    std::string text = "id,price\n";
    for (int i = 0; i < 300; ++i)
        text += "x" + std::to_string(i) + ",1.00\n";  // each lacks text and unit
    const ImportPreview preview = previewed(text, list());
    EXPECT_EQ(preview.problems.size(), most_import_problems);
    EXPECT_EQ(preview.wrong_lines, 300U);
    EXPECT_TRUE(told(preview.notes, "Only the first 200"));
}

TEST(PriceImport, does_not_grow_a_list_that_could_not_be_read_again) {
    std::string text = "id,text,unit,price\n";
    const std::string words(1990, 'x');
    for (int i = 0; i < 9000; ++i)
        text += "n" + std::to_string(i) + ',' + words + ",pc,1.00\n";
    const tables::CsvTable read = table(text);
    const ImportPreview preview = preview_import(read, "p.csv", guess_mapping(read, list()).mapping, list()).value();
    EXPECT_EQ(preview.added, 9000U);
    EXPECT_FALSE(apply_import(preview, list(), {}).ok());
    EXPECT_TRUE(apply_import(preview, list(), {false, false, false}).ok());
}

}  // namespace
}  // namespace price_import_test
}  // namespace wg::parts
