#pragma once

#include <QComboBox>

namespace wg::ui {

/// A combo box that a turning wheel does not change while it only passes by.
class CalmCombo : public QComboBox {
    Q_OBJECT
   public:
    using QComboBox::QComboBox;
    /// Selects the entry with that data without telling anybody; no entry: none selected.
    void show_data(const QVariant& wanted);

   protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace wg::ui
