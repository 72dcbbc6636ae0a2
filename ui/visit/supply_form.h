#pragma once
// The house's electrical supply, as the surveyor reads it off the board.

#include "ui/visit/site_form.h"

namespace wg::ui {

class SupplyForm : public SiteForm {
    Q_OBJECT
   public:
    explicit SupplyForm(QWidget* parent = nullptr);
};

}  // namespace wg::ui
