#pragma once
// What came of a purchase list from one supplier, line by line, before it is booked.

#include <QDialog>
#include <functional>
#include <vector>

#include "core/store/purchase_book.h"

class QLineEdit;
class QLabel;

namespace wg::ui {

class AmountTable;

class ReceiveDialog : public QDialog {
    Q_OBJECT
   public:
    /// `lines`: of that supplier, with the supplier's numbers as far as they are known.
    ReceiveDialog(const QString& list, const QString& supplier, std::vector<store::PurchaseOrdered> lines,
                  const QStringList& numbers, QWidget* parent = nullptr);
    /// As entered; empty while something cannot be.
    [[nodiscard]] std::vector<store::Delivered> delivered() const;
    [[nodiscard]] QString note() const;
    /// What is more than was ordered, in words; empty: nothing is.
    [[nodiscard]] QString beyond_order() const;
    [[nodiscard]] AmountTable* table() const { return table_; }
    [[nodiscard]] QLineEdit* note_field() const { return note_; }
    [[nodiscard]] QString said() const;
    /// Whether more than was ordered came; asked on the screen unless set.
    void set_asks(std::function<bool(const QString&)> asks) { asks_ = std::move(asks); }

   public Q_SLOTS:
    void accept() override;

   private:
    void say(const QString& words);

    std::vector<store::PurchaseOrdered> lines_;
    std::function<bool(const QString&)> asks_;
    AmountTable* table_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* said_ = nullptr;
};

}  // namespace wg::ui
