#pragma once
// The Offer stage: quote, parts list, issued quotes.

#include <QDate>
#include <QPointer>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/store/stock_book.h"
#include "ui/common/stage_widget.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTabWidget;
class QTimer;

namespace wg::ui {

class AgreedBar;
class EmptyPane;
class NoticeBar;
class PaperPane;
class IssuedPage;
class LineForm;
class OfferModel;
class TermsPage;
class TakeDialog;
struct PaperInput;
struct TakeLine;

class OfferStage : public StageWidget {
    Q_OBJECT
   public:
    /// `store` may be null: then quotes can be looked at and saved, but not issued. Not owned; outlives the stage.
    explicit OfferStage(store::Store* store, QWidget* parent = nullptr);

    void set_session(JobSession* session) override;

    /// Freezes the plan as shown into the store. Refused, with the reason on screen, when the plan has a stop, is not
    /// complete yet, has no price, or the job is not saved as planned.
    bool issue_quote(Instant now);
    /// What is asked before: a number is used up and the paper stays. With what the client has already, and what the
    /// quote leaves unsaid. Empty: there is nothing to be issued.
    [[nodiscard]] QString issue_question() const;
    bool save_parts_csv(const QString& path);
    /// The purchase list as PDF under the next number of purchases, and beside it a paper to each supplier of whom
    /// something is ordered. False: refused, which is told; no number is used up.
    bool save_purchase_list(const QString& path, Instant now, bool supplier_prices = true);
    /// Takes from stock for the job what was entered, or puts back what was so taken. False: refused, which is told.
    bool take_from_stock(const std::vector<store::StockBook::Taking>& takings, Instant now);
    bool put_back_into_stock(Instant now);
    /// Null: there is nothing to be taken or put back, or the book cannot be read.
    [[nodiscard]] std::unique_ptr<TakeDialog> take_dialog();
    [[nodiscard]] OfferModel* lines() const { return lines_; }
    [[nodiscard]] QTableView* lines_view() const { return lines_view_; }
    [[nodiscard]] LineForm* form() const { return form_; }
    [[nodiscard]] TermsPage* terms() const { return terms_; }
    [[nodiscard]] IssuedPage* issued() const { return issued_; }

    [[nodiscard]] AgreedBar* agreed() const { return agreed_; }
    [[nodiscard]] PaperPane* paper() const { return paper_; }

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

   private:
    QWidget* make_quote_tab();
    QWidget* make_lines_tab();
    void refresh_lines();
    void show_selected();
    void select_line(const std::string& element_id, const std::string& item_id);
    void refresh_soon();
    void refresh();
    void ask_and_save_parts();
    void ask_and_save_purchase();
    void ask_and_take();
    /// Once a job comes to be fitted what stock has for it is asked for, and put back when that is undone.
    void watch_state();
    void ask_about_stock();
    std::optional<std::vector<TakeLine>> lines_to_take();
    void edit_firm();
    [[nodiscard]] QString why_not_issued() const;
    void ask_and_issue();
    /// The other choices on offer are planned while the stage is seen.
    void want_beside();
    /// What papers are made from now; null without a plan.
    [[nodiscard]] std::shared_ptr<PaperInput> input_now(const QDate& day) const;

    store::Store* store_ = nullptr;
    QPointer<JobSession> session_;
    QTimer* timer_ = nullptr;
    NoticeBar* notice_ = nullptr;
    AgreedBar* agreed_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    PaperPane* paper_ = nullptr;
    QPushButton* issue_ = nullptr;
    OfferModel* lines_ = nullptr;
    QTableView* lines_view_ = nullptr;
    LineForm* form_ = nullptr;
    TermsPage* terms_ = nullptr;
    std::string selected_element_;
    std::string selected_item_;
    bool filling_ = false;  ///< the table is made anew: what was selected is to stay
    QPushButton* save_parts_ = nullptr;
    QPushButton* save_purchase_ = nullptr;
    QPushButton* take_ = nullptr;
    bool was_fitted_ = false;  ///< the session's job, when it was last looked at
    bool ask_stock_ = false;   ///< as soon as its plan stands
    QLabel* totals_ = nullptr;
    IssuedPage* issued_ = nullptr;
};

}  // namespace wg::ui
