#pragma once
// What the desk's list is narrowed by beside words, and the views that the firm keeps.

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "core/store/job_list.h"

class QAction;
class QCheckBox;
class QComboBox;
class QMenu;
class QToolButton;

namespace wg::ui {

class ListFilter : public QWidget {
    Q_OBJECT
   public:
    /// The store must outlive the widget.
    explicit ListFilter(store::Store& store, QWidget* parent = nullptr);

    /// What is chosen; order and direction are the list's own.
    [[nodiscard]] store::JobView chosen() const;
    void show_view(const store::JobView& view);
    /// The list's order, kept with a view.
    void set_order(store::JobOrder order, bool backwards);
    /// Keeps what is chosen under this name.
    void keep(const QString& name);
    [[nodiscard]] QMenu* views_menu() const { return views_; }
    [[nodiscard]] QComboBox* due() const { return due_; }
    [[nodiscard]] QComboBox* steps() const { return steps_; }
    /// How an item of the catalogue is called; without it by its id.
    void set_item_names(std::function<QString(const std::string& item_id)> name) { item_name_ = std::move(name); }
    [[nodiscard]] QMenu* items_menu() const { return items_; }
    [[nodiscard]] QAction* state_action(JobState state) const;

   Q_SIGNALS:
    void changed();
    void view_chosen(const store::JobView& view);
    void problem(const QString& text);

   private:
    [[nodiscard]] std::vector<NextStep> steps_of(int entry) const;
    void show_steps(const std::vector<NextStep>& steps);
    void fill_views();
    void fill_items();
    void choose_item(const std::string& item_id);
    [[nodiscard]] QString name_of_item(const std::string& item_id) const;
    void ask_and_keep();
    void refresh_words();

    store::Store& store_;
    QToolButton* states_ = nullptr;
    std::vector<QAction*> state_actions_;
    QComboBox* due_ = nullptr;
    QComboBox* quiet_ = nullptr;
    QComboBox* steps_ = nullptr;
    std::vector<NextStep> other_steps_;  ///< of a view that asks for several; shown as one more entry
    QToolButton* items_button_ = nullptr;
    QMenu* items_ = nullptr;
    std::string item_id_;
    std::function<QString(const std::string&)> item_name_;
    QCheckBox* without_invented_ = nullptr;
    QToolButton* views_button_ = nullptr;
    QMenu* views_ = nullptr;
    store::JobOrder order_ = store::JobOrder::newest;
    bool backwards_ = false;
};

}  // namespace wg::ui
