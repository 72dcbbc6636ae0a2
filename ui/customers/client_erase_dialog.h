#pragma once
// Before a client's data are erased: what goes, what stays, and why it is done.

#include <QDialog>

#include "core/customers/customer.h"

class QLineEdit;
class QPushButton;

namespace wg::ui {

class ClientEraseDialog : public QDialog {
    Q_OBJECT
   public:
    /// `years_kept`: how long issued quotes stay.
    ClientEraseDialog(const customers::Customer& customer, int jobs, int years_kept, QWidget* parent = nullptr);
    [[nodiscard]] QString reason() const;
    [[nodiscard]] QLineEdit* reason_field() const { return reason_; }
    [[nodiscard]] QLineEdit* number_field() const { return number_; }
    [[nodiscard]] QPushButton* erase_button() const { return erase_; }

   private:
    QString expected_;
    QLineEdit* reason_ = nullptr;
    QLineEdit* number_ = nullptr;
    QPushButton* erase_ = nullptr;
};

}  // namespace wg::ui
