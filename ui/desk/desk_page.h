#pragma once
// The desk: all jobs of the firm, with search and a preview.

#include <QTimer>
#include <QWidget>
#include <memory>
#include <string>
#include <vector>

#include "core/plan/reference.h"
#include "core/store/store.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTabWidget;
class QTableView;

namespace wg::ui {

class EquipmentPage;
class CustomersPage;
class FiguresPage;
class JobPreview;
class JobTableModel;
class ListFilter;
class NoticeBar;
class PricePage;
class RegisterPage;
class RulePage;
class ServicesPage;

class DeskPage : public QWidget {
    Q_OBJECT
   public:
    /// `program`: what comes with the program, without the firm's own. The store must outlive the page.
    DeskPage(store::Store& store, std::shared_ptr<const plan::Reference> program, QWidget* parent = nullptr);
    ~DeskPage() override;
    /// Files of the rule sets that come with the program, for the page that shows them.
    void set_program_rules(std::vector<std::string> files) { program_rules_ = std::move(files); }
    /// With the firm's own: what jobs are looked at with.
    void set_reference(std::shared_ptr<const plan::Reference> reference) { reference_ = std::move(reference); }

    /// Reads the list anew and selects this job when it is there; empty: keeps the selection.
    void reload(const std::string& job_id = {});
    [[nodiscard]] NoticeBar& notice() { return *notice_; }
    [[nodiscard]] QTableView* table() { return table_; }
    [[nodiscard]] QLineEdit* search() { return search_; }
    [[nodiscard]] ListFilter* filter() { return filter_; }
    [[nodiscard]] ServicesPage* services() { return services_; }
    [[nodiscard]] RegisterPage* refrigerant() { return register_; }  ///< null until its tab was shown
    [[nodiscard]] EquipmentPage* equipment() { return equipment_; }  ///< null until its tab was shown
    [[nodiscard]] FiguresPage* figures() { return figures_; }
    [[nodiscard]] PricePage* prices() { return prices_; }            ///< the same
    [[nodiscard]] RulePage* rules() { return rules_; }               ///< the same
    [[nodiscard]] CustomersPage* customers() { return customers_; }  ///< null until its tab was shown
    void show_tab(int tab);
    /// False, and told: a list has changes that are not saved.
    [[nodiscard]] bool may_close();
    void show_equipment_tab();
    void show_prices_tab();
    void show_rules_tab();
    void show_customer(const std::string& customer_id);
    /// Asks whose the job is where it is linked with nobody.
    void show_customer_of(const std::string& job_id);
    [[nodiscard]] JobPreview* preview() const { return preview_; }
    [[nodiscard]] QPushButton* due_button() { return due_; }

   Q_SIGNALS:
    void open_asked(const QString& job_id);
    void aftercare_asked(const QString& job_id);  ///< the job is to be opened at its Aftercare
    void new_asked();
    void new_for_customer_asked(const QString& customer_id);
    void import_asked();
    void firms_own_changed();  ///< the firm's prices, equipment or rules, in the store

   protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

   private:
    QWidget* make_head();
    QWidget* make_jobs();
    QWidget* make_table();
    void make_tabs();
    void show_register();
    void show_prices();
    void show_rules();
    /// Entries of the firm's books that an earlier run of the program could not save.
    void tell_kept_entries();
    void complain(const QString& text);
    void tell(const QString& text);
    /// An entry was taken after one that was refused.
    void take_complaints_away();
    /// What the page said that is no longer looked at.
    void leave_tab();
    void show_equipment();
    void show_customers();
    /// The list alone; the selection as with `reload`.
    void reload_jobs(const std::string& job_id);
    void refresh_due();
    void refresh_count();
    void narrow();
    void save_list();
    void show_order();
    void preview_selected();
    void remove_selected();
    void restore_removed();
    [[nodiscard]] std::string selected_id() const;

    store::Store& store_;
    std::shared_ptr<const plan::Reference> program_;
    std::shared_ptr<const plan::Reference> reference_;
    JobTableModel* model_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    QTableView* table_ = nullptr;
    QLineEdit* search_ = nullptr;
    ListFilter* filter_ = nullptr;
    QLabel* count_ = nullptr;
    QPushButton* due_ = nullptr;
    ServicesPage* services_ = nullptr;
    FiguresPage* figures_ = nullptr;
    QWidget* register_place_ = nullptr;
    RegisterPage* register_ = nullptr;
    QWidget* prices_place_ = nullptr;
    PricePage* prices_ = nullptr;
    QWidget* rules_place_ = nullptr;
    RulePage* rules_ = nullptr;
    std::vector<std::string> program_rules_;
    QWidget* equipment_place_ = nullptr;
    EquipmentPage* equipment_ = nullptr;
    QWidget* customers_place_ = nullptr;
    CustomersPage* customers_ = nullptr;
    JobPreview* preview_ = nullptr;
    NoticeBar* notice_ = nullptr;
    QTimer preview_delay_;
    std::string removed_id_;
    struct Told {
        int tab = 0;
        QString text;
        bool wrong = false;
    };
    std::vector<Told> told_;  ///< by the pages of the tabs
};

}  // namespace wg::ui
