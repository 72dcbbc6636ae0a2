#pragma once
// By which rules wind, snow and tax are reckoned, and the hill that speeds the wind up.

#include "ui/visit/site_form.h"

namespace wg::ui {

class GroundForm : public SiteForm {
    Q_OBJECT
   public:
    explicit GroundForm(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;

   private:
    void build_rules();
    void build_hill();

    CalmCombo* rules_ = nullptr;
};

}  // namespace wg::ui
