#include "core/customers/import.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/customers/list_out.h"
#include "core/tables/csv_writer.h"
#include "tests/tools/sweep.h"

namespace wg::customers {
namespace import_test {

std::string plain(const std::string& name) {
    return plain_key(name);
}

tables::CsvTable read(const std::string& text) {
    auto table = tables::read_csv(text, "list.csv");
    EXPECT_TRUE(table) << (table ? std::string() : text_of(table.problems()));
    return table ? table.value() : tables::CsvTable{};
}

ImportPreview preview(const std::string& text, const std::vector<Customer>& here = {}) {
    const tables::CsvTable table = read(text);
    return preview_import(table, guess_mapping(table), here, "list.csv", plain);
}

Customer ruiz() {
    Customer out;
    out.id = "00000000-0000-4000-8000-000000000001";
    out.number = "C-0001";
    out.name = "Ruiz";
    out.revision = 4;
    out.addresses = {{AddressUse::bill, "Lane 3", "47100", "Springholm"}};
    out.contacts = {{"Ines", "owner", "+34 600 555 010", "ines@invented.example"}};
    return out;
}

TEST(CustomerImport, KnowsHeadingsInThreeLanguages) {
    using C = Column;
    EXPECT_EQ(guess_mapping(read("Customer No.,Name,Street,Post Code,Town,Phone,E-Mail,Tax ID\n")).columns,
              (std::vector<C>{C::number, C::name, C::bill_street, C::bill_postcode, C::bill_town, C::phone, C::email,
                              C::tax_id}));
    EXPECT_EQ(
        guess_mapping(read("Kunden-Nr.;Vorname;Nachname;Straße;PLZ;Ort;Telefon;E-Mail;USt-IdNr.;Ansprechpartner\n"))
            .columns,
        (std::vector<C>{C::number, C::first_name, C::name, C::bill_street, C::bill_postcode, C::bill_town, C::phone,
                        C::email, C::tax_id, C::contact_name}));
    EXPECT_EQ(
        guess_mapping(read("código;Razón social;NIF;Dirección;C.P.;Población;Teléfono;correo electrónico;CARGO\n"))
            .columns,
        (std::vector<C>{C::number, C::name, C::tax_id, C::bill_street, C::bill_postcode, C::bill_town, C::phone,
                        C::email, C::contact_role}));
    const Mapping twice = guess_mapping(read("Name,Telefon,Mobil,Nonsense\n"));
    EXPECT_EQ(twice.columns, (std::vector<C>{C::name, C::phone, C::ignored, C::ignored}));
    EXPECT_TRUE(twice.headings);
    EXPECT_EQ(guess_mapping(read("Nombre,Teléfono\n")).columns.front(), C::name) << "with no surname beside it";
    EXPECT_FALSE(guess_mapping(read("Ruiz,47100\nOrt & Co,1\n")).headings);
}

TEST(CustomerImport, AMappingNeedsANameAndNothingTwice) {
    EXPECT_EQ(problems_of(Mapping{{Column::phone}, true}).size(), 1U);
    EXPECT_TRUE(problems_of(Mapping{{Column::name, Column::ignored, Column::ignored}, true}).empty());
    EXPECT_EQ(problems_of(Mapping{{Column::name, Column::phone, Column::phone}, true}).front().where, "column 3");
}

TEST(CustomerImport, TellsNewChangedAndSame) {
    const ImportPreview out = preview(
        "number,name,postcode,town,phone,notes\n"
        ",RUIZ ,47100,Springholm,,\n"
        ",Ruiz,99999,Elsewhere,,\n"
        ",Alder,47100,,0555 123,\n",
        {ruiz()});
    ASSERT_TRUE(out.problems.empty()) << text_of(out.problems);
    ASSERT_EQ(out.rows.size(), 3U);
    EXPECT_EQ(out.rows[0].outcome, Outcome::changed) << "the name is written in other letters";
    EXPECT_EQ(out.rows[0].changes, std::vector<std::string>{"name: 'Ruiz' becomes 'RUIZ'"});
    EXPECT_EQ(out.rows[1].outcome, Outcome::is_new) << "the same name at another place";
    EXPECT_EQ(out.rows[2].outcome, Outcome::is_new);
    EXPECT_EQ(out.rows[2].line, 4);
    const ImportPreview same = preview("name,postcode,phone\nRuiz,47100,\n", {ruiz()});
    ASSERT_EQ(same.rows.size(), 1U);
    EXPECT_EQ(same.rows[0].outcome, Outcome::same);
    EXPECT_EQ(same.rows[0].customer.contacts[0].phone, "+34 600 555 010") << "an empty cell changes nothing";
    EXPECT_EQ(same.rows[0].customer.revision, 4);
}

TEST(CustomerImport, FindsByNumberButWritesNobodyOverForANumberAlone) {
    const ImportPreview out = preview("number,name,postcode,town\nc-0001,Ruiz e Hijos,47100,Newtown\n", {ruiz()});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    EXPECT_EQ(out.rows[0].customer.name, "Ruiz e Hijos");
    EXPECT_EQ(out.rows[0].customer.id, ruiz().id);
    EXPECT_EQ(out.rows[0].changes.size(), 2U);
    const ImportPreview stranger = preview("number,name,postcode\nC-0001,Alder,12345\n", {ruiz()});
    EXPECT_TRUE(stranger.rows.empty());
    ASSERT_EQ(stranger.problems.size(), 1U);
    EXPECT_NE(stranger.problems[0].text().find("list.csv, line 2: has the number of 'Ruiz', but is of 'Alder'"),
              std::string::npos)
        << stranger.problems[0].text();
    Customer joined = ruiz();
    joined.former_numbers = {"C-0009"};
    EXPECT_EQ(preview("number,name\nC-0009,Ruiz\n", {joined}).rows.at(0).outcome, Outcome::same);
    const ImportPreview no_name = preview("number,name,town\nC-0001,,Newtown\n", {ruiz()});
    ASSERT_EQ(no_name.rows.size(), 1U) << "the number says who";
    EXPECT_EQ(no_name.rows[0].customer.name, "Ruiz");
}

TEST(CustomerImport, SaysByLineWhatIsWrong) {
    Customer second = ruiz();
    second.id = "00000000-0000-4000-8000-000000000002";
    second.number = "C-0002";
    const ImportPreview out = preview(
        "name,postcode,email\n"
        ",47100,\n"
        "Alder,1,no address\n"
        "Birch,2,b@birch.example\n"
        "birch,2,\n"
        "Ruiz,47100,\n"
        ",,\n",
        {ruiz(), second});
    EXPECT_EQ(out.rows.size(), 1U);
    ASSERT_EQ(out.problems.size(), 4U) << text_of(out.problems);
    EXPECT_EQ(out.problems[0].where, "list.csv, line 2");
    EXPECT_NE(out.problems[0].what.find("has no name"), std::string::npos);
    EXPECT_EQ(out.problems[1].where, "list.csv, line 3");
    EXPECT_NE(out.problems[1].what.find("is no e-mail address"), std::string::npos);
    EXPECT_NE(out.problems[2].text().find("line 5: is the customer of line 4 again"), std::string::npos)
        << out.problems[2].text();
    EXPECT_NE(out.problems[3].text().find("fits several customers: C-0001, C-0002"), std::string::npos)
        << out.problems[3].text();
    for (const Problem& problem : out.problems)
        EXPECT_FALSE(problem.remedy.empty());
    EXPECT_FALSE(preview_import(read("a,b\n"), Mapping{{Column::phone}, true}, {}, "list.csv", plain).problems.empty());
}

TEST(CustomerImport, PutsContactsWhereTheyBelong) {
    const ImportPreview out = preview(
        "name,postcode,contact,phone,first name,site street\n"
        "Ruiz,47100,Otto,0555 999,,Hill 9\n",
        {ruiz()});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    const Customer& made = out.rows[0].customer;
    ASSERT_EQ(made.contacts.size(), 2U) << "another person is another contact";
    EXPECT_EQ(made.contacts[0], ruiz().contacts[0]);
    EXPECT_EQ(made.contacts[1], (Contact{"Otto", "", "0555 999", ""}));
    ASSERT_EQ(made.addresses.size(), 2U);
    EXPECT_EQ(made.addresses[1], (Address{AddressUse::site, "Hill 9", "", ""}));
    const ImportPreview person = preview("first name,last name\nAda,Reed\nJo,\n");
    ASSERT_EQ(person.rows.size(), 2U);
    EXPECT_EQ(person.rows[0].customer.name, "Ada Reed");
    EXPECT_EQ(person.rows[1].customer.name, "Jo");
}

TEST(CustomerImport, WhatIsHandedOutComesInAsTheSame) {
    Customer with_formula = ruiz();
    with_formula.notes = "=SUM(A1)\nsecond line, \"quoted\"";
    with_formula.former_numbers = {"C-0002", "7 b"};
    const std::string csv = tables::write_csv(rows_of({with_formula}));
    EXPECT_NE(csv.find("'=SUM"), std::string::npos);
    const ImportPreview out = preview(csv, {with_formula});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    EXPECT_EQ(out.rows[0].outcome, Outcome::same) << (out.rows[0].changes.empty() ? "" : out.rows[0].changes[0]);
    const ImportPreview fresh = preview(csv);
    ASSERT_EQ(fresh.rows.size(), 1U);
    EXPECT_TRUE(same_content(fresh.rows[0].customer, with_formula));
}

TEST(CustomerImport, FormerNumbersComeToThoseThatAreThere) {
    Customer here = ruiz();
    here.former_numbers = {"C-0004"};
    const std::string list =
        "number,name,Former numbers\n"
        "C-0001,Ruiz,\"C-0004\n C 0007, old \n\nC-0001\"\n";
    const ImportPreview out = preview(list, {here});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    EXPECT_EQ(out.rows[0].customer.former_numbers, (std::vector<std::string>{"C-0004", "C 0007, old"}))
        << "its own number is no former one";
    EXPECT_EQ(out.rows[0].changes, std::vector<std::string>{"former number: 'C 0007, old' is added"});
    EXPECT_EQ(preview("number,name,Former numbers\nC-0001,Ruiz,\n", {here}).rows.at(0).outcome, Outcome::same)
        << "none is taken away";
    EXPECT_EQ(guess_mapping(read("Name;Fr\xC3\xBChere Nummern\n")).columns.back(), Column::former_numbers);
    EXPECT_EQ(guess_mapping(read("Nombre;N\xC3\xBAmeros anteriores\n")).columns.back(), Column::former_numbers);
}

TEST(CustomerImport, AFormerNumberIsNobodyElses) {
    const ImportPreview of_here = preview("number,name,former numbers\nC-0002,Alder,c-0001\n", {ruiz()});
    ASSERT_EQ(of_here.problems.size(), 1U);
    EXPECT_NE(of_here.problems[0].text().find("line 2: has the former number 'c-0001', which is that of 'Ruiz'"),
              std::string::npos)
        << of_here.problems[0].text();
    const ImportPreview of_a_line =
        preview("number,name,former numbers\nC-1,Alder,\nC-2,Birch,C-1\nC-3,Cedar,C-9\nC-9,Dogwood,\n");
    ASSERT_EQ(of_a_line.problems.size(), 2U) << text_of(of_a_line.problems);
    EXPECT_NE(of_a_line.problems[0].text().find("line 3: has the former number 'C-1', which is that of line 2"),
              std::string::npos)
        << of_a_line.problems[0].text();
    EXPECT_NE(of_a_line.problems[1].text().find("line 5: is the customer of line 4 again"), std::string::npos)
        << of_a_line.problems[1].text();
}

TEST(CustomerImport, LinesContinueTheCustomerOfTheirNumber) {
    const ImportPreview out = preview(
        "number,name,postcode,town,contact,phone,tax id\n"
        "C-7,Alder,100,Dale,Ann,0555 000 001,T1\n"
        "C-7,,,,Ben,0555 000 002,\n"
        "C-8,Birch,200,,Cid,0555 000 003,\n"
        "C-8,,300,Hill,,,\n"
        "c-7,ALDER,,,Dan,0555 000 004,\n"
        "C-7,,400,Shore,,,T1\n");
    ASSERT_TRUE(out.problems.empty()) << text_of(out.problems);
    ASSERT_EQ(out.rows.size(), 2U);
    EXPECT_EQ(out.rows[0].customer.name, "Alder");
    EXPECT_EQ(out.rows[0].line, 2);
    EXPECT_EQ(out.rows[0].more_lines, (std::vector<int>{3, 6, 7}));
    ASSERT_EQ(out.rows[0].customer.contacts.size(), 3U);
    EXPECT_EQ(out.rows[0].customer.contacts[1], (Contact{"Ben", "", "0555 000 002", ""}));
    EXPECT_EQ(out.rows[0].customer.contacts[2].name, "Dan");
    ASSERT_EQ(out.rows[0].customer.addresses.size(), 2U);
    EXPECT_EQ(out.rows[0].customer.addresses[1].town, "Shore");
    ASSERT_EQ(out.rows[1].customer.addresses.size(), 2U);
    EXPECT_EQ(out.rows[1].customer.addresses[1].town, "Hill");
    // Nobody is given what stands below them without a number.
    const ImportPreview loose = preview("name,postcode,contact\nAlder,100,Ann\n,200,Ben\n");
    ASSERT_EQ(loose.rows.size(), 1U);
    EXPECT_EQ(loose.rows[0].customer.contacts.size(), 1U);
    ASSERT_EQ(loose.problems.size(), 1U);
    EXPECT_NE(loose.problems[0].text().find("line 3: has no name"), std::string::npos);
    // What is no continuation is told as before.
    const ImportPreview wrong = preview(
        "number,name,phone,notes\nC-7,Alder,1,first\nC-7,Alder,3,second\n,,,alone\nC-8,Birch,4,\nC-8,Cedar,5,\n");
    ASSERT_EQ(wrong.problems.size(), 3U) << text_of(wrong.problems);
    EXPECT_NE(wrong.problems[0].text().find("line 3: says another note than line 2"), std::string::npos)
        << text_of(wrong.problems);
    EXPECT_NE(wrong.problems[1].text().find("line 4: has no name"), std::string::npos) << text_of(wrong.problems);
    EXPECT_NE(wrong.problems[2].text().find("line 6: is the customer of line 5 again"), std::string::npos)
        << "another name is no continuation";
    EXPECT_TRUE(preview("name,phone\n,0555 1\n").rows.empty()) << "nothing above";
}

TEST(CustomerImport, PartsThatAreThereStayAndOthersComeAtTheEnd) {
    Customer here = ruiz();
    here.addresses.push_back({AddressUse::site, "Hill 9", "", ""});
    here.addresses.push_back({AddressUse::bill, "Old Lane", "47101", "Springholm"});
    here.contacts.push_back({"Otto", "", "0555 999 000", ""});
    const ImportPreview out = preview(
        "number,name,street,postcode,contact,phone\n"
        "C-0001,Ruiz,Old Lane,47101,Otto,0555 999 000\n"
        "C-0001,Ruiz,Lane 3,47100,Ines,+34 600 555 010\n"
        "C-0001,Ruiz,New Lane,47102,Paz,0555 999 111\n",
        {here});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    const Customer& made = out.rows[0].customer;
    ASSERT_EQ(made.addresses.size(), 4U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(made.addresses[i], here.addresses[i]) << i;
    EXPECT_EQ(made.addresses[3].street, "New Lane");
    ASSERT_EQ(made.contacts.size(), 3U);
    EXPECT_EQ(made.contacts[0], here.contacts[0]);
    EXPECT_EQ(made.contacts[1], here.contacts[1]);
}

/// Texts that programs stumble over, without blanks at their ends: those are not kept.
class HostileTexts {
   public:
    explicit HostileTexts(unsigned seed) : random_(seed) {}
    int below(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }
    std::string text() {
        static const char* const pieces[] = {"=1+1", "'",   "''=x", "\"",          "a,b",
                                             ";",    "\n",  "\t",   "caf\xC3\xA9", "-5",
                                             "@x",   "+49", "0",    " ",           "\xF0\x9F\x8F\xA0",
                                             "C-1",  "x"};
        std::string out;
        for (int i = below(4) + 1; i > 0; --i)
            out += pieces[below(static_cast<int>(std::size(pieces)))];
        const std::size_t from = out.find_first_not_of(" \t\r\n");
        if (from == std::string::npos) return "x";
        return out.substr(from, out.find_last_not_of(" \t\r\n") - from + 1);
    }
    std::string text_or_none() { return below(3) == 0 ? std::string() : text(); }

   private:
    std::mt19937 random_;
};

TEST(CustomerImport, AnyCustomersHandedOutComeBackWhole) {
    for (int seed = 0; seed < sweep::cases(400); ++seed) {
        HostileTexts make(static_cast<unsigned>(seed));
        std::vector<Customer> them(static_cast<std::size_t>(make.below(4) + 1));
        for (std::size_t i = 0; i < them.size(); ++i) {
            Customer& one = them[i];
            one.number = "C-" + std::to_string(i) + (make.below(2) == 0 ? "" : "=x'\"");
            one.name = make.text();
            for (int n = make.below(3); n > 0; --n) {
                std::string former = "F" + std::to_string(i) + '-' + std::to_string(n) + make.text();
                std::replace(former.begin(), former.end(), '\n', ' ');
                one.former_numbers.push_back(std::move(former));
            }
            one.tax_id = make.text_or_none();
            one.notes = make.text_or_none();
            // Bills first: the table keeps the order within a use.
            for (const AddressUse use : {AddressUse::bill, AddressUse::site})
                for (int n = make.below(4); n > 0; --n) {
                    one.addresses.push_back({use, make.text_or_none(), make.text_or_none(), make.text_or_none()});
                    if (one.addresses.back().empty()) one.addresses.pop_back();
                }
            for (int n = make.below(4); n > 0; --n) {
                one.contacts.push_back({make.text_or_none(), make.text_or_none(), make.text_or_none(),
                                        make.below(2) == 0 ? "" : "=a@b.example"});
                if (one.contacts.back().empty()) one.contacts.pop_back();
            }
        }
        const std::string csv = tables::write_csv(rows_of(them));
        const ImportPreview fresh = preview(csv);
        ASSERT_TRUE(fresh.problems.empty()) << seed << '\n' << text_of(fresh.problems) << csv;
        ASSERT_EQ(fresh.rows.size(), them.size()) << seed << '\n' << csv;
        for (std::size_t i = 0; i < them.size(); ++i) {
            const auto in_use_order = [](Customer customer) {
                std::stable_sort(customer.addresses.begin(), customer.addresses.end(),
                                 [](const Address& a, const Address& b) { return a.use < b.use; });
                return customer;
            };
            ASSERT_EQ(fresh.rows[i].customer.number, them[i].number) << seed;
            ASSERT_TRUE(same_content(in_use_order(fresh.rows[i].customer), them[i])) << seed << '\n' << csv;
        }
        // And over themselves they change nothing.
        for (std::size_t i = 0; i < them.size(); ++i)
            them[i].id = "00000000-0000-4000-8000-00000000000" + std::to_string(i);
        const ImportPreview again = preview(csv, them);
        ASSERT_EQ(again.rows.size(), them.size()) << seed << '\n' << text_of(again.problems) << csv;
        for (const ImportedRow& row : again.rows)
            ASSERT_EQ(row.outcome, Outcome::same) << seed << '\n' << row.changes.front() << '\n' << csv;
    }
}

TEST(CustomerImport, TakesAnyTable) {
    std::mt19937 random(7);
    const std::string cells[] = {"", "Ruiz", "47100", "C-0001", "@", "a@b.example", "'=x", "\xC3\xA9", "0555 1234567"};
    for (int i = 0; i < 500; ++i) {
        tables::CsvTable table;
        Mapping mapping;
        mapping.headings = random() % 2 == 0;
        for (std::size_t c = random() % 8; c > 0; --c)
            mapping.columns.push_back(all_columns[random() % std::size(all_columns)]);
        for (int line = 1; line < 12; ++line) {
            table.rows.emplace_back();
            for (std::size_t c = random() % 9; c > 0; --c)
                table.rows.back().push_back(cells[random() % std::size(cells)]);
            table.line_of_row.push_back(line);
        }
        const ImportPreview out = preview_import(table, mapping, {ruiz()}, "list.csv", plain);
        for (const ImportedRow& row : out.rows)
            ASSERT_TRUE(problems_of(row.customer).empty());
    }
}

TEST(Customer, TelephoneNumbersAreComparedWithoutTheCountry) {
    EXPECT_TRUE(same_phone("+34 600 555 010", "0034600555010"));
    EXPECT_TRUE(same_phone("+49 171 5550101", "0171/5550101"));
    EXPECT_FALSE(same_phone("+34 600 555 010", "600 555 011"));
    EXPECT_FALSE(same_phone("010", "600 555 010")) << "too short to tell";
    EXPECT_FALSE(same_phone("", ""));
}

}  // namespace import_test
}  // namespace wg::customers
