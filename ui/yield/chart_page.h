#pragma once
// One tab of the Yield stage: a chart in the program's colours, words beside it, its figures as CSV.

#include <QChart>
#include <QString>
#include <QWidget>
#include <memory>

#include "core/plan/plan.h"
#include "ui/common/theme.h"
#include "ui/yield/yield_page.h"

class QChartView;
class QLabel;
class QVBoxLayout;
class QValueAxis;

namespace wg::ui {

/// Fill and line colours of the charts, apart in brightness so that they stay apart in grey print.
struct ChartColours {
    QColor light, air, condensation, electricity, water, warm, cold;
};
[[nodiscard]] ChartColours chart_colours();
/// The same for a theme that need not be the window's: pictures for paper.
[[nodiscard]] ChartColours chart_colours(ThemeKind kind);

class ChartPage : public YieldPage {
    Q_OBJECT
   public:
    explicit ChartPage(QWidget* parent = nullptr);
    [[nodiscard]] QChart& chart() { return *chart_; }
    [[nodiscard]] bool save_picture(const QString& path) const override;
    [[nodiscard]] QString words() const override;

   protected:
    void set_words(const QString& text);
    /// Row above the chart, for controls of the page.
    QVBoxLayout& column() { return *column_; }
    void clear_chart();
    void dress_axis(QValueAxis& axis, const QString& title) const;
    void dress_chart() const;

   private:
    QChart* chart_ = nullptr;
    QChartView* view_ = nullptr;
    QLabel* words_ = nullptr;
    QVBoxLayout* column_ = nullptr;
};

}  // namespace wg::ui
