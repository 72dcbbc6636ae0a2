#pragma once
// Where a name is written with finger, pen or mouse; the drawing as PNG.

#include <QByteArray>
#include <QPolygonF>
#include <QWidget>
#include <vector>

namespace wg::ui {

class SignaturePad : public QWidget {
    Q_OBJECT
   public:
    explicit SignaturePad(QWidget* parent = nullptr);
    [[nodiscard]] bool empty() const { return strokes_.empty(); }
    void clear();
    /// Black on white, whatever the theme; the same strokes give the same bytes.
    [[nodiscard]] QByteArray png() const;
    [[nodiscard]] QSize sizeHint() const override { return {480, 160}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 120}; }

   Q_SIGNALS:
    void changed();

   protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

   private:
    void draw_strokes(QPainter& painter, const QColor& ink) const;
    std::vector<QPolygonF> strokes_;
    bool down_ = false;
};

}  // namespace wg::ui
