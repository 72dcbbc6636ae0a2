#pragma once
// The firm's year in pictures: jobs by state, quotes, services due, heat.

#include <QWidget>

#include "core/store/desk_figures.h"
#include "ui/common/figure_table.h"

class QCheckBox;
class QLabel;
class QSpinBox;
class QTableWidget;

namespace wg::ui {

class PictureView;

class FiguresPage : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive the page.
    explicit FiguresPage(store::Store& store, QWidget* parent = nullptr);
    void reload();
    [[nodiscard]] QSpinBox* year() const { return year_; }
    [[nodiscard]] QString words() const;
    /// The figures behind the pictures, a month a row.
    [[nodiscard]] FigureTable figures() const;
    [[nodiscard]] QTableWidget* states() const { return states_; }
    [[nodiscard]] QCheckBox* with_invented() const { return invented_; }
    [[nodiscard]] QString left_out_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);

   private:
    void show_months();
    void save_figures();

    store::Store& store_;
    store::DeskFigures figures_;
    QSpinBox* year_ = nullptr;
    QCheckBox* invented_ = nullptr;
    QLabel* left_out_ = nullptr;  ///< how many demonstrations do not count
    QTableWidget* states_ = nullptr;
    PictureView* quotes_ = nullptr;
    PictureView* services_ = nullptr;
    PictureView* heat_ = nullptr;
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui
