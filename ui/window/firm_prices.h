#pragma once
// The reference with the firm's own price lists in it, as the store has them now.

#include <QString>
#include <memory>
#include <vector>

#include "core/plan/reference.h"
#include "core/store/price_book.h"

namespace wg::ui {

class FirmPrices {
   public:
    FirmPrices(store::Store& store, std::shared_ptr<const plan::Reference> program);

    /// Reads the firm's lists when they are others than before. What is wrong with some, in words; empty: nothing. An
    /// unreadable store leaves what was there.
    QString refresh();
    /// The program's lists and the firm's; withdrawn ones price the jobs that name them.
    [[nodiscard]] std::shared_ptr<const plan::Reference> reference() const { return reference_; }

   private:
    store::Store& store_;
    std::shared_ptr<const plan::Reference> program_, reference_;
    std::vector<store::PriceListVersion> versions_;
};

}  // namespace wg::ui
