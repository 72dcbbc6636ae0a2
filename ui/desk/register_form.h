#pragma once
// A new entry of the refrigerant register, or one that corrects another.

#include <QFrame>
#include <optional>
#include <vector>

#include "core/job/refrigerant_entry.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;

namespace wg::ui {

class RegisterForm : public QFrame {
    Q_OBJECT
   public:
    /// `refrigerants`: names to choose from; others can be typed.
    explicit RegisterForm(const std::vector<std::string>& refrigerants, QWidget* parent = nullptr);
    /// What stands in the form, under a fresh id; nullopt when something is missing, then said.
    [[nodiscard]] std::optional<RefrigerantEntry> entry();
    void correct(const RefrigerantEntry& old);
    void clear();  ///< for the next one; day, refrigerant, move and name stay
    void say(const QString& text, QWidget* where = nullptr);
    [[nodiscard]] QLineEdit* mass() const { return kg_; }
    [[nodiscard]] QLineEdit* by() const { return by_; }
    [[nodiscard]] QComboBox* moves() const { return move_; }
    [[nodiscard]] QDateEdit* date() const { return on_; }
    [[nodiscard]] QString problem() const;

   Q_SIGNALS:
    void add_asked();

   private:
    std::string corrects_id_;
    QDateEdit* on_ = nullptr;
    QComboBox* refrigerant_ = nullptr;
    QComboBox* move_ = nullptr;
    QLineEdit* kg_ = nullptr;
    QLineEdit* bottle_ = nullptr;
    QLineEdit* by_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* correcting_ = nullptr;
    QLabel* problem_ = nullptr;
};

}  // namespace wg::ui
