#pragma once
// Quotes that went out: the paper as it was, and what the client answered.

#include <QDialog>
#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/store/quote_book.h"
#include "ui/common/job_session.h"

class QDateEdit;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

/// Day, name and note of an answer.
class AnswerDialog : public QDialog {
    Q_OBJECT
   public:
    AnswerDialog(store::Answer answer, const QString& quote_number, const QString& client, QWidget* parent = nullptr);
    [[nodiscard]] store::QuoteAnswer answer() const;  ///< without id and quote

   private:
    store::Answer kind_;
    QDateEdit* on_ = nullptr;
    QLineEdit* who_ = nullptr;
    QLineEdit* note_ = nullptr;
};

class IssuedPage : public QWidget {
    Q_OBJECT
   public:
    /// null store: nothing to show. The store must outlive the page.
    explicit IssuedPage(store::Store* store, QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();
    /// Enters the answer to the quote of that row; an acceptance moves the job on. False: refused, which is told.
    bool enter(int row, store::QuoteAnswer answer, Instant now);
    /// Begins a letter with that row's paper in the desktop's mail program; what came of it is told.
    bool mail(int row);
    /// The paper of that row as it went out.
    bool save_paper(int row, const QString& path);
    [[nodiscard]] QTableWidget* table() const { return table_; }

   Q_SIGNALS:
    void quote_asked();  ///< there is none yet
    void problem(const QString& text);
    void said(const QString& text);

   private:
    void ask_answer(store::Answer answer);
    void open_paper();
    /// The paper in a file of its own among those that need not stay; empty: it could not be, which is told.
    [[nodiscard]] QString paper_file(int row);
    void ask_and_save();
    void refresh_buttons();

    store::Store* store_ = nullptr;
    QPointer<JobSession> session_;
    std::vector<store::IssuedQuote> quotes_;
    QStackedWidget* stack_ = nullptr;
    QTableWidget* table_ = nullptr;
    std::vector<QPushButton*> of_a_row_;
};

}  // namespace wg::ui
