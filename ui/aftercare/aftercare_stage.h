#pragma once
// The Aftercare stage: services due and visits, refrigerant, record and notes.

#include <QPointer>

#include "ui/common/stage_widget.h"

class QStackedWidget;
class QTabWidget;
class QTimer;

namespace wg::ui {

class EmptyPane;
class JobRegister;
class PapersPage;
class RecordAndNotes;
class ServicePage;

class AftercareStage : public StageWidget {
    Q_OBJECT
   public:
    explicit AftercareStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    [[nodiscard]] QTabWidget* tabs() const { return tabs_; }
    [[nodiscard]] ServicePage* services() const { return services_; }
    [[nodiscard]] PapersPage* papers() const { return papers_; }
    [[nodiscard]] QString register_words() const;

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

   private:
    void refresh_soon();
    void refresh();
    void say_empty();

    QPointer<JobSession> session_;
    QTimer* timer_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    EmptyPane* empty_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    ServicePage* services_ = nullptr;
    JobRegister* register_ = nullptr;
    RecordAndNotes* record_ = nullptr;
    PapersPage* papers_ = nullptr;
};

}  // namespace wg::ui
