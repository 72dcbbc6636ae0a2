#pragma once
// The visit's photographs: added, named, given a place on the sketch, laid under it.

#include <QHash>
#include <QIcon>
#include <QWidget>
#include <functional>
#include <string>

#include "core/job/job.h"

class QCheckBox;
class QLabel;
class QListWidget;
class QPushButton;
class QSlider;

namespace wg::ui {

class JobSession;
class NumberField;
class PhotoShelf;
class TextField;

class PhotosPage : public QWidget {
    Q_OBJECT
   public:
    explicit PhotosPage(QWidget* parent = nullptr);
    void set_shelf(PhotoShelf* shelf);
    void set_session(JobSession* session);
    void refresh();
    void add_files(const QStringList& paths);
    void choose(const std::string& photograph_id);
    [[nodiscard]] std::string chosen() const;

   Q_SIGNALS:
    void photograph_chosen(const QString& id);  ///< to be shown at large; empty: none
    void place_asked(const QString& id);        ///< where it was taken from is to be marked on the sketch
    void underlay_asked(const QString& id);     ///< the photograph shall lie under the sketch
    /// `task`: "scale", "turn" or "move".
    void underlay_task(const QString& underlay_id, const QString& task);

   private:
    void build_underlay();
    void refresh_chosen();
    [[nodiscard]] const Photograph* photograph() const;
    [[nodiscard]] const UnderlayPicture* underlay() const;
    void change_underlay(const std::function<void(UnderlayPicture&)>& change, const QString& merge_key);
    void say(const QString& problem);
    [[nodiscard]] QIcon icon_of(const Photograph& photograph);

    JobSession* session_ = nullptr;
    PhotoShelf* shelf_ = nullptr;
    QListWidget* list_ = nullptr;
    QLabel* none_ = nullptr;
    QHash<QString, QIcon> icons_;  ///< by the picture's hash
    QLabel* problem_ = nullptr;
    QLabel* place_ = nullptr;
    QLabel* fit_words_ = nullptr;
    QWidget* of_chosen_ = nullptr;
    QWidget* of_underlay_ = nullptr;
    TextField* caption_ = nullptr;
    NumberField* looking_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* lay_ = nullptr;
    QCheckBox* shown_ = nullptr;
    QSlider* opacity_ = nullptr;
    bool filling_ = false;
};

}  // namespace wg::ui
