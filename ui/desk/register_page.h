#pragma once
// The firm's refrigerant register: balance by year, and the entries behind it. It only grows: a wrong entry is
// corrected by a further one.

#include <QWidget>
#include <vector>

#include "core/aftercare/register.h"
#include "core/store/store.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace wg::ui {

class RegisterForm;

class RegisterPage : public QWidget {
    Q_OBJECT
   public:
    /// `refrigerants`: names to choose from. The store must outlive the page.
    RegisterPage(store::Store& store, const std::vector<std::string>& refrigerants, QWidget* parent = nullptr);
    void reload();
    /// Adds what stands in the form; false when something is missing, then said there.
    bool add_entry(Instant now);
    /// Takes an entry into the form, to be corrected.
    void correct(const std::string& entry_id);
    [[nodiscard]] QTableWidget* years() const { return years_; }
    [[nodiscard]] QTableWidget* table() const { return table_; }
    [[nodiscard]] RegisterForm* form() const { return form_; }
    [[nodiscard]] QString year_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void open_asked(const QString& job_id);

   private:
    QWidget* make_years();
    QWidget* make_entries();
    void fill_years();
    void fill_entries();
    void explain_year();
    void save(const QString& name, const std::string& text);

    store::Store& store_;
    std::vector<RefrigerantEntry> entries_;
    std::vector<aftercare::YearReport> reports_;
    QTableWidget* years_ = nullptr;
    QLabel* year_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* none_ = nullptr;
    QPushButton* correct_ = nullptr;
    QPushButton* save_years_ = nullptr;
    QPushButton* save_all_ = nullptr;
    RegisterForm* form_ = nullptr;
};

}  // namespace wg::ui
