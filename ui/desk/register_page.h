#pragma once
// The firm's refrigerant register: balance by year, and the entries behind it. It only grows: a wrong entry is
// corrected by a further one.

#include <QWidget>
#include <vector>

#include "core/aftercare/register.h"
#include "core/store/store.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace wg::ui {

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
    [[nodiscard]] QLineEdit* mass() const { return kg_; }
    [[nodiscard]] QLineEdit* by() const { return by_; }
    [[nodiscard]] QComboBox* move() const { return move_; }
    [[nodiscard]] QComboBox* refrigerant() const { return refrigerant_; }
    [[nodiscard]] QDateEdit* date() const { return on_; }
    [[nodiscard]] QString problem_words() const;
    [[nodiscard]] QString year_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void open_asked(const QString& job_id);

   private:
    QWidget* make_years();
    QWidget* make_entries();
    QWidget* make_form();
    void fill_years();
    void fill_entries();
    void explain_year();
    void say(const QString& text, QWidget* where);
    void save(const QString& name, const std::string& text);

    store::Store& store_;
    std::vector<RefrigerantEntry> entries_;
    std::vector<aftercare::YearReport> reports_;
    std::string corrects_id_;
    QTableWidget* years_ = nullptr;
    QLabel* year_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* none_ = nullptr;
    QDateEdit* on_ = nullptr;
    QComboBox* refrigerant_ = nullptr;
    QComboBox* move_ = nullptr;
    QLineEdit* kg_ = nullptr;
    QLineEdit* bottle_ = nullptr;
    QLineEdit* by_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* correcting_ = nullptr;
    QLabel* problem_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* correct_ = nullptr;
};

}  // namespace wg::ui
