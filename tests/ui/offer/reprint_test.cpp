// The paper of an issued quote made again from its frozen plan and the job as it was saved for it.

#include <gtest/gtest.h>

#include <QBuffer>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <cstdint>

#include "tests/tools/load_reference.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/documents/paper_pane.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/offer_stage.h"
#include "ui/offer/reprint.h"

namespace wg::ui {
namespace reprint_test {
namespace {

constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z

QString text_of_file(const QByteArray& bytes) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("paper.pdf"));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished(20000));
    return QString::fromUtf8(reader.readAllStandardOutput());
}

std::string words_of(const Composition& composed) {
    QString all;
    for (const QStringList& page : composed.pages)
        all += page.join(QLatin1Char('\n')) + QStringLiteral("\n\f");
    return all.toStdString();
}

/// A store with the demonstration job, issued once as the window issues.
class Reprint : public testing::Test {
   protected:
    void SetUp() override {
        reference_ = std::make_shared<const plan::Reference>(test::reference());
        store_ = store::Store::open(":memory:", now).value();
        ASSERT_TRUE(write_firm(*store_, firm_then()).ok());
        ASSERT_TRUE(write_logo(*store_, logo(Qt::darkGreen)).ok());
        Job job = test::demo_job();
        job.revision = 0;
        job.offer.covering = "For {client}: {number}, {price}.";
        if (job.choices.size() > 1) job.choices[1].on_offer = true;
        job = store_->save(job, now).value();
        session_ = std::make_unique<JobSession>(job, reference_);
        ASSERT_TRUE(QTest::qWaitFor([&] { return session_->settled(); }, 120000));
        stage_ = std::make_unique<OfferStage>(store_.get());
        stage_->set_session(session_.get());
        stage_->show();
    }
    void TearDown() override {
        if (stage_ != nullptr) stage_->set_session(nullptr);
    }
    static Firm firm_then() {
        Firm firm;
        firm.name = QStringLiteral("Oldworks & Daughters");
        firm.street = QStringLiteral("Old Lane 1");
        firm.phone = QStringLiteral("+00 1234");
        firm.letter = QStringLiteral("Then we wrote {number}.");
        return firm;
    }
    static QByteArray logo(Qt::GlobalColor colour) {
        QImage image(200, 80, QImage::Format_RGB32);
        image.fill(colour);
        QBuffer buffer;
        EXPECT_TRUE(buffer.open(QIODevice::WriteOnly));
        EXPECT_TRUE(image.save(&buffer, "PNG"));
        return buffer.data();
    }
    store::IssuedQuote issue() {
        bool issued = false;
        EXPECT_TRUE(QTest::qWaitFor([&] { return issued = issued || stage_->issue_quote(now); }, 120000));
        return store_->quotes(session_->job().id).value().at(0);
    }
    QString kept_text(const store::IssuedQuote& quote) {
        return text_of_file(QByteArray::fromStdString(store::QuoteBook(*store_).paper(quote.id).value()));
    }

    std::shared_ptr<const plan::Reference> reference_;
    std::unique_ptr<store::Store> store_;
    std::unique_ptr<JobSession> session_;
    std::unique_ptr<OfferStage> stage_;
};

TEST_F(Reprint, says_the_same_as_the_paper_that_went_out_whatever_became_of_job_prices_and_firm) {
    PaperLook look;
    look.language = Language::spanish;
    look.form = PageForm::letter;
    stage_->paper()->set_look(look);
    const store::IssuedQuote quote = issue();
    const QString kept = kept_text(quote);
    ASSERT_TRUE(kept.contains(QStringLiteral("Q2027-0001")));
    ASSERT_TRUE(kept.contains(QStringLiteral("Oldworks")));

    // The job goes on, and the firm: another client's name, another price, another list, block, logo and language.
    session_->edit(QStringLiteral("later"), [](Job& later) {
        later.client.name = "Somebody Else";
        later.offer.discount_percent = 10.0;
        later.site.surfaces.front().tilt_deg += 1.0;
    });
    plan::Reference later = session_->reference();
    for (auto& [id, list] : later.price_lists)
        for (parts::PriceItem& item : list.items)
            item.price.minor += 100;
    later.catalogue.collectors.clear();
    Firm firm;
    firm.name = QStringLiteral("Laterfirm");
    ASSERT_TRUE(write_firm(*store_, firm).ok());
    ASSERT_TRUE(write_logo(*store_, logo(Qt::red)).ok());
    stage_->paper()->set_look({});

    const auto again = input_again(*store_, quote, later);
    ASSERT_TRUE(again.ok()) << text_of(again.problems());
    EXPECT_FALSE(again.value().firm_of_today);
    EXPECT_EQ(again.value().input->look, look);
    EXPECT_EQ(again.value().input->firm.logo.pixelColor(3, 3), QColor(Qt::darkGreen));
    EXPECT_EQ(again.value().input->firm.letter, firm_then().letter);
    const auto printed = pdf_bytes(Paper::quote, *again.value().input);
    ASSERT_TRUE(printed.ok());
    EXPECT_EQ(text_of_file(printed.value()).toStdString(), kept.toStdString());
}

TEST_F(Reprint, what_is_shown_before_issuing_is_what_goes_out) {
    // The page on the screen comes from the whole plan, the paper from what is frozen of it.
    for (const Language language : {Language::english, Language::german}) {
        PaperLook look;
        look.language = language;
        look.large_print = language == Language::german;
        stage_->paper()->set_look(look);
        const store::IssuedQuote quote = issue();
        PaperInput shown = *offer_input(*session_, read_firm(store_.get()), QDate(2027, 4, 12));
        shown.look = look;
        shown.unsaved = false;  // issuing has moved the job on
        shown.quote_number = QString::fromStdString(quote.number);
        const auto before = store_->quotes(session_->job().id).value();
        if (before.size() > 1) shown.takes_place_of = QString::fromStdString(before.at(1).number);
        Composition composed;
        ASSERT_TRUE(pdf_bytes(Paper::quote, shown, &composed).ok());
        const auto again = input_again(*store_, quote, session_->reference());
        ASSERT_TRUE(again.ok()) << text_of(again.problems());
        Composition from_snapshot;
        ASSERT_TRUE(pdf_bytes(Paper::quote, *again.value().input, &from_snapshot).ok());
        EXPECT_EQ(words_of(from_snapshot), words_of(composed));
        // Drawings, too: pixel by pixel.
        const auto drawn = preview(Paper::quote, shown, 60),
                   drawn_again = preview(Paper::quote, *again.value().input, 60);
        EXPECT_TRUE(drawn == drawn_again);
        // Saved, so that the next one can be issued.
        ASSERT_EQ(before.size(), language == Language::english ? 1U : 2U);
        if (language == Language::german) break;
        Job saved = store_->save(session_->job(), now).value();
        session_->mark_saved(saved);
        ASSERT_TRUE(QTest::qWaitFor([&] { return session_->settled(); }, 120000));
    }
}

TEST_F(Reprint, of_an_older_snapshot_is_planned_again_and_bears_the_block_of_today) {
    store::IssuedQuote quote = issue();
    // As a program before this one froze it: the plan alone.
    plan::Plan plan = *session_->plan();
    plan.job_revision = quote.job_revision;
    quote.plan_json = plan::plan_to_json(plan);
    Firm firm;
    firm.name = QStringLiteral("Laterfirm");
    ASSERT_TRUE(write_firm(*store_, firm).ok());
    const auto again = input_again(*store_, quote, session_->reference());
    ASSERT_TRUE(again.ok()) << text_of(again.problems());
    EXPECT_TRUE(again.value().firm_of_today);
    EXPECT_EQ(again.value().input->firm.name, firm.name);
    plan::Reference dearer = session_->reference();
    for (auto& [id, list] : dearer.price_lists)
        for (parts::PriceItem& item : list.items)
            item.price.minor += 100;
    const auto refused = input_again(*store_, quote, dearer);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problems().front().what.find("comes out otherwise"), std::string::npos);
    store::IssuedQuote gone = quote;
    gone.job_revision = 99;
    EXPECT_FALSE(input_again(*store_, gone, session_->reference()).ok());
}

TEST_F(Reprint, of_a_snapshot_that_was_altered_is_refused_in_words) {
    const store::IssuedQuote quote = issue();
    const auto altered = [&](const char* what, const char* with) {
        store::IssuedQuote other = quote;
        const auto at = other.plan_json.rfind(what);
        EXPECT_NE(at, std::string::npos) << what;
        other.plan_json.replace(at, std::string(what).size(), with);
        return input_again(*store_, other, session_->reference());
    };
    for (const auto& [what, with] :
         {std::pair{"\"look\": ", "\"lock\": "}, std::pair{"\"printed_on\": \"", "\"printed_on\": \"x"},
          std::pair{"\"firm\": {", "\"firn\": {"}, std::pair{"\"gross_minor\": ", "\"gross_minor\": 1e99"},
          std::pair{"\"logo\": \"", "\"logo\": \"?"}, std::pair{"\"equipment\": {", "\"equipment\": 7, \"x\": {"},
          std::pair{"\"valid_days\": ", "\"valid_days\": -"},
          std::pair{"\"schema\": 2,\n    \"takes", "\"schema\": 3,\n    \"takes"},
          std::pair{"\"takes_place_of\"", "\"take_place_of\""}}) {
        const auto refused = altered(what, with);
        ASSERT_FALSE(refused.ok()) << what;
        EXPECT_FALSE(refused.problems().front().remedy.empty()) << what;
    }
    store::IssuedQuote cut = quote;
    cut.plan_json.resize(cut.plan_json.size() / 2);
    EXPECT_FALSE(input_again(*store_, cut, session_->reference()).ok());
}

TEST_F(Reprint, a_large_logo_far_wider_than_high_is_kept_as_it_came) {
    // Invented noise, which no format packs: above 64 KiB, and under 16 pixels high once it is as wide as paper needs.
    QImage image(2000, 30, QImage::Format_RGB32);
    std::uint32_t state = 7;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            state = state * 1664525U + 1013904223U;
            image.setPixel(x, y, 0xFF000000U | (state >> 8U));
        }
    }
    QBuffer buffer;
    ASSERT_TRUE(buffer.open(QIODevice::WriteOnly) && image.save(&buffer, "PNG"));
    ASSERT_GT(buffer.data().size(), 64 * 1024);
    ASSERT_TRUE(write_logo(*store_, buffer.data()).ok());
    const store::IssuedQuote quote = issue();
    const auto again = input_again(*store_, quote, *reference_, {});
    ASSERT_TRUE(again.ok()) << text_of(again.problems());
    EXPECT_EQ(again.value().input->firm.logo, read_firm(store_.get()).logo);
}

}  // namespace
}  // namespace reprint_test
}  // namespace wg::ui
