#pragma once
// The year by months: where the heat comes from, and the hot water drawn.

#include "ui/yield/chart_page.h"

namespace wg::ui {

class YearPage : public ChartPage {
    Q_OBJECT
   public:
    using ChartPage::ChartPage;
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, bool carried);
    [[nodiscard]] FigureTable figures() const override;

   private:
    std::shared_ptr<const plan::Plan> plan_;
};

/// Short English month names, January first.
[[nodiscard]] QStringList month_names();

}  // namespace wg::ui
