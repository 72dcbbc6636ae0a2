#pragma once
// Searching the whole site for the best places of a collector, and taking one over.

#include <QWidget>
#include <string>
#include <vector>

#include "ui/layout/surface_canvas.h"

class QCheckBox;
class QLabel;
class QListWidget;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

namespace wg::ui {

class CalmCombo;
class JobSession;
class PlaceSearch;
class WeightsBox;

class PlacesPanel : public QWidget {
    Q_OBJECT
   public:
    explicit PlacesPanel(QWidget* parent = nullptr);
    void set_session(JobSession* session);
    /// The collector that the search moves; empty or unknown: the first of the choice, or a new one when it has none.
    void set_moving(const std::string& placement_id);

    /// Outlines of the places found, for the drawing; empty while there are none.
    [[nodiscard]] std::vector<ProposedPlace> proposals() const;
    [[nodiscard]] PlaceSearch* search() const { return search_; }
    [[nodiscard]] WeightsBox* weights() const { return weights_; }
    void start();
    void put_selected();

   Q_SIGNALS:
    void proposals_changed();
    void surface_wanted(const QString& surface_id);
    void placement_put(const QString& placement_id);

   private:
    void build_wish(QVBoxLayout* column);
    void build_found(QVBoxLayout* column);
    void refresh();
    void show_found();
    void show_words();
    [[nodiscard]] std::size_t moving_index() const;
    [[nodiscard]] bool outdated() const;

    JobSession* session_ = nullptr;
    PlaceSearch* search_ = nullptr;
    std::string moving_;
    CalmCombo* aim_ = nullptr;
    CalmCombo* which_ = nullptr;
    WeightsBox* weights_ = nullptr;
    QCheckBox* strip_ = nullptr;
    QPushButton* go_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* words_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* put_ = nullptr;
    QLabel* method_ = nullptr;
};

}  // namespace wg::ui
