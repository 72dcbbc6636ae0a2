#pragma once
// What a client answered to a quote, to be entered.

#include <QByteArray>
#include <QDialog>

#include "core/store/quote_book.h"

class QDateEdit;
class QLabel;
class QLineEdit;

namespace wg::ui {

/// "accepted", "declined", "withdrawn".
[[nodiscard]] QString answer_word(store::Answer answer);

/// Day, name and note of an answer.
class AnswerDialog : public QDialog {
    Q_OBJECT
   public:
    AnswerDialog(store::Answer answer, const QString& quote_number, const QString& client, QWidget* parent = nullptr);
    [[nodiscard]] store::QuoteAnswer answer() const;  ///< without id and quote
    /// The image of the signature as it was chosen; empty: none.
    [[nodiscard]] const QByteArray& signature() const { return signature_; }
    /// False, and told in the dialog: no image of a signature.
    bool choose_signature(const QString& path);

   private:
    store::Answer kind_;
    QDateEdit* on_ = nullptr;
    QLineEdit* who_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* signed_ = nullptr;  ///< what was chosen, or why it was not taken
    QByteArray signature_;
};

}  // namespace wg::ui
