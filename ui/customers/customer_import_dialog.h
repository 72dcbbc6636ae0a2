#pragma once
// A table of customers from another program: what each column is, and what would become of each line.

#include <QDialog>

#include "core/customers/import.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class CustomerImportDialog : public QDialog {
    Q_OBJECT
   public:
    /// Table and customers must outlive it.
    CustomerImportDialog(const tables::CsvTable& table, const QString& file,
                         const std::vector<customers::Customer>& here, QWidget* parent = nullptr);
    [[nodiscard]] const customers::ImportPreview& preview() const { return preview_; }
    void choose(int column, customers::Column meaning);
    [[nodiscard]] QTableWidget* columns() const { return columns_; }
    [[nodiscard]] QTableWidget* rows() const { return rows_; }
    [[nodiscard]] QPushButton* take_in() const { return take_in_; }
    [[nodiscard]] QString summary() const;

   private:
    void make_columns();
    void refresh();
    void fill_rows();

    const tables::CsvTable& table_;
    QString file_;
    const std::vector<customers::Customer>& here_;
    customers::Mapping mapping_;
    customers::ImportPreview preview_;
    QTableWidget* columns_ = nullptr;
    QTableWidget* rows_ = nullptr;
    QCheckBox* headings_ = nullptr;
    QLabel* summary_ = nullptr;
    QPushButton* take_in_ = nullptr;
};

/// What a column may hold, in words of the window.
[[nodiscard]] QString column_words(customers::Column column);

}  // namespace wg::ui
