#pragma once
// Purchase lists that went out, by supplier: the paper as it was, and booking what came.

#include <QWidget>
#include <string>
#include <vector>

#include "core/store/purchase_book.h"

class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class PurchasePage : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive the page.
    explicit PurchasePage(store::Store& store, QWidget* parent = nullptr);
    void reload();
    /// Books what that row's list has from its supplier as received.
    bool receive(int row, Instant now);
    bool save_paper(int row, const QString& path);

    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] QTableWidget* lines_table() const { return lines_table_; }

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void stock_changed();

   protected:
    void showEvent(QShowEvent* event) override;

   private:
    /// What one supplier has of one list.
    struct Row {
        store::PurchasePaper paper;
        std::string supplier;
        std::vector<store::PurchaseOrdered> lines;
        [[nodiscard]] int open() const;  ///< lines that can be booked
    };
    void show_lines();
    void open_paper();
    [[nodiscard]] const Row* row_at(int row) const;
    bool tell(const std::vector<Problem>& problems);

    store::Store& store_;
    std::vector<Row> rows_;
    QStackedWidget* stack_ = nullptr;
    QTableWidget* table_ = nullptr;
    QTableWidget* lines_table_ = nullptr;
    QPushButton* open_ = nullptr;
    QPushButton* receive_ = nullptr;
};

}  // namespace wg::ui
