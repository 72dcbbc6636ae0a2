#pragma once
// Beside the face-on drawing: which surface, which collectors, the selected one's place in figures and what its data
// ask, or how several are arranged.

#include <QStringList>
#include <QWidget>
#include <string>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;
class QVBoxLayout;

namespace wg::ui {

class ArrangePanel;
class CalmCombo;
class JobSession;
class NumberField;
class RowPanel;
class RulesBox;

class CollectorPanel : public QWidget {
    Q_OBJECT
   public:
    explicit CollectorPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// The last of the selection is the one whose place is shown when it is the only one.
    void show_state(const std::string& surface_id, const std::vector<std::string>& selection);
    [[nodiscard]] ArrangePanel* arrange_panel() const { return arrange_; }
    [[nodiscard]] RowPanel* row_panel() const { return row_; }
    [[nodiscard]] RulesBox* rules_box() const { return rules_; }

   Q_SIGNALS:
    void surface_chosen(const QString& surface_id);
    void placement_chosen(const QString& placement_id);
    void placements_chosen(const QStringList& placement_ids);
    void said(const QString& words);  ///< for the bottom line

   private:
    void build_collectors(QVBoxLayout* column);
    void build_selected(QVBoxLayout* column);
    void build_place(QVBoxLayout* column);
    void connect_place();
    void refresh();
    void refresh_list();
    void refresh_selected();
    void list_surfaces();
    void commit_offset(bool from_left, double metres);
    void commit_frame();

    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::vector<std::string> selection_;
    std::string placement_id_;                  ///< the only one selected; empty: none, or several
    std::vector<QStringList> surfaces_listed_;  ///< label and id
    CalmCombo* surface_ = nullptr;
    QLabel* surface_words_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QWidget* selected_box_ = nullptr;
    QLabel* none_words_ = nullptr;
    ArrangePanel* arrange_ = nullptr;
    RowPanel* row_ = nullptr;
    RulesBox* rules_ = nullptr;
    QPushButton* quarter_ = nullptr;
    NumberField* left_ = nullptr;
    NumberField* low_ = nullptr;
    NumberField* turn_ = nullptr;
    QPushButton* hand_ = nullptr;
    CalmCombo* on_surface_ = nullptr;
    QWidget* frame_box_ = nullptr;
    NumberField* frame_tilt_ = nullptr;
    NumberField* frame_azimuth_ = nullptr;
};

}  // namespace wg::ui
