#include "ui/offer/firm_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>

namespace wg::ui {

FirmDialog::FirmDialog(const Firm& firm, QWidget* parent) : QDialog(parent), before_(firm) {
    setWindowTitle(tr("Firm's address"));
    auto* form = new QFormLayout(this);
    form->setContentsMargins(24, 24, 24, 24);
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    const auto field = [&](const QString& label, const QString& text) {
        auto* edit = new QLineEdit(text, this);
        edit->setMaxLength(80);  // longer lines do not fit the block on paper
        edit->setMinimumWidth(320);
        form->addRow(label, edit);
        return edit;
    };
    name_ = field(tr("&Name"), firm.name);
    street_ = field(tr("&Street"), firm.street);
    town_ = field(tr("&Town"), firm.town);
    phone_ = field(tr("Tele&phone"), firm.phone);
    email_ = field(tr("&Email"), firm.email);
    auto* buttons = new QDialogButtonBox(this);
    buttons->addButton(tr("Keep"), QDialogButtonBox::AcceptRole)->setProperty("role", QStringLiteral("primary"));
    buttons->addButton(tr("Leave as it was"), QDialogButtonBox::RejectRole);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

Firm FirmDialog::firm() const {
    Firm firm = before_;
    firm.name = name_->text().trimmed();
    firm.street = street_->text().trimmed();
    firm.town = town_->text().trimmed();
    firm.phone = phone_->text().trimmed();
    firm.email = email_->text().trimmed();
    return firm;
}

}  // namespace wg::ui
