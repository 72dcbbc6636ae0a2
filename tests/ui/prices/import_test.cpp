#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTimer>

#include "core/store/price_book.h"
#include "tests/tools/load_reference.h"
#include "ui/prices/import_dialog.h"
#include "ui/prices/import_model.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"

namespace wg::ui {
namespace price_import_test {
namespace {

using parts::ImportField;

parts::PriceList list() {
    return test::reference().price_lists.begin()->second;
}

const parts::PriceItem& first_item() {
    static const parts::PriceList kept = list();
    return kept.items.front();
}

/// The first item 1.00 dearer, a new one, and one that cannot be read.
QByteArray table() {
    const auto price = [](std::int64_t minor) {
        return QByteArray::number(qlonglong{minor / 100}) + ',' +
               QByteArray::number(qlonglong{minor % 100}).rightJustified(2, '0');
    };
    return "Artikelnr;Bezeichnung;ME;VK\n" +
           QByteArray::fromStdString(first_item().id + ";" + first_item().text + ";" + first_item().unit + ";") +
           price(first_item().price.minor + 100) + "\nnew-bend;Bend;Stk;3,40\nbad;Bad;Stk;abc\n";
}

std::unique_ptr<PriceImportDialog> dialog_of(const QByteArray& bytes) {
    auto read = tables::read_csv({bytes.constData(), static_cast<std::size_t>(bytes.size())}, "supplier.csv");
    return std::make_unique<PriceImportDialog>(read.value(), QStringLiteral("supplier.csv"), list());
}

QString cell(PriceImportDialog& dialog, int row, int column) {
    return dialog.changes()->index(row, column).data().toString();
}

TEST(PriceImportDialogTest, shows_what_would_change_and_what_is_wrong) {
    const auto dialog = dialog_of(table());
    QAbstractItemModelTester changes(dialog->changes());
    QAbstractItemModelTester problems(dialog->problems());
    using M = ImportChangesModel;
    EXPECT_EQ(cell(*dialog, 0, M::column_what), QStringLiteral("changed"));
    EXPECT_EQ(cell(*dialog, 0, M::column_id).toStdString(), first_item().id);
    EXPECT_EQ(cell(*dialog, 0, M::column_line), QStringLiteral("2"));
    EXPECT_TRUE(cell(*dialog, 0, M::column_percent).startsWith(QLatin1Char('+')));
    EXPECT_EQ(cell(*dialog, 1, M::column_what), QStringLiteral("new"));
    EXPECT_EQ(cell(*dialog, 1, M::column_new), QStringLiteral("3.40"));
    EXPECT_EQ(cell(*dialog, 2, M::column_what), QStringLiteral("not in the table"));
    EXPECT_TRUE(dialog->counts_words().startsWith(QStringLiteral("1 new   1 changed   0 the same")))
        << dialog->counts_words().toStdString();
    EXPECT_TRUE(dialog->counts_words().contains(QStringLiteral("1 line with problems")));
    ASSERT_EQ(dialog->problems()->rowCount(), 1);
    EXPECT_TRUE(dialog->problems()->index(0, 0).data().toString().contains(QStringLiteral("line 4")));
    EXPECT_TRUE(dialog->notes_words().contains(QStringLiteral("semicolons")));
    EXPECT_TRUE(dialog->notes_words().contains(QStringLiteral("A comma marks the decimals")));
}

TEST(PriceImportDialogTest, takes_nothing_before_it_is_told_to) {
    const auto dialog = dialog_of(table());
    EXPECT_FALSE(dialog->take_button()->isEnabled()) << "a line has problems";
    dialog->accept();
    EXPECT_FALSE(dialog->taken().has_value());
    dialog->leave_out()->setChecked(true);
    EXPECT_EQ(dialog->why_not(), QString());
    EXPECT_TRUE(dialog->take_button()->isEnabled());
    dialog->reject();
    EXPECT_FALSE(dialog->taken().has_value());
    dialog->accept();
    ASSERT_TRUE(dialog->taken().has_value());
    EXPECT_EQ(dialog->taken()->items.size(), list().items.size() + 1) << "what the table lacks stays";
    EXPECT_EQ(dialog->taken()->items[0].price.minor, first_item().price.minor + 100);
    EXPECT_EQ(parts::find_item(*dialog->taken(), "new-bend")->price.minor, 340);
    dialog->remove_gone()->setChecked(true);
    dialog->add_new()->setChecked(false);
    dialog->accept();
    EXPECT_EQ(dialog->taken()->items.size(), 1U);
}

TEST(PriceImportDialogTest, columns_can_be_chosen_otherwise) {
    const auto dialog = dialog_of("p,q\n" + QByteArray::fromStdString(first_item().id) + ",1.234\n");
    EXPECT_FALSE(dialog->why_not().isEmpty()) << "no column is known";
    EXPECT_EQ(dialog->changes()->rowCount(), 0);
    dialog->choose_names_row(0);
    dialog->choose_column(ImportField::id, 0);
    dialog->choose_column(ImportField::price, 1);
    EXPECT_TRUE(dialog->notes_words().contains(QStringLiteral("choose")));
    EXPECT_EQ(dialog->problems()->rowCount(), 1) << "1.234 reads two ways";
    dialog->leave_out()->setChecked(true);
    dialog->choose_decimal(parts::DecimalSign::comma);
    EXPECT_FALSE(dialog->leave_out()->isChecked()) << "what is left out is decided anew";
    EXPECT_EQ(dialog->problems()->rowCount(), 0);
    EXPECT_EQ(cell(*dialog, 0, ImportChangesModel::column_new).toStdString(),
              "1\xE2\x80\xAF"
              "234.00");
    EXPECT_TRUE(dialog->take_button()->isEnabled());
    dialog->choose_column(ImportField::price, -1);
    EXPECT_FALSE(dialog->take_button()->isEnabled());
    EXPECT_EQ(dialog->changes()->rowCount(), 0);
}

TEST(PriceImportDialogTest, the_same_table_changes_nothing) {
    const auto dialog = dialog_of(QByteArray::fromStdString(parts::items_to_csv(list())));
    EXPECT_EQ(dialog->changes()->rowCount(), 0);
    EXPECT_EQ(dialog->why_not(), QStringLiteral("Nothing would change."));
}

TEST(PriceImportDialogTest, a_file_that_is_no_table_is_told_and_left) {
    QString told;
    QTimer::singleShot(0, [&told] {
        if (QWidget* shown = QApplication::activeModalWidget()) {
            told = shown->windowTitle();
            shown->close();
        }
    });
    EXPECT_FALSE(
        PriceImportDialog::ask(QByteArray("PK\x03\x04zip", 7), QStringLiteral("x.csv"), list(), nullptr).has_value());
    EXPECT_EQ(told, QStringLiteral("Prices from a table"));
}

TEST(PriceImportDialogTest, the_page_holds_what_was_taken_until_it_is_saved) {
    constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z
    auto store = store::Store::open(":memory:", now, "Ada Reed on desk-2").value();
    PricePage page(*store, std::make_shared<const plan::Reference>(test::reference()));
    ASSERT_TRUE(page.make_own("firm", QStringLiteral("Firm")));
    parts::PriceList taken = page.shown_list();
    taken.items[0].price.minor += 100;
    page.take_items(taken);
    EXPECT_TRUE(page.has_changes());
    EXPECT_EQ(page.shown_list().items, taken.items);
    // Out as a table, and in again: the same.
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("items.csv"));
    ASSERT_TRUE(page.export_file(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), parts::items_to_csv(taken));
    ASSERT_TRUE(page.save_version(QStringLiteral("supplier's list"), now));
    EXPECT_FALSE(page.has_changes());
    EXPECT_EQ(page.shown_list().items, taken.items);
    page.discard_changes();
    EXPECT_EQ(page.shown_list().items, taken.items);
}

}  // namespace
}  // namespace price_import_test
}  // namespace wg::ui
