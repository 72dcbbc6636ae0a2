// Customers: kept, found, brought together, linked with jobs, and taken in from a table.

#include "core/store/customers.h"

#include <gtest/gtest.h>

#include "core/customers/list_out.h"
#include "core/store/quote_book.h"
#include "core/tables/csv_reader.h"
#include "core/tables/csv_writer.h"
#include "tests/core/store/store_fixture.h"

namespace wg::store::test {
namespace customers_test {
namespace {

using customers::AddressUse;
using customers::Customer;

Customer invented(const std::string& name, const std::string& postcode = "47100") {
    Customer out;
    out.name = name;
    out.addresses = {{AddressUse::bill, "Invented Lane 3", postcode, "Springholm"}};
    out.contacts = {{"Ines", "owner", "+34 600 555 010", "ines@invented.example"}};
    return out;
}

template <class T>
std::string why(const Result<T>& result) {
    return result.ok() ? std::string() : text_of(result.problems());
}

TEST_P(EachStore, ACustomerIsKeptWholeAndGetsANumber) {
    const auto store = open(path(), "Ada on desk-2");
    CustomerBook book(*store);
    Customer wanted = invented("Jos\xC3\xA9 Ruiz");
    wanted.notes = "Gate code at the 'office'";
    wanted.tax_id = "X-1";
    wanted.addresses.push_back({AddressUse::site, "Hill 9", "47200", "Oldholm"});
    wanted.addresses.push_back({});
    const auto kept = book.save(wanted, at(1));
    ASSERT_TRUE(kept.ok()) << why(kept);
    EXPECT_EQ(kept.value().number, "C-0001");
    EXPECT_EQ(kept.value().revision, 1);
    EXPECT_EQ(kept.value().changed_by, "Ada on desk-2");
    wanted.addresses.pop_back();
    const auto read = book.load(kept.value().id);
    ASSERT_TRUE(read.ok()) << why(read);
    EXPECT_TRUE(customers::same_content(read.value(), wanted)) << "but for the empty address";
    EXPECT_EQ(read.value().changed_at, iso8601(at(1)));
    EXPECT_EQ(book.save(invented("Someone"), at(2)).value().number, "C-0002");
    EXPECT_FALSE(book.load(id(0xFFF)).ok());
}

TEST_P(EachStore, TheSecondToSaveACustomerIsTold) {
    const auto store = open(path(), "Ada");
    CustomerBook book(*store);
    const Customer first = book.save(invented("Ruiz"), at(1)).value();
    Customer mine = first;
    mine.notes = "mine";
    ASSERT_TRUE(book.save(mine, at(2)).ok());
    Customer theirs = first;
    theirs.notes = "theirs";
    EXPECT_NE(why(book.save(theirs, at(3))).find("was saved by Ada at"), std::string::npos)
        << why(book.save(theirs, at(3)));
    EXPECT_EQ(book.load(first.id).value().notes, "mine");
    mine = book.load(first.id).value();
    mine.number = "C-7";
    EXPECT_NE(why(book.save(mine, at(4))).find("keeps its number"), std::string::npos);
    EXPECT_EQ(sql(path(), "UPDATE customer SET number = 'C-7'"), "a customer keeps the number it was given");
    ASSERT_TRUE(book.remove(first.id).ok());
    mine.number = first.number;
    EXPECT_NE(why(book.save(mine, at(5))).find("no longer in the store"), std::string::npos);
}

TEST_P(EachStore, CustomersAreRefusedForWhatCannotBe) {
    const auto store = open();
    CustomerBook book(*store);
    EXPECT_NE(why(book.save(invented("  "), at(1))).find("name: is empty"), std::string::npos);
    Customer wrong = invented("Ruiz");
    wrong.contacts[0].email = "no address";
    EXPECT_NE(why(book.save(wrong, at(1))).find("is no e-mail address"), std::string::npos);
    wrong = invented("Ruiz");
    wrong.notes = "\xFF";
    EXPECT_NE(why(book.save(wrong, at(1))).find("is no text"), std::string::npos);
    ASSERT_TRUE(book.save(invented("Ruiz"), at(1)).ok());
    Customer taken = invented("Other");
    taken.number = "C-0001";
    EXPECT_NE(why(book.save(taken, at(1))).find("is or was that of 'Ruiz'"), std::string::npos);
    EXPECT_EQ(book.count("").value(), 1);
}

TEST_P(EachStore, CustomersAreFoundByTheBeginningsOfAnyWords) {
    const auto store = open();
    CustomerBook book(*store);
    ASSERT_TRUE(book.save(invented("Zo\xC3\xAB M\xC3\xBCller"), at(1)).ok());
    ASSERT_TRUE(book.save(invented("Alba 100% Sol_ar"), at(2)).ok());
    ASSERT_TRUE(book.save(invented("\xC3\x81lvaro Gil", "99000"), at(3)).ok());
    const auto names = [&book](const std::string& words) {
        std::string out;
        for (const CustomerRow& row : book.page(words, 10, 0).value())
            out += row.name + "|";
        return out;
    };
    EXPECT_EQ(names(""), "Alba 100% Sol_ar|\xC3\x81lvaro Gil|Zo\xC3\xAB M\xC3\xBCller|") << "by name, accents aside";
    EXPECT_EQ(names("muller zoe"), "Zo\xC3\xAB M\xC3\xBCller|");
    EXPECT_EQ(names("uller"), "") << "words are found by their beginnings";
    EXPECT_EQ(names("99"), "\xC3\x81lvaro Gil|");
    EXPECT_EQ(names("C-0002"), "Alba 100% Sol_ar|");
    EXPECT_EQ(names("34600555"), names("")) << "a telephone number without its blanks";
    EXPECT_EQ(names("%"), names(""));
    EXPECT_EQ(names("100% sol"), "Alba 100% Sol_ar|");
    EXPECT_EQ(book.page("", 1, 1).value().at(0).name, "\xC3\x81lvaro Gil");
    EXPECT_EQ(book.count("springholm").value(), 3);
    EXPECT_EQ(book.page("", 1, 0).value().at(0).phone, "+34 600 555 010");
}

TEST_P(EachStore, JobsQuotesAndFittedPartsAreThereAtOneLook) {
    const auto store = open();
    CustomerBook book(*store);
    const Customer customer = book.save(invented("Ruiz"), at(1)).value();
    Job job = numbered_job(1);
    job.record.clear();
    Reading serial;
    serial.id = id(0x701);
    serial.kind = ReadingKind::serial_number;
    serial.taken_at = "2027-06-21T10:00:00Z";
    serial.subject = "block";
    serial.note = "B-100";
    Reading corrected = serial;
    corrected.id = id(0x702);
    corrected.corrects_id = serial.id;
    corrected.note = "B-101";
    job.record = {serial, corrected};
    job = store->save(job, at(2)).value();
    ASSERT_TRUE(store->save(numbered_job(2), at(3)).ok());
    ASSERT_TRUE(book.link(job.id, customer.id).ok());
    ASSERT_TRUE(book.link(numbered_job(2).id, customer.id).ok());
    ASSERT_TRUE(store->issue_quote({id(0x710), job.id, 1, "Q-1", "2027-06-22T08:00:00Z", "{}", "", 5000, "EUR"}).ok());
    QuoteAnswer answer;
    answer.id = id(0x711);
    answer.quote_id = id(0x710);
    answer.on = "2027-06-25";
    answer.who = "Ruiz";
    ASSERT_TRUE(QuoteBook(*store).answer(answer, at(4)).ok());

    auto look = book.at_one_look(customer.id);
    ASSERT_TRUE(look.ok()) << why(look);
    ASSERT_EQ(look.value().jobs.size(), 2U);
    EXPECT_EQ(look.value().jobs[0].id, numbered_job(2).id) << "newest first";
    ASSERT_EQ(look.value().quotes.size(), 1U);
    EXPECT_EQ(look.value().quotes[0].answer, "accepted");
    EXPECT_EQ(look.value().quotes[0].gross_minor, 5000);
    ASSERT_EQ(look.value().fitted.size(), 1U) << "the corrected number alone";
    EXPECT_EQ(look.value().fitted[0].part.serial, "B-101");
    EXPECT_EQ(look.value().fitted[0].part.part, "block");
    EXPECT_EQ(look.value().fitted[0].part.fitted_on, "2027-06-21");
    EXPECT_EQ(book.page("", 1, 0).value().at(0).jobs, 2);
    EXPECT_NE(why(book.remove(customer.id)).find("has jobs"), std::string::npos);

    ASSERT_TRUE(store->remove(numbered_job(2).id, at(5)).ok());
    EXPECT_EQ(book.at_one_look(customer.id).value().jobs.size(), 1U);
    EXPECT_EQ(book.page("", 1, 0).value().at(0).jobs, 1);
    EXPECT_FALSE(book.link(id(0xFFF), customer.id).ok());
    EXPECT_FALSE(book.link(job.id, id(0xFFF)).ok());
    ASSERT_TRUE(book.unlink(job.id).ok());
    EXPECT_EQ(book.customer_of(job.id).value(), "");
    EXPECT_FALSE(book.at_one_look(id(0xFFF)).ok());
}

TEST_P(EachStore, AJobFromElsewhereIsOfferedItsCustomerAndNotLinked) {
    const auto store = open();
    CustomerBook book(*store);
    const Customer customer = book.save(invented("Jos\xC3\xA9 Ruiz"), at(1)).value();
    Job job = numbered_job(1);
    job.client = {"jose  RUIZ", "Elsewhere 4", "Faraway", "00001", "0600 555010", "", ""};
    job = store->save(job, at(2)).value();
    Job other = numbered_job(2);
    other.client = {"Jos\xC3\xA9 Ruiz", "Elsewhere 5", "Faraway", "00001", "0999 123456", "x@y.example", ""};
    other = store->save(other, at(3)).value();
    ASSERT_EQ(book.likely_of(job.client).value().size(), 1U) << "the telephone number, said from within the country";
    EXPECT_EQ(book.likely_of(job.client).value()[0].id, customer.id);
    EXPECT_TRUE(book.likely_of(other.client).value().empty()) << "the name alone is not enough";
    Client mail = other.client;
    mail.email = "INES@invented.example";
    EXPECT_EQ(book.likely_of(mail).value().size(), 1U);
    Client place = other.client;
    place.postcode = " 47100";
    EXPECT_EQ(book.likely_of(place).value().size(), 1U);
    EXPECT_EQ(book.customer_of(job.id).value(), "");
    ASSERT_EQ(book.likely_jobs(customer.id).value().size(), 1U);
    EXPECT_EQ(book.likely_jobs(customer.id).value()[0].id, job.id);
    ASSERT_TRUE(book.link(job.id, customer.id).ok());
    EXPECT_TRUE(book.likely_jobs(customer.id).value().empty());
    EXPECT_EQ(CustomerBook::client_of(CustomerBook::of_client(job.client)).phone, job.client.phone);
    EXPECT_EQ(CustomerBook::client_of(CustomerBook::of_client(job.client)), job.client);
}

TEST_P(EachStore, TwoCustomersBecomeOneAndNothingIsLost) {
    const auto store = open();
    CustomerBook book(*store);
    const Customer keep = book.save(invented("Ruiz"), at(1)).value();
    Customer other = invented("Ruiz Hermanos");
    other.tax_id = "X-2";
    other.notes = "Pays late";
    other.contacts.push_back({"Otto", "", "", ""});
    other = book.save(other, at(2)).value();
    const Job job = store->save(numbered_job(1), at(3)).value();
    ASSERT_TRUE(book.link(job.id, other.id).ok());
    EXPECT_FALSE(book.bring_together(keep.id, keep.id, at(4)).ok());
    EXPECT_FALSE(book.bring_together(keep.id, id(0xFFF), at(4)).ok());
    const auto joined = book.bring_together(keep.id, other.id, at(4));
    ASSERT_TRUE(joined.ok()) << why(joined);
    EXPECT_EQ(joined.value().former_numbers, std::vector<std::string>{"C-0002"});
    EXPECT_EQ(joined.value().addresses.size(), 1U) << "the same address once";
    EXPECT_EQ(joined.value().contacts.size(), 2U);
    EXPECT_EQ(joined.value().tax_id, "X-2");
    EXPECT_NE(joined.value().notes.find("Pays late"), std::string::npos);
    EXPECT_NE(joined.value().notes.find("Ruiz Hermanos"), std::string::npos);
    EXPECT_FALSE(book.load(other.id).ok());
    EXPECT_EQ(book.customer_of(job.id).value(), keep.id);
    EXPECT_EQ(book.page("C-0002", 5, 0).value().at(0).id, keep.id) << "found by the number of old papers";
    EXPECT_EQ(book.next_number().value(), "C-0003");
    Customer again = invented("New");
    again.number = "C-0002";
    EXPECT_FALSE(book.save(again, at(5)).ok());
}

TEST_P(EachStore, FormerNumbersGoOutAndComeInAndAreNobodyElses) {
    const auto store = open();
    CustomerBook book(*store);
    const Customer keep = book.save(invented("Ruiz"), at(1)).value();
    const Customer other = book.save(invented("Ruiz again"), at(2)).value();
    const Customer joined = book.bring_together(keep.id, other.id, at(3)).value();
    const std::string csv = tables::write_csv(customers::rows_of(book.all().value()));

    ASSERT_TRUE(book.remove(joined.id).ok());
    CustomerBook& there = book;
    const auto table = tables::read_csv(csv, "out.csv");
    ASSERT_TRUE(table.ok()) << why(table);
    const auto preview = customers::preview_import(table.value(), customers::guess_mapping(table.value()), {},
                                                   "out.csv", CustomerBook::name_key);
    ASSERT_TRUE(preview.problems.empty()) << text_of(preview.problems);
    ASSERT_TRUE(there.import(preview.rows, at(4)).ok());
    const auto back = there.all().value();
    ASSERT_EQ(back.size(), 1U);
    EXPECT_TRUE(customers::same_content(back[0], joined));
    EXPECT_EQ(back[0].former_numbers, std::vector<std::string>{"C-0002"});
    EXPECT_EQ(there.page("C-0002", 5, 0).value().at(0).id, back[0].id);
    EXPECT_EQ(there.next_number().value(), "C-0003") << "never given again";

    Customer thief = invented("Alder");
    thief.former_numbers = {"C-0002"};
    EXPECT_NE(why(there.save(thief, at(5))).find("the former number 'C-0002' is or was that of 'Ruiz'"),
              std::string::npos)
        << why(there.save(thief, at(5)));
    thief.former_numbers = {back[0].number};
    EXPECT_FALSE(there.save(thief, at(5)).ok());
    thief.former_numbers = {"two\nlines"};
    EXPECT_FALSE(there.save(thief, at(5)).ok());
    thief.former_numbers = {"M-17"};
    EXPECT_TRUE(there.save(thief, at(6)).ok()) << why(there.save(thief, at(6)));
}

TEST_P(EachStore, APreviewIsTakenInWholeOrNotAtAll) {
    const auto store = open();
    CustomerBook book(*store);
    const Customer here = book.save(invented("Jos\xC3\xA9 Ruiz"), at(1)).value();
    const auto table = tables::read_csv(
        "Kundennummer;Name;PLZ;Ort;Telefon\n"
        ";JOSE RUIZ;47100;Springholm;+34 600 555 011\n"
        "C-0002;Alder & Sons;12345;Ulm;0555 1234567\n"
        ";Birch;54321;Wels;0555 7654321\n",
        "list.csv");
    ASSERT_TRUE(table.ok()) << why(table);
    const auto preview = customers::preview_import(table.value(), customers::guess_mapping(table.value()),
                                                   book.all().value(), "list.csv", CustomerBook::name_key);
    ASSERT_TRUE(preview.problems.empty()) << text_of(preview.problems);
    ASSERT_EQ(preview.rows.size(), 3U);
    EXPECT_EQ(preview.rows[0].outcome, customers::Outcome::changed);
    EXPECT_EQ(book.count("").value(), 1) << "a preview keeps nothing";

    auto hostile = preview.rows;
    hostile[2].customer.number = "C-0002";
    EXPECT_NE(why(book.import(hostile, at(2))).find("line 4"), std::string::npos) << why(book.import(hostile, at(2)));
    EXPECT_EQ(book.count("").value(), 1) << "all or none";
    EXPECT_EQ(book.load(here.id).value().revision, 1);

    const auto done = book.import(preview.rows, at(3));
    ASSERT_TRUE(done.ok()) << why(done);
    EXPECT_EQ(done.value().added, 2);
    EXPECT_EQ(done.value().changed, 1);
    EXPECT_EQ(book.load(here.id).value().contacts[0].phone, "+34 600 555 011");
    EXPECT_EQ(book.page("birch", 1, 0).value().at(0).number, "C-0003");
    EXPECT_NE(why(book.import(preview.rows, at(4))).find("after it was read here"), std::string::npos)
        << "a preview that was overtaken";
}

}  // namespace
}  // namespace customers_test
}  // namespace wg::store::test
