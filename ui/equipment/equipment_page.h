#pragma once
// The firm's catalogue: list, form, curves and versions. Items of the program can be looked at and taken as a start.

#include <QHash>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

#include "core/plan/reference.h"
#include "core/store/equipment_book.h"
#include "ui/equipment/item_text.h"

class QLabel;
class QPushButton;
class QTabWidget;

namespace wg::ui {

class ItemForm;
class ItemList;
class ItemPlot;
class VersionsView;

class EquipmentPage : public QWidget {
    Q_OBJECT
   public:
    /// `program`: the reference without the firm's items. The store must outlive the page.
    EquipmentPage(store::Store& store, std::shared_ptr<const plan::Reference> program, QWidget* parent = nullptr);

    /// Reads the firm's items anew; entries that are not saved stay.
    void reload();
    void select(const QString& key);
    /// A new item of that kind, empty, or with the data of the one on screen.
    void begin_new(store::ItemKind kind);
    void begin_from_this();
    /// What stands in the form as a version; false when it is refused, then said there.
    bool save(Instant now);
    /// Back to what is saved; a new item goes.
    void drop_entries();
    bool set_withdrawn(bool withdrawn, Instant now);
    bool approve(const QString& who, Instant now);
    /// Every item of a file, all or none; a problem says why not.
    [[nodiscard]] Result<QString> import_text(const QByteArray& text, const std::string& file_name, Instant now);
    /// The item on screen as it is saved, or all of the firm's that are not withdrawn.
    [[nodiscard]] QByteArray export_text(bool all) const;

    [[nodiscard]] ItemList* list() const { return list_; }
    [[nodiscard]] ItemForm* form() const { return form_; }
    [[nodiscard]] ItemPlot* plot() const { return plot_; }
    [[nodiscard]] VersionsView* history() const { return history_; }
    [[nodiscard]] QString state_words() const;
    [[nodiscard]] bool can_save() const;
    /// Items with entries that are not saved.
    [[nodiscard]] int unsaved();
    /// Judges what stands in the form at once instead of a moment later.
    void judge();
    /// Entries that are not saved, kept aside at once instead of a quarter second after typing.
    void keep_entries();
    /// The program ends, and what was kept aside is not wanted again.
    void forget_entries();

   Q_SIGNALS:
    void problem(const QString& text);
    void said(const QString& text);
    void items_changed();

   private:
    /// What the list shows, with the text that is saved.
    struct Known {
        ItemDraft saved;
        bool program = false;
        std::optional<store::EquipmentVersion> version;  ///< of the firm's, unless new
    };
    QWidget* make_list();
    QWidget* make_item();
    void read_items();
    void show_list(const QString& key);
    void show_current(const QString& key);
    void show_history();
    void refresh_buttons();
    void entered();
    void choose_import();
    void choose_export(bool all);
    void ask_approval();
    /// What an earlier run of the program kept aside.
    void bring_back();
    QString begin(ItemDraft draft);
    void took(const Result<store::EquipmentVersion>& done, const QString& words);
    /// After a save that was refused: shows the version that somebody saved after `base`, if there is one.
    void show_overtaking(std::int64_t base);
    [[nodiscard]] const Known* current() const;

    store::Store& store_;
    std::shared_ptr<const plan::Reference> program_;
    plan::Reference all_;  ///< with the firm's items
    QStringList order_;
    QHash<QString, Known> known_;
    QHash<QString, ItemDraft> drafts_;    ///< by key: what was entered and not saved
    QHash<QString, std::int64_t> bases_;  ///< of those: the version that was changed; 0: something new
    QHash<QString, std::string> kept_;    ///< of those: what is kept aside in the store
    bool keep_failed_ = false;            ///< and it was said
    QString current_;
    bool sound_ = false;  ///< what stands in the form would be taken
    int new_count_ = 0;
    QTimer judge_delay_;
    QTimer keep_delay_;
    ItemList* list_ = nullptr;
    ItemForm* form_ = nullptr;
    ItemPlot* plot_ = nullptr;
    VersionsView* history_ = nullptr;
    QTabWidget* side_ = nullptr;
    QLabel* title_ = nullptr;
    QLabel* state_ = nullptr;
    QPushButton* problems_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* drop_ = nullptr;
    QPushButton* from_this_ = nullptr;
    QPushButton* withdraw_ = nullptr;
    QPushButton* approve_ = nullptr;
};

}  // namespace wg::ui
