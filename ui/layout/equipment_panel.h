#pragma once
// Which collector, block, cylinder, spot and fixing method the choice on screen uses, and how the refrigerant takes
// several collectors.

#include <QWidget>
#include <vector>

class QFormLayout;
class QLabel;

namespace wg::ui {

class CalmCombo;
class JobSession;

class EquipmentPanel : public QWidget {
    Q_OBJECT
   public:
    explicit EquipmentPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);

   private:
    void refresh();
    void refresh_joined();
    JobSession* session_ = nullptr;
    CalmCombo* collector_ = nullptr;
    QLabel* joined_name_ = nullptr;
    CalmCombo* joined_ = nullptr;  ///< from two collectors on
    CalmCombo* block_ = nullptr;
    CalmCombo* cylinder_ = nullptr;
    CalmCombo* spot_ = nullptr;
    CalmCombo* fixing_ = nullptr;
    QLabel* words_ = nullptr;
};

}  // namespace wg::ui
