#pragma once
// The whole house in space on screen: orbit, zoom, the sun of a chosen moment, and surfaces chosen by a click.

#include <QTimer>
#include <optional>
#include <string>
#include <vector>

#include "core/scene/camera.h"
#include "core/scene/moment.h"
#include "core/scene/order.h"
#include "core/scene/plate_light.h"
#include "core/scene/shadows.h"
#include "ui/drawing/canvas.h"
#include "ui/drawing/house_painter.h"

namespace wg::ui {

class JobSession;

class HouseCanvas : public Canvas {
    Q_OBJECT
   public:
    explicit HouseCanvas(QWidget* parent = nullptr);
    void set_session(JobSession* session);

    void set_moment(const scene::Moment& moment);
    [[nodiscard]] const scene::Moment& moment() const { return moment_; }
    void set_selected(const std::string& surface_id, const std::string& placement_id);
    [[nodiscard]] const scene::Camera& camera() const { return camera_; }
    void orbit(double turn_deg, double rise_deg);
    void home();            ///< before the surface with the first collector, the house in view
    void fit_everything();  ///< neighbours and trees too

    /// Sun, and how much of the collectors it reaches, in one line.
    [[nodiscard]] QString sun_words();
    [[nodiscard]] const scene::SunOverSite& sun();
    [[nodiscard]] HouseView house_view() const;
    [[nodiscard]] const scene::Scene& scene_now();

   Q_SIGNALS:
    void scene_changed();
    void surface_clicked(const QString& surface_id);
    void surface_opened(const QString& surface_id);  ///< double click
    void collector_clicked(const QString& placement_id);

   protected:
    [[nodiscard]] Fit fit_into(const QRectF& area) const override;
    void press(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void drag(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void release(QPointF at) override;
    void hover(QPointF at) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

   private:
    void job_changed();
    void make_scene() const;  ///< when something that shows has changed
    void make_light() const;
    void moves();  ///< a frame of many; a whole one follows when they end
    [[nodiscard]] scene::Camera home_camera() const;
    [[nodiscard]] const scene::Thing* thing_at(QPointF at) const;
    [[nodiscard]] QString words_for(const scene::Thing& thing) const;

    JobSession* session_ = nullptr;
    scene::Moment moment_;
    scene::Camera camera_;
    std::string surface_id_, placement_id_;
    QTimer settled_;  ///< runs while frames follow each other
    bool homed_ = false;
    bool own_house_ = true;  ///< what is fitted
    bool turned_ = false;    ///< since the press
    QPointF press_at_, last_at_;
    // Kept between frames; made anew when the job, the choice or the moment has changed.
    mutable bool scene_known_ = false, light_known_ = false;
    mutable Site site_;
    mutable std::optional<Choice> choice_;
    mutable scene::Scene scene_;
    mutable scene::Order order_;
    mutable scene::SunOverSite sun_;
    mutable scene::Shadows shadows_;
    struct Plate {
        std::string id, label;
        scene::PlateLight light;
    };
    mutable std::vector<Plate> plates_;
};

}  // namespace wg::ui
