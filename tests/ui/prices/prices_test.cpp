#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QHeaderView>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "core/store/price_book.h"
#include "tests/tools/load_reference.h"
#include "ui/common/format.h"
#include "ui/common/versions_view.h"
#include "ui/drawing/fields.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class PricesTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now, "Ada Reed on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        page_ = std::make_unique<PricePage>(*store_, std::make_shared<const plan::Reference>(test::reference()));
        QObject::connect(page_.get(), &PricePage::problem, [this](const QString& text) { problems_ += text; });
    }

    bool enter(const char* id, int column, const QString& text) {
        PriceModel& model = *page_->model();
        for (int row = 0; row < model.rowCount(); ++row) {
            if (model.index(row, PriceModel::column_id).data().toString() != QLatin1String(id)) continue;
            return model.setData(model.index(row, column), text, Qt::EditRole);
        }
        ADD_FAILURE() << "no item " << id;
        return false;
    }
    const parts::PriceItem& item(const char* id) { return *parts::find_item(page_->model()->list(), id); }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<PricePage> page_;
    QStringList problems_;
};

TEST_F(PricesTest, the_programs_list_is_shown_and_not_changed) {
    EXPECT_GT(page_->model()->rowCount(), 40);
    EXPECT_FALSE(enter("marl-18", PriceModel::column_price, QStringLiteral("1")));
    EXPECT_FALSE(page_->has_changes());
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("invented")));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("comes with the program")));
    QAbstractItemModelTester tester(page_->model());
}

TEST_F(PricesTest, a_list_named_after_a_year_holds_for_it) {
    ASSERT_TRUE(page_->make_own("firm-2026", QStringLiteral("Prices 2026"))) << problems_.join(';').toStdString();
    EXPECT_TRUE(page_->state_words().contains(day(std::string("2026-01-01")))) << page_->state_words().toStdString();
    EXPECT_TRUE(page_->state_words().contains(day(std::string("2026-12-31")))) << page_->state_words().toStdString();
}

TEST_F(PricesTest, headings_are_wide_enough_for_their_words) {
    const QHeaderView& header = *page_->table()->horizontalHeader();
    for (int column = 0; column < header.count(); ++column)
        if (!header.isSectionHidden(column))
            EXPECT_GE(header.sectionSize(column), header.sectionSizeHint(column)) << column;
}

TEST_F(PricesTest, the_firms_own_list_is_made_changed_saved_and_read_again) {
    QSignalSpy changed(page_.get(), &PricePage::lists_changed);
    ASSERT_TRUE(page_->make_own("firm-2027", QStringLiteral("Our list"))) << problems_.join(';').toStdString();
    EXPECT_FALSE(page_->make_own("firm-2027", QStringLiteral("Again"))) << "the id is taken";
    EXPECT_FALSE(page_->make_own("invented-eur", QStringLiteral("Again"))) << "the program's id";
    problems_.clear();
    ASSERT_TRUE(enter("marl-18", PriceModel::column_price, QStringLiteral("512,50"))) << "a comma as people write it";
    EXPECT_EQ(item("marl-18").price.minor, 51250);
    ASSERT_TRUE(enter("marl-18", PriceModel::column_cost, QStringLiteral("400")));
    EXPECT_EQ(item("marl-18").price.minor, 51250) << "the price stands";
    ASSERT_TRUE(enter("marl-18", PriceModel::column_margin, QStringLiteral("30")));
    EXPECT_EQ(item("marl-18").price.minor, 52000) << "the mark-up sets the price";
    EXPECT_TRUE(page_->has_changes());
    EXPECT_FALSE(page_->choose("invented-eur")) << "changes would be lost";
    ASSERT_TRUE(page_->save_version(QStringLiteral("letter of April"), now));
    EXPECT_FALSE(page_->has_changes());
    EXPECT_EQ(changed.count(), 2);
    ASSERT_TRUE(page_->choose("invented-eur"));
    ASSERT_TRUE(page_->choose("firm-2027"));
    EXPECT_EQ(item("marl-18").price.minor, 52000);
    EXPECT_TRUE(page_->shown_list().invented) << "nobody has said that its prices are checked";
    const auto dialog = page_->versions();
    VersionsView& history = *dialog->view();
    ASSERT_EQ(history.versions()->rowCount(), 2);
    EXPECT_EQ(history.versions()->item(0, 3)->text(), QStringLiteral("letter of April"));
    EXPECT_EQ(history.versions()->item(0, 2)->text(), QStringLiteral("Ada Reed on desk-2"));
    ASSERT_EQ(history.changes()->rowCount(), 2) << "price and cost";
    EXPECT_TRUE(history.changes()->item(0, 0)->text().contains(QStringLiteral("marl-18")));
}

TEST_F(PricesTest, an_entry_that_cannot_stand_is_refused_in_words_and_changes_nothing) {
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    const std::string before = parts::price_list_to_json(page_->shown_list());
    const std::tuple<int, const char*, const char*> wrong[] = {
        {PriceModel::column_price, "12.345", "two decimals"}, {PriceModel::column_price, "", "no amount"},
        {PriceModel::column_price, "-1", "no amount"},        {PriceModel::column_cost, "nan", "no amount"},
        {PriceModel::column_price, "10000001", "no amount"},  {PriceModel::column_pack, "-2", "pack"},
        {PriceModel::column_waste, "120", "share"},           {PriceModel::column_unit, "box", "pc, m, kg, h"},
        {PriceModel::column_id, "rill-18", "another item"},   {PriceModel::column_id, " ", "needs an id"},
        {PriceModel::column_margin, "2000", "mark-up"},       {PriceModel::column_tax, "", "tax class"}};
    for (const auto& [column, text, words] : wrong) {
        problems_.clear();
        EXPECT_FALSE(enter("marl-18", column, QString::fromUtf8(text))) << text;
        ASSERT_EQ(problems_.size(), 1) << text;
        EXPECT_TRUE(problems_[0].contains(QString::fromUtf8(words))) << problems_[0].toStdString();
    }
    EXPECT_EQ(parts::price_list_to_json(page_->shown_list()), before);
    EXPECT_TRUE(enter("marl-18", PriceModel::column_cost, QString()));
    EXPECT_FALSE(enter("marl-18", PriceModel::column_margin, QStringLiteral("10"))) << "over no cost";
}

TEST_F(PricesTest, the_items_text_has_room_to_be_read_in_a_narrow_window_and_the_rest_of_a_wide_one) {
    QTableView* table = nullptr;
    for (QTableView* one : page_->findChildren<QTableView*>())
        if (one->model() == page_->model()) table = one;
    ASSERT_NE(table, nullptr);
    page_->show();
    page_->resize(2400, 700);
    const auto others = [&] {
        return table->horizontalHeader()->length() - table->columnWidth(PriceModel::column_text);
    };
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return table->horizontalHeader()->length() == table->viewport()->width(); }, 5000))
        << table->columnWidth(PriceModel::column_text);
    page_->resize(1000, 700);
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->viewport()->width() < others(); }, 5000));
    QTest::qWait(50);  // whatever comes after the resize
    EXPECT_EQ(table->columnWidth(PriceModel::column_text), 260);
}

TEST_F(PricesTest, items_are_found_added_and_removed) {
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    page_->search()->setText(QStringLiteral("pellow 12.70"));
    ASSERT_EQ(page_->model()->rowCount(), 1);
    EXPECT_EQ(page_->model()->index(0, PriceModel::column_id).data().toString(), QStringLiteral("tube-12.70"));
    const std::size_t count = page_->model()->list().items.size();
    const int row = page_->model()->add_item();
    EXPECT_EQ(page_->model()->rowCount(), 2) << "shown though no word matches";
    EXPECT_EQ(page_->model()->list().items.size(), count + 1);
    page_->model()->remove_row(row);
    EXPECT_EQ(page_->model()->list().items.size(), count);
    EXPECT_FALSE(page_->has_changes()) << "as it was";
    QAbstractItemModelTester tester(page_->model());
}

TEST_F(PricesTest, somebody_elses_version_is_not_overwritten) {
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    ASSERT_TRUE(enter("marl-18", PriceModel::column_price, QStringLiteral("1")));
    parts::PriceList theirs = page_->model()->list();
    theirs.label = "Theirs";
    ASSERT_TRUE(store::PriceBook(*store_).save("firm", parts::price_list_to_json(theirs), 1, "", now).ok());
    problems_.clear();
    EXPECT_FALSE(page_->save_version({}, now));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("was changed by")));
    EXPECT_TRUE(page_->has_changes()) << "what was typed stays";
    page_->reload();
    EXPECT_FALSE(page_->save_version({}, now)) << "reading the book again makes it no change of theirs";
    EXPECT_EQ(store::PriceBook(*store_).history("firm").value().size(), 2U);
}

TEST_F(PricesTest, a_withdrawn_list_comes_back_by_saving) {
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    ASSERT_TRUE(page_->withdraw(QStringLiteral("old"), now));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("Withdrawn")));
    ASSERT_TRUE(page_->save_version({}, now));
    EXPECT_FALSE(page_->state_words().contains(QStringLiteral("Withdrawn")));
}

TEST_F(PricesTest, files_go_out_and_come_in_and_hostile_ones_leave_no_trace) {
    QTemporaryDir folder;
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    const QString path = folder.filePath(QStringLiteral("list.json"));
    ASSERT_TRUE(page_->export_file(path));
    ASSERT_TRUE(enter("marl-18", PriceModel::column_price, QStringLiteral("1")));
    EXPECT_FALSE(page_->import_file(path)) << "changes would be lost";
    ASSERT_TRUE(page_->save_version({}, now));
    ASSERT_TRUE(page_->import_file(path));
    EXPECT_EQ(item("marl-18").price.minor, 46800);
    EXPECT_EQ(store::PriceBook(*store_).history("firm").value().size(), 3U);
    QFile bad(folder.filePath(QStringLiteral("bad.json")));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("{\"schema\": 2, \"id\": \"x\"");
    bad.close();
    problems_.clear();
    EXPECT_FALSE(page_->import_file(bad.fileName()));
    EXPECT_EQ(problems_.size(), 1);
    EXPECT_EQ(store::PriceBook(*store_).lists().value().size(), 1U);
}

TEST_F(PricesTest, labour_and_days_are_changed_in_their_fields) {
    ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    PriceTerms& terms = *page_->terms();
    Q_EMIT terms.labour_field()->committed(72.5);
    EXPECT_EQ(page_->shown_list().labour_hour.minor, 7250);
    problems_.clear();
    Q_EMIT terms.to_field()->committed(QStringLiteral("2026-12-31"));
    Q_EMIT terms.to_field()->committed(QStringLiteral("tomorrow"));
    EXPECT_EQ(problems_.size(), 2);
    EXPECT_EQ(page_->shown_list().valid_to, "2027-12-31");
    Q_EMIT terms.to_field()->committed(QStringLiteral("2028-03-31"));
    EXPECT_EQ(page_->shown_list().valid_to, "2028-03-31");
    problems_.clear();
    terms.tasks()->item(1, 1)->setText(QStringLiteral("0,9"));
    QTest::qWait(1);
    EXPECT_EQ(page_->shown_list().tasks[1].hours, 0.9);
    terms.tasks()->item(0, 1)->setText(QString());
    QTest::qWait(1);
    EXPECT_EQ(problems_.size(), 1) << "a task without time";
    EXPECT_GT(page_->shown_list().tasks[0].hours, 0.0);
    terms.tasks()->item(0, 6)->setText(QStringLiteral("access, rain"));
    QTest::qWait(1);
    EXPECT_EQ(problems_.size(), 2);
    terms.tasks()->item(0, 6)->setText(QStringLiteral("access, height"));
    QTest::qWait(1);
    EXPECT_TRUE(page_->shown_list().tasks[0].by_access && page_->shown_list().tasks[0].by_height);
    ASSERT_TRUE(page_->save_version({}, now));
}

}  // namespace
}  // namespace wg::ui
