// A letter begun in the desktop's mail program: what it is given, and what it must never be given.

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <memory>
#include <optional>

#include "ui/offer/mail_hand_over.h"

namespace wg::ui {
namespace mail_test {
namespace {

/// What came of it, waited for.
Result<HandedOver> handed_over(const Mail& mail) {
    QObject here;
    std::optional<Result<HandedOver>> result;
    hand_over(mail, &here, [&](const Result<HandedOver>& came) { result = came; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return result.has_value(); }, 60000));
    return result ? *result : Result<HandedOver>(Problem{"test", "nothing came", ""});
}

/// A folder that stands alone on the PATH while it lives.
class AlonePath {
   public:
    explicit AlonePath(const QString& folder) : before_(qgetenv("PATH")) { qputenv("PATH", folder.toLocal8Bit()); }
    ~AlonePath() { qputenv("PATH", before_); }
    AlonePath(const AlonePath&) = delete;
    AlonePath& operator=(const AlonePath&) = delete;

   private:
    QByteArray before_;
};

Mail letter(const QTemporaryDir& folder) {
    QFile paper(folder.filePath(QStringLiteral("quote.pdf")));
    EXPECT_TRUE(paper.open(QIODevice::WriteOnly));
    paper.write("%PDF-1.7");
    return {QStringLiteral("iris.fennimore@example.invalid"), QStringLiteral("Quote HM-0027-1"),
            QStringLiteral("Good day,\nhere is our quote: 50 % on order & the rest later?"), paper.fileName()};
}

TEST(MailHandOver, the_mail_program_gets_address_subject_words_and_paper_as_they_are) {
    const QTemporaryDir folder;
    const Mail mail = letter(folder);
    QFile program(folder.filePath(QStringLiteral("xdg-email")));
    ASSERT_TRUE(program.open(QIODevice::WriteOnly));
    program.write("#!/bin/sh\nfor word in \"$@\"; do printf '%s\\n--\\n' \"$word\"; done > \"" +
                  folder.filePath(QStringLiteral("said")).toLocal8Bit() + "\"\n");
    program.close();
    ASSERT_TRUE(program.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    {
        const AlonePath alone(folder.path());
        const auto done = handed_over(mail);
        ASSERT_TRUE(done.ok()) << text_of(done.problems());
        EXPECT_EQ(done.value(), HandedOver::with_attachment);
    }
    QFile said(folder.filePath(QStringLiteral("said")));
    ASSERT_TRUE(said.open(QIODevice::ReadOnly));
    QString wanted;
    for (const QString& word : xdg_email_arguments(mail))
        wanted += word + QStringLiteral("\n--\n");
    EXPECT_EQ(QString::fromUtf8(said.readAll()), wanted);
}

TEST(MailHandOver, what_is_no_address_goes_nowhere) {
    const QTemporaryDir folder;
    Mail mail = letter(folder);
    EXPECT_TRUE(problems_of(mail).empty());
    for (const char* bad : {"", "iris", "--attach=/etc/passwd", "-a@b.c", "a@b.c,d@e.f", "a@b.c?cc=d@e.f",
                            "a@b.c\nBcc: d@e.f", "a b@c.d", "a@-b.c", "a@b.c&attach=x", "@b.c", "a@"}) {
        mail.to = QString::fromLatin1(bad);
        EXPECT_FALSE(problems_of(mail).empty()) << bad;
        EXPECT_FALSE(handed_over(mail).ok()) << bad;
    }
    mail = letter(folder);
    mail.attachment = folder.filePath(QStringLiteral("none.pdf"));
    EXPECT_FALSE(handed_over(mail).ok());
}

TEST(MailHandOver, a_mail_program_that_takes_its_time_holds_nothing_up) {
    const QTemporaryDir folder;
    const Mail mail = letter(folder);
    // It ends when it is let go, not before.
    const QString gate = folder.filePath(QStringLiteral("gate"));
    QFile program(folder.filePath(QStringLiteral("xdg-email")));
    ASSERT_TRUE(program.open(QIODevice::WriteOnly));
    program.write("#!/bin/sh\nwhile ! [ -e \"" + gate.toLocal8Bit() + "\" ]; do /bin/sleep 0.05; done\nexit 0\n");
    program.close();
    ASSERT_TRUE(program.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    const AlonePath alone(folder.path());
    int told = 0;
    int told_to_nobody = 0;
    QObject here;
    auto gone = std::make_unique<QObject>();
    hand_over(mail, &here, [&](const Result<HandedOver>& came) {
        EXPECT_TRUE(came.ok());
        ++told;
    });
    hand_over(mail, gone.get(), [&](const Result<HandedOver>&) { ++told_to_nobody; });
    gone.reset();
    EXPECT_EQ(told, 0) << "it returned while the mail program was still at it";
    QFile open_gate(gate);
    ASSERT_TRUE(open_gate.open(QIODevice::WriteOnly));
    ASSERT_TRUE(QTest::qWaitFor([&] { return told == 1; }, 60000));
    EXPECT_EQ(told_to_nobody, 0) << "a window that is closed is told nothing";
}

TEST(MailHandOver, a_mail_program_that_fails_is_told) {
    const QTemporaryDir folder;
    const Mail mail = letter(folder);
    QFile program(folder.filePath(QStringLiteral("xdg-email")));
    ASSERT_TRUE(program.open(QIODevice::WriteOnly));
    program.write("#!/bin/sh\nexit 3\n");
    program.close();
    ASSERT_TRUE(program.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    const AlonePath alone(folder.path());
    const auto came = handed_over(mail);
    // Where the desktop has another way the paper has to be put on by hand, else there is none.
    if (came.ok()) {
        EXPECT_EQ(came.value(), HandedOver::without_attachment);
    } else {
        EXPECT_FALSE(came.problems().front().remedy.empty());
    }
}

TEST(MailHandOver, a_mailto_says_the_same_without_the_paper) {
    const QTemporaryDir folder;
    const QUrl url = mailto_of(letter(folder));
    EXPECT_EQ(
        url.toEncoded(),
        QByteArray(
            "mailto:iris.fennimore%40example.invalid?subject=Quote%20HM-0027-1&body=Good%20day%2C%0D%0Ahere%20is%20"
            "our%20quote%3A%2050%20%25%20on%20order%20%26%20the%20rest%20later%3F"));
}

}  // namespace
}  // namespace mail_test
}  // namespace wg::ui
