#pragma once
// Entry of one reading: kind, figures, instrument, who, note. Nothing is clamped: a figure that cannot be meant is
// refused in words, with what was typed left standing.

#include <QWidget>
#include <optional>

#include "core/job/job.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace wg::ui {

class ReadingForm : public QWidget {
    Q_OBJECT
   public:
    explicit ReadingForm(QWidget* parent = nullptr);

    /// Readings that may be corrected.
    void set_record(const std::vector<Reading>& record);
    void choose_kind(ReadingKind kind);
    void correct(const Reading& reading);  ///< takes over what the entry says, to be changed
    /// What is in the form, ready to be added; nullopt when something is missing, then said in the form.
    [[nodiscard]] std::optional<Reading> reading(const QString& taken_at);
    void clear_figures();
    void start();  ///< puts the cursor where the first figure is typed

   Q_SIGNALS:
    void add_asked();

   private:
    void refresh_fields();
    void say(const QString& text);

    QComboBox* kind_ = nullptr;
    QLabel* value_label_ = nullptr;
    QLineEdit* value_ = nullptr;
    QLabel* second_label_ = nullptr;
    QLineEdit* second_ = nullptr;
    QLineEdit* instrument_ = nullptr;
    QLineEdit* who_ = nullptr;
    QLineEdit* note_ = nullptr;
    QComboBox* corrects_ = nullptr;
    QLabel* problem_ = nullptr;
    QPushButton* add_ = nullptr;
};

}  // namespace wg::ui
