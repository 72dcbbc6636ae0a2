// The list of customers, its form, the import's preview and the warning before erasing.

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "core/job/codec.h"
#include "core/store/customers.h"
#include "core/tables/csv_reader.h"
#include "tests/ui/common/sample.h"
#include "ui/customers/client_erase_dialog.h"
#include "ui/customers/customer_form.h"
#include "ui/customers/customer_import_dialog.h"
#include "ui/customers/customer_look.h"
#include "ui/customers/customer_table_model.h"
#include "ui/customers/customers_page.h"
#include "ui/customers/entry_list.h"
#include "ui/customers/files.h"

namespace wg::ui {
namespace customers_page_test {

using customers::Customer;

const Instant now{1'900'000'000};

std::unique_ptr<store::Store> open_store() {
    auto opened = store::Store::open(":memory:", now, "Ada");
    EXPECT_TRUE(opened.ok());
    return std::move(opened).value();
}

Customer invented(const std::string& name) {
    Customer out;
    out.name = name;
    out.addresses = {{customers::AddressUse::bill, "Invented Lane 3", "47100", "Springholm"}};
    out.contacts = {{"Ines", "", "0555 0101 22", "ines@invented.example"}};
    return out;
}

Customer keep(store::Store& store, const std::string& name) {
    auto kept = store::CustomerBook(store).save(invented(name), now);
    EXPECT_TRUE(kept.ok()) << (kept ? std::string() : text_of(kept.problems()));
    return kept.value();
}

TEST(CustomerTable, KeepsTheRulesOfItemModelsWhileItFetches) {
    const auto store = open_store();
    for (int i = 0; i < 150; ++i)
        keep(*store, "Customer " + std::to_string(1000 + i));
    CustomerTableModel model(*store);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    tester.setUseFetchMore(false);
    model.reload();
    EXPECT_EQ(model.rowCount(), 100);
    EXPECT_EQ(model.total(), 150);
    while (model.canFetchMore({}))
        model.fetchMore({});
    EXPECT_EQ(model.rowCount(), 150);
    model.set_query(QStringLiteral("1007"));
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.index(0, CustomerTableModel::town_column).data().toString(), QStringLiteral("Springholm"));
}

TEST(CustomersPage, WhatIsTypedIsKeptBeforeAnotherCustomerIsShown) {
    const auto store = open_store();
    keep(*store, "Alder");
    const Customer birch = keep(*store, "Birch");
    CustomersPage page(*store);
    page.show();
    ASSERT_EQ(page.table()->model()->rowCount(), 2);
    EXPECT_EQ(page.form()->customer().name, "Alder");
    QTest::keyClicks(page.form()->name(), QStringLiteral(" Ltd"));
    EXPECT_TRUE(page.form()->edited());
    page.table()->selectRow(1);
    EXPECT_EQ(page.form()->customer().name, "Birch");
    EXPECT_EQ(page.shown_id(), birch.id);
    EXPECT_EQ(store::CustomerBook(*store).count("alder ltd").value(), 1);

    // What cannot be kept stays in the form, and it is said.
    QSignalSpy problems(&page, &CustomersPage::problem);
    page.form()->contacts()->item(0, 3)->setText(QStringLiteral("no address"));
    page.table()->selectRow(0);
    ASSERT_EQ(problems.count(), 1);
    EXPECT_TRUE(problems[0][0].toString().contains(QStringLiteral("is no e-mail address")));
    EXPECT_EQ(page.form()->customer().name, "Birch");
    EXPECT_EQ(page.form()->customer().contacts[0].email, "no address");
    EXPECT_EQ(page.table()->currentIndex().row(), 1);
}

TEST(CustomersPage, SavingIsToldAndStartsNoJob) {
    const auto store = open_store();
    const Customer alder = keep(*store, "Alder");
    CustomersPage page(*store);
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    QSignalSpy said(&page, &CustomersPage::said);
    QSignalSpy jobs(&page, &CustomersPage::new_job_asked);
    QTest::keyClicks(page.form()->name(), QStringLiteral(" Ltd"));
    QPushButton* save = nullptr;
    for (QPushButton* one : page.findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Save")) save = one;
    ASSERT_NE(save, nullptr);
    save->setFocus();
    QTest::keyClick(save, Qt::Key_Space);
    ASSERT_EQ(said.count(), 1);
    EXPECT_EQ(said[0][0].toString(), QStringLiteral("%1 saved").arg(QString::fromStdString(alder.number)));
    EXPECT_EQ(page.focusWidget(), page.form()->name());
    QTest::keyClick(page.focusWidget(), Qt::Key_Space);
    EXPECT_EQ(jobs.count(), 0);
}

TEST(CustomersPage, NothingIsMarkedWhileANewCustomerIsWritten) {
    const auto store = open_store();
    const Customer alder = keep(*store, "Alder");
    keep(*store, "Birch");
    CustomersPage page(*store);
    page.show();
    page.start_customer();
    EXPECT_FALSE(page.table()->selectionModel()->hasSelection());
    EXPECT_FALSE(page.table()->currentIndex().isValid());
    for (const QPushButton* one : page.findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Erase their data") || one->text() == QStringLiteral("Remove"))
            EXPECT_FALSE(one->isEnabled());
    for (QPushButton* one : page.findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Undo")) one->click();
    EXPECT_EQ(page.form()->customer().id, alder.id);
    EXPECT_EQ(page.table()->currentIndex().row(), 0);
}

TEST(CustomersPage, LinesOfATableThatAreLeftOutAreTold) {
    const auto store = open_store();
    CustomersPage page(*store);
    page.show();
    QSignalSpy said(&page, &CustomersPage::said);
    const auto take = [&](const std::string& text) {
        const auto table = tables::read_csv(text, "old.csv");
        const auto here = store::CustomerBook(*store).all();
        CustomerImportDialog dialog(table.value(), QStringLiteral("old.csv"), here.value());
        EXPECT_TRUE(page.take_in(dialog.preview(), QStringLiteral("old.csv")));
        return said.last()[0].toString();
    };
    EXPECT_EQ(take("Name;PLZ\nAlder;1\nBirch;2\nElm;3\n;5\n;6\n"),
              QStringLiteral("3 customers added, 0 changed; lines 5 and 6 were not taken in"));
    EXPECT_EQ(take("Name;PLZ\nOak;1\n;5\n"), QStringLiteral("1 customer added, 0 changed; line 3 was not taken in"));
    EXPECT_EQ(take("Name;PLZ\nAsh;1\n"), QStringLiteral("1 customer added, 0 changed"));
}

TEST(ListFiles, DaysThatNoSpreadsheetCountsStayText) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("jobs.xlsx"));
    const auto written =
        write_table(path, QStringLiteral("Jobs"), {{"Job", "Changed"}, {"1", "1890-05-01"}, {"2", "2027-05-01"}}, {1});
    ASSERT_TRUE(written.ok()) << text_of(written.problems());
    EXPECT_TRUE(QFile::exists(path));
}

TEST(CustomersPage, ANewCustomerHasAddressesAndContacts) {
    const auto store = open_store();
    CustomersPage page(*store);
    page.show();
    EXPECT_EQ(page.count_words(), QStringLiteral("No customer yet"));
    page.start_customer();
    QTest::keyClicks(page.form()->name(), QStringLiteral("Alder & Sons"));
    QTableWidget* addresses = page.form()->addresses();
    ASSERT_EQ(addresses->rowCount(), 1) << "one free row to write in";
    addresses->item(0, 1)->setText(QStringLiteral("Lane 3"));
    ASSERT_EQ(addresses->rowCount(), 2) << "and the next one";
    addresses->item(1, 3)->setText(QStringLiteral("Oldholm"));
    EXPECT_EQ(qobject_cast<QComboBox*>(addresses->cellWidget(1, 0))->currentText(), QStringLiteral("Site"));
    page.form()->contacts()->item(0, 2)->setText(QStringLiteral("0555 1"));
    ASSERT_TRUE(page.save_edited());
    const auto all = store::CustomerBook(*store).all().value();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].number, "C-0001");
    ASSERT_EQ(all[0].addresses.size(), 2U);
    EXPECT_EQ(all[0].addresses[1].use, customers::AddressUse::site);
    EXPECT_EQ(all[0].contacts, (std::vector<customers::Contact>{{"", "", "0555 1", ""}}));
    EXPECT_EQ(page.count_words(), QStringLiteral("1 customer"));
    EXPECT_FALSE(page.form()->edited());
}

TEST(CustomersPage, AContactIsBegunAndTakenAwayByButtons) {
    const auto store = open_store();
    const Customer alder = keep(*store, "Alder");
    CustomersPage page(*store);
    page.show();
    EntryList& list = *page.form()->contact_list();
    QTableWidget& table = *list.table();
    ASSERT_EQ(table.rowCount(), 2) << "Ines and the free row";
    list.add_button()->click();
    EXPECT_EQ(table.currentRow(), 1);
    EXPECT_FALSE(list.remove_button()->isEnabled()) << "the free row stays";
    auto* editor = table.viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr) << "the cursor stands in it";
    EXPECT_EQ(editor->placeholderText(), QStringLiteral("Name"));
    QTest::keyClicks(editor, QStringLiteral("Otto"));
    QTest::keyClick(editor, Qt::Key_Tab);
    EXPECT_EQ(table.currentColumn(), 1) << "Tab leads to the next cell";
    EXPECT_EQ(table.rowCount(), 3) << "and the next one can be written";
    ASSERT_TRUE(page.save_edited());
    EXPECT_EQ(store::CustomerBook(*store).load(alder.id).value().contacts.size(), 2U);

    table.setCurrentCell(0, 0);
    ASSERT_TRUE(list.remove_button()->isEnabled());
    list.remove_button()->click();
    EXPECT_TRUE(page.form()->edited());
    ASSERT_TRUE(page.save_edited());
    const auto left = store::CustomerBook(*store).load(alder.id).value().contacts;
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].name, "Otto");

    EntryList& addresses = *page.form()->address_list();
    addresses.add_button()->click();
    EXPECT_EQ(addresses.table()->currentColumn(), 1) << "what it is for stands there already";
}

TEST(CustomersPage, JobsThatMayBeTheirsAreOfferedAndLinkedByHand) {
    const auto store = open_store();
    const Customer alder = keep(*store, "Alder");
    Job job = sample::job();
    job.client.name = "ALDER";
    job.client.postcode = "47100";
    job.revision = 0;
    const auto saved = store->save(job, now);
    ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
    CustomersPage page(*store);
    page.show();
    CustomerLook& look = *page.look();
    EXPECT_EQ(look.jobs()->rowCount(), 0);
    ASSERT_EQ(look.likely()->rowCount(), 1);
    EXPECT_TRUE(look.likely()->isVisibleTo(&page));
    QPushButton* link = nullptr;
    for (QPushButton* button : look.findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Link the job with the customer")) link = button;
    ASSERT_NE(link, nullptr);
    QSignalSpy looked(&page, &CustomersPage::open_asked);
    for (QPushButton* button : look.findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Open the job") && button->isVisible()) button->click();
    EXPECT_EQ(looked.count(), 1) << "to look before it is linked";
    link->click();
    EXPECT_EQ(store::CustomerBook(*store).customer_of(job.id).value(), alder.id);
    EXPECT_EQ(look.likely()->rowCount(), 0);
    ASSERT_EQ(look.jobs()->rowCount(), 1);
    EXPECT_EQ(page.table()->model()->index(0, CustomerTableModel::jobs_column).data().toString(), QStringLiteral("1"));
    QSignalSpy opened(&page, &CustomersPage::open_asked);
    Q_EMIT look.jobs()->cellActivated(0, 0);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].toString().toStdString(), job.id);
}

TEST(CustomersPage, TwoAreBroughtTogether) {
    const auto store = open_store();
    const Customer alder = keep(*store, "Alder");
    const Customer again = keep(*store, "Alder again");
    CustomersPage page(*store);
    page.show();
    ASSERT_EQ(page.shown_id(), alder.id);
    QSignalSpy said(&page, &CustomersPage::said);
    ASSERT_TRUE(page.bring_in(again.id));
    EXPECT_EQ(said.count(), 1);
    EXPECT_EQ(page.table()->model()->rowCount(), 1);
    EXPECT_TRUE(page.form()->customer().notes.find("Also: Alder again") != std::string::npos);
    QSignalSpy problems(&page, &CustomersPage::problem);
    EXPECT_FALSE(page.bring_in(again.id));
    EXPECT_EQ(problems.count(), 1);
}

TEST(CustomerImportDialog, ShowsWhatWouldBecomeOfEachLineAndFollowsTheMapping) {
    const auto store = open_store();
    const auto here = std::vector<Customer>{keep(*store, "Alder")};
    const auto table = tables::read_csv(
        "Name;PLZ;Fon\n"
        "Alder;47100;0555 999\n"
        ";1;\n"
        "Birch;2;0555 888\n",
        "old.csv");
    ASSERT_TRUE(table.ok());
    CustomerImportDialog dialog(table.value(), QStringLiteral("old.csv"), here);
    EXPECT_EQ(dialog.summary(), QStringLiteral("1 new, 0 changed, 1 as they are, 1 not taken in"));
    EXPECT_EQ(dialog.take_in()->text(), QStringLiteral("Take in 1 customer"));
    ASSERT_EQ(dialog.rows()->rowCount(), 3);
    EXPECT_EQ(dialog.rows()->item(0, 0)->text(), QStringLiteral("3")) << "what needs a look stands first";
    EXPECT_TRUE(dialog.rows()->item(0, 3)->text().contains(QStringLiteral("has no name")));
    // The heading nobody knows is said to be the telephone.
    dialog.choose(2, customers::Column::phone);
    EXPECT_EQ(dialog.summary(), QStringLiteral("1 new, 1 changed, 0 as they are, 1 not taken in"));
    EXPECT_TRUE(dialog.rows()->item(1, 3)->text().contains(QStringLiteral("'0555 0101 22' becomes '0555 999'")));
    dialog.choose(0, customers::Column::ignored);
    EXPECT_FALSE(dialog.take_in()->isEnabled());
    EXPECT_TRUE(dialog.rows()->item(0, 3)->text().contains(QStringLiteral("none is chosen for the name")));
}

TEST(ClientEraseDialog, WantsAReasonAndTheNumber) {
    Customer customer = invented("Alder");
    customer.number = "C-0001";
    ClientEraseDialog dialog(customer, 2, 10);
    EXPECT_FALSE(dialog.erase_button()->isEnabled());
    dialog.reason_field()->setText(QStringLiteral("asked by letter"));
    EXPECT_FALSE(dialog.erase_button()->isEnabled());
    dialog.number_field()->setText(QStringLiteral("C-0002"));
    EXPECT_FALSE(dialog.erase_button()->isEnabled());
    dialog.number_field()->setText(QStringLiteral("C-0001"));
    EXPECT_TRUE(dialog.erase_button()->isEnabled());
    dialog.reason_field()->setText(QStringLiteral("  "));
    EXPECT_FALSE(dialog.erase_button()->isEnabled());
}

}  // namespace customers_page_test
}  // namespace wg::ui
