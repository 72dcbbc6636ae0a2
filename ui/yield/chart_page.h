#pragma once
// One tab of the Yield stage: a chart in the program's colours, words beside it, its figures as CSV.

#include <QChart>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <memory>
#include <vector>

#include "core/plan/plan.h"

class QChartView;
class QLabel;
class QVBoxLayout;
class QValueAxis;

namespace wg::ui {

/// FigureTable behind a chart. Cells hold plain numbers with '.' as decimal sign.
struct FigureTable {
    QStringList header;  ///< with units
    std::vector<QStringList> rows;
    /// RFC 4180, UTF-8, CRLF.
    [[nodiscard]] QByteArray to_csv() const;
};

/// Fill and line colours of the charts, apart in brightness so that they stay apart in grey print.
struct ChartColours {
    QColor light, air, condensation, electricity, water, warm, cold;
};
[[nodiscard]] ChartColours chart_colours();

class ChartPage : public QWidget {
    Q_OBJECT
   public:
    explicit ChartPage(QWidget* parent = nullptr);
    [[nodiscard]] QChart& chart() { return *chart_; }
    [[nodiscard]] virtual FigureTable figures() const = 0;
    /// PNG of the chart at twice its size on screen, on a ground of its own.
    [[nodiscard]] bool save_picture(const QString& path) const;
    [[nodiscard]] QString words() const;

   Q_SIGNALS:
    void pointed_at(const QString& text);

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
