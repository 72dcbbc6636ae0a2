#pragma once
// Prices from a table of another program: which column is what, what would change, and only then the change.

#include <QByteArray>
#include <QDialog>
#include <QString>
#include <array>
#include <optional>

#include "core/parts/price_import.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QTabWidget;

namespace wg::ui {

class CalmCombo;
class ImportChangesModel;
class ImportProblemsModel;

class PriceImportDialog : public QDialog {
    Q_OBJECT
   public:
    /// Shows the dialog over a file's bytes; the list as it would be, or nothing when it was left or the file cannot be
    /// read, which is told.
    [[nodiscard]] static std::optional<parts::PriceList> ask(const QByteArray& bytes, const QString& file_name,
                                                             const parts::PriceList& into, QWidget* parent);

    PriceImportDialog(tables::CsvTable table, const QString& file_name, parts::PriceList into,
                      QWidget* parent = nullptr);

    /// After the dialog was accepted.
    [[nodiscard]] const std::optional<parts::PriceList>& taken() const { return taken_; }

    void choose_column(parts::ImportField field, int column);  ///< -1: not in the table
    void choose_names_row(int row);                            ///< -1: no line names the columns
    void choose_decimal(parts::DecimalSign sign);
    [[nodiscard]] const parts::ImportMapping& mapping() const { return mapping_; }
    [[nodiscard]] QString counts_words() const;
    [[nodiscard]] QString notes_words() const;
    /// Why the list cannot be taken now; empty: it can.
    [[nodiscard]] QString why_not() const;
    [[nodiscard]] QCheckBox* add_new() const { return add_new_; }
    [[nodiscard]] QCheckBox* remove_gone() const { return remove_gone_; }
    [[nodiscard]] QCheckBox* leave_out() const { return leave_out_; }
    [[nodiscard]] QPushButton* take_button() const { return take_; }
    [[nodiscard]] ImportChangesModel* changes() const { return changes_; }
    [[nodiscard]] ImportProblemsModel* problems() const { return problems_; }

    void accept() override;

   private:
    QWidget* make_columns();
    QWidget* make_preview();
    QWidget* make_foot();
    void fill_columns();
    void take_choices();
    void refresh();
    void refresh_foot();
    [[nodiscard]] QString column_words(int column) const;
    [[nodiscard]] parts::ImportChoice choice() const;

    tables::CsvTable table_;
    QString file_name_;
    parts::PriceList into_;
    parts::ImportMapping mapping_;
    std::vector<std::string> guess_notes_;
    parts::ImportPreview preview_;
    std::vector<Problem> refused_;  ///< why there is no preview
    std::optional<parts::PriceList> taken_;
    std::array<CalmCombo*, parts::import_field_count> columns_ = {};
    CalmCombo* names_row_ = nullptr;
    CalmCombo* decimal_ = nullptr;
    QLabel* notes_ = nullptr;
    QLabel* counts_ = nullptr;
    QLabel* why_not_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    ImportChangesModel* changes_ = nullptr;
    ImportProblemsModel* problems_ = nullptr;
    QCheckBox* add_new_ = nullptr;
    QCheckBox* remove_gone_ = nullptr;
    QCheckBox* leave_out_ = nullptr;
    QPushButton* take_ = nullptr;
};

}  // namespace wg::ui
