#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "core/quantity/sha256.h"
#include "core/store/store.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/edits.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/drawing/fields.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/line_form.h"
#include "ui/offer/offer_model.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/place_form.h"
#include "ui/offer/terms_page.h"

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
        auto reference = std::make_shared<plan::Reference>();
        reference->rule_sets[job_.rule_set].label = "Rules of the firm";
        auto made = std::make_unique<JobSession>(
            job_, std::shared_ptr<const plan::Reference>(reference),
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

TEST_F(OfferStageTest, a_quote_is_issued_once_it_was_asked_and_then_stands_among_the_issued) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    QPushButton* issue = nullptr;
    for (QPushButton* button : stage.findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Issue quote")) issue = button;
    ASSERT_NE(issue, nullptr);
    QString asked;
    const auto answer = [&](const QString& with) {
        QTimer::singleShot(0, &stage, [&asked, with] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (box == nullptr) return;
            asked = box->text() + box->informativeText();
            for (QAbstractButton* button : box->buttons())
                if (button->text() == with) return button->click();
            box->reject();
        });
        issue->click();
    };
    answer(QStringLiteral("Not yet"));
    EXPECT_TRUE(asked.contains(QStringLiteral("gets a number"))) << asked.toStdString();
    EXPECT_TRUE(store_->quotes(job_.id).value().empty());
    answer(QStringLiteral("Issue quote"));
    ASSERT_EQ(store_->quotes(job_.id).value().size(), 1U);
    EXPECT_NE(qobject_cast<IssuedPage*>(stage.findChild<QTabWidget*>()->currentWidget()), nullptr);
    answer(QStringLiteral("Not yet"));
    EXPECT_TRUE(asked.contains(QString::fromStdString(store_->quotes(job_.id).value().front().number)) &&
                asked.contains(QStringLiteral("the same sum")))
        << asked.toStdString();
    EXPECT_EQ(store_->quotes(job_.id).value().size(), 1U);
}

TEST_F(OfferStageTest, issuing_freezes_the_plan_as_it_is_into_the_store) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    ASSERT_TRUE(stage.issue_quote(now)) << stage.findChild<NoticeBar*>()->text().toStdString();
    const auto quotes = store_->quotes(job_.id);
    ASSERT_TRUE(quotes.ok());
    ASSERT_EQ(quotes.value().size(), 1U);
    const store::IssuedQuote& issued = quotes.value().front();
    EXPECT_EQ(issued.job_revision, job_.revision);
    EXPECT_EQ(issued.number, "Q2027-0001");
    EXPECT_EQ(issued.gross_minor, open->plan()->quote->gross.minor);
    EXPECT_EQ(issued.sha256, sha256_hex(issued.plan_json));
    EXPECT_NE(issued.plan_json.find("Marl 21"), std::string::npos);
    EXPECT_NE(issued.plan_json.find("Rules of the firm"), std::string::npos) << "with the rules it was reckoned by";
    EXPECT_EQ(open->job().state, JobState::offered);
    stage.set_session(nullptr);
}

TEST_F(OfferStageTest, the_paper_is_kept_as_it_went_out_and_an_acceptance_moves_the_job_on) {
    const auto open = session(false);
    OfferStage stage(store_.get());
    stage.set_session(open.get());
    ASSERT_TRUE(stage.issue_quote(now));
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("quote.pdf"));
    ASSERT_TRUE(stage.issued()->save_paper(0, path));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished(20000));
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(text.contains(QStringLiteral("Quote Q2027-0001"))) << text.left(600).toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Marta Lindqvist")));
    store::QuoteAnswer answer;
    answer.on = "2027-04-20";
    EXPECT_FALSE(stage.issued()->enter(0, answer, now)) << "nobody is named";
    answer.who = "Marta Lindqvist";
    ASSERT_TRUE(stage.issued()->enter(0, answer, now));
    EXPECT_EQ(open->job().state, JobState::accepted);
    EXPECT_EQ(stage.issued()->table()->item(0, 4)->text(), QStringLiteral("accepted 20 April 2027 by Marta Lindqvist"));
    EXPECT_FALSE(stage.issued()->enter(7, answer, now)) << "no such row";
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

TEST(OfferModelTest, tells_every_line_with_its_reason_and_behaves_as_a_model) {
    OfferModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    plan::Plan plan = sample::plan(sample::job());
    plan.offered.reset();
    plan.parts.lines[3].priced = false;
    model.set_rows(offer_rows(plan), QStringLiteral("EUR"));
    ASSERT_EQ(model.rowCount(), static_cast<int>(plan.parts.lines.size()));
    const auto cell = [&](int row, int column) { return model.index(row, column).data().toString(); };
    EXPECT_EQ(cell(3, OfferModel::column_text), QStringLiteral("Roof hook, stainless"));
    EXPECT_EQ(cell(3, OfferModel::column_why), QStringLiteral("6 fixing points"));
    EXPECT_EQ(cell(3, OfferModel::column_price), QStringLiteral("not in the list"));
    EXPECT_TRUE(cell(5, OfferModel::column_to_buy).startsWith(QStringLiteral("6.10")));
    model.set_rows({}, QString());
    EXPECT_EQ(model.rowCount(), 0);
}

/// The stage with a plan whose offer follows the job, as the real one does.
class OfferLines : public OfferStageTest {
   protected:
    void SetUp() override {
        OfferStageTest::SetUp();
        auto reference = std::make_shared<plan::Reference>();
        plan::RuleSet& rules = reference->rule_sets[job_.rule_set];
        rules.tax.rates = {{"standard", "VAT", 0.2}, {"reduced", "Reduced VAT", 0.05}};
        const quote::TaxRules tax = rules.tax;
        session_ = std::make_unique<JobSession>(
            job_, reference, [tax](const Job& job, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                plan::Plan plan = sample::plan(job);
                for (parts::Line& line : plan.parts.lines)
                    line.tax_class = "standard";
                const auto offered =
                    quote::offered(plan.parts.lines, job.offer, chosen_choice(job)->id, plan.currency, tax);
                if (!offered) return offered.problems();
                plan.offered = offered.value();
                plan.quote = offered.value().quote;
                return plan;
            });
        stage_ = std::make_unique<OfferStage>(store_.get());
        stage_->set_session(session_.get());
        stage_->show();
        stage_->findChild<QTabWidget*>()->setCurrentIndex(1);
        settle();
    }
    void TearDown() override { stage_->set_session(nullptr); }
    void settle() {
        EXPECT_TRUE(QTest::qWaitFor([&] { return session_->settled(); }, 5000));
        QTest::qWait(200);  // the stage shows plans a moment later
    }
    static void type(NumberField* field, const QString& text) {
        field->line_edit()->setText(text);
        QTest::keyClick(field->line_edit(), Qt::Key_Return);
    }
    void select(const char* text) {
        for (int row = 0; row < stage_->lines()->rowCount(); ++row) {
            if (stage_->lines()->index(row, 0).data().toString() == QString::fromLatin1(text))
                stage_->lines_view()->selectRow(row);
        }
    }
    [[nodiscard]] QString cell(const char* text, int column) const {
        for (int row = 0; row < stage_->lines()->rowCount(); ++row) {
            if (stage_->lines()->index(row, 0).data().toString() == QString::fromLatin1(text))
                return stage_->lines()->index(row, column).data().toString();
        }
        return QStringLiteral("no such line");
    }
    void press(const QString& words) {
        for (auto* button : stage_->findChildren<QPushButton*>()) {
            if (button->text() == words && button->isVisibleTo(stage_.get())) {
                button->click();
                return;
            }
        }
        ADD_FAILURE() << "no button says " << words.toStdString();
    }

    std::unique_ptr<JobSession> session_;
    std::unique_ptr<OfferStage> stage_;
};

TEST_F(OfferLines, a_line_is_changed_with_a_reason_and_goes_back_to_the_plan) {
    const std::int64_t before = session_->plan()->quote->net.minor;
    select("Roof hook, stainless");
    const double planned = session_->plan()->parts.lines[3].to_buy;
    type(stage_->form()->quantity_field(), QString::number(planned + 2.0));
    settle();
    ASSERT_EQ(session_->job().offer.changes.size(), 1U);
    EXPECT_EQ(session_->job().offer.changes[0].planned_quantity, planned);
    EXPECT_EQ(cell("Roof hook, stainless", OfferModel::column_how), QStringLiteral("changed"));
    EXPECT_EQ(session_->plan()->quote->net.minor, before + 2 * session_->plan()->parts.lines[3].unit_price.minor);
    stage_->form()->reason_field()->setText(QStringLiteral("two spare"));
    QTest::keyClick(stage_->form()->reason_field(), Qt::Key_Return);
    type(stage_->form()->price_field(), QStringLiteral("9,50"));
    settle();
    ASSERT_EQ(session_->job().offer.changes.size(), 1U) << "the same change goes on";
    EXPECT_EQ(session_->job().offer.changes[0].reason, "two spare");
    EXPECT_EQ(session_->job().offer.changes[0].unit_price_minor, 950);
    EXPECT_EQ(cell("Roof hook, stainless", OfferModel::column_why), QStringLiteral("two spare"));
    stage_->form()->left_out_box()->click();
    settle();
    EXPECT_EQ(cell("Roof hook, stainless", OfferModel::column_how), QStringLiteral("left out"));
    EXPECT_EQ(cell("Roof hook, stainless", OfferModel::column_net), QStringLiteral("\u2014"));
    press(QStringLiteral("Back to the plan"));
    settle();
    EXPECT_TRUE(session_->job().offer.changes.empty());
    EXPECT_EQ(session_->plan()->quote->net.minor, before);
    session_->undo_stack().undo();
    EXPECT_EQ(session_->job().offer.changes.size(), 1U);
}

TEST_F(OfferLines, own_lines_options_and_subsidies_are_entered_and_count_as_they_should) {
    const std::int64_t net = session_->plan()->quote->net.minor;
    press(QStringLiteral("Add a part"));
    settle();
    ASSERT_EQ(session_->job().offer.lines.size(), 1U);
    type(stage_->form()->price_field(), QStringLiteral("100"));
    settle();
    EXPECT_EQ(session_->plan()->quote->net.minor, net + 10'000);
    stage_->form()->option_box()->click();
    settle();
    EXPECT_EQ(session_->plan()->quote->net.minor, net) << "an option counts once the client wants it";
    EXPECT_EQ(cell("Part", OfferModel::column_how), QStringLiteral("option"));
    press(QStringLiteral("Add a subsidy"));
    settle();
    type(stage_->form()->price_field(), QStringLiteral("250"));
    settle();
    EXPECT_EQ(session_->plan()->offered->granted.minor, 25'000);
    EXPECT_EQ(session_->plan()->quote->net.minor, net);
    press(QStringLiteral("Remove this line"));
    settle();
    EXPECT_EQ(session_->job().offer.lines.size(), 1U);
}

TEST_F(OfferLines, the_paper_that_is_kept_is_of_the_plan_that_is_frozen) {
    // Nothing of the stage follows while it is hidden: the page on it still shows the plan before.
    stage_->hide();
    session_->edit(QStringLiteral("discount"), [](Job& job) { job.offer.discount_percent = 10.0; });
    settle();
    Job saved = session_->job();
    const auto stored = store_->save(saved, now);
    ASSERT_TRUE(stored.ok()) << text_of(stored.problems());
    session_->mark_saved(stored.value());
    ASSERT_TRUE(stage_->issue_quote(now));
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("quote.pdf"));
    ASSERT_TRUE(stage_->issued()->save_paper(0, path));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished(20000));
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(text.contains(QStringLiteral("Discount of 10"))) << text.right(2500).toStdString();
    EXPECT_EQ(store_->quotes(job_.id).value().front().gross_minor, session_->plan()->quote->gross.minor);
}

TEST_F(OfferLines, a_bad_figure_is_refused_beside_its_field_and_changes_nothing) {
    select("Roof hook, stainless");
    type(stage_->form()->quantity_field(), QStringLiteral("-3"));
    EXPECT_FALSE(stage_->form()->quantity_field()->problem().isEmpty());
    type(stage_->form()->quantity_field(), QStringLiteral("many"));
    EXPECT_FALSE(stage_->form()->quantity_field()->problem().isEmpty());
    EXPECT_TRUE(session_->job().offer.changes.empty());
}

TEST_F(OfferLines, terms_are_entered_and_instalments_are_whole_together) {
    type(stage_->terms()->discount(), QStringLiteral("2.5"));
    type(stage_->terms()->valid_days(), QStringLiteral("14"));
    stage_->terms()->add_button()->click();
    settle();
    type(stage_->terms()->instalment(0), QStringLiteral("33.33"));
    settle();
    stage_->terms()->add_button()->click();
    settle();
    const Offer& offer = session_->job().offer;
    EXPECT_EQ(offer.discount_percent, 2.5);
    EXPECT_EQ(session_->plan()->quote->valid_days, 14);
    ASSERT_EQ(offer.instalments.size(), 2U);
    EXPECT_EQ(offer.instalments[1].percent, 66.67) << "the rest";
    EXPECT_TRUE(stage_->terms()->together().contains(QStringLiteral("100")))
        << stage_->terms()->together().toStdString();
    ASSERT_EQ(session_->plan()->offered->instalments.size(), 2U);
    EXPECT_EQ(session_->plan()->offered->instalments[0].sum + session_->plan()->offered->instalments[1].sum,
              session_->plan()->quote->gross);
}

TEST_F(OfferStageTest, the_price_list_and_what_makes_work_slower_are_chosen_as_edits) {
    auto reference = std::make_shared<plan::Reference>();
    parts::PriceList list;
    list.id = job_.price_list;
    list.label = "This year's";
    list.valid_from = "2027-01-01";
    list.valid_to = "2027-12-31";
    list.difficulty.access = {{"ladder", "ladder", 1.1}};
    list.travel = parts::Travel{{60}, {5000}, 50.0, 2, "standard"};
    reference->price_lists[list.id] = list;
    list.id = "other";
    list.label = "Other";
    reference->price_lists[list.id] = list;
    list.id = "gone";
    reference->price_lists[list.id] = list;
    reference->withdrawn_lists = {"gone"};
    JobSession made(job_, reference,
                    [](const Job& job, const plan::Reference&, const plan::Options&) -> Result<plan::Plan> {
                        return sample::plan(job);
                    });
    ASSERT_TRUE(QTest::qWaitFor([&] { return made.settled(); }, 5000));
    PlaceForm form;
    form.set_session(&made);
    EXPECT_EQ(form.list()->count(), 2) << "a withdrawn one is not offered";
    EXPECT_EQ(form.list()->currentText(), QStringLiteral("This year's"));
    EXPECT_EQ(form.access()->count(), 2);
    form.access()->setCurrentIndex(1);
    Q_EMIT form.access()->activated(1);
    EXPECT_EQ(made.job().offer.access, "ladder");
    Q_EMIT form.storeys()->committed(2.0);
    Q_EMIT form.distance()->committed(17.5);
    Q_EMIT form.trips()->committed(3.0);
    EXPECT_EQ(made.job().offer.storeys, 2);
    EXPECT_EQ(made.job().offer.distance_km, 17.5);
    EXPECT_EQ(made.job().offer.trips, 3);
    form.list()->show_data(QStringLiteral("other"));
    Q_EMIT form.list()->activated(form.list()->currentIndex());
    EXPECT_EQ(made.job().price_list, "other");
    made.undo_stack().undo();
    made.undo_stack().undo();
    EXPECT_EQ(made.job().price_list, job_.price_list);
    EXPECT_EQ(made.job().offer.trips, 0);
    set_price_list(made, "gone");
    form.refresh();
    EXPECT_EQ(form.list()->count(), 3) << "it stays with the job that has it";
    EXPECT_TRUE(form.list_words().contains(QStringLiteral("withdrawn")));
    set_price_list(made, "nowhere");
    form.refresh();
    EXPECT_TRUE(form.list_words().contains(QStringLiteral("not here")));
}

}  // namespace
}  // namespace wg::ui
