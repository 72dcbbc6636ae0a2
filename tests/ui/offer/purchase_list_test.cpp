// Buying for a job: the list with a paper to each supplier, what is on order, and what is taken from stock.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "core/store/database.h"
#include "core/store/purchase_book.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/drawing/amount_table.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/purchase_dialog.h"
#include "ui/offer/take_dialog.h"

namespace wg::ui {
namespace purchase_list_test {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

/// The hand-made plan with what is offered of it, so that its lines add up to its price.
Result<plan::Plan> planned_to_buy(const Job& job, const plan::Reference&, const plan::Options&) {
    plan::Plan plan = sample::plan(job);
    quote::TaxRules rules;
    rules.rates = {{"full", "Value added tax", 0.2}, {"standard", "Value added tax", 0.2}};
    const auto offered = quote::offered(plan.parts.lines, job.offer, plan.choice_id, "EUR", rules);
    if (!offered.ok()) return offered.problems();
    plan.offered = offered.value();
    plan.quote = offered.value().quote;
    return plan;
}

QString words_of_pdf(const std::string& bytes) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("paper.pdf"));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
    file.close();
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished(20000));
    return QString::fromUtf8(reader.readAllStandardOutput())
        .replace(QChar(0x202F), QLatin1Char(' '))
        .replace(QChar(0xFB01), QStringLiteral("fi"));  // a ligature of the font
}

TEST(PurchaseState, a_closed_job_may_be_fitted_or_not) {
    EXPECT_TRUE(is_fitted(JobState::fitted));
    EXPECT_TRUE(is_fitted(JobState::in_service));
    for (const JobState state : {JobState::visit, JobState::accepted, JobState::closed})
        EXPECT_FALSE(is_fitted(state));
}

parts::PriceItem priced(const char* id, const char* supplier, std::int64_t list_minor) {
    parts::PriceItem item;
    item.id = id;
    item.supplier = supplier;
    item.supplier_number = std::string("N-") + id;
    item.supplier_price = Money{list_minor};
    item.discount_group = "a";
    item.cost = parts::cost_after_discount(*item.supplier_price, 35.0);
    return item;
}

std::shared_ptr<const plan::Reference> with_prices() {
    auto reference = std::make_shared<plan::Reference>();
    parts::PriceList list;
    list.id = sample::job().price_list;
    list.currency = "EUR";
    list.discount_groups = {{"a", "tube", 35.0}};
    list.items = {priced("tube-6", "Pellow Copper", 777), priced("tube-9", "Pellow Copper", 900),
                  priced("hook", "Birkdale/Trade", 1000)};
    reference->price_lists.emplace(list.id, list);
    return reference;
}

class PurchaseListTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now);
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        Job fresh = sample::job();
        fresh.revision = 0;
        fresh.state = JobState::accepted;
        auto saved = store_->save(fresh, now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        session_ = std::make_unique<JobSession>(saved.value(), with_prices(), planned_to_buy);
        ASSERT_TRUE(settle());
        stage_ = std::make_unique<OfferStage>(store_.get());
        stage_->set_session(session_.get());
    }
    void TearDown() override {
        if (stage_ != nullptr) stage_->set_session(nullptr);
    }

    bool settle() {
        return QTest::qWaitFor([&] { return session_->settled(); }, 5000);
    }
    std::vector<store::PurchaseOrdered> newest_lines() {
        return store::PurchaseBook(*store_).lists(1).value().at(0).lines;
    }
    store::PurchaseOrdered newest_line(const std::string& item) {
        for (const store::PurchaseOrdered& one : newest_lines())
            if (one.item_id == item) return one;
        ADD_FAILURE() << item;
        return {};
    }
    void enter(parts::StockMoveKind kind, const char* item, const char* unit, std::int64_t thousandths) {
        parts::StockMove move;
        move.item_id = item;
        move.unit = unit;
        move.kind = kind;
        move.thousandths = thousandths;
        ASSERT_TRUE(store::StockBook(*store_).enter(move, now).ok());
    }
    std::int64_t level(const std::string& item) {
        for (const parts::StockLevel& one : store::StockBook(*store_).levels().value())
            if (one.item_id == item) return one.thousandths;
        return -1;
    }
    QString notices() { return stage_->findChild<NoticeBar*>()->text(); }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<JobSession> session_;
    std::unique_ptr<OfferStage> stage_;
};

TEST_F(PurchaseListTest, a_purchase_list_is_saved_under_its_number_and_a_failed_one_uses_none) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("purchase.pdf"));
    EXPECT_FALSE(stage_->save_purchase_list(folder.filePath(QStringLiteral("none/purchase.pdf")), now));
    ASSERT_TRUE(stage_->save_purchase_list(path, now));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = words_of_pdf(file.readAll().toStdString());
    EXPECT_TRUE(text.contains(QStringLiteral("Purchase list P2027-0001"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Roof hook")));
    EXPECT_FALSE(text.contains(QStringLiteral("In stock"))) << "none is kept";
    const auto kept = store::PurchaseBook(*store_).lists(10).value();
    ASSERT_EQ(kept.size(), 1U) << "the failed one left none";
    EXPECT_EQ(kept[0].paper.number, "P2027-0001");
    EXPECT_EQ(kept[0].paper.job_id, session_->job().id);
    ASSERT_TRUE(file.seek(0));
    EXPECT_EQ(store::PurchaseBook(*store_).paper(kept[0].paper.id).value(), file.readAll().toStdString());
}

TEST_F(PurchaseListTest, a_purchase_list_that_was_not_kept_leaves_no_paper_and_an_unwritten_one_is_told_as_kept) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("purchase.pdf"));
    const auto* notice = stage_->findChild<NoticeBar*>();
    ASSERT_NE(notice, nullptr);
    ASSERT_FALSE(
        store_->database().run("CREATE TEMP TRIGGER away BEFORE INSERT ON main.purchase_paper "
                               "BEGIN SELECT RAISE(ABORT, 'away'); END"));
    EXPECT_FALSE(stage_->save_purchase_list(path, now));
    EXPECT_FALSE(QFile::exists(path)) << "under a number that the next list gets";
    ASSERT_FALSE(store_->database().run("DROP TRIGGER away"));
    EXPECT_FALSE(stage_->save_purchase_list(folder.path(), now)) << "a folder";
    EXPECT_TRUE(store::PurchaseBook(*store_).lists(10).value().empty());
    // Longer than a file's name can be: seen only when it is written.
    EXPECT_FALSE(stage_->save_purchase_list(folder.filePath(QString(400, QLatin1Char('x'))), now));
    ASSERT_EQ(store::PurchaseBook(*store_).lists(10).value().size(), 1U);
    EXPECT_TRUE(notice->text().contains(QStringLiteral("Purchase list P2027-0001 is kept")))
        << notice->text().toStdString();
}

TEST_F(PurchaseListTest, each_supplier_gets_a_paper_with_own_lines_prices_and_no_name_of_the_client) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("all.pdf")), now));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files, QDir::Name | QDir::IgnoreCase),
              (QStringList{QStringLiteral("all.pdf"), QStringLiteral("P2027-0001 Birkdale-Trade.pdf"),
                           QStringLiteral("P2027-0001 Pellow Copper.pdf")}));
    const auto kept = store::PurchaseBook(*store_).lists(1).value().at(0);
    EXPECT_EQ(kept.papers_to.size(), 2U) << "none to nobody";
    const auto words = [&](const char* supplier) {
        return words_of_pdf(store::PurchaseBook(*store_).paper_to(kept.paper.id, supplier).value());
    };
    const QString pellow = words("Pellow Copper");
    for (const char* wanted : {"Purchase order P2027-0001", "Job 2027-0042", "Pellow Copper", "N-tube-6", "7.77 EUR",
                               "35 %", "Wished on", "Deliver to"})
        EXPECT_TRUE(pellow.contains(QString::fromUtf8(wanted))) << wanted << pellow.toStdString();
    for (const char* not_theirs : {"Roof hook", "Birkdale", "Lindqvist", "Quarry", "Collector", "revision", "Choice"})
        EXPECT_FALSE(pellow.contains(QString::fromUtf8(not_theirs))) << not_theirs;
    EXPECT_TRUE(words("Birkdale/Trade").contains(QStringLiteral("39.00 EUR"))) << "6 of 10.00 less 35 %";
    // All tube is there now: nothing of it is ordered, and its supplier gets no paper.
    enter(parts::StockMoveKind::counted, "tube-6", "m", 99'000);
    enter(parts::StockMoveKind::counted, "tube-9", "m", 99'000);
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("2.pdf")), now, false));
    const auto second = store::PurchaseBook(*store_).lists(1).value().at(0);
    EXPECT_TRUE(second.papers_to.empty()) << "the hooks are on order";
}

TEST_F(PurchaseListTest, prices_are_left_out_when_they_are_to_be) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("all.pdf")), now, false));
    const auto kept = store::PurchaseBook(*store_).lists(1).value().at(0);
    const QString words = words_of_pdf(store::PurchaseBook(*store_).paper_to(kept.paper.id, "Pellow Copper").value());
    EXPECT_TRUE(words.contains(QStringLiteral("N-tube-6")));
    EXPECT_FALSE(words.contains(QStringLiteral("EUR"))) << words.toStdString();
    EXPECT_FALSE(words.contains(QStringLiteral("35 %")));
}

TEST_F(PurchaseListTest, the_next_list_orders_what_neither_stock_nor_earlier_lists_bring) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("1.pdf")), now));
    EXPECT_EQ(newest_line("hook").thousandths, 6'000);
    EXPECT_EQ(newest_line("hook").needed, 6'000);
    const QString path = folder.filePath(QStringLiteral("2.pdf"));
    ASSERT_TRUE(stage_->save_purchase_list(path, now));
    EXPECT_EQ(newest_line("hook").thousandths, 0) << "six are on order";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString words = words_of_pdf(file.readAll().toStdString());
    EXPECT_TRUE(words.contains(QStringLiteral("On order"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("P2027-0001 for job 2027-0042: 6 pc"))) << words.toStdString();
    const std::string first = store::PurchaseBook(*store_).lists(2).value().at(1).paper.id;
    const auto hook = store::PurchaseBook(*store_).lines(first).value();
    int position = 0;
    for (const store::PurchaseOrdered& one : hook)
        if (one.item_id == "hook") position = one.position;
    ASSERT_TRUE(store::PurchaseBook(*store_).receive(first, {{position, 0, 4'000, true}}, "", now).ok());
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("3.pdf")), now));
    EXPECT_EQ(newest_line("hook").thousandths, 2'000) << "four are there, the rest does not come";
    enter(parts::StockMoveKind::taken, "hook", "pc", 9'000);
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("4.pdf")), now));
    EXPECT_EQ(newest_line("hook").thousandths, 4'000) << "two are on order; less than nothing counts as none";
    EXPECT_TRUE(notices().contains(QStringLiteral("less than nothing"))) << notices().toStdString();
}

TEST_F(PurchaseListTest, what_the_job_took_is_not_ordered_again_and_no_work_twice) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("1.pdf")), now));
    const auto first = store::PurchaseBook(*store_).lists(1).value().at(0);
    std::vector<store::Delivered> all;
    for (const store::PurchaseOrdered& line : first.lines)
        if (parts::is_stocked(line) && line.thousandths > 0) all.push_back({line.position, 0, line.thousandths, false});
    ASSERT_TRUE(store::PurchaseBook(*store_).receive(first.paper.id, all, "", now).ok());
    const auto dialog = stage_->take_dialog();
    ASSERT_TRUE(stage_->take_from_stock(dialog->takings(), now));
    const QString path = folder.filePath(QStringLiteral("2.pdf"));
    ASSERT_TRUE(stage_->save_purchase_list(path, now));
    for (const store::PurchaseOrdered& line : newest_lines())
        EXPECT_EQ(line.thousandths, 0) << line.text;
    EXPECT_EQ(newest_line("hook").needed, 6'000) << "the need stays whole";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString words = words_of_pdf(file.readAll().toStdString());
    EXPECT_TRUE(words.contains(QStringLiteral("Taken for"))) << words.toStdString();
}

TEST_F(PurchaseListTest, taking_tells_what_is_on_order) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("1.pdf")), now));
    const auto dialog = stage_->take_dialog();
    QString there;
    for (int row = 0; row < dialog->table()->rowCount(); ++row)
        if (dialog->table()->item(row, 0)->text().startsWith(QStringLiteral("Roof hook")))
            there = dialog->table()->item(row, 3)->text().replace(QChar(0x202F), QLatin1Char(' '));
    EXPECT_EQ(there, QStringLiteral("0 pc in stock, 6 pc on order"));
}

TEST_F(PurchaseListTest, what_is_ordered_for_another_job_is_not_free) {
    QTemporaryDir folder;
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("1.pdf")), now));
    Job other = sample::job();
    other.id = sample::uuid(901);
    other.number = "2027-0099";
    other.revision = 0;
    auto saved = store_->save(other, now);
    ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
    JobSession second(saved.value(), with_prices(), planned_to_buy);
    ASSERT_TRUE(QTest::qWaitFor([&] { return second.settled(); }, 5000));
    stage_->set_session(&second);
    ASSERT_TRUE(stage_->save_purchase_list(folder.filePath(QStringLiteral("2.pdf")), now));
    EXPECT_EQ(newest_line("hook").thousandths, 6'000);
    stage_->set_session(session_.get());
}

TEST_F(PurchaseListTest, the_dialog_before_tells_whom_how_much_is_ordered_of) {
    quote::PurchaseGroup group;
    group.supplier = "Pellow";
    group.lines.resize(5);
    group.lines[1].to_order = 2.0;
    group.lines[2].wanted = group.lines[2].taken = 3.0;
    group.lines[3].ordered_before = 1.0;
    group.net = Money{1234};
    const PurchaseDialog dialog({group}, QStringLiteral("EUR"));
    EXPECT_EQ(dialog.table()->item(0, 1)->text(), QStringLiteral("1"));
    EXPECT_EQ(dialog.table()->item(0, 2)->text(), QStringLiteral("2"));
    EXPECT_EQ(dialog.table()->item(0, 3)->text(), QStringLiteral("1")) << "taken for the job";
    EXPECT_EQ(dialog.table()->item(0, 4)->text(), QStringLiteral("1")) << "ordered before";
    EXPECT_EQ(dialog.table()->item(0, 5)->text(), money(Money{1234}, QStringLiteral("EUR")));
    EXPECT_TRUE(dialog.with_prices());
}

TEST_F(PurchaseListTest, a_job_takes_what_was_planned_once_and_again_shows_the_rest) {
    enter(parts::StockMoveKind::counted, "hook", "pc", 10'000);
    auto dialog = stage_->take_dialog();
    ASSERT_NE(dialog, nullptr);
    const auto row_of = [&](const char* text) {
        for (int row = 0; row < dialog->table()->rowCount(); ++row)
            if (dialog->table()->item(row, 0)->text().startsWith(QString::fromLatin1(text))) return row;
        return -1;
    };
    EXPECT_EQ(row_of("Fitting"), -1) << "work is not taken";
    EXPECT_EQ(dialog->table()->amount(row_of("Roof hook")), 6'000);
    EXPECT_EQ(dialog->table()->amount(row_of("Collector")), 0) << "no stock is kept of it";
    dialog->table()->set_amount_text(row_of("Roof hook"), QStringLiteral("4"));
    dialog->accept();
    ASSERT_EQ(dialog->result(), TakeDialog::take) << dialog->said().toStdString();
    ASSERT_TRUE(stage_->take_from_stock(dialog->takings(), now));
    EXPECT_EQ(level("hook"), 6'000);
    EXPECT_FALSE(stage_->take_from_stock(dialog->takings(), now)) << "an older look at it";
    EXPECT_TRUE(notices().contains(QStringLiteral("since you looked"))) << notices().toStdString();
    dialog = stage_->take_dialog();
    EXPECT_EQ(dialog->table()->amount(row_of("Roof hook")), 2'000) << "the rest";
    ASSERT_TRUE(stage_->put_back_into_stock(now));
    EXPECT_EQ(level("hook"), 10'000);
    EXPECT_FALSE(stage_->put_back_into_stock(now));
    dialog = stage_->take_dialog();
    EXPECT_EQ(dialog->table()->amount(row_of("Roof hook")), 6'000);
}

TEST_F(PurchaseListTest, less_than_nothing_and_half_pieces_are_not_taken_without_a_word) {
    enter(parts::StockMoveKind::counted, "hook", "pc", 3'000);
    const auto dialog = stage_->take_dialog();
    int hook = 0;
    while (!dialog->table()->item(hook, 0)->text().startsWith(QStringLiteral("Roof hook")))
        ++hook;
    QString asked;
    bool yes = false;
    dialog->set_asks([&](const QString& words) {
        asked = words;
        return yes;
    });
    dialog->accept();
    EXPECT_NE(dialog->result(), TakeDialog::take);
    EXPECT_TRUE(asked.contains(QStringLiteral("Roof hook"))) << asked.toStdString();
    dialog->table()->set_amount_text(hook, QStringLiteral("0.5"));
    dialog->accept();
    EXPECT_NE(dialog->result(), TakeDialog::take);
    EXPECT_TRUE(dialog->said().contains(QStringLiteral("whole pieces"))) << dialog->said().toStdString();
    EXPECT_TRUE(dialog->takings().empty());
    dialog->table()->set_amount_text(hook, QStringLiteral("0"));
    dialog->accept();
    EXPECT_TRUE(dialog->said().contains(QStringLiteral("Nothing is entered")));
    dialog->table()->set_amount_text(hook, QStringLiteral("5"));
    yes = true;
    dialog->accept();
    EXPECT_EQ(dialog->result(), TakeDialog::take);
}

}  // namespace
}  // namespace purchase_list_test
}  // namespace wg::ui
