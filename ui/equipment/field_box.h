#pragma once
// One field of an item: its name, an editor, the unit, and a line below that tells the range or what is wrong.

#include <QJsonValue>
#include <QWidget>

#include "ui/equipment/item_fields.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QVBoxLayout;

namespace wg::ui {

class CalmCombo;

class FieldBox : public QWidget {
    Q_OBJECT
   public:
    explicit FieldBox(const ItemField& field, QWidget* parent = nullptr);
    [[nodiscard]] const ItemField& field() const { return field_; }

    /// Shows a value without telling anybody; undefined: empty.
    void set_value(const QJsonValue& value);
    /// What stands in the editor; undefined when it is empty. As long as nobody changed that, the very value that was
    /// shown: an empty list, say, looks like one that is left out. A text where a number was asked for stays that text,
    /// so that the reader of the format refuses it.
    [[nodiscard]] QJsonValue value() const;
    /// Stands over the line of range and meaning; empty: none.
    void show_problem(const QString& text);
    [[nodiscard]] const QString& problem() const { return problem_; }
    void set_read_only(bool read_only);
    /// As if entered: it is not what was shown.
    void take(const QJsonValue& value);
    /// As if typed.
    void type(const QString& text);

   Q_SIGNALS:
    void changed();
    /// More than ten numbers were pasted into a field of ten; these are the ones after the tenth.
    void left_over(const QJsonValue& numbers);

   private:
    void make_editor(QVBoxLayout& column);
    void typed();
    /// Passes on what stands after the tenth of twenty numbers.
    void part_twenty();
    [[nodiscard]] QString hint() const;
    [[nodiscard]] QString entered() const;
    [[nodiscard]] QJsonValue read() const;
    [[nodiscard]] QJsonValue number_value(const QString& text) const;

    ItemField field_;
    QLineEdit* edit_ = nullptr;
    QPlainTextEdit* lines_ = nullptr;
    CalmCombo* combo_ = nullptr;
    QCheckBox* check_ = nullptr;
    std::vector<QCheckBox*> boxes_;
    QLabel* wrong_ = nullptr;
    QLabel* line_ = nullptr;
    QString problem_;
    QJsonValue shown_, read_at_first_;
    qsizetype length_ = 0;  ///< of the text before the last change
};

}  // namespace wg::ui
