#include "ui/customers/client_erase_dialog.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/common/format.h"

namespace wg::ui {

ClientEraseDialog::ClientEraseDialog(const customers::Customer& customer, int jobs, int years_kept, QWidget* parent)
    : QDialog(parent), expected_(qs(customer.number)) {
    setWindowTitle(tr("Erase a client's data"));
    setMinimumWidth(560);
    auto* title = new QLabel(tr("Erase what is kept of %1").arg(qs(customer.name)), this);
    title->setProperty("role", QStringLiteral("title"));
    title->setTextFormat(Qt::PlainText);
    const QString goes =
        jobs == 0 ? tr("Goes: the customer with addresses, contacts and notes. No job is theirs.")
                  : tr("Goes: the customer with addresses, contacts and notes; of %1 everything but the number: plan, "
                       "readings, history, photographs.")
                        .arg(counted(jobs, tr("%1 job"), tr("%1 jobs")));
    const QString stays = tr("Stays: quotes for %1 after they were issued, as the law may ask; the refrigerant "
                             "register; that, when and why it was erased.")
                              .arg(counted(years_kept, tr("%1 year"), tr("%1 years")));
    const QString not_reached = tr("Not reached: backups made before, exported files, copies on other machines.");
    auto* words = new QLabel(
        QStringList{goes, stays, not_reached, tr("This cannot be undone.")}.join(QStringLiteral("\n\n")), this);
    words->setWordWrap(true);
    reason_ = new QLineEdit(this);
    reason_->setPlaceholderText(tr("asked by letter; without the client's name"));
    number_ = new QLineEdit(this);
    number_->setPlaceholderText(expected_);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(12);
    form->addRow(tr("&Reason, which stays"), reason_);
    form->addRow(tr("&Number of the customer, to be sure"), number_);
    erase_ = new QPushButton(tr("Erase for good"), this);
    erase_->setEnabled(false);
    auto* leave = new QPushButton(tr("Leave everything as it is"), this);
    leave->setProperty("role", QStringLiteral("primary"));
    leave->setDefault(true);
    erase_->setAutoDefault(false);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(erase_);
    buttons->addWidget(leave);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 24, 24, 16);
    column->setSpacing(16);
    column->addWidget(title);
    column->addWidget(words);
    column->addLayout(form);
    column->addLayout(buttons);
    const auto look = [this] { erase_->setEnabled(!reason().isEmpty() && number_->text().trimmed() == expected_); };
    connect(reason_, &QLineEdit::textChanged, this, look);
    connect(number_, &QLineEdit::textChanged, this, look);
    connect(erase_, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
}

QString ClientEraseDialog::reason() const {
    return reason_->text().trimmed();
}

}  // namespace wg::ui
