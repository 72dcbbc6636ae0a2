// The page of stock.

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QPushButton>
#include <QTableWidget>

#include "core/store/purchase_book.h"
#include "tests/tools/load_reference.h"
#include "ui/common/format.h"
#include "ui/drawing/fields.h"
#include "ui/prices/price_page.h"
#include "ui/prices/stock_model.h"
#include "ui/prices/stock_page.h"

namespace wg::ui {
namespace stock_test {
namespace {

using Kind = parts::StockMoveKind;
constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class StockTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now, "Ada Reed on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        page_ = std::make_unique<PricePage>(*store_, std::make_shared<const plan::Reference>(test::reference()));
        QObject::connect(page_.get(), &PricePage::problem, [this](const QString& text) { problems_ += text; });
        stock_ = page_->stock();
        stock_->reload();
        Job job;
        job.id = "00000000-0000-4000-8000-000000000001";
        job.number = "2027-0007";
        job.title = "Roof";
        job.client.name = "M. Lindholm";
        auto saved = store_->save(job, now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        job_ = saved.value();
    }

    bool enter(Kind kind, const char* quantity, const char* job = "", const char* note = "") {
        stock_->kind()->show_data(static_cast<int>(kind));
        stock_->quantity_field()->line_edit()->setText(QString::fromUtf8(quantity));
        Q_EMIT stock_->quantity_field()->line_edit()->editingFinished();
        stock_->job_field()->setText(QString::fromUtf8(job));
        stock_->note_field()->setText(QString::fromUtf8(note));
        return stock_->enter(now);
    }
    QString level() {
        const int row = stock_->model()->row_of("tube-12.70", "m");
        return stock_->model()
            ->index(row, StockModel::column_level)
            .data()
            .toString()
            .replace(QChar(0x202F), QLatin1Char(' '))
            .replace(QChar(0x2212), QLatin1Char('-'));
    }
    QString cell(int row, int column) { return stock_->moves_table()->item(row, column)->text(); }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<PricePage> page_;
    StockPage* stock_ = nullptr;
    Job job_;
    QStringList problems_;
};

TEST_F(StockTest, movements_are_entered_and_add_up) {
    EXPECT_TRUE(stock_->state_words().contains(QStringLiteral("No stock is kept yet")));
    EXPECT_FALSE(enter(Kind::received, "5")) << "no item is chosen";
    stock_->choose("tube-12.70", "m");
    EXPECT_EQ(level(), QString());
    ASSERT_TRUE(enter(Kind::counted, "12,5"));
    EXPECT_EQ(level(), QStringLiteral("12.5 m"));
    ASSERT_TRUE(enter(Kind::taken, "11.4", "2027-0007", "roof"));
    EXPECT_EQ(level(), QStringLiteral("1.1 m"));
    ASSERT_EQ(stock_->moves_table()->rowCount(), 2);
    EXPECT_EQ(cell(0, 1), QStringLiteral("Taken for a job"));
    EXPECT_EQ(cell(0, 3), QStringLiteral("2027-0007"));
    EXPECT_EQ(cell(0, 4), QStringLiteral("roof"));
    EXPECT_EQ(cell(0, 5), QStringLiteral("Ada Reed on desk-2"));
    EXPECT_TRUE(problems_.isEmpty()) << problems_.join(';').toStdString();
    QAbstractItemModelTester tester(stock_->model());
}

TEST_F(StockTest, what_cannot_be_is_refused_and_less_than_nothing_is_told) {
    stock_->choose("tube-12.70", "m");
    for (const char* wrong : {"", "-1", "x", "1.2345"}) {
        problems_.clear();
        EXPECT_FALSE(enter(Kind::received, wrong)) << wrong;
        EXPECT_EQ(problems_.size(), 1) << wrong;
    }
    problems_.clear();
    EXPECT_FALSE(enter(Kind::taken, "1", "2027-9999"));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("No job has the number")));
    EXPECT_EQ(level(), QString());
    problems_.clear();
    stock_->set_asks([](const QString&) { return true; });
    ASSERT_TRUE(enter(Kind::taken, "2", "2027-0007"));
    EXPECT_TRUE(level().endsWith(QStringLiteral("-2 m"))) << level().toStdString();
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("less than nothing")));
    EXPECT_TRUE(stock_->state_words().contains(QStringLiteral("count:")));
}

TEST_F(StockTest, an_entry_is_corrected_or_struck_out_and_stays_in_the_book) {
    stock_->choose("tube-12.70", "m");
    ASSERT_TRUE(enter(Kind::received, "51"));
    stock_->begin_correction(0);
    ASSERT_TRUE(enter(Kind::received, "15", "", "read wrongly"));
    EXPECT_EQ(level(), QStringLiteral("15 m"));
    ASSERT_EQ(stock_->moves_table()->rowCount(), 2);
    EXPECT_TRUE(cell(1, 1).contains(QStringLiteral("corrected")));
    ASSERT_TRUE(enter(Kind::received, "5"));
    EXPECT_EQ(level(), QStringLiteral("20 m")) << "the form is for new ones again";
    ASSERT_TRUE(stock_->strike_out(0, now));
    EXPECT_EQ(level(), QStringLiteral("15 m"));
    EXPECT_EQ(cell(0, 1), QStringLiteral("Struck out"));
    problems_.clear();
    EXPECT_FALSE(stock_->strike_out(1, now)) << "it was struck out already";
    EXPECT_EQ(problems_.size(), 1);
}

TEST_F(StockTest, the_job_of_a_corrected_entry_is_not_booked_on) {
    const auto newest_job = [this](const char* item) {
        return store::StockBook(*store_).moves(item, 1).value().at(0).job_id;
    };
    const auto set_quantity = [this](const char* words) {
        stock_->quantity_field()->line_edit()->setText(QString::fromUtf8(words));
        Q_EMIT stock_->quantity_field()->line_edit()->editingFinished();
    };
    stock_->set_asks([](const QString&) { return true; });
    stock_->choose("tube-12.70", "m");
    ASSERT_TRUE(enter(Kind::taken, "3", "2027-0007"));
    EXPECT_EQ(stock_->job_field()->text(), QStringLiteral("2027-0007")) << "the item's next one is often for it, too";
    stock_->begin_correction(0);
    EXPECT_EQ(stock_->job_field()->text(), QStringLiteral("2027-0007"));
    set_quantity("2");
    ASSERT_TRUE(stock_->enter(now));
    EXPECT_EQ(newest_job("tube-12.70"), job_.id);
    EXPECT_EQ(stock_->job_field()->text(), QString()) << "after a correction";
    set_quantity("1");
    ASSERT_TRUE(stock_->enter(now));
    EXPECT_EQ(newest_job("tube-12.70"), "");
    stock_->begin_correction(1);
    stock_->choose("marl-18", "pc");
    EXPECT_EQ(stock_->job_field()->text(), QString()) << "after another item was chosen";
    set_quantity("1");
    ASSERT_TRUE(stock_->enter(now));
    EXPECT_EQ(newest_job("marl-18"), "");
    stock_->choose("tube-12.70", "m");
    stock_->begin_correction(1);
    ASSERT_EQ(stock_->job_field()->text(), QStringLiteral("2027-0007"));
    for (QPushButton* button : stock_->findChildren<QPushButton*>())
        if (button->text().startsWith(QStringLiteral("Leave"))) button->click();
    EXPECT_EQ(stock_->job_field()->text(), QString()) << "after the correction was left";
}

TEST_F(StockTest, a_correction_keeps_the_job_though_its_number_leads_there_no_more) {
    stock_->set_asks([](const QString&) { return true; });
    stock_->choose("tube-12.70", "m");
    ASSERT_TRUE(enter(Kind::taken, "3", "2027-0007"));
    ASSERT_TRUE(store_->remove(job_.id, now).ok());
    stock_->begin_correction(0);
    stock_->quantity_field()->line_edit()->setText(QStringLiteral("2"));
    Q_EMIT stock_->quantity_field()->line_edit()->editingFinished();
    ASSERT_TRUE(stock_->enter(now)) << problems_.join(';').toStdString();
    const auto moves = store::StockBook(*store_).moves("tube-12.70", 0).value();
    ASSERT_EQ(moves.size(), 2U);
    EXPECT_EQ(moves[0].job_id, job_.id);
    EXPECT_EQ(moves[0].thousandths, 2000);
    stock_->begin_correction(0);
    stock_->job_field()->setText(QString());
    ASSERT_TRUE(stock_->enter(now)) << problems_.join(';').toStdString();
    EXPECT_EQ(store::StockBook(*store_).moves("tube-12.70", 1).value().at(0).job_id, "") << "it was taken out";
    EXPECT_FALSE(enter(Kind::taken, "1", "2027-0007")) << "a new entry goes to no job that was removed";
}

TEST_F(StockTest, less_than_nothing_is_asked_before_it_is_entered) {
    stock_->choose("tube-12.70", "m");
    ASSERT_TRUE(enter(Kind::counted, "5"));
    QString asked;
    stock_->set_asks([&asked](const QString& words) {
        asked = words;
        return false;
    });
    ASSERT_TRUE(enter(Kind::taken, "5")) << "nothing is left, which is not less";
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_FALSE(enter(Kind::taken, "1"));
    EXPECT_TRUE(asked.contains(QStringLiteral("less than nothing"))) << asked.toStdString();
    EXPECT_EQ(level(), QStringLiteral("0 m"));
    EXPECT_EQ(stock_->moves_table()->rowCount(), 2);
    asked.clear();
    stock_->begin_correction(1);
    EXPECT_FALSE(enter(Kind::counted, "3")) << "a correction that leads below nothing is asked, too";
    EXPECT_FALSE(asked.isEmpty());
    EXPECT_EQ(level(), QStringLiteral("0 m"));
}

TEST_F(StockTest, pieces_are_entered_whole) {
    stock_->choose("marl-18", "pc");
    EXPECT_FALSE(enter(Kind::received, "1.5"));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("whole pieces"))) << problems_[0].toStdString();
    EXPECT_TRUE(enter(Kind::received, "2"));
}

TEST_F(StockTest, services_have_no_row_and_what_is_ordered_and_promised_is_shown) {
    EXPECT_EQ(stock_->model()->row_of("scaffold", "pc"), -1);
    ASSERT_GE(stock_->model()->row_of("marl-18", "pc"), 0);
    std::vector<store::PurchaseOrdered> lines = {{1, "Pellow", "tube-12.70", "Copper tube", "m", 15000}};
    lines[0].needed = 11400;
    ASSERT_TRUE(store::PurchaseBook(*store_)
                    .keep(
                        job_.id, lines,
                        [](const std::string&) -> Result<store::PurchasePrints> {
                            return store::PurchasePrints{"%PDF-1.7", {}};
                        },
                        now)
                    .ok());
    stock_->choose("tube-12.70", "m");
    ASSERT_TRUE(enter(Kind::counted, "20"));
    const int row = stock_->model()->row_of("tube-12.70", "m");
    const auto at = [&](int column, int role) {
        return stock_->model()->index(row, column).data(role).toString().replace(QChar(0x202F), QLatin1Char(' '));
    };
    EXPECT_EQ(at(StockModel::column_on_order, Qt::DisplayRole), QStringLiteral("15 m"));
    EXPECT_EQ(at(StockModel::column_on_order, Qt::ToolTipRole), QStringLiteral("P2027-0001 for job 2027-0007: 15 m"));
    EXPECT_EQ(at(StockModel::column_free, Qt::DisplayRole), QStringLiteral("8.6 m"));
    EXPECT_EQ(at(StockModel::column_free, Qt::ToolTipRole), QStringLiteral("P2027-0001 for job 2027-0007: 11.4 m"));
    QAbstractItemModelTester tester(stock_->model());
}

TEST_F(StockTest, what_was_received_tells_list_and_supplier) {
    store::PurchaseBook book(*store_);
    const auto kept = book.keep(
        job_.id, {{1, "Pellow", "tube-12.70", "Copper tube", "m", 15000}},
        [](const std::string&) -> Result<store::PurchasePrints> {
            return store::PurchasePrints{"%PDF-1.7", {}};
        },
        now);
    ASSERT_TRUE(kept.ok());
    ASSERT_TRUE(book.receive(kept.value().id, {{1, 0, 5000, false}}, "note 7", now).ok());
    stock_->choose("tube-12.70", "m");
    EXPECT_EQ(cell(0, 4), QStringLiteral("P2027-0001, Pellow, note 7"));
}

TEST_F(StockTest, a_corrected_entry_of_what_was_planned_stays_one) {
    store::StockBook book(*store_);
    ASSERT_TRUE(book.take_for_job(job_.id, {{"tube-12.70", "m", 0, 3000}}, now).ok());
    stock_->choose("tube-12.70", "m");
    EXPECT_EQ(cell(0, 1), QStringLiteral("Taken as planned for a job"));
    stock_->set_asks([](const QString&) { return true; });
    stock_->begin_correction(0);
    EXPECT_EQ(static_cast<Kind>(stock_->kind()->currentData().toInt()), Kind::taken);
    ASSERT_TRUE(enter(Kind::taken, "2", "2027-0007"));
    EXPECT_EQ(book.taken_as_planned(job_.id).value(), 1);
    EXPECT_EQ(level(), QStringLiteral("\u25b2 -2 m"));
}

}  // namespace
}  // namespace stock_test
}  // namespace wg::ui
