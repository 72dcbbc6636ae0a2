#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include "core/quantity/sha256.h"
#include "core/store/store.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/job_session.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/parts_model.h"

namespace wg::ui {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

class OfferStageTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now);
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        Job fresh = sample::job();
        fresh.revision = 0;
        auto saved = store_->save(fresh, now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        job_ = saved.value();
    }

    /// A session whose plan is the hand-made one, with or without a stop.
    std::unique_ptr<JobSession> session(bool stopped) {
        auto made = std::make_unique<JobSession>(
            job_, std::make_shared<const plan::Reference>(),
            [stopped](const Job& job, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                plan::Plan plan = sample::plan(job);
                if (stopped) plan.findings.insert(plan.findings.begin(), sample::stop());
                return plan;
            });
        EXPECT_TRUE(QTest::qWaitFor([&] { return made->settled(); }, 5000));
        return made;
    }

    std::unique_ptr<store::Store> store_;
    Job job_;
};

TEST_F(OfferStageTest, issuing_freezes_the_plan_as_it_is_into_the_store) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    ASSERT_TRUE(stage.issue_quote(now));
    const auto quotes = store_->quotes(job_.id);
    ASSERT_TRUE(quotes.ok());
    ASSERT_EQ(quotes.value().size(), 1U);
    const store::IssuedQuote& issued = quotes.value().front();
    EXPECT_EQ(issued.job_revision, job_.revision);
    EXPECT_EQ(issued.number, "2027-0042-1");
    EXPECT_EQ(issued.gross_minor, open->plan()->quote->gross.minor);
    EXPECT_EQ(issued.sha256, sha256_hex(issued.plan_json));
    EXPECT_NE(issued.plan_json.find("Marl 21"), std::string::npos);
    EXPECT_EQ(open->job().state, JobState::offered);
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, a_plan_with_a_stop_is_refused_and_nothing_is_stored) {
    const auto open = session(true);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    EXPECT_FALSE(stage.issue_quote(now));
    EXPECT_TRUE(store_->quotes(job_.id).value().empty());
    EXPECT_EQ(open->job().state, JobState::visit);
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, a_job_with_changes_not_saved_is_refused) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    open->edit(QStringLiteral("title"), [](Job& job) { job.title = "Another title"; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return open->settled(); }, 5000));
    EXPECT_FALSE(stage.issue_quote(now));
    EXPECT_TRUE(store_->quotes(job_.id).value().empty());
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, without_a_store_nothing_is_issued) {
    const auto open = session(false);
    OfferStage stage(nullptr);
    stage.set_session(open.get());
    EXPECT_FALSE(stage.issue_quote(now));
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, the_parts_file_is_the_plans_parts_list) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("parts.csv"));
    ASSERT_TRUE(stage.save_parts_csv(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), parts::to_csv(open->plan()->parts.lines, "EUR"));
    EXPECT_FALSE(stage.save_parts_csv(folder.filePath(QStringLiteral("no folder/parts.csv"))));
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, the_firms_block_is_kept_in_the_settings) {
    Firm firm = sample::input().firm;
    ASSERT_TRUE(write_firm(*store_, firm).ok());
    const Firm read = read_firm(store_.get());
    EXPECT_EQ(read.name, firm.name);
    EXPECT_EQ(read.email, firm.email);
    EXPECT_TRUE(read_firm(nullptr).name.isEmpty());
}

TEST(PartsModelTest, tells_every_line_with_its_reason_and_behaves_as_a_model) {
    PartsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    plan::Plan plan = sample::plan(sample::job());
    plan.parts.lines[3].priced = false;
    model.set_lines(plan.parts.lines, QStringLiteral("EUR"));
    ASSERT_EQ(model.rowCount(), static_cast<int>(plan.parts.lines.size()));
    const auto cell = [&](int row, int column) { return model.index(row, column).data().toString(); };
    EXPECT_EQ(cell(3, PartsModel::column_text), QStringLiteral("Roof hook, stainless"));
    EXPECT_EQ(cell(3, PartsModel::column_why), QStringLiteral("6 fixing points"));
    EXPECT_EQ(cell(3, PartsModel::column_price), QStringLiteral("not in the list"));
    EXPECT_TRUE(cell(5, PartsModel::column_to_buy).startsWith(QStringLiteral("6.10")));
    model.set_lines({}, QString());
    EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace
}  // namespace wg::ui
