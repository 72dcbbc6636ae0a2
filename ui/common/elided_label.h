#pragma once
// A label of one line that gives way: cut with an ellipsis where it does not fit, whole in its tooltip.

#include <QLabel>

namespace wg::ui {

class ElidedLabel : public QLabel {
    Q_OBJECT
   public:
    explicit ElidedLabel(QWidget* parent = nullptr);
    [[nodiscard]] QSize minimumSizeHint() const override;

   protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace wg::ui
