#include "ui/customers/customer_form.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/customers/entry_list.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

constexpr int notes_px = 76;
void put(QTableWidget& table, int row, int column, const std::string& text) {
    table.setItem(row, column, new QTableWidgetItem(qs(text)));
}

std::string taken(const QTableWidget& table, int row, int column) {
    const QTableWidgetItem* item = table.item(row, column);
    return item == nullptr ? std::string() : item->text().trimmed().toStdString();
}

}  // namespace

CustomerForm::CustomerForm(QWidget* parent) : QFrame(parent) {
    head_ = new QLabel(this);
    head_->setProperty("role", QStringLiteral("title"));
    name_ = new QLineEdit(this);
    tax_id_ = new QLineEdit(this);
    notes_ = new QPlainTextEdit(this);
    notes_->setTabChangesFocus(true);
    notes_->setFixedHeight(notes_px);
    address_list_ = new EntryList({tr("Addresses"),
                                   {tr("For"), tr("Street"), tr("Postcode"), tr("Town")},
                                   tr("Another address"),
                                   tr("Add an address"),
                                   tr("Remove this address")},
                                  1, this);
    addresses_ = address_list_->table();
    addresses_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Fixed);
    addresses_->setColumnWidth(0, 124);
    addresses_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Fixed);
    addresses_->setColumnWidth(2, 96);
    contact_list_ = new EntryList({tr("Contacts"),
                                   {tr("Name"), tr("Role"), tr("Telephone"), tr("E-mail")},
                                   tr("Another contact"),
                                   tr("Add a contact"),
                                   tr("Remove this contact")},
                                  0, this);
    contacts_ = contact_list_->table();
    auto* form = new QFormLayout;
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(12);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Tax id"), tax_id_);
    form->addRow(tr("N&otes"), notes_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(head_);
    column->addLayout(form);
    column->addWidget(address_list_);
    column->addWidget(contact_list_);
    const auto tell = [this] {
        if (!filling_) Q_EMIT changed();
    };
    connect(name_, &QLineEdit::textEdited, this, tell);
    connect(tax_id_, &QLineEdit::textEdited, this, tell);
    connect(notes_, &QPlainTextEdit::textChanged, this, tell);
    for (EntryList* list : {address_list_, contact_list_}) {
        connect(list->table(), &QTableWidget::cellChanged, this, [this, list, tell] {
            if (filling_) return;
            keep_a_free_row(*list);
            tell();
        });
        connect(list, &EntryList::row_removed, this, tell);
    }
}

void CustomerForm::add_address_row(const customers::Address& address) {
    const int row = addresses_->rowCount();
    addresses_->insertRow(row);
    // Its words stand in the field alone: an item behind it would count as text of the row.
    auto* use = new CalmCombo(addresses_);
    use->addItem(tr("Bill"));
    use->addItem(tr("Site"));
    use->setAccessibleName(tr("What the address is for"));
    use->setCurrentIndex(address.use == customers::AddressUse::site ? 1 : 0);
    addresses_->setCellWidget(row, 0, use);
    put(*addresses_, row, 1, address.street);
    put(*addresses_, row, 2, address.postcode);
    put(*addresses_, row, 3, address.town);
    connect(use, &QComboBox::currentIndexChanged, this, [this] {
        if (!filling_) Q_EMIT changed();
    });
}

void CustomerForm::keep_a_free_row(EntryList& list) {
    QTableWidget& table = *list.table();
    if (table.rowCount() > 0 && list.row_is_empty(table.rowCount() - 1)) return;
    const bool before = filling_;
    filling_ = true;
    if (&list == address_list_) {
        const bool first_is_bill = table.rowCount() > 0;
        add_address_row({first_is_bill ? customers::AddressUse::site : customers::AddressUse::bill, {}, {}, {}});
    } else {
        const int row = table.rowCount();
        table.insertRow(row);
        for (int column = 0; column < table.columnCount(); ++column)
            put(table, row, column, {});
    }
    filling_ = before;
    list.refresh();
}

void CustomerForm::show_customer(const customers::Customer& customer) {
    filling_ = true;
    shown_ = customer;
    head_->setText(customer.number.empty() ? tr("New customer") : tr("Customer %1").arg(qs(customer.number)));
    QStringList former;
    for (const std::string& number : customer.former_numbers)
        former << qs(number);
    if (!former.isEmpty())
        head_->setText(tr("%1, formerly also %2").arg(head_->text(), former.join(QStringLiteral(", "))));
    name_->setText(qs(customer.name));
    tax_id_->setText(qs(customer.tax_id));
    notes_->setPlainText(qs(customer.notes));
    fill_addresses();
    fill_contacts();
    filling_ = false;
}

void CustomerForm::fill_addresses() {
    addresses_->setRowCount(0);
    for (const customers::Address& one : shown_.addresses)
        add_address_row(one);
    keep_a_free_row(*address_list_);
}

void CustomerForm::fill_contacts() {
    contacts_->setRowCount(0);
    for (const customers::Contact& one : shown_.contacts) {
        const int row = contacts_->rowCount();
        contacts_->insertRow(row);
        put(*contacts_, row, 0, one.name);
        put(*contacts_, row, 1, one.role);
        put(*contacts_, row, 2, one.phone);
        put(*contacts_, row, 3, one.email);
    }
    keep_a_free_row(*contact_list_);
}

customers::Customer CustomerForm::customer() const {
    customers::Customer out = shown_;
    out.name = name_->text().trimmed().toStdString();
    out.tax_id = tax_id_->text().trimmed().toStdString();
    out.notes = notes_->toPlainText().toStdString();
    out.addresses.clear();
    for (int row = 0; row < addresses_->rowCount(); ++row) {
        const auto* use = qobject_cast<const QComboBox*>(addresses_->cellWidget(row, 0));
        const bool site = use != nullptr && use->currentIndex() == 1;
        const customers::Address one{site ? customers::AddressUse::site : customers::AddressUse::bill,
                                     taken(*addresses_, row, 1), taken(*addresses_, row, 2),
                                     taken(*addresses_, row, 3)};
        if (!one.empty()) out.addresses.push_back(one);
    }
    out.contacts.clear();
    for (int row = 0; row < contacts_->rowCount(); ++row) {
        const customers::Contact one{taken(*contacts_, row, 0), taken(*contacts_, row, 1), taken(*contacts_, row, 2),
                                     taken(*contacts_, row, 3)};
        if (!one.empty()) out.contacts.push_back(one);
    }
    return out;
}

bool CustomerForm::edited() const {
    return !customers::same_content(shown_, customer());
}

void CustomerForm::focus_name() {
    name_->setFocus();
}

}  // namespace wg::ui
