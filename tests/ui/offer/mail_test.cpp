// A letter begun in the desktop's mail program: what it is given, and what it must never be given.

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "ui/offer/mail_hand_over.h"

namespace wg::ui {
namespace mail_test {
namespace {

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
        const auto done = hand_over(mail);
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
        EXPECT_FALSE(hand_over(mail).ok()) << bad;
    }
    mail = letter(folder);
    mail.attachment = folder.filePath(QStringLiteral("none.pdf"));
    EXPECT_FALSE(hand_over(mail).ok());
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
