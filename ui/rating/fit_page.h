#pragma once
// Page "Fit to data sheet": declared values on the left, what the fit found on the right.

#include <QWidget>

#include "ui/rating/declared_table.h"
#include "ui/rating/fit_run.h"

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace wg::ui {

class FitResults;
class SetChooser;

class FitPage : public QWidget {
    Q_OBJECT
   public:
    explicit FitPage(SetChooser& chooser, QWidget* parent = nullptr);

    /// Starts the fit, or stops the one under way.
    void start_or_stop();
    /// The set was changed: what was found belongs to another one.
    void set_changed();
    /// False when the file was refused, which is told by failed().
    bool load_sheet(const QString& path);
    bool save_sheet(const QString& path);
    bool save_equipment(const QString& path);
    [[nodiscard]] DeclaredModel& model() { return *model_; }
    [[nodiscard]] FitRun& fit_run() { return *run_; }
    [[nodiscard]] FitResults& results() { return *results_; }

   Q_SIGNALS:
    void failed(const QString& words);
    void done_well(const QString& words);
    void settled();  ///< a message no longer holds

   private:
    QWidget* make_left();
    void make_table(QVBoxLayout* column);
    void make_buttons(QVBoxLayout* column);
    void refresh();
    void show_found();
    void add();
    void remove();
    void ask_load();
    void ask_save();
    void ask_save_equipment();

    SetChooser& chooser_;
    DeclaredModel* model_ = nullptr;
    FitRun* run_ = nullptr;
    QTableView* view_ = nullptr;
    QLineEdit* source_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* go_ = nullptr;
    QPushButton* equipment_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* words_ = nullptr;
    FitResults* results_ = nullptr;
    bool outdated_ = false;
};

}  // namespace wg::ui
