#pragma once
// Small help for building the forms of the visit: a titled block with label and field one above the other.

#include <QCheckBox>
#include <QGridLayout>
#include <QHash>
#include <QLabel>
#include <QVBoxLayout>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

#include "core/job/words.h"
#include "ui/drawing/fields.h"

namespace wg::ui {

class FormColumn : public QWidget {
    Q_OBJECT
   public:
    explicit FormColumn(QWidget* parent = nullptr);

    void heading(const QString& text);
    void words(const QString& text);
    NumberField* number(const QString& label, const QString& unit, const NumberField::Range& range,
                        std::function<void(std::optional<double>)> then);
    TextField* text(const QString& label, std::function<void(const QString&)> then);
    NoteField* note(const QString& label, std::function<void(const QString&)> then);
    /// Box with its words beside it, which wrap: a check box's own text would be cut in a narrow form.
    QCheckBox* check(const QString& label, std::function<void(bool)> then);
    CalmCombo* choice(const QString& label, std::function<void(const QString&)> then);
    /// Combo of all words of an enumeration.
    template <class E>
    CalmCombo* words_of(const QString& label, std::function<void(E)> then) {
        CalmCombo* combo = choice(label, [then](const QString& key) {
            if (const auto value = from_key<E>(key.toStdString())) then(*value);
        });
        for (const Word<E>& word : wg::words<E>()) {
            combo->addItem(QString::fromUtf8(word.text), QString::fromLatin1(word.key));
        }
        return combo;
    }
    void add(QWidget* widget);
    /// The next two fields stand side by side.
    void pair_next();
    /// Shows or hides a field together with its label.
    void show_row(QWidget* field, bool shown);
    void finish();  ///< stretch at the end

   protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    [[nodiscard]] QLabel* name_of(const QString& label, QWidget* field);
    void place(const QString& label, QWidget* field);
    QVBoxLayout* column_ = nullptr;
    QGridLayout* pair_ = nullptr;
    int pair_left_ = 0;
    QHash<QWidget*, QLabel*> names_;
};

/// Shows a check box's state without telling anybody.
void show_checked(QCheckBox* box, bool on);

}  // namespace wg::ui
