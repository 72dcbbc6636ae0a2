#pragma once
// Name and address of the firm, as they stand at the top of every paper.

#include <QDialog>

#include "ui/documents/documents.h"

class QLineEdit;

namespace wg::ui {

class FirmDialog : public QDialog {
    Q_OBJECT
   public:
    explicit FirmDialog(const Firm& firm, QWidget* parent = nullptr);
    [[nodiscard]] Firm firm() const;

   private:
    Firm before_;
    QLineEdit* name_ = nullptr;
    QLineEdit* street_ = nullptr;
    QLineEdit* town_ = nullptr;
    QLineEdit* phone_ = nullptr;
    QLineEdit* email_ = nullptr;
};

}  // namespace wg::ui
