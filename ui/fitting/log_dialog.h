#pragma once
// The log of a gauge before it goes into the record: what it was, from which moment on it counts, who and with what.

#include <QDialog>

#include "ui/fitting/instrument_book.h"
#include "ui/fitting/log_entries.h"

class QComboBox;
class QDateTimeEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QSlider;
class QVBoxLayout;

namespace wg::ui {

class CurveView;

class LogDialog : public QDialog {
    Q_OBJECT
   public:
    LogDialog(commissioning::GaugeLog log, const QString& file_name, const InstrumentBook& book, Occasion occasion,
              QWidget* parent = nullptr);
    /// What goes into the record; empty while something is missing, then said in the dialog.
    [[nodiscard]] std::vector<Reading> entries();
    void choose_evacuation(bool evacuation);
    void choose_from(std::size_t point);
    [[nodiscard]] QString summary() const;

   private:
    QWidget* make_fields(const InstrumentBook& book);
    void refresh();
    bool by_hand(QLineEdit& edit, const QString& name, std::optional<double>& value);
    void say(const QString& text);

    commissioning::GaugeLog log_;
    QString file_name_;
    Occasion occasion_;
    QComboBox* what_ = nullptr;
    QSlider* from_ = nullptr;
    QLabel* from_words_ = nullptr;
    QDateTimeEdit* started_ = nullptr;
    QComboBox* who_ = nullptr;
    QComboBox* instrument_ = nullptr;
    QLineEdit* calibrated_ = nullptr;
    QLineEdit* start_c_ = nullptr;
    QLineEdit* end_c_ = nullptr;
    QLineEdit* indoors_c_ = nullptr;
    QLabel* start_c_label_ = nullptr;
    QLabel* end_c_label_ = nullptr;
    QLabel* indoors_label_ = nullptr;
    QVBoxLayout* picture_ = nullptr;
    CurveView* curve_ = nullptr;
    QLabel* summary_ = nullptr;
    QLabel* problem_ = nullptr;
};

}  // namespace wg::ui
