#pragma once
// Beside the face-on drawing: which surface, which collectors, and the selected one's place in figures.

#include <QStringList>
#include <QWidget>
#include <string>
#include <vector>

class QLabel;
class QListWidget;
class QPushButton;
class QVBoxLayout;

namespace wg::ui {

class CalmCombo;
class JobSession;
class NumberField;

class CollectorPanel : public QWidget {
    Q_OBJECT
   public:
    explicit CollectorPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    void show_state(const std::string& surface_id, const std::string& placement_id);

   Q_SIGNALS:
    void surface_chosen(const QString& surface_id);
    void placement_chosen(const QString& placement_id);

   private:
    void build_selected(QVBoxLayout* column);
    void refresh();
    void refresh_selected();
    void list_surfaces();
    void list_collectors();
    void commit_offset(bool from_left, double metres);
    void commit_frame();

    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::string placement_id_;
    std::vector<QStringList> surfaces_listed_, collectors_listed_;  ///< label and id
    CalmCombo* surface_ = nullptr;
    QLabel* surface_words_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QWidget* selected_box_ = nullptr;
    QLabel* none_words_ = nullptr;
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
