#pragma once
// Over the drawing: no shade map, or that of the whole year or of the lean months.

#include "ui/drawing/fields.h"

namespace wg::ui {

class ShadeService;

class ShadeBar : public CalmCombo {
    Q_OBJECT
   public:
    enum Row { none, whole_year, lean_months };
    explicit ShadeBar(ShadeService* shade, QWidget* parent = nullptr);
    /// As if picked by hand.
    void choose(Row row);

   Q_SIGNALS:
    void toggled(bool shown);

   private:
    void refresh();

    ShadeService* shade_;
};

}  // namespace wg::ui
