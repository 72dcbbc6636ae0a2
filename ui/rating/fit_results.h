#pragma once
// What a fit found: how far values lie from the declared ones, as picture and table, the calibrated figures, warnings.

#include <QWidget>
#include <vector>

#include "core/rating/fit.h"
#include "ui/drawing/rating_painters.h"

class QButtonGroup;
class QLabel;
class QPlainTextEdit;
class QScrollArea;
class QStackedWidget;
class QTableWidget;

namespace wg::ui {

class PictureView;

class FitResults : public QWidget {
    Q_OBJECT
   public:
    enum class View { picture, table, figures };

    explicit FitResults(QWidget* parent = nullptr);
    /// Null: none yet; `words` then say what to do.
    void show_fit(const rating::Fit* fit, const QString& words);
    void show_view(View view);
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString warnings() const;
    [[nodiscard]] QTableWidget* table() const { return values_; }
    [[nodiscard]] QTableWidget* figures() const { return figures_; }
    [[nodiscard]] const std::vector<OffByRow>& rows() const { return rows_; }

   private:
    void fill_values(const rating::Fit& fit);
    void fill_figures(const rating::Fit& fit);

    QButtonGroup* views_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    PictureView* view_ = nullptr;
    QTableWidget* values_ = nullptr;
    QTableWidget* figures_ = nullptr;
    QLabel* hint_ = nullptr;  ///< in place of what is not there yet
    View shown_ = View::picture;
    QLabel* verdict_ = nullptr;
    QPlainTextEdit* warnings_ = nullptr;
    std::vector<OffByRow> rows_;
};

}  // namespace wg::ui
