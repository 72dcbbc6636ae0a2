#pragma once
// The Aftercare stage: services due and visits, readings over the years, meters, refrigerant, record.

#include <QPointer>

#include "ui/common/stage_widget.h"

class QStackedWidget;
class QTabWidget;
class QTimer;

namespace wg::ui {

class DriftPage;
class EmptyPane;
class JobRegister;
class PerformancePage;
struct LibraryYears;
class RecordAndTerms;
class PapersPage;
class ServicePage;

class AftercareStage : public StageWidget {
    Q_OBJECT
   public:
    explicit AftercareStage(QWidget* parent = nullptr);
    void set_session(JobSession* session) override;
    /// Where weather years of single periods come from.
    void set_library(LibraryYears library);
    [[nodiscard]] QTabWidget* tabs() const { return tabs_; }
    [[nodiscard]] ServicePage* services() const { return services_; }
    [[nodiscard]] DriftPage* drift() const { return drift_; }
    [[nodiscard]] PerformancePage* performance() const { return performance_; }
    [[nodiscard]] PapersPage* papers() const { return papers_; }
    [[nodiscard]] QString register_words() const;

   protected:
    void changeEvent(QEvent* event) override;
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
    DriftPage* drift_ = nullptr;
    PerformancePage* performance_ = nullptr;
    JobRegister* register_ = nullptr;
    RecordAndTerms* record_ = nullptr;
    PapersPage* papers_ = nullptr;
};

}  // namespace wg::ui
