#pragma once
// One service visit: who, when, what was read and found. Readings left empty are not entered; what cannot be meant is
// refused in words beside the field, with what was typed left standing.

#include <QDate>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/job/job.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QScrollArea;

namespace wg::ui {

class ServiceVisit : public QWidget {
    Q_OBJECT
   public:
    explicit ServiceVisit(QWidget* parent = nullptr);

    /// What was read before stands beside each field.
    void set_record(const std::vector<Reading>& record);
    void set_services_chosen(int count);
    /// All entries of the visit, services first; nullopt when something is missing or wrong, then said in the form.
    [[nodiscard]] std::optional<std::vector<Reading>> entries(const std::vector<std::string>& service_ids);
    void clear_entries();  ///< after they were taken; who and instruments stay
    [[nodiscard]] QLineEdit* by() const { return by_; }
    [[nodiscard]] QLineEdit* field(ReadingKind kind) const;
    [[nodiscard]] QPlainTextEdit* note() const { return note_; }
    [[nodiscard]] QDateEdit* date() const { return date_; }
    [[nodiscard]] QString problem() const;

   Q_SIGNALS:
    void add_asked();

   private:
    struct Row {
        ReadingKind kind = ReadingKind::remark;
        QString unit;
        int decimals = 1;
        double least = 0.0, most = 0.0;
        QLineEdit* edit = nullptr;
        QLabel* before = nullptr;  ///< unit, and below it what was read before
    };
    QWidget* make_rows();
    void say(const QString& text, QWidget* where);
    [[nodiscard]] std::string taken_at() const;

    std::vector<Row> rows_;
    QScrollArea* scroll_ = nullptr;
    QDateEdit* date_ = nullptr;
    QLineEdit* by_ = nullptr;
    QLineEdit* instrument_ = nullptr;
    QComboBox* valve_ = nullptr;
    QPlainTextEdit* note_ = nullptr;
    QLabel* chosen_ = nullptr;
    QLabel* problem_ = nullptr;
    QPushButton* add_ = nullptr;
};

}  // namespace wg::ui
