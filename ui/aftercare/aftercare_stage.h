#pragma once
// The Aftercare stage: services due, refrigerant register, record, hand-over notes.

#include <QDate>
#include <QPointer>
#include <vector>

#include "ui/aftercare/service_dates.h"
#include "ui/common/stage_widget.h"

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;
class QTableWidget;
class QTimer;

namespace wg::ui {

class EmptyPane;

class AftercareStage : public StageWidget {
    Q_OBJECT
   public:
    explicit AftercareStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    /// Notes the selected service as done, `by` whom; false when nothing is selected or nobody is named.
    bool note_service_done(const QString& taken_at);
    [[nodiscard]] const std::vector<ServiceDate>& dates() const { return dates_; }
    [[nodiscard]] QString register_words() const;

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

   private:
    QWidget* make_services();
    QWidget* make_side();
    void refresh_soon();
    void refresh();
    void fill_services(const plan::Plan& plan);
    void fill_register(const plan::Plan& plan);
    void fill_record();
    void keep_notes();

    QPointer<JobSession> session_;
    QTimer* timer_ = nullptr;
    std::vector<ServiceDate> dates_;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QLabel* started_ = nullptr;
    QTableWidget* services_ = nullptr;
    QLineEdit* by_ = nullptr;
    QLineEdit* note_ = nullptr;
    QPushButton* done_ = nullptr;
    QLabel* problem_ = nullptr;
    QLabel* register_ = nullptr;
    QTableWidget* record_ = nullptr;
    QLabel* no_record_ = nullptr;
    QPlainTextEdit* notes_ = nullptr;
};

}  // namespace wg::ui
