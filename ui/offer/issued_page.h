#pragma once
// Quotes that went out: the paper as it was, and what the client answered.

#include <QByteArray>
#include <QImage>
#include <QPointer>
#include <QWidget>
#include <functional>
#include <map>
#include <vector>

#include "core/store/quote_book.h"
#include "ui/common/job_session.h"
#include "ui/documents/documents.h"
#include "ui/offer/reprint.h"

class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class IssuedPage : public QWidget {
    Q_OBJECT
   public:
    /// null store: nothing to show. The store must outlive the page.
    explicit IssuedPage(store::Store* store, QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void refresh();
    /// Enters the answer to the quote of that row; an acceptance moves the job on. False: refused, which is told.
    bool enter(int row, store::QuoteAnswer answer, Instant now, const QByteArray& signature = {});
    /// The quote that overtook that row's: number and day; empty: none did.
    [[nodiscard]] QString overtaken_by(int row) const;
    /// Papers of the order that stand and that a confirmation of that row's quote takes the place of.
    [[nodiscard]] std::vector<store::OrderPaper> replaced_by_confirming(int row) const;
    /// What to ask before the order is confirmed a second time; empty: it is the first, or that quote's own is kept.
    [[nodiscard]] QString why_ask_first(int row) const;
    /// The signature kept with that row's acceptance; null: none, or it cannot be read, which is told.
    [[nodiscard]] QImage signature_of(int row);
    /// The paper of the order that the accepted quote of that row came to: the one that is kept, or a fresh one with
    /// the next number. Empty: refused, which is told. Else the id to look it up by.
    std::string confirm_order(int row, Instant now);
    /// The same of the change that the quote of that row makes of the one accepted before it.
    std::string order_change(int row, Instant now);
    /// What that row's paper is made from, made again from what was frozen; no input: it cannot be, which is told.
    [[nodiscard]] PrintAgain again(int row);
    /// The row of the newest accepted quote older than that of `row`; -1: none.
    [[nodiscard]] int agreed_before(int row) const;
    /// How papers that are made here look.
    void set_look_source(std::function<PaperLook()> look) { look_ = std::move(look); }
    /// Asks the desktop's mail program to begin a letter with that row's paper; what came of it is told when it
    /// answers. False: not asked, which is told.
    bool mail(int row);
    /// The paper of that row as it went out.
    bool save_paper(int row, const QString& path);
    [[nodiscard]] QTableWidget* table() const { return table_; }

   Q_SIGNALS:
    void quote_asked();  ///< there is none yet
    void refreshed();    ///< quotes, answers or papers may be others
    void problem(const QString& text);
    void said(const QString& text);

   private:
    void ask_answer(store::Answer answer);
    void ask_and_confirm();
    void show_signature();
    [[nodiscard]] const store::QuoteAnswer* acceptance(int row) const;
    [[nodiscard]] QString order_words(const std::string& quote_id) const;
    void open_paper();
    void show_again();
    void open_order(const std::string& order_id);
    [[nodiscard]] std::string kept_order(store::NumberKind kind, const std::string& quote_id) const;
    std::string keep_order(store::NumberKind kind, int row, Result<OrderInput> order, Instant now,
                           const std::vector<store::OrderPaper>& replaced = {});
    [[nodiscard]] bool last_answer_is(int row, store::Answer answer) const;
    void open_file(const QString& path);
    bool write_bytes(const QString& path, const std::string& bytes);
    /// The paper in a file of its own among those that need not stay; empty: it could not be, which is told.
    [[nodiscard]] QString paper_file(int row);
    void ask_and_save();
    void refresh_buttons();

    store::Store* store_ = nullptr;
    QPointer<JobSession> session_;
    std::vector<store::IssuedQuote> quotes_;
    std::map<std::string, std::vector<store::QuoteAnswer>> answers_;
    std::vector<store::OrderPaper> orders_;
    std::function<PaperLook()> look_;
    QPushButton* confirm_ = nullptr;
    QPushButton* change_ = nullptr;
    QPushButton* signature_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QTableWidget* table_ = nullptr;
    std::vector<QPushButton*> of_a_row_;
};

}  // namespace wg::ui
