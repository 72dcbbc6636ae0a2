#pragma once
// The firm's rule sets, beside those that come with the program.

#include <QWidget>
#include <memory>
#include <string>
#include <vector>

#include "core/store/rule_book.h"
#include "ui/rules/rule_draft.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace wg::ui {

class RuleModel;
class VersionsDialog;
class VersionsHead;

class RulePage : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive the page. `program`: the files of the sets that come with the program, the first one the
    /// one for new jobs where the firm has chosen none.
    RulePage(store::Store& store, std::vector<std::string> program, QWidget* parent = nullptr);

    /// Reads the book anew; keeps the set that is shown, and what was typed into it.
    void reload();
    /// False: there is no such set, or the one on screen has changes that are not saved.
    bool choose(const QString& id);
    /// A set of the firm's own with the values of the one on screen; false when the id is taken or empty.
    bool make_own(const QString& id, const QString& label);
    /// False and told: values without a source stand in the way of a set that is not called assumed.
    bool set_assumed(bool assumed);
    /// What is on screen as the next version; false when it was refused, then said.
    bool save_version(const QString& note, Instant now);
    bool withdraw(const QString& note, Instant now);
    /// New jobs take the set on screen.
    bool use_for_new_jobs();
    void discard_changes();
    bool import_file(const QString& path);  ///< a set as a file (docs/rule-set-format.md), into the firm's list
    /// What a file held, under a name for messages.
    bool import_text(const std::string& text, const QString& file_name, Instant now);
    bool export_file(const QString& path);
    [[nodiscard]] bool has_changes() const;
    /// Of the set on screen, with what each changed.
    [[nodiscard]] std::unique_ptr<VersionsDialog> versions();

    [[nodiscard]] RuleModel* model() const { return model_; }
    [[nodiscard]] QTableView* table() const { return table_; }
    [[nodiscard]] QLineEdit* search() const { return search_; }
    [[nodiscard]] QCheckBox* assumed_box() const { return assumed_; }
    [[nodiscard]] QPushButton* standard_button() const { return standard_; }
    [[nodiscard]] QString shown() const { return shown_id_; }
    [[nodiscard]] QString state_words() const;
    /// The line under the table: range of the current value, or what is wrong with what is being typed.
    [[nodiscard]] QString line_words() const;

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void taken();         ///< an entry, into the set on screen
    void sets_changed();  ///< a version was saved or withdrawn, or another set is for new jobs

   private:
    struct Entry {
        RuleDraft set;
        bool own = false;
        store::RuleSetVersion version;  ///< of an own one
    };
    QWidget* make_head();
    QWidget* make_tools();
    void make_table();
    void read_sets();
    void fill_choice();
    void show_entry(const Entry& entry);
    void refresh_state();
    void give_words_room();
    void tell_range(const QString& typed_problem = {});
    void add_item(RuleGroup group);
    void ask_import();
    void ask_export();
    [[nodiscard]] Entry* entry_of(const QString& id);
    [[nodiscard]] const Entry* current() const;
    [[nodiscard]] bool is_programs(const QString& id) const;
    [[nodiscard]] QString programs_first() const;
    bool tell(const std::vector<Problem>& problems);

    store::Store& store_;
    std::vector<std::string> program_;
    std::vector<Entry> entries_;
    QString shown_id_, for_new_jobs_;
    /// Version that what stands on screen was made from: the book may have gone on since.
    std::int64_t base_ = 0;
    RuleModel* model_ = nullptr;
    VersionsHead* head_ = nullptr;
    QTableView* table_ = nullptr;
    QLineEdit* search_ = nullptr;
    QCheckBox* assumed_ = nullptr;
    QLabel* state_ = nullptr;
    QLabel* line_ = nullptr;
    QPushButton* standard_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
};

}  // namespace wg::ui
