#include "core/customers/import.h"

#include <gtest/gtest.h>

#include <random>

#include "core/customers/list_out.h"
#include "core/tables/csv_writer.h"

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
    const std::string csv = tables::write_csv(rows_of({with_formula}));
    EXPECT_NE(csv.find("'=SUM"), std::string::npos);
    const ImportPreview out = preview(csv, {with_formula});
    ASSERT_EQ(out.rows.size(), 1U) << text_of(out.problems);
    EXPECT_EQ(out.rows[0].outcome, Outcome::same) << (out.rows[0].changes.empty() ? "" : out.rows[0].changes[0]);
    const ImportPreview fresh = preview(csv);
    ASSERT_EQ(fresh.rows.size(), 1U);
    EXPECT_TRUE(same_content(fresh.rows[0].customer, with_formula));
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
