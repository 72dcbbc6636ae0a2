#include "tests/core/store/filled_store.h"

#include <gtest/gtest.h>

#include "core/quantity/sha256.h"
#include "core/store/customers.h"
#include "core/store/entries_kept.h"
#include "core/store/equipment_book.h"
#include "core/store/order_book.h"
#include "core/store/personal.h"
#include "core/store/price_book.h"
#include "core/store/purchase_book.h"
#include "core/store/quote_book.h"
#include "core/store/rule_book.h"
#include "core/weather/read.h"
#include "core/weather/write_plain.h"
#include "tests/core/store/some_prices.h"
#include "tests/core/store/some_rules.h"
#include "tests/core/store/store_fixture.h"
#include "tests/core/weather/made_files.h"

namespace wg::store::test {

namespace {

void fill_equipment(Store& store) {
    EquipmentBook book(store);
    ASSERT_TRUE(book.save(invented_cylinder("own-cylinder", "L\xC3\xA4rche 250"), 0, at(20)).ok());
    ASSERT_TRUE(book.save(invented_cylinder("own-cylinder", "L\xC3\xA4rche 255"), 1, at(21)).ok());
    ASSERT_TRUE(book.approve("own-cylinder", 2, "Ada Reed", at(22)).ok());
    ASSERT_TRUE(book.save(invented_cylinder("own-old", "Old"), 0, at(23)).ok());
    ASSERT_TRUE(book.withdraw("own-old", 1, at(24)).ok());
}

void fill_stock(Store& store, const std::string& job_id) {
    PurchaseBook purchases(store);
    const auto kept = purchases.keep(
        job_id,
        {{1, "Pellow's \"Copper\"", "tube-12.70", "Copper tube \xC3\xB8 12.70", "m", 15000},
         {2, "", "", "Own", "pc", 1}},
        [](const std::string& number) -> Result<PurchasePrints> {
            return PurchasePrints{"%PDF-1.7 invented " + number,
                                  {{"Pellow's \"Copper\"", "%PDF-1.7 to Pellow " + number}}};
        },
        at(25));
    ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
    ASSERT_TRUE(purchases.receive(kept.value().id, {{1, 0, 10000, false}}, "", at(26)).ok());
    ASSERT_TRUE(purchases.receive(kept.value().id, {{1, 10000, 5000, true}}, "caf\xC3\xA9", at(26)).ok());
    parts::StockMove move;
    move.item_id = "tube-12.70";
    move.unit = "m";
    move.kind = parts::StockMoveKind::taken;
    move.thousandths = 16500;
    move.job_id = job_id;
    move.note = "it's \xF0\x9F\x8F\xA0";
    const auto entered = StockBook(store).enter(move, at(27));
    ASSERT_TRUE(entered.ok()) << text_of(entered.problems());
    ASSERT_TRUE(
        EntriesKept(store).keep(EntryBook::prices, {"firm-2028", 1, "", "{\"caf\xC3\xA9\": '?'}"}, at(29)).ok());
    move.corrects_id = entered.value().id;
    move.thousandths = 15250;
    ASSERT_TRUE(StockBook(store).enter(move, at(28)).ok());
    ASSERT_TRUE(StockBook(store).take_for_job(job_id, {{"clip", "pc", 0, 3000}}, at(28)).ok());
}

}  // namespace

std::string invented_cylinder(const std::string& id, const std::string& name) {
    return "{\"schema\": 1, \"note\": \"invented\", \"cylinders\": [{\"id\": \"" + id +
           "\", \"maker\": \"Invented\", \"name\": \"" + name +
           "\", \"invented\": true, \"volume_l\": 250, \"height_m\": 1.6, \"diameter_m\": 0.6, \"mass_kg\": 75, "
           "\"standing_loss_kwh_24h\": 1.5, \"immersion_w\": 1500, \"max_pressure_bar\": 10, "
           "\"max_temperature_c\": 80, \"recirculation_port\": true}]}\n";
}

void fill(Store& store) {
    Job job = store.save(sample_job(), at(1)).value();
    job.notes += "\nSecond visit: it's the '?' valve, back\\slash, \xF0\x9F\x8F\xA0.";
    job = store.save(job, at(2)).value();
    for (unsigned n = 1; n <= 3; ++n)
        ASSERT_TRUE(store.save(numbered_job(n), at(3)).ok());
    ASSERT_TRUE(store.remove(numbered_job(3).id, at(4)).ok());
    IssuedQuote quote{id(0x900), job.id,  job.revision, "Q-2027-0042-1", "2027-06-22T08:00:00Z", "{\"price\":1}",
                      "",        -123450, "EUR"};
    ASSERT_TRUE(QuoteBook(store).issue(quote, "%PDF-1.7 invented", at(2)).ok());
    QuoteAnswer answer;
    answer.id = id(0x901);
    answer.quote_id = quote.id;
    answer.on = "2027-06-25";
    answer.who = "M. Lindholm";
    ASSERT_TRUE(QuoteBook(store).answer(answer, at(3), std::string("\xFF\xD8\xFF invented", 12)).ok());
    ASSERT_TRUE(NumberRanges(store).set_pattern(NumberKind::order, "Order {number}").ok());
    const PrintNumbered print = [](const std::string& number) -> Result<std::string> {
        return "%PDF-1.7 invented " + number;
    };
    const auto order = OrderBook(store).keep(NumberKind::order, quote.id, print, at(4));
    ASSERT_TRUE(order.ok());
    ASSERT_TRUE(OrderBook(store).keep(NumberKind::order, quote.id, print, at(4), {order.value().id}).ok());
    weather::Year year =
        weather::read_epw(weather::epw_text(weather::made_year(47.4, 9.2, 520.0, 1.0)), "made.epw").value();
    year.altitude_m = -0.0;
    for (double& air : year.air_c)
        air += 1.0 / 3.0;
    ASSERT_TRUE(store.add_weather_year(year, "Works' roof", at(5)).ok());
    std::string picture("\xFF\xD8\xFF", 3);
    for (int i = 0; i < 70000; ++i)
        picture += static_cast<char>(i * 7 % 256);
    ASSERT_TRUE(store.add_photograph(picture, at(6)).ok());
    Job edited = job;
    edited.notes = "typed and not saved";
    ASSERT_TRUE(store.keep_unsaved(edited, at(7)).ok());
    ServiceDueRow due;
    due.service_id = "look";
    due.text = "Look at the plate";
    due.due_on = "2028-06-01";
    ASSERT_TRUE(store.set_services_due(job.id, {due}).ok());
    RefrigerantEntry entry;
    entry.id = id(0x501);
    entry.on = "2027-06-21";
    entry.refrigerant = "R134a";
    entry.kg = 0.1 + 0.2;
    entry.note = "caf\xC3\xA9";
    ASSERT_TRUE(store.add_refrigerant_entry(entry, at(8)).ok());
    entry.id = id(0x502);
    entry.corrects_id = id(0x501);
    entry.job_id = job.id;
    entry.reading_id = id(0x503);
    ASSERT_TRUE(store.add_refrigerant_entry(entry, at(9)).ok());
    customers::Customer customer;
    customer.name = "Lindholm & Caf\xC3\xA9 'Invented'";
    customer.addresses = {{customers::AddressUse::site, "Road 1", "7\\", ""}};
    customer.contacts = {{"M. Lindholm", "", "+46 555 0101 22", "m@lindholm.example"}};
    customer = CustomerBook(store).save(customer, at(9)).value();
    ASSERT_TRUE(CustomerBook(store).link(job.id, customer.id).ok());
    customers::Customer gone;
    gone.name = "Nobody";
    gone = CustomerBook(store).save(gone, at(9)).value();
    ASSERT_TRUE(CustomerBook(store).link(numbered_job(3).id, gone.id).ok());
    ASSERT_TRUE(PersonalData(store).erase({numbered_job(3).id}, "asked by letter", at(10)).ok());
    PriceBook prices(store);
    ASSERT_TRUE(prices.save("firm-2027", price_list_text("firm-2027", "Caf\xC3\xA9"), 0, "first", at(11)).ok());
    ASSERT_TRUE(prices.save("firm-2027", price_list_text("firm-2027", "it's ?"), 1, "", at(12)).ok());
    ASSERT_TRUE(prices.withdraw("firm-2027", 2, "", at(13)).ok());
    ASSERT_TRUE(prices.save("firm-2028", price_list_text("firm-2028", "Next"), 0, "", at(14)).ok());
    RuleBook rules(store);
    ASSERT_TRUE(rules.save("firm-rules", rule_set_text("firm-rules", "Caf\xC3\xA9 '?'"), 0, "first", at(11)).ok());
    ASSERT_TRUE(rules.save("firm-rules", rule_set_text("firm-rules", "Second"), 1, "", at(12)).ok());
    ASSERT_TRUE(rules.withdraw("firm-rules", 2, "out of date", at(13)).ok());
    ASSERT_TRUE(rules.save("own-rules", rule_set_text("own-rules", "Own"), 0, "", at(14)).ok());
    ASSERT_TRUE(rules.choose_for_new_jobs("firm-rules").ok());
    fill_equipment(store);
    fill_stock(store, job.id);
    ASSERT_TRUE(store.set_setting("firm.name", "Alder & Sons").ok());
    ASSERT_TRUE(store.set_setting("firm.line2", "").ok());
}

void expect_same_answers(Store& one, Store& other) {
    for (const char* query : {"", "lindholm", "vaster", "2027-00", "second visit", "valve", "job 2", "work"}) {
        std::vector<std::string> ids[2];
        Store* stores[] = {&one, &other};
        for (int i = 0; i < 2; ++i)
            for (const JobRow& row : stores[i]->list(query, 50, 0).value())
                ids[i].push_back(row.id);
        EXPECT_EQ(ids[0], ids[1]) << query;
    }
    const std::string job_id = sample_job().id;
    EXPECT_EQ(one.load(job_id).value(), other.load(job_id).value());
    EXPECT_EQ(one.load_revision(job_id, 1).value(), other.load_revision(job_id, 1).value());
    EXPECT_EQ(one.history(job_id).value(), other.history(job_id).value());
    EXPECT_EQ(one.unsaved(job_id).value()->job, other.unsaved(job_id).value()->job);
    EXPECT_EQ(one.quotes(job_id).value().at(0).gross_minor, other.quotes(job_id).value().at(0).gross_minor);
    EXPECT_EQ(one.refrigerant_entries().value(), other.refrigerant_entries().value());
    EXPECT_EQ(one.services_due("").value().at(0).street, other.services_due("").value().at(0).street);
    const auto equipment = EquipmentBook(one).current().value().items;
    EXPECT_EQ(equipment.size(), 2U);
    EXPECT_EQ(equipment, EquipmentBook(other).current().value().items);
    EXPECT_EQ(EquipmentBook(one).history("own-cylinder").value().items,
              EquipmentBook(other).history("own-cylinder").value().items);
    EXPECT_EQ(RuleBook(one).history("firm-rules").value().size(), 3U);
    EXPECT_EQ(RuleBook(one).history("firm-rules").value(), RuleBook(other).history("firm-rules").value());
    EXPECT_EQ(RuleBook(one).content("firm-rules", 1).value(), RuleBook(other).content("firm-rules", 1).value());
    EXPECT_EQ(RuleBook(other).for_new_jobs().value(), "firm-rules");
    const auto stock = StockBook(one).levels().value();
    ASSERT_EQ(stock.size(), 2U);
    EXPECT_EQ(stock[0].thousandths, -3000);
    EXPECT_EQ(stock[1].thousandths, -250);
    EXPECT_EQ(stock_standings(one, {}, "").value(), stock_standings(other, {}, "").value());
    EXPECT_EQ(StockBook(other).taken_as_planned(job_id).value(), 1);
    EXPECT_EQ(stock, StockBook(other).levels().value());
    EXPECT_EQ(StockBook(one).moves("tube-12.70", 0).value(), StockBook(other).moves("tube-12.70", 0).value());
    // A seat's own; the rows themselves are compared when they are copied.
    if (one.by() == other.by())
        EXPECT_EQ(EntriesKept(one).all(EntryBook::prices).value().entries,
                  EntriesKept(other).all(EntryBook::prices).value().entries);
    const auto purchases = PurchaseBook(one).lists(10).value();
    const auto purchases_other = PurchaseBook(other).lists(10).value();
    ASSERT_EQ(purchases.size(), 1U);
    ASSERT_EQ(purchases_other.size(), 1U);
    const std::string list = purchases[0].paper.id;
    EXPECT_EQ(purchases[0].paper, purchases_other[0].paper);
    EXPECT_EQ(purchases[0].lines, purchases_other[0].lines);
    EXPECT_TRUE(purchases[0].lines.at(0).closed);
    EXPECT_EQ(purchases[0].papers_to, purchases_other[0].papers_to);
    EXPECT_EQ(PurchaseBook(one).bookings(list).value().size(), 2U);
    EXPECT_EQ(PurchaseBook(one).paper(list).value(), PurchaseBook(other).paper(list).value());
    EXPECT_EQ(PurchaseBook(one).paper_to(list, purchases[0].papers_to.at(0)).value(),
              PurchaseBook(other).paper_to(list, purchases[0].papers_to.at(0)).value());
    const auto customers_one = CustomerBook(one).all().value();
    const auto customers_other = CustomerBook(other).all().value();
    ASSERT_EQ(customers_one.size(), 1U) << "the customer of an erased job is erased";
    ASSERT_EQ(customers_other.size(), 1U);
    EXPECT_TRUE(customers::same_content(customers_one[0], customers_other[0]));
    EXPECT_EQ(CustomerBook(other).customer_of(job_id).value(), customers_one[0].id);
    EXPECT_EQ(CustomerBook(other).next_number().value(), "C-0003") << "a number is not given twice";
    const std::string year_id = one.weather_years().value().at(0).id;
    EXPECT_EQ(weather::write_plain(one.weather_year(year_id).value()),
              weather::write_plain(other.weather_year(year_id).value()));
    EXPECT_EQ(one.setting("firm.line2", "fallback").value(), "");
    EXPECT_EQ(other.setting("firm.line2", "fallback").value(), "");
    EXPECT_FALSE(other.load(numbered_job(3).id).ok() && other.list("", 50, 0).value().size() == 4U)
        << "a removed job stays removed";
    EXPECT_EQ(one.next_job_number(2027).value(), other.next_job_number(2027).value());
}

}  // namespace wg::store::test
