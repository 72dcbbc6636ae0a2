#pragma once
// The firm on its papers: name, address and logo, its words, and how its papers are numbered.

#include <QDialog>
#include <map>

#include "ui/offer/firm_settings.h"

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace wg::ui {

class FirmDialog : public QDialog {
    Q_OBJECT
   public:
    FirmDialog(const Firm& firm, const QByteArray& logo, const NumberSettings& numbers, QWidget* parent = nullptr);
    [[nodiscard]] Firm firm() const;
    [[nodiscard]] const QByteArray& logo() const { return logo_; }  ///< the file; empty: none
    [[nodiscard]] NumberSettings numbers() const;
    /// False, and told in the dialog: no picture that papers can draw.
    bool choose_logo(const QString& path);
    [[nodiscard]] QString said() const;
    /// Of the pattern's field.
    [[nodiscard]] QLineEdit* pattern(store::NumberKind kind) const { return patterns_.at(kind); }
    [[nodiscard]] QLineEdit* suffix() const { return suffix_; }
    [[nodiscard]] QLineEdit* iban() const { return iban_; }
    [[nodiscard]] QLineEdit* bic() const { return bic_; }
    /// What is wrong with the bank's numbers; empty: nothing.
    [[nodiscard]] QString bank_wrong() const;
    [[nodiscard]] QPushButton* keep() const { return keep_; }

   private:
    QWidget* make_address();
    QWidget* make_bank();
    QWidget* make_words();
    QWidget* make_numbers(const NumberSettings& numbers);
    void show_logo();
    void show_numbers();
    /// Whether all of it can be kept, and what is wrong.
    void judge();

    Firm before_;
    QByteArray logo_;
    QLineEdit* name_ = nullptr;
    QLineEdit* street_ = nullptr;
    QLineEdit* town_ = nullptr;
    QLineEdit* phone_ = nullptr;
    QLineEdit* email_ = nullptr;
    QLineEdit* vat_id_ = nullptr;
    QLineEdit* register_ = nullptr;
    QLineEdit* bank_ = nullptr;
    QLineEdit* iban_ = nullptr;
    QLineEdit* bic_ = nullptr;
    QLabel* bank_wrong_ = nullptr;
    bool numbers_right_ = true;
    QLabel* picture_ = nullptr;
    QPushButton* without_ = nullptr;
    QPlainTextEdit* letter_ = nullptr;
    QPlainTextEdit* supplier_words_ = nullptr;
    std::map<store::NumberKind, QLineEdit*> patterns_;
    QLineEdit* suffix_ = nullptr;
    QLabel* examples_ = nullptr;
    QLabel* said_ = nullptr;
    QPushButton* keep_ = nullptr;
};

}  // namespace wg::ui
