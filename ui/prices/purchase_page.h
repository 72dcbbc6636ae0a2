#pragma once
// Purchase lists that went out, by supplier: the papers as they were, what of them is to come, and booking what came.

#include <QWidget>
#include <memory>
#include <string>
#include <vector>

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
    /// The store must outlive the page.
    explicit PurchasePage(store::Store& store, QWidget* parent = nullptr);
    void reload();
    /// Books what came of that row's list from its supplier.
    bool receive(int row, const std::vector<store::Delivered>& delivered, const QString& note, Instant now);
    /// A counter-entry to the booking of that row of the bookings shown.
    bool take_back(int booking, Instant now);
    bool save_whole(int row, const QString& path);
    bool save_to_supplier(int row, const QString& path);

    [[nodiscard]] QTableWidget* table() const { return table_; }
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
    void show_lines();
    void show_bookings();
    void ask_and_receive();
    void ask_and_take_back();
    void open_paper(bool to_supplier);
    [[nodiscard]] const Row* row_at(int row) const;
    bool tell(const std::vector<Problem>& problems);

    store::Store& store_;
    std::vector<Row> rows_;
    std::vector<store::Booking> bookings_;  ///< of the row chosen, with lines of its supplier alone
    QStackedWidget* stack_ = nullptr;
    QTableWidget* table_ = nullptr;
    QTableWidget* lines_table_ = nullptr;
    QTableWidget* bookings_table_ = nullptr;
    QPushButton* open_whole_ = nullptr;
    QPushButton* open_supplier_ = nullptr;
    QPushButton* receive_ = nullptr;
    QPushButton* take_back_ = nullptr;
};

}  // namespace wg::ui
