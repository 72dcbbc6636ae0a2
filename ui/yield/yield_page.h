#pragma once
// What every tab of the Yield stage that has a picture offers: figures as a table, and the picture to pass on.

#include <QString>
#include <QWidget>

#include "ui/common/figure_table.h"

namespace wg::ui {

class YieldPage : public QWidget {
    Q_OBJECT
   public:
    using QWidget::QWidget;
    [[nodiscard]] virtual FigureTable figures() const = 0;
    /// False when there is nothing to save a picture of.
    [[nodiscard]] virtual bool has_picture() const { return true; }
    /// The picture to pass on, large enough for print: PNG, or PDF when the name ends so.
    [[nodiscard]] virtual bool save_picture(const QString& path) const = 0;
    [[nodiscard]] virtual QString words() const = 0;

   Q_SIGNALS:
    void pointed_at(const QString& text);
};

}  // namespace wg::ui
