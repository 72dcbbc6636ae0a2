#pragma once
// A job whose quotes are issued, answered and confirmed, for tests of what follows.

#include <gtest/gtest.h>

#include <QBuffer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include "core/store/quote_book.h"
#include "tests/ui/documents/sample.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/offer_stage.h"

namespace wg::ui::orders_test {

inline constexpr Instant now{1807531200};  // 2027-04-12T08:00:00Z
inline constexpr Instant later{1807531200 + 86400};

/// The hand-made plan with what is offered of it, so that its lines add up to its price.
inline Result<plan::Plan> planned(const Job& job, const plan::Reference&, const plan::Options&) {
    plan::Plan plan = sample::plan(job);
    quote::TaxRules rules;
    rules.rates = {{"full", "Value added tax", 0.2}, {"standard", "Value added tax", 0.2}};
    const auto offered = quote::offered(plan.parts.lines, job.offer, plan.choice_id, "EUR", rules);
    if (!offered.ok()) return offered.problems();
    plan.offered = offered.value();
    plan.quote = offered.value().quote;
    return plan;
}

inline QByteArray ink() {
    QImage image(120, 40, QImage::Format_RGB32);
    image.fill(Qt::darkBlue);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

inline QString text_of_pdf(const std::string& bytes) {
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

class OrdersTest : public testing::Test {
   protected:
    void SetUp() override {
        auto opened = store::Store::open(":memory:", now);
        ASSERT_TRUE(opened.ok()) << text_of(opened.problems());
        store_ = std::move(opened).value();
        Job fresh = sample::job();
        fresh.revision = 0;
        fresh.offer.instalments = {{sample::uuid(80), "on order", 40.0, ""},
                                   {sample::uuid(81), "after the start", 60.0, ""}};
        auto saved = store_->save(fresh, now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        session_ = std::make_unique<JobSession>(saved.value(), std::make_shared<const plan::Reference>(), planned);
        ASSERT_TRUE(settle());
        stage_ = std::make_unique<OfferStage>(store_.get());
        stage_->set_session(session_.get());
        QObject::connect(stage_->issued(), &IssuedPage::problem, [this](const QString& text) { problem_ = text; });
        QObject::connect(stage_->issued(), &IssuedPage::said, [this](const QString& text) { said_ = text; });
    }
    void TearDown() override {
        if (stage_ != nullptr) stage_->set_session(nullptr);
    }

    bool settle() {
        return QTest::qWaitFor([&] { return session_->settled(); }, 5000);
    }
    /// Saves what was edited, as the window does.
    void save() {
        ASSERT_TRUE(settle());
        auto saved = store_->save(session_->job(), now);
        ASSERT_TRUE(saved.ok()) << text_of(saved.problems());
        session_->mark_saved(saved.value());
        ASSERT_TRUE(settle());
    }
    store::QuoteAnswer answer(store::Answer kind) {
        store::QuoteAnswer out;
        out.answer = kind;
        out.on = "2027-04-20";
        out.who = "Marta Lindqvist";
        return out;
    }
    void issue_with_valve() {
        OfferLine line;
        line.id = sample::uuid(90);
        line.text = "Valve";
        line.unit_price_minor = 5000;
        session_->edit(QStringLiteral("line"), [&](Job& job) { job.offer.lines.push_back(line); });
        save();
        ASSERT_TRUE(stage_->issue_quote(later));
    }

    std::unique_ptr<store::Store> store_;
    std::unique_ptr<JobSession> session_;
    std::unique_ptr<OfferStage> stage_;
    QString problem_;
    QString said_;
};

}  // namespace wg::ui::orders_test
