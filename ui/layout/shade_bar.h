#pragma once
// Over the drawing: whether the shade map is shown, and for which months.

#include <QWidget>

class QCheckBox;

namespace wg::ui {

class CalmCombo;
class ShadeService;

class ShadeBar : public QWidget {
    Q_OBJECT
   public:
    explicit ShadeBar(ShadeService* shade, QWidget* parent = nullptr);
    [[nodiscard]] bool shown() const;

   Q_SIGNALS:
    void toggled(bool shown);

   private:
    void refresh();

    ShadeService* shade_;
    QCheckBox* box_ = nullptr;
    CalmCombo* period_ = nullptr;
};

}  // namespace wg::ui
