#pragma once
// One customer to read and to edit in place: name, tax id, notes, addresses and contacts.

#include <QFrame>

#include "core/customers/customer.h"

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QTableWidget;

namespace wg::ui {

class EntryList;

class CustomerForm : public QFrame {
    Q_OBJECT
   public:
    explicit CustomerForm(QWidget* parent = nullptr);
    void show_customer(const customers::Customer& customer);
    /// As it stands in the form, with id, number and revision of the one shown.
    [[nodiscard]] customers::Customer customer() const;
    [[nodiscard]] bool edited() const;
    void focus_name();
    [[nodiscard]] QLineEdit* name() const { return name_; }
    [[nodiscard]] QTableWidget* addresses() const { return addresses_; }
    [[nodiscard]] QTableWidget* contacts() const { return contacts_; }
    [[nodiscard]] EntryList* address_list() const { return address_list_; }
    [[nodiscard]] EntryList* contact_list() const { return contact_list_; }

   Q_SIGNALS:
    void changed();

   private:
    void fill_addresses();
    void fill_contacts();
    void keep_a_free_row(EntryList& list);
    void add_address_row(const customers::Address& address);

    customers::Customer shown_;
    bool filling_ = false;
    QLabel* head_ = nullptr;
    QLineEdit* name_ = nullptr;
    QLineEdit* tax_id_ = nullptr;
    QPlainTextEdit* notes_ = nullptr;
    EntryList* address_list_ = nullptr;
    EntryList* contact_list_ = nullptr;
    QTableWidget* addresses_ = nullptr;
    QTableWidget* contacts_ = nullptr;
};

}  // namespace wg::ui
