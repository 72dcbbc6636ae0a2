// What stands beside the items: rates, factors, travel, discounts, taxes, energy.

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "core/parts/price_entry.h"
#include "core/store/price_book.h"
#include "tests/tools/load_reference.h"
#include "ui/common/versions_view.h"
#include "ui/drawing/fields.h"
#include "ui/prices/price_model.h"
#include "ui/prices/price_page.h"
#include "ui/prices/price_terms.h"

namespace wg::ui {
namespace terms_test {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class TermsTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now, "Ada Reed on desk-2");
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        page_ = std::make_unique<PricePage>(*store_, std::make_shared<const plan::Reference>(test::reference()));
        QObject::connect(page_.get(), &PricePage::problem, [this](const QString& text) { problems_ += text; });
        ASSERT_TRUE(page_->make_own("firm", QStringLiteral("Our list")));
    }

    TermsTable& table(int which) { return *page_->terms()->table(which); }
    /// Types into a cell; what stands there afterwards.
    QString type(int which, int row, int column, const char* text) {
        table(which).table()->item(row, column)->setText(QString::fromUtf8(text));
        QTest::qWait(1);
        return table(which).table()->item(row, column)->text();
    }
    int rows(int which) { return table(which).table()->rowCount(); }
    void commit(const char* field, const char* text) {
        QObject* found = page_->terms()->field(QString::fromUtf8(field));
        ASSERT_NE(found, nullptr) << field;
        if (auto* number = qobject_cast<NumberField*>(found)) {
            number->line_edit()->setText(QString::fromUtf8(text));
            Q_EMIT number->line_edit()->editingFinished();
        } else {
            Q_EMIT qobject_cast<TextField*>(found)->committed(QString::fromUtf8(text));
        }
    }
    parts::PriceList list() { return page_->shown_list(); }
    parts::PriceList saved() {
        const store::PriceBook book(*store_);
        return parts::price_list_from_json(book.content("firm", book.lists().value()[0].version).value(), "l").value();
    }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<PricePage> page_;
    QStringList problems_;
};

TEST_F(TermsTest, rates_are_added_changed_and_removed_and_a_used_one_stays) {
    const int before = rows(PriceTerms::rate_table);
    ASSERT_TRUE(table(PriceTerms::rate_table).add_row());
    ASSERT_EQ(rows(PriceTerms::rate_table), before + 1);
    type(PriceTerms::rate_table, before, 0, "certified work");
    type(PriceTerms::rate_table, before, 1, "cert");
    type(PriceTerms::rate_table, before, 2, "78,50");
    type(PriceTerms::rate_table, before, 3, "46");
    const parts::LabourRate& rate = list().labour_rates.back();
    EXPECT_EQ(rate, (parts::LabourRate{"cert", "certified work", {7850}, Money{4600}}));
    EXPECT_EQ(type(PriceTerms::task_table, 0, 5, "cert"), QStringLiteral("cert"));
    EXPECT_TRUE(problems_.isEmpty()) << problems_.join(';').toStdString();
    EXPECT_FALSE(table(PriceTerms::rate_table).remove_row(before)) << "a task has it";
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("labour_rates"))) << problems_[0].toStdString();
    for (const auto& [column, text] : {std::pair{2, "1,234"}, {2, ""}, {1, "other"}, {1, ""}, {0, ""}, {3, "-1"}}) {
        problems_.clear();
        const QString was = table(PriceTerms::rate_table).table()->item(before, column)->text();
        EXPECT_EQ(type(PriceTerms::rate_table, before, column, text), was) << text;
        EXPECT_EQ(problems_.size(), 1) << text;
    }
    type(PriceTerms::task_table, 0, 5, "");
    EXPECT_TRUE(table(PriceTerms::rate_table).remove_row(before));
    EXPECT_EQ(rows(PriceTerms::rate_table), before);
}

TEST_F(TermsTest, factors_rise_stand_once_and_are_kept) {
    while (rows(PriceTerms::height_table) > 0)
        ASSERT_TRUE(table(PriceTerms::height_table).remove_row(0));
    ASSERT_TRUE(table(PriceTerms::height_table).add_row());
    ASSERT_TRUE(table(PriceTerms::height_table).add_row());
    type(PriceTerms::height_table, 1, 0, "9.5");
    type(PriceTerms::height_table, 1, 1, "1,25");
    EXPECT_EQ(list().difficulty.heights[1], (parts::Difficulty::Height{9.5, 1.25}));
    problems_.clear();
    type(PriceTerms::height_table, 0, 0, "12");
    type(PriceTerms::height_table, 0, 1, "0.05");
    EXPECT_EQ(problems_.size(), 2) << "not rising, and below a tenth";
    while (table(PriceTerms::covering_table).add_row()) {
    }
    EXPECT_EQ(rows(PriceTerms::covering_table), 10) << "each covering once";
    problems_.clear();
    const QString first = table(PriceTerms::covering_table).table()->item(0, 0)->text();
    type(PriceTerms::covering_table, 1, 0, first.toUtf8().constData());
    EXPECT_EQ(problems_.size(), 1) << "stands twice";
    ASSERT_TRUE(table(PriceTerms::access_table).add_row());
    commit("Each storey adds", "12,5");
    EXPECT_EQ(list().difficulty.each_storey, 0.125);
    ASSERT_TRUE(page_->save_version(QStringLiteral("factors"), now));
    EXPECT_EQ(saved().difficulty, list().difficulty);
}

TEST_F(TermsTest, a_groups_discount_sets_the_cost_of_its_items) {
    while (rows(PriceTerms::group_table) > 0)
        if (!table(PriceTerms::group_table).remove_row(0)) break;
    const int row = rows(PriceTerms::group_table);
    ASSERT_TRUE(table(PriceTerms::group_table).add_row());
    type(PriceTerms::group_table, row, 0, "tube");
    type(PriceTerms::group_table, row, 2, "35");
    PriceModel& model = *page_->model();
    const auto cell = [&](int column) { return model.index(0, column); };
    EXPECT_FALSE(model.setData(cell(PriceModel::column_group), QStringLiteral("nobody"), Qt::EditRole));
    ASSERT_TRUE(model.setData(cell(PriceModel::column_supplier_price), QStringLiteral("7.80"), Qt::EditRole));
    ASSERT_TRUE(model.setData(cell(PriceModel::column_group), QStringLiteral("tube"), Qt::EditRole));
    EXPECT_EQ(model.list().items[0].cost->minor, 507);
    type(PriceTerms::group_table, row, 2, "50");
    EXPECT_EQ(model.list().items[0].cost->minor, 390);
    problems_.clear();
    EXPECT_FALSE(table(PriceTerms::group_table).remove_row(row)) << "an item names it";
    EXPECT_EQ(problems_.size(), 1);
    ASSERT_TRUE(model.setData(cell(PriceModel::column_many), QStringLiteral("50: 6,90; 100: 6.50"), Qt::EditRole));
    EXPECT_EQ(model.list().items[0].quantity_prices.size(), 2U);
    EXPECT_FALSE(model.setData(cell(PriceModel::column_many), QStringLiteral("100: 6; 50: 7"), Qt::EditRole));
    ASSERT_TRUE(page_->save_version({}, now));
    EXPECT_EQ(saved().items[0].cost->minor, 390);
    ASSERT_TRUE(model.setData(cell(PriceModel::column_supplier_price), QString(), Qt::EditRole));
    EXPECT_EQ(model.list().items[0].cost->minor, 390) << "what it came to stays as the firm's own figure";
    EXPECT_TRUE(table(PriceTerms::group_table).remove_row(row));
}

TEST_F(TermsTest, travel_taxes_and_energy_are_changed_in_place_and_discarded) {
    page_->discard_changes();
    const std::string before = parts::price_list_to_json(list());
    if (list().travel) page_->terms()->travel_button()->click();
    ASSERT_FALSE(list().travel.has_value());
    page_->terms()->travel_button()->click();
    commit("A kilometre, net", "0.62");
    commit("An hour on the road, net", "52");
    commit("Speed", "45");
    commit("Trips there and back", "3");
    EXPECT_EQ(*list().travel, (parts::Travel{{62}, {5200}, 45.0, 3, list().labour_tax_class}));
    problems_.clear();
    commit("Trips there and back", "2.5");
    EXPECT_EQ(list().travel->trips, 3);
    EXPECT_EQ(problems_.size(), 1);
    const int tax = rows(PriceTerms::tax_table);
    ASSERT_TRUE(table(PriceTerms::tax_table).add_row());
    type(PriceTerms::tax_table, tax, 2, "7,7");
    ASSERT_TRUE(table(PriceTerms::tax_table).add_row()) << "a day later, so that no two stand for one day";
    type(PriceTerms::tax_table, tax + 1, 2, "8");
    EXPECT_GE(list().tax_rates[static_cast<std::size_t>(tax)].valid_from, list().valid_from);
    EXPECT_LT(list().tax_rates[static_cast<std::size_t>(tax)].valid_from, list().valid_to)
        << "it holds for more than the list's last day";
    type(PriceTerms::tax_table, tax, 3, "2027-07-01");
    EXPECT_EQ(list().tax_rates[static_cast<std::size_t>(tax)].rate, 0.077);
    problems_.clear();
    for (const auto& [column, text] : {std::pair{3, "2027-13-01"}, {3, ""}, {2, "101"}, {2, "x"}, {0, ""}, {1, ""}})
        type(PriceTerms::tax_table, tax, column, text);
    EXPECT_EQ(problems_.size(), 6) << problems_.join('\n').toStdString();
    type(PriceTerms::tariff_table, 0, 1, "0,3125");
    type(PriceTerms::tariff_table, 1, 2, "0.21");
    commit("Energy rises a year by", "3.5");
    commit("Years looked at", "25");
    commit("Service a year", "75");
    EXPECT_EQ(list().tariffs.electricity_minor_kwh, 31.25);
    EXPECT_EQ(list().tariffs.gas_kg_co2_kwh, 0.21);
    EXPECT_EQ(list().tariffs.yearly_rise, 0.035);
    EXPECT_EQ(list().tariffs.years, 25);
    EXPECT_EQ(list().tariffs.yearly_service_minor, 7500.0);
    commit("Currency", "JPY");
    EXPECT_NE(list().currency, "JPY");
    ASSERT_TRUE(page_->has_changes());
    page_->discard_changes();
    EXPECT_EQ(parts::price_list_to_json(list()), before);
}

TEST_F(TermsTest, a_new_tax_row_has_no_rate_until_one_is_typed) {
    const int tax = rows(PriceTerms::tax_table);
    const std::string before = parts::price_list_to_json(list());
    ASSERT_TRUE(table(PriceTerms::tax_table).add_row());
    ASSERT_EQ(rows(PriceTerms::tax_table), tax + 1);
    EXPECT_EQ(table(PriceTerms::tax_table).table()->item(tax, 2)->text(), QString());
    EXPECT_EQ(parts::price_list_to_json(list()), before) << "no part of the list yet";
    EXPECT_TRUE(table(PriceTerms::tax_table).unfinished().contains(QStringLiteral("needs a rate")));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("needs a rate"))) << page_->state_words().toStdString();
    EXPECT_TRUE(page_->has_changes()) << "it is not lost by choosing another list";
    EXPECT_FALSE(table(PriceTerms::tax_table).add_row()) << "one after the other";
    problems_.clear();
    EXPECT_FALSE(page_->save_version({}, now));
    ASSERT_EQ(problems_.size(), 1);
    EXPECT_TRUE(problems_[0].contains(QStringLiteral("needs a rate")));
    type(PriceTerms::tax_table, tax, 1, "Lower rate");
    problems_.clear();
    type(PriceTerms::tax_table, tax, 2, "x");
    type(PriceTerms::tax_table, tax, 2, "101");
    EXPECT_EQ(problems_.size(), 2);
    EXPECT_EQ(rows(PriceTerms::tax_table), tax + 1);
    EXPECT_EQ(parts::price_list_to_json(list()), before);
    type(PriceTerms::tax_table, tax, 2, "0");
    ASSERT_EQ(list().tax_rates.size(), static_cast<std::size_t>(tax) + 1);
    EXPECT_EQ(list().tax_rates.back().rate, 0.0) << "0 that somebody typed";
    EXPECT_EQ(list().tax_rates.back().label, "Lower rate");
    EXPECT_TRUE(page_->save_version({}, now));
    ASSERT_TRUE(table(PriceTerms::tax_table).add_row());
    ASSERT_TRUE(table(PriceTerms::tax_table).remove_row(tax + 1));
    EXPECT_FALSE(page_->has_changes());
    ASSERT_TRUE(table(PriceTerms::tax_table).add_row());
    page_->discard_changes();
    EXPECT_EQ(rows(PriceTerms::tax_table), tax + 1);
    const auto dialog = page_->versions();
    const QTableWidget& changes = *dialog->view()->changes();
    ASSERT_EQ(changes.rowCount(), 1);
    EXPECT_TRUE(changes.item(0, 2)->text().contains(QStringLiteral("rate 0 %"))) << "an added row tells its rate";
}

TEST_F(TermsTest, a_copy_of_invented_prices_keeps_its_mark_until_it_is_taken_away) {
    EXPECT_TRUE(list().invented);
    EXPECT_TRUE(saved().invented) << "kept, so that quotes say so";
    EXPECT_TRUE(page_->checked_button()->isVisibleTo(page_.get()));
    EXPECT_TRUE(page_->state_words().contains(QStringLiteral("not checked"))) << page_->state_words().toStdString();
    const auto still = page_->unchecked().size();
    EXPECT_GT(still, list().items.size() / 2);
    commit("An hour of work, net", "70");
    EXPECT_EQ(page_->unchecked().size(), still - 1);
    EXPECT_TRUE(list().invented) << "not by a change alone";
    page_->set_checked();
    EXPECT_FALSE(list().invented);
    EXPECT_FALSE(page_->checked_button()->isVisibleTo(page_.get()));
    EXPECT_TRUE(saved().invented) << "until it is saved";
    ASSERT_TRUE(page_->save_version({}, now));
    EXPECT_FALSE(saved().invented);
}

TEST_F(TermsTest, versions_tell_what_changed_and_who_saved_it) {
    type(PriceTerms::tariff_table, 0, 1, "0.4");
    commit("Cost of an hour", "44.50");
    ASSERT_TRUE(page_->save_version(QStringLiteral("new tariff"), now));
    const auto dialog = page_->versions();
    const VersionsView& history = *dialog->view();
    ASSERT_EQ(history.changes()->rowCount(), 2);
    EXPECT_EQ(history.changes()->item(1, 0)->text(), QStringLiteral("Electricity, a kWh"));
    EXPECT_EQ(history.changes()->item(1, 2)->text(), QStringLiteral("0.4"));
    EXPECT_EQ(history.versions()->item(0, 2)->text(), QStringLiteral("Ada Reed on desk-2"));
}

TEST_F(TermsTest, a_list_of_the_program_is_not_changed) {
    ASSERT_TRUE(page_->choose("invented-eur"));
    const std::string before = parts::price_list_to_json(list());
    EXPECT_FALSE(table(PriceTerms::rate_table).add_row());
    EXPECT_FALSE(table(PriceTerms::task_table).remove_row(0));
    type(PriceTerms::tariff_table, 0, 1, "9");
    EXPECT_EQ(parts::price_list_to_json(list()), before);
}

}  // namespace
}  // namespace terms_test
}  // namespace wg::ui
