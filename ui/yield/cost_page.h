#pragma once
// Cost over the years: what is spent and saved against the present heater, with its range.

#include <optional>

#include "core/economy/economy.h"
#include "ui/yield/chart_page.h"

namespace wg::ui {

/// What the economy of the plan was worked out with, to ask for the same at both ends of the range.
struct CostBasis {
    Demand demand;
    economy::Tariffs tariffs;
};

class CostPage : public ChartPage {
    Q_OBJECT
   public:
    using ChartPage::ChartPage;
    void set_plan(const std::shared_ptr<const plan::Plan>& plan, const std::optional<CostBasis>& basis);
    [[nodiscard]] FigureTable figures() const override;

   private:
    std::shared_ptr<const plan::Plan> plan_;
    std::vector<Money> low_;   ///< much electricity
    std::vector<Money> high_;  ///< little electricity
};

}  // namespace wg::ui
