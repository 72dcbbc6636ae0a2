#pragma once
// What counts as comfortable when sets are compared: how many litres or hours a year may fall short.

#include <QWidget>

#include "core/plan/sizing_advice.h"

class QComboBox;

namespace wg::ui {

class NumberField;

class ComfortRow : public QWidget {
    Q_OBJECT
   public:
    explicit ComfortRow(QWidget* parent = nullptr);
    /// One limit, by litres or by hours, as the box says.
    [[nodiscard]] plan::ComfortTarget target() const;
    [[nodiscard]] QComboBox* by() const { return by_; }
    [[nodiscard]] NumberField* limit() const { return limit_; }

   Q_SIGNALS:
    void changed();

   private:
    void show_limit();
    [[nodiscard]] bool by_hours() const;

    QComboBox* by_ = nullptr;
    NumberField* limit_ = nullptr;
    double most_short_l_ = plan::ComfortTarget{}.most_short_l.value();
    double most_short_h_ = 24.0;  ///< assumed, until somebody gives another
};

}  // namespace wg::ui
