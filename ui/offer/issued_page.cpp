#include "ui/offer/issued_page.h"

#include <QDateEdit>
#include <QDateTime>
#include <QDesktopServices>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTableWidget>
#include <QUrl>
#include <QVBoxLayout>

#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/format.h"
#include "ui/offer/mail_hand_over.h"

namespace wg::ui {
namespace {

QString answer_word(store::Answer answer) {
    switch (answer) {
        case store::Answer::accepted: return IssuedPage::tr("accepted");
        case store::Answer::declined: return IssuedPage::tr("declined");
        case store::Answer::withdrawn: return IssuedPage::tr("withdrawn");
    }
    return {};
}

// "accepted 25 June 2027 by M. Lindholm"
QString answer_words(const store::QuoteAnswer& answer) {
    QString words = answer_word(answer.answer) + QLatin1Char(' ') + day(answer.on);
    if (!answer.who.empty()) words += IssuedPage::tr(" by %1").arg(qs(answer.who));
    return words;
}

QString file_stem(const std::string& number) {
    QString stem;
    for (const QChar c : qs(number))
        stem += c.isLetterOrNumber() || c == QLatin1Char('-') ? c : QLatin1Char('-');
    return stem;
}

}  // namespace

AnswerDialog::AnswerDialog(store::Answer answer, const QString& quote_number, const QString& client, QWidget* parent)
    : QDialog(parent), kind_(answer) {
    setWindowTitle(tr("Quote %1: %2").arg(quote_number, answer_word(answer)));
    on_ = new QDateEdit(QDate::currentDate(), this);
    on_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    on_->setCalendarPopup(true);
    who_ = new QLineEdit(answer == store::Answer::withdrawn ? QString() : client, this);
    note_ = new QLineEdit(this);
    auto* form = new QFormLayout;
    form->addRow(tr("Day"), on_);
    form->addRow(tr("By"), who_);
    form->addRow(tr("Note"), note_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Enter"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(buttons);
}

store::QuoteAnswer AnswerDialog::answer() const {
    store::QuoteAnswer out;
    out.answer = kind_;
    out.on = on_->date().toString(Qt::ISODate).toStdString();
    out.who = who_->text().trimmed().toStdString();
    out.note = note_->text().trimmed().toStdString();
    return out;
}

IssuedPage::IssuedPage(store::Store* store, QWidget* parent) : QWidget(parent), store_(store) {
    stack_ = new QStackedWidget(this);
    auto* none = new EmptyPane(tr("No quote issued yet"),
                               tr("An issued quote is kept here as it was, whatever changes in the job afterwards."),
                               tr("Look at the quote"), stack_);
    connect(none, &EmptyPane::step_asked, this, &IssuedPage::quote_asked);
    auto* some = new QWidget(stack_);
    table_ = new QTableWidget(0, 5, some);
    table_->setHorizontalHeaderLabels({tr("Quote"), tr("Issued"), tr("Job revision"), tr("Total"), tr("Answer")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(36);
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
    add(tr("Accepted\u2026"), [this] { ask_answer(store::Answer::accepted); });
    add(tr("Declined\u2026"), [this] { ask_answer(store::Answer::declined); });
    add(tr("Withdrawn\u2026"), [this] { ask_answer(store::Answer::withdrawn); });
    auto* column = new QVBoxLayout(some);
    column->setContentsMargins(16, 16, 16, 16);
    column->addWidget(table_, 1);
    column->addLayout(row);
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
    std::map<std::string, std::vector<store::QuoteAnswer>> answers;
    if (store_ != nullptr && session_ != nullptr) {
        const auto quotes = store_->quotes(session_->job().id);
        if (quotes.ok()) quotes_ = quotes.value();
        const auto kept = store::QuoteBook(*store_).answers(session_->job().id);
        if (kept.ok()) answers = kept.value();
        if (!quotes.ok() || !kept.ok()) Q_EMIT problem(qs(text_of(quotes.ok() ? kept.problems() : quotes.problems())));
    }
    for (std::size_t i = 0; i < quotes_.size(); ++i) {
        const store::IssuedQuote& quote = quotes_[i];
        const auto line = static_cast<int>(i);
        table_->insertRow(line);
        const QDateTime at = QDateTime::fromString(qs(quote.issued_at), Qt::ISODate).toLocalTime();
        const auto answered = answers.find(quote.id);
        // The newest stands first: the others were overtaken by it.
        const QString waits = i == 0 ? tr("no answer yet") : tr("overtaken by a newer one");
        const QString cells[] = {qs(quote.number), at.toString(QStringLiteral("yyyy-MM-dd HH:mm")),
                                 QString::number(quote.job_revision), money({quote.gross_minor}, qs(quote.currency)),
                                 answered == answers.end() ? waits : answer_words(answered->second.back())};
        for (int column = 0; column < 5; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column == 3) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            table_->setItem(line, column, item);
        }
        if (answered == answers.end()) continue;
        QStringList all;
        for (const store::QuoteAnswer& one : answered->second)
            all << answer_words(one) + (one.note.empty() ? QString() : QStringLiteral(": ") + qs(one.note));
        table_->item(line, 4)->setToolTip(all.join(QLatin1Char('\n')));
    }
    if (!quotes_.empty()) table_->selectRow(std::clamp(selected, 0, table_->rowCount() - 1));
    stack_->setCurrentIndex(quotes_.empty() ? 0 : 1);
    refresh_buttons();
}

void IssuedPage::refresh_buttons() {
    for (QPushButton* button : of_a_row_)
        button->setEnabled(table_->currentRow() >= 0);
}

bool IssuedPage::enter(int row, store::QuoteAnswer answer, Instant now) {
    if (store_ == nullptr || session_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return false;
    answer.id = new_id();
    answer.quote_id = quotes_[static_cast<std::size_t>(row)].id;
    const auto entered = store::QuoteBook(*store_).answer(answer, now);
    if (!entered) {
        Q_EMIT problem(qs(text_of(entered.problems())));
        return false;
    }
    const JobState state = session_->job().state;
    if (answer.answer == store::Answer::accepted &&
        (state == JobState::visit || state == JobState::planning || state == JobState::offered))
        set_state(*session_, JobState::accepted);
    refresh();
    return true;
}

void IssuedPage::ask_answer(store::Answer answer) {
    const int row = table_->currentRow();
    if (row < 0 || session_ == nullptr) return;
    AnswerDialog dialog(answer, qs(quotes_[static_cast<std::size_t>(row)].number), qs(session_->job().client.name),
                        this);
    if (dialog.exec() == QDialog::Accepted) enter(row, dialog.answer(), {QDateTime::currentSecsSinceEpoch()});
}

bool IssuedPage::save_paper(int row, const QString& path) {
    if (store_ == nullptr || row < 0 || row >= static_cast<int>(quotes_.size())) return false;
    const auto bytes = store::QuoteBook(*store_).paper(quotes_[static_cast<std::size_t>(row)].id);
    if (!bytes) {
        Q_EMIT problem(qs(text_of(bytes.problems())));
        return false;
    }
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes.value().size());
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.value().data(), size) != size || !file.commit()) {
        Q_EMIT problem(tr("%1 cannot be written: %2. Choose a folder you may write to.").arg(path, file.errorString()));
        return false;
    }
    return true;
}

void IssuedPage::ask_and_save() {
    const int row = table_->currentRow();
    if (row < 0) return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString name = file_stem(quotes_[static_cast<std::size_t>(row)].number) + QStringLiteral(".pdf");
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the paper"), QDir(folder).filePath(name), tr("PDF (*.pdf)"));
    if (!path.isEmpty() && save_paper(row, path)) Q_EMIT said(tr("Saved as %1").arg(path));
}

QString IssuedPage::paper_file(int row) {
    if (row < 0 || row >= static_cast<int>(quotes_.size())) return {};
    // The user's own folder: a client's name and price are nobody else's.
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::CacheLocation));
    folder.mkpath(QStringLiteral("."));
    QString path =
        folder.filePath(QStringLiteral("quote-%1.pdf").arg(file_stem(quotes_[static_cast<std::size_t>(row)].number)));
    return save_paper(row, path) ? path : QString();
}

void IssuedPage::open_paper() {
    const QString path = paper_file(table_->currentRow());
    if (path.isEmpty()) return;
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
    const std::string& covering = session_->job().offer.covering;
    letter.words = covering.empty() ? tr("Good day,\n\nour quote %1 is attached.").arg(number) : qs(covering);
    letter.attachment = path;
    const Result<HandedOver> handed = hand_over(letter);
    if (!handed) {
        Q_EMIT problem(qs(text_of(handed.problems())));
        return false;
    }
    Q_EMIT said(handed.value() == HandedOver::with_attachment
                    ? tr("A letter with the paper is begun in your mail program.")
                    : tr("A letter is begun in your mail program. Put the paper on it: %1").arg(path));
    return true;
}

}  // namespace wg::ui
