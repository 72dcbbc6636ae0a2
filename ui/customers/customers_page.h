#pragma once
// The desk's list of customers with the one selected: form, what they have with the firm, and what can be done.

#include <QWidget>
#include <string>

#include "core/customers/import.h"
#include "core/quantity/time.h"
#include "core/store/store.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QTableView;

namespace wg::ui {

class CustomerForm;
class CustomerLook;
class CustomerTableModel;

class CustomersPage : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive it.
    explicit CustomersPage(store::Store& store, QWidget* parent = nullptr);
    /// Reads the list anew; selects this customer when it is there, else keeps the selection.
    void reload(const std::string& customer_id = {});
    /// Keeps what was typed; false: refused and said, and the form stays as it is.
    bool save_edited();
    void start_customer();
    /// Asks for a file, shows its preview and takes it in when that is wanted.
    void take_in_table();
    /// What the preview of that file takes; tells the lines left out. False: refused and said.
    bool take_in(const customers::ImportPreview& preview, const QString& file);
    bool bring_in(const std::string& other_id);  ///< into the selected one
    [[nodiscard]] CustomerForm* form() const { return form_; }
    [[nodiscard]] CustomerLook* look() const { return look_; }
    [[nodiscard]] QTableView* table() const { return table_; }
    [[nodiscard]] QLineEdit* search() const { return search_; }
    [[nodiscard]] QString count_words() const;
    [[nodiscard]] const std::string& shown_id() const { return shown_id_; }

   Q_SIGNALS:
    void open_asked(const QString& job_id);
    void new_job_asked(const QString& customer_id);
    void jobs_changed();  ///< erased: the desk reads its list anew
    void said(const QString& text);
    void problem(const QString& text);
    void taken_back();  ///< what was typed: complaints about it are over

   protected:
    void hideEvent(QHideEvent* event) override;

   private:
    QWidget* make_list();
    QWidget* make_side();
    void show_row(int row);
    void show_id(const std::string& id);
    void mark_shown();
    void refresh_buttons();
    void refresh_count();
    void choose_other();
    void hand_out();
    void erase();
    void remove();
    void save_list();

    store::Store& store_;
    std::string shown_id_;
    bool new_ = false;       ///< the form holds one that is not kept yet
    bool settling_ = false;  ///< the selection is being put back
    CustomerTableModel* model_ = nullptr;
    QTableView* table_ = nullptr;
    QLineEdit* search_ = nullptr;
    QLabel* count_ = nullptr;
    CustomerForm* form_ = nullptr;
    CustomerLook* look_ = nullptr;
    QWidget* side_ = nullptr;
    QScrollArea* scroll_ = nullptr;  ///< around it
    QLabel* none_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* undo_ = nullptr;
    QPushButton* job_ = nullptr;
    QPushButton* join_ = nullptr;
    QPushButton* hand_out_ = nullptr;
    QPushButton* erase_ = nullptr;
    QPushButton* remove_ = nullptr;
};

}  // namespace wg::ui
