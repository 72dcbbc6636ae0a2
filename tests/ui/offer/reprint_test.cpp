// The paper of an issued quote made again from its frozen plan and the job as it was saved for it.

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "tests/tools/load_reference.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/offer/issued_page.h"
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

TEST(Reprint, says_the_same_as_the_paper_that_went_out_whatever_became_of_the_job) {
    auto reference = std::make_shared<const plan::Reference>(test::reference());
    auto store = store::Store::open(":memory:", now).value();
    Job job = test::demo_job();
    job.revision = 0;
    job.offer.covering = "For {client}: {number}, {price}.";
    if (job.choices.size() > 1) job.choices[1].on_offer = true;
    job = store->save(job, now).value();
    JobSession session(job, reference);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.settled(); }, 120000));
    OfferStage stage(store.get());
    stage.set_session(&session);
    stage.show();
    bool issued = false;
    ASSERT_TRUE(QTest::qWaitFor([&] { return issued = issued || stage.issue_quote(now); }, 120000));
    const auto quote = store->quotes(job.id).value().at(0);
    const QString kept = text_of_file(QByteArray::fromStdString(store::QuoteBook(*store).paper(quote.id).value()));
    ASSERT_TRUE(kept.contains(QStringLiteral("Q2027-0001")));
    EXPECT_EQ(kept.contains(QStringLiteral("beside each other")), job.choices.size() > 1);

    // The job goes on: another client's name, another price.
    session.edit(QStringLiteral("later"), [](Job& later) {
        later.client.name = "Somebody Else";
        later.offer.discount_percent = 10.0;
    });
    const auto again = input_again(*store, quote, session.reference());
    ASSERT_TRUE(again.ok()) << text_of(again.problems());
    const auto printed = pdf_bytes(Paper::quote, *again.value());
    ASSERT_TRUE(printed.ok());
    EXPECT_EQ(text_of_file(printed.value()).toStdString(), kept.toStdString());

    // Another price list: refused, since it would not be what went out.
    plan::Reference dearer = session.reference();
    for (auto& [id, list] : dearer.price_lists)
        for (parts::PriceItem& item : list.items)
            item.price.minor += 100;
    const auto refused = input_again(*store, quote, dearer);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problems().front().what.find("comes out otherwise"), std::string::npos);
    store::IssuedQuote gone = quote;
    gone.job_revision = 99;
    EXPECT_FALSE(input_again(*store, gone, session.reference()).ok());
    stage.set_session(nullptr);
}

}  // namespace
}  // namespace reprint_test
}  // namespace wg::ui
