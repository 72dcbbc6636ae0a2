#pragma once
// One surface of the survey face-on: zones kept free and obstacles on it are placed, moved and resized by hand.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "ui/drawing/canvas.h"
#include "ui/drawing/surface_painter.h"

namespace wg::ui {

class JobSession;

class FaceCanvas : public Canvas {
    Q_OBJECT
   public:
    explicit FaceCanvas(QWidget* parent = nullptr);

    void set_session(JobSession* session);
    void set_surface(const std::string& surface_id);
    [[nodiscard]] const std::string& surface_id() const { return surface_id_; }
    /// A keep-out of the surface or an obstacle on it.
    void set_selected(const std::string& id);
    [[nodiscard]] const std::string& selected() const { return selected_; }

    /// The next click (or Enter, in the middle of the surface) gives a point of the plane; Escape drops the question.
    void ask_point(const QString& prompt, std::function<void(Point2)> then);

    [[nodiscard]] PlaneView view() const { return {units_per_m(), origin()}; }

   Q_SIGNALS:
    void selection_changed(const QString& id);

   protected:
    void paintEvent(QPaintEvent* event) override;
    [[nodiscard]] Fit fit_into(const QRectF& area) const override;
    void press(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void drag(QPointF at, Qt::KeyboardModifiers modifiers) override;
    void release(QPointF at) override;
    void hover(QPointF at) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool next) override;

   private:
    /// What lies on the surface, keep-outs first.
    struct Item {
        std::string id;
        std::string label;
        std::vector<Point2> outline;
        const KeepOut* zone = nullptr;
        const Obstacle* obstacle = nullptr;
    };
    [[nodiscard]] const Surface* surface() const;
    [[nodiscard]] std::vector<Item> items() const;
    [[nodiscard]] std::optional<Item> item(const std::string& id) const;
    /// Corners by which the selected one can be taken; none for obstacles that are not sized face-on.
    [[nodiscard]] std::vector<Point2> handles() const;
    [[nodiscard]] std::optional<std::size_t> handle_near(Point2 at) const;
    [[nodiscard]] SurfaceDrawing drawing() const;
    [[nodiscard]] QString words_for(const Item& item) const;
    void select(const std::string& id);
    void move_by(const Item& from, double right_m, double up_m);
    void resize_to(const Item& from, std::size_t handle, Point2 to);
    void say_state();
    void answer(Point2 at);

    JobSession* session_ = nullptr;
    std::string surface_id_;
    std::string selected_;
    std::function<void(Point2)> then_;
    QString prompt_, problem_;
    bool moving_ = false;
    std::optional<std::size_t> taken_, over_;
    Point2 pressed_;  ///< where the hand took hold
    std::optional<KeepOut> zone_before_;
    std::optional<Obstacle> obstacle_before_;
    std::vector<Point2> outline_before_, handles_before_;
};

}  // namespace wg::ui
