// What leaves the Offer stage: issued quotes and the parts list as CSV.

#include <QDateTime>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "core/store/quote_book.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/notice_bar.h"
#include "ui/common/whole_file.h"
#include "ui/documents/paper_pane.h"
#include "ui/offer/agreed_bar.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/issue.h"
#include "ui/offer/issued_page.h"
#include "ui/offer/offer_input.h"
#include "ui/offer/offer_stage.h"

namespace wg::ui {
QString OfferStage::why_not_issued() const {
    if (session_ == nullptr || session_->plan() == nullptr) return tr("There is no plan.");
    const plan::Plan& plan = *session_->plan();
    if (store_ == nullptr) return tr("No store is open to keep the quote in.");
    if (!session_->settled()) return tr("The figures are still being worked out.");
    if (plan.stopped()) {
        for (const Finding& finding : plan.findings) {
            if (finding.severity == Severity::stop) {
                return tr("The plan has a stop: %1").arg(qs(finding.message));
            }
        }
    }
    if (!plan.quote) return tr("The plan has no price.");
    if (session_->dirty()) return tr("The job has changes that are not saved yet.");
    return why_not_beside(*session_);
}

QString OfferStage::issue_question() const {
    if (session_ == nullptr || store_ == nullptr || session_->plan() == nullptr || !session_->plan()->quote) return {};
    const plan::Plan& plan = *session_->plan();
    const Offer& offer = session_->job().offer;
    const auto quotes = store_->quotes(session_->job().id);
    QString words = tr("The quote over %1 gets a number and is kept as it goes out.")
                        .arg(money(plan.quote->gross, qs(plan.currency)));
    // Newest first.
    if (quotes.ok() && !quotes.value().empty()) {
        const store::IssuedQuote& last = quotes.value().front();
        const bool same_sum = last.gross_minor == plan.quote->gross.minor;
        const bool accepted = agreed_->agreed() && agreed_->agreed()->quote_id == last.id;
        QString has =
            accepted ? tr("The client has accepted quote %1 already.") : tr("The client has quote %1 already.");
        if (same_sum)
            has = accepted ? tr("The client has accepted quote %1 over the same sum already: is it not the same quote?")
                           : tr("The client has quote %1 over the same sum: was it not the same quote?");
        words += QLatin1Char(' ') + has.arg(qs(last.number));
        if (!accepted && agreed_->agreed())
            words += QLatin1Char(' ') + tr("Quote %1 is accepted.").arg(qs(agreed_->agreed()->quote_number));
    }
    if (offer.instalments.empty() && qs(offer.terms).trimmed().isEmpty())
        words += QStringLiteral("\n\n") +
                 tr("\u25b2 It does not tell the client when to pay: there are neither instalments nor words on it "
                    "(page Terms).");
    return words;
}

void OfferStage::ask_and_issue() {
    const QString words = issue_question();
    if (words.isEmpty()) return;
    QMessageBox ask(QMessageBox::Question, tr("Issue the quote?"), words, QMessageBox::NoButton, this);
    const auto* yes = ask.addButton(tr("Issue quote"), QMessageBox::AcceptRole);
    ask.addButton(tr("Not yet"), QMessageBox::RejectRole);
    ask.exec();
    // Shown where it is kept, so that nobody issues it twice.
    if (ask.clickedButton() == yes && issue_quote({QDateTime::currentSecsSinceEpoch()}))
        tabs_->setCurrentWidget(issued_);
}

bool OfferStage::issue_quote(Instant now) {
    const QString why_not = why_not_issued();
    if (!why_not.isEmpty()) {
        notice_->add(Mark::stop, tr("The quote was not issued. %1").arg(why_not));
        return false;
    }
    // From the newest plan: the page on the screen follows plans a moment later and may still show the one before.
    PaperInput shown = *input_now(QDateTime::fromSecsSinceEpoch(now.unix_s).date());
    shown.look = paper_->look();
    const auto logo = read_logo(*store_);
    const auto& sets = session_->reference().rule_sets;
    const auto rules = sets.find(session_->job().rule_set);
    const auto issued = issue_paper(*store_, shown, logo.ok() ? logo.value() : QByteArray(), now,
                                    rules == sets.end() ? nullptr : &rules->second);
    if (!issued.ok()) {
        notice_->add(Mark::stop, qs(text_of(issued.problems())));
        return false;
    }
    Q_EMIT status_text(tr("Quote %1 issued").arg(qs(issued.value().number)));
    if (session_->job().state == JobState::visit || session_->job().state == JobState::planning) {
        set_state(*session_, JobState::offered);
    }
    issued_->refresh();
    return true;
}

bool OfferStage::save_parts_csv(const QString& path) {
    if (session_ == nullptr || session_->plan() == nullptr) return false;
    const plan::Plan& plan = *session_->plan();
    const Result<bool> written = write_whole(path, parts::to_csv(plan.parts.lines, plan.currency));
    if (!written) {
        notice_->add(Mark::stop, qs(text_of(written.problems())));
        return false;
    }
    Q_EMIT status_text(tr("Parts saved as %1").arg(path));
    return true;
}

void OfferStage::ask_and_save_parts() {
    if (session_ == nullptr) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save parts list"), folder + QStringLiteral("/%1 parts.csv").arg(qs(session_->job().number)),
        tr("CSV (*.csv)"));
    if (!path.isEmpty()) save_parts_csv(path);
}

}  // namespace wg::ui
