// The tabs beside the list of jobs. Most are made when they are first shown: the list is what a start waits for.

#include <QDateTime>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "core/store/entries_kept.h"
#include "ui/common/format.h"
#include "ui/common/notice_bar.h"
#include "ui/customers/customer_of_job.h"
#include "ui/customers/customers_page.h"
#include "ui/desk/desk_page.h"
#include "ui/desk/figures_page.h"
#include "ui/desk/job_table_model.h"
#include "ui/desk/register_page.h"
#include "ui/desk/services_page.h"
#include "ui/equipment/equipment_page.h"
#include "ui/prices/price_page.h"
#include "ui/rules/rule_page.h"

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
    prices_place_ = new QWidget(this);
    tabs_->addTab(prices_place_, tr("Prices"));
    equipment_place_ = new QWidget(this);
    tabs_->addTab(equipment_place_, tr("Equipment"));
    rules_place_ = new QWidget(this);
    tabs_->addTab(rules_place_, tr("Rules"));
    connect(figures_, &FiguresPage::problem, this, &DeskPage::complain);
    connect(figures_, &FiguresPage::said, this, &DeskPage::tell);
    connect(services_, &ServicesPage::problem, this, &DeskPage::complain);
    connect(services_, &ServicesPage::said, this, &DeskPage::tell);
    connect(services_, &ServicesPage::open_asked, this, &DeskPage::aftercare_asked);
    connect(services_, &ServicesPage::reloaded, this, &DeskPage::refresh_due);
    connect(tabs_, &QTabWidget::currentChanged, this, [this] {
        leave_tab();
        if (tabs_->currentIndex() == 0) preview_delay_.start();  // links with customers may have changed
        if (tabs_->currentWidget() == figures_) figures_->reload();
        if (tabs_->currentWidget() == register_place_) show_register();
        if (tabs_->currentWidget() == customers_place_) show_customers();
        if (tabs_->currentWidget() == prices_place_) show_prices();
        if (tabs_->currentWidget() == equipment_place_) show_equipment();
        if (tabs_->currentWidget() == rules_place_) show_rules();
    });
    QTimer::singleShot(0, this, &DeskPage::tell_kept_entries);
}

// Pages are hidden while the desk goes, and may complain about what they hold: by then it cannot listen.
DeskPage::~DeskPage() {
    for (QObject* page : std::initializer_list<QObject*>{customers_, prices_, rules_, equipment_, register_, figures_,
                                                         services_, tabs_})
        if (page != nullptr) disconnect(page, nullptr, this, nullptr);
}

void DeskPage::tell_kept_entries() {
    const store::EntriesKept kept(store_);
    const auto tell_of = [&](store::EntryBook book, const QString& words) {
        const auto entries = kept.all(book);
        if (!entries.ok()) {
            complain(qs(text_of(entries.problems())));
        } else if (!entries.value().entries.empty()) {
            notice_->add(Mark::note, words);
        }
    };
    if (prices_ == nullptr)
        tell_of(store::EntryBook::prices,
                tr("A price list was changed and not saved before the program ended: the changes "
                   "are back under Prices."));
    if (equipment_ == nullptr)
        tell_of(store::EntryBook::equipment,
                tr("Equipment was entered and not saved before the program ended: the entries "
                   "are back under Equipment."));
}

void DeskPage::complain(const QString& text) {
    notice_->add(Mark::stop, text);
    told_.push_back({tabs_->currentIndex(), text, true});
}

void DeskPage::tell(const QString& text) {
    notice_->tell(text);
    told_ = {{tabs_->currentIndex(), text, false}};
}

void DeskPage::take_complaints_away() {
    QStringList lines;
    std::erase_if(told_, [&](const Told& one) {
        const bool over = one.wrong && one.tab == tabs_->currentIndex();
        if (over) lines += one.text.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        return over;
    });
    notice_->take_away(lines);
}

// A page that is left may complain while it goes; that counts for the tab that comes.
void DeskPage::leave_tab() {
    QStringList lines;
    std::erase_if(told_, [&](const Told& one) {
        const bool left = one.tab != tabs_->currentIndex();
        if (left) lines += one.text.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        return left;
    });
    notice_->take_away(lines);
}

// Pages beside the list are not made before they are looked at: the list of jobs is what a start waits for.

void DeskPage::show_register() {
    if (register_ == nullptr) {
        std::vector<std::string> refrigerants;
        for (const auto& [kind, properties] : reference_->refrigerants)
            refrigerants.emplace_back(name_of(kind));
        register_ = new RegisterPage(store_, refrigerants, register_place_);
        auto* column = new QVBoxLayout(register_place_);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(register_);
        connect(register_, &RegisterPage::problem, this, &DeskPage::complain);
        connect(register_, &RegisterPage::said, this, &DeskPage::tell);
        connect(register_, &RegisterPage::open_asked, this, &DeskPage::aftercare_asked);
    }
    register_->reload();
}

void DeskPage::show_customers() {
    if (customers_ != nullptr) {
        customers_->reload();
        return;
    }
    customers_ = new CustomersPage(store_, customers_place_);
    auto* column = new QVBoxLayout(customers_place_);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(customers_);
    connect(customers_, &CustomersPage::problem, this, &DeskPage::complain);
    connect(customers_, &CustomersPage::said, this, &DeskPage::tell);
    connect(customers_, &CustomersPage::taken_back, this, &DeskPage::take_complaints_away);
    connect(customers_, &CustomersPage::open_asked, this, &DeskPage::open_asked);
    connect(customers_, &CustomersPage::new_job_asked, this, &DeskPage::new_for_customer_asked);
    // The list of jobs, once the page has done.
    connect(
        customers_, &CustomersPage::jobs_changed, this, [this] { reload_jobs({}); }, Qt::QueuedConnection);
}

void DeskPage::show_customer(const std::string& customer_id) {
    tabs_->setCurrentWidget(customers_place_);
    if (customers_ == nullptr) show_customers();
    customers_->reload(customer_id);
}

void DeskPage::show_customer_of(const std::string& job_id) {
    if (job_id.empty()) return;
    const Result<std::string> customer = customer_for(store_, job_id, {QDateTime::currentSecsSinceEpoch()}, this);
    if (!customer)
        complain(qs(text_of(customer.problems())));
    else if (!customer.value().empty())
        show_customer(customer.value());
    preview_selected();  // its client may be a customer now
}

void DeskPage::show_prices() {
    if (prices_ != nullptr) {
        prices_->reload();
        return;
    }
    prices_ = new PricePage(store_, program_, prices_place_);
    auto* column = new QVBoxLayout(prices_place_);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(prices_);
    connect(prices_, &PricePage::problem, this, &DeskPage::complain);
    connect(prices_, &PricePage::said, this, &DeskPage::tell);
    connect(prices_, &PricePage::taken, this, &DeskPage::take_complaints_away);
    connect(prices_, &PricePage::lists_changed, this, &DeskPage::firms_own_changed);
}

void DeskPage::show_rules() {
    if (rules_ != nullptr) {
        rules_->reload();
        return;
    }
    rules_ = new RulePage(store_, program_rules_, rules_place_);
    auto* column = new QVBoxLayout(rules_place_);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(rules_);
    connect(rules_, &RulePage::problem, this, &DeskPage::complain);
    connect(rules_, &RulePage::said, this, &DeskPage::tell);
    connect(rules_, &RulePage::taken, this, &DeskPage::take_complaints_away);
    connect(rules_, &RulePage::sets_changed, this, &DeskPage::firms_own_changed);
}

bool DeskPage::may_close() {
    if (prices_ != nullptr && prices_->has_changes()) {
        tabs_->setCurrentWidget(prices_place_);
        complain(tr("The price list has changes that are not saved. Save them as a version, or discard them."));
        return false;
    }
    if (rules_ != nullptr && rules_->has_changes()) {
        tabs_->setCurrentWidget(rules_place_);
        complain(tr("The rule set has changes that are not saved. Save them as a version, or discard them."));
        return false;
    }
    return true;
}

void DeskPage::show_equipment() {
    if (equipment_ != nullptr) {
        equipment_->reload();
        return;
    }
    equipment_ = new EquipmentPage(store_, program_, equipment_place_);
    auto* column = new QVBoxLayout(equipment_place_);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(equipment_);
    connect(equipment_, &EquipmentPage::problem, this, &DeskPage::complain);
    connect(equipment_, &EquipmentPage::said, this, &DeskPage::tell);
    connect(equipment_, &EquipmentPage::items_changed, this, &DeskPage::firms_own_changed);
    equipment_->reload();
}

void DeskPage::show_equipment_tab() {
    tabs_->setCurrentWidget(equipment_place_);
}

void DeskPage::show_prices_tab() {
    tabs_->setCurrentWidget(prices_place_);
}

void DeskPage::show_rules_tab() {
    tabs_->setCurrentWidget(rules_place_);
}

void DeskPage::show_tab(int tab) {
    tabs_->setCurrentIndex(tab);
}

}  // namespace wg::ui
