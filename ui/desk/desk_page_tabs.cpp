// The tabs beside the list of jobs. Most are made when they are first shown: the list is what a start waits for.

#include <QTabWidget>
#include <QVBoxLayout>

#include "ui/common/notice_bar.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/figures_page.h"
#include "ui/desk/register_page.h"
#include "ui/desk/services_page.h"

namespace wg::ui {

void DeskPage::make_tabs() {
    services_ = new ServicesPage(store_, this);
    register_place_ = new QWidget(this);
    tabs_ = new QTabWidget(this);
    tabs_->setDocumentMode(true);
    tabs_->addTab(make_jobs(), tr("Jobs"));
    tabs_->addTab(services_, tr("Services due"));
    tabs_->addTab(register_place_, tr("Refrigerant"));
    figures_ = new FiguresPage(store_, this);
    tabs_->addTab(figures_, tr("Figures"));
    customers_place_ = new QWidget(this);
    tabs_->addTab(customers_place_, tr("Customers"));
    const auto complain = [this](const QString& text) { notice_->add(Mark::stop, text); };
    const auto tell = [this](const QString& text) {
        notice_->clear();
        notice_->add(Mark::note, text);
    };
    connect(figures_, &FiguresPage::problem, this, complain);
    connect(figures_, &FiguresPage::said, this, tell);
    connect(services_, &ServicesPage::problem, this, complain);
    connect(services_, &ServicesPage::said, this, tell);
    connect(services_, &ServicesPage::open_asked, this, &DeskPage::aftercare_asked);
    connect(services_, &ServicesPage::reloaded, this, &DeskPage::refresh_due);
    connect(tabs_, &QTabWidget::currentChanged, this, [this, complain, tell] {
        if (tabs_->currentWidget() == figures_) figures_->reload();
        if (tabs_->currentWidget() == customers_place_) show_customers();
        if (tabs_->currentWidget() != register_place_) return;
        if (register_ == nullptr) {
            // Not before it is looked at: the list of jobs is what a start waits for.
            std::vector<std::string> refrigerants;
            for (const auto& [kind, properties] : reference_->refrigerants)
                refrigerants.emplace_back(name_of(kind));
            register_ = new RegisterPage(store_, refrigerants, register_place_);
            auto* column = new QVBoxLayout(register_place_);
            column->setContentsMargins(0, 0, 0, 0);
            column->addWidget(register_);
            connect(register_, &RegisterPage::problem, this, complain);
            connect(register_, &RegisterPage::said, this, tell);
            connect(register_, &RegisterPage::open_asked, this, &DeskPage::aftercare_asked);
        }
        register_->reload();
    });
}

void DeskPage::show_customers() {
    if (customers_ == nullptr) {
        customers_ = new CustomersPage(store_, customers_place_);
        auto* column = new QVBoxLayout(customers_place_);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(customers_);
        connect(customers_, &CustomersPage::problem, this,
                [this](const QString& text) { notice_->add(Mark::stop, text); });
        connect(customers_, &CustomersPage::said, this, [this](const QString& text) {
            notice_->clear();
            notice_->add(Mark::note, text);
        });
        connect(customers_, &CustomersPage::open_asked, this, &DeskPage::open_asked);
        connect(customers_, &CustomersPage::new_job_asked, this, &DeskPage::new_for_customer_asked);
        // The list of jobs, once the page has done.
        connect(
            customers_, &CustomersPage::jobs_changed, this, [this] { model_->reload(); }, Qt::QueuedConnection);
        return;
    }
    customers_->reload();
}

void DeskPage::show_tab(int tab) {
    tabs_->setCurrentIndex(tab);
}

}  // namespace wg::ui
