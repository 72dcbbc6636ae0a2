#pragma once
// The rooms that the survey knows: which there are, and the way to draw one or to change it.

#include "ui/visit/site_form.h"

class QListWidget;
class QPushButton;

namespace wg::ui {

class RoomsForm : public SiteForm {
    Q_OBJECT
   public:
    explicit RoomsForm(QWidget* parent = nullptr);

   Q_SIGNALS:
    void draw_wanted();
    void room_wanted(const QString& room_id);

   private:
    QListWidget* list_ = nullptr;
};

}  // namespace wg::ui
