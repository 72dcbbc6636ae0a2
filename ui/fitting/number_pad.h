#pragma once
// Digits as large buttons for a gloved hand, typing into whichever field was touched last; and units as buttons.

#include <QPointer>
#include <QWidget>

#include "core/quantity/site_units.h"

class QHBoxLayout;
class QLineEdit;

namespace wg::ui {

class NumberPad : public QWidget {
    Q_OBJECT
   public:
    explicit NumberPad(QWidget* parent = nullptr);
    /// Where the next press goes.
    void type_into(QLineEdit* field);

   Q_SIGNALS:
    void next_asked();  ///< to the next field

   private:
    void press(const QString& what);
    QPointer<QLineEdit> field_;
};

/// One button a unit; nothing to choose: the only unit as words.
class UnitSwitch : public QWidget {
    Q_OBJECT
   public:
    explicit UnitSwitch(QWidget* parent = nullptr);
    /// `only`: unit of a quantity that has one. `chosen`: by name.
    void set_quantity(SiteQuantity quantity, const QString& only, const QString& chosen);
    [[nodiscard]] QString unit() const { return unit_; }
    [[nodiscard]] double kept(double shown) const;
    [[nodiscard]] double shown(double kept) const;
    [[nodiscard]] int decimals(int of_the_record) const;
    [[nodiscard]] bool is_of_record() const;
    void choose(const QString& unit);

   Q_SIGNALS:
    void changed();

   private:
    SiteQuantity quantity_ = SiteQuantity::none;
    QString unit_;
    QHBoxLayout* row_ = nullptr;
};

}  // namespace wg::ui
