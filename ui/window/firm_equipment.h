#pragma once
// The reference with the firm's own equipment in it, as the store has it now.

#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/store/equipment_book.h"

namespace wg::ui {

class FirmEquipment {
   public:
    FirmEquipment(store::Store& store, std::shared_ptr<const plan::Reference> program);

    /// What the items are laid over from now on: the program's data, with the firm's prices.
    void lay_over(std::shared_ptr<const plan::Reference> program);
    /// Reads the firm's items when they are others than before. What is wrong with some, in words; empty: nothing. An
    /// unreadable store leaves what was there.
    QString refresh();
    /// The program's items and the firm's, withdrawn ones left out.
    [[nodiscard]] std::shared_ptr<const plan::Reference> reference() const { return reference_; }
    /// The same with those withdrawn items that the job's choices name; their names are added to `withdrawn`.
    [[nodiscard]] std::shared_ptr<const plan::Reference> reference_for(const Job& job, QStringList& withdrawn) const;
    /// With all that are withdrawn: for looking at jobs, not for choosing.
    [[nodiscard]] std::shared_ptr<const plan::Reference> reference_with_withdrawn() const { return with_withdrawn_; }

   private:
    [[nodiscard]] std::shared_ptr<const plan::Reference> laid_over(const std::vector<std::string>& withdrawn_ids,
                                                                   bool all_withdrawn, QString* problems) const;

    store::Store& store_;
    std::shared_ptr<const plan::Reference> program_, reference_, with_withdrawn_;
    std::vector<store::EquipmentVersion> items_;
};

/// What the choices of a job name that is not here, in words; empty: nothing.
[[nodiscard]] QString unknown_equipment_words(const plan::Reference& reference, const Job& job);

}  // namespace wg::ui
