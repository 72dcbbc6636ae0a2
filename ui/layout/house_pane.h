#pragma once
// The whole-house view with its date, its hour and the day played through.

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include "core/scene/moment.h"

class QLabel;
class QPushButton;
class QSlider;

namespace wg::ui {

class HouseCanvas;
class JobSession;

class HousePane : public QWidget {
    Q_OBJECT
   public:
    explicit HousePane(QWidget* parent = nullptr);
    void set_session(JobSession* session);

    [[nodiscard]] HouseCanvas* canvas() const { return canvas_; }
    [[nodiscard]] scene::Moment moment() const;
    void show_moment(const scene::Moment& moment);
    void play();
    void stop();
    [[nodiscard]] bool playing() const { return tick_.isActive(); }
    [[nodiscard]] QString words() const;

   Q_SIGNALS:
    void moment_changed();

   protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

   private:
    void take_sliders();
    void refresh();
    void step();

    JobSession* session_ = nullptr;
    HouseCanvas* canvas_ = nullptr;
    QSlider* day_ = nullptr;
    QSlider* minute_ = nullptr;
    QLabel* day_words_ = nullptr;
    QLabel* minute_words_ = nullptr;
    QLabel* words_ = nullptr;
    QPushButton* play_ = nullptr;
    QTimer tick_;
    QElapsedTimer since_;
    scene::Daylight played_;
    int minute_before_ = 0;
    bool setting_ = false;
};

}  // namespace wg::ui
