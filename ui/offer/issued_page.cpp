#include "ui/offer/issued_page.h"

#include <QDateTime>
#include <QDesktopServices>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTableWidget>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/common/opened_papers.h"
#include "ui/common/whole_file.h"
#include "ui/documents/logo.h"
#include "ui/documents/paper_pane.h"
#include "ui/documents/papers.h"
#include "ui/offer/answer_dialog.h"
#include "ui/offer/firm_settings.h"
#include "ui/offer/mail_hand_over.h"

namespace wg::ui {
namespace {

// "accepted 25 June 2027 by M. Lindholm"
QString answer_words(const store::QuoteAnswer& answer) {
    QString words = answer_word(answer.answer) + QLatin1Char(' ') + day(answer.on);
    if (!answer.who.empty()) words += IssuedPage::tr(" by %1").arg(qs(answer.who));
    if (!answer.signature_sha256.empty()) words += IssuedPage::tr(", signed");
    return words;
}

}  // namespace

IssuedPage::IssuedPage(store::Store* store, QWidget* parent) : QWidget(parent), store_(store) {
    stack_ = new QStackedWidget(this);
    auto* none = new EmptyPane(tr("No quote issued yet"),
                               tr("An issued quote is kept here as it was, whatever changes in the job afterwards."),
                               tr("Look at the quote"), stack_);
    connect(none, &EmptyPane::step_asked, this, &IssuedPage::quote_asked);
    auto* some = new QWidget(stack_);
    table_ = new QTableWidget(0, 5, some);
    table_->setHorizontalHeaderLabels({tr("Quote"), tr("Issued"), tr("Revision"), tr("Total"), tr("Answer")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    // What followed an answer stands below it, a paper a line.
    table_->setWordWrap(true);
    table_->verticalHeader()->setMinimumSectionSize(36);
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(4, QHeaderView::Stretch);
    table_->setAccessibleName(tr("Issued quotes"));
    connect(table_, &QTableWidget::itemSelectionChanged, this, &IssuedPage::refresh_buttons);
    connect(table_, &QTableWidget::activated, this, &IssuedPage::open_paper);
    auto* row = new QHBoxLayout;
    const auto add = [&](const QString& words, auto&& slot) {
        auto* button = new QPushButton(words, some);
        connect(button, &QPushButton::clicked, this, slot);
        row->addWidget(button);
        of_a_row_.push_back(button);
    };
    add(tr("Open the paper"), [this] { open_paper(); });
    add(tr("Save the paper"), [this] { ask_and_save(); });
    add(tr("E-mail the paper"), [this] { mail(table_->currentRow()); });
    row->addStretch(1);
    signature_ = new QPushButton(tr("Show the signature"), some);
    signature_->setToolTip(tr("The image that was kept with the acceptance"));
    connect(signature_, &QPushButton::clicked, this, &IssuedPage::show_signature);
    row->addWidget(signature_);
    confirm_ = new QPushButton(tr("Order confirmation"), some);
    confirm_->setToolTip(tr("Made once for an accepted quote, with the next number of orders, and kept as it is"));
    connect(confirm_, &QPushButton::clicked, this, &IssuedPage::ask_and_confirm);
    change_ = new QPushButton(tr("Change order"), some);
    change_->setToolTip(tr("What this quote changes of the one that was accepted before it, with the next number"));
    connect(change_, &QPushButton::clicked, this,
            [this] { open_order(order_change(table_->currentRow(), {QDateTime::currentSecsSinceEpoch()})); });
    auto* second = new QHBoxLayout;
    second->addWidget(confirm_);
    second->addWidget(change_);
    auto* again = new QPushButton(tr("Print again\u2026"), some);
    again->setToolTip(
        tr("The same text in another form, larger or without colours; the paper that went out stays as it is"));
    connect(again, &QPushButton::clicked, this, &IssuedPage::show_again);
    of_a_row_.push_back(again);
    second->addWidget(again);
    second->addStretch(1);
    add(tr("Accepted\u2026"), [this] { ask_answer(store::Answer::accepted); });
    add(tr("Declined\u2026"), [this] { ask_answer(store::Answer::declined); });
    add(tr("Withdrawn\u2026"), [this] { ask_answer(store::Answer::withdrawn); });
    auto* column = new QVBoxLayout(some);
    column->setContentsMargins(16, 16, 16, 16);
    column->addWidget(table_, 1);
    column->addLayout(row);
    column->addLayout(second);
    stack_->addWidget(none);
    stack_->addWidget(some);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(stack_);
    refresh();
}

void IssuedPage::set_session(JobSession* session) {
    session_ = session;
    refresh();
}

void IssuedPage::refresh() {
    const int selected = table_->currentRow();
    table_->setRowCount(0);
    quotes_.clear();
    answers_.clear();
    orders_.clear();
    if (store_ != nullptr && session_ != nullptr) {
        const auto quotes = store_->quotes(session_->job().id);
        if (quotes.ok()) quotes_ = quotes.value();
        const auto kept = store::QuoteBook(*store_).answers(session_->job().id);
        if (kept.ok()) answers_ = kept.value();
        const auto orders = store::OrderBook(*store_).papers_of(session_->job().id);
        if (orders.ok()) orders_ = orders.value();
        if (!orders.ok()) Q_EMIT problem(qs(text_of(orders.problems())));
        if (!quotes.ok() || !kept.ok()) Q_EMIT problem(qs(text_of(quotes.ok() ? kept.problems() : quotes.problems())));
    }
    for (std::size_t i = 0; i < quotes_.size(); ++i) {
        const store::IssuedQuote& quote = quotes_[i];
        const auto line = static_cast<int>(i);
        table_->insertRow(line);
        const QDateTime at = QDateTime::fromString(qs(quote.issued_at), Qt::ISODate).toLocalTime();
        const auto answered = answers_.find(quote.id);
        // The newest stands first: the others were overtaken by it.
        const QString waits = i == 0 ? tr("no answer yet") : tr("overtaken by a newer one");
        const QString cells[] = {
            qs(quote.number), at.toString(QStringLiteral("yyyy-MM-dd HH:mm")), QString::number(quote.job_revision),
            money({quote.gross_minor}, qs(quote.currency)),
            (answered == answers_.end() ? waits : answer_words(answered->second.back())) + order_words(quote.id)};
        for (int column = 0; column < 5; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column == 3) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            table_->setItem(line, column, item);
        }
        QStringList all;
        if (answered != answers_.end()) {
            for (const store::QuoteAnswer& one : answered->second)
                all << answer_words(one) + (one.note.empty() ? QString() : QStringLiteral(": ") + qs(one.note));
        }
        table_->item(line, 4)->setToolTip(all.join(QLatin1Char('\n')) + order_words(quote.id));
    }
    if (!quotes_.empty()) table_->selectRow(std::clamp(selected, 0, table_->rowCount() - 1));
    stack_->setCurrentIndex(quotes_.empty() ? 0 : 1);
    refresh_buttons();
    Q_EMIT refreshed();
}

void IssuedPage::refresh_buttons() {
    for (QPushButton* button : of_a_row_)
        button->setEnabled(table_->currentRow() >= 0);
    const int row = table_->currentRow();
    confirm_->setEnabled(last_answer_is(row, store::Answer::accepted));
    change_->setEnabled(agreed_before(row) >= 0);
    const store::QuoteAnswer* accepted = acceptance(row);
    signature_->setEnabled(accepted != nullptr && !accepted->signature_sha256.empty());
}

/// Also one that was withdrawn since: its signature is kept.
const store::QuoteAnswer* IssuedPage::acceptance(int row) const {
    if (row < 0 || row >= static_cast<int>(quotes_.size())) return nullptr;
    const auto answered = answers_.find(quotes_[static_cast<std::size_t>(row)].id);
    if (answered == answers_.end()) return nullptr;
    const auto& all = answered->second;
    const auto last = std::find_if(all.rbegin(), all.rend(),
                                   [](const store::QuoteAnswer& one) { return one.answer == store::Answer::accepted; });
    return last == all.rend() ? nullptr : &*last;
}

QImage IssuedPage::signature_of(int row) {
    const store::QuoteAnswer* accepted = acceptance(row);
    if (store_ == nullptr || accepted == nullptr || accepted->signature_sha256.empty()) return {};
    const auto kept = store::QuoteBook(*store_).signature(accepted->id);
    if (!kept.ok()) {
        Q_EMIT problem(qs(text_of(kept.problems())));
        return {};
    }
    const auto image = signature_from_bytes(QByteArray::fromStdString(kept.value()));
    if (image.ok()) return image.value();
    Q_EMIT problem(qs(text_of(image.problems())));
    return {};
}

void IssuedPage::show_signature() {
    const int row = table_->currentRow();
    const QImage image = signature_of(row);
    if (image.isNull()) return;
    QDialog dialog(this);
    dialog.setWindowTitle(tr("Signature under quote %1").arg(qs(quotes_[static_cast<std::size_t>(row)].number)));
    auto* words = new QLabel(answer_words(*acceptance(row)), &dialog);
    auto* picture = new QLabel(&dialog);
    constexpr int widest_px = 640;
    constexpr int highest_px = 320;
    picture->setPixmap(
        QPixmap::fromImage(image.width() > widest_px || image.height() > highest_px
                               ? image.scaled(widest_px, highest_px, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                               : image));
    picture->setFrameShape(QFrame::StyledPanel);
    picture->setAccessibleName(dialog.windowTitle());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(16, 16, 16, 16);
    column->addWidget(words);
    column->addWidget(picture);
    column->addWidget(buttons);
    dialog.exec();
}

bool IssuedPage::enter(int row, store::QuoteAnswer answer, Instant now, const QByteArray& signature) {
    if (store_ == nullptr || session_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return false;
    answer.id = new_id();
    answer.quote_id = quotes_[static_cast<std::size_t>(row)].id;
    const bool was_accepted = last_answer_is(row, store::Answer::accepted);
    const auto entered = store::QuoteBook(*store_).answer(answer, now, signature.toStdString());
    if (!entered) {
        Q_EMIT problem(qs(text_of(entered.problems())));
        return false;
    }
    const JobState state = session_->job().state;
    if (answer.answer == store::Answer::accepted &&
        (state == JobState::visit || state == JobState::planning || state == JobState::offered))
        set_state(*session_, JobState::accepted);
    refresh();
    if (answer.answer != store::Answer::withdrawn || !was_accepted) return true;
    for (int other = 0; other < static_cast<int>(quotes_.size()); ++other)
        if (last_answer_is(other, store::Answer::accepted)) return true;  // another one stands
    if (state == JobState::accepted) {
        set_state(*session_, JobState::offered);
        Q_EMIT said(tr("The job is offered again: no quote of it is accepted any more."));
    } else {
        Q_EMIT said(
            tr("No quote of this job is accepted any more. Its state stays as it is: see whether it is right."));
    }
    return true;
}

void IssuedPage::ask_answer(store::Answer answer) {
    const int row = table_->currentRow();
    if (row < 0 || session_ == nullptr) return;
    if (const QString newer = overtaken_by(row); answer == store::Answer::accepted && !newer.isEmpty()) {
        const QString number = qs(quotes_[static_cast<std::size_t>(row)].number);
        QMessageBox ask(QMessageBox::Question, tr("Quote %1 was overtaken").arg(number),
                        tr("The client has a newer quote, %1. Was quote %2 accepted all the same?").arg(newer, number),
                        QMessageBox::NoButton, this);
        const auto* yes = ask.addButton(tr("Accepted all the same"), QMessageBox::AcceptRole);
        ask.addButton(tr("Not this one"), QMessageBox::RejectRole);
        ask.exec();
        if (ask.clickedButton() != yes) return;
    }
    AnswerDialog dialog(answer, qs(quotes_[static_cast<std::size_t>(row)].number), qs(session_->job().client.name),
                        this);
    if (dialog.exec() == QDialog::Accepted)
        enter(row, dialog.answer(), {QDateTime::currentSecsSinceEpoch()}, dialog.signature());
}

bool IssuedPage::save_paper(int row, const QString& path) {
    if (store_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return false;
    const auto bytes = store::QuoteBook(*store_).paper(quotes_[static_cast<std::size_t>(row)].id);
    if (!bytes) {
        Q_EMIT problem(qs(text_of(bytes.problems())));
        return false;
    }
    return write_bytes(path, bytes.value());
}

bool IssuedPage::write_bytes(const QString& path, const std::string& bytes) {
    const Result<bool> written = write_whole(path, bytes);
    if (!written) Q_EMIT problem(qs(text_of(written.problems())));
    return written.ok();
}

void IssuedPage::ask_and_save() {
    const int row = table_->currentRow();
    if (row < 0) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString name = paper_file_stem(quotes_[static_cast<std::size_t>(row)].number) + QStringLiteral(".pdf");
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the paper"), QDir(folder).filePath(name), tr("PDF (*.pdf)"));
    if (!path.isEmpty() && save_paper(row, path)) Q_EMIT said(tr("Saved as %1").arg(path));
}

QString IssuedPage::paper_file(int row) {
    if (row < 0 || row >= static_cast<int>(quotes_.size())) return {};
    QString path = place_for_opened_paper(
        QStringLiteral("quote-%1.pdf").arg(paper_file_stem(quotes_[static_cast<std::size_t>(row)].number)));
    return save_paper(row, path) ? path : QString();
}

PrintAgain IssuedPage::again(int row) {
    if (store_ == nullptr || session_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return {};
    // What an older program froze is planned again: a year with its ranges takes a second.
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const auto input = input_again(*store_, quotes_[static_cast<std::size_t>(row)], session_->reference());
    QGuiApplication::restoreOverrideCursor();
    if (input.ok()) return input.value();
    Q_EMIT problem(qs(text_of(input.problems())));
    return {};
}

void IssuedPage::show_again() {
    const PrintAgain printed = again(table_->currentRow());
    const auto& input = printed.input;
    if (input == nullptr) return;
    QDialog dialog(this);
    dialog.setWindowTitle(tr("Quote %1, printed again").arg(input->quote_number));
    dialog.resize(size());
    auto* pane = new PaperPane(Paper::quote, &dialog);
    pane->offer_also(Paper::cover_letter);
    pane->set_look(input->look);
    pane->set_input(input);
    connect(pane, &PaperPane::failed, this, &IssuedPage::problem);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(0, 0, 0, 0);
    if (printed.firm_of_today) {
        auto* older = new NoticeBar(&dialog);
        older->add(Mark::caution, tr("An older version of this program issued this quote and did not keep the firm's "
                                     "block: name, address and logo are those of today."));
        column->addWidget(older);
    }
    column->addWidget(pane);
    dialog.exec();
}

void IssuedPage::open_paper() {
    const QString path = paper_file(table_->currentRow());
    if (!path.isEmpty()) open_file(path);
}

void IssuedPage::open_file(const QString& path) {
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        Q_EMIT problem(tr("No program that shows PDF files answered. The paper lies at %1.").arg(path));
}

bool IssuedPage::mail(int row) {
    const QString path = paper_file(row);
    if (path.isEmpty() || session_ == nullptr) return false;
    const Client& client = session_->job().client;
    const QString number = qs(quotes_[static_cast<std::size_t>(row)].number);
    Mail letter;
    letter.to = qs(client.email).trimmed();
    letter.subject = tr("Quote %1").arg(number);
    const QString covering = qs(session_->job().offer.covering);
    letter.words = tr("Good day,\n\nour quote %1 is attached.").arg(number);
    if (!covering.isEmpty()) {
        PaperInput input;
        input.job = session_->job();
        if (const auto plan = session_->plan()) input.plan = *plan;
        input.firm = read_firm(store_);
        const std::string& issued = quotes_[static_cast<std::size_t>(row)].issued_at;
        input.printed_on = QDateTime::fromString(qs(issued), Qt::ISODate).toLocalTime().date();
        input.quote_number = number;
        letter.words = paper::letter_text(input, covering);
    }
    letter.attachment = path;
    if (const std::vector<Problem> problems = problems_of(letter); !problems.empty()) {
        Q_EMIT problem(qs(text_of(problems)));
        return false;
    }
    Q_EMIT said(tr("Asking your mail program for a letter\u2026"));
    hand_over(letter, this, [this, path](const Result<HandedOver>& handed) {
        if (!handed) {
            Q_EMIT problem(qs(text_of(handed.problems())));
            return;
        }
        Q_EMIT said(handed.value() == HandedOver::with_attachment
                        ? tr("A letter with the paper is begun in your mail program.")
                        : tr("A letter is begun in your mail program. Put the paper on it: %1").arg(path));
    });
    return true;
}

}  // namespace wg::ui
