#pragma once
// The firm's price lists, beside those that come with the program.

#include <QTimer>
#include <QWidget>
#include <memory>
#include <string>
#include <vector>

#include "core/plan/reference.h"
#include "core/store/price_book.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTabWidget;
class QTableView;

namespace wg::ui {

class PriceModel;
class PriceTerms;
class PurchasePage;
class StockPage;
class VersionsDialog;
class VersionsHead;

class PricePage : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive the page. `reference`: for the lists that come with the program.
    PricePage(store::Store& store, std::shared_ptr<const plan::Reference> reference, QWidget* parent = nullptr);

    /// Reads the book anew; keeps the list that is shown, and what was typed into it.
    void reload();
    /// False: there is no such list, or the one on screen has changes that are not saved.
    bool choose(const std::string& list_id);
    /// A list of the firm's own with the items of the one on screen; false when the id is taken or empty.
    bool make_own(const std::string& id, const QString& label);
    /// What is on screen as the next version; false when it was refused, then said.
    bool save_version(const QString& note, Instant now);
    bool withdraw(const QString& note, Instant now);
    /// Changes that are not saved, kept aside at once instead of a quarter second after they were made.
    void keep_changes();
    void discard_changes();
    bool import_file(const QString& path);  ///< a list as a file (docs/price-format.md), into the firm's book
    bool export_file(const QString& path);  ///< JSON, or CSV by the ending
    /// Items of a list that was made from the one on screen; not saved yet.
    void take_items(const parts::PriceList& list);
    /// Takes the mark of invented prices from the list on screen; not saved yet. What still has an invented price is
    /// told where it is asked.
    void set_checked();
    /// What of the list on screen costs what it does in an invented list of the program.
    [[nodiscard]] QStringList unchecked() const;
    [[nodiscard]] QPushButton* checked_button() const { return checked_; }
    [[nodiscard]] bool has_changes() const;
    /// Of the list on screen, with what each changed.
    [[nodiscard]] std::unique_ptr<VersionsDialog> versions();
    /// The one on screen, as it stands there.
    [[nodiscard]] parts::PriceList shown_list() const;

    [[nodiscard]] PriceModel* model() const { return model_; }
    [[nodiscard]] PriceTerms* terms() const { return terms_; }
    [[nodiscard]] StockPage* stock() const { return stock_; }
    [[nodiscard]] PurchasePage* purchases() const { return purchases_; }
    [[nodiscard]] QTableView* table() const { return table_; }
    [[nodiscard]] QLineEdit* search() const { return search_; }
    [[nodiscard]] QString state_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void taken();          ///< an entry, into the list on screen
    void lists_changed();  ///< a version was saved or withdrawn

   private:
    struct Entry {
        parts::PriceList list;
        bool own = false;
        store::PriceListVersion version;  ///< of an own one
    };
    QWidget* make_head();
    QWidget* make_items();
    /// What an earlier run of the program kept aside.
    void bring_back();
    void read_lists();
    void fill_choice();
    void show_entry(const Entry& entry);
    void refresh_state();
    void ask_import();
    void ask_import_items();
    void ask_export();
    void ask_checked();
    [[nodiscard]] QStringList state_of(const Entry& entry, const parts::PriceList& list, bool changed) const;
    [[nodiscard]] Entry* current();
    [[nodiscard]] const Entry* current() const;
    bool tell(const std::vector<Problem>& problems);

    store::Store& store_;
    std::shared_ptr<const plan::Reference> reference_;
    std::vector<Entry> entries_;
    std::string shown_id_;
    int based_on_ = 0;       ///< version that the one on screen was read at
    std::string kept_id_;    ///< of the list that changes are kept aside of; empty: of none
    std::string kept_text_;  ///< as they are kept
    bool keep_failed_ = false;
    QTimer keep_delay_;
    PriceModel* model_ = nullptr;
    VersionsHead* head_ = nullptr;
    PriceTerms* terms_ = nullptr;
    StockPage* stock_ = nullptr;
    PurchasePage* purchases_ = nullptr;
    QTabWidget* tabs_ = nullptr;
    QTableView* table_ = nullptr;
    QLineEdit* search_ = nullptr;
    QLabel* state_ = nullptr;
    QPushButton* checked_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* import_items_ = nullptr;
};

}  // namespace wg::ui
