#include "ui/aftercare/aftercare_stage.h"

#include <QEvent>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/aftercare/drift_page.h"
#include "ui/aftercare/job_register.h"
#include "ui/aftercare/papers_page.h"
#include "ui/aftercare/performance_page.h"
#include "ui/aftercare/record_and_terms.h"
#include "ui/aftercare/service_page.h"
#include "ui/common/edits.h"
#include "ui/common/empty_pane.h"
#include "ui/common/job_session.h"

namespace wg::ui {
namespace {

constexpr int refresh_delay_ms = 150;

}  // namespace

AftercareStage::AftercareStage(QWidget* parent) : StageWidget(parent) {
    timer_ = new QTimer(this);
    timer_->setSingleShot(true);
    timer_->setInterval(refresh_delay_ms);
    connect(timer_, &QTimer::timeout, this, &AftercareStage::refresh);
    empty_ = new EmptyPane(QString(), QString(), QString(), this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    services_ = new ServicePage(tabs_);
    drift_ = new DriftPage(tabs_);
    performance_ = new PerformancePage(tabs_);
    register_ = new JobRegister(tabs_);
    papers_ = new PapersPage(tabs_);
    record_ = new RecordAndTerms(tabs_);
    tabs_->addTab(services_, tr("Services"));
    tabs_->addTab(drift_, tr("Readings"));
    tabs_->addTab(performance_, tr("Meters"));
    tabs_->addTab(register_, tr("Refrigerant"));
    tabs_->addTab(record_, tr("Record and notes"));
    tabs_->addTab(papers_, tr("Papers"));
    stack_ = new QStackedWidget(this);
    stack_->addWidget(empty_);
    stack_->addWidget(tabs_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(stack_);
    connect(services_, &ServicePage::said, this, &AftercareStage::status_text);
    connect(papers_, &PapersPage::status_text, this, &AftercareStage::status_text);
    connect(tabs_, &QTabWidget::currentChanged, this, &AftercareStage::refresh);
    connect(drift_, &DriftPage::said, this, &AftercareStage::status_text);
    connect(empty_, &EmptyPane::step_asked, this, [this] {
        if (session_ != nullptr && session_->job().choices.empty()) add_choice(*session_);
    });
}

void AftercareStage::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    services_->set_session(session);
    drift_->set_session(session);
    performance_->set_session(session);
    register_->set_session(session);
    record_->set_session(session);
    papers_->set_session(session);
    if (session != nullptr) {
        connect(session, &JobSession::plan_changed, this, &AftercareStage::refresh_soon);
        connect(session, &JobSession::job_changed, this, &AftercareStage::refresh_soon);
    }
    refresh();
}

void AftercareStage::set_library(LibraryYears library) {
    performance_->set_library(std::move(library));
}

void AftercareStage::changeEvent(QEvent* event) {
    StageWidget::changeEvent(event);
    // Signs are painted in the colours of their theme.
    if (event->type() == QEvent::PaletteChange && timer_ != nullptr) refresh_soon();
}

void AftercareStage::showEvent(QShowEvent* event) {
    StageWidget::showEvent(event);
    refresh();
}

void AftercareStage::hideEvent(QHideEvent* event) {
    // Typing merges into one step only while the stage is looked at.
    if (session_ != nullptr) session_->end_merge();
    StageWidget::hideEvent(event);
}

void AftercareStage::refresh_soon() {
    if (isVisible() && !timer_->isActive()) timer_->start();
}

void AftercareStage::say_empty() {
    if (session_ == nullptr) {
        empty_->set_words(tr("No job open"), tr("Open a job from the desk."), QString());
    } else if (session_->job().choices.empty()) {
        empty_->set_words(tr("Nothing to look after yet"),
                          tr("Services, register and record follow from the choice that is fitted."),
                          tr("Propose a choice"));
    } else if (session_->planning()) {
        empty_->set_words(tr("Working out the plan"), tr("Services appear as soon as it is there."), QString());
    } else {
        empty_->set_words(tr("There is no plan"), session_->plan_problem(), QString());
    }
    stack_->setCurrentIndex(0);
}

void AftercareStage::refresh() {
    const auto plan = session_ == nullptr ? nullptr : session_->plan();
    if (plan == nullptr) {
        say_empty();
        return;
    }
    services_->show_plan(*plan);
    // The model of each visit's day and the library's list are asked for only when they are looked at.
    if (tabs_->currentWidget() == drift_) drift_->show_plan(*plan);
    if (tabs_->currentWidget() == performance_) performance_->refresh();
    register_->show_plan(*plan);
    record_->refresh();
    papers_->refresh();
    stack_->setCurrentIndex(1);
}

QString AftercareStage::register_words() const {
    return register_->words();
}

}  // namespace wg::ui
