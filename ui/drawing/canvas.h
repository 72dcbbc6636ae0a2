#pragma once
// What the drawing surfaces on screen share: zoom about the pointer, pan, fit, and being reachable by keyboard.

#include <QPointF>
#include <QRectF>
#include <QWidget>

namespace wg::ui {

class Canvas : public QWidget {
    Q_OBJECT
   public:
    explicit Canvas(QWidget* parent = nullptr);

    void fit();                                  ///< everything in view; stays fitted while the window is resized
    void zoom_by(double factor, QPointF about);  ///< within sensible limits
    [[nodiscard]] double units_per_m() const { return units_per_m_; }
    [[nodiscard]] QPointF origin() const { return origin_; }

   Q_SIGNALS:
    void status(const QString& text);

   protected:
    struct Fit {
        double units_per_m = 50.0;
        QPointF origin;
    };
    [[nodiscard]] virtual Fit fit_into(const QRectF& area) const = 0;
    /// Left button at a place, while no pan is under way.
    virtual void press(QPointF at, Qt::KeyboardModifiers modifiers) = 0;
    virtual void drag(QPointF at, Qt::KeyboardModifiers modifiers) = 0;
    virtual void release(QPointF at) = 0;
    virtual void hover(QPointF at) = 0;

    /// Lettering and lines for the screen this widget is on.
    [[nodiscard]] double text_units() const;
    [[nodiscard]] double reach_units() const { return 10.0; }  ///< how near a hand aims
    void paint_ground(QPainter& painter) const;                ///< background, and a frame while focused
    void refit();                                              ///< when still fitted: after the content changed

    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

   private:
    double units_per_m_ = 50.0;
    QPointF origin_;
    bool fitted_ = true;
    bool space_held_ = false;
    bool panning_ = false;
    bool dragging_ = false;
    QPointF pan_from_;
};

}  // namespace wg::ui
