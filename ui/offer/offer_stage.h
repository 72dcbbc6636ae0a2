#pragma once
// The Offer stage: quote, parts list, issued quotes.

#include <QDate>
#include <QPointer>
#include <memory>

#include "core/quantity/time.h"
#include "ui/common/stage_widget.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTableWidget;
class QTabWidget;
class QTimer;

namespace wg::store {
class Store;
}

namespace wg::ui {

class EmptyPane;
class NoticeBar;
class PaperPane;
class PartsModel;

class OfferStage : public StageWidget {
    Q_OBJECT
   public:
    /// `store` may be null: then quotes can be looked at and saved, but not issued. Not owned; outlives the stage.
    explicit OfferStage(store::Store* store, QWidget* parent = nullptr);

    void set_session(JobSession* session) override;

    /// Freezes the plan as shown into the store. Refused, with the reason on screen, when the plan has a stop, is not
    /// complete yet, has no price, or the job is not saved as planned.
    bool issue_quote(Instant now);
    bool save_parts_csv(const QString& path);

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    QWidget* make_quote_tab();
    QWidget* make_parts_tab();
    QWidget* make_issued_tab();
    void refresh_soon();
    void refresh();
    void refresh_issued();
    void ask_and_save_parts();
    void edit_firm();
    [[nodiscard]] QString why_not_issued() const;

    store::Store* store_ = nullptr;
    QPointer<JobSession> session_;
    QTimer* timer_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    PaperPane* paper_ = nullptr;
    QPushButton* issue_ = nullptr;
    PartsModel* parts_ = nullptr;
    QTableView* parts_view_ = nullptr;
    QPushButton* save_parts_ = nullptr;
    QLabel* totals_ = nullptr;
    QStackedWidget* issued_stack_ = nullptr;
    QTableWidget* issued_ = nullptr;
};

}  // namespace wg::ui
