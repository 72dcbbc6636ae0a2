#include "ui/offer/answer_dialog.h"

#include <QDateEdit>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/documents/logo.h"

namespace wg::ui {

QString answer_word(store::Answer answer) {
    switch (answer) {
        case store::Answer::accepted: return AnswerDialog::tr("accepted");
        case store::Answer::declined: return AnswerDialog::tr("declined");
        case store::Answer::withdrawn: return AnswerDialog::tr("withdrawn");
    }
    return {};
}

AnswerDialog::AnswerDialog(store::Answer answer, const QString& quote_number, const QString& client, QWidget* parent)
    : QDialog(parent), kind_(answer) {
    setWindowTitle(tr("Quote %1: %2").arg(quote_number, answer_word(answer)));
    setMinimumWidth(440);
    on_ = new QDateEdit(QDate::currentDate(), this);
    on_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    on_->setCalendarPopup(true);
    who_ = new QLineEdit(answer == store::Answer::withdrawn ? QString() : client, this);
    note_ = new QLineEdit(this);
    auto* form = new QFormLayout;
    form->addRow(tr("Day"), on_);
    form->addRow(tr("By"), who_);
    form->addRow(tr("Note"), note_);
    if (answer == store::Answer::accepted) {
        auto* choose = new QPushButton(tr("Choose an image\u2026"), this);
        choose->setToolTip(tr("PNG or JPEG of at most 1 MiB"));
        signed_ = new QLabel(tr("none"), this);
        signed_->setWordWrap(true);
        connect(choose, &QPushButton::clicked, this, [this] {
            const QString path = QFileDialog::getOpenFileName(this, tr("Choose the image of the signature"), QString(),
                                                              tr("Pictures (*.png *.jpg *.jpeg)"));
            if (!path.isEmpty()) choose_signature(path);
        });
        auto* row = new QVBoxLayout;  // what is wrong with an image takes a line's width
        row->addWidget(choose, 0, Qt::AlignLeft);
        row->addWidget(signed_);
        form->addRow(tr("Signature"), row);
    }
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

bool AnswerDialog::choose_signature(const QString& path) {
    if (signed_ == nullptr) return false;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        signed_->setText(tr("%1 cannot be read: %2").arg(path, file.errorString()));
        return false;
    }
    const QByteArray bytes = file.read(max_logo_bytes + 1);
    const auto image = signature_from_bytes(bytes);
    signature_ = image.ok() ? bytes : QByteArray();
    signed_->setText(image.ok() ? QFileInfo(path).fileName() : qs(text_of(image.problems())));
    return image.ok();
}

}  // namespace wg::ui
