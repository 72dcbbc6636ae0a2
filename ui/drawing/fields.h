#pragma once
// Form fields of the two stages that draw: a value goes into the job when editing is finished, and a bad entry is
// refused beside the field in words, with the text left standing to be corrected.

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QString>
#include <QWidget>
#include <functional>
#include <optional>

#include "ui/common/calm_combo.h"

namespace wg::ui {

/// A number with its unit. Never clamps: outside the range it says so and keeps the last good value.
class NumberField : public QWidget {
    Q_OBJECT
   public:
    struct Range {
        double least = 0.0;
        double most = 0.0;
        int decimals = 2;
        double step = 0.0;      ///< of the up and down keys; 0: none
        bool optional = false;  ///< empty is allowed and means 'not known'
        bool money = false;     ///< all decimals stand, zeros too
    };
    NumberField(const QString& name, const QString& unit, const Range& range, QWidget* parent = nullptr);

    /// Shows a value from the job; an entry that was refused stays until the value itself changes.
    void set_value(std::optional<double> value);
    [[nodiscard]] std::optional<double> value() const { return value_; }
    void set_range(double least, double most);
    /// For units that a job decides, such as its currency.
    void set_unit(const QString& unit);
    [[nodiscard]] const QString& unit() const { return unit_; }
    void show_problem(const QString& text);  ///< empty: none
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QLineEdit* line_edit() const { return edit_; }

   Q_SIGNALS:
    void committed(std::optional<double> value);

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    void finish();
    void step(int direction);
    [[nodiscard]] QString text_of(std::optional<double> value) const;

    QString name_;
    QString unit_;
    Range range_;
    QLineEdit* edit_ = nullptr;
    QLabel* unit_label_ = nullptr;
    QLabel* problem_ = nullptr;
    std::optional<double> value_;
};

/// One line of text, committed when editing is finished; Escape brings back the last value.
class TextField : public QLineEdit {
    Q_OBJECT
   public:
    explicit TextField(const QString& name, QWidget* parent = nullptr);
    void set_value(const QString& text);

   Q_SIGNALS:
    void committed(const QString& text);

   protected:
    void keyPressEvent(QKeyEvent* event) override;

   private:
    QString value_;
};

/// Several lines of text, committed when the field is left.
class NoteField : public QPlainTextEdit {
    Q_OBJECT
   public:
    explicit NoteField(const QString& name, QWidget* parent = nullptr);
    void set_value(const QString& text);

   Q_SIGNALS:
    void committed(const QString& text);

   protected:
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

   private:
    QString value_;
};

/// A number as people write it: decimal point or comma, spaces between thousands. nullopt: not a finite number.
[[nodiscard]] std::optional<double> parsed_number(QString text);

}  // namespace wg::ui
