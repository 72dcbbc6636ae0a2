#include "ui/offer/mail_hand_over.h"

#include <QDesktopServices>
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>

namespace wg::ui {

std::vector<Problem> problems_of(const Mail& mail) {
    // Narrower than RFC 5322 allows, so that no part of it can be an option, a second address or a header.
    static const QRegularExpression plain(
        QStringLiteral("^[A-Za-z0-9_+][A-Za-z0-9._+'-]*@[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?$"));
    if (mail.to.size() > 254 || !plain.match(mail.to).hasMatch())
        return {{"e-mail", "'" + mail.to.left(80).toStdString() + "' is no e-mail address",
                 "Enter the client's address on the Visit"}};
    if (!QFileInfo(mail.attachment).isFile())
        return {{"e-mail", "the paper is not there", "Save the paper and put it on a letter yourself"}};
    return {};
}

QStringList xdg_email_arguments(const Mail& mail) {
    return {QStringLiteral("--utf8"),
            QStringLiteral("--subject"),
            mail.subject,
            QStringLiteral("--body"),
            mail.words,
            QStringLiteral("--attach"),
            mail.attachment,
            mail.to};
}

QUrl mailto_of(const Mail& mail) {
    const auto coded = [](const QString& text) { return QString::fromLatin1(QUrl::toPercentEncoding(text)); };
    QString words = mail.words;
    words.replace(QLatin1Char('\n'), QStringLiteral("\r\n"));  // RFC 6068, section 5
    return QUrl(QStringLiteral("mailto:%1?subject=%2&body=%3").arg(coded(mail.to), coded(mail.subject), coded(words)),
                QUrl::StrictMode);
}

Result<HandedOver> hand_over(const Mail& mail) {
    if (std::vector<Problem> problems = problems_of(mail); !problems.empty()) return problems;
    const QString program = QStandardPaths::findExecutable(QStringLiteral("xdg-email"));
    constexpr int patience_ms = 10000;
    if (!program.isEmpty()) {
        QProcess run;
        run.start(program, xdg_email_arguments(mail));
        if (run.waitForFinished(patience_ms) && run.exitStatus() == QProcess::NormalExit && run.exitCode() == 0)
            return HandedOver::with_attachment;
    }
    if (QDesktopServices::openUrl(mailto_of(mail))) return HandedOver::without_attachment;
    return Problem{"e-mail", "no mail program answered",
                   "Save the paper and send it with the program that you use for mail"};
}

}  // namespace wg::ui
