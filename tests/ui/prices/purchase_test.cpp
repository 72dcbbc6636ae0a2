// The page of purchase lists: by supplier, booked in parts, taken back; and the dialog in which what came is entered.

#include <gtest/gtest.h>

#include <QFile>
#include <QLineEdit>
#include <QTableWidget>
#include <QTemporaryDir>

#include "core/store/database.h"
#include "ui/common/format.h"
#include "ui/drawing/amount_table.h"
#include "ui/prices/purchase_page.h"
#include "ui/prices/receive_dialog.h"

namespace wg::ui {
namespace purchase_test {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class PurchaseTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now, "Ada Reed on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        Job job;
        job.id = "00000000-0000-4000-8000-000000000001";
        job.number = "2027-0007";
        job.title = "Roof";
        job.client.name = "M. Lindholm";
        const auto saved = store_->save(job, now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        std::vector<store::PurchaseOrdered> lines = {{1, "Pellow", "tube-12.70", "Copper tube", "m", 15000},
                                                     {2, "Pellow", "clip", "Clip", "pc", 9000},
                                                     {3, "Pellow", "", "Own rail", "pc", 1000},
                                                     {4, "Pellow", "hire", "Scaffold", "pc", 1000},
                                                     {5, "Bracken", "hook", "Hook", "pc", 6000}};
        lines[3].service = true;
        const auto kept = store::PurchaseBook(*store_).keep(
            job.id, lines,
            [](const std::string& number) -> Result<store::PurchasePrints> {
                return store::PurchasePrints{"%PDF-1.7 invented " + number,
                                             {{"Pellow", "%PDF-1.7 to Pellow " + number}}};
            },
            now);
        ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
        parts::PriceItem clip;
        clip.id = "clip";
        clip.supplier = "pellow ";
        clip.supplier_number = "C 12";
        parts::PriceItem elsewhere;
        elsewhere.id = "tube-12.70";
        elsewhere.supplier = "Bracken";
        elsewhere.supplier_number = "B 9";
        items_ = {clip, elsewhere};
        page_ = std::make_unique<PurchasePage>(*store_,
                                               [this]() -> const std::vector<parts::PriceItem>& { return items_; });
        QObject::connect(page_.get(), &PurchasePage::problem, [this](const QString& text) { problems_ += text; });
        page_->reload();
    }

    QString state(int row) { return page_->table()->item(row, 4)->text(); }
    static QString plain(QString text) { return text.replace(QChar(0x202F), QLatin1Char(' ')); }
    QString line_state(int row) { return plain(page_->lines_table()->item(row, 3)->text()); }

    void keep(std::vector<store::PurchaseOrdered> lines) {
        const auto kept = store::PurchaseBook(*store_).keep(
            "00000000-0000-4000-8000-000000000001", lines,
            [](const std::string& number) -> Result<store::PurchasePrints> {
                return store::PurchasePrints{"%PDF-1.7 invented " + number, {}};
            },
            now);
        ASSERT_TRUE(kept.ok()) << text_of(kept.problems());
    }

    std::vector<parts::PriceItem> items_;
    std::unique_ptr<store::Store> store_;
    std::unique_ptr<PurchasePage> page_;
    QStringList problems_;
};

TEST_F(PurchaseTest, a_list_is_shown_by_supplier_with_what_is_to_come) {
    ASSERT_EQ(page_->table()->rowCount(), 2);
    EXPECT_EQ(page_->table()->item(0, 0)->text(), QStringLiteral("P2027-0001"));
    EXPECT_EQ(page_->table()->item(0, 2)->text(), QStringLiteral("2027-0007"));
    EXPECT_EQ(state(0), QStringLiteral("open"));
    ASSERT_EQ(page_->lines_table()->rowCount(), 4);
    EXPECT_EQ(line_state(0), QStringLiteral("to come"));
    EXPECT_TRUE(line_state(2).contains(QStringLiteral("office's own")));
    EXPECT_TRUE(line_state(3).contains(QStringLiteral("hire")));
    QTemporaryDir folder;
    const auto bytes = [&](const char* name) {
        QFile file(folder.filePath(QString::fromLatin1(name)));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    ASSERT_TRUE(page_->save_whole(0, folder.filePath(QStringLiteral("whole.pdf"))));
    ASSERT_TRUE(page_->save_to_supplier(0, folder.filePath(QStringLiteral("pellow.pdf"))));
    EXPECT_EQ(bytes("whole.pdf"), QByteArray("%PDF-1.7 invented P2027-0001"));
    EXPECT_EQ(bytes("pellow.pdf"), QByteArray("%PDF-1.7 to Pellow P2027-0001"));
    EXPECT_TRUE(problems_.isEmpty());
    EXPECT_FALSE(page_->save_to_supplier(1, folder.filePath(QStringLiteral("none.pdf"))));
    EXPECT_FALSE(page_->save_whole(0, folder.filePath(QStringLiteral("none/whole.pdf"))));
    EXPECT_EQ(problems_.size(), 2);
}

TEST_F(PurchaseTest, a_delivery_is_booked_in_parts_and_taken_back) {
    auto dialog = page_->dialog_for(0);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->table()->rowCount(), 4);
    EXPECT_EQ(dialog->table()->amount(0), 15000) << "the rest is proposed";
    EXPECT_FALSE(dialog->table()->amount(2).has_value()) << "no stock is kept of the office's own line";
    EXPECT_FALSE(dialog->table()->amount(3).has_value()) << "nor of a scaffold";
    dialog->table()->set_amount_text(0, QStringLiteral("5,5"));
    dialog->table()->set_amount_text(1, QString());
    dialog->note_field()->setText(QStringLiteral(" note 4711 "));
    dialog->accept();
    ASSERT_EQ(dialog->result(), QDialog::Accepted) << dialog->said().toStdString();
    ASSERT_EQ(dialog->delivered().size(), 1U);
    ASSERT_TRUE(page_->receive(0, dialog->delivered(), dialog->note(), now));
    EXPECT_EQ(state(0), QStringLiteral("partly received, lines to come: 2"));
    EXPECT_EQ(state(1), QStringLiteral("open"));
    EXPECT_EQ(line_state(0), QStringLiteral("partly, to come: 9.5 m"));
    EXPECT_FALSE(page_->receive(0, dialog->delivered(), {}, now)) << "an older look at it";
    EXPECT_EQ(problems_.size(), 1);
    ASSERT_EQ(page_->bookings_table()->rowCount(), 1);
    EXPECT_EQ(plain(page_->bookings_table()->item(0, 1)->text()), QStringLiteral("Copper tube: 5.5 m"));
    EXPECT_EQ(page_->bookings_table()->item(0, 2)->text(), QStringLiteral("note 4711"));
    ASSERT_TRUE(page_->take_back(0, now));
    EXPECT_EQ(state(0), QStringLiteral("open"));
    EXPECT_TRUE(page_->bookings_table()->item(0, 1)->text().contains(QStringLiteral("taken back")));
    EXPECT_EQ(store::StockBook(*store_).levels().value().at(0).thousandths, 0);
    EXPECT_FALSE(page_->take_back(0, now));
    EXPECT_FALSE(page_->take_back(7, now));
}

TEST_F(PurchaseTest, what_came_is_received_and_what_does_not_come_is_told) {
    auto dialog = page_->dialog_for(0);
    dialog->table()->set_amount_text(1, QStringLiteral("3"));
    dialog->table()->set_ticked(1, true);
    dialog->accept();
    ASSERT_EQ(dialog->result(), QDialog::Accepted);
    ASSERT_TRUE(page_->receive(0, dialog->delivered(), {}, now));
    EXPECT_EQ(state(0), QStringLiteral("received, lines that do not come in full: 1"));
    EXPECT_EQ(line_state(1), QStringLiteral("received, the rest does not come"));
    // It comes after all.
    dialog = page_->dialog_for(0);
    EXPECT_TRUE(dialog->table()->ticked(1));
    EXPECT_EQ(dialog->table()->amount(1), 0);
    dialog->accept();
    EXPECT_NE(dialog->result(), QDialog::Accepted) << "nothing is entered";
    EXPECT_FALSE(dialog->said().isEmpty());
    dialog->table()->set_ticked(1, false);
    dialog->accept();
    ASSERT_EQ(dialog->result(), QDialog::Accepted);
    ASSERT_TRUE(page_->receive(0, dialog->delivered(), {}, now));
    EXPECT_EQ(state(0), QStringLiteral("partly received, lines to come: 1"));
}

TEST_F(PurchaseTest, the_dialog_refuses_what_cannot_be_and_asks_about_more_than_was_ordered) {
    auto dialog = page_->dialog_for(0);
    for (const char* wrong : {"-1", "x", "1.5", "1e99"}) {
        dialog->table()->set_amount_text(1, QString::fromLatin1(wrong));
        dialog->accept();
        EXPECT_NE(dialog->result(), QDialog::Accepted) << wrong;
        EXPECT_TRUE(dialog->said().contains(QStringLiteral("Clip"))) << dialog->said().toStdString();
        EXPECT_TRUE(dialog->delivered().empty());
    }
    dialog->table()->set_amount_text(1, QStringLiteral("12"));
    bool yes = false;
    QString asked;
    dialog->set_asks([&](const QString& words) {
        asked = words;
        return yes;
    });
    dialog->accept();
    EXPECT_NE(dialog->result(), QDialog::Accepted);
    EXPECT_EQ(plain(asked), QStringLiteral("Clip: 3 pc more than was ordered"));
    yes = true;
    dialog->accept();
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    EXPECT_EQ(dialog->delivered().size(), 2U);
    EXPECT_EQ(page_->dialog_for(9), nullptr);
}

TEST_F(PurchaseTest, the_list_chosen_stays_chosen_when_a_new_one_is_saved) {
    page_->table()->selectRow(1);
    keep({{1, "Aldermere", "hook", "Hook", "pc", 1000}});
    page_->reload();
    ASSERT_EQ(page_->table()->rowCount(), 3);
    EXPECT_EQ(page_->table()->currentRow(), 2);
    EXPECT_EQ(page_->table()->item(page_->table()->currentRow(), 3)->text(), QStringLiteral("Bracken"));
    EXPECT_EQ(page_->lines_table()->item(0, 0)->text(), QStringLiteral("Hook"));
}

TEST_F(PurchaseTest, more_than_ordered_and_nothing_for_the_stock_are_told_with_why) {
    store::PurchaseOrdered hire{1, "Bracken", "hire", "Scaffold", "pc", 1000};
    hire.service = true;
    keep({hire, {2, "Pellow", "clip", "Clip", "pc", 3000}, {3, "Zander", "clip", "Clip", "pc", 0}});
    page_->reload();
    ASSERT_EQ(page_->table()->rowCount(), 5);
    EXPECT_TRUE(state(0).contains(QStringLiteral("work, hire"))) << state(0).toStdString();
    EXPECT_TRUE(state(2).startsWith(QStringLiteral("nothing was ordered"))) << state(2).toStdString();
    ASSERT_TRUE(page_->receive(1, {{2, 0, 5000, false}}, {}, now));
    page_->table()->selectRow(1);
    EXPECT_EQ(line_state(0), QStringLiteral("received, 2 pc more than ordered"));
    EXPECT_EQ(state(1), QStringLiteral("received, lines of which more came: 1"));
}

TEST_F(PurchaseTest, the_dialog_has_the_suppliers_numbers_as_far_as_they_are_theirs) {
    const auto dialog = page_->dialog_for(0);
    EXPECT_EQ(dialog->table()->item(0, 1)->text(), QString()) << "the list has the tube from somebody else";
    EXPECT_EQ(dialog->table()->item(1, 1)->text(), QStringLiteral("C 12"));
    EXPECT_EQ(dialog->table()->item(2, 1)->text(), QString());
}

TEST_F(PurchaseTest, lists_that_cannot_be_read_are_not_told_as_none) {
    EXPECT_EQ(page_->words_of_none(), QString());
    ASSERT_FALSE(store_->database().run("ALTER TABLE purchase_supplier_paper RENAME TO away"));
    page_->reload();
    EXPECT_FALSE(problems_.isEmpty());
    EXPECT_TRUE(page_->words_of_none().contains(QStringLiteral("could not be read")))
        << page_->words_of_none().toStdString();
    ASSERT_FALSE(store_->database().run("ALTER TABLE away RENAME TO purchase_supplier_paper"));
    page_->reload();
    EXPECT_EQ(page_->words_of_none(), QString());
}

}  // namespace
}  // namespace purchase_test
}  // namespace wg::ui
