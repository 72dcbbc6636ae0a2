#pragma once
// Purchase lists that went out, by supplier: the papers as they were, what of them is to come, and booking what came.

#include <QWidget>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/parts/prices.h"
#include "core/store/purchase_book.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class ReceiveDialog;

class PurchasePage : public QWidget {
    Q_OBJECT
   public:
    /// `items`: of the list on screen, which tells suppliers' numbers. The store must outlive the page.
    PurchasePage(store::Store& store, std::function<const std::vector<parts::PriceItem>&()> items,
                 QWidget* parent = nullptr);
    void reload();
    /// Books what came of that row's list from its supplier.
    bool receive(int row, const std::vector<store::Delivered>& delivered, const QString& note, Instant now);
    /// A counter-entry to the booking of that row of the bookings shown.
    bool take_back(int booking, Instant now);
    bool save_whole(int row, const QString& path);
    bool save_to_supplier(int row, const QString& path);

    [[nodiscard]] QTableWidget* table() const { return table_; }
    /// What stands in place of the lists when none is shown; empty: they are.
    [[nodiscard]] QString words_of_none() const;
    [[nodiscard]] QTableWidget* lines_table() const { return lines_table_; }
    [[nodiscard]] QTableWidget* bookings_table() const { return bookings_table_; }
    /// Of that row, as it is shown before a delivery is booked; null: no such row.
    [[nodiscard]] std::unique_ptr<ReceiveDialog> dialog_for(int row);

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    /// What one supplier has of one list.
    struct Row {
        store::PurchasePaper paper;
        std::string job_number;
        std::string supplier;
        std::vector<store::PurchaseOrdered> lines;
        bool has_paper = false;  ///< to the supplier
    };
    QWidget* make_lists();
    QWidget* make_below();
    /// By list and supplier: rows move as lists come.
    void select(const std::string& paper_id, const std::string& supplier);
    /// The supplier's, where the list on screen has the item from them; empty: it is not known.
    [[nodiscard]] QString number_of(const store::PurchaseOrdered& line) const;
    void show_lines();
    void show_bookings();
    void ask_and_receive();
    void ask_and_take_back();
    void open_paper(bool to_supplier);
    [[nodiscard]] const Row* row_at(int row) const;
    bool tell(const std::vector<Problem>& problems);

    store::Store& store_;
    std::function<const std::vector<parts::PriceItem>&()> items_;
    std::vector<Row> rows_;
    std::vector<store::Booking> bookings_;  ///< of the row chosen, with lines of its supplier alone
    QStackedWidget* stack_ = nullptr;
    QLabel* none_ = nullptr;
    QTableWidget* table_ = nullptr;
    QTableWidget* lines_table_ = nullptr;
    QTableWidget* bookings_table_ = nullptr;
    QPushButton* open_whole_ = nullptr;
    QPushButton* open_supplier_ = nullptr;
    QPushButton* receive_ = nullptr;
    QPushButton* take_back_ = nullptr;
};

}  // namespace wg::ui
