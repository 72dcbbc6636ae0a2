// Changes of a price list that were not saved when the program ended.

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

#include "core/store/entries_kept.h"
#include "core/store/price_book.h"
#include "tests/tools/load_reference.h"
#include "ui/common/format.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {
namespace prices_kept_test {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class PricesKept : public testing::Test {
   protected:
    void SetUp() override {
        open();
        ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    }
    /// As at the start of the program: what the page before had on screen is gone.
    void open() {
        page_.reset();
        store_.reset();
        auto opened = store::Store::open(folder_.filePath(QStringLiteral("desk.sqlite")).toStdString(), now, "Ada");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        page_ = std::make_unique<PricePage>(*store_, std::make_shared<const plan::Reference>(test::reference()));
        problems_.clear();
        said_.clear();
        QObject::connect(page_.get(), &PricePage::problem, [this](const QString& text) { problems_ += text; });
        QObject::connect(page_.get(), &PricePage::said, [this](const QString& text) { said_ += text; });
    }
    bool price_of_first(const char* text) {
        return page_->model()->setData(page_->model()->index(0, PriceModel::column_price), QString::fromUtf8(text),
                                       Qt::EditRole);
    }
    std::size_t kept() { return store::EntriesKept(*store_).all(store::EntryBook::prices).value().entries.size(); }

    QTemporaryDir folder_;
    std::unique_ptr<store::Store> store_;
    std::unique_ptr<PricePage> page_;
    QStringList problems_, said_;
};

TEST_F(PricesKept, changes_come_back_after_a_program_that_was_killed) {
    ASSERT_TRUE(price_of_first("123.45"));
    ASSERT_TRUE(page_->terms()->table(PriceTerms::rate_table)->add_row());
    ASSERT_TRUE(QTest::qWaitFor([this] { return kept() == 1; }, 5000)) << "kept aside without being asked";
    const std::string before = parts::price_list_to_json(page_->shown_list());
    open();
    EXPECT_TRUE(page_->has_changes());
    EXPECT_EQ(parts::price_list_to_json(page_->shown_list()), before);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !said_.isEmpty(); }, 5000));
    EXPECT_TRUE(said_[0].contains(QStringLiteral("They are back"))) << said_[0].toStdString();
    EXPECT_TRUE(problems_.isEmpty());
    ASSERT_TRUE(page_->save_version(QStringLiteral("after all"), now));
    EXPECT_EQ(kept(), 0U);
    open();
    EXPECT_FALSE(page_->has_changes());
    EXPECT_EQ(parts::price_list_to_json(page_->shown_list()), before);
}

TEST_F(PricesKept, discarded_changes_do_not_come_back) {
    ASSERT_TRUE(price_of_first("123.45"));
    page_->keep_changes();
    EXPECT_EQ(kept(), 1U);
    page_->discard_changes();
    EXPECT_EQ(kept(), 0U);
    ASSERT_TRUE(price_of_first("99"));
    page_->keep_changes();
    const QString first = qs(parts::find_item(page_->model()->list(), page_->model()->list().items[0].id)->id);
    ASSERT_FALSE(first.isEmpty());
    open();
    EXPECT_EQ(page_->model()->list().items[0].price.minor, 9900);
    page_->discard_changes();
    open();
    EXPECT_FALSE(page_->has_changes());
}

TEST_F(PricesKept, what_somebody_saved_since_is_not_overwritten) {
    ASSERT_TRUE(price_of_first("123.45"));
    page_->keep_changes();
    parts::PriceList theirs = page_->model()->list();
    theirs.label = "Theirs";
    ASSERT_TRUE(store::PriceBook(*store_).save("firm", parts::price_list_to_json(theirs), 1, "", now).ok());
    page_->reload();
    EXPECT_FALSE(page_->save_version({}, now)) << "read anew, and still based on what was there";
    open();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !problems_.isEmpty(); }, 5000));
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("version 2"))) << problems_[0].toStdString();
    EXPECT_FALSE(page_->save_version({}, now));
    EXPECT_TRUE(page_->has_changes()) << "and nothing is lost";
    page_->discard_changes();
    EXPECT_EQ(page_->shown_list().label, "Theirs");
}

}  // namespace
}  // namespace prices_kept_test
}  // namespace wg::ui
