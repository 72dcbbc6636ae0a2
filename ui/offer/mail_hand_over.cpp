#include "ui/offer/mail_hand_over.h"

#include <QDesktopServices>
#include <QFileInfo>
#include <QPointer>
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

namespace {

/// Where xdg-email is missing, or fails.
Result<HandedOver> by_address_alone(const Mail& mail) {
    if (QDesktopServices::openUrl(mailto_of(mail))) return HandedOver::without_attachment;
    return Problem{"e-mail", "no mail program answered",
                   "Save the paper and send it with the program that you use for mail"};
}

}  // namespace

void hand_over(const Mail& mail, QObject* context, const std::function<void(const Result<HandedOver>&)>& done) {
    const QPointer<QObject> still_there(context);
    const auto tell = [still_there, done](const Result<HandedOver>& result) {
        if (still_there != nullptr) done(result);
    };
    if (std::vector<Problem> problems = problems_of(mail); !problems.empty()) return tell(problems);
    const QString program = QStandardPaths::findExecutable(QStringLiteral("xdg-email"));
    if (program.isEmpty()) return tell(by_address_alone(mail));
    // Nobody's child: it would be killed with whoever owns it, and the letter with it.
    auto* run = new QProcess;
    run->setStandardInputFile(QProcess::nullDevice());
    run->setStandardOutputFile(QProcess::nullDevice());
    run->setStandardErrorFile(QProcess::nullDevice());
    // Some mail programs only return when they are closed: failing after the start is told whenever it happens.
    QObject::connect(run, &QProcess::finished, run, [run, mail, tell](int code, QProcess::ExitStatus status) {
        const bool well = status == QProcess::NormalExit && code == 0;
        tell(well ? Result<HandedOver>(HandedOver::with_attachment) : by_address_alone(mail));
        run->deleteLater();
    });
    QObject::connect(run, &QProcess::errorOccurred, run, [run, mail, tell](QProcess::ProcessError error) {
        if (error != QProcess::FailedToStart) return;  // others end in finished()
        tell(by_address_alone(mail));
        run->deleteLater();
    });
    run->start(program, xdg_email_arguments(mail));
}

}  // namespace wg::ui
