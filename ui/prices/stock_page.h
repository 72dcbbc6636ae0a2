#pragma once
// The firm's stock: what is there, the movements of an item, and a place to enter one.

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "core/parts/prices.h"
#include "core/store/stock_book.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QTableWidget;

namespace wg::ui {

class CalmCombo;
class NumberField;
class StockModel;
class TextField;

class StockPage : public QWidget {
    Q_OBJECT
   public:
    /// `items`: of the list on screen, which tells names and units. The store must outlive the page.
    StockPage(store::Store& store, std::function<const std::vector<parts::PriceItem>&()> items,
              QWidget* parent = nullptr);
    /// Reads the book anew; the item that is chosen stays so.
    void reload();
    void choose(const std::string& item_id, const std::string& unit);
    /// What stands in the form as a movement of the item chosen, or in the place of the one that is corrected.
    bool enter(Instant now);
    /// The form is for the movement of that row of the item's table from now on.
    void begin_correction(int row);
    /// The movement of that row counts no more.
    bool strike_out(int row, Instant now);

    /// Whether an entry is to stand that leaves less than nothing; asked on the screen unless set.
    void set_asks(std::function<bool(const QString&)> asks) { asks_ = std::move(asks); }

    [[nodiscard]] StockModel* model() const { return model_; }
    [[nodiscard]] QTableWidget* moves_table() const { return moves_table_; }
    [[nodiscard]] CalmCombo* kind() const { return kind_; }
    [[nodiscard]] NumberField* quantity_field() const { return quantity_; }
    [[nodiscard]] TextField* job_field() const { return job_; }
    [[nodiscard]] TextField* note_field() const { return note_; }
    [[nodiscard]] QString state_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    QWidget* make_items();
    QWidget* make_moves();
    void show_moves();
    void refresh_form();
    /// Quantity, note and job stand for nothing any more; a job that is left in the form would be booked on.
    void clear_form();
    void end_correction();
    bool put(parts::StockMove move, Instant now);
    /// With the movement entered; nothing when the book cannot be read.
    [[nodiscard]] std::optional<std::int64_t> level_with(const parts::StockMove& move) const;
    [[nodiscard]] bool ask_less_than_nothing(const parts::StockMove& move);
    bool tell(const std::vector<Problem>& problems);
    [[nodiscard]] bool is_corrected(std::size_t move) const;

    store::Store& store_;
    std::function<const std::vector<parts::PriceItem>&()> items_;
    std::function<bool(const QString&)> asks_;
    std::string item_id_;
    std::string unit_;
    std::string corrects_id_;
    parts::StockMoveKind corrected_kind_ = parts::StockMoveKind::received;
    std::string corrected_job_id_;         ///< of the movement that is corrected; its number may lead elsewhere by now
    QString corrected_job_number_;         ///< as it was put into the form
    std::vector<parts::StockMove> moves_;  ///< of the item chosen, newest first
    StockModel* model_ = nullptr;
    QTableView* table_ = nullptr;
    QLineEdit* search_ = nullptr;
    QLabel* state_ = nullptr;
    QLabel* title_ = nullptr;
    QTableWidget* moves_table_ = nullptr;
    CalmCombo* kind_ = nullptr;
    NumberField* quantity_ = nullptr;
    TextField* job_ = nullptr;
    TextField* note_ = nullptr;
    QPushButton* enter_ = nullptr;
    QPushButton* correct_ = nullptr;
    QPushButton* strike_ = nullptr;
    QPushButton* leave_ = nullptr;
};

}  // namespace wg::ui
