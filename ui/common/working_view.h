#pragma once
// How the figures of a plan were reached, all in one place: grouped, searched, each with formula, inputs, result and
// source. Not modal, so that it can stand open while a collector is dragged.

#include <QDialog>
#include <optional>
#include <vector>

#include "core/plan/plan.h"
#include "ui/common/working_groups.h"

class QLabel;
class QLineEdit;
class QTextBrowser;
class QTreeWidget;
class QTreeWidgetItem;

namespace wg::ui {

/// The working as simple HTML and as plain text for copying.
[[nodiscard]] QString working_html(const Working& working, const QString& place = {});
[[nodiscard]] QString working_text(const Working& working, const QString& place = {});

class WorkingView : public QDialog {
    Q_OBJECT
   public:
    explicit WorkingView(QWidget* parent = nullptr);
    /// Keeps what is shown in sight as long as the new plan has it.
    void set_plan(const plan::Plan& plan);
    void show_key(const QString& key, const std::string& placement_id = {});
    void show_point(const std::string& placement_id, int point);
    void show_finding(const Finding& finding);

    [[nodiscard]] const NamedWorking* shown() const;
    [[nodiscard]] QTreeWidget* list() const { return list_; }
    [[nodiscard]] QLineEdit* search() const { return search_; }
    /// All that the search leaves, one below the other.
    [[nodiscard]] QString listed_text() const;

   private:
    void fill();
    void filter();
    void refresh();
    void go_to(const std::optional<WorkingAt>& where);
    [[nodiscard]] std::optional<WorkingAt> where_of(const QTreeWidgetItem* item) const;
    [[nodiscard]] QTreeWidgetItem* item_of(const WorkingAt& where) const;

    plan::Plan plan_;
    std::vector<WorkingGroup> groups_;
    QLineEdit* search_ = nullptr;
    QTreeWidget* list_ = nullptr;
    QLabel* count_ = nullptr;
    QTextBrowser* text_ = nullptr;
};

}  // namespace wg::ui
