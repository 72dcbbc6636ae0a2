#pragma once
// Cold water as it enters the house, its draw-off points and the pipes from the cylinder to the taps.

#include "ui/visit/site_form.h"

namespace wg::ui {

class RowsTable;

class WaterForm : public SiteForm {
    Q_OBJECT
   public:
    explicit WaterForm(QWidget* parent = nullptr);
    [[nodiscard]] RowsTable* fixtures() const { return fixtures_; }
    [[nodiscard]] RowsTable* dead_legs() const { return dead_legs_; }

   private:
    void build_supply();
    void build_fixtures();
    void build_dead_legs();

    RowsTable* fixtures_ = nullptr;
    RowsTable* dead_legs_ = nullptr;
};

}  // namespace wg::ui
