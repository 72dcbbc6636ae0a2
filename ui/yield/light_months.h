#pragma once
// Light on one collector by months: beam, sky, ground, and what shade keeps off.

#include <cstddef>

#include "ui/yield/chart_page.h"

namespace wg::ui {

class LightMonths : public ChartPage {
    Q_OBJECT
   public:
    using ChartPage::ChartPage;
    /// `placement`: index in the plan; none is drawn when there is no such collector or no year for it.
    void show_placement(const std::shared_ptr<const plan::Plan>& plan, std::size_t placement);
    [[nodiscard]] FigureTable figures() const override;

   private:
    [[nodiscard]] const plan::PlacementPlan* placement() const;
    std::shared_ptr<const plan::Plan> plan_;
    std::size_t index_ = 0;
};

}  // namespace wg::ui
